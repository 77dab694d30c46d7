package strip

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// MaxPieces is the greatest number of pieces in one strip.
const MaxPieces = 10_000

// A Spec is a strip of equal pieces joined end to end by straight seams. Zero
// means not given. Two of Pieces, Each and Least are needed; all three may be
// given, where the pieces make Least or more.
type Spec struct {
	Pieces    int          `json:"pieces,omitzero"`                // how many pieces, at most MaxPieces
	Each      units.Length `json:"each,omitzero"`                  // length of one piece as cut
	Allowance units.Length `json:"allowance,omitzero" noun:"zero"` // taken from each piece at a join, so a join costs twice this; zero where the ends only meet
	Ends      units.Length `json:"ends,omitzero" noun:"zero"`      // lost at each open end; zero is an answer; must be zero in a ring
	Ring      bool         `json:"ring,omitzero"`                  // the last piece is joined to the first
	Least     units.Length `json:"least,omitzero"`                 // the sewn length wanted, from which Pieces or Each follows
}

// A Plan is what a strip comes to.
type Plan struct {
	Spec    Spec         `json:"spec,omitzero"`    // as solved
	Assumed []string     `json:"assumed,omitzero"` // always empty: a strip has no default
	Sewn    units.Length `json:"sewn,omitzero"`    // length after the joins and the ends: between the seam lines of an open strip, round a ring
	Joins   int          `json:"joins,omitzero"`   // how many joins
	Lost    units.Length `json:"lost,omitzero"`    // what the joins and the ends take
	Spare   units.Length `json:"spare,omitzero"`   // Sewn less Least, where Least was given; never less than zero
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
	p.Lost = s.Allowance.MulInt(2 * int64(p.Joins)).Add(s.Ends.MulInt(2))
	p.Sewn = s.Each.MulInt(int64(s.Pieces)).Sub(p.Lost)
	switch {
	case p.Sewn.Sign() <= 0:
		a.Fault("each", s.Each.String(), "more than what the joins and ends take, "+p.Lost.String()+" in all", fault.Range)
	case p.Joins > 0 && !s.Ring && s.Each.Sub(s.Allowance).Cmp(s.Ends) <= 0:
		a.Fault("ends", s.Ends.String(), "less than "+s.Each.Sub(s.Allowance).String()+" (where the first join lies)", fault.Range)
	}
	if !s.Least.IsZero() {
		p.Spare = p.Sewn.Sub(s.Least)
		if given && p.Spare.Sign() < 0 {
			a.Fault("least", s.Least.String(), "at most "+p.Sewn.String()+" (what the pieces given make)", fault.Conflict)
		}
	}
	if a.Failed() {
		return Plan{}, a.Err()
	}
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
	a.NotNegative("allowance", s.Allowance)
	a.NotNegative("ends", s.Ends)
	if s.Ring && !s.Ends.IsZero() {
		a.Fault("ends", s.Ends.String(), "none in a ring, which has no open end", fault.Unused)
	}
	a.NotNegative("least", s.Least)
}

// fill finds Each or Pieces, whichever is not given.
func (s Spec) fill(a *fault.Audit) Spec {
	join := s.Allowance.MulInt(2)
	// An open strip of n pieces is n Each - (n-1) join - 2 Ends; a ring n Each - n join.
	fixed := join.Sub(s.Ends.MulInt(2))
	if s.Ring {
		fixed = units.Length{}
	}
	if s.Each.IsZero() {
		net := s.Least.Sub(fixed).DivInt(int64(s.Pieces))
		if net.Sign() <= 0 && s.Pieces > 2 {
			a.Fault("least", s.Least.String(), "more than "+fixed.String()+" (what one join takes beyond the ends)", fault.Range)
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
		case s.Each.Sub(s.Allowance).Cmp(s.Ends) > 0 && whole.Add(s.Each).Sub(join).Cmp(s.Least) >= 0:
			s.Pieces = 2
			return s
		}
	}
	net := s.Each.Sub(join)
	if net.Sign() <= 0 && (s.Ring || s.Pieces == 0 || s.Pieces > 2) {
		a.Fault("each", s.Each.String(), "more than "+join.String()+" (what the joins take from a piece between two)", fault.Range)
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

// Join is where join k lies, counted from 1, from the starting seam line of the
// strip as sewn. In a ring the last join closes it and lies at Sewn. It is zero
// for a k that is no join.
func (p Plan) Join(k int) units.Length {
	if k < 1 || k > p.Joins {
		return units.Length{}
	}
	s := p.Spec
	at := s.Each.Sub(s.Allowance.MulInt(2)).MulInt(int64(k))
	if s.Ring {
		return at
	}
	return at.Add(s.Allowance).Sub(s.Ends)
}
