package gather

import (
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// working appends the lines that strip and ruffle share.
func (p StripPlan) working(lines []ticket.Line) []ticket.Line {
	lines = append(lines, p.Strip.Working(),
		ticket.Line{Label: "fullness at the seam", Result: ticket.Times(p.Fullness), Terms: []ticket.Term{
			{Amount: ticket.Long(p.Strip.Sewn), Name: "strip"},
			{Op: ticket.Over, Amount: ticket.Long(p.Edge), Name: "edge"},
		}})
	if !p.Surplus.IsZero() {
		lines = append(lines, ticket.Line{Label: "more than the fullness asked for", Result: ticket.Long(p.Surplus), Terms: []ticket.Term{
			{Amount: ticket.Long(p.Strip.Sewn), Name: "strip"},
			{Op: ticket.Minus, Amount: ticket.Long(p.Edge.Scale(p.Spec.Fullness)), Name: "asked for"},
		}})
	}
	return lines
}

// Sheet is how the strip is made and drawn up, with the working behind it.
func (p StripPlan) Sheet() ticket.Sheet {
	sheet := p.Strip.Sheet()
	sheet.Title = "A strip gathered onto an edge"
	sheet.Assumed = p.Assumed
	sheet.Lines = p.working(make([]ticket.Line, 0, 3))
	sheet.Steps = append(sheet.Steps, ticket.Step{
		Do:   "Run the gathering thread along the strip and draw it up to the edge",
		Note: "divide strip and edge into the same number of equal parts, pin them mark to mark, and spread the gathers evenly between",
		Check: ticket.Check{
			What: "the strip as drawn up, end to end", Want: ticket.Long(p.Edge),
			Mend: "let the thread out or draw it closer, then fasten it",
		},
	})
	sheet.Sources = append(sheet.Sources, citeGathers(), citeQuarters())
	return sheet
}

func citeGathers() source.Cite {
	return source.Cite{For: "gathers begin at half as much again", ID: "costume-construction-text", Place: "chapter 11", Known: source.Read}
}

func citeQuarters() source.Cite {
	return source.Cite{For: "equal parts, pinned mark to mark", ID: "needlework-encyclopedia", Place: "figure 21", Known: source.Read}
}
