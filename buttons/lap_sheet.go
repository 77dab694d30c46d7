package buttons

import (
	"slices"

	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is the working of the lap, where the hole lies, and what to do where the
// topstitching crosses it; the rules for the lap that disagree are among the
// sources.
func (p LapPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sheet := ticket.Sheet{
		Title:   "Lap of the front",
		Answer:  []ticket.Line{{Label: "from the centre line to the edge", Result: ticket.Long(s.Lap)}},
		Assumed: p.Assumed,
		Lines:   make([]ticket.Line, 0, 8),
		Steps:   make([]ticket.Step, 0, 4),
		Sources: make([]source.Cite, 0, len(lapRules)+2),
	}
	lap := ticket.Long(s.Lap)
	line := func(label string, result ticket.Amount, terms ...ticket.Term) {
		sheet.Lines = append(sheet.Lines, ticket.Line{Label: label, Result: result, Terms: terms})
	}
	if slices.Contains(p.Assumed, "lap") {
		r := defaultLap(s.Tape)
		terms := []ticket.Term{
			{Amount: ticket.Long(s.Diameter), Name: "diameter"},
			{Op: ticket.By, Amount: ticket.Times(r.Times)},
			{Op: ticket.Plus, Amount: ticket.Long(r.Add)},
		}
		if !s.Row.IsZero() {
			terms = append(terms, ticket.Add(s.Row, "row"))
		}
		line("lap, by the rule assumed", lap, terms...)
	}
	stand, standing := lap, "lap"
	if !s.Row.IsZero() {
		stand, standing = ticket.Long(s.line()), "line of the buttons"
		line("line of the buttons and holes, from the edge", stand,
			ticket.Term{Amount: lap, Name: "lap"}, ticket.Less(s.Row, "row"))
		line("from row to row", ticket.Long(p.Apart), ticket.Term{Amount: ticket.Long(s.Row), Name: "row"}, ticket.Multiply(2, ""))
	}
	if !s.Diameter.IsZero() {
		line("lap past the button", ticket.Long(p.Beyond),
			ticket.Term{Amount: stand, Name: standing},
			ticket.Term{Op: ticket.Minus, Amount: ticket.Long(s.Diameter.DivInt(2)), Name: "half the diameter"})
	}
	inner, outer := ticket.Long(p.InnerEnd), ticket.Long(p.OuterEnd)
	sheet.Steps = append(sheet.Steps, ticket.Step{Do: "Draw the centre line", At: lap, From: "the front edge"})
	if !s.Row.IsZero() {
		sheet.Steps = append(sheet.Steps,
			ticket.Step{Do: "Draw the line of the holes and of the outer buttons", At: ticket.Long(s.line()), From: "the front edge"},
			ticket.Step{Do: "Draw the line of the inner buttons beyond the centre line", At: ticket.Long(p.Apart), From: "the line of the holes",
				Note: "both rows lie as far from the centre line"})
	}
	if s.Setting == Horizontal {
		line("outer end of the hole", outer,
			ticket.Term{Amount: stand, Name: standing},
			ticket.Term{Op: ticket.Minus, Amount: ticket.Long(s.Reach), Name: "reach"})
		line("inner end of the hole", inner,
			ticket.Term{Amount: outer, Name: "outer end"},
			ticket.Term{Op: ticket.Plus, Amount: ticket.Long(s.Hole), Name: "hole"})
		sheet.Steps = append(sheet.Steps,
			ticket.Step{Do: "Mark the outer ends of the holes", At: outer, From: "the front edge"},
			ticket.Step{Do: "Mark the inner ends of the holes", At: inner, From: "the front edge"})
	} else {
		sheet.Steps = append(sheet.Steps, ticket.Step{Do: "Mark the holes along the line of the buttons", At: stand, From: "the front edge"})
	}
	if !s.Topstitch.IsZero() {
		row := ticket.Long(s.Topstitch)
		step := ticket.Step{Do: "Topstitch the front", At: row, From: "the front edge"}
		switch {
		case p.Crosses && s.Setting == Horizontal:
			line("the hole crosses the topstitching by", ticket.Long(p.Clash),
				ticket.Term{Amount: inner, Name: "inner end"},
				ticket.Term{Op: ticket.Minus, Amount: row, Name: "topstitching"})
			step.Do = "Do not topstitch here: the row would run through the holes"
			step.Note = "set the holes vertical on the centre line, or move the row"
			line("topstitching moved clear of the holes", ticket.Long(p.InnerEnd.Add(s.Reach)),
				ticket.Term{Amount: inner, Name: "inner end"},
				ticket.Term{Op: ticket.Plus, Amount: ticket.Long(s.Reach), Name: "reach"})
		case p.Crosses:
			line("the hole lies along the topstitching for", ticket.Long(p.Clash))
			step.Do = "Do not topstitch here: the row would run along the holes"
			step.Note = "move the row off the line of the buttons"
		case s.Topstitch.Less(p.OuterEnd) || s.Topstitch == p.OuterEnd:
			line("clear between the topstitching and the hole", ticket.Long(p.Clear),
				ticket.Term{Amount: outer, Name: "outer end"},
				ticket.Term{Op: ticket.Minus, Amount: row, Name: "topstitching"})
		default:
			line("clear between the hole and the topstitching", ticket.Long(p.Clear),
				ticket.Term{Amount: row, Name: "topstitching"},
				ticket.Term{Op: ticket.Minus, Amount: inner, Name: "inner end"})
		}
		if !p.Crosses && p.Clear.IsZero() {
			step.Note = "the row touches the end of the holes: leave a little between them"
		}
		sheet.Steps = append(sheet.Steps, step)
	}
	sheet.Cautions = []ticket.Caution{ticket.CutCare(), ticket.IronCare()}
	if !s.Diameter.IsZero() {
		for r := range LapRules() {
			sheet.Sources = append(sheet.Sources, source.Cite{For: "lap: " + r.Name, ID: r.Source, Place: r.Place, Known: r.Known})
		}
	}
	if s.Setting == Horizontal {
		sheet.Sources = append(sheet.Sources, source.Cite{For: "how far the hole passes the centre line", ID: "buttonhole-placing-page", Known: source.Read})
	} else {
		sheet.Sources = append(sheet.Sources, source.Cite{For: "vertical holes on the centre line", ID: "buttonhole-placing-page", Known: source.Read})
	}
	return sheet
}
