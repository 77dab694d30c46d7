package layout

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// A cutting holds the pieces of a lay and the flaws of the cloth, to be compared
// as triangles.
type cutting struct {
	gap    int64
	clock  *clock
	pieces []solid // by placement; nil where every piece is a rectangle and the cloth has no flaw
	flaws  []solid // on folded cloth, those of both layers
}

// A solid is an outline where it lies.
type solid struct {
	*shell
	at vertex
}

// A shell is an outline, cut into triangles when first asked for.
type shell struct {
	path   string
	pts    []vertex
	lo, hi vertex
	parts  []slab
	cut    bool
}

// A slab is a triangle and the rectangle around it.
type slab struct {
	triangle
	lo, hi vertex
}

func newShell(path string, pts []vertex) *shell {
	lo, hi := corners(pts)
	return &shell{path: path, pts: pts, lo: lo, hi: hi}
}

// slabs are the triangles; false where they are not all of the outline.
func (s *shell) slabs() bool {
	if !s.cut {
		s.cut = true
		rest := twiceArea(s.pts)
		for _, t := range triangles(s.pts) {
			rest = rest.sub(twiceArea(t[:]))
			lo, hi := corners(t[:])
			s.parts = append(s.parts, slab{t, lo, hi})
		}
		if rest.sign() != 0 {
			s.parts = nil
		}
	}
	return s.parts != nil
}

// near are the triangles that reach nearer than gap to a rectangle.
func (s solid) near(lo, hi vertex, gap int64) []slab {
	var out []slab
	for _, p := range s.parts {
		p.lo, p.hi = p.lo.plus(s.at), p.hi.plus(s.at)
		if p.hi.x+gap > lo.x && hi.x+gap > p.lo.x && p.hi.y+gap > lo.y && hi.y+gap > p.lo.y {
			for k := range p.triangle {
				p.triangle[k] = p.triangle[k].plus(s.at)
			}
			out = append(out, p)
		}
	}
	return out
}

func (v vertex) plus(u vertex) vertex { return vertex{v.x + u.x, v.y + u.y} }

// clear reports whether two outlines have nothing of their insides in common, the
// one grown by gap to all four sides.
func (c *cutting) clear(a *fault.Audit, p, q solid, gap int64) bool {
	plo, phi, qlo, qhi := p.lo.plus(p.at), p.hi.plus(p.at), q.lo.plus(q.at), q.hi.plus(q.at)
	if phi.x+gap <= qlo.x || qhi.x+gap <= plo.x || phi.y+gap <= qlo.y || qhi.y+gap <= plo.y {
		return true
	}
	if c.clock.over(len(p.pts) + len(q.pts)) {
		return true // whatever it is: nobody asks any more
	}
	for _, s := range [...]solid{p, q} {
		if !s.slabs() {
			a.Fault(s.path, "", "an outline that can be cut into triangles", ErrOutline)
			return true
		}
	}
	ps, qs := p.near(qlo, qhi, gap), q.near(plo, phi, gap)
	for _, t := range ps {
		if c.clock.over(len(qs)) {
			return true
		}
		for _, u := range qs {
			if t.hi.x+gap > u.lo.x && u.hi.x+gap > t.lo.x && t.hi.y+gap > u.lo.y && u.hi.y+gap > t.lo.y &&
				!split(t.triangle, u.triangle, gap) && !split(u.triangle, t.triangle, gap) {
				return false
			}
		}
	}
	return true
}

// cut finds where the outlines of the placements lie; it asks a grid that all of them lie
// on. Placements of no piece have none.
func (s Spec) cut(c *clock, placements []Placement, a *fault.Audit) cutting {
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
	ok := fine("cloth.gap", s.Cloth.Gap)
	for i := range s.Pieces {
		for _, q := range s.Pieces[i].corners() {
			ok = ok && fine(piecePath(i), q.X) && fine(piecePath(i), q.Y)
		}
	}
	for i, at := range placements {
		path := "placements[" + strconv.Itoa(i) + "]"
		ok = ok && fine(path+".x", at.X) && fine(path+".y", at.Y)
	}
	for i, flaw := range flaws {
		for _, q := range flaw {
			ok = ok && fine(flawPath(i%len(s.Cloth.Flaws)), q.X) && fine(flawPath(i%len(s.Cloth.Flaws)), q.Y)
		}
	}
	if !ok {
		return cutting{}
	}
	out := s.mesh(m, placements, a, limit)
	out.clock = c
	for i, flaw := range flaws {
		pts := make([]vertex, len(flaw))
		for k, q := range flaw {
			x, okX := m.whole(q.X)
			y, okY := m.whole(q.Y)
			if !okX || !okY {
				a.Fault(flawPath(i%len(s.Cloth.Flaws)), q.X.String()+", "+q.Y.String(), limit, ErrGrid)
				return out
			}
			pts[k] = vertex{x, y}
		}
		out.flaws = append(out.flaws, solid{shell: newShell(flawPath(i%len(s.Cloth.Flaws)), leftward(pts))})
	}
	return out
}

// mesh fills the cutting on a grid that is fine enough.
func (s Spec) mesh(m mesh, placements []Placement, a *fault.Audit, limit string) cutting {
	c := cutting{pieces: make([]solid, len(placements))}
	var ok bool
	if c.gap, ok = m.whole(s.Cloth.Gap); !ok {
		a.Fault("cloth.gap", s.Cloth.Gap.String(), limit, ErrGrid)
		return c
	}
	type way struct {
		piece, quarters int
		mirror          bool
	}
	known := map[way]*shell{}
	for i, at := range placements {
		if at.Piece < 0 || at.Piece >= len(s.Pieces) {
			continue
		}
		one := way{at.Piece, at.quarters(), at.flipped(&s)}
		if known[one] == nil {
			pts, ok := m.vertices(s.Pieces[at.Piece].corners())
			if !ok {
				a.Fault(piecePath(at.Piece), "", limit, ErrGrid)
				return c
			}
			known[one] = newShell(piecePath(at.Piece), turned(leftward(pts), one.mirror, one.quarters))
		}
		x, okX := m.whole(at.X)
		y, okY := m.whole(at.Y)
		if !okX || !okY {
			a.Fault("placements["+strconv.Itoa(i)+"]", at.X.String()+", "+at.Y.String(), limit, ErrGrid)
			return c
		}
		c.pieces[i] = solid{known[one], vertex{x, y}}
	}
	return c
}
