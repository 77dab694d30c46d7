package nountest

import (
	"encoding"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"maps"
	"os"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/clothyard/units/source"
)

// The first line of a file of printed figures. Each line below it has one figure:
//
//	sizes,shirt,Least,16,button-page,page 3,read
//
// A row is named by its words: its texts and names of enumerations, joined by
// commas. Where it has none its first figure names it. The second row of the same
// name and source in a table has " (2)" after it. The column is the field of the
// row. A row without a figure has one line in which column and figure are empty.
const columns = "table,row,column,figure,source,place,known"

// Tables compares tables with the figures as the sources print them, which stand
// in the file at path. Each table is an iterator over rows that are structs, by
// its name in the file. It fails for a figure that differs, a figure of a row that
// no line states, a line that no row answers, another source, place or label of
// knowledge, a source that is not in the list, and for a file or table of nothing.
// Zero is no figure and needs no line. A field Note is not compared.
func Tables(t *testing.T, path string, tables map[string]any) {
	t.Helper()
	file, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	for _, fault := range compare(file, tables) {
		t.Errorf("%s: %s", path, fault)
	}
}

// A key names a row.
type key struct{ table, row, source string }

// A row is a row of a table, taken apart.
type row struct {
	figures      map[string]reflect.Value
	place, known string
	placed       bool            // the row has a field for the place
	stated       map[string]bool // by a line of the file; "" once any line names the row
}

func compare(file io.Reader, tables map[string]any) (faults []string) {
	fault := func(format string, args ...any) { faults = append(faults, fmt.Sprintf(format, args...)) }
	rows, order, err := takeApart(tables)
	if err != nil {
		return []string{err.Error()}
	}
	lines, err := csv.NewReader(file).ReadAll()
	if err != nil {
		return []string{err.Error()}
	}
	if len(lines) < 2 || strings.Join(lines[0], ",") != columns {
		return []string{"no lines under " + columns}
	}
	for i, l := range lines[1:] {
		at := fmt.Sprintf("line %d: %s", i+2, strings.Join(l, ","))
		k, column, figure, place, known := key{l[0], l[1], l[4]}, l[2], l[3], l[5], l[6]
		if _, ok := source.Lookup(k.source); !ok && (k.source != "" || known != source.Practice.String()) {
			fault("%s: the source is not in the list", at)
		}
		r, ok := rows[k]
		if !ok {
			fault("%s: no row answers", at)
			continue
		}
		if r.placed && place != r.place {
			fault("%s: the row has the place %q", at, r.place)
		}
		if known != r.known {
			fault("%s: the row is known as %s", at, r.known)
		}
		if r.stated[column] {
			fault("%s: stated twice", at)
		}
		r.stated[""], r.stated[column] = true, true
		v, ok := r.figures[column]
		switch want, err := read(v, figure); {
		case column == "" && figure == "" && !r.any():
		case !ok:
			fault("%s: the row has no such column", at)
		case err != nil:
			fault("%s: %v", at, err)
		case want != v.Interface():
			fault("%s: the row has %v", at, v)
		}
	}
	for _, k := range order {
		r := rows[k]
		if !r.stated[""] {
			fault("%s,%s,%s: no line states the row", k.table, k.row, k.source)
			continue
		}
		for _, column := range slices.Sorted(maps.Keys(r.figures)) {
			if v := r.figures[column]; !v.IsZero() && !r.stated[column] {
				fault("%s,%s,%s: no line states %s, %v", k.table, k.row, k.source, column, v)
			}
		}
	}
	return faults
}

// any reports whether the row has a figure.
func (r row) any() bool {
	for _, v := range r.figures {
		if !v.IsZero() {
			return true
		}
	}
	return false
}

// takeApart names every row of the tables and takes its figures.
func takeApart(tables map[string]any) (rows map[key]row, order []key, err error) {
	rows = map[key]row{}
	for _, name := range slices.Sorted(maps.Keys(tables)) {
		table := tables[name]
		v := reflect.ValueOf(table)
		if v.Kind() != reflect.Func || !v.Type().CanSeq() {
			return nil, nil, fmt.Errorf("%s: %T is no iterator", name, table)
		}
		n := len(order)
		for v := range v.Seq() {
			k, r, err := split(v)
			if err != nil {
				return nil, nil, fmt.Errorf("%s: %w", name, err)
			}
			k.table = name
			for first, n := k.row, 2; rows[k].figures != nil; n++ {
				k.row = fmt.Sprintf("%s (%d)", first, n)
			}
			rows[k], order = r, append(order, k)
		}
		if len(order) == n {
			return nil, nil, errors.New(name + ": a table of nothing")
		}
	}
	return rows, order, nil
}

// split takes one row apart. The place is the field At where there is one, as
// Place is then a word of the row.
func split(v reflect.Value) (k key, r row, err error) {
	if v.Kind() != reflect.Struct {
		return k, r, fmt.Errorf("a row is %v, no struct", v.Type())
	}
	r = row{figures: map[string]reflect.Value{}, stated: map[string]bool{}}
	at := "Place"
	if v.FieldByName("At").IsValid() {
		at = "At"
	}
	var words []string
	first := ""
	for i := range v.NumField() {
		name, f := v.Type().Field(i).Name, v.Field(i)
		if !f.CanInterface() {
			return k, r, fmt.Errorf("%s is not exported", name)
		}
		if c, ok := f.Interface().(source.Cite); ok {
			k.source, r.place, r.known, r.placed = c.ID, c.Place, c.Known.String(), true
			continue
		}
		switch name {
		case "Note":
			continue
		case "Source":
			k.source = f.String()
			continue
		case at:
			r.place, r.placed = f.String(), true
			continue
		case "Known":
			r.known = fmt.Sprint(f)
			continue
		}
		if _, err := read(f, ""); err == errKind {
			if words, err = say(words, f); err != nil {
				return k, r, fmt.Errorf("%s: %w", name, err)
			}
			continue
		}
		r.figures[name] = f
		if first == "" {
			first = fmt.Sprint(f)
		}
	}
	if k.row = strings.Join(words, ", "); k.row == "" {
		k.row = first
	}
	return k, r, nil
}

// say adds the words of a field: a text, the name of a value of an enumeration,
// or several of them.
func say(words []string, f reflect.Value) ([]string, error) {
	switch _, named := f.Interface().(fmt.Stringer); {
	case f.IsZero():
		return words, nil
	case f.Kind() == reflect.String, named:
		return append(words, fmt.Sprint(f)), nil
	case f.Kind() == reflect.Array:
		for i := range f.Len() {
			var err error
			if words, err = say(words, f.Index(i)); err != nil {
				return nil, err
			}
		}
		return words, nil
	}
	return nil, fmt.Errorf("%v is neither figure nor word", f.Type())
}

var errKind = errors.New("no figure")

// read reads a figure of the type of f: a whole number, true, or what reads itself
// from text and is a struct, as lengths and ratios do. It is errKind for a field
// that holds none.
func read(f reflect.Value, figure string) (any, error) {
	if !f.IsValid() {
		return nil, errKind
	}
	switch _, named := f.Interface().(fmt.Stringer); {
	case f.Kind() == reflect.Bool:
		return strconv.ParseBool(figure)
	case f.Kind() == reflect.Int:
		return strconv.Atoi(figure)
	case f.Kind() == reflect.Struct && named:
		p := reflect.New(f.Type())
		u, ok := p.Interface().(encoding.TextUnmarshaler)
		if !ok {
			return nil, errKind
		}
		err := u.UnmarshalText([]byte(figure))
		return p.Elem().Interface(), err
	}
	return nil, errKind
}
