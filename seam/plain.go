package seam

import "example.com/clothyard/units/ticket"

func (v *solver) plain() {
	v.single()
	if !v.First.IsZero() {
		v.trimmed(v.First)
	}
}

func (p *Plan) plain() {
	p.Finished = p.Spec.Trim
	p.Plies = 2
	p.Raw = true
	p.Upper.bounds(p.least(), p.Spec.First)
	p.Under.bounds(p.least(), p.Spec.First)
}

func (p Plan) plainSheet(sh *ticket.Sheet) {
	s := p.Spec
	sh.Steps = append(sh.Steps, p.first("Stitch the seam", ticket.RightTogether))
	if s.Trim != s.First {
		sh.Steps = append(sh.Steps, p.trimStep("Trim both allowances"))
	}
	last := ticket.Step{
		Do: "Press the seam", Press: "flat as sewn, then open",
		Check: ticket.Check{
			What: "from the seam to the raw edge on each side", Want: ticket.Long(p.Finished), Give: ticket.Long(straightness()),
			Mend: "unpick where it wanders and stitch again from a guide on the plate",
		},
	}
	if s.Fraying {
		last.Note = "overcast or bind each raw edge, or trim, zigzag and press both to one side"
		sh.Cautions = append(sh.Cautions, ticket.Caution{
			Text:  "The raw edges of a plain seam stay exposed, and this cloth frays: trim and overcast them, bind them, or choose an enclosed seam.",
			Refer: "common practice of the trade",
		})
	}
	sh.Steps = append(sh.Steps, last)
	sh.Sources = append(sh.Sources, ticket.Practise("plain seam pressed open"))
}
