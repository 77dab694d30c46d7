package gather

import (
	"iter"

	"example.com/clothyard/units"
)

// Quarters yields the marks that strip and edge are pinned together by, the
// first place on the strip as sewn, the second on the edge, each exact and
// measured from the starting end of its own seam line. With four Parts these
// are the three quarter marks; the two ends, or in a ring the start, are not
// among them.
func (p RufflePlan) Quarters() iter.Seq2[units.Length, units.Length] {
	return pairs(p.Strip.Strip.Sewn, p.Spec.Parts, units.Length{}, units.Length{}, p.Strip.Fullness)
}

// Joins yields where each join of the strip lies: on the strip as sewn, and on
// the edge once the strip is gathered evenly. In a ring the last closes it.
func (p RufflePlan) Joins() iter.Seq2[units.Length, units.Length] {
	return func(yield func(onStrip, onEdge units.Length) bool) {
		for k := range p.Strip.Strip.Joins {
			at := p.Strip.Strip.Join(k + 1)
			if !yield(at, at.Unscale(p.Strip.Fullness)) {
				return
			}
		}
	}
}

// pairs divides span into parts and yields the marks between its ends with the
// same marks on the edge, each after the lead given.
func pairs(span units.Length, parts int, lead, edgeLead units.Length, fullness units.Ratio) iter.Seq2[units.Length, units.Length] {
	return func(yield func(on, edge units.Length) bool) {
		k := 0
		for mark := range units.Marks(span, parts, units.Length{}, units.HalfAway) {
			if k > 0 && k < parts && !yield(mark.Add(lead), mark.Unscale(fullness).Add(edgeLead)) {
				return
			}
			k++
		}
	}
}

// clearance finds how near a join comes to a mark. The join that closes a ring
// is left out: the marks are measured from it.
func (p *RufflePlan) clearance() {
	sp := p.Strip.Strip
	joins := sp.Joins
	if sp.Spec.Ring {
		joins--
	}
	if joins < 1 || p.Spec.Parts < 2 {
		return
	}
	first, k := true, 0
	next := 1 // the first join at or beyond the mark
	for mark := range units.Marks(sp.Sewn, p.Spec.Parts, units.Length{}, units.HalfAway) {
		if k++; k == 1 || k > p.Spec.Parts {
			continue
		}
		for next < joins && sp.Join(next).Less(mark) {
			next++
		}
		near := sp.Join(next).Sub(mark).Abs()
		if next > 1 {
			near = near.Min(mark.Sub(sp.Join(next - 1)).Abs())
		}
		if first || near.Less(p.Clear) {
			p.Clear, first = near, false
		}
	}
	p.Crowded = p.Clear.Less(sp.Spec.Allowance) || p.Clear.IsZero()
}
