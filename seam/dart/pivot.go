package dart

import (
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Pivot moves a dart, or a part of it, to another place round its point: the
// paper is slit from there to the point, the old dart closed by an angle, and the
// slit opens by the same angle. The angle, not the width, is what a move keeps.
//
// The angle is given by the tangent of its half, because then its sine and cosine
// are fractions too, and whatever is carried round the point stays exact. Zero
// means not given.
type Pivot struct {
	Length units.Length `json:"length,omitzero"` // the old dart along its centre line, from the point to the edge
	Width  units.Length `json:"width,omitzero"`  // the old dart straight across at that edge
	Turn   units.Ratio  `json:"turn,omitzero"`   // tangent of half the angle to be moved; at most the whole dart, Width over twice Length, which is the default
	To     units.Length `json:"to,omitzero"`     // the new dart along its centre line, from the point to the edge it opens on; or give ToLeg
	ToLeg  units.Length `json:"toLeg,omitzero"`  // the new dart along either leg, which is where the slit meets the edge; or give To

	// X and Y are a point of the pattern on the part that is swung round: a notch,
	// the end of an edge. They are measured from the point of the dart, X to the
	// side that the part swings from, Y away from there. Not given: none.
	X units.Length `json:"x,omitzero"`
	Y units.Length `json:"y,omitzero"` // from the point of the dart away
}

// A PivotPlan is the moved dart. It is comparable.
type PivotPlan struct {
	Spec    Pivot    `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // the fields of Spec filled with a default

	Sine     units.Ratio  `json:"sine,omitzero"`     // of the angle moved
	Cosine   units.Ratio  `json:"cosine,omitzero"`   // of the angle moved
	Width    units.Near   `json:"width,omitzero"`    // the new dart straight across between the ends of its legs; exact where To is given
	Leg      units.Near   `json:"leg,omitzero"`      // either leg of the new dart
	Left     units.Near   `json:"left,omitzero"`     // what stays of the old dart, straight across between the ends of its legs, which a move does not shorten; zero where all of it is moved
	LeftTurn units.Ratio  `json:"leftTurn,omitzero"` // tangent of half the angle that stays
	X        units.Length `json:"x,omitzero"`        // where the point X, Y comes to lie
	Y        units.Length `json:"y,omitzero"`        // where the point X, Y comes to lie, swung from X towards Y
}

// whole is the tangent of half the angle of the whole old dart.
func (v Pivot) whole() units.Ratio { return v.Width.DivInt(2).Div(v.Length) }

// Plan works out the move. The faults are [fault.Faults].
func (v Pivot) Plan() (PivotPlan, error) {
	var a fault.Audit
	a.Need("length", v.Length)
	a.Need("width", v.Width)
	switch {
	case v.Turn.Sign() < 0:
		a.Fault("turn", sew.Short(v.Turn.String()), "more than 0", fault.Sign)
	case !sew.Slight(v.Turn) && v.Length.Sign() > 0 && v.Turn != v.whole(): // the default may be given too
		a.Fault("turn", sew.Short(v.Turn.String()), "a numerator and a denominator of at most "+ticket.Of(edge.MaxTerm).String(), fault.Range)
	}
	if v.To.IsZero() && v.ToLeg.IsZero() {
		a.Fault("to", "", "more than 0 in, or toLeg", fault.Missing)
	}
	a.NotNegative("to", v.To)
	a.NotNegative("toLeg", v.ToLeg)
	if v.To.Sign() > 0 && v.ToLeg.Sign() > 0 {
		a.Fault("toLeg", v.ToLeg.String(), "none where to is given", fault.Unused)
	}
	if a.Failed() {
		return PivotPlan{}, a.Err()
	}
	p := PivotPlan{Spec: v}
	one := units.RatioOf(1, 1)
	whole := v.whole()
	if v.Turn.IsZero() {
		v.Turn, p.Assumed = whole, []string{"turn"}
	}
	if whole.Less(v.Turn) {
		a.Fault("turn", sew.Short(v.Turn.String()), "at most "+sew.Short(whole.String())+" (the whole dart: width over twice length)", fault.Range)
		return PivotPlan{}, a.Err()
	}
	u := v.Turn
	uu := u.Mul(u)
	p.Spec = v
	p.Sine = u.Add(u).Quo(one.Add(uu))
	p.Cosine = one.Sub(uu).Quo(one.Add(uu))
	p.LeftTurn = whole.Sub(u).Quo(one.Add(whole.Mul(u)))
	p.X = v.X.Scale(p.Cosine).Sub(v.Y.Scale(p.Sine))
	p.Y = v.X.Scale(p.Sine).Add(v.Y.Scale(p.Cosine))
	// Between the legs, each L root of (1 + T T), stays 2 L (T - u) / root of (1 + u u).
	var err error
	flat := v.Width.Sub(v.Length.Scale(u).MulInt(2))
	if p.Left, err = units.Sqrt(flat.Times(flat).Scale(one.Quo(one.Add(uu))), units.Length{}); err != nil {
		a.Fault("width", sew.Short(v.Width.String()), "a length whose square root can be enclosed", fault.KindOf(err))
		return PivotPlan{}, a.Err()
	}
	if !v.To.IsZero() {
		half := v.To.Scale(u)
		p.Width = units.Exactly(half.MulInt(2))
		if p.Leg, err = hypotenuse(v.To, half); err != nil {
			a.Fault("to", sew.Short(v.To.String()), "a length whose square root can be enclosed", fault.KindOf(err))
			return PivotPlan{}, a.Err()
		}
		units.Settle(&p.Width, &p.Leg, &p.Left)
		return p, nil
	}
	p.Leg = units.Exactly(v.ToLeg)
	// Half the width is the leg x u / root of (1 + u u).
	square := v.ToLeg.Times(v.ToLeg).Scale(uu.Mul(units.RatioOf(4, 1)).Quo(one.Add(uu)))
	if p.Width, err = units.Sqrt(square, units.Length{}); err != nil {
		a.Fault("toLeg", sew.Short(v.ToLeg.String()), "a length whose square root can be enclosed", fault.KindOf(err))
		return PivotPlan{}, a.Err()
	}
	units.Settle(&p.Width, &p.Leg, &p.Left)
	return p, nil
}

// Solve fills in the default. It fails as [Pivot.Plan] does, and then returns v
// as it is.
func (v Pivot) Solve() (Pivot, error) {
	p, err := v.Plan()
	if err != nil {
		return v, err
	}
	return p.Spec, nil
}

// Sheet is the move as work on paper.
func (p PivotPlan) Sheet() ticket.Sheet {
	v := p.Spec
	sh := ticket.Sheet{Title: "Dart moved round its point", Assumed: p.Assumed, Cautions: []ticket.Caution{ticket.CutCare()}}
	if v.Length.IsZero() {
		return sh // the plan of no move has nothing to say
	}
	sh.Lines = append(make([]ticket.Line, 0, 5),
		ticket.Line{Label: "whole old dart, tangent of half its angle", Result: ticket.Times(v.Width.Div(v.Length.MulInt(2))), Terms: []ticket.Term{
			ticket.Add(v.Width, "wide"), {Op: ticket.Over, Amount: ticket.Long(v.Length.MulInt(2)), Name: "twice its length"}}},
		ticket.Line{Label: "stays of the old dart, between the ends of its legs", Result: ticket.About(p.Left)})
	if v.To.IsZero() {
		sh.Lines = append(sh.Lines, ticket.Line{Label: "new dart, across its edge", Result: ticket.About(p.Width)})
	} else {
		sh.Lines = append(sh.Lines, ticket.Line{Label: "new dart, across its edge", Result: ticket.About(p.Width), Terms: []ticket.Term{
			ticket.Add(v.To, "its length"), {Op: ticket.By, Amount: ticket.Times(v.Turn), Name: "tangent of half the angle moved"}, ticket.Multiply(2, "")}})
	}
	mend := "an old dart closed too far, or not far enough, shows at the new one: close it leg to leg, its point flat"
	sh.Steps = []ticket.Step{
		{Do: "Draw the old dart to its very point, and a line from the point to where the new one will open", At: ticket.About(p.Leg), From: "the point"},
		{Do: "Slit the new line to the point and one old leg to the point, leaving a hinge", Note: "the paper turns on the point; it must not slip"},
		{Do: "Close the old dart as far as it is moved, and tape it", At: ticket.About(p.Left), From: "end to end of the old legs",
			Check: ticket.Check{What: "across the new opening, between the ends of its legs", Want: ticket.About(p.Width), Give: ticket.Long(sew.Straightness()), Mend: mend}},
		{Do: "Draw the point of the new dart short of the old point, true its legs and cut its cap folded"},
	}
	sh.Cautions = append(sh.Cautions, ticket.Caution{
		Text:  "Cap, legs and what the new edge loses follow from the new dart: plan it as a dart before the cloth is cut.",
		Refer: "common practice",
	})
	sh.Sources = []source.Cite{
		{For: "the angle is what a move keeps", ID: "dart-principle-article", Known: source.Read},
		source.Practise("new width from the new leg and the angle"),
	}
	return sh
}
