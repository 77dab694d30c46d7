package units_test

import (
	"errors"
	"math/big"
	"slices"
	"testing"

	"example.com/clothyard/units"
)

// TestSumsOfRoots: sums of several roots and of pi are equal where they come to the same,
// in whatever order and by whatever way they were added, and else told apart.
func TestSumsOfRoots(t *testing.T) {
	r := seeded(45)
	f := func() *big.Float { return new(big.Float).SetPrec(400) }
	roots := []int64{2, 3, 5, 6, 7, 8, 12, 18, 50, 1_000_003 * 2, 1_000_003 * 1_000_003 * 3, 3}
	type part struct {
		n units.Near
		x *big.Float
	}
	for range 1000 {
		var parts []part
		for range 2 + r.IntN(6) {
			l := units.Inch.Frac(r.Int64N(41)-20, 1+r.Int64N(9))
			size := f().SetRat(l.In(units.Inch).Rat())
			switch k := roots[r.IntN(len(roots))]; r.IntN(5) {
			case 0:
				parts = append(parts, part{units.Exactly(l), size})
			case 1:
				parts = append(parts, part{units.Pi().Of(l), size.Mul(size, bigPi(400))})
			default:
				parts = append(parts, part{rootOf(t, units.RatioOf(k, 1)).Of(l), size.Mul(size, f().Sqrt(f().SetInt64(k)))})
			}
		}
		sum := func() (n units.Near, x *big.Float) {
			x = f()
			for _, p := range parts {
				n, x = n.Add(p.n), x.Add(x, p.x)
			}
			return n, x
		}
		a, x := sum()
		r.Shuffle(len(parts), func(i, j int) { parts[i], parts[j] = parts[j], parts[i] })
		b, _ := sum()
		if c, err := a.Cmp(b); c != 0 || err != nil {
			t.Fatalf("%v in another order is %v: %d, %v", a, b, c, err)
		}
		// What was added is taken away again, and nothing is left of it.
		for _, p := range parts[1:] {
			b = b.Sub(p.n)
		}
		if c, err := b.Cmp(parts[0].n); c != 0 || err != nil {
			t.Fatalf("%v is left of %v: %d, %v", b, parts[0].n, c, err)
		}
		// Halves of twice, and a very little more.
		twice := a.Add(a).DivInt(2)
		little := units.Inch.Frac(1, 1<<60)
		if c, err := twice.Cmp(a); c != 0 || err != nil {
			t.Fatalf("twice half of %v is %v: %d, %v", a, twice, c, err)
		}
		if c, err := twice.Plus(little).Cmp(a); c != 1 || err != nil {
			t.Fatalf("a little more than %v: %d, %v", a, c, err)
		}
		lo, hi := a.Bounds()
		if v, _ := x.Rat(nil); lo.In(units.Inch).Rat().Cmp(v.Add(v, big.NewRat(1, 1<<62))) > 0 || hi.In(units.Inch).Rat().Cmp(v.Sub(v, big.NewRat(1, 1<<61))) < 0 {
			t.Fatalf("%v is not %s in", a, x.Text('g', 20))
		}
		if want := x.Sign(); x.MantExp(nil) > -300 {
			if c, err := a.Sign(); c != want || err != nil {
				t.Fatalf("the sign of %v is %d, %v", a, c, err)
			}
		} else if c, err := a.Sign(); c != 0 || err != nil {
			t.Fatalf("%v is nothing: %d, %v", a, c, err)
		}
		fine, err := a.Refine(units.Millimetre.Frac(1, 1<<50))
		if err != nil {
			t.Fatal(a, err)
		}
		if c, err := fine.Cmp(a); c != 0 || err != nil {
			t.Fatal(fine, c, err)
		}
	}
}

// TestSumsOfOthers: what else is irrational cancels as it was made.
func TestSumsOfOthers(t *testing.T) {
	one := units.Inch.Of(1)
	sine, arc := angle(t, "1/3 rad").Sin().Of(one), angle(t, "slope 1/3").Arc(one)
	root := rootOf(t, units.RatioOf(5, 1)).Of(one)
	product := units.Diagonal().Mul(units.Pi()).Of(one)
	all := []units.Near{sine, arc, root, product, units.Circle(one), units.Exactly(one)}
	var sum units.Near
	for _, n := range all {
		sum = sum.Add(n.MulInt(3)).Plus(one)
	}
	slices.Reverse(all)
	for _, n := range all {
		sum = sum.Sub(n.MulInt(3)).Plus(one.Neg())
	}
	if l, ok := sum.Exact(); !ok || !l.IsZero() {
		t.Error(sum)
	}
	// A hundred roots are more than are kept apart, and are enclosed all the same.
	var many units.Near
	for k := range int64(100) {
		many = many.Add(rootOf(t, units.RatioOf(k*k+1, 1)).Of(one))
	}
	fine, err := many.Refine(units.Millimetre.Frac(1, 1e12))
	if err != nil {
		t.Fatal(err)
	}
	truth := new(big.Float).SetPrec(200)
	for k := range int64(100) {
		truth.Add(truth, new(big.Float).SetPrec(200).Sqrt(new(big.Float).SetInt64(k*k+1)))
	}
	encloses(t, "a hundred roots", fine.Div(one), truth)
	if c, err := many.Plus(units.Inch.Frac(1, 1e15)).Cmp(many); c != 1 || err != nil && !errors.Is(err, units.ErrBound) {
		t.Error(c, err)
	}
}

// TestNearHypot: the diagonal of two lengths that may be irrational.
func TestNearHypot(t *testing.T) {
	in := units.Inch.Of
	root := func(k, n int64) units.Near { return rootOf(t, units.RatioOf(k, 1)).Of(in(n)) }
	for _, c := range []struct{ a, b, want units.Near }{
		{units.Exactly(in(3)), units.Exactly(in(-4)), units.Exactly(in(5))},
		{root(2, 1), root(2, 1), units.Exactly(in(2))},
		{root(2, 3), units.Exactly(in(1)), root(19, 1)},
		{root(5, 1), root(11, -1), units.Exactly(in(4))},
		{units.Near{}, root(7, -2), root(7, 2)},
		{units.Near{}, units.Near{}, units.Near{}},
	} {
		n, err := c.a.Hypot(c.b, units.Length{})
		if err != nil {
			t.Fatal(err)
		}
		if same, err := n.Cmp(c.want); same != 0 || err != nil || units.DefaultWithin().Less(n.Within()) {
			t.Errorf("%v and %v: %v, want %v", c.a, c.b, n, c.want)
		}
	}
	r := seeded(46)
	f := func() *big.Float { return new(big.Float).SetPrec(slowPrec) }
	for range 200 {
		k := 2 + r.Int64N(50)
		p, q, y := r.Int64N(200)-100, r.Int64N(200)-100, r.Int64N(200)-100
		x := root(k, q).Plus(in(p))
		n, err := x.Hypot(units.Exactly(in(y)), units.Millimetre.Frac(1, 1e9))
		if err != nil {
			t.Fatal(err)
		}
		v := f().Sqrt(f().SetInt64(k))
		v.Add(v.Mul(v, f().SetInt64(q)), f().SetInt64(p))
		v.Add(v.Mul(v, v), f().SetInt64(y*y))
		encloses(t, "a diagonal", n.Div(in(1)), v.Sqrt(v))
		if units.Millimetre.Frac(1, 1e9).Less(n.Within()) {
			t.Fatal(n)
		}
		// Bounds that were read have no making, and are enclosed as far as they go.
		s, err := x.Settled().Hypot(units.Exactly(in(y)), units.Length{})
		if err != nil {
			t.Fatal(err)
		}
		encloses(t, "a diagonal that was read", s.Div(in(1)), v)
	}
	if n, err := root(2, 1).Hypot(units.Exactly(in(1)), units.Millimetre.Of(-1)); !errors.Is(err, units.ErrBound) {
		t.Error(n, err)
	}
}
