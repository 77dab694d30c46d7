package noun

import (
	"bytes"
	"encoding/json"
	"fmt"
	"reflect"
)

// A Map is an object in JSON whose keys are names and keep their order.
type Map[T any] []Item[T]

// An Item is a value of a [Map] and its name.
type Item[T any] struct {
	Name  string // the key, which stands once
	Value T      // what it stands for
}

// Get is the value of a name.
func (m Map[T]) Get(name string) (value T, ok bool) {
	for _, it := range m {
		if it.Name == name {
			return it.Value, true
		}
	}
	return value, false
}

// MarshalJSON is an object, its keys in the order of m.
func (m Map[T]) MarshalJSON() ([]byte, error) {
	var b bytes.Buffer
	b.WriteByte('{')
	for i, it := range m {
		if i > 0 {
			b.WriteByte(',')
		}
		for j, part := range [...]any{it.Name, it.Value} {
			text, err := json.Marshal(part)
			if err != nil {
				return nil, err
			}
			if j > 0 {
				b.WriteByte(':')
			}
			b.Write(text)
		}
	}
	b.WriteByte('}')
	return b.Bytes(), nil
}

// UnmarshalJSON reads an object and keeps the order of its keys.
func (m *Map[T]) UnmarshalJSON(text []byte) error {
	d := json.NewDecoder(bytes.NewReader(text))
	if t, err := d.Token(); err != nil || t != json.Delim('{') {
		return fmt.Errorf("noun: a map is an object")
	}
	out := Map[T]{}
	for d.More() {
		key, err := d.Token()
		if err != nil {
			return err
		}
		it := Item[T]{Name: key.(string)}
		if err := d.Decode(&it.Value); err != nil {
			return err
		}
		out = append(out, it)
	}
	*m = out
	return nil
}

// keyed is a Map of any type: add appends a name and gives its value to be set.
type keyed interface {
	add(name string) reflect.Value
	element() reflect.Type
}

func (m *Map[T]) add(name string) reflect.Value {
	*m = append(*m, Item[T]{Name: name})
	return reflect.ValueOf(&(*m)[len(*m)-1].Value).Elem()
}

func (*Map[T]) element() reflect.Type { return reflect.TypeFor[T]() }
