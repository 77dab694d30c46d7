package garment

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
)

// A side is a side of a corner and what lies there.
type side struct{ field, name string }

func (c Corner) sides() [4]side {
	return [...]side{{"left", c.Left}, {"right", c.Right}, {"above", c.Above}, {"below", c.Below}}
}

// outlines is the lay of the pieces by their outlines, on the cloth of s; no
// pieces where none has an outline. An outline takes the same rectangle as the
// piece with its allowances.
func (w *planner) outlines(s layout.Spec) (layout.Spec, error) {
	s.Pieces = nil
	if !slices.ContainsFunc(w.g.Pieces, func(p Piece) bool { return len(p.Outline) > 0 }) {
		return s, nil
	}
	var a fault.Audit
	for i, p := range w.g.Pieces {
		r := w.rectangle(p)
		r.Pair = p.Pair
		for _, c := range p.Outline {
			r.Outline = append(r.Outline, layout.Point{
				X: c.X.Sub(w.allowance(p, c.Left, false)).Add(w.allowance(p, c.Right, true)),
				Y: c.Y.Sub(w.allowance(p, c.Above, false)).Add(w.allowance(p, c.Below, true)),
			})
		}
		s.Pieces = append(s.Pieces, r)
		one := layout.Spec{Cloth: layout.Cloth{Wide: r.Wide.Add(r.Long)}, Pieces: []layout.Piece{r}}
		if _, err := one.Solve(); err != nil {
			for _, f := range fault.Under("", err) {
				f.Path = at("pieces", i, "outline")
				a.Include("", fault.Faults{f})
			}
		}
	}
	return s, a.Err()
}

// allowance is what is cut beyond the line of a seam or a hem as chosen; other
// says that it lies at the right-hand side or below.
func (w *planner) allowance(p Piece, name string, other bool) units.Length {
	if w.g.seam(name) >= 0 {
		return w.ply(w.p.AsChosen, name, p.Upper, p.Under, other).Cut
	}
	if k := w.g.hem(name); k >= 0 {
		return w.p.Hems[k].AsChosen.Spec.Cut
	}
	return units.Length{}
}
