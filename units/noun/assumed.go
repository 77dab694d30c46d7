package noun

import "reflect"

// Assumed are the keys of the fields in which a Spec as filled with defaults differs
// from the Spec before, in the order of the fields.
func Assumed[S any](before, filled S) (keys []string) {
	b, f := reflect.ValueOf(before), reflect.ValueOf(filled)
	for _, m := range members(f.Type()) {
		if !reflect.DeepEqual(b.FieldByIndex(m.index).Interface(), f.FieldByIndex(m.index).Interface()) {
			keys = append(keys, m.key)
		}
	}
	return keys
}
