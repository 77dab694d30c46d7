package seam_test

import (
	"testing"

	"example.com/clothyard/seam/dart"
	"example.com/clothyard/units"
)

// What stays of a dart is measured between the ends of its legs, which pivoting
// does not shorten.
func TestPivotLeavesBetweenTheLegs(t *testing.T) {
	for _, c := range []struct {
		why  string
		v    dart.Pivot
		want string
	}{
		{"a third of its tangent stays", dart.Pivot{Length: in(3, 1), Width: in(3, 1), Turn: units.RatioOf(1, 4), To: in(3, 1)}, "1.4552 in"},
		{"a right angle, of which a 3-4-5 turn stays", dart.Pivot{Length: in(5, 1), Width: in(10, 1), Turn: units.RatioOf(3, 4), ToLeg: in(5, 1)}, "2 in"},
		{"nothing stays", dart.Pivot{Length: in(3, 1), Width: in(3, 1), To: in(3, 1)}, "0 in"},
	} {
		p, err := c.v.Plan()
		if err != nil {
			t.Fatal(err)
		}
		nearTo(t, c.why, p.Left, c.want)
		if err := p.Sheet().Check(); err != nil {
			t.Errorf("%s: %v", c.why, err)
		}
	}
}

// The whole dart may be given as it is assumed, whatever its terms.
func TestPivotTakesItsDefaultTurn(t *testing.T) {
	v := dart.Pivot{Length: units.Metre.Frac(1000003, 1000033), Width: units.Metre.Frac(1, 9), To: in(3, 1)}
	p, err := v.Plan()
	if err != nil {
		t.Fatal(err)
	}
	again, err := p.Spec.Plan()
	if p.Assumed, again.Assumed = "", ""; err != nil || again != p {
		t.Errorf("solved again: %+v, %v", again, err)
	}
	if v.Turn = units.RatioOf(1, 1000003); !v.Turn.Less(p.Spec.Turn) {
		t.Fatal("the turn is more than the dart")
	}
	if _, err := v.Plan(); err == nil {
		t.Error("a turn finer than any angle is taken")
	}
}
