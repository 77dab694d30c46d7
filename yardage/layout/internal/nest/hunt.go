package nest

import (
	"cmp"
	"context"
	"math"
	"math/rand/v2"
	"slices"
	"sync/atomic"
)

const (
	rounds    = 200    // rounds without getting better after which moving apart is given up
	few       = 24     // pieces that may be a puzzle
	widest    = 0.02   // by how much the cloth is shortened at most, in parts of its length
	narrowest = 0.0005 // and at least
	closest   = 0.0001 // the same for the best lay
	firstStep = 0.004  // and at first, where pieces were tossed
	roomier   = 0.01   // by how much it is lengthened for that
	tossLeast = 2      // of how many pieces that is done at once, at least
	tossMost  = 6      // and at most
)

// A hunter makes one search of its own: a first lay, then shorter ones.
type hunter struct {
	t      *table
	n      *Nest
	dice   *rand.Rand
	best   []Seat
	long   int64
	spend  int64
	done   int64   // steps besides those of the easer
	base   []Seat  // what pieces are tossed of
	now    []Seat  // what is made shorter after that, nil once it cannot be
	step   float64 // by how much
	halt   bool
	ctx    context.Context
	e      *easer
	l      *lattice // nil where there is none
	freely bool     // whether it searches off it all the same

	// Of its legs, and of the other hunter:
	number int
	leg    int64       // steps
	begun  int         // legs
	until  int64       // how many steps it has done at the end of this one
	hear   <-chan find // what the other tells
	alone  bool        // once that has ended
	tell   chan<- find
	last   *atomic.Int64 // the leg in which a lay was found that none is shorter than
}

// boxes lays all pieces as the rectangles around them.
func (n *Nest) boxes() []Seat {
	g := Grid{Wide: n.Wide + n.Gap, Gap: n.Gap, Total: len(n.Items)}
	for _, k := range n.Kinds {
		one := &n.Variants[k.Variants[0]]
		sh := Shape{wide: one.Wide + n.Gap, long: one.Long + n.Gap}
		for _, v := range k.Variants {
			sh.turn = sh.turn || (n.Variants[v].Quarters^one.Quarters)&1 == 1
		}
		g.Shapes = append(g.Shapes, sh)
	}
	for i, kind := range n.Items {
		g.Shapes[kind].Of = append(g.Shapes[kind].Of, i)
	}
	l := newLayer(g)
	l.closely = true
	q := g.queue(false)
	g.sort(q, 0)
	l.lay(q, wall)
	out := make([]Seat, len(n.Items))
	next := make([]int, len(g.Shapes))
	for _, s := range l.spots {
		k := n.Kinds[s.Shape]
		one := k.Variants[0]
		for _, v := range k.Variants {
			if (n.Variants[v].Quarters^n.Variants[one].Quarters)&1 == 1 == s.Across {
				one = v
				break
			}
		}
		out[g.Shapes[s.Shape].Of[next[s.Shape]]] = Seat{one, s.X, s.Y}
		next[s.Shape]++
	}
	return out
}

// over reports whether the search must end.
func (h *hunter) over() bool {
	done := h.done
	if h.e != nil {
		done += h.e.steps
	}
	if h.best != nil && (done >= h.spend || h.long <= h.n.Bound) || int64(h.begun) > h.last.Load() {
		return true
	}
	h.halt = h.halt || h.ctx.Err() != nil
	return h.halt
}

// past reports whether the search must end, or has done so many steps.
func (h *hunter) past(until int64) bool { return h.done+h.e.steps >= until || h.over() }

// run searches until it has done so many steps.
func (h *hunter) run(until int64) {
	if h.e == nil {
		h.first()
		if h.t.views == nil {
			h.halt = h.halt || h.done < h.spend // a first lay is all there can be
			h.spend = 0
		}
		if h.over() {
			return
		}
		h.e = newEaser(h.t, h.dice, h.over)
		h.step = widest
		h.l = newLattice(h, h.number == 0)
	}
	if h.l != nil && !h.freely && h.l.search(until) {
		return
	}
	h.explore(until)
}

// first lays all pieces one after the other. There is no lay where ctx is done
// before, or all is spent where every pairing has to be made anew.
func (h *hunter) first() {
	f := &filler{t: h.t, seats: make([]Seat, len(h.n.Items))}
	f.stop = func() bool {
		h.halt = h.halt || h.ctx.Err() != nil
		return h.halt || h.t.views == nil && f.steps >= h.spend // too dear
	}
	defer func() { h.done += f.steps }()
	tries := max(4, min(40, 4000/len(h.n.Items)))
	for _, i := range h.n.order(h.dice, h.number > 0) {
		if !f.put(i, farthest, tries, h.dice) {
			return
		}
	}
	f.press()
	h.keep(f.seats)
}

// keep makes the seats the best lay if they are shorter.
func (h *hunter) keep(seats []Seat) bool {
	end := h.n.end(seats)
	if h.best != nil && end >= h.long {
		return false
	}
	h.best, h.long = slices.Clone(seats), end
	return true
}

// explore shortens the cloth again and again and moves the pieces apart on it.
// When that goes no further it throws part of the pieces about, and goes on from
// there if that leads to a lay as short. In the next leg it goes on where it was,
// unless there is a shorter lay by then.
func (h *hunter) explore(until int64) {
	e := h.e
	if h.base == nil || h.long < h.n.end(h.base) {
		h.base, h.now = h.best, h.best
	}
	for !h.past(until) {
		if h.now == nil {
			e.take(h.base)
			e.long = float64(h.n.end(h.base)) * (1 + roomier)
			e.toss(h.tossed())
			if seats, ok := h.attempt(math.MaxInt64, rounds); ok {
				h.now = seats
				h.keep(seats)
			}
			continue
		}
		if h.number > 0 && len(h.n.Items) <= few && h.puzzle() {
			h.base, h.now = h.best, h.best
		}
		long := h.n.end(h.now)
		e.take(h.now)
		e.shorten(float64(long), float64(long)*(1-h.step))
		if seats, ok := h.attempt(long, rounds); ok {
			h.now = seats
			h.keep(seats)
			h.step = min(widest, h.step*1.5)
			continue
		}
		if h.step /= 2; h.step < narrowest && (long > h.long || h.step < closest) {
			h.step = firstStep
			if long <= h.n.end(h.base) {
				h.base = h.now
			}
			h.now = nil
		}
	}
}

// attempt moves the pieces apart on cloth as short as the easer has it, or a
// little longer if that will do and the lay comes out shorter than limit. It gives
// up after so many rounds without getting better.
func (h *hunter) attempt(limit int64, most int) ([]Seat, bool) {
	if h.e.ease(most) {
		seats, ok := h.settle()
		if !ok {
			h.e.loosen(h.e.wide == float64(h.n.Wide))
		}
		return seats, ok
	}
	if h.over() || h.e.left >= slight {
		return nil, false
	}
	return h.mend(limit)
}

// tossed is how many pieces to toss, by chance.
func (h *hunter) tossed() int { return tossLeast + h.dice.IntN(tossMost-tossLeast+1) }

// puzzle throws the pieces on the shortest cloth that could do: a few that are
// cut from one whole find back to it so, and hardly by way of longer lays. True
// where that is the best lay.
func (h *hunter) puzzle() bool {
	e := h.e
	e.take(h.best)
	e.shorten(0, 0)
	for i := range e.lie {
		e.lie[i].x, e.lie[i].y = float64(h.dice.Float64()*e.wide), float64(h.dice.Float64()*e.long)
		e.within(i)
	}
	seats, ok := h.attempt(h.long, rounds)
	return ok && h.keep(seats)
}

// shorten takes the cloth from one length to another: what lies beyond a place
// somewhere on it moves up. It is never shorter than any lay, and a little longer
// than that, so that pieces that fill it need not be in their places exactly.
func (e *easer) shorten(from, to float64) {
	e.long = max(to, float64(e.n.Bound)+e.pad)
	cut := float64(e.dice.Float64() * to)
	for i := range e.lie {
		if _, y := e.middle(&e.lie[i]); y > cut {
			e.lie[i].y -= from - e.long
		}
		e.within(i)
	}
}

// within puts item i inside the cloth, another way round if it must be.
func (e *easer) within(i int) {
	ways := e.n.Kinds[e.kind[i]].Variants
	for _, v := range ways {
		if float64(e.n.Variants[e.lie[i].variant].Long) <= e.long {
			break
		}
		e.lie[i].variant = v
	}
	e.clamp(i)
}

// clamp puts item i inside the cloth as it is turned.
func (e *easer) clamp(i int) {
	one := &e.n.Variants[e.lie[i].variant]
	e.lie[i].x = max(min(e.lie[i].x, e.wide-float64(one.Wide)), 0)
	e.lie[i].y = max(min(e.lie[i].y, e.long-float64(one.Long)), 0)
}

// toss lets so many pieces, those nearest to some place, change places and turns
// by chance.
func (e *easer) toss(count int) {
	x, y := e.two()
	x, y = float64(x*e.wide), float64(y*e.long)
	type spot struct{ x, y, far float64 }
	spots := make([]spot, len(e.lie))
	for i := range e.lie {
		midX, midY := e.middle(&e.lie[i])
		dx, dy := midX-x, midY-y
		spots[i] = spot{midX, midY, float64(dx*dx) + float64(dy*dy)}
		e.order[i] = i
	}
	slices.SortStableFunc(e.order, func(a, b int) int { return cmp.Compare(spots[a].far, spots[b].far) })
	near := e.order[:min(count, len(e.order))]
	for k, to := range e.dice.Perm(len(near)) {
		i, at := near[k], spots[near[to]]
		ways := e.n.Kinds[e.kind[i]].Variants
		e.lie[i].variant = ways[e.dice.IntN(len(ways))]
		midX, midY := e.middle(&e.lie[i])
		e.lie[i].x += at.x - midX
		e.lie[i].y += at.y - midY
		e.within(i)
	}
}

// middle is that of the rectangle around an item that lies so.
func (e *easer) middle(l *lie) (x, y float64) {
	one := &e.n.Variants[l.variant]
	return l.x + float64(one.Wide)/2, l.y + float64(one.Long)/2
}

// loosen gives the easer a little more width than there is, or takes it back.
func (e *easer) loosen(more bool) {
	e.wide = float64(e.n.Wide)
	if more {
		e.wide += e.pad
	}
}

// settle turns the easer's places into exact ones and pushes all pieces towards
// the cut end and to the left as far as they go. False where they do not fit the
// width, which the easer has a little more of.
func (h *hunter) settle() ([]Seat, bool) {
	e := h.e
	f := &filler{t: h.t, seats: make([]Seat, len(h.n.Items))}
	for i, item := range e.item {
		l := &e.lie[i]
		f.seats[item] = Seat{l.variant, int64(l.x + 0.5), int64(l.y + 0.5)}
	}
	if !f.free(f.seats) {
		return nil, false
	}
	f.snap()
	f.press()
	f.snap()
	h.done += f.steps
	for _, s := range f.seats {
		if s.X+h.n.Variants[s.Variant].Wide > h.n.Wide {
			return nil, false
		}
	}
	return f.seats, true
}
