package gather

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is how the band is cut and set on, with the working behind it.
func (p BandPlan) Sheet() ticket.Sheet {
	b := p.Spec
	title := "A straight band, folded along its length"
	switch {
	case !p.Inner.IsZero():
		title = "A shaped band, faced"
	case b.Faced:
		title = "A straight band, faced"
	}
	s := ticket.Sheet{Title: title, Assumed: p.Assumed, Lines: p.working(), Steps: p.steps(), Cautions: p.cautions(), Sources: p.sources()}
	s.Answer = []ticket.Line{ticket.Sum("cut the band long", p.CutLength), ticket.Sum("and deep", p.CutDepth)}
	if !p.Inner.IsZero() {
		s.Answer = []ticket.Line{ticket.Sum("draw the upper seam line with a radius of", p.Inner), ticket.Sum("and the lower one with", p.Outer), ticket.Sum("cut it deep", p.CutDepth)}
	}
	if p.Surplus.Sign() > 0 {
		s.Answer = append(s.Answer, ticket.Sum("take up", p.Surplus))
	}
	return s
}

func (p BandPlan) working() []ticket.Line {
	b, zero := p.Spec, units.Length{}
	closed := ticket.Sum("band, closed", b.Closed)
	if !b.Body.IsZero() {
		closed.Terms = []ticket.Term{ticket.Add(b.Body, "body"), ticket.Add(b.Ease.Or(zero), "ease")}
	}
	lines := []ticket.Line{closed}
	if !b.Ring {
		ends := ticket.Sum("from end to end", p.Finished, ticket.Add(b.Closed, "closed"), ticket.Add(b.Underlap.Or(zero), "underlap"))
		if !b.Overlap.IsZero() {
			ends.Terms = append(ends.Terms, ticket.Add(b.Overlap, "overlap"))
		}
		lines = append(lines, ends)
	}
	lines = append(lines, ticket.Sum("length as cut", p.CutLength, ticket.Add(p.Finished, "finished"), ticket.Add(b.Ends.MulInt(2), "for the two ends")))
	if p.Pieces == 2 {
		lines = append(lines, ticket.Sum("depth as cut, of each of two pieces", p.CutDepth, ticket.Add(b.Depth, "depth"), ticket.Add(b.Allowance.MulInt(2), "two allowances")))
	} else {
		lines = append(lines,
			ticket.Sum("fold line from the raw edge", p.Fold, ticket.Add(b.Allowance, "allowance"), ticket.Add(b.Depth, "depth")),
			ticket.Sum("depth as cut", p.CutDepth, ticket.Add(p.Fold, "to the fold"), ticket.Add(b.Depth, "depth of the inner half"), ticket.Add(b.Inner.Or(zero), "beyond the seam line")))
	}
	if !p.Inner.IsZero() {
		lines = append(lines,
			ticket.Sum("radius of the upper seam line", p.Inner, ticket.Add(b.Closed, "upper edge"), ticket.Term{Op: ticket.By, Amount: ticket.Times(b.Depth.Div(b.Lower.Sub(b.Closed))), Name: "depth over what the lower edge is longer"}),
			ticket.Sum("radius of the lower seam line", p.Outer, ticket.Add(p.Inner, "upper radius"), ticket.Add(b.Depth, "depth")))
	}
	if !b.Edge.IsZero() {
		lines = append(lines, ticket.Sum("to take up", p.Surplus, ticket.Add(b.Edge, "edge"), ticket.Less(p.Onto, "part of the band it goes on")),
			fullness("fullness", p.Fullness, ticket.Add(b.Edge, "edge"), p.Onto, "band"))
	}
	if !p.PerTake.IsZero() {
		name := map[TakeUp]string{Pleated: "one pleat takes up", Darted: "one dart takes up"}[b.Taken]
		lines = append(lines, ticket.Sum(name, p.PerTake, ticket.Add(p.Surplus, "to take up"), ticket.Term{Op: ticket.Over, Amount: ticket.Of(b.Count), Name: "of them"}))
	}
	if !p.Packed.IsZero() {
		lines = append(lines, ticket.Line{Label: "how much of the seam the plies fill", Result: ticket.Times(p.Packed), Terms: []ticket.Term{
			ticket.Add(b.Thickness, "one ply"), {Op: ticket.Over, Amount: ticket.Long(b.Stitch), Name: "stitch"}, {Op: ticket.By, Amount: ticket.Times(p.Fullness), Name: "fullness"},
		}})
	}
	if !p.Fastening.IsZero() {
		lines = append(lines, ticket.Sum("middle of the lap, from either finished end", p.Fastening))
	}
	parts := int64(max(1, b.Parts))
	full := b.Edge
	if full.IsZero() {
		full = p.Onto
	}
	return append(lines, markLines(p.Marks, Mark{full.DivInt(parts), p.Onto.DivInt(parts)}, " on the edge", " on the band", Mark{Edge: b.Overlap}, "overlap")...)
}

func (p BandPlan) steps() []ticket.Step {
	b := p.Spec
	if b.Depth.IsZero() {
		return nil
	}
	cut := ticket.Step{Do: "Cut the band to its length", At: ticket.Long(p.CutLength), From: "one end to the other", Note: "along the lengthwise thread, which gives the least"}
	if !p.Inner.IsZero() {
		cut = ticket.Step{Do: "Draw both seam lines from one centre and cut two pieces, an allowance outside them all round", At: ticket.Long(p.Inner), From: "the centre to the upper seam line", Note: "the working gives the other radius; measure each length along its line"}
	}
	steps := []ticket.Step{cut}
	if p.Inner.IsZero() {
		steps = append(steps, ticket.Step{Do: "Cut the band to its depth", At: ticket.Long(p.CutDepth), From: "one long edge to the other"})
	}
	if b.Ring {
		steps = append(steps, ticket.Step{Do: "Join the two ends into a ring", Together: ticket.RightTogether, At: ticket.Long(b.Ends), From: "the raw ends", Press: "open"})
	}
	if p.Pieces == 2 {
		steps = append(steps, ticket.Step{Do: "Stitch the two pieces along the free edge", Together: ticket.RightTogether, At: ticket.Long(b.Allowance), From: "the raw edge", Press: "open, then towards the inner piece"})
	}
	if b.Parts > 1 {
		steps = append(steps, ticket.Step{
			Do: "Mark the equal parts on the edge and on the band", Note: "the laps are no part of them; measure every mark from the same end, as the working gives it, not from the mark before",
			Check: ticket.Check{What: "on the band, from the last mark to the opening", Want: ticket.Long(p.Onto.DivInt(int64(b.Parts))), Mend: "measure the whole band and mark it again"},
		})
	}
	steps = append(steps, p.taking()...)
	steps = append(steps, ticket.Step{
		Do: "Pin the band to the edge, mark to mark, and stitch it", Together: ticket.RightTogether, At: ticket.Long(b.Allowance), From: "the raw edge", Press: "the allowances into the band",
		Check: ticket.Check{What: "the band along the seam, from one edge of the opening to the other", Want: ticket.Long(p.Onto), Mend: "unpick where it strays: a band that is stretched or drawn in here fits nobody"},
	})
	last := ticket.Step{
		Do: "Fell or stitch the inner edge down", Press: "the band flat",
		Check: ticket.Check{What: "from the seam line to the free edge", Want: ticket.Long(b.Depth), Mend: "press the free edge again; where the seam strays, unpick and stitch it again"},
	}
	if b.Ring {
		return append(steps, last)
	}
	fasten := ticket.Step{Do: "Set the fastening in the middle of the lap", At: ticket.Long(p.Fastening), From: "either finished end", Note: "the hole or hook is in the upper end, the button or bar on the under one"}
	if p.Fastening.IsZero() {
		fasten = ticket.Step{Do: "Set a hook on one end and its eye on the other, so that the ends just meet"}
	}
	return append(steps,
		ticket.Step{
			Do: "Stitch across each end and turn it", Together: ticket.RightTogether, At: ticket.Long(b.Ends), From: "the raw end",
			Check: ticket.Check{What: "the band, from end to end", Want: ticket.Long(p.Finished), Mend: "take the error out at the under end, before the corners are trimmed"},
		}, last, fasten)
}

// taking are the steps that take the edge up.
func (p BandPlan) taking() []ticket.Step {
	b := p.Spec
	check := ticket.Check{What: "the edge as taken up, from one edge of the opening to the other", Want: ticket.Long(p.Onto)}
	switch b.Taken {
	case Gathered:
		check.Mend = "let the threads out or draw them closer; do not cut them yet"
		return []ticket.Step{
			{Do: "Run the gathering row along the edge", At: ticket.Long(p.Row), From: "the raw edge", Note: "with a stitch of " + b.Stitch.In(units.Millimetre).String() + " mm, its threads left long"},
			{Do: "Run the second row", At: ticket.Long(p.SecondRow), From: "the raw edge", Note: "it is taken out afterwards"},
			{Do: "Draw the rows up and spread the gathers evenly", Check: check},
		}
	case Eased:
		check.Mend = "draw the ease thread closer, or spread the ease more evenly"
		return []ticket.Step{{Do: "Ease the edge in on a thread within the allowance, without folds", Note: "most of it where the body is round, none at the centres", Check: check}}
	case Pleated:
		check.Mend = "move the folds that are out; an error stands in every pleat"
		return []ticket.Step{{Do: "Fold each pleat on its mark", At: ticket.Long(p.PerTake.DivInt(2)), From: "fold to the line it comes to lie on, half of what it takes up", Press: "the folds", Check: check}}
	case Darted:
		check.Mend = "unpick the dart that is out and sew it again"
		return []ticket.Step{{Do: "Stitch each dart, as wide at the edge", At: ticket.Long(p.PerTake), From: "one leg to the other", Press: "towards the centres", Check: check}}
	}
	return nil
}

func (p BandPlan) cautions() []ticket.Caution {
	b := p.Spec
	cautions := []ticket.Caution{ticket.CutCare(), ticket.IronCare()}
	add := func(text string) { cautions = append(cautions, ticket.Caution{Text: text, Refer: "common practice"}) }
	if b.Taken == Gathered && p.Fullness.Less(half(3)) {
		add("Gathers begin at half as much again: with less they look like a seam that was eased badly. Take the edge up in pleats or darts, or make it fuller.")
	}
	if half(1).Less(p.Packed) {
		add("The gathered plies fill more than half of the seam: it will be stiff and hard to sew. Gather less, or set a flat band of thinner cloth behind.")
	}
	if deep := b.Tape.Of(eighths(16), millimetres(50)); deep.Less(b.Depth) && p.Inner.IsZero() {
		add("A straight band so deep stands away from the body where it is wider below: shape it, with the length of its lower edge.")
	}
	return cautions
}

func (p BandPlan) sources() []source.Cite {
	all := append([]source.Cite{
		{For: "the laps are left out before the band is divided", ID: "cotton-dress-bulletin", Place: "gather in fullness", Known: source.Read},
		{For: "length and depth as cut", ID: "waistband-defining-page", Place: "step 1", Known: source.Read},
	}, cites(p.Assumed, p.Spec.Tape, map[string]string{"ease": bandEase, "underlap": underlap})...)
	switch p.Spec.Taken {
	case Eased:
		all = append(all, easeLimitRow().Cite())
	case Gathered:
		all = append(all, citeGathers(), usual(rowInside, p.Spec.Tape).Cite)
	}
	return all
}
