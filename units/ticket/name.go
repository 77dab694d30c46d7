package ticket

import (
	"fmt"
	"strconv"
	"strings"

	"example.com/clothyard/units/fault"
)

// The three that follow serve an enumeration: a uint8 whose names stand in a
// table, its zero value being "not given" and the first name what String says of
// it.

// NameOf is the name of k; a value without one is written as Kind(9).
func NameOf[K ~uint8](k K, names []string, kind string) string {
	if int(k) < len(names) {
		return names[k]
	}
	return fmt.Sprintf("%s(%d)", kind, uint8(k))
}

// NameText is the name of k as text, empty for zero. It fails with a [*Fault] for
// a value without a name.
func NameText[K ~uint8](k K, names []string, kind string) ([]byte, error) {
	switch {
	case k == 0:
		return nil, nil
	case int(k) >= len(names):
		return nil, &fault.Fault{Path: kind, Got: NameOf(k, names, kind), Limit: NameList(names), Kind: fault.Unknown}
	}
	return []byte(names[k]), nil
}

// ReadName sets k to the value that a name stands for, zero for empty text. It
// fails with a [*Fault] that lists the names, and then leaves k as it is.
func ReadName[K ~uint8](k *K, text []byte, names []string, kind string) error {
	if len(text) == 0 {
		*k = 0
		return nil
	}
	for i, name := range names[1:] {
		if name == string(text) {
			*k = K(i + 1)
			return nil
		}
	}
	const shown = 40
	got := strconv.Quote(string(text[:min(len(text), shown)]))
	if len(text) > shown {
		got += "..."
	}
	return &fault.Fault{Path: kind, Got: got, Limit: NameList(names), Kind: fault.Unknown}
}

// NameList is what there is to choose from: one of the names, the first excepted.
func NameList(names []string) string { return "one of " + strings.Join(names[1:], ", ") }
