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

// A walk goes on from number to number, each found by the package and by math/big.
type walk struct {
	r    *rand.Rand
	got  units.Length
	want *big.Rat
	y    *big.Rat // the other operand
	n    int64    // the whole operand
	mode units.Mode

	widened, narrowed int // how often the form for large terms was entered and left
}

// border is an operand that takes the walk to the other form, where one sum can: from
// a large number to an ordinary one, or from an ordinary one to just about 63 bits.
func (w *walk) border() *big.Rat {
	if units.Wide(w.got) {
		small := operand(w.r)
		if w.r.IntN(2) == 0 {
			return small.Sub(small, w.want)
		}
		return small.Sub(w.want, small)
	}
	edge := new(big.Int).Lsh(big.NewInt(1), 63)
	edge.Add(edge, big.NewInt(w.r.Int64N(5)-2))
	if w.r.IntN(2) == 0 {
		edge.Neg(edge)
	}
	y := new(big.Rat).SetInt(edge)
	if w.r.IntN(4) == 0 { // past 63 bits below the line
		y.SetFrac(big.NewInt(1+2*w.r.Int64N(50)), edge)
	}
	return y.Sub(y, w.want)
}

// what tells the step in words.
func (w *walk) what(op string, before *big.Rat) string {
	return fmt.Sprintf("%v %s (y = %v, n = %d, %v)", before, op, w.y, w.n, w.mode)
}

// step does one operation on both sides and compares all that it gives.
func (w *walk) step(t *testing.T) {
	t.Helper()
	w.y, w.n, w.mode = operand(w.r), someInt(w.r), modes[w.r.IntN(len(modes))]
	op := w.r.IntN(16)
	if op > 13 {
		op, w.y = op%2, w.border()
	}
	b := lengthOf(w.y)
	x, y, next, name := w.want, w.y, new(big.Rat), ""
	got := w.got
	switch op {
	case 0:
		name, got = "+ y", got.Add(b)
		next.Add(x, y)
	case 1:
		name, got = "- y", got.Sub(b)
		next.Sub(x, y)
	case 2:
		name, got = "negated", got.Neg()
		next.Neg(x)
	case 3:
		name, got = "without its sign", got.Abs()
		next.Abs(x)
	case 4:
		name, got = "times n", got.MulInt(w.n)
		next.Mul(x, ratInt(w.n))
	case 5:
		if w.n == 0 {
			w.n = 7
		}
		name, got = "divided by n", got.DivInt(w.n)
		next.Quo(x, ratInt(w.n))
	case 6:
		name, got = "scaled by y", got.Scale(units.FromRat(y))
		next.Mul(x, y)
	case 7:
		if y.Sign() == 0 {
			y.SetInt64(3)
		}
		name, got = "unscaled by y", got.Unscale(units.FromRat(y))
		next.Quo(x, y)
	case 8:
		var residue units.Length
		name = "rounded to y"
		got, residue = got.Round(b, w.mode)
		next = slowRound(x, y, w.mode)
		if rest := new(big.Rat).Sub(x, next); units.FormOf(residue) != nil || ratOf(residue).Cmp(rest) != 0 {
			t.Fatalf("%s leaves %v, want %v", w.what(name, x), residue, rest)
		}
	case 9:
		name, got = "or the lesser y", got.Min(b)
		if next.Set(x); y.Cmp(x) < 0 {
			next.Set(y)
		}
	case 10:
		name, got = "or the greater y", got.Max(b)
		if next.Set(x); y.Cmp(x) > 0 {
			next.Set(y)
		}
	case 11: // sums of up to eleven, in which the two stand anywhere
		all := make([]units.Length, w.r.IntN(12))
		for i := range all {
			if w.r.IntN(3) == 0 {
				all[i] = b
				next.Add(next, y)
			} else {
				all[i] = got
				next.Add(next, x)
			}
		}
		name, got = fmt.Sprintf("in a sum of %d", len(all)), units.Sum(all...)
	case 12:
		name = "in the count of y"
		if y.Sign() == 0 {
			y.SetInt64(5)
		}
		got = base().Scale(got.Div(lengthOf(y)))
		next.Quo(x, y)
	default:
		name = "beside y"
		w.compare(t, b)
		next.Set(x)
	}
	if err := units.FormOf(got); err != nil || ratOf(got).Cmp(next) != 0 || got != lengthOf(next) {
		t.Fatalf("%s = %v (%v), want %v", w.what(name, x), ratOf(got), err, next)
	}
	if units.Wide(w.got) != units.Wide(got) {
		if units.Wide(got) {
			w.widened++
		} else {
			w.narrowed++
		}
	}
	w.got, w.want = got, next
}

func (w *walk) compare(t *testing.T, b units.Length) {
	t.Helper()
	x, y, a := w.want, w.y, w.got
	if a.Cmp(b) != x.Cmp(y) || b.Cmp(a) != y.Cmp(x) || a.Less(b) != (x.Cmp(y) < 0) ||
		a.Sign() != x.Sign() || a.IsZero() != (x.Sign() == 0) || (a == b) != (x.Cmp(y) == 0) {
		t.Fatalf("comparing %v with %v", x, y)
	}
	multiple := x.Sign() == 0
	if y.Sign() != 0 {
		multiple = new(big.Rat).Quo(x, y).IsInt()
	}
	if a.IsMultiple(b) != multiple {
		t.Fatalf("%v a multiple of %v: want %v", x, y, multiple)
	}
}

// TestOracle walks at random through every operation of Length beside math/big,
// and sees to it that the walks cross the border of the two forms both ways.
func TestOracle(t *testing.T) {
	t.Parallel()
	const parts = 8
	for part := range min(parts, *oracleN) {
		t.Run(fmt.Sprint(part), func(t *testing.T) {
			t.Parallel()
			w := walk{r: seeded(100 + uint64(part))}
			steps := 0
			for walks := (*oracleN + parts - 1) / parts; walks > 0; walks-- {
				w.want = operand(w.r)
				w.got = lengthOf(w.want)
				for range walkSteps {
					w.step(t)
					steps++
					if w.want.Num().BitLen()+w.want.Denom().BitLen() > 1500 {
						w.want = operand(w.r)
						w.got = lengthOf(w.want)
					}
				}
			}
			if w.widened < steps/20 || w.narrowed < steps/20 {
				t.Errorf("in %d steps the large form was entered %d times and left %d times", steps, w.widened, w.narrowed)
			}
		})
	}
}

// TestOracleRatio and TestOracleArea do the same for the other two numbers, in
// single steps.
func TestOracleRatio(t *testing.T) {
	t.Parallel()
	r := seeded(2)
	for range *oracleN * 4 {
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
		if ok != whole.IsInt64() || ok && n != whole.Int64() || !ok && n != 0 {
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
	t.Parallel()
	r := seeded(3)
	for range *oracleN * 2 {
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
	t.Parallel()
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
	t.Parallel()
	r := seeded(5)
	for range *oracleN {
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
