package seam

import (
	"example.com/clothyard/units"
)

// Stacked is how many plies lie one above another where the finished seam runs
// through so many layers of another fold or seam: a French seam pressed over has 5,
// and under a double hem, of 3 layers, there are 15. Where two seams meet, the
// layers are the other seam's Plies; pressing the two ridges opposite ways keeps
// them from lying on each other. It is zero for less than one layer, and where the
// product passes what an int32 holds.
func (p Plan) Stacked(layers int) int {
	const most = 1<<31 - 1
	if layers < 1 || p.Plies < 1 || layers > most/p.Plies {
		return 0
	}
	return p.Plies * layers
}

// Budget is how far an edge may come out either way when each seam that crosses
// it wanders by 1/16 in, as sewers are allowed: a neck crossed by two shoulder
// seams, 4 plies, 1/4 in. A difference below it is finer than the hand. The figure
// is in [Trims].
func (p EdgePlan) Budget() units.Length {
	plies := int64(0)
	for _, t := range p.Spec.Takes {
		plies += int64(t.Plies)
	}
	return straightness().MulInt(plies)
}
