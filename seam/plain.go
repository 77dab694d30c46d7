package seam

import (
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// plain solves the plain seam, open or to one side, and the hairline.
func (v *solver) plain() {
	if !v.single() {
		return
	}
	usual := v.First
	if v.Kind == Hairline {
		usual = usualTrim()
	}
	v.trimmed(usual)
}

func (p *Plan) plain() {
	p.Finished = p.Spec.Trim
	p.Plies = 2
	if p.Spec.Aside || p.Spec.Kind == Hairline {
		p.Plies = 3
	}
	p.Raw = p.Spec.rawEdges()
	p.Upper.bounds(p.least(), p.Spec.First)
	p.Under.bounds(p.least(), p.Spec.First)
}

// pressed is the last pressing of a plain seam, with its check.
func (p Plan) pressed() ticket.Step {
	st := ticket.Step{
		Do: "Press the seam", Press: "flat as sewn, then open",
		Check: ticket.Check{
			What: "from the seam to the raw edge on each side", Want: ticket.Long(p.Finished), Give: ticket.Long(straightness()),
			Mend: "unpick where it wanders and stitch again from a guide on the plate",
		},
	}
	if p.Spec.Aside || p.Spec.Kind == Hairline {
		st.Press = "flat as sewn, then both allowances to one side"
		st.Check.What = "from the seam to the raw edges"
	}
	return st
}

func (p Plan) plainSheet(sh *ticket.Sheet) {
	s := p.Spec
	sh.Steps = append(sh.Steps, p.first("Stitch the seam", ticket.RightTogether))
	if s.Trim != s.First {
		sh.Steps = append(sh.Steps, p.trimStep("Trim both allowances"))
	}
	last := p.pressed()
	if s.Fraying && s.Finish == NoFinish {
		last.Note = "overcast or bind each raw edge, or trim, zigzag and press both to one side"
	}
	if s.Aside && s.Finish == NoFinish {
		sh.Sources = append(sh.Sources, source.Practise("plain seam pressed to one side"))
	} else {
		sh.Sources = append(sh.Sources, source.Practise("plain seam pressed open"))
	}
	p.finish(sh)
	sh.Steps = append(sh.Steps, last)
}

func (p Plan) hairlineSheet(sh *ticket.Sheet) {
	sh.Steps = append(sh.Steps,
		p.first("Stitch a short, narrow zigzag on the stitching line, over a fine cord if the cloth is soft", ticket.RightTogether),
		p.trimStep("Trim both allowances close to the zigzag"),
		p.pressed())
	p.finish(sh)
	sh.Cautions = append(sh.Cautions, ticket.Caution{
		Text:  "Too little is left beside a hairline seam to bear a pull: use it in sheer cloth where nothing strains it.",
		Refer: "the source of the figures says so",
	})
	p.printed(sh)
}
