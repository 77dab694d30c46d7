package layout

import (
	"cmp"
	"context"
	"math/rand/v2"
	"slices"
	"sync"
)

const (
	turnOfBinder = 2_000_000 // steps after which all binders go on from the best lay of any
	mostZones    = 100_000   // pairs of variants that a binder remembers
	mostParts    = 2_000     // convex parts of all variants; more, and they are laid as their rectangles
	mostHeld     = 1_000_000 // zones that a binder holds, about; more, and it makes them anew
)

// constrained reports whether the cloth bars places or pieces are bound to some.
func (n *nest) constrained() bool {
	return len(n.barred) > 0 || n.sets > 0 || slices.ContainsFunc(n.variants, func(v variant) bool { return v.fold || v.centred })
}

// A zone is where a part of one piece overlaps a part of another, by the place
// of the one as seen from the other, or from the cloth.
type zone struct {
	pts    []vertex
	lo, hi vertex
}

// A binder lays pieces one by one where they may lie, in one order after another.
type binder struct {
	n     *nest
	ctx   context.Context
	dice  *rand.Rand
	zones map[[2]int][]zone
	bars  map[int][]zone // by variant: where it would lie on a flaw
	held  int            // zones in both
	parts [][][]vertex   // by variant
	flaws [][][]vertex
	spend int64
	steps int64
	halt  bool

	seats  []seat
	laid   []int
	phase  []vertex // by set
	fixed  []bool   // by set: whether phase.y is
	rivals []seat

	best  []seat
	end   int64
	order []int // of the best lay
}

// boxed are the rectangles around outlines, as their only parts.
func boxed(outlines [][]vertex) [][][]vertex {
	out := make([][][]vertex, len(outlines))
	for i, pts := range outlines {
		lo, hi := corners(pts)
		out[i] = [][]vertex{{lo, {hi.x, lo.y}, hi, {lo.x, hi.y}}}
	}
	return out
}

// boxed are the rectangles around the variants.
func (n *nest) boxed() [][][]vertex {
	outlines := make([][]vertex, len(n.variants))
	for i := range n.variants {
		outlines[i] = n.variants[i].pts
	}
	return boxed(outlines)
}

// binder is one of such a number, that lays parts clear of flaws.
func (n *nest) binder(ctx context.Context, number int, seed uint64, parts, flaws [][][]vertex) *binder {
	return &binder{n: n, ctx: ctx, parts: parts, flaws: flaws, dice: rand.New(rand.NewPCG(seed, uint64(number)^0x9e3779b97f4a7c15)),
		zones: map[[2]int][]zone{}, bars: map[int][]zone{},
		seats: make([]seat, len(n.items)), phase: make([]vertex, n.sets+1), fixed: make([]bool, n.sets+1)}
}

// quick is a lay of the pieces as the rectangles around them, clear of those around
// the flaws.
func (n *nest) quick() []seat {
	if !n.constrained() {
		return n.boxes()
	}
	b := n.binder(context.Background(), 0, 0, n.boxed(), boxed(n.barred))
	b.lay(n.order(b.dice, false))
	return b.seats
}

// bind finds the best lay that work allows where the cloth bars places or pieces
// are bound to some, and tells whether ctx was done before that.
func (n *nest) bind(ctx context.Context, work int, seed uint64) (best []seat, stopped bool) {
	if !n.divide(ctx) {
		return n.quick(), true
	}
	parts := make([][][]vertex, len(n.variants))
	many := 0
	for i := range n.variants {
		parts[i] = n.variants[i].parts
		many += len(parts[i])
	}
	stains, flaws := 0, n.flaws
	for _, flaw := range flaws {
		stains += len(flaw)
	}
	if many > mostParts || many*stains > mostHeld {
		parts = n.boxed()
	}
	if len(parts)*stains > mostHeld {
		flaws = boxed(n.barred)
	}
	var bs [hunters]*binder
	for i := range bs {
		bs[i] = n.binder(ctx, i, seed, parts, flaws)
		bs[i].spend = int64(work) * stepsPerWork / hunters
	}
	for round := int64(1); ; round++ {
		var wait sync.WaitGroup
		for i, b := range bs {
			wait.Go(func() { b.run(i, min(round*turnOfBinder, b.spend)) })
		}
		wait.Wait()
		lead, ended := bs[0], false
		for _, b := range bs[1:] {
			if b.best != nil && (lead.best == nil || b.end < lead.end) {
				lead = b
			}
		}
		var done int64
		for _, b := range bs {
			b.best, b.end, b.order = lead.best, lead.end, lead.order
			done += b.steps
			stopped = stopped || b.halt
			ended = ended || b.over(b.spend)
		}
		if lead.best != nil {
			n.tell(lead.end, done)
		}
		if ended && lead.best == nil {
			return n.quick(), true
		} else if ended {
			return lead.best, stopped
		}
	}
}

// tell tells whoever watches how far the search has come.
func (n *nest) tell(end, steps int64) {
	if n.watch != nil {
		n.watch(end, steps)
	}
}

// over reports whether the binder must end, or has done so many steps.
func (b *binder) over(until int64) bool {
	b.halt = b.halt || b.ctx.Err() != nil
	return b.halt || b.best != nil && (b.steps >= until || b.end <= b.n.bound)
}

// run lays all pieces again and again until it has done so many steps.
func (b *binder) run(number int, until int64) {
	for !b.over(until) {
		order := b.next(number)
		if !b.lay(order) {
			return
		}
		if end := b.n.end(b.seats); b.best == nil || end < b.end {
			b.best, b.end, b.order = slices.Clone(b.seats), end, order
		}
	}
}

// next is the order to lay in: the first is by size, the others are the best so
// far with a few changes, and now and then one that is new.
func (b *binder) next(number int) []int {
	switch {
	case b.order == nil:
		return b.n.order(b.dice, number > 0)
	case b.dice.IntN(4) == 0:
		return b.n.order(b.dice, true)
	}
	out := slices.Clone(b.order)
	for range 1 + b.dice.IntN(3) {
		i, j := b.dice.IntN(len(out)), b.dice.IntN(len(out))
		one := out[i]
		out = slices.Insert(slices.Delete(out, i, i+1), j, one)
	}
	return out
}

// lay lays all pieces in an order; false where ctx was done before.
func (b *binder) lay(order []int) bool {
	b.laid = b.laid[:0]
	clear(b.fixed)
	if b.n.repeatX > 0 {
		for set := 1; set <= b.n.sets; set++ {
			list := b.n.phases[set]
			b.phase[set].x = list[b.dice.IntN(len(list))]
		}
	}
	for set := 1; set <= b.n.sets; set++ {
		if b.n.given[set] {
			b.phase[set].y, b.fixed[set] = 0, true
		}
	}
	tries := max(4, min(40, 4000/len(order)))
	for _, i := range order {
		b.put(i, tries)
		if b.halt {
			return false
		}
	}
	return true
}

// put lays item i at the best of the places tried, the one with its far edge
// nearest to the cut end. There always is one: behind all the others.
func (b *binder) put(i, tries int) {
	best, end := seat{}, int64(-1)
	for _, v := range b.n.kinds[b.n.items[i]].variants {
		one := &b.n.variants[v]
		for _, x := range b.columns(one, tries) {
			if b.halt = b.halt || b.ctx.Err() != nil; b.halt {
				return
			}
			high := int64(MaxGrid)
			if end >= 0 {
				high = end - one.long - 1
			}
			if y, ok := b.lowestAt(v, x, high); ok {
				best, end = seat{v, x, y}, y+one.long
			}
		}
	}
	b.seats[i] = best
	b.laid = append(b.laid, i)
	if one := &b.n.variants[best.variant]; one.set > 0 && b.n.repeatY > 0 && !b.fixed[one.set] {
		b.fixed[one.set] = true
		b.phase[one.set].y = modulo(best.y+one.off.y, b.n.repeatY)
	}
}

// columns are the places across that are tried.
func (b *binder) columns(one *variant, tries int) []int64 {
	room := b.n.wide - one.wide
	x, repeat := one.centre, b.n.half
	if one.set > 0 && b.n.repeatX > 0 {
		x, repeat = modulo(b.phase[one.set].x-one.off.x, b.n.repeatX), b.n.repeatX
	} else if !one.centred {
		repeat = 0
	}
	if repeat > 0 {
		if x > room || one.fold && x > 0 || one.centred && (x-one.centre)%b.n.half != 0 {
			return nil
		}
		if one.fold {
			return []int64{0}
		}
		out := []int64{x}
		many := (room - x) / repeat
		for k := int64(1); k <= many && k <= int64(tries); k++ {
			at := k
			if many > int64(tries) {
				at = 1 + b.dice.Int64N(many)
			}
			out = append(out, x+at*repeat)
		}
		slices.Sort(out)
		return slices.Compact(out)
	}
	if one.fold {
		return []int64{0}
	}
	xs := []int64{0, room}
	var touch []int64
	for k := int64(1); k < int64(tries); k++ {
		touch = append(touch, room/int64(tries)*k)
	}
	for _, j := range b.laid {
		o := b.seats[j]
		touch = append(touch, o.x+b.n.variants[o.variant].wide+b.n.gap, o.x-one.wide-b.n.gap)
	}
	for _, parts := range b.flaws {
		for _, part := range parts {
			lo, hi := corners(part)
			touch = append(touch, hi.x, lo.x-one.wide)
		}
	}
	slices.Sort(touch)
	touch = slices.Compact(touch)
	for len(touch) > 3*tries {
		at := b.dice.IntN(len(touch))
		touch[at] = touch[len(touch)-1]
		touch = touch[:len(touch)-1]
	}
	for _, x := range touch {
		if x > 0 && x < room {
			xs = append(xs, x)
		}
	}
	slices.Sort(xs)
	return slices.Compact(xs)
}

// lowestAt is the least y at which the variant may lie with its left side at x
// and has nothing in its way; false where that is above high.
func (b *binder) lowestAt(v int, x, high int64) (int64, bool) {
	one := &b.n.variants[v]
	b.rivals = b.rivals[:0]
	for _, j := range b.laid {
		o := b.seats[j]
		if o.x < x+one.wide+b.n.gap && x < o.x+b.n.variants[o.variant].wide+b.n.gap {
			b.rivals = append(b.rivals, o)
		}
	}
	slices.SortFunc(b.rivals, func(p, q seat) int { return cmp.Or(cmp.Compare(p.y, q.y), cmp.Compare(p.x, q.x)) })
	bars := b.barred(v)
	y := int64(0)
	for again := true; again; {
		again = false
		if one.set > 0 && b.n.repeatY > 0 && b.fixed[one.set] {
			y += modulo(b.phase[one.set].y-one.off.y-y, b.n.repeatY)
		}
		b.steps++
		if at := past(bars, x, y); at != y {
			y, again = at, true
		}
		for _, o := range b.rivals {
			if y > high {
				return y, false
			}
			if o.y >= y+one.long+b.n.gap {
				break
			}
			if o.y+b.n.variants[o.variant].long+b.n.gap <= y {
				continue
			}
			b.steps++
			if at := past(b.between(o.variant, v), x-o.x, y-o.y); at != y-o.y {
				y, again = o.y+at, true
			}
		}
	}
	return y, y <= high
}

// past is the least y from at on at which a place x is in none of the zones.
func past(zones []zone, x, at int64) int64 {
	for again := true; again; {
		again = false
		for i := range zones {
			z := &zones[i]
			if x <= z.lo.x || x >= z.hi.x || at <= z.lo.y || at >= z.hi.y {
				continue
			}
			if from, to := shadow(z.pts, x, true); from <= at && at <= to {
				at, again = to+1, true
			}
		}
	}
	return at
}

// between are the zones of two variants, by the place of the second from that of
// the first.
func (b *binder) between(p, q int) []zone {
	key := [2]int{p, q}
	out, found := b.zones[key]
	if !found {
		out = zonesOf(b.parts[p], b.parts[q], b.n.gap)
		b.hold(len(out))
		b.zones[key] = out
	}
	return out
}

// barred are the places at which a variant would lie on a flaw.
func (b *binder) barred(v int) []zone {
	out, found := b.bars[v]
	if !found {
		for _, flaw := range b.flaws {
			out = append(out, zonesOf(flaw, b.parts[v], 0)...)
		}
		b.hold(len(out))
		b.bars[v] = out
	}
	return out
}

// hold makes room for more zones, dropping those it has where they are too many.
func (b *binder) hold(more int) {
	if b.held += more; b.held > mostHeld || len(b.zones) >= mostZones {
		clear(b.zones)
		clear(b.bars)
		b.held = more
	}
}

func zonesOf(a, b [][]vertex, gap int64) []zone {
	out := make([]zone, 0, len(a)*len(b))
	for _, p := range a {
		for _, q := range b {
			z := zone{pts: difference(p, q, gap)}
			z.lo, z.hi = corners(z.pts)
			out = append(out, z)
		}
	}
	return out
}
