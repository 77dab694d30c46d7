package layout

import (
	"iter"
	"math/bits"
)

// bandsEach is how many bands the cloth is divided into, each way.
const bandsEach = 64

// bands tell for each variant that moves which items may be in its way in a band
// across the cloth and in one along it: those in both are looked at.
type bands struct {
	words      int // of 64 items
	rows, cols []uint64
	perX, perY float64    // bands to the step
	reaches    []frontier // by the fixed variant, then the one that moves
	gone       int        // an item that is in nobody's way, or -1
}

func newBands(t *table) bands {
	n := t.n
	words := (len(n.items) + 63) / 64
	size := len(n.variants) * bandsEach * words
	b := bands{words: words, rows: make([]uint64, size), cols: make([]uint64, size), gone: -1}
	for a := range n.variants {
		for v := range n.variants {
			b.reaches = append(b.reaches, t.at(a, v).frontier)
		}
	}
	return b
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
	k := len(e.n.variants)
	for v, s := range e.reaches[e.variant[j]*k:][:k] {
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
		band(e.rows, e.y[j]+s.loy, e.y[j]+s.hiy, e.perY)
		band(e.cols, e.x[j]+s.lox, e.x[j]+s.hix, e.perX)
	}
}

// rivals are the items that may be in the way of item i as variant v at a place.
func (b *bands) rivals(i, v int, x, y float64) iter.Seq[int] {
	return func(yield func(int) bool) {
		r, c := min(int(float64(y*b.perY)), bandsEach-1), min(int(float64(x*b.perX)), bandsEach-1)
		rows, cols := b.rows[(v*bandsEach+r)*b.words:][:b.words], b.cols[(v*bandsEach+c)*b.words:][:b.words]
		for w, left := range rows {
			for left &= cols[w]; left != 0; left &= left - 1 {
				if j := w<<6 | bits.TrailingZeros64(left); j != i && j != b.gone && !yield(j) {
					return
				}
			}
		}
	}
}
