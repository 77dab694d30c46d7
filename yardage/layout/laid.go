package layout

import (
	"slices"

	"example.com/clothyard/units"
)

// laid is s with its pieces as the cloth takes them: with their allowances, halves opened out where
// there is no fold to lie on, pieces on the bias turned to it, and none turned on
// cloth that runs one way. What is laid already stays as it is.
func (s Spec) laid() Spec {
	s.Pieces = slices.Clone(s.Pieces)
	for i := range s.Pieces {
		s.Pieces[i] = s.Pieces[i].laid(&s.Cloth)
	}
	return s
}

// laid is the piece as the cloth takes it.
func (p *Piece) laid(c *Cloth) Piece {
	out := *p
	if len(p.Allowance) > 0 {
		out = out.grown()
	}
	if p.Fold && !c.Folded {
		out = out.opened()
	}
	if out.Turn == Bias {
		out = out.slanted()
	}
	if c.OneWay {
		out.Turn = Keep
	}
	if out.Fold && out.Turn == Quarter {
		out.Turn = Half // its edge must be on the fold
	}
	return out
}

// opened is the whole of a piece drawn as its right-hand half.
func (p Piece) opened() Piece {
	p.Fold = false
	if len(p.Outline) == 0 {
		p.Notches = slices.Clone(p.Notches)
		for i := range p.Notches {
			p.Notches[i].At.X = p.Notches[i].At.X.Add(p.Wide)
		}
		p.Wide = p.Wide.MulInt(2)
		return p
	}
	lo, _ := box(p.Outline)
	end, run := foldEdge(p.Outline)
	n := len(p.Outline)
	rest := n - run + 2 // corners from the end of the fold edge round to its beginning
	whole := make([]Point, 0, 2*rest)
	for i := range rest {
		whole = append(whole, p.Outline[(end+i)%n])
	}
	for i := rest - 2; i >= 1; i-- {
		whole = append(whole, Point{X: lo.X.MulInt(2).Sub(whole[i].X), Y: whole[i].Y})
	}
	p.Outline = dropStraight(whole)
	p.Wide, p.Long = p.extent()
	return p
}

// foldEdge is the last corner of the edge of least X, and how many corners it
// has; less than two where there is no such edge, or corners of least X elsewhere.
func foldEdge(pts []Point) (end, corners int) {
	lo, _ := box(pts)
	n, runs := len(pts), 0
	for i, q := range pts {
		if q.X != lo.X {
			continue
		}
		corners++
		if pts[(i+1)%n].X != lo.X {
			end = i
			runs++
		}
	}
	if runs != 1 {
		return 0, 0
	}
	return end, corners
}

// dropStraight leaves out the corners that are none.
func dropStraight(pts []Point) []Point {
	out := make([]Point, 0, len(pts))
	for i, q := range pts {
		a, b := pts[(i+len(pts)-1)%len(pts)], pts[(i+1)%len(pts)]
		if turning := q.X.Sub(a.X).Times(b.Y.Sub(q.Y)).Sub(q.Y.Sub(a.Y).Times(b.X.Sub(q.X))); !turning.IsZero() {
			out = append(out, q)
		}
	}
	return out
}

// A tilt is a rotation near 45 degrees that is a ratio of whole numbers.
type tilt struct{ sin, cos, whole int64 }

// tilts are the rotations used, the nearest to 45 degrees first.
var tilts = [...]tilt{{4059, 4060, 5741}, {696, 697, 985}, {119, 120, 169}, {20, 21, 29}}

// finest is how many steps to the inch the outline of a piece on the bias may
// need, at most.
const finest = 1 << 36

// tilt is the nearest rotation that the piece's own grid affords.
func (p *Piece) tilt() tilt {
	var m mesh
	for _, q := range p.corners() {
		if !m.fine(q.X) || !m.fine(q.Y) {
			return tilts[len(tilts)-1]
		}
	}
	for _, t := range tilts[:len(tilts)-1] {
		if m.perInch.IsInt64() && m.perInch.Int64() <= finest/t.whole {
			return t
		}
	}
	return tilts[len(tilts)-1]
}

// Bias is the sine and the cosine of the angle by which a piece is turned to lie
// on the bias, from across to along: an angle near 45 degrees of which both are
// ratios, so that its corners lie exactly on a grid. It is the nearest of four
// such angles that the grid of the piece's own corners affords.
func (p Piece) Bias() (sin, cos units.Ratio) {
	t := p.tilt()
	return units.RatioOf(t.sin, t.whole), units.RatioOf(t.cos, t.whole)
}

// OffBias is by how many degrees the angle of [Piece.Bias] is less than 45.
func (p Piece) OffBias() units.NearRatio {
	t := p.tilt()
	// tan(45 - x) is sin/cos, so tan(x) is (cos - sin)/(cos + sin).
	return units.Slope(units.RatioOf(t.cos-t.sin, t.cos+t.sin)).InDegrees()
}

// slanted is the piece turned to lie on the bias; it may be turned by quarters
// from there.
func (p Piece) slanted() Piece {
	sin, cos := p.Bias()
	turn := func(q Point) Point {
		return Point{X: q.X.Scale(cos).Sub(q.Y.Scale(sin)), Y: q.X.Scale(sin).Add(q.Y.Scale(cos))}
	}
	p.Outline = slices.Clone(p.corners())
	for i, q := range p.Outline {
		p.Outline[i] = turn(q)
	}
	p.Notches = slices.Clone(p.Notches)
	for i := range p.Notches {
		p.Notches[i].At = turn(p.Notches[i].At)
	}
	p.Turn = Quarter
	p.Wide, p.Long = p.extent()
	return p
}

// even reports whether the piece as drawn is the same as its other hand, turned
// as it may be.
func (p *Piece) even(c *Cloth) bool {
	if len(p.Outline) == 0 || p.Fold {
		return true
	}
	one := p.grown()
	turn := one.Turn
	switch {
	case c.OneWay:
		turn = Keep
	case turn == Bias:
		turn = Quarter // the lower layer gives the other bias, which is as good
	}
	flat := func(mirror bool, quarters int) []Point {
		out := make([]Point, len(one.Outline))
		for i, q := range one.Outline {
			out[i] = q.turned(mirror, quarters)
		}
		lo, _ := box(out)
		for i, q := range out {
			out[i] = Point{q.X.Sub(lo.X), q.Y.Sub(lo.Y)}
		}
		return out
	}
	own := flat(false, 0)
	for quarters := range 4 {
		if quarters&1 == 1 && turn != Quarter || quarters == 2 && turn == Keep {
			continue
		}
		other := flat(true, quarters)
		slices.Reverse(other)
		if at := slices.Index(other, own[0]); at >= 0 && slices.Equal(own, append(slices.Clone(other[at:]), other[:at]...)) {
			return true
		}
	}
	return false
}

// twofold reports whether one placement of the piece as drawn cuts two copies: on
// folded cloth, unless it lies on the fold or the lower layer gives a hand
// that is not asked for.
func (p *Piece) twofold(c *Cloth) bool {
	return c.Folded && !p.Fold && (p.Pair || p.even(c))
}

// times is how many placements the piece as drawn has, and how many copies they
// cut besides those asked for.
func (p *Piece) times(c *Cloth) (placements, extra int) {
	switch {
	case !c.Folded || p.Fold:
		return p.Count, 0
	case p.twofold(c):
		return (p.Count + 1) / 2, p.Count % 2
	}
	return p.Count, p.Count
}

// Copies are the copies that a placement cuts. The second is 0 where it cuts one:
// on open cloth, on the fold, and where the lower layer gives a copy that is not
// asked for. Else it is the odd copy and the even one after it, Copy first. Of a
// piece cut in parts it is the copy that the part after it is of, parts being
// counted through all copies.
func (p Placement) Copies(s Spec) (first, second int) {
	if p.Piece < 0 || p.Piece >= len(s.Pieces) {
		return 0, 0
	}
	if other := p.other(&s); other.Copy > 0 {
		return p.Copy, other.Copy
	}
	return p.Copy, 0
}

// other is the copy or part that is cut by the same placement; its Copy is 0
// where there is none.
func (p Placement) other(s *Spec) Placement {
	one := &s.Pieces[p.Piece]
	parts := p.Of > 1
	if !one.twofold(&s.Cloth) || parts && (p.Of > MaxParts || p.Copy < 1 || p.Copy > one.Count) {
		return Placement{}
	}
	of := max(p.Of, 1)
	if p.Copy = mate(p.serial(), one.Count*of); p.Copy == 0 {
		return Placement{}
	}
	return p.unserial(of)
}

// mate is the copy that is cut with another, 0 if there are not as many.
func mate(copy, count int) int {
	if copy&1 == 0 {
		return copy - 1
	}
	if copy < count {
		return copy + 1
	}
	return 0
}

// flipped reports whether the piece as laid is mirrored before it is turned.
func (p Placement) flipped(s *Spec) bool {
	if s.Cloth.Folded && s.Pieces[p.Piece].Fold {
		return p.Half
	}
	return p.Mirrored(*s)
}

// Notches are where the notches of a piece lie, as the placement has it, in their
// order; on folded cloth, in the layer on top.
func (p Placement) Notches(s Spec) []Notch {
	if p.Piece < 0 || p.Piece >= len(s.Pieces) {
		return nil
	}
	one := s.Pieces[p.Piece].laid(&s.Cloth)
	mirror, quarters := p.flipped(&s), p.quarters()
	turned := slices.Clone(one.corners())
	for i, q := range turned {
		turned[i] = q.turned(mirror, quarters)
	}
	lo, _ := box(turned)
	out := slices.Clone(one.Notches)
	for i, n := range out {
		q := n.At.turned(mirror, quarters)
		out[i].At = Point{q.X.Sub(lo.X).Add(p.X), q.Y.Sub(lo.Y).Add(p.Y)}
	}
	return out
}

// barred are the outlines of the flaws, measured as placements are. On folded
// cloth each is there twice, as the two layers have it; what lies beyond the
// fold is not on this side of it.
func (c *Cloth) barred() [][]Point {
	out := make([][]Point, 0, 2*len(c.Flaws))
	for _, f := range c.Flaws {
		out = append(out, f.corners())
	}
	if !c.Folded {
		return out
	}
	double := c.double()
	for _, pts := range out[:len(c.Flaws):len(c.Flaws)] {
		other := slices.Clone(pts)
		for i, q := range pts {
			pts[i].X, other[i].X = q.X.Sub(double), double.Sub(q.X)
		}
		out = append(out, other)
	}
	return out
}

// corners are the flaw's corners on the open cloth.
func (f *Flaw) corners() []Point {
	if len(f.Outline) > 0 {
		return slices.Clone(f.Outline)
	}
	x, y := f.X.Add(f.Wide), f.Y.Add(f.Long)
	return []Point{{f.X, f.Y}, {x, f.Y}, {x, y}, {f.X, y}}
}
