package layout

import (
	"cmp"
	"context"
	"errors"
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout/internal/nest"
)

// A Plan is a lay and what it comes to.
type Plan struct {
	Spec       Spec         `json:"spec,omitzero"`       // as solved
	Assumed    []string     `json:"assumed,omitzero"`    // what was not given and filled by default
	Placements []Placement  `json:"placements,omitzero"` // by Piece, then Copy, then Part
	Lay        units.Length `json:"lay,omitzero"`        // from the first end that is used to the far edge of the farthest piece
	Used       units.Length `json:"used,omitzero"`       // the cloth's length that this takes: Lay and both Ends
	Wide       units.Length `json:"wide,omitzero"`       // from the inner edge of the left-hand selvedge, or the fold, to the far edge of the outermost piece
	Density    units.Ratio  `json:"density,omitzero"`    // area of the pieces as part of the usable width by Lay, all layers
	Bound      units.Length `json:"bound,omitzero"`      // no lay of these pieces, cut in as many parts, is shorter: where Lay is equal to it, this is the shortest
	Spare      units.Length `json:"spare,omitzero"`      // Cloth.Long less Used; zero where Long is not given, negative where the lay is too long
	Fits       bool         `json:"fits,omitzero"`       // the lay is within Cloth.Long; true where that is not given
	Stopped    bool         `json:"stopped,omitzero"`    // the search ended before its Work was done: its context was done, or the outlines have so many points that even the plainest around them are too many

	// Buy is the length to ask for: Used, rounded up to a whole number of Cloth.Counter
	// where that is given.
	Buy units.Length `json:"buy,omitzero"`
	// Extra is how many copies, or parts, folded cloth gives besides those asked for, by
	// piece: one of an odd count, one of the other hand from each placement of a piece
	// that is not the same both hands. It is nil where there are none.
	Extra []int `json:"extra,omitzero"`
	// Leftover are the largest rectangles that nothing is cut from, inside selvedges and
	// ends and up to the end of the cloth, or of the lay where Cloth.Long is not given: the
	// largest by area, then the largest that has no part in it, and so forth, at most
	// [MaxLeftover]. Pieces and flaws count as the smallest rectangles around them, so there
	// may be more beside a curve. It is nil where there are none, and for lengths that share
	// no grid of 2^60 steps.
	Leftover []Rest `json:"leftover,omitzero"`
}

// Plan finds a lay as short as its Work allows. The faults of s are
// [fault.Faults], see [Spec.Solve].
//
// Where no lay within Cloth.Long is found the plan is the shortest that was,
// Fits is false and Spare negative, and the error is nil: it is not proven that
// there is none. Every lay that is returned has been through [Verify], against
// the cloth as long as need be where it does not fit.
//
// Pieces that may be cut in parts are laid in as few as the cloth can take, then
// each in one more as far as it may, and so forth, with all the Work each time. Of
// these lays the shortest is taken, or where Cloth.Long is given the one of fewest
// parts that is within it; of two alike, that of fewer parts.
//
// Plan returns soon after ctx is done, with the best lay so far and Stopped set. A
// first lay is made whatever ctx says, of the pieces as the rectangles around them;
// it is also what is returned where the proof of a better one would take long. The
// error of ctx is returned where it is done before the call, or before pieces of more
// than ten thousand points are checked. A nil ctx is never done. No goroutine that is
// started outlives the call.
func (s Spec) Plan(ctx context.Context) (Plan, error) { return s.plan(ctx, nil) }

// plan is Plan, and calls watch now and then.
func (s Spec) plan(ctx context.Context, watch func(lay units.Length, area units.Area, steps int64)) (Plan, error) {
	if ctx == nil {
		ctx = context.Background()
	}
	if ctx.Err() != nil {
		return Plan{}, context.Cause(ctx)
	}
	g, err := s.check(&clock{ctx: ctx, left: checkGrace})
	if errors.Is(err, errLate) {
		err = context.Cause(ctx)
	}
	if err != nil {
		return Plan{}, err
	}
	p := Plan{Spec: s}
	if s.Work == 0 {
		p.Spec.Work = DefaultWork
		p.Assumed = append(p.Assumed, "work")
	}
	p.Spec.Pieces = slices.Clone(s.Pieces)
	p.Spec.Cloth.Flaws, p.Spec.Cloth.Phases = slices.Clone(s.Cloth.Flaws), slices.Clone(s.Cloth.Phases)
	for i, flaw := range s.Cloth.Flaws {
		p.Spec.Cloth.Flaws[i].Outline = slices.Clone(flaw.Outline)
	}
	for i, one := range p.Spec.Pieces {
		p.Spec.Pieces[i] = one.filled()
		p.Spec.Pieces[i].Outline = slices.Clone(one.Outline)
		p.Spec.Pieces[i].Notches = slices.Clone(one.Notches)
		p.Spec.Pieces[i].Allowance = slices.Clone(one.Allowance)
	}
	var before int64 // steps of the ways tried before
	var least units.Length
	spend := int64(p.Spec.Work) * nest.StepsPerWork
	g = p.best(g, func(p *Plan, g ground) {
		if g.nest != nil && watch != nil {
			area := p.Spec.Area()
			g.nest.Watch = func(end, steps int64) {
				if lay := g.length(end); least.IsZero() || !least.Less(lay) {
					least = lay
					watch(lay, area, before+min(steps, spend))
				}
			}
		}
		p.find(ctx, g)
		before += spend
	})
	err = p.verify(&clock{ctx: ctx, left: proofGrace})
	if errors.Is(err, errLate) {
		p = p.lay(g, func(p *Plan, g ground) { p.seat(g, g.nest.Quick()) })
		p.Stopped = true
		err = p.verify(nil)
	}
	if err != nil {
		return Plan{}, err
	}
	p.Buy, p.Extra, p.Leftover = p.buy(), p.extra(), p.leftover()
	return p, nil
}

// find searches for a lay.
func (p *Plan) find(ctx context.Context, g ground) {
	if g.nest != nil {
		seats, stopped := g.nest.Search(ctx, p.Spec.Work, p.Spec.Seed)
		p.Stopped = stopped
		p.seat(g, seats)
		return
	}
	best, stopped := g.grid.Search(ctx, p.Spec.Work, p.Spec.Seed)
	p.Stopped = stopped
	p.place(g, best)
}

// seat turns seats into placements. The copies of a piece are counted from the
// cut end, those of either hand by themselves.
func (p *Plan) seat(g ground, seats []nest.Seat) {
	n := g.nest
	byKind := make([][]nest.Seat, len(n.Kinds))
	for i, s := range seats {
		byKind[n.Items[i]] = append(byKind[n.Items[i]], s)
	}
	for k, list := range byKind {
		slices.SortFunc(list, func(a, b nest.Seat) int { return cmp.Or(cmp.Compare(a.Y, b.Y), cmp.Compare(a.X, b.X)) })
		one := n.Kinds[k]
		first, step := 1, 1
		if one.Twofold || p.Spec.Pieces[one.Piece].Pair {
			step = 2
			if one.Mirror {
				first = 2
			}
		}
		for i, s := range list {
			q, copy := n.Variants[s.Variant].Quarters, first+i*step
			if one.Twofold && n.Variants[s.Variant].Mirror {
				copy++ // the even copy is on top
			}
			p.Placements = append(p.Placements, Placement{
				Piece: one.Piece, Copy: copy, Across: q&1 == 1, Half: q&2 == 2,
				X: p.Spec.Cloth.first().Add(g.length(s.X)),
				Y: p.Spec.Cloth.Ends.Add(g.length(s.Y)),
			})
		}
	}
	slices.SortFunc(p.Placements, func(a, b Placement) int {
		return cmp.Or(cmp.Compare(a.Piece, b.Piece), cmp.Compare(a.Copy, b.Copy))
	})
}

// verify checks the plan's own lay; it is errLate where it ends before that.
func (p *Plan) verify(c *clock) error {
	s := p.Spec
	if !p.Fits {
		s.Cloth.Long = units.Length{}
	}
	return s.prove(c, p.Placements)
}

// place turns spots of shapes into placements of pieces. The copies of a piece
// are counted from the cut end, those beside each other from the left.
func (p *Plan) place(g ground, best nest.Lay) {
	spots := slices.Clone(best.Spots)
	slices.SortFunc(spots, func(a, b nest.Spot) int {
		return cmp.Or(cmp.Compare(a.Y, b.Y), cmp.Compare(a.X, b.X))
	})
	p.Placements = make([]Placement, 0, len(spots))
	used := make([]int, len(g.grid.Shapes))
	for _, at := range spots {
		piece := g.grid.Shapes[at.Shape].Of[used[at.Shape]]
		used[at.Shape]++
		p.Placements = append(p.Placements, Placement{
			Piece:  piece,
			Across: at.Across,
			X:      p.Spec.Cloth.Selvedge.Add(g.length(at.X)),
			Y:      p.Spec.Cloth.Ends.Add(g.length(at.Y)),
		})
	}
	slices.SortStableFunc(p.Placements, func(a, b Placement) int { return cmp.Compare(a.Piece, b.Piece) })
	for i := range p.Placements {
		p.Placements[i].Copy = 1
		if i > 0 && p.Placements[i-1].Piece == p.Placements[i].Piece {
			p.Placements[i].Copy += p.Placements[i-1].Copy
		}
	}
}

// measure finds what the placements come to.
func (p *Plan) measure() {
	c := p.Spec.Cloth
	laid := p.Spec.laid()
	var far, right units.Length
	for _, at := range p.Placements {
		wide, long := at.Size(laid)
		right = right.Max(at.X.Add(wide))
		far = far.Max(at.Y.Add(long))
	}
	p.Lay = far.Sub(c.Ends)
	p.Used = far.Add(c.Ends)
	p.Wide = right.Sub(c.first())
	p.Density = p.area().Div(c.Usable().Times(p.Lay).MulInt(c.layers()))
	p.Fits = true
	if !c.Long.IsZero() {
		p.Spare = c.Long.Sub(p.Used)
		p.Fits = p.Spare.Sign() >= 0
	}
}

// area is the area of all that is cut and was asked for.
func (p *Plan) area() units.Area {
	s := p.cut()
	return s.Area()
}

// Area is the area of all the pieces, every copy counted, each cut whole.
func (s Spec) Area() units.Area {
	var sum units.Area
	for _, p := range s.Pieces {
		sum = sum.Add(p.Area().MulInt(int64(p.Count)))
	}
	return sum
}
