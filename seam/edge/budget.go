package edge

import (
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
)

// Budget is how far an edge may come out either way when each seam that crosses
// it wanders by 1/16 in, as sewers are allowed: a neck crossed by two shoulder
// seams, 4 plies, 1/4 in. A difference below it is finer than the hand. The figure
// is in [seam.Trims].
func (p Plan) Budget() units.Length {
	plies := int64(0)
	for _, t := range p.Spec.Takes {
		plies += int64(t.Plies)
	}
	return sew.Straightness().MulInt(plies)
}
