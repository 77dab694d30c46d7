package seam_test

import (
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
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

// with gives a spec both plies drafted and cut with 5/8 in.
func with(s seam.Spec) seam.Spec {
	s.Drafted, s.DraftedUnder, s.Cut, s.CutUnder = in(5, 8), in(5, 8), in(5, 8), in(5, 8)
	return s
}

func TestDefaults(t *testing.T) {
	type S = seam.Spec
	for _, c := range []struct {
		why     string
		given   S
		want    S
		assumed string
	}{
		{"a plain seam", S{Kind: seam.Plain},
			S{Kind: seam.Plain, Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 8), CutUnder: in(5, 8), First: in(5, 8), Take: in(5, 8), Trim: in(5, 8)},
			"drafted draftedUnder cut cutUnder first trim"},
		{"a French seam", S{Kind: seam.French, Drafted: in(5, 8)},
			S{Kind: seam.French, Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 8), CutUnder: in(5, 8), First: in(3, 8), Second: in(1, 4), Take: in(5, 8), Trim: in(1, 8)},
			"draftedUnder cut cutUnder first second trim"},
		{"a take with a printed set", S{Kind: seam.French, Drafted: in(1, 1), DraftedUnder: in(1, 1), Cut: in(1, 1), CutUnder: in(1, 1), Take: in(5, 12)},
			S{Kind: seam.French, Drafted: in(1, 1), DraftedUnder: in(1, 1), Cut: in(1, 1), CutUnder: in(1, 1), First: in(1, 6), Second: in(1, 4), Take: in(5, 12), Trim: in(1, 8)},
			"first second trim"},
		{"a pass without a printed set: the second", S{Kind: seam.French, Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 8), CutUnder: in(5, 8), First: in(3, 16), Trim: in(1, 8)},
			S{Kind: seam.French, Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 8), CutUnder: in(5, 8), First: in(3, 16), Second: in(1, 4), Take: in(7, 16), Trim: in(1, 8)},
			"second"},
		{"a pass without a printed set: the first", S{Kind: seam.French, Drafted: in(5, 8), DraftedUnder: in(1, 1), Cut: in(5, 8), CutUnder: in(1, 1), Second: in(5, 16), Trim: in(1, 8)},
			S{Kind: seam.French, Drafted: in(5, 8), DraftedUnder: in(1, 1), Cut: in(5, 8), CutUnder: in(1, 1), First: in(3, 8), Second: in(5, 16), Take: in(11, 16), Trim: in(1, 8)},
			"first"},
		{"the under ply goes with a given cut", S{Kind: seam.Plain, Drafted: in(5, 8), Cut: in(1, 2)},
			S{Kind: seam.Plain, Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(1, 2), CutUnder: in(1, 2), First: in(1, 2), Take: in(1, 2), Trim: in(1, 2)},
			"draftedUnder cutUnder first trim"},
		{"but with its own drafted allowance where that is given", S{Kind: seam.Plain, Drafted: in(5, 8), DraftedUnder: in(1, 1), Cut: in(1, 2), Take: in(1, 2)},
			S{Kind: seam.Plain, Drafted: in(5, 8), DraftedUnder: in(1, 1), Cut: in(1, 2), CutUnder: in(1, 1), First: in(1, 2), Take: in(1, 2), Trim: in(1, 2)},
			"cutUnder trim"},
		{"a fell", S{Kind: seam.FlatFelled, Drafted: in(7, 8)},
			S{Kind: seam.FlatFelled, Drafted: in(7, 8), DraftedUnder: in(7, 8), Cut: in(7, 8), CutUnder: in(7, 8), First: in(7, 8), Second: in(7, 16), Take: in(7, 8), Trim: in(1, 8), Turned: in(7, 16)},
			"draftedUnder cut cutUnder first second trim"},
		{"a bound seam", S{Kind: seam.Bound, Drafted: in(1, 2)},
			S{Kind: seam.Bound, Drafted: in(1, 2), DraftedUnder: in(1, 2), Cut: in(1, 2), CutUnder: in(1, 2), First: in(1, 2), Second: in(1, 4), Take: in(1, 2), Trim: in(1, 2)},
			"draftedUnder cut cutUnder first second trim"},
		{"an edge turned and stitched", with(S{Kind: seam.TurnedStitched}), with(S{Kind: seam.TurnedStitched, First: in(5, 8), Second: in(3, 8), Take: in(5, 8), Trim: in(5, 8), Turned: in(1, 4)}),
			"first trim turned"},
		{"turned and stitched in a narrow allowance", with(S{Kind: seam.TurnedStitched, First: in(3, 8)}), with(S{Kind: seam.TurnedStitched, First: in(3, 8), Second: in(3, 16), Take: in(3, 8), Trim: in(3, 8), Turned: in(3, 16)}),
			"trim turned"},
		{"trimmed to what both figures need", with(S{Kind: seam.TurnedStitched, Second: in(5, 16), Turned: in(3, 16)}), with(S{Kind: seam.TurnedStitched, First: in(5, 8), Second: in(5, 16), Take: in(5, 8), Trim: in(1, 2), Turned: in(3, 16)}),
			"first"},
		{"a mock French seam", with(S{Kind: seam.MockFrench}), with(S{Kind: seam.MockFrench, First: in(5, 8), Second: in(5, 16), Take: in(5, 8), Trim: in(5, 8), Turned: in(5, 16)}),
			"first trim turned"},
		{"a mock felled seam", with(S{Kind: seam.MockFelled}), with(S{Kind: seam.MockFelled, First: in(5, 8), Second: in(5, 16), Take: in(5, 8), Trim: in(1, 8), Turned: in(5, 16)}),
			"first second trim"},
		{"the seam of a fell and its turned edge", with(S{Kind: seam.FlatFelled, Second: in(3, 8), Turned: in(3, 16)}), with(S{Kind: seam.FlatFelled, First: in(9, 16), Second: in(3, 8), Take: in(9, 16), Trim: in(1, 8), Turned: in(3, 16)}),
			"trim"},
		{"an untrimmed fell", with(S{Kind: seam.UntrimmedFell}), with(S{Kind: seam.UntrimmedFell, First: in(1, 4), Take: in(1, 4), Turned: in(1, 4)}),
			"first turned"},
		{"an untrimmed fell cut for it", S{Kind: seam.UntrimmedFell, Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 16), CutUnder: in(1, 2)},
			S{Kind: seam.UntrimmedFell, Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 16), CutUnder: in(1, 2), First: in(5, 16), Take: in(5, 16), Turned: in(3, 16)},
			"first turned"},
		{"a welt", with(S{Kind: seam.Welt}), with(S{Kind: seam.Welt, First: in(5, 8), Second: in(3, 8), Take: in(5, 8), Trim: in(1, 4)}),
			"first second trim"},
		{"a welt too narrow for the usual row", with(S{Kind: seam.Welt, First: in(3, 8)}), with(S{Kind: seam.Welt, First: in(3, 8), Second: in(9, 32), Take: in(3, 8), Trim: in(3, 16)}),
			"second trim"},
		{"a welt whose row is given", with(S{Kind: seam.Welt, Second: in(1, 4)}), with(S{Kind: seam.Welt, First: in(5, 8), Second: in(1, 4), Take: in(5, 8), Trim: in(1, 8)}),
			"first trim"},
		{"a lapped seam", with(S{Kind: seam.Lapped}), with(S{Kind: seam.Lapped, First: in(5, 8), Second: in(5, 8), Take: in(5, 8), Row: in(1, 8)}),
			"first second row"},
		{"a lapped seam of unequal plies", S{Kind: seam.Lapped, Drafted: in(1, 8), DraftedUnder: in(1, 1), Cut: in(1, 8), CutUnder: in(1, 1)},
			S{Kind: seam.Lapped, Drafted: in(1, 8), DraftedUnder: in(1, 1), Cut: in(1, 8), CutUnder: in(1, 1), First: in(1, 8), Second: in(1, 1), Take: in(1, 8), Row: in(1, 16)},
			"first second row"},
		{"both edges turned", with(S{Kind: seam.LappedTurned}), with(S{Kind: seam.LappedTurned, First: in(5, 8), Second: in(1, 2), Take: in(5, 8), Turned: in(3, 8)}),
			"first second"},
		{"both edges turned, more than the usual lap hides", with(S{Kind: seam.LappedTurned, First: in(3, 4)}), with(S{Kind: seam.LappedTurned, First: in(3, 4), Second: in(3, 4), Take: in(3, 4), Turned: in(3, 8)}),
			"second"},
		{"both edges turned by a given amount", with(S{Kind: seam.LappedTurned, Turned: in(1, 8)}), with(S{Kind: seam.LappedTurned, First: in(5, 8), Second: in(1, 1), Take: in(5, 8), Turned: in(1, 8)}),
			"first"},
		{"raw edges lapped", with(S{Kind: seam.LappedRaw}), with(S{Kind: seam.LappedRaw, First: in(5, 8), Second: in(5, 4), Take: in(5, 8)}),
			"first"},
		{"a slot", with(S{Kind: seam.Slot}), with(S{Kind: seam.Slot, First: in(5, 8), Second: in(1, 4), Take: in(5, 8), Trim: in(5, 8), Strip: in(5, 4)}),
			"first second trim strip"},
		{"a hairline", with(S{Kind: seam.Hairline}), with(S{Kind: seam.Hairline, First: in(5, 8), Take: in(5, 8), Trim: in(1, 8)}),
			"first trim"},
		{"a Hong Kong finish", with(S{Kind: seam.HongKong}), with(S{Kind: seam.HongKong, First: in(5, 8), Second: in(1, 4), Take: in(5, 8), Trim: in(5, 8), Strip: in(1, 1)}),
			"first second trim strip"},
		{"a Hong Kong finish on a narrow allowance", with(S{Kind: seam.HongKong, First: in(3, 8)}), with(S{Kind: seam.HongKong, First: in(3, 8), Second: in(3, 16), Take: in(3, 8), Trim: in(3, 8), Strip: in(3, 4)}),
			"second trim strip"},
		{"self-bound", with(S{Kind: seam.SelfBound}), with(S{Kind: seam.SelfBound, First: in(5, 8), Second: in(3, 16), Take: in(5, 8), Trim: in(1, 8), Turned: in(1, 4)}),
			"first trim turned"},
		{"self-bound, by its binding", with(S{Kind: seam.SelfBound, Second: in(1, 4)}), with(S{Kind: seam.SelfBound, First: in(5, 8), Second: in(1, 4), Take: in(5, 8), Trim: in(1, 8), Turned: in(1, 8)}),
			"first trim"},
		{"self-bound, by its folds", with(S{Kind: seam.SelfBound, Second: in(3, 16), Turned: in(1, 4)}), with(S{Kind: seam.SelfBound, First: in(5, 8), Second: in(3, 16), Take: in(5, 8), Trim: in(1, 8), Turned: in(1, 4)}),
			"trim"},
		{"piped", with(S{Kind: seam.Piped}), with(S{Kind: seam.Piped, First: in(5, 8), Take: in(5, 8), Trim: in(5, 8), Cord: in(1, 4)}),
			"first trim cord"},
		{"graded", with(S{Kind: seam.Graded}), with(S{Kind: seam.Graded, First: in(5, 8), Take: in(5, 8), Trim: in(1, 4), TrimUnder: in(1, 8), Layers: 2}),
			"first trim trimUnder layers"},
		{"graded, hardly wider than the least", with(S{Kind: seam.Graded, First: in(1, 8)}), with(S{Kind: seam.Graded, First: in(1, 8), Take: in(1, 8), Trim: in(1, 8), TrimUnder: in(1, 16), Layers: 2}),
			"trim trimUnder layers"},
		{"graded, the inner layer wide", with(S{Kind: seam.Graded, TrimUnder: in(3, 8), Layers: 3}), with(S{Kind: seam.Graded, First: in(5, 8), Take: in(5, 8), Trim: in(5, 8), TrimUnder: in(3, 8), Layers: 3}),
			"first trim"},
	} {
		p := planned(t, c.given)
		if p.Spec != c.want || strings.Join(p.Assumed, " ") != c.assumed {
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
		{"plain, to one side, overcast", seam.Spec{Kind: seam.Plain, Aside: true, Finish: seam.Overcast},
			func(p seam.Plan) bool { return p.Plies == 3 && !p.Raw && p.Rows == 0 }},
		{"plain, pinked", seam.Spec{Kind: seam.Plain, Finish: seam.Pinked}, func(p seam.Plan) bool { return p.Plies == 2 && p.Raw }},
		{"plain, zigzagged", seam.Spec{Kind: seam.Plain, Finish: seam.Zigzagged}, func(p seam.Plan) bool { return p.Plies == 2 && !p.Raw }},
		{"turned and stitched: wide enough for the turn", seam.Spec{Kind: seam.TurnedStitched},
			func(p seam.Plan) bool {
				return p.Plies == 3 && !p.Raw && p.Finished == in(3, 8) && p.Upper.TrimMin == in(1, 2) && p.Under.TrimMax == in(5, 8)
			}},
		{"mock French: the ridge pressed over", seam.Spec{Kind: seam.MockFrench},
			func(p seam.Plan) bool { return p.Plies == 5 && p.Finished == in(5, 16) && p.Turned == in(5, 16) }},
		{"mock felled, turned by less than half", seam.Spec{Kind: seam.MockFelled, Turned: in(3, 16)},
			func(p seam.Plan) bool { return p.Plies == 3 && p.Finished == in(7, 16) && p.Rows == 2 }},
		{"an untrimmed fell drifts unequally", seam.Spec{Kind: seam.UntrimmedFell},
			func(p seam.Plan) bool {
				return p.Upper.Drift == in(3, 8) && p.Under.Drift == in(1, 8) && p.Gain == in(1, 2) && p.Plies == 4 && p.Under.TrimMin == in(1, 2)
			}},
		{"a welt", seam.Spec{Kind: seam.Welt, Fraying: true},
			func(p seam.Plan) bool {
				return p.Raw && p.Rows == 1 && p.Upper.TrimMin == in(1, 2) && p.Under.TrimMin == in(1, 8) && p.Under.TrimMax == in(5, 16)
			}},
		{"lapped by the whole allowance", seam.Spec{Kind: seam.Lapped},
			func(p seam.Plan) bool {
				return p.Gain.IsZero() && p.Plies == 3 && p.Rows == 1 && p.Turned == in(5, 8) && p.Upper.TrimMin == in(3, 16)
			}},
		{"lapped, the under ply wider", seam.Spec{Kind: seam.Lapped, DraftedUnder: in(1, 1), Second: in(3, 4)},
			func(p seam.Plan) bool { return p.Upper.Drift.IsZero() && p.Under.Drift == in(1, 4) }},
		{"both edges turned by 1/8, lapped by 1/4", seam.Spec{Kind: seam.LappedTurned, Turned: in(1, 8), Second: in(1, 4)},
			func(p seam.Plan) bool {
				return p.Upper.Taken == in(1, 4) && p.Gain == in(3, 4) && p.Plies == 4 && !p.Raw && p.Rows == 2
			}},
		{"raw edges lapped by the allowance of one", seam.Spec{Kind: seam.LappedRaw, Second: in(5, 8)},
			func(p seam.Plan) bool { return p.Upper.Drift == in(5, 16) && p.Gain == in(5, 8) && p.Plies == 2 }},
		{"a slot", seam.Spec{Kind: seam.Slot, Fraying: true},
			func(p seam.Plan) bool {
				return p.Finished == in(1, 2) && p.StripLeast == in(3, 4) && p.Upper.TrimMin == in(3, 8) && p.Rows == 2
			}},
		{"a hairline", seam.Spec{Kind: seam.Hairline}, func(p seam.Plan) bool { return p.Finished == in(1, 8) && p.Plies == 3 && p.Raw }},
		{"a Hong Kong finish", seam.Spec{Kind: seam.HongKong, Thickness: in(1, 32)},
			func(p seam.Plan) bool {
				return p.Wrapped == in(15, 32) && p.StripLeast == in(25, 32) && p.Plies == 5 && p.Upper.TrimMin == in(1, 4)
			}},
		{"self-bound: the edges just meet", seam.Spec{Kind: seam.SelfBound},
			func(p seam.Plan) bool {
				return p.Plies == 6 && p.Under.TrimMax == in(1, 8) && p.Upper.TrimMin == in(5, 8)
			}},
		{"self-bound: the edges do not meet", seam.Spec{Kind: seam.SelfBound, Turned: in(7, 32)},
			func(p seam.Plan) bool { return p.Plies == 5 && p.Spec.Second == in(13, 64) }},
		{"piped", seam.Spec{Kind: seam.Piped, Thickness: in(1, 32)},
			func(p seam.Plan) bool {
				mark, _, err := p.StripCorded.Round(in(1, 10_000), units.HalfAway)
				turn, _, err2 := p.Turn.Round(in(1, 10_000), units.HalfAway)
				return err == nil && err2 == nil && mark == in(21336, 10_000) && turn == in(982, 10_000)
			}},
		{"graded in four layers", seam.Spec{Kind: seam.Graded, Layers: 4},
			func(p seam.Plan) bool { return p.Plies == 6 && p.Step == in(1, 24) && p.Grade(2) == in(1, 6) && !p.Raw }},
	} {
		if p := planned(t, c.spec); !c.want(p) {
			t.Errorf("%s: %+v", c.why, p)
		}
	}
}

func TestTurnAtARidge(t *testing.T) {
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
