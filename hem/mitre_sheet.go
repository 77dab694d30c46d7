package hem

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is how the mitre is marked, stitched and turned, with the working. Every
// line of it passes [ticket.Line.Check].
func (p MitrePlan) Sheet() ticket.Sheet {
	sheet := ticket.Sheet{Title: "Mitred corner", Assumed: p.Assumed}
	if p.Spec.A.Depth.IsZero() {
		return sheet
	}
	sheet.Answer = []ticket.Line{line("mark from the corner along the first side", ticket.About(p.AlongA)), line("along the second", ticket.About(p.AlongB))}
	sheet.Lines = p.lines()
	sheet.Steps = p.steps()
	sheet.Cautions = p.cautions()
	sheet.Sources = p.sources()
	return sheet
}

func (p MitrePlan) lines() []ticket.Line {
	s := p.Spec
	ls := make([]ticket.Line, 0, 8)
	ls = append(ls, s.A.line("taken along the first side"), s.B.line("taken along the second side"))
	c := cornerOf(s.lean())
	mark := func(label string, along ticket.Amount, own, other HemSide) ticket.Line {
		if s.Lean.IsZero() {
			return line(label, along, term(ticket.Plus, two, ""), term(ticket.By, ticket.Long(other.Depth), "depth of the other hem"))
		}
		op, what := ticket.Plus, "lean over this hem"
		if s.Lean.Sign() < 0 {
			op, what = ticket.Minus, "lean away over this hem"
		}
		return line(label, along,
			term(ticket.Plus, ticket.About(c.step.Of(other.Depth)), "across the other hem, level with this side"),
			term(op, ticket.Long(own.Depth.Scale(s.lean().Abs())), what), term(ticket.By, two, ""))
	}
	ls = append(ls,
		mark("corner of the folds to the mark on the first side", ticket.About(p.AlongA), s.A, s.B),
		mark("corner of the folds to the mark on the second side", ticket.About(p.AlongB), s.B, s.A),
		line("mitre seam, from a mark to the finished corner", ticket.About(p.Seam)),
		line("corner of the raw edges to the finished corner", ticket.About(p.Reach)))
	return append(ls,
		line("corner of the folds to the cut, along the first side", ticket.About(p.CutA),
			term(ticket.Plus, ticket.About(p.AlongA), "to the mark"), term(ticket.Minus, ticket.About(p.slant(s.A.Depth)), "left beyond the seam, along the side")),
		line("corner of the folds to the cut, along the second side", ticket.About(p.CutB),
			term(ticket.Plus, ticket.About(p.AlongB), "to the mark"), term(ticket.Minus, ticket.About(p.slant(s.B.Depth)), "left beyond the seam, along the side")))
}

// line is what the hem takes.
func (h HemSide) line(label string) ticket.Line {
	depth := term(ticket.Plus, ticket.Long(h.Depth), "depth")
	if h.first().IsZero() {
		return line(label, ticket.Long(h.take()), depth)
	}
	return line(label, ticket.Long(h.take()), term(ticket.Plus, ticket.Long(h.first()), "first turn"), depth)
}

func (p MitrePlan) steps() []ticket.Step {
	s := p.Spec
	st := make([]ticket.Step, 0, 8)
	for _, side := range [...]struct {
		h    HemSide
		what string
	}{{s.A, "the first side"}, {s.B, "the second side"}} {
		if !side.h.first().IsZero() {
			st = append(st, ticket.Step{Do: "Turn in the raw edge of " + side.what, At: ticket.Long(side.h.first()), From: "the raw edge", Press: "to the wrong side"})
		}
		from := "the first fold"
		if side.h.first().IsZero() {
			from = "the raw edge"
		}
		st = append(st, ticket.Step{Do: "Turn up the hem of " + side.what + ", press, and open it out again", At: ticket.Long(side.h.Depth), From: from, Press: "a sharp crease"})
	}
	cut := ticket.Step{
		Do: "Cut the corner off outside the seam", Trim: ticket.Long(s.Trim), Press: "the seam open",
		Note: "Turn the corner out and look at the point before cutting: what is cut off cannot be put back",
	}
	if lo, _ := p.CutA.Bounds(); lo.Sign() <= 0 {
		cut = ticket.Step{Do: "Leave the corner on, since it is no larger than the allowance", Press: "the seam open"}
	}
	return append(st,
		ticket.Step{Do: "Mark the end of the seam on the first side", At: ticket.About(p.AlongA), From: "the corner, along the folded edge", Note: "Where the other hem, turned up, comes to meet this edge"},
		ticket.Step{Do: "Mark the end of the seam on the second side", At: ticket.About(p.AlongB), From: "the corner, along the folded edge"},
		ticket.Step{
			Do: "Fold the corner so that the two marks meet, and stitch from them to where the creases cross", Together: ticket.RightTogether, Note: "Fasten both ends: the point takes all the strain",
			Check: ticket.Check{What: "the seam, from the marks to the crossing of the creases", Want: ticket.About(p.Seam), Give: ticket.Long(give(s.Tape).DivInt(2)), Mend: "Unpick and match the marks again before the corner is cut"},
		},
		cut,
		ticket.Step{
			Do: "Turn the corner out and stitch both hems", At: ticket.Long(s.A.Depth), From: "the finished edge of the first side, to its inner fold",
			Check: ticket.Check{What: "from one inner fold to the other, at the seam", Want: ticket.Long(units.Length{}), Give: ticket.Long(give(s.Tape).DivInt(2)), Mend: "The folds must meet on the seam: unpick the mitre and mark it again from the creases"},
		})
}

func (p MitrePlan) cautions() []ticket.Caution {
	cs := make([]ticket.Caution, 0, 4)
	if p.Spec.A.Depth != p.Spec.B.Depth {
		cs = append(cs, ticket.Caution{Text: "The hems are of different depths: the seam does not halve the corner, and the marks lie at different distances. The deeper hem sets the mark on the other side."})
	}
	if p.Spec.Lean.Sign() > 0 {
		cs = append(cs, ticket.Caution{Text: "A sharp corner leaves a long tongue to cut off: pin it with the seam stitched short and look at the point first."})
	}
	return append(cs, ticket.IronCare(), ticket.CutCare())
}

func (p MitrePlan) sources() []source.Cite {
	cs := make([]source.Cite, 0, 6)
	if slices.Contains(p.Assumed, "b.first") || slices.Contains(p.Assumed, "b.depth") {
		cs = append(cs, source.Practise("both hems alike"))
	}
	if slices.Contains(p.Assumed, "trim") {
		for _, t := range mitreTrims {
			cs = append(cs, source.Cite{For: "left outside the mitre seam, " + t.Trim.String(), ID: t.Source, Place: t.Place, Known: t.Known})
		}
	}
	return append(cs, source.Cite{For: "places of the marks, by folding the corner", Known: source.Computed})
}
