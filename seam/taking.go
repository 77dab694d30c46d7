package seam

import "example.com/clothyard/units"

// Taking is a seam sewn by s, whose plan is p, made to take so much from each
// ply. Of two passes a wider take widens the first, so that the ridge stays, and
// a narrower one narrows the second, so that enough is caught; where the kind
// does not allow that, the other, or halves. Of the other kinds the first row
// moves, and what else was given of the seam stays where the kind allows it.
func (s Spec) Taking(p Plan, take units.Length) (Spec, bool) {
	if take.Sign() <= 0 {
		return s, false
	}
	first, second := p.Spec.First, p.Spec.Second
	s.Take = units.Length{}
	made := func(t Spec, first, second units.Length) (Spec, bool) {
		if first.Sign() <= 0 || second.Sign() < 0 || t.Kind == French && second.IsZero() {
			return t, false
		}
		t.First, t.Second = first, second
		q, err := t.Plan()
		return t, err == nil && q.Upper.Taken == take && q.Under.Taken == take
	}
	bare := s
	bare.Trim, bare.TrimUnder, bare.Turned, bare.Row = units.Length{}, units.Length{}, units.Length{}, units.Length{}
	trimless := s
	trimless.Trim = units.Length{}
	list := [3][2]units.Length{{take, s.Second}, {take}, {take, take}}
	if s.Kind == French {
		list = [3][2]units.Length{{take.Sub(second), second}, {first, take.Sub(first)}, {take.DivInt(2), take.DivInt(2)}}
		if take.Less(p.Upper.Taken) {
			list[0], list[1] = list[1], list[0]
		}
	}
	for _, one := range list {
		for _, t := range [...]Spec{s, trimless, bare} {
			if t, ok := made(t, one[0], one[1]); ok {
				return t, true
			}
		}
	}
	return s, false
}
