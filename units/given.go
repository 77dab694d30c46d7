package units

import "encoding"

// A Given is a value that may be left out, where zero is an answer and is not
// what stands when nothing is given: a hem may be turned up by 0 in, and where
// nothing is said by what the table has. The zero Given is "not given".
//
// It marshals as its value does.
type Given[T interface {
	comparable
	encoding.TextMarshaler
}] struct {
	value T
	given bool
}

// Give is v, given.
func Give[T interface {
	comparable
	encoding.TextMarshaler
}](v T) Given[T] {
	return Given[T]{v, true}
}

// Get is the value, and whether it was given.
func (g Given[T]) Get() (v T, given bool) { return g.value, g.given }

// Or is the value given, or v where none was.
func (g Given[T]) Or(v T) T {
	if g.given {
		return g.value
	}
	return v
}

// IsZero reports whether no value was given.
func (g Given[T]) IsZero() bool { return !g.given }

// MarshalText is the text of the value, empty where none was given.
func (g Given[T]) MarshalText() ([]byte, error) {
	if !g.given {
		return nil, nil
	}
	return g.value.MarshalText()
}

// UnmarshalText reads a value as its type does; empty text is "not given".
func (g *Given[T]) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*g = Given[T]{}
		return nil
	}
	var v T
	if err := any(&v).(encoding.TextUnmarshaler).UnmarshalText(text); err != nil {
		return err
	}
	*g = Give(v)
	return nil
}
