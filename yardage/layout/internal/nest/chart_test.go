package nest

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"
)

// hollow is a nest of pieces with many parts, of all ways of turning. With its tip
// at 10 the star is the same turned by half, but not its parts.
func hollow(t *testing.T, tip int64) *Nest {
	t.Helper()
	var comb []int64 // many sums to a pairing
	for k := range int64(9) {
		comb = append(comb, 4*k, 0, 4*k+3, 0, 4*k+3, 6-k%3, 4*k+4, 6)
	}
	return made(t, 180, 1, 1, times(drawn(2, byQuarters, append(comb, 36, 11, 0, 9)...), 4),
		times(drawn(2, byHalf, 0, 0, 5, 3, tip, 0, 7, 5, 10, 10, 5, 7, 0, 10, 3, 5), 4),
		times(drawn(1, noTurn, 0, 0, 7, 0, 1, 20), 4))
}

// A chart says of every place what all the lines of the pairing say, and the way
// out leads out of the deepest sum. No place is less deep than its cell says, and
// most are not much deeper.
func TestChart(t *testing.T) {
	dice := rand.New(rand.NewPCG(71, 72))
	deep, near := 0, 0
	table := newTable(hollow(t, 11))
	for a := range table.n.Variants {
		for b := range table.n.Variants {
			v, p := table.at(a, b), table.pair(a, b)
			for range 500 {
				x := p.lox + (1.2*dice.Float64()-0.1)*(p.hix-p.lox)
				y := p.loy + (1.2*dice.Float64()-0.1)*(p.hiy-p.loy)
				type way struct{ d, nx, ny float64 }
				var ways []way // out of each sum
				want := 0.0
				for _, s := range p.sums {
					least := way{d: math.MaxFloat64}
					for k, q := range s.pts {
						r := s.pts[(k+1)%len(s.pts)]
						ex, ey := float64(r.X-q.X), float64(r.Y-q.Y)
						size := math.Hypot(ex, ey)
						if d := (ex*(y-float64(q.Y))-ey*(x-float64(q.X)))/size + table.margin; d < least.d {
							least = way{d, ey / size, -ex / size}
						}
					}
					want, ways = max(want, least.d), append(ways, least)
				}
				d, nx, ny := v.deepest(x, y)
				if got := v.depth(x, y); math.Abs(got-want) > 1e-3 || got != d {
					t.Fatalf("%d, %d at (%v, %v): depth %v, deepest %v, want %v", a, b, x, y, got, d, want)
				}
				least := 0.0
				if cell, ok := v.find(v.turn(x, y)); ok && v.rough[cell] > 0 {
					least = float64(v.rough[cell]-1) * v.unit
				} else if d > 0 {
					t.Fatalf("%d, %d at (%v, %v): %v deep in an empty cell", a, b, x, y, d)
				}
				if least > d+1e-3 {
					t.Fatalf("%d, %d at (%v, %v): %v deep, at least %v", a, b, x, y, d, least)
				}
				if d > 0 {
					if deep++; least > d/2 {
						near++
					}
				}
				if d > 0 && !slices.ContainsFunc(ways, func(w way) bool { return math.Abs(w.d-d) < 1e-3 && w.nx*nx+w.ny*ny > 1-1e-9 }) {
					t.Fatalf("%d, %d at (%v, %v): %v deep, and out by (%v, %v)", a, b, x, y, d, nx, ny)
				}
			}
		}
	}
	if deep == 0 || 2*near < deep {
		t.Errorf("of %d places that are inside, %d are known to be more than half as deep", deep, near)
	}
}
