package nest

import (
	"math/rand/v2"
	"testing"
)

// Pairings that are shared say of every place what the pair's own says: whether it
// is held, and how far from there it is clear.
func TestView(t *testing.T) {
	dice := rand.New(rand.NewPCG(79, 80))
	table := newTable(hollow(t, 10))
	shared := make(map[*pairing]int)
	for a := range table.n.Variants {
		for b := range table.n.Variants {
			v, p := table.at(a, b), table.pair(a, b)
			shared[v.pairing]++
			for n := range 500 {
				x := p.lo.X + dice.Int64N(p.hi.X-p.lo.X+1)
				y := p.lo.Y + dice.Int64N(p.hi.Y-p.lo.Y+1)
				if n%4 == 0 { // on a corner of a sum, where it begins to be clear
					pts := p.sums[dice.IntN(len(p.sums))].pts
					q := pts[dice.IntN(len(pts))]
					x, y = q.X, q.Y
				}
				if got, want := v.holds(x, y), p.holds(x, y); got != want {
					t.Fatalf("%d, %d at (%d, %d): held %v, want %v", a, b, x, y, got, want)
				}
				if got, want := v.clear(x, y, true), p.clear(x, y, 1, true); got != want {
					t.Fatalf("%d, %d at (%d, %d): clear along from %d, want %d", a, b, x, y, got, want)
				}
				if got, want := v.clear(y, x, false), p.clear(y, x, 1, false); got != want {
					t.Fatalf("%d, %d at (%d, %d): clear across from %d, want %d", a, b, x, y, got, want)
				}
			}
		}
	}
	// The comb lies four ways, the star and the wedge one: fewer than half of the
	// pairs have a pairing of their own.
	pairings, edges := table.size()
	if k := len(table.n.Variants); pairings != len(shared) || pairings >= k*k/2 || edges <= 0 {
		t.Errorf("%d pairings of %d variants, %d made", pairings, k, len(shared))
	}
}
