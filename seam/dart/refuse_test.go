package dart_test

import (
	"math"
	"testing"

	"example.com/clothyard/seam/dart"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
)

func TestRefusals(t *testing.T) {
	minus := in(-1, 8)
	slope := func(num, den int64) units.Angle { return units.Slope(units.RatioOf(num, den)) }
	degrees := func(n int64) units.Angle { return units.Degrees(units.RatioOf(n, 1)) }
	inch := in(1, 1)
	for _, c := range []struct {
		why   string
		spec  any
		paths string // none for what is taken
		kind  fault.Kind
	}{
		{"no such dart", dart.Spec{Kind: 99, Length: minus}, "kind", fault.Unknown},
		{"double-pointed, nothing", dart.Spec{Kind: dart.Double}, "length width", fault.Missing},
		{"double-pointed, what it does not read", dart.Spec{Kind: dart.Double, Length: inch, Leg: inch, Other: inch, Width: inch, End: inch, Allowance: inch, Stop: inch, Trim: inch, Slope: slope(1, 2)},
			"leg other end allowance stop trim slope", fault.Unused},
		{"double-pointed, below zero", dart.Spec{Kind: dart.Double, Length: inch, Width: inch, Lower: minus, Overlap: minus}, "lower overlap", fault.Sign},
		{"double-pointed, all overlap", dart.Spec{Kind: dart.Double, Length: inch, Width: inch, Overlap: in(2, 1)}, "overlap", fault.Range},
		{"single, what it does not read", dart.Spec{Length: in(6, 1), Width: inch, Lower: inch, End: inch, Overlap: inch}, "lower end overlap", fault.Unused},
		{"the other leg without one", dart.Spec{Length: in(6, 1), Other: in(6, 1), Width: inch}, "other", fault.Unused},
		{"open-ended, nothing", dart.Spec{Kind: dart.OpenEnded}, "length width end", fault.Missing},
		{"open-ended, widening", dart.Spec{Kind: dart.OpenEnded, Length: in(6, 1), Width: inch, End: in(2, 1)}, "end", fault.Range},
		{"open-ended, all allowance", dart.Spec{Kind: dart.OpenEnded, Length: in(5, 8), Width: inch, End: inch}, "length", fault.Range},
		{"French, trim wider than the fold", dart.Spec{Kind: dart.French, Length: in(6, 1), Width: inch, Trim: inch}, "trim", fault.Range},
		{"an edge along the dart", dart.Spec{Length: in(6, 1), Width: inch, Slope: degrees(90)}, "slope", fault.Range},
		{"no move", dart.Pivot{}, "length width to", fault.Missing},
		{"a move below zero", dart.Pivot{Length: minus, Width: minus, Turn: degrees(-1), To: minus, ToLeg: minus}, "length width turn to toLeg", fault.Sign},
		{"a move told twice", dart.Pivot{Length: inch, Width: inch, To: inch, ToLeg: inch}, "toLeg", fault.Unused},
		{"more than the dart", dart.Pivot{Length: in(6, 1), Width: inch, Turn: degrees(10), To: inch}, "turn", fault.Range},
		{"a slope as steep as may be", dart.Spec{Length: in(6, 1), Width: in(1, 1), Slope: slope(-1_000_000, 1)}, "", fault.Range},
		{"the whole dart moved", dart.Pivot{Length: in(6, 1), Width: in(1, 1), Turn: slope(24, 143), To: in(1, 1)}, "", fault.Range},
		{"a dart one past the last", dart.Spec{Kind: dart.OpenEnded + 1}, "kind", fault.Unknown},
	} {
		t.Run(c.why, func(t *testing.T) { nountest.Refused(t, dart.Nouns(), c.spec, c.paths, c.kind) })
	}
}

// What a fault says would have been right.
func TestLimits(t *testing.T) {
	for _, c := range []struct {
		spec any
		want string
	}{
		{dart.Spec{Kind: dart.OpenEnded, Length: in(4, 1), End: in(1, 1)}, "width: not given, want more than 0 in"},
		{dart.Pivot{Length: in(6, 1), Width: in(1, 1), Turn: units.Degrees(units.RatioOf(30, 1)), To: in(1, 1)}, "turn 30 deg: out of range, want at most slope 24/143 (the whole dart)"},
	} {
		if _, err := nountest.Planned(t, dart.Nouns(), c.spec); err == nil || err.Error() != c.want {
			t.Errorf("%+v:\n%v\nwant\n%s", c.spec, err, c.want)
		}
	}
}

// huge is 10 to the power of 19 n inches.
func huge(n int) units.Length {
	l := units.Inch.Of(1)
	for range n {
		l = l.MulInt(math.MaxInt64)
	}
	return l
}

// Lengths beyond measure are worked out, or refused with a fault.
func TestHuge(t *testing.T) {
	for _, big := range []units.Length{huge(16), huge(400)} {
		for _, spec := range []any{
			dart.Spec{Length: big, Width: in(1, 1)}, dart.Spec{Kind: dart.Double, Length: big, Lower: in(1, 3), Width: big},
			dart.Spec{Kind: dart.French, Leg: big, Width: in(1, 3)}, dart.Spec{Kind: dart.OpenEnded, Length: big, Width: big, End: in(1, 7)},
			dart.Pivot{Length: big, Width: in(1, 3), To: big}, dart.Pivot{Length: big, Width: big, ToLeg: big, X: big},
		} {
			if _, err := nountest.Planned(t, dart.Nouns(), spec); err != nil {
				nountest.Paths(t, err)
			}
		}
	}
}
