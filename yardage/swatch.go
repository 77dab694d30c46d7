package yardage

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Swatch is a marked square of cloth measured before and after washing, or the
// length that cloth of a known shrinkage comes to. Of Before, After and Shrink
// two give the third; so do the three of the width. A side without shrinkage is
// given by Before and After, both alike.
type Swatch struct {
	Before      units.Length `json:"before,omitzero"`      // along the grain, before washing
	After       units.Length `json:"after,omitzero"`       // along the grain, after washing and pressing
	Shrink      units.Ratio  `json:"shrink,omitzero"`      // (Before - After) / Before
	WidthBefore units.Length `json:"widthBefore,omitzero"` // across, before washing; none where only the length is asked
	WidthAfter  units.Length `json:"widthAfter,omitzero"`  // across, after washing
	WidthShrink units.Ratio  `json:"widthShrink,omitzero"` // (WidthBefore - WidthAfter) / WidthBefore
}

// A SwatchPlan is the swatch with all of it known.
type SwatchPlan struct {
	Spec     Swatch       `json:"spec,omitzero"`     // as solved
	Lost     units.Length `json:"lost,omitzero"`     // Before less After
	LostWide units.Length `json:"lostWide,omitzero"` // WidthBefore less WidthAfter
	AreaLoss units.Ratio  `json:"areaLoss,omitzero"` // 1 - (1 - Shrink)(1 - WidthShrink); zero where the width is not given
}

// side is one direction of a swatch: two measures and the shrinkage between
// them, with the names of their fields.
type side struct {
	before, after units.Length
	shrink        units.Ratio
	names         [3]string
}

// solve fills the one of the three that is not given.
func (d *side) solve(a *fault.Audit) {
	var own fault.Audit
	b, f, s := !d.before.IsZero(), !d.after.IsZero(), !d.shrink.IsZero()
	if own.NotNegative(d.names[0], d.before); !b && !(f && s) {
		own.Fault(d.names[0], "", "more than 0 in, or both "+d.names[1]+" and "+d.names[2], fault.Missing)
	}
	if own.NotNegative(d.names[1], d.after); b && !f && !s {
		own.Fault(d.names[1], "", "more than 0 in, or "+d.names[2], fault.Missing)
	}
	shrinkage(&own, d.names[2], d.shrink)
	if !own.Failed() && b && f {
		made := d.before.Sub(d.after).Div(d.before)
		switch {
		case made.Sign() < 0:
			own.Fault(d.names[1], d.after.String(), "at most "+d.before.String()+" ("+d.names[0]+"): this is no shrinkage", fault.Range)
		case s && made != d.shrink:
			own.Fault(d.names[2], d.shrink.String(), made.String()+", which is what "+d.names[0]+" and "+d.names[1]+" give", fault.Conflict)
		}
		d.shrink = made
	}
	if own.Failed() {
		a.Include("", own.Err())
		return
	}
	switch {
	case !f:
		d.after = d.before.Scale(left(d.shrink))
	case !b:
		d.before = d.after.Unscale(left(d.shrink))
	}
}

// solve fills what follows: the shrinkage from the two measures, or the measure
// after or before washing from the other and the shrinkage. The length before
// washing is After / (1 - Shrink), never After x (1 + Shrink).
func (s Swatch) solve() (Swatch, error) {
	var a fault.Audit
	along := side{s.Before, s.After, s.Shrink, [3]string{"before", "after", "shrink"}}
	along.solve(&a)
	across := side{s.WidthBefore, s.WidthAfter, s.WidthShrink, [3]string{"widthBefore", "widthAfter", "widthShrink"}}
	if !s.WidthBefore.IsZero() || !s.WidthAfter.IsZero() || !s.WidthShrink.IsZero() {
		across.solve(&a)
	}
	if a.Failed() {
		return s, a.Err()
	}
	return Swatch{along.before, along.after, along.shrink, across.before, across.after, across.shrink}, nil
}

// Plan works out the swatch.
func (s Swatch) Plan() (SwatchPlan, error) {
	s, err := s.solve()
	if err != nil {
		return SwatchPlan{}, err
	}
	p := SwatchPlan{Spec: s, Lost: s.Before.Sub(s.After), LostWide: s.WidthBefore.Sub(s.WidthAfter)}
	if !s.WidthBefore.IsZero() {
		p.AreaLoss = left(left(s.Shrink).Mul(left(s.WidthShrink)))
	}
	return p, nil
}

// Sheet is how the swatch is washed and measured, and its working.
func (p SwatchPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sh := ticket.Sheet{Title: "A swatch washed and measured"}
	sh.Answer = []ticket.Line{line("lost of each length", ticket.Times(s.Shrink))}
	if !s.WidthBefore.IsZero() {
		sh.Answer = append(sh.Answer, line("of each width", ticket.Times(s.WidthShrink)))
	}
	sh.Lines = make([]ticket.Line, 0, 5)
	sh.Lines = append(sh.Lines,
		line("lost in length", ticket.Long(p.Lost), long(s.Before, "before"), less(s.After, "after")),
		line("shrinkage in length", ticket.Times(s.Shrink), long(p.Lost, "lost"), overLong(s.Before, "before")))
	if !s.WidthBefore.IsZero() {
		sh.Lines = append(sh.Lines,
			line("lost in width", ticket.Long(p.LostWide), long(s.WidthBefore, "before"), less(s.WidthAfter, "after")),
			line("shrinkage in width", ticket.Times(s.WidthShrink), long(p.LostWide, "lost"), overLong(s.WidthBefore, "before")),
			line("area left of 1", ticket.Times(left(p.AreaLoss)), ticket.Term{Amount: ticket.Times(left(s.Shrink)), Name: "left in length"}, by(left(s.WidthShrink), "left in width")))
	}
	sh.Steps = []ticket.Step{
		{Do: "Mark a length along the grain with thread, well in from the edges", At: ticket.Long(s.Before), From: "mark to mark"},
		{Do: "Wash, dry and press as the garment will be", Press: "without stretching",
			Check: ticket.Check{What: "mark to mark along the grain", Want: ticket.Long(s.After), Mend: "go by what this swatch measures; wash it again if it is to be washed hot later"}},
	}
	sh.Cautions = []ticket.Caution{swatchCare(), ticket.IronCare()}
	sh.Sources = []source.Cite{{For: "the shrinkage of a measured piece", ID: srcShrinkLesson, Known: source.Read}, {For: "dividing by what is left", ID: srcShrinkMath, Known: source.Read}}
	return sh
}
