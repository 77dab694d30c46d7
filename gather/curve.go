package gather

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// curve finds the length of the free edge. A line at a distance from a curve is
// longer than the curve by the distance times what the curve turns.
func (p *RufflePlan) curve(a *fault.Audit) {
	r := p.Spec
	straight := p.Strip.Edge.Add(r.Depth.Scale(r.Turn))
	sewn := p.Strip.Strip.Sewn
	if r.Corners == 0 {
		if straight.Sign() <= 0 {
			a.Fault("turn", r.Turn.String(), "more than "+p.Strip.Edge.Div(r.Depth).Neg().String()+" (edge over depth)", ErrCurve)
			return
		}
		p.Outer = units.Exactly(straight)
		p.OuterFullness = units.ExactlyRatio(sewn.Div(straight))
		return
	}
	outer := units.Pi().Of(r.Depth.MulInt(int64(r.Corners)).DivInt(2)).Plus(straight)
	if within := units.DefaultWithin(); within.Less(outer.Within()) {
		if finer, err := outer.Refine(within); err == nil {
			outer = finer
		}
	}
	n := strconv.Itoa(r.Corners)
	sign, err := outer.Sign()
	if err == nil && sign <= 0 {
		a.Fault("corners", n, "a free edge longer than 0 in", ErrCurve)
		return
	}
	p.Outer = outer
	if err == nil {
		p.OuterFullness, err = outer.Under(sewn)
	}
	if err != nil {
		a.Fault("corners", n, "a free edge that can be told from 0 in", units.ErrBound)
	}
}
