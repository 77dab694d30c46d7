package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Piped is a seam with a covered cord between the plies.
type Piped struct {
	Allowance
	// First is the row that makes the seam, close against the cord, from the raw edges as
	// cut. May be omitted; the default is cut.
	First units.Length `json:"first,omitzero"`
	// Trim is what is left of the allowances. May be omitted; nothing is then trimmed off.
	Trim units.Length `json:"trim,omitzero"`
	// Cord is the diameter of the cord. May be omitted; the default is 1/4 in (6 mm).
	Cord units.Length `json:"cord,omitzero"`
}

// Plan works the seam out.
func (s Piped) Plan() (Plan, error) { return plan(s) }

// Taking moves the row.
func (s Piped) Taking(each units.Length) (Seam, bool) {
	s.First = each
	whole := s
	whole.Trim = units.Length{}
	return taking(each, s, whole)
}

func (s *Piped) solve(v *solver) {
	if v.row(&s.First) {
		v.trimmed(&s.Trim, s.First, s.First)
		fill(&s.Cord, usualCord.on(s.Tape))
	}
}

// round is once round the cord, in the middle of the cloth.
func (s Piped) round() units.Near { return units.Pi().Of(s.Cord.Add(s.Thickness)) }

func (s Piped) answer(p *Plan) {
	p.Finished, p.Plies, p.Raw = s.Trim, 5, true
	p.Strips = []Strip{{"to cover the cord", s.round().Plus(s.First.MulInt(2))}}
	p.trim(s.Trim, s.least(s.First, s.Trim), s.First)
}

func (s Piped) sheet(p Plan, sh *ticket.Sheet) {
	p.begin(sh, rowTakes(s.First))
	strip := ticket.About(s.round().Plus(s.First.MulInt(2)))
	sh.Lines = append(sh.Lines, ticket.Line{
		Label: "strip to cover the cord", Result: strip,
		Terms: []ticket.Term{
			{Amount: ticket.About(s.round()), Name: "once round the cord"},
			plus(s.First, "one allowance"), plus(s.First, "the other"),
		},
	})
	sh.Steps = append(sh.Steps,
		ticket.Step{Do: "Cut the strip, on the bias where the seam curves", At: strip, From: "edge to edge", Note: "round up to a mark of the tape; a bias strip narrows as it stretches"},
		ticket.Step{Do: "Fold the strip round the cord, wrong side in, and stitch close to the cord", At: ticket.Long(s.First), From: "the raw edges of the strip"},
		ticket.Step{Do: "Baste the covered cord to the right side of the under ply, all raw edges even", At: ticket.Long(s.First), From: "the raw edge"},
		p.first("Lay the upper ply over it and stitch, close against the cord", ticket.RightTogether, s.First))
	trimmed(sh, "Trim the allowances", s.Trim, s.First)
	last := p.pressed(true)
	last.Press = "with the point of the iron, all allowances to one side"
	last.Note = "in thick cloth trim the allowances of the strip narrower than the others"
	sh.Steps = append(sh.Steps, last)
	p.finish(sh, 0, s.Trim)
	sh.Sources = append(sh.Sources, source.Practise("strip once round the cord and two allowances"))
	p.printed(sh, EnclosedRow{First: s.First, Second: s.Trim, Trim: s.Trim})
}

func (s Piped) size(Plan) size {
	return size{ply: s.First, wide: s.Trim, needs: []need{
		fromRaw("first", s.First), trimNeed(s.Trim, 6), {"cord", s.Cord, "across the cord", s.Cord, 4},
	}}
}

const stripPly = "strip"

// draw draws the cord as the square gap that the strip goes round.
func (s Piped) draw(k *sketch) {
	round := s.Cord.Add(k.t).DivInt(2) // from the middle of the gap to that of the strip

	// around takes the strip once round the cord, from a wall at x, between two levels
	// of the strip, and back there.
	around := func(l layer, x units.Length, z int) layer {
		mid := k.t.MulInt(int64(2*z - 1)).DivInt(2)
		far := x.Sub(s.Cord).Sub(k.t)
		return l.to(x).height(mid.Add(round)).to(far).height(mid.Sub(round)).to(x).level(z - 1)
	}
	cordAt := func(x units.Length, height int64) {
		k.mark("cord", section.Below, x.Sub(s.Cord).Sub(k.h), x.Sub(k.h), height, s.Cord)
	}

	k.stage("cord covered", "The strip lies round the cord, wrong side in. The cord is the gap, drawn square.")
	wall := k.half(-1)
	k.ply(stripPly, section.Crossed, around(k.from(s.First, 1), wall, 1).to(s.First), section.Raw, section.Raw, section.Right)
	k.row("close to the cord", k.half(0), 3, -1, stripPly, stripPly)
	k.mark("from the raw edges", section.Above, k.half(0), s.First, 2, s.First)
	cordAt(wall, 0)

	k.stage("sewn", "Right sides together, the covered cord between the plies, all raw edges even.")
	wall = k.half(-3)
	mid := k.t.MulInt(3).DivInt(2)
	left := wall.Sub(s.Cord).Sub(k.beside(s.First))
	k.upper(k.at(left, mid.Add(round).Add(k.t)).to(k.half(-1)).height(k.t.MulInt(3)).to(s.First), section.Raw, section.Right)
	k.ply(stripPly, section.Crossed, around(k.from(s.First, 2), wall, 2).to(s.First), section.Raw, section.Raw, section.Right)
	k.under(k.at(left, mid.Sub(round).Sub(k.t)).to(k.half(-1)).height(k.half(0)).to(s.First), section.Raw, section.Left)
	k.row("the seam", k.half(0), 7, -1, upperPly, stripPly, stripPly, underPly)
	k.mark("from the raw edges", section.Above, k.half(0), s.First, 6, s.First)
	cordAt(wall, 3)

	// The strip comes out between the plies, and the cord lies on the right side.
	k.stage("pressed", lies+"All allowances are pressed to the right; the covered cord lies on the right side, under the upper ply.")
	k.upper(k.from(s.Cord.Add(k.run).Neg(), 0).to(k.half(-3)).level(4).to(s.Trim), section.Raw, section.Right)
	out := k.from(s.Trim, 3).to(k.half(-1)).level(-1).to(k.h.Add(s.Cord).Neg())
	k.ply(stripPly, section.Crossed, out.height(k.t.MulInt(-2).Sub(s.Cord)).to(k.h).height(k.t.MulInt(2)).to(s.Trim), section.Raw, section.Raw, section.Right)
	k.under(k.from(s.Trim.Add(k.run), 0).to(k.half(3)).level(1).to(s.Trim), section.Raw, section.Left)
	k.level("the seam", 9, upperPly, stripPly, stripPly, underPly)
	k.mark("from the seam to the raw edges", section.Above, k.half(0), s.Trim, 8, s.Trim)
	k.mark("cord", section.Below, s.Cord.Neg(), k.half(0), -4, s.Cord)
}
