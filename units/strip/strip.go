package strip

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// MaxPieces is the greatest number of pieces in one strip.
const MaxPieces = 10_000

// A Spec is a strip of equal pieces joined end to end by straight seams. Two of
// pieces, each and least are needed; all three may be given, where the pieces make
// least or more.
type Spec struct {
	// Pieces is how many pieces there are, at most 10,000.
	Pieces int `json:"pieces,omitzero"`
	// Each is the length of one piece as cut.
	Each units.Length `json:"each,omitzero"`
	// Allowance is what a join takes from each of its two pieces, 0 in where the ends
	// only meet. May be omitted; the default is 0 in.
	Allowance units.Given[units.Length] `json:"allowance,omitzero"`
	// Ends is what is lost at each open end. May be omitted; the default is 0 in. A
	// ring has no open end.
	Ends units.Length `json:"ends,omitzero" noun:"zero"`
	// Ring says that the last piece is joined to the first.
	Ring bool `json:"ring,omitzero"`
	// Least is the sewn length wanted, from which pieces or each follows. May be omitted
	// where both are given.
	Least units.Length `json:"least,omitzero"`
}

// A Plan is what a strip comes to.
type Plan struct {
	Spec    Spec           `json:"spec,omitzero"`    // as solved
	Assumed []string       `json:"assumed,omitzero"` // allowance, where there are joins and nothing was said of it
	Sewn    units.Length   `json:"sewn,omitzero"`    // length after the joins and the ends: between the seam lines of an open strip, round a ring
	Joins   int            `json:"joins,omitzero"`   // how many joins
	Places  []units.Length `json:"places,omitzero"`  // where each join lies, from the starting seam line; in a ring the last closes it and lies at Sewn
	Lost    units.Length   `json:"lost,omitzero"`    // what the joins and the ends take
	Spare   units.Length   `json:"spare,omitzero"`   // Sewn less Least, where Least was given; never negative
}

// Plan works out the strip. The faults are [fault.Faults].
func (s Spec) Plan() (Plan, error) {
	var a fault.Audit
	s.check(&a)
	if a.Failed() {
		return Plan{}, a.Err()
	}
	given := s.Pieces > 0 && !s.Each.IsZero()
	s = s.fill(&a)
	if a.Failed() {
		return Plan{}, a.Err()
	}
	p := Plan{Spec: s, Joins: s.Pieces - 1}
	if s.Ring {
		p.Joins = s.Pieces
	}
	if s.Allowance.IsZero() && p.Joins > 0 {
		p.Spec.Allowance, p.Assumed = units.Give(units.Length{}), []string{"allowance"}
	}
	p.Lost = s.allowance().MulInt(2 * int64(p.Joins)).Add(s.Ends.MulInt(2))
	p.Sewn = s.Each.MulInt(int64(s.Pieces)).Sub(p.Lost)
	switch {
	case p.Sewn.Sign() <= 0:
		a.Fault("each", s.Each.String(), "more than what the joins and ends take, {0} in all", fault.Range, p.Lost)
	case p.Joins > 0 && !s.Ring && s.Each.Sub(s.allowance()).Cmp(s.Ends) <= 0:
		a.Fault("ends", s.Ends.String(), "less than {0} (where the first join lies)", fault.Range, s.Each.Sub(s.allowance()))
	}
	if !s.Least.IsZero() {
		p.Spare = p.Sewn.Sub(s.Least)
		if given {
			fault.AtMost(&a, "least", s.Least, p.Sewn, "what the pieces given make", fault.Conflict)
		}
	}
	if a.Failed() {
		return Plan{}, a.Err()
	}
	p.Places = p.places()
	return p, nil
}

// check looks at each field by itself, and for what is missing.
func (s Spec) check(a *fault.Audit) {
	least := 1
	if s.Pieces == 0 && s.Each.Sign() != 0 && s.Least.Sign() != 0 {
		least = 0
	}
	a.Count("pieces", s.Pieces, least, MaxPieces)
	if s.Each.Sign() != 0 || s.Least.IsZero() || s.Pieces == 0 {
		a.Need("each", s.Each)
	}
	a.NotNegative("allowance", s.allowance())
	a.NotNegative("ends", s.Ends)
	if s.Ring && !s.Ends.IsZero() {
		a.Fault("ends", s.Ends.String(), "none in a ring, which has no open end", fault.Unused)
	}
	a.NotNegative("least", s.Least)
}

// fill finds Each or Pieces, whichever is not given.
func (s Spec) fill(a *fault.Audit) Spec {
	join := s.allowance().MulInt(2)
	// An open strip of n pieces is n Each - (n-1) join - 2 Ends; a ring n Each - n join.
	fixed := join.Sub(s.Ends.MulInt(2))
	if s.Ring {
		fixed = units.Length{}
	}
	if s.Each.IsZero() {
		net := s.Least.Sub(fixed).DivInt(int64(s.Pieces))
		if net.Sign() <= 0 && s.Pieces > 2 {
			a.Fault("least", s.Least.String(), "more than {0} (what one join takes beyond the ends)", fault.Range, fixed)
			return s
		}
		s.Each = net.Add(join)
		return s
	}
	if s.Pieces == 0 && !s.Ring {
		// One piece has no join, and two have one, whatever more would take.
		whole := s.Each.Sub(s.Ends.MulInt(2))
		switch {
		case whole.Cmp(s.Least) >= 0:
			s.Pieces = 1
			return s
		case s.Each.Sub(s.allowance()).Cmp(s.Ends) > 0 && whole.Add(s.Each).Sub(join).Cmp(s.Least) >= 0:
			s.Pieces = 2
			return s
		}
	}
	net := s.net()
	if net.Sign() <= 0 && (s.Ring || s.Pieces == 0 || s.Pieces > 2) {
		a.Fault("each", s.Each.String(), "more than {0} (what the joins take from a piece between two)", fault.Range, join)
		return s
	}
	if s.Pieces == 0 {
		n, ok := s.Least.Sub(fixed).Div(net).Int(units.Up)
		if !ok || n > MaxPieces {
			a.Fault("least", s.Least.String(), "a length that "+ticket.Of(MaxPieces).String()+" pieces can make", fault.Range)
			return s
		}
		s.Pieces = int(n)
	}
	return s
}

// allowance is what a join takes from each of its pieces.
func (s Spec) allowance() units.Length { return s.Allowance.Or(units.Length{}) }

// net is the length of a piece between two joins.
func (s Spec) net() units.Length { return s.Each.Sub(s.allowance().MulInt(2)) }

// places are where the joins lie.
func (p Plan) places() []units.Length {
	var places []units.Length
	at := units.Length{}
	if !p.Spec.Ring {
		at = p.Spec.allowance().Sub(p.Spec.Ends)
	}
	for range p.Joins {
		at = at.Add(p.Spec.net())
		places = append(places, at)
	}
	return places
}
