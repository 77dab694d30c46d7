package noun

import (
	"reflect"

	"example.com/clothyard/units"
)

// Tape is the tape that the defaults of a Spec follow: the one in its field Tape, or,
// where that is not given, the one on whose marks most of the lengths lie that are given
// anywhere in it, as [units.Tape.Or] counts them.
func Tape(spec any) units.Tape {
	v := reflect.ValueOf(spec)
	var given units.Tape
	if f := v.FieldByName("Tape"); f.IsValid() {
		given, _ = f.Interface().(units.Tape)
	}
	if given != 0 {
		return given
	}
	return given.Or(lengths(nil, v)...)
}

// lengths adds the lengths that stand in v, and in what it is made of, to those there are.
func lengths(all []units.Length, v reflect.Value) []units.Length {
	switch x := v.Interface().(type) {
	case units.Length:
		return append(all, x)
	case units.Given[units.Length]:
		return append(all, x.Or(units.Length{}))
	}
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			if v.Type().Field(i).IsExported() {
				all = lengths(all, v.Field(i))
			}
		}
	case reflect.Slice:
		for i := range v.Len() {
			all = lengths(all, v.Index(i))
		}
	case reflect.Interface, reflect.Pointer:
		if !v.IsNil() {
			all = lengths(all, v.Elem())
		}
	}
	return all
}
