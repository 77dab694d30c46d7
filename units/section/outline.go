package section

import "example.com/clothyard/units"

// A corner is a point of an outline, and the radius by which it is rounded: the
// outside of a turn goes round, the inside is sharp.
type corner struct {
	at     Point
	radius units.Length
}

// heading is the way from a to b: one of dx and dy is 1 or -1, the other 0.
func heading(a, b Point) (dx, dy int) { return b.X.Cmp(a.X), b.Y.Cmp(a.Y) }

// faces are the two faces of a ply, on the left and on the right of its path.
func (p Ply) faces(thickness units.Length) (left, right []corner) {
	half := thickness.DivInt(2)
	n := len(p.Path)
	left, right = make([]corner, n), make([]corner, n)
	outerLeft, outerRight := make([]bool, n), make([]bool, n)
	for i, at := range p.Path {
		var nx, ny int // the sum of the left normals of the parts that meet here
		if i > 0 {
			dx, dy := heading(p.Path[i-1], at)
			nx, ny = nx-dy, ny+dx
		}
		if i < n-1 {
			dx, dy := heading(at, p.Path[i+1])
			nx, ny = nx-dy, ny+dx
		}
		off := Point{half.MulInt(int64(nx)), half.MulInt(int64(ny))}
		left[i].at = Point{at.X.Add(off.X), at.Y.Add(off.Y)}
		right[i].at = Point{at.X.Sub(off.X), at.Y.Sub(off.Y)}
		if i > 0 && i < n-1 {
			ax, ay := heading(p.Path[i-1], at)
			bx, by := heading(at, p.Path[i+1])
			turn := ax*by - ay*bx // 1 to the left, -1 to the right
			outerLeft[i], outerRight[i] = turn < 0, turn > 0
		}
	}
	round(left, outerLeft, thickness)
	round(right, outerRight, thickness)
	return left, right
}

// round gives the outer corners their radius: the thickness, or what the sides of
// the corner leave room for.
func round(face []corner, outer []bool, thickness units.Length) {
	for i := range face {
		if !outer[i] {
			continue
		}
		r := thickness
		for _, k := range [...]int{i - 1, i + 1} {
			room := distance(face[i].at, face[k].at)
			if outer[k] {
				room = room.DivInt(2)
			}
			r = r.Min(room)
		}
		face[i].radius = r
	}
}

// distance is that of two points which are level or upright.
func distance(a, b Point) units.Length { return a.X.Sub(b.X).Abs().Add(a.Y.Sub(b.Y).Abs()) }

// Extent is the least and the greatest X and Y of the cloth in its thickness. It
// is of use to lay drawings beside each other; a drawing without plies has none.
func (d Drawing) Extent() (low, high Point) {
	for i, b := range d.boxes() {
		if i == 0 {
			low, high = Point{b.x0, b.y0}, Point{b.x1, b.y1}
		}
		low = Point{low.X.Min(b.x0), low.Y.Min(b.y0)}
		high = Point{high.X.Max(b.x1), high.Y.Max(b.y1)}
	}
	return low, high
}
