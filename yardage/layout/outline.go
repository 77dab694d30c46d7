package layout

import (
	"fmt"
	"math/big"
	"slices"
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// The bounds on outlines.
const (
	MaxPoints  = 2000    // most points of one outline
	MaxCorners = 200_000 // most points of all the pieces, every copy counted
)

// ErrOutline is the fault of an outline that is none: it crosses or touches
// itself, goes back on itself, or holds no area.
const ErrOutline fault.Kind = "not a simple outline"

// A Point is a corner of an outline. The origin is any point that suits the
// drawing, the same for all points of a piece.
type Point struct {
	X units.Length `json:"x,omitzero" noun:"zero"` // across the cloth, to the right as seen from the cut end; zero is an answer
	Y units.Length `json:"y,omitzero" noun:"zero"` // along the cloth, away from the cut end, the way the grain line is drawn; zero is an answer
}

// extent is how much room the piece takes across and along as drawn: that of
// its outline where it has one.
func (p *Piece) extent() (wide, long units.Length) {
	if len(p.Outline) == 0 {
		return p.Wide, p.Long
	}
	lo, hi := box(p.Outline)
	return hi.X.Sub(lo.X), hi.Y.Sub(lo.Y)
}

// box is the least and the greatest coordinates.
func box(pts []Point) (lo, hi Point) {
	lo, hi = pts[0], pts[0]
	for _, q := range pts[1:] {
		lo = Point{lo.X.Min(q.X), lo.Y.Min(q.Y)}
		hi = Point{hi.X.Max(q.X), hi.Y.Max(q.Y)}
	}
	return lo, hi
}

// corners are the points of the piece as drawn; a rectangle has its four.
func (p *Piece) corners() []Point {
	if len(p.Outline) > 0 {
		return p.Outline
	}
	return []Point{{}, {X: p.Wide}, {X: p.Wide, Y: p.Long}, {Y: p.Long}}
}

// Area is the area of one copy: inside the outline, or of the rectangle; of a
// piece with Fold, both halves; allowances are counted.
func (p Piece) Area() units.Area {
	if len(p.Allowance) > 0 {
		p = p.grown()
		p.Allowance = nil
	}
	if p.Fold {
		p.Fold = false
		return p.Area().MulInt(2)
	}
	if len(p.Outline) == 0 {
		return p.Wide.Times(p.Long)
	}
	var sum units.Area
	o := p.Outline[0]
	for i, b := range p.Outline {
		a := p.Outline[(i+len(p.Outline)-1)%len(p.Outline)]
		sum = sum.Add(a.X.Sub(o.X).Times(b.Y.Sub(o.Y))).Sub(b.X.Sub(o.X).Times(a.Y.Sub(o.Y)))
	}
	if sum.Sign() < 0 {
		sum = sum.Neg()
	}
	return sum.Scale(units.RatioOf(1, 2))
}

// filled is the piece with Wide and Long from its outline.
func (p Piece) filled() Piece {
	p.Wide, p.Long = p.extent()
	return p
}

// outlined reports whether any piece has an outline.
func (s Spec) outlined() bool {
	return slices.ContainsFunc(s.Pieces, func(p Piece) bool { return len(p.Outline) > 0 })
}

// Corners are the corners of a piece as it is laid, from the outer edge of the
// left-hand selvedge and from the cut end, in the order of the outline. It is nil
// where the piece is not among those of s or has not as many copies.
func (p Placement) Corners(s Spec) []Point {
	if p.Piece < 0 || p.Piece >= len(s.Pieces) {
		return nil
	}
	piece := p.laid(&s)
	mirror, quarters := p.flipped(&s), p.quarters()
	out := slices.Clone(piece.corners())
	for i, q := range out {
		out[i] = q.turned(mirror, quarters)
	}
	lo, _ := box(out)
	for i, q := range out {
		out[i] = Point{q.X.Sub(lo.X).Add(p.X), q.Y.Sub(lo.Y).Add(p.Y)}
	}
	return out
}

// turned is the point mirrored across, if so, and then turned by quarters about the
// origin, from across to along.
func (q Point) turned(mirror bool, quarters int) Point {
	if mirror {
		q.X = q.X.Neg()
	}
	for range quarters {
		q = Point{q.Y.Neg(), q.X}
	}
	return q
}

// Mirrored reports whether the copy is laid as the other hand: it is an even
// copy of a piece with Pair.
func (p Placement) Mirrored(s Spec) bool {
	return p.Piece >= 0 && p.Piece < len(s.Pieces) && s.Pieces[p.Piece].Pair && p.Copy%2 == 0
}

// quarters is by how many quarter turns the piece is turned, from across to
// along.
func (p Placement) quarters() int {
	n := 0
	if p.Across {
		n++
	}
	if p.Half {
		n += 2
	}
	return n
}

// A mesh turns lengths into whole numbers of steps, perInch to the inch.
type mesh struct{ perInch *big.Int }

// fine makes the mesh fine enough for l; false where no whole number of 60 bits
// would do.
func (m *mesh) fine(l units.Length) bool {
	r := l.In(units.Inch).Rat()
	if m.perInch == nil {
		m.perInch = big.NewInt(1)
	}
	if r.IsInt() {
		return r.Num().BitLen() <= 60
	}
	common := new(big.Int).GCD(nil, nil, m.perInch, r.Denom())
	m.perInch = new(big.Int).Mul(m.perInch, common.Quo(r.Denom(), common))
	return m.perInch.BitLen() <= 60
}

// whole is l in steps; false where that is no whole number up to MaxGrid either
// way.
func (m *mesh) whole(l units.Length) (int64, bool) {
	r := l.In(units.Inch).Mul(units.RatioOf(m.perInch.Int64(), 1))
	n, ok := r.Int(units.Down)
	return n, ok && r.IsInt() && n <= MaxGrid && n >= -MaxGrid
}

// vertices are points in steps, the corner of their rectangle at the origin, in
// the order given.
func (m *mesh) vertices(pts []Point) ([]vertex, bool) {
	out := make([]vertex, len(pts))
	lo, _ := box(pts)
	for i, q := range pts {
		x, okX := m.whole(q.X.Sub(lo.X))
		y, okY := m.whole(q.Y.Sub(lo.Y))
		if !okX || !okY {
			return nil, false
		}
		out[i] = vertex{X: x, Y: y}
	}
	return out, true
}

// leftward is pts with the inside on the left.
func leftward(pts []vertex) []vertex {
	if twiceArea(pts).Sign() < 0 {
		slices.Reverse(pts)
	}
	return pts
}

// auditOutline checks that the outline is one.
func (p *Piece) auditOutline(own *fault.Audit) {
	n := len(p.Outline)
	if n == 0 {
		return
	}
	if n < 3 || n > MaxPoints {
		own.Fault("outline", strconv.Itoa(n)+" points", fmt.Sprintf("3 to %d", MaxPoints), fault.Range)
		return
	}
	var m mesh
	for i, q := range p.Outline {
		if !m.fine(q.X) || !m.fine(q.Y) {
			own.Fault("outline["+strconv.Itoa(i)+"]", q.X.String()+", "+q.Y.String(), "points that lie on one grid of at most 2^60 steps", ErrGrid)
			return
		}
	}
	pts, ok := m.vertices(p.Outline)
	if !ok {
		lo, hi := box(p.Outline)
		own.Fault("outline", hi.X.Sub(lo.X).String()+" by "+hi.Y.Sub(lo.Y).String(), "points that lie on one grid of at most 2^60 steps", ErrGrid)
		return
	}
	if i, j, found := tangle(pts); found {
		own.Fault("outline", fmt.Sprintf("the edge from point %d and that from point %d cross or touch", i, j), "no edge meeting another but at the corner between them", ErrOutline)
		return
	}
	w, l := p.extent()
	agree := func(field string, given, drawn units.Length) {
		if !given.IsZero() && given != drawn {
			own.Fault(field, given.String(), drawn.String()+", that of outline", fault.Conflict)
		}
	}
	agree("wide", p.Wide, w)
	agree("long", p.Long, l)
}
