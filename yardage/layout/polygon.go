package layout

import (
	"cmp"
	"slices"

	"example.com/clothyard/yardage/layout/internal/whole"
)

// A vertex is a corner of an outline, or a place, in steps of a grid.
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

// between reports whether c, on the line of a and b, is between them or on one.
func between(a, b, c vertex) bool {
	return min(a.X, b.X) <= c.X && c.X <= max(a.X, b.X) && min(a.Y, b.Y) <= c.Y && c.Y <= max(a.Y, b.Y)
}

// meet reports whether two closed edges have any point in common.
func meet(a, b, c, d vertex) bool {
	if max(a.X, b.X) < min(c.X, d.X) || max(c.X, d.X) < min(a.X, b.X) || max(a.Y, b.Y) < min(c.Y, d.Y) || max(c.Y, d.Y) < min(a.Y, b.Y) {
		return false
	}
	s1, s2 := side(a, b, c), side(a, b, d)
	s3, s4 := side(c, d, a), side(c, d, b)
	if s1*s2 < 0 && s3*s4 < 0 {
		return true
	}
	return s1 == 0 && between(a, b, c) || s2 == 0 && between(a, b, d) || s3 == 0 && between(c, d, a) || s4 == 0 && between(c, d, b)
}

// tangle finds two edges of an outline that cross or touch where they should
// not, each named by the index of its first corner.
func tangle(pts []vertex) (i, j int, found bool) {
	n := len(pts)
	order := make([]int, n)
	for k := range order {
		order[k] = k
	}
	left := func(k int) int64 { return min(pts[k].X, pts[(k+1)%n].X) }
	right := func(k int) int64 { return max(pts[k].X, pts[(k+1)%n].X) }
	slices.SortFunc(order, func(a, b int) int { return cmp.Or(cmp.Compare(left(a), left(b)), cmp.Compare(a, b)) })
	for at, p := range order {
		for _, q := range order[at+1:] {
			if left(q) > right(p) {
				break
			}
			a, b, c, d := pts[p], pts[(p+1)%n], pts[q], pts[(q+1)%n]
			switch {
			case (p+1)%n == q: // b is c: only a fold back on itself is a fault
				if side(a, b, d) != 0 || !between(a, b, d) && !between(b, d, a) {
					continue
				}
			case (q+1)%n == p:
				if side(c, d, b) != 0 || !between(c, d, b) && !between(d, b, c) {
					continue
				}
			case !meet(a, b, c, d):
				continue
			}
			return min(p, q), max(p, q), true
		}
	}
	return 0, 0, false
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
