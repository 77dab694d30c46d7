package units_test

import (
	"errors"
	"math/big"
	"testing"

	"example.com/clothyard/units"
)

// huge is a number of a hundred thousand bits, over one of as many.
func huge() *big.Rat { return ratOfBits(1 << 17) }

// ratOfBits is a fraction of so many bits above and below its line, the square of none.
func ratOfBits(bits uint) *big.Rat {
	n, d := new(big.Int).Lsh(big.NewInt(1), bits), new(big.Int).Lsh(big.NewInt(3), bits)
	return new(big.Rat).SetFrac(n.Add(n, big.NewInt(1_234_567)), d.Add(d, big.NewInt(7_654_321)))
}

// TestRootOfManyDigits refuses what a root would take minutes of, and no less.
func TestRootOfManyDigits(t *testing.T) {
	inch := units.Inch.Of(1)
	for _, r := range []*big.Rat{huge(), ratOfBits(units.MaxRoot / 2), new(big.Rat).SetInt(new(big.Int).Lsh(big.NewInt(3), units.MaxRoot))} {
		q := units.FromRat(r)
		if n, err := units.SqrtRatio(q); !errors.Is(err, units.ErrBound) || !n.IsZero() {
			t.Errorf("%d bits: %v", r.Num().BitLen(), err)
		}
		if n, err := units.Sqrt(inch.Times(inch).Scale(q), units.Length{}); !errors.Is(err, units.ErrBound) || !n.IsZero() {
			t.Errorf("%d bits: %v", r.Num().BitLen(), err)
		}
		if n, err := units.Hypot(inch.Scale(q), inch, units.Length{}); !errors.Is(err, units.ErrBound) || !n.IsZero() {
			t.Errorf("%d bits: %v", r.Num().BitLen(), err)
		}
	}
	q := units.FromRat(ratOfBits(units.MaxRoot/2 - 8))
	n, err := units.SqrtRatio(q)
	if err != nil {
		t.Fatal(err)
	}
	lo, hi := n.Bounds()
	if q.Less(lo.Mul(lo)) || hi.Mul(hi).Less(q) {
		t.Errorf("%v does not enclose the root", n)
	}
	// A square is found whatever its length, up to the bound.
	side := units.FromRat(ratOfBits(units.MaxRoot/4 - 8))
	if n, err := units.SqrtRatio(side.Mul(side)); err != nil || n != units.ExactlyRatio(side) {
		t.Errorf("the root of a square is not its side: %v", err)
	}
}
