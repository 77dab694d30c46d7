package units_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

func TestNotationTable(t *testing.T) {
	in, cm := units.Notation{}, units.Notation{Unit: units.Centimetre}
	cmOf := func(step units.Length) units.Notation { return units.Notation{Unit: units.Centimetre, Step: step} }
	yd := units.Notation{Unit: units.Yard, Compound: true}
	for _, c := range []struct {
		n       units.Notation
		l       string
		text    string
		residue string
		why     string
	}{
		{in, "5 5/16 in", "5 5/16 in", "0 in", "on the mark"},
		{in, "0 in", "0 in", "0 in", "nothing"},
		{in, "5 63/64 in", "scant 6 in", "-1/64 in", "a little less"},
		{in, "6 1/64 in", "full 6 in", "1/64 in", "a little more"},
		{in, "-6 1/64 in", "full -6 in", "-1/64 in", "full and scant go by the size"},
		{in, "-5 63/64 in", "scant -6 in", "1/64 in", "below zero too"},
		{in, "1/100 in", "full 0 in", "1/100 in", "more than nothing"},
		{in, "15 mm", "full 9/16 in", "0.7125 mm", "metric on a tape of inches"},
		{in, "6 1/32 in", "scant 6 1/16 in", "-1/32 in", "a tie goes away from zero, and just within the slack"},
		{units.Notation{Mode: units.Down}, "6 1/32 in", "full 6 in", "1/32 in", "down"},
		{units.Notation{Mode: units.Down}, "6 3/64 in", "6 in plus 3/64 in", "0 in", "more than the slack is written"},
		{units.Notation{Mode: units.Up}, "6 1/64 in", "6 1/16 in less 3/64 in", "0 in", "the other way"},
		{units.Notation{Slack: units.MustParse("1/100 in")}, "6 1/64 in", "6 in plus 1/64 in", "0 in", "less slack"},
		{units.Notation{Slack: units.MustParse("-1 in")}, "6 1/64 in", "6 in plus 1/64 in", "0 in", "no slack at all"},
		{units.Notation{Step: units.Inch.Frac(1, 8)}, "5 5/16 in", "5 3/8 in less 1/16 in", "0 in", "eighths"},
		{units.Notation{Step: units.Inch.Frac(1, 3)}, "2 2/3 in", "2 2/3 in", "0 in", "thirds"},
		{units.Notation{Step: units.Inch.Frac(-1, 8)}, "1/4 in", "1/4 in", "0 in", "the marks of a negative step are the same"},
		{units.Notation{Step: units.Inch.Frac(1, math.MaxInt)}, "1/2 in", "scant 4611686018427387904/9223372036854775807 in", "-1/18446744073709551614 in", "finer than anything"},
		{units.Notation{Glyphs: true}, "1 5/8 in", "1⅝ in", "0 in", "a glyph"},
		{units.Notation{Glyphs: true}, "5/8 in", "⅝ in", "0 in", "a glyph alone"},
		{units.Notation{Glyphs: true}, "1 5/16 in", "1 5/16 in", "0 in", "no glyph for sixteenths"},
		{units.Notation{Glyphs: true}, "2 in", "2 in", "0 in", "no fraction"},
		{units.Notation{Step: units.Inch.Frac(1, 1000), Decimal: true}, "5/8 in", "0.625 in", "0 in", "decimals of an inch"},
		{units.Notation{Step: units.Inch.Frac(1, 100), Decimal: true}, "5/8 in", "scant 0.63 in", "-0.127 mm", "rounded decimals"},
		{units.Notation{Decimal: true}, "1/8 in", "0.1250 in", "0 in", "sixteenths have four decimals"},
		{units.Notation{Step: units.Inch.Frac(1, 3), Decimal: true}, "5/3 in", "1 2/3 in", "0 in", "thirds have no decimals"},
		{units.Notation{Unit: units.Millimetre, Step: units.Millimetre.Of(5)}, "15 mm", "15 mm", "0 in", "5 mm"},
		{units.Notation{Unit: units.Millimetre, Step: units.Millimetre.Of(5)}, "16.5 mm", "15 mm plus 1.5 mm", "0 in", "between two of 5 mm"},
		{cmOf(units.Millimetre.Of(5)), "15 mm", "1.5 cm", "0 in", "5 mm in centimetres"},
		{cmOf(units.Millimetre.Of(5)), "20 mm", "2.0 cm", "0 in", "the same decimals on every mark"},
		{cmOf(units.Centimetre.Of(1)), "20 mm", "2 cm", "0 in", "whole centimetres"},
		{cmOf(units.Centimetre.Of(1)), "20.5 mm", "full 2 cm", "0.5 mm", "a little more than whole centimetres"},
		{cmOf(units.Centimetre.Of(1)), "2 1/3 cm", "2 cm plus 1/3 cm", "0 in", "a residue that has no decimals"},
		{cmOf(units.Centimetre.Frac(1, 3)), "2 1/3 cm", "2 1/3 cm", "0 in", "a mark that has none"},
		{cmOf(units.Inch.Frac(1, 16)), "5/8 in", "1.58750 cm", "0 in", "the marks of another tape"},
		{units.Notation{Step: units.Inch.Frac(1, 4)}, "5 1/2 in", "5 1/2 in", "0 in", "quarters"},
		{units.Notation{Step: units.Millimetre.Of(5)}, "10 mm", "50/127 in", "0 in", "a metric step in inches"},
		{units.Notation{Unit: units.Yard, Compound: true, Step: units.Millimetre.Of(5)}, "915 mm", "1 yd 3/127 in", "0 in", "and beside a yard"},
		{units.Notation{Unit: units.Yard, Compound: true, Step: units.Inch.Frac(1, 8)}, "40 1/8 in", "1 yd 4 1/8 in", "0 in", "eighths of an inch beside a yard"},
		{in, "5 127/128 in", "6 in", "-1/128 in", "within 1/4 mm of a mark"},
		{in, "6 1/128 in", "6 in", "1/128 in", "on the other side"},
		{in, "-6 1/128 in", "-6 in", "-1/128 in", "below zero too"},
		{in, "152.65 mm", "6 in", "0.25 mm", "just within"},
		{in, "152.651 mm", "full 6 in", "0.251 mm", "just outside"},
		{in, "0.1 mm", "full 0 in", "0.1 mm", "hardly anything is not nothing"},
		{units.Notation{Slack: units.MustParse("-1 in")}, "152.5 mm", "6 in plus 1/254 in", "0 in", "no slack is no slack"},
		{units.Notation{Unit: units.Millimetre, Step: units.Millimetre.Frac(1, 2)}, "15.7 mm", "15.5 mm", "0.2 mm", "marks of 1/2 mm"},
		{units.Notation{Unit: units.Millimetre, Step: units.Millimetre.Frac(1, 4)}, "15.7 mm", "scant 15.75 mm", "-0.05 mm", "finer marks"},
		{units.Notation{Unit: units.Millimetre}, "15 mm", "15 mm", "0 in", "whole millimetres"},
		{units.Notation{Unit: units.Millimetre}, "5/8 in", "16 mm", "-0.125 mm", "rounded to one"},
		{cm, "15 mm", "1.5 cm", "0 in", "one decimal"},
		{cm, "20 mm", "2.0 cm", "0 in", "kept where it is zero"},
		{units.Notation{Unit: units.Centimetre, DecimalComma: true}, "15 mm", "1,5 cm", "0 in", "a comma"},
		{units.Notation{Unit: units.Metre}, "1 yd", "full 0.914 m", "0.4 mm", "three decimals"},
		{units.Notation{Unit: units.Metre, Compound: true}, "1.345 m", "1 m 34.5 cm", "0 in", "metres and centimetres"},
		{units.Notation{Unit: units.Metre, Compound: true}, "2 m", "2 m", "0 in", "nothing over"},
		{yd, "40 1/2 in", "1 yd 4 1/2 in", "0 in", "yards and inches"},
		{yd, "36 in", "1 yd", "0 in", "nothing over"},
		{yd, "35 31/32 in", "scant 1 yd", "-1/32 in", "rounded into the yard"},
		{yd, "4 in", "4 in", "0 in", "no yards"},
		{yd, "-40 in", "-1 yd 4 in", "0 in", "one sign"},
		{yd, "0 in", "0 in", "0 in", "nothing"},
		{units.Notation{Unit: units.Foot, Compound: true}, "64 in", "5 ft 4 in", "0 in", "feet and inches"},
		{units.Notation{Unit: units.Inch, Compound: true}, "64 in", "64 in", "0 in", "nothing to compound"},
		{units.Notation{Unit: units.Yard}, "40 1/2 in", "1 1/8 yd", "0 in", "eighths of a yard"},
		{units.Notation{Unit: units.Ligne}, "5/8 in", "25 L", "0 in", "lignes"},
		{units.Notation{Unit: units.Foot}, "8 in", "11/16 ft less 1/48 ft", "0 in", "sixteenths of a foot"},
		{in, "100000000000000000000 in", "100000000000000000000 in", "0 in", "large"},
		{cm, "-100000000000000000000.25 mm", "-10000000000000000000.0 cm", "-0.25 mm", "large and below zero"},
	} {
		l := units.MustParse(c.l)
		text, residue := c.n.Format(l)
		if text != c.text || residue != units.MustParse(c.residue) {
			t.Errorf("%s in %+v (%s): %q, %v; want %q, %s", c.l, c.n, c.why, text, residue, c.text, c.residue)
		}
		if b, r := c.n.Append([]byte("x"), l); string(b) != "x"+text || r != residue {
			t.Errorf("Append of %s: %q, %v", c.l, b, r)
		}
	}
}

// aNotation is a notation at random; its step may have nothing to do with its unit.
func aNotation(r interface{ IntN(int) int }) units.Notation {
	step := units.Unit(1+r.IntN(7)).Frac(int64(r.IntN(8)-1), 1+int64(r.IntN(70)))
	if r.IntN(2) == 0 {
		step = units.Length{}
	}
	return units.Notation{
		Unit: units.Unit(r.IntN(8)), Compound: r.IntN(2) == 0, Step: step, Decimal: r.IntN(3) == 0, Glyphs: r.IntN(2) == 0,
		DecimalComma: r.IntN(4) == 0, Mode: modes[r.IntN(len(modes))], Slack: units.Inch.Frac(int64(r.IntN(3)), 64),
	}
}

// readMark reads what Format wrote: the mark and the residue as far as the text
// states it.
func readMark(n units.Notation, text string) (mark units.Length, stated units.Length, err error) {
	p := units.Parser{DecimalComma: n.DecimalComma}
	text = strings.TrimPrefix(strings.TrimPrefix(text, "scant "), "full ")
	sign := int64(1)
	head, tail, ok := strings.Cut(text, " plus ")
	if !ok {
		sign = -1
		head, tail, ok = strings.Cut(text, " less ")
	}
	if mark, err = p.Parse(head); err != nil || !ok {
		return mark, stated, err
	}
	stated, err = p.Parse(tail)
	return mark, stated.MulInt(sign), err
}

// TestNotationLaws: the text reads back to the mark and what it states beside it; the
// residue is what is then left, and within the slack.
func TestNotationLaws(t *testing.T) {
	r := seeded(13)
	for range *oracleN * 20 {
		n, l := aNotation(r), lengthOf(operand(r))
		checkNotation(t, n, l)
	}
}

func checkNotation(t *testing.T, n units.Notation, l units.Length) {
	t.Helper()
	text, residue := n.Format(l)
	if len(text) > units.MaxText {
		return
	}
	mark, stated, err := readMark(n, text)
	if err != nil || mark.Add(stated).Add(residue) != l || !mark.IsMultiple(n.Spacing()) {
		t.Fatalf("%v in %+v is %q: mark %v, residue %v, %v", l, n, text, mark, residue, err)
	}
	slack := n.Slack
	if slack.IsZero() {
		slack = units.Inch.Frac(1, 32)
	}
	hidden := strings.HasPrefix(text, "scant ") || strings.HasPrefix(text, "full ")
	switch {
	case hidden && (slack.Less(residue.Abs()) || residue.IsZero()):
		t.Fatalf("%v in %+v is %q and hides %v", l, n, text, residue)
	case !hidden && !residue.IsZero() && !mark.IsZero() && !slack.Less(residue.Abs()) && !units.Millimetre.Frac(1, 4).Less(residue.Abs()) && !n.Spacing().Less(units.Millimetre.Frac(1, 2)):
		// so near that it is the mark
	case hidden && !mark.IsZero() && !units.Millimetre.Frac(1, 4).Less(residue.Abs()) && !n.Spacing().Less(units.Millimetre.Frac(1, 2)):
		t.Fatalf("%v in %+v is %q, which is as near as the mark", l, n, text)
	case hidden && !stated.IsZero(), !hidden && !residue.IsZero():
		t.Fatalf("%v in %+v is %q, states %v and leaves %v", l, n, text, stated, residue)
	}
	if m, res := n.Round(l); m != mark || res != stated.Add(residue) {
		t.Fatalf("%v in %+v rounds to %v and %v, written %q", l, n, m, res, text)
	}
	exact := n.Exact(l)
	back, err := units.Parser{DecimalComma: n.DecimalComma}.Parse(exact)
	if len(exact) <= units.MaxText && (err != nil || back != l) {
		t.Fatalf("%v in %+v is exactly %q, read as %v, %v", l, n, exact, back, err)
	}
}

// TestNotationQuick holds the quick way of writing to the slow one, on and about the
// marks where they could part.
func TestNotationQuick(t *testing.T) {
	r := seeded(16)
	for range *oracleN * 30 {
		n := aNotation(r)
		if r.IntN(2) == 0 {
			n.Glyphs, n.Compound = false, false
			n.Step = max(n.Unit, units.Inch).Frac(1, [...]int64{1, 2, 3, 4, 8, 10, 16, 25, 32, 64, 100, 127}[r.IntN(12)])
		}
		l := n.Spacing().MulInt(r.Int64N(81) - 40).Add(n.Spacing().MulInt(r.Int64N(9) - 4).DivInt(8)).Add(base().MulInt(r.Int64N(3) - 1))
		if r.IntN(50) == 0 {
			l = base().MulInt(someInt(r))
		}
		text, residue := n.Append([]byte("x"), l)
		want, left := units.AppendAny(n, []byte("x"), l)
		if string(text) != string(want) || residue != left {
			t.Fatalf("%v in %+v is %q and %v, and the slow way %q and %v", l, n, text, residue, want, left)
		}
	}
}

func TestNotationExact(t *testing.T) {
	for _, c := range []struct {
		n       units.Notation
		l, want string
	}{
		{units.Notation{}, "1/100 in", "1/100 in"},
		{units.Notation{}, "15 mm", "75/127 in"},
		{units.Notation{Unit: units.Centimetre}, "5/8 in", "1.5875 cm"},
		{units.Notation{Unit: units.Centimetre}, "1/3 in", "127/150 cm"},
		{units.Notation{Unit: units.Centimetre, DecimalComma: true}, "5/8 in", "1,5875 cm"},
		{units.Notation{Decimal: true}, "5/8 in", "0.625 in"},
		{units.Notation{Decimal: true}, "1/3 in", "1/3 in"},
		{units.Notation{Unit: units.Yard, Compound: true, Glyphs: true}, "-40 5/8 in", "-1 yd 4⅝ in"},
		{units.Notation{Unit: units.Yard, Compound: true}, "72 in", "2 yd"},
		{units.Notation{Unit: units.Millimetre}, "100000000000000000000 mm", "100000000000000000000 mm"},
	} {
		if got := c.n.Exact(units.MustParse(c.l)); got != c.want {
			t.Errorf("%s in %+v is exactly %q, want %q", c.l, c.n, got, c.want)
		}
	}
}

// TestNotationCheck: what is no notation is refused.
func TestNotationCheck(t *testing.T) {
	for want, n := range map[string]units.Notation{
		"<nil>": {},
		"in.unit Unit(99): not known, want one of in, ft, yd, mm, cm, m, L":                                              {Unit: 99},
		"in.step -1/8 in: wrong sign, want 0 in or more":                                                                 {Step: units.Inch.Frac(-1, 8)},
		"in.mode Mode(9): not known, want one of half-away, half-even, down, up, to-zero":                                {Mode: 9},
		"in.unit Unit(8): not known, want one of in, ft, yd, mm, cm, m, L\nin.step -1 mm: wrong sign, want 0 in or more": {Unit: 8, Step: units.Millimetre.Of(-1)},
	} {
		var a fault.Audit
		n.Check(&a, "in")
		if got := fmt.Sprint(a.Err()); got != want {
			t.Errorf("%+v: %s, want %s", n, got, want)
		}
	}
}
