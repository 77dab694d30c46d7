package layout

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.com/clothyard/units"
)

// A chart says of every place what all the lines of the pairing say, and the way
// out leads out of the deepest sum.
func TestChart(t *testing.T) {
	dice := rand.New(rand.NewPCG(71, 72))
	inches := func(n int64) units.Length { return units.Inch.Of(n) }
	comb := Piece{Count: 2, Turn: Quarter} // many sums to a pairing
	for k := range int64(9) {
		comb.Outline = append(comb.Outline, Point{inches(4 * k), inches(0)}, Point{inches(4*k + 3), inches(0)}, Point{inches(4*k + 3), inches(6 - k%3)}, Point{inches(4*k + 4), inches(6)})
	}
	comb.Outline = append(comb.Outline, Point{inches(36), inches(11)}, Point{inches(0), inches(9)})
	star := Piece{Count: 2, Turn: Half, Outline: []Point{{inches(0), inches(0)}, {inches(5), inches(3)}, {inches(10), inches(0)}, {inches(7), inches(5)}, {inches(10), inches(10)}, {inches(5), inches(7)}, {inches(0), inches(10)}, {inches(3), inches(5)}}}
	g, err := Spec{Cloth: Cloth{Wide: inches(45), Gap: units.Inch.Frac(1, 4)}, Pieces: []Piece{comb, star, {Count: 1, Outline: []Point{{inches(0), inches(0)}, {inches(7), inches(0)}, {inches(1), inches(20)}}}}}.check()
	if err != nil {
		t.Fatal(err)
	}
	table := newTable(g.nest)
	for a := range g.nest.variants {
		for b := range g.nest.variants {
			p := table.at(a, b)
			for range 500 {
				x := p.lox + (1.2*dice.Float64()-0.1)*(p.hix-p.lox)
				y := p.loy + (1.2*dice.Float64()-0.1)*(p.hiy-p.loy)
				want, from := 0.0, 0
				for _, s := range p.sums {
					d := math.MaxFloat64
					for _, l := range p.lines[from : from+len(s.pts)] {
						d = min(d, l.c-l.nx*x-l.ny*y)
					}
					want, from = max(want, d), from+len(s.pts)
				}
				d, edge := p.deepest(x, y)
				if got := p.depth(x, y); math.Abs(got-want) > 1e-3 || got != d {
					t.Fatalf("%d, %d at (%v, %v): depth %v, deepest %v, want %v", a, b, x, y, got, d, want)
				}
				if d == 0 {
					continue
				}
				if math.Abs(edge.nx*edge.nx+edge.ny*edge.ny-1) > 1e-9 || math.Abs(edge.c-edge.nx*x-edge.ny*y-d) > 1e-3 {
					t.Fatalf("%d, %d at (%v, %v): depth %v, out by %+v", a, b, x, y, d, *edge)
				}
			}
		}
	}
}
