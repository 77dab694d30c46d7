package layout

import (
	"cmp"
	"context"
	"slices"
)

// A nest holds a Spec with outlines in whole numbers: every corner and the gap
// lie on a grid of perInch steps to the inch, which is made finer by tens until
// the cloth is at least fineness steps wide, so that a piece may lie where no
// corner of another is.
type nest struct {
	perInch  int64
	coarse   int64 // steps of this grid to one of the coarsest that all corners lie on
	wide     int64 // width between the selvedges, rounded down
	gap      int64
	kinds    []kind
	variants []variant
	items    []int      // the kind of every piece, copies counted, by Piece and Copy
	drawn    [][]vertex // the outline of every piece, neither mirrored nor turned
	bound    int64      // no lay is shorter

	barred           [][]vertex   // the outline of each flaw, from the first place across and along
	flaws            [][][]vertex // its convex parts, once divided
	repeatX, repeatY int64        // 0: none
	sets             int          // how many sets of notches are matched, each by itself
	phases           [][]int64    // by set, from 1: places in the repeat across that suit all its pieces
	given            []bool       // by set: whether its place in the repeat is given, and then zero
	half             int64        // half of the repeat across, where pieces are centred; else 0
	watch            func(end, steps int64)
}

const fineness = 1 << 20

// A kind is a piece, or one hand of a pair.
type kind struct {
	piece    int
	mirror   bool
	twofold  bool // each placement cuts both hands
	count    int
	variants []int // the ways it may lie
	area     wide  // twice its area
}

// A variant is one way a kind may lie: how it is turned, its corners with the
// corner of their rectangle at the origin, how much room that takes, and, once
// divided, the convex parts that it is cut into.
type variant struct {
	kind       int
	quarters   int
	mirror     bool
	fold       bool   // must lie at 0 across
	set        int    // the set of notches that it is matched by, from 1; 0: none
	off        vertex // what is added to its place for the place of its set in the repeat
	centred    bool   // its place across is centre and whole halves of the repeat
	centre     int64
	pts        []vertex
	wide, long int64
	parts      [][]vertex
}

// flipped reports whether the outline is mirrored before it is turned.
func (v *variant) flipped() bool { return v.mirror != (v.fold && v.quarters == 2) }

// divide cuts all outlines into convex parts; false if ctx is done before. What is
// plainer than an outline and holds it stands for it.
func (n *nest) divide(ctx context.Context) bool {
	for _, flaw := range n.barred {
		if ctx.Err() != nil {
			return false
		}
		n.flaws = append(n.flaws, convex(flaw))
	}
	type hand struct {
		piece   int
		flipped bool
	}
	outer, cut := map[int][]vertex{}, map[hand][][]vertex{}
	for i := range n.variants {
		v := &n.variants[i]
		k := &n.kinds[v.kind]
		one := hand{k.piece, v.flipped()}
		if _, known := outer[k.piece]; !known {
			if ctx.Err() != nil {
				return false
			}
			outer[k.piece] = plain(ctx, n.drawn[k.piece])
		}
		if _, known := cut[one]; !known {
			if ctx.Err() != nil {
				return false
			}
			cut[one] = convex(turned(outer[k.piece], one.flipped, 0))
		}
		v.parts = spun(cut[one], v.quarters)
	}
	return true
}

// same reports whether two outlines are the same, wherever they begin.
func same(a, b []vertex) bool {
	if len(a) != len(b) {
		return false
	}
	at := slices.Index(b, a[0])
	if at < 0 {
		return false
	}
	for i, v := range a {
		if b[(at+i)%len(b)] != v {
			return false
		}
	}
	return true
}

// least finds a length that no lay is shorter than: all the area over the width,
// or the longest piece the way it is shortest.
func (n *nest) least() {
	if n.gap == 0 {
		var sum wide
		for _, item := range n.items {
			sum = sum.add(n.kinds[item].area)
		}
		if q, rest := sum.over(2 * n.wide); rest {
			n.bound = q + 1
		} else {
			n.bound = q
		}
	}
	for _, k := range n.kinds {
		short := int64(-1)
		for _, v := range k.variants {
			if l := n.variants[v].long; short < 0 || l < short {
				short = l
			}
		}
		n.bound = max(n.bound, short)
	}
}

// convex cuts a simple outline into convex parts between its own corners: the
// triangles, joined across every side where that leaves no hollow.
func convex(pts []vertex) [][]vertex {
	ts := triangles(pts)
	parts := make([][]vertex, len(ts))
	type edge struct{ a, b vertex }
	owner := make(map[edge]int, 3*len(ts))
	var shared []edge
	for i := range ts {
		parts[i] = ts[i][:]
		for k, a := range ts[i] {
			b := ts[i][(k+1)%3]
			owner[edge{a, b}] = i
			if _, both := owner[edge{b, a}]; both {
				shared = append(shared, edge{a, b})
			}
		}
	}
	slices.SortFunc(shared, func(p, q edge) int { // the longest first
		return length2(q.a, q.b).sub(length2(p.a, p.b)).sign()
	})
	into := make([]int, len(ts))
	for i := range into {
		into[i] = i
	}
	find := func(i int) int {
		for into[i] != i {
			i = into[i]
		}
		return i
	}
	for _, e := range shared {
		p, q := find(owner[e]), find(owner[edge{e.b, e.a}])
		if p == q {
			continue
		}
		if joined, ok := join(parts[p], parts[q], e.a, e.b); ok {
			parts[p], parts[q], into[q] = joined, nil, p
		}
	}
	return slices.DeleteFunc(parts, func(p []vertex) bool { return p == nil })
}

func length2(a, b vertex) wide {
	return times(b.x-a.x, b.x-a.x).add(times(b.y-a.y, b.y-a.y))
}

// join joins p and q, which share the side from a to b as p goes round it; false
// where that would leave a hollow.
func join(p, q []vertex, a, b vertex) ([]vertex, bool) {
	i, j := slices.Index(p, a), slices.Index(q, b)
	if i < 0 || j < 0 || p[(i+1)%len(p)] != b || q[(j+1)%len(q)] != a {
		return nil, false
	}
	out := make([]vertex, 0, len(p)+len(q)-2)
	for k := range len(p) - 1 { // from b round to the one before a
		out = append(out, p[(i+1+k)%len(p)])
	}
	for k := range len(q) - 1 { // from a round to the one before b
		out = append(out, q[(j+1+k)%len(q)])
	}
	for k, v := range out {
		if side(out[(k+len(out)-1)%len(out)], v, out[(k+1)%len(out)]) < 0 {
			return nil, false
		}
	}
	return out, true
}

// difference is the convex outline of all b's places in which it meets a, both
// convex: a's corners less b's, and gap more to all four sides. With b's origin
// strictly inside it the two overlap.
func difference(a, b []vertex, gap int64) []vertex {
	neg := make([]vertex, len(b))
	for i, v := range b {
		neg[i] = vertex{-v.x, -v.y}
	}
	out := minkowski(a, neg)
	if gap > 0 {
		out = minkowski(out, []vertex{{-gap, -gap}, {gap, -gap}, {gap, gap}, {-gap, gap}})
	}
	return out
}

// minkowski is the sum of two convex outlines: their edges in order of
// direction.
func minkowski(a, b []vertex) []vertex {
	i0, j0 := lowest(a), lowest(b)
	at := func(p []vertex, k int) vertex { return p[k%len(p)] }
	out := make([]vertex, 0, len(a)+len(b))
	put := func(v vertex) {
		if k := len(out); k >= 2 && side(out[k-2], out[k-1], v) == 0 {
			out[k-1] = v
			return
		}
		out = append(out, v)
	}
	for i, j := 0, 0; i < len(a) || j < len(b); {
		pa, pb := at(a, i0+i), at(b, j0+j)
		put(vertex{pa.x + pb.x, pa.y + pb.y})
		ea, eb := at(a, i0+i+1), at(b, j0+j+1)
		s := times(ea.x-pa.x, eb.y-pb.y).sub(times(ea.y-pa.y, eb.x-pb.x)).sign()
		if j == len(b) || i < len(a) && s > 0 {
			i++
		} else if i == len(a) || s < 0 {
			j++
		} else {
			i++
			j++
		}
	}
	if k := len(out); k > 2 && side(out[k-2], out[k-1], out[0]) == 0 {
		out = out[:k-1]
	}
	return out
}

// lowest is the index of the lowest corner, the leftmost of these.
func lowest(p []vertex) int {
	low := 0
	for i, v := range p {
		if cmp.Or(cmp.Compare(v.y, p[low].y), cmp.Compare(v.x, p[low].x)) < 0 {
			low = i
		}
	}
	return low
}

// shadow is which whole numbers x, from lo to hi, are strictly inside a convex
// outline at height y; none where lo is more than hi. With along it is which y at
// the given x.
func shadow(pts []vertex, at int64, along bool) (lo, hi int64) {
	lo, hi = 1, 0
	found := 0
	for i, a := range pts {
		b := pts[(i+1)%len(pts)]
		if along {
			a, b = vertex{a.y, a.x}, vertex{b.y, b.x}
		}
		if a.y == b.y || min(a.y, b.y) > at || max(a.y, b.y) < at {
			continue
		}
		d := b.y - a.y
		num := times(b.x-a.x, at-a.y)
		if d < 0 {
			d, num = -d, wide{}.sub(num)
		}
		q, rest := num.over(d)
		q += a.x // the crossing is q, or between q and the next
		from, to := q+1, q-1
		if rest {
			to = q
		}
		if found == 0 {
			lo, hi = from, to
		} else {
			lo, hi = min(lo, from), max(hi, to)
		}
		found++
	}
	low, high := corners(pts)
	if along {
		low, high = vertex{low.y, low.x}, vertex{high.y, high.x}
	}
	if found == 0 || at <= low.y || at >= high.y {
		return 1, 0
	}
	return lo, hi
}
