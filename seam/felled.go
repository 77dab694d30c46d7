package seam

import "example.com/clothyard/units/ticket"

func (v *solver) felled() {
	v.single()
	if v.First.IsZero() {
		return
	}
	usual := usualTrim()
	if v.Second.IsZero() {
		row := printedFell(v.First)
		if row.Second.IsZero() {
			row.Second = v.First.DivInt(2)
		}
		v.fill(&v.Second, fieldSecond, row.Second)
		if !row.Trim.IsZero() {
			usual = row.Trim
		}
	}
	half := v.First.DivInt(2)
	switch {
	case !v.Second.Less(v.First):
		v.audit.Fault("Second", v.Second.String(), "less than "+v.First.String()+" (First), to leave an edge to turn in", ErrHidden)
	case v.Second.Less(half):
		v.audit.Fault("Second", v.Second.String(), "at least "+half.String()+
			" (half of First), or First trimmed to "+v.Second.MulInt(2).String()+" at most", ErrFlat)
	}
	v.trimmed(usual)
	if !v.Trim.Less(v.Second) {
		v.audit.Fault("Trim", v.Trim.String(), "less than "+v.Second.String()+" (Second)", ErrHidden)
	}
}

func (p *Plan) felled() {
	s := p.Spec
	p.Finished = s.Second
	p.Turned = s.First.Sub(s.Second)
	p.Plies = 3
	if !s.Trim.Add(p.Turned).Less(s.Second) {
		p.Plies = 4
	}
	p.Upper.bounds(s.First, s.First)
	p.Under.bounds(p.least(), s.Second.Sub(clearance()).Min(s.First))
}

func (p Plan) felledSheet(sh *ticket.Sheet) {
	s := p.Spec
	sh.Lines = append(sh.Lines,
		line("turned in on the upper ply", p.Turned, plus(s.First, "allowance"), minus(s.Second, "finished fell")),
		line("clear under the fell", s.Second.Sub(s.Trim), plus(s.Second, "finished fell"), minus(s.Trim, "left of the under ply")))
	sh.Steps = append(sh.Steps,
		p.first("Stitch the seam", ticket.WrongTogether),
		ticket.Step{Do: "Press the seam", Press: "flat as sewn, then both allowances towards the under ply", Note: "with right sides together instead, the fell lies inside the garment"},
		p.trimStep("Trim the under allowance only"),
		ticket.Step{
			Do: "Fold in the edge of the upper allowance", At: ticket.Long(p.Turned), From: "the raw edge", Press: "the fold sharp",
			Check: ticket.Check{
				What: "from the seam to the fold", Want: ticket.Long(s.Second), Give: ticket.Long(straightness()),
				Mend: "press the fold again; an edge turned in too deep cannot lie flat",
			},
		},
		ticket.Step{
			Do: "Lay the fold flat over the trimmed edge and stitch close to it", At: ticket.Long(s.Second), From: "the seam",
			Check: ticket.Check{
				What: "across the fell", Want: ticket.Long(s.Second), Give: ticket.Long(straightness()),
				Mend: "unpick this row, press the fold again and stitch from the seam as the guide",
			},
		},
		ticket.Step{Do: "Press the fell", Press: "flat from both sides"})
	p.tight(sh, "fell")
	sh.Sources = append(sh.Sources,
		ticket.Cite{For: "trim of the under ply", ID: "clothing-construction-handbook", Known: ticket.Read},
		ticket.Practise("a turned edge no wider than the fell"))
	if p.Assumed.Has("Second") && p.Turned == s.Second {
		sh.Sources = append(sh.Sources, ticket.Cite{For: "half of the allowance turned in", ID: "tablecloth-seams-thread", Known: ticket.Read})
	}
	for i := range enclosed {
		r := &enclosed[i]
		if r.Seam != "flat-felled" || r.First != s.First || r.Second.IsZero() || r.Second.Less(r.Turn) {
			continue
		}
		c := ticket.Cite{For: "fell as here", ID: r.Source, Place: r.Place, Known: r.Known}
		if r.Second != s.Second {
			c.For = "another fell from the same allowance"
		}
		sh.Sources = append(sh.Sources, c)
	}
}
