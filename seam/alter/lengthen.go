package alter

import (
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Lengthening is a pattern piece made longer, or shorter, at a line square to its length,
// where a slanting edge of it (a side seam) is sewn to an edge of another piece, as long
// as it, and must still match. Two edges that slant alike stay alike, both pieces spread
// by the same; two that do not need not.
type Lengthening struct {
	// By is the change, along the length of the piece: positive spreads it, negative folds
	// it up.
	By units.Length `json:"by,omitzero"`
	// Height is that of the edge, end to end, along the length of the piece.
	Height units.Length `json:"height,omitzero"`
	// Run is how far the edge runs across the piece, end to end. May be omitted; the default
	// is 0, straight up and down.
	Run units.Length `json:"run,omitzero" noun:"zero"`
	// WithRun is the same of the edge that it is sewn to, whose height follows, since the two
	// match before the change. May be omitted; the default is 0.
	WithRun units.Length `json:"withRun,omitzero" noun:"zero"`
}

// A LengtheningPlan is what both edges come to, each drawn again as a straight
// line from end to end.
type LengtheningPlan struct {
	Spec       Lengthening `json:"spec,omitzero"`       // as given
	Before     units.Near  `json:"before,omitzero"`     // both edges, before the change
	After      units.Near  `json:"after,omitzero"`      // the edge, after it
	Gain       units.Near  `json:"gain,omitzero"`       // After less Before: not By, unless the edge is straight up and down
	WithHeight units.Near  `json:"withHeight,omitzero"` // of the edge that it is sewn to, end to end, along the length of its piece

	// WithBy is how much the other piece must be changed, so that its edge is After
	// too; where both slant alike it is By.
	WithBy units.Near `json:"withBy,omitzero"`
	Out    units.Near `json:"out,omitzero"` // By less WithBy: how far the other piece would be out, were it changed by By too

	// Jog is how far the lower part of the edge lies aside of the upper part drawn
	// straight on, once the piece is spread: By x Run / Height. The edge is drawn
	// again from end to end, not along either part.
	Jog units.Length `json:"jog,omitzero"`
}

// Plan works out both edges. The faults are [fault.Faults].
func (l Lengthening) Plan() (LengtheningPlan, error) {
	var a fault.Audit
	if l.By.IsZero() {
		a.Fault("by", "", "more than 0 in to lengthen, less to shorten", fault.Missing)
	}
	a.Need("height", l.Height)
	a.NotNegative("run", l.Run)
	a.NotNegative("withRun", l.WithRun)
	if a.Failed() {
		return LengtheningPlan{}, a.Err()
	}
	tall := l.Height.Add(l.By)
	if tall.Sign() <= 0 {
		a.Fault("height", l.Height.String(), "more than "+l.By.Neg().String()+" (what is folded up)", fault.Range)
		return LengtheningPlan{}, a.Err()
	}
	before := l.Height.Times(l.Height).Add(l.Run.Times(l.Run))
	after := tall.Times(tall).Add(l.Run.Times(l.Run))
	with := l.WithRun.Times(l.WithRun)
	if before.Cmp(with) <= 0 || after.Cmp(with) <= 0 {
		a.Fault("withRun", l.WithRun.String(), "less than the edge is long, before and after the change", fault.Range)
		return LengtheningPlan{}, a.Err()
	}
	p := LengtheningPlan{Spec: l, Jog: l.Run.Scale(l.By.Div(l.Height))}
	var failed error
	root := func(square units.Area) units.Near {
		n, err := units.Sqrt(square, units.Length{})
		if err != nil {
			failed = err
		}
		return n
	}
	if l.Run.IsZero() {
		p.Before, p.After = units.Exactly(l.Height), units.Exactly(tall)
	} else {
		p.Before, p.After = root(before), root(after)
	}
	p.Gain = p.After.Sub(p.Before)
	if l.Run == l.WithRun {
		p.WithHeight, p.WithBy = units.Exactly(l.Height), units.Exactly(l.By)
	} else {
		p.WithHeight = root(before.Sub(with))
		p.WithBy = root(after.Sub(with)).Sub(p.WithHeight)
	}
	p.Out = p.WithBy.Neg().Plus(l.By)
	if failed != nil {
		a.Fault("height", l.Height.String(), "lengths whose square roots can be enclosed", fault.KindOf(failed))
		return LengtheningPlan{}, a.Err()
	}
	units.Settle(&p.Before, &p.After, &p.Gain, &p.WithHeight, &p.WithBy, &p.Out)
	return p, nil
}

// Sheet is the change as work on paper.
func (p LengtheningPlan) Sheet() ticket.Sheet {
	l := p.Spec
	sh := ticket.Sheet{Title: "Piece made longer", Cautions: []ticket.Caution{ticket.CutCare()}}
	if l.By.IsZero() {
		return sh // the plan of no change has nothing to say
	}
	sh.Answer = []ticket.Line{ticket.Line{Label: "the edge comes out longer by", Result: ticket.About(p.Gain)}.Turned("the edge comes out shorter by")}
	do := "Cut the paper along the line and spread it"
	if l.By.Sign() < 0 {
		sh.Title, do = "Piece made shorter", "Fold the paper along the line and tape the fold flat"
	}
	other := p.WithBy
	if l.By.Sign() < 0 {
		other = other.Neg()
	}
	sh.Lines = append(make([]ticket.Line, 0, 4),
		ticket.Line{Label: "the edge gains", Result: ticket.About(p.Gain), Terms: []ticket.Term{
			{Amount: ticket.About(p.After), Name: "after"}, {Op: ticket.Minus, Amount: ticket.About(p.Before), Name: "before"}}},
		ticket.Sum("the lower part steps aside by", p.Jog, ticket.Add(l.Run, "across"), ticket.Term{Op: ticket.By, Amount: ticket.Times(l.By.Div(l.Height)), Name: "change over height"}),
		ticket.Line{Label: "other piece changed by", Result: ticket.About(p.WithBy)},
		ticket.Line{Label: "out, were it changed by the same", Result: ticket.About(p.Out), Terms: []ticket.Term{
			ticket.Add(l.By, "this piece"), {Op: ticket.Minus, Amount: ticket.About(p.WithBy), Name: "the other"}}})
	sh.Steps = []ticket.Step{
		{Do: "Draw a line across both pieces, square to the grain, between the same two notches"},
		{Do: do, At: ticket.Long(l.By.Abs()), From: "line to line, the grain kept straight"},
		{Do: "Do the same to the other piece", At: ticket.About(other), From: "line to line, the grain kept straight"},
		{Do: "Draw both edges again from end to end", Check: ticket.Check{
			What: "each of the two edges, on its seam line", Want: ticket.About(p.After), Give: sew.Hand(noun.Tape(l)), Mend: "change the piece whose edge is out, never the ease"}},
	}
	if n, err := p.Out.Sign(); err != nil || n != 0 {
		sh.Cautions = append(sh.Cautions, ticket.Caution{
			Text:  "The two edges slant unequally: changed by the same they no longer match. Move the notches with the lines.",
			Refer: "plain geometry",
		})
	}
	sh.Sources = []source.Cite{source.Practise("lengthen and shorten on a line square to the grain, and draw the edges again")}
	return sh
}
