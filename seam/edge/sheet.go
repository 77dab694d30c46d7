package edge

import (
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// The sheets of edges, pairs and assemblies. None of their rules is taken from
// one book: they are common practice and plain geometry.

func edgeSources() []source.Cite {
	return []source.Cite{
		source.Practise("what a seam keeps of its allowance, each ply adds to every edge that the seam crosses"),
		source.Practise("edges are compared on their seam lines, never on the cut edges"),
		source.Practise("a line parallel to a curve is longer outside it and shorter inside, by the turning times the distance"),
	}
}

// taut is the advice on measuring that every check of an edge needs.
const taut = "Stand the tape on its edge along the stitching line and do not pull the cloth."

// Sheet is the plan as work: what each crossing adds, the edge as sewn, and what
// to measure before going on.
func (p Plan) Sheet() ticket.Sheet {
	e := p.Spec
	s := ticket.Sheet{
		Title:   "Edge: " + sew.OrElse(e.Name, "no name"),
		Assumed: p.Assumed,
		Sources: edgeSources(),
	}
	if p.Sewn.IsZero() {
		return s // the plan of no edge has nothing to say
	}
	s.Answer = []ticket.Line{{Label: "as sewn", Result: ticket.About(p.Sewn)}, ticket.Line{Label: "longer than drafted by", Result: ticket.About(p.Change)}.Turned("shorter than drafted by")}
	if !e.Along.IsZero() && len(e.Takes) > 0 {
		l := ticket.Line{Label: "drafted, between the seam lines", Result: ticket.About(p.Drafted), Terms: make([]ticket.Term, 1, len(e.Takes)+1)}
		l.Terms[0] = ticket.Term{Amount: ticket.Long(e.Along), Name: "raw end to raw end"}
		for _, t := range e.Takes {
			l.Terms = append(l.Terms, ticket.Term{Op: ticket.Minus, Amount: t.along(t.Drafted), Name: sew.OrElse(t.Name, "a seam")})
		}
		s.Lines = append(s.Lines, l)
	}
	for _, t := range e.Takes {
		s.Lines = append(s.Lines, t.driftLine(" keeps in each ply"))
		if !t.Drift().IsZero() {
			s.Lines = append(s.Lines, t.alongLine())
		}
	}
	if e.Own != (Take{}) {
		s.Lines = append(s.Lines, e.Own.driftLine(" moves the line out"))
		if !e.Turn.IsZero() {
			s.Lines = append(s.Lines, e.turned("the curve turns that into", e.Own.Drift(), "moved out"))
		}
	}
	s.Lines = append(s.Lines, p.sewnLine("as sewn, between the seam lines"))
	if e.Own != (Take{}) && !e.Turn.IsZero() {
		s.Lines = append(s.Lines, e.turned("the curve turns the allowance into", e.Own.Cut, "as cut"))
		l := ticket.Line{Label: "along the cut edge (for cutting only)", Result: ticket.About(p.CutLength), Terms: []ticket.Term{
			{Amount: ticket.About(p.Drafted), Name: "as drafted"},
		}}
		l.Terms = append(e.spread(l.Terms), ticket.Term{Amount: e.turn(e.Own.Cut), Name: "for the curve"})
		s.Lines = append(s.Lines, l)
	}
	s.Steps = []ticket.Step{p.step()}
	for _, t := range e.Takes {
		if !t.Slant.IsZero() && !t.Drift().IsZero() {
			s.Cautions = append(s.Cautions, ticket.Caution{
				Text:  "A slanted seam that keeps some of its allowance leaves a step or a peak in the edge: redraw the edge through the seam before matching it.",
				Refer: "common practice",
			})
			break
		}
	}
	return s
}

func (t Take) driftLine(does string) ticket.Line {
	return ticket.Line{Label: sew.OrElse(t.Name, "seam") + does, Result: ticket.Long(t.Drift()), Terms: []ticket.Term{
		{Amount: ticket.Long(t.Cut), Name: "as cut"},
		{Op: ticket.Minus, Amount: ticket.Long(t.Taken), Name: "taken"},
	}}
}

// along is a length of each ply, measured along the edge.
func (t Take) along(l units.Length) ticket.Amount {
	c, _ := cosecant(t.Slant)
	return ticket.About(c.Of(l.MulInt(int64(t.Plies))).Settled())
}

func (t Take) alongLine() ticket.Line {
	l := ticket.Line{Label: sew.OrElse(t.Name, "seam") + " adds to the edge", Result: t.along(t.Drift())}
	c, _ := cosecant(t.Slant)
	by, exact := c.Exact()
	if !exact {
		return l // the sine is irrational: the result is stated
	}
	l.Terms = []ticket.Term{ticket.Add(t.Drift(), "each ply"), ticket.Multiply(t.Plies, "plies")}
	if !t.Slant.IsZero() {
		l.Terms = append(l.Terms, ticket.Term{Op: ticket.By, Amount: ticket.Times(by), Name: "for the slant, 1 over the sine"})
	}
	return l
}

// turn is how much longer the line is for lying so far out.
func (e Spec) turn(out units.Length) ticket.Amount {
	return ticket.About(e.Turn.InRadians().Of(out).Settled())
}

func (e Spec) turned(label string, out units.Length, name string) ticket.Line {
	l := ticket.Line{Label: label, Result: e.turn(out)}
	if r, exact := e.Turn.InRadians().Exact(); exact {
		l.Terms = []ticket.Term{ticket.Add(out, name), {Op: ticket.By, Amount: ticket.Times(r), Name: "turning in radians"}}
	}
	return l
}

// sewnLine is the edge as drafted, what each seam adds, and what that comes to.
func (p Plan) sewnLine(label string) ticket.Line {
	e := p.Spec
	l := ticket.Line{Label: label, Result: ticket.About(p.Sewn), Terms: make([]ticket.Term, 1, len(e.Takes)+3)}
	l.Terms[0] = ticket.Term{Amount: ticket.About(p.Drafted), Name: "as drafted"}
	l.Terms = e.spread(l.Terms)
	for _, t := range e.Takes {
		if !t.Drift().IsZero() {
			l.Terms = append(l.Terms, ticket.Term{Amount: t.along(t.Drift()), Name: sew.OrElse(t.Name, "a seam")})
		}
	}
	if !e.Own.Drift().IsZero() && !e.Turn.IsZero() {
		l.Terms = append(l.Terms, ticket.Term{Amount: e.turn(e.Own.Drift()), Name: "its own seam"})
	}
	return l
}

// spread adds what the piece is spread by, if it is.
func (e Spec) spread(terms []ticket.Term) []ticket.Term {
	if e.Spread.IsZero() {
		return terms
	}
	return append(terms, ticket.Term{Amount: ticket.Long(e.Spread), Name: "its piece spread"})
}

// step is the check of an edge once its seams are sewn.
func (p Plan) step() ticket.Step {
	return ticket.Step{
		Do:   "Measure the " + sew.OrElse(p.Spec.Name, "edge") + " on its seam line, once the seams that cross it are sewn",
		Note: taut,
		Check: ticket.Check{
			What: "between the seam lines at its ends",
			Want: ticket.About(p.Sewn),
			Give: sew.Hand(noun.Tape(p.Spec)),
			Mend: "what it is out, divided by the plies that the crossing seams have in it, is what each of these plies must take more or less",
		},
	}
}

// Sheet is the plan as work: both edges, the difference as drafted and as sewn,
// and how to put them together.
func (p PairPlan) Sheet() ticket.Sheet {
	if p.Fit == 0 {
		return ticket.Sheet{Title: "No edges"} // the plan of no match has nothing to say
	}
	long, short := p.Long.Spec.Name, p.Short.Spec.Name
	s := ticket.Sheet{
		Title:   long + " to " + short + ": " + p.Fit.String(),
		Answer:  []ticket.Line{ticket.Line{Label: "longer by", Result: ticket.About(p.Sewn)}.Turned("shorter by")},
		Assumed: p.Assumed,
		Sources: edgeSources(),
		Lines: []ticket.Line{
			p.Long.sewnLine(long + " as sewn"),
			p.Short.sewnLine(short + " as sewn"),
			difference("longer as drafted", p.Drafted, p.Long.Drafted, p.Short.Drafted, long, short).Turned("shorter as drafted"),
			difference("longer as sewn", p.Sewn, p.Long.Sewn, p.Short.Sewn, long, short).Turned("shorter as sewn"),
			difference("change", p.Change, p.Sewn, p.Drafted, "as sewn", "as drafted"),
			p.limitLine(),
			{Label: "most that lies smooth, in cloth like lawn", Result: ticket.About(p.smooth()), Terms: []ticket.Term{
				{Amount: ticket.About(p.Short.Sewn), Name: short}, {Op: ticket.By, Amount: ticket.Times(sew.SmoothEase()), Name: "into each unit"}}},
		},
		Steps: []ticket.Step{p.Long.step(), p.Short.step(), p.join()},
	}
	s.Cautions = p.cautions(s.Cautions)
	return s
}

func difference(label string, is, a, b units.Near, of, less string) ticket.Line {
	return ticket.Line{Label: label, Result: ticket.About(is), Terms: []ticket.Term{
		{Amount: ticket.About(a), Name: of},
		{Op: ticket.Minus, Amount: ticket.About(b), Name: less},
	}}
}

// smooth is what can be eased in and lie smooth, spread over all of the edge.
func (m Match) smooth() units.Near { return m.ShortSewn.Scale(sew.SmoothEase()) }

func (p PairPlan) limitLine() ticket.Line {
	l := ticket.Line{Label: "ease that the pattern drew, which is the limit here", Result: ticket.About(p.Limit)}
	if most, given := p.Spec.MaxEase.Get(); given {
		l.Label = "most that may be eased in, by the limit given"
		l.Terms = []ticket.Term{
			{Amount: ticket.About(p.Short.Sewn), Name: p.Short.Spec.Name},
			{Op: ticket.By, Amount: ticket.Times(most), Name: "limit of ease"},
		}
	}
	return l
}

// join is the step that puts the two edges together.
func (p PairPlan) join() ticket.Step {
	st := ticket.Step{Together: ticket.RightTogether}
	both := p.Long.Spec.Name + " to the " + p.Short.Spec.Name
	switch p.Fit {
	case Fits:
		st.Do = "Pin the " + both + ", mark to mark, and stitch"
	case Eases:
		st.Do = "Pin the " + both + ", mark to mark, ease the longer in between the marks, and stitch"
		st.Note = "Sew with the longer edge underneath, or over a row of ease stitching drawn up to size."
	case Gathers:
		st.Do = "Gather the longer edge, pin the " + both + ", mark to mark, spread the gathers and stitch"
	default:
		return ticket.Step{
			Do:   "Do not pin the " + both + " yet: they do not go together",
			Note: "Take a remedy first; a shorter edge stretched, or a longer one tucked in where nobody meant it, shows.",
		}
	}
	return st
}

func (p Match) cautions(list []ticket.Caution) []ticket.Caution {
	names := p.LongName + " to " + p.ShortName
	drawn, err := p.Drafted.Sign()
	switch {
	case p.Fit == Mismatch:
		return append(list, ticket.Caution{
			Text:  names + ": a mismatch. Put it right before cutting, while cutting can still mend it.",
			Refer: "common practice",
		})
	case p.Fit == Fits && err == nil && drawn > 0:
		return append(list, ticket.Caution{
			Text:  names + ": the two are equally long, and the ease that the pattern drew is gone.",
			Refer: "common practice",
		})
	case p.Fit == Eases:
		if over, err := p.Sewn.Cmp(p.smooth()); err == nil && over > 0 {
			return append(list, ticket.Caution{
				Text:  names + ": more is eased in than lies smooth in cloth like lawn. Cloth that shrinks under the iron takes more: try it on a scrap.",
				Refer: "common practice, and not a sure figure",
			})
		}
	}
	return list
}

// Sheet is the plan as a table: every edge as sewn, with what makes it so, every
// pair before and after, and the edges to measure. How each seam is sewn is in
// the sheets of Seams.
func (p AssemblyPlan) Sheet() ticket.Sheet {
	s := ticket.Sheet{
		Title:   "Edges and partners",
		Assumed: p.Assumed,
		Sources: edgeSources(),
		Lines:   make([]ticket.Line, 0, len(p.Edges)+2*len(p.Pairs)),
	}
	for _, e := range p.Edges {
		s.Lines = append(s.Lines, e.sewnLine(e.Spec.Name))
		if !e.Change.IsZero() {
			s.Steps = append(s.Steps, e.step())
		}
	}
	for _, m := range p.Pairs {
		long, _ := p.Edge(m.LongName)
		short, _ := p.Edge(m.ShortName)
		name := m.LongName + " to " + m.ShortName
		if m.Fit == Mismatch {
			l := ticket.Line{Label: m.LongName + " is longer than " + m.ShortName + " by", Result: ticket.About(m.Sewn)}
			s.Answer = append(s.Answer, l.Turned(m.LongName+" is shorter than "+m.ShortName+" by"))
		}
		s.Lines = append(s.Lines,
			difference(name+", as drafted", m.Drafted, long.Drafted, short.Drafted, m.LongName, m.ShortName),
			difference(name+", "+m.Fit.String(), m.Sewn, m.LongSewn, m.ShortSewn, m.LongName, m.ShortName))
		s.Cautions = m.cautions(s.Cautions)
	}
	if len(p.Pairs) > 0 && s.Answer == nil {
		s.Title += ": all go together"
	}
	return s
}

// Step is what the remedy asks of the hand, before the seam is sewn.
func (r Remedy) Step() ticket.Step {
	switch r.Act {
	case ChangePass:
		return ticket.Step{Do: "Sew the " + r.Seam + " seam so that it takes what was cut", Note: "Nothing then drifts, and every edge that it crosses stays as drafted."}
	case CutDrift:
		return ticket.Step{
			Do:   "Cut both plies of the " + r.Seam + " seam to what it takes, then sew it as meant",
			At:   ticket.Long(r.Cut),
			From: "the drafted stitching line",
		}
	case SewPartner:
		return ticket.Step{Do: "Sew the " + r.Seam + " seam so that the " + r.Edge + " comes out as its partner did"}
	case SpreadPartner:
		return ticket.Step{
			Do:   "Spread or fold the pattern of the " + r.Edge + " at the places where the seams of its partner meet it",
			At:   ticket.Long(r.Net),
			From: "seam line to seam line, once it is changed",
			Note: "share the change equally among those places, and draw again what lies along the edge",
		}
	}
	return ticket.Step{}
}
