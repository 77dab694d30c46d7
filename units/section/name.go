package section

import (
	"fmt"
	"strings"

	"example.com/clothyard/units/ticket"
)

// nameOf is the name of an enumerated value, the first name for zero.
func nameOf[K ~uint8](k K, names []string, kind string) string {
	if int(k) < len(names) {
		return names[k]
	}
	return fmt.Sprintf("%s(%d)", kind, uint8(k))
}

// textOf is the name as text, empty for zero; a value without a name is a fault.
func textOf[K ~uint8](k K, names []string, kind string) ([]byte, error) {
	switch {
	case k == 0:
		return nil, nil
	case int(k) >= len(names):
		return nil, unknown(kind, nameOf(k, names, kind), names)
	}
	return []byte(names[k]), nil
}

// valueOf is the value that a name stands for, zero for empty text.
func valueOf[K ~uint8](text []byte, names []string, kind string) (K, error) {
	if len(text) == 0 {
		return 0, nil
	}
	for k, name := range names {
		if k > 0 && name == string(text) {
			return K(k), nil
		}
	}
	return 0, unknown(kind, fmt.Sprintf("%q", text[:min(len(text), ticket.MaxName)]), names)
}

func unknown(kind, got string, names []string) *ticket.Fault {
	return &ticket.Fault{Path: kind, Got: got, Limit: listOf(names), Err: ticket.ErrUnknown}
}

// listOf names what there is, for a fault.
func listOf(names []string) string { return "one of " + strings.Join(names[1:], ", ") }

// given records an enumerated value that is missing or has no name.
func given[K ~uint8](a *ticket.Audit, path string, k K, names []string) {
	switch {
	case k == 0:
		a.Fault(path, "", listOf(names), ticket.ErrMissing)
	case int(k) >= len(names):
		a.Fault(path, nameOf(k, names, path), listOf(names), ticket.ErrUnknown)
	}
}
