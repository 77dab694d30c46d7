package hem

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// audit records what is wrong with s, in the order of its fields. full is s with
// the defaults filled, or s itself where that could not be done.
func (s Spec) audit(a *fault.Audit, full Spec) {
	s.Tape.Check(a, "tape")
	kinds.Check(a, "kind", s.Kind)
	s.length(a, "drafted", s.Drafted, s.cutSlit())
	s.length(a, "cut", s.Cut, s.cutSlit())
	s.auditTurns(a, full)
	s.auditStrip(a, full)
	s.auditFlare(a)
	s.length(a, "sweep", s.Sweep, s.Kind == Circular)
	s.auditSweep(a, full)
	s.auditCurve(a, full)
	s.length(a, "slit", s.Slit, s.Kind != Slit)
	s.auditOpening(a)
}

// length records a length that is negative, or given though it is not used.
func (s Spec) length(a *fault.Audit, path string, l units.Length, unused bool) {
	switch {
	case l.IsZero():
	case unused && s.Kind.Valid():
		a.Fault(path, l.String(), "none for "+s.what(), fault.Unused)
	case l.Sign() < 0:
		a.Fault(path, l.String(), "0 in or more", fault.Sign)
	}
}

// what names the hem for a fault: a cut slit and an opening differ.
func (s Spec) what() string {
	switch {
	case s.Kind == Slit && s.Opening.Valid():
		return "a slit that is " + s.Opening.String()
	case s.Kind == Bound && s.Doubled:
		return "a doubled binding"
	}
	return s.Kind.String()
}

// auditTurns records what is wrong with the turns of s, as given, and with those
// of full, in which they are solved.
func (s Spec) auditTurns(a *fault.Audit, full Spec) {
	solved := !s.turnsBad()
	// two is a hem whose first turn lies within its depth.
	two := solved && !full.oneFold() && s.Kind != TurnUp
	room := full.room()
	deep := two && full.First.Sign() > 0 && full.Depth.Sign() > 0 && (s.Trim.IsZero() || !s.Kind.twoTurns()) && room.Less(full.First)

	s.length(a, "first", s.First, s.Kind == Single || s.Kind == Bound && s.Doubled)
	switch {
	case deep && !s.First.IsZero():
		// The turn would reach past the finished edge, or past the seam of the facing.
		limit := "at most {0}" + full.roomName()
		if s.Kind.twoTurns() {
			limit += ", or a trim of that"
		}
		a.Fault("first", s.First.String(), limit, fault.Range, room)
	case solved && !s.Kind.stripped() && !s.oneFold() && s.Take.IsZero() && full.Take.Sign() > 0 && full.Depth.Sign() <= 0:
		a.Fault("first", s.First.String(), "less than {0} (cut)", fault.Range, full.Take)
	}

	s.length(a, "depth", s.Depth, false)
	if solved && full.Depth.IsZero() && (full.Take.IsZero() || s.Kind.stripped()) {
		limit := "more than 0 in, or take"
		if s.Kind.stripped() {
			limit = "more than 0 in"
		}
		a.Fault("depth", "", limit, fault.Missing)
	}

	s.length(a, "take", s.Take, s.Kind == Bound)
	if solved && !s.Take.IsZero() {
		s.auditTake(a, full, deep)
	}

	s.length(a, "trim", s.Trim, !s.Kind.twoTurns())
	if solved && s.Kind.twoTurns() && full.First.Sign() > 0 && full.Depth.Sign() > 0 {
		if most := full.First.Min(full.Depth); most.Less(s.Trim) {
			a.Fault("trim", s.Trim.String(), "at most {0} (the lesser of first and depth)", fault.Range, most)
		}
	}
	s.auditStitch(a, full, solved && full.Depth.Sign() > 0)
}

// auditStitch records a stitching, or a fold of the garment, that misses the hem.
func (s Spec) auditStitch(a *fault.Audit, full Spec, solved bool) {
	blind := s.Kind == Blind
	s.length(a, "stitch", s.Stitch, s.Kind == Bound)
	switch {
	case !solved || s.Kind == Bound:
	case blind && full.Back.Less(full.Stitch):
		a.Fault("stitch", s.Stitch.String(), "at most {0} (back)", fault.Range, full.Back)
	case s.Kind == TurnUp:
		if full.First.Sign() > 0 && !full.Stitch.Less(full.First) {
			a.Fault("stitch", s.Stitch.String(), "less than {0} (first)", fault.Range, full.First)
		}
	case full.misses():
		a.Fault("stitch", s.Stitch.String(), "less than {0}"+full.turnName()+", or the row does not catch the turn", fault.Range, full.turned())
	case !blind && !full.Stitch.Less(full.room()):
		a.Fault("stitch", s.Stitch.String(), "less than {0}"+full.roomName(), fault.Range, full.room())
	case s.Kind.faced() && full.Stitch == full.First:
		a.Fault("stitch", s.Stitch.String(), "more or less than {0} (first), where the raw edge of the turn lies", fault.Range, full.First)
	}
	s.length(a, "back", s.Back, !blind)
	if solved && blind && !full.Back.Less(full.Depth) {
		a.Fault("back", s.Back.String(), "less than {0} (depth)", fault.Range, full.Depth)
	}
}

// misses reports whether the row of a hem that is turned twice lies on the raw
// edge of the first turn, or beyond it. A turn that is too deep is left to its own
// fault.
func (s Spec) misses() bool {
	turned := s.turned()
	return !s.oneFold() && !s.Kind.faced() && turned.Sign() > 0 && !s.Depth.Less(turned) && !s.Stitch.Less(turned)
}

func (s Spec) turnName() string {
	if s.trimmed() {
		return " (trim)"
	}
	return " (first)"
}

func (s Spec) roomName() string {
	if s.Kind.faced() && s.Favour.Sign() > 0 && s.Favour.Less(s.Depth) {
		return " (depth less favour)"
	}
	return " (depth)"
}

// auditTake records a Take that the turns cannot make.
func (s Spec) auditTake(a *fault.Audit, full Spec, deep bool) {
	depth, named, deepest := s.Depth, " (depth)", full.Depth.MulInt(2)
	if s.Kind == TurnUp {
		depth, named = depth.MulInt(2), " (twice depth)"
	}
	sum := s.First.Add(depth)
	switch {
	case s.Kind.faced():
		sum = s.Seam.Add(s.Favour)
		switch {
		case !s.Seam.IsZero() && s.Take != sum:
			a.Fault("take", s.Take.String(), "{0} (seam + favour)", fault.Conflict, sum)
		case s.Seam.IsZero() && !sum.Less(s.Take):
			a.Fault("take", s.Take.String(), "more than {0} (favour)", fault.Conflict, sum)
		}
	case s.Kind == Single:
		if s.Take != full.Depth {
			a.Fault("take", s.Take.String(), "{0} (depth)", fault.Conflict, full.Depth)
		}
	case !s.First.IsZero() && !s.Depth.IsZero():
		if s.Take != sum {
			parts := " (first + depth)"
			if s.Kind == TurnUp {
				parts = " (first + twice depth)"
			}
			a.Fault("take", s.Take.String(), "{0}"+parts, fault.Conflict, sum)
		}
	case s.Kind == Blind && s.First.IsZero() && !s.Depth.IsZero() && s.Take.Less(s.Depth):
		a.Fault("take", s.Take.String(), "{0} (depth) or more", fault.Conflict, s.Depth)
	case s.Kind == Blind && s.Take == s.Depth:
	case !sum.IsZero() && !sum.Less(s.Take):
		which := " (first)"
		if s.First.IsZero() {
			which = named
		}
		a.Fault("take", s.Take.String(), "more than {0}"+which, fault.Conflict, sum)
	case deep && s.First.IsZero():
		a.Fault("take", s.Take.String(), "at most {0} (twice depth)", fault.Range, deepest)
	}
}

// auditStrip records what is wrong with a facing or a binding.
func (s Spec) auditStrip(a *fault.Audit, full Spec) {
	solved := !s.turnsBad() && full.Depth.Sign() > 0
	s.length(a, "seam", s.Seam, !s.Kind.stripped())
	if solved && s.Kind == Bound && full.Depth.Less(full.Seam) {
		// The raw edge would reach past the fold of the binding.
		a.Fault("seam", s.Seam.String(), "at most {0} (depth)", fault.Range, full.Depth)
	}
	s.length(a, "favour", s.Favour, !s.Kind.faced())
	if solved && s.Kind.faced() && !s.Favour.Less(full.Depth) {
		a.Fault("favour", s.Favour.String(), "less than {0} (depth)", fault.Range, full.Depth)
	}
	if s.Doubled && s.Kind.Valid() && s.Kind != Bound {
		a.Fault("doubled", "true", "false for "+s.what(), fault.Unused)
	}
	s.length(a, "spare", s.Spare, !s.Kind.stripped())
}

func (s Spec) auditFlare(a *fault.Audit) {
	unused := s.Kind == Slit || s.Kind == Circular
	if unused && !s.Slope.IsZero() {
		a.Fault("slope", s.Slope.String(), "none for "+s.what(), fault.Unused)
	}
	switch n := s.Edges; {
	case unused && n != 0:
		a.Fault("edges", strconv.Itoa(n), "none for "+s.what(), fault.Unused)
	case n < 0 || n > MaxEdges:
		a.Fault("edges", strconv.Itoa(n), "1 to "+strconv.Itoa(MaxEdges), fault.Range)
	case n == 0 && !unused && !s.Slope.IsZero():
		a.Fault("edges", "", "1 to "+strconv.Itoa(MaxEdges)+", since slope is given", fault.Missing)
	}
}

// auditSweep records an edge of which nothing would be left.
func (s Spec) auditSweep(a *fault.Audit, full Spec) {
	switch {
	case s.Sweep.Sign() <= 0, s.turnsBad(), s.Kind == Circular, s.Kind == Slit && !s.Opening.Valid(), s.Edges < 0, s.Edges > MaxEdges:
		return
	case full.Depth.Sign() <= 0, s.Kind != Bound && full.Take.Sign() <= 0:
		return // what it takes is not known
	}
	drift := full.sweepDrift()
	if full.Sweep.Add(drift).Sign() <= 0 {
		a.Fault("sweep", s.Sweep.String(), "more than {0}, which the hem takes from it", fault.Range, drift.Neg())
		return
	}
	curves := arc(full.Circle.Sub(full.Hollow), full.drift()).Plus(drift)
	if lo, _ := curves.Plus(full.Sweep).Bounds(); lo.Sign() <= 0 {
		a.Fault("sweep", s.Sweep.String(), "more than {0}, which the hem takes from it round its curves", fault.Range, curves.Neg().Settled())
	}
}

// auditCurve records what is wrong with the curves of the edge.
func (s Spec) auditCurve(a *fault.Audit, full Spec) {
	s.part(a, "circle", s.Circle, s.Kind == Slit || s.Kind == TurnUp)
	if s.Kind == ShirtTail && s.Circle.IsZero() && s.Hollow.IsZero() {
		a.Fault("circle", "", "more than 0, or hollow", fault.Missing)
	}
	s.part(a, "hollow", s.Hollow, s.Kind == Slit || s.Kind == TurnUp || s.Kind == Circular)
	s.length(a, "radius", s.Radius, s.Kind != Circular)
	if s.Kind != Circular || s.Radius.Sign() <= 0 || s.turnsBad() || full.Depth.Sign() <= 0 {
		return
	}
	// The inner edge of the hem must still lie on the cloth.
	if least := full.Depth.Sub(full.drift()); !least.Less(s.Radius) {
		a.Fault("radius", s.Radius.String(), "more than {0} (depth less the drift)", fault.Range, least)
	}
}

func (s Spec) part(a *fault.Audit, path string, r units.Ratio, unused bool) {
	switch {
	case r.IsZero():
	case unused:
		a.Fault(path, r.String(), "none for "+s.what(), fault.Unused)
	case r.Sign() < 0:
		a.Fault(path, r.String(), "0 or more", fault.Sign)
	case units.RatioOf(MaxCircle, 1).Less(r):
		a.Fault(path, r.String(), "at most "+strconv.Itoa(MaxCircle), fault.Range)
	}
}

func (s Spec) auditOpening(a *fault.Audit) {
	switch {
	case s.Kind.Valid() && s.Kind != Slit:
		if s.Opening != NoOpening {
			a.Fault("opening", s.Opening.String(), "none for "+s.what(), fault.Unused)
		}
	case s.Opening == NoOpening:
		if s.Kind == Slit {
			openings.Check(a, "opening", s.Opening)
		}
	case !s.Opening.Valid():
		openings.Check(a, "opening", s.Opening)
	}
	if s.inSeam() {
		a.Need("seamTake", s.SeamTake)
	} else {
		s.length(a, "seamTake", s.SeamTake, true)
	}
}
