package nest

import (
	"context"
	"math"
	"runtime"
	"testing"
	"time"
)

// The ways in which pieces of these tests may be turned.
const (
	noTurn = iota
	byHalf
	byQuarters
)

// thousand is how many steps of their grid an inch has where pieces are drawn in
// thousandths of it.
const thousand = 1000

// drawn is a piece of so many copies, by the places of its corners across and along.
func drawn(count, turn int, places ...int64) Piece {
	p := Piece{Times: count, Half: turn >= byHalf, Quarter: turn == byQuarters}
	for k := 0; k < len(places); k += 2 {
		p.Outline = append(p.Outline, vertex{X: places[k], Y: places[k+1]})
	}
	lo, _ := corners(p.Outline)
	for i := range p.Outline {
		p.Outline[i] = p.Outline[i].Minus(lo)
	}
	if twiceArea(p.Outline).Sign() < 0 {
		panic("drawn with the inside on the right")
	}
	return p
}

// made is a nest of pieces, all measures in scale steps of the grid they lie on,
// before that is made finer. It is divided.
func made(t *testing.T, wide, gap, scale int64, pieces ...Piece) *Nest {
	t.Helper()
	n := &Nest{Wide: wide * scale, Gap: gap * scale, Coarse: 1}
	var row int64
	for _, p := range pieces {
		_, hi := corners(p.Outline)
		row += (max(hi.X, hi.Y) + gap) * int64(p.Times)
	}
	n.Wide = min(n.Wide, row*scale)
	for n.Wide < Fineness {
		n.Wide, n.Gap, n.Coarse = n.Wide*10, n.Gap*10, n.Coarse*10
	}
	for _, p := range pieces {
		for i := range p.Outline {
			p.Outline[i].X *= scale * n.Coarse
			p.Outline[i].Y *= scale * n.Coarse
		}
		n.Add(p)
	}
	n.Least()
	if !n.divide(context.Background(), 0) {
		t.Fatal("not divided")
	}
	return n
}

// filled is the table of a nest, full.
func filled(t *testing.T, n *Nest) *table {
	t.Helper()
	full := newTable(n)
	if !full.fill(context.Background()) {
		t.Fatal("the table is not full")
	}
	return full
}

// times is a piece with all its measures so many times as large.
func times(p Piece, scale int64) Piece {
	for i := range p.Outline {
		p.Outline[i].X *= scale
		p.Outline[i].Y *= scale
	}
	return p
}

// coil is a square spiral of so many corners, and some more wide at each turn.
func coil(corners int, more int64) []int64 {
	k := int64(corners / 2)
	var out, back [][2]int64
	x, y, long := int64(0), int64(0), 4*k+more
	d, was := vertex{X: 1}, vertex{Y: -1}
	for i := range k {
		out = append(out, [2]int64{x, y})
		back = append(back, [2]int64{x - d.Y - was.Y, y + d.X + was.X}) // 1 inside both edges
		x, y = x+d.X*long, y+d.Y*long
		if i%2 == 1 {
			long -= 4
		}
		d, was = vertex{X: -d.Y, Y: d.X}, d
	}
	var places []int64
	for _, q := range out {
		places = append(places, q[0], q[1])
	}
	for i := range back {
		q := back[len(back)-1-i]
		places = append(places, q[0], q[1])
	}
	return places
}

// star is a star of so many corners.
func star(corners int, radius float64) []int64 {
	var out []int64
	for i := range corners {
		r := radius
		if i%2 == 1 {
			r *= 0.9
		}
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(corners))
		out = append(out, int64(r*cos), int64(r*sin))
	}
	return out
}

// ended fails where more goroutines go on than before. One that has done its last
// may not have been taken off the count yet.
func ended(t *testing.T, before int) {
	t.Helper()
	for range 1000 {
		if runtime.NumGoroutine() <= before {
			return
		}
		time.Sleep(time.Millisecond)
	}
	t.Errorf("%d goroutines, %d before", runtime.NumGoroutine(), before)
}
