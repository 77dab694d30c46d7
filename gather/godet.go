package gather

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Godet is a piece like a slice of a pie that is set into a slit or the end of a seam
// to widen a hem. Zero means "not given".
type Godet struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the
	// tape on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Slit is the length of the slit, from its point to the finished hem.
	Slit units.Length `json:"slit,omitzero"`
	// Angle is the angle at the point, at most a whole turn. May be omitted where added
	// is given.
	Angle units.Angle `json:"angle,omitzero"`
	// Added is what one godet adds to the hem, along its arc. It follows from the angle
	// where that is an arc; else the plan has it with its bound.
	Added units.Length `json:"added,omitzero"`
	// Count is how many godets there are, 1 to 100. May be omitted; the default is 1.
	Count int `json:"count,omitzero"`
	// Hem is the hem allowance. May be omitted; the default is 0.
	Hem units.Length `json:"hem,omitzero" noun:"zero"`
	// Allowance is the seam allowance of the two sides. May be omitted; the default is
	// 5/8 in or 1.5 cm.
	Allowance units.Length `json:"allowance,omitzero"`
}

// A GodetPlan is what a godet comes to.
type GodetPlan struct {
	Spec    Godet           `json:"spec,omitzero"`    // as solved
	Assumed []string        `json:"assumed,omitzero"` // the fields filled with a default
	Arc     units.Near      `json:"arc,omitzero"`     // what one godet adds to the hem
	All     units.Near      `json:"all,omitzero"`     // what all of them add
	Chord   units.Near      `json:"chord,omitzero"`   // the straight way across the hem of one, which is shorter
	Radius  units.Length    `json:"radius,omitzero"`  // to draw the lower edge with, from the point: slit and hem
	Degrees units.NearRatio `json:"degrees,omitzero"` // the angle in degrees
}

// Plan works out the godet. The faults are [fault.Faults].
func (g Godet) Plan() (GodetPlan, error) {
	var a fault.Audit
	g.Tape.Check(&a, "tape")
	a.Need("slit", g.Slit)
	whole := units.Turns(units.RatioOf(1, 1))
	switch {
	case g.Angle.IsZero() && g.Added.IsZero():
		a.Fault("angle", "", "more than 0 deg, or added", fault.Missing)
	case g.Angle.Sign() < 0:
		a.NotNegative("angle", g.Angle)
	default:
		if c, err := g.Angle.Cmp(whole); err != nil || c > 0 {
			a.Fault("angle", g.Angle.String(), "at most {0}", fault.Range, whole)
		}
	}
	a.NotNegative("added", g.Added)
	if g.Count != 0 {
		a.Count("count", g.Count, 1, MaxGores)
	}
	a.NotNegative("hem", g.Hem)
	a.NotNegative("allowance", g.Allowance)
	if a.Failed() {
		return GodetPlan{}, a.Err()
	}
	g.solve(&a)
	if c, err := g.Angle.Cmp(whole); !a.Failed() && (err != nil || c > 0) {
		most, _ := units.Circle(g.Slit.MulInt(2)).Bounds()
		a.Fault("added", g.Added.String(), "at most {0} (a whole turn round the point)", fault.Range, most)
	}
	given := g
	g.Tape = noun.Tape(g)
	fillCount(&g.Count, oneGodet)
	fill(&g.Allowance, seamAllowance, g.Tape)
	p := GodetPlan{Spec: g, Assumed: noun.Assumed(given, g), Arc: g.Angle.Arc(g.Slit), Radius: g.Slit.Add(g.Hem), Degrees: g.Angle.InDegrees()}
	if a.Failed() {
		return GodetPlan{}, a.Err(p.Assumed...)
	}
	p.All = p.Arc.MulInt(int64(g.Count))
	p.Chord = g.Angle.SinHalf().Of(g.Slit.MulInt(2))
	units.Settle(&p.Arc, &p.All, &p.Chord)
	p.Degrees = p.Degrees.Settled()
	return p, nil
}

// solve fills the angle from what is added, or what is added where that is exact.
func (g *Godet) solve(a *fault.Audit) {
	arc, exact := g.Angle.Arc(g.Slit).Exact()
	switch {
	case g.Angle.IsZero():
		g.Angle = units.Radians(g.Added.Div(g.Slit))
	case g.Added.IsZero() && !exact:
	case g.Added.IsZero():
		g.Added = arc
	case !exact || arc != g.Added:
		a.Fault("added", g.Added.String(), "none beside an angle, or what it adds", fault.Conflict)
	}
}

// Sheet is how the godet is drawn, cut and set, with the working behind it.
func (p GodetPlan) Sheet() ticket.Sheet {
	g := p.Spec
	sheet := ticket.Sheet{Title: "A godet", Assumed: p.Assumed}
	if g.Slit.IsZero() {
		return sheet
	}
	near := func(label string, n units.Near) ticket.Line {
		return ticket.Line{Label: label, Result: ticket.About(n)}
	}
	sheet.Answer = []ticket.Line{near("each godet adds to the hem", p.Arc)}
	radius := ticket.Sum("radius of the lower edge", p.Radius, hemmed(g.Hem, ticket.Add(g.Slit, "slit"))...)
	all := near("all of them add", p.All)
	all.Terms = []ticket.Term{{Amount: ticket.About(p.Arc), Name: "each"}, ticket.Multiply(g.Count, "godets")}
	if _, exact := p.Arc.Exact(); !exact {
		all.Terms = nil
	}
	sheet.Lines = []ticket.Line{near("added to the hem by one", p.Arc), all, near("straight across its hem", p.Chord), radius}
	sheet.Steps = []ticket.Step{
		{
			Do: "Draw both sides from the point", At: ticket.Long(p.Radius), From: "the point", Note: "the middle of the piece lies along the thread",
			Check: ticket.Check{What: "straight across from side to side, at the finished hem", Want: ticket.About(p.Chord), Mend: "open or close the angle: along the curve it is longer"},
		},
		{Do: "Draw the lower edge from the point and add the allowances beside both sides", At: ticket.Long(g.Allowance), From: "the side, as drawn"},
		{Do: "Stay the point of the slit with a scrap of thin cloth", Note: "its allowance runs to nothing there"},
		{
			Do: "Stitch each side from the hem to the point", Together: ticket.RightTogether, At: ticket.Long(g.Allowance), From: "the raw edge", Press: "away from the godet",
			Check: ticket.Check{What: "each seam, from point to hem", Want: ticket.Long(g.Slit), Mend: "unpick at the point first: a pleat there shows"},
		},
		{Do: "Let it hang, level the hem and hem it"},
	}
	sheet.Cautions = []ticket.Caution{ticket.CutCare()}
	sheet.Sources = []source.Cite{
		{For: "the sides are as long as the slit", ID: "godet-skirt-article", Known: source.Read},
		source.Practise("the hem grows by the angle times the slit"),
	}
	return sheet
}
