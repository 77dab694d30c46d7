package strip

import (
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Working is the sum written out, for a sheet.
func (p Plan) Working() ticket.Line {
	s := p.Spec
	terms := []ticket.Term{ticket.Add(s.Each, "each")}
	if s.Pieces != 1 {
		terms = append(terms, ticket.Multiply(s.Pieces, "pieces"))
	}
	if lost := s.allowance().MulInt(2 * int64(p.Joins)); !lost.IsZero() {
		terms = append(terms, ticket.Less(lost, "the joins"))
	}
	if !s.Ends.IsZero() {
		terms = append(terms, ticket.Less(s.Ends.MulInt(2), "the two ends"))
	}
	return ticket.Sum("strip as sewn", p.Sewn, terms...)
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
	step := ticket.Step{Do: do, Together: ticket.RightTogether, At: ticket.Long(s.allowance()), From: "the raw ends", Press: "open"}
	if s.allowance().IsZero() {
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
				What: "from one join to the next", Want: ticket.Long(s.net()),
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
		lines = append(lines, ticket.Sum("to spare", p.Spare, ticket.Add(p.Sewn, "as sewn"), ticket.Less(s.Least, "wanted")))
	}
	return ticket.Sheet{
		Title:    title,
		Answer:   []ticket.Line{{Label: "as sewn", Result: ticket.Long(p.Sewn)}},
		Assumed:  p.Assumed,
		Steps:    steps,
		Lines:    lines,
		Cautions: []ticket.Caution{ticket.CutCare(), ticket.IronCare()},
		Sources:  []source.Cite{source.Practise("a join takes the allowance of both pieces")},
	}
}
