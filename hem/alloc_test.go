package hem_test

import (
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units/ticket"
)

// TestAllocs: a Plan costs the text of Assumed, a Sheet its slices.
func TestAllocs(t *testing.T) {
	check := func(name string, most float64, plan func() ticket.Sheet, only func()) {
		if n := testing.AllocsPerRun(50, only); n > most {
			t.Errorf("%s: a Plan allocates %v times", name, n)
		}
		if n := testing.AllocsPerRun(50, func() { _ = plan() }); n > 40+most {
			t.Errorf("%s: a Plan and its Sheet allocate %v times", name, n)
		}
	}
	for name, s := range every() {
		check(name, 2, func() ticket.Sheet { p, _ := s.Plan(); return p.Sheet() }, func() { _, _ = s.Plan() })
	}
	for name, s := range tucks() {
		check(name, 2, func() ticket.Sheet { p, _ := s.Plan(); return p.Sheet() }, func() { _, _ = s.Plan() })
	}
	for name, s := range casings() {
		check(name, 2, func() ticket.Sheet { p, _ := s.Plan(); return p.Sheet() }, func() { _, _ = s.Plan() })
	}
	// The marks of a square corner with like hems need one root, which is kept; any
	// other corner has roots of its own to work out.
	for name, s := range mitres() {
		if s.Lean.IsZero() && s.B == (hem.HemSide{}) {
			check(name, 2, func() ticket.Sheet { p, _ := s.Plan(); return p.Sheet() }, func() { _, _ = s.Plan() })
		}
	}
}
