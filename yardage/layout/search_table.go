package layout

import "context"

// The bounds on what a table of the search may hold.
const (
	maxViews    = 1 << 18     // pairs of variants
	maxEdges    = 3_000_000   // edges of all convex sums
	maxMade     = 500_000_000 // edges made anew for a first lay
	asked       = 200         // pairings that a piece asks for in it, about
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
	n      *nest
	views  []view   // by the variant that moves, then the fixed one; nil where they are too many to hold
	images [][4]int // by variant: which is the same turned by 0 to 3 quarters, or -1
	margin float64
	side   int // cells of a chart, each way
}

func newTable(n *nest) *table {
	t := &table{n: n, margin: 2 + float64(n.wide)*1e-8, side: fineChart}
	size := len(n.variants) * len(n.variants)
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
		return &view{c: 1, pairing: t.pair(a, b)}
	}
	v := &t.views[b*len(t.n.variants)+a]
	if v.pairing == nil {
		*v = t.view(a, b)
	}
	return v
}

// against are the views of all fixed variants with v, once the table is full.
func (t *table) against(v int) []view {
	k := len(t.n.variants)
	return t.views[v*k : v*k+k]
}

// fill makes all pairings, so that the table may be shared; false if ctx is done
// before.
func (t *table) fill(ctx context.Context) bool {
	if t.views == nil {
		return ctx.Err() == nil
	}
	for a := range t.n.variants {
		for b := range t.n.variants {
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
	vs := t.n.variants
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
func (v *variant) edges(o *variant) float64 {
	return float64(len(v.parts)*o.corners()) + float64(len(o.parts)*v.corners())
}

// corners is how many corners the parts have.
func (v *variant) corners() int {
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
	for i := range t.n.variants {
		parts += float64(len(t.n.variants[i].parts))
		corners += float64(t.n.variants[i].corners())
	}
	k := float64(len(t.n.variants))
	return 2*parts*corners/(k*k)*float64(len(t.n.items))*asked <= maxMade
}

// pair makes the pairing of a fixed variant a with b.
func (t *table) pair(a, b int) *pairing {
	va, vb := &t.n.variants[a], &t.n.variants[b]
	p := &pairing{sums: make([]sum, 0, len(va.parts)*len(vb.parts))}
	for _, pa := range va.parts {
		for _, pb := range vb.parts {
			pts := difference(pa, pb, t.n.gap)
			lo, hi := corners(pts)
			if len(p.sums) == 0 {
				p.lo, p.hi = lo, hi
			}
			p.lo = vertex{min(p.lo.x, lo.x), min(p.lo.y, lo.y)}
			p.hi = vertex{max(p.hi.x, hi.x), max(p.hi.y, hi.y)}
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
func (n *nest) near(a, b seat) bool {
	va, vb := &n.variants[a.variant], &n.variants[b.variant]
	return a.x < b.x+vb.wide+n.gap && b.x < a.x+va.wide+n.gap && a.y < b.y+vb.long+n.gap && b.y < a.y+va.long+n.gap
}
