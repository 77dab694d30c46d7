package layout

import (
	"context"
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout/internal/nest"
	"example.com/clothyard/yardage/layout/internal/whole"
)

// MaxLeftover is the most rectangles that [Plan.Leftover] finds.
const MaxLeftover = 8

// buy is [Plan.Buy].
func (p Plan) buy() units.Length {
	if p.Spec.Cloth.Counter.Sign() <= 0 {
		return p.Used
	}
	mark, _ := p.Used.Round(p.Spec.Cloth.Counter, units.Up)
	return mark
}

// extra is [Plan.Extra].
func (p Plan) extra() []int {
	var out []int
	cut := p.cut()
	for i := range cut.Pieces {
		if _, extra := cut.Pieces[i].times(&cut.Cloth); extra > 0 {
			if out == nil {
				out = make([]int, len(cut.Pieces))
			}
			out[i] = extra
		}
	}
	return out
}

// A Rest is a rectangle of cloth that nothing is cut from.
type Rest struct {
	X    units.Length `json:"x,omitzero"`    // to its left-hand side, measured as that of a Placement
	Y    units.Length `json:"y,omitzero"`    // to its near side, from the cut end
	Wide units.Length `json:"wide,omitzero"` // across
	Long units.Length `json:"long,omitzero"` // along
}

// leftover is [Plan.Leftover].
func (p Plan) leftover() []Rest {
	c := p.Spec.Cloth
	from := Point{c.first(), c.Ends}
	to := Point{from.X.Add(c.Usable()), p.Used.Max(c.Long).Sub(c.Ends)}
	if c.Usable().Sign() <= 0 || !from.Y.Less(to.Y) {
		return nil
	}
	laid := p.Spec.laid()
	taken := make([]Rest, 0, len(p.Placements)+2*len(c.Flaws)+MaxLeftover)
	for _, at := range p.Placements {
		wide, long := at.Size(laid)
		taken = append(taken, Rest{at.X, at.Y, wide, long})
	}
	for _, flaw := range c.barred() {
		lo, hi := box(flaw)
		taken = append(taken, Rest{lo.X, lo.Y, hi.X.Sub(lo.X), hi.Y.Sub(lo.Y)})
	}
	known := len(taken)
	for range MaxLeftover {
		one, ok := largest(from, to, taken)
		if !ok {
			break
		}
		taken = append(taken, one)
	}
	if len(taken) == known {
		return nil
	}
	return slices.Clone(taken[known:])
}

// largest is the largest rectangle between two corners that has no part in those
// taken; false where there is none.
func largest(from, to Point, taken []Rest) (Rest, bool) {
	xs, ys := []units.Length{from.X, to.X}, []units.Length{from.Y, to.Y}
	for _, r := range taken {
		xs, ys = append(xs, r.X, r.X.Add(r.Wide)), append(ys, r.Y, r.Y.Add(r.Long))
	}
	x, okX := marks(xs, from.X, to.X)
	y, okY := marks(ys, from.Y, to.Y)
	if !okX || !okY {
		return Rest{}, false
	}
	columns, rows := len(x.steps)-1, len(y.steps)-1
	// In which rows those taken begin and end, and over which columns.
	type side struct{ from, to, more int }
	sides := make([][]side, rows+1)
	for _, r := range taken {
		from, to := x.index(r.X), x.index(r.X.Add(r.Wide))
		begin, end := y.index(r.Y), y.index(r.Y.Add(r.Long))
		sides[begin] = append(sides[begin], side{from, to, 1})
		sides[end] = append(sides[end], side{from, to, -1})
	}
	full := make([]int, columns) // how many cover each column in this row
	// Row by row: how far back each column is free, and the largest rectangle that
	// ends here, by a stack of columns of rising depth.
	type step struct{ left, top int }
	top := make([]int, columns)
	stack := make([]step, 0, columns)
	var best [4]int // left, top, right, end
	var area whole.Wide
	for row := range rows {
		stack = stack[:0]
		for _, s := range sides[row] {
			for i := s.from; i < s.to; i++ {
				full[i] += s.more
			}
		}
		for i := 0; i <= columns; i++ {
			here := row + 1 // nothing free
			if i < columns {
				if full[i] > 0 {
					top[i] = row + 1
				}
				here = top[i]
			}
			left := i
			for len(stack) > 0 && stack[len(stack)-1].top < here {
				last := stack[len(stack)-1]
				stack = stack[:len(stack)-1]
				if one := whole.Times(x.steps[i]-x.steps[last.left], y.steps[row+1]-y.steps[last.top]); one.Sub(area).Sign() > 0 {
					area, best = one, [4]int{last.left, last.top, i, row + 1}
				}
				left = last.left
			}
			if here <= row && (len(stack) == 0 || stack[len(stack)-1].top > here) {
				stack = append(stack, step{left, here})
			}
		}
	}
	if area.Sign() == 0 {
		return Rest{}, false
	}
	r := Rest{X: x.at[best[0]], Y: y.at[best[1]]}
	r.Wide, r.Long = x.at[best[2]].Sub(r.X), y.at[best[3]].Sub(r.Y)
	return r, true
}

// A scale is lengths in order, and each in whole steps from the first.
type scale struct {
	at    []units.Length
	steps []int64
}

// marks are those of a list that lie within from and to, each once; false where
// they share no grid.
func marks(list []units.Length, from, to units.Length) (scale, bool) {
	var m mesh
	var s scale
	slices.SortFunc(list, units.Length.Cmp)
	for _, l := range slices.Compact(list) {
		if l.Less(from) || to.Less(l) {
			continue
		}
		if !m.fine(l.Sub(from)) {
			return s, false
		}
		s.at = append(s.at, l)
	}
	for _, l := range s.at {
		n, ok := m.whole(l.Sub(from))
		if !ok {
			return s, false
		}
		s.steps = append(s.steps, n)
	}
	return s, true
}

// index is which of the marks l is, the first or last where it is beyond.
func (s *scale) index(l units.Length) int {
	i, _ := slices.BinarySearchFunc(s.at, l, units.Length.Cmp)
	return min(i, len(s.at)-1)
}

// A Choice is one of several cloths, or ways to use one, and what the pieces need
// of it.
type Choice struct {
	Cloth   Cloth        `json:"cloth,omitzero"`   // as asked about
	Used    units.Length `json:"used,omitzero"`    // length of cloth that the lay takes
	Buy     units.Length `json:"buy,omitzero"`     // the same, rounded up to Cloth.Counter
	Density units.Ratio  `json:"density,omitzero"` // area of the pieces as part of the usable width by the lay
	Stopped bool         `json:"stopped,omitzero"` // as Plan.Stopped
}

// Widths lays the pieces on cloths of several widths, one after the other, each
// as s has it but for Wide, and tells how long each must be. Cloth.Long is not
// read. A width that is refused ends it with its faults.
func Widths(ctx context.Context, s Spec, widths ...units.Length) ([]Choice, error) {
	cloths := make([]Cloth, len(widths))
	for i, w := range widths {
		cloths[i] = s.Cloth
		cloths[i].Wide = w
	}
	return choices(ctx, s, cloths)
}

// Ways lays the pieces on the cloth of s as it is used four ways: on open cloth,
// on open cloth with one way, folded selvedges together, and so with one way; the
// same otherwise. Ways that are refused, as for pieces wider than half the cloth,
// are left out; where all are, the faults of the first are returned.
func Ways(ctx context.Context, s Spec) ([]Choice, error) {
	var out []Choice
	var first error
	for i := range 4 {
		c := s.Cloth
		c.Folded, c.Fold, c.OneWay = i >= 2, units.Length{}, i%2 == 1
		one, err := choices(ctx, s, []Cloth{c})
		if err != nil && ctx != nil && ctx.Err() != nil {
			return nil, err
		}
		if err != nil && first == nil {
			first = err
		}
		out = append(out, one...)
	}
	if len(out) > 0 {
		first = nil
	}
	return out, first
}

// choices lays the pieces of s on each of the cloths.
func choices(ctx context.Context, s Spec, cloths []Cloth) ([]Choice, error) {
	out := make([]Choice, 0, len(cloths))
	for _, c := range cloths {
		s.Cloth = c
		s.Cloth.Long = units.Length{}
		p, err := s.Plan(ctx)
		if err != nil {
			return nil, err
		}
		out = append(out, Choice{Cloth: c, Used: p.Used, Buy: p.Buy, Density: p.Density, Stopped: p.Stopped})
	}
	return out, nil
}

// Progress is how far a search has come.
type Progress struct {
	Lay     units.Length `json:"lay,omitzero"`     // length of the best lay so far
	Density units.Ratio  `json:"density,omitzero"` // area of its pieces as part of the usable width by Lay
	Work    int          `json:"work,omitzero"`    // work done, in millions of steps, at least and rounded down; all numbers of parts tried counted
}

// PlanWatched is [Spec.Plan], and calls watch with what it has, never from two
// goroutines at once: now and then as the search goes on, and with the lay that
// is returned. A nil watch is not called.
func (s Spec) PlanWatched(ctx context.Context, watch func(Progress)) (Plan, error) {
	if watch == nil {
		return s.Plan(ctx)
	}
	width := s.Cloth.Usable()
	work := 0
	p, err := s.plan(ctx, func(lay units.Length, area units.Area, steps int64) {
		work = int(steps / nest.StepsPerWork)
		watch(Progress{Lay: lay, Density: area.Div(width.Times(lay).MulInt(s.Cloth.layers())), Work: work})
	})
	if err == nil && !p.Stopped {
		work = max(work, p.Spec.Work)
	}
	if err == nil {
		watch(Progress{Lay: p.Lay, Density: p.Density, Work: work})
	}
	return p, err
}
