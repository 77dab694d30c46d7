package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/strip"
)

// Strip is the strip of a faced or bound edge as a [strip.Spec], to be planned
// there: how many pieces of a length, each losing the allowance at a join, measured
// along the strip, make one that goes round the edge. A ring closes with a join of
// its own; an open strip also loses ends at each end. Least is Swept, or the least
// length that is certain to go round where the edge curves. It is zero for the
// other kinds and where no Sweep is given.
func (p Plan) Strip(each, allowance, ends units.Length, ring bool) strip.Spec {
	if len(p.Strips) == 0 || p.Swept.IsZero() {
		return strip.Spec{}
	}
	_, least := p.Round.Bounds()
	return strip.Spec{Each: each, Allowance: units.Give(allowance), Ends: ends, Ring: ring, Least: least}
}
