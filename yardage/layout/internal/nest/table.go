package nest

import "context"

// The bounds on what a table of the search may hold.
const (
	maxViews    = 1 << 18     // pairs of variants
	maxEdges    = 3_000_000   // edges of all convex sums
	maxMade     = 500_000_000 // edges made anew for a first lay
	asked       = 200         // pairings that a piece asks for in it, about
	maxHeld     = 200_000     // sums of the pairings that are made anew, at most, before all are dropped
	maxCells    = 1 << 23     // cells of all charts
	fineChart   = 64          // cells of a chart, each way
	coarseChart = 4
)

// A sum is where two convex parts overlap, by the place of the one as seen from
// the other.
type sum struct {
	pts    []vertex
	lo, hi vertex
}

// A pairing is where two variants overlap: in any of the sums of their parts.
type pairing struct {
	lo, hi vertex // no sum reaches farther
	sums   []sum
	chart
}

// A table holds the pairings of a nest, made when first asked for. Where they are
// too many to hold they are made anew each time, which is good enough for a first
// lay.
type table struct {
	n      *Nest
	views  []view   // by the variant that moves, then the fixed one; nil where they are too many to hold
	images [][4]int // by variant: which is the same turned by 0 to 3 quarters, or -1
	margin float64
	side   int // cells of a chart, each way

	made map[[2]int]*view // of the pairings that are made anew, those made last; nil: none
	held int              // how many sums they have
}

func newTable(n *Nest) *table {
	t := &table{n: n, margin: 2 + float64(n.Wide)*1e-8, side: fineChart}
	size := len(n.Variants) * len(n.Variants)
	if size > maxViews {
		return t
	}
	t.images = n.images()
	pairings, edges := t.size()
	if edges <= maxEdges {
		t.views = make([]view, size)
	}
	for t.side > coarseChart && t.side*t.side*pairings > maxCells {
		t.side /= 2
	}
	return t
}

// at is the view of a fixed variant a with b, whose place is counted from that of
// a.
func (t *table) at(a, b int) *view {
	if t.views == nil {
		return t.remade(a, b)
	}
	v := &t.views[b*len(t.n.Variants)+a]
	if v.pairing == nil {
		*v = t.view(a, b)
	}
	return v
}

// remade is the view of a table that does not hold all of them.
func (t *table) remade(a, b int) *view {
	if v := t.made[[2]int{a, b}]; v != nil {
		return v
	}
	v := &view{c: 1, pairing: t.pair(a, b)}
	if t.made != nil {
		if t.held += len(v.sums); t.held > maxHeld {
			clear(t.made)
			t.held = len(v.sums)
		}
		t.made[[2]int{a, b}] = v
	}
	return v
}

// against are the views of all fixed variants with v, once the table is full.
func (t *table) against(v int) []view {
	k := len(t.n.Variants)
	return t.views[v*k : v*k+k]
}

// fill makes all pairings, so that the table may be shared; false if ctx is done
// before.
func (t *table) fill(ctx context.Context) bool {
	if t.views == nil {
		return ctx.Err() == nil
	}
	for a := range t.n.Variants {
		for b := range t.n.Variants {
			if ctx.Err() != nil {
				return false
			}
			t.at(a, b)
		}
	}
	return true
}

// size is how many pairings there are that are not another, turned, and how many
// edges their sums have.
func (t *table) size() (pairings int, edges float64) {
	vs := t.n.Variants
	for a := range vs {
		for b := range vs {
			if like := t.like(a, b); like.fixed == a && like.moving == b {
				pairings++
				edges += vs[a].edges(&vs[b])
			}
		}
	}
	return pairings, edges
}

// edges is how many edges the sums of two variants have, about.
func (v *Variant) edges(o *Variant) float64 {
	return float64(len(v.parts)*o.corners()) + float64(len(o.parts)*v.corners())
}

// corners is how many corners the parts have.
func (v *Variant) corners() int {
	n := 0
	for _, p := range v.parts {
		n += len(p)
	}
	return n
}

// bearable reports whether a first lay is not too dear, where every pairing is
// made anew each time it is asked for.
func (t *table) bearable() bool {
	if t.views != nil {
		return true
	}
	var parts, corners float64
	for i := range t.n.Variants {
		parts += float64(len(t.n.Variants[i].parts))
		corners += float64(t.n.Variants[i].corners())
	}
	k := float64(len(t.n.Variants))
	return 2*parts*corners/(k*k)*float64(len(t.n.Items))*asked <= maxMade
}

// pair makes the pairing of a fixed variant a with b.
func (t *table) pair(a, b int) *pairing {
	va, vb := &t.n.Variants[a], &t.n.Variants[b]
	p := &pairing{sums: make([]sum, 0, len(va.parts)*len(vb.parts))}
	for _, pa := range va.parts {
		for _, pb := range vb.parts {
			pts := difference(pa, pb, t.n.Gap)
			lo, hi := corners(pts)
			if len(p.sums) == 0 {
				p.lo, p.hi = lo, hi
			}
			p.lo = vertex{X: min(p.lo.X, lo.X), Y: min(p.lo.Y, lo.Y)}
			p.hi = vertex{X: max(p.hi.X, hi.X), Y: max(p.hi.Y, hi.Y)}
			p.sums = append(p.sums, sum{pts, lo, hi})
		}
	}
	if t.views != nil {
		p.draw(t.margin, t.side)
	}
	return p
}

// near reports whether the rectangles of two seats, the gap added, overlap:
// otherwise nothing of them does.
func (n *Nest) near(a, b Seat) bool {
	va, vb := &n.Variants[a.Variant], &n.Variants[b.Variant]
	return a.X < b.X+vb.Wide+n.Gap && b.X < a.X+va.Wide+n.Gap && a.Y < b.Y+vb.Long+n.Gap && b.Y < a.Y+va.Long+n.Gap
}
