package bind

import (
	"encoding"
	"encoding/json"
	"fmt"
	"reflect"
	"strconv"
	"strings"
	"unicode/utf16"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// Append writes v as JSON: lengths and other amounts as their exact text, keys
// as [Key] makes them, in the order of the fields, every field of a struct. But
// what is zero in a field named Spec is left out, so that the Spec can be given
// as it stands. It fails only for an amount whose exact text is too long to be
// read back.
func Append(b []byte, v any) ([]byte, error) { return appendValue(b, reflect.ValueOf(v), false) }

// AppendFields writes the fields of a struct, without the braces round them, and
// then what it and its field Spec can list; see [lists].
func AppendFields(b []byte, v any) ([]byte, error) {
	b, err := appendFields(b, reflect.ValueOf(v), false)
	for _, l := range lists(v) {
		if err != nil {
			break
		}
		b = append(quote(append(b, ','), l.key), ':')
		b, err = appendValue(b, l.items, false)
	}
	return b, err
}

// A list is what a method without arguments lists, such as the marks of a row of
// buttons or the remedies of an assembly.
type list struct {
	key   string
	items reflect.Value // a slice
}

// lists calls the methods of a Plan, and of its Spec, that take nothing and give
// an iterator, or a slice and an error. A pair is a list of two; what follows an
// error is left out, since the Plan itself has told of it.
func lists(v any) []list {
	plan := reflect.ValueOf(v)
	var out []list
	for _, from := range [...]reflect.Value{plan, plan.FieldByName("Spec")} {
		if !from.IsValid() {
			continue
		}
		for i := range from.NumMethod() {
			m := from.Method(i)
			if m.Type().NumIn() > 0 {
				continue
			}
			if items, ok := listed(m); ok {
				out = append(out, list{noun.Key(from.Type().Method(i).Name), reflect.ValueOf(items)})
			}
		}
	}
	return out
}

func listed(m reflect.Value) (items []any, ok bool) {
	t := m.Type()
	items = []any{}
	switch {
	case t.NumOut() == 1 && t.Out(0).Kind() == reflect.Func && t.Out(0).CanSeq2():
		for a, b := range m.Call(nil)[0].Seq2() {
			if err, failed := b.Interface().(error); failed {
				return items, err == nil
			}
			if b.Kind() == reflect.Interface {
				items = append(items, a.Interface()) // a nil error
				continue
			}
			items = append(items, []any{a.Interface(), b.Interface()})
		}
		return items, true
	case t.NumOut() == 1 && t.Out(0).Kind() == reflect.Func && t.Out(0).CanSeq():
		for a := range m.Call(nil)[0].Seq() {
			items = append(items, a.Interface())
		}
		return items, true
	case t.NumOut() == 2 && t.Out(0).Kind() == reflect.Slice && t.Out(0).Elem().Kind() == reflect.Struct:
		out := m.Call(nil)
		for i := range out[0].Len() {
			items = append(items, out[0].Index(i).Interface())
		}
		return items, out[1].IsNil()
	}
	return nil, false
}

// appendValue writes v; in a Spec what is zero is not given.
func appendValue(b []byte, v reflect.Value, spec bool) ([]byte, error) {
	if v.Kind() == reflect.Interface {
		v = v.Elem()
	}
	if m, ok := v.Interface().(encoding.TextMarshaler); ok {
		t, err := m.MarshalText()
		if err != nil {
			return b, err
		}
		return quote(b, string(t)), nil
	}
	if m, ok := v.Interface().(json.Marshaler); ok {
		t, err := m.MarshalJSON()
		return append(b, t...), err
	}
	switch v.Kind() {
	case reflect.Struct:
		b, err := appendFields(append(b, '{'), v, spec)
		return append(b, '}'), err
	case reflect.Slice, reflect.Array:
		b = append(b, '[')
		for i := range v.Len() {
			if i > 0 {
				b = append(b, ',')
			}
			var err error
			if b, err = appendValue(b, v.Index(i), spec); err != nil {
				return b, err
			}
		}
		return append(b, ']'), nil
	case reflect.Bool:
		return strconv.AppendBool(b, v.Bool()), nil
	case reflect.Int, reflect.Int8, reflect.Int16, reflect.Int32, reflect.Int64:
		return strconv.AppendInt(b, v.Int(), 10), nil
	case reflect.Uint, reflect.Uint8, reflect.Uint16, reflect.Uint32, reflect.Uint64:
		return strconv.AppendUint(b, v.Uint(), 10), nil
	case reflect.String:
		return quote(b, v.String()), nil
	}
	return append(b, "null"...), nil
}

func appendFields(b []byte, v reflect.Value, spec bool) ([]byte, error) {
	first := true
	for i := range v.NumField() {
		f := v.Type().Field(i)
		if !f.IsExported() || spec && v.Field(i).IsZero() {
			continue
		}
		if !first {
			b = append(b, ',')
		}
		first = false
		b = append(quote(b, keyOf(f)), ':')
		var err error
		if b, err = appendValue(b, v.Field(i), spec || f.Name == "Spec"); err != nil {
			return b, err
		}
	}
	return b, nil
}

// quote writes a string. What is not fit to print is escaped, so that it reaches
// no terminal and is read back as it was.
func quote(b []byte, s string) []byte {
	// A string always marshals: bytes that are no text are replaced.
	t, _ := json.Marshal(s)
	if fault.Visible(string(t)) == string(t) {
		return append(b, t...)
	}
	for _, r := range string(t) {
		if c := string(r); fault.Visible(c) == c {
			b = append(b, c...)
			continue
		}
		for _, u := range utf16.Encode([]rune{r}) {
			b = fmt.Appendf(b, `\u%04x`, u)
		}
	}
	return b
}

// A Figure is one field of a Plan, a field of a field with a dot.
type Figure struct{ Path, Text string }

// Figures are the fields of a Plan that are not empty or zero, in order, except
// those of the name given, and then what it can list; see [lists].
func Figures(v any, except string) ([]Figure, error) {
	out, err := figures(nil, "", reflect.ValueOf(v), except)
	for _, l := range lists(v) {
		if err != nil {
			break
		}
		out, err = figures(out, l.key, l.items, except)
	}
	return out, err
}

func figures(out []Figure, path string, v reflect.Value, except string) ([]Figure, error) {
	if v.Kind() == reflect.Interface {
		v = v.Elem()
	}
	switch x := v.Interface().(type) {
	case encoding.TextMarshaler:
		t, err := x.MarshalText()
		return append(out, Figure{path, string(t)}), err
	case []string:
		return append(out, Figure{path, strings.Join(x, ", ")}), nil
	}
	switch v.Kind() {
	case reflect.Struct:
		for i := range v.NumField() {
			f := v.Type().Field(i)
			if !f.IsExported() || f.Name == except || v.Field(i).IsZero() {
				continue
			}
			at := keyOf(f)
			if path != "" {
				at = path + "." + at
			}
			var err error
			if out, err = figures(out, at, v.Field(i), except); err != nil {
				return out, err
			}
		}
		return out, nil
	case reflect.Slice:
		for i := range v.Len() {
			var err error
			if out, err = figures(out, path+"["+strconv.Itoa(i)+"]", v.Index(i), except); err != nil {
				return out, err
			}
		}
		return out, nil
	}
	b, err := appendValue(nil, v, false)
	return append(out, Figure{path, strings.Trim(string(b), `"`)}), err
}

// keyOf is the key of a field: what its tag for JSON says, else its name with the
// first letter lowered.
func keyOf(f reflect.StructField) string {
	if tag, _, _ := strings.Cut(f.Tag.Get("json"), ","); tag != "" {
		return tag
	}
	return noun.Key(f.Name)
}
