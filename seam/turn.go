package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A fold of cloth t thick goes half round. Where n plies lie between its two
// halves their middles are (n + 1) t apart, the middle of the cloth is half of pi
// times that long, and the outer face of the fold stands out beyond where the half
// round begins by half of (n + 2) t. A guide from the fold is laid to that face, so
// that the cloth takes the half round more and what stands out less: common
// practice for where the guide lies, geometry for the rest.

// round is a half round with n plies inside it.
func round(t units.Length, n int64) units.Near { return units.Pi().Of(t.MulInt(n + 1)).DivInt(2) }

// standsOut is how far its outer face lies beyond where the half round begins.
func standsOut(t units.Length, n int64) units.Length { return t.MulInt(n + 2).DivInt(2) }

// turnLines are the lines of what the folds take.
func (p Plan) turnLines(sh *ticket.Sheet) {
	if p.Spec.Plies().Thickness.IsZero() {
		return
	}
	say := func(label string, n units.Near) {
		sh.Lines = append(sh.Lines, ticket.Line{Label: label, Result: ticket.About(n)})
	}
	switch {
	case p.Turn == p.TurnUnder:
		say("turn of cloth, each ply, not counted above", p.Turn)
	default:
		say("turn of cloth, upper ply, not counted above", p.Turn)
		if !p.TurnUnder.IsZero() {
			say("turn of cloth, under ply, not counted above", p.TurnUnder)
		}
	}
	sh.Sources = append(sh.Sources, source.Practise("the turn of cloth, a guide from a fold being laid to its outer face"))
}
