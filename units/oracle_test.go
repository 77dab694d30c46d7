package units_test

import (
	"fmt"
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"example.com/clothyard/units"
)

var modes = [...]units.Mode{units.HalfAway, units.HalfEven, units.Down, units.Up, units.ToZero}

// slowRound is the rule of each mode in words: floor first, then the distance.
func slowRound(v, step *big.Rat, m units.Mode) *big.Rat {
	if step.Sign() <= 0 {
		return v
	}
	q := new(big.Rat).Quo(v, step)
	low := new(big.Int).Div(q.Num(), q.Denom()) // towards the lesser number
	frac := new(big.Rat).Sub(q, new(big.Rat).SetInt(low))
	up := false
	switch c := frac.Cmp(big.NewRat(1, 2)); m {
	case units.Down:
	case units.Up:
		up = frac.Sign() > 0
	case units.ToZero:
		up = frac.Sign() > 0 && v.Sign() < 0
	case units.HalfEven:
		up = c > 0 || c == 0 && low.Bit(0) == 1
	default:
		up = c > 0 || c == 0 && v.Sign() > 0
	}
	if up {
		low.Add(low, big.NewInt(1))
	}
	return new(big.Rat).Mul(step, new(big.Rat).SetInt(low))
}

func someInt(r *rand.Rand) int64 {
	odd := [...]int64{0, 1, -1, 2, 3, 7, 10, 128, math.MaxInt64, math.MinInt64, math.MinInt64 + 1, 1 << 32, -(1 << 31)}
	if r.IntN(2) == 0 {
		return odd[r.IntN(len(odd))]
	}
	return r.Int64N(2001) - 1000
}

func ratInt(n int64) *big.Rat { return new(big.Rat).SetInt64(n) }

// TestOracle walks at random through every operation of Length beside math/big.
func TestOracle(t *testing.T) {
	r := seeded(1)
	for range *oracleN {
		want := operand(r)
		got := lengthOf(want)
		for range 25 {
			y := operand(r)
			b := lengthOf(y)
			n := someInt(r)
			what := ""
			next := new(big.Rat)
			switch op := r.IntN(13); op {
			case 0:
				what, got = fmt.Sprint(want, " + ", y), got.Add(b)
				next.Add(want, y)
			case 1:
				what, got = fmt.Sprint(want, " - ", y), got.Sub(b)
				next.Sub(want, y)
			case 2:
				what, got = fmt.Sprint("-", want), got.Neg()
				next.Neg(want)
			case 3:
				what, got = fmt.Sprint("|", want, "|"), got.Abs()
				next.Abs(want)
			case 4:
				what, got = fmt.Sprint(want, " * ", n), got.MulInt(n)
				next.Mul(want, ratInt(n))
			case 5:
				if n == 0 {
					continue
				}
				what, got = fmt.Sprint(want, " / ", n), got.DivInt(n)
				next.Quo(want, ratInt(n))
			case 6:
				what, got = fmt.Sprint(want, " scale ", y), got.Scale(units.FromRat(y))
				next.Mul(want, y)
			case 7:
				if y.Sign() == 0 {
					continue
				}
				what, got = fmt.Sprint(want, " unscale ", y), got.Unscale(units.FromRat(y))
				next.Quo(want, y)
			case 8:
				m := modes[r.IntN(len(modes))]
				mark, residue := got.Round(b, m)
				what = fmt.Sprint(want, " to ", y, " ", m)
				next = slowRound(want, y, m)
				same(t, what, mark, next)
				same(t, what+" residue", residue, new(big.Rat).Sub(want, next))
				got = mark
			case 9:
				what, got = fmt.Sprint("min ", want, y), got.Min(b)
				if next.Set(want); y.Cmp(want) < 0 {
					next.Set(y)
				}
			case 10:
				what, got = fmt.Sprint("max ", want, y), got.Max(b)
				if next.Set(want); y.Cmp(want) > 0 {
					next.Set(y)
				}
			case 11:
				what, got = fmt.Sprint("sum ", want, y), units.Sum(got, b, got, b)
				next.Add(want, y)
				next.Add(next, next)
			case 12:
				if got.Cmp(b) != want.Cmp(y) || b.Cmp(got) != y.Cmp(want) || got.Less(b) != (want.Cmp(y) < 0) ||
					got.Sign() != want.Sign() || got.IsZero() != (want.Sign() == 0) || (got == b) != (want.Cmp(y) == 0) {
					t.Fatalf("comparing %v with %v", want, y)
				}
				multiple := want.Sign() == 0
				if y.Sign() != 0 {
					multiple = new(big.Rat).Quo(want, y).IsInt()
				}
				if got.IsMultiple(b) != multiple {
					t.Fatalf("%v a multiple of %v: want %v", want, y, multiple)
				}
				next.Set(want)
			}
			same(t, what, got, next)
			want = next
			if want.Num().BitLen()+want.Denom().BitLen() > 1500 {
				break
			}
		}
	}
}

// TestOracleRatio and TestOracleArea do the same for the other two numbers, in
// single steps.
func TestOracleRatio(t *testing.T) {
	r := seeded(2)
	for range *oracleN * 10 {
		x, y := operand(r), operand(r)
		a, b := units.FromRat(x), units.FromRat(y)
		check := func(what string, got units.Ratio, want *big.Rat) {
			t.Helper()
			if err := units.FormOfRatio(got); err != nil || got.Rat().Cmp(want) != 0 || got != units.FromRat(want) {
				t.Fatalf("%v %s %v = %v, want %v (%v)", x, what, y, got, want, err)
			}
		}
		check("+", a.Add(b), new(big.Rat).Add(x, y))
		check("-", a.Sub(b), new(big.Rat).Sub(x, y))
		check("*", a.Mul(b), new(big.Rat).Mul(x, y))
		check("neg", a.Neg(), new(big.Rat).Neg(x))
		check("abs", a.Abs(), new(big.Rat).Abs(x))
		if y.Sign() != 0 {
			check("/", a.Quo(b), new(big.Rat).Quo(x, y))
		}
		m := modes[r.IntN(len(modes))]
		mark, residue := a.Round(b, m)
		check("round "+m.String(), mark, slowRound(x, y, m))
		check("residue", residue, new(big.Rat).Sub(x, mark.Rat()))
		n, ok := a.Int(m)
		whole := slowRound(x, ratInt(1), m).Num()
		if ok != whole.IsInt64() || ok && n != whole.Int64() {
			t.Fatalf("%v to a whole number %v: %d, %v", x, m, n, ok)
		}
		if a.Cmp(b) != x.Cmp(y) || a.Less(b) != (x.Cmp(y) < 0) || a.Sign() != x.Sign() || a.IsInt() != x.IsInt() || a.IsZero() != (x.Sign() == 0) {
			t.Fatalf("comparing %v with %v", x, y)
		}
		k, d := someInt(r), someInt(r)
		if d != 0 {
			check("ratio of", units.RatioOf(k, d), new(big.Rat).SetFrac(big.NewInt(k), big.NewInt(d)))
		}
	}
	if units.FromRat(nil) != (units.Ratio{}) {
		t.Error("FromRat(nil) is not 0")
	}
}

func TestOracleArea(t *testing.T) {
	r := seeded(3)
	for range *oracleN * 5 {
		x, y := operand(r), operand(r)
		a, b := areaOf(x), areaOf(y)
		check := func(what string, got units.Area, want *big.Rat) {
			t.Helper()
			if err := units.FormOfArea(got); err != nil || areaRat(got).Cmp(want) != 0 || got != areaOf(want) {
				t.Fatalf("%v %s %v = %v, want %v (%v)", x, what, y, got, want, err)
			}
		}
		check("+", a.Add(b), new(big.Rat).Add(x, y))
		check("-", a.Sub(b), new(big.Rat).Sub(x, y))
		check("neg", a.Neg(), new(big.Rat).Neg(x))
		n := someInt(r)
		check("times whole", a.MulInt(n), new(big.Rat).Mul(x, ratInt(n)))
		check("scale", a.Scale(units.FromRat(y)), new(big.Rat).Mul(x, y))
		check("length by length", lengthOf(x).Times(lengthOf(y)), new(big.Rat).Mul(x, y))
		if y.Sign() != 0 {
			same(t, "area over length", a.Over(lengthOf(y)), new(big.Rat).Quo(x, y))
			if got := a.Div(b).Rat(); got.Cmp(new(big.Rat).Quo(x, y)) != 0 {
				t.Fatalf("%v / %v = %v", x, y, got)
			}
		}
		if a.Cmp(b) != x.Cmp(y) || a.Sign() != x.Sign() || a.IsZero() != (x.Sign() == 0) {
			t.Fatalf("comparing %v with %v", x, y)
		}
		inch := new(big.Rat).SetInt64(units.PerInch)
		if got := a.In(units.Inch).Rat(); got.Cmp(new(big.Rat).Quo(x, inch.Mul(inch, inch))) != 0 {
			t.Fatalf("%v in square inches = %v", x, got)
		}
	}
}

// TestOracleUnits compares the makers of lengths with their definitions.
func TestOracleUnits(t *testing.T) {
	r := seeded(4)
	size := func(u units.Unit) *big.Rat { return ratOf(u.Of(1)) }
	for range *oracleN {
		for u := range units.Units {
			n, d, w := someInt(r), someInt(r), someInt(r)
			same(t, u.String(), u.Of(n), new(big.Rat).Mul(size(u), ratInt(n)))
			if d == 0 {
				continue
			}
			part := new(big.Rat).SetFrac(big.NewInt(n), big.NewInt(d))
			part.Mul(part, size(u))
			same(t, "frac", u.Frac(n, d), part)
			whole := new(big.Rat).Mul(size(u), ratInt(w))
			if w < 0 {
				whole.Sub(whole, new(big.Rat).Abs(part))
			} else {
				whole.Add(whole, part)
			}
			got := u.Mixed(w, n, d)
			same(t, "mixed", got, whole)
			if back := got.In(u).Rat(); back.Cmp(whole.Quo(whole, size(u))) != 0 {
				t.Fatalf("%v in %v = %v", got, u, back)
			}
		}
	}
}

// TestOracleMarks finds each mark on its own in math/big.
func TestOracleMarks(t *testing.T) {
	r := seeded(5)
	for range *oracleN * 2 {
		span, step := operand(r), operand(r)
		if r.IntN(2) == 0 { // a tape: many ties
			span, step = big.NewRat(r.Int64N(400)-200, 2), big.NewRat(1+r.Int64N(4), 1+r.Int64N(2))
		}
		gaps := 1 + r.IntN(12)
		m := modes[r.IntN(len(modes))]
		k := 0
		for mark, residue := range units.Marks(lengthOf(span), gaps, lengthOf(step), m) {
			place := new(big.Rat).Mul(span, big.NewRat(int64(k), int64(gaps)))
			want := slowRound(place, step, m)
			same(t, fmt.Sprintf("mark %d of %v in %d to %v %v", k, span, gaps, step, m), mark, want)
			same(t, "residue", residue, place.Sub(place, want))
			k++
		}
		if k != gaps+1 {
			t.Fatalf("%d marks for %d gaps", k, gaps)
		}
	}
}

// TestRoundEdgeOfMachine has a quotient of 2^64 - 1 and a remainder, so that the
// count of steps would leave 64 bits as it is rounded up.
func TestRoundEdgeOfMachine(t *testing.T) {
	for _, c := range [...][4]int64{
		// num, its denominator, the step's numerator, its denominator
		{math.MaxInt64, 1, 3, math.MaxInt64},
		{math.MaxInt64, 5, 1, math.MaxInt64},
		{math.MinInt64, 1, 3, math.MaxInt64},
		{math.MaxInt64 - 1, 1 << 62, math.MaxInt64, 1 << 62},
		{177942868878227186, 3, 1, 311}, // 2^64 - 1 and 1/3 steps
		{-622, 3, 1, 88971434439113593},
	} {
		v, step := big.NewRat(c[0], c[1]), big.NewRat(c[2], c[3])
		for _, m := range modes {
			mark, _ := lengthOf(v).Round(lengthOf(step), m)
			same(t, fmt.Sprint(v, " to ", step, " ", m), mark, slowRound(v, step, m))
		}
	}
}
