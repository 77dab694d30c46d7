package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
)

// Sections is a drawing of the casing edge-on, with its rows and with nothing
// threaded. The finished edge is at 0, and the garment on the left; it runs on to
// the right too under an applied casing, the upper edge of which is at 0. Measures
// run to the inside of each fold, as in [Plan.Sections].
//
// The thickness is that of a ply as drawn, and may be no more than the turn or the
// depth; zero is a twelfth of the depth, or the turn where that is less. The faults
// are [fault.Faults]: a measure above [MaxDrawn], a thickness that does not fold,
// and an upper row that would run along the raw edge of the turn.
func (p CasingPlan) Sections(thickness units.Length) ([]section.Drawing, error) {
	s := p.Spec
	var a fault.Audit
	if planless(&a, casings, s.Kind) {
		return nil, a.Err()
	}
	k := sketchOf(p.Depth, fold(&a, thickness, []measure{{"depth", p.Depth}, {"rawToFold", p.RawToFold}}))
	if p.Rows == 2 {
		apart(&a, "finishedToUpper", p.FinishedToUpper, p.Depth.Sub(s.Turn), "the turn")
	}
	if a.Failed() {
		return nil, a.Err()
	}
	k.title = p.Sheet().Title
	return proven(p.draw(k))
}

func (p CasingPlan) draw(k sketch) section.Drawing {
	s := p.Spec
	depth, upper, lower := p.Depth.Neg(), p.FinishedToUpper.Neg(), p.FinishedToLower.Neg()
	turned := depth.Add(p.RawToFold)
	name := cloth
	k.begin("", "The garment lies right side down, the finished edge of the casing on the right.")
	fold := k.half(1)
	if s.Applied {
		name = "strip"
		k.Title += ", applied"
		k.Desc = "The garment lies right side down with the strip on it, the upper edge of the strip on the right."
		k.cloth(k.from(depth.Sub(k.run), 0).To(k.run), section.RunsOn, section.RunsOn, section.Right)
		k.strip(name, k.from(s.Turn.Neg(), 2).To(fold).Step(1).To(depth.Sub(fold)).Step(-1).To(turned), section.Hidden, section.Hidden, section.Right)
	} else {
		k.cloth(k.from(depth.Sub(k.run), 0).To(fold).Step(2).To(depth.Sub(fold)).Step(-1).To(turned), section.RunsOn, section.Hidden, section.Right)
	}
	if p.Rows == 2 {
		k.row("upper row", upper, 6, -2, p.through(name, upper)...)
	}
	k.row("lower row", lower, 6, -2, p.through(name, lower)...)
	k.measure("casing", section.Above, depth, origin, 4, p.Depth)
	k.measure("tunnel", section.Below, lower, upper, 0, s.Tunnel)
	k.measure("above the upper row", section.Below, upper, origin, 0, p.FinishedToUpper)
	k.measure("below the lower row", section.Below, depth, lower, 0, s.Lower)
	k.measure("turned in", section.Below, depth, turned, 2, p.RawToFold)
	return k.Drawing
}

// through are the plies under a row: the casing, a turn where the row is within
// it, and the garment.
func (p CasingPlan) through(name string, row units.Length) []string {
	out := []string{name}
	if row.Less(p.RawToFold.Sub(p.Depth)) || p.Spec.Applied && p.Spec.Turn.Neg().Less(row) {
		out = append(out, name)
	}
	return append(out, cloth)
}

// Sections are drawings of one tuck edge-on: folded and stitched, standing out from
// the section, which then runs upright, and pressed to one side with the section
// laid flat. In the first the fold is at 0, in the others the stitching. Measures
// run to the inside of each fold, as in [Plan.Sections].
//
// The thickness is that of a ply as drawn, and may be no more than Depth; zero is a
// twelfth of it. The faults are [fault.Faults]: a depth above [MaxDrawn], and a
// thickness that does not fold.
func (p TucksPlan) Sections(thickness units.Length) ([]section.Drawing, error) {
	s := p.Spec
	var a fault.Audit
	if planless(&a, tuckKinds, s.Kind) {
		return nil, a.Err()
	}
	k := sketchOf(s.Depth, fold(&a, thickness, []measure{{"spec.depth", s.Depth}}))
	if a.Failed() {
		return nil, a.Err()
	}
	k.title = p.Sheet().Title
	return proven(p.drawStitched(k), p.drawStanding(k), p.drawPressed(k))
}

func (p TucksPlan) drawStitched(k sketch) section.Drawing {
	depth := p.Spec.Depth.Neg()
	far := depth.Sub(k.run)
	k.begin(", one tuck stitched", "The section is folded, wrong sides together, the fold on the right.")
	k.cloth(k.from(far, 0).To(k.half(1)).Step(1).To(far), section.RunsOn, section.RunsOn, section.Right)
	k.row("tuck", depth, 4, -2, cloth, cloth)
	k.measure("depth", section.Below, depth, origin, 0, p.Spec.Depth)
	return k.Drawing
}

// drawStanding lays the tuck level, since measures are taken along the drawing, and
// has the section upright.
func (p TucksPlan) drawStanding(k sketch) section.Drawing {
	depth := p.Spec.Depth
	k.begin(", one tuck standing", "The section runs upright, its right side to the right; the tuck stands out to the right.")
	k.cloth(k.from(k.half(-1), 7).Step(-3).To(depth.Add(k.half(1))).Step(-1).To(k.half(-1)).Step(-3), section.RunsOn, section.RunsOn, section.Left)
	k.row("tuck", origin, 2, -2, cloth, cloth)
	k.measure("depth", section.Below, origin, depth, 0, depth)
	return k.Drawing
}

func (p TucksPlan) drawPressed(k sketch) section.Drawing {
	depth := p.Spec.Depth.Neg()
	k.begin(", one tuck pressed", "The section lies right side up, the tuck pressed to the left.")
	k.cloth(k.from(depth.Sub(k.run), 0).To(k.half(1)).Step(1).To(depth.Sub(k.half(1))).Step(1).To(k.half(3)).Step(-2).To(k.run.Add(k.t.MulInt(2))), section.RunsOn, section.RunsOn, section.Left)
	k.row("tuck", origin, 6, 1, cloth, cloth)
	k.measure("depth", section.Above, depth, origin, 4, p.Spec.Depth)
	return k.Drawing
}
