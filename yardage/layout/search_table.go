package layout

import "context"

// The bounds on what a table of the search may hold.
const (
	maxPairings = 1 << 18     // pairings
	maxEdges    = 5_000_000   // edges of all convex sums
	maxMade     = 500_000_000 // edges made anew for a first lay
	asked       = 200         // pairings that a piece asks for in it, about
	maxCells    = 1 << 23     // cells of all charts
	fineChart   = 32          // cells of a chart, each way
	coarseChart = 4
)

// A sum is where two convex parts overlap, by the place of the one as seen from
// the other.
type sum struct {
	pts    []vertex
	lo, hi vertex
}

// A frontier is within which places of a variant, as seen from another, the two may
// overlap.
type frontier struct{ lox, loy, hix, hiy float64 }

// A pairing is where two variants overlap: in any of the sums of their parts.
type pairing struct {
	frontier
	lo, hi vertex // the same bounds, exactly
	sums   []sum
	chart
}

// A table holds the pairings of a nest, made when first asked for. Where they are
// too many to hold they are made anew each time, which is good enough for a first
// lay.
type table struct {
	n        *nest
	pairings []*pairing // by the variant that moves, then the fixed one; nil where they are too many to hold
	margin   float64
	side     int // cells of a chart, each way
}

func newTable(n *nest) *table {
	t := &table{n: n, margin: 2 + float64(n.wide)*1e-8}
	if n.affordable() {
		t.pairings = make([]*pairing, len(n.variants)*len(n.variants))
		t.side = fineChart
		for t.side > coarseChart && t.side*t.side*len(t.pairings) > maxCells {
			t.side /= 2
		}
	}
	return t
}

// at is the pairing of a fixed variant a with b, whose place is counted from
// that of a.
func (t *table) at(a, b int) *pairing {
	if t.pairings == nil {
		return t.pair(&t.n.variants[a], &t.n.variants[b])
	}
	k := b*len(t.n.variants) + a
	p := t.pairings[k]
	if p == nil {
		p = t.pair(&t.n.variants[a], &t.n.variants[b])
		t.pairings[k] = p
	}
	return p
}

// against are the pairings of all fixed variants with v, once the table is full.
func (t *table) against(v int) []*pairing {
	k := len(t.n.variants)
	return t.pairings[v*k : v*k+k]
}

// fill makes all pairings, so that the table may be shared; false if ctx is done
// before.
func (t *table) fill(ctx context.Context) bool {
	if t.pairings == nil {
		return ctx.Err() == nil
	}
	for a := range t.n.variants {
		for b := range t.n.variants {
			t.at(a, b)
		}
		if ctx.Err() != nil {
			return false
		}
	}
	return true
}

// affordable reports whether all pairings are not too many to hold, nor the edges
// of their sums.
func (n *nest) affordable() bool {
	return len(n.variants)*len(n.variants) <= maxPairings && n.edges() <= maxEdges
}

// bearable reports whether a first lay is not too dear, where every pairing is
// made anew each time it is asked for.
func (n *nest) bearable() bool {
	k := float64(len(n.variants))
	return n.affordable() || n.edges()/(k*k)*float64(len(n.items))*asked <= maxMade
}

// edges is how many edges the sums of all pairings have.
func (n *nest) edges() float64 {
	var parts, edges float64
	for _, v := range n.variants {
		parts += float64(len(v.parts))
		for _, p := range v.parts {
			edges += float64(len(p))
		}
	}
	return 2 * parts * edges
}

func (t *table) pair(a, b *variant) *pairing {
	p := &pairing{sums: make([]sum, 0, len(a.parts)*len(b.parts))}
	for _, pa := range a.parts {
		for _, pb := range b.parts {
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
	p.lox, p.loy = float64(p.lo.x)-t.margin, float64(p.lo.y)-t.margin
	p.hix, p.hiy = float64(p.hi.x)+t.margin, float64(p.hi.y)+t.margin
	if t.pairings != nil {
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
