package seam

import (
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// turned solves the seams whose allowances are both turned in at the edge,
// apart from each other or towards each other: Trim = Second + Turned.
func (v *solver) turned() {
	if v.Trim.IsZero() && !v.Second.IsZero() && !v.Turned.IsZero() {
		v.Trim = v.Second.Add(v.Turned)
	}
	if !v.single() {
		return
	}
	v.trimmed(v.First)
	if v.Second.IsZero() && v.Turned.IsZero() {
		usual := v.Trim.DivInt(2)
		if v.Kind == TurnedStitched {
			usual = usual.Min(usualTurned())
		}
		v.fill(&v.Turned, fieldTurned, usual)
	}
	v.fold(v.Trim, "trim")
}

func (p *Plan) turned() {
	s := p.Spec
	p.Finished = s.Second
	p.Plies = 3
	if s.Kind == MockFrench {
		p.Plies = 5
	}
	low := s.Turned.MulInt(2)
	p.Upper.bounds(low, s.First)
	p.Under.bounds(low, s.First)
}

func (p Plan) turnedSheet(sh *ticket.Sheet) {
	s := p.Spec
	sh.Lines = append(sh.Lines, line("left of each allowance, from seam to fold", s.Second, plus(s.Trim, "allowance"), minus(s.Turned, "turned in")))
	sh.Steps = append(sh.Steps, p.first("Stitch the seam", ticket.RightTogether))
	if s.Trim != s.First {
		sh.Steps = append(sh.Steps, p.trimStep("Trim both allowances"))
	}
	fold := ticket.Step{
		Do: "Turn each raw edge under, towards the garment", At: ticket.Long(s.Turned), From: "the raw edge", Press: "the fold sharp",
		Check: ticket.Check{
			What: "from the seam to the fold on each side", Want: ticket.Long(s.Second), Give: ticket.Long(straightness()),
			Mend: "press the fold again where it wanders",
		},
	}
	if s.Kind == MockFrench {
		fold.Do = "Turn in the edges of both allowances towards each other"
		fold.Check.What = "from the seam to the folds"
		sh.Steps = append(sh.Steps, fold,
			ticket.Step{Do: "Stitch the two folds together, close to them", Note: "through the allowances only"},
			ticket.Step{Do: "Press the ridge", Press: "to the back", Note: "where two ridges meet press them opposite ways"})
	} else {
		sh.Steps = append(sh.Steps,
			ticket.Step{Do: "Press the seam", Press: "flat as sewn, then open"}, fold,
			ticket.Step{Do: "Stitch close to each fold", Note: "through the allowance only"})
	}
	sh.Sources = append(sh.Sources, source.Practise("a turned edge no wider than what is left beside it"))
	p.printed(sh)
}
