package buttons

import (
	"fmt"
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/safety"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is the marking of the row: a step for each button, the working with the
// lesson of laying a rounded gap again and again, cautions and sources.
func (p RowPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sheet := ticket.Sheet{Title: "Row of " + s.each() + "s", Assumed: p.Assumed}
	if p.Count == 0 {
		return sheet // the plan of no row has nothing to say
	}
	sheet.Answer = []ticket.Line{{Label: "set", Result: ticket.Of(p.Count)}}
	if p.Count > 1 {
		label := "a gap of"
		if len(p.Stretches) > 0 {
			label = "no gap above"
		}
		sheet.Answer = append(sheet.Answer, ticket.Line{Label: label, Result: ticket.Long(p.Gap)})
	}
	sheet.Lines = p.working()
	sheet.Steps = []ticket.Step{{
		Do:   "Draw the centre line, or the line that the " + s.each() + "s stand on, in chalk or thread",
		Note: "mark only; do not snip",
	}}
	for k, at := range p.Places {
		sheet.Steps = append(sheet.Steps, ticket.Step{Do: fmt.Sprintf("Mark %s %d", s.each(), k+1), At: ticket.Long(at.Mark), From: s.From})
	}
	if last := len(sheet.Steps) - 1; p.Count > 1 {
		sheet.Steps[last].Check = ticket.Check{
			What: "from the first mark to the last",
			Want: ticket.Long(p.Span),
			Give: ticket.Long(s.Step),
			Mend: "measure every mark again from the named end, none from its neighbour",
		}
	}
	sheet.Steps = append(sheet.Steps, p.sewing()...)
	sheet.Cautions = safety.Cautions([]ticket.Caution{ticket.CutCare()}, s.Months)
	if p.Short > 0 {
		sheet.Cautions = append(sheet.Cautions, ticket.Caution{Text: fmt.Sprintf("The pattern has %d buttons and there are %d: the marks of the pattern do not serve.", s.Count, p.Count)})
	}
	sheet.Sources = []source.Cite{
		{For: "equal division", ID: "new-dressmaker", Place: "chapter on buttonholes", Known: source.Read},
		{For: "length of the shank", ID: "garment-course-fasteners", Place: "page 27312", Known: source.Read},
		source.Practise("places read to the tape one by one from one end"),
	}
	for _, d := range [][2]string{{"first", neckRule}, {"last", hemRule}, {"maxGap", s.gapRule()}, {"setBack", "edge to " + s.Fastening.String()}} {
		if slices.Contains(p.Assumed, d[0]) {
			_, cite := spacingOf(d[1], s.Tape)
			sheet.Sources = append(sheet.Sources, cite)
		}
	}
	if len(p.Assumed) > 0 {
		sheet.Sources = append(sheet.Sources, source.Practise("what is assumed"))
	}
	sheet.Sources = safety.Cites(sheet.Sources, s.Months)
	return sheet
}

// each is one of the row in a word.
func (r Row) each() string {
	if r.sewn() {
		return r.Fastening.String()
	}
	return "button"
}

// sewing is what is done at the marks.
func (p RowPlan) sewing() []ticket.Step {
	s := p.Spec
	at, from := ticket.Long(s.SetBack), "the edge of the lap"
	match := ticket.Step{Do: "Close the opening, mark the other edge through the marks, and sew the other halves on"}
	switch s.Fastening {
	case Hook:
		match.Do = "Close the opening, mark the other edge opposite the hooks, and sew the eyes on"
		match.Note = "a round eye reaches past its edge as far as the hook is set back, so that the edges meet"
		return []ticket.Step{{Do: "Sew the hooks at the marks", At: at, From: from, Note: "sew the end of each down too"}, match}
	case Snap:
		return []ticket.Step{{Do: "Sew the halves with the ball at the marks, on the underside of the lap", At: at, From: from, Note: "only where there is no strain; else hooks"}, match}
	}
	on := ticket.Step{
		Do:   "Pin it shut, centre line on centre line, mark through the holes, and sew each button on",
		Note: "a thicker front needs a longer shank",
	}
	if !p.Shank.IsZero() {
		on.Check = ticket.Check{What: "length of the shank, as thick as the cloth under the button", Want: ticket.Long(p.Shank), Mend: "sew over a match or a pin, and wind the shank"}
	}
	return []ticket.Step{{Do: "Work a hole on a scrap of the same layers, then all the holes", Note: "put a pin across each end before cutting"}, on}
}

// working is the sums behind the places.
func (p RowPlan) working() (lines []ticket.Line) {
	s := p.Spec
	if p.Count < 2 {
		return nil
	}
	lines = append(lines, ticket.Sum("from the first place to the last", p.Span, ticket.Add(s.Last, "last"), ticket.Less(s.First, "first")))
	gap := func(label string, from, to units.Length, gaps int, is units.Length) {
		lines = append(lines, ticket.Line{Label: label, Result: ticket.Long(is), Terms: []ticket.Term{
			{Amount: ticket.Long(to.Sub(from))}, {Op: ticket.Over, Amount: ticket.Of(gaps), Name: "gaps"},
		}})
	}
	if !s.Hole.IsZero() {
		lines = append(lines, ticket.Sum("clear between two holes, where they are nearest", p.Clear, ticket.Add(p.Clear.Add(s.Hole), "gap"), ticket.Less(s.Hole, "hole")))
	}
	if len(p.Stretches) > 0 {
		for i, part := range p.Stretches {
			gap(fmt.Sprintf("gap of stretch %d", i+1), part.From, part.To, part.Gaps, part.Gap)
		}
		return lines
	}
	lines = append(lines, ticket.Line{Label: "gaps", Result: ticket.Of(p.Count - 1), Terms: []ticket.Term{{Amount: ticket.Of(p.Count), Name: s.each() + "s"}, {Op: ticket.Minus, Amount: ticket.Of(1)}}})
	gap("gap", s.First, s.Last, p.Count-1, p.Gap)
	for k, at := range p.Places {
		lines = append(lines, ticket.Line{Label: fmt.Sprintf("%s %d", s.each(), k+1), Result: ticket.Long(at.Exact), Terms: []ticket.Term{
			{Amount: ticket.Of(k)}, {Op: ticket.By, Amount: ticket.Long(p.Gap), Name: "gap"}, ticket.Add(s.First, "first"),
		}})
	}
	if !p.CreepDown.IsZero() {
		lines = append(lines, p.lesson(units.Down), p.lesson(units.Up))
	}
	return lines
}

// lesson is what comes of laying the gap, read to a mark, again and again.
func (p RowPlan) lesson(m units.Mode) ticket.Line {
	laid, _ := p.Gap.Round(p.Spec.Step, m)
	label, result := "not so: the mark above, laid gap by gap, ends too far by", p.CreepUp
	if m == units.Down {
		label, result = "not so: the mark below, laid gap by gap, ends short by", p.CreepDown.Neg()
		return ticket.Line{Label: label, Result: ticket.Long(result), Terms: []ticket.Term{
			ticket.Add(p.Span, ""), ticket.Less(laid.MulInt(int64(p.Count-1)), fmt.Sprintf("(%d gaps of the mark)", p.Count-1)),
		}}
	}
	return ticket.Sum(label, result, ticket.Add(laid, ""), ticket.Multiply(p.Count-1, "gaps"), ticket.Less(p.Span, ""))
}
