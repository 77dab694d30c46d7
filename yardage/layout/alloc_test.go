package layout_test

import (
	"context"
	"testing"

	"example.com/clothyard/yardage/layout"
)

// A sheet takes memory for its parts, not for each piece; checking a lay takes
// little beyond the checks of the Spec.
func TestAllocs(t *testing.T) {
	s := shirt()
	s.Work = 1
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if n := testing.AllocsPerRun(20, func() { p.Sheet() }); n > 40 {
		t.Errorf("Sheet: %v allocations", n)
	}
	base := testing.AllocsPerRun(20, func() { _, _ = s.Solve() })
	if n := testing.AllocsPerRun(20, func() { _ = layout.Verify(s, p.Placements) }); n > base+40 {
		t.Errorf("Verify: %v allocations, Solve %v", n, base)
	}
	// The search takes memory once, however long it goes on.
	s.Work = 1
	one := testing.AllocsPerRun(1, func() { _, _ = s.Plan(context.Background()) })
	s.Work = 10
	if ten := testing.AllocsPerRun(1, func() { _, _ = s.Plan(context.Background()) }); ten > 4*one {
		t.Errorf("Plan: %v allocations, with ten times the work %v", one, ten)
	}
}
