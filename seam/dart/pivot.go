package dart

import (
	"cmp"

	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Pivot is a move of a dart, or of a part of it, to another place round its point: the paper is
// slit from there to the point, the old dart closed by an angle, and the slit opens by
// the same angle. The angle, not the width, is what a move keeps.
type Pivot struct {
	// Length is the old dart along its centre line, from the point to the edge.
	Length units.Length `json:"length,omitzero"`
	// Width is the old dart straight across at that edge.
	Width units.Length `json:"width,omitzero"`
	// Turn is the angle to be moved. May be omitted; the default is the whole dart.
	Turn units.Angle `json:"turn,omitzero"`
	// To is the new dart along its centre line, from the point to the edge it opens on. May
	// be omitted where toLeg is given.
	To units.Length `json:"to,omitzero"`
	// ToLeg is the new dart along either leg, which is where the slit meets the edge. May be
	// omitted where to is given.
	ToLeg units.Length `json:"toLeg,omitzero"`
	// X is a point of the pattern on the part that is swung round (a notch, the end of an
	// edge), from the point of the dart to the side that the part swings from. May be
	// omitted; the default is 0.
	X units.Length `json:"x,omitzero" noun:"zero"`
	// Y is the same point, from the point of the dart away, square to x. May be omitted; the
	// default is 0.
	Y units.Length `json:"y,omitzero" noun:"zero"`
}

// A PivotPlan is the moved dart.
type PivotPlan struct {
	Spec    Pivot    `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // the fields of Spec filled with a default

	Sine     units.NearRatio `json:"sine,omitzero"`     // of the angle moved
	Cosine   units.NearRatio `json:"cosine,omitzero"`   // of the angle moved
	Width    units.Near      `json:"width,omitzero"`    // the new dart straight across between the ends of its legs
	Leg      units.Near      `json:"leg,omitzero"`      // either leg of the new dart
	Left     units.Near      `json:"left,omitzero"`     // what stays of the old dart, straight across between the ends of its legs, which a move does not shorten; zero where all of it is moved
	LeftTurn units.Angle     `json:"leftTurn,omitzero"` // the angle that stays; omitted where it is no sum of the two, as for a turn in degrees
	X        units.Near      `json:"x,omitzero"`        // where the point X, Y comes to lie
	Y        units.Near      `json:"y,omitzero"`        // where the point X, Y comes to lie, swung from X towards Y
}

// whole is the angle of the whole old dart: its half has the tangent Width over twice
// Length.
func (v Pivot) whole() units.Angle {
	one, t := units.RatioOf(1, 1), v.Width.DivInt(2).Div(v.Length)
	if t == one {
		return units.Degrees(units.RatioOf(90, 1))
	}
	tt := t.Mul(t)
	if t.Less(one) {
		return units.Slope(t.Add(t).Quo(one.Sub(tt)))
	}
	a, _ := units.Degrees(units.RatioOf(90, 1)).Add(units.Slope(tt.Sub(one).Quo(t.Add(t))))
	return a
}

// Plan works out the move. The faults are [fault.Faults].
func (v Pivot) Plan() (PivotPlan, error) {
	var a fault.Audit
	a.Need("length", v.Length)
	a.Need("width", v.Width)
	if v.Turn.Sign() < 0 {
		a.Fault("turn", v.Turn.String(), "more than 0 deg", fault.Sign)
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
	given, whole := v, v.whole()
	if v.Turn.IsZero() {
		v.Turn = whole
	}
	if over, err := v.Turn.Cmp(whole); err != nil {
		a.Fault("turn", v.Turn.String(), "an angle of fewer places", fault.KindOf(err))
	} else if over > 0 {
		a.Fault("turn", v.Turn.String(), "at most {0} (the whole dart)", fault.Range, whole)
	}
	tan, err := v.Turn.TanHalf()
	cos := v.Turn.CosHalf()
	secant, err2 := units.ExactlyRatio(units.RatioOf(1, 1)).Quo(cos)
	if err = cmp.Or(err, err2); err != nil && !a.Failed() {
		a.Fault("turn", v.Turn.String(), "an angle of fewer places", fault.KindOf(err))
	}
	if a.Failed() {
		return PivotPlan{}, a.Err()
	}
	p := PivotPlan{Spec: v, Assumed: noun.Assumed(given, v), Sine: v.Turn.Sin(), Cosine: v.Turn.Cos()}
	p.X = p.Cosine.Of(v.X).Sub(p.Sine.Of(v.Y))
	p.Y = p.Sine.Of(v.X).Add(p.Cosine.Of(v.Y))
	if v.Turn != whole {
		p.LeftTurn, _ = whole.Sub(v.Turn)
		p.Left = cos.Of(v.Width).Sub(v.Turn.SinHalf().Of(v.Length.MulInt(2)))
	}
	if !v.To.IsZero() {
		p.Width, p.Leg = tan.Of(v.To.MulInt(2)), secant.Of(v.To)
	} else {
		p.Width, p.Leg = v.Turn.SinHalf().Of(v.ToLeg.MulInt(2)), units.Exactly(v.ToLeg)
	}
	p.Sine, p.Cosine = p.Sine.Settled(), p.Cosine.Settled()
	units.Settle(&p.Width, &p.Leg, &p.Left, &p.X, &p.Y)
	return p, nil
}

// Sheet is the move as work on paper.
func (p PivotPlan) Sheet() ticket.Sheet {
	v := p.Spec
	sh := ticket.Sheet{Title: "Dart moved round its point", Assumed: p.Assumed, Cautions: []ticket.Caution{ticket.CutCare()}}
	if v.Length.IsZero() {
		return sh // the plan of no move has nothing to say
	}
	sh.Answer = []ticket.Line{{Label: "the new dart, straight across", Result: ticket.About(p.Width)}}
	sh.Lines = append(sh.Lines,
		ticket.Line{Label: "stays of the old dart, between the ends of its legs", Result: ticket.About(p.Left)},
		ticket.Line{Label: "new dart, across its edge", Result: ticket.About(p.Width)})
	if tan, err := v.Turn.TanHalf(); err == nil && !v.To.IsZero() {
		if r, exact := tan.Exact(); exact {
			sh.Lines[1].Terms = []ticket.Term{ticket.Add(v.To, "its length"), {Op: ticket.By, Amount: ticket.Times(r), Name: "tangent of half the angle moved"}, ticket.Multiply(2, "")}
		}
	}
	mend := "an old dart closed too far, or not far enough, shows at the new one: close it leg to leg, its point flat"
	sh.Steps = []ticket.Step{
		{Do: "Draw the old dart to its very point, and a line from the point to where the new one will open", At: ticket.About(p.Leg), From: "the point"},
		{Do: "Slit the new line to the point and one old leg to the point, leaving a hinge", Note: "the paper turns on the point; it must not slip"},
		{Do: "Close the old dart as far as it is moved, and tape it", At: ticket.About(p.Left), From: "end to end of the old legs",
			Check: ticket.Check{What: "across the new opening, between the ends of its legs", Want: ticket.About(p.Width), Give: ticket.Long(sew.Straightness(noun.Tape(v))), Mend: mend}},
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
