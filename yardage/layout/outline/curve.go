package outline

import (
	"math/big"
	"slices"

	"example.com/clothyard/units"
)

// maxHalvings is how often a curve is halved, at most: the points stay on a grid
// that is 2^(3 maxHalvings) times finer than that of the curves' own.
const maxHalvings = 7

// polygon is the outline as a polygon that holds it and, in units of the drawing,
// lies no farther than within outside it; false where a curve cannot be made one,
// or where there are more than most points.
//
// A cubic lies in the hull of its four points. Of a part that hardly bends, the
// hull's outer side stands for the curve: for one that bulges outward that is the
// way over the control points, for one that bulges inward the chord.
func polygon(start point, strokes []stroke, within units.Ratio, most int) ([]point, bool) {
	g := meshOf(start, strokes)
	first := g.knot(start)
	area, now := new(big.Int), first
	curves := make([]cubic, len(strokes)) // a line has its two ends twice
	for i, s := range strokes {
		c := cubic{now, now, g.knot(s.to), g.knot(s.to)}
		if s.curve {
			c[1], c[2] = g.knot(s.c1), g.knot(s.c2)
		}
		curves[i], now = c, c[3]
		area.Add(area, c.area(first))
	}
	sign := area.Sign()
	if sign == 0 {
		return nil, false
	}
	half := within.Mul(units.RatioOf(1, 2)).Rat()
	half.Mul(half, new(big.Rat).SetInt(g.steps))
	f := flattener{num: square(half.Num()), den: square(half.Denom()), sign: sign, most: most, out: []knot{first}}
	for i, s := range strokes {
		if !s.curve {
			f.put(curves[i][3])
		} else if !f.curve(curves[i], maxHalvings) {
			return nil, false
		}
	}
	if n := len(f.out); n > 1 && f.out[0].is(f.out[n-1]) {
		f.out = f.out[:n-1]
	}
	return g.points(f.out), len(f.out) <= most && twiceArea(f.out).Sign() == sign
}

// A mesh is a grid so fine that all points of a path, and those of its curves
// halved, lie on it.
type mesh struct{ steps *big.Int } // to the drawing's unit

func meshOf(start point, strokes []stroke) mesh {
	steps := big.NewInt(1)
	fine := func(r units.Ratio) {
		den := r.Rat().Denom()
		common := new(big.Int).GCD(nil, nil, steps, den)
		steps.Mul(steps, common.Quo(den, common))
	}
	for _, p := range append([]stroke{{to: start}}, strokes...) {
		for _, q := range [...]point{p.c1, p.c2, p.to} {
			fine(q.x)
			fine(q.y)
		}
	}
	return mesh{steps.Lsh(steps, 3*maxHalvings)}
}

// knot is a point in steps.
func (g mesh) knot(p point) knot {
	whole := func(r units.Ratio) *big.Int {
		v := r.Rat()
		n := new(big.Int).Quo(g.steps, v.Denom())
		return n.Mul(n, v.Num())
	}
	return knot{whole(p.x), whole(p.y)}
}

// points are knots in the drawing's unit.
func (g mesh) points(knots []knot) []point {
	out := make([]point, len(knots))
	for i, k := range knots {
		out[i] = point{units.FromRat(new(big.Rat).SetFrac(k.x, g.steps)), units.FromRat(new(big.Rat).SetFrac(k.y, g.steps))}
	}
	return out
}

// A knot is a point of a mesh. Its numbers are never changed.
type knot struct{ x, y *big.Int }

func (p knot) is(q knot) bool { return p.x.Cmp(q.x) == 0 && p.y.Cmp(q.y) == 0 }

func (p knot) sub(q knot) knot {
	return knot{new(big.Int).Sub(p.x, q.x), new(big.Int).Sub(p.y, q.y)}
}

// cross is twice the area of the triangle of the origin, p and q: positive where q
// lies to the left of p with y upward, to the right with y downward.
func (p knot) cross(q knot) *big.Int {
	a := new(big.Int).Mul(p.x, q.y)
	return a.Sub(a, new(big.Int).Mul(p.y, q.x))
}

func (p knot) dot(q knot) *big.Int {
	a := new(big.Int).Mul(p.x, q.x)
	return a.Add(a, new(big.Int).Mul(p.y, q.y))
}

// middle is the point halfway between two, on the mesh for maxHalvings halvings.
func middle(p, q knot) knot {
	half := func(a, b *big.Int) *big.Int {
		sum := new(big.Int).Add(a, b)
		return sum.Rsh(sum, 1)
	}
	return knot{half(p.x, q.x), half(p.y, q.y)}
}

func square(n *big.Int) *big.Int { return new(big.Int).Mul(n, n) }

// twiceArea is twice the area, signed.
func twiceArea(pts []knot) *big.Int {
	sum := new(big.Int)
	for i, p := range pts {
		q := pts[(i+1)%len(pts)]
		sum.Add(sum, p.sub(pts[0]).cross(q.sub(pts[0])))
	}
	return sum
}

// A cubic is a curve by its ends and control points.
type cubic [4]knot

// area is twenty times the area, signed, between the curve and its ends' lines to
// o: half the integral of x dy - y dx along it.
func (c cubic) area(o knot) *big.Int {
	sum := new(big.Int)
	for i, p := range c {
		for k, q := range c[i+1:] {
			part := p.sub(o).cross(q.sub(o))
			sum.Add(sum, part.Mul(part, big.NewInt(areaOf[i][i+1+k])))
		}
	}
	return sum
}

// areaOf are the parts that the cross products of a cubic's points have in it.
var areaOf = [3][4]int64{{0, 6, 3, 1}, {0, 0, 3, 3}, {0, 0, 0, 6}}

// halve cuts the curve in two at its middle.
func (c cubic) halve() (cubic, cubic) {
	a, b, d := middle(c[0], c[1]), middle(c[1], c[2]), middle(c[2], c[3])
	e, f := middle(a, b), middle(b, d)
	m := middle(e, f)
	return cubic{c[0], a, e, m}, cubic{m, f, d, c[3]}
}

// A flattener makes polygons of curves.
type flattener struct {
	num, den *big.Int // the square of how far a control point may be from the chord
	sign     int      // which way round the outline goes
	most     int
	out      []knot
}

func (f *flattener) put(p knot) {
	if !f.out[len(f.out)-1].is(p) {
		f.out = append(f.out, p)
	}
}

// curve puts in a curve from where the polygon ends; false where the halvings or
// the points do not do.
func (f *flattener) curve(c cubic, halvings int) bool {
	if len(f.out) > f.most {
		return false
	}
	if f.flat(c) {
		for _, p := range f.outer(c) {
			f.put(p)
		}
		return true
	}
	if halvings == 0 {
		return false
	}
	a, b := c.halve()
	return f.curve(a, halvings-1) && f.curve(b, halvings-1)
}

// flat reports whether the control points lie beside the chord, one after the
// other and near enough to it. Then no point of the hull is farther than twice
// that from the curve.
func (f *flattener) flat(c cubic) bool {
	chord := c[3].sub(c[0])
	length2 := chord.dot(chord)
	if length2.Sign() == 0 {
		return c[1].is(c[0]) && c[2].is(c[0])
	}
	far := new(big.Int).Mul(f.num, length2)
	var along [2]*big.Int
	for k := range along {
		p := c[1+k].sub(c[0])
		off := square(chord.cross(p))
		along[k] = chord.dot(p)
		if far.Cmp(off.Mul(off, f.den)) < 0 || along[k].Sign() < 0 || length2.Cmp(along[k]) < 0 {
			return false
		}
	}
	return along[0].Cmp(along[1]) <= 0
}

// outer are the corners after c[0] of the hull's side that lies outside.
func (f *flattener) outer(c cubic) []knot {
	side := func(a, b, p knot) int { return b.sub(a).cross(p.sub(a)).Sign() * -f.sign }
	out := make([]knot, 0, 3)
	for _, p := range []knot{c[1], c[2]} {
		if side(c[0], c[3], p) > 0 {
			out = append(out, p)
		}
	}
	// The one that lies inside the way over the other is passed by.
	if len(out) == 2 {
		if side(c[0], out[1], out[0]) <= 0 {
			out = slices.Delete(out, 0, 1)
		} else if side(out[0], c[3], out[1]) <= 0 {
			out = out[:1]
		}
	}
	return append(out, c[3])
}
