package nest

import (
	"slices"

	"example.com/clothyard/yardage/layout/internal/whole"
)

// PhasesOf are places of a set in the repeat across that all its kinds can be laid
// by within the width. There is one among those looked at, where a piece lies at
// the left, if there is any.
func (n *Nest) PhasesOf(set int) []int64 {
	var out []int64
	for i := range n.Variants {
		v := &n.Variants[i]
		if v.Set != set {
			continue
		}
		ends := []int64{whole.Modulo(v.Off.X, n.RepeatX)}
		if v.Centred {
			at := v.Centre + v.Off.X
			ends = append(ends, whole.Modulo(at, n.RepeatX), whole.Modulo(at+n.Half, n.RepeatX))
		}
		if n.Given[set] {
			ends = []int64{0}
		}
		if room := n.Wide - v.Wide; !v.Fold && room > 0 && !n.Given[set] {
			ends = append(ends, whole.Modulo(v.Off.X+room, n.RepeatX))
		}
		out = append(out, ends...)
	}
	slices.Sort(out)
	out = slices.Compact(out)
	return slices.DeleteFunc(out, func(at int64) bool { return !n.suits(set, at) })
}

// suits reports whether every kind of the set has a place at this phase.
func (n *Nest) suits(set int, phase int64) bool {
	for k := range n.Kinds {
		list := n.Kinds[k].Variants
		if n.Variants[list[0]].Set == set && !slices.ContainsFunc(list, func(v int) bool { return n.seatable(v, phase) }) {
			return false
		}
	}
	return true
}

// seatable reports whether a variant has a place across at this phase of its set.
func (n *Nest) seatable(v int, phase int64) bool {
	one := &n.Variants[v]
	x := whole.Modulo(phase-one.Off.X, n.RepeatX)
	if one.Centred && (x-one.Centre)%n.Half != 0 {
		return false
	}
	return x == 0 || !one.Fold && x <= n.Wide-one.Wide
}
