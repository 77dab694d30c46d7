package strip

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
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
	Joint     Joint        `json:"joint,omitzero"`                 // how the pieces are joined
	Pieces    int          `json:"pieces,omitzero"`                // how many pieces, at most MaxPieces
	Each      units.Length `json:"each,omitzero"`                  // length of one piece as cut; with slanted ends along one long edge, from point to point
	Width     units.Length `json:"width,omitzero"`                 // width of the strip as cut; read for crossed joints only, which need it
	Allowance units.Length `json:"allowance,omitzero" noun:"zero"` // from the raw end to the join, square to the join; zero is an answer: the ends only meet, or a crossed join is not trimmed
	Ends      units.Length `json:"ends,omitzero" noun:"zero"`      // lost at each open end, along the strip; zero is an answer; must be zero in a ring
	Ring      bool         `json:"ring,omitzero"`                  // the last piece is joined to the first
	Edge      units.Length `json:"edge,omitzero"`                  // length of the edge that is bound, all the way round its corners, from which Pieces or Each follows
	Corners   int          `json:"corners,omitzero" noun:"zero"`   // outward corners of the edge, at each of which the strip is folded to a mitre; zero is an answer
	Mitre     units.Length `json:"mitre,omitzero" noun:"zero"`     // what the fold takes at each corner beyond the edge; zero is an answer: the fold lies flush with the raw edge
	Over      units.Length `json:"over,omitzero" noun:"zero"`      // what the strip shall be longer, to join its ends by; zero is an answer
	Step      units.Length `json:"step,omitzero"`                  // the mark that Each goes up to where it follows; needed where it follows from slanted joins and is no length of a tape; no default
}

// A BindingPlan is what a binding comes to.
type BindingPlan struct {
	Spec    Binding      `json:"spec,omitzero"`    // as solved
	Assumed []string     `json:"assumed,omitzero"` // always empty: a binding has no default
	PerJoin units.Near   `json:"perJoin,omitzero"` // what one join takes along the strip
	Joins   int          `json:"joins,omitzero"`   // how many joins
	Lost    units.Near   `json:"lost,omitzero"`    // what the joins and the ends take
	Sewn    units.Near   `json:"sewn,omitzero"`    // length after the joins and the ends
	Wanted  units.Length `json:"wanted,omitzero"`  // Edge, the mitres and Over; zero if Edge is not given
	Spare   units.Near   `json:"spare,omitzero"`   // Sewn less Wanted, where Edge was given; never less than zero
}

// Plan works out the binding. The faults are [fault.Faults]; one is
// [units.ErrBound] where lengths of thousands of digits cannot be told apart.
func (s Binding) Plan() (BindingPlan, error) {
	var a fault.Audit
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
	units.Settle(&p.PerJoin, &p.Lost, &p.Sewn, &p.Spare)
	return p, nil
}

// check looks at each field by itself, and for what is missing.
func (s Binding) check(a *fault.Audit) {
	if !s.Joint.Valid() {
		err := fault.Unknown
		if s.Joint == NoJoint {
			err = fault.Missing
		}
		a.Fault("joint", s.Joint.String(), "straight, slanted or crossed", err)
	}
	each, edge := !s.Each.IsZero(), !s.Edge.IsZero()
	if s.Pieces != 0 || !each || !edge {
		a.Count("pieces", s.Pieces, 1, MaxPieces)
	}
	if each || !edge || s.Pieces == 0 {
		a.Need("each", s.Each)
	}
	if s.Joint == Crossed {
		a.Need("width", s.Width)
	} else if !s.Width.IsZero() {
		a.Unused("width", s.Width, false, s.Joint)
	}
	a.NotNegative("allowance", s.Allowance)
	// What a crossed join is trimmed off is a triangle as high as half its base.
	if s.Joint == Crossed && s.Width.Sign() > 0 && s.Width.Times(s.Width).Cmp(s.Allowance.Times(s.Allowance).MulInt(2)) < 0 {
		most := below(units.Diagonal().Of(s.Width.DivInt(2)))
		a.Fault("allowance", s.Allowance.String(), "at most "+most+" (what stands beyond the join, by width)", fault.Range)
	}
	a.NotNegative("ends", s.Ends)
	if s.Ring && !s.Ends.IsZero() {
		a.Fault("ends", s.Ends.String(), "none in a ring, which has no open end", fault.Unused)
	}
	a.NotNegative("edge", s.Edge)
	if s.Corners != 0 {
		a.Count("corners", s.Corners, 1, MaxCorners)
	}
	a.NotNegative("mitre", s.Mitre)
	a.NotNegative("over", s.Over)
	if s.Corners > 0 && !edge {
		a.Fault("corners", strconv.Itoa(s.Corners), "none without edge", fault.Unused)
	}
	if s.Mitre.Sign() > 0 && s.Corners == 0 {
		a.Fault("mitre", s.Mitre.String(), "none without corners", fault.Unused)
	}
	if s.Over.Sign() > 0 && !edge {
		a.Fault("over", s.Over.String(), "none without edge", fault.Unused)
	}
	a.NotNegative("step", s.Step)
	if s.Step.Sign() > 0 && each && !s.Each.IsMultiple(s.Step) {
		a.Fault("step", s.Step.String(), "a mark that "+s.Each.String()+" (each) lies on", fault.Conflict)
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
func (p BindingPlan) less(a *fault.Audit, n units.Near, l units.Length) bool {
	return p.compare(a, n, l) < 0
}

func (p BindingPlan) reaches(a *fault.Audit, n units.Near, l units.Length) bool {
	return p.compare(a, n, l) >= 0 && !a.Failed()
}

func (p BindingPlan) compare(a *fault.Audit, n units.Near, l units.Length) int {
	c, err := n.Cmp(units.Exactly(l))
	if err != nil && !a.Failed() {
		a.Fault("allowance", p.Spec.Allowance.String(), "fewer digits", fault.KindOf(err))
	}
	return c
}

// each is the length of a piece that makes what is wanted.
func (p BindingPlan) each(a *fault.Audit) units.Length {
	s := p.Spec
	all := p.PerJoin.MulInt(int64(p.joins(s.Pieces))).Plus(p.Wanted.Add(s.Ends.MulInt(2)))
	one := all.DivInt(int64(s.Pieces))
	l, exact := one.Exact()
	switch {
	case s.Step.IsZero() && exact:
		return l
	case s.Step.IsZero():
		a.Fault("step", "", "a mark to which each goes up, from "+ticket.About(one).Text(), fault.Missing)
		return l
	}
	mark, _, err := one.Round(s.Step, units.Up)
	if err != nil {
		a.Fault("step", s.Step.String(), "a mark that can be decided", fault.KindOf(err))
	}
	return mark
}

// pieces is the least number that makes what is wanted.
func (p BindingPlan) pieces(a *fault.Audit) int {
	s := p.Spec
	if !s.Ring && p.reaches(a, p.sewn(1), p.Wanted) {
		return 1 // no join, whatever one would take
	}
	// Of two pieces each has one join, between whose ends something is left.
	if !s.Ring && p.less(a, p.side(), s.Each.Sub(s.Ends)) && p.reaches(a, p.sewn(2), p.Wanted) {
		return 2
	}
	if taken := p.side().MulInt(2); p.reaches(a, taken, s.Each) {
		a.Fault("each", s.Each.String(), moreThan(taken, "what the joins take from a piece between two"), fault.Range)
		return 1
	}
	if p.less(a, p.sewn(MaxPieces), p.Wanted) {
		a.Fault("edge", s.Edge.String(), "an edge that "+strconv.Itoa(MaxPieces)+" pieces can bind", fault.Range)
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
func (p BindingPlan) audit(a *fault.Audit) {
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
		a.Fault("each", s.Each.String(), moreThan(taken, "what the joins take from one piece"), fault.Range)
	case p.reaches(a, p.Lost, s.Each.MulInt(int64(s.Pieces))):
		a.Fault("each", s.Each.String(), moreThan(p.Lost.DivInt(int64(s.Pieces)), "what the joins and ends take from each"), fault.Range)
	case !ends.IsZero() && p.reaches(a, p.side(), s.Each.Sub(ends)):
		a.Fault("ends", s.Ends.String(), "less than "+below(p.side().Neg().Plus(s.Each))+" (where the first join lies)", fault.Range)
	}
	if !s.Edge.IsZero() && p.less(a, p.Sewn, p.Wanted) {
		most := p.Sewn.Plus(s.Edge.Sub(p.Wanted)) // less the mitres and Over
		a.Fault("edge", s.Edge.String(), "at most "+below(most)+" (what the pieces given bind)", fault.Conflict)
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
