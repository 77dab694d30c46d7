package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
)

// plain draws the plain seam, open or to one side, and the hairline.
func (k *sketch) plain() {
	s := k.p.Spec
	k.sewn("sewn", false)
	if s.Aside || s.Kind == Hairline {
		k.stage("pressed to one side"+k.finished(), lies+"Both allowances are pressed to the right.")
		k.aside(s.Trim, s.Trim, k.cut())
		k.mark("from the seam to the raw edges", section.Above, k.half(0), s.Trim, 4, k.p.Finished)
		k.pinkedRow("upper edge", s.Trim, 4, upperPly)
		k.pinkedRow("under edge", s.Trim, 2, underPly)
		return
	}
	k.stage("pressed open"+k.finished(), lies+"The allowances are pressed open.")
	k.opened()
	k.mark("upper allowance", section.Above, k.half(0), s.Trim.Neg(), 2, k.p.Finished)
	k.mark("under allowance", section.Above, k.half(0), s.Trim, 2, k.p.Finished)
	k.pinkedRow("upper edge", s.Trim.Neg(), 2, upperPly)
	k.pinkedRow("under edge", s.Trim, 2, underPly)
}

// opened draws two allowances trimmed and pressed open.
func (k *sketch) opened() {
	s := k.p.Spec
	k.upper(k.from(s.Trim.Add(k.run).Neg(), 0).to(k.half(-1)).level(1).to(s.Trim.Neg()), k.cut(), section.Right)
	k.under(k.from(s.Trim.Add(k.run), 0).to(k.half(1)).level(1).to(s.Trim), k.cut(), section.Left)
	if s.Kind != Slot { // whose basting is taken out
		k.level("the seam", 5, upperPly, underPly)
	}
}

// aside draws two allowances, one upon the other on the right of the seam, the
// upper one as wide as up and the under one as wide as down.
func (k *sketch) aside(up, down units.Length, finish section.End) {
	k.upper(k.from(k.run.Neg(), 0).to(k.half(-1)).level(2).to(up), k.cut(), section.Right)
	k.under(k.from(up.Add(k.run), 0).to(k.half(1)).level(1).to(down), finish, section.Left)
	k.level("the seam", 5, upperPly, underPly)
}

// pinkedRow draws the row beside a pinked edge at x, in the ply at a height in
// half plies.
func (k *sketch) pinkedRow(name string, x units.Length, height int64, ply string) {
	if k.p.Spec.Finish != Pinked {
		return
	}
	from := k.p.Spec.pinked()
	row := x.Sub(from)
	if x.Sign() < 0 {
		row = x.Add(from)
	}
	k.row("beside the "+name, row, height+1, height-1, ply)
	k.mark("row to pinked "+name, section.Above, row, x, height, from)
}

func (k *sketch) welt() {
	s := k.p.Spec
	k.sewn("sewn", false)
	k.stage("pressed and stitched"+k.finished(), lies+"Both allowances are pressed to the right; the row from the right side misses the trimmed edge and catches the wide one.")
	k.aside(s.First, s.Trim, section.Hidden)
	k.row("from the right side", s.Second, 6, -3, upperPly, underPly)
	k.mark("trimmed to", section.Below, k.half(0), s.Trim, 2, s.Trim)
	k.mark("welt", section.Below, k.half(0), s.Second, -3, k.p.Finished)
	k.mark("wide allowance", section.Above, k.half(0), s.First, 4, s.First)
	k.pinkedRow("wide edge", s.First, 4, upperPly)
	k.pinkedRow("trimmed edge", s.Trim, 2, underPly)
}

func (k *sketch) slot() {
	s := k.p.Spec
	k.sewn("basted", false)
	k.last().Stitches[0].Name = "basting"
	k.stage("stitched"+k.finished(), lies+"The allowances are pressed open under the underlay; the basting is out, so that the two folds meet and are joined by the underlay alone.")
	k.opened()
	edge := s.Strip.DivInt(2)
	k.ply("underlay", section.Crossed, k.from(edge.Neg(), 2).to(edge), k.cut(), k.cut(), section.Right)
	k.row("left row", s.Second.Neg(), 6, -3, "underlay", upperPly, upperPly)
	k.row("right row", s.Second, 6, -3, "underlay", underPly, underPly)
	k.mark("left row from its fold", section.Below, s.Second.Neg(), k.half(0), -3, s.Second)
	k.mark("right row from its fold", section.Below, k.half(0), s.Second, -3, s.Second)
	k.mark("from row to row", section.Below, s.Second.Neg(), s.Second, -3, k.p.Finished)
	k.mark("allowance", section.Above, k.half(0), s.Trim, 2, s.Trim)
	k.mark("underlay", section.Above, edge.Neg(), edge, 4, s.Strip)
	k.pinkedRow("upper edge", s.Trim.Neg(), 2, upperPly)
	k.pinkedRow("under edge", s.Trim, 2, underPly)
}

// turnedStitched measures each allowance from the inside of its turn, which the
// turned edge may touch.
func (k *sketch) turnedStitched() {
	s := k.p.Spec
	k.sewn("sewn", false)
	k.stage("edges turned and stitched", lies+"The allowances are pressed open, the edge of each is turned under. They are measured from the inside of the turn at the seam.")
	fold := k.t.Add(s.Second)
	raw, row := fold.Sub(k.p.Turned), fold.Sub(k.half(3))
	far := fold.Add(k.run)
	k.upper(k.from(far.Neg(), 0).to(k.half(-1)).level(2).to(fold.Sub(k.h).Neg()).level(1).to(raw.Neg()), section.Hidden, section.Right)
	k.under(k.from(far, 0).to(k.half(1)).level(2).to(fold.Sub(k.h)).level(1).to(raw), section.Hidden, section.Left)
	k.level("the seam", 5, upperPly, underPly)
	k.row("left edge", row.Neg(), 6, 1, upperPly, upperPly)
	k.row("right edge", row, 6, 1, underPly, underPly)
	k.mark("left, from seam to fold", section.Above, k.t.Neg(), fold.Neg(), 4, k.p.Finished)
	k.mark("right, from seam to fold", section.Above, k.t, fold, 4, k.p.Finished)
	k.mark("left, turned in", section.Below, raw.Neg(), fold.Neg(), 2, k.p.Turned)
	k.mark("right, turned in", section.Below, raw, fold, 2, k.p.Turned)
}

// hongKong measures each allowance from the inside of its turn, as far as the
// under edge of its strip may come, and the binding from its fold to the raw edge
// of the allowance.
func (k *sketch) hongKong() {
	s := k.p.Spec
	k.sewn("sewn", false)
	const left, right = "left strip", "right strip"
	edge := k.t.Add(s.Trim)
	far := edge.Add(k.run)
	in := edge.Sub(s.Second)

	k.stage("strip sewn on", lies+"The allowances are pressed open; a strip lies on the right one, right sides together, the raw edges even. The left one is done alike.")
	k.upper(k.from(far.Max(s.Strip.Sub(in)).Neg(), 0).to(k.half(-1)).level(1).to(edge.Neg()), section.Raw, section.Right)
	k.under(k.from(far, 0).to(k.half(1)).level(1).to(edge), section.Raw, section.Left)
	k.ply(right, section.Crossed, k.from(edge, 2).to(edge.Sub(s.Strip)), section.Raw, section.Raw, section.Left)
	k.level("the seam", 5, upperPly, underPly)
	k.row("the strip", in, 6, 1, right, underPly)
	k.mark("allowance", section.Below, k.t, edge, 2, s.Trim)
	k.mark("strip from the raw edge", section.Above, in, edge, 4, s.Second)
	k.mark("strip", section.Above, edge.Sub(s.Strip), edge, 4, s.Strip)

	desc := lies + "The allowances are pressed open, each in its strip."
	under := k.p.Wrapped
	if s.Trim.Less(under) {
		desc += " The under edge of the strip is trimmed off at the seam."
		under = s.Trim
	}
	k.stage("wrapped and stitched", desc)
	end, wall := edge.Sub(under), edge.Add(k.h)
	fold, first, ditch := in.Add(k.h), in.Add(k.t), in.Sub(k.h)
	k.upper(k.from(far.Neg(), 0).to(k.half(-1)).level(2).to(edge.Neg()), section.Hidden, section.Right)
	k.under(k.from(far, 0).to(k.half(1)).level(2).to(edge), section.Hidden, section.Left)
	k.ply(left, section.Crossed, k.from(edge.Neg(), 3).to(fold.Neg()).level(4).to(wall.Neg()).level(1).to(end.Neg()), section.Hidden, section.Hidden, section.Right)
	k.ply(right, section.Crossed, k.from(edge, 3).to(fold).level(4).to(wall).level(1).to(end), section.Hidden, section.Hidden, section.Left)
	k.level("the seam", 5, upperPly, underPly)
	k.row("left strip", first.Neg(), 7, 3, left, upperPly)
	k.row("left, in the ditch", ditch.Neg(), 6, 1, upperPly, left)
	k.row("right strip", first, 7, 3, right, underPly)
	k.row("right, in the ditch", ditch, 6, 1, underPly, right)
	k.mark("left binding", section.Above, in.Neg(), edge.Neg(), 8, k.p.Finished)
	k.mark("right binding", section.Above, in, edge, 8, k.p.Finished)
	k.mark("allowance", section.Below, k.t, edge, 4, s.Trim)
	k.mark("strip on the under face", section.Below, end, edge, 2, under)
}
