package buttons

import (
	"fmt"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is the marking of the row: a step for each button, the working with the
// lesson of laying a rounded gap again and again, cautions and sources.
func (p RowPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sheet := ticket.Sheet{Title: "Row of buttons", Assumed: p.Assumed}
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
		Do:   "Draw the centre line, or the line that the buttons stand on, in chalk or thread",
		Note: "mark only; do not snip",
	}}
	for k, at := range p.Places {
		sheet.Steps = append(sheet.Steps, ticket.Step{Do: fmt.Sprintf("Mark button %d", k+1), At: ticket.Long(at.Mark), From: s.From})
	}
	if last := len(sheet.Steps) - 1; p.Count > 1 {
		sheet.Steps[last].Check = ticket.Check{
			What: "from the first mark to the last",
			Want: ticket.Long(p.Span),
			Give: ticket.Long(s.Step),
			Mend: "measure every mark again from the named end, none from its neighbour",
		}
	}
	sheet.Steps = append(sheet.Steps, ticket.Step{
		Do:   "Work a hole on a scrap of the same layers, then all the holes",
		Note: "put a pin across each end before cutting",
	}, ticket.Step{
		Do:   "Pin it shut, centre line on centre line, mark through the holes, and sew each button on",
		Note: "a thicker front needs a longer shank",
	})
	sheet.Cautions = childCautions([]ticket.Caution{ticket.CutCare()}, s.Months)
	if p.Short > 0 {
		sheet.Cautions = append(sheet.Cautions, ticket.Caution{Text: fmt.Sprintf("The pattern has %d buttons and there are %d: the marks of the pattern do not serve.", s.Count, p.Count)})
	}
	sheet.Sources = []source.Cite{
		{For: "equal division", ID: "new-dressmaker", Place: "chapter on buttonholes", Known: source.Read},
		{For: "length of the shank", ID: "garment-course-fasteners", Place: "page 27312", Known: source.Read},
		source.Practise("places read to the tape one by one from one end"),
	}
	if len(p.Assumed) > 0 {
		sheet.Sources = append(sheet.Sources, source.Practise("what is assumed"))
	}
	sheet.Sources = childCites(sheet.Sources, s.Months)
	return sheet
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
	if len(p.Stretches) > 0 {
		for i, part := range p.Stretches {
			gap(fmt.Sprintf("gap of stretch %d", i+1), part.From, part.To, part.Gaps, part.Gap)
		}
		return lines
	}
	lines = append(lines, ticket.Line{Label: "gaps", Result: ticket.Of(p.Count - 1), Terms: []ticket.Term{{Amount: ticket.Of(p.Count), Name: "buttons"}, {Op: ticket.Minus, Amount: ticket.Of(1)}}})
	gap("gap", s.First, s.Last, p.Count-1, p.Gap)
	for k, at := range p.Places {
		lines = append(lines, ticket.Line{Label: fmt.Sprintf("button %d", k+1), Result: ticket.Long(at.Exact), Terms: []ticket.Term{
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
