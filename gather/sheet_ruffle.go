package gather

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is how the ruffle is made and set, with the working behind it.
func (p RufflePlan) Sheet() ticket.Sheet {
	r, sp := p.Spec, p.Strip.Strip
	title := "A ruffle, gathered by one edge"
	if r.Folded {
		title = "A double ruffle, folded and gathered by its raw edges"
	}
	sheet := ticket.Sheet{Title: title, Assumed: p.Assumed, Lines: p.working()}
	steps := make([]ticket.Step, 0, 12)
	steps = append(steps,
		ticket.Step{Do: "Cut the pieces to their length", At: ticket.Long(sp.Spec.Each), From: "one cut end to the other"},
		ticket.Step{Do: "Cut the pieces to their depth", At: ticket.Long(p.CutDepth), From: "one long edge to the other"})
	if sp.Joins > 0 {
		steps = append(steps, sp.Joining())
	}
	steps = append(steps, p.ends()...)
	if r.Parts > 1 {
		from, last := "the end, for the first mark", "from the last mark to the far end"
		if sp.Spec.Ring {
			from, last = "the closing join, for the first mark", "from the last mark on to the closing join"
		}
		steps = append(steps,
			ticket.Step{
				Do: "Mark the equal parts on the strip", At: ticket.Long(p.StripPart), From: from,
				Note: "measure every mark from the same end, as the working gives it, not from the mark before",
				Check: ticket.Check{
					What: last, Want: ticket.Long(p.StripPart),
					Mend: "measure the whole strip again and mark it anew",
				},
			},
			ticket.Step{Do: "Mark the equal parts on the edge", At: ticket.Long(p.EdgePart), From: "its start, for the first mark"})
	}
	note := "stop short of the finished ends, and leave the threads long"
	if sp.Spec.Ring {
		note = "begin and end at the closing join, and leave the threads long"
	}
	if r.Rows < 2 {
		note += "; a second row as far beyond the seam line holds the folds flat, where the cloth closes over needle marks once it is unpicked"
	}
	steps = append(steps, ticket.Step{Do: "Run the gathering row with a long stitch", At: ticket.Long(p.Row), From: "the raw edge", Note: note})
	if !p.SecondRow.IsZero() {
		steps = append(steps, ticket.Step{Do: "Run the second row", At: ticket.Long(p.SecondRow), From: "the raw edge"})
	}
	if !p.ThirdRow.IsZero() {
		steps = append(steps, ticket.Step{Do: "Run the third row", At: ticket.Long(p.ThirdRow), From: "the raw edge"})
	}
	last := ticket.Step{
		Do: "Stitch the ruffle to the edge", At: ticket.Long(r.Allowance), From: "the raw edge", Press: "the allowances only, never the gathers",
		Check: ticket.Check{
			What: "from the seam line to the free edge", Want: ticket.Long(r.Depth),
			Mend: "unpick where the seam strays and stitch it again along the line",
		},
	}
	if !p.SecondRow.IsZero() {
		last.Note = "then take out the row that shows"
	}
	steps = append(steps,
		ticket.Step{
			Do: "Pin mark to mark, draw up the threads and spread the gathers evenly", Together: ticket.RightTogether,
			Check: ticket.Check{
				What: "the ruffle between two marks", Want: ticket.Long(p.EdgePart),
				Mend: "move the gathers along the thread until it is",
			},
		}, last)
	sheet.Steps = steps
	sheet.Cautions = p.cautions()
	sheet.Sources = []source.Cite{
		citeGathers(), citeQuarters(),
		{For: "row inside the seam", ID: "gathering-stitch-glossary", Known: source.Read},
		source.Practise("a line beside a curve is longer or shorter by distance times turning"),
	}
	return sheet
}

// ends are the steps that finish the short ends and the free edge.
func (p RufflePlan) ends() []ticket.Step {
	r, sp := p.Spec, p.Strip.Strip.Spec
	var steps []ticket.Step
	check := ticket.Check{
		What: "the whole strip, end to end", Want: ticket.Long(p.Strip.Strip.Sewn),
		Mend: "look for a join that is out before an end is moved",
	}
	if sp.Ring {
		check.What, check.Mend = "the whole ring, round its edge", "look for a join that is out"
	}
	switch {
	case r.Folded && !sp.Ends.IsZero():
		return []ticket.Step{
			{Do: "Fold the strip along its length and stitch across each end", Together: ticket.RightTogether, At: ticket.Long(sp.Ends), From: "the raw end"},
			{Do: "Turn it right side out and press the fold", At: ticket.Long(p.CutDepth.DivInt(2)), From: "the raw edges", Press: "the fold sharp", Check: check},
		}
	case r.Folded:
		return []ticket.Step{{Do: "Fold the strip along its length", Together: ticket.WrongTogether, At: ticket.Long(p.CutDepth.DivInt(2)), From: "the raw edges", Press: "the fold sharp", Check: check}}
	}
	if !r.Hem.IsZero() {
		steps = append(steps, ticket.Step{Do: "Hem the free edge", At: ticket.Long(r.Hem), From: "the raw edge"})
	}
	if !sp.Ends.IsZero() {
		steps = append(steps, ticket.Step{Do: "Turn and hem the two ends", At: ticket.Long(sp.Ends), From: "the raw end", Check: check})
	}
	return steps
}

// working is the sum written out line by line.
func (p RufflePlan) working() []ticket.Line {
	r, e := p.Spec, p.Strip.Edge
	lines := make([]ticket.Line, 0, 20)
	depth := ticket.Line{Label: "depth as cut", Result: ticket.Long(p.CutDepth), Terms: []ticket.Term{
		{Amount: ticket.Long(r.Depth), Name: "depth"},
		{Amount: ticket.Long(r.Allowance), Name: "allowance"},
		{Amount: ticket.Long(r.Hem), Name: "hem"},
	}}
	if r.Folded {
		depth.Terms[2] = ticket.Term{Op: ticket.By, Amount: ticket.Of(2), Name: "because it is folded"}
	} else if r.Hem.IsZero() {
		depth.Terms = depth.Terms[:2]
	}
	outer := make([]ticket.Term, 1, 3)
	outer[0] = ticket.Term{Amount: ticket.Long(e), Name: "edge"}
	if !r.Turn.IsZero() {
		outer = append(outer, ticket.Term{Op: sign(r.Turn.Sign()), Amount: ticket.Long(r.Depth.Scale(r.Turn).Abs()), Name: "for the turn of the edge"})
	}
	if r.Corners != 0 {
		arc := units.Pi().Of(r.Depth.MulInt(int64(max(r.Corners, -r.Corners))).DivInt(2))
		outer = append(outer, ticket.Term{Op: sign(r.Corners), Amount: ticket.About(arc), Name: "for its corners"})
	}
	lines = p.Strip.working(lines)
	lines = append(lines, depth,
		ticket.Line{Label: "free edge", Result: ticket.About(p.Outer), Terms: outer}, p.outerFullness(),
		ticket.Line{Label: "gathering row from the raw edge", Result: ticket.Long(p.Row), Terms: []ticket.Term{
			{Amount: ticket.Long(r.Allowance), Name: "allowance"},
			{Op: ticket.Minus, Amount: ticket.Long(r.Inside), Name: "inside the seam"},
		}})
	lines = markLines(lines, p.Quarters(), r.Parts, [2]ticket.Term{
		{Amount: ticket.Long(p.StripPart), Name: "one part"},
		{Amount: ticket.Long(p.EdgePart), Name: "one part"},
	}, [2]string{" on the strip", " on the edge"})
	if !p.Clear.IsZero() || p.Crowded {
		lines = append(lines, ticket.Line{Label: "nearest that a join comes to a mark", Result: ticket.Long(p.Clear)})
	}
	return lines
}

// sign is the operation by which an amount of that sign is written positive.
func sign(n int) ticket.Op {
	if n < 0 {
		return ticket.Minus
	}
	return ticket.Plus
}

// outerFullness is worked where it is exact, else stated as the least it can be
// to three decimals.
func (p RufflePlan) outerFullness() ticket.Line {
	sewn := p.Strip.Strip.Sewn
	if exact, ok := p.OuterFullness.Exact(); ok {
		return ticket.Line{Label: "fullness at the free edge", Result: ticket.Times(exact), Terms: []ticket.Term{
			{Amount: ticket.Long(sewn), Name: "strip"},
			{Op: ticket.Over, Amount: ticket.About(p.Outer), Name: "free edge"},
		}}
	}
	least, _ := p.OuterFullness.Bounds()
	least, _ = least.Round(units.RatioOf(1, 1000), units.Down)
	return ticket.Line{Label: "fullness at the free edge, rounded down", Result: ticket.Times(least)}
}

func (p RufflePlan) cautions() []ticket.Caution {
	cautions := make([]ticket.Caution, 0, 5)
	cautions = append(cautions, ticket.CutCare(), ticket.IronCare())
	if !p.Spec.Folded && p.Spec.Hem.IsZero() {
		cautions = append(cautions, ticket.Caution{
			Text:  "No hem is allowed for: unless the free edge is a selvedge it frays. Overcast or bind it.",
			Refer: "common practice",
		})
	}
	if p.Crowded {
		cautions = append(cautions, ticket.Caution{
			Text:  "A join lies on a mark or so near it that the mark falls on the join's own allowance: the gathers will lie thick there. Shift the start of the strip, or mark another number of parts.",
			Refer: "common practice",
		})
	}
	if outer, _ := p.Outer.Bounds(); p.Strip.Strip.Sewn.Less(outer) {
		cautions = append(cautions, ticket.Caution{
			Text:  "The free edge is longer than the strip: the ruffle cannot lie flat there and will cup. It wants a longer strip or less depth.",
			Refer: "geometry of the edge given",
		})
	}
	return cautions
}
