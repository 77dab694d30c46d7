package gather

import (
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is how the cuff is made and the sleeve set into it, with the working behind
// it.
func (p CuffPlan) Sheet() ticket.Sheet {
	c := p.Spec
	catch := ticket.Step{
		Do: "Turn the cuff right side out and stitch the inner edge down", At: ticket.Long(p.Past.DivInt(2)), From: "the turned fold",
		Press: "the cuff flat",
	}
	if p.Past.IsZero() {
		catch = ticket.Step{Do: "Turn the cuff right side out and fell the inner edge to the seam by hand", Press: "the cuff flat"}
	}
	catch.Check = ticket.Check{
		What: "from the seam line to the fold", Want: ticket.Long(c.Depth),
		Mend: "press the fold again; where the seam strays, unpick and stitch it again",
	}
	gather := ticket.Step{
		Do: "Run the gathering row along the sleeve", At: ticket.Long(p.Row), From: "the raw edge",
		Note: "from one edge of the slit to the other",
	}
	if !c.Flat.IsZero() {
		gather.Note = "leave the stretches at the slit flat, as the working gives them"
	}
	pin := "mark to mark; the ends of the cuff stand out by the allowance beyond the edges of the slit"
	if c.Setting == Extended {
		pin = "mark to mark from the flush end; the other end of the cuff stands out by the lap and the allowance"
	}
	return ticket.Sheet{
		Title:   "A sleeve gathered into its cuff",
		Answer:  []ticket.Line{ticket.Sum("cut the cuff long", p.CutLength), ticket.Sum("and deep", p.CutDepth), {Label: "fullness", Result: ticket.Times(p.Fullness)}},
		Assumed: p.Assumed,
		Lines:   p.working(),
		Steps: []ticket.Step{
			{Do: "Cut the cuff to its length", At: ticket.Long(p.CutLength), From: "one end to the other", Note: "left and right cuffs are a mirrored pair: lay and mark them so"},
			{Do: "Cut the cuff to its depth", At: ticket.Long(p.CutDepth), From: "one long edge to the other"},
			{Do: "Turn the inner long edge under", At: ticket.Long(c.Turned), From: "the raw edge", Press: "to the wrong side"},
			{Do: "Mark the equal parts on sleeve and cuff", Note: "as the working gives them, from the finished edge of the slit and from the seam line at the end of the cuff"},
			gather,
			{
				Do: "Pin the sleeve to the cuff and draw it up", Together: ticket.RightTogether, Note: pin,
				Check: ticket.Check{
					What: "the sleeve, between the edges of the slit", Want: ticket.Long(p.Onto),
					Mend: "let the thread out or draw it closer; do not cut it yet",
				},
			},
			{Do: "Stitch the sleeve to the cuff", At: ticket.Long(c.Allowance), From: "the raw edge", Press: "the allowances into the cuff"},
			{
				Do: "Fold the cuff along its length and stitch across each end", Together: ticket.RightTogether, At: ticket.Long(c.Allowance), From: "the raw end",
				Check: ticket.Check{
					What: "the cuff, from end seam to end seam", Want: ticket.Long(p.Finished),
					Mend: "take the error out at the end that is out, before the corners are trimmed",
				},
			},
			catch,
		},
		Cautions: []ticket.Caution{ticket.CutCare(), ticket.IronCare()},
		Sources: []source.Cite{
			{For: "finished length and two seams", ID: "practical-designer", Place: "lesson 69", Known: source.Read},
			citeQuarters(),
			source.Practise("cuff is wrist, ease and lap; gathers go on the cuff or on the cuff less its extended end"),
		},
	}
}

// working is the sum written out line by line.
func (p CuffPlan) working() []ticket.Line {
	c := p.Spec
	finished, onto := ticket.Sum("finished cuff", p.Finished), ticket.Sum("part of the cuff the sleeve goes on", p.Onto)
	if !c.Wrist.IsZero() {
		finished.Terms = []ticket.Term{ticket.Add(c.Wrist, "wrist"), ticket.Add(c.Ease, "ease"), ticket.Add(c.lap(), "lap")}
	}
	if c.Setting == Extended {
		onto.Terms = []ticket.Term{ticket.Add(p.Finished, "finished"), ticket.Less(c.lap(), "extended end")}
	}
	lines := []ticket.Line{
		finished,
		ticket.Sum("length as cut", p.CutLength, ticket.Add(p.Finished, "finished"), ticket.Add(c.Allowance.MulInt(2), "two allowances")),
		ticket.Sum("depth as cut", p.CutDepth, ticket.Add(c.Depth, "depth"), ticket.Add(c.Allowance, "allowance"), ticket.Multiply(2, "because it is folded")),
		onto,
	}
	if !c.Flat.IsZero() {
		flat := ticket.Less(c.Flat.MulInt(2), "kept flat")
		lines = append(lines,
			ticket.Sum("sleeve that is gathered", p.Gathered, ticket.Add(c.Sleeve, "sleeve"), flat),
			ticket.Sum("into", p.Into, ticket.Add(p.Onto, "cuff"), flat))
	}
	lines = append(lines, fullness("fullness", p.Fullness, ticket.Add(p.Gathered, "sleeve"), p.Into, "cuff"),
		ticket.Sum("turned edge past the seam", p.Past, ticket.Add(c.Allowance, "allowance"), ticket.Less(c.Turned, "turned")))
	parts := int64(max(1, c.Parts))
	return append(lines, markLines(p.Marks, Mark{p.Gathered.DivInt(parts), p.Into.DivInt(parts)}, " on the sleeve", " on the cuff", Mark{c.Flat, c.Flat}, "kept flat")...)
}
