package layout

import (
	"cmp"
	"slices"
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// MaxSteps is the most pieces that a [Plan.Sheet] tells the places of, those
// nearest the cut end first; Placements has them all.
const MaxSteps = 200

// Sheet is the work of laying and cutting: each piece with its distance from the
// cut end and from the left-hand selvedge, in the order in which a hand lays
// them, and the sums behind the length.
func (p Plan) Sheet() ticket.Sheet {
	s := ticket.Sheet{Title: "Lay of the pieces on the cloth", Lines: p.lines(), Assumed: p.Assumed}
	order := slices.Clone(p.Placements)
	slices.SortStableFunc(order, func(a, b Placement) int { return cmp.Or(a.Y.Cmp(b.Y), a.X.Cmp(b.X)) })
	shown := order[:min(len(order), MaxSteps)]
	s.Steps = make([]ticket.Step, 0, len(shown)+3)
	s.Steps = append(s.Steps, ticket.Step{
		Do:    "Press the cloth, square the cut end, and lay it out in a single layer",
		Check: ticket.Check{What: "width of the cloth between the selvedges' inner edges", Want: ticket.Long(p.Spec.Cloth.Usable()), Mend: "measure at several places and lay again with the narrowest"},
	})
	names := p.Spec.titles(shown)
	for i, at := range shown {
		st := ticket.Step{Do: names[i], At: ticket.Long(at.Y), From: "the cut end", Check: ticket.Check{
			What: "left-hand selvedge to the piece's left-hand edge", Want: ticket.Long(at.X),
		}}
		st.Note = p.turning(at)
		s.Steps = append(s.Steps, st)
	}
	if len(shown) < len(order) {
		s.Steps = append(s.Steps, ticket.Step{Do: "Lay the other pieces by the list of placements"})
	}
	s.Steps = append(s.Steps, ticket.Step{
		Do:    "Even the grain lines with the selvedge, see that every piece and every copy is there, then cut in the same order",
		Check: ticket.Check{What: "from the cut end to the far edge of the farthest piece", Want: ticket.Long(p.Used.Sub(p.Spec.Cloth.Ends)), Mend: "find the piece that is out of its place before anything is cut"},
	})
	s.Cautions = p.cautions()
	s.Sources = []ticket.Cite{ticket.Practise("grain along the cloth, pieces that may turn stated one by one"), ticket.Practise("whole lay pinned out before the first cut")}
	return s
}

// turning says how a piece is turned, and which hand it is.
func (p Plan) turning(at Placement) string {
	note := ""
	switch {
	case at.Across && at.Half:
		note = "turned three quarters: its grain line lies across the cloth"
	case at.Across:
		note = "turned a quarter: its grain line lies across the cloth"
	case at.Half:
		note = "turned end for end"
	}
	if at.Mirrored(p.Spec) {
		if note != "" {
			note += "; "
		}
		note += "the other hand: the pattern lies face down"
	}
	return note
}

func (p Plan) lines() []ticket.Line {
	c := p.Spec.Cloth
	lines := make([]ticket.Line, 0, 6)
	add := func(label string, result ticket.Amount, terms ...ticket.Term) {
		lines = append(lines, ticket.Line{Label: label, Terms: terms, Result: result})
	}
	long := func(op ticket.Op, l units.Length, name string) ticket.Term {
		return ticket.Term{Op: op, Amount: ticket.Long(l), Name: name}
	}
	area := ticket.Square(p.Spec.Area())
	add("usable width", ticket.Long(c.Usable()), long(ticket.Plus, c.Wide, "full width"),
		long(ticket.Minus, c.Selvedge, "one selvedge"), long(ticket.Minus, c.Selvedge, "the other"))
	add("area of all the pieces", area)
	if !p.Lay.IsZero() && !c.Usable().IsZero() {
		add("part of the cloth that is used", ticket.Times(p.Density), ticket.Term{Amount: area, Name: "the pieces"},
			long(ticket.Over, c.Usable(), "usable width"), long(ticket.Over, p.Lay, "the lay"))
	}
	add("no lay is shorter than", ticket.Long(p.Bound))
	add("length of cloth the lay takes", ticket.Long(p.Used), long(ticket.Plus, p.Lay, "the lay"),
		long(ticket.Plus, c.Ends, "one end"), long(ticket.Plus, c.Ends, "the other"))
	if !c.Long.IsZero() {
		add("cloth to spare", ticket.Long(p.Spare), long(ticket.Plus, c.Long, "the cloth"), long(ticket.Minus, p.Used, "the lay and its ends"))
	}
	return lines
}

func (p Plan) cautions() []ticket.Caution {
	out := make([]ticket.Caution, 0, 5)
	if !p.Fits {
		out = append(out, ticket.Caution{Text: "This lay is longer than the cloth. A shorter one was not found, which is not proof that there is none: search longer, turn or piece a part, or let the outlines nest.", Refer: "the cutter's own trial lay decides"})
	}
	if p.Stopped {
		out = append(out, ticket.Caution{Text: "The search was stopped early; a longer one may find a shorter lay."})
	}
	if slices.ContainsFunc(p.Placements, func(at Placement) bool { return at.Across }) {
		out = append(out, ticket.Caution{Text: "Pieces laid across the grain hang and shrink otherwise and show on nap, print and sheen.", Refer: "the pattern's grain line decides"})
	}
	if len(p.Spec.Pieces) == 0 || slices.ContainsFunc(p.Spec.Pieces, func(one Piece) bool { return len(one.Outline) == 0 }) {
		out = append(out, ticket.Caution{Text: "Pieces are laid as rectangles, opened out where the pattern says fold; curved outlines may nest closer.", Refer: "common practice"})
	}
	if p.Spec.outlined() {
		out = append(out, ticket.Caution{Text: "Pieces with an outline are measured to the edges of the smallest rectangle around them, sides along and across the cloth.", Refer: "the drawing of the lay shows which way each nests"})
	}
	return append(out, ticket.CutCare())
}

// titles are what to do with each piece, written in one text.
func (s Spec) titles(order []Placement) []string {
	b := make([]byte, 0, 32*len(order))
	ends := make([]int, len(order))
	for i, at := range order {
		b = append(b, "Lay "...)
		if at.Piece < 0 || at.Piece >= len(s.Pieces) {
			b = append(b, "a piece"...)
		} else if one := s.Pieces[at.Piece]; one.Name == "" {
			b = strconv.AppendInt(append(b, "piece "...), int64(at.Piece)+1, 10)
		} else {
			b = append(b, one.Name...)
		}
		if at.Piece >= 0 && at.Piece < len(s.Pieces) && s.Pieces[at.Piece].Count > 1 {
			b = strconv.AppendInt(append(b, ", copy "...), int64(at.Copy), 10)
		}
		ends[i] = len(b)
	}
	text, start := string(b), 0
	names := make([]string, len(order))
	for i, end := range ends {
		names[i], start = text[start:end], end
	}
	return names
}
