package layout

import (
	"math/big"
	"math/bits"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// A grid holds a Spec in whole numbers: every measure of a piece, and the gap,
// is a whole number of steps. Wherever pieces are pushed down and to the left as
// far as they go, their places are whole numbers of steps too, so that the least
// length is one, and the width may be rounded down to one.
//
// The gap is added to each piece across and along, and to the width once: then
// pieces may touch.
type grid struct {
	perInch int64 // step is size/perInch inches
	size    int64
	wide    int64 // width between the selvedges, the gap added
	gap     int64
	shapes  []shape
	total   int   // pieces, copies counted
	bound   int64 // no lay is shorter, the gap not added
}

// A shape is a size that one or more pieces have, the gap added.
type shape struct {
	wide, long int64
	turn       bool  // may also lie across, and is no square
	of         []int // the pieces that have it, once for each copy
}

// length is n steps as a length.
func (g grid) length(n int64) units.Length {
	return units.Inch.Of(n).Scale(units.RatioOf(g.size, g.perInch))
}

// grid finds the coarsest grid that all pieces and the gap share.
func (s Spec) grid(a *fault.Audit) (grid, bool) {
	den := big.NewInt(1)
	widen := func(l units.Length) (num *big.Int, ok bool) {
		r := l.In(units.Inch).Rat()
		common := new(big.Int).GCD(nil, nil, den, r.Denom())
		den.Mul(den, common.Quo(r.Denom(), common))
		return r.Num(), den.BitLen() < 60 && r.Num().BitLen() < 128
	}
	limit := units.Inch.Of(MaxGrid)
	tooFine := func(path string, l units.Length) (grid, bool) {
		a.Fault(path, l.String(), "lengths that lie on one grid, all pieces in a row at most "+limit.In(units.Inch).String()+" steps", ErrGrid)
		return grid{}, false
	}
	if _, ok := widen(s.Cloth.Gap); !ok {
		return tooFine("cloth.gap", s.Cloth.Gap)
	}
	for i, p := range s.Pieces {
		if _, ok := widen(p.Wide); !ok {
			return tooFine(piecePath(i)+".wide", p.Wide)
		}
		if _, ok := widen(p.Long); !ok {
			return tooFine(piecePath(i)+".long", p.Long)
		}
	}
	return s.fill(den.Int64(), tooFine)
}

// fill makes the whole numbers; each inch is perInch of them before they are
// divided by what they have in common.
func (s Spec) fill(perInch int64, tooFine func(string, units.Length) (grid, bool)) (grid, bool) {
	whole := func(l units.Length) (int64, bool) {
		n, ok := l.In(units.Inch).Mul(units.RatioOf(perInch, 1)).Int(units.Down)
		return n, ok && n <= MaxGrid
	}
	g := grid{perInch: perInch}
	var ok bool
	if g.gap, ok = whole(s.Cloth.Gap); !ok {
		return tooFine("cloth.gap", s.Cloth.Gap)
	}
	g.size = g.gap
	sizes := make([][2]int64, len(s.Pieces))
	var row int64 // all pieces side by side, the longer way
	for i, p := range s.Pieces {
		w, okWide := whole(p.Wide)
		l, okLong := whole(p.Long)
		if !okWide || !okLong || max(w, l)+g.gap > (MaxGrid-row)/int64(p.Count) {
			return tooFine(piecePath(i), p.Wide.Max(p.Long))
		}
		row += (max(w, l) + g.gap) * int64(p.Count)
		sizes[i] = [2]int64{w, l}
		g.size = common(g.size, common(w, l))
	}
	// A cloth wider than all pieces side by side is as good as one just so wide.
	usable := s.Cloth.Usable().Min(units.Inch.Frac(row-g.gap, perInch))
	g.wide, _ = whole(usable)
	g.gap /= g.size
	g.wide = g.wide/g.size + g.gap
	for i, p := range s.Pieces {
		g.add(i, p, sizes[i][0]/g.size+g.gap, sizes[i][1]/g.size+g.gap)
	}
	g.bound = g.least()
	return g, true
}

// add puts a piece with its shape; the sizes have the gap in them.
func (g *grid) add(i int, p Piece, wide, long int64) {
	turn := p.Turn == Quarter && wide != long
	one := shape{wide: wide, long: long, turn: turn}
	at := -1
	for k := range g.shapes {
		if sh := &g.shapes[k]; sh.wide == one.wide && sh.long == one.long && sh.turn == one.turn {
			at = k
		}
	}
	if at < 0 {
		at = len(g.shapes)
		g.shapes = append(g.shapes, one)
	}
	for range p.Count {
		g.shapes[at].of = append(g.shapes[at].of, i)
	}
	g.total += p.Count
}

// least is a length that no lay can be shorter than. For any margin up to half
// the width, a piece that leaves less than the margin beside it shares its place
// with none that is at least as wide as the margin: so it may count for the whole
// width, if pieces narrower than the margin count for nothing. The area so
// counted, spread over the width, is a bound; with no margin it is the plain area,
// with half the width that of pieces which cannot lie side by side.
func (g grid) least() int64 {
	best := g.spread(0)
	half := g.wide/2 + g.wide%2
	best = max(best, g.spread(half))
	for _, sh := range g.shapes {
		best = max(best, sh.least(g.wide))
		for _, margin := range [...]int64{sh.wide, sh.long} {
			if margin < half {
				best = max(best, g.spread(margin))
			}
		}
	}
	return best - g.gap
}

// least is the shorter of the ways that the shape can lie.
func (s shape) least(wide int64) int64 {
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
func (g grid) spread(margin int64) int64 {
	var hi, lo uint64
	for _, sh := range g.shapes {
		h, l := sh.counted(g.wide, margin)
		for range sh.of {
			var carry uint64
			lo, carry = bits.Add64(lo, l, 0)
			hi += h + carry
		}
	}
	lo, carry := bits.Add64(lo, uint64(g.wide-1), 0)
	n, _ := bits.Div64(hi+carry, lo, uint64(g.wide))
	return int64(n)
}

// counted is the area that the shape counts for, the less of the two ways that
// it can lie.
func (s shape) counted(wide, margin int64) (hi, lo uint64) {
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

// common is the greatest common divisor; 0 counts as a multiple of anything.
func common(a, b int64) int64 {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}
