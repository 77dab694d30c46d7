package nest

import (
	"cmp"
	"math"
	"math/rand/v2"
	"slices"
)

// An easer moves overlapping pieces apart on a cloth of a given length. Every
// pair that overlaps costs by how deep it does and by a weight, which grows as
// long as the pair goes on overlapping: that is what gets it out of a place where
// no single move helps.
type easer struct {
	t          *table
	n          *Nest
	dice       *rand.Rand
	steps      int64
	stop       func() bool
	wide, long float64
	pad        float64 // by how much they may be too large

	item   []int // the items by size, the greatest first: what follows goes by places in this list
	kind   []int
	lie    []lie
	cost   []float64 // of each pair, by item and item, without its weight
	weight []float64
	scale  []float64 // by kind and kind
	jump   []float64 // what any overlap costs at least, as a depth

	bands
	scaled []float64 // of each pair: its scale and weight

	left   float64   // the least cost that the last easing came to, where it failed
	side   []float64 // by kind: that of a square as large
	luck   luck
	fields []field
	order  []int
	near   []rival  // of at
	known  []border // of polish
	inside []int
}

// A lie is how and where an item lies.
type lie struct {
	x, y    float64
	variant int
}

// A field is where a variant of the moving piece may lie.
type field struct {
	variant    int
	wide, long float64 // room to move
}

// clamp is the place nearest to (x, y) where it may.
func (f *field) clamp(x, y float64) (float64, float64) {
	return min(max(x, 0), f.wide), min(max(y, 0), f.long)
}

func newEaser(t *table, dice *rand.Rand, stop func() bool) *easer {
	n := t.n
	e := &easer{t: t, n: n, dice: dice, stop: stop, pad: 24 * t.margin}
	e.loosen(true)
	k := len(n.Items)
	e.item, e.kind, e.lie = make([]int, k), make([]int, k), make([]lie, k)
	e.cost, e.weight = make([]float64, k*k), make([]float64, k*k)
	e.order = make([]int, k)
	kinds := len(n.Kinds)
	e.scale, e.jump = make([]float64, kinds*kinds), make([]float64, kinds*kinds)
	side := make([]float64, kinds)
	for i := range n.Kinds {
		side[i] = n.side(i)
	}
	mean := n.meanSide()
	for i := range kinds {
		for j := range kinds {
			e.scale[i*kinds+j] = math.Sqrt(float64(side[i]*side[j])) / float64(mean*mean)
			e.jump[i*kinds+j] = jump * min(side[i], side[j])
		}
	}
	e.side = side
	for i := range e.item {
		e.item[i] = i
	}
	slices.SortStableFunc(e.item, func(a, b int) int { return cmp.Compare(side[n.Items[b]], side[n.Items[a]]) })
	for i, item := range e.item {
		e.kind[i] = n.Items[item]
	}
	most := 1
	for i := range n.Kinds {
		most = max(most, len(n.Kinds[i].Variants))
	}
	e.fields = make([]field, most)
	e.scaled = make([]float64, k*k)
	e.bands = newBands(t)
	e.near, e.known, e.inside = make([]rival, 0, k), make([]border, 0, edgesHeld), make([]int, 0, k)
	return e
}

// side is that of a square as large as a kind.
func (n *Nest) side(kind int) float64 {
	a := n.Kinds[kind].area
	return math.Sqrt((float64(a.Hi)*(1<<64) + float64(a.Lo)) / 2)
}

// meanSide is the mean of the sides of all items.
func (n *Nest) meanSide() float64 {
	var sum float64
	for _, kind := range n.Items {
		sum += n.side(kind)
	}
	return sum / float64(len(n.Items))
}

// weigh gives the pair of items i and j a weight.
func (e *easer) weigh(i, j int, weight float64) {
	k := len(e.n.Items)
	e.weight[i*k+j], e.weight[j*k+i] = weight, weight
	scaled := e.scale[e.kind[i]*len(e.n.Kinds)+e.kind[j]] * weight
	e.scaled[i*k+j], e.scaled[j*k+i] = scaled, scaled
}

// take puts the pieces where the seats are.
func (e *easer) take(seats []Seat) {
	for i, item := range e.item {
		s := seats[item]
		e.lie[i] = lie{float64(s.X), float64(s.Y), s.Variant}
	}
}

// pairCost is what items i and j cost as they lie.
func (e *easer) pairCost(i, j int) float64 {
	v := e.t.at(e.lie[i].variant, e.lie[j].variant)
	e.steps += 1 + v.extra
	d := v.depth(e.lie[j].x-e.lie[i].x, e.lie[j].y-e.lie[i].y)
	if d <= 0 {
		return 0
	}
	k := e.kind[i]*len(e.n.Kinds) + e.kind[j]
	return float64((d + e.jump[k]) * e.scale[k])
}

// tally works out all costs and returns their sum.
func (e *easer) tally() float64 {
	k := len(e.n.Items)
	var sum float64
	for i := range k {
		for j := range i {
			c := e.pairCost(j, i)
			e.cost[i*k+j], e.cost[j*k+i] = c, c
			sum += c
		}
	}
	return sum
}

// total is the sum of the costs as they are, and the worst of them.
func (e *easer) total() (sum, worst float64) {
	k := len(e.n.Items)
	for i := range k {
		for _, c := range e.cost[i*k : i*k+i] {
			if c > 0 {
				sum += c
				worst = max(worst, c)
			}
		}
	}
	return sum, worst
}

// update works out the costs of item i anew.
func (e *easer) update(i int) {
	k := len(e.n.Items)
	for j, c := range e.cost[i*k : i*k+k] {
		if c > 0 {
			e.cost[i*k+j], e.cost[j*k+i] = 0, 0
		}
	}
	for j := range e.rivals(i, e.lie[i].variant, e.lie[i].x, e.lie[i].y) {
		if c := e.pairCost(j, i); c > 0 {
			e.cost[i*k+j], e.cost[j*k+i] = c, c
		}
	}
}

// own is what item i costs with its weights.
func (e *easer) own(i int) float64 {
	k := len(e.n.Items)
	var sum float64
	for j, c := range e.cost[i*k : i*k+k] {
		sum += float64(c * e.weight[i*k+j])
	}
	return sum
}

// field is where item i may lie as variant v; false where it has no room.
func (e *easer) field(f *field, v int) bool {
	one := &e.n.Variants[v]
	*f = field{v, e.wide - float64(one.Wide), e.long - float64(one.Long)}
	return f.wide >= 0 && f.long >= 0
}

// A rival is an item that one that moves may overlap.
type rival struct {
	item, cell int     // of the chart of the two
	least      float64 // what it costs at least
}

// at is what item i costs at a place. It gives up at limit, which most places are soon
// seen to reach by how deep all places near them are; a step is counted for all that.
func (e *easer) at(i int, f *field, x, y, limit float64) float64 {
	k, kinds := len(e.n.Items), len(e.n.Kinds)
	pairs, scaled := e.t.against(f.variant), e.scaled[i*k:i*k+k]
	jumps := e.jump[e.kind[i]*kinds:][:kinds]
	near, rest := e.near[:0], 0.0
	e.steps++
	for j := range e.rivals(i, f.variant, x, y) {
		o := &e.lie[j]
		v := &pairs[o.variant]
		cell, ok := v.find(v.turn(x-o.x, y-o.y))
		if !ok || v.rough[cell] == 0 {
			continue
		}
		r := rival{item: j, cell: cell}
		if deep := v.rough[cell] - 1; deep > 0 {
			r.least = float64((float64(float64(deep)*v.unit) + jumps[e.kind[j]]) * scaled[j])
			if rest += r.least; rest >= limit {
				return rest
			}
		}
		near = append(near, r)
	}
	var sum float64
	e.steps += int64(len(near))
	for _, r := range near {
		rest -= r.least
		o := &e.lie[r.item]
		v := &pairs[o.variant]
		tx, ty := v.turn(x-o.x, y-o.y)
		e.steps += v.extra
		if d, _ := v.among(r.cell, tx, ty); d > 0 {
			sum += float64((d + jumps[e.kind[r.item]]) * scaled[r.item])
			if sum+rest >= limit {
				return sum + rest
			}
		}
	}
	return sum
}

// A try is a place looked at.
type try struct {
	f    *field
	x, y float64
	cost float64
}

const (
	widely = 40   // places tried over all the cloth
	nearby = 20   // places tried near where the piece lies
	jump   = 0.01 // what any overlap costs at least, as a depth in parts of the lesser piece
	keep   = 3    // the best of these that are followed
)

// move looks for the best place of item i and lays it there.
func (e *easer) move(i int) {
	now := e.own(i)
	var best [keep]try
	for k := range best {
		best[k].cost = math.MaxFloat64
	}
	put := func(f *field, x, y float64) {
		c := e.at(i, f, x, y, best[keep-1].cost)
		if c >= best[keep-1].cost {
			return
		}
		one := &e.n.Variants[f.variant]
		near := 0.02 * float64(one.Wide+one.Long)
		at := keep - 1
		for k := range best {
			if b := &best[k]; b.f == f && math.Abs(b.x-x) < near && math.Abs(b.y-y) < near {
				if b.cost <= c {
					return
				}
				at = k
				break
			}
		}
		best[at] = try{f, x, y, c}
		for ; at > 0 && best[at].cost < best[at-1].cost; at-- {
			best[at], best[at-1] = best[at-1], best[at]
		}
	}
	// As it is turned now first: the rest then has good places to be measured by.
	ways := e.n.Kinds[e.kind[i]].Variants
	for k, v := range ways {
		f := &e.fields[k]
		if v != e.lie[i].variant || !e.field(f, v) {
			continue
		}
		one := &e.n.Variants[v]
		put(f, e.lie[i].x, e.lie[i].y)
		rx, ry := 0.25*float64(one.Wide), 0.25*float64(one.Long)
		spread := e.spread()
		for range nearby {
			dx, dy := spread.two()
			x, y := f.clamp(e.lie[i].x+float64((2*dx-1)*rx), e.lie[i].y+float64((2*dy-1)*ry))
			put(f, x, y)
		}
	}
	spread := e.spread()
	for k, v := range ways {
		f := &e.fields[k]
		if !e.field(f, v) {
			continue
		}
		for range 1 + widely/len(ways) {
			dx, dy := spread.two()
			put(f, float64(dx*f.wide), float64(dy*f.long))
		}
	}
	win := -1
	for k := range best {
		if best[k].f == nil {
			continue
		}
		if best[k].cost > 0 {
			e.descend(i, &best[k], 0.1, 0.05)
			e.polish(i, &best[k])
		}
		if win < 0 || best[k].cost < best[win].cost {
			win = k
		}
		if best[k].cost == 0 {
			break
		}
	}
	if win < 0 {
		return
	}
	if b := &best[win]; b.cost < now {
		e.lay(i, b.f.variant, b.x, b.y)
		e.update(i)
		now = b.cost
	}
	if now > 0 {
		e.swaps(i)
	}
}

// two are two numbers by chance, at least 0 and less than 1.
func (e *easer) two() (a, b float64) {
	u := e.dice.Uint64()
	return float64(u>>32) / (1 << 32), float64(uint32(u)) / (1 << 32)
}

// A spread is a row of places that lie evenly on a square, from the first on,
// however many are taken: each coordinate goes on by what leaves it farthest from
// where it was.
type spread struct{ x, y uint32 }

// spread begins one, by chance.
func (e *easer) spread() spread {
	u := e.dice.Uint64()
	return spread{uint32(u >> 32), uint32(u)}
}

// two are the next place, coordinates at least 0 and less than 1.
func (s *spread) two() (x, y float64) {
	s.x += 3242174889 // 1/g and 1/g² of 2^32, where g³ = g + 1
	s.y += 2447445413
	return float64(s.x) / (1 << 32), float64(s.y) / (1 << 32)
}

// descend goes downhill from a place, along the axes and across them, by steps
// that are from and to in parts of the piece's lesser side.
func (e *easer) descend(i int, b *try, from, to float64) {
	one := &e.n.Variants[b.f.variant]
	size := float64(min(one.Wide, one.Long))
	step, least := from*size, to*size
	sx, sy := step, step
	axes := uint64(1)
	for max(sx, sy) >= least && b.cost > 0 {
		var dx, dy float64
		if axes == 1 {
			axes = e.dice.Uint64()>>1 | 1<<62
		}
		axis := axes & 3
		axes >>= 2
		switch axis {
		case 0:
			dx = sx
		case 1:
			dy = sy
		case 2:
			dx, dy = sx, sy
		case 3:
			dx, dy = sx, -sy
		}
		better := false
		for range 2 {
			x, y := b.f.clamp(b.x+dx, b.y+dy)
			if c := e.at(i, b.f, x, y, b.cost); c < b.cost {
				b.x, b.y, b.cost, better = x, y, c, true
				break
			}
			dx, dy = -dx, -dy
		}
		grow := 0.5
		if better {
			grow = 1.1
		} else if axis >= 2 {
			grow = 0.7071
		}
		if axis != 1 {
			sx *= grow
		}
		if axis != 0 {
			sy *= grow
		}
	}
}

// ease moves pieces until none overlaps; false when it gives up, after so many
// rounds without getting better.
func (e *easer) ease(most int) bool {
	k := len(e.n.Items)
	for i := range k {
		for j := range i {
			e.weigh(i, j, 1)
		}
	}
	e.survey()
	least := e.tally()
	if least == 0 {
		return true
	}
	best := slices.Clone(e.lie)
	for again := true; again; {
		begin := least
		for idle := 0; idle < most; {
			for i := range e.order {
				e.order[i] = i
			}
			e.dice.Shuffle(k, func(a, b int) { e.order[a], e.order[b] = e.order[b], e.order[a] })
			for _, i := range e.order {
				if e.overlaps(i) {
					e.move(i)
					if e.stop() {
						return false
					}
				}
			}
			now, worst := e.total()
			if now == 0 {
				return true
			}
			idle++
			if now < least {
				if now < 0.98*least {
					idle = 0
				}
				least = now
				copy(best, e.lie)
			}
			e.reweigh(worst)
		}
		again = least < 0.98*begin
		copy(e.lie, best)
		e.survey()
		e.tally()
	}
	e.left = least
	return false
}

// overlaps reports whether item i costs anything.
func (e *easer) overlaps(i int) bool {
	k := len(e.n.Items)
	for _, c := range e.cost[i*k : i*k+k] {
		if c > 0 {
			return true
		}
	}
	return false
}

// reweigh makes overlapping pairs weigh more, the worst the most, and the others
// a little less.
func (e *easer) reweigh(worst float64) {
	k := len(e.n.Items)
	for i := range k {
		for j, c := range e.cost[i*k : i*k+i] {
			w := e.weight[i*k+j]
			switch {
			case c > 0:
				w *= 1.2 + float64(0.8*(c/worst))
			case w > 1:
				w = max(1, w*0.95)
			default:
				continue
			}
			e.weigh(i, j, w)
		}
	}
}
