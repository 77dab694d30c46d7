package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Favour makes the under piece of a finished edge (a facing, an under collar)
// smaller along its outside edges, so that the seam rolls to the under side and
// does not show. Zero means not given.
type Favour struct {
	By    units.Length `json:"by,omitzero"`    // how much smaller at each outside edge, square to it; default 1/16 in for fine cloth and 1/8 in for thick, common practice
	Thick bool         `json:"thick,omitzero"` // the cloth is thick
	Edge  units.Length `json:"edge,omitzero"`  // of the upper piece along its outside edge, on the seam line; not given: only the difference is worked out

	// Bend is the turning of that edge in radians, its corners counted: more than 0
	// where the piece lies inside the curve, as the outside of a collar, less where
	// outside, as at a neck. Not given: a straight edge.
	Bend units.Ratio `json:"bend,omitzero"`
}

// A FavourPlan is the under piece. It is comparable.
type FavourPlan struct {
	Spec    Favour       `json:"spec,omitzero"`    // as solved
	Assumed []string     `json:"assumed,omitzero"` // the fields of Spec filled with a default
	Shorter units.Length `json:"shorter,omitzero"` // how much shorter its outside edge comes out: Bend x By; less than zero is longer
	Under   units.Length `json:"under,omitzero"`   // its outside edge: Edge less Shorter; zero where Edge is not given
	Row     RowPlan      `json:"row,omitzero"`     // the understitching that holds it
	Corner  units.Length `json:"corner,omitzero"`  // how far before a corner the understitching stops: 1 in, common practice
}

// Plan works out the under piece. The faults are [fault.Faults].
func (f Favour) Plan() (FavourPlan, error) {
	var a fault.Audit
	a.NotNegative("by", f.By)
	if a.NotNegative("edge", f.Edge); a.Failed() {
		return FavourPlan{}, a.Err()
	}
	p := FavourPlan{Corner: units.Inch.Of(1)}
	if f.By.IsZero() {
		f.By, p.Assumed = inch(1, 16), []string{"by"}
		if f.Thick {
			f.By = inch(1, 8)
		}
	}
	p.Spec = f
	p.Shorter = f.By.Scale(f.Bend)
	if !f.Edge.IsZero() {
		if p.Under = f.Edge.Sub(p.Shorter); p.Under.Sign() <= 0 {
			a.Fault("edge", short(f.Edge.String()), "more than "+short(p.Shorter.String())+" (bend x by)", fault.Range)
			return FavourPlan{}, a.Err()
		}
	}
	row, err := Row{Kind: UnderStitch}.Plan()
	if err != nil {
		return FavourPlan{}, err
	}
	p.Row = row
	return p, nil
}

// Solve fills in the default. It fails as [Favour.Plan] does, and then returns f as
// it is.
func (f Favour) Solve() (Favour, error) {
	p, err := f.Plan()
	if err != nil {
		return f, err
	}
	return p.Spec, nil
}

// Sheet is the plan as work.
func (p FavourPlan) Sheet() ticket.Sheet {
	f := p.Spec
	sh := ticket.Sheet{Title: "Under piece, made smaller", Assumed: p.Assumed, Cautions: []ticket.Caution{ticket.CutCare(), ticket.IronCare()}}
	if f.By.IsZero() {
		return sh // the plan of nothing has nothing to say
	}
	sh.Lines = append(make([]ticket.Line, 0, 2), line("outside edge shorter by", p.Shorter, plus(f.By, "smaller"), ticket.Term{Op: ticket.By, Amount: ticket.Times(f.Bend), Name: "bend in radians"}))
	cut := ticket.Step{Do: "Cut the under piece smaller along its outside edges, not where it joins the garment", At: ticket.Long(f.By), From: "the upper piece's edge"}
	if !f.Edge.IsZero() {
		sh.Lines = append(sh.Lines, line("outside edge of the under piece", p.Under, plus(f.Edge, "of the upper"), minus(p.Shorter, "shorter")))
		cut.Check = ticket.Check{What: "its outside edge, on the seam line", Want: ticket.Long(p.Under), Give: hand(), Mend: "shave the raw edge evenly; leave the corners last"}
	}
	under := p.Row.Sheet().Steps[0]
	sh.Steps = []ticket.Step{cut,
		{Do: "Pin the outside edges together and stitch them as one, the upper piece eased to the under", Together: ticket.RightTogether},
		under,
		{Do: "Stop the understitching before each corner", At: ticket.Long(p.Corner), From: "the corner", Press: "with the seam rolled to the under side"}}
	sh.Sources = []source.Cite{source.Practise("under piece smaller at its outside edges"), p.Row.Spec.Kind.cite()}
	return sh
}
