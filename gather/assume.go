package gather

import "example.com/clothyard/units/ticket"

// assumed gathers the names of fields that were filled with a default. It holds
// them in place, so that however many there are the list is made once.
type assumed struct {
	text [64]byte
	n    int
}

func (a *assumed) add(name string) {
	if a.n > 0 {
		a.n += copy(a.text[a.n:], " ")
	}
	a.n += copy(a.text[a.n:], name)
}

func (a *assumed) fields() ticket.Fields { return ticket.Fields(a.text[:a.n]) }
