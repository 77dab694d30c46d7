package main

import (
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/yardage/layout"
)

// Bounds on one file of an instance or of lays.
const (
	MaxFile   = 16 << 20 // bytes
	MaxValues = 700_000  // JSON values: three a corner, of as many corners as a lay may have, and some
)

// An instance is a set of pieces for a strip of cloth, as researchers write
// them: x runs along the strip and y across it.
type instance struct {
	Name      string
	Source    string // where the set is from; not used, nor are the next two
	Licence   string
	Note      string
	Width     number
	Rotations []number `json:"allowed_rotations"` // in degrees, of each piece that gives none
	Pieces    []piece
}

type piece struct {
	ID        string `json:"id"`
	Qty       int
	Rotations []number
	Points    [][2]number
}

// A number is an exact decimal: a JSON number without exponent, or its digits as
// a string. It holds whether it was given, as zero is a number too.
type number struct {
	units.Ratio
	given bool
}

func numberOf(r units.Ratio) number { return number{r, true} }

// UnmarshalText reads the digits.
func (n *number) UnmarshalText(text []byte) error {
	r, err := units.ParseRatio(string(text))
	if err != nil || strings.Trim(string(text), "+-.0123456789") != "" {
		return &fault.Fault{Limit: "a decimal without exponent", Kind: fault.Form}
	}
	*n = numberOf(r)
	return nil
}

// length is the number as inches: on the tape one of the file's units stands for
// an inch.
func (n number) length() units.Length { return units.Inch.Of(1).Scale(n.Ratio) }

// quarters are so many degrees as quarters of a turn; ok is false where they are
// not 0, 90, 180 or 270.
func (n number) quarters() (quarters int, ok bool) {
	for q := range 4 {
		if n.Ratio == units.RatioOf(int64(q)*90, 1) {
			return q, true
		}
	}
	return 0, false
}

// ratio is a length as a number of the file's units.
func ratio(l units.Length) units.Ratio { return l.In(units.Inch) }

// reader reads within the bounds of a file.
var reader = noun.Reader{MaxBytes: MaxFile, MaxNodes: MaxValues}

func readInstance(r io.Reader) (in instance, err error) {
	if err := reader.Read(r, &in); err != nil {
		return instance{}, err
	}
	for i := range in.Pieces {
		if p := &in.Pieces[i]; len(p.Rotations) == 0 {
			p.Rotations = in.Rotations
		}
	}
	return in, in.audit()
}

// audit finds what is missing, given twice or out of range.
func (in instance) audit() error {
	var a fault.Audit
	a.Text("name", in.Name)
	need(&a, "width", in.Width)
	if n := len(in.Pieces); n < 1 || n > layout.MaxPieces {
		a.Count("pieces", n, 1, layout.MaxPieces)
		return a.Err()
	}
	first := map[string]int{}
	for i, p := range in.Pieces {
		path := fmt.Sprintf("pieces[%d].", i)
		if k, twice := first[p.ID]; p.ID == "" {
			a.Fault(path+"id", "", "the name of the piece", fault.Missing)
		} else if twice {
			a.Fault(path+"id", strconv.Quote(p.ID), fmt.Sprintf("another than pieces[%d]", k), fault.Twice)
		} else {
			first[p.ID] = i
			a.Text(path+"id", p.ID)
		}
		a.Count(path+"qty", p.Qty, 1, layout.MaxPieces)
		if _, ok := p.turn(); !ok {
			err := fault.Range
			if len(p.Rotations) == 0 {
				err = fault.Missing
			}
			a.Fault(path+"rotations", shown(p.Rotations), "0; 0 and 180; all four quarters; or for a rectangle 0 and 90", err)
		}
		if n := len(p.Points); n < 3 {
			a.Count(path+"points", n, 3, layout.MaxPoints)
		}
	}
	return a.Err()
}

// shown is a list of numbers for a fault, or nothing where it is empty.
func shown(list []number) string {
	const most = 8
	if len(list) == 0 {
		return ""
	}
	if len(list) > most {
		return fmt.Sprintf("%d of them", len(list))
	}
	return fmt.Sprint(list)
}

// need records a number that is not given, or is not more than zero.
func need(a *fault.Audit, path string, n number) {
	if !n.given {
		a.Fault(path, "", "more than 0", fault.Missing)
	} else if n.Sign() <= 0 {
		a.Fault(path, n.String(), "more than 0", fault.Sign)
	}
}

// spec is the instance as a lay: its x is along the cloth, its y across. Where
// all pieces are rectangles they are given as such.
func (in instance) spec() layout.Spec {
	s := layout.Spec{Cloth: layout.Cloth{Wide: in.Width.length()}}
	for _, p := range in.Pieces {
		one := layout.Piece{Name: p.ID, Count: p.Qty}
		one.Turn, _ = p.turn()
		if wide, long, rectangle := p.rectangle(); rectangle {
			one.Wide, one.Long = wide, long
		} else {
			for _, q := range p.Points {
				one.Outline = append(one.Outline, layout.Point{X: q[1].length(), Y: q[0].length()})
			}
		}
		s.Pieces = append(s.Pieces, one)
	}
	return s
}

// rectangle is the size across and along of a piece whose four corners are those
// of a rectangle.
func (p piece) rectangle() (wide, long units.Length, ok bool) {
	if len(p.Points) != 4 {
		return wide, long, false
	}
	lo, hi := p.Points[0], p.Points[0]
	for _, q := range p.Points {
		for k := range q {
			if q[k].Less(lo[k].Ratio) {
				lo[k] = q[k]
			}
			if hi[k].Less(q[k].Ratio) {
				hi[k] = q[k]
			}
		}
	}
	for i, q := range p.Points {
		next := p.Points[(i+1)%4]
		if (q[0] == next[0]) == (q[1] == next[1]) || q[0] != lo[0] && q[0] != hi[0] || q[1] != lo[1] && q[1] != hi[1] {
			return wide, long, false
		}
	}
	return hi[1].length().Sub(lo[1].length()), hi[0].length().Sub(lo[0].length()), p.Points[0] != p.Points[2] && p.Points[1] != p.Points[3]
}

// turn is how the piece may be turned; ok is false for other sets of rotations
// than the four of [layout.Turn].
func (p piece) turn() (turn layout.Turn, ok bool) {
	var may [4]bool
	for _, r := range p.Rotations {
		q, ok := r.quarters()
		if !ok || may[q] {
			return layout.Keep, false
		}
		may[q] = true
	}
	_, _, rectangle := p.rectangle()
	switch may {
	case [4]bool{true}:
		return layout.Keep, true
	case [4]bool{true, false, true}:
		return layout.Half, true
	case [4]bool{true, true, true, true}:
		return layout.Quarter, true
	case [4]bool{true, true}:
		return layout.Quarter, rectangle
	}
	return layout.Keep, false
}

// corner is the least x and y of a piece turned about its own origin.
func (p piece) corner(quarters int) (x, y units.Ratio) {
	for i, q := range p.Points {
		a, b := q[0].Ratio, q[1].Ratio
		for range quarters {
			a, b = b.Neg(), a
		}
		if i == 0 || a.Less(x) {
			x = a
		}
		if i == 0 || b.Less(y) {
			y = b
		}
	}
	return x, y
}

// may reports whether the piece may be turned by so many quarters.
func (p piece) may(quarters int) bool {
	return slices.ContainsFunc(p.Rotations, func(r number) bool {
		q, ok := r.quarters()
		return ok && q == quarters
	})
}

// A lay is a lay as it is written, one object a line.
type lay struct {
	Instance   string      `json:"instance"`
	Width      number      `json:"width"`
	Length     number      `json:"length"`
	Density    number      `json:"density"` // in percent, rounded; for reading only
	Seed       uint64      `json:"seed" noun:"zero"`
	Work       int         `json:"work" noun:"zero"`
	Placements []placement `json:"placements"`
}

// A placement is where the piece's own origin comes to lie after it is turned
// about that origin.
type placement struct {
	Piece    string `json:"piece"`
	Copy     int    `json:"copy"`
	Rotation number `json:"rotation"` // in degrees
	Flip     bool   `json:"flip"`
	X        number `json:"x"`
	Y        number `json:"y"`
}

// MarshalJSON writes the exact decimal as a JSON number.
func (n number) MarshalJSON() ([]byte, error) {
	r := n.Rat()
	digits, exact := r.FloatPrec()
	if !exact {
		return nil, fmt.Errorf("%s is no decimal", r)
	}
	return []byte(r.FloatString(digits)), nil
}

// write is a plan as a lay of the instance.
func (in instance) write(p layout.Plan) (lay, error) {
	density, err := units.ParseRatio(decimal(p.Density.Mul(units.RatioOf(100, 1)), 4))
	if err != nil {
		return lay{}, err
	}
	out := lay{Instance: in.Name, Width: in.Width, Length: numberOf(ratio(p.Lay)), Density: numberOf(density), Seed: p.Spec.Seed, Work: p.Spec.Work}
	for _, at := range p.Placements {
		one := in.Pieces[at.Piece]
		quarters := 0
		if at.Across {
			quarters += 3
		}
		if at.Half {
			quarters += 2
		}
		quarters %= 4
		if !one.may(quarters) { // a rectangle, the same either way
			quarters = (quarters + 2) % 4
		}
		x, y := one.corner(quarters)
		out.Placements = append(out.Placements, placement{Piece: one.ID, Copy: at.Copy, Rotation: numberOf(units.RatioOf(int64(quarters)*90, 1)),
			X: numberOf(ratio(at.Y).Sub(x)), Y: numberOf(ratio(at.X).Sub(y))})
	}
	return out, nil
}

// readLays reads a file of lays.
func readLays(r io.Reader) ([]lay, error) {
	lays, err := noun.ReadAll[lay](reader, r)
	if err != nil {
		return nil, fault.Under("lays", err)
	}
	return lays, nil
}

// layPath is the path of a lay in its file.
func layPath(i int) string { return fmt.Sprintf("lays[%d]", i) }

// read is a lay of the instance as placements.
func (in instance) read(l lay) ([]layout.Placement, error) {
	var a fault.Audit
	need(&a, "width", l.Width)
	if l.Width.given && l.Width != in.Width {
		a.Fault("width", l.Width.String(), in.Width.String()+", the width of the instance", fault.Conflict)
	}
	need(&a, "length", l.Length)
	if n := len(l.Placements); n > layout.MaxPieces {
		a.Count("placements", n, 1, layout.MaxPieces)
		return nil, a.Err()
	}
	at := make(map[string]int, len(in.Pieces))
	for i, p := range in.Pieces {
		at[p.ID] = i
	}
	out := make([]layout.Placement, 0, len(l.Placements))
	for i, one := range l.Placements {
		path := fmt.Sprintf("placements[%d].", i)
		k, ok := at[one.Piece]
		if !ok {
			a.Fault(path+"piece", fmt.Sprintf("%.60q", one.Piece), "a piece of the instance", fault.Unknown)
			continue
		}
		p := in.Pieces[k]
		quarters, ok := one.Rotation.quarters()
		if !one.Rotation.given {
			a.Fault(path+"rotation", "", shown(p.Rotations), fault.Missing)
		} else if !ok || !p.may(quarters) {
			a.Fault(path+"rotation", one.Rotation.String(), shown(p.Rotations), layout.ErrTurn)
		}
		if one.Flip {
			a.Fault(path+"flip", "true", "false: no piece may be turned over", layout.ErrTurn)
		}
		a.Count(path+"copy", one.Copy, 1, p.Qty)
		for _, c := range []struct {
			key   string
			value number
		}{{"x", one.X}, {"y", one.Y}} {
			if !c.value.given {
				a.Fault(path+c.key, "", "a number", fault.Missing)
			}
		}
		turns := (4 - quarters) % 4
		x, y := p.corner(quarters)
		place := layout.Placement{Piece: k, Copy: one.Copy, Across: turns&1 == 1, Half: turns&2 == 2,
			X: units.Inch.Of(1).Scale(one.Y.Add(y)), Y: units.Inch.Of(1).Scale(one.X.Add(x))}
		if _, _, rectangle := p.rectangle(); rectangle {
			place.Half = false
		}
		out = append(out, place)
	}
	return out, a.Err()
}
