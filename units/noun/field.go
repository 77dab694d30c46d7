package noun

import (
	"encoding"
	"iter"
	"reflect"
	"strings"
	"unicode"
	"unicode/utf8"
)

// A member is a field of a struct as JSON has it: the fields of an embedded
// struct are members of the struct round it.
type member struct {
	key   string
	index []int
	field reflect.StructField
	zero  bool // an explicit zero may be given
}

// members are the members of a struct, in order.
func members(t reflect.Type) []member {
	var out []member
	for i := range t.NumField() {
		f := t.Field(i)
		if !f.IsExported() {
			continue
		}
		key, _, _ := strings.Cut(f.Tag.Get("json"), ",")
		if key == "-" {
			continue
		}
		if f.Anonymous && key == "" && f.Type.Kind() == reflect.Struct {
			for _, m := range members(f.Type) {
				m.index = append([]int{i}, m.index...)
				out = append(out, m)
			}
			continue
		}
		if key == "" {
			key = Key(f.Name)
		}
		out = append(out, member{key, []int{i}, f, f.Tag.Get("noun") == "zero"})
	}
	return out
}

// Key is the key of a field in JSON: its name with the first letter lowered.
func Key(name string) string {
	r, n := utf8.DecodeRuneInString(name)
	return string(unicode.ToLower(r)) + name[n:]
}

// Keys are the keys of a struct in JSON, in order.
func Keys(of any) []string {
	t := reflect.TypeOf(of)
	if t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	return keys(members(t))
}

// Values yields the fields of a struct by their keys, in order.
func Values(of any) iter.Seq2[string, any] {
	return func(yield func(string, any) bool) {
		v := reflect.ValueOf(of)
		for _, m := range members(v.Type()) {
			if !yield(m.key, v.FieldByIndex(m.index).Interface()) {
				return
			}
		}
	}
}

func keys(all []member) []string {
	names := make([]string, len(all))
	for i, m := range all {
		names[i] = m.key
	}
	return names
}

// isText reports whether a type is read from one text.
func isText(t reflect.Type) bool {
	return reflect.PointerTo(t).Implements(reflect.TypeFor[encoding.TextUnmarshaler]())
}
