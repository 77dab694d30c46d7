package yardage_test

import (
	"math/rand/v2"
	"testing"

	"github.com/shopspring/decimal"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/yardage"
)

func randomLength(r *rand.Rand, most int64) units.Length {
	dens := [...]int64{1, 2, 8, 16, 3, 7, 97}
	u := units.Inch
	if r.IntN(3) == 0 {
		u = units.Centimetre
	}
	den := dens[r.IntN(len(dens))]
	return u.Frac(1+r.Int64N(most*den), den)
}

// maybe is a length or none.
func maybe(r *rand.Rand, most int64) units.Length {
	if r.IntN(2) == 0 {
		return units.Length{}
	}
	return randomLength(r, most)
}

// What is bought is enough by the whole chain, and one step less is not.
func TestPurchaseIsLeast(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 7))
	for range 3000 {
		s := yardage.Purchase{Need: randomLength(r, 300), Repeat: maybe(r, 40), Ends: maybe(r, 4), Shrink: units.RatioOf(r.Int64N(30), 100), Counter: maybe(r, 20)}
		p, err := s.Plan()
		if err != nil {
			t.Fatalf("%+v: %v", s, err)
		}
		enough := func(buy units.Length) bool {
			after := buy.Scale(units.RatioOf(1, 1).Sub(s.Shrink)).Sub(s.Ends)
			if s.Repeat.IsZero() {
				return !after.Less(s.Need)
			}
			washed := s.Repeat.Scale(units.RatioOf(1, 1).Sub(s.Shrink))
			whole, _ := after.Round(washed, units.Down)
			return !whole.Less(s.Need)
		}
		if !enough(p.Buy) || enough(p.Buy.Sub(p.Spec.Counter)) || !p.Steps.IsInt() {
			t.Fatalf("%+v: %v is not the least", s, p.Buy)
		}
		if p.Buy != p.Unshrunk.Add(p.Surplus) || p.Surplus.Sign() < 0 || !p.Surplus.Less(p.Spec.Counter) {
			t.Fatalf("%+v: surplus %v", s, p.Surplus)
		}
	}
}

// The cloth laid on after Least is bought and washed is just the lay.
func TestRemnantLeastDoes(t *testing.T) {
	r := rand.New(rand.NewPCG(2, 7))
	for range 2000 {
		s := yardage.Remnant{Have: randomLength(r, 100).Add(in("9 in")), HaveWidth: in("54 in"), Need: randomLength(r, 100), NeedWidth: in("1 in"),
			ShrinkLength: units.RatioOf(r.Int64N(30), 100), Ends: maybe(r, 5)}
		p, err := s.Plan()
		if err != nil {
			t.Fatalf("%+v: %v", s, err)
		}
		if (p.Verdict == yardage.Fits) != !s.Have.Less(p.Least) {
			t.Fatalf("%+v: %v, but the least is %v", s, p.Verdict, p.Least)
		}
		s.Have = p.Least
		if q, err := s.Plan(); err != nil || !q.Spare.IsZero() || q.Length != s.Need {
			t.Fatalf("%+v: %v left over, %v", s, q.Spare, err)
		}
	}
}

// Panels cover, and one width less does not.
func TestPanelsAreLeast(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 7))
	for range 2000 {
		s := yardage.Panels{Cover: randomLength(r, 300), Fullness: units.RatioOf(10+r.Int64N(20), 10), Width: randomLength(r, 40).Add(in("10 in")),
			Seam: units.Give(in("1/2 in")), Sides: maybe(r, 3), Drop: randomLength(r, 90), Hems: maybe(r, 12), Repeat: maybe(r, 30)}
		p, err := s.Plan()
		if err != nil {
			t.Fatalf("%+v: %v", s, err)
		}
		flat := s.Cover.Scale(s.Fullness)
		if p.Flat.Less(flat) || p.Made.Less(s.Fullness) {
			t.Fatalf("%+v: %v does not cover", s, p.Flat)
		}
		if fewer := p.Flat.Sub(s.Width).Add(in("1 in")); p.Spec.Widths > 1 && !fewer.Less(flat) {
			t.Fatalf("%+v: one width less covers too", s)
		}
		if p.Drop != p.Cut.Add(p.Waste) || p.Waste.Sign() < 0 || !s.Repeat.IsZero() && (!p.Waste.Less(s.Repeat) || p.ByAdding.Less(p.Length)) {
			t.Fatalf("%+v: drop %v of %v", s, p.Drop, p.Cut)
		}
		nountest.Solved(t, p)
	}
}

// The square for a length yields it, one step less does not, and area alone asks
// for no more.
func TestBiasSquareIsLeast(t *testing.T) {
	r := rand.New(rand.NewPCG(4, 7))
	for range 1000 {
		s := yardage.Bias{Strip: randomLength(r, 4), Wanted: randomLength(r, 900), Seam: maybe(r, 1), Step: maybe(r, 2)}
		p, err := s.Plan()
		if err != nil {
			t.Fatalf("%+v: %v", s, err)
		}
		if p.Length.Less(s.Wanted) || p.ByArea.Less(p.Length) || p.Spec.Square.Less(p.SideByArea) {
			t.Fatalf("%+v: %+v", s, p)
		}
		s.Square, s.Seam, s.Step = p.Spec.Square.Sub(p.Spec.Step), p.Spec.Seam, units.Length{}
		if s.Square.IsZero() {
			continue // one step is the least side there is
		}
		if _, err := s.Plan(); err == nil {
			t.Fatalf("%+v: one step less does too", s)
		}
	}
}

// A washed swatch goes back to what it was, and the price of a length is within
// a coin of exact.
func TestSwatchAndPrice(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 7))
	for range 1000 {
		before := randomLength(r, 60)
		s := units.RatioOf(1+r.Int64N(40), 100)
		aPlan, err := yardage.Swatch{Before: before, Shrink: s}.Plan()
		a := aPlan.Spec
		bPlan, err2 := yardage.Swatch{After: a.After, Shrink: s}.Plan()
		b := bPlan.Spec
		if err != nil || err2 != nil || b.Before != before || a != b {
			t.Fatalf("%v at %v: %v, %v", before, s, a, b)
		}
		for m := units.HalfAway; m <= units.ToZero; m++ {
			p, err := yardage.Price{Length: before, Each: decimal.New(1+r.Int64N(9999), -2), Per: units.Yard, Mode: m}.Plan()
			if err != nil || !p.Residue.Abs().Less(units.RatioOf(1, 100)) || units.FromRat(p.Charged.Rat()).Add(p.Residue) != p.Exact {
				t.Fatalf("%v: %+v, %v", before, p, err)
			}
		}
	}
}
