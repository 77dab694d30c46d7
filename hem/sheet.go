package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

var (
	give      = units.Inch.Frac(1, 16)  // what a hand keeps to; common practice
	narrowMax = units.Millimetre.Of(15) // the most that a narrow hem takes in all
	easeRow   = units.Inch.Frac(1, 4)   // ease row from the raw edge
	maxStep   = 10                      // steps, lines and citations at most
	two       = ticket.Of(2)            // as a factor of a working
)

// Sheet is the work in steps, the working, and what it rests on. Every line of
// the working passes [ticket.Line.Check].
func (p Plan) Sheet() ticket.Sheet {
	s := ticket.Sheet{Title: p.title(), Assumed: p.Assumed}
	if !p.Spec.Kind.Valid() {
		return s
	}
	s.Lines = p.lines()
	s.Steps = p.steps()
	s.Cautions = p.cautions()
	s.Sources = p.sources()
	return s
}

func (p Plan) title() string {
	switch p.Spec.Kind {
	case Single:
		return "Single hem"
	case Double:
		if p.Spec.First == p.Spec.Depth {
			return "Double hem of equal turns"
		}
		return "Double hem"
	case Narrow:
		return "Narrow hem"
	case Slit:
		if p.Spec.Opening == InSeam {
			return "Hem round an opening left in a seam"
		}
		return "Hem round a cut slit"
	}
	return "Hem"
}

func line(label string, result ticket.Amount, terms ...ticket.Term) ticket.Line {
	return ticket.Line{Label: label, Terms: terms, Result: result}
}

func term(op ticket.Op, a ticket.Amount, name string) ticket.Term {
	return ticket.Term{Op: op, Amount: a, Name: name}
}

func (p Plan) lines() []ticket.Line {
	s := p.Spec
	ls := make([]ticket.Line, 0, maxStep)
	taken := ticket.Long(p.Taken)
	if s.Kind == Single {
		ls = append(ls, line("taken by the hem", taken, term(ticket.Plus, ticket.Long(s.Depth), "depth")))
	} else {
		ls = append(ls, line("taken by the hem", taken,
			term(ticket.Plus, ticket.Long(s.First), "first turn"), term(ticket.Plus, ticket.Long(s.Depth), "depth")))
	}
	if !p.CutOff.IsZero() {
		label := "to cut off the allowance drafted"
		if p.CutOff.Sign() < 0 {
			label = "left on beyond the allowance drafted, shown with a minus"
		}
		ls = append(ls, line(label, ticket.Long(p.CutOff),
			term(ticket.Plus, ticket.Long(s.Drafted), "drafted"), term(ticket.Minus, ticket.Long(s.Cut), "as cut")))
	}
	ls = append(ls, line(p.driftLabel(), ticket.Long(p.Drift),
		term(ticket.Plus, ticket.Long(s.Cut), "allowance as cut"), term(ticket.Minus, taken, "taken")))
	if s.Kind != Single {
		ls = append(ls, line("raw edge to stitching, flat", ticket.Long(p.RawToStitch),
			term(ticket.Plus, ticket.Long(s.First), "first turn"), term(ticket.Plus, ticket.Long(s.Stitch), "from the inner fold")))
	}
	ls = append(ls, line("finished edge to stitching", ticket.Long(p.FinishedToStitch),
		term(ticket.Plus, ticket.Long(s.Depth), "depth"), term(ticket.Minus, ticket.Long(s.Stitch), "stitching from the inner edge of the hem")))
	if !s.Slope.IsZero() {
		ls = p.flareLines(ls)
	}
	if s.Kind == Slit {
		ls = p.slitLines(ls)
	}
	if !s.Sweep.IsZero() {
		label := "edge that is hemmed, as sewn"
		if s.Kind == Slit {
			label = "edge that the slit opens into, as sewn"
		}
		op := ticket.Plus
		if p.SweepDrift.Sign() < 0 {
			op = ticket.Minus
		}
		ls = append(ls, line(label, ticket.Long(p.Swept),
			term(ticket.Plus, ticket.Long(s.Sweep), "drafted"), term(op, ticket.Long(p.SweepDrift.Abs()), "drift")))
	}
	return ls
}

func (p Plan) driftLabel() string {
	switch {
	case p.Spec.Kind == Slit:
		return "each finished edge beyond the line drafted, shown with a minus if inside it"
	case p.Drift.Sign() < 0:
		return "garment comes out shorter by, shown with a minus"
	}
	return "garment comes out longer by"
}

func (p Plan) flareLines(ls []ticket.Line) []ticket.Line {
	s := p.Spec
	label := "turned cloth to lose, at the inner edge of the hem"
	if p.Excess.Sign() < 0 {
		label = "turned cloth too short by, shown with a minus"
	}
	ls = append(ls,
		line("each side edge, mirrored, lies inside its straight run by", ticket.Long(p.Inset),
			term(ticket.Plus, two, ""), term(ticket.By, ticket.Long(s.Depth), "depth"), term(ticket.By, ticket.Times(s.Slope), "slope")),
		line(label, ticket.Long(p.Excess),
			term(ticket.Plus, ticket.Long(p.Inset), "each edge"), term(ticket.By, ticket.Of(s.Edges), "edges")))
	if !p.Drift.IsZero() {
		ls = append(ls, line("drift of the edge that is hemmed", ticket.Long(p.SweepDrift),
			term(ticket.Plus, ticket.Long(p.Drift), "drift"), term(ticket.By, ticket.Times(s.Slope), "slope"),
			term(ticket.By, ticket.Of(s.Edges), "edges")))
	}
	return ls
}

func (p Plan) slitLines(ls []ticket.Line) []ticket.Line {
	s := p.Spec
	ls = append(ls, line("turned in along the two sides", ticket.Long(p.Lost),
		term(ticket.Plus, ticket.Long(p.Taken), "taken"), term(ticket.By, two, "sides")))
	if s.Opening == InSeam {
		ls = append(ls, line("each finished edge beyond the line of the seam", ticket.Long(p.Jog),
			term(ticket.Plus, ticket.Long(s.SeamTake), "taken by the seam"), term(ticket.Minus, ticket.Long(p.Taken), "taken by the hem")))
	}
	ls = append(ls, line("drift of the edge that the slit opens into", ticket.Long(p.SweepDrift),
		term(ticket.Plus, ticket.Long(p.Drift), "each side"), term(ticket.By, two, "sides")))
	if !s.Slit.IsZero() {
		ls = append(ls, line("hem to sew", ticket.Long(p.Run),
			term(ticket.Plus, ticket.Long(s.Slit), "slit"), term(ticket.By, two, "sides")))
	}
	return ls
}

func (p Plan) cautions() []ticket.Caution {
	s := p.Spec
	cs := make([]ticket.Caution, 0, maxStep)
	if s.Kind != Slit {
		switch p.Drift.Sign() {
		case 1:
			cs = append(cs, ticket.Caution{Text: "The hem takes less than the allowance: the garment comes out longer than drafted. " +
				"To keep the length, cut the allowance to what the hem takes before turning it."})
		case -1:
			cs = append(cs, ticket.Caution{Text: "The hem takes more than the allowance: it turns up cloth of the garment, which comes out shorter than drafted."})
		}
	}
	if s.Kind == Narrow && narrowMax.Less(p.Taken) {
		cs = append(cs, ticket.Caution{Text: "This takes more than is usual for a narrow hem.", Refer: "a course sets the limit: see the sources"})
	}
	if p.Excess.Sign() > 0 && s.Kind == Narrow {
		cs = append(cs, ticket.Caution{Text: "A narrow hem has to lose its fullness within its own turns: press the first turn over a row of ease stitches and try a hand's length first."})
	}
	if s.Kind == Slit {
		cs = append(cs, ticket.Caution{Text: "Mark with chalk or thread, not with snips: a snip can be deeper than the turn that should hide it."})
		if s.Opening == Tucked || s.Opening == Faced {
			cs = append(cs, ticket.Caution{Text: "At the top of a cut slit there is no cloth to turn: the corner frays from the first wash unless it is held by the tuck or the facing."})
		}
		if p.Jog.Sign() < 0 {
			cs = append(cs, ticket.Caution{Text: "The hem takes more than the seam: the two edges of the opening gape below it."})
		}
	}
	if s.Kind == Single {
		cs = append(cs, ticket.Caution{Text: "The raw edge of a single hem shows on the wrong side: overcast, bind or pink it before it is turned, or cloth that frays will work loose."})
	}
	return append(cs, ticket.IronCare(), ticket.CutCare())
}

func (p Plan) sources() []ticket.Cite {
	s := p.Spec
	cs := make([]ticket.Cite, 0, maxStep)
	first, depth := p.Assumed.Has("First"), p.Assumed.Has("Depth")
	switch {
	case s.Kind == Narrow && first && depth && p.Assumed.Has("Take"):
		cs = narrowTurn.citeWith(cs, "turns of a narrow hem")
	case s.Kind == Narrow && (first || depth):
		cs = append(cs, ticket.Practise("equal turns, so that the raw edge lies in the fold"))
	case first:
		cs = wideTurn.citeWith(cs, "first turn of a double hem")
	}
	if p.Assumed.Has("Take") && p.Assumed.Has("Depth") && s.Kind != Narrow {
		cs = append(cs, ticket.Practise("finished edge on the drafted line"))
	}
	if p.Assumed.Has("Stitch") {
		cs = append(cs, ticket.Practise("distance of the stitching"))
	}
	if s.Kind == Narrow && narrowMax.Less(p.Taken) {
		cs = append(cs, ticket.Cite{For: "most that a narrow hem takes", ID: "garment-hem-course", Place: "narrow folded hem", Known: ticket.Read})
	}
	if !s.Trim.IsZero() {
		cs = append(cs, babyTurn.cite("first turn stitched, trimmed and rolled"))
	}
	if p.Excess.Sign() > 0 {
		cs = append(cs, ticket.Cite{For: "row of ease stitches from the raw edge", ID: "apparel-textbook", Place: "page 459", Known: ticket.Read})
	}
	if !s.Slope.IsZero() {
		cs = append(cs, ticket.Cite{For: "fullness of a flared hem and its mirrored side edge, by geometry", Known: ticket.Computed})
	}
	if s.Kind == Slit {
		cs = append(cs, ticket.Practise("ends of a slit"))
	}
	return append(cs, ticket.Practise("depth of the hem and its turns add up to what it takes"))
}

// citeWith cites the row that is the default, and then the rows that print
// something else.
func (t Turn) citeWith(cs []ticket.Cite, what string) []ticket.Cite {
	cs = append(cs, t.cite(what))
	for _, other := range turns {
		if other.Kind == t.Kind && (other.First != t.First || other.Depth != t.Depth && !t.Depth.IsZero()) {
			cs = append(cs, other.cite("another pair of turns, "+other.Name))
		}
	}
	return cs
}

func (t Turn) cite(what string) ticket.Cite {
	return ticket.Cite{For: what, ID: t.Source, Place: t.Place, Known: t.Known}
}
