package edge

import (
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// A Meeting is a seam that crosses an edge between two pieces, each at its own
// angle: a shoulder seam at the armhole. It tells what a drift of the seam does to
// the edge on each piece, and whether the edge runs on smoothly or makes a peak.
// Zero means not given.
//
// Each angle is stated as a lean, its cotangent: not given it is square, more than
// 0 the piece is narrower than a right angle there, and less than 0 wider.
type Meeting struct {
	Drafted units.Length `json:"drafted,omitzero"` // allowance the pattern drew, beyond its stitching line
	Cut     units.Length `json:"cut,omitzero"`     // allowance as cut; default Drafted
	Taken   units.Length `json:"taken,omitzero"`   // what the seam takes from each ply, from the raw edge as cut; default Drafted
	Front   units.Ratio  `json:"front,omitzero"`   // cotangent of the angle between seam line and edge, within the one piece; not given: a right angle
	Back    units.Ratio  `json:"back,omitzero"`    // the same within the other piece
}

// A MeetingPlan is what the seam does to the edge. It is comparable.
type MeetingPlan struct {
	Spec    Meeting  `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // the fields of Spec filled with a default

	Drift     units.Length `json:"drift,omitzero"`     // Cut less Taken, per ply
	FrontGain units.Near   `json:"frontGain,omitzero"` // what the front adds along the edge: Drift over the sine of its angle
	BackGain  units.Near   `json:"backGain,omitzero"`  // what each piece adds along the edge: Drift over the sine of its angle
	Gain      units.Near   `json:"gain,omitzero"`      // both
	FrontPart units.Length `json:"frontPart,omitzero"` // the same of the front as BackPart of the back
	BackPart  units.Length `json:"backPart,omitzero"`  // how far the released edge of each piece lies off, where its allowance was cut as the mirror of the edge (so that it lies flat when pressed) and not straight on: 2 x Drift x the lean; less than zero to the other side

	// Kink is the tangent of the angle by which the edge fails to run straight on
	// across the seam: more than 0 for a peak in the finished edge, less for a dip,
	// zero where the two angles add up to two right angles.
	Kink  units.Ratio `json:"kink,omitzero"`
	Sharp bool        `json:"sharp,omitzero"` // that angle is a right one or more, and Kink says nothing
}

// Plan works out the meeting. The faults are [fault.Faults].
func (m Meeting) Plan() (MeetingPlan, error) {
	var a fault.Audit
	a.Need("drafted", m.Drafted)
	a.NotNegative("cut", m.Cut)
	a.NotNegative("taken", m.Taken)
	lean := func(path string, r units.Ratio) {
		if !sew.Slight(r) {
			a.Fault(path, sew.Short(r.String()), "a numerator and a denominator of at most "+ticket.Of(MaxTerm).String(), fault.Range)
		}
	}
	lean("front", m.Front)
	if lean("back", m.Back); a.Failed() {
		return MeetingPlan{}, a.Err()
	}
	var p MeetingPlan
	var set sew.Assumptions
	if m.Cut.IsZero() {
		m.Cut = m.Drafted
		set.Add("cut")
	}
	if m.Taken.IsZero() {
		m.Taken = m.Drafted
		set.Add("taken")
	}
	p.Spec, p.Assumed = m, set.List()
	p.Drift = m.Cut.Sub(m.Taken)
	front, back := leaning(m.Front), leaning(m.Back)
	p.FrontGain, p.BackGain = front.along(p.Drift), back.along(p.Drift)
	p.Gain = p.FrontGain.Add(p.BackGain)
	two := units.RatioOf(2, 1)
	p.FrontPart, p.BackPart = p.Drift.Scale(two.Mul(m.Front)), p.Drift.Scale(two.Mul(m.Back))
	// Each angle lacks of a right one what has the lean for its tangent.
	below := units.RatioOf(1, 1).Sub(m.Front.Mul(m.Back))
	above := m.Front.Add(m.Back)
	if below.Sign() > 0 {
		p.Kink = above.Quo(below)
	} else {
		p.Sharp = !above.IsZero()
	}
	units.Settle(&p.FrontGain, &p.BackGain, &p.Gain)
	return p, nil
}

// leaning is the slope of an angle whose cotangent is given: 1/sine is the same
// for a lean to either side.
func leaning(lean units.Ratio) slope {
	if lean.IsZero() {
		return square()
	}
	s, _ := slopeOf(units.RatioOf(1, 1).Quo(lean.Abs()))
	return s
}

// Solve fills in the defaults. It fails as [Meeting.Plan] does, and then returns m
// as it is.
func (m Meeting) Solve() (Meeting, error) {
	p, err := m.Plan()
	if err != nil {
		return m, err
	}
	return p.Spec, nil
}

// Sheet is the plan as work.
func (p MeetingPlan) Sheet() ticket.Sheet {
	m := p.Spec
	sh := ticket.Sheet{Title: "Seam across an edge", Assumed: p.Assumed, Sources: edgeSources(), Cautions: []ticket.Caution{ticket.CutCare()}}
	if m.Drafted.IsZero() {
		return sh // the plan of nothing has nothing to say
	}
	sh.Lines = append(make([]ticket.Line, 0, 5),
		ticket.Sum("each ply keeps", p.Drift, ticket.Add(m.Cut, "as cut"), ticket.Less(m.Taken, "taken")),
		ticket.Line{Label: "added to the edge", Result: ticket.About(p.Gain), Terms: []ticket.Term{
			{Amount: ticket.About(p.FrontGain), Name: "by the one piece"}, {Amount: ticket.About(p.BackGain), Name: "by the other"}}})
	part := func(label string, is units.Length, lean units.Ratio) {
		if !is.IsZero() {
			sh.Lines = append(sh.Lines, ticket.Sum(label, is, ticket.Add(p.Drift, "each ply keeps"), ticket.Term{Op: ticket.By, Amount: ticket.Times(lean), Name: "lean"}, ticket.Multiply(2, "")))
		}
	}
	part("a mirrored allowance parts from the edge, one piece", p.FrontPart, m.Front)
	part("a mirrored allowance parts from the edge, other piece", p.BackPart, m.Back)
	sh.Steps = []ticket.Step{
		{Do: "Pin the paper pieces together on the new seam line and look along the edge"},
		{Do: "Draw the edge again through the seam, smooth across it", Note: "then measure it and match it with its partner", Check: ticket.Check{
			What: "what the edge has gained at this seam", Want: ticket.About(p.Gain), Give: ticket.Long(sew.Straightness()), Mend: "measure on the seam line of the edge, not along the raw edge"}},
	}
	if p.Sharp || !p.Kink.IsZero() {
		text := "The two angles do not add up to two right angles: the edge makes a peak at the seam. Draw it again through the seam."
		if !p.Sharp && p.Kink.Sign() < 0 {
			text = "The two angles add up to more than two right angles: the edge dips at the seam. Draw it again through the seam."
		}
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: text, Refer: "common practice"})
	}
	return sh
}
