package seam_test

import (
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/alter"
	"example.com/clothyard/seam/dart"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
)

// The geometry that naive sums miss, each with its worked number. Gathering rows
// and hems on a flare are in the packages gather and hem.

// nearTo fails unless n rounds to want on a ten-thousandth of an inch.
func nearTo(t *testing.T, what string, n units.Near, want string) {
	t.Helper()
	step := units.Inch.Frac(1, 10_000)
	got, _, err := n.Round(step, units.HalfAway)
	if err != nil {
		t.Fatal(err)
	}
	if w, _ := units.MustParse(want).Round(step, units.HalfAway); got != w {
		t.Errorf("%s: %v, want %s", what, n, want)
	}
}

func exactTo(t *testing.T, what string, n units.Near, want units.Length) {
	t.Helper()
	if got, ok := n.Exact(); !ok || got != want {
		t.Errorf("%s: %v, want %v", what, n, want)
	}
}

func edgeOf(t *testing.T, e edge.Spec) edge.Plan {
	t.Helper()
	p, err := e.Plan()
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// 1: the cut edge of the neck is 2 3/16 in shorter than its seam line, that of the
// straight collar is not.
func TestSeamLineNotCutEdge(t *testing.T) {
	neck := edgeOf(t, edge.Spec{Net: in(33, 2), Own: edge.Take{Drafted: in(5, 8)}, Turn: units.RatioOf(-7, 2)})
	exactTo(t, "neck", neck.CutLength, in(229, 16))
	exactTo(t, "less", neck.Drafted.Sub(neck.CutLength), in(35, 16))
	collar := edgeOf(t, edge.Spec{Net: in(33, 2), Own: edge.Take{Drafted: in(5, 8)}})
	exactTo(t, "collar", collar.CutLength, in(33, 2))
}

// 2: changing the own allowance of the armhole and of the sleeve makes the ease
// grow by 1 1/10 in.
func TestOwnAllowance(t *testing.T) {
	own := edge.Take{Drafted: in(5, 8), Taken: in(3, 8)}
	armhole := edgeOf(t, edge.Spec{Net: in(75, 4), Own: own, Turn: units.RatioOf(-3, 1)})
	exactTo(t, "armhole", armhole.Change, in(-3, 4))
	sleeve := edgeOf(t, edge.Spec{Net: in(19, 1), Own: own, Turn: units.RatioOf(7, 5)})
	exactTo(t, "sleeve", sleeve.Change, in(7, 20))
	exactTo(t, "ease", sleeve.Change.Sub(armhole.Change), in(11, 10))
	shy := edgeOf(t, edge.Spec{Net: in(33, 2), Own: edge.Take{Drafted: in(5, 8), Taken: in(1, 2)}, Turn: units.RatioOf(-7, 2)})
	exactTo(t, "neck sewn shy", shy.Change, in(-7, 16))
}

// tan75 is the tangent of 75 degrees, to six places.
func tan75() units.Ratio { return units.RatioOf(933_013, 250_000) }

// 3: the gain is d over the sine, and the two angles must add up.
func TestCrossingAtAnAngle(t *testing.T) {
	drift := edge.Take{Drafted: in(5, 8), Taken: in(7, 16), Plies: 1}
	square := edgeOf(t, edge.Spec{Net: in(33, 2), Takes: []edge.Take{drift}})
	exactTo(t, "90 degrees", square.Change, in(3, 16))
	drift.Slant = tan75()
	nearTo(t, "75 degrees", edgeOf(t, edge.Spec{Net: in(33, 2), Takes: []edge.Take{drift}}).Change, "0.1941 in")
	drift.Slant = units.RatioOf(4, 3)
	exactTo(t, "tangent 4/3", edgeOf(t, edge.Spec{Net: in(33, 2), Takes: []edge.Take{drift}}).Change, in(15, 64))
	drift.Plies = 2
	exactTo(t, "two shoulders", edgeOf(t, edge.Spec{Net: in(33, 2), Takes: []edge.Take{drift, drift}}).Change, in(15, 16))

	for _, c := range []struct {
		why         string
		front, back units.Ratio
		kink        int
		sharp       bool
	}{
		{"square", units.Ratio{}, units.Ratio{}, 0, false},
		{"make two right angles", units.RatioOf(3, 4), units.RatioOf(-3, 4), 0, false},
		{"a peak", units.RatioOf(3, 4), units.Ratio{}, 1, false},
		{"a dip", units.RatioOf(-3, 4), units.RatioOf(1, 4), -1, false},
		{"a spike", units.RatioOf(3, 1), units.RatioOf(2, 1), 0, true},
	} {
		p, err := edge.Meeting{Drafted: in(5, 8), Taken: in(7, 16), Front: c.front, Back: c.back}.Plan()
		if err != nil || p.Kink.Sign() != c.kink || p.Sharp != c.sharp {
			t.Errorf("%s: %+v, %v", c.why, p, err)
		}
	}
}

// 4: at 75 degrees a mirrored and a straight allowance part by 0.10 in.
func TestMirroredAllowance(t *testing.T) {
	p, err := edge.Meeting{Drafted: in(5, 8), Taken: in(7, 16), Front: units.RatioOf(1, 1).Quo(tan75())}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	nearTo(t, "the parting", units.Exactly(p.FrontPart), "0.1005 in")
	if !p.BackPart.IsZero() {
		t.Errorf("a square piece parts by %v", p.BackPart)
	}
}

// 5: turn of cloth: in a French seam, in a ring, round an angle, in a fold.
func TestTurnOfLayers(t *testing.T) {
	denim := planned(t, seam.Spec{Kind: seam.French, Thickness: in(1, 32)})
	nearTo(t, "denim", denim.Turn, "0.0178 in")
	nearTo(t, "four seams, both plies", denim.Turn.MulInt(8), "0.1427 in")
	nearTo(t, "lawn", planned(t, seam.Spec{Kind: seam.French, Thickness: in(8, 1000)}).Turn, "0.0046 in")
	ring, err := seam.Roll{Apart: in(1, 64), Quarters: 4}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	nearTo(t, "ring", ring.Shorter, "0.0982 in")
	if got, _, err := ring.Shorter.Round(in(1, 32), units.HalfAway); err != nil || got != in(3, 32) {
		t.Errorf("to a mark: %v, %v", got, err)
	}
	over, err := seam.Roll{Apart: in(1, 16), Quarters: 2}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	nearTo(t, "collar folded over", over.Shorter, "0.1963 in")
	if n, err := over.Flat.Cmp(units.Exactly(over.Spec.Apart.DivInt(3))); n >= 0 || err != nil {
		t.Errorf("a flat fold takes %v, a third of the thickness or more", over.Flat)
	}
}

// 6: favouring changes the length of the under piece.
func TestFavouring(t *testing.T) {
	p, err := seam.Favour{Edge: in(63, 4), Bend: units.RatioOf(1, 2)}.Plan()
	if err != nil || p.Shorter != in(1, 32) || p.Row.Spec.Distance != in(1, 16) || p.Corner != in(1, 1) {
		t.Errorf("%+v, %v", p, err)
	}
}

// 9: ease goes where it may, and less than none is refused.
func TestEasePlacement(t *testing.T) {
	p, err := alter.Easing{Long: in(19, 1), Zones: alter.SleeveZones(in(73, 8), in(77, 8))}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	if p.Short != in(75, 4) || p.Ease != in(1, 4) || !p.Smooth || !p.Zones[0].Ease.IsZero() || !p.Zones[2].Ease.IsZero() ||
		!p.Zones[3].Ease.IsZero() || !p.Zones[5].Ease.IsZero() || p.Zones[4].Ease.Less(p.Zones[1].Ease) || p.Zones[3].From != in(73, 8) {
		t.Errorf("%+v", p)
	}
	if p.Zones[0].Long != in(73, 32) || p.Spec.Zones[2].Length != in(1, 2) {
		t.Errorf("underarm %v, shoulder %v", p.Zones[0].Long, p.Spec.Zones[2].Length)
	}
	if _, err := (alter.Easing{Long: in(19, 1).Sub(in(3, 8)), Zones: alter.SleeveZones(in(73, 8), in(77, 8))}).Plan(); faultPaths(t, err) != "long" {
		t.Errorf("the sleeve 1/8 in too short: %v", err)
	}
	z := alter.SleeveZones(in(10, 1), in(9, 1)) // the back is never given less
	if z[4].Share.Less(z[1].Share) {
		t.Errorf("shares %v and %v", z[1].Share, z[4].Share)
	}
}

// 10: plies at crossings.
func TestPliesAtCrossings(t *testing.T) {
	p := planned(t, seam.Spec{Kind: seam.French})
	if p.Plies != 5 || p.Stacked(3) != 15 || p.Stacked(p.Plies) != 25 {
		t.Errorf("%d plies, %d under a double hem", p.Plies, p.Stacked(3))
	}
	if p.Stacked(0) != 0 || p.Stacked(1<<30) != 0 || (seam.Plan{}).Stacked(3) != 0 {
		t.Error("layers that are none, or too many")
	}
}

// 11: 1/16 in a row is 1/4 in round the body.
func TestErrorBudget(t *testing.T) {
	take := edge.Take{Drafted: in(5, 8)}
	p := edgeOf(t, edge.Spec{Net: in(85, 2), Takes: []edge.Take{take, take}})
	if p.Budget() != in(1, 4) {
		t.Errorf("%v", p.Budget())
	}
}

// What a dart takes from the edge it opens on.
func TestDartOnItsEdge(t *testing.T) {
	p, err := dart.Spec{Length: in(6, 1), Width: in(1, 1)}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	take, ok := p.Take("dart", units.Length{})
	if !ok || take.Plies != 2 || take.Taken != in(43, 96) {
		t.Fatalf("%+v, %v", take, ok)
	}
	waist := edgeOf(t, edge.Spec{Along: in(12, 1), Takes: []edge.Take{take}})
	exactTo(t, "with the dart as drafted", waist.Sewn, in(12, 1).Sub(in(43, 48)))
	// Sewn 1/4 in narrower than the pattern's dart, the edge is as much longer.
	take, _ = p.Take("dart", in(43, 48).Add(in(1, 4)))
	exactTo(t, "with a narrower one", edgeOf(t, edge.Spec{Along: in(12, 1), Takes: []edge.Take{take}}).Change, in(1, 4))
	leg, err := dart.Spec{Leg: in(29, 4), Width: in(1, 1)}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	double, err := dart.Spec{Kind: dart.Double, Length: in(6, 1), Width: in(1, 1)}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range []dart.Plan{leg, double, {}} {
		if take, ok := p.Take("dart", units.Length{}); ok {
			t.Errorf("%+v", take)
		}
	}
}

// The widths of graded layers are the marks of an equal division.
func TestGradesAreMarks(t *testing.T) {
	for layers := 2; layers <= seam.MaxLayers; layers++ {
		p := planned(t, seam.Spec{Kind: seam.Graded, Layers: layers, Trim: in(5, 16), TrimUnder: in(1, 8)})
		i := layers - 1
		for mark := range units.Marks(p.Spec.Trim.Sub(p.Spec.TrimUnder), layers-1, units.Length{}, units.HalfAway) {
			if got, want := p.Grade(i), p.Spec.TrimUnder.Add(mark); got != want {
				t.Errorf("layer %d of %d: %v, want %v", i, layers, got, want)
			}
			i--
		}
		if i != -1 || p.Grade(layers-2).Sub(p.Grade(layers-1)) != p.Step {
			t.Errorf("%d layers: %d left, steps of %v", layers, i+1, p.Step)
		}
	}
}
