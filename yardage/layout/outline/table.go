package outline

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
)

// columns are the headings of a table of points.
var columns = [...]string{"piece", "x", "y"}

// CSV reads a table of points: a heading piece,x,y, in any order, then a row for
// every corner, the corners of a piece together and in order, x across and y
// along as for [layout.Point]. Numbers are read by r.Numbers. The last point may
// repeat the first. A piece that comes again after another is [fault.Twice]. Count is
// 1 and Turn is Keep for every piece: they are the caller's to set.
//
// The faults are [fault.Faults], with the line and the column in bytes, both
// from 1; at most MaxFaults of them.
func (r Reader) CSV(in io.Reader) ([]layout.Piece, error) {
	if err := r.check(); err != nil {
		return nil, err
	}
	text, err := whole(in)
	if err != nil {
		return nil, err
	}
	t := table{Reader: r, csv: csv.NewReader(bytes.NewReader(bytes.TrimPrefix(text, []byte("\ufeff"))))}
	t.csv.FieldsPerRecord = -1
	t.csv.ReuseRecord = true
	if t.heading() {
		for t.row() {
		}
	}
	return t.end(t.pieces, "table", "at least one piece")
}

// table is a table being read.
type table struct {
	Reader
	faults
	csv    *csv.Reader
	column [len(columns)]int
	fields int
	pieces []layout.Piece
	names  map[string]place // where each piece begins
	points int
}

// record is the next row; false at the end or where it cannot be read.
func (t *table) record() ([]string, bool) {
	row, err := t.csv.Read()
	if err == nil {
		return row, true
	}
	var bad *csv.ParseError
	if errors.As(err, &bad) {
		t.at(place{bad.Line, bad.Column}.String(), "", bad.Err.Error(), fault.Form)
	}
	return nil, false
}

func (t *table) place(field int) string {
	line, column := t.csv.FieldPos(field)
	return place{line, column}.String()
}

// heading reads the first row.
func (t *table) heading() bool {
	row, ok := t.record()
	if !ok {
		return len(t.list) == 0
	}
	t.fields = len(row)
	t.names = map[string]place{}
	for i := range t.column {
		t.column[i] = -1
	}
	for i, name := range row {
		k := slices.Index(columns[:], strings.ToLower(strings.TrimSpace(name)))
		switch {
		case k < 0:
			t.at(t.place(i), name, "piece, x or y", fault.Unknown)
		case t.column[k] >= 0:
			t.at(t.place(i), name, "each column once", fault.Twice)
		default:
			t.column[k] = i
		}
		if t.full() {
			return false
		}
	}
	for k, i := range t.column {
		if i < 0 {
			t.at("line 1, column "+columns[k], "", "the columns piece, x and y", fault.Missing)
		}
	}
	return len(t.list) == 0
}

// row reads a corner; false where reading stops.
func (t *table) row() bool {
	before := len(t.list)
	row, ok := t.record()
	if !ok {
		if len(t.list) == before {
			t.finish()
		}
		return false
	}
	if len(row) != t.fields {
		return t.at(t.place(0), fmt.Sprintf("%d fields", len(row)), fmt.Sprintf("%d, as in the heading", t.fields), fault.Form)
	}
	name := strings.TrimSpace(row[t.column[0]])
	if n := len(t.pieces); n == 0 || t.pieces[n-1].Name != name {
		if !t.begin(strings.Clone(name)) {
			return false
		}
	}
	var q [2]units.Length
	for k := range q {
		i := t.column[1+k]
		l, err := t.Numbers.Parse(row[i])
		if err != nil {
			t.at(t.place(i), row[i], err.Error(), fault.Form)
		}
		q[k] = l
	}
	one := &t.pieces[len(t.pieces)-1]
	if len(one.Outline) <= layout.MaxPoints+1 { // two more are too many, even if the last repeats the first; that is told at its end
		one.Outline = append(one.Outline, layout.Point{X: q[0], Y: q[1]})
		t.points++
	}
	return !t.full() && t.most(t.place(0), t.pieces, t.points)
}

// begin begins a piece; false where reading stops.
func (t *table) begin(name string) bool {
	t.finish()
	line, column := t.csv.FieldPos(t.column[0])
	at := place{line, column}
	if name == "" {
		t.at(at.String(), "", "the name of the piece", fault.Missing)
	}
	t.name(at.String(), name)
	if first, twice := t.names[name]; twice {
		t.at(at.String(), name, "all its points together, from "+first.String(), fault.Twice)
	} else {
		t.names[name] = at
	}
	t.pieces = append(t.pieces, layout.Piece{Name: name, Count: 1})
	return !t.full()
}

// finish ends the last piece.
func (t *table) finish() {
	if n := len(t.pieces); n > 0 {
		one := &t.pieces[n-1]
		one.Outline = closed(one.Outline)
		t.sized(t.names[one.Name].String(), one.Outline)
	}
}

// WriteCSV writes the outlines of pieces as a table of points that [Reader.CSV]
// reads back the same, whatever its Bare; a rectangle has its four corners. The
// error is the writer's, or that of pieces that such a table cannot hold.
func WriteCSV(out io.Writer, pieces []layout.Piece) error {
	var a fault.Audit
	seen := map[string]bool{}
	for i, p := range pieces {
		path := fmt.Sprintf("pieces[%d].name", i)
		a.Text(path, p.Name)
		if name := strings.TrimSpace(p.Name); name == "" {
			a.Fault(path, "", "a name, to tell its points by", fault.Missing)
		} else if name != p.Name {
			a.Fault(path, fmt.Sprintf("%q", p.Name), "no space at its ends", fault.Form)
		} else if seen[p.Name] {
			a.Fault(path, p.Name, "each name once", fault.Twice)
		}
		seen[p.Name] = true
	}
	if a.Failed() {
		return a.Err()
	}
	w := csv.NewWriter(out)
	w.Write(columns[:]) // the error is kept, for Error
	for _, p := range pieces {
		for _, q := range corners(p) {
			w.Write([]string{p.Name, q.X.String(), q.Y.String()})
		}
	}
	w.Flush()
	return w.Error()
}

// corners are the points of a piece; a rectangle has its four.
func corners(p layout.Piece) []layout.Point {
	if len(p.Outline) > 0 {
		return p.Outline
	}
	return rectangle(p.Wide, p.Long)
}

func rectangle(wide, long units.Length) []layout.Point {
	return []layout.Point{{}, {X: wide}, {X: wide, Y: long}, {Y: long}}
}
