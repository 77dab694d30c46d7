package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
)

// french draws the two passes of the seam and the ridge pressed over. The first
// pass lies inside the fold, whose face is the width of the ridge from the second.
func (k *sketch) french() {
	s := k.p.Spec
	k.sewn("first pass", true)
	k.last().Stitches[0].Name = "first pass"
	fold, first := s.Second.Sub(k.h), s.Second.Sub(k.t)
	raw := first.Sub(s.Trim)

	k.stage("second pass", "Right sides together, the first pass at the fold, the trimmed edges inside.")
	left := k.run.Neg()
	k.upper(k.from(left, 2).to(k.t.Neg()).level(3).to(fold).level(2).to(raw), section.Hidden, section.Right)
	k.under(k.from(left, 1).to(k.t.Neg()).level(0).to(fold).level(1).to(raw), section.Hidden, section.Left)
	k.row("first pass", first, 5, 1, upperPly, underPly)
	k.row("second pass", k.half(0), 9, -3, upperPly, underPly)
	k.mark("trimmed to", section.Below, raw, first, 2, s.Trim)
	k.mark("second pass from the fold", section.Below, k.half(0), s.Second, 0, s.Second)

	k.stage("pressed", lies+"The ridge is pressed to the right.")
	k.upper(k.from(left, 0).to(k.half(-1)).level(4).to(fold).level(3).to(raw), section.Hidden, section.Right)
	k.under(k.from(s.Second.Add(k.run), 0).to(k.half(1)).level(1).to(fold).level(2).to(raw), section.Hidden, section.Left)
	k.row("first pass", first, 7, 3, upperPly, underPly)
	k.level("second pass", 5, upperPly, underPly)
	k.mark("trimmed to", section.Below, raw, first, 4, s.Trim)
	k.mark("ridge", section.Above, k.half(0), s.Second, 8, k.p.Finished)
}

// tops are the levels of the fell: the upper allowance, and its edge turned in. The
// turned edge and the trimmed one lie end to end where there is room for both.
func (k *sketch) tops() (top, turned int) {
	if k.p.Plies == 3 {
		return 2, 1
	}
	return 3, 2
}

// flatFelled draws the garment right side up. Its first row goes through the upper
// ply where it runs on over the fell; where the turned edge comes as far as the seam
// the row is drawn half a ply outside it.
func (k *sketch) flatFelled() {
	s := k.p.Spec
	k.sewn("sewn", true)
	k.stage("felled", "The garment lies flat, its right side up, the upper ply on the left. Its edge is turned in over the trimmed edge of the under ply and stitched down.")
	top, turned := k.tops()
	fold, raw := s.Second.Sub(k.h), s.Second.Sub(k.p.Turned)
	k.upper(k.from(k.run.Neg(), 0).to(k.half(-4)).level(top).to(fold).level(turned).to(raw), section.Hidden, section.Left)
	k.under(k.from(s.Second.Add(k.run), 0).to(k.half(-2)).level(1).to(s.Trim), section.Hidden, section.Right)
	high := int64(2*top + 3)
	seam := k.half(0)
	if raw.IsZero() {
		seam = k.half(-1)
	}
	k.row("the seam", seam, high, 1, upperPly, underPly)
	k.row("the fell", s.Second.Sub(k.half(3)), high, -3, upperPly, upperPly, underPly)
	k.fell(raw, top, turned)
}

// fell marks the measures of a fell.
func (k *sketch) fell(raw units.Length, top, turned int) {
	s := k.p.Spec
	k.mark("trimmed to", section.Below, k.half(0), s.Trim, 2, s.Trim)
	k.mark("turned in", section.Below, raw, s.Second, int64(2*turned), k.p.Turned)
	k.mark("fell", section.Above, k.half(0), s.Second, int64(2*top), k.p.Finished)
}

// mockFelled has both rows sewn from the right side, the one beside the seam clear
// of the turned edge.
func (k *sketch) mockFelled() {
	s := k.p.Spec
	k.sewn("sewn", false)
	k.stage("folded and stitched", lies+"The edge of the upper allowance is folded in round the trimmed edge; both rows are sewn from the right side.")
	top, turned := k.tops()
	fold, raw := s.Second.Sub(k.h), s.Second.Sub(k.p.Turned)
	k.upper(k.from(k.run.Neg(), 0).to(k.half(-1)).level(top).to(fold).level(turned).to(raw), section.Hidden, section.Right)
	k.under(k.from(s.Second.Add(k.run), 0).to(k.half(1)).level(1).to(s.Trim), section.Hidden, section.Left)
	high := int64(2*top + 3)
	k.level("the seam", 5, upperPly, underPly)
	k.row("through the fold", s.Second.Sub(k.half(3)), high, -3, upperPly, upperPly, underPly)
	beside := k.half(3)
	through := []string{upperPly, underPly, underPly}
	switch {
	case raw.Less(k.h.MulInt(5).DivInt(2)):
		through = []string{upperPly, upperPly, underPly, underPly}
	case raw.Less(k.half(4)):
		beside = k.h.MulInt(9).DivInt(4)
	}
	k.row("beside the seam", beside, high, -3, through...)
	k.fell(raw, top, turned)
}

// mockFrench draws the ridge as it is stitched, and pressed over.
func (k *sketch) mockFrench() {
	s := k.p.Spec
	k.sewn("sewn", false)
	fold, raw, row := s.Second.Sub(k.h), s.Second.Sub(k.p.Turned), s.Second.Sub(k.half(3))
	left := k.run.Neg()
	marks := func(height int64) {
		k.mark("turned in", section.Below, raw, s.Second, height, k.p.Turned)
		k.mark("from seam to folds", section.Above, k.half(0), s.Second, height+2, k.p.Finished)
	}

	// The turned edges may reach the seam: the plies part right beside its row.
	k.stage("edges turned in and stitched", "Right sides together, the edges of both allowances turned in towards each other. They are measured from where the plies part beside the seam.")
	k.upper(k.from(left, 2).to(k.half(-1)).level(3).to(fold).level(2).to(raw), section.Hidden, section.Right)
	k.under(k.from(left, 1).to(k.half(-1)).level(0).to(fold).level(1).to(raw), section.Hidden, section.Left)
	k.row("the seam", k.half(-3), 7, -1, upperPly, underPly)
	k.row("the folds", row, 9, -3, upperPly, upperPly, underPly, underPly)
	marks(4)

	k.stage("pressed", lies+"The ridge is pressed to the right.")
	k.upper(k.from(left, 0).to(k.half(-1)).level(4).to(fold).level(3).to(raw), section.Hidden, section.Right)
	k.under(k.from(s.Second.Add(k.run), 0).to(k.half(1)).level(1).to(fold).level(2).to(raw), section.Hidden, section.Left)
	k.level("the seam", 5, upperPly, underPly)
	k.row("the folds", row, 11, 1, upperPly, upperPly, underPly, underPly)
	marks(6)
}

// untrimmed measures the fell from the inside of its fold, against which the upper
// raw edge lies.
func (k *sketch) untrimmed() {
	s := k.p.Spec
	k.stage("sewn", "Wrong sides together, the under ply folded over the raw edge of the upper one.")
	left, raw := k.run.Neg(), s.First.Sub(k.p.Turned)
	k.under(k.from(left, 0).to(s.First.Add(k.h)).level(2).to(raw), section.Raw, section.Right)
	k.upper(k.from(left, 1).to(s.First), section.Hidden, section.Left)
	k.row("the seam", k.half(0), 3, -3, upperPly, underPly)
	k.mark("from the fold", section.Below, k.half(0), s.First, 0, s.First)
	k.mark("folded over", section.Above, raw, s.First, 4, k.p.Turned)

	k.stage("pressed and stitched", "The garment lies flat, its right side up, the upper ply on the left. The fold is pressed over towards it and stitched down.")
	edge := s.First.Neg()
	k.under(k.from(k.run, 0).to(k.half(3)).level(3).to(edge.Sub(k.h)).level(1).to(edge.Add(k.p.Turned)), section.Hidden, section.Right)
	k.upper(k.from(edge.Sub(k.run), 0).to(k.half(1)).level(2).to(edge), section.Hidden, section.Left)
	k.row("the seam", k.half(0), 9, 3, underPly, upperPly)
	k.row("the fell", edge.Add(k.t), 9, -3, underPly, upperPly, underPly, upperPly)
	k.mark("folded over", section.Below, edge, edge.Add(k.p.Turned), 2, k.p.Turned)
	k.mark("fell", section.Above, edge, k.half(0), 6, k.p.Finished)
}

// bound measures the allowance from the inside of its turn, as far as the binding
// may come, and the binding from its fold to the raw edges.
func (k *sketch) bound() {
	s := k.p.Spec
	k.sewn("sewn", false)
	const binding = "binding"
	strip := k.p.StripSingle

	k.stage("strip sewn on", "Right sides together, the strip for a single binding on top, all raw edges even.")
	end := s.Trim.Sub(strip)
	left := end.Min(k.half(0)).Sub(k.run)
	k.upper(k.from(left, 1).to(s.Trim), section.Raw, section.Right)
	k.under(k.from(left, 0).to(s.Trim), section.Raw, section.Left)
	k.ply(binding, section.Crossed, k.from(s.Trim, 2).to(end), section.Raw, section.Raw, section.Left)
	k.row("the seam", k.half(0), 3, -3, upperPly, underPly)
	k.row("the strip", s.Trim.Sub(s.Second), 7, -3, binding, upperPly, underPly)
	k.mark("allowance", section.Below, k.half(0), s.Trim, 0, s.Trim)
	k.mark("strip from the raw edges", section.Above, s.Trim.Sub(s.Second), s.Trim, 4, s.Second)
	k.mark("strip", section.Above, end, s.Trim, 4, strip)

	edge := k.t.Add(s.Trim)
	in, wall := edge.Sub(s.Second), edge.Add(k.h)
	fold := in.Add(k.h)
	k.stage("bound and pressed", lies+"The binding is wrapped round both allowances, its free edge turned in and stitched down, and pressed to the right.")
	k.upper(k.from(k.run.Neg(), 0).to(k.half(-1)).level(4).to(edge), section.Hidden, section.Right)
	k.under(k.from(edge.Add(k.run), 0).to(k.half(1)).level(3).to(edge), section.Hidden, section.Left)
	k.ply(binding, section.Crossed, k.from(edge, 5).to(fold).level(6).to(wall).level(1).to(fold).level(2).to(edge), section.Hidden, section.Hidden, section.Left)
	k.level("the seam", 5, upperPly, underPly)
	k.row("the strip", in.Add(k.t), 11, 5, binding, upperPly, underPly)
	k.row("the binding", in.Add(k.half(4)), 15, 1, binding, binding, upperPly, underPly, binding, binding)
	k.mark("allowance", section.Below, k.t, edge, 6, s.Trim)
	k.mark("binding", section.Above, in, edge, 12, k.p.Finished)
}

// selfBound measures from the inside of the turn, where the first fold comes to
// lie, to the inside of the second fold.
func (k *sketch) selfBound() {
	s := k.p.Spec
	k.sewn("sewn", false)

	// From x the wide allowance lies at the level z over the trimmed one.
	fold := func(l layer, x units.Length, z int) layer {
		second := x.Add(s.Second)
		l = l.level(z).to(second.Add(k.h)).level(z - 3).to(x.Add(k.h)).level(z - 2)
		if s.Second.Less(k.p.Turned) {
			return l.to(second.Sub(k.h)).level(z - 1).to(second.Sub(k.p.Turned.Sub(s.Second)))
		}
		return l.to(x.Add(k.p.Turned))
	}
	marks := func(x units.Length, z int64) {
		k.mark("trimmed to", section.Below, x, x.Add(s.Trim), 2*z-2, s.Trim)
		k.mark("binding", section.Above, x, x.Add(s.Second), 2*z, k.p.Finished)
	}
	through := []string{upperPly, underPly, upperPly, upperPly}

	zero, once := k.half(0), s.Second.MulInt(2)
	k.stage("folded once", "Right sides together, the under allowance trimmed, the wide one folded over towards it.")
	left := k.beside(once).Neg()
	k.upper(k.from(left, 1).to(once.Sub(k.h)).level(0).to(once.Sub(k.p.Turned)), section.Raw, section.Right)
	k.under(k.from(left, 0).to(s.Trim), section.Raw, section.Left)
	k.row("the seam", zero, 5, -3, upperPly, underPly)
	k.mark("trimmed to", section.Below, zero, s.Trim, 0, s.Trim)
	k.mark("first fold", section.Above, once.Sub(k.p.Turned), once, 2, k.p.Turned)

	k.stage("folded and stitched", "Right sides together, the wide allowance folded twice round the trimmed one, its first fold onto the seam.")
	left = k.run.Neg()
	k.upper(fold(k.from(left, 3), zero, 3), section.Hidden, section.Right)
	k.under(k.from(left, 2).to(s.Trim), section.Hidden, section.Left)
	k.row("the seam", zero, 9, 3, upperPly, underPly)
	k.row("the binding", k.half(3), 9, -3, through...)
	marks(zero, 3)

	k.stage("pressed", lies+"The binding is pressed to the right.")
	k.upper(fold(k.from(left, 0).to(k.half(-1)), k.t, 4), section.Hidden, section.Right)
	k.under(k.from(k.t.Add(s.Second).Add(k.run), 0).to(k.half(1)).level(3).to(k.t.Add(s.Trim)), section.Hidden, section.Left)
	k.level("the seam", 5, upperPly, underPly)
	k.row("the binding", k.half(5), 11, 1, through...)
	marks(k.t, 4)
}
