package layout_test

import (
	"errors"
	"math/rand/v2"
	"slices"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/yardage/layout"
)

// A path is a line from left to right, in steps.
type path []struct{ x, y int64 }

// under reports whether p is lower than q somewhere, exactly: where both are straight
// it is so at a corner of either, or nowhere.
func (p path) under(q path) bool {
	lower := func(a, b path) bool { // at a corner of a
		for _, at := range a {
			i, _ := slices.BinarySearchFunc(b, at.x, func(e struct{ x, y int64 }, x int64) int { return int(e.x - x) })
			if i == len(b) || i == 0 && b[0].x != at.x {
				continue
			}
			if b[i].x == at.x {
				if at.y < b[i].y {
					return true
				}
				continue
			}
			l, r := b[i-1], b[i]
			if (at.y-l.y)*(r.x-l.x) < (r.y-l.y)*(at.x-l.x) {
				return true
			}
		}
		return false
	}
	flip := func(a path) path {
		a = slices.Clone(a)
		for i := range a {
			a[i].y = -a[i].y
		}
		return a
	}
	return lower(p, q) || lower(flip(q), flip(p))
}

// piece is the path with the cloth on one side of it, and where it lies.
func (p path) piece(name string, above bool) (layout.Piece, layout.Placement) {
	far := int64(-5000)
	if above {
		far = 5000
	}
	step := func(n int64) units.Length { return units.Inch.Frac(n, 1000) }
	var pts []layout.Point
	lo, least := p[0].x, far
	for _, at := range p {
		pts = append(pts, layout.Point{X: step(at.x), Y: step(at.y)})
		least = min(least, at.y)
	}
	pts = append(pts, layout.Point{X: step(p[len(p)-1].x), Y: step(far)}, layout.Point{X: step(lo), Y: step(far)})
	at := layout.Placement{Copy: 1, X: step(10_000 + lo), Y: step(10_000 + least)}
	return layout.Piece{Name: name, Outline: pts, Count: 1}, at
}

// Two outlines of up to 2,000 points that lie on each other along all of a line are
// clear; moved or drawn into each other by one step anywhere they overlap, and only then.
func TestVerifyManyPoints(t *testing.T) {
	r := rand.New(rand.NewPCG(91, 92))
	over, rounds := 0, nountest.Rounds(2000)
	for range rounds {
		n := 2 + r.IntN(100)
		if r.IntN(4) == 0 {
			n = 1998
		}
		var lower path
		x := int64(0)
		for range n {
			lower = append(lower, struct{ x, y int64 }{x, r.Int64N(4000) - 2000})
			x += 1 + r.Int64N(9)
		}
		upper := slices.Clone(lower)
		for range r.IntN(4) {
			upper[r.IntN(n)].y += r.Int64N(4) - 1
		}
		if r.IntN(3) == 0 && n > 2 { // a corner more or less
			upper = slices.Delete(upper, 1, 2)
		}
		if r.IntN(4) == 0 {
			dx, dy := r.Int64N(3)-1, r.Int64N(3)
			for i := range upper {
				upper[i].x += dx
				upper[i].y += dy
			}
		}
		s := layout.Spec{Cloth: layout.Cloth{Wide: in("100")}, Pieces: make([]layout.Piece, 2)}
		lay := make([]layout.Placement, 2)
		s.Pieces[0], lay[0] = lower.piece("lower", false)
		s.Pieces[1], lay[1] = upper.piece("upper", true)
		lay[1].Piece = 1
		want := upper.under(lower)
		err := layout.Verify(s, lay)
		if errors.Is(err, layout.ErrOverlap) != want || err != nil && !want {
			t.Fatalf("Verify %v, want an overlap: %t\n%v\n%v", err, want, lower, upper)
		}
		if want {
			over++
		}
	}
	if over < rounds/10 || over > rounds*9/10 {
		t.Errorf("%d of %d overlap", over, rounds)
	}
}
