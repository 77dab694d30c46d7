package nest

import (
	"cmp"
	"context"
	"math/rand/v2"
	"slices"
	"sync"

	"example.com/clothyard/yardage/layout/internal/whole"
)

const (
	turnOfBinder = 2_000_000 // steps after which all binders go on from the best lay of any
	mostZones    = 100_000   // pairs of variants that a binder remembers
	mostParts    = 2_000     // convex parts of all variants; more, and they are laid as their rectangles
	mostHeld     = 1_000_000 // zones that a binder holds, about; more, and it makes them anew
)

// constrained reports whether the cloth bars places or pieces are bound to some.
func (n *Nest) constrained() bool {
	return len(n.Barred) > 0 || n.Sets > 0 || slices.ContainsFunc(n.Variants, func(v Variant) bool { return v.Fold || v.Centred })
}

// A zone is where a part of one piece overlaps a part of another, by the place
// of the one as seen from the other, or from the cloth.
type zone struct {
	pts    []vertex
	lo, hi vertex
}

// A binder lays pieces one by one where they may lie, in one order after another.
type binder struct {
	n     *Nest
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

	seats  []Seat
	laid   []int
	phase  []vertex // by set
	fixed  []bool   // by set: whether phase.y is
	rivals []Seat

	best  []Seat
	end   int64
	order []int // of the best lay
}

// boxed are the rectangles around outlines, as their only parts.
func boxed(outlines [][]vertex) [][][]vertex {
	out := make([][][]vertex, len(outlines))
	for i, pts := range outlines {
		lo, hi := corners(pts)
		out[i] = [][]vertex{{lo, {X: hi.X, Y: lo.Y}, hi, {X: lo.X, Y: hi.Y}}}
	}
	return out
}

// boxed are the rectangles around the variants.
func (n *Nest) boxed() [][][]vertex {
	outlines := make([][]vertex, len(n.Variants))
	for i := range n.Variants {
		outlines[i] = n.Variants[i].pts
	}
	return boxed(outlines)
}

// binder is one of such a number, that lays parts clear of flaws.
func (n *Nest) binder(ctx context.Context, number int, seed uint64, parts, flaws [][][]vertex) *binder {
	return &binder{n: n, ctx: ctx, parts: parts, flaws: flaws, dice: rand.New(rand.NewPCG(seed, uint64(number)^0x9e3779b97f4a7c15)),
		zones: map[[2]int][]zone{}, bars: map[int][]zone{},
		seats: make([]Seat, len(n.Items)), phase: make([]vertex, n.Sets+1), fixed: make([]bool, n.Sets+1)}
}

// Quick is a lay of the pieces as the rectangles around them, clear of those around
// the flaws.
func (n *Nest) Quick() []Seat {
	if !n.constrained() {
		return n.boxes()
	}
	b := n.binder(context.Background(), 0, 0, n.boxed(), boxed(n.Barred))
	b.lay(n.order(b.dice, false))
	return b.seats
}

// bind finds the best lay that work allows where the cloth bars places or pieces
// are bound to some, and tells whether ctx was done before that.
func (n *Nest) bind(ctx context.Context, work int, seed uint64) (best []Seat, stopped bool) {
	if !n.divide(ctx, 0) {
		return n.Quick(), true
	}
	parts := make([][][]vertex, len(n.Variants))
	many := 0
	for i := range n.Variants {
		parts[i] = n.Variants[i].parts
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
		flaws = boxed(n.Barred)
	}
	var bs [hunters]*binder
	for i := range bs {
		bs[i] = n.binder(ctx, i, seed, parts, flaws)
		bs[i].spend = int64(work) * StepsPerWork / hunters
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
			return n.Quick(), true
		} else if ended {
			return lead.best, stopped
		}
	}
}

// tell tells whoever watches how far the search has come.
func (n *Nest) tell(end, steps int64) {
	if n.Watch != nil {
		n.Watch(end, steps)
	}
}

// over reports whether the binder must end, or has done so many steps.
func (b *binder) over(until int64) bool {
	b.halt = b.halt || b.ctx.Err() != nil
	return b.halt || b.best != nil && (b.steps >= until || b.end <= b.n.Bound)
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
	if b.n.RepeatX > 0 {
		for set := 1; set <= b.n.Sets; set++ {
			list := b.n.Phases[set]
			b.phase[set].X = list[b.dice.IntN(len(list))]
		}
	}
	for set := 1; set <= b.n.Sets; set++ {
		if b.n.Given[set] {
			b.phase[set].Y, b.fixed[set] = 0, true
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
	best, end := Seat{}, int64(-1)
	for _, v := range b.n.Kinds[b.n.Items[i]].Variants {
		one := &b.n.Variants[v]
		for _, x := range b.columns(one, tries) {
			if b.halt = b.halt || b.ctx.Err() != nil; b.halt {
				return
			}
			high := int64(farthest)
			if end >= 0 {
				high = end - one.Long - 1
			}
			if y, ok := b.lowestAt(v, x, high); ok {
				best, end = Seat{v, x, y}, y+one.Long
			}
		}
	}
	b.seats[i] = best
	b.laid = append(b.laid, i)
	if one := &b.n.Variants[best.Variant]; one.Set > 0 && b.n.RepeatY > 0 && !b.fixed[one.Set] {
		b.fixed[one.Set] = true
		b.phase[one.Set].Y = whole.Modulo(best.Y+one.Off.Y, b.n.RepeatY)
	}
}

// columns are the places across that are tried.
func (b *binder) columns(one *Variant, tries int) []int64 {
	room := b.n.Wide - one.Wide
	x, repeat := one.Centre, b.n.Half
	if one.Set > 0 && b.n.RepeatX > 0 {
		x, repeat = whole.Modulo(b.phase[one.Set].X-one.Off.X, b.n.RepeatX), b.n.RepeatX
	} else if !one.Centred {
		repeat = 0
	}
	if repeat > 0 {
		if x > room || one.Fold && x > 0 || one.Centred && (x-one.Centre)%b.n.Half != 0 {
			return nil
		}
		if one.Fold {
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
	if one.Fold {
		return []int64{0}
	}
	xs := []int64{0, room}
	var touch []int64
	for k := int64(1); k < int64(tries); k++ {
		touch = append(touch, room/int64(tries)*k)
	}
	for _, j := range b.laid {
		o := b.seats[j]
		touch = append(touch, o.X+b.n.Variants[o.Variant].Wide+b.n.Gap, o.X-one.Wide-b.n.Gap)
	}
	for _, parts := range b.flaws {
		for _, part := range parts {
			lo, hi := corners(part)
			touch = append(touch, hi.X, lo.X-one.Wide)
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
	one := &b.n.Variants[v]
	b.rivals = b.rivals[:0]
	for _, j := range b.laid {
		o := b.seats[j]
		if o.X < x+one.Wide+b.n.Gap && x < o.X+b.n.Variants[o.Variant].Wide+b.n.Gap {
			b.rivals = append(b.rivals, o)
		}
	}
	slices.SortFunc(b.rivals, func(p, q Seat) int { return cmp.Or(cmp.Compare(p.Y, q.Y), cmp.Compare(p.X, q.X)) })
	bars := b.barred(v)
	y := int64(0)
	for again := true; again; {
		again = false
		if one.Set > 0 && b.n.RepeatY > 0 && b.fixed[one.Set] {
			y += whole.Modulo(b.phase[one.Set].Y-one.Off.Y-y, b.n.RepeatY)
		}
		b.steps++
		if at := past(bars, x, y); at != y {
			y, again = at, true
		}
		for _, o := range b.rivals {
			if y > high {
				return y, false
			}
			if o.Y >= y+one.Long+b.n.Gap {
				break
			}
			if o.Y+b.n.Variants[o.Variant].Long+b.n.Gap <= y {
				continue
			}
			b.steps++
			if at := past(b.between(o.Variant, v), x-o.X, y-o.Y); at != y-o.Y {
				y, again = o.Y+at, true
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
			if x <= z.lo.X || x >= z.hi.X || at <= z.lo.Y || at >= z.hi.Y {
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
		out = zonesOf(b.parts[p], b.parts[q], b.n.Gap)
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
