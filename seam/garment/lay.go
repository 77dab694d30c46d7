package garment

import (
	"context"
	"slices"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
)

// A LayPlan is how the pieces of one cloth lie on it.
type LayPlan struct {
	Cloth Cloth       `json:"cloth,omitzero"` // Cloth is which one.
	Lay   layout.Plan `json:"lay,omitzero"`   // Lay is where each piece goes, with its allowances as cut.
	Needs []string    `json:"needs,omitzero"` // Needs are the pieces whose size is still to be given; nothing is laid before.
}

// lays lays the pieces of each cloth that is there.
func (p *Plan) lays(ctx context.Context, a *fault.Audit) {
	for _, c := range p.Spec.Cloths {
		path := fault.Join("cloths", c.Name)
		var out LayPlan
		if err := out.Cloth.UnmarshalText([]byte(c.Name)); err != nil || out.Cloth == 0 {
			a.Fault("cloths", fault.Quote(c.Name), cloths.List(), fault.Unknown)
			continue
		}
		spec := layout.Spec{Cloth: c.Value}
		for _, piece := range p.Spec.Pieces {
			if max(piece.Value.Cloth, Outer) != out.Cloth {
				continue
			}
			if piece.Value.unsized() {
				out.Needs = append(out.Needs, piece.Name)
				continue
			}
			spec.Pieces = append(spec.Pieces, p.laid(a, piece.Name, piece.Value))
		}
		if len(out.Needs) == 0 && !a.Failed() {
			var err error
			out.Lay, err = longer(ctx, spec)
			laidFaults(a, path, spec, err)
		}
		p.Lays = append(p.Lays, out)
	}
}

// laidFaults records the faults of a lay: those of a piece by its name, others under the
// path of the cloth.
func laidFaults(a *fault.Audit, path string, spec layout.Spec, err error) {
	for _, f := range fault.Under("", err) {
		under := path
		for i, piece := range spec.Pieces {
			if rest, ok := strings.CutPrefix(f.Path, at("pieces", i)); ok {
				f.Path, under = fault.Join("pieces", piece.Name)+rest, ""
			}
		}
		a.Include(under, fault.Faults{f})
	}
}

func (p Piece) unsized() bool {
	return len(p.Outline) == 0 && (p.Wide.IsZero() || p.Long.IsZero())
}

// longer is a lay; where the cloth is too short for any, it is one on cloth that is as
// long as need be, so that what is wanting can be told.
func longer(ctx context.Context, s layout.Spec) (layout.Plan, error) {
	plan, err := s.Plan(ctx)
	if err == nil || s.Cloth.Long.IsZero() {
		return plan, err
	}
	long := s.Cloth.Long
	s.Cloth.Long = units.Length{}
	if plan, err = s.Plan(ctx); err == nil {
		plan.Spec.Cloth.Long = long
		plan.Spare = long.Sub(plan.Used)
		plan.Fits = plan.Spare.Sign() >= 0
	}
	return plan, err
}

// laid is a piece with what is cut outside its seam lines.
func (p *Plan) laid(a *fault.Audit, name string, piece Piece) layout.Piece {
	out := layout.Piece{Name: name, Wide: piece.Wide, Long: piece.Long, Outline: piece.Outline, Count: max(1, piece.Cut), Pair: piece.Mirrored, Fold: piece.Fold, Turn: piece.Turn}
	path := fault.Join("pieces", name)
	sides := 4
	if len(piece.Outline) > 0 {
		sides = len(piece.Outline)
	}
	switch {
	case len(piece.Along) == 0:
		return out
	case len(piece.Along) != sides:
		a.Count(path+".along", len(piece.Along), sides, sides)
		return out
	}
	for i, along := range piece.Along {
		out.Allowance = append(out.Allowance, p.allowance(a, at(path+".along", i), name, along, slices.Contains(piece.Along[:i], along)))
	}
	return out
}

// allowance is what a piece is cut outside a seam or a hem along it; again says that it
// has that seam along another side before.
func (p *Plan) allowance(a *fault.Audit, path, piece, along string, again bool) units.Length {
	if along == "" {
		return units.Length{}
	}
	if i := slices.IndexFunc(p.Hems, func(h HemPlan) bool { return h.Name == along }); i >= 0 {
		return p.Hems[i].Sewn.LineToRaw
	}
	i := slices.IndexFunc(p.Seams, func(s SeamPlan) bool { return s.Name == along })
	if i < 0 {
		a.Fault(path, fault.Quote(along), "the name of a seam or a hem, or nothing", fault.Unknown)
		return units.Length{}
	}
	upper, under := p.Seams[i].Sewn.Upper.Cut, p.Seams[i].Sewn.Under.Cut
	joins := find(p.Spec.Seams, along).Joins
	on := slices.Index(joins, piece)
	switch {
	case upper == under:
	case on < 0:
		a.Fault(path, fault.Quote(along), "a seam that joins "+piece+", since its plies are cut unlike", fault.Conflict)
	case on > 0 || again && slices.Contains(joins[1:], piece):
		return under
	}
	return upper
}

// spread reports whether a remedy chosen makes a piece longer, which its outline does not
// know.
func (p Plan) spread() bool {
	return slices.ContainsFunc(p.Chosen, func(r Remedy) bool { return !r.Spread.IsZero() })
}
