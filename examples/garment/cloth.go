package garment

import (
	"context"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage"
	"example.com/clothyard/yardage/layout"
)

// cloth sets the cloth against the envelope and against a lay of the pieces.
func (w *planner) cloth(ctx context.Context) error {
	c, out := w.g.Cloth, &w.p.Cloth
	if len(w.g.Pieces) == 0 {
		return nil
	}
	var err error
	if !c.Asked.IsZero() && !c.AskedWidth.IsZero() {
		if out.Width, err = (yardage.Width{Asked: c.Asked, From: c.AskedWidth, To: c.Width}).Plan(); err != nil {
			return fault.Under("cloth", err)
		}
	}
	remnant := yardage.Remnant{Have: c.Have, HaveWidth: c.Width, Asked: c.Asked, AskedWidth: c.AskedWidth,
		ShrinkLength: c.ShrinkLong, ShrinkWidth: c.ShrinkWide, Selvedge: c.Selvedge, Ends: c.Ends}
	if out.Remnant, err = remnant.Plan(); err != nil {
		return fault.Under("cloth", err)
	}
	spec := layout.Spec{Work: c.Work, Cloth: layout.Cloth{Wide: out.Remnant.WashedWidth, Selvedge: c.Selvedge, Long: out.Remnant.Length}}
	nest, err := w.outlines(spec)
	if err != nil {
		return err
	}
	for _, p := range w.g.Pieces {
		r := w.rectangle(p)
		out.Pieces = out.Pieces.Add(r.Wide.Times(r.Long).MulInt(int64(r.Count)))
		spec.Pieces = append(spec.Pieces, r)
	}
	if out.Lay, err = longer(ctx, &spec); err != nil {
		return err
	}
	if len(nest.Pieces) > 0 {
		if out.Nest, err = longer(ctx, &nest); err != nil {
			return err
		}
	}
	out.Need = out.Lay.Used
	wide := out.Lay.Wide
	if len(w.g.Lay) > 0 {
		own, err := w.own(spec)
		if err != nil {
			out.OwnFault = underLay(err).Error()
		} else {
			out.Own, out.Need, wide = own, own.Used, own.Wide
		}
	}
	remnant.Need, remnant.NeedWidth = out.Need, wide
	if out.Remnant, err = remnant.Plan(); err != nil {
		return fault.Under("cloth", err)
	}
	out.Purchase, err = yardage.Purchase{Need: out.Need, Ends: c.Ends, Shrink: c.ShrinkLong, Counter: c.Counter}.Plan()
	return fault.Under("cloth", err).OrNil()
}

// longer finds a lay; where the cloth is shorter than any lay the pieces are laid
// as long as need be, so that the length wanting can be told.
func longer(ctx context.Context, s *layout.Spec) (layout.Plan, error) {
	p, err := s.Plan(ctx)
	if err != nil {
		s.Cloth.Long = units.Length{}
		p, err = s.Plan(ctx)
	}
	return p, err
}

// rectangle is a piece with its allowances as chosen.
func (w *planner) rectangle(p Piece) layout.Piece {
	r := layout.Piece{Name: p.Name, Wide: p.Wide, Long: p.Long, Count: p.Count, Turn: p.Turn}
	for i, s := range p.Sides {
		r.Wide = r.Wide.Add(w.ply(w.p.AsChosen, s, p.Upper, p.Under, i > 0).Cut)
	}
	for i, s := range p.Ends {
		r.Long = r.Long.Add(w.ply(w.p.AsChosen, s, p.Upper, p.Under, i > 0).Cut)
	}
	if k := w.g.hem(p.Hem); k >= 0 {
		r.Long = r.Long.Add(w.p.Hems[k].AsChosen.Spec.Cut)
	}
	return r
}

// own proves the lay that the garment gives, and tells whether it is within the
// cloth's length. It may hold no longer once a seam or a hem is changed, which is
// told and not refused.
func (w *planner) own(spec layout.Spec) (layout.Plan, error) {
	spec.Cloth.Long = units.Length{}
	p := layout.Plan{Spec: spec}
	margin := spec.Cloth.Selvedge
	var far units.Length
	for _, l := range w.g.Lay {
		one := layout.Placement{Piece: w.g.piece(l.Piece), Copy: l.Copy, Across: l.Across, X: l.X.Add(margin), Y: l.Y}
		wide, long := one.Size(spec)
		p.Placements = append(p.Placements, one)
		p.Wide = p.Wide.Max(l.X.Add(wide))
		far = far.Max(l.Y.Add(long))
	}
	p.Lay, p.Used = far, far
	if err := layout.Verify(spec, p.Placements); err != nil {
		return layout.Plan{}, underLay(err)
	}
	p.Density = w.p.Cloth.Pieces.Div(far.Times(spec.Cloth.Usable()))
	p.Spare = w.p.Cloth.Remnant.Length.Sub(far)
	p.Fits = p.Spare.Sign() >= 0
	return p, nil
}

// underLay gives the verifier's faults the paths of this garment.
func underLay(err error) fault.Faults {
	fs := fault.Under("lay", fault.Most(err))
	out := make(fault.Faults, len(fs))
	for i, f := range fs {
		g := *f
		g.Path = strings.Replace(g.Path, "lay.placements", "lay", 1)
		out[i] = &g
	}
	return out
}
