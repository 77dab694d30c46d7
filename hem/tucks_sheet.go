package hem

import (
	"slices"

	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is how the tucks are marked, folded and stitched, with the working. Every
// line of it passes [ticket.Line.Check].
func (p TucksPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sheet := ticket.Sheet{Title: "Tucks", Assumed: p.Assumed}
	if !s.Kind.Valid() {
		return sheet
	}
	sheet.Title = [...]string{"Tucks", "Spaced tucks", "Pin tucks", "Blind tucks", "Growth tucks"}[s.Kind]
	sheet.Answer = []ticket.Line{line("tucks", ticket.Of(s.Count)), line("cloth before they are sewn", ticket.Long(p.Cloth))}
	sheet.Lines = p.lines()
	sheet.Steps = p.steps()
	sheet.Cautions = p.cautions()
	sheet.Sources = p.sources()
	return sheet
}

func (p TucksPlan) lines() []ticket.Line {
	s := p.Spec
	ls := make([]ticket.Line, 0, 8)
	ls = append(ls,
		line("taken up by one tuck", ticket.Long(p.PerTuck), term(ticket.Plus, ticket.Long(s.Depth), "depth"), term(ticket.By, two, "layers")),
		line("taken up by all", ticket.Long(p.Removed), term(ticket.Plus, ticket.Long(p.PerTuck), "each"), term(ticket.By, ticket.Of(s.Count), "tucks")))
	if s.Count > 1 {
		ls = append(ls,
			line("section once tucked", ticket.Long(s.Span),
				term(ticket.Plus, ticket.Long(s.Pitch), "from stitching to stitching"), term(ticket.By, ticket.Of(s.Count-1), "gaps"),
				term(ticket.Plus, ticket.Long(s.Edge.MulInt(2)), "the two edges")),
			line("clear between tucks", ticket.Long(p.Space),
				term(ticket.Plus, ticket.Long(s.Pitch), "from stitching to stitching"), term(ticket.Minus, ticket.Long(s.Depth), "depth")),
			line("from fold to fold on the flat cloth", ticket.Long(p.FlatPitch),
				term(ticket.Plus, ticket.Long(s.Pitch), "from stitching to stitching"), term(ticket.Plus, ticket.Long(p.PerTuck), "taken up by one")))
	}
	return append(ls,
		line("section before it is tucked", ticket.Long(p.Cloth), term(ticket.Plus, ticket.Long(s.Span), "once tucked"), term(ticket.Plus, ticket.Long(p.Removed), "taken up")),
		line("edge to the first fold, flat", ticket.Long(p.FirstFold), term(ticket.Plus, ticket.Long(s.Edge), "edge to the stitching"), term(ticket.Plus, ticket.Long(s.Depth), "depth")))
}

func (p TucksPlan) steps() []ticket.Step {
	s := p.Spec
	st := make([]ticket.Step, 0, 5)
	st = append(st, ticket.Step{
		Do: "Mark the first fold across the flat section", At: ticket.Long(p.FirstFold), From: "the edge of the section",
		Check: ticket.Check{What: "the section before it is tucked, edge to edge", Want: ticket.Long(p.Cloth), Give: ticket.Long(give(s.Tape)), Mend: "Cut the section again before marking: a tuck cannot make up for missing cloth"},
	})
	if s.Count > 1 {
		st = append(st, ticket.Step{
			Do: "Mark the other folds, each from the same edge and not from the mark before", At: ticket.Long(p.FlatPitch), From: "one fold to the next",
			Check: ticket.Check{What: "from the edge of the section to the last fold", Want: ticket.Long(p.LastFold), Give: ticket.Long(give(s.Tape)), Mend: "Measure every mark again from the edge and move those that are out"},
		})
	}
	st = append(st,
		ticket.Step{Do: "Fold on each mark in turn and press the fold", Together: ticket.WrongTogether, Press: "the fold only"},
		ticket.Step{
			Do: "Stitch each tuck", At: ticket.Long(s.Depth), From: "the fold", Press: p.press(),
			Check: ticket.Check{What: "from the fold to the stitching, at both ends and the middle", Want: ticket.Long(s.Depth), Give: ticket.Long(give(s.Tape).Min(s.Depth.DivInt(4))),
				Mend: "Unpick this tuck and stitch it again: an error is doubled in each tuck and adds up over all"},
		})
	if s.Kind == GrowthTuck {
		return append(st, ticket.Step{
			Do: "Measure the length of the garment", Note: "Sew with long stitches in a thread that will be found again; unpick one tuck for each size",
			Check: ticket.Check{What: "by how much the section is shorter than before", Want: ticket.Long(p.Removed), Give: ticket.Long(give(s.Tape)), Mend: "Unpick the tuck nearest the hem and take it up again"},
		})
	}
	return append(st, ticket.Step{
		Do:    "Measure the section",
		Check: ticket.Check{What: "the tucked section, edge to edge", Want: ticket.Long(s.Span), Give: ticket.Long(give(s.Tape).MulInt(2)), Mend: "Take the error up in the tucks at the two edges, which are the least seen"},
	})
}

func (p TucksPlan) press() string {
	if p.Spec.Kind == BlindTuck {
		return "each over the stitching of the one before"
	}
	return "all one way, down or away from the centre"
}

func (p TucksPlan) cautions() []ticket.Caution {
	s := p.Spec
	cs := make([]ticket.Caution, 0, 5)
	if s.Edge.Less(s.Depth) {
		cs = append(cs, ticket.Caution{Text: "A tuck pressed towards the edge reaches past it, since the edge is nearer than the tuck is deep: press it away from the edge, or keep it out of the seam."})
	}
	if s.Count > 1 && s.Kind != BlindTuck && p.Space.Sign() == 0 {
		cs = append(cs, ticket.Caution{Text: "The tucks meet: no cloth shows between them."})
	}
	cs = append(cs, ticket.Caution{Text: "Tuck the cloth before cutting the piece to its shape: the edges of a piece cut first come out stepped where the tucks are folded over."})
	return append(cs, ticket.IronCare(), ticket.CutCare())
}

func (p TucksPlan) sources() []source.Cite {
	cs := make([]source.Cite, 0, 6)
	if slices.Contains(p.Assumed, "depth") {
		row := pinWidth(p.Spec.Tape)
		cs = append(cs, source.Cite{For: "depth of a pin tuck", ID: row.Source, Place: row.Place, Known: row.Known})
	}
	if slices.Contains(p.Assumed, "count") {
		cs = append(cs, source.Practise("one growth tuck"))
	}
	if slices.Contains(p.Assumed, "pitch") {
		if p.Spec.Kind == BlindTuck {
			cs = append(cs, source.Cite{For: "a blind tuck meets the next stitching", ID: "sewing-lessons-model", Place: "model 6", Known: source.Read})
		}
		for _, t := range tuckSpaces {
			if t.Kind == p.Spec.Kind {
				cs = append(cs, source.Cite{For: "space between tucks, " + t.Name, ID: t.Source, Place: t.Place, Known: t.Known})
			}
		}
	}
	return append(cs, source.Cite{For: "a tuck takes up twice its depth", ID: "home-school-sewing", Place: "chapter XXI", Known: source.Read})
}
