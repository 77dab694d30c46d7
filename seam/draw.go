package seam

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/section"
)

// MaxDrawn is the greatest measure, in metres, of a seam that is drawn.
const MaxDrawn = 2

// Sections draws the seam edge-on, stage by stage: as each row is sewn, and last
// the finished seam as the sheet presses it. A row after which the seam is only
// pressed is shown in the finished seam. Every measure in the drawings is a figure
// of the plan; what follows from the thickness alone, the room that folds take and
// how close an edge-stitch lies, is no measure.
//
// Thickness is that of one ply as drawn, which may be more than it is. Zero takes a
// tenth of the widest row, ridge, lap or half strip, but no more than half of what the
// tightest place of the seam has room for. A seam that has no room for plies so thick is
// refused with [fault.Faults] that name each measure and what it lacks, as is a measure
// of more than [MaxDrawn]; a picture is never bent to fit.
//
// A plain seam has two drawings, sewn and pressed; French three, its two passes and
// pressed; the lapped seams one. The cord of a piped seam is a gap that its strip
// goes round, drawn square. Of the finishes, overcasting and zigzag make an end
// [section.Neat]; pinking leaves it raw and shows the row beside it.
//
// A turned edge may come as far as the seam: then the measures beyond the seam begin
// at the inside of that turn. An edge may lie against the inside of a fold: then
// measures to it end there. The picture marks both ends of every measure.
func (p Plan) Sections(thickness units.Length) ([]section.Drawing, error) {
	var a fault.Audit
	most := units.Metre.Of(MaxDrawn)
	a.NotNegative("thickness", thickness)
	fault.AtMost(&a, "thickness", thickness, most, "MaxDrawn", fault.Range)
	if p.Spec.Kind() == "" {
		a.Fault("spec.kind", "", "a kind of seam", fault.Missing)
	}
	if g, ok := p.Spec.Seam.(Graded); ok {
		a.Count("spec.layers", g.Layers, 2, MaxLayers)
		a.Count("grades", len(p.Grades), g.Layers, g.Layers)
	}
	if a.Failed() {
		return nil, a.Err()
	}
	for key, value := range noun.Values(p.Spec.Seam) {
		if l, ok := value.(units.Length); ok && !slices.Contains(noun.Keys(Allowance{}), key) {
			fault.AtMost(&a, "spec."+key, l, most, "MaxDrawn", fault.Range)
		}
	}
	size := p.Spec.size(p)
	if thickness.IsZero() {
		thickness = size.ply.DivInt(10)
		for _, n := range size.needs {
			thickness = thickness.Min(n.room.DivInt(n.halves))
		}
	}
	half := thickness.DivInt(2)
	for _, n := range size.needs {
		switch low := half.MulInt(n.halves); {
		case n.room.Sign() <= 0:
			a.Fault("spec."+n.path, n.is.String(), "more than 0 "+n.what, fault.Range)
		case n.room.Less(low):
			a.Fault("spec."+n.path, n.is.String(), "at least {0} "+n.what+", drawn so thick", fault.Range, low)
		}
	}
	if a.Failed() {
		return nil, a.Err()
	}
	k := sketch{p: p, t: thickness, h: half}
	k.run = k.beside(size.wide)
	p.Spec.draw(&k)
	for _, d := range k.out { // whatever the figures of the plan, no wrong picture
		a.Include("", d.Check())
	}
	if a.Failed() {
		return nil, a.Err()
	}
	return k.out, nil
}

// A size is what the drawings of a seam must have room for.
type size struct {
	ply   units.Length // a tenth of it is a ply as thick as it is drawn by default
	wide  units.Length // the finished seam, beside which the garment is drawn
	needs []need       // the places where plies and stitches have to fit
}

// A need is room that the drawing of a seam must have: so many half plies.
type need struct {
	path   string       // the field of the Spec that is short of it
	is     units.Length // its value
	what   string       // the room
	room   units.Length
	halves int64
}

// fromRaw is the room beside the row that makes a seam.
func fromRaw(path string, first units.Length) need {
	return need{path, first, "from the raw edge to the row", first, 4}
}

// trimNeed is the room beside a trimmed edge.
func trimNeed(trim units.Length, halves int64) need {
	return need{"trim", trim, "from the seam to the trimmed edge", trim, halves}
}

// turnNeed is the room of a turned edge.
func turnNeed(turned units.Length) need { return need{"turned", turned, "turned in", turned, 4} }
