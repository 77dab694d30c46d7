package layout

import (
	"cmp"
	"context"
	"math"
	"math/rand/v2"
	"slices"
	"sync"
)

// hunters is how many searches go on side by side. It is the same on every
// machine, so that the result is.
const hunters = 2

const (
	rounds    = 200         // rounds without getting better after which moving apart is given up
	few       = 24          // pieces that may be a puzzle
	leg       = 200_000_000 // steps after which all go on from the best lay of any
	brief     = 50_000_000  // the same while they search on a lattice
	widest    = 0.02        // by how much the cloth is shortened at most, in parts of its length
	narrowest = 0.0005      // and at least
	firstStep = 0.004       // and at first, where pieces were tossed
	roomier   = 0.01        // by how much it is lengthened for that
	tossLeast = 2           // of how many pieces that is done at once, at least
	tossMost  = 6           // and at most
)

// A hunter makes one search of its own: a first lay, then shorter ones.
type hunter struct {
	t      *table
	n      *nest
	dice   *rand.Rand
	best   []seat
	long   int64
	spend  int64
	done   int64   // steps besides those of the easer
	step   float64 // by how much the cloth is shortened next
	halt   bool
	ctx    context.Context
	e      *easer
	l      *lattice // nil where there is none
	freely bool     // whether it searches off it all the same
}

// nestle finds the best lay that work allows. It has none if ctx was done before
// there was one. Pieces of very many corners are laid as the rectangles around
// them.
func (n *nest) nestle(ctx context.Context, work int, seed uint64) (best []seat, stopped bool) {
	if n.constrained() {
		return n.bind(ctx, work, seed)
	}
	best = n.boxes()
	if ctx.Err() != nil {
		return nil, true
	}
	if n.end(best) <= n.bound {
		return best, false
	}
	t := newTable(n)
	if !t.bearable() {
		return best, false
	}
	if !t.fill(ctx) {
		return best, true
	}
	var hs [hunters]*hunter
	for i := range hs {
		dice := rand.New(rand.NewPCG(seed, uint64(i)^0x9e3779b97f4a7c15))
		hs[i] = &hunter{t: t, n: n, dice: dice, ctx: ctx, spend: int64(work) * stepsPerWork / hunters}
	}
	first, last := hs[0], hs[hunters-1]
	last.freely = true
	step, legs := int64(brief), 0
	for until := step; ; until += step {
		var wait sync.WaitGroup
		for i, h := range hs {
			wait.Go(func() { h.run(i, until) })
		}
		wait.Wait()
		long, ended := n.end(best), false
		if legs++; first.l == nil {
			step = leg
		} else {
			last.freely = last.strays(first.l, legs, long)
		}
		for _, h := range hs {
			if h.best != nil && h.long < long {
				best, long = h.best, h.long
			}
		}
		n.tell(long, until*hunters)
		for _, h := range hs {
			stopped = stopped || h.halt
			h.best, h.long = best, long
			ended = ended || h.over()
		}
		if ended {
			return best, stopped
		}
	}
}

// strays reports whether the last hunter searches off its lattice in the next leg,
// after so many: while it is ahead by what the lattice tries for, and else more and
// more seldom, or every second time where lays are eased. was is how long the best
// lay was before the last leg.
func (h *hunter) strays(l *lattice, legs int, was int64) bool {
	ahead := h.freely && h.long < was && h.long <= l.goal
	return ahead || legs&(legs-1) == 0 || l.slack > 0 && legs&1 == 0
}

// boxes lays all pieces as the rectangles around them.
func (n *nest) boxes() []seat {
	g := grid{wide: n.wide + n.gap, gap: n.gap, total: len(n.items)}
	for _, k := range n.kinds {
		one := &n.variants[k.variants[0]]
		sh := shape{wide: one.wide + n.gap, long: one.long + n.gap}
		for _, v := range k.variants {
			sh.turn = sh.turn || (n.variants[v].quarters^one.quarters)&1 == 1
		}
		g.shapes = append(g.shapes, sh)
	}
	for i, kind := range n.items {
		g.shapes[kind].of = append(g.shapes[kind].of, i)
	}
	l := newLayer(g)
	l.closely = true
	q := g.queue(false)
	g.sort(q, 0)
	l.lay(q, wall)
	out := make([]seat, len(n.items))
	next := make([]int, len(g.shapes))
	for _, s := range l.spots {
		k := n.kinds[s.shape]
		one := k.variants[0]
		for _, v := range k.variants {
			if (n.variants[v].quarters^n.variants[one].quarters)&1 == 1 == s.across {
				one = v
				break
			}
		}
		out[g.shapes[s.shape].of[next[s.shape]]] = seat{one, s.x, s.y}
		next[s.shape]++
	}
	return out
}

// over reports whether the search must end.
func (h *hunter) over() bool {
	done := h.done
	if h.e != nil {
		done += h.e.steps
	}
	if h.best != nil && (done >= h.spend || h.long <= h.n.bound) {
		return true
	}
	h.halt = h.halt || h.ctx.Err() != nil
	return h.halt
}

// past reports whether the search must end, or has done so many steps.
func (h *hunter) past(until int64) bool { return h.done+h.e.steps >= until || h.over() }

// run searches until it has done so many steps.
func (h *hunter) run(number int, until int64) {
	if h.e == nil {
		h.first(number)
		if h.t.views == nil {
			h.spend = 0 // a first lay is all there can be
		}
		if h.over() {
			return
		}
		h.e = newEaser(h.t, h.dice, h.over)
		h.step = widest
		h.l = newLattice(h, number == 0)
	}
	if h.l != nil && !h.freely && h.l.search(until) {
		return
	}
	h.explore(number, until)
}

// first lays all pieces one after the other.
func (h *hunter) first(number int) {
	if h.ctx.Err() != nil {
		h.halt = true
		return
	}
	f := &filler{t: h.t, seats: make([]seat, len(h.n.items))}
	tries := max(4, min(40, 4000/len(h.n.items)))
	for _, i := range h.n.order(h.dice, number > 0) {
		if h.ctx.Err() != nil {
			h.halt = true
			return
		}
		f.put(i, MaxGrid, tries, h.dice)
	}
	f.press()
	h.done += f.steps
	h.keep(f.seats)
}

// keep makes the seats the best lay if they are shorter.
func (h *hunter) keep(seats []seat) bool {
	end := h.n.end(seats)
	if h.best != nil && end >= h.long {
		return false
	}
	h.best, h.long = slices.Clone(seats), end
	return true
}

// explore shortens the cloth again and again and moves the pieces apart on it.
// When that goes no further it throws part of the pieces about, and goes on from
// there if that leads to a lay as short.
func (h *hunter) explore(number int, until int64) {
	e := h.e
	base, now := h.best, h.best
	for !h.past(until) {
		if number > 0 && len(h.n.items) <= few && h.puzzle() {
			base, now = h.best, h.best
		}
		long := h.n.end(now)
		e.take(now)
		e.shorten(float64(long), float64(long)*(1-h.step))
		if seats, ok := h.attempt(long, rounds); ok {
			now = seats
			h.keep(now)
			h.step = min(widest, h.step*1.5)
			continue
		}
		if h.step /= 2; h.step >= narrowest {
			continue
		}
		h.step = firstStep
		if long <= h.n.end(base) {
			base = now
		}
		for !h.past(until) { // or the other hunters wait for this one
			e.take(base)
			e.long = float64(h.n.end(base)) * (1 + roomier)
			e.toss(h.tossed())
			if seats, ok := h.attempt(math.MaxInt64, rounds); ok {
				now = seats
				h.keep(now)
				break
			}
		}
	}
}

// attempt moves the pieces apart on cloth as short as the easer has it, or a
// little longer if that will do and the lay comes out shorter than limit. It gives
// up after so many rounds without getting better.
func (h *hunter) attempt(limit int64, most int) ([]seat, bool) {
	if h.e.ease(most) {
		seats, ok := h.settle()
		if !ok {
			h.e.loosen(h.e.wide == float64(h.n.wide))
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
	e.long = max(to, float64(e.n.bound)+e.pad)
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
	ways := e.n.kinds[e.kind[i]].variants
	for _, v := range ways {
		if float64(e.n.variants[e.lie[i].variant].long) <= e.long {
			break
		}
		e.lie[i].variant = v
	}
	e.clamp(i)
}

// clamp puts item i inside the cloth as it is turned.
func (e *easer) clamp(i int) {
	one := &e.n.variants[e.lie[i].variant]
	e.lie[i].x = max(min(e.lie[i].x, e.wide-float64(one.wide)), 0)
	e.lie[i].y = max(min(e.lie[i].y, e.long-float64(one.long)), 0)
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
		ways := e.n.kinds[e.kind[i]].variants
		e.lie[i].variant = ways[e.dice.IntN(len(ways))]
		midX, midY := e.middle(&e.lie[i])
		e.lie[i].x += at.x - midX
		e.lie[i].y += at.y - midY
		e.within(i)
	}
}

// middle is that of the rectangle around an item that lies so.
func (e *easer) middle(l *lie) (x, y float64) {
	one := &e.n.variants[l.variant]
	return l.x + float64(one.wide)/2, l.y + float64(one.long)/2
}

// loosen gives the easer a little more width than there is, or takes it back.
func (e *easer) loosen(more bool) {
	e.wide = float64(e.n.wide)
	if more {
		e.wide += e.pad
	}
}

// settle turns the easer's places into exact ones and pushes all pieces towards
// the cut end and to the left as far as they go. False where they do not fit the
// width, which the easer has a little more of.
func (h *hunter) settle() ([]seat, bool) {
	e := h.e
	f := &filler{t: h.t, seats: make([]seat, len(h.n.items))}
	for i, item := range e.item {
		l := &e.lie[i]
		f.seats[item] = seat{l.variant, int64(l.x + 0.5), int64(l.y + 0.5)}
	}
	if !f.free(f.seats) {
		return nil, false
	}
	f.snap()
	f.press()
	f.snap()
	h.done += f.steps
	for _, s := range f.seats {
		if s.x+h.n.variants[s.variant].wide > h.n.wide {
			return nil, false
		}
	}
	return f.seats, true
}
