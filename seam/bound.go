package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

func (v *solver) bound() {
	if !v.single() {
		return
	}
	v.fill(&v.Second, fieldSecond, usualBinding())
	left := v.First
	if !v.Trim.IsZero() {
		left = left.Min(v.Trim)
	}
	fault.AtMost(&v.audit, "second", v.Second, left, "what is left of the allowance to bind", fault.Range)
	v.trimmed(v.First)
}

func (p *Plan) bound() {
	s := p.Spec
	p.Finished = s.Second
	p.Plies = 7
	p.Upper.bounds(s.Second, s.First)
	p.Under.bounds(s.Second, s.First)
	p.StripSingle = s.Second.MulInt(4)
	p.StripDouble = s.Second.MulInt(6)
	p.StripDoubleWide = p.StripSingle.Add(units.Inch.Of(1))
}

func (p Plan) boundSheet(sh *ticket.Sheet) {
	s := p.Spec
	sh.Lines = append(sh.Lines,
		line("strip, single binding", p.StripSingle, plus(s.Second, "finished"), times(4)),
		line("strip, folded double", p.StripDouble, plus(s.Second, "finished"), times(6)),
		line("strip, folded double with a fixed seam", p.StripDoubleWide, plus(s.Second, "finished"), times(4), plus(units.Inch.Of(1), "seam and turn")))
	sh.Steps = append(sh.Steps, p.first("Stitch the seam", ticket.RightTogether))
	if s.Trim != s.First {
		sh.Steps = append(sh.Steps, p.trimStep("Trim both allowances to one edge"))
	}
	sh.Steps = append(sh.Steps,
		ticket.Step{Do: "Cut the strip for a single binding", At: ticket.Long(p.StripSingle), From: "edge to edge",
			Note: "on the bias where the seam curves; a bias strip narrows as it stretches, so cut it full"},
		ticket.Step{Do: "Stitch the strip to both allowances together", Together: ticket.RightTogether, At: ticket.Long(s.Second), From: "the raw edges"},
		ticket.Step{
			Do: "Wrap the strip over the raw edges, turn its free edge in to the stitching, and stitch it down",
			Check: ticket.Check{
				What: "across the binding, on each face", Want: ticket.Long(s.Second), Give: ticket.Long(straightness()),
				Mend: "unpick the last row, trim the raw edges level and wrap the strip again",
			},
		},
		ticket.Step{Do: "Press the bound seam", Press: "to the back", Note: "nothing is taken beyond the seam itself; an edge bound instead of faced is another thing"})
	sh.Sources = append(sh.Sources, source.Practise("both allowances bound together and pressed to one side"))
	for i := range bindings {
		r := &bindings[i]
		if r.Finished == s.Second {
			sh.Sources = append(sh.Sources, source.Cite{For: r.Rule, ID: r.Source, Place: r.Place, Known: r.Known})
		}
	}
}
