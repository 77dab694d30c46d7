package hem

import "example.com/clothyard/units"

// A rooted length is plain + root x s, with s the length of the step along side B
// that goes one up: the square root of 1 + lean x lean. Kept apart, the two parts
// stay exact whatever s is, so that two points are the same or they are not.
type rooted struct{ plain, root units.Length }

func (r rooted) add(q rooted) rooted { return rooted{r.plain.Add(q.plain), r.root.Add(q.root)} }
func (r rooted) sub(q rooted) rooted { return rooted{r.plain.Sub(q.plain), r.root.Sub(q.root)} }
func (r rooted) scale(k units.Ratio) rooted {
	return rooted{r.plain.Scale(k), r.root.Scale(k)}
}

// place is a point in rooted lengths.
type place struct{ x, y rooted }

func (v place) neg() place {
	k := units.RatioOf(-1, 1)
	return place{v.x.scale(k), v.y.scale(k)}
}

// corner is the shape of a corner: its lean, and the step along side B.
type corner struct {
	lean, square units.Ratio // square is 1 + lean x lean
	step         units.NearRatio
}

func cornerOf(lean units.Ratio) corner {
	c := corner{lean: lean, square: one.Add(lean.Mul(lean)), step: units.ExactlyRatio(one)}
	if !lean.IsZero() {
		c.step = rootOf(c.square)
	}
	return c
}

// rootOf is the square root of a number that is not below zero.
func rootOf(r units.Ratio) units.NearRatio {
	n, _ := units.SqrtRatio(r) // never fails: r is not below zero, and MaxLean bounds it
	return n
}

// near is the length of r.
func (c corner) near(r rooted) units.Near { return c.step.Of(r.root).Plus(r.plain) }

func (c corner) point(v place) Point {
	return Point{c.near(v.x).Settled(), c.near(v.y).Settled()}
}

// inside is the point that lies a above side A and b inside side B, each measured
// square to it: the y is a, and x - lean x y is b x s.
func (c corner) inside(a, b units.Length) place {
	return place{x: rooted{a.Scale(c.lean), b}, y: rooted{plain: a}}
}

// offB is how far v lies inside side B, times s.
func (c corner) offB(v place) rooted { return v.x.sub(v.y.scale(c.lean)) }

// overA turns v over side A.
func (c corner) overA(v place) place { return place{v.x, v.y.scale(units.RatioOf(-1, 1))} }

// overB turns v over side B: twice its part along B, less itself.
func (c corner) overB(v place) place {
	along := v.x.scale(c.lean).add(v.y).scale(units.RatioOf(2, 1).Quo(c.square))
	return place{along.scale(c.lean).sub(v.x), along.sub(v.y)}
}

// length is how far the point inside(a, b) lies from the corner. Its square is
// (a x a + b x b) x s x s + 2 x lean x a x b x s.
func (c corner) length(a, b units.Length) units.Near {
	if c.lean.IsZero() && a == b {
		return rootTwo.Of(a)
	}
	squares := a.Times(a).Add(b.Times(b)).Scale(c.square)
	cross := a.Times(b).Scale(c.lean).MulInt(2)
	lo, hi := c.step.Bounds()
	if _, exact := c.step.Exact(); exact {
		return rootOfArea(squares.Add(cross.Scale(lo)))
	}
	if c.lean.Sign() < 0 {
		lo, hi = hi, lo
	}
	below, _ := rootOfArea(squares.Add(cross.Scale(lo))).Bounds()
	_, above := rootOfArea(squares.Add(cross.Scale(hi))).Bounds()
	return between(below, above)
}

// rootOfArea is the side of a square, of an area that is not below zero.
func rootOfArea(area units.Area) units.Near {
	n, _ := units.Sqrt(area, units.Length{}) // never fails: the area is a square, and bounded
	return n
}

// grain is what the bounds of a skew mitre seam are rounded out to.
var grain = units.Millimetre.Frac(1, 10_000)

// between is the length somewhere between two bounds, read from its text, since the
// root of a root has no other form; it cannot be refined.
func between(below, above units.Length) units.Near {
	below, _ = below.Round(grain, units.Down)
	above, _ = above.Round(grain, units.Up)
	mid := below.Add(above).DivInt(2)
	n, _ := units.ParseNear(mid.String() + " +- " + above.Sub(mid).String()) // never fails: String writes what Parse reads
	return n
}
