package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/ticket"
)

// A sketch is a seam being drawn. X is 0 at the seam, Y is a level times the
// thickness: level 0 is the garment where it lies flat.
type sketch struct {
	p    Plan
	t, h units.Length // a ply and half of it
	run  units.Length // how much of the garment is drawn beside the finished seam
	out  []section.Drawing
}

// A layer is a ply being drawn from level to level.
type layer struct {
	path []section.Point
	t    units.Length
}

// at begins a layer at a height, from at a level.
func (k *sketch) at(x, y units.Length) layer       { return layer{[]section.Point{section.At(x, y)}, k.t} }
func (k *sketch) from(x units.Length, z int) layer { return k.at(x, k.t.MulInt(int64(z))) }

func (l layer) end() section.Point { return l.path[len(l.path)-1] }

// to goes along to x.
func (l layer) to(x units.Length) layer {
	return layer{append(l.path, section.At(x, l.end().Y)), l.t}
}

// level goes up or down to a level, height to a height.
func (l layer) level(z int) layer { return l.height(l.t.MulInt(int64(z))) }
func (l layer) height(y units.Length) layer {
	if y == l.end().Y {
		return l
	}
	return layer{append(l.path, section.At(l.end().X, y)), l.t}
}

// beside is how much of the garment is drawn beside a seam so wide.
func (k *sketch) beside(wide units.Length) units.Length {
	return wide.Scale(units.RatioOf(2, 3)).Max(k.t.MulInt(6))
}

// half is so many half plies.
func (k *sketch) half(n int64) units.Length { return k.h.MulInt(n) }

// stage begins a drawing.
func (k *sketch) stage(name, desc string) {
	k.out = append(k.out, section.Drawing{
		Title: k.p.Spec.Title() + ", " + name, Desc: desc, Thickness: k.t, True: k.p.Spec.Plies().Thickness,
	})
}

func (k *sketch) last() *section.Drawing { return &k.out[len(k.out)-1] }

// ply adds a ply. A garment's starts where it runs on.
func (k *sketch) ply(name string, fill section.Fill, l layer, start, finish section.End, face section.Face) {
	d := k.last()
	d.Plies = append(d.Plies, section.Ply{Name: name, Fill: fill, Path: l.path, Start: start, Finish: finish, Face: face})
}

const (
	upperPly = "upper ply"
	underPly = "under ply"
)

// upper and under add the two plies of the garment.
func (k *sketch) upper(l layer, finish section.End, face section.Face) {
	k.ply(upperPly, section.Hatched, l, section.RunsOn, finish, face)
}

func (k *sketch) under(l layer, finish section.End, face section.Face) {
	k.ply(underPly, section.Dotted, l, section.RunsOn, finish, face)
}

// row adds a row through the cloth at x; from and to are heights in half plies.
func (k *sketch) row(name string, x units.Length, from, to int64, pierce ...string) {
	d := k.last()
	d.Stitches = append(d.Stitches, section.Stitch{Name: name, From: section.At(x, k.half(from)), To: section.At(x, k.half(to)), Pierce: pierce})
}

// level adds a row where plies stand upright side by side at the seam, as far to
// both sides as so many quarter plies.
func (k *sketch) level(name string, quarters int64, pierce ...string) {
	d := k.last()
	reach := k.h.MulInt(quarters).DivInt(2)
	d.Stitches = append(d.Stitches, section.Stitch{Name: name, From: section.At(reach.Neg(), k.h), To: section.At(reach, k.h), Pierce: pierce})
}

// mark adds a measure, between two places at a height in half plies.
func (k *sketch) mark(name string, side section.Side, from, to units.Length, height int64, is units.Length) {
	d := k.last()
	y := k.half(height)
	d.Dimensions = append(d.Dimensions, section.Dimension{Name: name, From: section.At(from, y), To: section.At(to, y), Side: side, Amount: ticket.Long(is)})
}

// sewn is the first row of a seam whose raw edges lie even; wrong says that the
// wrong sides are together.
func (k *sketch) sewn(name string, first units.Length, wrong bool) {
	desc, up, down := "Right sides together, the raw edges even.", section.Right, section.Left
	if wrong {
		desc, up, down = "Wrong sides together, the raw edges even.", section.Left, section.Right
	}
	if s := k.p.Spec.Plies(); s.Cut != s.CutUnder {
		desc += " The plies were cut with unequal allowances, so their drafted lines lie apart."
	}
	k.stage(name, desc)
	left := k.beside(first).Neg()
	k.upper(k.from(left, 1).to(first), section.Raw, up)
	k.under(k.from(left, 0).to(first), section.Raw, down)
	k.row("the seam", units.Length{}, 5, -3, upperPly, underPly)
	k.mark("from the raw edge", section.Below, units.Length{}, first, 0, first)
}

// lies says how the garment lies in a finished seam.
const lies = "The garment lies flat, its right side down, the upper ply on the left. "
