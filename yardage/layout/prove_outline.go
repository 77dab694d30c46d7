package layout

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// A cutting holds the pieces of a lay as triangles, where they lie.
type cutting struct {
	gap    int64
	pieces [][]triangle // by placement; nil where every piece is a rectangle and the cloth has no flaw
	flaws  [][]triangle // on folded cloth, those of both layers
}

// cut turns the placements into triangles; it asks a grid that all of them lie
// on. Placements of no piece have none.
func (s Spec) cut(placements []Placement, a *ticket.Audit) cutting {
	flaws := s.Cloth.barred()
	if !s.outlined() && len(flaws) == 0 {
		return cutting{}
	}
	var m mesh
	const limit = "lengths that lie on one grid of at most 2^60 steps, with all the others"
	fine := func(path string, l units.Length) bool {
		ok := m.fine(l)
		if !ok {
			a.Fault(path, l.String(), limit, ErrGrid)
		}
		return ok
	}
	ok := fine("Cloth.Gap", s.Cloth.Gap)
	for i := range s.Pieces {
		for _, q := range s.Pieces[i].corners() {
			ok = ok && fine(piecePath(i), q.X) && fine(piecePath(i), q.Y)
		}
	}
	for i, at := range placements {
		path := "Placements[" + strconv.Itoa(i) + "]"
		ok = ok && fine(path+".X", at.X) && fine(path+".Y", at.Y)
	}
	for i, flaw := range flaws {
		for _, q := range flaw {
			ok = ok && fine(flawPath(i%len(s.Cloth.Flaws)), q.X) && fine(flawPath(i%len(s.Cloth.Flaws)), q.Y)
		}
	}
	if !ok {
		return cutting{}
	}
	c := s.mesh(m, placements, a, limit)
	for i, flaw := range flaws {
		pts := make([]vertex, len(flaw))
		for k, q := range flaw {
			x, okX := m.whole(q.X)
			y, okY := m.whole(q.Y)
			if !okX || !okY {
				a.Fault(flawPath(i%len(s.Cloth.Flaws)), q.X.String()+", "+q.Y.String(), limit, ErrGrid)
				return c
			}
			pts[k] = vertex{x, y}
		}
		c.flaws = append(c.flaws, triangles(leftward(pts)))
	}
	return c
}

// clear reports whether a piece and a flaw have nothing of their insides in
// common.
func (c cutting) clear(i, flaw int) bool {
	for _, t := range c.pieces[i] {
		for _, u := range c.flaws[flaw] {
			if !disjoint(t, u, 0) {
				return false
			}
		}
	}
	return true
}

// mesh fills the cutting on a grid that is fine enough.
func (s Spec) mesh(m mesh, placements []Placement, a *ticket.Audit, limit string) cutting {
	c := cutting{pieces: make([][]triangle, len(placements))}
	var ok bool
	if c.gap, ok = m.whole(s.Cloth.Gap); !ok {
		a.Fault("Cloth.Gap", s.Cloth.Gap.String(), limit, ErrGrid)
		return c
	}
	type way struct {
		piece, quarters int
		mirror          bool
	}
	known := map[way][]triangle{}
	for i, at := range placements {
		if at.Piece < 0 || at.Piece >= len(s.Pieces) {
			continue
		}
		one := way{at.Piece, at.quarters(), at.flipped(&s)}
		parts, found := known[one]
		if !found {
			pts, ok := m.vertices(s.Pieces[at.Piece].corners())
			if !ok {
				a.Fault(piecePath(at.Piece), "", limit, ErrGrid)
				return c
			}
			parts = triangles(turned(leftward(pts), one.mirror, one.quarters))
			known[one] = parts
		}
		x, okX := m.whole(at.X)
		y, okY := m.whole(at.Y)
		if !okX || !okY {
			a.Fault("Placements["+strconv.Itoa(i)+"]", at.X.String()+", "+at.Y.String(), limit, ErrGrid)
			return c
		}
		here := make([]triangle, len(parts))
		for k, t := range parts {
			for n, v := range t {
				here[k][n] = vertex{v.x + x, v.y + y}
			}
		}
		c.pieces[i] = here
	}
	return c
}

// separate reports whether two pieces, of which one has an outline, are a gap
// apart.
func (c cutting) separate(i, j int) bool {
	if c.pieces == nil {
		return false
	}
	lo, hi := span(c.pieces[j])
	for _, t := range c.pieces[i] {
		tlo, thi := corners(t[:])
		if thi.x+c.gap <= lo.x || hi.x+c.gap <= tlo.x || thi.y+c.gap <= lo.y || hi.y+c.gap <= tlo.y {
			continue
		}
		for _, u := range c.pieces[j] {
			if !disjoint(t, u, c.gap) {
				return false
			}
		}
	}
	return true
}

// span is the rectangle that holds all the triangles.
func span(ts []triangle) (lo, hi vertex) {
	for i, t := range ts {
		tlo, thi := corners(t[:])
		if i == 0 {
			lo, hi = tlo, thi
			continue
		}
		lo = vertex{min(lo.x, tlo.x), min(lo.y, tlo.y)}
		hi = vertex{max(hi.x, thi.x), max(hi.y, thi.y)}
	}
	return lo, hi
}
