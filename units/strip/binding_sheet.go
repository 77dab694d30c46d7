package strip

import (
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is how the binding is cut, joined and laid, with the working behind it.
func (p BindingPlan) Sheet() ticket.Sheet {
	s := p.Spec
	title := "A binding of joined pieces"
	if s.Ring {
		title = "A binding joined to a ring"
	}
	if s.Pieces == 0 {
		return ticket.Sheet{Title: title} // the plan of nothing has nothing to say
	}
	steps := make([]ticket.Step, 0, 5)
	steps = append(steps, p.cutStep())
	if p.Joins > 0 {
		steps = append(steps, p.joinStep())
	}
	if !s.Ends.IsZero() {
		steps = append(steps, ticket.Step{
			Do: "Mark or turn the two ends", At: ticket.Long(s.Ends), From: "the raw end",
			Check: ticket.Check{What: "the whole strip along its middle", Want: ticket.About(p.Sewn), Mend: "look for a join that is out before an end is moved"},
		})
	}
	if !s.Edge.IsZero() {
		steps = append(steps, p.laySteps()...)
	}
	return ticket.Sheet{
		Title: title, Answer: []ticket.Line{{Label: "as joined", Result: ticket.About(p.Sewn)}}, Steps: steps, Lines: p.working(),
		Cautions: []ticket.Caution{ticket.CutCare(), ticket.IronCare()},
		Sources:  []source.Cite{source.Practise("what a join takes, by the way the ends are cut"), source.Practise("a mitre folded flush with the raw edge takes no more than the edge")},
	}
}

func (p BindingPlan) cutStep() ticket.Step {
	step := ticket.Step{Do: "Cut the pieces, all alike, with square ends", At: ticket.Long(p.Spec.Each), From: "one cut end to the other"}
	if p.Spec.Joint == Slanted {
		step.Do = "Cut the pieces, all alike, with both ends at 45 degrees and slanted the same way"
		step.From = "point to point along one long edge"
		step.Note = "a strip cut on the true bias has such ends where it is cut along the thread"
	}
	return step
}

func (p BindingPlan) joinStep() ticket.Step {
	s := p.Spec
	step := ticket.Step{
		Do: "Join the pieces end to end", Together: ticket.RightTogether,
		At: ticket.Long(s.Allowance), From: "the raw ends", Press: "open",
	}
	switch {
	case s.Joint == Crossed:
		step.Do = "Lay each end across the next at a right angle, the raw edges even, and seam from corner to corner"
		step.At, step.From = ticket.Amount{}, ""
		if !s.Allowance.IsZero() {
			step.Trim = ticket.Long(s.Allowance)
		}
	case s.Allowance.IsZero():
		step.Do, step.Together, step.Press = "Set the pieces edge to edge and join them", ticket.NoSides, "flat"
	case s.Joint == Slanted:
		step.Do = "Join the slanted ends, crossed so that the seam runs from notch to notch"
		step.Note = "the points stand out at both edges; trim them even with the strip"
	}
	if p.Joins > 1 {
		step.Check = ticket.Check{
			What: "from one join to the next along the strip", Want: ticket.About(p.PerJoin.Neg().Plus(s.Each)),
			Mend: "unpick the join that is out and sew it again: an error here is repeated at every join",
		}
	}
	return step
}

// laySteps lay the strip along the edge.
func (p BindingPlan) laySteps() []ticket.Step {
	s := p.Spec
	lay := ticket.Step{
		Do: "Lay the strip along the edge, its joins clear of the corners", At: ticket.Long(s.Edge), From: "all along the edge",
		Check: ticket.Check{What: "what is left of the strip", Want: ticket.About(p.Spare.Plus(s.Over)), Mend: "look for a corner where the strip was stretched or folded too deep"},
	}
	if s.Corners == 0 {
		return []ticket.Step{lay}
	}
	fold := ticket.Step{
		Do:   "At each corner stop the seam as far from the next edge as it runs from this, fold the strip away square to the edge and back along the next",
		Note: "the fold lies flush with the raw edge and makes the mitre",
	}
	if !s.Mitre.IsZero() {
		fold.At, fold.From = ticket.Long(s.Mitre.DivInt(2)), "the raw edge to the fold, beyond it"
		fold.Note = "the fold stands beyond the raw edge and makes the mitre"
	}
	return []ticket.Step{lay, fold}
}

// working is the sums written out: what the strip comes to, what is wanted and what
// is left.
func (p BindingPlan) working() []ticket.Line {
	s := p.Spec
	lines := make([]ticket.Line, 0, 4)
	if s.Joint == Slanted && p.Joins > 0 && !s.Allowance.IsZero() {
		lines = append(lines, ticket.Line{Label: "one slanted join", Result: ticket.About(p.PerJoin)})
	}
	terms := append(make([]ticket.Term, 0, 4),
		ticket.Term{Amount: ticket.Long(s.Each), Name: "each"},
		ticket.Term{Op: ticket.By, Amount: ticket.Of(s.Pieces), Name: "pieces"})
	if p.Joins > 0 && !p.PerJoin.IsZero() {
		terms = append(terms, ticket.Term{Op: ticket.Minus, Amount: ticket.About(p.PerJoin.MulInt(int64(p.Joins))), Name: "the joins"})
	}
	if !s.Ends.IsZero() {
		terms = append(terms, ticket.Term{Op: ticket.Minus, Amount: ticket.Long(s.Ends.MulInt(2)), Name: "the two ends"})
	}
	lines = append(lines, ticket.Line{Label: "strip as sewn", Terms: terms, Result: ticket.About(p.Sewn)})
	if s.Edge.IsZero() {
		return lines
	}
	wanted := append(make([]ticket.Term, 0, 3), ticket.Term{Amount: ticket.Long(s.Edge), Name: "edge"})
	if !s.Mitre.IsZero() {
		wanted = append(wanted, ticket.Term{Op: ticket.Plus, Amount: ticket.Long(s.Mitre.MulInt(int64(s.Corners))), Name: "the mitres"})
	}
	if !s.Over.IsZero() {
		wanted = append(wanted, ticket.Term{Op: ticket.Plus, Amount: ticket.Long(s.Over), Name: "over"})
	}
	return append(lines,
		ticket.Line{Label: "wanted", Terms: wanted, Result: ticket.Long(p.Wanted)},
		ticket.Line{Label: "to spare", Result: ticket.About(p.Spare), Terms: []ticket.Term{
			{Amount: ticket.About(p.Sewn), Name: "as sewn"},
			{Op: ticket.Minus, Amount: ticket.Long(p.Wanted), Name: "wanted"},
		}})
}
