package layout

import "math/bits"

// bandsEach is how many bands the cloth is divided into, each way.
const bandsEach = 64

// bands tell for each variant that moves which items may be in its way in a band
// across the cloth and in one along it: those in both are looked at.
type bands struct {
	words      int // of 64 items
	rows, cols []uint64
	perX, perY float64 // bands to the step
}

func newBands(n *nest) bands {
	words := (len(n.items) + 63) / 64
	size := len(n.variants) * bandsEach * words
	return bands{words: words, rows: make([]uint64, size), cols: make([]uint64, size)}
}

// survey enters all items anew, on cloth of such a width and length.
func (e *easer) survey() {
	e.perX, e.perY = bandsEach/max(e.wide, 1), bandsEach/max(e.long, 1)
	clear(e.rows)
	clear(e.cols)
	for j := range e.x {
		e.enter(j, true)
	}
}

// enter enters item j in all the bands it reaches into, or takes it out of them.
func (e *easer) enter(j int, in bool) {
	word, mask, bit := j>>6, ^(uint64(1) << (j & 63)), uint64(0)
	if in {
		bit = ^mask
	}
	for v := range e.n.variants {
		p := e.t.at(e.variant[j], v)
		band := func(set []uint64, lo, hi, per float64) {
			if hi < 0 {
				return
			}
			from, to := int(max(float64(lo*per), 0)), min(int(float64(hi*per)), bandsEach-1)
			for r := from; r <= to; r++ {
				at := &set[(v*bandsEach+r)*e.words+word]
				*at = *at&mask | bit
			}
		}
		band(e.rows, e.y[j]+p.loy, e.y[j]+p.hiy, e.perY)
		band(e.cols, e.x[j]+p.lox, e.x[j]+p.hix, e.perX)
	}
}

// A crowd is the items that may be in the way at a place, to be taken one by one.
type crowd struct {
	rows, cols []uint64
	skip       int // the item that moves
	word       int
	left       uint64
}

// at are the items that may be in the way of item i as variant v at a place.
func (b *bands) at(i, v int, x, y float64) crowd {
	rows, cols := b.here(v, x, y)
	return crowd{rows: rows, cols: cols, skip: i, word: -1}
}

// here are the two bands at a place.
func (b *bands) here(v int, x, y float64) (rows, cols []uint64) {
	r, c := min(int(float64(y*b.perY)), bandsEach-1), min(int(float64(x*b.perX)), bandsEach-1)
	r, c = (v*bandsEach+r)*b.words, (v*bandsEach+c)*b.words
	return b.rows[r : r+b.words], b.cols[c : c+b.words]
}

// next is the next item; false after the last.
func (c *crowd) next() (int, bool) {
	for c.left == 0 {
		c.word++
		if c.word >= len(c.rows) {
			return 0, false
		}
		c.left = c.rows[c.word] & c.cols[c.word]
		if c.word == c.skip>>6 {
			c.left &^= 1 << (c.skip & 63)
		}
	}
	j := c.word<<6 | bits.TrailingZeros64(c.left)
	c.left &= c.left - 1
	return j, true
}
