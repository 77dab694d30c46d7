package garment

import (
	"errors"

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
		plan, err := e.Plan(spec)
		var faults fault.Faults
		switch {
		case err == nil:
			out.Sheet = plan.Sheet()
		case errors.As(err, &faults):
			for _, f := range faults {
				if f.Kind == fault.Missing {
					out.Needs = append(out.Needs, f.Path)
				}
			}
			if len(out.Needs) < len(faults) {
				a.Include(fault.Join("parts", part.Name)+".spec", err)
			}
		}
		p.Parts = append(p.Parts, out)
	}
}
