package layout

import (
	"cmp"
	"slices"
)

// free reports whether no two of the seats overlap.
func (f *filler) free(seats []seat) bool {
	for i, a := range seats {
		for _, b := range seats[:i] {
			if f.t.n.near(a, b) && f.t.at(a.variant, b.variant).holds(b.x-a.x, b.y-a.y) {
				return false
			}
		}
	}
	return true
}

// holds reports whether a place is strictly inside any of the sums.
func (p *pairing) holds(x, y int64) bool {
	if x <= p.lo.x || x >= p.hi.x || y <= p.lo.y || y >= p.hi.y {
		return false
	}
	for i := range p.sums {
		s := &p.sums[i]
		if x <= s.lo.x || x >= s.hi.x || y <= s.lo.y || y >= s.hi.y {
			continue
		}
		inside := true
		for k, a := range s.pts {
			if side(a, s.pts[(k+1)%len(s.pts)], vertex{x, y}) <= 0 {
				inside = false
				break
			}
		}
		if inside {
			return true
		}
	}
	return false
}

// passes is how often all pieces are pushed, at most.
const passes = 12

// press pushes each piece to the left and towards the cut end, over and over, as
// far as it goes without leaving its neighbourhood.
func (f *filler) press() {
	order := make([]int, len(f.seats))
	for i := range order {
		order[i] = i
	}
	for pass := range passes {
		moved := false
		slices.SortStableFunc(order, func(a, b int) int {
			if pass&1 == 0 {
				return cmp.Compare(f.seats[a].x, f.seats[b].x)
			}
			return cmp.Compare(f.seats[a].y, f.seats[b].y)
		})
		for _, i := range order {
			if f.over() {
				return
			}
			s := &f.seats[i]
			v := &f.t.n.variants[s.variant]
			if pass&1 == 0 {
				if x := f.leftmost(i, max(0, s.x-v.wide)); x != s.x {
					s.x, moved = x, true
				}
			} else if y := f.lowest(i, max(0, s.y-v.long)); y != s.y {
				s.y, moved = y, true
			}
		}
		if !moved && pass > 0 {
			return
		}
	}
}

// lowest is the least y from low on at which item i is free among all others. It
// is where it lies, if nowhere before.
func (f *filler) lowest(i int, low int64) int64 {
	s := f.seats[i]
	y := low
	for moved := true; moved && y < s.y; {
		moved = false
		for j, o := range f.seats {
			if j == i || !f.t.n.near(o, seat{s.variant, s.x, y}) {
				continue
			}
			at := y - o.y
			if up := f.at(o.variant, s.variant).clear(s.x-o.x, at, true); up != at {
				y, moved = o.y+up, true
			}
		}
	}
	return min(y, s.y)
}

// leftmost is the least x from low on at which item i is free, as lowest.
func (f *filler) leftmost(i int, low int64) int64 {
	s := f.seats[i]
	x := low
	for moved := true; moved && x < s.x; {
		moved = false
		for j, o := range f.seats {
			if j == i || !f.t.n.near(o, seat{s.variant, x, s.y}) {
				continue
			}
			at := x - o.x
			if up := f.at(o.variant, s.variant).clear(s.y-o.y, at, false); up != at {
				x, moved = o.x+up, true
			}
		}
	}
	return min(x, s.x)
}

// snap puts all pieces on coarser grids, the coarsest on which they still are
// apart and within the width: pieces cut from one whole fit only so.
func (f *filler) snap() {
	seats := make([]seat, len(f.seats))
	round := func(v, grid int64) int64 { return (v + grid/2) / grid * grid }
	for grid := f.t.n.coarse; grid > 1; grid /= 10 {
		good := true
		for i, s := range f.seats {
			s.x, s.y = round(s.x, grid), round(s.y, grid)
			good = good && s.x+f.t.n.variants[s.variant].wide <= f.t.n.wide
			seats[i] = s
		}
		if good && f.t.n.end(seats) <= f.t.n.end(f.seats) && f.free(seats) {
			copy(f.seats, seats)
			return
		}
	}
}
