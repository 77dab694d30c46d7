package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/name"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/ticket"
)

// MaxDrawn is the greatest measure of a hem, a casing or a tuck that is drawn, in
// metres.
const MaxDrawn = 2

// Sections are drawings of the hem edge-on: each stage at which it is stitched,
// where that differs from the finished hem, and then the finished hem as pressed.
// A blind hem is drawn folded back and then opened out, a facing and a binding as
// sewn on and then turned, a turn-up with its hem stitched and then turned up; a
// hem whose first turn is trimmed, first flat with the row that it is turned on. The
// finished edge is at 0 and the garment on the left; where two edges are sewn
// together it is the raw edges that are at 0.
//
// The measures are those of the plan. Each runs to the inside of a fold, where the
// cloth is marked and creased, so that a raw edge turned in by the whole depth of
// the hem lies in the crease; a fold that goes round another is drawn outside it.
// Only the fold of the garment of a blind hem is measured to the outside, since
// the hem stands out beyond it. The Spare of a strip is not drawn: it is what the
// turns of the cloth take up.
//
// The thickness is that of a ply as drawn, and may be no more than the least turn
// of the hem; zero is a twelfth of Depth, or the least turn where that is less. The
// faults are [fault.Faults]: a measure above [MaxDrawn], a thickness that does not
// fold, and the row of a facing that would run along the raw edges of its seam.
func (p Plan) Sections(thickness units.Length) ([]section.Drawing, error) {
	var a fault.Audit
	if p.Spec.Kind() == "" {
		a.Fault("spec.kind", "", "a kind of hem", fault.Missing)
		return nil, a.Err()
	}
	ms := p.Spec.measures()
	thickness = fold(&a, thickness, ms)
	for _, strip := range p.Strips {
		if strip.Name == facing {
			apart(&a, "finishedToStitch", p.FinishedToStitch, p.Taken, "the seam allowances")
		}
	}
	if a.Failed() {
		return nil, a.Err()
	}
	k := sketchOf(ms[0].long, thickness)
	k.title = p.Sheet().Title
	return proven(p.Spec.draw(p, k)...)
}

// planless records a kind that no plan has, and reports it.
func planless[K ~uint8](a *fault.Audit, names name.Names[K], kind K) bool {
	names.Check(a, "spec.kind", kind)
	return a.Failed()
}

// apart records a row at the very place of a raw edge.
func apart(a *fault.Audit, path string, row, edge units.Length, what string) {
	if row == edge {
		a.Fault(path, row.String(), "more or less than {0}, where the raw edge of "+what+" lies", fault.Range, edge)
	}
}

// A measure is a length that is drawn, with its path in the plan.
type measure struct {
	path string
	long units.Length
}

// fold records the measures that are missing or out of reach, and the thickness
// that one of them is too small for. It gives the thickness, by default a twelfth
// of the first measure or the least of them.
func fold(a *fault.Audit, thickness units.Length, turns []measure) units.Length {
	least := turns[0]
	for _, m := range turns {
		a.Need(m.path, m.long)
		fault.AtMost(a, m.path, m.long, units.Metre.Of(MaxDrawn), "MaxDrawn", fault.Range)
		if m.long.Less(least.long) {
			least = m
		}
	}
	if a.Failed() {
		return thickness
	}
	a.NotNegative("thickness", thickness)
	fault.AtMost(a, "thickness", thickness, least.long, least.path, fault.Range)
	if thickness.IsZero() {
		return turns[0].long.DivInt(12).Min(least.long)
	}
	return thickness
}

// proven are the drawings, each of which is what it says.
func proven(ds ...section.Drawing) ([]section.Drawing, error) {
	var a fault.Audit
	for i, d := range ds {
		a.Include("["+ticket.Of(i).String()+"]", d.Check())
	}
	if a.Failed() {
		return nil, a.Err()
	}
	return ds, nil
}

// A sketch is a drawing under way. Heights are in half thicknesses, and the middle
// of the garment is at 0.
type sketch struct {
	section.Drawing
	title string // of the sheet
	t     units.Length
	run   units.Length // how much of the garment is shown beyond the hem
}

// sketchOf shows the garment by three quarters of the depth, or by so much that it
// is seen beside thick folds.
func sketchOf(depth, thickness units.Length) sketch {
	return sketch{t: thickness, run: depth.MulInt(3).DivInt(4).Max(thickness.MulInt(3))}
}

// begin begins the drawing of a stage, the name of which ends its title.
func (k *sketch) begin(stage, desc string) {
	k.Title, k.Desc, k.Thickness = k.title+stage, desc, k.t
}

// cloth adds the garment.
func (k *sketch) cloth(pen section.Pen, start, finish section.End, face section.Face) {
	k.Plies = append(k.Plies, section.Ply{Name: cloth, Fill: section.Hatched, Start: start, Finish: finish, Face: face, Path: pen.Path()})
}

// strip adds a facing, a binding or an applied casing.
func (k *sketch) strip(name string, pen section.Pen, start, finish section.End, face section.Face) {
	k.Plies = append(k.Plies, section.Ply{Name: name, Fill: section.Dotted, Start: start, Finish: finish, Face: face, Path: pen.Path()})
}

// sewn draws a facing or a binding as sewn to the raw edge, which is at 0. Turned is the
// turn of its free edge; nothing where it is folded in half.
func (k *sketch) sewn(p Plan, turn units.Length) {
	name := p.Strips[0].Name
	seam, fold := p.RawToStitch.Neg(), p.Strips[0].Fold.Neg()
	k.begin(", sewn on", "The "+name+" lies right side down on the right side of the cloth, raw edges even on the right.")
	turned := fold.Add(turn)
	if turn.IsZero() {
		turned = origin
	}
	k.cloth(k.from(fold.Sub(k.run), 0).To(origin), section.RunsOn, section.Raw, section.Left)
	k.strip(name, k.from(origin, 2).To(fold.Sub(k.half(1))).Step(1).To(turned), section.Raw, section.Raw, section.Left)
	if turn.IsZero() {
		k.row("seam", seam, 6, -2, name, name, cloth)
	} else {
		k.Stitches = []section.Stitch{{Name: "seam", From: section.At(seam, k.t.MulInt(7).DivInt(4)), To: k.at(seam, -2), Pierce: []string{name, cloth}}}
		k.measure("turned in", section.Above, fold, turned, 4, turn)
	}
	k.measure("seam", section.Below, seam, origin, 0, p.RawToStitch)
	k.measure("from the sewn edge to the fold of the "+name, section.Below, fold, origin, 2, p.Strips[0].Fold)
}

// origin is the finished edge.
var origin units.Length

const (
	cloth   = "cloth"
	lies    = "The garment lies right side down, its finished edge on the right."
	rowName = "from the finished edge to the row"
)

func (k *sketch) half(halves int64) units.Length { return k.t.MulInt(halves).DivInt(2) }

func (k *sketch) at(x units.Length, halves int64) section.Point {
	return section.At(x, k.half(halves))
}

func (k *sketch) from(x units.Length, halves int64) section.Pen {
	return section.From(k.at(x, halves), k.t)
}

// row is a row of stitching at x, from a height down to another.
func (k *sketch) row(name string, x units.Length, top, foot int64, pierce ...string) {
	k.Stitches = append(k.Stitches, section.Stitch{Name: name, From: k.at(x, top), To: k.at(x, foot), Pierce: pierce})
}

// measure writes a measure from x0 to x1, at a height; none where it is nothing.
func (k *sketch) measure(name string, side section.Side, x0, x1 units.Length, halves int64, long units.Length) {
	if long.IsZero() {
		return
	}
	k.Dimensions = append(k.Dimensions, section.Dimension{Name: name, From: k.at(x0, halves), To: k.at(x1, halves), Side: side, Amount: ticket.Long(long)})
}

// times is a name so many times.
func times(n int, name string) []string {
	out := make([]string, n)
	for i := range out {
		out[i] = name
	}
	return out
}
