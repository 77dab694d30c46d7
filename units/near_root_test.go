package units_test

import (
	"fmt"
	"math/big"
	"testing"

	"example.com/clothyard/units"
)

func rootOf(t *testing.T, r units.Ratio) units.NearRatio {
	t.Helper()
	n, err := units.SqrtRatio(r)
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// Roots are compared by what they are, however they were come by.
func TestRootsAlike(t *testing.T) {
	root := func(n, d int64) units.NearRatio { return rootOf(t, units.RatioOf(n, d)) }
	times := func(n units.NearRatio, num, den int64) units.NearRatio { return n.Scale(units.RatioOf(num, den)) }
	quo := func(a, b units.NearRatio) units.NearRatio {
		n, err := a.Quo(b)
		if err != nil {
			t.Fatal(err)
		}
		return n
	}
	one := whole(1)
	for _, c := range []struct {
		why  string
		a, b units.NearRatio
	}{
		{"root 8 is twice root 2", root(8, 1), times(root(2, 1), 2, 1)},
		{"root 2 and root 8 are root 18", root(2, 1).Add(root(8, 1)), root(18, 1)},
		{"root 1/2 is half of root 2", root(1, 2), times(root(2, 1), 1, 2)},
		{"a diagonal is root 2", units.Diagonal(), root(2, 1)},
		{"root 2 x root 2", root(2, 1).Mul(root(2, 1)), whole(2)},
		{"root 2 x root 3", root(2, 1).Mul(root(3, 1)), root(6, 1)},
		{"root 6 x root 3", root(6, 1).Mul(root(3, 1)), times(root(2, 1), 3, 1)},
		{"root 2/3 x root 3/2", root(2, 3).Mul(root(3, 2)), one},
		{"(1 + root 2) (1 - root 2)", one.Add(root(2, 1)).Mul(one.Sub(root(2, 1))), one.Neg()},
		{"(1 + root 2) (1 + root 2)", one.Add(root(2, 1)).Mul(one.Add(root(2, 1))), whole(3).Add(root(8, 1))},
		{"1 / root 2", quo(one, root(2, 1)), root(1, 2)},
		{"1 / (root 2 - 1)", quo(one, root(2, 1).Sub(one)), root(2, 1).Add(one)},
		{"1 / (1 - root 2)", quo(one, one.Sub(root(2, 1))), root(2, 1).Add(one).Neg()},
		{"root 10 / root 5", quo(root(10, 1), root(5, 1)), root(2, 1)},
		{"pi / pi", quo(units.Pi(), units.Pi().Scale(units.RatioOf(3, 1))), units.ExactlyRatio(units.RatioOf(1, 3))},
		{"root 2 x pi is pi x root 2", root(2, 1).Mul(units.Pi()), units.Pi().Mul(root(2, 1))},
		{"root 2 + pi is pi + root 2", root(2, 1).Add(units.Pi()), units.Pi().Add(root(2, 1))},
		{"a great prime, squared and doubled", root(2*1_000_003*1_000_003, 1), times(root(2, 1), 1_000_003, 1)},
		{"two primes", root(1_000_003*999_983, 1), root(999_983*1_000_003, 1)},
	} {
		if got, err := c.a.Cmp(c.b); got != 0 || err != nil {
			t.Errorf("%s: %v against %v is %d, %v", c.why, c.a, c.b, got, err)
		}
	}
	// And told apart where they are not.
	if got, err := root(2, 1).Add(root(3, 1)).Cmp(root(10, 1)); got != -1 || err != nil {
		t.Error(got, err)
	}
	// Once shifted, different roots do not multiply to one, and yet are enclosed.
	n := root(2, 1).Add(one).Mul(root(3, 1))
	if lo, hi := n.Bounds(); lo.Rat().Cmp(bigRat("4.1815405503520555")) > 0 || hi.Rat().Cmp(bigRat("4.1815405503520557")) < 0 {
		t.Error(n)
	}
	m := root(3, 1).Mul(root(2, 1).Add(one))
	if c, err := n.Cmp(m); c != 0 || err != nil {
		t.Error(c, err)
	}
}

// TestRootLaws takes roots at random: root(s s k) is s root k, and the algebra of
// a + b root k holds.
func TestRootLaws(t *testing.T) {
	r := seeded(32)
	for range 300 {
		s := big.NewRat(1+r.Int64N(5000), 1+r.Int64N(5000))
		k := big.NewRat(1+r.Int64N(5000), 1+r.Int64N(5000))
		square := new(big.Rat).Mul(s, s)
		a := rootOf(t, units.FromRat(square.Mul(square, k)))
		b := rootOf(t, units.FromRat(k))
		if c, err := a.Cmp(b.Scale(units.FromRat(s))); c != 0 || err != nil {
			t.Fatalf("root of %v x %v x %v: %d, %v", s, s, k, c, err)
		}
		if v, ok := b.Mul(b).Exact(); !ok || v.Rat().Cmp(k) != 0 {
			t.Fatalf("the square of the root of %v is %v", k, v)
		}
		x := b.Plus(units.RatioOf(r.Int64N(100)-50, 1+r.Int64N(9))).Scale(units.RatioOf(1+r.Int64N(9), 7))
		if _, exact := b.Exact(); exact && x.IsZero() {
			continue
		}
		inverse, err := whole(1).Quo(x)
		if err != nil {
			t.Fatal(x, err)
		}
		if v, ok := inverse.Mul(x).Exact(); !ok || v != units.RatioOf(1, 1) {
			t.Fatalf("%v over itself is %v", x, inverse.Mul(x))
		}
		fine, err := inverse.Refine(units.RatioOf(1, 1e15))
		if err != nil || units.RatioOf(1, 1e15).Less(fine.Within()) {
			t.Fatal(fine, err)
		}
		lo, hi := inverse.Bounds()
		if l, h := fine.Bounds(); l.Less(lo.Sub(units.RatioOf(1, 1e15))) || hi.Add(units.RatioOf(1, 1e15)).Less(h) {
			t.Fatalf("%v is refined to %v", inverse, fine)
		}
	}
}

func TestHypot(t *testing.T) {
	in := units.Inch.Of
	n, err := units.Hypot(in(3), in(4), units.Length{})
	if l, ok := n.Exact(); !ok || l != in(5) || err != nil {
		t.Error(n, err)
	}
	n, err = units.Hypot(in(2), in(2), units.Length{})
	if c, e := n.Cmp(units.Diagonal().Of(in(2))); c != 0 || err != nil || e != nil {
		t.Error(n, err, e)
	}
	n, err = units.Hypot(in(1), in(0), units.Length{})
	if l, ok := n.Exact(); !ok || l != in(1) || err != nil {
		t.Error(n, err)
	}
	fine := units.Millimetre.Frac(1, 1e12)
	if n, err = units.Hypot(in(-1), in(7), fine); err != nil || fine.Less(n.Within()) {
		t.Error(n, err)
	}
}

func TestNearRatioMore(t *testing.T) {
	pi := units.Pi()
	mark, residue, err := pi.Round(units.RatioOf(1, 7), units.HalfAway)
	if err != nil || mark != units.RatioOf(22, 7) {
		t.Error(mark, err)
	}
	if s, err := residue.Sign(); s != -1 || err != nil {
		t.Error(residue, err)
	}
	if c, err := pi.Plus(units.RatioOf(1, 1)).Cmp(pi); c != 1 || err != nil {
		t.Error(c, err)
	}
	if !pi.Neg().Add(pi).IsZero() {
		t.Error("-pi + pi")
	}
	if n, err := pi.Refine(units.RatioOf(1, 1e18)); err != nil || units.RatioOf(1, 1e18).Less(n.Within()) {
		t.Error(n, err)
	}
	if _, err := pi.Refine(units.Ratio{}); err == nil {
		t.Error("refined to nothing")
	}
	if q, err := whole(1).Quo(whole(4)); err != nil || q != units.ExactlyRatio(units.RatioOf(1, 4)) {
		t.Error(q, err)
	}
}

// How long a strip is the bias of a square of 24 in for a highwayman's sash?
func ExampleDiagonal() {
	along := units.Diagonal().Of(units.Inch.Of(24))
	mark, _, err := along.Round(units.Inch.Frac(1, 8), units.Down)
	fmt.Println(mark, err)
	// Output: 33 7/8 in <nil>
}

// The slope of a dart 6 in long and 1 1/2 in wide at the seam.
func ExampleHypot() {
	leg, err := units.Hypot(units.Inch.Of(6), units.Inch.Frac(3, 4), units.Length{})
	if err != nil {
		fmt.Println(err)
		return
	}
	mark, residue, err := leg.Round(units.Inch.Frac(1, 16), units.HalfAway)
	fmt.Println(mark, "and", residue, err)
	// Output: 6 1/16 in and -0.4014 mm +- 0.0002 mm <nil>
}
