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
	switch {
	case r.Heading.IsZero():
	case r.Heading == r.Depth:
		title = "A ruffle with a double heading, gathered along its middle"
	default:
		title = "A ruffle with a heading"
	}
	steps := []ticket.Step{
		{Do: "Cut the pieces to their length", At: ticket.Long(sp.Spec.Each), From: "one cut end to the other"},
		{Do: "Cut the pieces to their depth", At: ticket.Long(p.CutDepth), From: "one long edge to the other"},
	}
	if sp.Joins > 0 {
		steps = append(steps, sp.Joining())
	}
	steps = append(steps, p.ends()...)
	steps = append(steps, p.gathering()...)
	return ticket.Sheet{
		Answer: p.Strip.answer(ticket.Sum("and deep", p.CutDepth)),
		Title:  title, Steps: steps, Lines: p.working(), Assumed: p.Assumed, Cautions: p.cautions(),
		Sources: []source.Cite{
			citeGathers(), citeQuarters(), usual(rowInside, r.Tape).Cite,
			source.Practise("a line beside a curve is longer or shorter by distance times turning"),
		},
	}
}

// ends are the steps that finish the short ends and the free edge.
func (p RufflePlan) ends() []ticket.Step {
	r, sp := p.Spec, p.Strip.Strip.Spec
	check := ticket.Check{
		What: "the whole strip, end to end", Want: ticket.Long(p.Strip.Strip.Sewn),
		Mend: "look for a join that is out before an end is moved",
	}
	if sp.Ring {
		check.What, check.Mend = "the whole ring, round its edge", "look for a join that is out"
	}
	half := ticket.Long(p.CutDepth.DivInt(2))
	switch {
	case r.Folded && !sp.Ends.IsZero():
		return []ticket.Step{
			{Do: "Fold the strip along its length and stitch across each end", Together: ticket.RightTogether, At: ticket.Long(sp.Ends), From: "the raw end"},
			{Do: "Turn it right side out and press the fold", At: half, From: "the raw edges", Press: "the fold sharp", Check: check},
		}
	case r.Folded:
		return []ticket.Step{{Do: "Fold the strip along its length", Together: ticket.WrongTogether, At: half, From: "the raw edges", Press: "the fold sharp", Check: check}}
	}
	var steps []ticket.Step
	if !r.Hem.IsZero() {
		steps = append(steps, ticket.Step{Do: "Hem the free edge", At: ticket.Long(r.Hem), From: "the raw edge"})
	}
	if !r.Top.IsZero() {
		steps = append(steps, ticket.Step{Do: "Hem the edge of the heading", At: ticket.Long(r.Top), From: "the raw edge"})
	}
	if !sp.Ends.IsZero() {
		steps = append(steps, ticket.Step{Do: "Turn and hem the two ends", At: ticket.Long(sp.Ends), From: "the raw end", Check: check})
	}
	return steps
}

// gathering are the steps from the marks to the seam.
func (p RufflePlan) gathering() []ticket.Step {
	r, ring := p.Spec, p.Strip.Strip.Spec.Ring
	var steps []ticket.Step
	if r.Parts > 1 {
		from, last := "the end, for the first mark", "from the last mark to the far end"
		if ring {
			from, last = "the closing join, for the first mark", "from the last mark on to the closing join"
		}
		steps = append(steps,
			ticket.Step{
				Do: "Mark the equal parts on the strip", At: ticket.Long(p.StripPart), From: from,
				Note:  "measure every mark from the same end, as the working gives it, not from the mark before",
				Check: ticket.Check{What: last, Want: ticket.Long(p.StripPart), Mend: "measure the whole strip and mark it again"},
			},
			ticket.Step{Do: "Mark the equal parts on the edge", At: ticket.Long(p.EdgePart), From: "its start, for the first mark"})
	}
	note := "stop short of the finished ends, and leave the threads long"
	if ring {
		note = "begin and end at the closing join, and leave the threads long"
	}
	if r.Rows < 2 && r.Heading.IsZero() {
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
	together := ticket.RightTogether
	if !r.Heading.IsZero() {
		together = ticket.WrongOnRight
		last.Do, last.At, last.From = "Stitch the ruffle down along the gathers, between the rows where there are several", ticket.Long(r.Heading), "the upper edge"
		last.Check.What, last.Press = "from the stitching to the free edge", ""
	}
	return append(steps,
		ticket.Step{
			Do: "Pin mark to mark, draw up the threads and spread the gathers evenly", Together: together,
			Check: ticket.Check{
				What: "the ruffle between two marks", Want: ticket.Long(p.EdgePart),
				Mend: "move the gathers along the thread until it is",
			},
		}, last)
}

// working is the sum written out line by line.
func (p RufflePlan) working() []ticket.Line {
	r := p.Spec
	depth := []ticket.Term{ticket.Add(r.Depth, "depth"), ticket.Add(r.Allowance, "allowance")}
	if !r.Heading.IsZero() {
		depth[1] = ticket.Add(r.Heading, "heading")
		if !r.Top.IsZero() {
			depth = append(depth, ticket.Add(r.Top, "its hem"))
		}
	}
	switch {
	case r.Folded:
		depth = append(depth, ticket.Multiply(2, "because it is folded"))
	case !r.Hem.IsZero():
		depth = append(depth, ticket.Add(r.Hem, "hem"))
	}
	outer := ticket.Line{Label: "free edge", Result: ticket.About(p.Outer), Terms: []ticket.Term{ticket.Add(p.Strip.Edge, "edge")}}
	turn, corners := r.arcs()
	for _, arc := range []struct {
		n    units.Near
		sign int
		name string
	}{{turn, r.Turn.Sign(), "for the turn of the edge"}, {corners, r.Corners, "for its corners"}} {
		switch {
		case arc.sign > 0:
			outer.Terms = append(outer.Terms, ticket.Term{Amount: ticket.About(arc.n), Name: arc.name})
		case arc.sign < 0:
			outer.Terms = append(outer.Terms, ticket.Term{Op: ticket.Minus, Amount: ticket.About(arc.n.Neg()), Name: arc.name})
		}
	}
	row := []ticket.Term{ticket.Add(r.upper(), "to the seam line"), ticket.Less(r.Inside, "inside it")}
	switch {
	case p.Row == r.upper():
		row = nil
	case r.Heading.IsZero():
		row = []ticket.Term{ticket.Add(r.Allowance, "allowance"), ticket.Less(r.Inside, "inside the seam")}
	}
	lines := append(p.Strip.working(), ticket.Sum("depth as cut", p.CutDepth, depth...), outer, p.outerFullness(),
		ticket.Sum("gathering row from the raw edge", p.Row, row...))
	lines = append(lines, markLines(p.Marks, Mark{p.StripPart, p.EdgePart}, " on the strip", " on the edge", Mark{}, "")...)
	if !p.Clear.IsZero() || p.Crowded {
		lines = append(lines, ticket.Sum("nearest that a join comes to a mark", p.Clear))
	}
	if p.Crowded && !p.Shift.IsZero() {
		lines = append(lines, ticket.Sum("first mark, clear of all joins, from the closing join", p.Shift))
	}
	if two := units.RatioOf(2, 1); p.Strip.Fullness != two {
		lines = append(lines, ticket.Sum("for a fullness of exactly 2 cut each piece", p.ForTwo))
	}
	if !p.Across.IsZero() {
		lines = append(lines, ticket.Sum("cloth, the pieces cut across it", p.Across))
	}
	if !p.Along.IsZero() {
		lines = append(lines, ticket.Sum("cloth, the pieces cut along it", p.Along))
	}
	return lines
}

// outerFullness is worked where it is exact, else stated as the least it can be to
// three decimals.
func (p RufflePlan) outerFullness() ticket.Line {
	if exact, ok := p.OuterFullness.Exact(); ok {
		edge, _ := p.Outer.Exact()
		return fullness("fullness at the free edge", exact, ticket.Add(p.Strip.Strip.Sewn, "strip"), edge, "free edge")
	}
	least, _ := p.OuterFullness.Bounds()
	least, _ = least.Round(units.RatioOf(1, 1000), units.Down)
	return ticket.Line{Label: "fullness at the free edge, rounded down", Result: ticket.Times(least)}
}

func (p RufflePlan) cautions() []ticket.Caution {
	cautions := []ticket.Caution{ticket.CutCare(), ticket.IronCare()}
	add := func(text, refer string) { cautions = append(cautions, ticket.Caution{Text: text, Refer: refer}) }
	if !p.Spec.Folded && (p.Spec.Hem.IsZero() || !p.Spec.Heading.IsZero() && p.Spec.Top.IsZero()) {
		add("No hem is allowed for: unless a free edge is a selvedge it frays. Overcast or bind it.", "common practice")
	}
	if p.Crowded {
		add("A join lies on a mark or so near it that the mark falls on the join's own allowance: the gathers will lie thick there. Shift the start of the strip, or mark another number of parts.", "common practice")
	}
	if outer, _ := p.Outer.Bounds(); p.Strip.Strip.Sewn.Less(outer) {
		add("The free edge is longer than the strip: the ruffle cannot lie flat there and will cup. It wants a longer strip or less depth.", "geometry of the edge given")
	}
	return cautions
}
