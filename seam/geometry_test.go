package seam_test

import (
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
)

// The geometry that naive sums miss, each with its worked number. Gathering rows
// and hems on a flare are in the packages gather and hem.

// 5: turn of cloth: in a French seam, in a ring, round an angle, in a fold.
func TestTurnOfLayers(t *testing.T) {
	denim := planned(t, seam.French{Allowance: seam.Allowance{Thickness: in(1, 32)}})
	nountest.NearTo(t, "denim", denim.Turn, "0.0178 in")
	nountest.NearTo(t, "four seams, both plies", denim.Turn.MulInt(8), "0.1427 in")
	nountest.NearTo(t, "lawn", planned(t, seam.French{Allowance: seam.Allowance{Thickness: in(8, 1000)}}).Turn, "0.0046 in")
	ring, err := seam.Roll{Apart: in(1, 64), Angle: units.Turns(units.RatioOf(1, 1))}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	nountest.NearTo(t, "ring", ring.Shorter, "0.0982 in")
	if got, _, err := ring.Shorter.Round(in(1, 32), units.HalfAway); err != nil || got != in(3, 32) {
		t.Errorf("to a mark: %v, %v", got, err)
	}
	over, err := seam.Roll{Apart: in(1, 16), Angle: units.Degrees(units.RatioOf(180, 1))}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	nountest.NearTo(t, "collar folded over", over.Shorter, "0.1963 in")
	if n, err := over.Flat.Cmp(units.Exactly(over.Spec.Apart.DivInt(3))); n >= 0 || err != nil {
		t.Errorf("a flat fold takes %v, a third of the thickness or more", over.Flat)
	}
}

// 6: favouring changes the length of the under piece.
func TestFavouring(t *testing.T) {
	p, err := seam.Favour{Edge: in(63, 4), Bend: rad(1, 2)}.Plan()
	if err != nil || p.Shorter != units.Exactly(in(1, 32)) || p.Row.Spec.Distance != in(1, 16) || p.Corner != in(1, 1) {
		t.Errorf("%+v, %v", p, err)
	}
}

// 10: plies of a French seam, under a double hem too.
func TestPliesAtCrossings(t *testing.T) {
	if p := planned(t, seam.French{}); p.Plies != 5 || p.Plies*3 != 15 {
		t.Errorf("%d plies", p.Plies)
	}
}

// The widths of graded layers are the marks of an equal division.
func TestGradesAreMarks(t *testing.T) {
	for layers := 2; layers <= seam.MaxLayers; layers++ {
		p := planned(t, seam.Graded{Layers: layers, Widest: in(5, 16), Narrowest: in(1, 8)})
		i := layers - 1
		for mark := range units.Marks(in(3, 16), layers-1, units.Length{}, units.HalfAway) {
			if got, want := p.Grades[i], in(1, 8).Add(mark); got != want {
				t.Errorf("layer %d of %d: %v, want %v", i, layers, got, want)
			}
			i--
		}
		if i != -1 || len(p.Grades) != layers {
			t.Errorf("%d layers: %d left, %v", layers, i+1, p.Grades)
		}
	}
}
