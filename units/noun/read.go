package noun

import (
	"encoding"
	"errors"
	"fmt"
	"io"
	"reflect"
	"strconv"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// Zero is the fault of an explicit zero where zero means "not given".
const Zero fault.Kind = "zero means not given"

// A Reader reads Specs. The zero Reader asks for a unit in every length.
type Reader struct {
	Parser   units.Parser // for lengths
	Before   int          // how many lines stand before the text, for the places that faults name
	MaxBytes int          // how many bytes a text may have; the default is [MaxBytes]
	MaxNodes int          // how many values a text may have; the default is [MaxNodes]
}

// Read reads a Spec, or any other value of the library, from JSON that a person
// or a stranger wrote. The value that into points to is set where there is no
// fault. The error is [fault.Faults]: all of them, each with its path and its
// place in the text, at most [fault.MaxFaults].
//
// Read refuses more than encoding/json does: a key that is not known, that
// differs in case or that stands twice, null, text after the end, and an explicit
// zero in a field where zero means "not given". It takes the words of an
// enumeration in capitals, and with blanks in place of hyphens. The bounds of
// this package hold.
func Read(r io.Reader, into any) error { return Reader{}.Read(r, into) }

// Read reads as the function [Read] does, with the settings of the reader.
func (r Reader) Read(in io.Reader, into any) error {
	text, all, err := r.nodes(in, 1)
	if err != nil {
		return err
	}
	return r.fill(all[0], text, into)
}

// ReadAll reads JSON values that stand one after another, as [Reader.Read] reads
// one. The bounds hold for all of them together. The path of a fault begins with
// the number of its value, as in [2].edge.
func ReadAll[T any](r Reader, in io.Reader) ([]T, error) {
	text, nodes, err := r.nodes(in, -1)
	if err != nil {
		return nil, err
	}
	all := make([]T, len(nodes))
	for i, n := range nodes {
		if err := r.fill(n, text, &all[i]); err != nil {
			return nil, fault.Under("["+strconv.Itoa(i)+"]", err)
		}
	}
	return all, nil
}

// nodes reads so many JSON values, and the text they stand in.
func (r Reader) nodes(in io.Reader, count int) (text []byte, all []node, err error) {
	if text, err = io.ReadAll(io.LimitReader(in, int64(r.bytes())+1)); err != nil {
		return nil, nil, err
	}
	all, err = r.parse(text, count)
	return text, all, r.after(err)
}

// Pairs reads a Spec from pairs such as first=3/16 in, strip.each=12 in or
// gaps=[1, 2], with the same faults as Read but their places.
func (r Reader) Pairs(pairs []string, into any) error {
	n, err := pairNode(pairs)
	if err != nil {
		// What could be taken apart may have faults too; nothing is kept of it.
		scratch := reflect.New(reflect.TypeOf(into).Elem()).Interface()
		return append(fault.Under("", err), fault.Under("", r.fill(n, nil, scratch))...)
	}
	return r.fill(n, nil, into)
}

// after moves the places of faults down by the lines before the text.
func (r Reader) after(err error) error {
	var fs fault.Faults
	if r.Before > 0 && errors.As(err, &fs) {
		for _, f := range fs {
			var line, column int
			if _, scan := fmt.Sscanf(f.At, "line %d, column %d", &line, &column); scan == nil {
				f.At = fmt.Sprintf("line %d, column %d", line+r.Before, column)
			}
		}
	}
	return err
}

// fill puts n into what into points to, all or nothing.
func (r Reader) fill(n node, text []byte, into any) error {
	s := state{Reader: r, source: text}
	to := reflect.ValueOf(into).Elem()
	v := reflect.New(to.Type()).Elem()
	s.set("", false, n, v)
	if s.left > 0 {
		s.faults = append(s.faults, fault.More(s.left))
	}
	if len(s.faults) > 0 {
		return s.faults
	}
	to.Set(v)
	return nil
}

// state carries a reading: what it reads from, and the faults so far.
type state struct {
	Reader
	source []byte // the text, nil where there is none
	faults fault.Faults
	left   int // faults not told
}

func (s *state) fault(path string, n node, kind fault.Kind, limit string) {
	if len(s.faults) >= fault.MaxFaults {
		s.left++
		return
	}
	f := &fault.Fault{Path: path, Got: n.shown(), Kind: kind, Limit: limit}
	if s.source != nil && n.at > 0 {
		f.At = place(s.source, n.at, s.Before)
	}
	s.faults = append(s.faults, f)
}

// set puts n into v. Whether an explicit zero is an answer hangs on the field.
func (s *state) set(path string, zero bool, n node, v reflect.Value) {
	if patch, ok := v.Addr().Interface().(*Patch); ok {
		*patch = n.append(nil)
		return
	}
	if n.kind == nullNode {
		s.fault(path, n, fault.Form, "a value, or leave it out")
		return
	}
	switch to := v.Addr().Interface().(type) {
	case *units.Length:
		s.length(path, zero, n, to)
		return
	case *units.Given[units.Length]:
		var l units.Length
		s.length(path, true, n, &l)
		*to = units.Give(l)
		return
	case Choice:
		s.choice(path, n, to)
		return
	case keyed:
		s.keyed(path, n, to)
		return
	case encoding.TextUnmarshaler:
		s.text(path, zero, n, v, to)
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		s.object(path, n, v)
	case reflect.Slice, reflect.Array:
		s.list(path, zero, n, v)
	case reflect.String:
		if n.kind != stringNode {
			s.fault(path, n, fault.Form, "text in quotes")
			return
		}
		v.SetString(n.text)
	case reflect.Bool:
		if n.kind != boolNode && n.kind != stringNode || n.text != "true" && n.text != "false" {
			s.fault(path, n, fault.Form, "true or false")
			return
		}
		v.SetBool(n.text == "true")
	case reflect.Int, reflect.Int64, reflect.Uint64:
		s.whole(path, zero, n, v)
	default:
		s.fault(path, n, fault.Form, "a field that can be given")
	}
}

// scalar reports whether n is one text or number that is not too long to be a
// measure, with which every sum would be slow.
func (s *state) scalar(path string, n node, want string) bool {
	switch {
	case n.kind != stringNode && n.kind != numberNode:
		s.fault(path, n, fault.Form, want)
	case len(n.text) > MaxNumber:
		s.fault(path, n, fault.Range, "at most "+strconv.Itoa(MaxNumber)+" bytes")
	default:
		return true
	}
	return false
}

func (s *state) zero(path string, answer bool, n node) {
	if !answer {
		s.fault(path, n, Zero, "more than zero, or leave it out")
	}
}

func (s *state) length(path string, zero bool, n node, to *units.Length) {
	if !s.scalar(path, n, `a length in quotes, as "5/8 in"`) {
		return
	}
	l, err := s.Parser.Parse(n.text)
	if err != nil {
		s.parse(path, n, err)
		return
	}
	if l.IsZero() {
		s.zero(path, zero, n)
	}
	*to = l
}

// parse tells the fault of a text that was not read.
func (s *state) parse(path string, n node, err error) {
	var p *units.ParseError
	var f *fault.Fault
	switch {
	case errors.As(err, &f):
		s.fault(path, n, f.Kind, f.Want())
	case errors.As(err, &p):
		s.fault(path, n, fault.Form, p.Want+" (at byte "+strconv.Itoa(p.Offset)+", found "+p.Found+")")
	default:
		s.fault(path, n, fault.Form, err.Error())
	}
}

func (s *state) text(path string, zero bool, n node, v reflect.Value, to encoding.TextUnmarshaler) {
	if !s.scalar(path, n, "text in quotes") {
		return
	}
	if n.text == "" {
		s.fault(path, n, fault.Form, "a value, or leave it out")
		return
	}
	err := to.UnmarshalText([]byte(n.text))
	if err != nil && v.Kind() == reflect.Uint8 {
		err = to.UnmarshalText([]byte(fold(n.text)))
	}
	if err != nil {
		s.parse(path, n, err)
		return
	}
	if v.IsZero() {
		s.zero(path, zero, n)
	}
}

// fold is the word of an enumeration as it is kept: Flat Felled is flat-felled.
func fold(word string) string {
	return strings.Join(strings.FieldsFunc(strings.ToLower(word), func(r rune) bool { return r == ' ' || r == '-' || r == '_' }), "-")
}

func (s *state) whole(path string, zero bool, n node, v reflect.Value) {
	if !s.scalar(path, n, "a whole number") {
		return
	}
	if v.Kind() == reflect.Uint64 {
		k, err := strconv.ParseUint(n.text, 10, 64)
		if err != nil {
			s.fault(path, n, fault.Form, "a whole number of zero or more")
			return
		}
		v.SetUint(k)
	} else {
		k, err := strconv.ParseInt(n.text, 10, v.Type().Bits())
		if err != nil {
			s.fault(path, n, fault.Form, "a whole number")
			return
		}
		v.SetInt(k)
	}
	if v.IsZero() {
		s.zero(path, zero, n)
	}
}

func (s *state) list(path string, zero bool, n node, v reflect.Value) {
	if n.kind != arrayNode {
		s.fault(path, n, fault.Form, "a list")
		return
	}
	if v.Kind() == reflect.Slice {
		v.Set(reflect.MakeSlice(v.Type(), len(n.values), len(n.values)))
	} else if len(n.values) != v.Len() {
		s.fault(path, n, fault.Form, "a list of "+strconv.Itoa(v.Len()))
		return
	}
	for i, item := range n.values {
		s.set(path+"["+strconv.Itoa(i)+"]", zero, item, v.Index(i))
	}
}

// isObject reports whether n is an object whose keys stand once each.
func (s *state) isObject(path string, n node) bool {
	if n.kind != objectNode {
		s.fault(path, n, fault.Form, `an object, as {"name": ...}`)
		return false
	}
	seen := make(map[string]bool, len(n.keys))
	good := true
	for i, key := range n.keys {
		if seen[key] {
			s.fault(at(path, key), n.values[i], fault.Twice, "each key once")
			good = false
		}
		seen[key] = true
	}
	return good
}

// at is the path of a key as it was written, which may be any text.
func at(path, key string) string {
	if quoted := fault.Quote(key); quoted[1:len(quoted)-1] != key {
		key = quoted
	}
	return fault.Join(path, key)
}

func (s *state) object(path string, n node, v reflect.Value) {
	if !s.isObject(path, n) {
		return
	}
	all := members(v.Type())
	for i, key := range n.keys {
		known := false
		for _, m := range all {
			if m.key == key {
				known = true
				s.set(at(path, key), m.zero, n.values[i], v.FieldByIndex(m.index))
			}
		}
		if !known {
			s.fault(at(path, key), n.values[i], fault.Unknown, "one of "+strings.Join(keys(all), ", "))
		}
	}
}

// choice reads the kind, and then the value of that kind.
func (s *state) choice(path string, n node, to Choice) {
	if !s.isObject(path, n) {
		return
	}
	word, ok := n.take("kind")
	value := to.Begin(word)
	if value == nil {
		value = to.Begin(fold(word))
	}
	switch {
	case !ok:
		s.faults = append(s.faults, &fault.Fault{Path: fault.Join(path, "kind"), Kind: fault.Missing, Limit: kindList(to)})
		return
	case value == nil:
		s.fault(fault.Join(path, "kind"), node{text: word, at: n.at}, fault.Unknown, kindList(to))
		return
	}
	s.object(path, n, reflect.ValueOf(value).Elem())
	to.Choose(value)
}

func kindList(c Choice) string { return "one of " + strings.Join(c.Kinds(), ", ") }

func unknownKind(c Choice, word string) error {
	f := &fault.Fault{Path: "kind", Got: fault.Quote(word), Kind: fault.Unknown, Limit: kindList(c)}
	if word == "" {
		f.Got, f.Kind = "", fault.Missing
	}
	return fault.Faults{f}
}

// keyed reads an object whose keys are names, in order.
func (s *state) keyed(path string, n node, to keyed) {
	if !s.isObject(path, n) {
		return
	}
	for i, key := range n.keys {
		s.set(at(path, key), false, n.values[i], to.add(key))
	}
}
