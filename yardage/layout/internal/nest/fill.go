package nest

import (
	"cmp"
	"math/rand/v2"
	"slices"
)

// A Seat is where one piece lies on the grid: which variant, and the corner of
// its rectangle.
type Seat struct {
	Variant int   // how it lies
	X, Y    int64 // the corner of its rectangle across and along
}

// A filler lays pieces one by one on exact places, each as near to the cut end
// as it goes.
type filler struct {
	t     *table
	seats []Seat // by item
	laid  []int  // the items that are laid
	steps int64
	end   int64       // the far edge of the farthest piece
	stop  func() bool // whether to end at once; nil: never

	rivals []Seat
}

// lowestAt is the least y from low on at which the variant has nothing in its
// way with its left side at x; false where that is above high.
func (f *filler) lowestAt(v int, x, low, high int64) (int64, bool) {
	n := f.t.n
	one := &n.Variants[v]
	f.rivals = f.rivals[:0]
	for _, j := range f.laid {
		o := &f.seats[j]
		ov := &n.Variants[o.Variant]
		if o.X < x+one.Wide+n.Gap && x < o.X+ov.Wide+n.Gap && o.Y+ov.Long+n.Gap > low {
			f.rivals = append(f.rivals, *o)
		}
	}
	slices.SortFunc(f.rivals, func(a, b Seat) int { return cmp.Or(cmp.Compare(a.Y, b.Y), cmp.Compare(a.X, b.X)) })
	y := low
	for moved := true; moved; {
		moved = false
		for _, o := range f.rivals {
			if o.Y >= y+one.Long+n.Gap {
				break
			}
			if o.Y+n.Variants[o.Variant].Long+n.Gap <= y {
				continue
			}
			at := y - o.Y
			if up := f.at(o.Variant, v).clear(x-o.X, at, true); up != at {
				y, moved = o.Y+up, true
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
				lo, hi = vertex{X: lo.Y, Y: lo.X}, vertex{X: hi.Y, Y: hi.X}
			}
			if place <= lo.X || place >= hi.X || at <= lo.Y || at >= hi.Y {
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
	best, bestEnd := Seat{}, int64(-1)
	low := int64(0)
	if f.t.views == nil { // too dear to look for gaps far back
		low = max(0, f.end-4*f.t.n.Variants[f.t.n.Kinds[f.t.n.Items[i]].Variants[0]].Long)
	}
	for k, v := range f.t.n.Kinds[f.t.n.Items[i]].Variants {
		if k > 1 && f.t.views == nil {
			break
		}
		one := &f.t.n.Variants[v]
		room := f.t.n.Wide - one.Wide
		for _, x := range f.columns(one, room, tries, dice) {
			top := high - one.Long
			if bestEnd >= 0 {
				top = min(top, bestEnd-one.Long-1)
			}
			if top < low {
				break
			}
			if f.over() {
				return false
			}
			if y, ok := f.lowestAt(v, x, low, top); ok {
				best, bestEnd = Seat{v, x, y}, y+one.Long
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
func (f *filler) columns(one *Variant, room int64, tries int, dice *rand.Rand) []int64 {
	xs := make([]int64, 0, tries+2*len(f.laid)+2)
	xs = append(xs, 0, room)
	for k := int64(1); k < int64(tries); k++ {
		xs = append(xs, room/int64(tries)*k)
	}
	touch := make([]int64, 0, 2*len(f.laid))
	for _, j := range f.laid {
		o := f.seats[j]
		ov := &f.t.n.Variants[o.Variant]
		for _, x := range [...]int64{o.X + ov.Wide + f.t.n.Gap, o.X - one.Wide - f.t.n.Gap} {
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
func (n *Nest) order(dice *rand.Rand, shuffle bool) []int {
	keys := make([]float64, len(n.Items))
	out := make([]int, len(n.Items))
	for i, k := range n.Items {
		out[i] = i
		v := &n.Variants[n.Kinds[k].Variants[0]]
		keys[i] = float64(float64(v.Wide)*float64(v.Long)) * float64(max(v.Wide, v.Long))
		if shuffle {
			keys[i] *= 0.5 + dice.Float64()
		}
	}
	slices.SortStableFunc(out, func(a, b int) int { return cmp.Compare(keys[b], keys[a]) })
	return out
}

// end is the far edge of the farthest piece.
func (n *Nest) end(seats []Seat) int64 {
	var far int64
	for _, s := range seats {
		far = max(far, s.Y+n.Variants[s.Variant].Long)
	}
	return far
}
