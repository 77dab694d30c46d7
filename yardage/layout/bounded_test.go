package layout

import (
	"context"
	"errors"
	"math"
	"math/big"
	"math/rand/v2"
	"runtime"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
)

// coil is a square spiral of so many corners, and some more wide at each turn.
func coil(corners int, more int64) []Point {
	at := func(x, y int64) Point { return Point{units.Millimetre.Of(x), units.Millimetre.Of(y)} }
	k := int64(corners / 2)
	var out, back []Point
	x, y, long := int64(0), int64(0), 4*k+more
	d, was := vertex{X: 1, Y: 0}, vertex{X: 0, Y: -1}
	for i := range k {
		out = append(out, at(x, y))
		back = append(back, at(x-d.Y-was.Y, y+d.X+was.X)) // 1 mm inside both edges
		x, y = x+d.X*long, y+d.Y*long
		if i%2 == 1 {
			long -= 4
		}
		d, was = vertex{X: -d.Y, Y: d.X}, d
	}
	for i := range back {
		out = append(out, back[len(back)-1-i])
	}
	return out
}

// star is a star of so many corners.
func star(corners int, radius float64) []Point {
	var out []Point
	for i := range corners {
		r := radius
		if i%2 == 1 {
			r *= 0.9
		}
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(corners))
		out = append(out, Point{units.Millimetre.Frac(int64(r*cos), 10), units.Millimetre.Frac(int64(r*sin), 10)})
	}
	return out
}

// alone is a Spec of one copy of each outline.
func alone(outlines ...[]Point) Spec {
	s := Spec{Cloth: Cloth{Wide: units.Metre.Of(3)}, Work: 1}
	for _, pts := range outlines {
		s.Pieces = append(s.Pieces, Piece{Outline: pts, Count: 1})
	}
	return s
}

// limited is a context that is done once it has been asked so many times.
type limited struct {
	context.Context
	left atomic.Int64
}

func (a *limited) Err() error {
	if a.left.Add(-1) < 0 {
		return context.Canceled
	}
	return nil
}

func patient(times int64) *limited {
	a := &limited{Context: context.Background()}
	a.left.Store(times)
	return a
}

// However soon a context is done after the call, there is a lay, and it says that
// it was stopped.
func TestFirstLay(t *testing.T) {
	inch := units.Inch.Of
	rect := Piece{Wide: inch(9), Long: inch(5), Count: 3, Turn: Quarter}
	plain := Spec{Cloth: Cloth{Wide: inch(20)}, Pieces: []Piece{rect, {Wide: inch(7), Long: inch(7), Count: 4}}}
	folded, flawed, striped, parted := plain, plain, plain, plain
	folded.Cloth.Folded = true
	flawed.Cloth.Flaws = []Flaw{{X: inch(3), Y: inch(2), Wide: inch(1), Long: inch(1)}, {Outline: []Point{{inch(5), inch(9)}, {inch(19), inch(12)}, {inch(6), inch(14)}}}}
	striped.Cloth.RepeatX, striped.Cloth.RepeatY = inch(3), inch(4)
	striped.Pieces = []Piece{{Wide: inch(9), Long: inch(5), Count: 3, Notches: []Notch{{Name: "a"}}}, {Wide: inch(4), Long: inch(5), Count: 2, Centred: true}}
	parted.Pieces = []Piece{rect, {Wide: inch(3), Long: inch(50), Count: 1, Turn: Quarter, Parts: 4}}
	half := folded
	half.Pieces = []Piece{{Outline: star(20, 900)[:11], Count: 1}, {Wide: inch(4), Long: inch(9), Count: 1, Fold: true}, rect}
	for name, s := range map[string]Spec{"rectangles": plain, "folded": folded, "flaws": flawed, "stripes": striped, "parts": parted, "on the fold": half, "outlines": alone(star(40, 900), star(60, 800), coil(20, 0))} {
		for _, times := range []int64{1, 2, 3, 5, 9} {
			p, err := s.Plan(patient(times))
			if err != nil || !p.Stopped && p.Lay != p.Bound {
				t.Errorf("%s, asked %d times: stopped %v, %v", name, times, p.Stopped, err)
				continue
			}
			if err := Verify(s, p.Placements); err != nil {
				t.Errorf("%s: %v", name, err)
			}
		}
	}
}

// Outlines with very many corners are searched, by plainer ones that hold them.
func TestManyCorners(t *testing.T) {
	var outlines [][]Point
	for i := range 4 {
		outlines = append(outlines, star(800, 9000+float64(100*i)))
	}
	s := alone(outlines...)
	s.Pieces[0].Count = 30
	p, err := s.Plan(context.Background())
	if err != nil || p.Stopped || strings.Contains(strings.Join(strings.Fields(p.Sheet().Text()), " "), "too many points") {
		t.Errorf("stopped %v, %v", p.Stopped, err)
	}
}

// What takes long to check or to prove ends soon after its context.
func TestLate(t *testing.T) {
	var outlines [][]Point
	for i := range 8 {
		outlines = append(outlines, star(2000, 9000+float64(i)))
	}
	s := alone(outlines...)
	if _, err := s.Plan(patient(1)); !errors.Is(err, context.Canceled) {
		t.Errorf("checks: %v", err)
	}
	late := func() *clock { return &clock{ctx: patient(0)} }
	if _, err := s.check(late()); !errors.Is(err, errLate) {
		t.Error(err)
	}
	few := alone(star(40, 900), star(60, 800))
	p, err := few.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if err := p.verify(late()); !errors.Is(err, errLate) {
		t.Error(err)
	}
	if err := p.verify(&clock{ctx: patient(0), left: proofGrace}); err != nil {
		t.Errorf("a short proof: %v", err)
	}
}

// Which side of a rail a point is on, as whole numbers of any length have it.
func TestRailHolds(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	far := func() int64 { return r.Int64N(2*growRoom) - growRoom }
	both := [2]int{}
	rounds := nountest.Rounds(20_000)
	for range rounds {
		var g grower
		at, d := vertex{X: far(), Y: far()}, vertex{X: far(), Y: far()}
		g.rail(at, d, r.Int64N(growRoom), true)
		one := &g.rails[0]
		q := vertex{X: far(), Y: far()}
		if r.IntN(2) == 0 { // on the line, or a step beside it
			k := r.Int64N(5) - 2
			size := new(big.Int).Sqrt(new(big.Int).Add(product(d.X, d.X), product(d.Y, d.Y))).Int64()
			take := new(big.Int).Quo(one.beyond, big.NewInt(max(size, 1))).Int64()
			off := func(n int64) int64 {
				return new(big.Int).Quo(product(n, take), big.NewInt(max(size, 1))).Int64()
			}
			q = vertex{X: at.X + off(d.Y) + k, Y: at.Y - off(d.X) - k}
		}
		c := new(big.Int).Sub(product(d.X, q.Y-at.Y), product(d.Y, q.X-at.X))
		want := c.Add(c, one.beyond).Sign() <= 0
		if one.holds(q) != want {
			t.Fatalf("%+v, %v: %v", one, q, !want)
		}
		if want {
			both[1]++
		} else {
			both[0]++
		}
	}
	if min(both[0], both[1]) < rounds/10 {
		t.Errorf("%v", both)
	}
}

// Ended fails where more goroutines go on than before. One that has done its last
// may not have been taken off the count yet.
func Ended(t *testing.T, before int) {
	t.Helper()
	for range 1000 {
		if runtime.NumGoroutine() <= before {
			return
		}
		time.Sleep(time.Millisecond)
	}
	t.Errorf("%d goroutines, %d before", runtime.NumGoroutine(), before)
}
