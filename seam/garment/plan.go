package garment

import (
	"context"
	"encoding/json"
	"slices"
	"strconv"
	"strings"

	"example.com/clothyard/hem"
	"example.com/clothyard/seam"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/yardage/layout"
)

// A Plan is what becomes of a garment.
type Plan struct {
	Spec Garment `json:"spec,omitzero"` // Spec is the garment, with its tape and its order.

	Seams    []SeamPlan `json:"seams,omitzero"`    // Seams are the seams, drafted and as sewn.
	Hems     []HemPlan  `json:"hems,omitzero"`     // Hems are the hems, drafted and as sewn.
	Edges    []EdgePlan `json:"edges,omitzero"`    // Edges are what becomes of the edges.
	Pairs    []PairPlan `json:"pairs,omitzero"`    // Pairs are how the edges go together.
	Lays     []LayPlan  `json:"lays,omitzero"`     // Lays are how the pieces lie on each cloth.
	Parts    []PartPlan `json:"parts,omitzero"`    // Parts are the parts, planned where enough is known.
	Chosen   []Remedy   `json:"chosen,omitzero"`   // Chosen are the remedies applied.
	Remedies []Remedy   `json:"remedies,omitzero"` // Remedies are what would mend a pair that does not go together, the best first.
	Loose    []string   `json:"loose,omitzero"`    // Loose are the names that stand in no step of the work.
}

// A SeamPlan is a seam as the pattern draws it and as it is sewn.
type SeamPlan struct {
	Name    string    `json:"name,omitzero"`    // Name is that of the seam.
	Drafted seam.Plan `json:"drafted,omitzero"` // Drafted is the seam as the pattern has it.
	Sewn    seam.Plan `json:"sewn,omitzero"`    // Sewn is the seam as it is sewn.
	Changed bool      `json:"changed,omitzero"` // Changed says that the two differ.
	Lost    []string  `json:"lost,omitzero"`    // Lost are the drafted fields that the new kind does not have.
}

// A HemPlan is a hem as the pattern draws it and as it is sewn.
type HemPlan struct {
	Name    string   `json:"name,omitzero"`    // Name is that of the hem.
	Drafted hem.Plan `json:"drafted,omitzero"` // Drafted is the hem as the pattern has it.
	Sewn    hem.Plan `json:"sewn,omitzero"`    // Sewn is the hem as it is sewn.
	Changed bool     `json:"changed,omitzero"` // Changed says that the two differ.
	Lost    []string `json:"lost,omitzero"`    // Lost are the drafted fields that the new kind does not have.
}

// An EdgePlan is what becomes of an edge.
type EdgePlan struct {
	Name    string     `json:"name,omitzero"`    // Name is that of the edge.
	Drafted units.Near `json:"drafted,omitzero"` // Drafted is its drafted length; 0 in where it is not known.
	Sewn    units.Near `json:"sewn,omitzero"`    // Sewn is its length as sewn; 0 in where it is not known.
	Change  units.Near `json:"change,omitzero"`  // Change is how much longer it comes out.
}

// A PairPlan is how two edges go together.
type PairPlan struct {
	Long     string          `json:"long,omitzero"`     // Long is the edge that may be the longer one.
	Short    string          `json:"short,omitzero"`    // Short is the edge that it goes onto.
	How      How             `json:"how,omitzero"`      // How is how it goes onto it.
	Fit      edge.Fit        `json:"fit,omitzero"`      // Fit says whether they go together.
	Change   units.Near      `json:"change,omitzero"`   // Change is how much more the first is longer than the second than the pattern drew.
	Excess   units.Near      `json:"excess,omitzero"`   // Excess is how much longer the first then is; 0 in where a length is not known.
	Fullness units.NearRatio `json:"fullness,omitzero"` // Fullness is the first over the second where it is gathered and both are known.
}

// A Remedy is one change that mends a pair.
type Remedy struct {
	Name   string       `json:"name,omitzero"`   // Name is what it is chosen by, as in cut-drift shoulder.
	Remedy edge.Remedy  `json:"remedy,omitzero"` // Remedy is what is done, and what it comes to.
	Spread units.Length `json:"spread,omitzero"` // Spread is how much longer the piece of an edge is made, where that is the remedy.
}

// Plan works the garment out. The faults are [fault.Faults]. A lay is looked for as long
// as [layout.Patience] has it.
func (g Garment) Plan() (Plan, error) {
	ctx, cancel := context.WithTimeout(context.Background(), layout.Patience)
	defer cancel()
	return g.PlanContext(ctx)
}

// PlanContext is Plan for a caller who wants to say when a lay is looked for no longer:
// the one found by then is the answer.
func (g Garment) PlanContext(ctx context.Context) (Plan, error) {
	var a fault.Audit
	g.check(&a)
	if a.Failed() {
		return Plan{}, a.Err()
	}
	g.Tape = g.tape()
	p := Plan{Spec: g}
	p.seams(&a)
	p.hems(&a)
	p.order(&a)
	if a.Failed() {
		return Plan{}, a.Err()
	}
	if err := p.match(); err != nil {
		return Plan{}, err
	}
	p.lays(ctx, &a)
	p.parts(&a)
	if a.Failed() {
		return Plan{}, a.Err()
	}
	return p, nil
}

// tape is the tape given, or that of the lengths: those of the changes too.
func (g Garment) tape() units.Tape {
	var said struct {
		Tape    units.Tape
		Garment Garment
		Changes []units.Length
	}
	said.Tape, said.Garment = g.Tape, g
	for _, c := range g.Changes {
		for _, patch := range []noun.Patch{c.Value.Sewn, c.Value.Part} {
			var fields map[string]any
			if json.Unmarshal(patch, &fields) != nil {
				continue // a fault that is told where the patch is read
			}
			for _, v := range fields {
				if text, ok := v.(string); ok {
					if l, err := units.Parse(text); err == nil {
						said.Changes = append(said.Changes, l)
					}
				}
			}
		}
	}
	return noun.Tape(said)
}

// seams plans every seam, as drafted and as sewn.
func (p *Plan) seams(a *fault.Audit) {
	for _, s := range p.Spec.Seams {
		drafted := s.Value.Sewn
		if drafted.Kind() == "" {
			drafted.Seam = seam.Plain{}
		}
		plies := drafted.Plies()
		plies.Tape = p.Spec.Tape
		if plies.Drafted.IsZero() {
			plies.Drafted = s.Value.Allowance.of(p.Spec.Tape)
		}
		drafted = drafted.With(plies)
		out := SeamPlan{Name: s.Name}
		var err error
		if out.Drafted, err = drafted.Plan(); err != nil {
			a.Include(fault.Join("seams", s.Name)+".sewn", err)
			continue
		}
		out.Sewn, out.Lost = otherwise(p.Spec, a, s.Name, drafted, func(kind string) []string {
			to := drafted.Begin(kind)
			if to == nil {
				return nil
			}
			return slices.DeleteFunc(noun.Keys(to), isPass)
		})
		out.Changed = out.Sewn.Spec != out.Drafted.Spec
		p.Seams = append(p.Seams, out)
	}
}

// otherwise plans a seam or a hem as it is sewn, which is as drafted but for its change,
// and names the drafted fields that are lost. keep is the fields that one of another kind
// still has of those drafted, nil where there is no such kind.
func otherwise[P any, S interface {
	Kind() string
	Plan() (P, error)
}](g Garment, a *fault.Audit, name string, drafted S, keep func(kind string) []string) (plan P, lost []string) {
	change := find(g.Changes, name)
	refuse(a, name, "part", change.Part)
	sewn := drafted
	if kind, ok := newKind(change.Sewn, drafted.Kind()); ok {
		if keys := keep(kind); keys != nil {
			lost = lose(&sewn, append(keys, "kind"))
		}
	}
	at := fault.Join("changes", name) + ".sewn"
	err := noun.Reader{}.Over(sewn, change.Sewn, &sewn)
	if err == nil {
		plan, err = sewn.Plan()
	}
	a.Include(at, err)
	return plan, lost
}

// isPass reports whether a field means something else in every kind of seam.
func isPass(key string) bool { return key == "first" || key == "second" }

// hems plans every hem, as drafted and as sewn.
func (p *Plan) hems(a *fault.Audit) {
	for _, h := range p.Spec.Hems {
		drafted := h.Value.Sewn
		if drafted.Kind() == "" {
			drafted.Hem = hem.Double{}
		}
		allowed := drafted.Allowed()
		allowed.Tape = p.Spec.Tape
		if allowed.Drafted.IsZero() {
			allowed.Drafted = h.Value.Allowance.of(p.Spec.Tape)
		}
		drafted = drafted.With(allowed)
		out := HemPlan{Name: h.Name}
		var err error
		if out.Drafted, err = drafted.Plan(); err != nil {
			a.Include(fault.Join("hems", h.Name)+".sewn", err)
			continue
		}
		out.Sewn, out.Lost = otherwise(p.Spec, a, h.Name, drafted, func(kind string) []string {
			if drafted.Begin(kind) == nil {
				return nil
			}
			return noun.Keys(hem.Allowance{})
		})
		out.Changed = out.Sewn.Spec != out.Drafted.Spec
		p.Hems = append(p.Hems, out)
	}
}

// refuse tells of a patch that has nothing to change.
func refuse(a *fault.Audit, name, key string, patch noun.Patch) {
	if patch != nil {
		a.Fault(fault.Join("changes", name)+"."+key, "", "nothing here", fault.Unused)
	}
}

// newKind is the kind that a patch names, where it is another.
func newKind(patch noun.Patch, was string) (string, bool) {
	var head struct {
		Kind string `json:"kind"`
	}
	if json.Unmarshal(patch, &head) != nil || head.Kind == "" {
		return "", false
	}
	head.Kind = strings.ToLower(head.Kind)
	return head.Kind, head.Kind != was
}

// lose takes out of a Spec the fields that are not kept, and names them.
func lose[S any](spec *S, keep []string) (lost []string) {
	text, err := json.Marshal(spec)
	if err != nil {
		return nil
	}
	var fields noun.Map[json.RawMessage]
	if json.Unmarshal(text, &fields) != nil {
		return nil
	}
	var left noun.Map[json.RawMessage]
	for _, f := range fields {
		if slices.Contains(keep, f.Name) {
			left = append(left, f)
		} else {
			lost = append(lost, f.Name)
		}
	}
	text, err = json.Marshal(left)
	var fresh S
	if err == nil && json.Unmarshal(text, &fresh) == nil {
		*spec = fresh
	}
	return lost
}

// at is a place in a list.
func at(list string, i int) string { return list + "[" + strconv.Itoa(i) + "]" }
