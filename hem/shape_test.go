package hem_test

import (
	"errors"
	"fmt"
	"reflect"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/strip"
)

// TestTaper: both turned folds of a hem on a flare lie 15/256 inside the straight
// run of the side edge, the hem of 3/8 turned twice at 5/64; a hem turned once and a
// turn-up have their own points, and a strip has none.
func TestTaper(t *testing.T) {
	for _, test := range []struct {
		hem  string
		want []hem.Taper
	}{
		{"double; first=3/8 in; depth=3/8 in; slope=slope 5/64; edges=4", []hem.Taper{
			{At: "finished edge"},
			{At: "first fold", Down: l("3/8"), Up: l("3/8"), Out: l("-15/512"), Inset: l("15/256")},
			{At: "raw edge", Down: l("3/4"), Inset: l("15/256")},
		}},
		{"single; depth=1 in; slope=slope 5/64; edges=4", []hem.Taper{
			{At: "finished edge"},
			{At: "raw edge", Down: l("1"), Up: l("1"), Out: l("-5/64"), Inset: l("5/32")},
		}},
		{"turn-up; depth=1 1/2 in; first=1 in; slope=slope -5/64; edges=2", []hem.Taper{
			{At: "finished edge"},
			{At: "top of the turn-up", Down: l("1 1/2"), Up: l("1 1/2"), Out: l("15/128"), Inset: l("-15/64")},
			{At: "lower fold", Down: l("3"), Inset: l("-15/64")},
			{At: "raw edge", Down: l("4"), Up: l("1"), Out: l("5/64"), Inset: l("-25/64")},
		}},
		{"faced; depth=2 in; seam=1/4 in; slope=slope 5/64; edges=4", nil},
		{"slit; depth=1/4 in", nil},
	} {
		if diff := cmp.Diff(test.want, planned(t, test.hem).Taper, cmp.Comparer(func(a, b units.Length) bool { return a == b })); diff != "" {
			t.Errorf("%s:\n%s", test.hem, diff)
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
		if got := must(t, every()[name]).Crossing(5); got != want {
			t.Errorf("%s: %d layers, want %d", name, got, want)
		}
	}
	// The turn of a narrow facing lies on the allowances of its seam.
	if p := planned(t, "faced; depth=1/2 in; seam=3/8 in; first=1/4 in"); p.Plies != 5 || p.Crossing(1) != 5 {
		t.Errorf("%d plies", p.Plies)
	}
}

// TestBoundEdge: an edge that is bound takes nothing, so that an allowance left on
// makes it too high by all of it, round a neck by as much as it turns; and four times
// the width, six times, and four times and 1 in are the same at one width only.
func TestBoundEdge(t *testing.T) {
	five8 := l("5/8")
	p := planned(t, "bound; depth=1/4 in; drafted=5/8 in; hollow=180 deg; sweep=16 1/2 in")
	if !p.Drift.IsZero() || p.CutOff != five8 || p.Round != units.Exactly(l("16 1/2")) {
		t.Errorf("cut off: %+v", p)
	}
	p = planned(t, "bound; depth=1/4 in; cut=5/8 in; hollow=180 deg; sweep=16 1/2 in")
	want := units.Exactly(l("16 1/2")).Sub(units.Pi().Of(five8)) // half a circle: theta is pi
	if p.Drift != five8 || !meet(p.Round, want) {
		t.Errorf("left on: %v, want %v", p.Round, want)
	}
	for _, f := range []string{"1/4", "1/2", "3/4"} {
		width := l(f)
		six := planned(t, "double-bound; depth="+f+" in").Strips[0].Width
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
		p := planned(t, fmt.Sprint("double; drafted=1 1/4 in; first=3/8 in; depth=3/8 in; slope=slope 5/64; edges=", edges))
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
			p := planned(t, "circular; depth=1 in; first=1/4 in; drafted=1 1/2 in; circle="+units.Turns(f).String()+"; radius="+radius+" in")
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
	p := planned(t, "bound; depth=1/4 in; sweep=84 in")
	got, err := p.Strip(l("30"), l("1/4"), units.Length{}, true).Plan()
	want, err2 := strip.Spec{Each: l("30"), Allowance: units.Give(l("1/4")), Ring: true, Least: l("84")}.Plan()
	if err != nil || err2 != nil || !reflect.DeepEqual(got, want) || got.Spec.Pieces != 3 || got.Spare != l("4 1/2") {
		t.Errorf("%+v %v %v", got, err, err2)
	}
	p = planned(t, "bias-faced; depth=1 in; seam=1/4 in; drafted=1 in; circle=1/2 turn; sweep=40 in")
	if s := p.Strip(l("30"), l("1/4"), l("1/4"), false); !l("42").Less(s.Least) || s.Ends != l("1/4") || s.Ring {
		t.Errorf("%+v", s)
	}
	for _, none := range []string{"bound; depth=1 in", "double; depth=1 in; sweep=40 in"} {
		if s := planned(t, none).Strip(l("30"), l("1/4"), units.Length{}, false); s != (strip.Spec{}) {
			t.Errorf("%s: %+v", none, s)
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

func must(t *testing.T, h hem.Any) hem.Plan {
	t.Helper()
	p, err := h.Plan()
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// TestSweepRoundCurves: an edge of which the curves might take all is refused, one a
// sixteenth longer is not. What they take is 2 x pi x Circle x Drift.
func TestSweepRoundCurves(t *testing.T) {
	s := hem.ShirtTail{Allowance: hem.Allowance{Cut: l("1/4")}, TwoTurns: hem.TwoTurns{First: l("1/4"), Depth: l("1/4")}, Curved: hem.Curved{Circle: units.Turns(units.RatioOf(1, 1))}}
	_, most := units.Pi().Of(l("1/4")).MulInt(2).Bounds()
	s.Sweep = most
	if _, err := s.Plan(); !errors.Is(err, fault.Range) || !slices.Equal(blamed(err), []string{"sweep"}) {
		t.Errorf("%v: %v", s.Sweep, err)
	}
	s.Sweep = most.Add(l("1/16"))
	if p, err := s.Plan(); err != nil || p.Drift != l("-1/4") {
		t.Errorf("%v: drift %v, %v", s.Sweep, p.Drift, err)
	}
}
