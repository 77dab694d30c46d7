package buttons

import (
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is the working of the hole and how to mark, work and test it; the rules
// for its length that disagree are among the sources.
func (p HolePlan) Sheet() ticket.Sheet {
	s := p.Spec
	sheet := ticket.Sheet{
		Title:   "Buttonhole",
		Answer:  []ticket.Line{{Label: "cut", Result: ticket.Long(p.Cut)}},
		Assumed: p.Assumed,
		Lines:   make([]ticket.Line, 0, 6),
		Steps:   make([]ticket.Step, 0, 6),
		Sources: make([]source.Cite, 0, len(holeRules)+4),
	}
	add := func(t []ticket.Term, a ticket.Amount, name string) []ticket.Term {
		return append(t, ticket.Term{Amount: a, Name: name})
	}
	needs := add(make([]ticket.Term, 0, 3), ticket.Long(s.Diameter), "diameter")
	switch s.Outline {
	case Ball:
		girth := ticket.About(halfGirth(s.Diameter))
		sheet.Lines = append(sheet.Lines, ticket.Line{Label: "half the girth of the ball, pi times half its diameter", Result: girth})
		needs = add(needs[:0], girth, "half the girth")
	case Shaped:
		needs = []ticket.Term{{Amount: ticket.Long(s.Wrap), Name: "wrap"}, {Op: ticket.Over, Amount: ticket.Of(2)}}
	default:
		needs = add(needs, ticket.Long(s.Thickness), "thickness")
	}
	if !s.Ease.IsZero() {
		needs = add(needs, ticket.Long(s.Ease), "ease")
	}
	sheet.Lines = append(sheet.Lines,
		ticket.Line{Label: "the button needs", Result: ticket.About(p.Exact), Terms: needs},
		ticket.Line{Label: "cut, rounded up to a mark", Result: ticket.Long(p.Cut),
			Terms: add(add(nil, ticket.About(p.Exact), "needed"), ticket.About(p.Spare), "spare")})

	test := ticket.Step{
		Do: "Work a test hole on a scrap of the same layers",
		Check: ticket.Check{What: "the hole, cut open", Want: ticket.Long(p.Cut), Give: ticket.Long(s.Step),
			Mend: "if the button passes hard, add a mark to every hole; if it slips out, take one off"},
	}
	sheet.Steps = append(sheet.Steps, test)
	switch s.Setting {
	case Vertical:
		from := "the end that the button is measured from"
		if s.Place.IsZero() {
			from = "the button, a minus being above it"
		}
		sheet.Lines = append(sheet.Lines,
			ticket.Line{Label: "upper end of the hole", Result: ticket.Long(p.Start), Terms: []ticket.Term{
				{Amount: ticket.Long(s.Place), Name: "button"}, {Op: ticket.Minus, Amount: ticket.Long(s.Reach), Name: "reach"}}},
			ticket.Line{Label: "lower end of the hole", Result: ticket.Long(p.End), Terms: []ticket.Term{
				{Amount: ticket.Long(p.Start), Name: "upper end"}, {Op: ticket.Plus, Amount: ticket.Long(p.Cut), Name: "hole"}}})
		sheet.Steps = append(sheet.Steps,
			ticket.Step{Do: "Mark the upper end of the hole on the centre line", At: ticket.Long(p.Start), From: from},
			ticket.Step{Do: "Mark the lower end of the hole on the centre line", At: ticket.Long(p.End), From: from})
	case Horizontal:
		sheet.Lines = append(sheet.Lines,
			ticket.Line{Label: "inner end of the hole, from the centre line", Result: ticket.Long(p.End), Terms: []ticket.Term{
				{Amount: ticket.Long(p.Cut), Name: "hole"}, {Op: ticket.Minus, Amount: ticket.Long(s.Reach), Name: "reach"}}})
		if !s.Place.IsZero() {
			sheet.Steps = append(sheet.Steps, ticket.Step{Do: "Draw the line of the hole square to the centre line",
				At: ticket.Long(s.Place), From: "the end that the button is measured from"})
		}
		sheet.Steps = append(sheet.Steps,
			ticket.Step{Do: "Mark the outer end of the hole, towards the front edge", At: ticket.Long(s.Reach), From: "the centre line"},
			ticket.Step{Do: "Mark the inner end of the hole, away from the front edge", At: ticket.Long(p.End), From: "the centre line"})
	}
	if !s.Eye.IsZero() {
		sheet.Steps = append(sheet.Steps, ticket.Step{Do: "Punch the eye, its middle where the button lies", At: ticket.Long(s.Eye), From: "side to side",
			Note: "the shank stands in the eye"})
	}
	sheet.Steps = append(sheet.Steps, ticket.Step{Do: "Stitch the hole and cut it from both ends to the middle", Note: "put a pin across each end before cutting"})
	if s.Outline == Shaped {
		sheet.Steps = append([]ticket.Step{{Do: "Wrap a strip of paper once round the button, crosswise over its highest part", At: ticket.Long(s.Wrap), From: "end to end",
			Note: "half of it must pass the hole"}}, sheet.Steps...)
	}
	sheet.Cautions = []ticket.Caution{ticket.CutCare()}
	for r := range HoleRules() {
		if r.Outline == s.Outline {
			sheet.Sources = append(sheet.Sources, source.Cite{For: r.Name, ID: r.Source, Place: r.Place, Known: r.Known})
		}
	}
	if s.Outline == Ball {
		sheet.Sources = append(sheet.Sources, source.Cite{For: "half the girth of a ball", Known: source.Computed})
	}
	switch {
	case !s.Eye.IsZero():
		sheet.Sources = append(sheet.Sources, source.Practise("the shank stands in the middle of the eye"))
	case s.Setting != NoSetting:
		sheet.Sources = append(sheet.Sources, source.Cite{For: "how far the hole passes the button", ID: "buttonhole-placing-page", Known: source.Read})
	}
	sheet.Sources = append(sheet.Sources, source.Practise("rounding the cut up to a mark of the tape"))
	return sheet
}
