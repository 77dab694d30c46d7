package noun

import (
	"encoding/json"
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

// Alike reports whether two values are of one type, so that a choice finds which of its
// kinds it holds.
func Alike(a, b any) bool { return reflect.TypeOf(a) == reflect.TypeOf(b) }

// Empty is a pointer to an empty value of the type of like, as [Choice] begins with.
func Empty(like any) any { return reflect.New(reflect.TypeOf(like)).Interface() }

// Held is the value that such a pointer points to.
func Held(pointer any) any { return reflect.ValueOf(pointer).Elem().Interface() }
