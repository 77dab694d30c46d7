package buttons

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// A RowPlan is where the buttons of a [Row] go. It is comparable.
type RowPlan struct {
	Spec    Row      `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // the fields filled with a default

	Span units.Length `json:"span,omitzero"` // from the first place to the last; zero for a single button
	Gap  units.Length `json:"gap,omitzero"`  // from one exact place to the next; zero for a single button

	WorstMark units.Length `json:"worstMark,omitzero"` // the most that a mark lies off its exact place
	WorstGap  units.Length `json:"worstGap,omitzero"`  // the most that the gap between two marks is off Gap

	// What becomes of the last button when Gap is first read to a mark and then
	// laid one after another from the first place: how far it ends beyond Last,
	// short if negative. The marks of this plan are not made so.
	Creep     units.Length `json:"creep,omitzero"`     // with the mark nearest to Gap
	CreepDown units.Length `json:"creepDown,omitzero"` // with the mark at or below Gap
	CreepUp   units.Length `json:"creepUp,omitzero"`   // with the mark at or above Gap

	Fewest int `json:"fewest,omitzero"` // the fewest buttons that MinGap, MaxGap and Have allow; zero without such limits
	Most   int `json:"most,omitzero"`   // the most of them, at most [MaxCount]
}

// Plan works the row out. The faults are those of [Row].
func (r Row) Plan() (RowPlan, error) {
	s, assumed, err := r.solve()
	if err != nil {
		return RowPlan{}, err
	}
	p := RowPlan{Spec: s, Assumed: assumed, Span: s.Last.Sub(s.First), Gap: s.Gap}
	var before units.Length
	first := true
	for _, residue := range p.Marks() {
		p.WorstMark = p.WorstMark.Max(residue.Abs())
		if !first {
			p.WorstGap = p.WorstGap.Max(before.Sub(residue).Abs())
		}
		before, first = residue, false
	}
	if s.Count == 1 {
		return p, nil
	}
	p.Creep = creep(s, units.HalfAway)
	p.CreepDown = creep(s, units.Down)
	p.CreepUp = creep(s, units.Up)
	if s.limited() {
		// The row has been found within them, so that they have no fault.
		var a fault.Audit
		least, most := s.gaps(&a, p.Span)
		p.Fewest, p.Most = least+1, most+1
	}
	return p, nil
}

func creep(s Row, m units.Mode) units.Length {
	laid, _ := s.Gap.Round(s.Step, m)
	return laid.Sub(s.Gap).MulInt(int64(s.Count - 1))
}

// Marks yields the mark of each button on the tape, a whole number of Step from
// the named end, the nearest to its exact place, and the residue: the exact
// place is mark + residue.
func (p RowPlan) Marks() iter.Seq2[units.Length, units.Length] {
	return func(yield func(mark, residue units.Length) bool) {
		s := p.Spec
		if s.Count == 1 {
			yield(s.First.Round(s.Step, units.HalfAway))
			return
		}
		if s.Count > MaxCount {
			return
		}
		for at := range units.Marks(p.Span, s.Count-1, units.Length{}, units.HalfAway) {
			if !yield(s.First.Add(at).Round(s.Step, units.HalfAway)) {
				return
			}
		}
	}
}

// Places yields the exact places of the buttons from the named end, without
// rounding.
func (p RowPlan) Places() iter.Seq[units.Length] {
	return func(yield func(units.Length) bool) {
		for mark, residue := range p.Marks() {
			if !yield(mark.Add(residue)) {
				return
			}
		}
	}
}

// Reused yields which marks of a row drafted on the same front still serve: the
// number of the drafted button and the number of the button of this row whose
// exact place is the same, both counted from 1. It fails as [Row] does, and
// with [fault.Conflict] where the drafted row is measured from another end.
func (p RowPlan) Reused(drafted Row) (iter.Seq2[int, int], error) {
	d, err := drafted.Plan()
	if err != nil {
		return nil, err
	}
	if d.Spec.From != p.Spec.From {
		var a fault.Audit
		a.Fault("from", d.Spec.From, p.Spec.From+", from which this row is measured", fault.Conflict)
		return nil, a.Err()
	}
	return func(yield func(old, now int) bool) {
		old := 0
		for at := range d.Places() {
			old++
			if now := p.numberAt(at); now > 0 && !yield(old, now) {
				return
			}
		}
	}, nil
}

// numberAt is the number of the button whose exact place is at, counted from 1;
// zero if there is none.
func (p RowPlan) numberAt(at units.Length) int {
	from := at.Sub(p.Spec.First)
	switch {
	case from.IsZero():
		return 1
	case from.Sign() < 0 || p.Span.Less(from) || !from.IsMultiple(p.Gap):
		return 0
	}
	k, _ := from.Div(p.Gap).Int(units.Down)
	return int(k) + 1
}
