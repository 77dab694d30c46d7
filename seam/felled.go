package seam

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// felled solves the flat-felled and the mock felled seam: First = Second + Turned.
func (v *solver) felled() {
	if v.First.IsZero() && v.Take.IsZero() && !v.Second.IsZero() && !v.Turned.IsZero() {
		v.First = v.Second.Add(v.Turned)
	}
	if !v.single() {
		return
	}
	usual := usualTrim()
	if v.Second.IsZero() && v.Turned.IsZero() {
		row := printedFell(v.First)
		if v.Kind == MockFelled || row.Second.IsZero() {
			row = EnclosedRow{Second: v.First.DivInt(2)}
		}
		v.fill(&v.Second, fieldSecond, row.Second)
		if !row.Trim.IsZero() {
			usual = row.Trim
		}
	}
	v.fold(v.First, "first")
	v.trimmed(usual)
	if v.Second.Sign() > 0 {
		v.hides(v.Second, "second")
	}
}

func (p *Plan) felled() {
	s := p.Spec
	p.Finished = s.Second
	p.Plies = 3
	if !s.Trim.Add(s.Turned).Less(s.Second) {
		p.Plies = 4
	}
	p.Rows = 2
	p.Upper.bounds(s.First, s.First)
	p.Under.bounds(p.least(), s.Second.Sub(clearance()).Min(s.First))
}

func (p Plan) felledSheet(sh *ticket.Sheet) {
	s := p.Spec
	mock := s.Kind == MockFelled
	sh.Lines = append(sh.Lines,
		line("turned in on the upper ply", p.Turned, plus(s.First, "allowance"), minus(s.Second, "finished fell")),
		line("clear under the fell", s.Second.Sub(s.Trim), plus(s.Second, "finished fell"), minus(s.Trim, "left of the under ply")))
	row := ticket.Step{
		Do: "Lay the fold flat over the trimmed edge and stitch close to it", At: ticket.Long(s.Second), From: "the seam",
		Check: ticket.Check{
			What: "across the fell", Want: ticket.Long(s.Second), Give: ticket.Long(straightness()),
			Mend: "unpick this row, press the fold again and stitch from the seam as the guide",
		},
	}
	side, note := ticket.WrongTogether, "with right sides together instead, the fell lies inside the garment"
	if mock {
		side, note = ticket.RightTogether, ""
		row.Do = "From the right side stitch through the fold that lies beneath"
		row.Note = "then a second row close beside the seam"
	}
	sh.Steps = append(sh.Steps,
		p.first("Stitch the seam", side),
		ticket.Step{Do: "Press the seam", Press: "flat as sewn, then both allowances towards the under ply", Note: note},
		p.trimStep("Trim the under allowance only"),
		ticket.Step{
			Do: "Fold in the edge of the upper allowance", At: ticket.Long(p.Turned), From: "the raw edge", Press: "the fold sharp",
			Check: ticket.Check{
				What: "from the seam to the fold", Want: ticket.Long(s.Second), Give: ticket.Long(straightness()),
				Mend: "press the fold again; an edge turned in too deep cannot lie flat",
			},
		},
		row,
		ticket.Step{Do: "Press the fell", Press: "flat from both sides"})
	p.tight(sh, "fell")
	sh.Sources = append(sh.Sources, source.Practise("a turned edge no wider than the fell"))
	if mock {
		p.printed(sh)
		return
	}
	sh.Sources = append(sh.Sources, source.Cite{For: "trim of the under ply", ID: "clothing-construction-handbook", Known: source.Read})
	if slices.Contains(p.Assumed, "second") && p.Turned == s.Second {
		sh.Sources = append(sh.Sources, source.Cite{For: "half of the allowance turned in", ID: "tablecloth-seams-thread", Known: source.Read})
	}
	for i := range enclosed {
		r := &enclosed[i]
		if r.Seam != "flat-felled" || r.First != s.First || r.Second.IsZero() || r.Second.Less(r.Turn) {
			continue
		}
		c := source.Cite{For: "fell as here", ID: r.Source, Place: r.Place, Known: r.Known}
		if r.Second != s.Second {
			c.For = "another fell from the same allowance"
		}
		sh.Sources = append(sh.Sources, c)
	}
}

// untrimmed solves the fell whose edges are offset instead of trimmed: the upper
// ply gives First, the under one First and Turned.
func (v *solver) untrimmed() {
	offset := v.Cut.Less(v.CutUnder)
	if v.First.IsZero() && v.Take.IsZero() {
		usual := usualSecond()
		if offset {
			usual = v.Cut
		}
		v.fill(&v.First, fieldFirst, usual)
	}
	v.same()
	usual := v.First
	if offset && v.First == v.Cut {
		usual = usual.Min(v.CutUnder.Sub(v.Cut))
	}
	v.fill(&v.Turned, fieldTurned, usual)
	v.enough()
	fault.AtMost(&v.audit, "turned", v.Turned, v.First, "first", ErrFlat)
	// The upper raw edge reaches into the fold no further than where the half round begins.
	if !v.Thickness.IsZero() && !standsOut(v.Thickness, 1).Less(v.First) {
		most := v.First.Scale(units.RatioOf(2, 3))
		v.audit.Fault("thickness", v.Thickness.String(), "less than "+most.String()+" (two thirds of first: the row must go through the upper ply)", fault.Range)
	}
}

func (p *Plan) untrimmed() {
	s := p.Spec
	p.Finished = s.First
	p.Plies = 4
	p.Rows = 2
	p.Upper.bounds(s.First, s.First)
	p.Under.bounds(p.Under.Taken, p.Under.Taken)
}

func (p Plan) untrimmedSheet(sh *ticket.Sheet) {
	s := p.Spec
	p.turnLines(sh)
	// No fell lets this row catch the edge folded over: that may be no wider than the fell.
	through := "the edge folded over ends short of this row: the row close to the fold holds it"
	if s.Turned == s.First {
		through = "the edge folded over just reaches this row, which does not catch it: the row close to the fold holds it"
	}
	fold := ticket.Step{
		Do: "Fold the projecting edge of the under ply over the upper raw edge", At: ticket.Long(s.Turned), From: "the raw edge of the under ply",
		Press: "the fold against the upper raw edge",
	}
	sh.Steps = append(sh.Steps,
		ticket.Step{
			Do: "Lay the upper ply back from the edge of the under ply", Together: ticket.WrongTogether, At: ticket.Long(s.Turned), From: "the raw edge of the under ply",
			Note: "with right sides together instead, the fell lies inside the garment",
		},
		fold,
		ticket.Step{Do: "Stitch the seam through both plies", At: ticket.Long(s.First), From: "the fold", Note: through},
		ticket.Step{Do: "Press the seam", Press: "flat as sewn, then the fold over towards the upper ply"},
		ticket.Step{
			Do: "Stitch close to the fold, through all four layers", At: ticket.Long(s.First), From: "the seam",
			Note: "the fold, the upper allowance, the edge folded over, and the garment",
			Check: ticket.Check{
				What: "across the fell", Want: ticket.Long(s.First), Give: ticket.Long(straightness()),
				Mend: "unpick this row, press the fell flat and stitch from the seam as the guide",
			},
		},
		ticket.Step{Do: "Press the fell", Press: "flat from both sides"})
	if p.Upper.Drift != p.Under.Drift {
		sh.Cautions = append(sh.Cautions, ticket.Caution{
			Text:  "The two plies give up unequal amounts: the seam leaves its drafted place, and notches move unequally.",
			Refer: "the working above says by how much on each ply",
		})
	}
	p.printed(sh)
}
