package seam

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
)

// laps says how the plies of a lapped seam lie.
const laps = "The garment lies right side up, the upper ply on the left. "

// lapped has its fold at 0; the two plies keep their levels beyond the lap.
func (k *sketch) lapped() {
	s := k.p.Spec
	k.stage("stitched", laps+"Its turned edge is laid over the edge of the under ply.")
	left := s.First.Max(s.Second).Add(k.run).Neg()
	k.upper(k.from(left, 2).to(k.half(-1)).level(1).to(s.First.Neg()), section.Raw, section.Left)
	k.under(k.from(k.run, 0).to(s.Second.Neg()), section.Raw, section.Right)
	k.row("from the right side", s.Row.Neg(), 7, -3, upperPly, upperPly, underPly)
	k.mark("turned under", section.Below, s.First.Neg(), k.half(0), 2, s.First)
	k.mark("from the edge beneath to the fold", section.Below, s.Second.Neg(), k.half(0), 0, k.p.Finished)
	k.mark("row from the fold", section.Above, s.Row.Neg(), k.half(0), 4, s.Row)
}

// lappedTurned has the middle of the lap at 0. The turned edges lie end to end
// where there is room for both.
func (k *sketch) lappedTurned() {
	s := k.p.Spec
	k.stage("stitched", laps+"Both edges are turned, and the folds lapped over each other.")
	top, in := 3, 2
	if k.p.Plies == 3 {
		top, in = 2, 1
	}
	lap := s.Second.DivInt(2)
	fold, raw, row := lap.Sub(k.h), lap.Sub(k.p.Turned), lap.Sub(k.half(3))
	far := lap.Add(k.run)
	k.upper(k.from(far.Neg(), top).to(fold).level(in).to(raw), section.Hidden, section.Left)
	k.under(k.from(far, 0).to(fold.Neg()).level(1).to(raw.Neg()), section.Hidden, section.Right)
	high := int64(2*top + 3)
	k.row("under fold", row.Neg(), high, -3, upperPly, underPly, underPly)
	k.row("upper fold", row, high, -3, upperPly, upperPly, underPly)
	k.mark("turned up", section.Below, lap.Neg(), raw.Neg(), 2, k.p.Turned)
	k.mark("turned under", section.Below, raw, lap, int64(2*in), k.p.Turned)
	k.mark("lap", section.Above, lap.Neg(), lap, int64(2*top), k.p.Finished)
}

// lappedRaw has the middle of the lap at 0.
func (k *sketch) lappedRaw() {
	s := k.p.Spec
	k.stage("stitched", laps+"Its raw edge is laid over that of the under ply.")
	lap := s.Second.DivInt(2)
	far, row := lap.Add(k.run), lap.Sub(k.half(3))
	k.upper(k.from(far.Neg(), 1).to(lap), section.Raw, section.Left)
	k.under(k.from(far, 0).to(lap.Neg()), section.Raw, section.Right)
	k.row("edge beneath", row.Neg(), 5, -3, upperPly, underPly)
	k.row("upper edge", row, 5, -3, upperPly, underPly)
	k.mark("lap", section.Above, lap.Neg(), lap, 2, k.p.Finished)
}

const stripPly = "strip"

// piped draws the cord as the square gap that the strip goes round.
func (k *sketch) piped() {
	s := k.p.Spec
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
	k.mark("from the seam to the raw edges", section.Above, k.half(0), s.Trim, 8, k.p.Finished)
	k.mark("cord", section.Below, s.Cord.Neg(), k.half(0), -4, s.Cord)
}

// graded draws the garment turned: both plies run on over the allowances, and come
// together beyond the widest.
func (k *sketch) graded() {
	s := k.p.Spec
	n := s.Layers
	name := func(i int) string {
		switch i {
		case 0:
			return upperPly
		case n - 1:
			return underPly
		}
		return "layer " + strconv.Itoa(i+1)
	}
	between := ""
	if n > 2 {
		between = " The layers between run out at the seam, as those of a collar do; an interfacing turns with the ply that it is sewn to."
	}

	k.stage("sewn", "Right sides together, all raw edges even.")
	left := k.beside(s.First).Neg()
	rise := func(i int) int { return n - 1 - i }
	var through []string
	for i := range n {
		k.layer(i, name(i), k.from(left, rise(i)).to(s.First), section.Raw, section.Right, section.Left)
		through = append(through, name(i))
	}
	k.row("the seam", k.half(0), int64(2*n+1), -3, through...)
	k.mark("from the raw edges", section.Below, k.half(0), s.First, 0, s.First)

	k.stage("graded and pressed", "Turned and pressed, right side of the outside down, the widest layer next to it. Both plies come together beyond the allowances."+between)
	close := s.Trim.Add(k.half(3))
	far := close.Add(k.run)
	k.layer(0, upperPly, k.from(far, 0).to(k.half(-1)).level(1).to(k.p.Grade(0)), section.Hidden, section.Left, section.Right)
	for i := 1; i < n-1; i++ {
		k.layer(i, name(i), k.from(k.run.Neg(), i+1).to(k.p.Grade(i)), section.Hidden, section.Left, section.Right)
	}
	k.layer(n-1, underPly, k.from(far, 1).to(close).level(n+1).to(k.half(-1)).level(n).to(k.p.Grade(n-1)), section.Hidden, section.Left, section.Right)
	pierce := make([]string, 0, n)
	for i := range n {
		pierce = append(pierce, name(n-1-i))
	}
	k.row("the seam", k.half(0), int64(2*n+1), 1, pierce...)
	for i := n - 1; i > 0; i-- {
		k.mark(name(i)+" trimmed to", section.Above, k.half(0), k.p.Grade(i), int64(2*i+2), k.p.Grade(i))
	}
	k.mark(name(0)+" trimmed to", section.Above, k.half(0), k.p.Grade(0), 2, k.p.Finished)
}

// layer adds layer i of a graded seam, the outside first.
func (k *sketch) layer(i int, name string, l layer, finish section.End, upper, under section.Face) {
	switch i {
	case 0:
		k.ply(name, section.Hatched, l, section.RunsOn, finish, upper)
	case k.p.Spec.Layers - 1:
		k.ply(name, section.Dotted, l, section.RunsOn, finish, under)
	default:
		k.ply(name, section.Blank, l, section.RunsOn, finish, section.NoFace)
	}
}
