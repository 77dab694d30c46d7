package nest

import (
	"math"
	"math/bits"
	"slices"
)

const (
	fewestSteps   = 5.5     // to the side of a piece of middling size, at least
	mostSteps     = 8       // and fewer than that
	mostOfFew     = 16      // or than that, where the pieces are few
	anySteps      = 14      // the same where it is not that of a grid
	slackness     = 0.3     // how deep places are as good as clear of each other there, in steps
	mostPlaces    = 1 << 22 // of all that one holds
	plainest      = 63      // what the deepest overlap costs, at least
	deepestOne    = 4095    // and at most
	perStep       = 28      // words looked at in the time of a step
	heaviest      = 1 << 60 // a weight, at most
	latticeRounds = 30      // as rounds, but each is soon over here, and tossing again finds more
	noWorse       = 1.1     // times what overlaps in what is gone on from, that may be gone on from too
)

// A lattice is a search of its own, of few places: those where whole numbers meet
// by which the pieces are drawn, which is where such pieces fit each other, or any.
// It is known at each move what every place would cost, so that each goes to the
// very best.
type lattice struct {
	h     *hunter
	step  int64 // of the grid, to a step of the lattice
	slack int64 // how deep places may be in each other, and over the edges
	aim
	patches []patch // by variant that moves, then the fixed one
	pegs    []peg
	cost    []int // of each pair, by item and item, without its weight
	own     []int // by item: the sum of its pairs
	left    int   // the sum of all
	weight  []float32
	couples []couple // that overlap, or weigh more than 1
	listed  []bool   // which these are, by item and lesser item
	planes  []plane  // by variant, without weights
	burdens [][]burden
	to      peg     // where the item goes that is moved
	best    float32 // what it costs there
	same    int     // how many places cost as much
	looked  int     // words, since a step was counted
}

// A mark is a place on a lattice, or so far across it and along.
type mark struct{ x, y int }

// nowhere is the variant of an item that is not counted.
const nowhere = -1

// A peg is where and how an item lies on a lattice.
type peg struct {
	mark
	variant int
}

// A couple is two items, the greater number first.
type couple struct{ i, j int }

// A burden is what an item that weighs more than 1 with the one that moves adds
// to what it costs.
type burden struct {
	*patch
	mark
	times float32
}

// lattice is the step of a lattice for the pieces: the grid they are drawn on, or
// a half of it, or a half of that, as there must be enough steps to a piece. Where
// that grid is too fine it is any step, and places so deep in each other cost
// nothing there, as a lay of them has to be eased in any case. A finer one is half
// the step, unless that is finer than any step.
func (n *Nest) lattice(finer bool) (step, slack int64) {
	mean := n.meanSide()
	step = n.Coarse
	for step%2 == 0 && mean < fewestSteps*float64(step) {
		step /= 2
	}
	most := float64(mostSteps)
	if len(n.Items) <= few {
		most = mostOfFew
	}
	if mean < most*float64(step) {
		if finer && step%2 == 0 && 2*mean < anySteps*float64(step) {
			step /= 2
		}
		return step, 0
	}
	step = max(int64(mean/anySteps), 1)
	return step, int64(slackness * float64(step))
}

// newLattice is one for the best lay of a hunter; nil where it has too many places,
// or the pieces are few and of no grid.
func newLattice(h *hunter, finer bool) *lattice {
	n := h.n
	k, l := len(n.Items), &lattice{h: h}
	l.step, l.slack = n.lattice(finer)
	if l.slack > 0 && k <= few || l.places() > mostPlaces || fullest/k < plainest {
		return nil
	}
	l.long, l.whole = h.long, h.long
	if !l.draw() {
		return nil
	}
	l.pegs = make([]peg, k)
	l.cost, l.own = make([]int, k*k), make([]int, k)
	l.weight, l.listed = make([]float32, k*k), make([]bool, k*k)
	for v := range n.Variants {
		l.planes = append(l.planes, newPlane(l.room(v), k))
	}
	l.burdens = make([][]burden, len(n.Variants))
	l.less = l.step
	l.take()
	return l
}

// places is how many it would hold, about.
func (l *lattice) places() float64 {
	n, step := l.h.n, float64(l.step)
	size := func(x, y float64) float64 { return float64((x/step + 1) * (y/step + 1)) }
	sum := float64(float64(len(n.Items)) * float64(len(n.Items)))
	for i := range n.Variants {
		a := &n.Variants[i]
		sum += size(float64(n.Wide), float64(l.h.long))
		for j := range n.Variants {
			b := &n.Variants[j]
			gap := 2 * float64(n.Gap)
			sum += size(float64(a.Wide)+float64(b.Wide)+gap, float64(a.Long)+float64(b.Long)+gap)
		}
	}
	return sum
}

// up is how many steps of the lattice a length is at most.
func (l *lattice) up(length int64) int { return int((length + l.step - 1) / l.step) }

// draw makes the patches; false where the search must end before.
func (l *lattice) draw() bool {
	n, e := l.h.n, l.h.e
	var most float64
	gap := l.up(n.Gap)
	var sizes []mark
	for i := range n.Variants {
		v := &n.Variants[i]
		sizes = append(sizes, mark{l.up(v.Wide), l.up(v.Long)})
	}
	costs := make([][]float64, 0, len(sizes)*len(sizes))
	for b, moving := range sizes {
		if l.h.over() {
			return false
		}
		for a, fixed := range sizes {
			p := newPatch(mark{1 - moving.x - gap, 1 - moving.y - gap}, mark{fixed.x + moving.x + 2*gap - 1, fixed.y + moving.y + 2*gap - 1})
			view := l.h.t.at(a, b)
			pair := n.Variants[a].kind*len(n.Kinds) + n.Variants[b].kind
			cost := make([]float64, p.size.x*p.size.y)
			for at := range cost {
				x, y := int64(p.lo.x+at%p.size.x)*l.step, int64(p.lo.y+at/p.size.x)*l.step
				if !view.holds(x, y) {
					continue
				}
				if depth := view.depth(float64(x), float64(y)); l.slack == 0 || depth > float64(l.slack) {
					cost[at] = float64((depth + e.jump[pair]) * e.scale[pair])
					most = max(most, cost[at])
				}
			}
			l.patches, costs = append(l.patches, p), append(costs, cost)
			l.h.done += int64(len(cost))
		}
	}
	deepest := float64(min(deepestOne, fullest/len(l.h.n.Items)))
	for k, cost := range costs {
		p := &l.patches[k]
		for at, c := range cost {
			p.set(at%p.size.x, at/p.size.x, uint16(math.Ceil(c/most*deepest)))
		}
	}
	return true
}

// room is how many places across and along a variant has.
func (l *lattice) room(v int) mark {
	n := l.h.n
	one := &n.Variants[v]
	return mark{l.steps(n.Wide - one.Wide), l.steps(l.long - one.Long)}
}

// steps is how many places there are from 0 to a last one, or where slack allows,
// a little beyond.
func (l *lattice) steps(last int64) int {
	if last += l.slack; last >= 0 {
		return int(last/l.step) + 1
	}
	return 0
}

// patch is that of a variant that moves with the one a peg has.
func (l *lattice) patch(v int, fixed peg) *patch {
	return &l.patches[v*len(l.planes)+fixed.variant]
}

// sync brings the plane of a variant up to date, with all items in it but one.
func (l *lattice) sync(v, without int) {
	p := &l.planes[v]
	for i, now := range l.pegs {
		was := p.pegs[i]
		if i == without {
			now.variant = nowhere
		}
		if was == now || was.variant == nowhere && now.variant == nowhere {
			continue
		}
		if was.variant != nowhere {
			s := p.under(l.patch(v, was), was.mark)
			p.lift(s)
			l.looked += s.words()
		}
		if now.variant != nowhere {
			s := p.under(l.patch(v, now), now.mark)
			p.put(s)
			l.looked += s.words()
		}
		p.pegs[i] = now
	}
	l.looked += len(l.pegs)
}

// update works out the costs of item i anew.
func (l *lattice) update(i int) {
	k, a := len(l.pegs), l.pegs[i]
	for j, b := range l.pegs {
		if j == i {
			continue
		}
		c := int(l.patch(a.variant, b).at(a.x-b.x, a.y-b.y))
		more := c - l.cost[i*k+j]
		if more == 0 {
			continue
		}
		l.cost[i*k+j], l.cost[j*k+i] = c, c
		l.own[i] += more
		l.own[j] += more
		l.left += more
		if pair := (couple{max(i, j), min(i, j)}); !l.listed[pair.i*k+pair.j] {
			l.listed[pair.i*k+pair.j] = true
			l.couples = append(l.couples, pair)
		}
	}
}

// survey works out everything anew, all weights being 1.
func (l *lattice) survey() {
	for v := range l.planes {
		if rows := l.room(v).y; rows != l.planes[v].room.y {
			l.planes[v].clear(rows)
		}
	}
	for k := range l.weight {
		l.weight[k] = 1
	}
	clear(l.cost)
	clear(l.own)
	clear(l.listed)
	l.left, l.couples = 0, l.couples[:0]
	for i := range l.pegs {
		l.update(i)
	}
}

// move lays item i where it costs least, in one of those places by chance.
func (l *lattice) move(i int) {
	h, k, now := l.h, len(l.pegs), l.pegs[i]
	ways := h.n.Kinds[h.e.kind[i]].Variants
	for _, v := range ways {
		l.sync(v, i)
		l.burdens[v] = l.burdens[v][:0]
	}
	for j, w := range l.weight[i*k : i*k+k] {
		if w > 1 {
			for _, v := range ways {
				l.burdens[v] = append(l.burdens[v], burden{l.patch(v, l.pegs[j]), l.pegs[j].mark, w - 1})
			}
		}
	}
	l.to, l.best = now, math.MaxFloat32
	l.best = l.price(now)
	// The most promising row first, for what costs more than its best need not
	// be looked at.
	low := uint64(fullest * each)
	for _, v := range ways {
		for _, c := range l.planes[v].low {
			low = lesser(low, c)
		}
	}
	l.glance(ways, (uint64(leastOf(low))+1)*each)
	l.same = 0
	for _, v := range ways {
		limit := l.limit()
		for y, c := range l.planes[v].low {
			if below(c, limit) != 0 {
				l.scan(v, y)
				limit = l.limit()
			}
		}
	}
	if l.to != now {
		l.pegs[i] = l.to
		l.update(i)
	}
	l.looked += 4 * k
	h.done += int64(l.looked / perStep)
	l.looked %= perStep
}

// glance looks at the first row that may have a place that costs less than limit.
func (l *lattice) glance(ways []int, limit uint64) {
	for _, v := range ways {
		for y, c := range l.planes[v].low {
			if below(c, limit) != 0 {
				l.scan(v, y)
				return
			}
		}
	}
}

// scan looks at a row of a variant's places, and learns what is the least there.
func (l *lattice) scan(v, y int) {
	p := &l.planes[v]
	row := p.cost[y*p.words:][:p.words]
	low, limit := uint64(fullest*each), l.limit()
	for w, c := range row {
		low = lesser(low, c)
		for some := below(c, limit); some != 0; some &= some - 1 {
			at := peg{mark{w*lanes + bits.TrailingZeros64(some)/16, y}, v}
			price := l.price(at)
			if price > l.best {
				continue
			}
			if price < l.best {
				l.best, l.same = price, 0
				limit = l.limit()
			}
			l.same++
			if l.same == 1 || l.h.dice.IntN(l.same) == 0 {
				l.to = at
			}
		}
	}
	p.low[y] = low
	l.looked += len(row) + 2
}

// limit is what a place must cost less than, without weights, to be as good as
// the best.
func (l *lattice) limit() uint64 { return uint64(min(l.best, fullest-1)+1) * each }

// price is what a place costs with all weights, or more than the best.
func (l *lattice) price(at peg) float32 {
	c := float32(l.planes[at.variant].at(at.mark))
	for _, b := range l.burdens[at.variant] {
		c += float32(float32(b.patch.at(at.x-b.x, at.y-b.y)) * b.times)
		if c > l.best {
			break
		}
	}
	return c
}

// ease moves items until none overlaps; else they lie as they overlapped least,
// which is how much they do.
func (l *lattice) ease() int {
	l.survey()
	best, least := slices.Clone(l.pegs), l.left
	for idle := 0; idle < latticeRounds && least > 0; idle++ {
		for _, i := range l.h.dice.Perm(len(l.pegs)) {
			if l.own[i] > 0 {
				l.move(i)
				if l.h.over() {
					break
				}
			}
		}
		if l.left < least {
			if l.left < least*49/50 {
				idle = 0
			}
			least = l.left
			copy(best, l.pegs)
		}
		if l.h.over() {
			break
		}
		l.reweigh()
	}
	copy(l.pegs, best)
	return least
}

// reweigh makes overlapping pairs weigh more, the worst the most, and the others
// a little less.
func (l *lattice) reweigh() {
	k, worst := len(l.pegs), 0
	for _, p := range l.couples {
		worst = max(worst, l.cost[p.i*k+p.j])
	}
	kept := l.couples[:0]
	for _, p := range l.couples {
		w := l.weight[p.i*k+p.j]
		if c := l.cost[p.i*k+p.j]; c > 0 {
			w = min(w*(1.2+float32(0.8*(float32(c)/float32(worst)))), heaviest)
		} else {
			w = max(1, float32(w*0.95))
		}
		l.weight[p.i*k+p.j], l.weight[p.j*k+p.i] = w, w
		l.listed[p.i*k+p.j] = w > 1
		if w > 1 {
			kept = append(kept, p)
		}
	}
	l.couples = kept
}
