package units_test

import (
	"errors"
	"fmt"
	"math/big"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/clothyard/units"
)

// piDigits are the first hundred decimals of pi, from memory and checked below by
// a second series.
const piDigits = "3.1415926535897932384626433832795028841971693993751058209749445923078164062862089986280348253421170679"

func bigRat(s string) *big.Rat {
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		panic(s)
	}
	return r
}

func power10(n int64) *big.Int { return new(big.Int).Exp(big.NewInt(10), big.NewInt(n), nil) }

// bigPi is pi in a big.Float by Gauss and Legendre's means, which shares nothing
// with the series in the package.
func bigPi(prec uint) *big.Float {
	f := func(x int64) *big.Float { return new(big.Float).SetPrec(prec + 64).SetInt64(x) }
	a, b, s, p := f(1), f(2), f(1), f(1)
	b.Quo(f(1), b.Sqrt(b))
	s.Quo(s, f(4))
	for range 14 {
		next := f(0).Add(a, b)
		next.Quo(next, f(2))
		b = f(0).Sqrt(f(0).Mul(a, b))
		d := f(0).Sub(a, next)
		s.Sub(s, f(0).Mul(p, d.Mul(d, d)))
		p.Mul(p, f(2))
		a = next
	}
	sum := f(0).Add(a, b)
	return sum.Quo(sum.Mul(sum, sum), s.Mul(s, f(4)))
}

func TestPi(t *testing.T) {
	lo, hi := units.Pi().Bounds()
	low := bigRat(piDigits)
	high := new(big.Rat).Add(low, new(big.Rat).SetFrac(big.NewInt(1), power10(100)))
	if lo.Rat().Cmp(low) > 0 || hi.Rat().Cmp(high) < 0 {
		t.Errorf("pi between %v and %v", lo, hi)
	}
	if got := bigPi(400).Text('f', 99); got[:90] != piDigits[:90] {
		t.Errorf("the second series gives %s", got)
	}
	// A length of pi base units, ever finer, holds the hundred digits and is held by
	// the second series far beyond them.
	one := base()
	truth, _ := bigPi(5000).Rat(nil)
	for _, places := range []int64{3, 10, 30, 60, 99, 300, 1000} {
		within := one.Unscale(units.FromRat(new(big.Rat).SetInt(power10(places))))
		n, err := units.Pi().Of(one).Refine(within)
		if err != nil {
			t.Fatal(places, err)
		}
		lo, hi := n.Bounds()
		if ratOf(lo).Cmp(truth) > 0 || ratOf(hi).Cmp(truth) < 0 || within.Less(n.Within()) {
			t.Errorf("pi to %d places: between %v and %v", places, lo, hi)
		}
		if places < 100 && (ratOf(lo).Cmp(high) > 0 || ratOf(hi).Cmp(low) < 0) {
			t.Errorf("pi to %d places leaves the digits", places)
		}
	}
}

func TestSqrt(t *testing.T) {
	r := seeded(14)
	for range *oracleN * 2 {
		v := operand(r)
		v.Abs(v)
		a := areaOf(v)
		within := units.Millimetre.Frac(1, 1+r.Int64N(1_000_000_000))
		n, err := units.Sqrt(a, within)
		if err != nil {
			t.Fatal(v, err)
		}
		lo, hi := n.Bounds()
		l, h := ratOf(lo), ratOf(hi)
		if l.Sign() < 0 || l.Mul(l, l).Cmp(v) > 0 || h.Mul(h, h).Cmp(v) < 0 || within.Less(n.Within()) {
			t.Fatalf("root of %v to %v is between %v and %v", v, within, lo, hi)
		}
		side := lengthOf(v)
		if n, err := units.Sqrt(side.Times(side), within); err != nil || n != units.Exactly(side) {
			t.Fatalf("root of the square of %v is %v, %v", side, n, err)
		}
		q, err := units.SqrtRatio(units.FromRat(v))
		if err != nil {
			t.Fatal(v, err)
		}
		ql, qh := q.Bounds()
		if ql.Mul(ql).Rat().Cmp(v) > 0 || qh.Mul(qh).Rat().Cmp(v) < 0 || units.RatioOf(1, 1e9).Less(q.Within()) {
			t.Fatalf("root of %v is between %v and %v", v, ql, qh)
		}
	}
	// Against big.Float at high precision.
	two := new(big.Float).SetPrec(3000).SetInt64(2)
	truth, _ := two.Sqrt(two).Rat(nil)
	fine := base().Unscale(units.FromRat(new(big.Rat).SetInt(power10(800))))
	n, err := units.Sqrt(base().Times(base()).MulInt(2), fine)
	if err != nil {
		t.Fatal(err)
	}
	mid := ratOf(n.Mid())
	if d := mid.Sub(mid, truth); d.Abs(d).Cmp(ratOf(fine)) > 0 {
		t.Errorf("root 2 is off by %v", d.FloatString(810))
	}
	if _, err := units.Sqrt(units.Area{}.Sub(base().Times(base())), units.Length{}); !errors.Is(err, units.ErrNegative) {
		t.Error(err)
	}
	if _, err := units.SqrtRatio(units.RatioOf(-1, 2)); !errors.Is(err, units.ErrNegative) {
		t.Error(err)
	}
	if n, err := units.Sqrt(units.Area{}, units.Length{}); err != nil || !n.IsZero() {
		t.Error(n, err)
	}
	inch := units.Inch.Of(1)
	n, err = units.Sqrt(inch.Times(inch).MulInt(2), units.Length{})
	if err != nil || units.DefaultWithin().Less(n.Within()) || units.DefaultWithin() != units.MustParse("0.001 mm") {
		t.Error(n, err)
	}
	for _, within := range []units.Length{inch.Neg(), base().Unscale(units.FromRat(new(big.Rat).SetInt(power10(3000))))} {
		if _, err := units.Sqrt(inch.Times(inch).MulInt(2), within); !errors.Is(err, units.ErrBound) {
			t.Errorf("to within %.20v: %v", within, err)
		}
	}
}

// A twin is an enclosure and what it should enclose, in a big.Float of ten times
// the precision needed.
type twin struct {
	n     units.Near
	truth *big.Float
}

const twinPrec = 2000

func twinFloat(r *big.Rat) *big.Float { return new(big.Float).SetPrec(twinPrec).SetRat(r) }

func (w twin) check(t *testing.T, what string) {
	t.Helper()
	lo, hi := w.n.Bounds()
	// The twin itself is out by far less than the slack allowed here.
	slack := new(big.Float).SetPrec(twinPrec).SetMantExp(big.NewFloat(1), -900)
	if size := new(big.Float).Abs(w.truth); size.Sign() > 0 {
		slack.Mul(slack, size.Add(size, big.NewFloat(1)))
	}
	low, high := twinFloat(ratOf(lo)), twinFloat(ratOf(hi))
	if low.Sub(low, slack).Cmp(w.truth) > 0 || high.Add(high, slack).Cmp(w.truth) < 0 {
		t.Fatalf("%s: %v is not between %v and %v", what, w.truth.Text('g', 30), lo, hi)
	}
	if l, ok := w.n.Exact(); ok && (l != lo || l != hi || !w.n.Within().IsZero()) {
		t.Fatalf("%s: exact %v between %v and %v", what, l, lo, hi)
	}
}

func someTwin(t *testing.T, r *rand.Rand) twin {
	v := big.NewRat(r.Int64N(1_000_000)-500_000, 1+r.Int64N(50))
	switch r.IntN(4) {
	case 0:
		return twin{units.Exactly(lengthOf(v)), twinFloat(v)}
	case 1:
		v.Abs(v)
		n, err := units.Sqrt(areaOf(v), units.MustParse("0.01 mm"))
		if err != nil {
			t.Fatal(err)
		}
		f := twinFloat(v)
		return twin{n, f.Sqrt(f)}
	}
	f := twinFloat(v)
	return twin{units.Pi().Of(lengthOf(v)), f.Mul(f, bigPi(twinPrec))}
}

// TestEnclosure works at random with enclosures and refines them on the way; the
// true value never leaves.
func TestEnclosure(t *testing.T) {
	r := seeded(15)
	f := func() *big.Float { return new(big.Float).SetPrec(twinPrec) }
	for range *oracleN / 3 {
		w := someTwin(t, r)
		w.check(t, "start")
		for range 8 {
			o := someTwin(t, r)
			what := ""
			k := r.Int64N(2001) - 1000
			q := big.NewRat(k, 1+r.Int64N(40))
			switch r.IntN(9) {
			case 0:
				what, w = "add", twin{w.n.Add(o.n), f().Add(w.truth, o.truth)}
			case 1:
				what, w = "sub", twin{w.n.Sub(o.n), f().Sub(w.truth, o.truth)}
			case 2:
				what, w = "neg", twin{w.n.Neg(), f().Neg(w.truth)}
			case 3:
				what, w = "scale", twin{w.n.Scale(units.FromRat(q)), f().Mul(w.truth, twinFloat(q))}
			case 4:
				what, w = "mulint", twin{w.n.MulInt(k), f().Mul(w.truth, twinFloat(ratInt(k)))}
			case 5:
				if k == 0 {
					continue
				}
				what, w = "divint", twin{w.n.DivInt(k), f().Quo(w.truth, twinFloat(ratInt(k)))}
			case 6:
				what, w = "plus", twin{w.n.Plus(lengthOf(q)), f().Add(w.truth, twinFloat(q))}
			case 7:
				l := lengthOf(big.NewRat(1+r.Int64N(100), 3))
				what, w = "div and of", twin{w.n.Div(l).Of(l), w.truth}
			case 8:
				within := units.Millimetre.Frac(1, 1+r.Int64N(1<<40))
				finer, err := w.n.Refine(within)
				if err != nil || within.Less(finer.Within()) {
					t.Fatalf("%v refined to %v is %v, %v", w.n, within, finer, err)
				}
				what, w = "refine", twin{finer, w.truth}
			}
			w.check(t, what)
		}
		checkNearText(t, w.n)
		if s, err := w.n.Sign(); err == nil && s != w.truth.Sign() && w.truth.MantExp(nil) > -900 {
			t.Fatalf("sign of %v is %d", w.n, s)
		}
		step := units.Inch.Frac(1, 16)
		mark, residue, err := w.n.Round(step, modes[r.IntN(len(modes))])
		if err != nil || !mark.IsMultiple(step) {
			t.Fatalf("%v to a sixteenth: %v, %v", w.n, mark, err)
		}
		twin{residue, f().Sub(w.truth, twinFloat(ratOf(mark)))}.check(t, "residue")
	}
}

// checkNearText: what is read back encloses what was written.
func checkNearText(t *testing.T, n units.Near) {
	t.Helper()
	back, err := units.ParseNear(n.String())
	if err != nil {
		t.Fatalf("%v: %v", n, err)
	}
	lo, hi := n.Bounds()
	l, h := back.Bounds()
	if lo.Less(l) || h.Less(hi) {
		t.Fatalf("%v between %v and %v is read as between %v and %v", n, lo, hi, l, h)
	}
	if exact, ok := n.Exact(); ok && back != units.Exactly(exact) {
		t.Fatalf("exact %v is read as %v", n, back)
	}
	if slack := n.Within().MulInt(20).Add(units.Millimetre.Frac(1, 1e15)); slack.Less(back.Within()) {
		t.Fatalf("%v within %v is read within %v", n, n.Within(), back.Within())
	}
}

func TestNearRatio(t *testing.T) {
	pi, two := units.Pi(), units.ExactlyRatio(units.RatioOf(2, 1))
	root, err := units.SqrtRatio(units.RatioOf(2, 1))
	if err != nil {
		t.Fatal(err)
	}
	holds := func(n units.NearRatio, want string) {
		t.Helper()
		lo, hi := n.Bounds()
		if w := bigRat(want); lo.Rat().Cmp(w) > 0 || hi.Rat().Cmp(w) < 0 || units.RatioOf(1, 1e7).Less(n.Within()) || n.Mid().Less(lo) || hi.Less(n.Mid()) {
			t.Errorf("%v does not hold %s", n, want)
		}
	}
	holds(pi.Add(two), "5.14159265358979")
	holds(pi.Sub(two), "1.14159265358979")
	holds(two.Sub(pi), "-1.14159265358979")
	holds(pi.Mul(pi), "9.86960440108935")
	holds(pi.Scale(units.RatioOf(-1, 2)), "-1.57079632679489")
	holds(pi.Mul(root), "4.44288293815836")
	holds(pi.Sub(root), "1.72737909121669")
	holds(root.Mul(root), "2")
	if r, ok := two.Mul(two).Exact(); !ok || r != units.RatioOf(4, 1) {
		t.Error("2 x 2")
	}
	if n := pi.Mul(units.NearRatio{}); !n.IsZero() {
		t.Error("pi x 0 is", n)
	}
	for n, want := range map[units.NearRatio]int{pi: 1, two.Sub(pi): -1, {}: 0, pi.Sub(pi): 0} {
		if s, err := n.Sign(); err != nil || s != want {
			t.Errorf("sign of %v is %d, %v", n, s, err)
		}
	}
	for _, text := range []string{"3.14 +- 0.01", "2 1/2", "-1 +- 0", "0 +- 1/3"} {
		n, err := units.ParseNearRatio(text)
		if err != nil {
			t.Fatal(text, err)
		}
		back, err := units.ParseNearRatio(n.String())
		l, h := back.Bounds()
		lo, hi := n.Bounds()
		if err != nil || lo.Less(l) || h.Less(hi) {
			t.Errorf("%s, written %v, is read as %v, %v", text, n, back, err)
		}
	}
	var n units.NearRatio
	if err := n.UnmarshalText([]byte("3.14 +- 0.01")); err != nil || n.Mid() != units.RatioOf(314, 100) || n.Within() != units.RatioOf(1, 100) {
		t.Error(n, err)
	}
	for bad, at := range map[string]int{"3.14 +- -0.01": 8, "3.14 +- ": 8, " +- 1": 0, "3.14 ± 0.01": 5, "1 in": 2, "3.14 +- 1 +- 1": 10} {
		var pe *units.ParseError
		n, err := units.ParseNearRatio(bad)
		if !errors.As(err, &pe) || pe.Offset != at || pe.Input != bad {
			t.Errorf("%q is read as %v, %v; want a fault at %d", bad, n, err, at)
		}
		if err := n.UnmarshalText([]byte(bad)); err == nil {
			t.Errorf("%q is taken", bad)
		}
	}
}

func TestNearText(t *testing.T) {
	inch := units.Inch.Of(1)
	n, err := units.Sqrt(inch.Times(inch).MulInt(2), units.Length{})
	if err != nil || n.String() != "35.92102449 mm +- 0.00000002 mm" {
		t.Errorf("%v, %v", n, err)
	}
	back, err := units.ParseNear("35.921 mm +- 0.001 mm")
	if err != nil || back.Mid() != units.MustParse("35.921 mm") || back.Within() != units.MustParse("0.001 mm") {
		t.Errorf("%v, %v", back, err)
	}
	if _, err := back.Refine(units.MustParse("0.0001 mm")); !errors.Is(err, units.ErrBound) {
		t.Errorf("what was read is refined: %v", err)
	}
	if n, err := back.Refine(units.MustParse("1 mm")); err != nil || n != back {
		t.Errorf("what is fine enough is refined: %v, %v", n, err)
	}
	for bad, at := range map[string]int{
		"1 in +- -1 in": 8, "1 in +- 1": 9, "1 +- 1 in": 1, "1 in +-1 in": 5, "1 in ± 1 in": 5, "": 0, " +- ": 0, "1 in +- ": 8, "1 in +- 1 in +- 1 in": 13,
	} {
		var pe *units.ParseError
		if n, err := units.ParseNear(bad); !errors.As(err, &pe) || pe.Offset != at || pe.Input != bad || n != (units.Near{}) {
			t.Errorf("%q is read as %v, %v; want a fault at %d", bad, n, err, at)
		}
	}
	fine, err := units.Pi().Of(inch).Refine(base().Unscale(units.FromRat(new(big.Rat).SetInt(power10(40)))))
	if err != nil {
		t.Fatal(err)
	}
	if s := fine.String(); !strings.HasPrefix(s, "79.7964534011807") || len(s) > 60 {
		t.Errorf("a very fine one is %s", s)
	}
	checkNearText(t, fine)
	checkNearText(t, fine.Neg())
}

func TestNearZero(t *testing.T) {
	var n units.Near
	pi := units.Pi().Of(units.Inch.Of(1))
	if !n.IsZero() || n.String() != "0 in" || n != units.Exactly(units.Length{}) || n.Add(n) != n || n.Neg() != n || n.MulInt(7) != n || pi.MulInt(0) != n || pi.Sub(pi) != n {
		t.Error("the zero Near")
	}
	if s, err := n.Sign(); s != 0 || err != nil {
		t.Error(s, err)
	}
	// Made alike and refined differently is still the same amount.
	finer, err := pi.Refine(units.Millimetre.Frac(1, 1e12))
	if err != nil || pi.Sub(finer) != n || finer == pi {
		t.Error(pi.Sub(finer), err)
	}
	if c, err := pi.Cmp(finer); c != 0 || err != nil {
		t.Error(c, err)
	}
	mustPanic(t, "DivInt by zero", func() { pi.DivInt(0) })
	mustPanic(t, "Div by zero", func() { pi.Div(units.Length{}) })
}

func TestNearDecide(t *testing.T) {
	inch := units.Inch.Of(1)
	pi := units.Pi().Of(inch)
	for _, c := range []struct {
		text string
		want int
	}{{"3 1/7 in", -1}, {"355/113 in", -1}, {"103993/33102 in", 1}, {"245850922/78256779 in", 1}, {"165707065/52746197 in", -1}, {"3 in", 1}} {
		if got, err := pi.Cmp(units.Exactly(units.MustParse(c.text))); err != nil || got != c.want {
			t.Errorf("pi inches against %s: %d, %v", c.text, got, err)
		}
	}
	// To a hundred places: one digit decides.
	low := inch.Scale(units.FromRat(bigRat(piDigits)))
	if c, err := pi.Cmp(units.Exactly(low)); c != 1 || err != nil {
		t.Errorf("pi against its first hundred digits: %d, %v", c, err)
	}
	mark, residue, err := pi.Round(inch.DivInt(16), units.HalfAway)
	if err != nil || mark != units.MustParse("3 1/8 in") {
		t.Error(mark, err)
	}
	if lo, hi := residue.Bounds(); lo.Sign() <= 0 || units.MustParse("1/32 in").Less(hi) {
		t.Error(residue)
	}
	// Rough bounds that lie on both sides of a tie are refined until it is decided.
	rough, err := units.Sqrt(inch.Times(inch).MulInt(2), inch.DivInt(2))
	if err != nil {
		t.Fatal(err)
	}
	if mark, _, err := rough.Round(inch.DivInt(128), units.HalfAway); err != nil || mark != units.MustParse("1 53/128 in") {
		t.Error(mark, err)
	}
	for _, step := range []units.Length{{}, inch.Neg()} {
		if _, _, err := pi.Round(step, units.Up); !errors.Is(err, units.ErrBound) {
			t.Error(err)
		}
		if mark, residue, err := units.Exactly(inch).Round(step, units.Up); err != nil || mark != inch || !residue.IsZero() {
			t.Error(mark, residue, err)
		}
	}
	read, err := units.ParseNear("1 in +- 1 in")
	if err != nil {
		t.Fatal(err)
	}
	if _, _, err := read.Round(inch, units.HalfAway); !errors.Is(err, units.ErrBound) {
		t.Error(err)
	}
	if _, err := read.Sign(); !errors.Is(err, units.ErrBound) {
		t.Error(err)
	}
}

// TestNearUndecided: equal irrationals made differently cannot be told apart, and
// the work on it ends. So does that on amounts made of very many parts.
func TestNearUndecided(t *testing.T) {
	inch := units.Inch.Of(1)
	root := func(n int64) units.Near {
		v, err := units.Sqrt(inch.Times(inch).MulInt(n), units.Length{})
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	// The root of 3 + root 8 is 1 + root 2.
	left, err := root(2).Plus(inch).Hypot(units.Near{}, units.Length{})
	if err != nil {
		t.Fatal(err)
	}
	right := root(2).Plus(inch)
	if _, err := left.Cmp(right); !errors.Is(err, units.ErrBound) {
		t.Error(err)
	}
	// More parts than are kept, undecided in the end.
	for n := range int64(150) {
		left, right = left.Add(root(n)), right.Add(root(n))
	}
	if _, err := left.Cmp(right); !errors.Is(err, units.ErrBound) {
		t.Error(err)
	}
	for range 3000 {
		left = left.Add(root(3)).Scale(units.RatioOf(6, 7))
	}
	lo, hi := left.Bounds()
	if hi.Less(lo) || units.Inch.Of(100).Less(left.Within()) {
		t.Errorf("after 3000 steps between %v and %v", lo, hi)
	}
	if _, err := left.Refine(units.Millimetre.Frac(1, 1e12)); !errors.Is(err, units.ErrBound) {
		t.Error(err)
	}
	many := units.Near{}
	circle := units.Pi().Of(inch)
	for range 4000 {
		many = many.Add(circle)
	}
	if c, err := many.Cmp(circle.MulInt(4001)); c != -1 || err != nil {
		t.Error(c, err) // decided by the bounds alone
	}
	huge := units.Pi().Of(lengthOf(new(big.Rat).SetInt(power10(900))))
	if c, err := huge.Cmp(circle); c != 1 || err != nil {
		t.Error(c, err)
	}
	if s := fmt.Sprint(huge); len(s) < 900 {
		t.Error(s)
	}
}
