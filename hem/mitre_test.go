package hem_test

import (
	"math/big"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// A spot is a point in exact numbers, in inches.
type spot struct{ x, y *big.Rat }

func rat(l units.Length) *big.Rat { return l.In(units.Inch).Rat() }

func mul(a, b *big.Rat) *big.Rat { return new(big.Rat).Mul(a, b) }
func add(a, b *big.Rat) *big.Rat { return new(big.Rat).Add(a, b) }
func sub(a, b *big.Rat) *big.Rat { return new(big.Rat).Sub(a, b) }

// An edge is the line on which n . v is c, with n of length 1.
type edge struct {
	n spot
	c *big.Rat
}

// cross is where two lines meet, by Cramer's rule.
func cross(a, b edge) spot {
	det := sub(mul(a.n.x, b.n.y), mul(a.n.y, b.n.x))
	q := func(p *big.Rat) *big.Rat { return new(big.Rat).Quo(p, det) }
	return spot{q(sub(mul(a.c, b.n.y), mul(b.c, a.n.y))), q(sub(mul(a.n.x, b.c), mul(b.n.x, a.c)))}
}

// over turns a point over a line.
func over(v spot, e edge) spot {
	d := sub(add(mul(v.x, e.n.x), mul(v.y, e.n.y)), e.c)
	d.Add(d, d)
	return spot{sub(v.x, mul(d, e.n.x)), sub(v.y, mul(d, e.n.y))}
}

func (a spot) is(b spot) bool { return a.x.Cmp(b.x) == 0 && a.y.Cmp(b.y) == 0 }

func square(a, b spot) *big.Rat {
	dx, dy := sub(a.x, b.x), sub(a.y, b.y)
	return add(mul(dx, dx), mul(dy, dy))
}

// exactly is a point of a plan whose lean has a rational root.
func exactly(t *testing.T, p hem.Point) spot {
	t.Helper()
	x, okx := p.X.Exact()
	y, oky := p.Y.Exact()
	if !okx || !oky {
		t.Fatalf("not exact: %v", p)
	}
	return spot{rat(x), rat(y)}
}

// TestMitreOracle lays out corners whose sides have a rational direction as lines,
// turns the hems over them and compares every point; and it sees the mark taken
// from the wrong hem, and the one that forgets the lean, caught.
func TestMitreOracle(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 41))
	own, square0 := 0, 0
	const rounds = 400
	for range rounds {
		m, n := r.Int64N(9)+1, r.Int64N(9)+1
		lean := units.RatioOf(m*m-n*n, 2*m*n) // the root of 1 + lean x lean is (mm + nn) / 2mn
		s := hem.Mitre{A: hem.HemSide{Depth: some(r)}, B: hem.HemSide{Depth: some(r)}, Lean: units.Slope(lean)}
		s.A.Depth, s.B.Depth = s.A.Depth.Min(units.Metre.Of(1)), s.B.Depth.Min(units.Metre.Of(1))
		s.A.First, s.B.First = units.Give(s.A.Depth.DivInt(3)), units.Give(s.B.Depth.DivInt(4))
		p, err := s.Plan()
		sin := big.NewRat(2*m*n, m*m+n*n)
		cos := mul(sin, lean.Rat())
		zero, one, minus := new(big.Rat), big.NewRat(1, 1), big.NewRat(-1, 1)
		// Side A is y = 0 with the garment above; side B runs along (cos, sin) with
		// the garment to its right, so that (sin, -cos) points into it.
		sideA := func(inside *big.Rat) edge { return edge{spot{zero, one}, inside} }
		sideB := func(inside *big.Rat) edge { return edge{spot{sin, mul(cos, minus)}, inside} }
		neg := func(l units.Length) *big.Rat { return rat(l.Neg()) }
		fold := cross(sideA(neg(s.A.Depth)), sideB(neg(s.B.Depth)))
		meet := cross(sideA(rat(s.A.Depth)), sideB(rat(s.B.Depth)))
		onA, onB := over(meet, sideA(zero)), over(meet, sideB(zero))
		// A mark must lie on its fold beyond the corner, seen along the side.
		alongA := sub(onA.x, fold.x)
		alongB := add(mul(sub(onB.x, fold.x), cos), mul(sub(onB.y, fold.y), sin))
		if alongA.Sign() <= 0 || alongB.Sign() <= 0 {
			if err == nil {
				t.Fatalf("%+v: planned, with marks at %v and %v", s, alongA, alongB)
			}
			continue
		}
		if err != nil {
			t.Fatalf("%+v: %v", s, err)
		}
		raw := cross(sideA(neg(p.TakenA)), sideB(neg(p.TakenB)))
		for name, pair := range map[string][2]spot{
			"raw": {raw, exactly(t, p.Raw)}, "fold": {fold, exactly(t, p.Fold)}, "meet": {meet, exactly(t, p.Meet)},
			"on A": {onA, exactly(t, p.OnA)}, "on B": {onB, exactly(t, p.OnB)},
		} {
			if !pair[0].is(pair[1]) {
				t.Fatalf("%s: %v, the plan has %v, of %+v", name, pair[0], pair[1], s)
			}
		}
		a, _ := p.AlongA.Exact()
		b, _ := p.AlongB.Exact()
		if rat(a).Cmp(alongA) != 0 || rat(b).Cmp(alongB) != 0 {
			t.Fatalf("marks at %v and %v, the plan has %v and %v", alongA, alongB, a, b)
		}
		origin := spot{zero, zero}
		for _, root := range []struct {
			n  units.Near
			of *big.Rat
		}{{p.Seam, square(onA, origin)}, {p.Seam, square(onB, origin)}, {p.Reach, square(raw, origin)}} {
			lo, hi := root.n.Bounds()
			if mul(rat(lo), rat(lo)).Cmp(root.of) > 0 || mul(rat(hi), rat(hi)).Cmp(root.of) < 0 {
				t.Fatalf("%v is not the root of %v", root.n, root.of)
			}
		}
		if !p.Meets() {
			t.Fatalf("does not meet: %+v", p)
		}
		if rat(s.A.Depth.MulInt(2)).Cmp(alongA) == 0 {
			own++
		}
		if rat(s.B.Depth.MulInt(2)).Cmp(alongA) == 0 {
			square0++
		}
	}
	if own > rounds/20 || square0 > rounds/4 {
		t.Errorf("a mark at twice its own depth is right %d times, one at twice the other %d times, of %d", own, square0, rounds)
	}
}

// TestMitreSkew: where the root is irrational the points are enclosed, the corner
// still meets exactly, and the seam's enclosure holds the distance of both marks.
func TestMitreSkew(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 8))
	planned := 0
	for range 60 {
		s := hem.Mitre{A: hem.HemSide{Depth: units.Inch.Frac(r.Int64N(16)+1, 8)}, B: hem.HemSide{Depth: units.Inch.Frac(r.Int64N(16)+1, 8)},
			Lean: units.Slope(units.RatioOf(r.Int64N(13)-6, 5))}
		p, err := s.Plan()
		if err != nil {
			continue
		}
		planned++
		if !p.Meets() {
			t.Errorf("does not meet: %+v", s)
		}
		for _, mark := range []hem.Point{p.OnA, p.OnB, p.Meet} {
			most, least := new(big.Rat), new(big.Rat)
			for _, n := range []units.Near{mark.X, mark.Y} {
				lo, hi := n.Bounds()
				l, h := lo.Abs().Min(hi.Abs()), lo.Abs().Max(hi.Abs())
				least, most = add(least, mul(rat(l), rat(l))), add(most, mul(rat(h), rat(h)))
			}
			lo, hi := p.Seam.Bounds()
			if mul(rat(lo), rat(lo)).Cmp(most) > 0 || mul(rat(hi), rat(hi)).Cmp(least) < 0 {
				t.Errorf("%v is not the distance of %v: %+v", p.Seam, mark, s)
			}
			if units.Millimetre.Frac(1, 100).Less(p.Seam.Within()) {
				t.Errorf("only known to %v", p.Seam.Within())
			}
		}
		q := p
		q.OnA.X = q.OnA.X.Plus(units.Inch.Frac(1, 1000))
		if q.Meets() {
			t.Errorf("a mark that is moved still meets: %+v", s)
		}
	}
	if planned < 40 {
		t.Errorf("%d planned", planned)
	}
}

// A trim that comes just to the corner leaves nothing to cut off.
func TestMitreTrimToTheCorner(t *testing.T) {
	for _, c := range []struct{ trim, has, not string }{
		{"1 1/5 in", "Leave the corner on", "Cut the corner off"},
		{"1 19/100 in", "Cut the corner off", "Leave the corner on"},
	} {
		m := hem.Mitre{Trim: units.MustParse(c.trim)}
		m.A.Depth, m.B.Depth = units.MustParse("3/4 in"), units.MustParse("1 in")
		p, err := m.Plan()
		if err != nil {
			t.Fatal(err)
		}
		text := p.Sheet().Text(units.Notation{})
		if !strings.Contains(text, c.has) || strings.Contains(text, c.not) {
			t.Errorf("trimmed to %s, cut %v: want %q and not %q in\n%s", c.trim, p.CutA, c.has, c.not, text)
		}
	}
}

// The trim outside the seam is the printed quarter inch, and at most half of the
// lesser hem; raw edges leave two plies beside the seam, first turns three.
func TestMitreDefaults(t *testing.T) {
	for _, c := range []struct {
		first, depth, trim string
		plies              int
	}{
		{"0 in", "1 in", "1/4 in", 2},
		{"1/4 in", "1 in", "1/4 in", 3},
		{"0 in", "3/8 in", "3/16 in", 2},
	} {
		p, err := hem.Mitre{A: hem.HemSide{First: units.Give(units.MustParse(c.first)), Depth: units.MustParse(c.depth)}}.Plan()
		if err != nil || p.Spec.Trim != units.MustParse(c.trim) || p.Plies != c.plies {
			t.Errorf("%+v: trim %v, %d plies, %v", c, p.Spec.Trim, p.Plies, err)
		}
	}
}

func TestFaultsOfMitres(t *testing.T) {
	inch := hem.HemSide{Depth: l("1")}
	for _, test := range []struct {
		why  string
		s    hem.Mitre
		want []string
		err  error
	}{
		{"nothing", hem.Mitre{}, []string{"a.depth: not given, want more than 0 in"}, fault.Missing},
		{"below zero", hem.Mitre{A: hem.HemSide{First: units.Give(l("-1")), Depth: l("-1")}, B: hem.HemSide{First: units.Give(l("-1"))}, Trim: l("-1")},
			[]string{
				"a.first -1 in: wrong sign, want 0 in or more", "a.depth -1 in: wrong sign, want more than 0 in", "b.first -1 in: wrong sign, want 0 in or more",
				"b.depth: not given, want more than 0 in", "trim -1 in: wrong sign, want 0 in or more",
			}, fault.Sign},
		{"too deep", hem.Mitre{A: hem.HemSide{First: units.Give(units.Metre.Of(11)), Depth: units.Metre.Of(12)}, Trim: units.Metre.Of(13)},
			[]string{"a.first 11000 mm: out of range, want at most 10000 mm", "a.depth 12000 mm: out of range, want at most 10000 mm", "trim 13000 mm: out of range, want at most 10000 mm"}, fault.Range},
		{"a first turn past the edge", hem.Mitre{A: inch, B: hem.HemSide{First: units.Give(l("2")), Depth: l("1")}}, []string{"b.first 2 in: out of range, want at most 1 in (b.depth)"}, fault.Range},
		{"a corner that is none", hem.Mitre{A: inch, Lean: units.Slope(units.RatioOf(-101, 1))}, []string{"lean -slope 101: out of range, want from -100 to 100"}, fault.Range},
		{"hems too unlike for a blunt corner", hem.Mitre{A: inch, B: hem.HemSide{Depth: l("3")}, Lean: units.Slope(units.RatioOf(-1, 2))},
			[]string{"lean -slope 1/2: out of range, want a less blunt corner, or depths nearer to each other than 1 in and 3 in"}, fault.Range},
		{"a lean that is no slope in numbers", hem.Mitre{A: inch, Lean: units.Degrees(units.RatioOf(30, 1))}, []string{"lean 30 deg: out of range, want a slope, as in slope 1/2, or 45 deg"}, fault.Range},
		{"a first turn of nothing is something said of the other hem", hem.Mitre{A: inch, B: hem.HemSide{First: units.Give(units.Length{})}}, []string{"b.depth: not given, want more than 0 in"}, fault.Missing},
		{"just too unlike", hem.Mitre{A: hem.HemSide{Depth: l("5")}, B: hem.HemSide{Depth: l("3")}, Lean: units.Slope(units.RatioOf(-3, 4))},
			[]string{"lean -slope 3/4: out of range, want a less blunt corner, or depths nearer to each other than 3 in and 5 in"}, fault.Range},
	} {
		refuse(t, test.why, test.s, hem.Mitre.Plan, test.want, test.err)
	}
}

// TestDeepMitre: the seam of the deepest hems, at corners that are not square, is
// enclosed by its bounds. Its square is (a a + b b) s s + 2 x Lean x a b s, where s s
// is 1 + Lean x Lean; s is found here to forty places.
func TestDeepMitre(t *testing.T) {
	places := new(big.Int).Exp(big.NewInt(10), big.NewInt(40), nil)
	r := rand.New(rand.NewPCG(8, 9))
	for range 300 {
		lean := units.RatioOf(-1-r.Int64N(hem.MaxLean*60), 60)
		a := units.Millimetre.Frac(50_000+r.Int64N(50_000), 10)
		b := a
		if r.IntN(3) == 0 {
			lean, b = lean.Neg(), units.Millimetre.Frac(50_000+r.Int64N(50_000), 10)
		}
		p, err := hem.Mitre{A: hem.HemSide{Depth: a}, B: hem.HemSide{Depth: b}, Lean: units.Slope(lean)}.Plan()
		if err != nil {
			t.Fatal(err)
		}
		k := lean.Rat()
		ss := add(big.NewRat(1, 1), mul(k, k))
		root := new(big.Int).Mul(ss.Num(), ss.Denom())
		root.Mul(root, places).Mul(root, places).Sqrt(root)
		s := new(big.Rat).SetFrac(root, new(big.Int).Mul(places, ss.Denom()))
		more := add(s, new(big.Rat).SetFrac(big.NewInt(1), places))
		plain := mul(add(mul(rat(a), rat(a)), mul(rat(b), rat(b))), ss)
		each := mul(big.NewRat(2, 1), mul(k, mul(rat(a), rat(b))))
		low, high := add(plain, mul(each, s)), add(plain, mul(each, more))
		if high.Cmp(low) < 0 {
			low, high = high, low
		}
		lo, hi := p.Seam.Bounds()
		if mul(rat(lo), rat(lo)).Cmp(high) > 0 || mul(rat(hi), rat(hi)).Cmp(low) < 0 {
			t.Errorf("%v by %v, lean %v: the seam is not %v", a, b, lean, p.Seam)
		}
	}
}
