package seam

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// french solves Take = First + Second, and the trim between the passes.
func (v *solver) french() {
	row := v.passes()
	if v.First.IsZero() || v.Second.IsZero() {
		return // passes has recorded why
	}
	v.enough()
	if low := narrowest(); v.Second.Cmp(low) <= 0 {
		v.audit.Fault("second", v.Second.String(), "more than "+low.String()+" (the trimmed edges must fit inside)", fault.Range)
	}
	if sum := v.First.Add(v.Second); v.Take != sum {
		v.audit.Fault("take", v.Take.String(), sum.String()+" (first and second)", fault.Conflict)
	}
	usual := usualTrim()
	if !row.Trim.IsZero() {
		usual = row.Trim
	}
	v.trimmed(usual)
	v.ridge()
}

// ridge holds the trimmed edges inside the second pass: the first pass lies inside
// the fold, by as much as the cloth is thick.
func (v *solver) ridge() {
	room := v.Second.Sub(v.Trim)
	if v.hides(v.Second, "second"); room.Sign() > 0 && !v.Thickness.IsZero() && !v.Thickness.Less(room) {
		v.audit.Fault("thickness", v.Thickness.String(), "less than "+room.String()+" (second less trim)", ErrHidden)
	}
}

// passes fills First, Second and Take, and returns the printed set it used, if any.
func (v *solver) passes() (row EnclosedRow) {
	first, second := !v.First.IsZero(), !v.Second.IsZero()
	switch {
	case first && second:
	case !v.Take.IsZero() && first:
		v.Second = v.rest(v.First, "first")
	case !v.Take.IsZero() && second:
		v.First = v.rest(v.Second, "second")
	default:
		row = v.printedPasses()
	}
	if v.Take.IsZero() {
		v.Take = v.First.Add(v.Second)
	}
	return row
}

// rest is what one pass leaves of Take for the other.
func (v *solver) rest(pass units.Length, path string) units.Length {
	if !pass.Less(v.Take) {
		v.audit.Fault(path, pass.String(), "less than "+v.Take.String()+" (take)", fault.Conflict)
		return units.Length{}
	}
	return v.Take.Sub(pass)
}

// printedPasses fills the passes by default: from the printed set for this
// allowance, or by the general rule.
func (v *solver) printedPasses() (row EnclosedRow) {
	total, equal := v.whole()
	if !v.Take.IsZero() {
		total, equal = v.Take, true
	}
	if equal {
		row = printedFrench(total, v.First, v.Second)
	}
	switch {
	case !row.First.IsZero():
		v.fill(&v.First, fieldFirst, row.First)
		v.fill(&v.Second, fieldSecond, row.Second)
	case !v.First.IsZero():
		v.fill(&v.Second, fieldSecond, usualSecond())
	case !v.Second.IsZero():
		v.fill(&v.First, fieldFirst, usualFirst())
	case !equal:
		v.missing()
	default:
		v.fill(&v.First, fieldFirst, total.DivInt(2))
		v.fill(&v.Second, fieldSecond, total.DivInt(2))
	}
	return row
}

func (p *Plan) french() {
	s := p.Spec
	p.Finished = s.Second
	p.Plies = 5
	most := s.Second.Sub(clearance()).Sub(s.Thickness).Min(s.First)
	p.Upper.bounds(p.least(), most)
	p.Under.bounds(p.least(), most)
}

// inside is how far the trimmed edges of a French seam lie from the second pass.
func (p Plan) inside() units.Length { return p.Spec.Second.Sub(p.Spec.Trim).Sub(p.Spec.Thickness) }

func (p Plan) frenchSheet(sh *ticket.Sheet) {
	s := p.Spec
	clear := ticket.Line{Label: "clear inside the ridge", Result: ticket.Long(p.inside())}
	if clear.Terms = []ticket.Term{plus(s.Second, "second pass"), minus(s.Trim, "left after trimming"), minus(s.Thickness, "the fold, outside the first pass")}; s.Thickness.IsZero() {
		clear.Terms = clear.Terms[:2]
	}
	sh.Lines = append(sh.Lines, clear)
	p.turnLines(sh)
	sh.Steps = append(sh.Steps,
		p.first("Stitch the first pass", ticket.WrongTogether),
		ticket.Step{Do: "Press the first pass", Press: "flat as sewn, then open"},
		p.trimStep("Trim both allowances just before the second pass"),
		ticket.Step{Do: "Fold the plies back along the stitching", Together: ticket.RightTogether, Press: "with the stitching exactly on the fold"},
		ticket.Step{
			Do: "Stitch the second pass", Together: ticket.RightTogether, At: ticket.Long(s.Second), From: "the fold",
			Note: "the trimmed edges must lie wholly inside",
			Check: ticket.Check{
				What: "across the ridge", Want: ticket.Long(s.Second), Give: ticket.Long(straightness()),
				Mend: "unpick the second pass and sew it again, wider where threads show through",
			},
		},
		ticket.Step{Do: "Press the ridge", Press: "to the back", Note: "where two ridges meet press them opposite ways"})
	p.tight(sh, "second pass")
	sh.Sources = append(sh.Sources,
		source.Cite{For: "trim before the second pass", ID: "extension-french-seam-sheet", Known: source.Read},
		source.Practise("the clearance inside the second pass, and the turn of cloth"))
	if slices.Contains(p.Assumed, "first") && slices.Contains(p.Assumed, "second") && s.First == s.Second {
		sh.Sources = append(sh.Sources, source.Cite{For: "half of the allowance for each pass", ID: "seam-finishing-methods", Known: source.Read})
	}
	for i := range enclosed {
		r := &enclosed[i]
		if r.Seam != "french" || r.First.IsZero() || r.Second.IsZero() || !r.FirstMost.IsZero() || r.First.Add(r.Second) != s.Take {
			continue
		}
		c := source.Cite{For: "passes as here", ID: r.Source, Place: r.Place, Known: r.Known}
		if r.First != s.First {
			c.For = "other passes that come to the same"
		}
		sh.Sources = append(sh.Sources, c)
	}
}
