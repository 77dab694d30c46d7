package seam_test

import (
	"math/rand/v2"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
)

// someLength is a length as patterns have them, now and then an odd one, or none.
func someLength(r *rand.Rand) units.Length {
	switch r.IntN(6) {
	case 0:
		return units.Length{}
	case 1:
		return units.Millimetre.Of(r.Int64N(30))
	case 2:
		return units.Inch.Frac(r.Int64N(30), 7)
	}
	return units.Inch.Frac(r.Int64N(24), 16)
}

func someSpec(r *rand.Rand) seam.Spec {
	s := seam.Spec{Kind: seam.Kind(1 + r.IntN(4)), Fraying: r.IntN(2) == 0}
	for _, to := range []*units.Length{&s.Drafted, &s.DraftedUnder, &s.Cut, &s.CutUnder, &s.First, &s.Second, &s.Take, &s.Trim} {
		if r.IntN(3) == 0 {
			*to = someLength(r)
		}
	}
	if s.Kind == seam.Plain {
		s.Second = units.Length{}
	}
	return s
}

// holds checks what is true of every plan.
func holds(t *testing.T, given seam.Spec, p seam.Plan) {
	t.Helper()
	s := p.Spec
	for _, d := range []seam.Side{p.Upper, p.Under} {
		if d.Taken.Add(d.Drift) != d.Cut {
			t.Errorf("%+v: taken and drift are not what was cut", given)
		}
		if d.Taken != s.Take || d.TrimMax.Less(d.TrimMin) || d.TrimMin.Sign() <= 0 {
			t.Errorf("%+v: side %+v", given, d)
		}
	}
	if p.Gain != p.Upper.Drift.Add(p.Under.Drift) || p.Finished.Sign() <= 0 || p.Plies < 2 {
		t.Errorf("%+v: %+v", given, p)
	}
	switch s.Kind {
	case seam.French:
		if s.First.Add(s.Second) != s.Take || !s.Trim.Less(s.Second) || s.First.Less(s.Trim) {
			t.Errorf("%+v: passes %+v", given, s)
		}
	case seam.FlatFelled:
		if s.Second.Add(p.Turned) != s.First || s.Second.Less(p.Turned) || !s.Trim.Less(s.Second) {
			t.Errorf("%+v: fell %+v", given, s)
		}
	case seam.Bound:
		if s.First.Less(s.Second) {
			t.Errorf("%+v: binding %+v", given, s)
		}
	}
	// A solved spec is a fixed point, with nothing left to assume.
	again, err := s.Plan()
	if err != nil || again.Spec != s || again.Assumed != "" {
		t.Errorf("%+v: planned again %+v, %v", given, again, err)
	}
	again.Assumed = p.Assumed
	if s.Thickness.IsZero() && again != p {
		t.Errorf("%+v: planned again differs", given)
	}
	// What was given stays.
	for _, pair := range [][2]units.Length{
		{given.Drafted, s.Drafted}, {given.DraftedUnder, s.DraftedUnder}, {given.Cut, s.Cut}, {given.CutUnder, s.CutUnder},
		{given.First, s.First}, {given.Second, s.Second}, {given.Take, s.Take}, {given.Trim, s.Trim},
	} {
		if !pair[0].IsZero() && pair[0] != pair[1] {
			t.Errorf("%+v: a field given was changed: %+v", given, s)
		}
	}
	if err := p.Sheet().Check(); err != nil {
		t.Errorf("%+v: %v", given, err)
	}
}

func TestProperties(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 8))
	good := map[seam.Kind]int{}
	for range 20_000 {
		s := someSpec(r)
		p, err := s.Plan()
		if err != nil {
			faultPaths(t, err)
			continue
		}
		good[s.Kind]++
		holds(t, s, p)
	}
	for k := range seam.Kinds {
		if good[k] < 300 {
			t.Errorf("%v: only %d good seams", k, good[k])
		}
	}
}

// With the allowance alone no kind drifts.
func TestAllowanceAlone(t *testing.T) {
	for k := range seam.Kinds {
		for sixteenths := int64(5); sixteenths < 40; sixteenths++ {
			p := planned(t, seam.Spec{Kind: k, Drafted: in(sixteenths, 16)})
			if !p.Gain.IsZero() {
				t.Errorf("%v of %d/16 in: gain %v", k, sixteenths, p.Gain)
			}
		}
	}
}

// Trimming never changes what a seam takes.
func TestTrimTakesNothing(t *testing.T) {
	for k := range seam.Kinds {
		given := seam.Spec{Kind: k, Drafted: in(1, 1), First: in(5, 8), Second: in(3, 8)}
		if k == seam.Plain {
			given.Second = units.Length{}
		}
		a := planned(t, given)
		given.Trim = in(1, 4)
		if k == seam.Bound {
			given.Trim = in(1, 2)
		}
		b := planned(t, given)
		if a.Spec.Trim == b.Spec.Trim || a.Upper.Drift != b.Upper.Drift || a.Gain != b.Gain {
			t.Errorf("%v: the trim changes the drift", k)
		}
	}
}

func TestDartProperties(t *testing.T) {
	r := rand.New(rand.NewPCG(22, 43))
	for range 500 {
		c := units.Inch.Frac(16+r.Int64N(100), 16)
		w := units.Inch.Frac(1+r.Int64N(40), 16)
		p, err := seam.Dart{Length: c, Width: w, Allowance: in(1, 4)}.Plan()
		if err != nil {
			t.Fatal(err)
		}
		edge, err1 := p.Across(c)
		line, err2 := p.Across(c.Sub(in(1, 4)))
		point, err3 := p.Across(units.Length{})
		if err1 != nil || err2 != nil || err3 != nil || edge != units.Exactly(w) || line != p.AtSeam || !point.IsZero() {
			t.Errorf("%v by %v: %v at the edge, %v at the seam line", c, w, edge, line)
		}
		if n, err := p.Half.MulInt(2).Cmp(p.AtSeam); n != 0 || err != nil {
			t.Errorf("%v by %v: the halves are not the whole", c, w)
		}
		if n, err := p.Leg.Cmp(p.Centre); n != 1 || err != nil {
			t.Errorf("%v by %v: leg %v", c, w, p.Leg)
		}
	}
}
