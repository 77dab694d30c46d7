// Package name gives an enumeration its texts. An enumeration is a uint8 whose
// zero value means "not given":
//
//	type Finish uint8
//
//	const (
//		Pinked Finish = iota + 1
//		Overcast
//	)
//
//	var finishes = name.Of[Finish]("finish", "none", "pinked", "overcast")
//
//	func (f Finish) String() string               { return finishes.String(f) }
//	func (f Finish) MarshalText() ([]byte, error) { return finishes.Marshal(f) }
//	func (f *Finish) UnmarshalText(t []byte) error { return finishes.Unmarshal(f, t) }
//
//	// Finishes yields every finish.
//	func Finishes() iter.Seq[Finish] { return finishes.All() }
package name

import (
	"iter"
	"strconv"
	"strings"

	"example.com/clothyard/units/fault"
)

// Names are the texts of an enumeration.
type Names[K ~uint8] struct {
	of    string
	names []string
}

// Of is the names of an enumeration: what it is an enumeration of, what String
// says of the zero value, and the names of the others in order.
func Of[K ~uint8](of, none string, names ...string) Names[K] {
	return Names[K]{of, append([]string{none}, names...)}
}

// String is the name of k; a value without one is written as finish(9).
func (n Names[K]) String(k K) string {
	if int(k) < len(n.names) {
		return n.names[k]
	}
	return n.of + "(" + strconv.Itoa(int(k)) + ")"
}

// Valid reports whether k is one of the values that have names; zero is none.
func (n Names[K]) Valid(k K) bool { return k != 0 && int(k) < len(n.names) }

// All yields every value but zero.
func (n Names[K]) All() iter.Seq[K] {
	return func(yield func(K) bool) {
		for k := 1; k < len(n.names); k++ {
			if !yield(K(k)) {
				return
			}
		}
	}
}

// List is what there is to choose from: one of the names, without the zero
// value's.
func (n Names[K]) List() string { return "one of " + strings.Join(n.names[1:], ", ") }

// Marshal is the name of k as text, empty for zero. It fails with a
// [*fault.Fault] for a value without a name.
func (n Names[K]) Marshal(k K) ([]byte, error) {
	switch {
	case k == 0:
		return nil, nil
	case !n.Valid(k):
		return nil, &fault.Fault{Path: n.of, Got: n.String(k), Kind: fault.Unknown, Limit: n.List()}
	}
	return []byte(n.names[k]), nil
}

// Unmarshal sets k to the value that a name stands for, to zero for empty text.
// It fails with a [*fault.Fault] that lists the names, and then leaves k as it
// is.
func (n Names[K]) Unmarshal(k *K, text []byte) error {
	if len(text) == 0 {
		*k = 0
		return nil
	}
	for i, name := range n.names[1:] {
		if name == string(text) {
			*k = K(i + 1)
			return nil
		}
	}
	return &fault.Fault{Path: n.of, Got: fault.Quote(string(text)), Kind: fault.Unknown, Limit: n.List()}
}

// Check records a value that has no name, or a missing one.
func (n Names[K]) Check(a *fault.Audit, path string, k K) {
	switch {
	case k == 0:
		a.Fault(path, "", n.List(), fault.Missing)
	case !n.Valid(k):
		a.Fault(path, n.String(k), n.List(), fault.Unknown)
	}
}
