package nest

import (
	"cmp"
	"encoding/binary"
	"math"
	"slices"
)

// roughest is how deep any place is at most, in the units of a cell.
const roughest = math.MaxUint8 - 1

// listEach is how long a list is at least, in the mean of all cells, for a look at it
// to count as more than a step.
const listEach = 128

// A line is one edge of a convex sum: the distance inside it of a place (x, y) is
// c - nx*x - ny*y.
type line struct{ nx, ny, c float64 }

// A chart tells for every part of a pairing what can be deepest there, so that
// few lines are looked at.
type chart struct {
	lox, loy, hix, hiy float64 // within which places the two may overlap
	lines              []line
	side               int      // cells, each way
	perX, perY         float64  // cells to the step
	cell               []uint16 // row by row: where the list of a cell begins
	rough              []uint8  // the same: 0 where nothing overlaps, else how deep every place of the cell is at least, and 1
	unit               float64  // of that
	extra              int64    // steps that a look takes besides one, where lists are very long
	lists              []uint32 // for each sum that meets the cell how many of its lines matter there, and which; 0 ends a list
}

// deepest is how far a place is inside the deepest sum, not more than 0 if it is
// in none, and the edge of that sum that is nearest: the way out.
func (p *chart) deepest(x, y float64) (best float64, edge *line) {
	cell, ok := p.find(x, y)
	if !ok {
		return 0, nil
	}
	return p.among(cell, x, y)
}

// find is the cell of a place; false where it has none, and nothing overlaps.
func (p *chart) find(x, y float64) (cell int, ok bool) {
	if x <= p.lox || x >= p.hix || y <= p.loy || y >= p.hiy {
		return 0, false
	}
	cx, cy := int(float64((x-p.lox)*p.perX)), int(float64((y-p.loy)*p.perY))
	return min(cy, p.side-1)*p.side + min(cx, p.side-1), true
}

// among is deepest for a place in a cell.
func (p *chart) among(cell int, x, y float64) (best float64, edge *line) {
	at := int(p.cell[cell])
next:
	for {
		n := int(p.lists[at])
		if n == 0 {
			return best, edge
		}
		ids := p.lists[at+1 : at+1+n]
		at += 1 + n
		d := math.MaxFloat64
		var nearest *line
		for _, id := range ids {
			l := &p.lines[id]
			in := l.c - float64(l.nx*x) - float64(l.ny*y)
			if in <= best {
				continue next
			}
			if in < d {
				d, nearest = in, l
			}
		}
		best, edge = d, nearest
	}
}

// draw makes the chart of a pairing. The lines are farther out than the edges by
// a margin, so that what is apart there is apart on the grid too.
func (p *pairing) draw(margin float64, side int) {
	p.lox, p.loy = float64(p.lo.X)-margin, float64(p.lo.Y)-margin
	p.hix, p.hiy = float64(p.hi.X)+margin, float64(p.hi.Y)+margin
	p.unit = min(p.hix-p.lox, p.hiy-p.loy) / 2 / roughest // nothing is deeper than half of that
	var ids []int
	var all []face
	for i := range p.sums {
		pts := p.sums[i].pts
		from := len(p.lines)
		for k, a := range pts {
			b := pts[(k+1)%len(pts)]
			ex, ey := float64(b.X-a.X), float64(b.Y-a.Y)
			size := math.Sqrt(float64(ex*ex) + float64(ey*ey))
			l := line{nx: ey / size, ny: -ex / size}
			l.c = float64(l.nx*float64(a.X)) + float64(l.ny*float64(a.Y)) + margin
			ids = append(ids, len(p.lines))
			p.lines = append(p.lines, l)
		}
		all = append(all, face{from, len(p.lines)})
	}
	for ; ; side /= 2 {
		p.side = side
		c := charter{p: &p.chart, known: make(map[string]uint16), wide: (p.hix - p.lox) / float64(side), long: (p.hiy - p.loy) / float64(side)}
		p.perX, p.perY = 1/c.wide, 1/c.long
		p.cell, p.rough, p.lists = make([]uint16, side*side), make([]uint8, side*side), []uint32{0}
		if c.divide(0, 0, side, ids, all) {
			p.extra = int64(len(p.lists) / (side * side) / listEach)
			return
		}
	}
}

// A charter makes the chart of a pairing.
type charter struct {
	p          *chart
	wide, long float64           // of a cell
	known      map[string]uint16 // the lists so far
	text       []byte
}

// A face is what matters of one sum in some part of a chart: which of its lines,
// as a part of a list.
type face struct{ from, to int }

// divide works out what matters in a square of cells, of what may, and goes on
// with its quarters; false where the lists grow too long.
func (c *charter) divide(cx, cy, size int, ids []int, faces []face) bool {
	p := c.p
	half := float64(size) / 2
	mx, my := p.lox+float64((float64(cx)+half)*c.wide), p.loy+float64((float64(cy)+half)*c.long)
	rx, ry := float64(half*c.wide*1.00001), float64(half*c.long*1.00001)
	reach := func(l *line) (low, high float64) {
		mid := l.c - float64(l.nx*mx) - float64(l.ny*my)
		r := float64(math.Abs(l.nx)*rx) + float64(math.Abs(l.ny)*ry)
		return mid - r, mid + r
	}
	kept := make([]int, 0, len(ids))
	some := make([]face, 0, len(faces))
	highs := make([]float64, 0, len(faces))
	floor := 0.0 // the deepest sum is nowhere less deep than this
	for _, f := range faces {
		low, high := math.MaxFloat64, math.MaxFloat64
		for _, id := range ids[f.from:f.to] {
			lo, hi := reach(&p.lines[id])
			low, high = min(low, lo), min(high, hi)
		}
		if high <= 0 {
			continue
		}
		from := len(kept)
		for _, id := range ids[f.from:f.to] {
			if lo, _ := reach(&p.lines[id]); lo <= high {
				kept = append(kept, id)
			}
		}
		some, highs = append(some, face{from, len(kept)}), append(highs, high)
		floor = max(floor, low)
	}
	order := make([]int, 0, len(some))
	for k := range some {
		if highs[k] >= floor {
			order = append(order, k)
		}
	}
	// The deepest first: the others are then soon done with.
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(highs[b], highs[a]) })
	faces = make([]face, len(order))
	for i, k := range order {
		faces[i] = some[k]
	}
	if len(faces) == 0 {
		return true
	}
	if size > 1 {
		size /= 2
		return c.divide(cx, cy, size, kept, faces) && c.divide(cx+size, cy, size, kept, faces) &&
			c.divide(cx, cy+size, size, kept, faces) && c.divide(cx+size, cy+size, size, kept, faces)
	}
	c.text = c.text[:0]
	put := func(n int) { c.text = binary.LittleEndian.AppendUint32(c.text, uint32(n)) }
	for _, f := range faces {
		put(f.to - f.from)
		for _, id := range kept[f.from:f.to] {
			put(id)
		}
	}
	at, ok := c.known[string(c.text)]
	if !ok {
		if len(p.lists) > math.MaxUint16 {
			return false // a single list begins at 1
		}
		at = uint16(len(p.lists))
		for k := 0; k < len(c.text); k += 4 {
			p.lists = append(p.lists, binary.LittleEndian.Uint32(c.text[k:]))
		}
		p.lists = append(p.lists, 0)
		c.known[string(c.text)] = at
	}
	p.cell[cy*p.side+cx], p.rough[cy*p.side+cx] = at, 1+uint8(min(floor/p.unit, roughest))
	return true
}
