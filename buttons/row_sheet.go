package buttons

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is the marking of the row: a step for each button, the working with the
// lesson of laying a rounded gap again and again, cautions and sources.
func (p RowPlan) Sheet() ticket.Sheet {
	s := p.Spec
	n := max(0, min(s.Count, MaxCount))
	sheet := ticket.Sheet{
		Title:    "Row of buttons",
		Assumed:  p.Assumed,
		Steps:    make([]ticket.Step, 0, n+3),
		Lines:    make([]ticket.Line, 0, n+6),
		Cautions: make([]ticket.Caution, 0, 4),
		Sources:  make([]source.Cite, 0, 11),
	}
	labels := buttonNames(n)
	terms := termsFor(4*n + 20)

	if n > 1 {
		first, gap := ticket.Long(s.First), ticket.Long(p.Gap)
		gaps := ticket.Of(s.Count - 1)
		sheet.Lines = append(sheet.Lines,
			ticket.Line{Label: "from the first place to the last", Result: ticket.Long(p.Span), Terms: terms.take(
				ticket.Term{Amount: ticket.Long(s.Last), Name: "last"},
				ticket.Term{Op: ticket.Minus, Amount: first, Name: "first"})},
			ticket.Line{Label: "gaps", Result: gaps, Terms: terms.take(
				ticket.Term{Amount: ticket.Of(s.Count), Name: "buttons"},
				ticket.Term{Op: ticket.Minus, Amount: ticket.Of(1)})},
			ticket.Line{Label: "gap", Result: gap, Terms: terms.take(
				ticket.Term{Amount: ticket.Long(p.Span)},
				ticket.Term{Op: ticket.Over, Amount: gaps, Name: "gaps"})})
		k := 0
		for at := range p.Places() {
			sheet.Lines = append(sheet.Lines, ticket.Line{Label: labels.name(k), Result: ticket.Long(at), Terms: terms.take(
				ticket.Term{Amount: ticket.Of(k)},
				ticket.Term{Op: ticket.By, Amount: gap, Name: "gap"},
				ticket.Term{Op: ticket.Plus, Amount: first, Name: "first"})})
			k++
		}
		if !p.CreepDown.IsZero() {
			sheet.Lines = append(sheet.Lines, p.lesson(&terms, units.Down), p.lesson(&terms, units.Up))
		}
	}

	sheet.Steps = append(sheet.Steps, ticket.Step{
		Do:   "Draw the centre line, or the line that the buttons stand on, in chalk or thread",
		Note: "mark only; do not snip",
	})
	k := 0
	for mark := range p.Marks() {
		sheet.Steps = append(sheet.Steps, ticket.Step{Do: labels.mark(k), At: ticket.Long(mark), From: s.From})
		k++
	}
	if last := len(sheet.Steps) - 1; n > 1 {
		sheet.Steps[last].Check = ticket.Check{
			What: "from the first mark to the last",
			Want: ticket.Long(p.Span),
			Give: ticket.Long(s.Step),
			Mend: "measure every mark again from the named end, none from its neighbour",
		}
	}
	sheet.Steps = append(sheet.Steps, ticket.Step{
		Do:   "Work a hole on a scrap of the same layers, then all the holes",
		Note: "put a pin across each end before cutting",
	}, ticket.Step{
		Do:   "Pin it shut, centre line on centre line, mark through the holes, and sew each button on",
		Note: "a thicker front needs a longer shank",
	})
	sheet.Cautions = childCautions(append(sheet.Cautions, ticket.CutCare()), s.Months)
	sheet.Sources = append(sheet.Sources,
		source.Cite{For: "equal division", ID: "new-dressmaker", Place: "chapter on buttonholes", Known: source.Read},
		source.Cite{For: "length of the shank", ID: "garment-course-fasteners", Place: "page 27312", Known: source.Read},
		source.Practise("places read to the tape one by one from one end"))
	if len(p.Assumed) > 0 {
		sheet.Sources = append(sheet.Sources, source.Practise("what is assumed"))
	}
	sheet.Sources = childCites(sheet.Sources, s.Months)
	return sheet
}

// lesson is what comes of laying the gap, read to a mark, again and again.
func (p RowPlan) lesson(terms *termBlock, m units.Mode) ticket.Line {
	laid, _ := p.Gap.Round(p.Spec.Step, m)
	l := ticket.Line{Label: "not so: the mark above, laid gap by gap, ends too far by", Result: ticket.Long(p.CreepUp)}
	if m == units.Down {
		l = ticket.Line{Label: "not so: the mark below, laid gap by gap, ends out by", Result: ticket.Long(p.CreepDown)}
	}
	l.Terms = terms.take(
		ticket.Term{Amount: ticket.Long(laid)},
		ticket.Term{Op: ticket.By, Amount: ticket.Of(p.Spec.Count - 1), Name: "gaps"},
		ticket.Term{Op: ticket.Minus, Amount: ticket.Long(p.Span)})
	return l
}

// A termBlock hands out slices of one allocation.
type termBlock struct{ left []ticket.Term }

func termsFor(n int) termBlock { return termBlock{make([]ticket.Term, 0, n)} }

func (b *termBlock) take(t ...ticket.Term) []ticket.Term {
	from := len(b.left)
	b.left = append(b.left, t...)
	return b.left[from:len(b.left):len(b.left)]
}

// names are "Mark button 1", "Mark button 2" ... in one text, cut up on demand.
type names struct {
	text string
	ends []int
}

const (
	marking = "Mark "
	button  = "button "
)

func buttonNames(n int) names {
	b := make([]byte, 0, n*(len(marking)+len(button)+5))
	ends := make([]int, n)
	for k := range n {
		b = append(b, marking...)
		b = append(b, button...)
		b = strconv.AppendInt(b, int64(k+1), 10)
		ends[k] = len(b)
	}
	return names{string(b), ends}
}

func (n names) mark(k int) string {
	from := 0
	if k > 0 {
		from = n.ends[k-1]
	}
	return n.text[from:n.ends[k]]
}

func (n names) name(k int) string { return n.mark(k)[len(marking):] }
