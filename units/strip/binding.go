package strip

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// MaxCorners is the greatest number of corners of a [Binding].
const MaxCorners = 10_000

// A Binding is a strip joined of equal pieces, straight or on the slant, that is
// laid along an edge and round its corners: a bias binding, a piping, a flat trim.
// Zero means not given. Two of Pieces, Each and Edge are needed; all three may be
// given, where the pieces make enough. Lengths of the strip are measured along its
// middle.
type Binding struct {
	Joint     Joint        // how the pieces are joined
	Pieces    int          // how many pieces, at most MaxPieces
	Each      units.Length // length of one piece as cut; with slanted ends along one long edge, from point to point
	Width     units.Length // width of the strip as cut; read for crossed joints only, which need it
	Allowance units.Length // from the raw end to the join, square to the join; zero is an answer: the ends only meet, or a crossed join is not trimmed
	Ends      units.Length // lost at each open end, along the strip; zero is an answer; must be zero in a ring
	Ring      bool         // the last piece is joined to the first
	Edge      units.Length // length of the edge that is bound, all the way round its corners, from which Pieces or Each follows
	Corners   int          // outward corners of the edge, at each of which the strip is folded to a mitre; zero is an answer
	Mitre     units.Length // what the fold takes at each corner beyond the edge; zero is an answer: the fold lies flush with the raw edge
	Over      units.Length // what the strip shall be longer, to join its ends by; zero is an answer
	Step      units.Length // the mark that Each goes up to where it follows; needed where it follows from slanted joins and is no length of a tape; no default
}

// A BindingPlan is what a binding comes to.
type BindingPlan struct {
	Spec    Binding       // as solved
	Assumed ticket.Fields // always empty: a binding has no default
	PerJoin units.Near    // what one join takes along the strip
	Joins   int           // how many joins
	Lost    units.Near    // what the joins and the ends take
	Sewn    units.Near    // length after the joins and the ends
	Wanted  units.Length  // Edge, the mitres and Over; zero if Edge is not given
	Spare   units.Near    // Sewn less Wanted, where Edge was given; never less than zero
}

// Solve fills Pieces from Each and Edge, rounding up to whole pieces, or Each from
// Pieces and Edge, exactly or up to Step. It fails where [Binding.Plan] does, and
// then returns s as it is.
func (s Binding) Solve() (Binding, error) {
	p, err := s.Plan()
	if err != nil {
		return s, err
	}
	return p.Spec, nil
}

// Plan works out the binding. The faults are [ticket.Faults]; one is
// [units.ErrBound] where lengths of thousands of digits cannot be told apart.
func (s Binding) Plan() (BindingPlan, error) {
	var a ticket.Audit
	if s.check(&a); a.Failed() {
		return BindingPlan{}, a.Err()
	}
	p := BindingPlan{Spec: s, PerJoin: s.perJoin()}
	if !s.Edge.IsZero() {
		p.Wanted = s.Edge.Add(s.Mitre.MulInt(int64(s.Corners))).Add(s.Over)
	}
	switch {
	case s.Each.IsZero():
		p.Spec.Each = p.each(&a)
	case s.Pieces == 0:
		p.Spec.Pieces = p.pieces(&a)
	}
	if a.Failed() {
		return BindingPlan{}, a.Err()
	}
	p.Joins = p.joins(p.Spec.Pieces)
	p.Sewn = p.sewn(p.Spec.Pieces)
	p.Lost = p.PerJoin.MulInt(int64(p.Joins)).Plus(s.Ends.MulInt(2))
	if !s.Edge.IsZero() {
		p.Spare = p.Sewn.Plus(p.Wanted.Neg())
	}
	if p.audit(&a); a.Failed() {
		return BindingPlan{}, a.Err()
	}
	return p, nil
}

// check looks at each field by itself, and for what is missing.
func (s Binding) check(a *ticket.Audit) {
	if !s.Joint.Valid() {
		err := ticket.ErrUnknown
		if s.Joint == NoJoint {
			err = ticket.ErrMissing
		}
		a.Fault("Joint", s.Joint.String(), "straight, slanted or crossed", err)
	}
	each, edge := !s.Each.IsZero(), !s.Edge.IsZero()
	if s.Pieces != 0 || !each || !edge {
		a.Count("Pieces", s.Pieces, 1, MaxPieces)
	}
	if each || !edge || s.Pieces == 0 {
		a.Need("Each", s.Each)
	}
	if s.Joint == Crossed {
		a.Need("Width", s.Width)
	} else if !s.Width.IsZero() {
		a.Unused("Width", s.Width, false, s.Joint)
	}
	a.NotNegative("Allowance", s.Allowance)
	// What a crossed join is trimmed off is a triangle as high as half its base.
	if s.Joint == Crossed && s.Width.Sign() > 0 && s.Width.Times(s.Width).Cmp(s.Allowance.Times(s.Allowance).MulInt(2)) < 0 {
		most := below(units.Diagonal().Of(s.Width.DivInt(2)))
		a.Fault("Allowance", s.Allowance.String(), "at most "+most+" (what stands beyond the join, by Width)", ticket.ErrRange)
	}
	a.NotNegative("Ends", s.Ends)
	if s.Ring && !s.Ends.IsZero() {
		a.Fault("Ends", s.Ends.String(), "none in a ring, which has no open end", ticket.ErrUnused)
	}
	a.NotNegative("Edge", s.Edge)
	if s.Corners != 0 {
		a.Count("Corners", s.Corners, 1, MaxCorners)
	}
	a.NotNegative("Mitre", s.Mitre)
	a.NotNegative("Over", s.Over)
	if s.Corners > 0 && !edge {
		a.Fault("Corners", strconv.Itoa(s.Corners), "none without Edge", ticket.ErrUnused)
	}
	if s.Mitre.Sign() > 0 && s.Corners == 0 {
		a.Fault("Mitre", s.Mitre.String(), "none without Corners", ticket.ErrUnused)
	}
	if s.Over.Sign() > 0 && !edge {
		a.Fault("Over", s.Over.String(), "none without Edge", ticket.ErrUnused)
	}
	a.NotNegative("Step", s.Step)
	if s.Step.Sign() > 0 && each && !s.Each.IsMultiple(s.Step) {
		a.Fault("Step", s.Step.String(), "a mark that "+s.Each.String()+" (Each) lies on", ticket.ErrConflict)
	}
}

// perJoin is what one join takes along the strip.
func (s Binding) perJoin() units.Near {
	switch both := s.Allowance.MulInt(2); s.Joint {
	case Crossed:
		return units.Exactly(s.Width)
	case Slanted:
		return units.Diagonal().Of(both)
	default:
		return units.Exactly(both)
	}
}

func (p BindingPlan) joins(pieces int) int {
	if p.Spec.Ring {
		return pieces
	}
	return pieces - 1
}

// sewn is the length of so many pieces after the joins and the ends.
func (p BindingPlan) sewn(pieces int) units.Near {
	whole := p.Spec.Each.MulInt(int64(pieces)).Sub(p.Spec.Ends.MulInt(2))
	return p.PerJoin.MulInt(int64(p.joins(pieces))).Neg().Plus(whole)
}

// less reports whether n is shorter than l, and reaches whether it is not. Where
// that cannot be told it is a fault, and neither holds.
func (p BindingPlan) less(a *ticket.Audit, n units.Near, l units.Length) bool {
	return p.compare(a, n, l) < 0
}

func (p BindingPlan) reaches(a *ticket.Audit, n units.Near, l units.Length) bool {
	return p.compare(a, n, l) >= 0 && !a.Failed()
}

func (p BindingPlan) compare(a *ticket.Audit, n units.Near, l units.Length) int {
	c, err := n.Cmp(units.Exactly(l))
	if err != nil && !a.Failed() {
		a.Fault("Allowance", p.Spec.Allowance.String(), "fewer digits", err)
	}
	return c
}

// each is the length of a piece that makes what is wanted.
func (p BindingPlan) each(a *ticket.Audit) units.Length {
	s := p.Spec
	all := p.PerJoin.MulInt(int64(p.joins(s.Pieces))).Plus(p.Wanted.Add(s.Ends.MulInt(2)))
	one := all.DivInt(int64(s.Pieces))
	l, exact := one.Exact()
	switch {
	case s.Step.IsZero() && exact:
		return l
	case s.Step.IsZero():
		a.Fault("Step", "", "a mark to which Each goes up, from "+ticket.About(one).Text(), ticket.ErrMissing)
		return l
	}
	mark, _, err := one.Round(s.Step, units.Up)
	if err != nil {
		a.Fault("Step", s.Step.String(), "a mark that can be decided", err)
	}
	return mark
}

// pieces is the least number that makes what is wanted.
func (p BindingPlan) pieces(a *ticket.Audit) int {
	s := p.Spec
	if !s.Ring && p.reaches(a, p.sewn(1), p.Wanted) {
		return 1 // no join, whatever one would take
	}
	// Of two pieces each has one join, between whose ends something is left.
	if !s.Ring && p.less(a, p.side(), s.Each.Sub(s.Ends)) && p.reaches(a, p.sewn(2), p.Wanted) {
		return 2
	}
	if taken := p.side().MulInt(2); p.reaches(a, taken, s.Each) {
		a.Fault("Each", s.Each.String(), moreThan(taken, "what the joins take from a piece between two"), ticket.ErrRange)
		return 1
	}
	if p.less(a, p.sewn(MaxPieces), p.Wanted) {
		a.Fault("Edge", s.Edge.String(), "an edge that "+strconv.Itoa(MaxPieces)+" pieces can bind", ticket.ErrRange)
		return 1
	}
	low, high := 1, MaxPieces
	for low < high {
		if mid := (low + high) / 2; p.less(a, p.sewn(mid), p.Wanted) {
			low = mid + 1
		} else {
			high = mid
		}
	}
	return low
}

// audit holds the plan to what cloth can do.
func (p BindingPlan) audit(a *ticket.Audit) {
	s := p.Spec
	sides := int64(min(2, p.Joins))
	if s.Ring {
		sides = 2
	}
	ends := units.Length{}
	if p.Joins > 0 && !s.Ring {
		ends = s.Ends
	}
	taken := p.side().MulInt(sides)
	switch {
	case sides > 0 && p.reaches(a, taken, s.Each):
		a.Fault("Each", s.Each.String(), moreThan(taken, "what the joins take from one piece"), ticket.ErrRange)
	case p.reaches(a, p.Lost, s.Each.MulInt(int64(s.Pieces))):
		a.Fault("Each", s.Each.String(), moreThan(p.Lost.DivInt(int64(s.Pieces)), "what the joins and ends take from each"), ticket.ErrRange)
	case !ends.IsZero() && p.reaches(a, p.side(), s.Each.Sub(ends)):
		a.Fault("Ends", s.Ends.String(), "less than "+below(p.side().Neg().Plus(s.Each))+" (where the first join lies)", ticket.ErrRange)
	}
	if !s.Edge.IsZero() && p.less(a, p.Sewn, p.Wanted) {
		most := p.Sewn.Plus(s.Edge.Sub(p.Wanted)) // less the mitres and Over
		a.Fault("Edge", s.Edge.String(), "at most "+below(most)+" (what the pieces given bind)", ticket.ErrConflict)
	}
}

// side is what one join takes from one end of a piece: half of it at the middle of
// the strip, but of a crossed join the whole of it at one edge.
func (p BindingPlan) side() units.Near {
	if p.Spec.Joint == Crossed {
		return p.PerJoin
	}
	return p.PerJoin.DivInt(2)
}

// moreThan is a limit that a length must pass, and why.
func moreThan(n units.Near, why string) string {
	return "more than " + limit(n, units.Up) + " (" + why + ")"
}

// below is the text of a limit that a length must not pass.
func below(n units.Near) string { return limit(n, units.Down) }

// limit is the text of n, rounded to a mark on the side that satisfies it.
func limit(n units.Near, m units.Mode) string {
	if l, ok := n.Exact(); ok {
		return l.String()
	}
	mark, _, err := n.Round(units.Inch.Frac(1, 32), m)
	if err != nil || mark.IsZero() {
		return n.String()
	}
	return mark.String()
}

// Join is where the middle of join k lies, counted from 1, along the middle of the
// strip from its start. In a ring the last join closes it and lies at Sewn. It is
// zero for a k that is no join.
func (p BindingPlan) Join(k int) units.Near {
	if k < 1 || k > p.Joins {
		return units.Near{}
	}
	at := p.PerJoin.MulInt(int64(k)).Neg().Plus(p.Spec.Each.MulInt(int64(k)))
	if p.Spec.Ring {
		return at
	}
	return at.Add(p.PerJoin.DivInt(2)).Plus(p.Spec.Ends.Neg())
}
