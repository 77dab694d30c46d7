package strip

import (
	"fmt"
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// MaxCorners is the greatest number of corners of a [Binding].
const MaxCorners = 10_000

// A Binding is a strip joined of equal pieces, straight or on the slant, that is
// laid along an edge and round its corners: a bias binding, a piping, a flat trim.
// Two of pieces, each and edge are needed; all three may be given, where the pieces
// make enough. Lengths of the strip are measured along its middle.
type Binding struct {
	// Joint is how the pieces are joined.
	Joint Joint `json:"joint,omitzero"`
	// Pieces is how many pieces there are, at most 10,000.
	Pieces int `json:"pieces,omitzero"`
	// Each is the length of one piece as cut; with slanted ends along one long edge, from
	// point to point.
	Each units.Length `json:"each,omitzero"`
	// Width is the width of the strip as cut. Crossed joins need it; others do not read it.
	Width units.Length `json:"width,omitzero"`
	// Allowance is the distance from the raw end to the join, square to the join. May be
	// omitted; the default is 0 in: the ends only meet, or a crossed join is not trimmed.
	Allowance units.Length `json:"allowance,omitzero" noun:"zero"`
	// Ends is what is lost at each open end, along the strip. May be omitted; the default
	// is 0 in. A ring has no open end.
	Ends units.Length `json:"ends,omitzero" noun:"zero"`
	// Ring says that the last piece is joined to the first.
	Ring bool `json:"ring,omitzero"`
	// Edge is the length of the edge that is bound, all the way round its corners, from
	// which pieces or each follows. May be omitted where both are given.
	Edge units.Length `json:"edge,omitzero"`
	// Corners is how many outward corners the edge has; at each the strip is folded to a
	// mitre. May be omitted; the default is 0.
	Corners int `json:"corners,omitzero" noun:"zero"`
	// Mitre is what the fold takes at each corner beyond the edge. May be omitted; the
	// default is 0 in: the fold lies flush with the raw edge.
	Mitre units.Length `json:"mitre,omitzero" noun:"zero"`
	// Over is how much longer than the edge the strip is, to join its ends by. May be
	// omitted; the default is 0 in.
	Over units.Length `json:"over,omitzero" noun:"zero"`
	// Step is the mark that each goes up to where it follows. It is needed where each
	// follows from slanted joins and is no length of a tape; it has no default.
	Step units.Length `json:"step,omitzero"`
}

// A BindingPlan is what a binding comes to.
type BindingPlan struct {
	Spec    Binding      `json:"spec,omitzero"`    // as solved
	PerJoin units.Near   `json:"perJoin,omitzero"` // what one join takes along the strip
	Joins   int          `json:"joins,omitzero"`   // how many joins
	Places  []units.Near `json:"places,omitzero"`  // where the middle of each join lies, along the middle of the strip from its start; in a ring the last closes it and lies at Sewn
	Lost    units.Near   `json:"lost,omitzero"`    // what the joins and the ends take
	Sewn    units.Near   `json:"sewn,omitzero"`    // length after the joins and the ends
	Wanted  units.Length `json:"wanted,omitzero"`  // Edge, the mitres and Over; zero if Edge is not given
	Spare   units.Near   `json:"spare,omitzero"`   // Sewn less Wanted, where Edge was given; never negative
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
	p.Places = p.places()
	units.Settle(&p.PerJoin, &p.Lost, &p.Sewn, &p.Spare)
	return p, nil
}

// check looks at each field by itself, and for what is missing.
func (s Binding) check(a *fault.Audit) {
	joints.Check(a, "joint", s.Joint)
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
		most := s.limit(units.Diagonal().Of(s.Width.DivInt(2)), units.Down)
		a.Fault("allowance", s.Allowance.String(), "at most {0} (what stands beyond the join, by width)", fault.Range, most)
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
		a.Fault("step", s.Step.String(), "a mark that {0} (each) lies on", fault.Conflict, s.Each)
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

// sewn is the length of a number of pieces after the joins and the ends.
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
		a.Fault("step", "", "a mark to which each goes up, from {0}", fault.Missing, s.limit(one, units.Down))
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
		a.Fault("each", s.Each.String(), "more than {0} (what the joins take from a piece between two)", fault.Range, s.limit(taken, units.Up))
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
		a.Fault("each", s.Each.String(), "more than {0} (what the joins take from one piece)", fault.Range, s.limit(taken, units.Up))
	case p.reaches(a, p.Lost, s.Each.MulInt(int64(s.Pieces))):
		a.Fault("each", s.Each.String(), "more than {0} (what the joins and ends take from each)", fault.Range, s.limit(p.Lost.DivInt(int64(s.Pieces)), units.Up))
	case !ends.IsZero() && p.reaches(a, p.side(), s.Each.Sub(ends)):
		a.Fault("ends", s.Ends.String(), "less than {0} (where the first join lies)", fault.Range, s.limit(p.side().Neg().Plus(s.Each), units.Down))
	}
	if !s.Edge.IsZero() && p.less(a, p.Sewn, p.Wanted) {
		most := p.Sewn.Plus(s.Edge.Sub(p.Wanted)) // less the mitres and Over
		a.Fault("edge", s.Edge.String(), "at most {0} (what the pieces given bind)", fault.Conflict, s.limit(most, units.Down))
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

// limit is n as a limit names it, rounded to a mark of the tape on the side that
// satisfies it.
func (s Binding) limit(n units.Near, m units.Mode) fmt.Stringer {
	if l, ok := n.Exact(); ok {
		return l
	}
	mark, _, err := n.Round(noun.Tape(s).Of(units.Inch.Frac(1, 32), units.Millimetre.Frac(1, 2)), m)
	if err != nil || mark.IsZero() {
		return n
	}
	return mark
}

// places are where the joins lie.
func (p BindingPlan) places() []units.Near {
	var places []units.Near
	for k := range p.Joins {
		n := int64(k + 1)
		at := p.PerJoin.MulInt(n).Neg().Plus(p.Spec.Each.MulInt(n))
		if !p.Spec.Ring {
			at = at.Add(p.PerJoin.DivInt(2)).Plus(p.Spec.Ends.Neg())
		}
		places = append(places, at.Settled())
	}
	return places
}
