package layout

import (
	"cmp"
	"slices"
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout/internal/whole"
)

// A cutting holds the outlines of a lay and the flaws of the cloth where they lie.
type cutting struct {
	gap    int64
	clock  *clock
	pieces []solid // by placement; nil where every piece is a rectangle and the cloth has no flaw
	flaws  []solid // on folded cloth, those of both layers
}

// A solid is an outline where it lies, inside on the left.
type solid struct {
	*shell
	at vertex
}

// A shell is an outline and the rectangle around it.
type shell struct {
	pts    []vertex
	lo, hi vertex
}

func newShell(pts []vertex) *shell {
	lo, hi := corners(pts)
	return &shell{pts, lo, hi}
}

// A rim is an edge of a solid, from a to b, between the corners before and after it.
type rim struct {
	before, a, b, after vertex
	left, right         int64
}

// near are the edges that reach nearer than gap to a rectangle, or touch it, the
// leftmost first.
func (s solid) near(lo, hi vertex, gap int64) []rim {
	var out []rim
	n := len(s.pts)
	for i, a := range s.pts {
		b := s.pts[(i+1)%n]
		a, b = a.Plus(s.at), b.Plus(s.at)
		if max(a.X, b.X)+gap < lo.X || hi.X+gap < min(a.X, b.X) || max(a.Y, b.Y)+gap < lo.Y || hi.Y+gap < min(a.Y, b.Y) {
			continue
		}
		out = append(out, rim{s.pts[(i+n-1)%n].Plus(s.at), a, b, s.pts[(i+2)%n].Plus(s.at), min(a.X, b.X), max(a.X, b.X)})
	}
	slices.SortFunc(out, func(p, q rim) int { return cmp.Compare(p.left, q.left) })
	return out
}

// clear reports whether two outlines have nothing of their insides in common, the
// one grown by gap to all four sides. They have where an edge of one enters the other,
// or else where all of one lies in the other.
func (c *cutting) clear(p, q solid, gap int64) bool {
	plo, phi, qlo, qhi := p.lo.Plus(p.at), p.hi.Plus(p.at), q.lo.Plus(q.at), q.hi.Plus(q.at)
	if phi.X+gap <= qlo.X || qhi.X+gap <= plo.X || phi.Y+gap <= qlo.Y || qhi.Y+gap <= plo.Y {
		return true
	}
	if c.clock.over(len(p.pts) + len(q.pts)) {
		return true // whatever it is: nobody asks any more
	}
	ps, qs := p.near(qlo, qhi, gap), q.near(plo, phi, gap)
	from := 0
	var wide int64 // of the widest edge of q
	for i := range qs {
		wide = max(wide, qs[i].right-qs[i].left)
	}
	for i := range ps {
		e := &ps[i]
		for from < len(qs) && qs[from].left+wide+gap < e.left {
			from++
		}
		for k := from; k < len(qs) && qs[k].left <= e.right+gap; k++ {
			if c.clock.over(1) {
				return true
			}
			if gap > 0 && crowd(e, &qs[k], gap) || gap == 0 && enter(e, &qs[k]) {
				return false
			}
		}
	}
	return !q.holds(p.pts[0].Plus(p.at)) && !p.holds(q.pts[0].Plus(q.at))
}

// holds reports whether a point is inside, not on the outline. A line from there to
// the right crosses it an odd number of times.
func (s solid) holds(v vertex) bool {
	in := false
	n := len(s.pts)
	for i, a := range s.pts {
		a, b := a.Plus(s.at), s.pts[(i+1)%n].Plus(s.at)
		if min(a.Y, b.Y) > v.Y || max(a.Y, b.Y) < v.Y {
			continue
		}
		where := side(a, b, v)
		if where == 0 && between(a, b, v) {
			return false
		}
		if up := a.Y <= v.Y && b.Y > v.Y; up && where > 0 || a.Y > v.Y && b.Y <= v.Y && where < 0 {
			in = !in
		}
	}
	return in
}

// crowd reports whether two edges are nearer than gap, the greater of the distances
// across and along.
func crowd(p, q *rim, gap int64) bool {
	if p.left >= q.right+gap || q.left >= p.right+gap ||
		min(p.a.Y, p.b.Y) >= max(q.a.Y, q.b.Y)+gap || min(q.a.Y, q.b.Y) >= max(p.a.Y, p.b.Y)+gap {
		return false
	}
	return !aside(p, q, gap) && !aside(q, p, gap)
}

// aside reports whether all of q lies on one side of the line of p, at least gap away
// as a square of twice that size measures.
func aside(p, q *rim, gap int64) bool {
	d := p.b.Minus(p.a)
	room := whole.Times(gap, max(d.X, -d.X)).Add(whole.Times(gap, max(d.Y, -d.Y)))
	off := func(v vertex) whole.Wide { return whole.Times(d.X, v.Y-p.a.Y).Sub(whole.Times(d.Y, v.X-p.a.X)) }
	a, b := off(q.a), off(q.b)
	left := a.Sub(room).Sign() >= 0 && b.Sub(room).Sign() >= 0
	right := a.Add(room).Sign() <= 0 && b.Add(room).Sign() <= 0
	return left || right
}

// enter reports whether the insides of two outlines have something in common at a
// point that two of their edges share: the edges cross, or one touches the other
// and the insides beside them there do not lie apart. Where an edge lies on another
// they share the ends that lie on it.
func enter(p, q *rim) bool {
	if p.left > q.right || q.left > p.right || max(p.a.Y, p.b.Y) < min(q.a.Y, q.b.Y) || max(q.a.Y, q.b.Y) < min(p.a.Y, p.b.Y) {
		return false
	}
	s1, s2 := side(p.a, p.b, q.a), side(p.a, p.b, q.b)
	s3, s4 := side(q.a, q.b, p.a), side(q.a, q.b, p.b)
	if s1*s2 < 0 && s3*s4 < 0 {
		return true
	}
	for _, v := range [...]struct {
		at vertex
		on bool
	}{
		{q.a, s1 == 0 && between(p.a, p.b, q.a)}, {q.b, s2 == 0 && between(p.a, p.b, q.b)},
		{p.a, s3 == 0 && between(q.a, q.b, p.a)}, {p.b, s4 == 0 && between(q.a, q.b, p.b)},
	} {
		if v.on {
			from, to := p.inside(v.at)
			start, end := q.inside(v.at)
			if within(from, start, end) || within(start, from, to) || ahead(from, start) {
				return true
			}
		}
	}
	return false
}

// inside is between which directions, counter-clockwise from the first to the second,
// the inside of the outline lies as seen from a point of the edge.
func (e *rim) inside(v vertex) (from, to vertex) {
	switch v {
	case e.a:
		return e.b.Minus(v), e.before.Minus(v)
	case e.b:
		return e.after.Minus(v), e.a.Minus(v)
	}
	return e.b.Minus(v), e.a.Minus(v)
}

// within reports whether direction d is between two others, strictly.
func within(d, from, to vertex) bool {
	var o vertex
	left, right := side(o, from, d), side(o, to, d)
	switch turn := side(o, from, to); {
	case turn > 0:
		return left > 0 && right < 0
	case turn < 0:
		return !(left <= 0 && right >= 0)
	}
	return left > 0 // a straight line: there is no other outline that turns back on itself
}

// ahead reports whether two directions are the same.
func ahead(d, e vertex) bool {
	return side(vertex{}, d, e) == 0 && whole.Times(d.X, e.X).Add(whole.Times(d.Y, e.Y)).Sign() > 0
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
			pts[k] = vertex{X: x, Y: y}
		}
		out.flaws = append(out.flaws, solid{shell: newShell(leftward(pts))})
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
			known[one] = newShell(turned(leftward(pts), one.mirror, one.quarters))
		}
		x, okX := m.whole(at.X)
		y, okY := m.whole(at.Y)
		if !okX || !okY {
			a.Fault("placements["+strconv.Itoa(i)+"]", at.X.String()+", "+at.Y.String(), limit, ErrGrid)
			return c
		}
		c.pieces[i] = solid{known[one], vertex{X: x, Y: y}}
	}
	return c
}
