package layout

import (
	"cmp"
	"context"
	"math"
	"slices"
)

// The bounds on what a table of the search may hold.
const (
	maxEdges = 5_000_000   // edges of all convex sums
	maxMade  = 500_000_000 // edges made anew for a first lay
	asked    = 200         // pairings that a piece asks for in it, about
	rasterAt = 6           // a pairing of more sums than this has a raster
	cells    = 32          // cells of a raster, each way
	deepest  = 5           // sums that a cell holds, the deepest
)

// A line is one edge of a convex sum: the distance inside it of a place (x, y) is
// c - nx*x - ny*y.
type line struct{ nx, ny, c float64 }

// A sum is where two convex parts overlap, by the place of the one as seen from
// the other.
type sum struct {
	lox, loy, hix, hiy float64
	lines              []line
	pts                []vertex
	lo, hi             vertex // the same bounds, exactly
}

// depth is how far a place is inside the sum, not more than 0 if outside.
func (s *sum) depth(x, y float64) float64 {
	if x <= s.lox || x >= s.hix || y <= s.loy || y >= s.hiy {
		return 0
	}
	best := math.MaxFloat64
	for i := range s.lines {
		l := &s.lines[i]
		d := l.c - float64(l.nx*x) - float64(l.ny*y)
		if d <= 0 {
			return 0
		}
		if d < best {
			best = d
		}
	}
	return best
}

// A pairing is where two variants overlap: in any of the sums of their parts.
type pairing struct {
	lox, loy, hix, hiy float64
	lo, hi             vertex // the same bounds, exactly
	sums               []sum
	raster             [][]uint16 // which sums meet a cell, row by row; nil for a pairing of few
	perX, perY         float64    // cells to the step
}

// depth is how far the second variant's place is inside the deepest sum.
func (p *pairing) depth(x, y float64) float64 {
	if x <= p.lox || x >= p.hix || y <= p.loy || y >= p.hiy {
		return 0
	}
	best := 0.0
	if p.raster == nil {
		for i := range p.sums {
			if d := p.sums[i].depth(x, y); d > best {
				best = d
			}
		}
		return best
	}
	cx, cy := int(float64((x-p.lox)*p.perX)), int(float64((y-p.loy)*p.perY))
	for _, i := range p.raster[min(cy, cells-1)*cells+min(cx, cells-1)] {
		if d := p.sums[i].depth(x, y); d > best {
			best = d
		}
	}
	return best
}

// A table holds the pairings of a nest, made when first asked for. Where they are
// too many to hold they are made anew each time, which is good enough for a first
// lay.
type table struct {
	n        *nest
	pairings []*pairing // by first and second variant; nil where they are too many to hold
	margin   float64
}

func newTable(n *nest) *table {
	t := &table{n: n, margin: 2 + float64(n.wide)*1e-8}
	if n.affordable() {
		t.pairings = make([]*pairing, len(n.variants)*len(n.variants))
	}
	return t
}

// at is the pairing of a fixed variant a with b, whose place is counted from
// that of a.
func (t *table) at(a, b int) *pairing {
	if t.pairings == nil {
		return t.pair(&t.n.variants[a], &t.n.variants[b])
	}
	p := t.pairings[a*len(t.n.variants)+b]
	if p == nil {
		p = t.pair(&t.n.variants[a], &t.n.variants[b])
		t.pairings[a*len(t.n.variants)+b] = p
	}
	return p
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

// affordable reports whether the edges of all sums are not too many to hold.
func (n *nest) affordable() bool { return n.edges() <= maxEdges }

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
	p := &pairing{lox: math.MaxFloat64, loy: math.MaxFloat64, hix: -math.MaxFloat64, hiy: -math.MaxFloat64}
	p.sums = make([]sum, 0, len(a.parts)*len(b.parts))
	for _, pa := range a.parts {
		for _, pb := range b.parts {
			s := newSum(difference(pa, pb, t.n.gap), t.margin)
			p.lox, p.loy = min(p.lox, s.lox), min(p.loy, s.loy)
			p.hix, p.hiy = max(p.hix, s.hix), max(p.hiy, s.hiy)
			if len(p.sums) == 0 {
				p.lo, p.hi = s.lo, s.hi
			}
			p.lo = vertex{min(p.lo.x, s.lo.x), min(p.lo.y, s.lo.y)}
			p.hi = vertex{max(p.hi.x, s.hi.x), max(p.hi.y, s.hi.y)}
			p.sums = append(p.sums, s)
		}
	}
	if t.pairings != nil && len(p.sums) > rasterAt && len(p.sums) < 1<<16 {
		p.draw()
	}
	return p
}

// newSum makes a sum of its outline. The floating side of it is larger by a
// margin on all sides, so that what is apart there is apart on the grid too.
func newSum(pts []vertex, margin float64) sum {
	lo, hi := corners(pts)
	s := sum{lox: float64(lo.x) - margin, loy: float64(lo.y) - margin, hix: float64(hi.x) + margin, hiy: float64(hi.y) + margin, pts: pts, lo: lo, hi: hi}
	s.lines = make([]line, 0, len(pts))
	for i, a := range pts {
		b := pts[(i+1)%len(pts)]
		ex, ey := float64(b.x-a.x), float64(b.y-a.y)
		size := math.Sqrt(float64(ex*ex) + float64(ey*ey))
		l := line{nx: ey / size, ny: -ex / size}
		l.c = float64(l.nx*float64(a.x)) + float64(l.ny*float64(a.y)) + margin
		s.lines = append(s.lines, l)
	}
	// The edges that cut off most come first: every other one.
	for i := 1; i < len(s.lines)/2; i += 2 {
		j := i + len(s.lines)/2
		s.lines[i], s.lines[j] = s.lines[j], s.lines[i]
	}
	return s
}

// draw makes the raster: for each cell the sums that meet it, the deepest first
// and no more of those that hold all of it than are of use.
func (p *pairing) draw() {
	w, h := (p.hix-p.lox)/cells, (p.hiy-p.loy)/cells
	p.perX, p.perY = 1/w, 1/h
	half := math.Sqrt(float64(w*w)+float64(h*h)) / 2
	p.raster = make([][]uint16, cells*cells)
	type met struct {
		sum uint16
		d   float64
	}
	all := make([][]met, cells*cells)
	for i := range p.sums {
		s := &p.sums[i]
		x0, x1 := int((s.lox-p.lox)/w), min(int((s.hix-p.lox)/w), cells-1)
		y0, y1 := int((s.loy-p.loy)/h), min(int((s.hiy-p.loy)/h), cells-1)
		for cy := y0; cy <= y1; cy++ {
			for cx := x0; cx <= x1; cx++ {
				mx, my := p.lox+float64((float64(cx)+0.5)*w), p.loy+float64((float64(cy)+0.5)*h)
				d := math.MaxFloat64
				for _, l := range s.lines {
					d = min(d, l.c-float64(l.nx*mx)-float64(l.ny*my))
				}
				if d > -half {
					all[cy*cells+cx] = append(all[cy*cells+cx], met{uint16(i), d})
				}
			}
		}
	}
	for c, list := range all {
		slices.SortFunc(list, func(a, b met) int { return cmp.Or(cmp.Compare(b.d, a.d), cmp.Compare(a.sum, b.sum)) })
		for k, m := range list {
			if k >= deepest && list[0].d > half {
				break // the deepest hold all of the cell
			}
			p.raster[c] = append(p.raster[c], m.sum)
		}
	}
}

// near reports whether the rectangles of two seats, the gap added, overlap:
// otherwise nothing of them does.
func (n *nest) near(a, b seat) bool {
	va, vb := &n.variants[a.variant], &n.variants[b.variant]
	return a.x < b.x+vb.wide+n.gap && b.x < a.x+va.wide+n.gap && a.y < b.y+vb.long+n.gap && b.y < a.y+va.long+n.gap
}
