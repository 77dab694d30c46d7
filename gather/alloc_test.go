package gather_test

import (
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
)

// TestAllocs holds the plans to one allocation, the list of what was assumed.
// Corners bring pi in, whose arithmetic is math/big and takes many more; the
// sheet of such a ruffle is bounded apart.
func TestAllocs(t *testing.T) {
	r, c := frill(), cuff()
	s := r.Strip
	s.Strip.Pieces, s.Fullness = 0, units.RatioOf(2, 1)
	sp, err := s.Plan()
	if err != nil {
		t.Fatal(err)
	}
	rp, err := r.Plan()
	if err != nil {
		t.Fatal(err)
	}
	full := r
	full.Rows, full.Folded, full.Hem = 3, false, in("1/2")
	fp, err := full.Plan()
	if err != nil {
		t.Fatal(err)
	}
	round := r
	round.Corners = 4
	round.Turn = units.Ratio{}
	np, err := round.Plan()
	if err != nil {
		t.Fatal(err)
	}
	c.Flat = in("1/2")
	cp, err := c.Plan()
	if err != nil {
		t.Fatal(err)
	}
	eight := r
	eight.Parts = 8
	ep, err := eight.Plan()
	if err != nil {
		t.Fatal(err)
	}
	for _, test := range []struct {
		name string
		f    func()
		most int
	}{
		{"Strip.Plan", func() { _, _ = s.Plan() }, 0},
		{"Ruffle.Plan", func() { _, _ = r.Plan() }, 1},
		{"Cuff.Plan", func() { _, _ = c.Plan() }, 1},
		{"StripPlan.Sheet", func() { sp.Sheet() }, 40},
		{"RufflePlan.Sheet", func() { rp.Sheet() }, 40},
		{"RufflePlan.Sheet, three rows", func() { fp.Sheet() }, 40},
		{"RufflePlan.Sheet, eight parts", func() { ep.Sheet() }, 40},
		{"RufflePlan.Sheet, corners", func() { np.Sheet() }, 40},
		{"CuffPlan.Sheet", func() { cp.Sheet() }, 40},
	} {
		if got := int(testing.AllocsPerRun(100, test.f)); got > test.most {
			t.Errorf("%s: %d allocations, want at most %d", test.name, got, test.most)
		}
	}
	if again, err := s.Plan(); err != nil || again != sp || (gather.StripPlan{}) == sp {
		t.Error("plans are comparable")
	}
}
