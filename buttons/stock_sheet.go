package buttons

import (
	"strings"

	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is the count, and the first of the ways to make do, if any is needed:
// the others are in Gives.
func (p StockPlan) Sheet() ticket.Sheet {
	s := p.Spec
	n := len(s.Places)
	sheet := ticket.Sheet{
		Title:    "Buttons in stock",
		Assumed:  p.Assumed,
		Steps:    make([]ticket.Step, 0, n+2),
		Lines:    make([]ticket.Line, 0, n+2+len(p.Gives)),
		Cautions: make([]ticket.Caution, 0, 5),
		Sources:  make([]source.Cite, 0, 10),
	}
	terms := termsFor(6*n + 4 + 3*len(p.Gives))
	for _, q := range s.Places {
		each := ticket.Of(q.Count * q.Times)
		sheet.Lines = append(sheet.Lines, ticket.Line{Label: q.label(), Result: each, Terms: terms.take(
			ticket.Term{Amount: ticket.Of(q.Count), Name: "on each"},
			ticket.Term{Op: ticket.By, Amount: ticket.Of(q.Times)})})
	}
	from := len(terms.left)
	for _, q := range s.Places {
		terms.left = append(terms.left, ticket.Term{Amount: ticket.Of(q.Count * q.Times), Name: q.label()})
	}
	drafted := terms.left[from:len(terms.left):len(terms.left)]
	sheet.Lines = append(sheet.Lines, ticket.Line{Label: "drafted in all", Result: ticket.Of(p.Need), Terms: drafted})
	have, need := ticket.Of(s.Have), ticket.Of(p.Need)
	if p.Short > 0 {
		sheet.Lines = append(sheet.Lines, ticket.Line{Label: "short", Result: ticket.Of(p.Short), Terms: terms.take(
			ticket.Term{Amount: need, Name: "drafted"}, ticket.Term{Op: ticket.Minus, Amount: have, Name: "in the tin"})})
	} else {
		sheet.Lines = append(sheet.Lines, ticket.Line{Label: "spare", Result: ticket.Of(p.Spare), Terms: terms.take(
			ticket.Term{Amount: have, Name: "in the tin"}, ticket.Term{Op: ticket.Minus, Amount: need, Name: "drafted"})})
	}
	spare := p.Spare
	if len(p.Gives) > 0 {
		g := p.Gives[0]
		spare = g.Spare
		sheet.Lines = append(sheet.Lines, ticket.Line{Label: "given up, the way taken below", Result: ticket.Of(g.Up), Terms: terms.take(
			ticket.Term{Amount: ticket.Of(p.Short), Name: "short"}, ticket.Term{Op: ticket.Plus, Amount: ticket.Of(g.Spare), Name: "left over"})})
	}
	sheet.Steps = append(sheet.Steps, ticket.Step{Do: "Count the buttons and lay them out alike, best at the neck"})
	for i, q := range s.Places {
		step := ticket.Step{Do: "Set aside the buttons of each " + q.label(), Check: ticket.Check{What: "buttons on each", Want: ticket.Of(q.Count)}}
		if len(p.Gives) > 0 {
			if c := p.Gives[0].Counts[i]; c != q.Count {
				step.Check.Want = ticket.Of(c)
				step.Note = "fewer than drafted: space the row again from its ends, the same on both sides"
			}
		}
		sheet.Steps = append(sheet.Steps, step)
	}
	switch {
	case p.Short > 0 && len(p.Gives) == 0:
		sheet.Cautions = append(sheet.Cautions, ticket.Caution{Text: "There are not enough buttons even with the fewest that serve: find more, or another kind for one placement."})
	case spare == 0:
		sheet.Cautions = append(sheet.Cautions, ticket.Caution{Text: "No button is left over: one lost cannot be replaced. Sew one of another kind inside, or keep to a way that spares one."})
	}
	sheet.Cautions = childCautions(sheet.Cautions, s.Months)
	sheet.Sources = append(sheet.Sources, source.Practise("cuffs and other pairs are changed together"),
		source.Practise("the placements named first are spared first"))
	sheet.Sources = childCites(sheet.Sources, s.Months)
	return sheet
}

// label is the name of the placement, or a word for one without.
func (p Placement) label() string {
	if name := strings.TrimSpace(p.Name); name != "" {
		return name
	}
	return "placement"
}
