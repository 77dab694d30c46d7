package nest

import (
	"context"
	"math"
	"math/rand/v2"
	"slices"
	"sync/atomic"
	"testing"
)

// lone is a hunter without another.
func lone(full *table, seed1, seed2 uint64) *hunter {
	last := new(atomic.Int64)
	last.Store(math.MaxInt64)
	return &hunter{t: full, n: full.n, dice: rand.New(rand.NewPCG(seed1, seed2)), ctx: context.Background(), spend: math.MaxInt64, last: last}
}

// latticed is a hunter for pieces that lie on a lattice, with a first lay, and the
// hunter's lattice.
func latticed(t *testing.T, seed uint64, n *Nest) (*hunter, *lattice) {
	t.Helper()
	full := filled(t, n)
	h := lone(full, seed, 9)
	h.first()
	h.e = newEaser(full, h.dice, h.over)
	l := newLattice(h, false)
	if l == nil {
		t.Fatal("no lattice")
	}
	return h, l
}

func wedges(t *testing.T, seed uint64, gap int64) (*hunter, *lattice) {
	return latticed(t, seed, made(t, 20, gap, 1,
		drawn(6, byHalf, 0, 0, 9, 0, 9, 3, 4, 3, 4, 9, 0, 9),
		drawn(5, byQuarters, 0, 0, 8, 4, 3, 8),
		drawn(7, byHalf, 3, 0, 9, 5, 5, 7, 0, 4)))
}

// What a lattice has as the costs of a place is what its pairs cost there, nothing
// where none overlap, and a move goes to the least.
func TestLatticeMove(t *testing.T) {
	h, l := wedges(t, 5, 2)
	k := len(l.pegs)
	costs := func(i int, p peg) (sum, bare float64) {
		for j, o := range l.pegs {
			if j == i {
				continue
			}
			x, y := int64(p.x-o.x)*l.step, int64(p.y-o.y)*l.step
			c := float64(l.patch(p.variant, o).at(p.x-o.x, p.y-o.y))
			if over := h.t.at(o.variant, p.variant).holds(x, y); over != (c > 0) || c != math.Trunc(c) || c > deepestOne {
				t.Fatalf("item %d at %v costs %v beside %v, overlaps: %t", i, p, c, o, over)
			}
			bare += c
			if i >= 0 {
				sum += c * float64(l.weight[i*k+j])
			}
		}
		return sum, bare
	}
	for i := range l.pegs {
		ways := h.n.Kinds[h.e.kind[i]].Variants
		v := ways[h.dice.IntN(len(ways))]
		room := l.room(v)
		l.pegs[i] = peg{mark{h.dice.IntN(room.x), h.dice.IntN(room.y)}, v}
	}
	l.survey()
	moved := 0
	for range 3 {
		for i := range k {
			was := l.pegs[i]
			best := math.MaxFloat64
			for _, v := range h.n.Kinds[h.e.kind[i]].Variants {
				room := l.room(v)
				for at := range room.x * room.y {
					sum, _ := costs(i, peg{mark{at % room.x, at / room.x}, v})
					best = min(best, sum)
				}
			}
			l.move(i)
			if got, _ := costs(i, l.pegs[i]); math.Abs(got-best) > 1e-4*(1+best) {
				t.Fatalf("item %d moved from %v to %v for %v, the least is %v", i, was, l.pegs[i], got, best)
			}
			if l.pegs[i] != was {
				moved++
			}
		}
		var sum float64
		for i := range k {
			_, bare := costs(i, l.pegs[i])
			sum += bare / 2
			if float64(l.own[i]) != bare {
				t.Fatalf("item %d costs %d, want %v", i, l.own[i], bare)
			}
		}
		if float64(l.left) != sum {
			t.Fatalf("all cost %d, want %v", l.left, sum)
		}
		for v := range l.planes {
			l.sync(v, -1)
			p := &l.planes[v]
			if p.room != l.room(v) || len(p.low) != p.room.y {
				t.Fatalf("variant %d has places for %v, not %v", v, p.room, l.room(v))
			}
			for y, low := range p.low {
				for x := range p.words * lanes {
					want := float64(fullest)
					if x < p.room.x {
						_, want = costs(-1, peg{mark{x, y}, v})
					}
					if got := p.at(mark{x, y}); float64(got) != want || got < lane(low, x) {
						t.Fatalf("variant %d at %d,%d costs %v, want %v; of its row none less than %x", v, x, y, got, want, low)
					}
				}
			}
		}
		l.reweigh()
	}
	if moved < k {
		t.Fatalf("only %d moves", moved)
	}
}

// proven fails where the best lay of a hunter has pieces that overlap, or lie off
// the cloth.
func (h *hunter) proven(t *testing.T) {
	t.Helper()
	for i, a := range h.best {
		one := &h.n.Variants[a.Variant]
		if a.X < 0 || a.Y < 0 || a.X+one.Wide > h.n.Wide || a.Y+one.Long > h.long {
			t.Fatalf("item %d lies outside, at %v", i, a)
		}
		for _, b := range h.best[:i] {
			if h.t.at(b.Variant, a.Variant).holds(a.X-b.X, a.Y-b.Y) {
				t.Fatalf("%v and %v overlap", a, b)
			}
		}
	}
}

// A search on a lattice ends with the shortest of the lays it came by, on the
// lattice, proven; it is the same for the same seed.
func TestLatticeSearch(t *testing.T) {
	const until = 400_000
	h, l := wedges(t, 6, 1)
	first := h.long
	if !l.search(until) {
		t.Fatal("nothing left to search for")
	}
	if h.long >= first {
		t.Fatalf("%d steps long, %d at first", h.long, first)
	}
	if over := h.done - until; over < 0 || over > until {
		t.Fatalf("%d steps, not %d", h.done, until)
	}
	h.proven(t)
	for i, a := range h.best {
		if a.X%l.step != 0 || a.Y%l.step != 0 {
			t.Fatalf("item %d lies at %v", i, a)
		}
	}
	again, twin := wedges(t, 6, 1)
	twin.search(until)
	if again.long != h.long || again.done != h.done {
		t.Fatalf("%d in %d steps, then %d in %d", h.long, h.done, again.long, again.done)
	}
	// From a lay that another search found.
	end := h.long
	h.best = make([]Seat, len(h.best))
	for i, item := range h.e.item {
		h.best[item] = Seat{h.n.Kinds[h.e.kind[i]].Variants[0], 0, 0}
	}
	h.long = l.goal - 1
	l.search(h.done + until/8)
	if l.goal >= end {
		t.Fatalf("it tries for %d, with %d found", l.goal, end)
	}
}

// slackened is latticed for pieces of no grid, where a little overlap costs nothing.
func slackened(t *testing.T, seed uint64) (*hunter, *lattice) {
	t.Helper()
	h, l := latticed(t, seed, made(t, 20*thousand, thousand, 1, times(drawn(12, byHalf, 0, 0, 6, 1, 5, 6), thousand),
		times(drawn(12, byHalf, 0, 0, 7, 0, 4, 4, 1, 6), thousand), drawn(1, noTurn, 0, 0, 4001, 0, 1000, 3001)))
	if l.slack == 0 {
		t.Fatal("no slack")
	}
	return h, l
}

// Where a little overlap costs nothing, a lay is eased before it is the best, and
// what cannot be is not.
func TestLatticeSlack(t *testing.T) {
	h, l := slackened(t, 6)
	first := h.long
	if !l.search(400_000) {
		t.Fatal("nothing left to search for")
	}
	if h.long >= first {
		t.Fatalf("%d steps long, %d at first", h.long, first)
	}
	h.proven(t)
	was := h.long
	l.ready = slices.Clone(l.pegs)
	for i := range l.ready {
		l.ready[i].mark = mark{}
	}
	if kept := l.keep(); kept != (h.long < was) || h.long > was {
		t.Fatalf("%d steps long, it was %d", h.long, was)
	}
	h.proven(t)
}

// When easing was in vain often enough, a part of the best lay is tossed on cloth
// that is longer than it, and the search goes on from there.
func TestLatticeKick(t *testing.T) {
	h, l := slackened(t, 9)
	l.search(400_000)
	was, best := h.long, slices.Clone(h.best)
	l.failed, l.took = vain-1, 0
	l.goal, l.ready = (3*was+h.n.Bound)/4, slices.Clone(l.pegs) // not to be eased on that
	l.search(h.done + h.e.steps + 1)
	if h.long != was || l.goal >= was {
		t.Fatalf("%d steps long, it was %d, and tries for %d", h.long, was, l.goal)
	}
	if l.failed != 0 || l.ready != nil || l.long <= was || l.long > was+beyond*l.step || l.long > l.whole {
		t.Fatalf("in vain %d times; cloth of %d, the best lay is %d, the first %d", l.failed, l.long, was, l.whole)
	}
	tossed := 0
	for i, p := range l.pegs {
		room := l.room(p.variant)
		if p.x < 0 || p.y < 0 || p.x >= room.x || p.y >= room.y {
			t.Fatalf("item %d lies at %v, of %v", i, p, room)
		}
		s := best[h.e.item[i]]
		if far := int64(p.x)*l.step - s.X; p.variant != s.Variant || far > l.step || far < -l.step {
			tossed++
		}
	}
	if tossed == 0 || tossed > tossLeast+len(l.pegs)/part {
		t.Fatalf("%d of %d pieces tossed", tossed, len(l.pegs))
	}
	l.search(h.done + h.e.steps + 400_000)
	if h.long > was {
		t.Fatalf("%d steps long, it was %d", h.long, was)
	}
	h.proven(t)
}

// Where nothing has to be eased and tossing a few pieces led to no less for long, a
// part of the best lay is tossed on cloth of the length that is tried for.
func TestLatticeStale(t *testing.T) {
	h, l := wedges(t, 6, 1)
	l.search(200_000)
	was, goal := h.long, l.goal
	if l.ease() == 0 {
		t.Fatal("too easy")
	}
	l.base, l.least, l.idle = slices.Clone(l.pegs), 0, stale-2 // nothing overlaps less
	for kicked := range 2 {
		if !l.search(h.done + h.e.steps + 1) {
			t.Fatal("nothing left to search for")
		}
		if got := l.least == math.MaxInt; got != (kicked == 1) {
			t.Fatalf("tossed %d times in vain, and of the best lay: %t", l.idle, got)
		}
	}
	if h.long != was || l.goal != goal || l.long != goal || l.ready != nil {
		t.Fatalf("%d steps long, it was %d; it tries for %d on %d, it was %d", h.long, was, l.goal, l.long, goal)
	}
	l.search(h.done + h.e.steps + 200_000)
	if h.long > was {
		t.Fatalf("%d steps long, it was %d", h.long, was)
	}
	h.proven(t)
	_, two := latticed(t, 6, made(t, 20, 0, 1, drawn(2, byHalf, 2, 0, 11, 1, 13, 9, 7, 13, 0, 8)))
	if two.kick(); two.pegs[1].x >= two.room(two.pegs[1].variant).x {
		t.Fatalf("one of two pieces lies at %v", two.pegs[1])
	}
}

// Pieces that are longer than the cloth one way round lie the other way, and those
// that are as wide as it have a place, whatever the step.
func TestLatticeTight(t *testing.T) {
	h, l := latticed(t, 8, made(t, 20, 0, 1, drawn(3, byQuarters, 0, 0, 19, 0, 19, 2, 0, 3), drawn(5, byQuarters, 0, 0, 5, 0, 2, 5)))
	for turn := int64(1); turn < 50 && h.long > 14*h.n.Coarse; turn++ {
		l.search(turn * 100_000)
	}
	long := 0
	for v := range l.planes {
		if l.room(v).y == 0 {
			long++
		}
	}
	if long == 0 {
		t.Fatal("none is longer than the cloth")
	}
	for i := range h.e.lie {
		h.e.lie[i].variant = h.n.Kinds[h.e.kind[i]].Variants[0]
	}
	l.regain()
	for i, p := range l.pegs {
		if l.room(p.variant).y == 0 || h.n.Variants[p.variant].kind != h.e.kind[i] {
			t.Fatalf("item %d lies at %v", i, p)
		}
	}
	h.proven(t)
	full := filled(t, made(t, 20_013, 0, 1, times(drawn(20, byHalf, 0, 0, 6, 1, 5, 6), thousand), drawn(9, noTurn, 0, 0, 20_013, 0, 1000, 3000)))
	h = lone(full, 1, 2)
	h.first()
	first := h.long
	h.e = newEaser(full, h.dice, h.over)
	l = newLattice(h, false)
	if l == nil || l.slack == 0 || h.n.Wide%l.step == 0 {
		t.Fatalf("no lattice whose steps do not end at the edge: %+v", l)
	}
	if !l.search(2_000_000) || h.long >= first {
		t.Fatalf("%d steps long, %d at first", h.long, first)
	}
	h.proven(t)
}

// Four L that fill a cloth are laid so: then nothing is left to search for.
func TestLatticeFull(t *testing.T) {
	h, l := latticed(t, 7, made(t, 20, 0, 1, drawn(4, byHalf, 0, 0, 10, 0, 10, 3, 3, 3, 3, 6, 0, 6), drawn(4, byHalf, 0, 0, 7, 0, 7, 3, 0, 3)))
	for turn := 1; !h.over() && turn < 50; turn++ {
		if !l.search(int64(turn) * 1_000_000) {
			break
		}
	}
	if h.long != h.n.Bound {
		t.Fatalf("%d long, the least is %d", h.long, h.n.Bound)
	}
	if l.goal >= h.n.Bound || l.search(math.MaxInt64) {
		t.Fatal("it goes on")
	}
}

// Pieces drawn by few numbers lie on the grid of those, or on a finer one; others
// on any, where a little overlap is not counted.
func TestLatticeStep(t *testing.T) {
	for _, test := range []struct {
		piece  Piece
		finer  bool
		halved int64
	}{
		{drawn(3, byHalf, 0, 0, 39, 1, 14, 25), false, 0},
		{drawn(3, byHalf, 0, 0, 19, 1, 7, 12), false, 1},
		{drawn(3, byHalf, 0, 0, 19, 1, 7, 12), true, 1},
		{drawn(30, byHalf, 0, 0, 19, 1, 7, 12), true, 0},
		{drawn(9, byHalf, 0, 0, 4, 1, 2, 3), false, 4},
		{drawn(9, byHalf, 0, 0, 6, 0, 3, 4), false, 2},
		{drawn(9, byHalf, 0, 0, 6, 0, 3, 4), true, 4},
	} {
		n := made(t, 40, 0, 1, test.piece)
		step, slack := n.lattice(test.finer)
		if test.halved == 0 {
			if side := n.side(0) / float64(step); side < anySteps || side > anySteps+1 || slack <= 0 || slack >= step/2 {
				t.Errorf("%v: a step of %d, %v to a side, a slack of %d", test.piece.Outline, step, side, slack)
			}
		} else if step*test.halved != n.Coarse || slack != 0 {
			t.Errorf("%v: a step of %d, of %d, a slack of %d", test.piece.Outline, step, n.Coarse, slack)
		}
	}
}

// There is none where it needs too many places, or too much time.
func TestNoLattice(t *testing.T) {
	h, _ := wedges(t, 8, 0)
	long := h.long
	h.long = mostPlaces * h.n.Coarse
	if newLattice(h, false) != nil {
		t.Error("too many places")
	}
	h.long = long
	if newLattice(h, false) == nil {
		t.Error("no lattice")
	}
	ctx, stop := context.WithCancel(context.Background())
	stop()
	h.ctx = ctx
	if newLattice(h, false) != nil || !h.halt {
		t.Error("it is not stopped")
	}
}
