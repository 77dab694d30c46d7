package noun

import (
	"encoding/json"
	"iter"
	"reflect"
	"slices"
)

// A Choice holds one value of several kinds. In JSON it is the object of the
// value with one key more, kind, which says which it is: {"kind": "french",
// "first": "3/16 in"}. seam.Any and hem.Any are choices.
type Choice interface {
	Kinds() []string       // the kinds there are
	Begin(kind string) any // a pointer to a new value of a kind; nil where there is no such kind
	Choose(value any)      // takes a value that Begin gave, once it is filled
	Chosen() (string, any) // the kind and the value held; nothing where none is
}

// MarshalChoice is the JSON of a choice, null where nothing is chosen.
func MarshalChoice(c Choice) ([]byte, error) {
	kind, value := c.Chosen()
	if value == nil {
		return []byte("null"), nil
	}
	body, err := json.Marshal(value)
	if err != nil {
		return nil, err
	}
	name, err := json.Marshal(kind)
	if err != nil {
		return nil, err
	}
	head := append([]byte(`{"kind":`), name...)
	if len(body) > len("{}") {
		head = append(head, ',')
	}
	return slices.Concat(head, body[1:]), nil
}

// UnmarshalChoice reads what [MarshalChoice] wrote. To read what a person wrote
// use [Read].
func UnmarshalChoice(c Choice, text []byte) error {
	if string(text) == "null" {
		return nil
	}
	var head struct {
		Kind string `json:"kind"`
	}
	if err := json.Unmarshal(text, &head); err != nil {
		return err
	}
	value := c.Begin(head.Kind)
	if value == nil {
		return unknownKind(c, head.Kind)
	}
	if err := json.Unmarshal(text, value); err != nil {
		return err
	}
	c.Choose(value)
	return nil
}

// A Kind is one kind of a [Choice].
type Kind[T any] struct {
	Name  string // in JSON
	Title string // as people say it
	Empty T      // a value of which nothing is given
}

// Kinds are the kinds of a choice, by which it finds what it holds. T is the interface
// that all of them have.
type Kinds[T any] []Kind[T]

// Of is the kind of a value. It is false for a value that is nil or of no kind.
func (ks Kinds[T]) Of(value T) (Kind[T], bool) {
	for _, k := range ks {
		if reflect.TypeOf(k.Empty) == reflect.TypeOf(value) {
			return k, true
		}
	}
	return Kind[T]{}, false
}

// Names are what [Choice.Kinds] gives.
func (ks Kinds[T]) Names() []string {
	names := make([]string, len(ks))
	for i, k := range ks {
		names[i] = k.Name
	}
	return names
}

// Begin is [Choice.Begin].
func (ks Kinds[T]) Begin(name string) any {
	for _, k := range ks {
		if k.Name == name {
			return Pointer(k.Empty)
		}
	}
	return nil
}

// Held is the value that a pointer from Begin or [Pointer] points to. It is false for a
// pointer to a value of no kind.
func (ks Kinds[T]) Held(pointer any) (value T, ok bool) {
	v := reflect.ValueOf(pointer)
	if v.Kind() != reflect.Pointer || v.IsNil() {
		return value, false
	}
	if value, ok = v.Elem().Interface().(T); ok {
		_, ok = ks.Of(value)
	}
	return value, ok
}

// All yields a value of each kind, of which nothing is given.
func (ks Kinds[T]) All() iter.Seq[T] {
	return func(yield func(T) bool) {
		for _, k := range ks {
			if !yield(k.Empty) {
				return
			}
		}
	}
}

// Pointer is a pointer to a copy of a value.
func Pointer(value any) any {
	p := reflect.New(reflect.TypeOf(value))
	p.Elem().Set(reflect.ValueOf(value))
	return p.Interface()
}
