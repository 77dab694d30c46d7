package nountest

import (
	"errors"
	"fmt"
	"iter"
	"reflect"
	"strings"

	"example.com/clothyard/units/noun"
)

// Row is a [Sum] that finds the one row of a table that is given by some of its fields,
// and answers with all of them, and with what its methods tell. A field is named by its
// key. In a text, | stands for a semicolon, which parts what is given.
func Row[R any](rows iter.Seq[R]) Sum {
	return func(given map[string]string) (map[string]any, error) {
		var found []map[string]any
	next:
		for r := range rows {
			cells := cellsOf(reflect.ValueOf(r))
			for name, want := range given {
				cell, ok := cells[name]
				if !ok {
					return nil, fmt.Errorf("a row has no %s", name)
				}
				if !reads(cell, strings.ReplaceAll(want, "|", ";")) {
					continue next
				}
			}
			found = append(found, cells)
		}
		if len(found) != 1 {
			return nil, fmt.Errorf("%d rows found, want 1", len(found))
		}
		return found[0], nil
	}
}

// reads reports whether text is a cell's value.
func reads(cell any, text string) bool {
	v, err := read(reflect.ValueOf(cell), text)
	return errors.Is(err, errKind) && fmt.Sprint(cell) == text || err == nil && v == cell
}

// cellsOf are the fields of a row, and what its methods tell that ask for nothing.
func cellsOf(row reflect.Value) map[string]any {
	cells := map[string]any{}
	for i := range row.NumMethod() {
		if m := row.Method(i); m.Type().NumIn() == 0 && m.Type().NumOut() == 1 {
			cells[noun.Key(row.Type().Method(i).Name)] = m.Call(nil)[0].Interface()
		}
	}
	for i := range row.NumField() {
		cell := row.Field(i)
		value := cell.Interface()
		if cell.Kind() == reflect.Array {
			value = strings.Trim(fmt.Sprint(value), "[]")
		}
		cells[noun.Key(row.Type().Field(i).Name)] = value
	}
	return cells
}
