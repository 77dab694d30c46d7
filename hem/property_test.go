package hem_test

import (
	"math/rand/v2"
	"reflect"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
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
	for range 3000 {
		depth := some(r)
		s := hem.Spec{Kind: hem.Double, First: depth.DivInt(r.Int64N(4) + 1), Depth: depth,
			Drafted: some(r), Slope: units.RatioOf(r.Int64N(41)-20, 64), Edges: r.IntN(8) + 1}
		if r.IntN(2) == 0 {
			s.Cut = some(r)
		}
		p, err := s.Plan()
		if err != nil {
			t.Fatal(err)
		}
		two := p.Spec.Depth.MulInt(2)
		for i, same := range [][2]units.Length{
			{p.Taken.Add(p.Drift), p.Spec.Cut},
			{p.Taken.Add(p.Drift).Add(p.CutOff), s.Drafted},
			{p.RawToSecondFold, p.Taken},
			{p.RawToSecondFold.Sub(p.RawToFirstFold), s.Depth},
			{p.LineToRaw.Sub(p.LineToFirstFold), p.RawToFirstFold},
			{p.LineToFirstFold.Sub(p.LineToSecondFold), s.Depth},
			{p.LineToSecondFold.Sub(p.LineToStitch), p.FinishedToStitch},
			{p.RawToStitch.Add(p.FinishedToStitch), p.Taken},
			{p.Excess, two.Scale(s.Slope).MulInt(int64(s.Edges))},
			{p.Inset.MulInt(int64(s.Edges)), p.Excess},
			{p.Finished(p.CutFor(depth, 2), 2), depth},
		} {
			if same[0] != same[1] {
				t.Fatalf("%d: %v is not %v for %+v", i, same[0], same[1], p)
			}
		}
		// Any two of the three give the third.
		for _, part := range []hem.Spec{
			{Kind: hem.Double, First: s.First, Take: p.Taken}, {Kind: hem.Double, Depth: s.Depth, Take: p.Taken}, {Kind: hem.Double, First: s.First, Depth: s.Depth, Take: p.Taken},
		} {
			part.Drafted, part.Cut, part.Slope, part.Edges = s.Drafted, s.Cut, s.Slope, s.Edges
			if q, err := part.Plan(); err != nil || !reflect.DeepEqual(q, p) {
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
	for range 500 {
		s := hem.Spec{Kind: hem.Narrow, Depth: some(r), Drafted: some(r), Slope: units.RatioOf(5, 64), Edges: 4, Sweep: units.Metre.Of(1 << 40).MulInt(1 << 60)}
		p, err := s.Plan()
		if err != nil {
			t.Fatal(err)
		}
		s.Cut = p.Taken
		q, err := s.Plan()
		if err != nil || !q.Drift.IsZero() || q.Swept != s.Sweep || q.Excess != p.Excess || q.CutOff != p.Spec.Drafted.Sub(p.Taken) {
			t.Fatalf("%+v %v", q, err)
		}
	}
}
