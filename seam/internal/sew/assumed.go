package sew

import "example.com/clothyard/units/ticket"

// Assumptions collects the names of the fields that a default filled, in the
// order of the fields, and takes memory once.
type Assumptions struct {
	names [8]string
	n     int
}

// Add puts a name in.
func (s *Assumptions) Add(name string) {
	if s.n < len(s.names) {
		s.names[s.n] = name
		s.n++
	}
}

// List is the names.
func (s *Assumptions) List() ticket.Fields {
	switch s.n {
	case 0:
		return ""
	case 1:
		return ticket.Fields(s.names[0])
	}
	var space [128]byte
	b := space[:0]
	for i, name := range s.names[:s.n] {
		if i > 0 {
			b = append(b, ' ')
		}
		b = append(b, name...)
	}
	return ticket.Fields(b)
}
