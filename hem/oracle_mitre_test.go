package hem_test

import (
	"math/big"
	"math/rand/v2"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
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
		s := hem.Mitre{A: hem.HemSide{Depth: some(r)}, B: hem.HemSide{Depth: some(r)}, Lean: lean}
		s.A.Depth, s.B.Depth = s.A.Depth.Min(units.Metre.Of(1)), s.B.Depth.Min(units.Metre.Of(1))
		s.A.First, s.B.First = s.A.Depth.DivInt(3), s.B.Depth.DivInt(4)
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
			Lean: units.RatioOf(r.Int64N(13)-6, 5)}
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
