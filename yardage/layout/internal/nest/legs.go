package nest

import (
	"context"
	"math"
	"math/rand/v2"
	"slices"
	"sync"
	"sync/atomic"
)

// hunters is how many searches go on side by side. It is the same on every
// machine, so that the result is.
const hunters = 2

const (
	brief   = 50_000_000 // steps to a leg, after which each hears what the other has found
	longer  = 2          // times as many where there is no lattice
	unheard = 4          // legs, at most, of which the other has not heard yet
)

// A find is the best lay of a hunter at the end of a leg.
type find struct {
	seats []Seat
	long  int64
}

// Search finds the best lay that work allows, and tells whether it stopped before
// that: because ctx was done, or because pieces have too many corners for more than
// a first lay. The first of all lays, which there always is, has the pieces as the
// rectangles around them.
func (n *Nest) Search(ctx context.Context, work int, seed uint64) (best []Seat, stopped bool) {
	if n.constrained() {
		return n.bind(ctx, work, seed)
	}
	best = n.boxes()
	if n.end(best) <= n.Bound {
		return best, false
	}
	var t *table
	level := 0
	for ; ; level++ {
		if !n.divide(ctx, level) {
			return best, true
		}
		if t = newTable(n); t.views != nil && (level == 0 || n.light()) {
			break
		}
		if level == topLevel { // as it is drawn, then, for a first lay at most
			if !n.divide(ctx, 0) {
				return best, true
			}
			t, level = newTable(n), 0
			break
		}
	}
	if !t.bearable() || !t.fill(ctx) {
		return best, true
	}
	spend := int64(work) * StepsPerWork
	best, stopped = t.hunt(ctx, best, spend/hunters, brief, seed)
	if level == 0 || t.views == nil {
		return best, stopped
	}
	return n.tighten(ctx, best, spend), stopped
}

// light reports whether no variant is cut into so many parts that a look at a place
// takes long.
func (n *Nest) light() bool {
	for i := range n.Variants {
		if k := len(n.Variants[i].parts); k*k > sumsSeen {
			return false
		}
	}
	return true
}

// tighten pushes the pieces of a lay that was found with plainer outlines together as
// far as their own allow, in so many steps at most.
func (n *Nest) tighten(ctx context.Context, seats []Seat, spend int64) []Seat {
	if !n.divide(ctx, 0) {
		return seats
	}
	f := &filler{t: &table{n: n, made: map[[2]int]*view{}}, seats: slices.Clone(seats)}
	if !f.t.bearable() {
		return seats
	}
	f.stop = func() bool { return ctx.Err() != nil || f.steps >= spend }
	f.press()
	return f.seats
}

// hunt finds the best lay that so many steps of each hunter allow, in legs of so
// many, beginning with one.
func (t *table) hunt(ctx context.Context, best []Seat, spend, leg int64, seed uint64) (_ []Seat, stopped bool) {
	long := t.n.end(best)
	var last atomic.Int64
	last.Store(math.MaxInt64)
	var wait sync.WaitGroup
	defer wait.Wait()
	defer last.Store(0) // so that nobody goes on if whoever watches panics
	var posts [hunters]chan find
	for i := range posts {
		posts[i] = make(chan find, unheard)
		posts[i] <- find{best, long}
	}
	var hs [hunters]*hunter
	for i := range hs {
		hs[i] = &hunter{t: t, n: t.n, ctx: ctx, number: i, freely: i == hunters-1, spend: spend, leg: leg,
			dice: rand.New(rand.NewPCG(seed, uint64(i)^0x9e3779b97f4a7c15)),
			hear: posts[i], tell: posts[(i+1)%hunters], last: &last}
	}
	for _, h := range hs[1:] {
		wait.Go(h.hunt)
	}
	hs[0].hunt()
	wait.Wait()
	begun := 0
	for _, h := range hs {
		stopped = stopped || h.halt
		if h.best != nil && (h.long < long || h.long == long && h.begun < begun) {
			best, long, begun = h.best, h.long, h.begun
		}
	}
	return best, stopped
}

// hunt searches in legs until it must end. After each it takes over what the other
// had a leg ago, if that is shorter: so none waits for the other, and what they find
// is the same however fast each is.
func (h *hunter) hunt() {
	defer close(h.tell)
	for !h.over() {
		step := h.leg
		if h.begun > 0 && h.l == nil {
			step *= longer
		}
		h.begun++
		h.until += step
		was := h.long
		h.run(h.until)
		if h.best == nil {
			return
		}
		if h.long <= h.n.Bound {
			h.finish()
		}
		if h.number == hunters-1 && h.l != nil {
			h.freely = h.strays(was)
		}
		if !h.alone {
			h.tell <- find{h.best, h.long}
			got, ok := <-h.hear
			if h.alone = !ok; ok && got.long < h.long {
				h.best, h.long = got.seats, got.long
			}
		}
		if h.number == 0 && int64(h.begun) <= h.last.Load() {
			h.n.tell(h.long, h.until*hunters)
		}
	}
}

// finish ends what the other hunter does in later legs.
func (h *hunter) finish() {
	for last := h.last.Load(); int64(h.begun) < last; last = h.last.Load() {
		h.last.CompareAndSwap(last, int64(h.begun))
	}
}

// strays reports whether the last hunter searches off its lattice in the next leg:
// while it is ahead by what the lattice tries for, and else more and more seldom, or
// every second time where lays are eased. was is how long the best lay was before
// the last leg.
func (h *hunter) strays(was int64) bool {
	ahead := h.freely && h.long <= h.l.next(was)
	return ahead || h.begun&(h.begun-1) == 0 || h.l.slack > 0 && h.begun&1 == 0
}
