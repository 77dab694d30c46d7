package gather

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/strip"
	"example.com/clothyard/units/ticket"
)

// A Strip is a joined strip gathered onto an edge. Zero means not given; what is
// not given follows from the rest:
//
//	strip, Edge                      Fullness
//	strip, Fullness                  Edge
//	Edge, Fullness, Strip.Pieces     Strip.Each, exactly
//	Edge, Fullness, Strip.Each       Strip.Pieces, up to whole pieces
//
// where "strip" is any strip that [strip.Spec.Plan] can work out by itself.
// Strip.Allowance has no default: where there is a join, it is needed, or Butted. All
// of them may be given where they agree. With Strip.Least given as well, which
// must then be Edge x Fullness, the strip may be longer: Fullness is the least
// that is wanted.
type Strip struct {
	Strip    strip.Spec   `json:"strip,omitzero"`    // the strip: pieces, joins, ends, open or a ring
	Edge     units.Length `json:"edge,omitzero"`     // the edge it is gathered onto, along the seam line, as sewn
	Fullness units.Ratio  `json:"fullness,omitzero"` // length of the strip as sewn over Edge; 1 or more
	Butted   bool         `json:"butted,omitzero"`   // the ends of the pieces only meet: a join takes nothing, and Strip.Allowance may not be given
}

// A StripPlan is what a gathered strip comes to.
type StripPlan struct {
	Spec     Strip         `json:"spec,omitzero"`     // as solved
	Assumed  ticket.Fields `json:"assumed,omitzero"`  // always empty: a strip has no default
	Strip    strip.Plan    `json:"strip,omitzero"`    // the strip before it is gathered
	Edge     units.Length  `json:"edge,omitzero"`     // the edge, along the seam line
	Fullness units.Ratio   `json:"fullness,omitzero"` // what the strip really has: Strip.Sewn / Edge
	Surplus  units.Length  `json:"surplus,omitzero"`  // what it has beyond Edge x the Fullness asked for, because pieces are whole
}

// Solve fills what follows from the fields given; see [Strip]. It fails where
// [Strip.Plan] does, and then returns s as it is.
func (s Strip) Solve() (Strip, error) {
	p, err := s.Plan()
	if err != nil {
		return s, err
	}
	return p.Spec, nil
}

// Plan works out the strip. The faults are [fault.Faults]; a fullness below 1
// is one, since a strip shorter than its edge cannot be gathered onto it.
func (s Strip) Plan() (StripPlan, error) {
	var a fault.Audit
	both := !s.Edge.IsZero() && !s.Fullness.IsZero()
	whole := s.Strip.Pieces != 0 && !s.Strip.Each.IsZero()
	st := s.Strip
	derived := both && !whole && st.Least.IsZero()
	if derived {
		// In magnitude, so that a wrong sign is told once, in its own field.
		st.Least = s.Edge.Abs().Scale(s.Fullness.Abs())
	}
	sp, err := st.Plan()
	faults := fault.Under("strip", err)
	for _, f := range faults {
		if derived && f.Path == "strip.least" {
			f.Path, f.Got = "edge", s.Edge.String()+" at a fullness of "+s.Fullness.String()
		}
	}
	a.Include("", faults.OrNil())
	s.check(&a, whole || !s.Strip.Least.IsZero())
	switch {
	case a.Failed():
	case s.Butted && !s.Strip.Allowance.IsZero():
		a.Fault("strip.allowance", s.Strip.Allowance.String(), "none where butted", fault.Unused)
	case !s.Butted && s.Strip.Allowance.IsZero() && sp.Joins > 0:
		a.Fault("strip.allowance", "", "more than 0 in, or butted ("+strconv.Itoa(sp.Joins)+" to join)", fault.Missing)
	}
	if a.Failed() {
		return StripPlan{}, a.Err()
	}

	s.Strip = sp.Spec
	p := StripPlan{Strip: sp}
	if s.Edge.IsZero() {
		s.Edge = sp.Sewn.Unscale(s.Fullness)
	}
	p.Edge, p.Fullness = s.Edge, sp.Sewn.Div(s.Edge)
	switch {
	case s.Fullness.IsZero():
		fault.AtMost(&a, "edge", s.Edge, sp.Sewn, "the strip as sewn", fault.Range)
		s.Fullness = p.Fullness
	case both:
		want := s.Edge.Scale(s.Fullness)
		p.Surplus = sp.Sewn.Sub(want)
		if !p.Surplus.IsZero() && s.Strip.Least != want {
			a.Fault("fullness", s.Fullness.String(), p.Fullness.String()+" (strip "+sp.Sewn.String()+" over edge "+s.Edge.String()+")", fault.Conflict)
		}
	}
	if a.Failed() {
		return StripPlan{}, a.Err()
	}
	p.Spec = s
	return p, nil
}

// check looks at Edge and Fullness. One of them is needed where the strip is
// known by itself, else both.
func (s Strip) check(a *fault.Audit, known bool) {
	switch {
	case s.Edge.Sign() < 0:
		a.NotNegative("edge", s.Edge)
	case !s.Edge.IsZero():
	case !known:
		a.Fault("edge", "", "more than 0 in, or a strip given in full", fault.Missing)
	case s.Fullness.IsZero():
		a.Fault("edge", "", "more than 0 in, or a fullness", fault.Missing)
	}
	switch {
	case s.Fullness.Sign() < 0:
		a.Fault("fullness", s.Fullness.String(), "1 or more", fault.Sign)
	case !s.Fullness.IsZero():
		if s.Fullness.Less(units.RatioOf(1, 1)) {
			a.Fault("fullness", s.Fullness.String(), "1 or more (a strip shorter than its edge is not gathered)", fault.Range)
		}
	case !known:
		a.Fault("fullness", "", "1 or more, or a strip given in full", fault.Missing)
	}
}
