package gather_test

import (
	"math/rand/v2"
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/strip"
)

// random makes amounts of many denominators.
type random struct{ *rand.Rand }

func (r random) upTo(n int64) units.Length {
	dens := []int64{1, 2, 3, 7, 8, 16, 25, 127}
	d := dens[r.IntN(len(dens))]
	return units.Inch.Frac(r.Int64N(n*d)+1, d)
}

// TestRuffleProperties compares ruffles of random amounts with what must hold
// whatever they are.
func TestRuffleProperties(t *testing.T) {
	r := random{rand.New(rand.NewPCG(9, 7))}
	planned := 0
	for range nountest.Rounds(3000) {
		one := gather.Ruffle{
			Strip: gather.Strip{
				Strip: strip.Spec{Pieces: 1 + r.IntN(9), Each: r.upTo(60), Allowance: units.Give(units.Inch.Frac(r.Int64N(8), 8)), Ring: r.IntN(2) == 0},
				Edge:  r.upTo(120),
			},
			Depth: r.upTo(6), Folded: r.IntN(2) == 0, Turn: rad(r.Int64N(9)-4, 3), Parts: 1 + r.IntN(12),
		}
		p, err := one.Plan()
		if err != nil {
			continue
		}
		planned++
		// Turning there and back: the outer edge of one depth is the inner edge of the other.
		back := one
		outer, _ := p.Outer.Exact()
		back.Strip.Edge, back.Turn = outer, one.Turn.Neg()
		if q, err := back.Plan(); err == nil {
			if inner, ok := q.Outer.Exact(); !ok || inner != one.Strip.Edge {
				t.Fatalf("%+v: there %v and back %v", one, outer, inner)
			}
		}
		// The nearest join, found again by trying every pair.
		nearest, found := units.Length{}, false
		inner := p.Strip.Strip.Joins
		if one.Strip.Strip.Ring {
			inner--
		}
		for k, join := range p.Joins {
			if k == inner {
				break
			}
			if join.Edge.Scale(p.Strip.Fullness) != join.Full {
				t.Fatalf("%+v: join at %v on the strip, %v on the edge", one, join.Full, join.Edge)
			}
			for _, mark := range p.Marks {
				if d := join.Full.Sub(mark.Full).Abs(); !found || d.Less(nearest) {
					nearest, found = d, true
				}
			}
		}
		if p.Clear != nearest || p.Crowded != (found && (nearest.IsZero() || nearest.Less(one.Strip.Strip.Allowance.Or(units.Length{})))) {
			t.Fatalf("%+v: clear %v (%v), by trying %v", one, p.Clear, p.Crowded, nearest)
		}
		if one.Strip.Strip.Ring {
			clear, span := p.Shift, p.Strip.Strip.Sewn
			for k := range int64(p.Spec.Parts) {
				mark := p.Shift.Add(p.StripPart.MulInt(k))
				for _, join := range p.Joins {
					d := join.Full.Sub(mark).Abs()
					clear = clear.Min(d.Min(span.Sub(d).Abs()))
				}
			}
			if clear != p.Shift {
				t.Fatalf("%+v: shifted by %v a join lies %v from a mark", one, p.Shift, clear)
			}
		}
		two := one
		two.Strip.Strip.Each = p.ForTwo
		if q, err := two.Plan(); err == nil && q.Strip.Fullness != units.RatioOf(2, 1) {
			t.Fatalf("%+v: pieces of %v make a fullness of %v", one, p.ForTwo, q.Strip.Fullness)
		}
		if got := p.StripPart.MulInt(int64(p.Spec.Parts)); got != p.Strip.Strip.Sewn {
			t.Fatalf("%+v: the parts come to %v of %v", one, got, p.Strip.Strip.Sewn)
		}
		// What follows from the cut depth is the depth it was cut for.
		cut := one
		cut.Cut, cut.Depth, cut.Allowance = p.CutDepth, units.Length{}, p.Spec.Allowance
		if q, err := cut.Plan(); err != nil || q.Spec.Depth != one.Depth {
			t.Fatalf("%+v: depth back from the cut %v, %v", one, q.Spec.Depth, err)
		}
		check(t, "", p)
	}
	if planned < 50 {
		t.Errorf("only %d ruffles could be planned", planned)
	}
}

// TestStripProperties asks that fewer pieces would not do, and that each field
// can be found back from the others.
func TestStripProperties(t *testing.T) {
	r := random{rand.New(rand.NewPCG(4, 2))}
	for range nountest.Rounds(3000) {
		s := gather.Strip{
			Strip:    strip.Spec{Each: r.upTo(60).Add(units.Inch.Of(1)), Allowance: units.Give(units.Inch.Frac(r.Int64N(4), 8))},
			Edge:     r.upTo(200),
			Fullness: units.RatioOf(r.Int64N(16)+8, 8),
		}
		p, err := s.Plan()
		if err != nil {
			t.Fatalf("%+v: %v", s, err)
		}
		if p.Fullness.Less(s.Fullness) || p.Surplus != p.Edge.Scale(p.Fullness.Sub(s.Fullness)) {
			t.Fatalf("%+v: fullness %v, surplus %v", s, p.Fullness, p.Surplus)
		}
		if n := p.Strip.Spec.Pieces; n > 1 {
			fewer := gather.Strip{Strip: s.Strip, Edge: s.Edge}
			fewer.Strip.Pieces = n - 1
			if q, err := fewer.Plan(); err == nil && !q.Fullness.Less(s.Fullness) {
				t.Fatalf("%+v: one piece less would do", s)
			}
		}
		whole := p.Strip.Spec
		whole.Least = units.Length{}
		if q, err := (gather.Strip{Strip: whole, Fullness: p.Fullness}).Plan(); err != nil || q.Edge != s.Edge {
			t.Fatalf("%+v: edge back %v, %v", s, q.Edge, err)
		}
		each := whole
		each.Each = units.Length{}
		if q, err := (gather.Strip{Strip: each, Edge: s.Edge, Fullness: p.Fullness}).Plan(); err != nil || q.Strip.Spec.Each != s.Strip.Each {
			t.Fatalf("%+v: each back %v, %v", s, q.Strip.Spec.Each, err)
		}
	}
}
