package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// stitchFold is the distance of a row from the inner fold, stitchRaw that from the raw
// edge of a single hem. Both are common practice.
func stitchFold(t units.Tape) units.Length {
	return t.Of(units.Inch.Frac(1, 16), units.Millimetre.Of(2))
}

func stitchRaw(t units.Tape) units.Length {
	return t.Of(units.Inch.Frac(1, 4), units.Millimetre.Of(6))
}

// solve fills the fields that follow from those given, then those that have a
// default, and names these.
func (s Spec) solve() (Spec, []string, error) {
	derived, full := s, s
	if !s.turnsBad() {
		derived = s.derive()
		full = derived.fill()
	}
	names := noun.Assumed(derived, full)
	var a fault.Audit
	s.audit(&a, full)
	if a.Failed() {
		return s, nil, a.Err(names...)
	}
	return full, names, nil
}

// turnsBad reports that nothing can be worked out: the kind is none, or a length
// that the rest is worked out from is below zero.
func (s Spec) turnsBad() bool {
	return !s.Kind.Valid() || s.First.Sign() < 0 || s.Depth.Sign() < 0 || s.Take.Sign() < 0 ||
		s.Drafted.Sign() < 0 || s.Cut.Sign() < 0 || s.Trim.Sign() < 0 || s.Stitch.Sign() < 0 ||
		s.Back.Sign() < 0 || s.Seam.Sign() < 0 || s.Favour.Sign() < 0 ||
		s.SeamTake.Sign() < 0 || (s.Kind == Single && !s.First.IsZero()) || (s.Kind == Bound && !s.Take.IsZero())
}

// derive fills the one of First, Depth and Take that follows from the others.
// What comes out below zero is left for the audit to name.
func (s Spec) derive() Spec {
	f, d, t := s.First.Sign() > 0, s.Depth.Sign() > 0, s.Take.Sign() > 0
	switch {
	case s.Kind == Bound:
	case s.Kind.faced():
		if s.Seam.Sign() > 0 && !t {
			s.Take = s.Seam.Add(s.Favour)
		} else if t && s.Seam.IsZero() {
			s.Seam = s.Take.Sub(s.Favour)
		}
	case s.Kind == Single, s.Kind == Blind && !f:
		switch {
		case !d:
			s.Depth = s.Take
		case !t:
			s.Take = s.Depth
		case s.Kind == Blind:
			s.First = s.Take.Sub(s.Depth)
		}
	case s.Kind == TurnUp:
		s = s.deriveTurnUp(f, d, t)
	case f && d && !t:
		s.Take = s.First.Add(s.Depth)
	case f && t && !d:
		s.Depth = s.Take.Sub(s.First)
	case d && t && !f:
		s.First = s.Take.Sub(s.Depth)
	}
	return s
}

// deriveTurnUp is derive for a turn-up, which takes its depth twice.
func (s Spec) deriveTurnUp(f, d, t bool) Spec {
	switch {
	case f && d && !t:
		s.Take = s.Depth.MulInt(2).Add(s.First)
	case f && t && !d:
		s.Depth = s.Take.Sub(s.First).DivInt(2)
	case d && t && !f:
		s.First = s.Take.Sub(s.Depth.MulInt(2))
	}
	return s
}

// fill fills what is left with defaults, each followed by what follows from it.
func (s Spec) fill() Spec {
	s.Tape = noun.Tape(s)
	if s.cutSlit() {
		return s.fillTurns().fillStitch()
	}
	if s.Kind == Bound {
		return s.fillBound()
	}
	if s.Cut.IsZero() {
		s.Cut = s.Drafted
	}
	s = s.fillTurns()
	if s.Cut.IsZero() {
		s.Cut = s.Take
		if s.inSeam() {
			s.Cut = s.SeamTake
		}
	}
	if s.Drafted.IsZero() {
		s.Drafted = s.Cut
	}
	if s.Kind == Circular && s.Circle.IsZero() {
		s.Circle = wholeCircle
	}
	return s.fillStitch()
}

func (s Spec) fillTurns() Spec {
	switch {
	case s.Kind.narrow():
		return s.fillNarrow()
	case s.Kind.faced():
		return s.fillFaced()
	}
	if s.Depth.IsZero() && s.Take.IsZero() {
		if s.Kind == Slit {
			return s
		}
		s.Take = s.Cut
		s = s.derive()
	}
	if s.First.IsZero() {
		switch {
		case s.Kind == Single || s.Kind == Blind:
		case s.Kind == TurnUp:
			s.First = s.Depth
			if s.Depth.IsZero() {
				s.First = s.Take.DivInt(3)
			}
		case s.Depth.Sign() > 0:
			s.First = wideTurn(s.Tape).First.Min(s.Depth)
		case s.Take.Sign() > 0:
			s.First = wideTurn(s.Tape).First.Min(s.Take.DivInt(2))
		}
	}
	return s.derive()
}

// fillNarrow makes the turns of a narrow hem equal, so that the raw edge lies in
// the fold, and takes those of the table where none is given.
func (s Spec) fillNarrow() Spec {
	switch f, d, t := s.First.IsZero(), s.Depth.IsZero(), s.Take.IsZero(); {
	case f && d && t:
		turn := narrowTurn(s.Kind, s.Tape)
		s.First, s.Depth = turn.Depth, turn.Depth
	case f && d:
		s.First = s.Take.DivInt(2)
	case f && t:
		s.First = s.Depth
	case d && t:
		s.Depth = s.turned()
	}
	return s.derive()
}

// fillFaced lets the seam take what is cut, so that the finished edge comes to lie
// on the line drafted.
func (s Spec) fillFaced() Spec {
	if s.Take.IsZero() {
		if s.Favour.Less(s.Cut) {
			s.Take = s.Cut
		} else {
			s.Seam = facingStrip(s.Tape).Seam
		}
	}
	if s.First.IsZero() {
		s.First = facingStrip(s.Tape).Turn.Min(s.room())
	}
	return s.derive()
}

// fillBound leaves no allowance on the garment, unless it is said to be there.
func (s Spec) fillBound() Spec {
	if s.Drafted.IsZero() {
		s.Drafted = s.Cut
	}
	if s.Seam.IsZero() {
		s.Seam = s.Depth
	}
	if s.First.IsZero() && !s.Doubled {
		s.First = s.Depth
	}
	return s
}

func (s Spec) fillStitch() Spec {
	if s.Depth.Sign() <= 0 {
		return s
	}
	half := s.Depth.DivInt(2)
	if s.Kind == Blind && s.Back.IsZero() {
		s.Back = blindBack(s.Tape).Least.Min(half)
	}
	if s.Stitch.IsZero() {
		switch s.Kind {
		case Single:
			s.Stitch = stitchRaw(s.Tape).Min(half)
		case Blind:
			s.Stitch = s.Back.DivInt(2)
		case TurnUp:
			s.Stitch = stitchRaw(s.Tape).Min(s.First.DivInt(2))
		default:
			s.Stitch = stitchFold(s.Tape).Min(half)
		}
		if turned := s.turned(); turned.Sign() > 0 {
			s.Stitch = s.Stitch.Min(turned.DivInt(2)) // or the row would not catch the turn
		}
	}
	return s
}

var wholeCircle = units.RatioOf(1, 1)

// drift is how far below the drafted line the finished edge comes.
func (s Spec) drift() units.Length {
	// A slit that is cut has no allowance: Cut is zero, and the edge moves in.
	return s.Cut.Sub(s.taken())
}

// taken is what the hem takes off the garment: for a binding, Seam - Depth, which
// is below zero where the binding stands out beyond the raw edge.
func (s Spec) taken() units.Length {
	if s.Kind == Bound {
		return s.Seam.Sub(s.Depth)
	}
	return s.Take
}

func (s Spec) sweepDrift() units.Length {
	if s.Kind == Slit {
		return s.drift().MulInt(2)
	}
	return s.drift().Scale(s.Slope).MulInt(int64(s.Edges))
}
