package garment

import (
	"errors"
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/ticket"
)

// A PartPlan is a part of the garment.
type PartPlan struct {
	Name  string       `json:"name,omitzero"`  // Name is that of the part.
	Noun  string       `json:"noun,omitzero"`  // Noun is the sum that plans it.
	Sheet ticket.Sheet `json:"sheet,omitzero"` // Sheet is how it is made, where enough is known.
	Needs []string     `json:"needs,omitzero"` // Needs are the fields that are still to be given.
}

// parts plans the parts whose fields are known.
func (p *Plan) parts(a *fault.Audit) {
	for _, part := range p.Spec.Parts {
		change := find(p.Spec.Changes, part.Name)
		refuse(a, part.Name, "sewn", change.Sewn)
		out := PartPlan{Name: part.Name, Noun: part.Value.Noun}
		if out.Noun == "" {
			if part.Value.Spec != nil || change.Part != nil {
				a.Fault(fault.Join("parts", part.Name)+".noun", "", "the name of a sum, since there are fields", fault.Missing)
			}
			p.Parts = append(p.Parts, out)
			continue
		}
		e, ok := registry.Find(out.Noun)
		if !ok {
			a.Include(fault.Join("parts", part.Name), registry.Unknown(out.Noun))
			continue
		}
		spec := e.New()
		if err := (noun.Reader{}).Over(struct{}{}, part.Value.Spec, spec); err != nil {
			a.Include(fault.Join("parts", part.Name)+".spec", err)
			continue
		}
		if err := (noun.Reader{}).Over(spec, change.Part, spec); err != nil {
			a.Include(fault.Join("changes", part.Name)+".part", err)
			continue
		}
		out.Needs = p.take(a, part, spec)
		plan, err := e.Plan(spec)
		var faults fault.Faults
		switch {
		case err == nil:
			out.Sheet = plan.Sheet()
		case errors.As(err, &faults):
			for _, f := range faults {
				if f.Kind == fault.Missing && !slices.Contains(out.Needs, f.Path) {
					out.Needs = append(out.Needs, f.Path)
				}
			}
			if !missing(faults) {
				a.Include(fault.Join("parts", part.Name)+".spec", err)
			}
		}
		p.Parts = append(p.Parts, out)
	}
}

// missing reports whether all that is wrong is that something is not given.
func missing(faults fault.Faults) bool {
	return !slices.ContainsFunc(faults, func(f *fault.Fault) bool { return f.Kind != fault.Missing })
}

// take fills the fields of a part that are an edge as sewn or the length of a lay, and
// names those of which that is not known.
func (p *Plan) take(a *fault.Audit, part noun.Item[Part], spec any) (needs []string) {
	for _, t := range part.Value.Takes {
		path := fault.Join(fault.Join("parts", part.Name)+".takes", t.Name)
		l, known := p.length(t.Value)
		switch {
		case !known:
			a.Fault(path, fault.Quote(t.Value), "the name of an edge, or of a cloth", fault.Unknown)
		case l.IsZero():
			needs = append(needs, t.Name)
		default:
			var patch noun.Patch
			err := noun.Reader{}.Pairs([]string{t.Name + "=" + l.String()}, &patch)
			if err == nil {
				err = noun.Reader{}.Over(spec, patch, spec)
			}
			a.Include(path, err)
		}
	}
	return needs
}

// length is the length of an edge as sewn, or of the cloth that a lay takes; 0 in where
// it is not known exactly.
func (p *Plan) length(name string) (l units.Length, known bool) {
	for _, e := range p.Edges {
		if e.Name == name {
			l, _ = e.Sewn.Exact()
			return l, true
		}
	}
	for _, lay := range p.Lays {
		if lay.Cloth.String() == name {
			return lay.Lay.Used, true
		}
	}
	return l, false
}
