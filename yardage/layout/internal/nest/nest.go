// Package nest searches for short lays of pieces: whole numbers in, whole numbers out.
// Rectangles are laid by a [Grid], outlines by a [Nest]. Two searches go on side by
// side: each takes a first lay, shortens the cloth a little, lets the pieces overlap,
// and moves them apart again; a pair that will not part weighs more each time. Places
// are weighed by approximation, so a lay that is found here counts only once it is
// proven elsewhere. NOTES.md tells what was tried.
package nest

import (
	"cmp"
	"context"
	"slices"

	"example.com/clothyard/yardage/layout/internal/whole"
)

// A Nest holds pieces to be laid, and the cloth: every corner and the gap lie on a
// grid whose steps are so small that the cloth is at least Fineness of them wide, so
// that a piece may lie where no corner of another is.
type Nest struct {
	Coarse   int64      // steps of this grid to one of the coarsest that all corners lie on
	Wide     int64      // width between the selvedges, rounded down
	Gap      int64      // between pieces, across and along
	Kinds    []Kind     // what is to be laid
	Variants []Variant  // the ways all kinds may lie
	Items    []int      // the kind of every piece, copies counted, by Piece and Copy
	drawn    [][]vertex // the outline of every piece, neither mirrored nor turned
	plainer  [][]vertex // the same, as plain as they stand for it
	Bound    int64      // no lay is shorter

	Barred           [][]vertex             // the outline of each flaw, from the first place across and along
	flaws            [][][]vertex           // its convex parts, once divided
	RepeatX, RepeatY int64                  // 0: none
	Sets             int                    // how many sets of notches are matched, each by itself
	Phases           [][]int64              // by set, from 1: places in the repeat across that suit all its pieces
	Given            []bool                 // by set: whether its place in the repeat is given, and then zero
	Half             int64                  // half of the repeat across, where pieces are centred; else 0
	Watch            func(end, steps int64) // is called now and then with how long the best lay is, and the steps taken; may be nil
}

const (
	// Fineness is how many steps wide the cloth is at least.
	Fineness = 1 << 20
	farthest = 1 << 60 // no place is farther, in steps
)

// A Kind is a piece, or one hand of a pair.
type Kind struct {
	Piece    int  // which one, in the order in which they were added
	Mirror   bool // the other hand
	Twofold  bool // each placement cuts both hands
	count    int
	Variants []int      // the ways it may lie
	area     whole.Wide // twice its area
}

// A Variant is one way a kind may lie: how it is turned, its corners with the
// corner of their rectangle at the origin, how much room that takes, and, once
// divided, the convex parts that it is cut into.
type Variant struct {
	kind       int
	Quarters   int    // by how many it is turned
	Mirror     bool   // mirrored before that
	Fold       bool   // must lie at 0 across
	Set        int    // the set of notches that it is matched by, from 1; 0: none
	Off        vertex // what is added to its place for the place of its set in the repeat
	Centred    bool   // its place across is centre and whole halves of the repeat
	Centre     int64  // a place across where it is centred
	pts        []vertex
	Wide, Long int64 // the room it takes
	parts      [][]vertex
}

// flipped reports whether the outline is mirrored before it is turned.
func (v *Variant) flipped() bool { return v.Mirror != (v.Fold && v.Quarters == 2) }

// divide cuts all outlines into convex parts; false if ctx is done before. What is
// plainer than an outline and holds it stands for it; the higher the level, the plainer.
func (n *Nest) divide(ctx context.Context, level int) bool {
	n.flaws = nil
	for _, flaw := range n.Barred {
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
	below := n.plainer // what was made plainer already, at the level below
	if level == 0 {
		below = n.drawn
	}
	n.plainer = slices.Clone(below)
	for i := range n.Variants {
		v := &n.Variants[i]
		k := &n.Kinds[v.kind]
		one := hand{k.Piece, v.flipped()}
		if _, known := outer[k.Piece]; !known {
			if ctx.Err() != nil {
				return false
			}
			outer[k.Piece] = plain(ctx, below[k.Piece], level)
			n.plainer[k.Piece] = outer[k.Piece]
		}
		if _, known := cut[one]; !known {
			if ctx.Err() != nil {
				return false
			}
			cut[one] = convex(turned(outer[k.Piece], one.flipped, 0))
		}
		v.parts = spun(cut[one], v.Quarters)
	}
	return true
}

// A Piece is an outline that a nest takes.
type Piece struct {
	Outline []vertex // inside on the left, the corner of its rectangle at the origin
	Times   int      // how often it is placed
	Pair    bool     // of both hands, half of the copies each
	Twofold bool     // each placement cuts two copies
	Fold    bool     // must lie at 0 across
	Half    bool     // may be turned by half
	Quarter bool     // may be turned by quarters
	Marked  bool     // has notches, so that ways which look alike are not the same
}

// Add puts a piece in, both hands of a pair, which are one kind where a
// placement cuts both.
func (n *Nest) Add(p Piece) {
	i := len(n.drawn)
	n.drawn = append(n.drawn, p.Outline)
	hands := []bool{false}
	if p.Pair && !p.Twofold {
		hands = append(hands, true)
	}
	first := len(n.Kinds)
	for _, mirror := range hands {
		k := Kind{Piece: i, Mirror: mirror, Twofold: p.Twofold, count: p.Times / len(hands), area: twiceArea(p.Outline)}
		for q := range 8 {
			if q >= 4 && !(p.Twofold && p.Pair) {
				break
			}
			n.way(&k, &p, mirror || q >= 4, q&3)
		}
		n.Kinds = append(n.Kinds, k)
	}
	for c := range p.Times {
		n.Items = append(n.Items, first+c%len(hands))
	}
}

// way adds one way a kind may lie, unless it may not or is one of the others.
func (n *Nest) way(k *Kind, p *Piece, mirror bool, q int) {
	if q == 2 && !p.Half || q&1 == 1 && !p.Quarter {
		return
	}
	v := Variant{kind: len(n.Kinds), Quarters: q, Mirror: mirror, Fold: p.Fold}
	v.pts = turned(p.Outline, v.flipped(), q)
	_, hi := corners(v.pts)
	v.Wide, v.Long = hi.X, hi.Y
	if v.Wide > n.Wide || !p.Marked && slices.ContainsFunc(k.Variants, func(o int) bool { return same(n.Variants[o].pts, v.pts) }) {
		return
	}
	k.Variants = append(k.Variants, len(n.Variants))
	n.Variants = append(n.Variants, v)
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

// Least finds a length that no lay is shorter than: all the area over the width,
// or the longest piece the way it is shortest.
func (n *Nest) Least() {
	if n.Gap == 0 {
		var sum whole.Wide
		for _, item := range n.Items {
			sum = sum.Add(n.Kinds[item].area)
		}
		if q, rest := sum.Over(2 * n.Wide); rest {
			n.Bound = q + 1
		} else {
			n.Bound = q
		}
	}
	for _, k := range n.Kinds {
		short := int64(-1)
		for _, v := range k.Variants {
			if l := n.Variants[v].Long; short < 0 || l < short {
				short = l
			}
		}
		n.Bound = max(n.Bound, short)
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
		return length2(q.a, q.b).Sub(length2(p.a, p.b)).Sign()
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

func length2(a, b vertex) whole.Wide {
	return whole.Times(b.X-a.X, b.X-a.X).Add(whole.Times(b.Y-a.Y, b.Y-a.Y))
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
		neg[i] = vertex{X: -v.X, Y: -v.Y}
	}
	out := minkowski(a, neg)
	if gap > 0 {
		out = minkowski(out, []vertex{{X: -gap, Y: -gap}, {X: gap, Y: -gap}, {X: gap, Y: gap}, {X: -gap, Y: gap}})
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
		put(vertex{X: pa.X + pb.X, Y: pa.Y + pb.Y})
		ea, eb := at(a, i0+i+1), at(b, j0+j+1)
		s := whole.Times(ea.X-pa.X, eb.Y-pb.Y).Sub(whole.Times(ea.Y-pa.Y, eb.X-pb.X)).Sign()
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
		if cmp.Or(cmp.Compare(v.Y, p[low].Y), cmp.Compare(v.X, p[low].X)) < 0 {
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
			a, b = vertex{X: a.Y, Y: a.X}, vertex{X: b.Y, Y: b.X}
		}
		if a.Y == b.Y || min(a.Y, b.Y) > at || max(a.Y, b.Y) < at {
			continue
		}
		d := b.Y - a.Y
		num := whole.Times(b.X-a.X, at-a.Y)
		if d < 0 {
			d, num = -d, whole.Wide{}.Sub(num)
		}
		q, rest := num.Over(d)
		q += a.X // the crossing is q, or between q and the next
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
		low, high = vertex{X: low.Y, Y: low.X}, vertex{X: high.Y, Y: high.X}
	}
	if found == 0 || at <= low.Y || at >= high.Y {
		return 1, 0
	}
	return lo, hi
}
