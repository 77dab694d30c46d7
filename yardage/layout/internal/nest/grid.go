package nest

import "math/bits"

// A Grid holds rectangles to be laid: every measure of one, and the gap, is a whole
// number of steps. Wherever pieces are pushed down and to the left as
// far as they go, their places are whole numbers of steps too, so that the least
// length is one, and the width may be rounded down to one.
//
// The gap is added to each piece across and along, and to the width once: then
// pieces may touch.
type Grid struct {
	Wide   int64   // width between the selvedges, the gap added
	Gap    int64   // added to each piece
	Shapes []Shape // the sizes there are
	Total  int     // pieces, copies counted
	Bound  int64   // no lay is shorter, the gap not added
}

// A Shape is a size that one or more pieces have, the gap added.
type Shape struct {
	wide, long int64
	turn       bool  // may also lie across, and is no square
	Of         []int // the pieces that have it, once for each copy
}

// Add puts count copies of piece i with its shape, which may be turned where turn is
// set; the sizes have the gap in them.
func (g *Grid) Add(i, count int, wide, long int64, turn bool) {
	turn = turn && wide != long
	one := Shape{wide: wide, long: long, turn: turn}
	at := -1
	for k := range g.Shapes {
		if sh := &g.Shapes[k]; sh.wide == one.wide && sh.long == one.long && sh.turn == one.turn {
			at = k
		}
	}
	if at < 0 {
		at = len(g.Shapes)
		g.Shapes = append(g.Shapes, one)
	}
	for range count {
		g.Shapes[at].Of = append(g.Shapes[at].Of, i)
	}
	g.Total += count
}

// Least finds Bound, a length that no lay can be shorter than. For any margin up to half
// the width, a piece that leaves less than the margin beside it shares its place
// with none that is at least as wide as the margin: so it may count for the whole
// width, if pieces narrower than the margin count for nothing. The area so
// counted, spread over the width, is a bound; with no margin it is the plain area,
// with half the width that of pieces which cannot lie side by side.
func (g *Grid) Least() {
	best := g.spread(0)
	half := g.Wide/2 + g.Wide%2
	best = max(best, g.spread(half))
	for _, sh := range g.Shapes {
		best = max(best, sh.least(g.Wide))
		for _, margin := range [...]int64{sh.wide, sh.long} {
			if margin < half {
				best = max(best, g.spread(margin))
			}
		}
	}
	g.Bound = best - g.Gap
}

// least is the shorter of the ways that the shape can lie.
func (s Shape) least(wide int64) int64 {
	switch {
	case !s.turn || s.long > wide:
		return s.long
	case s.wide > wide:
		return s.wide
	}
	return min(s.wide, s.long)
}

// spread is the area of all pieces over the width, rounded up, each piece
// counted as the margin has it.
func (g Grid) spread(margin int64) int64 {
	var hi, lo uint64
	for _, sh := range g.Shapes {
		h, l := sh.counted(g.Wide, margin)
		for range sh.Of {
			var carry uint64
			lo, carry = bits.Add64(lo, l, 0)
			hi += h + carry
		}
	}
	lo, carry := bits.Add64(lo, uint64(g.Wide-1), 0)
	n, _ := bits.Div64(hi+carry, lo, uint64(g.Wide))
	return int64(n)
}

// counted is the area that the shape counts for, the less of the two ways that
// it can lie.
func (s Shape) counted(wide, margin int64) (hi, lo uint64) {
	one := func(w, l int64) (hi, lo uint64) {
		switch {
		case w < margin:
			w = 0
		case w > wide-margin:
			w = wide
		}
		return bits.Mul64(uint64(w), uint64(l))
	}
	if !s.turn || s.long > wide {
		return one(s.wide, s.long)
	}
	hi, lo = one(s.long, s.wide)
	if s.wide > wide {
		return hi, lo
	}
	if h, l := one(s.wide, s.long); h < hi || h == hi && l < lo {
		return h, l
	}
	return hi, lo
}
