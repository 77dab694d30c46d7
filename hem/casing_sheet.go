package hem

import (
	"slices"

	"example.com/clothyard/units/safety"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is how the casing is folded and stitched, with the working. Every line of
// it passes [ticket.Line.Check].
func (p CasingPlan) Sheet() ticket.Sheet {
	s := p.Spec
	sheet := ticket.Sheet{Title: "Casing", Assumed: p.Assumed}
	if !s.Kind.Valid() {
		return sheet
	}
	sheet.Title = [...]string{"Casing", "Casing for elastic", "Casing for a drawstring", "Casing for a rod"}[s.Kind]
	sheet.Answer = []ticket.Line{line("it takes", ticket.Long(p.Taken)), line("stitch from the finished edge at", ticket.Long(p.FinishedToLower))}
	if s.Applied {
		sheet.Answer[0] = line("cut the strip wide", ticket.Long(p.StripWidth))
	}
	sheet.Lines = p.lines()
	sheet.Steps = p.steps()
	sheet.Cautions = p.cautions()
	sheet.Sources = p.sources()
	return sheet
}

func (p CasingPlan) lines() []ticket.Line {
	s := p.Spec
	ls := make([]ticket.Line, 0, 8)
	tunnel := ticket.Long(s.Tunnel)
	if s.Girth.IsZero() {
		ls = append(ls, line("tunnel, clear", tunnel, term(ticket.Plus, ticket.Long(s.Width), p.held()), term(ticket.Plus, ticket.Long(s.Ease), "ease")))
	} else {
		ls = append(ls, line("tunnel, clear", tunnel, term(ticket.Plus, ticket.Long(s.Girth), "round the rod"), term(ticket.Plus, ticket.Long(s.Ease), "ease"), term(ticket.Over, two, "")))
	}
	depth := make([]ticket.Term, 0, 3)
	depth = append(depth, term(ticket.Plus, tunnel, "tunnel"))
	if !s.heading().IsZero() {
		depth = append(depth, term(ticket.Plus, ticket.Long(s.heading()), "above the upper row"))
	}
	if !s.Lower.IsZero() {
		depth = append(depth, term(ticket.Plus, ticket.Long(s.Lower), "below the lower row"))
	}
	ls = append(ls, line("depth of the casing", ticket.Long(p.Depth), depth...))
	if s.Applied {
		ls = append(ls, line("width of the strip", ticket.Long(p.StripWidth),
			term(ticket.Plus, ticket.Long(s.Turn), "turn"), term(ticket.By, two, "long edges"), term(ticket.Plus, ticket.Long(p.Depth), "depth")))
		if !p.StripLength.IsZero() {
			ls = append(ls, line("length of the strip", ticket.Long(p.StripLength),
				term(ticket.Plus, ticket.Long(s.End), "turned in"), term(ticket.By, two, "ends"), term(ticket.Plus, ticket.Long(s.Around), "round the garment")))
		}
	} else {
		ls = append(ls,
			line("taken by the casing", ticket.Long(p.Taken), term(ticket.Plus, ticket.Long(p.Depth), "depth"), term(ticket.Plus, ticket.Long(s.Turn), "turn")),
			line(longer, ticket.Long(p.Drift), term(ticket.Plus, ticket.Long(s.Drafted), "drafted"), term(ticket.Minus, ticket.Long(p.Taken), "taken")).Turned(shorter))
		if !s.heading().IsZero() {
			ls = append(ls, line("allowance from the upper row, where it is reckoned from there", ticket.Long(p.FromTunnel),
				term(ticket.Plus, ticket.Long(p.Taken), "taken"), term(ticket.Plus, ticket.Long(s.heading()), "above the upper row")))
		}
	}
	if !p.CordLength.IsZero() {
		ls = append(ls, line("length of the cord", ticket.Long(p.CordLength),
			term(ticket.Plus, ticket.Long(s.Tail), "free"), term(ticket.By, two, "ends"), term(ticket.Plus, ticket.Long(s.Around), "round the garment")))
	}
	if s.Kind == RodCasing {
		ls = append(ls, line("room to spare round the rod, laid flat", ticket.About(p.Room),
			term(ticket.Plus, tunnel, "tunnel"), term(ticket.Minus, ticket.About(p.HalfGirth), "half round the rod")).Turned("room too little for the rod to go round, by"))
	}
	if !p.Over.IsZero() {
		ls = append(ls, line("free end of the cord beyond the limit", ticket.Long(p.Over),
			term(ticket.Plus, ticket.Long(s.Tail), "free"), term(ticket.Minus, ticket.Long(p.TailMost), "limit")))
	}
	return ls
}

func (p CasingPlan) held() string {
	switch p.Spec.Kind {
	case CordCasing:
		return "cord"
	case RodCasing:
		return "rod"
	}
	return "elastic"
}

func (p CasingPlan) steps() []ticket.Step {
	s := p.Spec
	edge := "the finished edge"
	if s.Applied {
		edge = "where the upper edge of the strip is to lie"
	}
	st := make([]ticket.Step, 0, 10)
	eyelets := func() {
		if s.Kind == CordCasing && !p.Barred {
			st = append(st, ticket.Step{
				Do:   "Work two eyelets through the garment, or leave two openings in a seam, where the ends of the cord come out",
				At:   ticket.Long(p.FinishedToUpper.Add(s.Tunnel.DivInt(2))),
				From: edge,
				Note: "they are the way in and out, and stay open: the casing is closed over them",
			})
		}
	}
	if s.Applied {
		st = append(st, ticket.Step{
			Do: "Cut the strip", At: ticket.Long(p.StripWidth), From: "edge to edge across the strip",
			Check: ticket.Check{What: "across the strip", Want: ticket.Long(p.StripWidth), Give: ticket.Long(give(s.Tape).DivInt(2)), Mend: "Cut it again: a narrow strip holds nothing"},
		})
		if !p.StripLength.IsZero() {
			st = append(st,
				ticket.Step{Do: "Trim the strip to length", At: ticket.Long(p.StripLength), From: "one end to the other"},
				ticket.Step{Do: "Turn in both ends", At: ticket.Long(s.End), From: "the raw end", Press: "to the wrong side"})
		}
		eyelets()
		st = append(st,
			ticket.Step{Do: "Turn in both long edges", At: ticket.Long(s.Turn), From: "the raw edge", Press: "to the wrong side"},
			ticket.Step{Do: "Lay the strip on the wrong side of the garment and stitch its upper edge", Together: ticket.WrongTogether, At: ticket.Long(p.FinishedToUpper), From: "the upper edge of the strip"})
	} else {
		st = append(st, ticket.Step{Do: "Cut the allowance even above the finished edge", At: ticket.Long(p.Taken), From: "the finished edge"})
		eyelets()
		st = append(st,
			ticket.Step{Do: "Turn in the raw edge", At: ticket.Long(s.Turn), From: "the raw edge", Press: "to the wrong side"},
			ticket.Step{
				Do: "Fold the casing down on the finished edge", At: ticket.Long(p.Depth), From: "the inner fold", Press: "to the wrong side",
				Check: ticket.Check{What: "from the finished edge to the inner fold", Want: ticket.Long(p.Depth), Give: ticket.Long(give(s.Tape)), Mend: "Press the fold out and fold again from the mark"},
			})
		if p.Rows == 2 {
			st = append(st, ticket.Step{Do: "Stitch the upper row all round", At: ticket.Long(p.FinishedToUpper), From: "the finished edge"})
		}
	}
	if s.Applied {
		edge = "the upper edge of the strip"
	}
	lower := ticket.Step{
		Do: "Stitch the lower row all round", At: ticket.Long(p.FinishedToLower), From: edge,
		Check: ticket.Check{What: "the tunnel, clear between its rows or from the fold to the row", Want: ticket.Long(s.Tunnel), Give: ticket.Long(give(s.Tape)), Mend: "Unpick the lower row: too narrow a tunnel jams, too wide a one lets the band twist"},
	}
	thread := ticket.Step{Do: "Thread the elastic with a bodkin, the other end pinned to the garment, and join its ends"}
	switch s.Kind {
	case CordCasing:
		if p.Barred {
			thread.Do, thread.Note = "Thread elastic instead of a cord, and join its ends inside", "A rule allows no cord here at this age"
			break
		}
		lower.Note = "The cord goes in by one eyelet and comes out by the other"
		thread.Do = "Thread the cord, even its ends, and fasten it to the garment at the middle of the back with a bar of stitches"
		switch {
		case !p.Over.IsZero():
			thread.Check = ticket.Check{What: "each free end, with the casing at its full width, at the limit or less", Want: ticket.Long(p.TailMost), Mend: "Cut it to the limit; do not knot it"}
		case !s.Tail.IsZero():
			thread.Check = ticket.Check{What: "each free end, with the casing at its full width", Want: ticket.Long(s.Tail), Give: ticket.Long(give(s.Tape).MulInt(2)), Mend: "Even the ends before the bar is sewn; cut what is too long"}
		}
	case RodCasing:
		lower.Do, thread.Do = "Stitch the lower row from side to side", "Put the rod through both ends"
	}
	if s.Opening.IsZero() {
		return append(st, lower, thread)
	}
	lower.Do = "Stitch the lower row round from one mark of the opening to the other"
	return append(st,
		ticket.Step{Do: "Mark an opening in the inner fold at a seam", At: ticket.Long(s.Opening), From: "one mark to the other"},
		lower, thread,
		ticket.Step{Do: "Close the opening: stitch the lower row across it, clear of the elastic", At: ticket.Long(p.FinishedToLower), From: edge})
}

func (p CasingPlan) cautions() []ticket.Caution {
	s := p.Spec
	cs := make([]ticket.Caution, 0, 6)
	_, hi := p.Room.Bounds()
	if s.Kind == RodCasing && hi.Sign() < 0 {
		cs = append(cs, ticket.Caution{Text: "The rod does not go through: the tunnel laid flat is less than half the measure round the rod. Add the ease to half that measure and not to the diameter."})
	}
	if s.Kind == CordCasing {
		cs = p.cordCautions(cs)
	}
	switch p.Drift.Sign() {
	case 1:
		cs = append(cs, ticket.Caution{Text: "The casing takes less than the allowance: the garment comes out longer than drafted. Cut the allowance to what the casing takes."})
	case -1:
		cs = append(cs, ticket.Caution{Text: "The casing takes more than the allowance: the garment comes out shorter than drafted."})
	}
	return append(cs, ticket.IronCare(), ticket.CutCare())
}

func (p CasingPlan) cordCautions(cs []ticket.Caution) []ticket.Caution {
	switch s := p.Spec; {
	case p.Barred:
		cs = append(cs, ticket.Caution{
			Text:  "A cord at the hood or the neck of a child of this age is not allowed: it catches and strangles. Use elastic, a press stud or a buttoned tab.",
			Refer: "16 CFR 1120, United States; EN 14682, Europe; " + safety.Decides,
		})
	case !p.Over.IsZero():
		cs = append(cs, ticket.Caution{
			Text:  "The free ends are longer than a rule allows for a child of this age: they catch in doors and playthings. Cut them to the limit, without knots or toggles, and sew the cord to the garment at its middle.",
			Refer: "16 CFR 1120, United States; EN 14682, Europe; " + safety.Decides,
		})
	case !p.TailMost.IsZero():
		cs = append(cs, ticket.Caution{
			Text:  "Cords on a child's clothes catch: keep the free ends within the limit with the casing at its full width, without knots or toggles, and sew the cord to the garment at its middle.",
			Refer: "16 CFR 1120, United States; EN 14682, Europe; " + safety.Decides,
		})
	case s.Months == 0:
		cs = append(cs, ticket.Caution{
			Text:  "A cord on a child's clothes can catch and strangle, and is not allowed at the hood or the neck of a young child: for a child give the wearer's age.",
			Refer: "16 CFR 1120, United States; EN 14682, Europe; " + safety.Decides,
		})
	}
	return cs
}

func (p CasingPlan) sources() []source.Cite {
	s := p.Spec
	cs := make([]source.Cite, 0, 8)
	turn, row, opening := casingTurn(s.Tape), casingRow(s.Tape), casingOpening(s.Tape)
	if slices.Contains(p.Assumed, "ease") {
		for _, e := range casingEases {
			if e.Kind == s.Kind && e.Round == !s.Girth.IsZero() {
				cs = append(cs, source.Cite{For: "ease of the casing, " + e.Name, ID: e.Source, Place: e.Place, Known: e.Known})
			}
		}
	}
	if slices.Contains(p.Assumed, "turn") {
		if s.Turn == turn.Turn {
			cs = append(cs, source.Cite{For: "turn of the raw edge", ID: turn.Source, Place: turn.Place, Known: turn.Known})
		} else {
			cs = append(cs, source.Practise("turn of the raw edge, no more than there is room for"))
		}
	}
	if slices.Contains(p.Assumed, "lower") || slices.Contains(p.Assumed, "heading") {
		if s.Lower == row.Lower || s.heading() == row.Lower {
			cs = append(cs, source.Cite{For: "row inside the fold", ID: row.Source, Place: row.Place, Known: row.Known})
		} else {
			cs = append(cs, source.Practise("row inside the fold, half way along the turn"))
		}
	}
	if slices.Contains(p.Assumed, "opening") {
		if s.Opening == opening.Open {
			cs = append(cs, source.Cite{For: "opening to thread through", ID: opening.Source, Place: opening.Place, Known: opening.Known})
		} else {
			cs = append(cs, source.Practise("opening to thread through, "+threading(s.Tape).String()+" more than the elastic"))
		}
	}
	if slices.Contains(p.Assumed, "end") {
		cs = append(cs, source.Practise("turn at the ends of a strip"))
	}
	if s.Kind == CordCasing {
		for l := range safety.Tails(s.Months, s.Neck) {
			cs = append(cs, source.Cite{For: "cords of a child's clothes", ID: l.Source, Place: l.Rule, Known: l.Known})
		}
	}
	if s.Kind == RodCasing && s.Girth.IsZero() {
		cs = append(cs, source.Cite{For: "half the measure round a rod, by geometry", Known: source.Computed})
	}
	return append(cs, source.Practise("parts of the casing add up to what it takes"))
}
