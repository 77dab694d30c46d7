package seam

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// lapped solves the seam whose upper allowance is turned under at First and laid
// on the under ply, Second from its raw edge.
func (v *solver) lapped() {
	if v.First.IsZero() && v.Take.IsZero() {
		v.fill(&v.First, fieldFirst, v.Cut)
	}
	v.same()
	v.fill(&v.Second, fieldSecond, v.CutUnder)
	v.enough()
	narrow, name := v.First, "first"
	if v.Second.Less(narrow) {
		narrow, name = v.Second, "second"
	}
	v.fill(&v.Row, fieldRow, edgeStitch().Min(narrow.DivInt(2)))
	if !v.Row.Less(narrow) {
		v.audit.Fault("row", v.Row.String(), "less than "+narrow.String()+" ("+name+"), to catch both allowances", fault.Range)
		return
	}
	// The fold takes half round of what is turned under, and stands out.
	v.thin(round(v.Thickness, 0).Plus(v.Thickness.Neg()), v.First.Sub(v.Row), "the turned edge must reach past the row")
}

// thin refuses cloth so thick that of the room for it a fold takes all: gone, which
// is a multiple of the thickness.
func (v *solver) thin(gone units.Near, room units.Length, why string) {
	if v.Thickness.IsZero() || room.Sign() <= 0 {
		return
	}
	over, err := gone.Cmp(units.Exactly(room))
	if err == nil && over < 0 {
		return
	}
	limit := "an amount of fewer places"
	if most, e := gone.Under(room); err == nil && e == nil {
		limit, err = "less than "+short(most.Of(v.Thickness).String())+" ("+why+")", fault.Range
	}
	v.audit.Fault("thickness", short(v.Thickness.String()), limit, fault.KindOf(err))
}

func (p *Plan) lapped() {
	s := p.Spec
	p.Finished = s.Second
	p.Turned = s.First
	p.Plies = 3
	p.Rows = 1
	p.Raw = true
	low := s.Row.Add(leastTrim(s.Fraying))
	p.Upper.bounds(low.Min(s.First), s.First)
	p.Under.bounds(low.Min(s.Second), s.Second)
}

func (p Plan) lappedSheet(sh *ticket.Sheet) {
	s := p.Spec
	lay := ticket.Step{
		Do: "Lay the upper fold on the under ply", Together: ticket.WrongOnRight, At: ticket.Long(s.Second), From: "the raw edge of the under ply",
		Check: ticket.Check{
			What: "from the fold to the raw edge beneath", Want: ticket.Long(s.Second), Give: ticket.Long(straightness()),
			Mend: "pin again; a thread marked on the under ply keeps it true",
		},
	}
	sh.Lines = append(sh.Lines, line("caught beyond the row, under ply", s.Second.Sub(s.Row), plus(s.Second, "lap"), minus(s.Row, "row")))
	p.turnLines(sh)
	sh.Steps = append(sh.Steps,
		ticket.Step{Do: "Turn the upper allowance under", At: ticket.Long(s.First), From: "the raw edge of the upper ply", Press: "the fold sharp"},
		lay,
		ticket.Step{Do: "Stitch from the right side", At: ticket.Long(s.Row), From: "the fold"},
		ticket.Step{Do: "Press the seam", Press: "from the wrong side"})
	p.finish(sh)
	if slices.Contains(p.Assumed, "row") {
		sh.Sources = append(sh.Sources, source.Cite{For: "the row along the fold", ID: "edge-stitch-note", Known: source.Read})
	}
	sh.Sources = append(sh.Sources, source.Practise("the fold laid on the stitching line of the under ply"))
	p.printed(sh)
}

// lappedTurned solves First = Turned + half of Second.
func (v *solver) lappedTurned() {
	if v.First.IsZero() && v.Take.IsZero() && !v.Second.IsZero() && !v.Turned.IsZero() {
		v.First = v.Turned.Add(v.Second.DivInt(2))
	}
	if !v.single() {
		return
	}
	path, value := "turned", v.Turned
	switch {
	case !v.Turned.IsZero() && v.Second.IsZero():
		v.Second = v.First.Sub(v.Turned).MulInt(2)
	case v.Turned.IsZero():
		v.fill(&v.Second, fieldSecond, usualLap(v.First))
		path, value = "second", v.Second
		v.Turned = v.First.Sub(v.Second.DivInt(2))
	case v.Turned.Add(v.Second.DivInt(2)) != v.First:
		v.audit.Fault("turned", v.Turned.String(), v.First.Sub(v.Second.DivInt(2)).String()+" (first less half of second)", fault.Conflict)
		return
	}
	most, least := v.First.MulInt(2), v.First.MulInt(2).Scale(units.RatioOf(1, 3))
	switch {
	case v.Turned.Sign() > 0 && v.Turned.Less(v.Second):
		v.thin(round(v.Thickness, 0), v.Turned, "the fold must leave an edge turned")
	case path == "turned":
		v.audit.Fault(path, value.String(), "less than "+least.String()+" (two thirds of first)", ErrHidden)
	default:
		v.audit.Fault(path, value.String(), "more than "+least.String()+" and less than "+most.String()+" (two thirds of first, and twice first)", ErrHidden)
	}
}

// usualLap is 1/2 in where that hides the turned edges and leaves something to
// turn, else as much as First.
func usualLap(first units.Length) units.Length {
	if lap := inch(1, 2); lap.Less(first.MulInt(2)) && first.MulInt(2).Less(lap.MulInt(3)) {
		return lap
	}
	return first
}

func (p *Plan) lappedTurned() {
	s := p.Spec
	p.Finished = s.Second
	p.Plies = 3
	if !s.Turned.MulInt(2).Less(s.Second) {
		p.Plies = 4
	}
	p.Rows = 2
	low := p.least().Min(s.Turned)
	p.Upper.bounds(low, s.Second.Sub(clearance()))
	p.Under.bounds(low, s.Second.Sub(clearance()))
}

func (p Plan) lappedTurnedSheet(sh *ticket.Sheet) {
	s := p.Spec
	sh.Lines = append(sh.Lines,
		line("cloth that the pair takes", s.First.MulInt(2), plus(s.Second, "lap"), plus(s.Turned, "turned under"), plus(s.Turned, "turned up")))
	p.turnLines(sh)
	sh.Steps = append(sh.Steps,
		ticket.Step{Do: "Turn the upper edge to the wrong side", At: ticket.Long(s.Turned), From: "the raw edge of the upper ply", Press: "the fold sharp"},
		ticket.Step{Do: "Turn the under edge to the right side", At: ticket.Long(s.Turned), From: "the raw edge of the under ply", Press: "the fold sharp"},
		p.lapStep("Lap the upper ply over the under one", ticket.WrongOnRight, "fold to fold"),
		ticket.Step{Do: "Stitch a row close to each fold", Note: "the one beneath from the wrong side"},
		ticket.Step{Do: "Press the seam", Press: "from the wrong side"})
	p.printed(sh)
}

// lapStep laps two edges that are alike.
func (p Plan) lapStep(do string, sides ticket.Sides, from string) ticket.Step {
	return ticket.Step{
		Do: do, Together: sides, At: ticket.Long(p.Spec.Second), From: from,
		Check: ticket.Check{
			What: "across the lap", Want: ticket.Long(p.Spec.Second), Give: ticket.Long(straightness()),
			Mend: "pin again; a line of chalk on the under ply keeps it true",
		},
	}
}

// lappedRaw solves First = half of Second.
func (v *solver) lappedRaw() {
	if v.First.IsZero() && v.Take.IsZero() {
		v.First = v.Second.DivInt(2)
	}
	if !v.single() {
		return
	}
	switch lap := v.First.MulInt(2); {
	case v.Second.IsZero():
		v.Second = lap
	case v.Second != lap:
		v.audit.Fault("second", v.Second.String(), lap.String()+" (twice first)", fault.Conflict)
	}
}

func (p *Plan) lappedRaw() {
	s := p.Spec
	p.Finished = s.Second
	p.Plies = 2
	p.Rows = 2
	p.Raw = true
	p.Upper.bounds(s.First, s.First)
	p.Under.bounds(s.First, s.First)
}

func (p Plan) lappedRawSheet(sh *ticket.Sheet) {
	sh.Steps = append(sh.Steps,
		p.lapStep("Lap the upper ply over the under one", ticket.WrongOnRight, "raw edge to raw edge"),
		ticket.Step{Do: "Stitch close to the upper raw edge, and again close to the edge beneath"},
		ticket.Step{Do: "Press the seam", Press: "from the wrong side"})
	p.finish(sh)
	if p.Gain.Sign() > 0 {
		sh.Cautions = append(sh.Cautions, ticket.Caution{
			Text:  "A lap narrower than both allowances together leaves the garment bigger, unless the edges are cut back first.",
			Refer: "the working above says by how much",
		})
	}
	p.printed(sh)
}
