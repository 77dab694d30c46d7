package nest

const (
	mates   = 3   // pieces that one that still overlaps is to change places with
	rare    = 100 // tries to a swap, from which on they are too many
	seldom  = 8   // one piece in so many is then tried
	alike   = 2   // how many times as long and wide, at most, the one is as the other
	throws  = 3   // places tried each way round
	hopeful = 1.5 // times what the two cost now that a place may cost to be followed
	hoping  = 1.2 // and to be polished
)

// luck is for how many pieces a swap was to be tried, how many were, and how many
// came about.
type luck struct{ asked, tried, done int }

// swaps lets item i change places with another, if it finds one. Where that is
// rare it is seldom tried.
func (e *easer) swaps(i int) {
	l := &e.luck
	if l.asked++; l.done*rare < l.tried && l.asked%seldom != 0 {
		return
	}
	for range mates {
		if e.swap(i) {
			l.done++
			return
		}
	}
}

// swap lets item i and another of about its size change places, if both together
// cost less then: no move of either alone leads there, for each is in the other's
// way.
func (e *easer) swap(i int) bool {
	k := len(e.n.Items)
	j := e.dice.IntN(k)
	a, b := e.side[e.kind[i]], e.side[e.kind[j]]
	if e.kind[i] == e.kind[j] || a > alike*b || b > alike*a {
		return false
	}
	e.luck.tried++
	now := e.own(i) + e.own(j) - float64(e.cost[i*k+j]*e.weight[i*k+j])
	was := e.lie[i]
	e.gone = j
	one, ok := e.instead(i, &e.lie[j], now)
	e.gone = -1
	if !ok {
		return false
	}
	e.lay(i, one.f.variant, one.x, one.y)
	other, ok := e.instead(j, &was, now-one.cost)
	if !ok {
		e.lay(i, was.variant, was.x, was.y)
		return false
	}
	e.lay(j, other.f.variant, other.x, other.y)
	e.update(i)
	e.update(j)
	return true
}

// instead finds a place for item i about where another lay; false where it would
// cost limit or more.
func (e *easer) instead(i int, gone *lie, limit float64) (try, bool) {
	midX, midY := e.middle(gone)
	best := try{cost: hopeful * limit}
	for k, v := range e.n.Kinds[e.kind[i]].Variants {
		f := &e.fields[k]
		if !e.field(f, v) {
			continue
		}
		one := &e.n.Variants[v]
		for range throws {
			dx, dy := e.two()
			x := midX + float64((float64(0.2*dx)-0.6)*float64(one.Wide))
			y := midY + float64((float64(0.2*dy)-0.6)*float64(one.Long))
			x, y = f.clamp(x, y)
			if c := e.at(i, f, x, y, best.cost); c < best.cost {
				best = try{f, x, y, c}
			}
		}
	}
	if best.f == nil {
		return best, false
	}
	e.descend(i, &best, 0.1, 0.05)
	if best.cost < hoping*limit {
		e.polish(i, &best)
	}
	return best, best.cost < limit
}
