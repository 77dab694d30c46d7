package nest

import (
	"cmp"
	"slices"
)

// free reports whether no two of the seats overlap.
func (f *filler) free(seats []Seat) bool {
	for i, a := range seats {
		for _, b := range seats[:i] {
			if f.t.n.near(a, b) && f.t.at(a.Variant, b.Variant).holds(b.X-a.X, b.Y-a.Y) {
				return false
			}
		}
	}
	return true
}

// holds reports whether a place is strictly inside any of the sums.
func (p *pairing) holds(x, y int64) bool {
	if x <= p.lo.X || x >= p.hi.X || y <= p.lo.Y || y >= p.hi.Y {
		return false
	}
	for i := range p.sums {
		s := &p.sums[i]
		if x <= s.lo.X || x >= s.hi.X || y <= s.lo.Y || y >= s.hi.Y {
			continue
		}
		inside := true
		for k, a := range s.pts {
			if side(a, s.pts[(k+1)%len(s.pts)], vertex{X: x, Y: y}) <= 0 {
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
				return cmp.Compare(f.seats[a].X, f.seats[b].X)
			}
			return cmp.Compare(f.seats[a].Y, f.seats[b].Y)
		})
		for _, i := range order {
			if f.over() {
				return
			}
			s := &f.seats[i]
			v := &f.t.n.Variants[s.Variant]
			if pass&1 == 0 {
				if x := f.leftmost(i, max(0, s.X-v.Wide)); x != s.X {
					s.X, moved = x, true
				}
			} else if y := f.lowest(i, max(0, s.Y-v.Long)); y != s.Y {
				s.Y, moved = y, true
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
	for moved := true; moved && y < s.Y; {
		moved = false
		for j, o := range f.seats {
			if j == i || !f.t.n.near(o, Seat{s.Variant, s.X, y}) {
				continue
			}
			at := y - o.Y
			if up := f.at(o.Variant, s.Variant).clear(s.X-o.X, at, true); up != at {
				y, moved = o.Y+up, true
			}
		}
	}
	return min(y, s.Y)
}

// leftmost is the least x from low on at which item i is free, as lowest.
func (f *filler) leftmost(i int, low int64) int64 {
	s := f.seats[i]
	x := low
	for moved := true; moved && x < s.X; {
		moved = false
		for j, o := range f.seats {
			if j == i || !f.t.n.near(o, Seat{s.Variant, x, s.Y}) {
				continue
			}
			at := x - o.X
			if up := f.at(o.Variant, s.Variant).clear(s.Y-o.Y, at, false); up != at {
				x, moved = o.X+up, true
			}
		}
	}
	return min(x, s.X)
}

// snap puts all pieces on coarser grids, the coarsest on which they still are
// apart and within the width: pieces cut from one whole fit only so.
func (f *filler) snap() {
	seats := make([]Seat, len(f.seats))
	round := func(v, grid int64) int64 { return (v + grid/2) / grid * grid }
	for grid := f.t.n.Coarse; grid > 1; grid /= 10 {
		good := true
		for i, s := range f.seats {
			s.X, s.Y = round(s.X, grid), round(s.Y, grid)
			good = good && s.X+f.t.n.Variants[s.Variant].Wide <= f.t.n.Wide
			seats[i] = s
		}
		if good && f.t.n.end(seats) <= f.t.n.end(f.seats) && f.free(seats) {
			copy(f.seats, seats)
			return
		}
	}
}
