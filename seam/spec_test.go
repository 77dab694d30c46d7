package seam_test

import (
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

func in(num, den int64) units.Length { return units.Inch.Frac(num, den) }

func planned(t *testing.T, s seam.Spec) seam.Plan {
	t.Helper()
	p, err := s.Plan()
	if err != nil {
		t.Fatalf("%+v: %v", s, err)
	}
	return p
}

// The pitfall of the trade: a drift that looks like a pass. Each row is chosen so
// that no wrong rule gives the right figures.
func TestDriftOfEachPly(t *testing.T) {
	for _, c := range []struct {
		why                           string
		drafted, under, cut, cutUnder units.Length
		first, second                 units.Length
		take, upper, lower, gain      units.Length
	}{
		{"take is not a pass", in(5, 8), in(0, 1), in(0, 1), in(0, 1), in(3, 16), in(1, 4), in(7, 16), in(3, 16), in(3, 16), in(3, 8)},
		{"drift is neither pass", in(5, 8), in(0, 1), in(0, 1), in(0, 1), in(3, 16), in(5, 16), in(1, 2), in(1, 8), in(1, 8), in(1, 4)},
		{"the control set", in(5, 8), in(0, 1), in(0, 1), in(0, 1), in(1, 4), in(1, 4), in(1, 2), in(1, 8), in(1, 8), in(1, 4)},
		{"a sign turned round", in(5, 8), in(0, 1), in(0, 1), in(0, 1), in(3, 8), in(3, 8), in(3, 4), in(-1, 8), in(-1, 8), in(-1, 4)},
		{"unequal plies", in(1, 1), in(5, 8), in(0, 1), in(0, 1), in(3, 16), in(1, 4), in(7, 16), in(9, 16), in(3, 16), in(3, 4)},
		{"cut to what is taken", in(5, 8), in(0, 1), in(7, 16), in(0, 1), in(3, 16), in(1, 4), in(7, 16), in(0, 1), in(0, 1), in(0, 1)},
		{"one ply cut", in(5, 8), in(5, 8), in(7, 16), in(0, 1), in(3, 16), in(1, 4), in(7, 16), in(0, 1), in(3, 16), in(3, 16)},
		{"the under ply cut", in(5, 8), in(0, 1), in(0, 1), in(7, 16), in(3, 16), in(1, 4), in(7, 16), in(3, 16), in(0, 1), in(3, 16)},
		{"cut wider than drafted", in(5, 8), in(0, 1), in(1, 1), in(0, 1), in(3, 8), in(1, 4), in(5, 8), in(3, 8), in(3, 8), in(3, 4)},
	} {
		p := planned(t, seam.Spec{Kind: seam.French, Drafted: c.drafted, DraftedUnder: c.under, Cut: c.cut, CutUnder: c.cutUnder, First: c.first, Second: c.second})
		if p.Upper.Taken != c.take || p.Under.Taken != c.take || p.Upper.Drift != c.upper || p.Under.Drift != c.lower || p.Gain != c.gain {
			t.Errorf("%s: took %v, drift %v and %v, gain %v", c.why, p.Upper.Taken, p.Upper.Drift, p.Under.Drift, p.Gain)
		}
	}
}

func TestDefaults(t *testing.T) {
	type S = seam.Spec
	for _, c := range []struct {
		why     string
		given   S
		want    S
		assumed ticket.Fields
	}{
		{"a plain seam", S{Kind: seam.Plain},
			S{Kind: seam.Plain, Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 8), CutUnder: in(5, 8), First: in(5, 8), Take: in(5, 8), Trim: in(5, 8)},
			"Drafted DraftedUnder Cut CutUnder First Trim"},
		{"a French seam", S{Kind: seam.French, Drafted: in(5, 8)},
			S{Kind: seam.French, Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 8), CutUnder: in(5, 8), First: in(3, 8), Second: in(1, 4), Take: in(5, 8), Trim: in(1, 8)},
			"DraftedUnder Cut CutUnder First Second Trim"},
		{"a take with a printed set", S{Kind: seam.French, Drafted: in(1, 1), DraftedUnder: in(1, 1), Cut: in(1, 1), CutUnder: in(1, 1), Take: in(5, 12)},
			S{Kind: seam.French, Drafted: in(1, 1), DraftedUnder: in(1, 1), Cut: in(1, 1), CutUnder: in(1, 1), First: in(1, 6), Second: in(1, 4), Take: in(5, 12), Trim: in(1, 8)},
			"First Second Trim"},
		{"a pass without a printed set: the second", S{Kind: seam.French, Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 8), CutUnder: in(5, 8), First: in(3, 16), Trim: in(1, 8)},
			S{Kind: seam.French, Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 8), CutUnder: in(5, 8), First: in(3, 16), Second: in(1, 4), Take: in(7, 16), Trim: in(1, 8)},
			"Second"},
		{"a pass without a printed set: the first", S{Kind: seam.French, Drafted: in(5, 8), DraftedUnder: in(1, 1), Cut: in(5, 8), CutUnder: in(1, 1), Second: in(5, 16), Trim: in(1, 8)},
			S{Kind: seam.French, Drafted: in(5, 8), DraftedUnder: in(1, 1), Cut: in(5, 8), CutUnder: in(1, 1), First: in(3, 8), Second: in(5, 16), Take: in(11, 16), Trim: in(1, 8)},
			"First"},
		{"the under ply goes with a given cut", S{Kind: seam.Plain, Drafted: in(5, 8), Cut: in(1, 2)},
			S{Kind: seam.Plain, Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(1, 2), CutUnder: in(1, 2), First: in(1, 2), Take: in(1, 2), Trim: in(1, 2)},
			"DraftedUnder CutUnder First Trim"},
		{"but with its own drafted allowance where that is given", S{Kind: seam.Plain, Drafted: in(5, 8), DraftedUnder: in(1, 1), Cut: in(1, 2), Take: in(1, 2)},
			S{Kind: seam.Plain, Drafted: in(5, 8), DraftedUnder: in(1, 1), Cut: in(1, 2), CutUnder: in(1, 1), First: in(1, 2), Take: in(1, 2), Trim: in(1, 2)},
			"CutUnder Trim"},
		{"a fell", S{Kind: seam.FlatFelled, Drafted: in(7, 8)},
			S{Kind: seam.FlatFelled, Drafted: in(7, 8), DraftedUnder: in(7, 8), Cut: in(7, 8), CutUnder: in(7, 8), First: in(7, 8), Second: in(7, 16), Take: in(7, 8), Trim: in(1, 8)},
			"DraftedUnder Cut CutUnder First Second Trim"},
		{"a bound seam", S{Kind: seam.Bound, Drafted: in(1, 2)},
			S{Kind: seam.Bound, Drafted: in(1, 2), DraftedUnder: in(1, 2), Cut: in(1, 2), CutUnder: in(1, 2), First: in(1, 2), Second: in(1, 4), Take: in(1, 2), Trim: in(1, 2)},
			"DraftedUnder Cut CutUnder First Second Trim"},
	} {
		p := planned(t, c.given)
		if p.Spec != c.want || p.Assumed != c.assumed {
			t.Errorf("%s:\n got %+v\n     %s\nwant %+v\n     %s", c.why, p.Spec, p.Assumed, c.want, c.assumed)
		}
		solved, err := c.given.Solve()
		if err != nil || solved != c.want {
			t.Errorf("%s: Solve gave %+v, %v", c.why, solved, err)
		}
	}
}

func TestPlanOfEachKind(t *testing.T) {
	for _, c := range []struct {
		why  string
		spec seam.Spec
		want func(seam.Plan) bool
	}{
		{"plain: two plies, raw", seam.Spec{Kind: seam.Plain, Trim: in(3, 8)},
			func(p seam.Plan) bool {
				return p.Plies == 2 && p.Raw && p.Finished == in(3, 8) && p.Upper.TrimMax == in(5, 8)
			}},
		{"French: the ridge pressed over", seam.Spec{Kind: seam.French},
			func(p seam.Plan) bool {
				return p.Plies == 5 && !p.Raw && p.Finished == in(1, 4) && p.Upper.TrimMin == in(1, 16) && p.Under.TrimMax == in(3, 16)
			}},
		{"French in cloth that frays", seam.Spec{Kind: seam.French, Fraying: true},
			func(p seam.Plan) bool { return p.Upper.TrimMin == in(1, 8) && p.Upper.TrimMax == in(3, 16) }},
		{"French with a narrow first pass: nothing to trim", seam.Spec{Kind: seam.French, First: in(1, 16), Second: in(1, 4), Fraying: true},
			func(p seam.Plan) bool {
				return p.Spec.Trim == in(1, 16) && p.Upper.TrimMin == in(1, 16) && p.Upper.TrimMax == in(1, 16)
			}},
		{"French trimmed to the metric measure", seam.Spec{Kind: seam.French, Trim: units.Millimetre.Of(3), Fraying: true},
			func(p seam.Plan) bool { return p.Upper.TrimMin == units.Millimetre.Of(3) }},
		{"felled: the edges meet", seam.Spec{Kind: seam.FlatFelled},
			func(p seam.Plan) bool {
				return p.Plies == 4 && p.Turned == in(1, 4) && p.Upper.TrimMin == in(5, 8) && p.Upper.TrimMax == in(5, 8) && p.Under.TrimMax == in(5, 16)
			}},
		{"felled: the edges do not meet", seam.Spec{Kind: seam.FlatFelled, First: in(1, 2), Second: in(3, 8)},
			func(p seam.Plan) bool { return p.Plies == 3 }},
		{"bound", seam.Spec{Kind: seam.Bound, Trim: in(3, 8)},
			func(p seam.Plan) bool {
				return p.Plies == 7 && !p.Raw && p.Upper.TrimMin == in(1, 4) && p.StripSingle == in(1, 1) && p.StripDouble == in(3, 2) && p.StripDoubleWide == in(2, 1)
			}},
	} {
		if p := planned(t, c.spec); !c.want(p) {
			t.Errorf("%s: %+v", c.why, p)
		}
	}
}

func TestTurnOfCloth(t *testing.T) {
	p := planned(t, seam.Spec{Kind: seam.French, Drafted: in(5, 8), First: in(3, 16), Second: in(1, 4), Thickness: in(1, 32)})
	thousandth := in(1, 1000)
	if mark, _, err := p.Turn.Round(thousandth, units.HalfAway); err != nil || mark != in(18, 1000) {
		t.Errorf("turn %v, %v; want about 0.018 in", p.Turn, err)
	}
	if p.Upper.Taken != in(7, 16) {
		t.Errorf("the turn is counted in what is taken: %v", p.Upper.Taken)
	}
	if q := planned(t, seam.Spec{Kind: seam.French}); !q.Turn.IsZero() {
		t.Errorf("turn %v though not asked", q.Turn)
	}
}
