package units_test

import (
	"errors"
	"math/big"
	"testing"

	"example.com/clothyard/units"
)

// Sums and multiples of one circle are compared by what they are, not by bounds.
func TestNearOfOneKind(t *testing.T) {
	circle := func(s string) units.Near { return units.Pi().Of(units.MustParse(s)) }
	root, err := units.SqrtRatio(units.RatioOf(2, 1))
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		why  string
		a, b units.Near
		want int
	}{
		{"ten and one are eleven", circle("10 in").Add(circle("1 in")), circle("11 in"), 0},
		{"a multiple and back", circle("1 in").MulInt(7).DivInt(7), circle("1 in"), 0},
		{"added and taken off again", circle("3 in").Add(circle("1/3 in")).Sub(circle("1/3 in")), circle("3 in"), 0},
		{"with exact parts", circle("1 in").Plus(units.Inch.Of(2)).MulInt(3), circle("3 in").Plus(units.Inch.Of(6)), 0},
		{"one micrometre more", circle("1 in").Plus(units.Millimetre.Frac(1, 1000)), circle("1 in"), 1},
		{"negative", circle("1 in").Neg(), circle("1 in"), -1},
		{"a diagonal twice", root.Of(units.Inch.Of(2)), root.Scale(units.RatioOf(2, 1)).Of(units.Inch.Of(1)), 0},
	} {
		if got, err := c.a.Cmp(c.b); got != c.want || err != nil {
			t.Errorf("%s: %d, %v", c.why, got, err)
		}
	}
	if n := circle("1 in").Sub(circle("1 in")); !n.IsZero() {
		t.Errorf("what cancels is exact: %v", n)
	}
	if l, ok := circle("2 in").Plus(units.Inch.Of(1)).Sub(circle("2 in")).Exact(); !ok || l != units.Inch.Of(1) {
		t.Errorf("what cancels leaves the exact part: %v", l)
	}
	// Four thousand circles are enclosed as closely as one.
	sum := circle("1 in")
	for range 3999 {
		sum = sum.Add(circle("1 in"))
	}
	if got, want := sum.Within(), circle("4000 in").Within(); want.MulInt(2).Less(got) {
		t.Errorf("within %v, want about %v", got, want)
	}
	// The sharper bounds of the two are used.
	sharp, err := circle("1 in").Refine(units.Millimetre.Frac(1, 1_000_000_000))
	if err != nil {
		t.Fatal(err)
	}
	for _, n := range []units.Near{circle("1 in").Add(sharp), sharp.Add(circle("1 in")), sharp.Neg().Add(circle("3 in"))} {
		if units.Millimetre.Frac(1, 100_000_000).Less(n.Within()) {
			t.Errorf("within %v", n.Within())
		}
	}
}

func TestNearUnder(t *testing.T) {
	girth := units.Pi().Of(units.Inch.Of(1))
	n, err := girth.Under(units.Inch.Of(22))
	if err != nil {
		t.Fatal(err)
	}
	// 22/pi = 7.00281...
	lo, hi := n.Bounds()
	if lo.Cmp(units.RatioOf(700281, 100000)) < 0 || hi.Cmp(units.RatioOf(700282, 100000)) > 0 || !lo.Less(hi) {
		t.Errorf("22/pi is %v to %v", lo, hi)
	}
	// Back again: 22/pi times pi is 22, and no nearer question can tell them apart.
	if back := n.Mul(units.Pi()); back.Within().IsZero() {
		t.Errorf("%v", back)
	} else if lo, hi := back.Bounds(); lo.Cmp(units.RatioOf(22, 1)) > 0 || hi.Cmp(units.RatioOf(22, 1)) < 0 {
		t.Errorf("22 is not within %v", back)
	}
	// A divisor of which only the sign must first be found out, of either sign.
	near := girth.Sub(units.Exactly(units.MustParse("3.14159265358979 in")))
	nearer := girth.Sub(units.Exactly(units.MustParse("3.14159265358979323846264338327950288 in")))
	for _, d := range []units.Near{near, near.Neg(), nearer} {
		q, err := d.Under(units.Inch.Of(1))
		if err != nil {
			t.Fatal(err)
		}
		want, _ := d.Sign()
		if got, err := q.Sign(); got != want || err != nil {
			t.Errorf("the sign of 1 / %v is %d, %v", d, got, err)
		}
		// A sum with it can be refined: the division is part of how it is made.
		if _, err := q.Of(units.Inch.Of(1)).Refine(units.Millimetre.Of(1)); err != nil {
			t.Error(err)
		}
	}
	// Bounds above zero, from text, or with the greater number below, are divided by as they are.
	text, err := units.ParseNear("-2 mm +- 1 mm")
	if err != nil {
		t.Fatal(err)
	}
	if q, err := text.Under(units.Millimetre.Of(6)); err != nil || q.String() != "-4 +- 2" {
		t.Errorf("%v, %v", q, err)
	}
	if q, err := text.Under(units.Millimetre.Of(-6)); err != nil || q.String() != "4 +- 2" {
		t.Errorf("%v, %v", q, err)
	}
	if q, err := units.Exactly(units.Inch.Of(4)).Under(units.Inch.Of(2)); err != nil || q != units.ExactlyRatio(units.RatioOf(1, 2)) {
		t.Errorf("%v, %v", q, err)
	}
	if q, err := girth.Under(units.Length{}); err != nil || !q.IsZero() {
		t.Errorf("0 over a circle is %v, %v", q, err)
	}
	opaque, err := units.ParseNear("0 mm +- 1 mm")
	if err != nil {
		t.Fatal(err)
	}
	for _, zero := range []units.Near{{}, opaque} {
		if _, err := zero.Under(units.Inch.Of(1)); !errors.Is(err, units.ErrBound) {
			t.Errorf("1 over %v: %v", zero, err)
		}
	}
}

// A product of two enclosures encloses the product, whatever their signs.
func TestNearRatioMul(t *testing.T) {
	two, err := units.SqrtRatio(units.RatioOf(2, 1))
	if err != nil {
		t.Fatal(err)
	}
	minus := two.Scale(units.RatioOf(-1, 1))
	around, err := units.ParseNearRatio("0 +- 3")
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		a, b units.NearRatio
		want int64
	}{{two, two, 2}, {two, minus, -2}, {minus, two, -2}, {minus, minus, 2}} {
		lo, hi := c.a.Mul(c.b).Bounds()
		if want := units.RatioOf(c.want, 1); lo.Cmp(want) > 0 || hi.Cmp(want) < 0 {
			t.Errorf("%v x %v is %v to %v", c.a, c.b, lo, hi)
		}
	}
	for _, c := range [][2]units.NearRatio{{around, two}, {two, around}, {around, minus}, {minus, around}} {
		lo, hi := c[0].Mul(c[1]).Bounds()
		if lo.Cmp(units.RatioOf(-424, 100)) > 0 || hi.Cmp(units.RatioOf(424, 100)) < 0 {
			t.Errorf("%v x %v is %v to %v", c[0], c[1], lo, hi)
		}
	}
	half := units.ExactlyRatio(units.RatioOf(1, 2))
	if two.Mul(half) != half.Mul(two) || two.Mul(half) != two.Scale(units.RatioOf(1, 2)) {
		t.Error("times an exact number")
	}
}

// The root of a number too long to be kept is given up, and says so.
func TestRootTooLong(t *testing.T) {
	r := units.FromRat(new(big.Rat).SetInt(new(big.Int).Add(new(big.Int).Lsh(big.NewInt(1), 1<<18), big.NewInt(1))))
	if _, err := units.SqrtRatio(r); !errors.Is(err, units.ErrBound) {
		t.Errorf("%v", err)
	}
}
