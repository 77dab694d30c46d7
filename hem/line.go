package hem

import "example.com/clothyard/units/ticket"

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
	ls = append(ls, p.takenLine())
	if !p.CutOff.IsZero() {
		ls = append(ls, line("to cut off the allowance drafted", ticket.Long(p.CutOff),
			term(ticket.Plus, ticket.Long(s.Drafted), "drafted"), term(ticket.Minus, ticket.Long(s.Cut), "as cut")).
			Turned("left on beyond the allowance drafted"))
	}
	out, in := longer, shorter
	if s.Kind == Slit {
		out, in = "each finished edge lies beyond the line drafted by", "each finished edge lies inside the line drafted by"
	}
	ls = append(ls, line(out, ticket.Long(p.Drift),
		term(ticket.Plus, ticket.Long(s.Cut), "allowance as cut"), term(ticket.Minus, taken, "taken")).Turned(in))
	switch {
	case s.Kind.stripped():
		ls = p.stripLines(ls)
	case s.Kind == TurnUp:
		ls = append(ls, line("raw edge to the top of the turn-up", ticket.Long(p.RawToSecondFold),
			term(ticket.Plus, ticket.Long(s.First), "hem inside"), term(ticket.Plus, ticket.Long(s.Depth), "depth")))
	case !s.oneFold():
		ls = append(ls, line("raw edge to stitching, flat", ticket.Long(p.RawToStitch),
			term(ticket.Plus, ticket.Long(s.First), "first turn"), term(ticket.Plus, ticket.Long(s.Stitch), "from the inner fold")))
	}
	if s.Kind == Blind {
		ls = append(ls, line("finished edge to the fold of the garment", ticket.Long(p.FinishedToBack),
			term(ticket.Plus, ticket.Long(s.Depth), "depth"), term(ticket.Minus, ticket.Long(s.Back), "standing out beyond the fold")))
	}
	switch s.Kind {
	case Bound:
	case TurnUp:
		ls = append(ls, line("finished edge to stitching, inside the leg", ticket.Long(p.FinishedToStitch),
			term(ticket.Plus, ticket.Long(s.First), "hem inside"), term(ticket.Minus, ticket.Long(s.Stitch), "stitching from the raw edge")))
	default:
		ls = append(ls, line("finished edge to stitching", ticket.Long(p.FinishedToStitch),
			term(ticket.Plus, ticket.Long(s.Depth), "depth"), term(ticket.Minus, ticket.Long(s.Stitch), "stitching from the inner edge of the hem")))
	}
	if !s.Slope.IsZero() {
		ls = p.flareLines(ls)
	}
	ls = p.curveLines(ls)
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
		if turn := s.Circle.Sub(s.Hollow); !turn.IsZero() && !p.Drift.IsZero() {
			ls = append(ls, line("the same, with the drift of its curves", ticket.About(p.Round),
				term(ticket.Plus, ticket.About(arc(wholeCircle, p.Drift)), "round a circle of the drift as radius"),
				term(ticket.By, ticket.Times(turn), "of a circle, the convex curves less the concave"),
				term(ticket.Plus, ticket.Long(p.Swept), "along the straight")))
		}
	}
	return ls
}

// How the garment comes out, by its drift.
const (
	longer  = "garment comes out longer by"
	shorter = "garment comes out shorter by"
)

func (p Plan) takenLine() ticket.Line {
	s := p.Spec
	first, depth := term(ticket.Plus, ticket.Long(s.First), "first turn"), term(ticket.Plus, ticket.Long(s.Depth), "depth")
	label, taken := "taken by the hem", ticket.Long(p.Taken)
	switch {
	case s.oneFold():
		return line(label, taken, depth)
	case s.Kind == TurnUp:
		return line(label, taken, depth, term(ticket.By, two, "layers"), term(ticket.Plus, ticket.Long(s.First), "hem inside"))
	case s.Kind.faced():
		seam := term(ticket.Plus, ticket.Long(s.Seam), "seam")
		if s.Favour.IsZero() {
			return line(label, taken, seam)
		}
		return line(label, taken, seam, term(ticket.Plus, ticket.Long(s.Favour), "rolled to the wrong side"))
	case s.Kind == Bound:
		if p.Taken.Sign() < 0 {
			label = "taken by the hem, with a minus where the binding stands out beyond the raw edge"
		}
		return line(label, taken, term(ticket.Plus, ticket.Long(s.Seam), "seam"), term(ticket.Minus, ticket.Long(s.Depth), "width of the binding"))
	}
	return line(label, taken, first, depth)
}

// stripLines are the width of the strip and where it is folded.
func (p Plan) stripLines(ls []ticket.Line) []ticket.Line {
	s := p.Spec
	terms := make([]ticket.Term, 0, 6)
	terms = append(terms, term(ticket.Plus, ticket.Long(s.Depth), "depth"))
	if s.Kind == Bound {
		terms = append(terms, term(ticket.By, two, "sides"))
	}
	terms = append(terms, term(ticket.Plus, ticket.Long(s.Seam), "seam"))
	if !s.Favour.IsZero() {
		terms = append(terms, term(ticket.Minus, ticket.Long(s.Favour), "rolled to the wrong side"))
	}
	fold := len(terms)
	switch {
	case s.Doubled:
		terms = append(terms, term(ticket.By, two, "layers"))
	default:
		terms = append(terms, term(ticket.Plus, ticket.Long(s.First), "turn of the free edge"))
	}
	if !s.Spare.IsZero() {
		terms = append(terms, term(ticket.Plus, ticket.Long(s.Spare), "spare"))
	}
	return append(ls,
		line("strip, from the edge that is sewn on to the fold", ticket.Long(p.StripToFold), terms[:fold:fold]...),
		line("width of the strip", ticket.Long(p.StripWidth), terms...))
}

func (p Plan) flareLines(ls []ticket.Line) []ticket.Line {
	s := p.Spec
	label := "turned cloth to lose, at the inner edge of the hem"
	if p.Excess.Sign() < 0 {
		label = "turned cloth too short by, shown with a minus"
	}
	each, name := "each side edge, mirrored, lies inside its straight run by", "depth"
	terms := make([]ticket.Term, 0, 3)
	switch {
	case s.Kind == Bound:
		each = "binding, at each side edge, too short by, shown with a minus"
		label = "binding too short by, shown with a minus"
		if p.Excess.Sign() > 0 {
			each, label = "binding, at each side edge, to lose", "binding to lose"
		}
		terms = append(terms, term(ticket.Plus, ticket.Long(s.Depth.Neg()), name))
	case s.Kind.faced():
		each = "free edge of the facing, cut to shape, lies inside its straight run by, at each side edge"
		if s.Slope.Sign() < 0 {
			each = "free edge of the facing, cut to shape, lies outside its straight run by, shown with a minus"
		}
		terms = append(terms, term(ticket.Plus, ticket.Long(s.Depth), name))
		if !s.Favour.IsZero() {
			terms = append(terms, term(ticket.Plus, ticket.Long(s.Favour), "rolled to the wrong side"))
		}
	default:
		terms = append(terms, term(ticket.Plus, two, ""), term(ticket.By, ticket.Long(s.Depth), name))
	}
	terms = append(terms, term(ticket.By, ticket.Times(s.Slope), "slope"))
	ls = append(ls,
		line(each, ticket.Long(p.Inset), terms...),
		line(label, ticket.Long(p.Excess),
			term(ticket.Plus, ticket.Long(p.Inset), "each edge"), term(ticket.By, ticket.Of(s.Edges), "edges")))
	if !p.Drift.IsZero() {
		ls = append(ls, line("drift of the edge that is hemmed", ticket.Long(p.SweepDrift),
			term(ticket.Plus, ticket.Long(p.Drift), "drift"), term(ticket.By, ticket.Times(s.Slope), "slope"),
			term(ticket.By, ticket.Of(s.Edges), "edges")))
	}
	return ls
}

// curveLines are what the curves of the edge ask of the turned cloth.
func (p Plan) curveLines(ls []ticket.Line) []ticket.Line {
	s := p.Spec
	reach := s.reach()
	lose, gain := s.Circle, s.Hollow
	if reach.Sign() < 0 {
		lose, gain, reach = gain, lose, reach.Neg()
	}
	girth := ticket.About(arc(wholeCircle, reach))
	name := "round a circle of twice the depth as radius"
	switch {
	case s.Kind.faced() && !s.Favour.IsZero():
		name = "round a circle of the depth and the roll as radius"
	case s.Kind.stripped():
		name = "round a circle of the depth as radius"
	}
	if !lose.IsZero() {
		ls = append(ls, line("turned cloth to lose on the curves", ticket.About(arc(lose, reach)),
			term(ticket.Plus, girth, name), term(ticket.By, ticket.Times(lose), "of a circle")))
	}
	if !gain.IsZero() {
		ls = append(ls, line("turned cloth too short on the curves by", ticket.About(arc(gain, reach)),
			term(ticket.Plus, girth, name), term(ticket.By, ticket.Times(gain), "of a circle")))
	}
	if !s.Radius.IsZero() {
		ls = append(ls, line("round the finished edge, as sewn", ticket.About(p.Round),
			term(ticket.Plus, ticket.About(arc(wholeCircle, s.Radius.Add(p.Drift))), "round the whole circle"),
			term(ticket.By, ticket.Times(s.Circle), "of a circle")))
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
