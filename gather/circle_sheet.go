package gather

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is how the skirt is drawn, cut and hung, with the working behind it.
func (p CircleSkirtPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sheet := ticket.Sheet{Title: "A circle skirt", Assumed: p.Assumed}
	if s.Pieces == 0 {
		return sheet
	}
	sheet.Answer = []ticket.Line{ticket.Sum("draw the waist with a radius of", p.Chalk), ticket.Sum("and the lower edge, from the same centre, with", p.ChalkOuter)}
	for _, l := range p.Lays {
		if l.Pieces == s.Pieces {
			sheet.Answer = append(sheet.Answer, ticket.Sum("cloth", l.Cloth))
		}
	}
	sheet.Lines, sheet.Steps = p.working(), p.steps()
	sheet.Cautions = []ticket.Caution{
		{Text: "The waist is cut on the bias for the most part and stretches: stay it before anything else, and never let the skirt hang from it unsewn.", Refer: "common practice"},
		ticket.CutCare(),
	}
	sheet.Sources = []source.Cite{
		{For: "radius of a circle skirt", ID: "circle-skirt-formulas", Known: source.Read},
		{For: "two or three days of hanging before the hem", ID: "new-dressmaker", Place: "hanging a circular skirt", Known: source.Read},
		source.Practise("the allowance of the waist lies towards the centre, and is taken off the radius"),
	}
	return sheet
}

func (p CircleSkirtPlan) working() []ticket.Line {
	s := p.Spec
	near := func(label string, n units.Near, terms ...ticket.Term) ticket.Line {
		return ticket.Line{Label: label, Result: ticket.About(n), Terms: terms}
	}
	seam := ticket.Sum("waist seam, once round", p.Seam)
	if !s.Ease.IsZero() {
		seam.Terms = []ticket.Term{ticket.Add(s.Waist, "waist"), ticket.Add(s.Ease, "ease")}
	}
	lines := []ticket.Line{seam}
	if within := s.within(s.Pieces); !within.IsZero() {
		lines = append(lines, ticket.Sum("arc of the waist", p.Seam.Add(within), ticket.Add(p.Seam, "seam"), ticket.Add(within, "side allowances")))
	}
	lines = append(lines,
		near("radius of the seam line", p.Radius),
		near("radius as cut", p.Cut),
		ticket.Sum("radius to draw, rounded down to a mark", p.Chalk),
		ticket.Sum("radius of the lower edge", p.ChalkOuter, hemmed(s.Hem, ticket.Add(p.Chalk, "waist"), ticket.Add(s.Allowance, "waist allowance"), ticket.Add(s.Length, "length"))...),
		near("the waist seam comes to", p.Made),
		near("and is eased out by", p.Off),
		near("the waist as cut is only", p.CutEdge),
		near("finished hem, once round", p.HemLine))
	for _, l := range p.Lays {
		pieces := strconv.Itoa(l.Pieces) + " pieces"
		if l.Pieces == 1 {
			pieces = "one piece"
		}
		cloth := ticket.Sum("cloth, cut in "+pieces, l.Cloth)
		if l.Rows > 1 {
			cloth.Terms = []ticket.Term{ticket.Add(l.Cloth.DivInt(int64(l.Rows)), "one row"), ticket.Multiply(l.Rows, "rows")}
		}
		lines = append(lines, cloth, ticket.Sum("longest skirt so", l.Longest))
	}
	return lines
}

// hemmed is the terms and that of a hem, if there is one.
func hemmed(hem units.Length, terms ...ticket.Term) []ticket.Term {
	if hem.IsZero() {
		return terms
	}
	return append(terms, ticket.Add(hem, "hem"))
}

func (p CircleSkirtPlan) steps() []ticket.Step {
	s := p.Spec
	draw := "Draw the waist from the centre with chalk and string"
	if s.Pieces > 1 {
		draw = "Draw the waist of each piece from its centre with chalk and string"
	}
	steps := []ticket.Step{
		{
			Do: draw, At: ticket.Long(p.Chalk), From: "the centre", Note: "the string does not stretch; hold the chalk upright",
			Check: ticket.Check{What: "the waist seam line, an allowance outside the mark, once round", Want: ticket.About(p.Made), Mend: "draw it again: a radius that is out is out six times over round the waist"},
		},
		{Do: "Draw the lower edge from the same centre", At: ticket.Long(p.ChalkOuter), From: "the centre"},
	}
	side := s.Side.Or(units.Length{})
	whole := s.Part == units.RatioOf(int64(s.Pieces), 1)
	switch {
	case whole:
		steps = append(steps, ticket.Step{Do: "Cut it out and slit it from the waist as far as the opening goes"})
	case s.Within:
		steps = append(steps, ticket.Step{Do: "Cut it out; the side seams lie inside the straight edges", At: ticket.Long(side), From: "the straight edge"})
	default:
		steps = append(steps, ticket.Step{Do: "Add a strip beside each straight edge for its seam and cut it out", At: ticket.Long(side), From: "the straight edge, as drawn"})
	}
	steps = append(steps, ticket.Step{Do: "Stay the waist with a row of stitches close to the seam line, within the allowance", Note: "clip the allowance to the row afterwards: as cut it is shorter than the seam"})
	if !whole {
		steps = append(steps, ticket.Step{Do: "Stitch the side seams", Together: ticket.RightTogether, At: ticket.Long(side), From: "the raw edge", Press: "open"})
	}
	hem := ticket.Step{
		Do: "Hang the skirt for two or three days, then level it and hem it", At: ticket.Long(s.Hem), From: "the raw edge", Note: "clip weights along the bias parts, which drop",
		Check: ticket.Check{What: "from the waist seam to the hem, all round", Want: ticket.Long(s.Length), Mend: "level it from the floor up on the wearer"},
	}
	if s.Hem.IsZero() {
		hem.At, hem.From = ticket.Amount{}, ""
	}
	return append(steps,
		ticket.Step{
			Do: "Set the skirt to its band or facing", At: ticket.Long(s.Allowance), From: "the raw edge",
			Check: ticket.Check{What: "the waist seam, once round", Want: ticket.Long(p.Seam), Mend: "ease the skirt out or in along the stay row, evenly"},
		}, hem)
}
