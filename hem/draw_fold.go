package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
)

// origin is the finished edge.
var origin units.Length

const (
	cloth   = "cloth"
	lies    = "The garment lies right side down, its finished edge on the right."
	rowName = "from the finished edge to the row"
)

// drawRow is the flat edge with the row that a first turn, trimmed later, turns on.
func (p Plan) drawRow(k sketch) section.Drawing {
	first := p.RawToFirstFold.Neg()
	k.begin(p.title()+", the row to turn on", "The cloth lies flat, right side down, its raw edge on the right.")
	k.Plies = []section.Ply{{Name: cloth, Fill: section.Hatched, Start: section.RunsOn, Finish: section.Raw, Face: section.Right,
		Path: k.from(first.Sub(k.run), 0).To(origin).Path()}}
	k.row("row to turn on", first, 3, -3, cloth)
	k.measure("first turn", section.Below, first, origin, 0, p.RawToFirstFold)
	return k.Drawing
}

// drawTurned is a hem turned once or twice and stitched.
func (p Plan) drawTurned(k sketch) section.Drawing {
	s := p.Spec
	depth, row := s.Depth.Neg(), p.FinishedToStitch.Neg()
	k.begin(p.title(), lies)
	pen := k.from(depth.Sub(k.run), 0).To(k.half(1))
	if s.oneFold() {
		k.Plies = []section.Ply{{Name: cloth, Fill: section.Hatched, Start: section.RunsOn, Finish: section.Neat, Face: section.Right, Path: pen.Step(1).To(depth).Path()}}
		k.row("hem stitching", row, 4, -2, cloth, cloth)
		k.measure("hem", section.Above, depth, origin, 2, s.Depth)
		k.measure("from the raw edge to the row", section.Below, depth, row, 2, p.RawToStitch)
		k.measure(rowName, section.Below, row, origin, 0, p.FinishedToStitch)
		return k.Drawing
	}
	k.Plies = []section.Ply{{Name: cloth, Fill: section.Hatched, Start: section.RunsOn, Finish: section.Hidden, Face: section.Right,
		Path: p.turnIn(k, pen.Step(2).To(depth.Sub(k.half(1))).Step(-1))}}
	k.row("hem stitching", row, 6, -2, times(p.caught(2), cloth)...)
	if s.Trim.Sign() > 0 {
		// The row lies in the fold that was turned on it.
		k.Stitches = append(k.Stitches, section.Stitch{Name: "row turned on", From: k.at(depth.Sub(k.half(3)), 3), To: k.at(depth, 3), Pierce: []string{cloth}})
		k.Desc += " A row close to the first fold, which no measure places, is left out."
	}
	k.measure("hem", section.Above, depth, origin, 4, s.Depth)
	k.measure(rowName, section.Below, row, origin, 0, p.FinishedToStitch)
	p.measureTurn(&k, depth, 2)
	return k.Drawing
}

// turnIn ends a pen at the first fold with the turn, as it is once trimmed.
func (p Plan) turnIn(k sketch, pen section.Pen) []section.Point {
	return pen.To(p.Spec.turned().Sub(p.Spec.Depth)).Path()
}

// caught is how many plies the row goes through: those of the hem beside its first
// turn, and the turn where the row is within it.
func (p Plan) caught(others int) int {
	if p.Spec.oneFold() || p.Spec.turned().Less(p.Spec.Stitch) {
		return others
	}
	return others + 1
}

func (p Plan) measureTurn(k *sketch, depth units.Length, halves int64) {
	name := "first turn"
	if p.Spec.Trim.Sign() > 0 {
		name = "first turn, trimmed"
	}
	turned := p.Spec.turned()
	k.measure(name, section.Below, depth, depth.Add(turned), halves, turned)
}

// drawBack is a blind hem with the garment folded back on its right side.
func (p Plan) drawBack(k sketch) section.Drawing {
	s := p.Spec
	depth, row, back := s.Depth.Neg(), p.FinishedToStitch.Neg(), p.FinishedToBack.Neg()
	k.begin(p.title()+", folded back for stitching", "The hem lies right side down with its finished edge on the right, and the garment is folded back over it on its right side.")
	end, pen, lift := section.Neat, k.from(depth, 0), int64(1)
	if !s.oneFold() {
		// The raw edge is shut in only as far as the garment covers it.
		end, lift = section.Hidden, 2
		if s.First.Less(s.Back) {
			end = section.Raw
		}
		pen = k.from(depth.Add(s.First), 2).To(depth.Sub(k.half(1))).Step(-1)
	}
	k.Plies = []section.Ply{{Name: cloth, Fill: section.Hatched, Start: end, Finish: section.RunsOn, Face: section.Right,
		Path: pen.To(k.half(1)).Step(int(lift)).To(back.Add(k.half(1))).Step(1).To(k.run).Path()}}
	swing := 2*lift + 1 // between the two plies of the garment
	top := swing
	if row == back {
		top = 2*lift - 1 // under the fold
	}
	k.row("row on the hem", row, top, -2, times(p.caught(1), cloth)...)
	k.Stitches = append(k.Stitches, section.Stitch{Name: "bites into the fold of the garment", From: k.at(back.Add(k.t), swing), To: k.at(row, swing), Pierce: []string{cloth}})
	k.measure("hem", section.Above, depth, origin, 0, s.Depth)
	k.measure("stands out", section.Below, depth, back, 0, s.Back)
	k.measure(rowName, section.Below, row, origin, 0, p.FinishedToStitch)
	k.measure("from the finished edge to the fold of the garment", section.Below, back, origin, 0, p.FinishedToBack)
	return k.Drawing
}

// drawBlind is a blind hem with the garment opened out.
func (p Plan) drawBlind(k sketch) section.Drawing {
	s := p.Spec
	depth, row, back := s.Depth.Neg(), p.FinishedToStitch.Neg(), p.FinishedToBack.Neg()
	k.begin(p.title()+", opened out", lies)
	pen := k.from(depth.Sub(k.run), 0).To(k.half(1))
	top := int64(4)
	if s.oneFold() {
		k.Plies = []section.Ply{{Name: cloth, Fill: section.Hatched, Start: section.RunsOn, Finish: section.Neat, Face: section.Right, Path: pen.Step(1).To(depth).Path()}}
	} else {
		top = 6
		k.Plies = []section.Ply{{Name: cloth, Fill: section.Hatched, Start: section.RunsOn, Finish: section.Hidden, Face: section.Right,
			Path: p.turnIn(k, pen.Step(2).To(depth.Sub(k.half(1))).Step(-1))}}
	}
	k.row("row on the hem", row, top, 1, times(p.caught(1), cloth)...)
	k.row("bites into the garment", back, 1, -3, cloth)
	k.measure("hem", section.Above, depth, origin, top-2, s.Depth)
	k.measure(rowName, section.Below, row, origin, 0, p.FinishedToStitch)
	k.measure("from the finished edge to the bites", section.Below, back, origin, 0, p.FinishedToBack)
	if !s.oneFold() {
		p.measureTurn(&k, depth, 2)
	}
	return k.Drawing
}

// drawTurnIn is a turn-up whose hem is turned in on the top fold and stitched.
func (p Plan) drawTurnIn(k sketch) section.Drawing {
	raw := p.RawToSecondFold.Neg()
	row := raw.Add(p.RawToStitch)
	k.begin(p.title()+", the hem turned in and stitched", "The leg lies right side down, the top fold of the turn-up on the right.")
	k.Plies = []section.Ply{{Name: cloth, Fill: section.Hatched, Start: section.RunsOn, Finish: section.Neat, Face: section.Right,
		Path: k.from(raw.Sub(k.run), 0).To(k.half(1)).Step(1).To(raw).Path()}}
	k.row("hem stitching", row, 4, -2, cloth, cloth)
	k.measure("from the raw edge to the top fold", section.Above, raw, origin, 2, p.RawToSecondFold)
	k.measure("from the raw edge to the row", section.Below, raw, row, 2, p.RawToStitch)
	return k.Drawing
}

// drawTurnUp is a turn-up as worn: the folded edge turned up on the foot of the leg.
func (p Plan) drawTurnUp(k sketch) section.Drawing {
	s := p.Spec
	raw, top, row := p.RawToFirstFold.Neg(), p.RawToSecondFold.Sub(p.RawToThirdFold), p.FinishedToStitch.Neg()
	k.begin(p.title(), "The leg lies right side down, its foot on the right; the turn-up is underneath.")
	k.Plies = []section.Ply{{Name: cloth, Fill: section.Hatched, Start: section.RunsOn, Finish: section.Neat, Face: section.Right,
		Path: k.from(raw.Min(top).Sub(k.run), 0).To(k.half(1)).Step(-1).To(top.Sub(k.half(1))).Step(-1).To(k.half(3)).Step(3).To(raw).Path()}}
	k.row("hem stitching", row, 4, -1, cloth, cloth)
	k.measure("hem inside", section.Above, raw, origin, 2, s.First)
	k.measure("from the foot to the row", section.Above, row, origin, 0, p.FinishedToStitch)
	k.measure("turn-up", section.Below, top, origin, -4, s.Depth)
	return k.Drawing
}
