package layout

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout/internal/nest"
)

// A ground is a Spec in whole numbers of steps: a grid where all pieces are
// rectangles, else a nest.
type ground struct {
	grid  *nest.Grid
	nest  *nest.Nest
	step  units.Length
	parts []int // how many parts each piece is cut in; nil: all are cut whole
}

// bound is a length that no lay is shorter than.
func (g ground) bound() units.Length {
	if g.nest != nil {
		return g.length(g.nest.Bound)
	}
	return g.length(g.grid.Bound)
}

// length is n steps as a length.
func (g ground) length(n int64) units.Length { return g.step.MulInt(n) }

// nest finds the grid and all the ways the pieces, as laid, may lie; drawn are the
// same as they are drawn.
func (s Spec) nest(a *fault.Audit, drawn []Piece, c *clock) (ground, bool) {
	var m mesh
	fail := func(path string, l units.Length) (ground, bool) {
		a.Fault(path, l.String(), "lengths that lie on one grid, all pieces in a row at most "+strconv.FormatInt(MaxGrid/4, 10)+" steps", ErrGrid)
		return ground{}, false
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
			return ground{}, false
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
	out, perInch := &nest.Nest{Coarse: 1}, m.perInch.Int64()
	usable := s.Cloth.Usable().Min(row)
	var total int64
	for {
		out.Wide, _ = usable.In(units.Inch).Mul(units.RatioOf(perInch, 1)).Int(units.Down)
		total, _ = row.In(units.Inch).Mul(units.RatioOf(perInch, 1)).Int(units.Down)
		if out.Wide >= nest.Fineness || total > MaxGrid/64 || perInch > MaxGrid/64 {
			break
		}
		perInch *= 10
		out.Coarse *= 10
	}
	m.perInch.SetInt64(perInch)
	out.Gap, _ = m.whole(s.Cloth.Gap)
	for i := range s.Pieces {
		if c.over(len(s.Pieces[i].Outline)) {
			return ground{}, false
		}
		pts, ok := m.vertices(s.Pieces[i].corners())
		if !ok {
			return fail(piecePath(i), row)
		}
		p, twofold := &s.Pieces[i], drawn[i].twofold(&s.Cloth)
		times, _ := drawn[i].times(&s.Cloth)
		out.Add(nest.Piece{
			Outline: leftward(pts), Times: times, Pair: p.Pair, Twofold: twofold, Fold: p.Fold,
			Half: p.Turn != Keep, Quarter: p.Turn == Quarter, Marked: len(p.Notches) > 0,
		})
	}
	out.Least()
	return ground{nest: out, step: units.Inch.Frac(1, perInch)}, s.tradeNest(out, m, a)
}
