package buttons

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// A Hole is a buttonhole for one button. The cut is the diameter and the
// thickness of a flat button, half the girth of a ball, or half of what a strip of
// paper round a button of another shape measures, and Ease, rounded up to Step. Zero
// means not given.
type Hole struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Diameter is across the button, as 18 L or 1/2 in. It is needed for flat and ball.
	Diameter units.Length `json:"diameter,omitzero"`
	// Thickness is that of a flat button, with its shank if that passes the hole. May be
	// omitted; the default is 1/8 in, or 3 mm on a metric tape.
	Thickness units.Length `json:"thickness,omitzero"`
	// Wrap is what a strip of paper measures that is wrapped once round a domed, square or
	// odd button as it passes the hole. It is needed for shaped, in place of diameter and
	// thickness.
	Wrap units.Length `json:"wrap,omitzero"`
	// Outline is the shape of the button. May be omitted; it is shaped where a wrap is
	// given, else flat.
	Outline Outline `json:"outline,omitzero"`
	// Ease is what the hole is longer than the button needs. May be omitted; the default
	// is 0 in.
	Ease units.Length `json:"ease,omitzero" noun:"zero"`
	// Step is what the cut is rounded up to a whole number of. May be omitted; the default
	// is 1/16 in, or 1 mm on a metric tape.
	Step units.Length `json:"step,omitzero"`
	// Setting is the direction of the hole. May be omitted; its ends are then not told.
	Setting Setting `json:"setting,omitzero"`
	// Place is where the button is along the front, from the end that the row is measured
	// from. It needs a setting. May be omitted.
	Place units.Length `json:"place,omitzero"`
	// Eye is across the round eye of a keyhole, at the end where the button lies, with the
	// shank in its middle. It needs a setting. May be omitted; the hole is then straight.
	Eye units.Length `json:"eye,omitzero"`
	// Reach is how far the hole goes past the place of the button, against the pull. It
	// needs a setting. May be omitted; the default is half of eye, or 1/8 in where there is
	// none, 3 mm on a metric tape.
	Reach units.Length `json:"reach,omitzero"`
}

// A HolePlan is a buttonhole worked out.
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
	if h.Outline == NoOutline && !h.Wrap.IsZero() {
		h.Outline = Shaped
	}
	given := h
	fillTape(&a, &h.Tape, h)
	if h.Outline == NoOutline {
		h.Outline = Flat
	}
	if h.Outline == Shaped {
		unused(&a, "diameter", h.Diameter, "for a shaped button, of which wrap tells all")
	} else {
		a.Need("diameter", h.Diameter)
	}
	switch {
	case h.Outline == Shaped:
		unused(&a, "thickness", h.Thickness, "for a shaped button, of which wrap tells all")
	case h.Outline == Ball:
		unused(&a, "thickness", h.Thickness, "for a ball, which is as thick as it is wide")
	case h.Thickness.IsZero():
		h.Thickness = eighth(h.Tape)
	default:
		a.Need("thickness", h.Thickness)
	}
	if h.Outline == Shaped {
		a.Need("wrap", h.Wrap)
	} else {
		unused(&a, "wrap", h.Wrap, "for a flat button or a ball")
	}
	outlines.Check(&a, "outline", h.Outline)
	a.NotNegative("ease", h.Ease)
	if h.Step.IsZero() {
		h.Step = sixteenth(h.Tape)
	}
	a.NotNegative("step", h.Step)
	if h.Setting == NoSetting {
		unused(&a, "place", h.Place, "without setting")
		unused(&a, "eye", h.Eye, "without setting")
		unused(&a, "reach", h.Reach, "without setting")
		assumed := noun.Assumed(given, h)
		return h, assumed, a.Err(assumed...)
	}
	settings.Check(&a, "setting", h.Setting)
	a.NotNegative("place", h.Place)
	a.NotNegative("eye", h.Eye)
	if h.Reach.IsZero() {
		if h.Reach = h.Eye.DivInt(2); h.Eye.Sign() <= 0 {
			h.Reach = eighth(h.Tape)
		}
	}
	a.NotNegative("reach", h.Reach)
	if h.Reach.Sign() > 0 {
		fault.AtMost(&a, "eye", h.Eye, h.Reach.MulInt(2), "twice reach, or the eye lies past the end", fault.Range)
	}
	assumed := noun.Assumed(given, h)
	return h, assumed, a.Err(assumed...)
}

// Plan works the hole out. The faults are those of [Hole].
func (h Hole) Plan() (HolePlan, error) {
	s, assumed, err := h.fill()
	if err != nil {
		return HolePlan{}, err
	}
	p := HolePlan{Spec: s, Assumed: assumed}
	switch s.Outline {
	case Ball:
		p.Exact = halfGirth(s.Diameter)
		if !s.Ease.IsZero() {
			p.Exact = p.Exact.Plus(s.Ease)
		}
		if finer, err := p.Exact.Refine(units.DefaultWithin()); err == nil {
			p.Exact = finer
		}
	case Shaped:
		p.Exact = units.Exactly(s.Wrap.DivInt(2).Add(s.Ease))
	default:
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
		a.Fault("reach", s.Reach.String(), "less than {0}, the hole", fault.Range, p.Cut)
	case !s.Eye.Less(p.Cut):
		a.Fault("eye", s.Eye.String(), "less than {0}, the hole", fault.Range, p.Cut)
	case s.Setting == Vertical && s.Place.Sign() > 0 && s.Place.Less(s.Reach):
		a.Fault("place", s.Place.String(), "at least {0} (reach)", ErrPastEdge, s.Reach)
	}
	if a.Failed() {
		return HolePlan{}, a.Err(assumed...)
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
