package ticket

import "strings"

// Fields names the fields that a Plan filled with a default, in the order of
// the Spec, separated by blanks. It is empty where nothing was assumed.
type Fields string

// With is f and one more name.
func (f Fields) With(name string) Fields {
	if f == "" {
		return Fields(name)
	}
	return f + " " + Fields(name)
}

// Has reports whether name is among f.
func (f Fields) Has(name string) bool {
	for n := range strings.FieldsSeq(string(f)) {
		if n == name {
			return true
		}
	}
	return false
}
