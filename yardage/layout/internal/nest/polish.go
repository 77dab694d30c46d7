package nest

import "math"

const (
	crossings = 8     // how often the best place is left for a better one
	edgesHeld = 16    // edges that are remembered
	reach     = 3     // how far a place may be, in times of how deep the piece lies
	parallel  = 0.001 // the sine of an angle at which two edges do not meet
	clearance = 0.5   // how far outside an edge a place is, in steps
)

// A border is a line on which the piece that moves is just clear of an item: all
// places (x, y) with nx*x + ny*y = c.
type border struct {
	line
	item int
}

// polish goes downhill from a place by way of places where the piece is just
// clear of a rival, on the cloth's edge too, or of two. The least of all costs is
// at such a place, because a piece costs less the farther it is out of another,
// and no less in between.
func (e *easer) polish(i int, b *try) {
	f := b.f
	pairs := e.t.against(f.variant)
	known := e.known[:0]
	for range crossings {
		if b.cost == 0 {
			break
		}
		inside, deep := e.inside[:0], 0.0
		for j := range e.rivals(i, f.variant, b.x, b.y) {
			v := &pairs[e.lie[j].variant]
			e.steps += 1 + v.extra
			d, nx, ny := v.deepest(b.x-e.lie[j].x, b.y-e.lie[j].y)
			if d <= 0 {
				continue
			}
			deep = max(deep, d)
			at := 0
			for at < len(known) && (known[at].item != j || known[at].nx != nx || known[at].ny != ny) {
				at++
			}
			if at == len(known) {
				if at == edgesHeld {
					continue
				}
				known = append(known, border{line{nx, ny, d + float64(nx*b.x) + float64(ny*b.y) + clearance}, j})
			}
			inside = append(inside, at)
		}
		from, far := *b, deep*reach
		look := func(x, y float64) {
			x, y = f.clamp(x, y)
			if math.Abs(x-from.x) > far || math.Abs(y-from.y) > far {
				return
			}
			if c := e.at(i, f, x, y, b.cost); c < b.cost {
				b.x, b.y, b.cost = x, y, c
			}
		}
		for _, k := range inside {
			p := known[k]
			out := p.c - float64(p.nx*from.x) - float64(p.ny*from.y)
			look(from.x+float64(out*p.nx), from.y+float64(out*p.ny))
			if math.Abs(p.ny) > parallel {
				look(0, p.c/p.ny)
				look(f.wide, (p.c-float64(p.nx*f.wide))/p.ny)
			}
			if math.Abs(p.nx) > parallel {
				look(p.c/p.nx, 0)
				look((p.c-float64(p.ny*f.long))/p.nx, f.long)
			}
			for _, q := range known {
				if across := float64(p.nx*q.ny) - float64(p.ny*q.nx); math.Abs(across) > parallel {
					look((float64(p.c*q.ny)-float64(q.c*p.ny))/across, (float64(p.nx*q.c)-float64(q.nx*p.c))/across)
				}
			}
		}
		if b.cost >= from.cost {
			break
		}
	}
}
