package seam

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// A solver carries the allowance of a seam while that is solved, and what is wrong.
type solver struct {
	*Allowance
	audit        fault.Audit
	upper, under units.Length // what the seam takes from each ply
	derived      string       // the field that follows from what is given, so that it rests on no default
}

// A pointer is a pointer to a seam of one kind, which can be solved in place.
type pointer[S any] interface {
	*S
	plies() *Allowance
	solve(*solver)
}

// plan works out a seam of any kind.
func plan[S Seam, P pointer[S]](s S) (Plan, error) {
	given := s
	v := solver{Allowance: P(&s).plies()}
	v.each(s)
	if v.audit.Failed() {
		return Plan{}, v.audit.Err()
	}
	v.fill(noun.Tape(s))
	P(&s).solve(&v)
	v.enough("cut", v.Cut, v.Drafted, v.upper)
	v.enough("cutUnder", v.CutUnder, v.DraftedUnder, v.under)
	assumed := slices.DeleteFunc(noun.Assumed(given, s), func(key string) bool { return key == v.derived })
	p := Plan{
		Spec: Any{s}, Assumed: assumed,
		Upper: Side{Drafted: v.Drafted, Cut: v.Cut, Taken: v.upper, Drift: v.Cut.Sub(v.upper), Left: v.upper, TrimMin: v.upper, TrimMax: v.upper},
		Under: Side{Drafted: v.DraftedUnder, Cut: v.CutUnder, Taken: v.under, Drift: v.CutUnder.Sub(v.under), Left: v.under, TrimMin: v.under, TrimMax: v.under},
	}
	if v.audit.Failed() {
		return Plan{}, fault.InOrder(v.audit.Err(p.Assumed...), noun.Keys(s))
	}
	p.Gain = p.Upper.Drift.Add(p.Under.Drift)
	p.Piece = swatch.on(v.Tape).Max(v.upper.Max(v.under).MulInt(4))
	p.Across = p.Piece.MulInt(2).Sub(v.upper).Sub(v.under)
	s.answer(&p)
	units.Settle(&p.Turn, &p.TurnUnder)
	for i := range p.Strips {
		units.Settle(&p.Strips[i].Width)
	}
	return p, nil
}

// each looks at every field of a seam by itself.
func (v *solver) each(s Seam) {
	for key, value := range noun.Values(s) {
		switch x := value.(type) {
		case units.Length:
			v.audit.NotNegative(key, x)
		case int:
			if x != 0 {
				v.audit.Count(key, x, 2, MaxLayers)
			}
		case units.Tape:
			x.Check(&v.audit, key)
		case Finish:
			if x != 0 {
				finishes.Check(&v.audit, key, x)
			}
		}
	}
}

// taking is the first of the seams that takes so much from each ply.
func taking(each units.Length, tries ...Seam) (Seam, bool) {
	for _, s := range tries {
		if p, err := s.Plan(); err == nil && p.Upper.Taken == each && p.Under.Taken == each {
			return s, true
		}
	}
	return nil, false
}

// row fills the row that makes a seam, which is by default sewn at the allowance cut. It
// reports whether there is one.
func (v *solver) row(first *units.Length) bool {
	if v.Cut == v.CutUnder {
		fill(first, v.Cut)
	}
	if first.IsZero() {
		v.missing("first")
	}
	v.upper, v.under = *first, *first
	return !first.IsZero()
}

// missing is the fault of unequal plies about which nothing more is said.
func (v *solver) missing(path string) {
	v.audit.Fault(path, "", "what is taken, since the plies are cut with {0} and {1}", fault.Missing, v.Cut, v.CutUnder)
}

// enough refuses to take more than was cut on purpose.
func (v *solver) enough(path string, cut, drafted, take units.Length) {
	if cut != drafted {
		fault.AtLeast(&v.audit, path, cut, take, "what the seam takes", fault.Range)
	}
}

// trimmed fills what is left of the allowance, and holds it between the least that the
// cloth allows and the first row.
func (v *solver) trimmed(trim *units.Length, first, usual units.Length) {
	fill(trim, usual.Min(first))
	v.holds("trim", *trim, first)
}

// holds refuses a trim that is wider than the first row or frays away.
func (v *solver) holds(path string, trim, first units.Length) {
	why := "cloth that holds"
	if v.Fraying {
		why = "cloth that frays"
	}
	fault.AtMost(&v.audit, path, trim, first, "first", fault.Range)
	if trim.Less(first) {
		fault.AtLeast(&v.audit, path, trim, leastAccepted(v.Fraying), why, fault.Range)
	}
}

// hides refuses a trimmed edge that what lies over it does not hide.
func (v *solver) hides(trim, over units.Length, name string) {
	if !trim.Less(over) {
		v.audit.Fault("trim", trim.String(), "less than {0} ("+name+")", ErrHidden, over)
	}
}

// inside is the usual width of a trimmed edge, or half of what lies over it where that
// would not hide it.
func inside(usual, over units.Length) units.Length {
	if over.Sign() > 0 && !usual.Less(over) {
		return over.DivInt(2)
	}
	return usual
}

// follows finds what follows from what is given where whole = n times width + turned; of
// is the name of the whole, which it fills.
func (v *solver) follows(whole *units.Length, width units.Length, n int64, turned units.Length, of string) {
	switch {
	case whole.IsZero() && !width.IsZero() && !turned.IsZero():
		*whole, v.derived = width.MulInt(n).Add(turned), of
	case !whole.IsZero() && width.IsZero() && !turned.IsZero():
		v.derived = "width"
	case !whole.IsZero() && !width.IsZero() && turned.IsZero():
		v.derived = "turned"
	}
}

// fold solves whole = width + turned, where one at least is given or filled; of is the
// name of the whole. It refuses a turned edge that is nothing, or that reaches past the
// seam.
func (v *solver) fold(width, turned *units.Length, whole units.Length, of string) {
	path, value := "width", *width
	switch {
	case width.IsZero():
		path, value = "turned", *turned
		*width = whole.Sub(*turned)
	case turned.IsZero():
		*turned = whole.Sub(*width)
	case width.Add(*turned) != whole:
		v.audit.Fault("turned", turned.String(), "{0} ("+of+" less width)", fault.Conflict, whole.Sub(*width))
		return
	}
	half := whole.DivInt(2)
	switch {
	case turned.Sign() <= 0:
		v.audit.Fault(path, value.String(), "less than {0} ("+of+"), to leave an edge to turn in", ErrHidden, whole)
	case width.Less(*turned) && path == "turned":
		v.audit.Fault(path, value.String(), "at most {0} (half of "+of+")", ErrFlat, half)
	case width.Less(*turned):
		v.audit.Fault(path, value.String(), "at least {0} (half of "+of+"), or "+of+" trimmed to {1} at most", ErrFlat, half, value.MulInt(2))
	}
}

// thin refuses cloth so thick that of the room for it a fold takes all: gone, which is a
// multiple of the thickness.
func (v *solver) thin(gone units.Near, room units.Length, why string) {
	if v.Thickness.IsZero() || room.Sign() <= 0 {
		return
	}
	over, err := gone.Cmp(units.Exactly(room))
	if err == nil && over < 0 {
		return
	}
	if most, e := gone.Under(room); err == nil && e == nil {
		v.audit.Fault("thickness", v.Thickness.String(), "less than {0} ("+why+")", fault.Range, most.Of(v.Thickness))
		return
	}
	v.audit.Fault("thickness", v.Thickness.String(), "an amount of fewer places", fault.KindOf(err))
}

// least is the narrowest trim of the cloth, or the first row or the trim given where that
// is narrower still.
func (a Allowance) least(first, trim units.Length) units.Length {
	low := a.leastTrim().Min(first)
	if !trim.IsZero() {
		low = low.Min(trim)
	}
	return low
}
