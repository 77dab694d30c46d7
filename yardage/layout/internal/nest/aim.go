package nest

import (
	"math"
	"slices"
)

const (
	hasty   = 60      // rounds, as easing either helps soon or not at all
	despair = 3       // times what easing did in vain, after which the cloth is made longer
	beyond  = 4       // steps that the cloth may be longer than the best lay
	nudge   = 1.0 / 8 // by how much it is made longer or shorter, in steps
	vain    = 6       // times that easing is in vain, after which a good part of the lay is tossed
	stale   = 600     // times that tossing a few pieces is, at least, where nothing has to be eased
	weary   = 4       // or, where that is more, the square of how many pieces there are, by this
	part    = 3       // of so many, at most
)

// An aim is what a lattice tries for. Where a lay found on it has to be eased,
// that fails more often than not: then the cloth is made shorter until it takes
// long to find a lay on it at all, and longer where none is found. Where it fails
// again and again, a good part of the best lay is tossed on longer cloth. Where
// nothing has to be eased, that is done on the same cloth when no lay is found.
type aim struct {
	whole  int64 // of the first lay
	long   int64 // of the cloth the lattice is of
	goal   int64 // of that a lay is eased on
	less   int64 // by how much this is shorter than the best lay
	spare  int64 // and by how much the other is shorter than this
	base   []peg // what is gone on from
	least  int   // what overlaps in it
	idle   int   // how often in a row tossing led to no less
	ready  []peg // a lay to be eased
	failed int   // how often in a row easing was in vain
	took   int64 // what easing did, the last time, in vain
	since  int64 // what was done without it until then
}

// search finds shorter and shorter lays. What fails at a length is tried again
// with some pieces tossed, until it does not overlap. False where no lay can be
// shorter.
func (l *lattice) search(until int64) bool {
	h := l.h
	if l.goal >= h.long {
		l.take()
	}
	for l.goal >= h.n.Bound {
		if h.past(until) {
			return true
		}
		left := l.ease()
		if left == 0 {
			l.ready = slices.Clone(l.pegs)
		} else {
			l.retreat(left)
		}
		switch waited := h.done - l.since; {
		case l.ready != nil && waited >= l.took:
			if l.keep() {
				l.take()
			} else if l.failed >= vain {
				l.kick()
			} else {
				l.goal = l.next(h.long)
				l.tighten(l.nudged())
			}
		case left == 0:
			l.tighten(l.nudged())
		case l.slack > 0 && waited > despair*l.took && l.long < l.most():
			l.since += l.took
			l.tighten(-l.nudged())
		case l.slack == 0 && l.idle >= max(stale, len(l.pegs)*len(l.pegs)/weary):
			l.kick()
		default:
			l.lend()
			h.e.toss(h.tossed())
			l.regain()
		}
	}
	return false
}

// retreat goes on from the places as they are, or as they were where much less
// overlapped.
func (l *lattice) retreat(left int) {
	if l.idle++; left < l.least {
		l.idle = 0
	}
	if float64(left) <= noWorse*float64(l.least) {
		l.base, l.least = slices.Clone(l.pegs), left
	}
	copy(l.pegs, l.base)
}

// nudged is by how much the cloth is made longer or shorter at once.
func (l *lattice) nudged() int64 { return max(int64(nudge*float64(l.step)), 1) }

// most is how long the cloth may be.
func (l *lattice) most() int64 { return min(l.h.long+beyond*l.step, l.whole) }

// keep makes the lay that is ready the best, if it is shorter, as it is or eased.
func (l *lattice) keep() bool {
	h := l.h
	copy(l.pegs, l.ready)
	l.ready = nil
	if l.slack == 0 {
		return h.keep(l.seats())
	}
	h.e.long = float64(l.goal)
	l.lend()
	was := h.e.steps
	if seats, ok := h.attempt(math.MaxInt64, hasty); ok && h.keep(seats) {
		l.less, l.took, l.failed = min(2*l.less, l.step), 0, 0
		return true
	}
	l.less, l.took, l.since = max(l.less/2, l.nudged()), h.e.steps-was, h.done
	l.failed++
	return false
}

// next is the length to try for, from one that there is a lay of: as much less as it
// is to be, or a step of the lattice less.
func (l *lattice) next(long int64) int64 {
	if l.slack == 0 {
		return int64(l.up(long)-1) * l.step
	}
	return max(long-l.less, l.h.n.Bound)
}

// take goes on from the best lay, for a shorter one.
func (l *lattice) take() {
	l.ready = nil
	l.goal = l.next(l.h.long)
	l.h.e.take(l.h.best)
	l.cut(l.h.long)
}

// kick goes on from the best lay with a part of it tossed, on longer cloth if it
// is to be eased.
func (l *lattice) kick() {
	l.failed = 0
	l.spare = -beyond * l.step
	l.take()
	l.h.e.toss(tossLeast + l.h.dice.IntN(1+len(l.pegs)/part))
	l.regain()
}

// tighten makes the cloth so much shorter.
func (l *lattice) tighten(by int64) {
	l.lend()
	l.spare += by
	l.cut(l.long)
}

// cut makes the cloth as long as it is to be, where it was from.
func (l *lattice) cut(from int64) {
	if l.slack > 0 {
		l.long = min(max(l.goal-l.spare, l.h.n.Bound), l.most())
		l.spare = l.goal - l.long
	} else {
		l.long = l.goal
	}
	l.least = math.MaxInt
	l.h.e.shorten(float64(from), float64(l.long))
	l.regain()
}

// lend gives the easer the places of the pieces, inside its cloth.
func (l *lattice) lend() {
	for i, p := range l.pegs {
		l.h.e.lie[i] = lie{float64(int64(p.x) * l.step), float64(int64(p.y) * l.step), p.variant}
		l.h.e.clamp(i)
	}
}

// seats are where the pieces lie.
func (l *lattice) seats() []Seat {
	out := make([]Seat, len(l.pegs))
	for i, item := range l.h.e.item {
		p := l.pegs[i]
		out[item] = Seat{p.variant, int64(p.x) * l.step, int64(p.y) * l.step}
	}
	return out
}

// regain takes the places the easer has, each as the nearest on the lattice, and
// another way round where there is none.
func (l *lattice) regain() {
	for i, o := range l.h.e.lie {
		v := o.variant
		for _, way := range l.h.n.Kinds[l.h.e.kind[i]].Variants {
			if l.room(v).y > 0 {
				break
			}
			v = way
		}
		room := l.room(v)
		near := func(place float64, room int) int {
			return max(min(int(place/float64(l.step)+0.5), room-1), 0)
		}
		l.pegs[i] = peg{mark{near(o.x, room.x), near(o.y, room.y)}, v}
	}
}
