package hem_test

import (
	"testing"

	"example.com/clothyard/units"
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
	// A square corner, and one whose slant is rational, have a root or two, which
	// take no memory. At any other corner the seam is the root of a root: it is
	// enclosed by two of them, in the large form, and has no recipe of its own.
	for name, s := range mitres() {
		most := 2.0
		switch s.Lean {
		case units.Ratio{}, units.RatioOf(3, 4):
		default:
			most = 220
		}
		if n := testing.AllocsPerRun(50, func() { _, _ = s.Plan() }); n > most {
			t.Errorf("mitre, %s: a Plan allocates %v times", name, n)
		}
		p, _ := s.Plan()
		if n := testing.AllocsPerRun(50, func() { _ = p.Sheet() }); n > 40 {
			t.Errorf("mitre, %s: a Sheet allocates %v times", name, n)
		}
	}
}
