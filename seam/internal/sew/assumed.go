package sew

// Assumptions collects the names of the fields that a default filled, in the order of
// the fields.
type Assumptions struct{ names []string }

// Add puts a name in.
func (s *Assumptions) Add(name string) { s.names = append(s.names, name) }

// List is the names.
func (s *Assumptions) List() []string { return s.names }
