package hem_test

import (
	"math/rand/v2"
	"reflect"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
)

// some is a length of a family that a sewer or a school might use.
func some(r *rand.Rand) units.Length {
	n := r.Int64N(40) + 1
	switch r.IntN(6) {
	case 0:
		return units.Inch.Frac(n, 8)
	case 1:
		return units.Millimetre.Of(n)
	case 2:
		return units.Inch.Frac(n, 3)
	case 3:
		return units.Inch.Frac(n, 7)
	case 4:
		return units.Inch.Frac(n, 1_000_003)
	}
	return units.Metre.Of(1 << 40).MulInt(n << 50)
}

// TestProperties: folds, stitching and drift add up, whatever the lengths.
func TestProperties(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 8))
	for range nountest.Rounds(3000) {
		slope := units.RatioOf(r.Int64N(41)-20, 64)
		s := hem.Double{
			Allowance: hem.Allowance{Drafted: some(r)}, TwoTurns: hem.TwoTurns{Depth: some(r)},
			Curved: hem.Curved{Flare: hem.Flare{Slope: units.Slope(slope), Edges: r.IntN(8) + 1}},
		}
		s.First = s.Depth.DivInt(r.Int64N(4) + 1)
		if r.IntN(2) == 0 {
			s.Cut = some(r)
		}
		p, err := s.Plan()
		if err != nil {
			t.Fatal(err)
		}
		first, second := p.Folds[0], p.Folds[1]
		for i, same := range [][2]units.Length{
			{p.Taken.Add(p.Drift), p.LineToRaw},
			{p.Taken.Add(p.Drift).Add(p.CutOff), s.Drafted},
			{second.Raw, p.Taken},
			{second.Raw.Sub(first.Raw), s.Depth},
			{p.LineToRaw.Sub(first.Line), first.Raw},
			{first.Line.Sub(second.Line), s.Depth},
			{second.Line.Sub(p.LineToStitch), p.FinishedToStitch},
			{p.RawToStitch.Add(p.FinishedToStitch), p.Taken},
			{p.Excess, s.Depth.MulInt(2).Scale(slope).MulInt(int64(s.Edges))},
			{p.Inset.MulInt(int64(s.Edges)), p.Excess},
			{p.Finished(p.CutFor(s.Depth, 2), 2), s.Depth},
		} {
			if same[0] != same[1] {
				t.Fatalf("%d: %v is not %v for %+v", i, same[0], same[1], p)
			}
		}
		// Any two of the three give the third.
		for _, drop := range []func(*hem.Double){
			func(s *hem.Double) { s.First = units.Length{} }, func(s *hem.Double) { s.Depth = units.Length{} }, func(*hem.Double) {},
		} {
			part := s
			part.Tape, part.Take = p.Spec.Allowed().Tape, p.Taken
			drop(&part)
			q, err := part.Plan()
			if q.Assumed = p.Assumed; err != nil || !reflect.DeepEqual(q, p) {
				t.Fatalf("%+v: %v", part, err)
			}
		}
		if err := p.Sheet().Check(); err != nil {
			t.Fatal(err)
		}
	}
}

// TestCutToTake: whatever the hem, cutting the allowance to what it takes leaves
// no drift, and the sweep as drafted.
func TestCutToTake(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 13))
	for range nountest.Rounds(500) {
		s := hem.Narrow{
			Allowance: hem.Allowance{Drafted: some(r)}, TwoTurns: hem.TwoTurns{Depth: some(r)},
			Curved: hem.Curved{Flare: hem.Flare{Slope: units.Slope(units.RatioOf(5, 64)), Edges: 4, Sweep: units.Metre.Of(1 << 40).MulInt(1 << 60)}},
		}
		p, err := s.Plan()
		if err != nil {
			t.Fatal(err)
		}
		s.Cut = p.Taken
		q, err := s.Plan()
		if err != nil || !q.Drift.IsZero() || q.Swept != s.Sweep || q.Excess != p.Excess || q.CutOff != s.Drafted.Sub(p.Taken) {
			t.Fatalf("%+v %v", q, err)
		}
	}
}
