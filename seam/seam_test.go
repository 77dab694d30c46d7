package seam_test

import (
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
)

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
		p := planned(t, seam.French{Allowance: seam.Allowance{Drafted: c.drafted, DraftedUnder: c.under, Cut: c.cut, CutUnder: c.cutUnder}, First: c.first, Second: c.second})
		if p.Upper.Taken != c.take || p.Under.Taken != c.take || p.Upper.Drift != c.upper || p.Under.Drift != c.lower || p.Gain != c.gain {
			t.Errorf("%s: took %v, drift %v and %v, gain %v", c.why, p.Upper.Taken, p.Upper.Drift, p.Under.Drift, p.Gain)
		}
	}
}

// with gives a spec both plies drafted and cut with 5/8 in.
func with(s seam.Seam) seam.Seam {
	return on(s, seam.Allowance{Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 8), CutUnder: in(5, 8)}).Seam
}

func TestDefaults(t *testing.T) {
	for _, c := range []struct {
		why     string
		given   seam.Seam
		want    seam.Seam
		assumed string
	}{
		{"a plain seam", seam.Plain{},
			seam.Plain{Allowance: seam.Allowance{Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 8), CutUnder: in(5, 8)}, First: in(5, 8), Trim: in(5, 8)},
			"drafted draftedUnder cut cutUnder first trim"},
		{"a French seam", seam.French{Allowance: seam.Allowance{Drafted: in(5, 8)}},
			seam.French{Allowance: seam.Allowance{Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 8), CutUnder: in(5, 8)}, First: in(3, 8), Second: in(1, 4), Trim: in(1, 8)},
			"draftedUnder cut cutUnder first second trim"},
		{"an allowance cut with a printed set", seam.French{Allowance: seam.Allowance{Drafted: in(1, 1), DraftedUnder: in(1, 1), Cut: in(5, 12), CutUnder: in(5, 12)}},
			seam.French{Allowance: seam.Allowance{Drafted: in(1, 1), DraftedUnder: in(1, 1), Cut: in(5, 12), CutUnder: in(5, 12)}, First: in(1, 6), Second: in(1, 4), Trim: in(1, 8)},
			"first second trim"},
		{"a pass without a printed set: the second", seam.French{Allowance: seam.Allowance{Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 8), CutUnder: in(5, 8)}, First: in(3, 16), Trim: in(1, 8)},
			seam.French{Allowance: seam.Allowance{Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 8), CutUnder: in(5, 8)}, First: in(3, 16), Second: in(1, 4), Trim: in(1, 8)},
			"second"},
		{"a pass without a printed set: the first", seam.French{Allowance: seam.Allowance{Drafted: in(5, 8), DraftedUnder: in(1, 1), Cut: in(5, 8), CutUnder: in(1, 1)}, Second: in(5, 16), Trim: in(1, 8)},
			seam.French{Allowance: seam.Allowance{Drafted: in(5, 8), DraftedUnder: in(1, 1), Cut: in(5, 8), CutUnder: in(1, 1)}, First: in(3, 8), Second: in(5, 16), Trim: in(1, 8)},
			"first"},
		{"the under ply goes with a given cut", seam.Plain{Allowance: seam.Allowance{Drafted: in(5, 8), Cut: in(1, 2)}},
			seam.Plain{Allowance: seam.Allowance{Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(1, 2), CutUnder: in(1, 2)}, First: in(1, 2), Trim: in(1, 2)},
			"draftedUnder cutUnder first trim"},
		{"but with its own drafted allowance where that is given", seam.Plain{Allowance: seam.Allowance{Drafted: in(5, 8), DraftedUnder: in(1, 1), Cut: in(1, 2)}, First: in(1, 2)},
			seam.Plain{Allowance: seam.Allowance{Drafted: in(5, 8), DraftedUnder: in(1, 1), Cut: in(1, 2), CutUnder: in(1, 1)}, First: in(1, 2), Trim: in(1, 2)},
			"cutUnder trim"},
		{"a fell", seam.FlatFelled{Allowance: seam.Allowance{Drafted: in(7, 8)}},
			seam.FlatFelled{Allowance: seam.Allowance{Drafted: in(7, 8), DraftedUnder: in(7, 8), Cut: in(7, 8), CutUnder: in(7, 8)}, First: in(7, 8), Width: in(7, 16), Trim: in(1, 8), Turned: in(7, 16)},
			"draftedUnder cut cutUnder first width turned trim"},
		{"a bound seam", seam.Bound{Allowance: seam.Allowance{Drafted: in(1, 2)}},
			seam.Bound{Allowance: seam.Allowance{Drafted: in(1, 2), DraftedUnder: in(1, 2), Cut: in(1, 2), CutUnder: in(1, 2)}, First: in(1, 2), Width: in(1, 4), Trim: in(1, 2)},
			"draftedUnder cut cutUnder first width trim"},
		{"an edge turned and stitched", with(seam.TurnedStitched{}), with(seam.TurnedStitched{First: in(5, 8), Width: in(3, 8), Trim: in(5, 8), Turned: in(1, 4)}),
			"first trim width turned"},
		{"turned and stitched in a narrow allowance", with(seam.TurnedStitched{First: in(3, 8)}), with(seam.TurnedStitched{First: in(3, 8), Width: in(3, 16), Trim: in(3, 8), Turned: in(3, 16)}),
			"trim width turned"},
		{"trimmed to what both figures need", with(seam.TurnedStitched{Width: in(5, 16), Turned: in(3, 16)}), with(seam.TurnedStitched{First: in(5, 8), Width: in(5, 16), Trim: in(1, 2), Turned: in(3, 16)}),
			"first"},
		{"a mock French seam", with(seam.MockFrench{}), with(seam.MockFrench{First: in(5, 8), Width: in(5, 16), Trim: in(5, 8), Turned: in(5, 16)}),
			"first trim width turned"},
		{"a mock felled seam", with(seam.MockFelled{}), with(seam.MockFelled{First: in(5, 8), Width: in(5, 16), Trim: in(1, 8), Turned: in(5, 16)}),
			"first width turned trim"},
		{"the seam of a fell and its turned edge", with(seam.FlatFelled{Width: in(3, 8), Turned: in(3, 16)}), with(seam.FlatFelled{First: in(9, 16), Width: in(3, 8), Trim: in(1, 8), Turned: in(3, 16)}),
			"trim"},
		{"an untrimmed fell", with(seam.UntrimmedFell{}), with(seam.UntrimmedFell{Width: in(1, 4), Turned: in(1, 4)}),
			"width turned"},
		{"an untrimmed fell cut for it", seam.UntrimmedFell{Allowance: seam.Allowance{Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 16), CutUnder: in(1, 2)}},
			seam.UntrimmedFell{Allowance: seam.Allowance{Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(5, 16), CutUnder: in(1, 2)}, Width: in(5, 16), Turned: in(3, 16)},
			"width turned"},
		{"a welt", with(seam.Welt{}), with(seam.Welt{First: in(5, 8), Row: in(3, 8), Trim: in(1, 4)}),
			"first row trim"},
		{"a welt too narrow for the usual row", with(seam.Welt{First: in(3, 8)}), with(seam.Welt{First: in(3, 8), Row: in(9, 32), Trim: in(3, 16)}),
			"row trim"},
		{"a welt whose row is given", with(seam.Welt{Row: in(1, 4)}), with(seam.Welt{First: in(5, 8), Row: in(1, 4), Trim: in(1, 8)}),
			"first trim"},
		{"a lapped seam", with(seam.Lapped{}), with(seam.Lapped{Turned: in(5, 8), Lap: in(5, 8), Row: in(1, 8)}),
			"turned lap row"},
		{"a lapped seam of unequal plies", seam.Lapped{Allowance: seam.Allowance{Drafted: in(1, 8), DraftedUnder: in(1, 1), Cut: in(1, 8), CutUnder: in(1, 1)}},
			seam.Lapped{Allowance: seam.Allowance{Drafted: in(1, 8), DraftedUnder: in(1, 1), Cut: in(1, 8), CutUnder: in(1, 1)}, Turned: in(1, 8), Lap: in(1, 1), Row: in(1, 16)},
			"turned lap row"},
		{"both edges turned", with(seam.LappedTurned{}), with(seam.LappedTurned{Lap: in(1, 2), Turned: in(3, 8)}),
			"lap turned"},
		{"both edges turned, more than the usual lap hides", seam.LappedTurned{Allowance: seam.Allowance{Drafted: in(3, 4), DraftedUnder: in(3, 4), Cut: in(3, 4), CutUnder: in(3, 4)}}, seam.LappedTurned{Allowance: seam.Allowance{Drafted: in(3, 4), DraftedUnder: in(3, 4), Cut: in(3, 4), CutUnder: in(3, 4)}, Lap: in(3, 4), Turned: in(3, 8)},
			"lap turned"},
		{"both edges turned by a given amount", with(seam.LappedTurned{Turned: in(1, 8)}), with(seam.LappedTurned{Lap: in(1, 1), Turned: in(1, 8)}),
			"lap"},
		{"raw edges lapped", with(seam.LappedRaw{}), with(seam.LappedRaw{Lap: in(5, 4)}),
			"lap"},
		{"a slot", with(seam.Slot{}), with(seam.Slot{First: in(5, 8), Row: in(1, 4), Trim: in(5, 8), Strip: in(5, 4)}),
			"first row trim strip"},
		{"a hairline", with(seam.Hairline{}), with(seam.Hairline{First: in(5, 8), Trim: in(1, 8)}),
			"first trim"},
		{"a Hong Kong finish", with(seam.HongKong{}), with(seam.HongKong{First: in(5, 8), Width: in(1, 4), Trim: in(5, 8), Strip: in(1, 1)}),
			"first width trim strip"},
		{"a Hong Kong finish on a narrow allowance", with(seam.HongKong{First: in(3, 8)}), with(seam.HongKong{First: in(3, 8), Width: in(3, 16), Trim: in(3, 8), Strip: in(3, 4)}),
			"width trim strip"},
		{"self-bound", with(seam.SelfBound{}), with(seam.SelfBound{First: in(5, 8), Width: in(3, 16), Trim: in(1, 8), Turned: in(1, 4)}),
			"first width turned trim"},
		{"self-bound, by its binding", with(seam.SelfBound{Width: in(1, 4)}), with(seam.SelfBound{First: in(5, 8), Width: in(1, 4), Trim: in(1, 8), Turned: in(1, 8)}),
			"first turned trim"},
		{"self-bound, by its folds", with(seam.SelfBound{Width: in(3, 16), Turned: in(1, 4)}), with(seam.SelfBound{First: in(5, 8), Width: in(3, 16), Trim: in(1, 8), Turned: in(1, 4)}),
			"trim"},
		{"piped", with(seam.Piped{}), with(seam.Piped{First: in(5, 8), Trim: in(5, 8), Cord: in(1, 4)}),
			"first trim cord"},
		{"graded", with(seam.Graded{}), with(seam.Graded{First: in(5, 8), Widest: in(1, 4), Narrowest: in(1, 8), Layers: 2}),
			"first widest narrowest layers"},
		{"graded, hardly wider than the least", with(seam.Graded{First: in(1, 8)}), with(seam.Graded{First: in(1, 8), Widest: in(1, 8), Narrowest: in(1, 16), Layers: 2}),
			"widest narrowest layers"},
		{"graded, the inner layer wide", with(seam.Graded{Narrowest: in(3, 8), Layers: 3}), with(seam.Graded{First: in(5, 8), Widest: in(5, 8), Narrowest: in(3, 8), Layers: 3}),
			"first widest"},
	} {
		p := planned(t, c.given)
		plies := c.want.Plies()
		plies.Tape = units.InchTape
		if want := on(c.want, plies); p.Spec != want || strings.Join(p.Assumed, " ") != "tape "+c.assumed {
			t.Errorf("%s:\n got %+v\n     %s\nwant %+v\n     %s", c.why, p.Spec.Seam, p.Assumed, want, c.assumed)
		}
	}
}

func TestPlanOfEachKind(t *testing.T) {
	for _, c := range []struct {
		why  string
		spec seam.Seam
		want func(seam.Plan) bool
	}{
		{"plain: two plies, raw", seam.Plain{Trim: in(3, 8)},
			func(p seam.Plan) bool {
				return p.Plies == 2 && p.Raw && p.Finished == in(3, 8) && p.Upper.TrimMax == in(5, 8)
			}},
		{"French: the ridge pressed over", seam.French{},
			func(p seam.Plan) bool {
				return p.Plies == 5 && !p.Raw && p.Finished == in(1, 4) && p.Upper.TrimMin == in(1, 16) && p.Under.TrimMax == in(3, 16)
			}},
		{"French in cloth that frays", seam.French{Allowance: seam.Allowance{Fraying: true}},
			func(p seam.Plan) bool { return p.Upper.TrimMin == in(1, 8) && p.Upper.TrimMax == in(3, 16) }},
		{"French with a narrow first pass: nothing to trim", seam.French{Allowance: seam.Allowance{Fraying: true}, First: in(1, 16), Second: in(1, 4)},
			func(p seam.Plan) bool {
				return p.Upper.Left == in(5, 16) && p.Upper.TrimMin == in(1, 16) && p.Upper.TrimMax == in(1, 16)
			}},
		{"French trimmed to the metric measure", seam.French{Allowance: seam.Allowance{Fraying: true}, Trim: units.Millimetre.Of(3)},
			func(p seam.Plan) bool { return p.Upper.TrimMin == units.Millimetre.Of(3) }},
		{"felled: the edges meet", seam.FlatFelled{},
			func(p seam.Plan) bool {
				return p.Plies == 4 && p.Turned == in(1, 4) && p.Upper.TrimMin == in(5, 8) && p.Upper.TrimMax == in(5, 8) && p.Under.TrimMax == in(5, 16)
			}},
		{"felled: the edges do not meet", seam.FlatFelled{First: in(1, 2), Width: in(3, 8)},
			func(p seam.Plan) bool { return p.Plies == 3 }},
		{"bound", seam.Bound{Trim: in(3, 8)},
			func(p seam.Plan) bool {
				return p.Plies == 7 && !p.Raw && p.Upper.TrimMin == in(1, 4) && width(p, 0) == in(1, 1) && width(p, 1) == in(3, 2) && width(p, 2) == in(2, 1)
			}},
		{"plain, to one side, overcast", seam.Plain{Aside: true, Finish: seam.Overcast},
			func(p seam.Plan) bool { return p.Plies == 3 && !p.Raw && p.Rows == 0 }},
		{"plain, pinked", seam.Plain{Finish: seam.Pinked}, func(p seam.Plan) bool { return p.Plies == 2 && p.Raw }},
		{"plain, zigzagged", seam.Plain{Finish: seam.Zigzagged}, func(p seam.Plan) bool { return p.Plies == 2 && !p.Raw }},
		{"turned and stitched: wide enough for the turn", seam.TurnedStitched{},
			func(p seam.Plan) bool {
				return p.Plies == 3 && !p.Raw && p.Finished == in(3, 8) && p.Upper.TrimMin == in(1, 2) && p.Under.TrimMax == in(5, 8)
			}},
		{"mock French: the ridge pressed over", seam.MockFrench{},
			func(p seam.Plan) bool { return p.Plies == 5 && p.Finished == in(5, 16) && p.Turned == in(5, 16) }},
		{"mock felled, turned by less than half", seam.MockFelled{Turned: in(3, 16)},
			func(p seam.Plan) bool { return p.Plies == 3 && p.Finished == in(7, 16) && p.Rows == 2 }},
		{"an untrimmed fell drifts unequally", seam.UntrimmedFell{},
			func(p seam.Plan) bool {
				return p.Upper.Drift == in(3, 8) && p.Under.Drift == in(1, 8) && p.Gain == in(1, 2) && p.Plies == 4 && p.Under.TrimMin == in(1, 2)
			}},
		{"a welt", seam.Welt{Allowance: seam.Allowance{Fraying: true}},
			func(p seam.Plan) bool {
				return p.Raw && p.Rows == 1 && p.Upper.TrimMin == in(1, 2) && p.Under.TrimMin == in(1, 8) && p.Under.TrimMax == in(5, 16)
			}},
		{"lapped by the whole allowance", seam.Lapped{},
			func(p seam.Plan) bool {
				return p.Gain.IsZero() && p.Plies == 3 && p.Rows == 1 && p.Turned == in(5, 8) && p.Upper.TrimMin == in(3, 16)
			}},
		{"lapped, the under ply wider", seam.Lapped{Allowance: seam.Allowance{DraftedUnder: in(1, 1)}, Lap: in(3, 4)},
			func(p seam.Plan) bool { return p.Upper.Drift.IsZero() && p.Under.Drift == in(1, 4) }},
		{"both edges turned by 1/8, lapped by 1/4", seam.LappedTurned{Turned: in(1, 8), Lap: in(1, 4)},
			func(p seam.Plan) bool {
				return p.Upper.Taken == in(1, 4) && p.Gain == in(3, 4) && p.Plies == 4 && !p.Raw && p.Rows == 2
			}},
		{"raw edges lapped by the allowance of one", seam.LappedRaw{Lap: in(5, 8)},
			func(p seam.Plan) bool { return p.Upper.Drift == in(5, 16) && p.Gain == in(5, 8) && p.Plies == 2 }},
		{"a slot", seam.Slot{Allowance: seam.Allowance{Fraying: true}},
			func(p seam.Plan) bool {
				return p.Finished == in(1, 2) && width(p, 0) == in(3, 4) && p.Upper.TrimMin == in(3, 8) && p.Rows == 2
			}},
		{"a hairline", seam.Hairline{}, func(p seam.Plan) bool { return p.Finished == in(1, 8) && p.Plies == 3 && p.Raw }},
		{"a Hong Kong finish", seam.HongKong{Allowance: seam.Allowance{Thickness: in(1, 32)}},
			func(p seam.Plan) bool {
				return width(p, 1) == in(15, 32) && width(p, 0) == in(25, 32) && p.Plies == 5 && p.Upper.TrimMin == in(1, 4)
			}},
		{"self-bound: the edges just meet", seam.SelfBound{},
			func(p seam.Plan) bool {
				return p.Plies == 6 && p.Under.TrimMax == in(1, 8) && p.Upper.TrimMin == in(5, 8)
			}},
		{"self-bound: the edges do not meet", seam.SelfBound{Turned: in(7, 32)},
			func(p seam.Plan) bool { return p.Plies == 5 && p.Finished == in(13, 64) }},
		{"piped", seam.Piped{Allowance: seam.Allowance{Thickness: in(1, 32)}},
			func(p seam.Plan) bool {
				mark, _, err := p.Strips[0].Width.Round(in(1, 10_000), units.HalfAway)
				return err == nil && mark == in(21336, 10_000)
			}},
		{"graded in four layers", seam.Graded{Layers: 4},
			func(p seam.Plan) bool {
				return p.Plies == 6 && p.Grades[1] == in(5, 24) && p.Grades[2] == in(1, 6) && !p.Raw
			}},
	} {
		if p := planned(t, c.spec); !c.want(p) {
			t.Errorf("%s: %+v", c.why, p)
		}
	}
}

func TestTurnAtARidge(t *testing.T) {
	p := planned(t, seam.French{Allowance: seam.Allowance{Drafted: in(5, 8), Thickness: in(1, 32)}, First: in(3, 16), Second: in(1, 4)})
	thousandth := in(1, 1000)
	if mark, _, err := p.Turn.Round(thousandth, units.HalfAway); err != nil || mark != in(18, 1000) {
		t.Errorf("turn %v, %v; want about 0.018 in", p.Turn, err)
	}
	if p.Upper.Taken != in(7, 16) {
		t.Errorf("the turn is counted in what is taken: %v", p.Upper.Taken)
	}
	if q := planned(t, seam.French{}); !q.Turn.IsZero() {
		t.Errorf("turn %v though not asked", q.Turn)
	}
}
