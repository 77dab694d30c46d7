package units_test

import (
	"flag"
	"math/big"
	"math/rand/v2"
	"strconv"
	"testing"

	"example.com/clothyard/units"
)

// oracleN is the number of random walks in the tests beside math/big: 25 operations
// make one walk, so that -oracle.n=10000000 does ten million operations in
// TestOracle alone.
var oracleN = func() *int {
	walks := 300
	flag.Func("oracle.n", "random operations in the oracle tests (default 7500)", func(s string) error {
		n, err := strconv.Atoi(s)
		walks = max(1, n/walkSteps)
		return err
	})
	return &walks
}()

const walkSteps = 25

// seeded is a source of chance that is the same on every run.
func seeded(n uint64) *rand.Rand { return rand.New(rand.NewPCG(n, 1838)) }

// operand is a number of one of the kinds on which arithmetic can go wrong, in
// base units.
func operand(r *rand.Rand) *big.Rat {
	sign := int64(1 - 2*r.IntN(2))
	n := sign * r.Int64N(2000)
	near := func(bits uint) *big.Int {
		b := new(big.Int).Lsh(big.NewInt(1), bits)
		b.Add(b, big.NewInt(r.Int64N(5)-2))
		return b.Mul(b, big.NewInt(sign))
	}
	primes := [...]int64{11, 13, 127, 1009, 104729, 2147483647, 9223372036854775783}
	switch r.IntN(12) {
	case 0:
		return big.NewRat(n, 1)
	case 1:
		return big.NewRat(n*units.PerInch, 8)
	case 2:
		return big.NewRat(n*units.PerMillimetre, 1)
	case 3:
		return big.NewRat(n*units.PerInch, 3)
	case 4:
		return big.NewRat(n, 7)
	case 5:
		return big.NewRat(n, primes[r.IntN(len(primes))])
	case 6:
		return new(big.Rat).SetInt(near(61))
	case 7:
		return new(big.Rat).SetInt(near(63))
	case 8:
		return new(big.Rat).SetFrac(near(62), near(63))
	case 9:
		return new(big.Rat).SetFrac(near(uint(60+r.IntN(80))), new(big.Int).Add(near(uint(3+r.IntN(70))), big.NewInt(0)))
	case 10:
		return new(big.Rat)
	}
	return big.NewRat(sign*r.Int64(), 1+r.Int64())
}

// base is the small unit in which a length is counted.
func base() units.Length { return units.Millimetre.Frac(1, units.PerMillimetre) }

func lengthOf(r *big.Rat) units.Length { return base().Scale(units.FromRat(r)) }

func ratOf(l units.Length) *big.Rat { return l.Div(base()).Rat() }

func areaOf(r *big.Rat) units.Area { return base().Times(base()).Scale(units.FromRat(r)) }

func areaRat(a units.Area) *big.Rat { return a.Div(base().Times(base())).Rat() }

// same compares a length with a big.Rat and looks at its form.
func same(t *testing.T, what string, got units.Length, want *big.Rat) {
	t.Helper()
	if err := units.FormOf(got); err != nil {
		t.Fatalf("%s: %v", what, err)
	}
	if g := ratOf(got); g.Cmp(want) != 0 {
		t.Fatalf("%s = %v, want %v", what, g, want)
	}
	if alike := lengthOf(want); got != alike {
		t.Fatalf("%s: %v is not == to the same number made otherwise", what, got)
	}
}
