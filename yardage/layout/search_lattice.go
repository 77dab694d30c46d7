package layout

import (
	"math"
	"slices"
)

const (
	coarseLattice = 5       // places to the side of a piece of middling size, at least
	fineLattice   = 10      // and fewer than that
	mostPlaces    = 1 << 23 // of all that one holds
	deepestOne    = 4095    // what the deepest overlap costs: sums of such whole numbers are exact
	perStep       = 20      // places worked on in the time of a step
	heaviest      = 1 << 60 // a weight, at most
	latticeRounds = 30      // as rounds, but each is soon over here, and tossing again finds more
	noWorse       = 1.1     // times what overlaps in what is gone on from, that may be gone on from too
)

// A lattice is a search of its own for pieces drawn by few whole numbers: they
// lie only where those meet, which is where such pieces fit each other. It is
// known at each move what every place would cost, so that each goes to the very
// best.
type lattice struct {
	h          *hunter
	step       int64 // of the grid, to a step of the lattice
	wide, long int   // of the cloth
	sizes      []mark
	patches    []patch // by variant that moves, then the fixed one
	pegs       []peg
	cost       []float32 // of each pair, by item and item, without its weight
	weight     []float32
	sums       [][]float32 // by variant and place: what all items cost there, without weights
	one        []float32   // the same for one item, with them
	heavy      []int       // items that weigh more than 1 with the one that moves
	base       []peg       // what is gone on from
	least      float32     // what overlaps in it
}

// A mark is a place on a lattice, or so far across it and along.
type mark struct{ x, y int }

// A peg is where and how an item lies on a lattice.
type peg struct {
	mark
	variant int
}

// A patch is what two variants cost, for each place of the one that moves from
// lo on as seen from the other, row by row.
type patch struct {
	lo, size mark
	cost     []float32
}

// latticed reports whether the pieces are drawn by few whole numbers.
func (n *nest) latticed() bool {
	var mean float64
	for _, kind := range n.items {
		mean += n.side(kind)
	}
	mean /= float64(len(n.items)) * float64(n.coarse)
	return coarseLattice <= mean && mean < fineLattice
}

// newLattice is one for the best lay of a hunter; nil where there is none, or it
// has too many places.
func newLattice(h *hunter) *lattice {
	n := h.n
	if !n.latticed() {
		return nil
	}
	l := &lattice{h: h, step: n.coarse}
	if l.places() > mostPlaces {
		return nil
	}
	k := len(n.items)
	l.wide, l.long = int(n.wide/l.step), l.up(h.long)
	for i := range n.variants {
		v := &n.variants[i]
		l.sizes = append(l.sizes, mark{l.up(v.wide), l.up(v.long)})
	}
	if !l.draw() {
		return nil
	}
	l.pegs = make([]peg, k)
	l.cost, l.weight = make([]float32, k*k), make([]float32, k*k)
	l.sums = make([][]float32, len(n.variants))
	for v := range l.sums {
		room := l.room(v)
		l.sums[v] = make([]float32, room.x*room.y)
	}
	l.one = make([]float32, l.wide*l.long)
	h.e.take(h.best)
	l.shorten()
	return l
}

// places is how many it would hold, about.
func (l *lattice) places() float64 {
	n, step := l.h.n, float64(l.step)
	size := func(x, y float64) float64 { return float64((x/step + 1) * (y/step + 1)) }
	sum := float64(float64(len(n.items)) * float64(len(n.items)))
	for i := range n.variants {
		a := &n.variants[i]
		sum += size(float64(n.wide), float64(l.h.long))
		for j := range n.variants {
			b := &n.variants[j]
			gap := 2 * float64(n.gap)
			sum += size(float64(a.wide)+float64(b.wide)+gap, float64(a.long)+float64(b.long)+gap)
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
	gap := l.up(n.gap)
	costs := make([][]float64, 0, len(l.sizes)*len(l.sizes))
	for b, moving := range l.sizes {
		if l.h.over() {
			return false
		}
		for a, fixed := range l.sizes {
			p := patch{
				lo:   mark{1 - moving.x - gap, 1 - moving.y - gap},
				size: mark{fixed.x + moving.x + 2*gap - 1, fixed.y + moving.y + 2*gap - 1},
			}
			view := l.h.t.at(a, b)
			pair := n.variants[a].kind*len(n.kinds) + n.variants[b].kind
			cost := make([]float64, p.size.x*p.size.y)
			for at := range cost {
				x, y := int64(p.lo.x+at%p.size.x)*l.step, int64(p.lo.y+at/p.size.x)*l.step
				if view.holds(x, y) {
					cost[at] = float64((view.depth(float64(x), float64(y)) + e.jump[pair]) * e.scale[pair])
					most = max(most, cost[at])
				}
			}
			l.patches, costs = append(l.patches, p), append(costs, cost)
		}
	}
	for k, cost := range costs {
		p := &l.patches[k]
		p.cost = make([]float32, len(cost))
		for at, c := range cost {
			p.cost[at] = float32(math.Ceil(c / most * deepestOne))
		}
	}
	return true
}

// room is how many places across and along a variant has.
func (l *lattice) room(v int) mark {
	return mark{max(l.wide-l.sizes[v].x+1, 0), max(l.long-l.sizes[v].y+1, 0)}
}

// patch is that of a variant that moves with the one a peg has.
func (l *lattice) patch(v int, fixed peg) *patch {
	return &l.patches[v*len(l.sizes)+fixed.variant]
}

// add adds what an item that lies so costs variant v, so many times, at each
// place of a map of it.
func (l *lattice) add(places []float32, v int, fixed peg, times float32) {
	p, room := l.patch(v, fixed), l.room(v)
	lo := mark{fixed.x + p.lo.x, fixed.y + p.lo.y}
	from, to := max(lo.x, 0), min(lo.x+p.size.x, room.x)
	if from >= to {
		return
	}
	for y := max(lo.y, 0); y < min(lo.y+p.size.y, room.y); y++ {
		row := p.cost[(y-lo.y)*p.size.x+from-lo.x:][:to-from]
		out := places[y*room.x+from:][:len(row)]
		for x, c := range row {
			out[x] += float32(c * times)
		}
	}
	l.h.done += int64(len(p.cost)/perStep) + 1
}

// enter counts an item, or no longer, in all sums.
func (l *lattice) enter(s peg, times float32) {
	for v := range l.sums {
		l.add(l.sums[v], v, s, times)
	}
}

// pair is what items i and j cost as they lie.
func (l *lattice) pair(i, j int) float32 {
	a, b := l.pegs[i], l.pegs[j]
	p := l.patch(b.variant, a)
	x, y := b.x-a.x-p.lo.x, b.y-a.y-p.lo.y
	if x < 0 || x >= p.size.x || y < 0 || y >= p.size.y {
		return 0
	}
	return p.cost[y*p.size.x+x]
}

// update works out the costs of item i anew.
func (l *lattice) update(i int) {
	k := len(l.pegs)
	for j := range k {
		if j != i {
			c := l.pair(i, j)
			l.cost[i*k+j], l.cost[j*k+i] = c, c
		}
	}
}

// survey works out everything anew, all weights being 1.
func (l *lattice) survey() {
	for _, sums := range l.sums {
		clear(sums)
	}
	for i, s := range l.pegs {
		l.enter(s, 1)
		l.update(i)
	}
	for k := range l.weight {
		l.weight[k] = 1
	}
}

// move lays item i where it costs least, in one of those places by chance.
func (l *lattice) move(i int) {
	h, k, now := l.h, len(l.pegs), l.pegs[i]
	l.heavy = l.heavy[:0]
	for j, w := range l.weight[i*k : i*k+k] {
		if w > 1 {
			l.heavy = append(l.heavy, j)
		}
	}
	to, best, count := now, float32(math.MaxFloat32), 0
	for _, v := range h.n.kinds[h.e.kind[i]].variants {
		room := l.room(v)
		one := l.one[:room.x*room.y]
		copy(one, l.sums[v])
		l.add(one, v, now, -1)
		for _, j := range l.heavy {
			l.add(one, v, l.pegs[j], l.weight[i*k+j]-1)
		}
		h.done += int64(len(one) / perStep)
		low, at, same := cheapest(one)
		if same == 0 || low > best {
			continue
		}
		if low < best {
			best, count = low, 0
		}
		count += same
		skip := h.dice.IntN(count)
		if skip >= same {
			continue
		}
		for ; skip > 0; skip-- {
			at += 1 + slices.Index(one[at+1:], low)
		}
		to = peg{mark{at % room.x, at / room.x}, v}
	}
	if to != now {
		l.enter(now, -1)
		l.enter(to, 1)
		l.pegs[i] = to
		l.update(i)
	}
	h.done += int64(2 * k)
}

// cheapest is the least of some costs, where the first of that is, and how many
// are.
func cheapest(costs []float32) (least float32, first, count int) {
	least = math.MaxFloat32
	for at, c := range costs {
		if c > least {
			continue
		}
		if c < least {
			least, first, count = c, at, 0
		}
		count++
	}
	return least, first, count
}

// ease moves items until none overlaps; else they lie as they overlapped least,
// which is how much they do.
func (l *lattice) ease() float32 {
	l.survey()
	k := len(l.pegs)
	best := slices.Clone(l.pegs)
	least, _ := total(l.cost, k)
	for idle := 0; idle < latticeRounds && least > 0; idle++ {
		for _, i := range l.h.dice.Perm(k) {
			if overlaps(l.cost, i, k) {
				l.move(i)
				if l.h.over() {
					break
				}
			}
		}
		now, worst := total(l.cost, k)
		if now < least {
			if now < 0.98*least {
				idle = 0
			}
			least = now
			copy(best, l.pegs)
		}
		if l.h.over() {
			break
		}
		l.reweigh(worst)
	}
	copy(l.pegs, best)
	return least
}

// reweigh makes overlapping pairs weigh more, the worst the most, and the others
// a little less.
func (l *lattice) reweigh(worst float32) {
	k := len(l.pegs)
	for i := range k {
		for j, c := range l.cost[i*k : i*k+i] {
			w := l.weight[i*k+j]
			switch {
			case c > 0:
				w = min(w*(1.2+float32(0.8*(c/worst))), heaviest)
			case w > 1:
				w = max(1, float32(w*0.95))
			default:
				continue
			}
			l.weight[i*k+j], l.weight[j*k+i] = w, w
		}
	}
}

// search finds shorter and shorter lays. What fails at a length is tried again
// with some pieces tossed, until it does not overlap. False where no lay can be
// shorter.
func (l *lattice) search(until int64) bool {
	h := l.h
	if l.target() >= h.long {
		h.e.take(h.best)
		l.shorten()
	}
	for l.target() >= h.n.bound {
		if h.done+h.e.steps >= until || h.over() {
			return true
		}
		left := l.ease()
		if left == 0 {
			h.keep(l.seats())
			l.lend()
			l.shorten()
			continue
		}
		if left <= noWorse*l.least {
			l.base, l.least = slices.Clone(l.pegs), left
		}
		copy(l.pegs, l.base)
		l.lend()
		h.e.toss(h.tossed())
		l.regain()
	}
	return false
}

// target is the length it tries for.
func (l *lattice) target() int64 { return int64(l.long) * l.step }

// seats are where the pieces lie.
func (l *lattice) seats() []seat {
	out := make([]seat, len(l.pegs))
	for i, item := range l.h.e.item {
		p := l.pegs[i]
		out[item] = seat{p.variant, int64(p.x) * l.step, int64(p.y) * l.step}
	}
	return out
}

// shorten takes the cloth, and what the easer has, to a step less than they reach
// now.
func (l *lattice) shorten() {
	e := l.h.e
	var end int64
	for i := range e.lie {
		end = max(end, int64(e.lie[i].y)+l.h.n.variants[e.lie[i].variant].long)
	}
	l.long, l.least = l.up(end)-1, math.MaxFloat32
	e.shorten(float64(end), float64(l.target()))
	l.regain()
}

// lend gives the easer the places of the pieces.
func (l *lattice) lend() {
	for i, p := range l.pegs {
		l.h.e.lie[i] = lie{float64(int64(p.x) * l.step), float64(int64(p.y) * l.step), p.variant}
	}
}

// regain takes the places the easer has, each as the nearest on the lattice.
func (l *lattice) regain() {
	for i, o := range l.h.e.lie {
		room := l.room(o.variant)
		near := func(place float64, room int) int {
			return max(min(int(place/float64(l.step)+0.5), room-1), 0)
		}
		l.pegs[i] = peg{mark{near(o.x, room.x), near(o.y, room.y)}, o.variant}
	}
}
