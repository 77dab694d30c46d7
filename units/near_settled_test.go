package units_test

import (
	"encoding/json"
	"testing"

	"example.com/clothyard/units"
)

// someNear is an irrational length or an exact one, of any width.
func someNear(t *testing.T, k, num, den int64) units.Near {
	t.Helper()
	n := rootOf(t, units.RatioOf(k, 1)).Of(units.Inch.Frac(num, den))
	if k%3 == 0 {
		n = n.Add(units.Pi().Of(units.Millimetre.Frac(num, 7)))
	}
	if k%5 == 0 {
		n, _ = n.Refine(units.Millimetre.Frac(1, den*den*den*den))
	}
	return n
}

// TestSettled: a Near that is settled and its text are the same, and it encloses what
// it was.
func TestSettled(t *testing.T) {
	r := seeded(44)
	for range 3000 {
		n := someNear(t, r.Int64N(60), r.Int64N(2_000_001)-1_000_000, 1+r.Int64N(5000))
		s := n.Settled()
		lo, hi := n.Bounds()
		low, high := s.Bounds()
		if lo.Less(low) || high.Less(hi) {
			t.Fatalf("%v is settled to between %v and %v", n, low, high)
		}
		if s.String() != n.String() || s.Settled() != s {
			t.Fatalf("%v is settled as %v, and again as %v", n, s, s.Settled())
		}
		if back, err := units.ParseNear(s.String()); err != nil || back != s {
			t.Fatalf("%v is read as %v, %v", s, back, err)
		}
		text, err := json.Marshal(s)
		var back units.Near
		if e := json.Unmarshal(text, &back); err != nil || e != nil || back != s {
			t.Fatalf("%s is read as %v, %v, %v", text, back, err, e)
		}
		ratio := n.Div(units.Inch.Frac(1+r.Int64N(90), 7))
		if s := ratio.Settled(); s.String() != ratio.String() || s.Settled() != s {
			t.Fatalf("%v is settled as %v", ratio, s)
		} else if back, err := units.ParseNearRatio(s.String()); err != nil || back != s {
			t.Fatalf("%v is read as %v, %v", s, back, err)
		}
	}
	exact := units.Exactly(units.MustParse("1/3 in"))
	if exact.Settled() != exact || (units.Near{}).Settled() != (units.Near{}) || whole(3).Settled() != whole(3) || (units.NearRatio{}).Settled() != (units.NearRatio{}) {
		t.Error("what is exact is not settled as it is")
	}
	// The bounds are as far apart as one mark and a little: a whole place is lost.
	if n, err := units.ParseNear("1 mm +- 0.00096 mm"); err != nil || n.Settled().Settled() != n.Settled() || n.Settled().String() != n.String() {
		t.Error(n, n.Settled(), err)
	}
}
