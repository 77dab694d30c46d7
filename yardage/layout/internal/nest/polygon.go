package nest

import (
	"slices"

	"example.com/clothyard/yardage/layout/internal/whole"
)

// A vertex is a corner of an outline, or a place.
type vertex = whole.Point

// side tells on which side of the line from a to b the vertex c is: 1 on the
// left where y points up, -1 on the right, 0 on the line.
func side(a, b, c vertex) int {
	return whole.Times(b.X-a.X, c.Y-a.Y).Sub(whole.Times(b.Y-a.Y, c.X-a.X)).Sign()
}

// twiceArea is twice the area of an outline, more than zero where it goes round
// with the inside on the left.
func twiceArea(pts []vertex) whole.Wide {
	var sum whole.Wide
	if len(pts) == 0 {
		return sum
	}
	o := pts[0]
	for i, b := range pts {
		a := pts[(i+len(pts)-1)%len(pts)]
		sum = sum.Add(whole.Times(a.X-o.X, b.Y-o.Y)).Sub(whole.Times(b.X-o.X, a.Y-o.Y))
	}
	return sum
}

// A triangle has its corners with the inside on the left.
type triangle [3]vertex

// triangles cuts a simple outline, inside on the left, into triangles between
// its own corners.
func triangles(pts []vertex) []triangle {
	ring := slices.Clone(pts)
	out := make([]triangle, 0, max(len(ring)-2, 0))
	for i, idle := 0, 0; len(ring) >= 3 && idle <= len(ring); {
		n := len(ring)
		i %= n
		a, b, c := ring[(i+n-1)%n], ring[i], ring[(i+1)%n]
		s := side(a, b, c)
		if s < 0 || s > 0 && blocked(ring, i) {
			i++
			idle++
			continue
		}
		if s > 0 {
			out = append(out, triangle{a, b, c})
		}
		ring = slices.Delete(ring, i, i+1)
		idle = 0
		i++ // go round, so that the triangles do not all share one corner
	}
	return out
}

// blocked reports whether any other corner of the ring is in the triangle that
// would be cut off at i, or on its sides.
func blocked(ring []vertex, i int) bool {
	n := len(ring)
	a, b, c := ring[(i+n-1)%n], ring[i], ring[(i+1)%n]
	lox, hix := min(a.X, b.X, c.X), max(a.X, b.X, c.X)
	loy, hiy := min(a.Y, b.Y, c.Y), max(a.Y, b.Y, c.Y)
	for k := range n - 3 {
		p := ring[(i+2+k)%n]
		if p.X < lox || p.X > hix || p.Y < loy || p.Y > hiy {
			continue
		}
		if side(a, b, p) >= 0 && side(b, c, p) >= 0 && side(c, a, p) >= 0 {
			return true
		}
	}
	return false
}

// turned is the outline mirrored across the cloth first, where that is asked,
// and then turned by quarters from across to along, moved so that the smallest
// rectangle that holds it has its corner at the origin. The inside stays on the
// left.
func turned(pts []vertex, mirror bool, quarters int) []vertex {
	out := make([]vertex, len(pts))
	for i, p := range pts {
		if mirror {
			p.X = -p.X
		}
		for range quarters & 3 {
			p = vertex{X: -p.Y, Y: p.X}
		}
		out[i] = p
	}
	if mirror {
		slices.Reverse(out)
	}
	lo, _ := corners(out)
	for i := range out {
		out[i].X -= lo.X
		out[i].Y -= lo.Y
	}
	return out
}

// spun turns the parts of an outline counter-clockwise by so many quarters, all
// about one place, and moves them so that the least coordinates are 0.
func spun(parts [][]vertex, quarters int) [][]vertex {
	var all []vertex
	for _, p := range parts {
		all = append(all, p...)
	}
	all = turned(all, false, quarters)
	out := make([][]vertex, len(parts))
	for i, p := range parts {
		out[i], all = all[:len(p):len(p)], all[len(p):]
	}
	return out
}

// corners are the least and the greatest coordinates.
func corners(pts []vertex) (lo, hi vertex) {
	if len(pts) == 0 {
		return lo, hi
	}
	lo, hi = pts[0], pts[0]
	for _, p := range pts[1:] {
		lo.X, lo.Y = min(lo.X, p.X), min(lo.Y, p.Y)
		hi.X, hi.Y = max(hi.X, p.X), max(hi.Y, p.Y)
	}
	return lo, hi
}
