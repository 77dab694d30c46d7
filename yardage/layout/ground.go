package layout

import (
	"slices"
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// A ground is a Spec in whole numbers: a grid where all pieces are rectangles, a
// nest where some have outlines.
type ground struct {
	grid  grid
	nest  *nest
	parts []int // how many parts each piece is cut in; nil: all are cut whole
}

// bound is a length that no lay is shorter than.
func (g ground) bound() units.Length {
	if g.nest != nil {
		return g.nest.length(g.nest.bound)
	}
	return g.grid.length(g.grid.bound)
}

// length is n steps as a length.
func (n *nest) length(steps int64) units.Length {
	return units.Inch.Of(steps).Scale(units.RatioOf(1, n.perInch))
}

// nest finds the grid and all the ways the pieces, as laid, may lie; drawn are the
// same as they are drawn.
func (s Spec) nest(a *fault.Audit, drawn []Piece, c *clock) (*nest, bool) {
	var m mesh
	fail := func(path string, l units.Length) (*nest, bool) {
		a.Fault(path, l.String(), "lengths that lie on one grid, all pieces in a row at most "+strconv.FormatInt(MaxGrid/4, 10)+" steps", ErrGrid)
		return nil, false
	}
	if !m.fine(s.Cloth.Gap) {
		return fail("cloth.gap", s.Cloth.Gap)
	}
	if path, l, ok := s.tradeFine(&m); !ok {
		return fail(path, l)
	}
	row := s.tradeRoom()
	for i := range s.Pieces {
		p := &s.Pieces[i]
		if c.over(len(p.Outline)) {
			return nil, false
		}
		for _, q := range p.corners() {
			if !m.fine(q.X) || !m.fine(q.Y) {
				return fail(piecePath(i), q.X.Max(q.Y))
			}
		}
		w, l := p.extent()
		row = row.Add(w.Max(l).Add(s.Cloth.Gap).MulInt(int64(p.Count)))
		if n, ok := m.whole(row); !ok || n > MaxGrid/4 {
			return fail(piecePath(i), w.Max(l))
		}
	}
	out := &nest{perInch: m.perInch.Int64(), coarse: 1}
	usable := s.Cloth.Usable().Min(row)
	var total int64
	for {
		out.wide, _ = usable.In(units.Inch).Mul(units.RatioOf(out.perInch, 1)).Int(units.Down)
		total, _ = row.In(units.Inch).Mul(units.RatioOf(out.perInch, 1)).Int(units.Down)
		if out.wide >= fineness || total > MaxGrid/64 || out.perInch > MaxGrid/64 {
			break
		}
		out.perInch *= 10
		out.coarse *= 10
	}
	m.perInch.SetInt64(out.perInch)
	out.gap, _ = m.whole(s.Cloth.Gap)
	for i := range s.Pieces {
		if c.over(len(s.Pieces[i].Outline)) {
			return nil, false
		}
		pts, ok := m.vertices(s.Pieces[i].corners())
		if !ok {
			return fail(piecePath(i), row)
		}
		out.add(i, &s.Pieces[i], leftward(pts), &drawn[i], &s.Cloth)
	}
	out.least()
	return out, s.tradeNest(out, m, a)
}

// add puts a piece in, both hands of a pair, which are one kind where a
// placement cuts both.
func (n *nest) add(i int, p *Piece, pts []vertex, drawn *Piece, c *Cloth) {
	n.drawn = append(n.drawn, pts)
	hands, twofold := []bool{false}, drawn.twofold(c)
	if p.Pair && !twofold {
		hands = append(hands, true)
	}
	first := len(n.kinds)
	total, _ := drawn.times(c)
	for _, mirror := range hands {
		k := kind{piece: i, mirror: mirror, twofold: twofold, count: total / len(hands), area: twiceArea(pts)}
		for q := range 8 {
			if q >= 4 && !(twofold && p.Pair) {
				break
			}
			over := mirror || q >= 4
			n.way(&k, p, pts, over, q&3)
		}
		n.kinds = append(n.kinds, k)
	}
	for c := range total {
		n.items = append(n.items, first+c%len(hands))
	}
}

// way adds one way a kind may lie, unless it may not or is one of the others.
func (n *nest) way(k *kind, p *Piece, pts []vertex, mirror bool, q int) {
	if q == 2 && p.Turn == Keep || q&1 == 1 && p.Turn != Quarter {
		return
	}
	v := variant{kind: len(n.kinds), quarters: q, mirror: mirror, fold: p.Fold}
	v.pts = turned(pts, v.flipped(), q)
	_, hi := corners(v.pts)
	v.wide, v.long = hi.x, hi.y
	if v.wide > n.wide || len(p.Notches) == 0 && slices.ContainsFunc(k.variants, func(o int) bool { return same(n.variants[o].pts, v.pts) }) {
		return
	}
	k.variants = append(k.variants, len(n.variants))
	n.variants = append(n.variants, v)
}
