package noun

import (
	"reflect"
	"slices"

	"example.com/clothyard/units/fault"
)

// Assumed are the keys of the fields in which a Spec as filled with defaults differs
// from the Spec before, in the order of the fields. A field of a part is named with it,
// as in strip.allowance, one of a list once for all its entries.
func Assumed[S any](before, filled S) []string {
	return assumed(nil, "", reflect.ValueOf(before), reflect.ValueOf(filled))
}

func assumed(keys []string, path string, before, filled reflect.Value) []string {
	t := filled.Type()
	switch {
	case t.Kind() == reflect.Slice && before.Len() == filled.Len():
		for i := range filled.Len() {
			keys = assumed(keys, path, before.Index(i), filled.Index(i))
		}
	case t.Kind() == reflect.Struct && !isText(t) && !hides(t):
		for _, m := range members(t) {
			keys = assumed(keys, fault.Join(path, m.key), before.FieldByIndex(m.index), filled.FieldByIndex(m.index))
		}
	case !slices.Contains(keys, path) && !reflect.DeepEqual(before.Interface(), filled.Interface()):
		keys = append(keys, path)
	}
	return keys
}

// hides reports whether a struct has fields that are not exported, so that only the
// whole of it can be compared.
func hides(t reflect.Type) bool {
	for i := range t.NumField() {
		if !t.Field(i).IsExported() {
			return true
		}
	}
	return false
}
