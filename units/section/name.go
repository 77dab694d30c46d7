package section

import (
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// given records an enumerated value that is missing or has no name.
func given[K ~uint8](a *fault.Audit, path string, k K, names []string) {
	switch {
	case k == 0:
		a.Fault(path, "", ticket.NameList(names), fault.Missing)
	case int(k) >= len(names):
		a.Fault(path, ticket.NameOf(k, names, path), ticket.NameList(names), fault.Unknown)
	}
}
