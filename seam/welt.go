package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// inside is the usual width of a trimmed edge, or half of what lies over it where
// that would not hide it.
func inside(usual, over units.Length) units.Length {
	if over.Sign() > 0 && !usual.Less(over) {
		return over.DivInt(2)
	}
	return usual
}

// welt solves Trim < Second < First: the row misses the trimmed edge and catches
// the wide one.
func (v *solver) welt() {
	if !v.single() {
		return
	}
	v.trimmed(inside(usualWeltTrim().Min(v.First.DivInt(2)), v.Second))
	usual := usualWelt()
	if !v.Trim.Less(usual) || !usual.Less(v.First) {
		usual = v.Trim.Add(v.First).DivInt(2)
	}
	v.fill(&v.Second, fieldSecond, usual)
	if !v.Second.Less(v.First) {
		v.audit.Fault("second", v.Second.String(), "less than "+v.First.String()+" (first), to catch the wide allowance", fault.Range)
	}
	v.hides(v.Second, "second")
}

func (p *Plan) welt() {
	s := p.Spec
	p.Finished = s.Second
	p.Plies = 3
	p.Rows = 1
	p.Raw = s.rawEdges()
	p.Upper.bounds(s.Second.Add(leastTrim(s.Fraying)).Min(s.First), s.First)
	p.Under.bounds(p.least(), s.Second.Sub(clearance()))
}

func (p Plan) weltSheet(sh *ticket.Sheet) {
	s := p.Spec
	sh.Lines = append(sh.Lines,
		line("clear between the trimmed edge and the row", s.Second.Sub(s.Trim), plus(s.Second, "row"), minus(s.Trim, "left of the under ply")),
		line("caught beyond the row", s.First.Sub(s.Second), plus(s.First, "allowance"), minus(s.Second, "row")))
	sh.Steps = append(sh.Steps,
		p.first("Stitch the seam", ticket.RightTogether),
		ticket.Step{Do: "Press the seam", Press: "flat as sewn, then both allowances towards the under ply"},
		p.trimStep("Trim the under allowance only"))
	p.finish(sh)
	sh.Steps = append(sh.Steps, ticket.Step{
		Do: "Stitch from the right side through the wide allowance", At: ticket.Long(s.Second), From: "the seam",
		Note: "the row must miss the trimmed edge and catch the wide one",
		Check: ticket.Check{
			What: "from the seam to the row", Want: ticket.Long(s.Second), Give: ticket.Long(straightness()),
			Mend: "unpick the row and stitch it again from the seam as the guide",
		},
	}, ticket.Step{Do: "Press the welt", Press: "flat from the wrong side"})
	p.tight(sh, "welt")
	sh.Sources = append(sh.Sources, source.Practise("the row between the trimmed edge and the wide one"))
	p.printed(sh)
}

// slot solves the seam of two folds over an underlay.
func (v *solver) slot() {
	if !v.single() {
		return
	}
	v.trimmed(v.First)
	v.fill(&v.Second, fieldSecond, usualSecond().Min(v.Trim.DivInt(2)))
	if !v.Second.Less(v.Trim) {
		v.audit.Fault("second", v.Second.String(), "less than "+v.Trim.String()+" (trim), to catch the allowance", fault.Range)
		return
	}
	v.fill(&v.Strip, fieldStrip, v.First.MulInt(2))
	if low := slotLeast(v.Spec); v.Strip.Less(low) {
		v.audit.Fault("strip", v.Strip.String(), "at least "+low.String()+" (to be caught by both rows)", fault.Range)
	}
}

// slotLeast is the narrowest underlay: as far as each row and a margin beyond it.
func slotLeast(s Spec) units.Length {
	return s.Second.Add(leastTrim(s.Fraying).Min(s.First.Sub(s.Second))).MulInt(2)
}

func (p *Plan) slot() {
	s := p.Spec
	p.Finished = s.Second.MulInt(2)
	p.Plies = 3
	p.Rows = 2
	p.Raw = s.rawEdges()
	p.StripLeast = slotLeast(s)
	low := p.StripLeast.DivInt(2).Min(s.Trim)
	p.Upper.bounds(low, s.First)
	p.Under.bounds(low, s.First)
}

func (p Plan) slotSheet(sh *ticket.Sheet) {
	s := p.Spec
	sh.Lines = append(sh.Lines,
		line("from row to row", p.Finished, plus(s.Second, "row from its fold"), times(2)),
		line("least underlay", p.StripLeast, plus(p.StripLeast.DivInt(2), "row and margin"), times(2)))
	sh.Steps = append(sh.Steps, p.first("Baste the seam", ticket.RightTogether))
	if s.Trim != s.First {
		sh.Steps = append(sh.Steps, p.trimStep("Trim both allowances"))
	}
	sh.Steps = append(sh.Steps, ticket.Step{Do: "Press the basted seam", Press: "open"})
	p.finish(sh)
	sh.Steps = append(sh.Steps,
		ticket.Step{Do: "Cut the underlay, and lay it under the seam, its middle on the basting", Together: ticket.WrongOnRight, At: ticket.Long(s.Strip), From: "edge to edge"},
		ticket.Step{
			Do: "Stitch from the right side on each side of the seam", At: ticket.Long(s.Second), From: "each fold",
			Check: ticket.Check{
				What: "from row to row", Want: ticket.Long(p.Finished), Give: ticket.Long(straightness()),
				Mend: "unpick the row that wanders and stitch it again from the fold",
			},
		},
		ticket.Step{Do: "Take out the basting and press the slot", Press: "from the wrong side"})
	p.printed(sh)
}
