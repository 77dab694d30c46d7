package strip

import (
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Working is the sum written out, for a sheet.
func (p Plan) Working() ticket.Line {
	s := p.Spec
	terms := make([]ticket.Term, 0, 4)
	terms = append(terms, ticket.Term{Amount: ticket.Long(s.Each), Name: "each"})
	if s.Pieces != 1 {
		terms = append(terms, ticket.Term{Op: ticket.By, Amount: ticket.Of(s.Pieces), Name: "pieces"})
	}
	if lost := s.Allowance.MulInt(2 * int64(p.Joins)); !lost.IsZero() {
		terms = append(terms, ticket.Term{Op: ticket.Minus, Amount: ticket.Long(lost), Name: "the joins"})
	}
	if !s.Ends.IsZero() {
		terms = append(terms, ticket.Term{Op: ticket.Minus, Amount: ticket.Long(s.Ends.MulInt(2)), Name: "the two ends"})
	}
	return ticket.Line{Label: "strip as sewn", Terms: terms, Result: ticket.Long(p.Sewn)}
}

// Joining is the step that joins the pieces, for a sheet. It is the zero step
// where there is no join.
func (p Plan) Joining() ticket.Step {
	s := p.Spec
	if p.Joins == 0 {
		return ticket.Step{}
	}
	do, what := "Join the pieces end to end", "the pieces"
	if s.Pieces == 1 {
		do, what = "Join the two ends of the piece", "the two ends of the piece"
	}
	step := ticket.Step{Do: do, Together: ticket.RightTogether, At: ticket.Long(s.Allowance), From: "the raw ends", Press: "open"}
	if s.Allowance.IsZero() {
		step = ticket.Step{Do: "Set " + what + " edge to edge and join them", Press: "flat"}
	}
	if s.Ring {
		step.Do += " into a ring"
	}
	return step
}

// Sheet is how the strip is cut and joined, with the working behind it.
func (p Plan) Sheet() ticket.Sheet {
	s := p.Spec
	title := "A strip of joined pieces"
	if s.Ring {
		title = "A ring of joined pieces"
	}
	if s.Pieces == 0 {
		return ticket.Sheet{Title: title} // the plan of nothing has nothing to say
	}
	steps := []ticket.Step{{
		Do: "Cut the pieces, all alike", At: ticket.Long(s.Each), From: "one cut end to the other",
	}}
	if p.Joins > 0 {
		join := p.Joining()
		if p.Joins > 1 {
			join.Check = ticket.Check{
				What: "from one join to the next", Want: ticket.Long(s.Each.Sub(s.Allowance.MulInt(2))),
				Mend: "unpick the join that is out and sew it again: an error here is repeated at every join",
			}
		}
		steps = append(steps, join)
	}
	if !s.Ends.IsZero() {
		steps = append(steps, ticket.Step{
			Do: "Mark or turn the two ends", At: ticket.Long(s.Ends), From: "the raw end",
			Check: ticket.Check{What: "the whole strip, end to end", Want: ticket.Long(p.Sewn), Mend: "look for a join that is out before an end is moved"},
		})
	}
	lines := []ticket.Line{p.Working()}
	if !s.Least.IsZero() {
		lines = append(lines, ticket.Line{Label: "to spare", Result: ticket.Long(p.Spare), Terms: []ticket.Term{
			{Amount: ticket.Long(p.Sewn), Name: "as sewn"},
			{Op: ticket.Minus, Amount: ticket.Long(s.Least), Name: "wanted"},
		}})
	}
	return ticket.Sheet{
		Title:    title,
		Steps:    steps,
		Lines:    lines,
		Cautions: []ticket.Caution{ticket.CutCare(), ticket.IronCare()},
		Sources:  []source.Cite{source.Practise("a join takes the allowance of both pieces")},
	}
}
