package units_test

import (
	"math/big"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
)

// TestRootQuickly takes roots of numbers of all sizes, of which the smaller are
// worked in 128 bits: the ends enclose the root, they lie as near as asked, and
// refining them further agrees.
func TestRootQuickly(t *testing.T) {
	r := seeded(77)
	for range nountest.Rounds(20_000) {
		num, den := 1+r.Int64N(1<<(1+r.IntN(62))), 1+r.Int64N(1<<(1+r.IntN(30)))
		a := units.RatioOf(num, den)
		within := units.RatioOf(1+r.Int64N(50), 1<<r.IntN(58))
		n, err := units.SqrtRatio(a)
		if err != nil {
			t.Fatal(a, err)
		}
		times := units.RatioOf(r.Int64N(2000)-1000, 1+r.Int64N(50))
		shift := units.RatioOf(r.Int64N(2000)-1000, 1+r.Int64N(50))
		m, err := n.Scale(times).Plus(shift).Refine(within)
		if err != nil {
			t.Fatal(a, err)
		}
		if within.Less(m.Within()) {
			t.Fatalf("the root of %v x %v is within %v, not %v", a, times, m.Within(), within)
		}
		if times.IsZero() {
			continue
		}
		lo, hi := m.Bounds()
		lo, hi = lo.Sub(shift).Quo(times), hi.Sub(shift).Quo(times)
		if times.Sign() < 0 {
			lo, hi = hi, lo
		}
		if lo.Sign() > 0 && a.Less(lo.Mul(lo)) || hi.Sign() < 0 || hi.Mul(hi).Less(a) {
			t.Fatalf("the root of %v is not between %v and %v", a, lo, hi)
		}
	}
}

// TestSquareOut: the quick way and the slow one find the same square factors.
func TestSquareOut(t *testing.T) {
	r := seeded(78)
	for i := range int64(20_000) {
		n := i
		if i > 2000 {
			n = r.Int64N(1 << (1 + r.IntN(62)))
			if s := 1 + r.Int64N(1<<(1+r.IntN(20))); n < 1<<62/s/s {
				n *= s * s
			}
		}
		side, rest := units.SquareOutWord(uint64(n))
		slowSide, slowRest := units.SquareOut(big.NewInt(n))
		if slowSide.Cmp(big.NewInt(side)) != 0 || slowRest.Cmp(big.NewInt(rest)) != 0 {
			t.Fatalf("%d: %d, %d quickly and %v, %v slowly", n, side, rest, slowSide, slowRest)
		}
		if side*side*rest != n {
			t.Fatalf("%d is not %d x %d x %d", n, side, side, rest)
		}
	}
}

// A square factor that was not found does not part roots that are multiples.
func TestHiddenSquare(t *testing.T) {
	a, b := rootOf(t, units.RatioOf(139*139*149*151, 1)), rootOf(t, units.RatioOf(149*151, 1))
	if _, exact := a.Exact(); exact {
		t.Fatal(a)
	}
	if c, err := a.Cmp(b.Scale(units.RatioOf(139, 1))); c != 0 || err != nil {
		t.Errorf("%v against 139 x %v: %d, %v", a, b, c, err)
	}
	if c, err := a.Cmp(b.Scale(units.RatioOf(140, 1))); c >= 0 || err != nil {
		t.Errorf("%v against 140 x %v: %d, %v", a, b, c, err)
	}
	// Nor are two made one that are too long for 128 bits.
	const great = 1_000_000_000_000_000_003
	c, d := rootOf(t, units.RatioOf(great, 1).Mul(units.RatioOf(163*167, 1))), rootOf(t, units.RatioOf(great, 1).Mul(units.RatioOf(163*173, 1)))
	if got, err := c.Add(d).Cmp(d.Add(d)); got != -1 || err != nil {
		t.Errorf("%v and %v: %d, %v", c, d, got, err)
	}
}
