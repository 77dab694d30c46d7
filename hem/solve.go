package hem

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

var (
	stitchFold = units.Inch.Frac(1, 16) // common practice, from the inner fold
	stitchRaw  = units.Inch.Frac(1, 4)  // common practice, from the raw edge of a single hem
)

// solve is Solve, with the names of the fields that rest on a default.
func (s Spec) solve() (Spec, ticket.Fields, error) {
	derived, full := s, s
	if !s.turnsBad() {
		derived = s.derive()
		full = derived.fill()
	}
	var a ticket.Audit
	s.audit(&a, full)
	if a.Failed() {
		return s, "", a.Err()
	}
	return full, assumed(derived, full), nil
}

// turnsBad reports that nothing can be worked out: the kind is none, or a length
// that the rest is worked out from is below zero.
func (s Spec) turnsBad() bool {
	return !s.Kind.Valid() || s.First.Sign() < 0 || s.Depth.Sign() < 0 || s.Take.Sign() < 0 ||
		s.Drafted.Sign() < 0 || s.Cut.Sign() < 0 || s.Trim.Sign() < 0 || s.Stitch.Sign() < 0 ||
		s.SeamTake.Sign() < 0 || (s.Kind == Single && !s.First.IsZero())
}

// derive fills the one of First, Depth and Take that follows from the others.
// What comes out below zero is left for the audit to name.
func (s Spec) derive() Spec {
	f, d, t := s.First.Sign() > 0, s.Depth.Sign() > 0, s.Take.Sign() > 0
	switch {
	case s.Kind == Single:
		if !d {
			s.Depth = s.Take
		} else if !t {
			s.Take = s.Depth
		}
	case f && d && !t:
		s.Take = s.First.Add(s.Depth)
	case f && t && !d:
		s.Depth = s.Take.Sub(s.First)
	case d && t && !f:
		s.First = s.Take.Sub(s.Depth)
	}
	return s
}

// fill fills what is left with defaults, each followed by what follows from it.
func (s Spec) fill() Spec {
	if s.cutSlit() {
		return s.fillTurns().fillStitch()
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
	return s.fillStitch()
}

func (s Spec) fillTurns() Spec {
	if s.Kind == Narrow {
		return s.fillNarrow()
	}
	if s.Depth.IsZero() && s.Take.IsZero() {
		if s.Kind == Slit {
			return s
		}
		s.Take = s.Cut
		s = s.derive()
	}
	if s.Kind != Single && s.First.IsZero() {
		switch {
		case s.Depth.Sign() > 0:
			s.First = wideTurn.First.Min(s.Depth)
		case s.Take.Sign() > 0:
			s.First = wideTurn.First.Min(s.Take.DivInt(2))
		}
	}
	return s.derive()
}

// fillNarrow makes the turns of a narrow hem equal, so that the raw edge lies in
// the fold.
func (s Spec) fillNarrow() Spec {
	switch f, d, t := s.First.IsZero(), s.Depth.IsZero(), s.Take.IsZero(); {
	case f && d && t:
		s.First, s.Depth = narrowTurn.First, narrowTurn.Depth
	case f && d:
		s.First = s.Take.DivInt(2)
	case f && t:
		s.First = s.Depth
	case d && t:
		s.Depth = s.turned()
	}
	return s.derive()
}

func (s Spec) fillStitch() Spec {
	if s.Stitch.IsZero() && s.Depth.Sign() > 0 {
		s.Stitch = stitchFold
		if s.Kind == Single {
			s.Stitch = stitchRaw
		}
		s.Stitch = s.Stitch.Min(s.Depth.DivInt(2))
	}
	return s
}

// assumed names what differs between the spec as given and as filled.
func assumed(given, s Spec) ticket.Fields {
	var room [64]byte
	b := room[:0]
	add := func(name string, was, is units.Length) {
		if was == is {
			return
		}
		if len(b) > 0 {
			b = append(b, ' ')
		}
		b = append(b, name...)
	}
	add("Drafted", given.Drafted, s.Drafted)
	add("Cut", given.Cut, s.Cut)
	add("First", given.First, s.First)
	add("Depth", given.Depth, s.Depth)
	add("Take", given.Take, s.Take)
	add("Stitch", given.Stitch, s.Stitch)
	return ticket.Fields(b)
}

// audit records what is wrong with s, in the order of its fields. full is s with
// the defaults filled, or s itself where that could not be done.
func (s Spec) audit(a *ticket.Audit, full Spec) {
	if !s.Kind.Valid() {
		if s.Kind == NoKind {
			a.Fault("Kind", "", kindList, ticket.ErrMissing)
		} else {
			a.Fault("Kind", s.Kind.String(), kindList, ticket.ErrUnknown)
		}
	}
	s.length(a, "Drafted", s.Drafted, s.cutSlit())
	s.length(a, "Cut", s.Cut, s.cutSlit())
	s.auditTurns(a, full)
	s.auditFlare(a)
	s.length(a, "Sweep", s.Sweep, false)
	s.auditSweep(a, full)
	s.length(a, "Slit", s.Slit, s.Kind != Slit)
	s.auditOpening(a)
}

// length records a length that is below zero, or given though it is not used.
func (s Spec) length(a *ticket.Audit, path string, l units.Length, unused bool) {
	switch {
	case l.IsZero():
	case unused && s.Kind.Valid():
		a.Fault(path, l.String(), "none for "+s.what(), ticket.ErrUnused)
	case l.Sign() < 0:
		a.Fault(path, l.String(), "0 in or more", ticket.ErrSign)
	}
}

// what names the hem for a fault: a cut slit and an opening differ.
func (s Spec) what() string {
	if s.Kind == Slit && s.Opening.Valid() {
		return "a slit that is " + s.Opening.String()
	}
	return s.Kind.String()
}

// auditTurns records what is wrong with the turns of s, as given, and with those
// of full, in which they are solved.
func (s Spec) auditTurns(a *ticket.Audit, full Spec) {
	solved := !s.turnsBad()
	two := solved && s.Kind != Single
	deep := two && full.First.Sign() > 0 && full.Depth.Sign() > 0 && s.Trim.IsZero() && full.Depth.Less(full.First)

	s.length(a, "First", s.First, s.Kind == Single)
	switch {
	case deep && !s.First.IsZero():
		// The turn would reach past the finished edge.
		a.Fault("First", s.First.String(), "at most "+full.Depth.String()+" (Depth), or a Trim of that", ticket.ErrRange)
	case two && s.Take.IsZero() && full.Take.Sign() > 0 && full.Depth.Sign() <= 0:
		a.Fault("First", s.First.String(), "less than "+full.Take.String()+" (Cut)", ticket.ErrRange)
	}

	s.length(a, "Depth", s.Depth, false)
	if solved && full.Depth.IsZero() && full.Take.IsZero() {
		a.Fault("Depth", "", "more than 0 in, or Take", ticket.ErrMissing)
	}

	s.length(a, "Take", s.Take, false)
	if solved && !s.Take.IsZero() {
		s.auditTake(a, full, deep)
	}

	s.length(a, "Trim", s.Trim, s.Kind == Single)
	if two && full.First.Sign() > 0 && full.Depth.Sign() > 0 {
		if most := full.First.Min(full.Depth); most.Less(s.Trim) {
			a.Fault("Trim", s.Trim.String(), "at most "+most.String()+" (the lesser of First and Depth)", ticket.ErrRange)
		}
	}
	s.length(a, "Stitch", s.Stitch, false)
	if solved && full.Depth.Sign() > 0 && !full.Stitch.Less(full.Depth) {
		a.Fault("Stitch", s.Stitch.String(), "less than "+full.Depth.String()+" (Depth)", ticket.ErrRange)
	}
}

// auditTake records a Take that the turns cannot make.
func (s Spec) auditTake(a *ticket.Audit, full Spec, deep bool) {
	sum := s.First.Add(s.Depth)
	switch {
	case s.Kind == Single:
		if s.Take != full.Depth {
			a.Fault("Take", s.Take.String(), full.Depth.String()+" (Depth)", ticket.ErrConflict)
		}
	case !s.First.IsZero() && !s.Depth.IsZero():
		if s.Take != sum {
			a.Fault("Take", s.Take.String(), sum.String()+" (First + Depth)", ticket.ErrConflict)
		}
	case !sum.IsZero() && !sum.Less(s.Take):
		which := " (First)"
		if s.First.IsZero() {
			which = " (Depth)"
		}
		a.Fault("Take", s.Take.String(), "more than "+sum.String()+which, ticket.ErrConflict)
	case deep && s.First.IsZero():
		a.Fault("Take", s.Take.String(), "at most "+full.Depth.MulInt(2).String()+" (twice Depth)", ticket.ErrRange)
	}
}

func (s Spec) auditFlare(a *ticket.Audit) {
	slit := s.Kind == Slit
	if slit && !s.Slope.IsZero() {
		a.Fault("Slope", s.Slope.String(), "none for "+s.what(), ticket.ErrUnused)
	}
	switch n := s.Edges; {
	case slit && n != 0:
		a.Fault("Edges", strconv.Itoa(n), "none for "+s.what(), ticket.ErrUnused)
	case n < 0 || n > MaxEdges:
		a.Fault("Edges", strconv.Itoa(n), "1 to "+strconv.Itoa(MaxEdges), ticket.ErrRange)
	case n == 0 && !slit && !s.Slope.IsZero():
		a.Fault("Edges", "", "1 to "+strconv.Itoa(MaxEdges)+", since Slope is given", ticket.ErrMissing)
	}
}

// auditSweep records an edge of which nothing would be left.
func (s Spec) auditSweep(a *ticket.Audit, full Spec) {
	if s.Sweep.Sign() <= 0 || s.turnsBad() || (s.Kind == Slit && !s.Opening.Valid()) || full.Take.Sign() <= 0 || s.Edges < 0 || s.Edges > MaxEdges {
		return
	}
	if drift := full.sweepDrift(); full.Sweep.Add(drift).Sign() <= 0 {
		a.Fault("Sweep", s.Sweep.String(), "more than "+drift.Neg().String()+", which the hem takes from it", ticket.ErrRange)
	}
}

func (s Spec) auditOpening(a *ticket.Audit) {
	switch {
	case s.Kind.Valid() && s.Kind != Slit:
		if s.Opening != NoOpening {
			a.Fault("Opening", s.Opening.String(), "none for "+s.what(), ticket.ErrUnused)
		}
	case s.Opening == NoOpening:
		if s.Kind == Slit {
			a.Fault("Opening", "", openingList, ticket.ErrMissing)
		}
	case !s.Opening.Valid():
		a.Fault("Opening", s.Opening.String(), openingList, ticket.ErrUnknown)
	}
	if s.inSeam() {
		a.Need("SeamTake", s.SeamTake)
	} else {
		s.length(a, "SeamTake", s.SeamTake, true)
	}
}

// drift is how far below the drafted line the finished edge comes.
func (s Spec) drift() units.Length {
	// A slit that is cut has no allowance: Cut is zero, and the edge moves in.
	return s.Cut.Sub(s.Take)
}

func (s Spec) sweepDrift() units.Length {
	if s.Kind == Slit {
		return s.drift().MulInt(2)
	}
	return s.drift().Scale(s.Slope).MulInt(int64(s.Edges))
}
