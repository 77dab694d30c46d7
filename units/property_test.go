package units_test

import (
	"math"
	"math/big"
	"testing"

	"example.com/clothyard/units"
)

// TestLaws holds what must be true of any lengths at all, by == alone.
func TestLaws(t *testing.T) {
	r := seeded(8)
	for range *oracleN * 10 {
		a, b, c := lengthOf(operand(r)), lengthOf(operand(r)), lengthOf(operand(r))
		k := units.FromRat(operand(r))
		n := someInt(r)
		holds := func(law string, ok bool) {
			t.Helper()
			if !ok {
				t.Fatalf("%s fails for a = %v, b = %v, c = %v, k = %v, n = %d", law, a, b, c, k, n)
			}
		}
		holds("a+b-b == a", a.Add(b).Sub(b) == a)
		holds("a+b == b+a", a.Add(b) == b.Add(a))
		holds("(a+b)+c == a+(b+c)", a.Add(b).Add(c) == a.Add(b.Add(c)))
		holds("a-a == 0", a.Sub(a) == units.Length{})
		holds("--a == a", a.Neg().Neg() == a)
		holds("k(a+b) == ka+kb", a.Add(b).Scale(k) == a.Scale(k).Add(b.Scale(k)))
		holds("n(a+b) == na+nb", a.Add(b).MulInt(n) == a.MulInt(n).Add(b.MulInt(n)))
		if n != 0 {
			holds("n(a/n) == a", a.DivInt(n).MulInt(n) == a)
		}
		if !k.IsZero() {
			holds("(ka)/k == a", a.Scale(k).Unscale(k) == a)
		}
		if !b.IsZero() {
			holds("(a/b)b == a", b.Scale(a.Div(b)) == a)
			holds("ab/b == a", a.Times(b).Over(b) == a)
		}
		holds("ab == ba", a.Times(b) == b.Times(a))
		holds("order", a.Less(b) == b.Neg().Less(a.Neg()))
		holds("order of sums", a.Cmp(b) == a.Add(c).Cmp(b.Add(c)))
		holds("Min + Max", a.Min(b).Add(a.Max(b)) == a.Add(b))
		holds("|a|", a.Abs().Sign() >= 0 && (a.Abs() == a || a.Abs() == a.Neg()))
	}
}

// TestRoundLaws holds the directions of each mode, below zero too.
func TestRoundLaws(t *testing.T) {
	r := seeded(9)
	for range *oracleN * 10 {
		l, step := lengthOf(operand(r)), lengthOf(operand(r)).Abs()
		for _, m := range modes {
			mark, residue := l.Round(step, m)
			holds := func(law string, ok bool) {
				t.Helper()
				if !ok {
					t.Fatalf("%v to %v %v: %s fails for %v and %v", l, step, m, law, mark, residue)
				}
			}
			holds("mark + residue == l", mark.Add(residue) == l)
			if step.IsZero() {
				holds("no step, no rounding", mark == l)
				continue
			}
			holds("the mark is a mark", mark.IsMultiple(step))
			holds("within a step", residue.Abs().Less(step))
			switch m {
			case units.Down:
				holds("down", residue.Sign() >= 0)
			case units.Up:
				holds("up", residue.Sign() <= 0)
			case units.ToZero:
				holds("to zero", residue.Sign() == 0 || residue.Sign() == l.Sign())
			default:
				holds("nearest", !step.Less(residue.Abs().MulInt(2)))
			}
			again, none := mark.Round(step, m)
			holds("a mark stays", again == mark && none.IsZero())
			down, _ := l.Neg().Round(step, units.Down)
			up, _ := l.Round(step, units.Up)
			holds("down below zero mirrors up", down == up.Neg())
		}
	}
}

// TestRoundTable is the five modes on a tape, ties and both signs.
func TestRoundTable(t *testing.T) {
	for _, c := range []struct {
		l    string
		want [5]int64 // eighths: half away, half even, down, up, to zero
	}{
		{"5/16 in", [5]int64{3, 2, 2, 3, 2}},
		{"7/16 in", [5]int64{4, 4, 3, 4, 3}},
		{"-5/16 in", [5]int64{-3, -2, -3, -2, -2}},
		{"-7/16 in", [5]int64{-4, -4, -4, -3, -3}},
		{"1/3 in", [5]int64{3, 3, 2, 3, 2}},
		{"-1/3 in", [5]int64{-3, -3, -3, -2, -2}},
		{"3/8 in", [5]int64{3, 3, 3, 3, 3}},
		{"1/100 in", [5]int64{0, 0, 0, 1, 0}},
		{"-1/100 in", [5]int64{0, 0, -1, 0, 0}},
		{"0 in", [5]int64{}},
	} {
		for i, m := range modes {
			l := units.MustParse(c.l)
			if mark, _ := l.Round(units.Inch.Frac(1, 8), m); mark != units.Inch.Frac(c.want[i], 8) {
				t.Errorf("%s %v = %v, want %d/8 in", c.l, m, mark, c.want[i])
			}
		}
	}
	l := units.MustParse("1/3 in")
	for _, step := range []units.Length{{}, units.Inch.Of(-1)} {
		if mark, residue := l.Round(step, units.Up); mark != l || !residue.IsZero() {
			t.Errorf("to a step of %v: %v and %v", step, mark, residue)
		}
	}
	half := units.RatioOf(1, 2)
	if mark, residue := half.Round(units.Ratio{}, units.Up); mark != half || !residue.IsZero() {
		t.Error("a ratio to a step of zero")
	}
}

// TestMarksLaws: the gaps make up the span, and no mark is out by more than half
// a step, however many there are.
func TestMarksLaws(t *testing.T) {
	r := seeded(10)
	for range *oracleN * 3 {
		span := lengthOf(operand(r))
		gaps := 1 + r.IntN(40)
		step := units.Inch.Frac(1, 1+r.Int64N(64))
		for _, m := range modes {
			var first, last, exactLast, total, before units.Length
			k := 0
			for mark, residue := range units.Marks(span, gaps, step, m) {
				if mark.Add(residue) != span.MulInt(int64(k)).DivInt(int64(gaps)) {
					t.Fatalf("mark %d of %v in %d: %v and %v", k, span, gaps, mark, residue)
				}
				if k == 0 {
					first = mark
				} else {
					total = total.Add(mark.Sub(before))
				}
				before, last, exactLast = mark, mark, mark.Add(residue)
				k++
			}
			if !first.IsZero() || exactLast != span || total != last {
				t.Fatalf("%v in %d gaps: from %v to %v, gaps add up to %v", span, gaps, first, last, total)
			}
		}
	}
}

func TestMarksEdges(t *testing.T) {
	span, step := units.MustParse("23 1/2 in"), units.MustParse("1/16 in")
	for _, gaps := range []int{0, -1, math.MinInt} {
		for range units.Marks(span, gaps, step, units.HalfAway) {
			t.Fatalf("a mark for %d gaps", gaps)
		}
	}
	// As many gaps as an int can count: the marks come one by one.
	const most = math.MaxInt
	n := 0
	for mark, residue := range units.Marks(span, most, step, units.HalfAway) {
		if mark.Add(residue) != span.MulInt(int64(n)).DivInt(most) {
			t.Fatal(n, mark, residue)
		}
		if n++; n == 3 {
			break
		}
	}
	if n != 3 {
		t.Errorf("%d marks of %d gaps before the break", n, most)
	}
	// More steps than the machine counts, in terms that it holds.
	long, half := base().MulInt(1<<62), base().DivInt(2)
	for mark, residue := range units.Marks(long, 1, half, units.HalfAway) {
		if !residue.IsZero() || !mark.IsZero() && mark != long {
			t.Error(mark, residue)
		}
	}
	// No step: the marks are exact.
	n = 0
	for mark, residue := range units.Marks(span, 13, units.Length{}, units.HalfAway) {
		if mark != span.MulInt(int64(n)).DivInt(13) || !residue.IsZero() {
			t.Fatal(n, mark, residue)
		}
		n++
	}
	// The thirteen gaps on 23 1/2 in, to a sixteenth, as a tape shows them.
	want := []string{"0 in", "1 13/16 in", "3 5/8 in", "5 7/16 in", "7 1/4 in", "9 1/16 in", "10 7/8 in", "12 5/8 in", "14 7/16 in", "16 1/4 in", "18 1/16 in", "19 7/8 in", "21 11/16 in", "23 1/2 in"}
	n = 0
	for mark := range units.Marks(span, 13, step, units.HalfAway) {
		if mark.String() != want[n] {
			t.Errorf("mark %d at %v, want %s", n, mark, want[n])
		}
		n++
	}
}

// TestSpot are the sums that a rounding library gets wrong.
func TestSpot(t *testing.T) {
	p := units.MustParse
	third, seventh := p("1/3 in"), p("1/7 in")
	set := map[units.Length]bool{third: true}
	if !set[third.Add(seventh).Sub(seventh)] || units.Inch.Of(1).DivInt(3).MulInt(3) != units.Inch.Of(1) {
		t.Error("thirds and sevenths")
	}
	for _, c := range [][2]units.Length{
		{p("1 in").Add(p("25.4 mm")), p("2 in")},
		{p("1/128 in").MulInt(128), p("1 in")},
		{p("40 L"), p("1 in")},
		{p("1/256 in").MulInt(2), p("1/128 in")},
		{p("36 in"), p("0.9144 m")},
	} {
		if c[0] != c[1] {
			t.Errorf("%v is not %v", c[0], c[1])
		}
	}
	large := lengthOf(new(big.Rat).SetFrac(new(big.Int).Lsh(big.NewInt(1), 70), big.NewInt(7)))
	for _, x := range []units.Length{p("1 in"), third, large, p("-9 m")} {
		if large.Add(x).Sub(large) != x || !units.Wide(large) {
			t.Errorf("large and back with %v", x)
		}
	}
}

// TestNormalForm reaches one number by many ways; all are == and one map key.
func TestNormalForm(t *testing.T) {
	r := seeded(11)
	for range *oracleN * 3 {
		v := operand(r)
		l := lengthOf(v)
		other := lengthOf(operand(r))
		ways := []units.Length{
			l, l.Neg().Neg(), l.Add(other).Sub(other), l.Sub(other).Add(other), l.MulInt(7).DivInt(7), l.DivInt(-3).MulInt(-3),
			l.MulInt(1 << 62).DivInt(1 << 62), units.Sum(l, other, other.Neg()), base().Scale(l.Div(base())), l.Times(base()).Over(base()),
		}
		keys := map[units.Length]int{}
		for _, w := range ways {
			keys[w]++
			if err := units.FormOf(w); err != nil {
				t.Fatal(err)
			}
		}
		if len(keys) != 1 {
			t.Fatalf("%v reached %d ways is %d values: %v", v, len(ways), len(keys), keys)
		}
	}
}
