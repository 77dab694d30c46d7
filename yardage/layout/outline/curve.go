package outline

import (
	"slices"

	"example.com/clothyard/units"
)

// maxHalvings is how often a curve is halved, at most: the points stay on a grid
// that is 2^(3 maxHalvings) times finer than that of the curve's own.
const maxHalvings = 7

// polygon is the outline as a polygon that holds it and, in units of the drawing,
// lies no farther than within outside it; false where a curve cannot be made one,
// or where there are more than most points.
//
// A cubic lies in the hull of its four points. Of a part that hardly bends, the
// hull's outer side stands for the curve: for one that bulges outward that is the
// way over the control points, for one that bulges inward the chord.
func polygon(start point, strokes []stroke, within units.Ratio, most int) ([]point, bool) {
	// Which side is outside follows from the points on the outline, the curves
	// halved a few times: a shape so thin that this errs is refused.
	rough := []point{start}
	now := start
	for _, s := range strokes {
		if s.curve {
			for _, c := range halved(cubic{now, s.c1, s.c2, s.to}, 3) {
				rough = append(rough, c[3])
			}
		} else {
			rough = append(rough, s.to)
		}
		now = s.to
	}
	sign := twiceArea(rough).Sign()
	if sign == 0 {
		return nil, false
	}
	half := within.Mul(units.RatioOf(1, 2))
	f := flattener{limit: half.Mul(half), sign: sign, most: most, out: []point{start}}
	now = start
	for _, s := range strokes {
		if !s.curve {
			f.put(s.to)
		} else if !f.curve(cubic{now, s.c1, s.c2, s.to}, maxHalvings) {
			return nil, false
		}
		now = s.to
	}
	if n := len(f.out); n > 1 && f.out[0] == f.out[n-1] {
		f.out = f.out[:n-1]
	}
	return f.out, len(f.out) <= most && twiceArea(f.out).Sign() == sign
}

// twiceArea is twice the area, signed.
func twiceArea(pts []point) units.Ratio {
	var sum units.Ratio
	for i, p := range pts {
		q := pts[(i+1)%len(pts)]
		sum = sum.Add(p.sub(pts[0]).cross(q.sub(pts[0])))
	}
	return sum
}

// A cubic is a curve by its ends and control points.
type cubic [4]point

// halve cuts the curve in two at its middle.
func (c cubic) halve() (cubic, cubic) {
	a, b, d := middle(c[0], c[1]), middle(c[1], c[2]), middle(c[2], c[3])
	e, f := middle(a, b), middle(b, d)
	m := middle(e, f)
	return cubic{c[0], a, e, m}, cubic{m, f, d, c[3]}
}

func halved(c cubic, times int) []cubic {
	if times == 0 {
		return []cubic{c}
	}
	a, b := c.halve()
	return append(halved(a, times-1), halved(b, times-1)...)
}

// A flattener makes polygons of curves.
type flattener struct {
	limit units.Ratio // the square of how far a control point may be from the chord
	sign  int         // which way round the outline goes
	most  int
	out   []point
}

func (f *flattener) put(p point) {
	if f.out[len(f.out)-1] != p {
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
	if length2.IsZero() {
		return c[1] == c[0] && c[2] == c[0]
	}
	far := f.limit.Mul(length2)
	var along [2]units.Ratio
	for k := range along {
		p := c[1+k].sub(c[0])
		off := chord.cross(p)
		along[k] = chord.dot(p)
		if far.Less(off.Mul(off)) || along[k].Sign() < 0 || length2.Less(along[k]) {
			return false
		}
	}
	return along[0].Cmp(along[1]) <= 0
}

// outer are the corners after c[0] of the hull's side that lies outside.
func (f *flattener) outer(c cubic) []point {
	side := func(a, b, p point) int { return b.sub(a).cross(p.sub(a)).Sign() * -f.sign }
	out := make([]point, 0, 3)
	for _, p := range []point{c[1], c[2]} {
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
