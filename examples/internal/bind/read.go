package bind

import (
	"encoding"
	"errors"
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// A Reader reads Specs. The zero Reader asks for a unit in every length. An
// explicit zero is refused, since a Spec would take it for "not given", except
// in the fields where zero is an answer.
type Reader struct {
	Parser units.Parser // for lengths
}

// Read sets the fields of the struct that dst points to. The error is
// fault.Faults, their paths in the words of the input.
func (r Reader) Read(n Node, dst any) error {
	s := state{Reader: r}
	s.set("", "", n, reflect.ValueOf(dst).Elem())
	if s.left > 0 {
		s.faults = append(s.faults, more(s.left))
	}
	return s.faults.OrNil()
}

type state struct {
	Reader
	faults fault.Faults
	left   int
}

func (s *state) fault(path, got, limit string, kind fault.Kind) {
	if len(s.faults) >= MaxFault {
		s.left++
		return
	}
	s.faults = append(s.faults, &fault.Fault{Path: path, Got: clip(got), Limit: limit, Kind: kind})
}

func clip(s string) string {
	const most = 80
	if len(s) <= most {
		return s
	}
	return strings.ToValidUTF8(s[:most], "") + "..."
}

// set puts n into v. The name of the field, as package.Type.Field, decides about zero.
func (s *state) set(path, name string, n Node, v reflect.Value) {
	if n.kind == nullNode {
		s.fault(path, "null", "a value, or leave it out", fault.Form)
		return
	}
	if v.Type() == reflect.TypeFor[units.Length]() {
		s.length(path, name, n, v)
		return
	}
	if u, ok := v.Addr().Interface().(encoding.TextUnmarshaler); ok {
		s.text(path, name, n, v, u)
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		s.object(path, n, v)
	case reflect.Slice, reflect.Array:
		s.list(path, name, n, v)
	case reflect.String:
		if n.kind != stringNode {
			s.fault(path, n.shown(), "text in quotes", fault.Form)
			return
		}
		v.SetString(n.text)
	case reflect.Bool:
		b, err := strconv.ParseBool(n.text)
		if err != nil || n.kind != boolNode && n.kind != stringNode || n.text != "true" && n.text != "false" {
			s.fault(path, n.shown(), "true or false", fault.Form)
			return
		}
		v.SetBool(b)
	case reflect.Int, reflect.Int64, reflect.Uint64:
		s.whole(path, name, n, v)
	default:
		s.fault(path, n.shown(), "a field that can be given", fault.Form)
	}
}

func (n Node) shown() string {
	switch n.kind {
	case arrayNode, objectNode:
		return "a " + n.kind.String()
	case stringNode:
		return strconv.Quote(clip(n.text))
	}
	return n.text
}

func (s *state) zero(path, name, got string) {
	if !zeroAnswers(name) {
		s.fault(path, got, "more than zero, or leave it out", errExplicitZero)
	}
}

const errExplicitZero fault.Kind = "zero means not given"

// tooLong refuses a number of more digits than any measure has, with which every
// sum would be slow.
func (s *state) tooLong(path string, n Node) bool {
	if len(n.text) <= MaxNumber {
		return false
	}
	s.fault(path, n.shown(), "at most "+strconv.Itoa(MaxNumber)+" bytes", fault.Range)
	return true
}

func (s *state) length(path, name string, n Node, v reflect.Value) {
	if n.kind != stringNode && n.kind != numberNode {
		s.fault(path, n.shown(), "a length in quotes, as \"5/8 in\"", fault.Form)
		return
	}
	if s.tooLong(path, n) {
		return
	}
	l, err := s.Parser.Parse(n.text)
	if err != nil {
		s.parse(path, n, err)
		return
	}
	if l.IsZero() {
		s.zero(path, name, l.String())
	}
	v.Set(reflect.ValueOf(l))
}

func (s *state) parse(path string, n Node, err error) {
	var p *units.ParseError
	var f *fault.Fault
	if errors.As(err, &f) {
		s.fault(path, n.shown(), f.Want(), f.Kind)
		return
	}
	if errors.As(err, &p) {
		s.fault(path, n.shown(), p.Want+" (at byte "+strconv.Itoa(p.Offset)+", found "+p.Found+")", fault.Form)
		return
	}
	s.fault(path, n.shown(), err.Error(), fault.Form)
}

func (s *state) text(path, name string, n Node, v reflect.Value, u encoding.TextUnmarshaler) {
	if n.kind != stringNode && n.kind != numberNode {
		s.fault(path, n.shown(), "text in quotes", fault.Form)
		return
	}
	if n.text == "" {
		s.fault(path, `""`, "a value, or leave it out", fault.Form)
		return
	}
	if s.tooLong(path, n) {
		return
	}
	if err := u.UnmarshalText([]byte(n.text)); err != nil {
		s.parse(path, n, err)
		return
	}
	if v.IsZero() {
		s.zero(path, name, n.text)
	}
}

func (s *state) whole(path, name string, n Node, v reflect.Value) {
	if n.kind != stringNode && n.kind != numberNode {
		s.fault(path, n.shown(), "a whole number", fault.Form)
		return
	}
	if v.Kind() == reflect.Uint64 {
		k, err := strconv.ParseUint(n.text, 10, 64)
		if err != nil {
			s.fault(path, n.shown(), "a whole number of zero or more", fault.Form)
			return
		}
		v.SetUint(k)
	} else {
		k, err := strconv.ParseInt(n.text, 10, v.Type().Bits())
		if err != nil {
			s.fault(path, n.shown(), "a whole number", fault.Form)
			return
		}
		v.SetInt(k)
	}
	if v.IsZero() {
		s.zero(path, name, n.text)
	}
}

func (s *state) list(path, name string, n Node, v reflect.Value) {
	if n.kind != arrayNode {
		s.fault(path, n.shown(), "a list", fault.Form)
		return
	}
	if v.Kind() == reflect.Slice {
		v.Set(reflect.MakeSlice(v.Type(), len(n.values), len(n.values)))
	} else if len(n.values) != v.Len() {
		s.fault(path, strconv.Itoa(len(n.values))+" values", "a list of "+strconv.Itoa(v.Len()), fault.Form)
		return
	}
	for i, item := range n.values {
		s.set(path+"["+strconv.Itoa(i)+"]", name, item, v.Index(i))
	}
}

func (s *state) object(path string, n Node, v reflect.Value) {
	if n.kind != objectNode {
		s.fault(path, n.shown(), "an object, as {\"name\": ...}", fault.Form)
		return
	}
	seen := make(map[string]bool, len(n.keys))
	for i, key := range n.keys {
		at := clip(key)
		if path != "" {
			at = path + "." + at
		}
		f, ok := field(v.Type(), key)
		switch {
		case seen[key]:
			s.fault(at, n.values[i].shown(), "each key once", fault.Twice)
		case !ok:
			s.fault(at, n.values[i].shown(), "one of "+strings.Join(Keys(v.Type()), ", "), fault.Unknown)
		default:
			s.set(at, v.Type().String()+"."+f.Name, n.values[i], v.FieldByIndex(f.Index))
		}
		seen[key] = true
	}
}

// field finds the field of a struct by its key; the case must be right.
func field(t reflect.Type, key string) (reflect.StructField, bool) {
	for i := range t.NumField() {
		if f := t.Field(i); f.IsExported() && keyOf(f) == key {
			return f, true
		}
	}
	return reflect.StructField{}, false
}

// keyOf is the key of a field: what its tag for JSON says, else [Key] of its name.
func keyOf(f reflect.StructField) string {
	if tag, _, _ := strings.Cut(f.Tag.Get("json"), ","); tag != "" {
		return tag
	}
	return Key(f.Name)
}

// Key is the key of a field that has no tag: its name with the first letter lowered.
func Key(name string) string {
	if name == "" {
		return ""
	}
	r, n := utf8.DecodeRuneInString(name)
	return string(unicode.ToLower(r)) + name[n:]
}

// Keys are the keys of a struct, in the order of its fields.
func Keys(t reflect.Type) []string {
	var keys []string
	for i := range t.NumField() {
		if f := t.Field(i); f.IsExported() {
			keys = append(keys, keyOf(f))
		}
	}
	return keys
}

// Lower puts the paths of a Plan's faults into the words of the input:
// Takes[2].Taken becomes takes[2].taken. It keeps as many of them as [Most]. An
// error that is no fault.Faults stays as it is.
func Lower(err error) error {
	var faults fault.Faults
	if !errors.As(Most(err), &faults) {
		return err
	}
	out := make(fault.Faults, len(faults))
	for i, f := range faults {
		g := *f
		parts := strings.Split(g.Path, ".")
		for k, p := range parts {
			parts[k] = Key(p)
		}
		g.Path = strings.Join(parts, ".")
		out[i] = &g
	}
	return out
}

// Most keeps the first [MaxFault] faults of an error and counts the rest, where
// that is more than one.
func Most(err error) error {
	var faults fault.Faults
	if !errors.As(err, &faults) || len(faults) <= MaxFault+1 {
		return err
	}
	return append(slices.Clip(faults[:MaxFault]), more(len(faults)-MaxFault))
}

// more counts the faults that are left out.
func more(n int) *fault.Fault {
	return &fault.Fault{Got: fmt.Sprintf("%d faults more", n), Kind: fault.Form}
}
