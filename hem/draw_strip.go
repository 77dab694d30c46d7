package hem

import "example.com/clothyard/units/section"

const (
	facing  = "facing"
	binding = "binding"
)

// strip is what the strip of p is called.
func (p Plan) strip() string {
	if p.Spec.Kind == Bound {
		return binding
	}
	return facing
}

// drawSewn is a facing or a binding as sewn to the raw edge, which is at 0.
func (p Plan) drawSewn(k sketch) section.Drawing {
	s, name := p.Spec, p.strip()
	seam, fold := p.RawToStitch.Neg(), p.StripToFold.Neg()
	k.begin(p.title()+", sewn on", "The "+name+" lies right side down on the right side of the cloth, raw edges even on the right.")
	turned := fold.Add(s.First)
	if s.Doubled {
		turned = origin
	}
	k.Plies = []section.Ply{
		{Name: cloth, Fill: section.Hatched, Start: section.RunsOn, Finish: section.Raw, Face: section.Left, Path: k.from(fold.Sub(k.run), 0).To(origin).Path()},
		{Name: name, Fill: section.Dotted, Start: section.Raw, Finish: section.Raw, Face: section.Left,
			Path: k.from(origin, 2).To(fold.Sub(k.half(1))).Step(1).To(turned).Path()},
	}
	if s.Doubled {
		k.row("seam", seam, 6, -2, name, name, cloth)
	} else {
		k.Stitches = []section.Stitch{{Name: "seam", From: section.At(seam, k.t.MulInt(7).DivInt(4)), To: k.at(seam, -2), Pierce: []string{name, cloth}}}
		k.measure("turned in", section.Above, fold, turned, 4, s.First)
	}
	k.measure("seam", section.Below, seam, origin, 0, p.RawToStitch)
	k.measure("from the sewn edge to the fold of the "+name, section.Below, fold, origin, 2, p.StripToFold)
	return k.Drawing
}

// drawFaced is a facing turned in and its free edge stitched down. The allowances
// of the seam lie on the garment and under the facing.
func (p Plan) drawFaced(k sketch) section.Drawing {
	s := p.Spec
	depth, row, seam, raw := s.Depth.Neg(), p.FinishedToStitch.Neg(), s.Favour.Neg(), p.RawToFirstFold.Neg()
	turned := depth.Add(s.First)
	k.begin(p.title()+", turned in", lies)
	// Where there is room, the facing steps down beyond the allowances; where there
	// is none, the turn lies level with the allowance of the facing, or on it.
	foot := raw.Sub(k.t)
	steps := !foot.Less(turned) && (raw.Less(row) || row.Less(foot))
	pen, top := k.from(raw, 4).To(seam.Add(k.half(1))), 3
	shut, ours := section.Hidden, section.Hidden // the allowances of the facing and of the garment
	if raw.Less(row) && !steps {
		ours = section.Raw // nothing lies ahead of it, since the row is nearer the finished edge
	}
	switch {
	case steps:
		pen = pen.Step(1).To(raw.Sub(k.half(1))).Step(-1)
	case raw.Less(turned):
		pen, top, shut = pen.Step(2), 4, ours
	default:
		pen = pen.Step(1)
	}
	k.Plies = []section.Ply{
		{Name: cloth, Fill: section.Hatched, Start: section.RunsOn, Finish: ours, Face: section.Right,
			Path: k.from(depth.Min(raw).Sub(k.run), 0).To(k.half(1)).Step(1).To(raw).Path()},
		{Name: facing, Fill: section.Dotted, Start: shut, Finish: section.Hidden, Face: section.Right,
			Path: pen.To(depth.Sub(k.half(1))).Step(-1).To(turned).Path()},
	}
	k.row("seam", seam, 5, 1, facing, cloth)
	pierce := times(p.caught(1), facing)
	if raw.Less(row) {
		pierce = append(pierce, facing, cloth)
	}
	k.row("free edge", row, int64(2*top+2), -2, append(pierce, cloth)...)
	k.measure("facing", section.Above, depth, origin, int64(2*top), s.Depth)
	k.measure("favour", section.Above, seam, origin, 2, s.Favour)
	k.measure(rowName, section.Below, row, origin, 0, p.FinishedToStitch)
	k.measure("seam", section.Below, raw, seam, 2, s.Seam)
	k.measure("turned in", section.Below, depth, turned, 2, s.First)
	return k.Drawing
}

// drawBound is a binding folded over the raw edge, its free edge on the seam.
func (p Plan) drawBound(k sketch) section.Drawing {
	s := p.Spec
	depth, seam := s.Depth.Neg(), p.FinishedToStitch.Neg()
	raw := seam.Add(s.Seam)
	k.begin(p.title(), "The cloth lies right side up, its bound edge on the right.")
	edge, top, under := depth.Sub(k.half(1)), int64(4), int64(3)
	k.Plies = []section.Ply{
		{Name: cloth, Fill: section.Hatched, Start: section.RunsOn, Finish: section.Hidden, Face: section.Left, Path: k.from(depth.Sub(k.run), 0).To(raw).Path()},
		{Name: binding, Fill: section.Dotted, Start: section.Hidden, Finish: section.Hidden, Face: section.Left,
			Path: k.from(raw, 2).To(edge).Step(1).To(k.half(1)).Step(-4).To(edge).Step(1).To(depth.Add(s.First)).Path()},
	}
	through := []string{binding, cloth}
	if s.Doubled {
		top, under, through = 8, 5, []string{binding, binding, cloth}
		k.Plies[1].Path = k.from(raw, 2).To(depth.Sub(k.half(3))).Step(3).To(k.half(3)).Step(-6).To(edge).Step(1).
			To(k.half(1)).Step(4).To(edge).Step(-1).To(raw).Path()
	}
	k.row("seam", seam, under, -1, through...)
	k.row("free edge, hemmed to the seam", depth, -1, -5, binding, binding)
	k.measure("binding", section.Above, depth, origin, top, s.Depth)
	k.measure("seam", section.Below, seam, raw, 0, s.Seam)
	if !s.Doubled {
		k.measure("turned in", section.Below, depth, depth.Add(s.First), -2, s.First)
	}
	return k.Drawing
}
