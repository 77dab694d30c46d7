package ticket

import (
	"encoding/json"
	"strings"
)

// Fields names the fields that a Plan filled with a default, by their keys in JSON
// and in the order of the Spec, separated by blanks. It is empty where nothing was
// assumed. In JSON it is a list.
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

// MarshalJSON is the list of the names.
func (f Fields) MarshalJSON() ([]byte, error) { return json.Marshal(strings.Fields(string(f))) }

// UnmarshalJSON reads a list of names.
func (f *Fields) UnmarshalJSON(text []byte) error {
	var names []string
	if err := json.Unmarshal(text, &names); err != nil {
		return err
	}
	*f = Fields(strings.Join(names, " "))
	return nil
}
