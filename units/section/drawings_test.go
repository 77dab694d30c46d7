package section_test

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/ticket"
)

func in(s string) units.Length { return units.MustParse(s + " in") }

var zero units.Length

func at(x, y units.Length) section.Point { return section.At(x, y) }

// dim is a measure between two places at the heights given.
func dim(name string, side section.Side, x0, y0, x1, y1 units.Length) section.Dimension {
	return section.Dimension{Name: name, From: at(x0, y0), To: at(x1, y1), Side: side, Amount: ticket.Long(x1.Sub(x0).Abs())}
}

// open is a plain seam pressed open: the stitching lies at 0, the allowances
// under the garment.
func open(take, t, run units.Length) section.Drawing {
	half := t.DivInt(2)
	far := take.Add(run)
	return section.Drawing{
		Title: "Plain seam, pressed open", Desc: "Two pieces of cloth, their right sides up.", Thickness: t, True: in("1/96"),
		Plies: []section.Ply{
			{Name: "left piece", Fill: section.Hatched, Start: section.RunsOn, Finish: section.Raw, Face: section.Left,
				Path: section.From(at(far.Neg(), zero), t).To(half.Neg()).Step(-1).To(take.Neg()).Path()},
			{Name: "right piece", Fill: section.Dotted, Start: section.RunsOn, Finish: section.Raw, Face: section.Right,
				Path: section.From(at(far, zero), t).To(half).Step(-1).To(take).Path()},
		},
		Stitches: []section.Stitch{{Name: "the seam", From: at(t.MulInt(-5).DivInt(4), half.Neg()), To: at(t.MulInt(5).DivInt(4), half.Neg()), Pierce: []string{"left piece", "right piece"}}},
		Dimensions: []section.Dimension{
			dim("left allowance", section.Below, take.Neg(), t.Neg(), zero, t.Neg()),
			dim("right allowance", section.Below, zero, t.Neg(), take, t.Neg()),
		},
	}
}

// frenchFirst is the first pass of a French seam, wrong sides together; the raw
// edges lie at 0.
func frenchFirst(first, t, run units.Length) section.Drawing {
	far, over := first.Add(run).Neg(), t
	return section.Drawing{
		Title: "French seam, first pass", Desc: "Two plies, wrong sides together.", Thickness: t, True: in("1/96"),
		Plies: []section.Ply{
			{Name: "upper", Fill: section.Hatched, Start: section.RunsOn, Finish: section.Raw, Face: section.Left, Path: section.From(at(far, t), t).To(zero).Path()},
			{Name: "under", Fill: section.Dotted, Start: section.RunsOn, Finish: section.Raw, Face: section.Right, Path: section.From(at(far, zero), t).To(zero).Path()},
		},
		Stitches:   []section.Stitch{{Name: "first pass", From: at(first.Neg(), t.Add(over)), To: at(first.Neg(), over.Neg()), Pierce: []string{"upper", "under"}}},
		Dimensions: []section.Dimension{dim("first pass", section.Below, first.Neg(), zero, zero, zero)},
	}
}

// frenchSecond is the second pass: the fold's face at 0, the edges trimmed to trim
// beyond the first pass, which lies inside the fold.
func frenchSecond(second, trim, t, run units.Length) section.Drawing {
	half, far := t.DivInt(2), second.Add(run).Neg()
	h := func(n int64) units.Length { return half.MulInt(n) }
	raw, wall := t.MulInt(2).Add(trim).Neg(), second.Add(t).Neg() // wall: where the plies part for the edges
	return section.Drawing{
		Title: "French seam, second pass", Desc: "The same plies, turned right sides together, the first pass at the fold.", Thickness: t, True: in("1/96"),
		Plies: []section.Ply{
			{Name: "upper", Fill: section.Hatched, Start: section.RunsOn, Finish: section.Hidden, Face: section.Right,
				Path: section.From(at(far, h(1)), t).To(wall).Step(1).To(half.Neg()).Step(-1).To(raw).Path()},
			{Name: "under", Fill: section.Dotted, Start: section.RunsOn, Finish: section.Hidden, Face: section.Left,
				Path: section.From(at(far, h(-1)), t).To(wall).Step(-1).To(half.Neg()).Step(1).To(raw).Path()},
		},
		Stitches: []section.Stitch{
			{Name: "first pass", From: at(h(-4), h(2)), To: at(h(-4), h(-2)), Pierce: []string{"upper", "under"}},
			{Name: "second pass", From: at(second.Neg(), h(6)), To: at(second.Neg(), h(-6)), Pierce: []string{"upper", "under"}},
		},
		Dimensions: []section.Dimension{
			dim("trimmed to", section.Below, raw, half.Neg(), h(-4), half.Neg()),
			dim("second pass", section.Below, second.Neg(), h(-6), zero, zero),
		},
	}
}

// frenchPressed is the finished French seam: the garment laid flat, the ridge
// pressed over on one side.
func frenchPressed(second, trim, t, run units.Length) section.Drawing {
	d := frenchSecond(second, trim, t, run)
	half := t.DivInt(2)
	h := func(n int64) units.Length { return half.MulInt(n) }
	d.Title, d.Desc = "French seam, pressed", "The garment laid flat, right side down, the ridge pressed to the right."
	far := second.Add(run)
	raw := d.Plies[0].Path[len(d.Plies[0].Path)-1].X
	wall := second.Add(t).Neg() // where the right piece turns back
	d.Plies[0].Name, d.Plies[1].Name = "left piece", "right piece"
	d.Plies[0].Path = section.From(at(far.Neg(), h(-5)), t).To(wall.Sub(t)).Step(4).To(half.Neg()).Step(-1).To(raw).Path()
	d.Plies[1].Path = section.From(at(run, h(-5)), t).To(wall).Step(1).To(half.Neg()).Step(1).To(raw).Path()
	for i := range d.Stitches {
		d.Stitches[i].Pierce = []string{"left piece", "right piece"}
	}
	d.Stitches[1].To.Y = h(-4)
	d.Dimensions = []section.Dimension{dim("ridge", section.Above, second.Neg(), h(6), zero, h(3))}
	return d
}

// felled is a flat-felled seam: the right piece's allowance turned in over the
// trimmed one of the left piece and stitched down. The left piece folds back at 0;
// the seam lies inside that fold.
func felled(fell, turned, trim, edge, t, run units.Length) section.Drawing {
	half := t.DivInt(2)
	h := func(n int64) units.Length { return half.MulInt(n) }
	far := fell.Add(run)
	row, raw := fell.Neg().Add(edge), t.Add(trim).Neg()
	return section.Drawing{
		Title: "Flat-felled seam", Desc: "The fell lies to the left, on top.", Thickness: t, True: in("1/64"),
		Plies: []section.Ply{
			{Name: "left piece", Fill: section.Hatched, Start: section.RunsOn, Finish: section.Hidden, Face: section.Left,
				Path: section.From(at(far.Neg(), zero), t).To(half.Neg()).Step(1).To(raw).Path()},
			{Name: "right piece", Fill: section.Dotted, Start: section.RunsOn, Finish: section.Hidden, Face: section.Right,
				Path: section.From(at(run, zero), t).To(half).Step(2).To(fell.Sub(half).Neg()).Step(-1).To(fell.Sub(turned).Neg()).Path()},
		},
		Stitches: []section.Stitch{
			{Name: "the seam", From: at(t.Neg(), t.MulInt(3)), To: at(t.Neg(), t.MulInt(3).DivInt(4)), Pierce: []string{"right piece", "left piece"}},
			{Name: "the fell", From: at(row, h(7)), To: at(row, h(-3)), Pierce: []string{"right piece", "right piece", "left piece"}},
		},
		Dimensions: []section.Dimension{
			dim("turned in", section.Below, fell.Neg(), t, fell.Sub(turned).Neg(), t),
			dim("trimmed to", section.Below, raw, t, t.Neg(), t),
			dim("fell", section.Above, fell.Neg(), h(4), zero, h(4)),
		},
	}
}

// bound is a seam whose allowances are shut together in a single binding of the
// finished width; the binding's outer face lies at 0.
func bound(take, finished, edge, t, run units.Length) section.Drawing {
	half := t.DivInt(2)
	raw := t.MulInt(-3).DivInt(2)
	seam := raw.Sub(take)
	far := seam.Sub(run)
	row := finished.Neg().Add(edge)
	return section.Drawing{
		Title: "Bound seam", Desc: "Two plies, right sides together, their raw edges in one binding.", Thickness: t, True: in("1/96"),
		Plies: []section.Ply{
			{Name: "upper", Fill: section.Hatched, Start: section.RunsOn, Finish: section.Hidden, Face: section.Right, Path: section.From(at(far, t), t).To(raw).Path()},
			{Name: "under", Fill: section.Dotted, Start: section.RunsOn, Finish: section.Hidden, Face: section.Left, Path: section.From(at(far, zero), t).To(raw).Path()},
			{Name: "binding", Fill: section.Crossed, Start: section.Hidden, Finish: section.Hidden, Face: section.Left,
				Path: section.From(at(t.MulInt(-2), t.MulInt(2)), t).To(finished.Sub(half).Neg()).Step(1).To(half.Neg()).Step(-5).To(finished.Sub(half).Neg()).Step(1).To(t.MulInt(-2)).Path()},
		},
		Stitches: []section.Stitch{
			{Name: "the seam", From: at(seam, t.MulInt(2)), To: at(seam, t.Neg()), Pierce: []string{"upper", "under"}},
			{Name: "the binding", From: at(row, t.MulInt(4).Add(half)), To: at(row, t.MulInt(-3).Sub(half)),
				Pierce: []string{"binding", "binding", "upper", "under", "binding", "binding"}},
		},
		Dimensions: []section.Dimension{
			dim("allowance", section.Below, seam, zero, raw, zero),
			dim("binding", section.Above, finished.Neg(), t.MulInt(3), zero, t.MulInt(3)),
		},
	}
}

// doubleHem is a hem turned twice; the finished edge lies at 0.
func doubleHem(first, depth, edge, t, run units.Length) section.Drawing {
	half := t.DivInt(2)
	fold := depth.Sub(half).Neg()
	row := depth.Neg().Add(edge)
	return section.Drawing{
		Title: "Hem turned twice", Desc: "The garment lies right side down, its finished edge on the right.", Thickness: t, True: in("1/96"),
		Plies: []section.Ply{{Name: "cloth", Fill: section.Hatched, Start: section.RunsOn, Finish: section.Hidden, Face: section.Right,
			Path: section.From(at(depth.Add(run).Neg(), zero), t).To(half.Neg()).Step(2).To(fold).Step(-1).To(depth.Neg().Add(first)).Path()}},
		Stitches: []section.Stitch{{Name: "the hem", From: at(row, t.MulInt(3).Add(half)), To: at(row, t.Neg().Sub(half)), Pierce: []string{"cloth", "cloth", "cloth"}}},
		Dimensions: []section.Dimension{
			dim("first turn", section.Below, depth.Neg(), t, depth.Neg().Add(first), t),
			dim("from the finished edge", section.Below, row, t.Neg().Sub(half), zero, zero),
			dim("hem", section.Above, depth.Neg(), t.MulInt(2), zero, t.MulInt(2)),
		},
	}
}

// golden are the drawings whose pictures are kept in testdata.
func golden() map[string]section.Drawing {
	t := in("1/32")
	return map[string]section.Drawing{
		"plain-open":     open(in("5/8"), in("1/20"), in("3/8")),
		"french-first":   frenchFirst(in("3/8"), t, in("3/4")),
		"french-second":  frenchSecond(in("1/4"), in("1/8"), t, in("3/4")),
		"french-pressed": frenchPressed(in("1/4"), in("1/8"), t, in("5/8")),
		"flat-felled":    felled(in("7/16"), in("3/16"), in("1/8"), in("1/16"), t, in("1/2")),
		"bound":          bound(in("5/8"), in("3/8"), in("1/16"), t, in("5/8")),
		"double-hem":     doubleHem(in("1/4"), in("1"), in("1/16"), t, in("5/8")),
	}
}
