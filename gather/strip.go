package gather

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/strip"
	"example.com/clothyard/units/ticket"
)

// A Strip is a joined strip gathered onto an edge. Zero means "not given"; what is
// not given follows from the rest:
//
//	strip, edge                      fullness
//	strip, fullness                  edge
//	edge, fullness, strip.pieces     strip.each, exactly
//	edge, fullness, strip.each       strip.pieces, up to whole pieces
//
// where "strip" is any strip that [strip.Spec.Plan] can work out by itself. All of
// them may be given where they agree. With strip.least given as well, which must
// then be edge x fullness, the strip may be longer: fullness is the least that is
// wanted.
type Strip struct {
	// Strip is the strip: its pieces, joins and ends, open or a ring. Its allowance
	// is needed where there is a join; it is 0 in where the ends only meet.
	Strip strip.Spec `json:"strip,omitzero"`
	// Edge is the edge it is gathered onto, along the seam line, as sewn.
	Edge units.Length `json:"edge,omitzero"`
	// Fullness is the length of the strip as sewn over that of the edge, 1 or more.
	Fullness units.Ratio `json:"fullness,omitzero"`
}

// A StripPlan is what a gathered strip comes to.
type StripPlan struct {
	Spec     Strip        `json:"spec,omitzero"`     // as solved
	Strip    strip.Plan   `json:"strip,omitzero"`    // the strip before it is gathered
	Edge     units.Length `json:"edge,omitzero"`     // the edge, along the seam line
	Fullness units.Ratio  `json:"fullness,omitzero"` // what the strip has: its length as sewn over the edge
	Surplus  units.Length `json:"surplus,omitzero"`  // what it has beyond edge x the fullness asked for, because pieces are whole
}

// Plan works out the strip. The faults are [fault.Faults]; a fullness below 1 is
// one, since a strip shorter than its edge cannot be gathered onto it.
func (s Strip) Plan() (StripPlan, error) {
	var a fault.Audit
	both := !s.Edge.IsZero() && !s.Fullness.IsZero()
	whole := s.Strip.Pieces != 0 && !s.Strip.Each.IsZero()
	st := s.Strip
	derived := both && !whole && st.Least.IsZero()
	if derived {
		// In magnitude, so that a wrong sign is told once, in its own field.
		st.Least = s.Edge.Abs().Scale(s.Fullness.Abs())
	}
	sp, err := st.Plan()
	faults := fault.Under("strip", err)
	for _, f := range faults {
		if derived && f.Path == "strip.least" {
			f.Path, f.Got = "edge", s.Edge.String()+" at a fullness of "+s.Fullness.String()
		}
	}
	a.Include("", faults.OrNil())
	s.audit(&a, whole || !s.Strip.Least.IsZero())
	if !a.Failed() && len(sp.Assumed) > 0 {
		a.Fault("strip.allowance", "", "0 or more ("+strconv.Itoa(sp.Joins)+" to join)", fault.Missing)
	}
	if a.Failed() {
		return StripPlan{}, a.Err()
	}

	s.Strip = sp.Spec
	p := StripPlan{Strip: sp}
	if s.Edge.IsZero() {
		s.Edge = sp.Sewn.Unscale(s.Fullness)
	}
	p.Edge, p.Fullness = s.Edge, sp.Sewn.Div(s.Edge)
	switch {
	case s.Fullness.IsZero():
		fault.AtMost(&a, "edge", s.Edge, sp.Sewn, "the strip as sewn", fault.Range)
		s.Fullness = p.Fullness
	case both:
		want := s.Edge.Scale(s.Fullness)
		p.Surplus = sp.Sewn.Sub(want)
		if !p.Surplus.IsZero() && s.Strip.Least != want {
			a.Fault("fullness", s.Fullness.String(), p.Fullness.String()+" (strip {0} over edge {1})", fault.Conflict, sp.Sewn, s.Edge)
		}
	}
	if a.Failed() {
		return StripPlan{}, a.Err()
	}
	p.Spec = s
	return p, nil
}

// audit looks at the edge and the fullness. One of them is needed where the strip
// is known by itself, else both.
func (s Strip) audit(a *fault.Audit, known bool) {
	switch {
	case s.Edge.Sign() < 0:
		a.NotNegative("edge", s.Edge)
	case !s.Edge.IsZero():
	case !known:
		a.Fault("edge", "", "more than 0 in, or a strip given in full", fault.Missing)
	case s.Fullness.IsZero():
		a.Fault("edge", "", "more than 0 in, or a fullness", fault.Missing)
	}
	switch {
	case s.Fullness.Sign() < 0:
		a.Fault("fullness", s.Fullness.String(), "1 or more", fault.Sign)
	case !s.Fullness.IsZero():
		if s.Fullness.Less(units.RatioOf(1, 1)) {
			a.Fault("fullness", s.Fullness.String(), "1 or more (a strip shorter than its edge is not gathered)", fault.Range)
		}
	case !known:
		a.Fault("fullness", "", "1 or more, or a strip given in full", fault.Missing)
	}
}

// Sheet is how the strip is made and drawn up, with the working behind it.
func (p StripPlan) Sheet() ticket.Sheet {
	sheet := p.Strip.Sheet()
	sheet.Title = "A strip gathered onto an edge"
	sheet.Answer = p.answer()
	sheet.Lines = p.working()
	sheet.Steps = append(sheet.Steps, ticket.Step{
		Do:   "Run the gathering thread along the strip and draw it up to the edge",
		Note: "divide strip and edge into the same number of equal parts, pin them mark to mark, and spread the gathers evenly between",
		Check: ticket.Check{
			What: "the strip as drawn up, end to end", Want: ticket.Long(p.Edge),
			Mend: "let the thread out or draw it closer, then fasten it",
		},
	})
	sheet.Sources = append(sheet.Sources, citeGathers(), citeQuarters())
	return sheet
}

// answer is what is cut and how full that is, with what else is said of the pieces.
func (p StripPlan) answer(more ...ticket.Line) []ticket.Line {
	st := p.Strip.Spec
	if st.Pieces == 0 {
		return nil
	}
	lines := append([]ticket.Line{{Label: "pieces", Result: ticket.Of(st.Pieces)}, ticket.Sum("cut each long", st.Each)}, more...)
	return append(lines, ticket.Line{Label: "fullness", Result: ticket.Times(p.Fullness)})
}

// working is the lines that strip and ruffle share.
func (p StripPlan) working() []ticket.Line {
	sewn := p.Strip.Sewn
	lines := []ticket.Line{p.Strip.Working(), fullness("fullness at the seam", p.Fullness, ticket.Add(sewn, "strip"), p.Edge, "edge")}
	if !p.Surplus.IsZero() {
		lines = append(lines, ticket.Sum("more than the fullness asked for", p.Surplus, ticket.Add(sewn, "strip"), ticket.Less(p.Edge.Scale(p.Spec.Fullness), "asked for")))
	}
	return lines
}

// fullness is the line of a fullness: a length over the edge that takes it.
func fullness(label string, result units.Ratio, of ticket.Term, edge units.Length, name string) ticket.Line {
	return ticket.Line{Label: label, Result: ticket.Times(result), Terms: []ticket.Term{of, {Op: ticket.Over, Amount: ticket.Long(edge), Name: name}}}
}

func citeGathers() source.Cite {
	return source.Cite{For: "gathers begin at half as much again", ID: "costume-construction-text", Place: "chapter 11", Known: source.Read}
}

func citeQuarters() source.Cite {
	return source.Cite{For: "equal parts, pinned mark to mark", ID: "needlework-encyclopedia", Place: "figure 21", Known: source.Read}
}
