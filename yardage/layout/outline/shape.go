package outline

import (
	"fmt"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
)

// A Trapezoid is a panel between two straight edges that lie across the grain: a
// gore, a godet, a tapered band. Zero means not given.
type Trapezoid struct {
	Near units.Length `json:"near,omitzero"`             // width at the end nearest the cut end; more than zero
	Far  units.Length `json:"far,omitzero"`              // width at the other end; more than zero
	Long units.Length `json:"long,omitzero"`             // from one to the other along the grain; more than zero
	Lean units.Length `json:"lean,omitzero" noun:"zero"` // how far the middle of the far end lies to the right of that of the near one; zero is an answer: both sides slope alike
}

// Points are the four corners, exact, the near left-hand one at the origin. The
// faults are [fault.Faults].
func (t Trapezoid) Points() ([]layout.Point, error) {
	var a fault.Audit
	a.Need("near", t.Near)
	a.Need("far", t.Far)
	a.Need("long", t.Long)
	if a.Failed() {
		return nil, a.Err()
	}
	left := t.Near.Sub(t.Far).DivInt(2).Add(t.Lean)
	return []layout.Point{{}, {X: t.Near}, {X: left.Add(t.Far), Y: t.Long}, {X: left, Y: t.Long}}, nil
}

// A Sector is a part of a ring or of a disc, as of a circle skirt, a cape or a
// shaped flounce. One straight edge runs to the right from the middle of the
// circle; it turns from there towards the far end. Zero means not given.
type Sector struct {
	Outer    units.Length `json:"outer,omitzero"`             // radius of the outer edge; more than zero
	Inner    units.Length `json:"inner,omitzero" noun:"zero"` // radius of the inner edge, as of a waist; less than Outer; zero is an answer: a disc
	Quarters int          `json:"quarters,omitzero"`          // whole quarters of a circle, 0 to 4; 4 is a whole disc, which has no Inner
	Rest     units.Ratio  `json:"rest,omitzero" noun:"zero"`  // tangent of half the angle beyond these quarters, 0 to less than 1; zero is an answer, but for 0 Quarters; a short fraction, or the corners are too fine for a lay
	Within   units.Length `json:"within,omitzero"`            // how far from the curve a point of the polygon may lie, outside Outer or inside Inner; more than zero
}

// MaxSteps is the most parts that a Sector's quarter is cut into. The excess of
// one cut into n parts is about its radius by 1/(2 n²).
const MaxSteps = 400

// Points are the corners of a polygon that holds the whole sector and lies no
// farther than Within outside it, the middle of the circle at the origin. Every
// corner is exact: those on the straight edges lie on them, and the others on a
// grid of 1/32 Within. The faults are [fault.Faults].
func (s Sector) Points() ([]layout.Point, error) {
	if err := s.check(); err != nil {
		return nil, err
	}
	one := units.RatioOf(1, 1)
	grid := s.Within.DivInt(32)
	outer, most := s.Outer.Add(grid.MulInt(2)), s.Outer.Add(s.Within.Sub(grid.MulInt(2)))
	// Tangents at two points of the circle, an angle of 2a apart, meet at the
	// radius by 1/cos a from the middle; with tan a = 1/n, at most, that is
	// the radius by the root of 1 + 1/n².
	n := 1
	for {
		excess := one.Add(units.RatioOf(1, int64(n)*int64(n)))
		if outer.Div(most).Mul(outer.Div(most)).Mul(excess).Cmp(one) <= 0 {
			break
		}
		if n++; n > MaxSteps {
			return nil, fault.Faults{{Path: "within", Got: s.Within.String(), Limit: fmt.Sprintf("no more than %d parts to a quarter; of the radius %s about %s", MaxSteps, s.Outer, s.Outer.DivInt(2*MaxSteps*MaxSteps)), Kind: fault.Range}}
		}
	}
	rays, single := s.rays(n)
	last := len(rays) - 1
	turn := func(r ray, l units.Length) layout.Point { return layout.Point{X: l.Scale(r.x), Y: l.Scale(r.y)} }
	nearest := func(q layout.Point) layout.Point {
		q.X, _ = q.X.Round(grid, units.HalfAway)
		q.Y, _ = q.Y.Round(grid, units.HalfAway)
		return q
	}
	var pts []layout.Point
	whole := s.Quarters == 4
	if !whole {
		pts = append(pts, turn(rays[0], outer))
	}
	for i, r := range rays[:last] {
		next := rays[i+1]
		dot := one.Add(r.x.Mul(next.x)).Add(r.y.Mul(next.y))
		q := turn(ray{r.x.Add(next.x).Quo(dot), r.y.Add(next.y).Quo(dot)}, outer)
		if !single || i+1 < last { // between the two ends of one narrow part it stays where it is
			q = nearest(q)
		}
		pts = append(pts, q)
	}
	if whole {
		return pts, nil
	}
	pts = append(pts, turn(rays[last], outer))
	if s.Inner.Cmp(s.Within) <= 0 {
		if s.Quarters == 2 && s.Rest.IsZero() {
			return pts, nil // the middle lies on the edge from end to end
		}
		return append(pts, layout.Point{}), nil
	}
	// The inner edge is hollow: chords between points of the circle lie inside it.
	// One over an angle of 2a lies the radius by 1 - cos a inside, no more than
	// by half the square of tan a.
	n = 1
	for s.Within.MulInt(int64(n) * int64(n)).Less(s.Inner) {
		n++
	}
	rays, _ = s.rays(n)
	last = len(rays) - 1
	inner := s.Inner.Sub(grid.MulInt(2))
	pts = append(pts, turn(rays[last], inner))
	for i := last - 1; i > 0; i-- {
		pts = append(pts, nearest(turn(rays[i], inner)))
	}
	return append(pts, turn(rays[0], inner)), nil
}

func (s Sector) check() error {
	var a fault.Audit
	a.Need("outer", s.Outer)
	a.NotNegative("inner", s.Inner)
	if s.Outer.Sign() > 0 && !s.Inner.Less(s.Outer) {
		a.Fault("inner", s.Inner.String(), "less than outer, "+s.Outer.String(), fault.Conflict)
	}
	a.Count("quarters", s.Quarters, 0, 4)
	if s.Quarters == 4 && s.Inner.Sign() > 0 {
		a.Fault("quarters", "4", "3 at most with inner: a ring is no outline, cut it in two", fault.Conflict)
	}
	switch {
	case s.Rest.Sign() < 0 || !s.Rest.Less(units.RatioOf(1, 1)):
		a.Fault("rest", s.Rest.String(), "0 to less than 1, a whole quarter", fault.Range)
	case s.Quarters == 4 && !s.Rest.IsZero():
		a.Fault("rest", s.Rest.String(), "none beyond a whole circle", fault.Unused)
	case s.Quarters == 0 && s.Rest.IsZero():
		a.Fault("rest", "", "an angle: quarters, rest or both", fault.Missing)
	}
	a.Need("within", s.Within)
	if s.Outer.Sign() > 0 && s.Outer.Less(s.Within) {
		a.Fault("within", s.Within.String(), "at most outer, "+s.Outer.String(), fault.Range)
	}
	return a.Err()
}

// A ray is a direction from the middle: a point of the unit circle with exact
// rational coordinates.
type ray struct{ x, y units.Ratio }

// rays are the directions of the points at which the sector's edges are touched,
// from the first straight edge to the other: n parts to a quarter, the widest an
// angle of 2a with tan a = 1/n, and as many to the rest as keep to that; single
// where that is one.
func (s Sector) rays(n int) (out []ray, single bool) {
	one := units.RatioOf(1, 1)
	out = []ray{{one, units.Ratio{}}}
	parts := func(tan units.Ratio, q int, m int64) {
		for k := int64(1); k <= m; k++ {
			t := tan.Mul(units.RatioOf(k, m))
			square := t.Mul(t)
			under := one.Add(square)
			r := ray{one.Sub(square).Quo(under), t.Add(t).Quo(under)}
			for range q {
				r = ray{r.y.Neg(), r.x}
			}
			out = append(out, r)
		}
	}
	for q := range s.Quarters {
		parts(one, q, int64(n))
	}
	if !s.Rest.IsZero() {
		m, _ := s.Rest.Mul(units.RatioOf(int64(n), 1)).Int(units.Up)
		parts(s.Rest, s.Quarters, m)
		single = m == 1
	}
	return out, single
}
