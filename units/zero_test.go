package units_test

import (
	"fmt"
	"testing"

	"example.com/clothyard/units"
)

// TestZeroValues sends the zero value of each type through each of its methods.
func TestZeroValues(t *testing.T) {
	var l units.Length
	var q units.Ratio
	var a units.Area
	var n units.Near
	var nr units.NearRatio
	var no units.Notation
	var u units.Unit
	one, inch := units.RatioOf(1, 1), units.Inch.Of(1)
	holds := func(what string, ok bool) {
		t.Helper()
		if !ok {
			t.Error(what)
		}
	}
	holds("Length", l.Add(l) == l && l.Sub(l) == l && l.Neg() == l && l.Abs() == l && l.MulInt(5) == l && l.DivInt(5) == l && l.Scale(q) == l &&
		l.Unscale(one) == l && l.Div(inch) == q && l.Times(l) == a && l.In(units.Yard) == q && l.Sign() == 0 && l.IsZero() && l.Cmp(l) == 0 && !l.Less(l) &&
		l.Min(l) == l && l.Max(l) == l && l.IsMultiple(l) && !inch.IsMultiple(l) && l.IsMultiple(inch) && units.Sum() == l && l.String() == "0 in")
	holds("Ratio", q.Add(q) == q && q.Sub(q) == q && q.Mul(q) == q && q.Quo(one) == q && q.Neg() == q && q.Abs() == q && q.Sign() == 0 && q.IsZero() && q.IsInt() &&
		q.Cmp(q) == 0 && !q.Less(q) && q.Rat().Sign() == 0 && units.FromRat(q.Rat()) == q && q.String() == "0")
	holds("Area", a.Add(a) == a && a.Sub(a) == a && a.Neg() == a && a.Sign() == 0 && a.IsZero() && a.Cmp(a) == 0 && a.MulInt(5) == a && a.Scale(q) == a &&
		a.Over(inch) == l && a.Div(inch.Times(inch)) == q && a.In(units.Inch) == q && a.String() == "0 sq in")
	holds("NearRatio", nr.Add(nr) == nr && nr.Sub(nr) == nr && nr.Mul(nr) == nr && nr.Scale(one) == nr && nr.Of(inch) == n && nr.IsZero() && nr.Mid() == q &&
		nr.Within() == q && nr.String() == "0" && units.ExactlyRatio(q) == nr)
	holds("Near", n.Add(n) == n && n.Sub(n) == n && n.Plus(l) == n && n.Scale(one) == n && n.DivInt(5) == n && n.Div(inch) == nr && n.Mid() == l && n.Within() == l)
	text, residue := no.Format(l)
	holds("Notation", text == "0 in" && residue == l && no.Spacing() == inch.DivInt(16) && no.Exact(l) == "0 in")
	holds("Unit", !u.Valid() && !u.Metric() && u == units.NoUnit && u.String() == "none")
	holds("Parser", func() bool { v, err := units.Parser{}.Parse("0 in"); return v == l && err == nil }())
	holds("Mode", units.Mode(0) == units.HalfAway)
	holds("ParseError", (&units.ParseError{}).Error() != "")
	holds("a ChartRow", units.ChartRow{}.Off() == l)
	holds("fmt", fmt.Sprint(l, q, a, n, nr) == "0 in 0 0 sq in 0 in 0")
}

// TestPanics are all the panics there are: division by zero, and units that are none.
func TestPanics(t *testing.T) {
	inch := units.Inch.Of(1)
	wide := units.MustParse("100000000000000000000 in")
	for what, f := range map[string]func(){
		"DivInt":            func() { inch.DivInt(0) },
		"DivInt of zero":    func() { units.Length{}.DivInt(0) },
		"DivInt wide":       func() { wide.DivInt(0) },
		"Unscale":           func() { inch.Unscale(units.Ratio{}) },
		"Div":               func() { inch.Div(units.Length{}) },
		"Quo":               func() { units.RatioOf(1, 1).Quo(units.Ratio{}) },
		"RatioOf":           func() { units.RatioOf(1, 0) },
		"Frac":              func() { units.Inch.Frac(1, 0) },
		"Mixed":             func() { units.Inch.Mixed(1, 1, 0) },
		"Over":              func() { inch.Times(inch).Over(units.Length{}) },
		"Area.Div":          func() { inch.Times(inch).Div(units.Area{}) },
		"In no unit":        func() { inch.In(units.NoUnit) },
		"Area.In no unit":   func() { inch.Times(inch).In(units.Unit(99)) },
		"Of no unit":        func() { units.NoUnit.Of(1) },
		"Format in no unit": func() { units.Notation{Unit: 99}.Format(inch) },
		"Frac of no unit":   func() { units.Unit(99).Frac(1, 2) },
		"a Near over zero":  func() { units.Exactly(inch).DivInt(0) },
		"a Near by nothing": func() { units.Exactly(inch).Div(units.Length{}) },
	} {
		mustPanic(t, what, f)
	}
}

// TestUnits counts the units and their sizes in each other.
func TestUnits(t *testing.T) {
	var all []units.Unit
	for u := range units.Units {
		all = append(all, u)
		if !u.Valid() || u.Metric() != (u == units.Millimetre || u == units.Centimetre || u == units.Metre) {
			t.Error(u)
		}
	}
	if len(all) != 7 {
		t.Errorf("%d units", len(all))
	}
	for range units.Units {
		break // an iterator that is left early stops
	}
	for range units.ChartRows() {
		break
	}
}
