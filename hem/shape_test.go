package hem_test

import (
	"reflect"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/strip"
)

// plan is a plan that cannot fail.
func plan(t *testing.T, s hem.Spec) hem.Plan {
	t.Helper()
	p, err := s.Plan()
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// TestTaper: both turned folds of a hem on a flare lie 15/256 inside the straight
// run of the side edge, the hem of 3/8 turned twice at 5/64; a hem turned once and a
// turn-up have their own points, and a strip has none.
func TestTaper(t *testing.T) {
	flare := units.RatioOf(5, 64)
	for _, test := range []struct {
		s    hem.Spec
		want []hem.Taper
	}{
		{hem.Spec{Kind: hem.Double, First: l("3/8"), Depth: l("3/8"), Slope: flare, Edges: 4}, []hem.Taper{
			{At: "finished edge"},
			{At: "first fold", Down: l("3/8"), Up: l("3/8"), Out: l("-15/512"), Inset: l("15/256")},
			{At: "raw edge", Down: l("3/4"), Inset: l("15/256")},
		}},
		{hem.Spec{Kind: hem.Single, Depth: l("1"), Slope: flare, Edges: 4}, []hem.Taper{
			{At: "finished edge"},
			{At: "raw edge", Down: l("1"), Up: l("1"), Out: l("-5/64"), Inset: l("5/32")},
		}},
		{hem.Spec{Kind: hem.TurnUp, Depth: l("1 1/2"), First: l("1"), Slope: flare.Neg(), Edges: 2}, []hem.Taper{
			{At: "finished edge"},
			{At: "top of the turn-up", Down: l("1 1/2"), Up: l("1 1/2"), Out: l("15/128"), Inset: l("-15/64")},
			{At: "lower fold", Down: l("3"), Inset: l("-15/64")},
			{At: "raw edge", Down: l("4"), Up: l("1"), Out: l("5/64"), Inset: l("-25/64")},
		}},
		{hem.Spec{Kind: hem.FacedHem, Depth: l("2"), Seam: l("1/4"), Slope: flare, Edges: 4}, nil},
		{hem.Spec{Kind: hem.Slit, Opening: hem.Tucked, Depth: l("1/4")}, nil},
	} {
		if diff := cmp.Diff(test.want, plan(t, test.s).Taper, cmp.Comparer(func(a, b units.Length) bool { return a == b })); diff != "" {
			t.Errorf("%s:\n%s", test.s.Kind, diff)
		}
	}
}

// TestCrossingOfStrips: a strip has no ridge of the garment's seams.
func TestCrossingOfStrips(t *testing.T) {
	for name, want := range map[string]int{
		"faced":               2*5 + 2, // the garment and its allowance are doubled, the strip is not
		"bound":               5 + 4,   // the garment once
		"bound, doubled":      5 + 6,   // the same
		"turn-up":             4 * 5,   // the leg and the three layers of the turn-up
		"blind":               2 * 5,   // turned once
		"circular":            3 * 5,   // turned twice
		"single, shallow":     2 * 5,   // turned once
		"bias-faced":          2*5 + 2, // as faced
		"shirt-tail":          3 * 5,   // turned twice
		"slit, tucked":        3 * 5,   // turned twice
		"blind, turned under": 3 * 5,   // turned twice
	} {
		if got := plan(t, every()[name]).Crossing(5); got != want {
			t.Errorf("%s: %d layers, want %d", name, got, want)
		}
	}
	// The turn of a narrow facing lies on the allowances of its seam.
	if p := plan(t, hem.Spec{Kind: hem.FacedHem, Depth: l("1/2"), Seam: l("3/8"), First: l("1/4")}); p.Plies != 5 || p.Crossing(1) != 5 {
		t.Errorf("%d plies", p.Plies)
	}
}

// TestBoundEdge: an edge that is bound takes nothing, so that an allowance left on
// makes it too high by all of it, round a neck by as much as it turns; and four times
// the width, six times, and four times and 1 in are the same at one width only.
func TestBoundEdge(t *testing.T) {
	five8 := l("5/8")
	p := plan(t, hem.Spec{Kind: hem.Bound, Depth: l("1/4"), Drafted: five8, Hollow: units.RatioOf(1, 2), Sweep: l("16 1/2")})
	if !p.Drift.IsZero() || p.CutOff != five8 || p.Round != units.Exactly(l("16 1/2")) {
		t.Errorf("cut off: %+v", p)
	}
	p = plan(t, hem.Spec{Kind: hem.Bound, Depth: l("1/4"), Cut: five8, Hollow: units.RatioOf(1, 2), Sweep: l("16 1/2")})
	want := units.Exactly(l("16 1/2")).Sub(units.Pi().Of(five8)) // half a circle: theta is pi
	if p.Drift != five8 || !meet(p.Round, want) {
		t.Errorf("left on: %v, want %v", p.Round, want)
	}
	for _, f := range []string{"1/4", "1/2", "3/4"} {
		width := l(f)
		six := plan(t, hem.Spec{Kind: hem.Bound, Doubled: true, Depth: width}).StripWidth
		// Four times and 1 in keeps the seam at 1/2, which is too wide for 1/4.
		rule := width.MulInt(4).Add(l("1"))
		if six != width.MulInt(6) || (six == rule) != (f == "1/2") {
			t.Errorf("%s: %v and %v", f, six, rule)
		}
	}
}

// TestSlope19: drafted 1 1/4 and turned 3/8 twice the edge comes out 1/2 longer, and
// wider by 1/2 x slope for each edge.
func TestSlope19(t *testing.T) {
	slope := units.RatioOf(5, 64)
	for edges := 1; edges <= 4; edges++ {
		p := plan(t, hem.Spec{Kind: hem.Double, Drafted: l("1 1/4"), First: l("3/8"), Depth: l("3/8"), Slope: slope, Edges: edges})
		if p.Drift != l("1/2") || p.SweepDrift != l("1/2").Scale(slope).MulInt(int64(edges)) {
			t.Errorf("%d edges: %v", edges, p.SweepDrift)
		}
	}
}

// TestCircle: the fullness of a circle's hem is 4 pi d f, whatever the radius, and it
// is that of the flare that a circle is: the slope summed over all edges.
func TestCircle(t *testing.T) {
	four := func(d units.Length, f units.Ratio) units.Near { return units.Pi().Of(d).MulInt(4).Scale(f) }
	for _, f := range []units.Ratio{units.RatioOf(1, 1), units.RatioOf(1, 2), units.RatioOf(3, 4)} {
		var before units.Near
		for _, radius := range []string{"9", "34", "400"} {
			p := plan(t, hem.Spec{Kind: hem.Circular, Depth: l("1"), First: l("1/4"), Drafted: l("1 1/2"), Circle: f, Radius: l(radius)})
			if !meet(p.Fullness, four(l("1"), f)) || !before.IsZero() && p.Fullness != before {
				t.Errorf("%v of %s: %v", f, radius, p.Fullness)
			}
			before = p.Fullness
			// The finished edge lies 1/4 below the line.
			round := units.Pi().Of(l(radius).Add(l("1/4"))).Scale(f).MulInt(2)
			if !meet(p.Round, round) {
				t.Errorf("round %v, want %v", p.Round, round)
			}
		}
	}
}

// TestStripOf: the strip is joined by the package that joins strips, long enough for
// the curve, and there is none for another hem.
func TestStripOf(t *testing.T) {
	p := plan(t, hem.Spec{Kind: hem.Bound, Depth: l("1/4"), Sweep: l("84")})
	got, err := p.Strip(l("30"), l("1/4"), units.Length{}, true).Plan()
	want, err2 := strip.Spec{Each: l("30"), Allowance: units.Give(l("1/4")), Ring: true, Least: l("84")}.Plan()
	if err != nil || err2 != nil || !reflect.DeepEqual(got, want) || got.Spec.Pieces != 3 || got.Spare != l("4 1/2") {
		t.Errorf("%+v %v %v", got, err, err2)
	}
	p = plan(t, hem.Spec{Kind: hem.BiasFaced, Depth: l("1"), Seam: l("1/4"), Drafted: l("1"), Circle: units.RatioOf(1, 2), Sweep: l("40")})
	if s := p.Strip(l("30"), l("1/4"), l("1/4"), false); !l("42").Less(s.Least) || s.Ends != l("1/4") || s.Ring {
		t.Errorf("%+v", s)
	}
	for _, none := range []hem.Spec{{Kind: hem.Bound, Depth: l("1")}, {Kind: hem.Double, Depth: l("1"), Sweep: l("40")}} {
		if s := plan(t, none).Strip(l("30"), l("1/4"), units.Length{}, false); s != (strip.Spec{}) {
			t.Errorf("%s: %+v", none.Kind, s)
		}
	}
}

// TestSolveOfKinds checks what follows and what is assumed in the kinds that have
// their own rules.
func TestSolveOfKinds(t *testing.T) {
	for _, test := range []struct {
		why     string
		s, want hem.Spec
		assumed string
	}{
		{"blind, turned once", hem.Spec{Tape: units.InchTape, Kind: hem.Blind, Depth: l("2")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Blind, Drafted: l("2"), Cut: l("2"), Depth: l("2"), Take: l("2"), Stitch: l("1/8"), Back: l("1/4")}, "drafted cut stitch back"},
		{"blind, depth and all it takes", hem.Spec{Tape: units.InchTape, Kind: hem.Blind, Depth: l("2"), Take: l("2 1/4")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Blind, Drafted: l("2 1/4"), Cut: l("2 1/4"), First: l("1/4"), Depth: l("2"), Take: l("2 1/4"), Stitch: l("1/8"), Back: l("1/4")}, "drafted cut stitch back"},
		{"blind, at the drafted line", hem.Spec{Tape: units.InchTape, Kind: hem.Blind, Drafted: l("3/8")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Blind, Drafted: l("3/8"), Cut: l("3/8"), Depth: l("3/8"), Take: l("3/8"), Stitch: l("3/32"), Back: l("3/16")}, "cut depth take stitch back"},
		{"blind, turned under, at the drafted line", hem.Spec{Tape: units.InchTape, Kind: hem.Blind, Drafted: l("2"), First: l("1/4")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Blind, Drafted: l("2"), Cut: l("2"), First: l("1/4"), Depth: l("1 3/4"), Take: l("2"), Stitch: l("1/8"), Back: l("1/4")}, "cut depth take stitch back"},
		{"rolled, the table", hem.Spec{Tape: units.InchTape, Kind: hem.Rolled},
			hem.Spec{Tape: units.InchTape, Kind: hem.Rolled, Drafted: l("1/4"), Cut: l("1/4"), First: l("1/8"), Depth: l("1/8"), Take: l("1/4"), Stitch: l("1/16")}, "drafted cut first depth take stitch"},
		{"faced, at the drafted line", hem.Spec{Tape: units.InchTape, Kind: hem.FacedHem, Drafted: l("5/8"), Favour: l("1/16"), Depth: l("2")},
			hem.Spec{Tape: units.InchTape, Kind: hem.FacedHem, Drafted: l("5/8"), Cut: l("5/8"), First: l("1/4"), Depth: l("2"), Take: l("5/8"), Stitch: l("1/16"), Seam: l("9/16"), Favour: l("1/16")}, "cut first take stitch seam"},
		{"faced, less drafted than is rolled", hem.Spec{Tape: units.InchTape, Kind: hem.FacedHem, Drafted: l("1/16"), Favour: l("1/16"), Depth: l("1/8")},
			hem.Spec{Tape: units.InchTape, Kind: hem.FacedHem, Drafted: l("1/16"), Cut: l("1/16"), First: l("1/16"), Depth: l("1/8"), Take: l("5/16"), Stitch: l("1/32"), Seam: l("1/4"), Favour: l("1/16")}, "cut first take stitch seam"},
		{"faced, Seam follows", hem.Spec{Tape: units.InchTape, Kind: hem.BiasFaced, Take: l("3/8"), Favour: l("1/8"), Depth: l("1")},
			hem.Spec{Tape: units.InchTape, Kind: hem.BiasFaced, Drafted: l("3/8"), Cut: l("3/8"), First: l("1/4"), Depth: l("1"), Take: l("3/8"), Stitch: l("1/16"), Seam: l("1/4"), Favour: l("1/8")}, "drafted cut first stitch"},
		{"bound, nothing left on", hem.Spec{Tape: units.InchTape, Kind: hem.Bound, Depth: l("1/4")},
			hem.Spec{Tape: units.InchTape, Kind: hem.Bound, Depth: l("1/4"), First: l("1/4"), Seam: l("1/4")}, "first seam"},
		{"bound, left on", hem.Spec{Tape: units.InchTape, Kind: hem.Bound, Depth: l("1/4"), Cut: l("1/8"), Doubled: true},
			hem.Spec{Tape: units.InchTape, Kind: hem.Bound, Drafted: l("1/8"), Cut: l("1/8"), Depth: l("1/4"), Seam: l("1/4"), Doubled: true}, "drafted seam"},
		{"circular, the table", hem.Spec{Tape: units.InchTape, Kind: hem.Circular},
			hem.Spec{Tape: units.InchTape, Kind: hem.Circular, Drafted: l("1/2"), Cut: l("1/2"), First: l("1/4"), Depth: l("1/4"), Take: l("1/2"), Stitch: l("1/16"), Circle: units.RatioOf(1, 1)}, "drafted cut first depth take stitch circle"},
		{"turn-up, thirds", hem.Spec{Tape: units.InchTape, Kind: hem.TurnUp, Drafted: l("4 1/2")},
			hem.Spec{Tape: units.InchTape, Kind: hem.TurnUp, Drafted: l("4 1/2"), Cut: l("4 1/2"), First: l("1 1/2"), Depth: l("1 1/2"), Take: l("4 1/2"), Stitch: l("1/4")}, "cut first depth take stitch"},
		{"turn-up, depth follows", hem.Spec{Tape: units.InchTape, Kind: hem.TurnUp, First: l("1/4"), Take: l("4")},
			hem.Spec{Tape: units.InchTape, Kind: hem.TurnUp, Drafted: l("4"), Cut: l("4"), First: l("1/4"), Depth: l("1 7/8"), Take: l("4"), Stitch: l("1/8")}, "drafted cut stitch"},
		{"turn-up, as deep inside", hem.Spec{Tape: units.InchTape, Kind: hem.TurnUp, Depth: l("2"), Drafted: l("5")},
			hem.Spec{Tape: units.InchTape, Kind: hem.TurnUp, Drafted: l("5"), Cut: l("5"), First: l("2"), Depth: l("2"), Take: l("6"), Stitch: l("1/4")}, "cut first take stitch"},
	} {
		p, err := test.s.Plan()
		if err != nil || p.Spec != test.want || strings.Join(p.Assumed, " ") != test.assumed {
			t.Errorf("%s: %v\ngot  %+v %q\nwant %+v %q", test.why, err, p.Spec, p.Assumed, test.want, test.assumed)
		}
	}
}

// meet reports whether two enclosures have a length in common, as two of one length
// have.
func meet(a, b units.Near) bool {
	aLow, aHigh := a.Bounds()
	bLow, bHigh := b.Bounds()
	return !aHigh.Less(bLow) && !bHigh.Less(aLow)
}
