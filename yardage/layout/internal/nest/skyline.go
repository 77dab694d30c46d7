package nest

import "math"

// A Spot is where a shape lies on the grid, its gap above it and to its right.
type Spot struct {
	Shape  int   // which of the grid
	Across bool  // turned by a quarter
	X, Y   int64 // its corner across and along
}

// A Lay is a spot for every piece, how long that is without the last gap, and
// how many pieces are turned a quarter.
type Lay struct {
	Spots  []Spot // where the shapes lie, in any order
	long   int64
	turned int
}

// better reports whether a is the better lay: shorter, or as short with fewer
// pieces off the grain.
func (a Lay) better(b Lay) bool {
	return b.Spots == nil || a.long < b.long || a.long == b.long && a.turned < b.turned
}

// A turn is one copy of a shape waiting its turn, and which way round it is
// tried first.
type turn struct {
	shape  int
	across bool
}

// A ledge is a level stretch of the line above all pieces that are laid.
type ledge struct{ x, wide, y int64 }

// A layer lays pieces one by one, always in the lowest place there is, the
// leftmost of these: against the higher of the two walls beside it. It is used
// again and again, and counts its steps: each look at a piece for a place, and
// something for what else it does.
type layer struct {
	g       Grid
	line    []ledge
	next    []int // the queue as a ring: next[i+1] comes after i, next[0] is the first
	seen    []int // in which step a shape was last tried
	waiting []int // how many of each shape are not laid yet
	kinds   int   // how many shapes still wait
	spots   []Spot
	steps   int64
	closely bool // choose by how well the shape fills the place, then by the queue
}

func newLayer(g Grid) *layer {
	return &layer{g: g, next: make([]int, g.Total+1), seen: make([]int, len(g.Shapes)), waiting: make([]int, len(g.Shapes)), spots: make([]Spot, 0, g.Total)}
}

const wall = math.MaxInt64 // the height of a selvedge

// lay lays the queue and returns how long the lay is, the last gap in it, or
// false as soon as that is more than limit.
func (l *layer) lay(queue []turn, limit int64) (int64, bool) {
	l.line = append(l.line[:0], ledge{0, l.g.Wide, 0})
	l.spots = l.spots[:0]
	for i := range queue {
		l.next[i] = i
	}
	l.next[len(queue)] = -1
	clear(l.seen)
	l.steps += 16 + int64(len(queue)) // what a lay takes however few pieces are looked at
	l.kinds = len(l.g.Shapes)
	for i, sh := range l.g.Shapes {
		l.waiting[i] = len(sh.Of)
	}
	var top int64
	for step := 1; l.next[0] >= 0; step++ {
		l.steps++
		at := l.lowest()
		here, left, right := l.place(at)
		before, across := l.choose(queue, here, left, right, step)
		if before < 0 {
			l.raise(at, min(left, right))
			continue
		}
		i := l.next[before]
		l.next[before] = l.next[i+1]
		if l.waiting[queue[i].shape]--; l.waiting[queue[i].shape] == 0 {
			l.kinds--
		}
		w, h := l.g.Shapes[queue[i].shape].size(across)
		x := here.x
		if left < right {
			x += here.wide - w
		}
		l.spots = append(l.spots, Spot{queue[i].shape, across, x, here.y})
		top = max(top, here.y+h)
		if top > limit {
			return top, false
		}
		l.cover(at, x, w, here.y+h)
	}
	return top, true
}

// size is how much room the shape takes across and along.
func (s Shape) size(across bool) (wide, long int64) {
	if across {
		return s.long, s.wide
	}
	return s.wide, s.long
}

// lowest is the index of the lowest ledge, the leftmost of equals.
func (l *layer) lowest() int {
	at := 0
	for i := range l.line {
		if l.line[i].y < l.line[at].y {
			at = i
		}
	}
	return at
}

// place is a ledge and how high the walls beside it are.
func (l *layer) place(at int) (here ledge, left, right int64) {
	here, left, right = l.line[at], wall, wall
	if at > 0 {
		left = l.line[at-1].y - here.y
	}
	if at+1 < len(l.line) {
		right = l.line[at+1].y - here.y
	}
	return here, left, right
}

// choose finds what to lay here: the place in the ring before it, -1 if nothing
// fits, and which way round.
func (l *layer) choose(queue []turn, here ledge, left, right int64, step int) (before int, across bool) {
	before = -1
	best := -1
	untried := l.kinds
	for prev := 0; untried > 0; prev = l.next[prev] + 1 {
		l.steps++
		one := queue[l.next[prev]]
		if l.seen[one.shape] == step {
			continue
		}
		l.seen[one.shape] = step
		untried--
		sh := &l.g.Shapes[one.shape]
		for k := range 2 {
			turned := one.across != (k == 1)
			if turned && !sh.turn {
				continue
			}
			w, h := sh.size(turned)
			if w > here.wide {
				continue
			}
			if !l.closely {
				return prev, turned
			}
			if fit := fill(w, h, here.wide, max(left, right), min(left, right)); fit > best {
				before, across, best = prev, turned, fit
			}
		}
		if best == 4 {
			break
		}
	}
	return before, across
}

// fill ranks how well a shape fills a place: best where it leaves no new corner.
func fill(w, h, wide, high, low int64) int {
	switch {
	case w == wide && h == high:
		return 4
	case w == wide && h == low:
		return 3
	case w == wide:
		return 2
	case h == high:
		return 1
	}
	return 0
}

// raise gives up a ledge on which nothing fits: it is lifted to the lower of its
// walls. One that is as wide as the cloth never is given up.
func (l *layer) raise(at int, by int64) {
	l.line[at].y += by
	l.merge(at)
}

// cover puts a shape's upper side into the line; it lies at one end of the ledge.
func (l *layer) cover(at int, x, w, y int64) {
	here := l.line[at]
	if w == here.wide {
		l.line[at].y = y
		l.merge(at)
		return
	}
	l.line = append(l.line, ledge{})
	copy(l.line[at+1:], l.line[at:])
	if x == here.x {
		l.line[at] = ledge{x, w, y}
		l.line[at+1] = ledge{x + w, here.wide - w, here.y}
		l.merge(at)
	} else {
		l.line[at] = ledge{here.x, here.wide - w, here.y}
		l.line[at+1] = ledge{x, w, y}
		l.merge(at + 1)
	}
}

// merge joins a ledge with those beside it that are level with it.
func (l *layer) merge(at int) {
	if at+1 < len(l.line) && l.line[at+1].y == l.line[at].y {
		l.line[at].wide += l.line[at+1].wide
		l.line = append(l.line[:at+1], l.line[at+2:]...)
	}
	if at > 0 && l.line[at-1].y == l.line[at].y {
		l.line[at-1].wide += l.line[at].wide
		l.line = append(l.line[:at], l.line[at+1:]...)
	}
}
