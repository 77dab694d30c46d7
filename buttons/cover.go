package buttons

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Cover is the cloth that covers buttons, rings or snaps: a circle for each, gathered
// at the back. Zero means not given.
type Cover struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Diameter is across the mould, as 30 L or 3/4 in.
	Diameter units.Length `json:"diameter,omitzero"`
	// Of is what is covered: a button, a ring or a snap. May be omitted; the default is
	// button.
	Of Mould `json:"of,omitzero"`
	// Count is how many there are. May be omitted; the default is 1.
	Count int `json:"count,omitzero"`
	// Cut is across the circle of cloth. May be omitted; the default is twice the diameter,
	// three times for a snap, rounded up to 1/16 in, or 1 mm on a metric tape.
	Cut units.Length `json:"cut,omitzero"`
	// Gather is from the edge of the circle to the running stitches. May be omitted; the
	// default is 1/8 in or 3 mm, for a ring 1/4 in or 6 mm.
	Gather units.Length `json:"gather,omitzero"`
	// Width is that of the cloth or the scrap. May be omitted; how much cloth all of them
	// take is then not told.
	Width units.Length `json:"width,omitzero"`
}

// A CoverPlan is the cloth of covered buttons worked out.
type CoverPlan struct {
	Spec    Cover        `json:"spec,omitzero"`    // as solved
	Assumed []string     `json:"assumed,omitzero"` // the fields filled with a default
	Back    units.Length `json:"back,omitzero"`    // how much cloth goes to the back, all round
	Across  int          `json:"across,omitzero"`  // how many circles lie side by side in the width
	Rows    int          `json:"rows,omitzero"`    // how many such rows there are
	Cloth   units.Length `json:"cloth,omitzero"`   // length of cloth that they take
}

// rule is the first row of the mould for which ok holds, and its tape.
func (c Cover) rule(ok func(CoverRow) bool) CoverRow {
	r, _ := coverRows.First(func(r CoverRow) bool { return r.Of == c.Of && (r.Tape == 0 || r.Tape == c.Tape) && ok(r) })
	return r
}

// cutRule and gatherRule are the rows that defaults follow. How many times the mould is
// the same on either tape.
func (c Cover) cutRule() CoverRow {
	r, _ := coverRows.First(func(r CoverRow) bool { return r.Of == c.Of && !r.Least.IsZero() })
	return r
}

func (c Cover) gatherRule() CoverRow {
	return c.rule(func(r CoverRow) bool { return !r.Gather.IsZero() })
}

// Plan works out the cloth. The faults are [fault.Faults].
func (c Cover) Plan() (CoverPlan, error) {
	var a fault.Audit
	given := c
	fillTape(&a, &c.Tape, c)
	a.Need("diameter", c.Diameter)
	if c.Of == NoMould {
		c.Of = ButtonMould
	}
	moulds.Check(&a, "of", c.Of)
	whole(&a, "count", c.Count, MaxCount)
	if c.Count == 0 {
		c.Count = 1
	}
	a.NotNegative("cut", c.Cut)
	a.NotNegative("gather", c.Gather)
	a.NotNegative("width", c.Width)
	if a.Failed() {
		return CoverPlan{}, a.Err()
	}
	if c.Cut.IsZero() {
		c.Cut, _ = c.Diameter.Scale(c.cutRule().Least).Round(sixteenth(c.Tape), units.Up)
	}
	if c.Gather.IsZero() {
		c.Gather = c.gatherRule().Gather
	}
	p := CoverPlan{Spec: c, Assumed: noun.Assumed(given, c), Back: c.Cut.Sub(c.Diameter).DivInt(2)}
	if !c.Diameter.Less(c.Cut) {
		a.Fault("cut", c.Cut.String(), "more than {0} (diameter)", fault.Range, c.Diameter)
	} else if !c.Gather.Less(p.Back) {
		a.Fault("gather", c.Gather.String(), "less than {0}, what goes to the back", fault.Range, p.Back)
	}
	if !c.Width.IsZero() {
		fault.AtLeast(&a, "width", c.Width, c.Cut, "cut", fault.Range)
		across, fits := c.Width.Div(c.Cut).Int(units.Down)
		if p.Across = c.Count; fits && across < int64(c.Count) {
			p.Across = int(across)
		}
		if p.Across > 0 {
			p.Rows = (c.Count + p.Across - 1) / p.Across
			p.Cloth = c.Cut.MulInt(int64(p.Rows))
		}
	}
	if a.Failed() {
		return CoverPlan{}, a.Err(p.Assumed...)
	}
	return p, nil
}

// Sheet is the circle to cut, how it is gathered over the mould, and the printed rules.
func (p CoverPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sheet := ticket.Sheet{Title: "Covered " + s.Of.String(), Assumed: p.Assumed}
	if s.Count == 0 {
		return sheet // the plan of nothing has nothing to say
	}
	sheet.Answer = []ticket.Line{{Label: "cut circles", Result: ticket.Of(s.Count)}, {Label: "across each", Result: ticket.Long(s.Cut)}}
	if slices.Contains(p.Assumed, "cut") {
		sheet.Lines = append(sheet.Lines, ticket.Sum("across the circle, by the rule assumed", s.Cut,
			ticket.Add(s.Diameter, "diameter"), ticket.Term{Op: ticket.By, Amount: ticket.Times(s.cutRule().Least)},
			ticket.Add(s.Cut.Sub(s.Diameter.Scale(s.cutRule().Least)), "to the mark")))
	}
	sheet.Lines = append(sheet.Lines, ticket.Sum("goes to the back, all round", p.Back,
		ticket.Add(s.Cut, "circle"), ticket.Less(s.Diameter, "diameter"), ticket.Term{Op: ticket.Over, Amount: ticket.Of(2)}))
	if p.Rows > 0 {
		sheet.Answer = append(sheet.Answer, ticket.Line{Label: "from cloth of the length", Result: ticket.Long(p.Cloth)})
		sheet.Lines = append(sheet.Lines, ticket.Sum("length of cloth", p.Cloth, ticket.Add(s.Cut, "circle"), ticket.Multiply(p.Rows, "rows")))
	}
	sheet.Steps = []ticket.Step{
		{Do: "Cut the circles", At: ticket.Long(s.Cut), From: "edge to edge", Note: "cover one as a test before all are cut; thin cloth is lined with a second circle"},
		{Do: "Run round each circle with strong thread", At: ticket.Long(s.Gather), From: "the edge", Note: "leave the needle on the thread"},
		{Do: "Draw the circle up over the mould and fasten off", Check: ticket.Check{What: "cloth at the back, all round", Want: ticket.Long(p.Back),
			Mend: "trim what lies double in the middle; where the edges gape too far, cut larger"}},
	}
	sheet.Cautions = []ticket.Caution{ticket.CutCare()}
	for r := range coverRows.Where(func(r CoverRow) bool { return r.Of == s.Of && (r.Tape == 0 || r.Tape == s.Tape || !r.Least.IsZero()) }) {
		sheet.Sources = append(sheet.Sources, source.Cite{For: r.Name, ID: r.Source, Place: r.Place, Known: r.Known})
	}
	return sheet
}
