package layout

import (
	"cmp"
	"slices"
)

// A vertex is a corner of an outline in steps of a grid, x across the cloth and
// y along it. Coordinates are below 2^61, so that differences are whole numbers
// of 64 bits and products of these of 128.
type vertex struct{ x, y int64 }

// side tells on which side of the line from a to b the vertex c is: 1 on the
// left where y points up, -1 on the right, 0 on the line.
func side(a, b, c vertex) int {
	return times(b.x-a.x, c.y-a.y).sub(times(b.y-a.y, c.x-a.x)).sign()
}

// twiceArea is twice the area of an outline, more than zero where it goes round
// with the inside on the left.
func twiceArea(pts []vertex) wide {
	var sum wide
	if len(pts) == 0 {
		return sum
	}
	o := pts[0]
	for i, b := range pts {
		a := pts[(i+len(pts)-1)%len(pts)]
		sum = sum.add(times(a.x-o.x, b.y-o.y)).sub(times(b.x-o.x, a.y-o.y))
	}
	return sum
}

// between reports whether c, on the line of a and b, is between them or on one.
func between(a, b, c vertex) bool {
	return min(a.x, b.x) <= c.x && c.x <= max(a.x, b.x) && min(a.y, b.y) <= c.y && c.y <= max(a.y, b.y)
}

// meet reports whether two closed edges have any point in common.
func meet(a, b, c, d vertex) bool {
	if max(a.x, b.x) < min(c.x, d.x) || max(c.x, d.x) < min(a.x, b.x) || max(a.y, b.y) < min(c.y, d.y) || max(c.y, d.y) < min(a.y, b.y) {
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
	left := func(k int) int64 { return min(pts[k].x, pts[(k+1)%n].x) }
	right := func(k int) int64 { return max(pts[k].x, pts[(k+1)%n].x) }
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
	lox, hix := min(a.x, b.x, c.x), max(a.x, b.x, c.x)
	loy, hiy := min(a.y, b.y, c.y), max(a.y, b.y, c.y)
	for k := range n - 3 {
		p := ring[(i+2+k)%n]
		if p.x < lox || p.x > hix || p.y < loy || p.y > hiy {
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
			p.x = -p.x
		}
		for range quarters & 3 {
			p = vertex{-p.y, p.x}
		}
		out[i] = p
	}
	if mirror {
		slices.Reverse(out)
	}
	lo, _ := corners(out)
	for i := range out {
		out[i].x -= lo.x
		out[i].y -= lo.y
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
		lo.x, lo.y = min(lo.x, p.x), min(lo.y, p.y)
		hi.x, hi.y = max(hi.x, p.x), max(hi.y, p.y)
	}
	return lo, hi
}

// split reports whether an edge of a has all of b on its outer side, at least
// gap away as a square of twice that size measures.
func split(a, b triangle, gap int64) bool {
	for i, p := range a {
		q := a[(i+1)%3]
		ex, ey := q.x-p.x, q.y-p.y
		room := wide{}
		if gap != 0 {
			room = times(gap, max(ex, -ex)).add(times(gap, max(ey, -ey)))
		}
		clear := true
		for _, v := range b {
			if times(ex, v.y-p.y).sub(times(ey, v.x-p.x)).add(room).sign() > 0 {
				clear = false
				break
			}
		}
		if clear {
			return true
		}
	}
	return false
}
