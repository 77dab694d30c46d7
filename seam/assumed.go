package seam

// assumptions collects the names of the fields that a default filled, in the order of
// the fields.
type assumptions struct{ names []string }

func (s *assumptions) add(name string) { s.names = append(s.names, name) }

func (s *assumptions) list() []string { return s.names }
