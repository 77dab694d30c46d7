package nest

import (
	"iter"
	"math/bits"
	"slices"
)

// bandsEach is how many bands the cloth is divided into, each way.
const bandsEach = 64

// bands tell which items may be in the way of one that moves, in a band across the
// cloth and in one along it: those in both are looked at. Variants that are as
// long share the bands across, those that are as wide the bands along.
type bands struct {
	rows, cols bandset
	gone       int // an item that is in nobody's way, or -1
}

// A bandset is the bands one way.
type bandset struct {
	words int      // of 64 items
	reach float64  // how far from each other two may be and still count
	per   float64  // bands to the step
	sizes []int64  // of the variants that move
	of    []int    // by variant: which of the sizes
	items []uint64 // by size and band
}

func newBands(t *table) bands {
	n := t.n
	set := func(size func(v *Variant) int64) bandset {
		s := bandset{words: (len(n.Items) + 63) / 64, reach: float64(n.Gap) + t.margin}
		for v := range n.Variants {
			z := size(&n.Variants[v])
			at := slices.Index(s.sizes, z)
			if at < 0 {
				at = len(s.sizes)
				s.sizes = append(s.sizes, z)
			}
			s.of = append(s.of, at)
		}
		s.items = make([]uint64, len(s.sizes)*bandsEach*s.words)
		return s
	}
	return bands{
		rows: set(func(v *Variant) int64 { return v.Long }),
		cols: set(func(v *Variant) int64 { return v.Wide }),
		gone: -1,
	}
}

// A stretch is from where to where an item reaches along one side of the cloth.
type stretch struct{ from, to float64 }

// survey enters all items anew, on cloth of such a width and length.
func (e *easer) survey() {
	e.rows.per, e.cols.per = bandsEach/max(e.long, 1), bandsEach/max(e.wide, 1)
	clear(e.rows.items)
	clear(e.cols.items)
	nowhere := stretch{0, -1}
	for j := range e.lie {
		x, y := e.stretches(&e.lie[j])
		e.rows.shift(j, nowhere, y)
		e.cols.shift(j, nowhere, x)
	}
}

// lay puts item i at a place as variant v.
func (e *easer) lay(i, v int, x, y float64) {
	fromX, fromY := e.stretches(&e.lie[i])
	e.lie[i] = lie{x, y, v}
	toX, toY := e.stretches(&e.lie[i])
	e.rows.shift(i, fromY, toY)
	e.cols.shift(i, fromX, toX)
}

// stretches are how far an item reaches across and along the cloth.
func (e *easer) stretches(l *lie) (x, y stretch) {
	v := &e.n.Variants[l.variant]
	return stretch{l.x, l.x + float64(v.Wide)}, stretch{l.y, l.y + float64(v.Long)}
}

// shift takes item j out of the bands it no longer is in the way in, and enters it
// in those it is in the way in now.
func (s *bandset) shift(j int, old, now stretch) {
	word, bit := j>>6, uint64(1)<<(j&63)
	for k, size := range s.sizes {
		set := s.items[k*bandsEach*s.words:][:bandsEach*s.words]
		from, to := s.within(old, float64(size)+s.reach, s.reach)
		lo, hi := s.within(now, float64(size)+s.reach, s.reach)
		for r := from; r <= min(to, lo-1); r++ {
			set[r*s.words+word] &^= bit
		}
		for r := max(from, hi+1); r <= to; r++ {
			set[r*s.words+word] &^= bit
		}
		for r := lo; r <= min(hi, from-1); r++ {
			set[r*s.words+word] |= bit
		}
		for r := max(lo, to+1); r <= hi; r++ {
			set[r*s.words+word] |= bit
		}
	}
}

// within is the first and the last band of a stretch with so much before and
// after; none where the last is before the first.
func (s *bandset) within(r stretch, before, after float64) (first, last int) {
	if r.to < r.from {
		return 0, -1
	}
	return int(max(float64((r.from-before)*s.per), 0)), int(min(float64((r.to+after)*s.per), bandsEach-1))
}

// band is the items that may be in the way of variant v in the band that has a
// place.
func (s *bandset) band(v int, place float64) []uint64 {
	r := min(int(float64(place*s.per)), bandsEach-1)
	return s.items[(s.of[v]*bandsEach+r)*s.words:][:s.words]
}

// rivals are the items that may be in the way of item i as variant v at a place.
func (b *bands) rivals(i, v int, x, y float64) iter.Seq[int] {
	return func(yield func(int) bool) {
		cols := b.cols.band(v, x)
		for w, left := range b.rows.band(v, y) {
			for left &= cols[w]; left != 0; left &= left - 1 {
				if j := w<<6 | bits.TrailingZeros64(left); j != i && j != b.gone && !yield(j) {
					return
				}
			}
		}
	}
}
