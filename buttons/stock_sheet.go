package buttons

import (
	"strings"

	"example.com/clothyard/units/safety"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is the count, and the first of the ways to make do, if any is needed:
// the others are in Gives.
func (p StockPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sheet := ticket.Sheet{Title: "Buttons in stock", Assumed: p.Assumed}
	line := func(label string, result int, terms ...ticket.Term) {
		sheet.Lines = append(sheet.Lines, ticket.Line{Label: label, Result: ticket.Of(result), Terms: terms})
	}
	some := func(op ticket.Op, n int, name string) ticket.Term {
		return ticket.Term{Op: op, Amount: ticket.Of(n), Name: name}
	}
	var drafted []ticket.Term
	for _, q := range s.Places {
		line(q.label(), q.Count*q.Times, some(ticket.Plus, q.Count, "on each"), some(ticket.By, q.Times, ""))
		drafted = append(drafted, some(ticket.Plus, q.Count*q.Times, q.label()))
	}
	line("drafted in all", p.Need, drafted...)
	if p.Short > 0 {
		sheet.Answer = []ticket.Line{{Label: "short by", Result: ticket.Of(p.Short)}}
		line("short", p.Short, some(ticket.Plus, p.Need, "drafted"), some(ticket.Minus, s.Have, "in the tin"))
	} else {
		sheet.Answer = []ticket.Line{{Label: "enough, and to spare", Result: ticket.Of(p.Spare)}}
		line("spare", p.Spare, some(ticket.Plus, s.Have, "in the tin"), some(ticket.Minus, p.Need, "drafted"))
	}
	spare := p.Spare
	if len(p.Gives) > 0 {
		g := p.Gives[0]
		spare = g.Spare
		line("given up, the way taken below", g.Up, some(ticket.Plus, p.Short, "short"), some(ticket.Plus, g.Spare, "left over"))
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
	sheet.Cautions = safety.Cautions(sheet.Cautions, s.Months)
	sheet.Sources = append(sheet.Sources, source.Practise("cuffs and other pairs are changed together"),
		source.Practise("the placements named first are spared first"))
	sheet.Sources = safety.Cites(sheet.Sources, s.Months)
	return sheet
}

// label is the name of the placement, or a word for one without.
func (p Placement) label() string {
	if name := strings.TrimSpace(p.Name); name != "" {
		return name
	}
	return "placement"
}
