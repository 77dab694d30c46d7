package edge

import (
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/ticket"
)

// A Meeting is a seam that crosses an edge between two pieces, each at its own angle: a
// shoulder seam at the armhole. It tells what a drift of the seam does to the edge on
// each piece, and whether the edge runs on smoothly or makes a peak.
type Meeting struct {
	// Drafted is the allowance that the pattern drew beyond its stitching line.
	Drafted units.Length `json:"drafted,omitzero"`
	// Cut is the allowance as cut. May be omitted; the default is drafted.
	Cut units.Length `json:"cut,omitzero"`
	// Taken is what the seam takes from each ply, from the raw edge as cut. May be omitted;
	// the default is drafted.
	Taken units.Length `json:"taken,omitzero"`
	// Front is the angle between seam line and edge within the one piece. May be omitted;
	// the default is a right angle.
	Front units.Angle `json:"front,omitzero"`
	// Back is the same angle within the other piece. May be omitted; the default is a right
	// angle.
	Back units.Angle `json:"back,omitzero"`
}

// A MeetingPlan is what the seam does to the edge.
type MeetingPlan struct {
	Spec    Meeting  `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // the fields of Spec filled with a default

	Drift     units.Length `json:"drift,omitzero"`     // Cut less Taken, per ply
	FrontGain units.Near   `json:"frontGain,omitzero"` // what the front adds along the edge: Drift over the sine of its angle
	BackGain  units.Near   `json:"backGain,omitzero"`  // what the back adds
	Gain      units.Near   `json:"gain,omitzero"`      // both
	FrontPart units.Near   `json:"frontPart,omitzero"` // the same of the front as BackPart of the back
	BackPart  units.Near   `json:"backPart,omitzero"`  // how far the released edge of each piece lies off, where its allowance was cut as the mirror of the edge (so that it lies flat when pressed) and not straight on: 2 x Drift over the tangent of the angle; negative to the other side

	// Kink is the angle by which the edge fails to run straight on across the seam:
	// positive for a peak in the finished edge, negative for a dip, zero where the two
	// angles add up to two right angles.
	Kink units.Angle `json:"kink,omitzero"`
}

func right() units.Angle { return units.Degrees(units.RatioOf(90, 1)) }

// Plan works out the meeting. The faults are [fault.Faults].
func (m Meeting) Plan() (MeetingPlan, error) {
	var a fault.Audit
	a.Need("drafted", m.Drafted)
	a.NotNegative("cut", m.Cut)
	a.NotNegative("taken", m.Taken)
	given := m
	if m.Cut.IsZero() {
		m.Cut = m.Drafted
	}
	if m.Taken.IsZero() {
		m.Taken = m.Drafted
	}
	p := MeetingPlan{Drift: m.Cut.Sub(m.Taken)}
	p.FrontGain, p.FrontPart = m.piece(&a, "front", &m.Front)
	p.BackGain, p.BackPart = m.piece(&a, "back", &m.Back)
	if a.Failed() {
		return MeetingPlan{}, a.Err()
	}
	p.Gain = p.FrontGain.Add(p.BackGain)
	both, err := m.Front.Add(m.Back)
	if err == nil {
		p.Kink, err = units.Degrees(units.RatioOf(180, 1)).Sub(both)
	}
	if err != nil {
		a.Fault("back", m.Back.String(), "an angle that can be added to {0} (front)", fault.KindOf(err), m.Front)
		return MeetingPlan{}, a.Err()
	}
	p.Spec, p.Assumed = m, noun.Assumed(given, m)
	units.Settle(&p.FrontGain, &p.BackGain, &p.Gain, &p.FrontPart, &p.BackPart)
	return p, nil
}

// piece fills the angle of one piece, and tells what the seam adds to its edge and how
// far a mirrored allowance parts from it.
func (m Meeting) piece(a *fault.Audit, path string, angle *units.Angle) (gain, part units.Near) {
	if angle.IsZero() {
		*angle = right()
	}
	c := slanted(a, path, *angle)
	var cotangent units.NearRatio
	if tan, err := angle.Tan(); err == nil {
		cotangent, _ = units.ExactlyRatio(units.RatioOf(1, 1)).Quo(tan)
	}
	drift := m.Cut.Sub(m.Taken)
	return c.Of(drift), cotangent.Of(drift.MulInt(2))
}

// Sheet is the plan as work.
func (p MeetingPlan) Sheet() ticket.Sheet {
	m := p.Spec
	sh := ticket.Sheet{Title: "Seam across an edge", Assumed: p.Assumed, Sources: edgeSources(), Cautions: []ticket.Caution{ticket.CutCare()}}
	if m.Drafted.IsZero() {
		return sh // the plan of nothing has nothing to say
	}
	sh.Answer = []ticket.Line{ticket.Line{Label: "the edge comes out longer by", Result: ticket.About(p.Gain)}.Turned("the edge comes out shorter by")}
	sh.Lines = append(make([]ticket.Line, 0, 5),
		ticket.Sum("each ply keeps", p.Drift, ticket.Add(m.Cut, "as cut"), ticket.Less(m.Taken, "taken")),
		ticket.Line{Label: "added to the edge", Result: ticket.About(p.Gain), Terms: []ticket.Term{
			{Amount: ticket.About(p.FrontGain), Name: "by the one piece"}, {Amount: ticket.About(p.BackGain), Name: "by the other"}}})
	part := func(label string, is units.Near) {
		if !is.IsZero() {
			sh.Lines = append(sh.Lines, ticket.Line{Label: label, Result: ticket.About(is)})
		}
	}
	part("a mirrored allowance parts from the edge, one piece", p.FrontPart)
	part("a mirrored allowance parts from the edge, other piece", p.BackPart)
	sh.Steps = []ticket.Step{
		{Do: "Pin the paper pieces together on the new seam line and look along the edge"},
		{Do: "Draw the edge again through the seam, smooth across it", Note: "then measure it and match it with its partner", Check: ticket.Check{
			What: "what the edge has gained at this seam", Want: ticket.About(p.Gain), Give: ticket.Long(sew.Straightness(noun.Tape(m))), Mend: "measure on the seam line of the edge, not along the raw edge"}},
	}
	if !p.Kink.IsZero() {
		text := "The two angles do not add up to two right angles: the edge makes a peak at the seam. Draw it again through the seam."
		if p.Kink.Sign() < 0 {
			text = "The two angles add up to more than two right angles: the edge dips at the seam. Draw it again through the seam."
		}
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: text, Refer: "common practice"})
	}
	return sh
}
