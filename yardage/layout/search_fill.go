package layout

import (
	"cmp"
	"math/rand/v2"
	"slices"
)

// A seat is where one piece lies on the grid: which variant, and the corner of
// its rectangle.
type seat struct {
	variant int
	x, y    int64
}

// A filler lays pieces one by one on exact places, each as near to the cut end
// as it goes.
type filler struct {
	t     *table
	seats []seat // by item
	laid  []int  // the items that are laid
	steps int64
	end   int64       // the far edge of the farthest piece
	stop  func() bool // whether to end at once; nil: never

	rivals []seat
}

// lowestAt is the least y from low on at which the variant has nothing in its
// way with its left side at x; false where that is above high.
func (f *filler) lowestAt(v int, x, low, high int64) (int64, bool) {
	n := f.t.n
	one := &n.variants[v]
	f.rivals = f.rivals[:0]
	for _, j := range f.laid {
		o := &f.seats[j]
		ov := &n.variants[o.variant]
		if o.x < x+one.wide+n.gap && x < o.x+ov.wide+n.gap && o.y+ov.long+n.gap > low {
			f.rivals = append(f.rivals, *o)
		}
	}
	slices.SortFunc(f.rivals, func(a, b seat) int { return cmp.Or(cmp.Compare(a.y, b.y), cmp.Compare(a.x, b.x)) })
	y := low
	for moved := true; moved; {
		moved = false
		for _, o := range f.rivals {
			if o.y >= y+one.long+n.gap {
				break
			}
			if o.y+n.variants[o.variant].long+n.gap <= y {
				continue
			}
			at := y - o.y
			if up := f.at(o.variant, v).clear(x-o.x, at, true); up != at {
				y, moved = o.y+up, true
				if y > high {
					return y, false
				}
			}
		}
	}
	return y, y <= high
}

// at is the view of two variants, and counts a look at it: many looks where it has
// very many sums, or is made anew.
func (f *filler) at(fixed, moving int) *view {
	v := f.t.at(fixed, moving)
	each := sumsSeen
	if f.t.views == nil {
		each = sumsMade
	}
	f.steps += 1 + int64(len(v.sums)/each)
	return v
}

// How many sums are looked at in the time of a step, about, and how many made.
const (
	sumsSeen = 1024
	sumsMade = 16
)

// over reports whether the filler is to end at once.
func (f *filler) over() bool { return f.stop != nil && f.stop() }

// clear is the first y from at on at which a place at x is in none of the sums, by
// steps of way, 1 or -1; with along false it is the first x from at on, and the
// place is at y.
func (p *pairing) clear(place, at, way int64, along bool) int64 {
	for again := true; again; {
		again = false
		for i := range p.sums {
			s := &p.sums[i]
			lo, hi := s.lo, s.hi
			if !along {
				lo, hi = vertex{lo.y, lo.x}, vertex{hi.y, hi.x}
			}
			if place <= lo.x || place >= hi.x || at <= lo.y || at >= hi.y {
				continue
			}
			from, to := shadow(s.pts, place, along)
			if at < from || at > to {
				continue
			}
			again = true
			if at = to + 1; way < 0 {
				at = from - 1
			}
		}
	}
	return at
}

// put lays item i at the best of the places tried for the variants of its kind:
// that with its far edge nearest to the cut end. It is false where there is none up
// to high, or the filler is to end.
func (f *filler) put(i int, high int64, tries int, dice *rand.Rand) bool {
	best, bestEnd := seat{}, int64(-1)
	low := int64(0)
	if f.t.views == nil { // too dear to look for gaps far back
		low = max(0, f.end-4*f.t.n.variants[f.t.n.kinds[f.t.n.items[i]].variants[0]].long)
	}
	for k, v := range f.t.n.kinds[f.t.n.items[i]].variants {
		if k > 1 && f.t.views == nil {
			break
		}
		one := &f.t.n.variants[v]
		room := f.t.n.wide - one.wide
		for _, x := range f.columns(one, room, tries, dice) {
			top := high - one.long
			if bestEnd >= 0 {
				top = min(top, bestEnd-one.long-1)
			}
			if top < low {
				break
			}
			if f.over() {
				return false
			}
			if y, ok := f.lowestAt(v, x, low, top); ok {
				best, bestEnd = seat{v, x, y}, y+one.long
			}
		}
	}
	if bestEnd < 0 {
		return false
	}
	f.seats[i] = best
	f.laid = append(f.laid, i)
	f.end = max(f.end, bestEnd)
	return true
}

// columns are the places across that are tried: both sides of the cloth, those
// where the rectangles touch, and some between.
func (f *filler) columns(one *variant, room int64, tries int, dice *rand.Rand) []int64 {
	xs := make([]int64, 0, tries+2*len(f.laid)+2)
	xs = append(xs, 0, room)
	for k := int64(1); k < int64(tries); k++ {
		xs = append(xs, room/int64(tries)*k)
	}
	touch := make([]int64, 0, 2*len(f.laid))
	for _, j := range f.laid {
		o := f.seats[j]
		ov := &f.t.n.variants[o.variant]
		for _, x := range [...]int64{o.x + ov.wide + f.t.n.gap, o.x - one.wide - f.t.n.gap} {
			if x > 0 && x < room {
				touch = append(touch, x)
			}
		}
	}
	slices.Sort(touch)
	touch = slices.Compact(touch)
	for len(touch) > 3*tries {
		at := dice.IntN(len(touch))
		touch[at] = touch[len(touch)-1]
		touch = touch[:len(touch)-1]
	}
	xs = append(xs, touch...)
	slices.Sort(xs)
	return slices.Compact(xs)
}

// order is all items, the greatest first; a dice shuffles it a little.
func (n *nest) order(dice *rand.Rand, shuffle bool) []int {
	keys := make([]float64, len(n.items))
	out := make([]int, len(n.items))
	for i, k := range n.items {
		out[i] = i
		v := &n.variants[n.kinds[k].variants[0]]
		keys[i] = float64(float64(v.wide)*float64(v.long)) * float64(max(v.wide, v.long))
		if shuffle {
			keys[i] *= 0.5 + dice.Float64()
		}
	}
	slices.SortStableFunc(out, func(a, b int) int { return cmp.Compare(keys[b], keys[a]) })
	return out
}

// end is the far edge of the farthest piece.
func (n *nest) end(seats []seat) int64 {
	var far int64
	for _, s := range seats {
		far = max(far, s.y+n.variants[s.variant].long)
	}
	return far
}
