package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
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
// tenth of the widest of First, Second and half of Strip, but no more than half of
// what the tightest place of the seam has room for. A seam that has no room for
// plies so thick is refused with [fault.Faults] that name each measure and what it
// lacks, as is a measure of more than [MaxDrawn]; a picture is never bent to fit.
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
	s := p.Spec
	switch {
	case s.Kind == NoKind:
		a.Fault("spec.kind", "", kindList(), fault.Missing)
	case !s.Kind.Valid():
		a.Fault("spec.kind", s.Kind.String(), kindList(), fault.Unknown)
	}
	if s.Kind == Graded {
		a.Count("spec.layers", s.Layers, 2, MaxLayers)
	}
	if a.Failed() {
		return nil, a.Err()
	}
	for _, f := range [...]struct {
		path string
		is   units.Length
	}{
		{"spec.first", s.First}, {"spec.second", s.Second}, {"spec.trim", s.Trim}, {"spec.trimUnder", s.TrimUnder},
		{"spec.turned", s.Turned}, {"spec.strip", s.Strip}, {"spec.cord", s.Cord}, {"spec.row", s.Row},
		{"wrapped", p.Wrapped}, {"stripSingle", p.StripSingle},
	} {
		fault.AtMost(&a, f.path, f.is, most, "MaxDrawn", fault.Range)
	}
	needs := p.needs()
	if thickness.IsZero() {
		thickness = s.First.Max(s.Second).Max(s.Strip.DivInt(2)).DivInt(10)
		for _, n := range needs {
			thickness = thickness.Min(n.room.DivInt(n.halves))
		}
	}
	half := thickness.DivInt(2)
	for _, n := range needs {
		switch low := half.MulInt(n.halves); {
		case n.room.Sign() <= 0:
			a.Fault(n.path, n.is.String(), "more than 0 "+n.what, fault.Range)
		case n.room.Less(low):
			a.Fault(n.path, n.is.String(), "at least "+low.String()+" "+n.what+", drawn so thick", fault.Range)
		}
	}
	if a.Failed() {
		return nil, a.Err()
	}
	k := sketch{p: p, t: thickness, h: half}
	k.draw()
	for _, d := range k.out { // whatever the figures of the plan, no wrong picture
		a.Include("", d.Check())
	}
	if a.Failed() {
		return nil, a.Err()
	}
	return k.out, nil
}

// A need is room that the drawing of a seam must have: so many half plies.
type need struct {
	path   string       // the field that is short of it
	is     units.Length // its value
	what   string       // the room
	room   units.Length
	halves int64
}

// needs are the places of a seam where plies and stitches have to fit.
func (p Plan) needs() []need {
	s := p.Spec
	out := []need{{"spec.first", s.First, "from the raw edge to the row", s.First, 4}}
	add := func(path string, is units.Length, what string, room units.Length, halves int64) {
		out = append(out, need{path, is, what, room, halves})
	}
	trim := func(halves int64) { add("spec.trim", s.Trim, "from the seam to the trimmed edge", s.Trim, halves) }
	turned := func() { add("spec.turned", p.Turned, "turned in", p.Turned, 4) }
	switch s.Kind {
	case Plain, Hairline:
		trim(4)
	case French:
		trim(3)
		add("spec.trim", s.Trim, "between the trimmed edges and the second pass", s.Second.Sub(s.Trim), 4)
	case FlatFelled, MockFelled:
		trim(4)
		add("spec.trim", s.Trim, "between the trimmed edge and the fold", s.Second.Sub(s.Trim), 4)
		turned()
		if gap := s.Second.Sub(p.Turned); s.Kind == FlatFelled && gap.Sign() > 0 {
			add("spec.turned", p.Turned, "between the turned edge and the seam", gap, 2)
		}
	case Bound:
		add("spec.second", s.Second, "across the binding", s.Second, 6)
	case MockFrench:
		add("spec.second", s.Second, "from the seam to the folds", s.Second, 5)
		turned()
	case TurnedStitched, UntrimmedFell:
		turned()
	case Welt:
		trim(3)
		add("spec.second", s.Second, "between the trimmed edge and the row", s.Second.Sub(s.Trim), 2)
		add("spec.second", s.Second, "between the row and the wide edge", s.First.Sub(s.Second), 2)
	case Lapped:
		add("spec.row", s.Row, "from the fold to the row", s.Row, 3)
		add("spec.row", s.Row, "between the row and the turned edge", s.First.Sub(s.Row), 2)
		add("spec.row", s.Row, "between the row and the edge beneath", s.Second.Sub(s.Row), 2)
	case LappedTurned:
		turned()
		add("spec.turned", p.Turned, "between the turned edge and the other fold", s.Second.Sub(p.Turned), 4)
	case LappedRaw:
		add("spec.second", s.Second, "across the lap", s.Second, 8)
	case Slot:
		add("spec.second", s.Second, "from the fold to the row", s.Second, 4)
		add("spec.trim", s.Trim, "between the row and the raw edge", s.Trim.Sub(s.Second), 2)
		add("spec.strip", s.Strip, "between each row and the edge of the underlay", s.Strip.DivInt(2).Sub(s.Second), 2)
	case HongKong:
		add("spec.second", s.Second, "across the binding", s.Second, 4)
		add("spec.second", s.Second, "between the seam and the binding", s.Trim.Sub(s.Second), 3)
		add("spec.strip", s.Strip, "caught by the last row", p.Wrapped.Sub(s.Second), 3)
	case SelfBound:
		trim(4)
		turned()
		if over := p.Turned.Sub(s.Second); over.Sign() > 0 {
			add("spec.turned", p.Turned, "round the second fold", over, 4)
		}
	case Piped:
		trim(6)
		add("spec.cord", s.Cord, "across the cord", s.Cord, 4)
	case Graded:
		add("spec.trimUnder", s.TrimUnder, "from the seam to the narrowest edge", s.TrimUnder, 3)
	}
	if s.Finish == Pinked {
		add("spec.trim", s.Trim, "from the pinked edge to the row beside it", s.pinked(), 3)
	}
	return out
}
