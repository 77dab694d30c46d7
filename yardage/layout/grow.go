package layout

import (
	"math/big"
	"slices"
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout/internal/whole"
)

// GrowStep is the grid that corners of a grown outline are rounded outward to,
// where they come out in no whole steps of the outline's own: 1/640 mm.
func GrowStep() units.Length { return units.Millimetre.Frac(1, 640) }

const (
	growSteps = 16256 // steps of GrowStep to the inch
	growRoom  = 1 << 44
	growFar   = 48 // how many steps a corner is moved outward at most, across and along
)

// allowance is what is added to the edge from corner i to the next.
func (p *Piece) allowance(i int) units.Length {
	switch len(p.Allowance) {
	case 0:
		return units.Length{}
	case 1:
		if p.Fold && p.onFold(i) {
			return units.Length{} // there is no seam on the fold
		}
		return p.Allowance[0]
	}
	return p.Allowance[i]
}

// onFold reports whether the edge from corner i is that of least X.
func (p *Piece) onFold(i int) bool {
	pts := p.corners()
	lo, _ := box(pts)
	return pts[i].X == lo.X && pts[(i+1)%len(pts)].X == lo.X
}

// auditAllowance checks the allowances of a piece whose outline is good.
func (p *Piece) auditAllowance(own *fault.Audit) {
	if len(p.Allowance) == 0 {
		return
	}
	n := len(p.corners())
	if len(p.Allowance) != 1 && len(p.Allowance) != n {
		own.Fault("allowance", strconv.Itoa(len(p.Allowance))+" lengths", "1, or one for each of the "+strconv.Itoa(n)+" edges", fault.Range)
		return
	}
	good := true
	for i, l := range p.Allowance {
		path := "allowance[" + strconv.Itoa(i) + "]"
		if l.Sign() < 0 {
			own.NotNegative(path, l)
			good = false
		} else if p.Fold && len(p.Allowance) == n && p.onFold(i) && !l.IsZero() {
			own.Fault(path, l.String(), "none on the fold edge", fault.Conflict)
			good = false
		}
	}
	if !good {
		return
	}
	if _, err := p.grow(); err != nil {
		own.Fault("allowance", "", "allowances with which the outline does not meet itself, as in a slit, and lies on one grid", fault.KindOf(err))
	}
}

// grown is the piece with its allowances added, as it is cut.
func (p Piece) grown() Piece {
	out, err := p.grow()
	if len(p.Allowance) == 0 || err != nil {
		return p
	}
	return out
}

// grow adds the allowances: each edge is moved outward by its own, and corners
// are where the moved edges meet, rounded outward. The outline is never nearer
// than the allowance. A corner sharper than 60 degrees is cut off square, an
// allowance beyond its point. It fails where the outline would meet itself.
func (p Piece) grow() (Piece, error) {
	if n := len(p.Allowance); n != 0 && n != 1 && n != len(p.corners()) || slices.ContainsFunc(p.Allowance, func(l units.Length) bool { return l.Sign() < 0 }) {
		return p, fault.Range
	}
	if len(p.Outline) == 0 {
		near, right, far, left := p.allowance(0), p.allowance(1), p.allowance(2), p.allowance(3)
		p.Notches = slices.Clone(p.Notches)
		for i := range p.Notches {
			at := &p.Notches[i].At
			*at = Point{at.X.Add(left), at.Y.Add(near)}
		}
		p.Wide, p.Long = p.Wide.Add(left).Add(right), p.Long.Add(near).Add(far)
		p.Allowance = nil
		return p, nil
	}
	m := mesh{perInch: big.NewInt(growSteps)}
	for i, q := range p.Outline {
		if !m.fine(q.X) || !m.fine(q.Y) || !m.fine(p.allowance(i)) {
			return p, ErrGrid
		}
	}
	pts, ok := m.vertices(p.Outline)
	if !ok {
		return p, ErrGrid
	}
	_, hi := corners(pts)
	if hi.X > growRoom || hi.Y > growRoom {
		return p, ErrGrid
	}
	n := len(pts)
	take := make([]int64, n)
	for i := range take {
		t, ok := m.whole(p.allowance(i))
		if !ok || t > growRoom {
			return p, ErrGrid
		}
		take[i] = t
	}
	back := twiceArea(pts).Sign() < 0
	if back { // the edge from corner i of the reversed outline is that before it
		slices.Reverse(pts)
		slices.Reverse(take)
		take = append(take[1:], take[0])
	}
	g := grower{unit: m.perInch.Int64() / growSteps}
	for i, v := range pts {
		d := pts[(i+1)%n].Minus(v)
		g.corner(v, v.Minus(pts[(i+n-1)%n]), d, take[(i+n-1)%n], take[i])
		g.rail(v, d, take[i], true)
	}
	ring, err := g.ring()
	if err != nil {
		return p, err
	}
	if back {
		slices.Reverse(ring)
	}
	lo, _ := box(p.Outline)
	step := units.Inch.Of(1).Scale(units.RatioOf(1, m.perInch.Int64()))
	p.Outline = make([]Point, len(ring))
	for i, v := range ring {
		p.Outline[i] = Point{lo.X.Add(step.MulInt(v.X)), lo.Y.Add(step.MulInt(v.Y))}
	}
	p.Allowance = nil
	p.Wide, p.Long = p.extent()
	return p, nil
}

// A grower holds the moved edges of an outline, in order, inside on the left.
type grower struct {
	unit  int64
	rails []rail
}

// A rail is a moved edge: what is at or beyond it are the points q for which the
// cross product of d and q-at is -beyond or less.
type rail struct {
	at, d  vertex
	beyond *big.Int
	far    whole.Wide // the same
	edge   bool       // one of the outline's, not put in at a corner
}

// rail puts in the line through at in direction d, moved outward by take: the
// least whole cross product that is not less than that.
func (g *grower) rail(at, d vertex, take int64, edge bool) {
	size := new(big.Int).Add(product(d.X, d.X), product(d.Y, d.Y))
	size.Mul(size, product(take, take))
	root := new(big.Int).Sqrt(size)
	if new(big.Int).Mul(root, root).Cmp(size) < 0 {
		root.Add(root, big.NewInt(1))
	}
	g.rails = append(g.rails, rail{at, d, root, whole.Of(root), edge})
}

// corner puts in what a corner at v needs between the edges before and after it:
// the cut across a sharp one, or the step between two allowances where the edges
// are nearly in line.
func (g *grower) corner(v, before, after vertex, last, next int64) {
	cross := whole.Times(before.X, after.Y).Sub(whole.Times(before.Y, after.X))
	dot := whole.Times(before.X, after.X).Add(whole.Times(before.Y, after.Y))
	switch {
	case last == 0 && next == 0:
	case dot.Sign() > 0 && last != next && nearly(cross, dot):
		d := vertex{X: before.Y, Y: -before.X} // outward
		if next < last {
			d = vertex{X: -d.X, Y: -d.Y}
		}
		g.rail(v, d, 0, false)
	case cross.Sign() > 0 && dot.Sign() < 0 && sharp(before, after, dot):
		if e := bisector(before, after); e != (vertex{}) {
			g.rail(v, e, max(last, next), false)
		}
	}
}

// nearly reports whether a turn is less than that of which the sine is a quarter
// of the cosine.
func nearly(cross, dot whole.Wide) bool {
	if cross.Sign() < 0 {
		cross = whole.Wide{}.Sub(cross)
	}
	for range 2 {
		cross = cross.Add(cross)
	}
	return cross.Sub(dot).Sign() < 0
}

// sharp reports whether the corner between two edges is less than 60 degrees.
func sharp(a, b vertex, dot whole.Wide) bool {
	square := func(v vertex) *big.Int {
		return new(big.Int).Add(product(v.X, v.X), product(v.Y, v.Y))
	}
	d := new(big.Int).Add(product(a.X, b.X), product(a.Y, b.Y))
	d.Mul(d, d).Lsh(d, 2)
	return dot.Sign() < 0 && d.Cmp(new(big.Int).Mul(square(a), square(b))) > 0
}

// bisector is a direction about half-way from a to b.
func bisector(a, b vertex) vertex {
	const unit = 1 << 20
	x1, y1 := scaled(a, unit)
	x2, y2 := scaled(b, unit)
	e := vertex{X: x1 + x2, Y: y1 + y2}
	// A turn of very nearly half a round: the side that is outward.
	if e.X > -unit/64 && e.X < unit/64 && e.Y > -unit/64 && e.Y < unit/64 {
		return vertex{X: -y1, Y: x1}
	}
	return e
}

// scaled is v as long as unit, about.
func scaled(v vertex, unit int64) (x, y int64) {
	size := new(big.Int).Sqrt(new(big.Int).Add(product(v.X, v.X), product(v.Y, v.Y)))
	part := func(n int64) int64 {
		return new(big.Int).Quo(product(n, unit), size).Int64()
	}
	return part(v.X), part(v.Y)
}

func product(a, b int64) *big.Int { return new(big.Int).Mul(big.NewInt(a), big.NewInt(b)) }

// holds reports whether q is at or beyond the rail.
func (r *rail) holds(q vertex) bool {
	return whole.Times(r.d.X, q.Y-r.at.Y).Sub(whole.Times(r.d.Y, q.X-r.at.X)).Add(r.far).Sign() <= 0
}

// ring is the grown outline.
func (g *grower) ring() ([]vertex, error) {
	rails := g.rails[:0:0]
	for _, r := range g.rails { // edges in line with the one before are one with it
		if k := len(rails); k > 0 && rails[k-1].inLine(&r) {
			continue
		}
		rails = append(rails, r)
	}
	if k := len(rails); k > 1 && rails[k-1].inLine(&rails[0]) {
		rails = rails[:k-1]
	}
	n := len(rails)
	if n < 3 {
		return nil, ErrOutline
	}
	out := make([]vertex, n)
	for i := range rails {
		q, ok := g.meet(&rails[(i+n-1)%n], &rails[i])
		if !ok {
			return nil, ErrOutline
		}
		out[i] = q
	}
	for i, r := range rails { // no edge may have turned round
		e := out[(i+1)%n].Minus(out[i])
		if r.edge && whole.Times(e.X, r.d.X).Add(whole.Times(e.Y, r.d.Y)).Sign() <= 0 {
			return nil, ErrOutline
		}
	}
	out = slices.Compact(out)
	if out[0] == out[len(out)-1] {
		out = out[:len(out)-1]
	}
	if _, _, found := tangle(out); len(out) < 3 || found {
		return nil, ErrOutline
	}
	return out, nil
}

// inLine reports whether s is on the line of r, the same way.
func (r *rail) inLine(s *rail) bool {
	if whole.Times(r.d.X, s.d.Y).Sub(whole.Times(r.d.Y, s.d.X)).Sign() != 0 || whole.Times(r.d.X, s.d.X).Add(whole.Times(r.d.Y, s.d.Y)).Sign() < 0 {
		return false
	}
	c := new(big.Int).Sub(product(r.d.X, s.at.Y-r.at.Y), product(r.d.Y, s.at.X-r.at.X))
	if c.Sign() != 0 {
		return false
	}
	// As far out: beyond over the length of d, in squares.
	a, b := new(big.Int).Mul(r.beyond, big.NewInt(max(s.d.X, -s.d.X)+max(s.d.Y, -s.d.Y))), new(big.Int).Mul(s.beyond, big.NewInt(max(r.d.X, -r.d.X)+max(r.d.Y, -r.d.Y)))
	diff := new(big.Int).Sub(a, b)
	return diff.CmpAbs(big.NewInt(max(r.d.X, -r.d.X)+max(r.d.Y, -r.d.Y)+max(s.d.X, -s.d.X)+max(s.d.Y, -s.d.Y))) <= 0
}

// meet is where two rails meet, rounded to a point at or beyond both: a whole
// step if that is one, else the nearest of the grid.
func (g *grower) meet(r, s *rail) (vertex, bool) {
	den := new(big.Int).Sub(product(r.d.X, s.d.Y), product(r.d.Y, s.d.X))
	if den.Sign() == 0 {
		return vertex{}, false
	}
	value := func(t *rail) *big.Int { // cross(t.d, q)
		c := new(big.Int).Sub(product(t.d.X, t.at.Y), product(t.d.Y, t.at.X))
		return c.Sub(c, t.beyond)
	}
	a, b := value(r), value(s)
	solve := func(dr, ds int64) (whole int64, exact, ok bool) {
		num := new(big.Int).Sub(new(big.Int).Mul(a, big.NewInt(ds)), new(big.Int).Mul(b, big.NewInt(dr)))
		q, rest := new(big.Int).DivMod(num, den, new(big.Int))
		return q.Int64(), rest.Sign() == 0, q.IsInt64() && q.BitLen() <= 50
	}
	x, exactX, okX := solve(r.d.X, s.d.X)
	y, exactY, okY := solve(r.d.Y, s.d.Y)
	if !okX || !okY {
		return vertex{}, false
	}
	if q := (vertex{X: x, Y: y}); exactX && exactY && r.holds(q) && s.holds(q) {
		return q, true
	}
	// A side along the cloth or across it stays so, where it must be.
	uprightX, levelY := exactX && (r.d.X == 0 || s.d.X == 0), exactY && (r.d.Y == 0 || s.d.Y == 0)
	for _, far := range [...]int64{3, growFar} {
		best, found := vertex{}, false
		var least whole.Wide
		for i := -far; i <= far+1; i++ {
			if i > -far && uprightX {
				break
			}
			for j := -far; j <= far+1; j++ {
				if j > -far && levelY {
					break
				}
				q := vertex{X: floor(x, g.unit) + i*g.unit, Y: floor(y, g.unit) + j*g.unit}
				if uprightX {
					q.X = x
				}
				if levelY {
					q.Y = y
				}
				d := whole.Times(q.X-x, q.X-x).Add(whole.Times(q.Y-y, q.Y-y))
				if (!found || d.Sub(least).Sign() < 0) && r.holds(q) && s.holds(q) {
					best, least, found = q, d, true
				}
			}
		}
		if found {
			return best, true
		}
	}
	return vertex{}, false
}

// floor is the greatest multiple of unit that is not more than a.
func floor(a, unit int64) int64 { return a - whole.Modulo(a, unit) }
