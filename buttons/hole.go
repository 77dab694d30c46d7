package buttons

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// A Hole is a buttonhole for one button. The cut is the diameter and the
// thickness of a flat button, or half the girth of a ball, and Ease, rounded up
// to Step. Zero means not given.
//
//	reads        Diameter  Thickness  Outline  Ease  Step  Setting  Place  Reach
//	flat         yes       yes        yes      yes   yes   yes      yes    yes
//	ball         yes       no         yes      yes   yes   yes      yes    yes
//	no setting                                             -        no     no
type Hole struct {
	Diameter  units.Length `json:"diameter,omitzero"`         // across the button; a size in lignes is units.Ligne.Of
	Thickness units.Length `json:"thickness,omitzero"`        // of a flat button, with its shank if that passes the hole; default 1/8 in (source: see [HoleRules])
	Outline   Outline      `json:"outline,omitzero"`          // default flat (common practice)
	Ease      units.Length `json:"ease,omitzero" noun:"zero"` // more than the button needs; zero is an answer
	Step      units.Length `json:"step,omitzero"`             // the cut is rounded up to a whole number of these; default 1/16 in (common practice)
	Setting   Setting      `json:"setting,omitzero"`          // direction of the hole; not given: no Start and End
	Place     units.Length `json:"place,omitzero"`            // of the button along the front, from the end that the row is measured from; needs Setting
	Reach     units.Length `json:"reach,omitzero"`            // how far the hole goes past the button's place, against the pull; default 1/8 in (source: see [Spacings]); needs Setting
}

// A HolePlan is a buttonhole worked out. It is comparable.
type HolePlan struct {
	Spec    Hole     `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // the fields filled with a default

	Exact units.Near   `json:"exact,omitzero"` // what the button and Ease need; exact for a flat button, within 1/1000 mm for a ball
	Cut   units.Length `json:"cut,omitzero"`   // Exact rounded up to Step
	Spare units.Near   `json:"spare,omitzero"` // Cut less Exact

	// Start and End are the ends of the hole. A vertical hole runs along the front
	// from Place - Reach: both are measured from the end that Place is measured
	// from, or from the button where Place is not given, minus being above it. A
	// horizontal hole runs across: both are measured from the centre line, minus
	// being towards the front edge. Both are zero without Setting.
	Start units.Length `json:"start,omitzero"`
	End   units.Length `json:"end,omitzero"` // its other end
}

// fill looks at each field and fills the defaults.
func (h Hole) fill() (Hole, []string, error) {
	var a fault.Audit
	var assumed chosen
	a.Need("diameter", h.Diameter)
	ball := h.Outline == Ball
	switch {
	case ball:
		unused(&a, "thickness", h.Thickness, "for a ball, which is as thick as it is wide")
	case h.Thickness.IsZero():
		h.Thickness = eighth()
		assumed.add("thickness")
	default:
		a.Need("thickness", h.Thickness)
	}
	switch {
	case h.Outline == NoOutline:
		h.Outline = Flat
		assumed.add("outline")
	case !h.Outline.Valid():
		a.Fault("outline", h.Outline.String(), wantOutline, fault.Unknown)
	}
	a.NotNegative("ease", h.Ease)
	if h.Step.IsZero() {
		h.Step = sixteenth()
		assumed.add("step")
	}
	a.NotNegative("step", h.Step)
	switch {
	case h.Setting == NoSetting:
		unused(&a, "place", h.Place, "without setting")
		unused(&a, "reach", h.Reach, "without setting")
	case !h.Setting.Valid():
		a.Fault("setting", h.Setting.String(), wantSetting, fault.Unknown)
	default:
		a.NotNegative("place", h.Place)
		if h.Reach.IsZero() {
			h.Reach = eighth()
			assumed.add("reach")
		}
		a.NotNegative("reach", h.Reach)
	}
	return h, assumed.fields(), a.Err()
}

// Plan works the hole out. The faults are those of [Hole].
func (h Hole) Plan() (HolePlan, error) {
	s, assumed, err := h.fill()
	if err != nil {
		return HolePlan{}, err
	}
	p := HolePlan{Spec: s, Assumed: assumed}
	if s.Outline == Ball {
		p.Exact = halfGirth(s.Diameter)
		if !s.Ease.IsZero() {
			p.Exact = p.Exact.Plus(s.Ease)
		}
		if finer, err := p.Exact.Refine(units.DefaultWithin()); err == nil {
			p.Exact = finer
		}
	} else {
		p.Exact = units.Exactly(s.Diameter.Add(s.Thickness).Add(s.Ease))
	}
	p.Cut, p.Spare, err = p.Exact.Round(s.Step, units.Up)
	if err == nil {
		// Round's residue is Exact less the mark.
		p.Spare = p.Spare.Neg()
	}
	var a fault.Audit
	switch {
	case err != nil:
		a.Fault("step", s.Step.String(), "a mark that the hole can be told from", fault.KindOf(err))
	case s.Setting != NoSetting && !s.Reach.Less(p.Cut):
		a.Fault("reach", assumedText(s.Reach, h.Reach.IsZero()), "less than "+p.Cut.String()+", the hole", fault.Range)
	case s.Setting == Vertical && s.Place.Sign() > 0 && s.Place.Less(s.Reach):
		a.Fault("place", s.Place.String(), "at least "+s.Reach.String()+" (reach)", ErrPastEdge)
	}
	if a.Failed() {
		return HolePlan{}, a.Err()
	}
	if s.Setting != NoSetting {
		p.Start = s.Reach.Neg()
		if s.Setting == Vertical {
			p.Start = s.Place.Sub(s.Reach)
		}
		p.End = p.Start.Add(p.Cut)
	}
	return p, nil
}

// halfGirth is half the way round a ball: pi d / 2.
func halfGirth(d units.Length) units.Near { return units.Pi().Of(d.DivInt(2)) }
