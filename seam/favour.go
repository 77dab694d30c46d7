package seam

import (
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Favour is a way of making the under piece of a finished edge (a facing, an under collar) smaller
// along its outside edges, so that the seam rolls to the under side and does not show.
type Favour struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape on
	// whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// By is how much smaller the under piece is at each outside edge, square to it. May be
	// omitted; the default is 1/16 in (2 mm) for fine cloth and 1/8 in (3 mm) for thick:
	// common practice.
	By units.Length `json:"by,omitzero"`
	// Thick says that the cloth is thick.
	Thick bool `json:"thick,omitzero"`
	// Edge is that of the upper piece along its outside edge, on the seam line. May be
	// omitted; the difference alone is then worked out.
	Edge units.Length `json:"edge,omitzero"`
	// Bend is how far that edge turns, its corners counted: positive where the piece lies
	// inside the curve, as the outside of a collar, negative where outside, as at a neck. May
	// be omitted; the default is a straight edge.
	Bend units.Angle `json:"bend,omitzero" noun:"zero"`
}

// A FavourPlan is the under piece.
type FavourPlan struct {
	Spec    Favour       `json:"spec,omitzero"`    // as solved
	Assumed []string     `json:"assumed,omitzero"` // the fields of Spec filled with a default
	Shorter units.Near   `json:"shorter,omitzero"` // how much shorter its outside edge comes out: By times Bend; negative where it is longer
	Under   units.Near   `json:"under,omitzero"`   // its outside edge: Edge less Shorter; zero where Edge is omitted
	Row     RowPlan      `json:"row,omitzero"`     // the understitching that holds it
	Corner  units.Length `json:"corner,omitzero"`  // how far before a corner the understitching stops: 1 in, or 2.5 cm, common practice
}

// Plan works out the under piece. The faults are [fault.Faults].
func (f Favour) Plan() (FavourPlan, error) {
	var a fault.Audit
	given := f
	f.Tape = noun.Tape(f)
	f.Tape.Check(&a, "tape")
	a.NotNegative("by", f.By)
	if a.NotNegative("edge", f.Edge); a.Failed() {
		return FavourPlan{}, a.Err()
	}
	if fill(&f.By, f.Tape.Of(inch(1, 16), units.Millimetre.Of(2))); f.Thick && given.By.IsZero() {
		f.By = f.Tape.Of(inch(1, 8), mm(3))
	}
	p := FavourPlan{Spec: f, Assumed: noun.Assumed(given, f), Corner: f.Tape.Of(inch(1, 1), mm(25))}
	p.Shorter = f.Bend.InRadians().Of(f.By)
	if !f.Edge.IsZero() {
		p.Under = units.Exactly(f.Edge).Sub(p.Shorter)
		if n, err := p.Under.Sign(); err != nil || n <= 0 {
			a.Fault("edge", f.Edge.String(), "more than {0} (by times bend)", fault.Range, p.Shorter.Settled())
			return FavourPlan{}, a.Err()
		}
	}
	var err error
	p.Row, err = Row{Tape: f.Tape, Kind: UnderStitch}.Plan()
	units.Settle(&p.Shorter, &p.Under)
	return p, err
}

// Sheet is the plan as work.
func (p FavourPlan) Sheet() ticket.Sheet {
	f := p.Spec
	sh := ticket.Sheet{Title: "Under piece, made smaller", Assumed: p.Assumed, Cautions: []ticket.Caution{ticket.CutCare(), ticket.IronCare()}}
	if f.By.IsZero() {
		return sh // the plan of nothing has nothing to say
	}
	sh.Answer = []ticket.Line{{Label: "cut the under piece smaller by", Result: ticket.Long(f.By)}}
	sh.Lines = append(make([]ticket.Line, 0, 2), bent("outside edge shorter by", p.Shorter, f.By, "smaller", f.Bend))
	cut := ticket.Step{Do: "Cut the under piece smaller along its outside edges, not where it joins the garment", At: ticket.Long(f.By), From: "the upper piece's edge"}
	if !f.Edge.IsZero() {
		sh.Lines = append(sh.Lines, ticket.Line{Label: "outside edge of the under piece", Result: ticket.About(p.Under), Terms: []ticket.Term{
			plus(f.Edge, "of the upper"), {Op: ticket.Minus, Amount: ticket.About(p.Shorter), Name: "shorter"}}})
		cut.Check = ticket.Check{What: "its outside edge, on the seam line", Want: ticket.About(p.Under), Give: sew.Hand(f.Tape), Mend: "shave the raw edge evenly; leave the corners last"}
	}
	under := p.Row.Sheet().Steps[0]
	sh.Steps = []ticket.Step{cut,
		{Do: "Pin the outside edges together and stitch them as one, the upper piece eased to the under", Together: ticket.RightTogether},
		under,
		{Do: "Stop the understitching before each corner", At: ticket.Long(p.Corner), From: "the corner", Press: "with the seam rolled to the under side"}}
	sh.Sources = []source.Cite{source.Practise("under piece smaller at its outside edges"), p.Row.Spec.cite()}
	return sh
}

// bent is what a bend makes of a distance; its working where that is rational.
func bent(label string, result units.Near, of units.Length, name string, bend units.Angle) ticket.Line {
	l := ticket.Line{Label: label, Result: ticket.About(result)}
	if r, exact := bend.InRadians().Exact(); exact {
		l.Terms = []ticket.Term{plus(of, name), {Op: ticket.By, Amount: ticket.Times(r), Name: "bend in radians"}}
	}
	return l
}
