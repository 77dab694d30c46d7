package nest

import (
	"cmp"
	"context"
	"math/bits"
	"math/rand/v2"
	"slices"
)

// StepsPerWork is how many steps the search takes for each unit of Spec.Work.
const StepsPerWork = 1_000_000

// A hunt is one search: the best lay so far and what is left to spend. What it
// does next never depends on how much is left, so that more work only goes on
// from where less work stops.
type hunt struct {
	ctx     context.Context
	g       Grid
	lays    *layer
	best    Lay
	spend   int64 // steps at which to end
	stopped bool
	dice    *rand.Rand
}

// Search finds the best lay that work allows, the first at least, and tells
// whether ctx was done before that.
func (g Grid) Search(ctx context.Context, work int, seed uint64) (best Lay, stopped bool) {
	h := &hunt{ctx: ctx, g: g, lays: newLayer(g), spend: int64(work) * StepsPerWork, dice: rand.New(rand.NewPCG(seed, seed^0x9e3779b97f4a7c15))}
	h.sorted()
	for round := 0; !h.over(); round++ {
		h.walk(round)
	}
	return h.best, h.stopped
}

// over reports whether the search must end: stopped from outside, all spent, or
// nothing left to gain.
func (h *hunt) over() bool {
	if h.best.Spots == nil {
		return false // a first lay there always is
	}
	if h.lays.steps >= h.spend || h.best.long <= h.g.Bound {
		return true
	}
	h.stopped = h.stopped || h.ctx.Err() != nil
	return h.stopped
}

// try lays the queue and keeps the lay if it is the best. Lays longer than limit
// are given up.
func (h *hunt) try(queue []turn, limit int64) (int64, bool) {
	long, ok := h.lays.lay(queue, limit)
	if ok {
		one := Lay{Spots: h.lays.spots, long: long - h.g.Gap}
		for _, at := range one.Spots {
			if at.Across {
				one.turned++
			}
		}
		if one.better(h.best) {
			one.Spots = append(h.best.Spots[:0], one.Spots...)
			h.best = one
		}
	}
	return long, ok
}

// queue is all the pieces in the order of their shapes, each long side along
// the cloth or, for those that may turn, across it.
func (g Grid) queue(flat bool) []turn {
	q := make([]turn, 0, g.Total)
	for i, sh := range g.Shapes {
		for range sh.Of {
			q = append(q, turn{i, sh.turn && flat == (sh.long > sh.wide)})
		}
	}
	return q
}

// orders are the ways to sort a queue that are tried first: the greatest first.
var orders = [...]func(a, b Shape) int{
	func(a, b Shape) int { // by area
		ah, al := bits.Mul64(uint64(a.wide), uint64(a.long))
		bh, bl := bits.Mul64(uint64(b.wide), uint64(b.long))
		return cmp.Or(cmp.Compare(bh, ah), cmp.Compare(bl, al))
	},
	func(a, b Shape) int { return cmp.Compare(b.long, a.long) },
	func(a, b Shape) int { return cmp.Compare(b.wide, a.wide) },
	func(a, b Shape) int { return cmp.Compare(b.wide+b.long, a.wide+a.long) },
	func(a, b Shape) int { return cmp.Compare(max(b.wide, b.long), max(a.wide, a.long)) },
}

// sort puts a queue in one of the orders.
func (g Grid) sort(q []turn, order int) {
	slices.SortStableFunc(q, func(a, b turn) int { return orders[order](g.Shapes[a.shape], g.Shapes[b.shape]) })
}

// sorted tries all the orders. The first lay is made even where no work is left.
func (h *hunt) sorted() {
	for k := range 4 * len(orders) {
		if h.over() {
			return
		}
		q := h.g.queue(k&1 == 1)
		h.g.sort(q, k/4)
		h.lays.closely = k&2 == 0
		h.try(q, wall)
	}
}

// walk changes a queue a little at a time. It accepts what is no worse than it
// was some lays ago, so that it gets out of where no single change helps, and
// ends when it has not got better for long.
func (h *hunt) walk(round int) {
	q := h.g.queue(h.dice.IntN(2) == 0)
	if h.dice.IntN(4) == 0 {
		h.dice.Shuffle(len(q), func(i, j int) { q[i], q[j] = q[j], q[i] })
	} else {
		h.g.sort(q, h.dice.IntN(len(orders)))
	}
	h.lays.closely = round%3 != 2
	now, _ := h.try(q, wall)
	var past [64]int64
	for i := range past {
		past[i] = now
	}
	old := slices.Clone(q)
	own := now
	idle := 0
	for n := 0; idle < 2000+500*round && !h.over(); n++ {
		idle++
		copy(old, q)
		h.shift(q)
		bar := max(now, past[n%len(past)])
		long, ok := h.try(q, bar)
		if ok {
			now = long
		} else {
			copy(q, old)
		}
		if now < own {
			own, idle = now, 0
		}
		past[n%len(past)] = now
	}
}

// shift makes one change to a queue: two pieces change places, one moves, or one
// is tried the other way round first.
func (h *hunt) shift(q []turn) {
	i, j := h.dice.IntN(len(q)), h.dice.IntN(len(q))
	switch h.dice.IntN(4) {
	case 0, 1:
		q[i], q[j] = q[j], q[i]
	case 2:
		one := q[i]
		if i < j {
			copy(q[i:j], q[i+1:j+1])
		} else {
			copy(q[j+1:i+1], q[j:i])
		}
		q[j] = one
	case 3:
		if h.g.Shapes[q[i].shape].turn {
			q[i].across = !q[i].across
		}
		q[i], q[j] = q[j], q[i]
	}
}
