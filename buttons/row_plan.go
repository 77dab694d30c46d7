package buttons

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/spacing"
)

// A RowPlan is where the buttons of a [Row] go.
type RowPlan struct {
	Spec    Row      `json:"spec,omitzero"`    // Spec is the row as solved.
	Assumed []string `json:"assumed,omitzero"` // Assumed are the fields filled with a default.

	Count  int          `json:"count,omitzero"`  // Count is how many buttons are set.
	Short  int          `json:"short,omitzero"`  // Short is how many the pattern has more than there are.
	Places []Place      `json:"places,omitzero"` // Places are where they go.
	Span   units.Length `json:"span,omitzero"`   // Span is from the first place to the last; 0 in for a single button.
	Gap    units.Length `json:"gap,omitzero"`    // Gap is from one exact place to the next, the widest where they differ; 0 in for a single button.

	Clear units.Length `json:"clear,omitzero"` // Clear is between two holes that lie along the row, where they are nearest; 0 in without hole.
	Shank units.Length `json:"shank,omitzero"` // Shank is how long the thread is between button and cloth; 0 in without cloth.

	// Stretches are the parts of a row with pins: how many gaps lie between two of them,
	// and how wide these are, measured from the first place.
	Stretches []spacing.Stretch `json:"stretches,omitzero"`

	WorstMark units.Length `json:"worstMark,omitzero"` // WorstMark is the most that a mark lies off its exact place.
	WorstGap  units.Length `json:"worstGap,omitzero"`  // WorstGap is the most that the gap between two marks is off the exact one.

	// What becomes of the last button of a row without pins when the gap is first read to
	// a mark and then laid one after another from the first place: how far it ends beyond
	// the last place, short if negative. The marks of this plan are not made so.
	Creep     units.Length `json:"creep,omitzero"`     // Creep is that with the mark nearest to the gap.
	CreepDown units.Length `json:"creepDown,omitzero"` // CreepDown is that with the mark at or below the gap.
	CreepUp   units.Length `json:"creepUp,omitzero"`   // CreepUp is that with the mark at or above the gap.

	Fewest int `json:"fewest,omitzero"` // Fewest is the fewest buttons that minGap, maxGap and have allow; 0 without such limits.
	Most   int `json:"most,omitzero"`   // Most is the most of them, at most [MaxCount].
}

// A Place is where a button goes, from the named end.
type Place struct {
	Exact   units.Length `json:"exact,omitzero"`   // Exact is its exact place.
	Mark    units.Length `json:"mark,omitzero"`    // Mark is the nearest mark of the tape.
	Residue units.Length `json:"residue,omitzero"` // Residue is the exact place less the mark.
}

// Plan works the row out. The faults are [fault.Faults].
func (r Row) Plan() (RowPlan, error) {
	s, set, assumed, err := r.solve()
	if err != nil {
		return RowPlan{}, err
	}
	p := RowPlan{Spec: s, Assumed: assumed, Count: set, Short: s.Count - set, Span: s.Last.Sub(s.First), Shank: s.Cloth}
	var a fault.Audit
	exact := []units.Length{{}}
	least := units.Length{}
	if set > 1 {
		laid, err := s.spaced(set).Lay()
		if err != nil {
			return RowPlan{}, renamed(err)
		}
		exact = laid.Places
		for _, part := range laid.Stretches {
			p.Gap = p.Gap.Max(part.Gap)
			if least.IsZero() || part.Gap.Less(least) {
				least = part.Gap
			}
			if part.Gap.Less(s.Step) {
				a.Fault("step", s.Step.String(), "at most {0} (the gap, or two places share a mark)", fault.Range, part.Gap)
				return RowPlan{}, a.Err(assumed...)
			}
		}
		if !s.Hole.IsZero() {
			if p.Clear = least.Sub(s.Hole); p.Clear.Sign() <= 0 {
				a.Fault("hole", s.Hole.String(), "less than {0} (the gap, or two holes meet)", fault.Range, least)
				return RowPlan{}, a.Err(assumed...)
			}
		}
		if len(s.Pins) > 0 {
			p.Stretches = laid.Stretches
		}
	}
	for _, at := range exact {
		at = s.First.Add(at)
		mark, residue := at.Round(s.Step, units.HalfAway)
		p.WorstMark = p.WorstMark.Max(residue.Abs())
		if n := len(p.Places); n > 0 {
			p.WorstGap = p.WorstGap.Max(p.Places[n-1].Residue.Sub(residue).Abs())
		}
		p.Places = append(p.Places, Place{at, mark, residue})
	}
	if set == 1 || len(s.Pins) > 0 {
		return p, nil
	}
	p.Creep, p.CreepDown, p.CreepUp = p.creep(units.HalfAway), p.creep(units.Down), p.creep(units.Up)
	if s.limited() && p.Short == 0 {
		// The row has been found within them, so that they have no fault.
		least, most := s.gaps(&a, p.Span)
		p.Fewest, p.Most = least+1, most+1
	}
	return p, nil
}

// creep is how far gaps that are read to a mark, laid one after another, end off.
func (p RowPlan) creep(m units.Mode) units.Length {
	laid, _ := p.Gap.Round(p.Spec.Step, m)
	return laid.Sub(p.Gap).MulInt(int64(p.Count - 1))
}

// A Reuse is a mark of a drafted row that still serves.
type Reuse struct {
	Old int // Old is the number of the drafted button, from 1.
	New int // New is the number of the button of the new row, from 1.
}

// Reused is which marks of a row drafted on the same front still serve: those whose
// exact place is the same. It fails as [Row.Plan] does, and with [fault.Conflict] where
// the drafted row is measured from another end.
func (p RowPlan) Reused(drafted Row) ([]Reuse, error) {
	d, err := drafted.Plan()
	if err != nil {
		return nil, err
	}
	if d.Spec.From != p.Spec.From {
		var a fault.Audit
		a.Fault("from", d.Spec.From, p.Spec.From+", from which this row is measured", fault.Conflict)
		return nil, a.Err()
	}
	var all []Reuse
	now := 0
	for old, was := range d.Places {
		for now < len(p.Places) && p.Places[now].Exact.Less(was.Exact) {
			now++
		}
		if now < len(p.Places) && p.Places[now].Exact == was.Exact {
			all = append(all, Reuse{old + 1, now + 1})
		}
	}
	return all, nil
}
