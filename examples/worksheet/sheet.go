package main

import (
	"fmt"
	"slices"
	"strings"

	"example.com/clothyard/examples/garment"
	"example.com/clothyard/seam"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
	"example.com/clothyard/yardage/layout"
)

// A writer turns the plan of a garment into a page. It chooses words and order;
// every figure comes from the plan.
type writer struct {
	p        garment.Plan
	in       []units.Notation
	cautions []ticket.Caution
	cites    []source.Cite
	swatched bool // a task of its own tries the seam
	cut      bool // an earlier task cuts the pieces as listed
}

func sheet(p garment.Plan, in []units.Notation) page {
	w := &writer{p: p, in: in}
	out := page{title: p.Spec.Title, intro: w.intro()}
	if out.title == "" {
		out.title = "A garment"
	}
	for _, make := range [...]func() part{w.before, w.cutting, w.work, w.marks, w.changes, w.kit, w.care, w.sources} {
		out.parts = append(out.parts, make())
	}
	return out
}

func (w *writer) intro() []string {
	var lines []string
	if s := w.p.Spec.Scene; s != "" {
		lines = append(lines, s+".")
	}
	unit := "inches"
	if w.in[0].Unit.Metric() {
		unit = "millimetres"
	}
	if len(w.in) > 1 {
		unit += ", millimetres in brackets"
	}
	return append(lines, "Measures in "+unit+". A mark is read on the tape; scant is a little less than it, full a little more, and the exact figure follows in brackets.")
}

// m is a length for the tape.
func (w *writer) m(l units.Length) string { return ticket.Long(l).Text(w.in...) }

// n is the same for a length that may be known within a bound.
func (w *writer) n(l units.Near) string { return ticket.About(l).Text(w.in...) }

// fill writes a text of the garment's own, its lengths in the notation.
func (w *writer) fill(text string) string {
	s, err := garment.Fill(text, w.m)
	if err != nil {
		return text // it was checked when the garment was planned
	}
	return s
}

// tape is the reading alone, for an estimate that needs no exact figure.
func (w *writer) tape(l units.Length) string {
	t, _ := w.in[0].Format(l)
	return t
}

// reading is the readings alone, one unit in brackets behind the other: for what
// lies on a grid of its own, whose exact figure nobody needs.
func (w *writer) reading(l units.Length) string {
	t := w.tape(l)
	for _, n := range w.in[1:] {
		other, _ := n.Format(l)
		t += " (" + other + ")"
	}
	return t
}

// x is an exact length, for tables and working.
func (w *writer) x(l units.Length) string {
	t := w.in[0].Exact(l)
	for _, n := range w.in[1:] {
		t += " (" + n.Exact(l) + ")"
	}
	return t
}

// xn is the same for a length that may be known within a bound.
func (w *writer) xn(n units.Near) string {
	if l, ok := n.Exact(); ok {
		return w.x(l)
	}
	return w.n(n)
}

// count is a number of things with the right ending.
func count(n int, one, more string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, more)
}

// take remembers the cautions and sources of a sheet, each once.
func (w *writer) take(s ticket.Sheet) ticket.Sheet {
	for _, c := range s.Cautions {
		if !slices.Contains(w.cautions, c) {
			w.cautions = append(w.cautions, c)
		}
	}
	for _, c := range s.Sources {
		if !slices.Contains(w.cites, c) {
			w.cites = append(w.cites, c)
		}
	}
	return s
}

// before is what to find out while the cloth is whole.
func (w *writer) before() part {
	p := part{title: "Before you cut"}
	if len(w.p.Spec.Pieces) > 0 {
		w.doesItDo(&p)
	}
	w.mismatches(&p)
	w.remedies(&p)
	w.table(&p)
	return p
}

func (w *writer) doesItDo(p *part) {
	c, cloth, r := w.p.Spec.Cloth, w.p.Cloth, w.p.Cloth.Remnant
	w.take(r.Sheet())
	w.take(cloth.Purchase.Sheet())
	yards := units.Notation{Unit: units.Yard}
	p.under("Does the cloth do?")
	p.item("in the cupboard", "%s (%s) of %s, %s wide", yards.Exact(c.Have), w.x(c.Have), orSome(c.Name, "cloth"), w.x(c.Width))
	if !c.Asked.IsZero() {
		p.item("the envelope asks", "%s (%s) of %s wide", yards.Exact(c.Asked), w.x(c.Asked), w.x(c.AskedWidth))
		switch {
		case r.Short.Sign() > 0:
			p.item("by the envelope", "SHORT by %s", w.m(r.Short))
		default:
			p.item("by the envelope", "enough, %s over", w.m(r.Short.Neg()))
		}
		if g := cloth.Width; g.HasGrid {
			w.take(g.Sheet())
			p.item("by the printed chart of widths", "row %d: %s of this width (%s)", g.GridRow, yards.Exact(g.ByGrid), w.x(g.ByGrid))
		} else {
			p.item("by the printed chart of widths", "no such row or width in it")
		}
	}
	area := cloth.Pieces.Over(r.Width)
	p.item("by area of the rectangles", "%s of the usable width, if no scrap fell anywhere: it proves nothing", w.tape(area))
	p.item("after washing and squaring", "%s long, %s wide between the selvedges", w.m(r.Length), w.m(r.Width))
	if len(cloth.Own.Placements) > 0 {
		p.item("by your own lay of rectangles", "%s long, %s wide: %s", w.m(cloth.Own.Used), w.m(cloth.Own.Wide), w.fits(cloth.Own.Fits, cloth.Own.Spare))
	}
	if cloth.OwnFault != "" {
		p.item("your own lay", "does not hold with these seams and hems: %s", strings.ReplaceAll(cloth.OwnFault, "\n", "; "))
	}
	p.item("by the lay found here", "%s", w.found(cloth.Lay, w.m))
	if len(cloth.Nest.Placements) > 0 {
		beside := "no shorter than the lay of rectangles"
		if gain := cloth.Lay.Used.Sub(cloth.Nest.Used); gain.Sign() > 0 {
			beside = w.reading(gain) + " shorter than the lay of rectangles"
		}
		p.item("by a lay of the outlines", "%s; %s", w.found(cloth.Nest, w.reading), beside)
	}
	p.item("measure after the wash", "about %s is to be expected; %s is the least that does", w.m(r.Washed), w.m(r.LeastWashed))
	p.item("if you had to buy it", "at least %s unwashed, so ask for %s (%s)", w.m(r.Least), yards.Exact(cloth.Purchase.Buy), w.x(cloth.Purchase.Buy))
}

// found is how long and wide a lay is, and whether it fits, lengths as written.
func (w *writer) found(l layout.Plan, write func(units.Length) string) string {
	fits := "FITS, " + write(l.Spare) + " to spare"
	switch {
	case l.Spec.Cloth.Long.IsZero():
		fits = "DOES NOT FIT, no lay of these pieces can be shorter than " + write(l.Bound)
	case !l.Fits:
		fits = "does not fit, longer than the cloth by " + write(l.Spare.Neg())
	}
	return write(l.Used) + " long, " + write(l.Wide) + " wide: " + fits
}

func (w *writer) fits(fits bool, spare units.Length) string {
	if fits {
		return "FITS, " + w.m(spare) + " to spare"
	}
	return "does not fit, longer than the cloth by " + w.m(spare.Neg())
}

func orSome(s, some string) string {
	if s == "" {
		return some
	}
	return s
}

func (w *writer) mismatches(p *part) {
	if len(w.p.Spec.Pairs) == 0 {
		return
	}
	p.under("Which edges no longer match?")
	for i, q := range w.p.Spec.Pairs {
		m := w.p.AsSewn.Pairs[i]
		p.item(q.Long+" against "+q.Short, "%s", w.judged(q, m))
	}
}

// judged is what became of a pair as sewn with nothing trimmed.
func (w *writer) judged(q edge.Partners, m edge.Match) string {
	drew := "the pattern drew them equal"
	if s, err := m.Drafted.Sign(); err == nil && s > 0 {
		drew = "the pattern drew it " + w.xn(m.Drafted) + " longer"
		if m.Fit != edge.Mismatch || !m.Change.IsZero() {
			drew += ", to be eased in"
		}
	} else if err == nil && s < 0 {
		drew = "the pattern drew it " + w.xn(m.Drafted.Neg()) + " shorter"
	}
	sign, err := m.Sewn.Sign()
	change, _ := m.Change.Sign()
	switch {
	case err != nil:
		return drew + "; as sewn the difference is " + w.n(m.Sewn)
	case m.Fit != edge.Mismatch && sign == 0:
		return drew + "; as sewn they are equal: goes together"
	case m.Fit != edge.Mismatch:
		return drew + "; as sewn it is " + w.n(m.Sewn) + " longer: " + m.Fit.String()
	case m.Change.IsZero() && sign > 0:
		return "MISMATCH: " + drew + ", more than can be eased in, and nothing has changed that"
	case sign > 0 && change > 0:
		return "MISMATCH: " + drew + "; as sewn " + q.Short + " is " + w.n(m.Change) + " too short"
	case sign > 0:
		return "MISMATCH: " + drew + "; as sewn it is still " + w.n(m.Sewn) + " longer, more than can be eased in"
	}
	return "MISMATCH: " + drew + "; as sewn " + q.Long + " is " + w.n(m.Sewn.Neg()) + " SHORTER than " + q.Short
}

// describe is a remedy in words.
func (w *writer) describe(r edge.Remedy) string {
	times := ""
	if k := slices.IndexFunc(w.p.Spec.Seams, func(s garment.Seam) bool { return s.Name == r.Seam }); k >= 0 {
		times = count(max(1, w.p.Spec.Seams[k].Times), "seam", "seams")
	}
	p, _ := r.Spec.Plan()
	french, twice := p.Spec.Seam.(seam.French)
	switch {
	case r.Act == edge.CutDrift:
		return fmt.Sprintf("cut the %s edges to an allowance of %s before sewing, then sew as meant (%s)", r.Seam, w.m(r.Cut), times)
	case r.Act == edge.ChangePass && twice:
		return fmt.Sprintf("sew the %s with passes of %s and %s instead (%s)", r.Seam, w.m(french.First), w.m(french.Second), times)
	case r.Act == edge.SewPartner && twice:
		return fmt.Sprintf("sew the %s with passes of %s and %s (%s)", r.Seam, w.m(french.First), w.m(french.Second), times)
	case r.Act == edge.ChangePass || r.Act == edge.SewPartner:
		return fmt.Sprintf("sew the %s at %s (%s)", r.Seam, w.m(r.Take), times)
	case r.Act == edge.SpreadPartner:
		return w.spreading(r)
	}
	return r.Act.String() + " " + r.Seam
}

// spreading is the remedy of an edge that no seam crosses: its piece is made
// longer, or folded shorter, in equal parts at its partner's seams.
func (w *writer) spreading(r edge.Remedy) string {
	a := w.p.AsSewn.Spec
	by, places := units.Length{}, 0
	for _, c := range a.Edges {
		if c.Name == r.Edge {
			by = r.Net.Sub(c.Net)
		}
	}
	for _, q := range a.Pairs {
		for _, other := range [...][2]string{{q.Long, q.Short}, {q.Short, q.Long}} {
			if e, ok := w.p.AsSewn.Edge(other[0]); ok && other[1] == r.Edge {
				for i, c := range a.Edges {
					if c.Name == e.Spec.Name && places == 0 {
						for _, x := range a.Edges[i].Crossings {
							places += x.Times
						}
					}
				}
			}
		}
	}
	do := "spread"
	if by.Sign() < 0 {
		do = "fold"
	}
	text := fmt.Sprintf("%s the pattern of %s by %s in all", do, r.Edge, w.m(by.Abs()))
	if places > 1 {
		text += fmt.Sprintf(", %s at each of %d places", w.m(by.Abs().DivInt(int64(places))), places)
	}
	return text
}

// byHand tells which pairs have moved and stay within their limits.
func (w *writer) byHand(p *part) {
	done := false
	for _, m := range w.p.AsSewn.Pairs {
		out := m.Change
		if sign, err := out.Sign(); err == nil && sign < 0 {
			out = out.Neg()
		}
		if out.IsZero() || m.Fit != edge.Eases && m.Fit != edge.Gathers {
			continue
		}
		if !done {
			p.under("What is taken in by hand")
			done = true
		}
		do := "ease the rest of %s in"
		if m.Fit == edge.Gathers {
			do = "take the rest of %s into the gathers"
		}
		p.say(do+", out by %s from what the pattern drew. It stays within its limit.", m.LongName, w.n(out))
	}
}

func (w *writer) remedies(p *part) {
	w.byHand(p)
	mis := w.p.AsSewn.Mismatched()
	if mis == 0 {
		return
	}
	if len(w.p.AsSewn.Remedies) == 0 {
		p.under("What mends it")
		p.say("Nothing that is known here mends %s: do not cut before it is settled.", w.out(w.p.AsSewn))
		return
	}
	p.under("What mends it, the best first")
	for i, r := range w.p.AsSewn.Remedies {
		left := "nothing left over"
		if !r.Left.IsZero() {
			left = "leaves a pair out by " + w.n(r.Left) + " from what the pattern drew"
		}
		if r.Breaks > 0 {
			left += fmt.Sprintf("; spoils %d that fitted", r.Breaks)
		}
		p.item(fmt.Sprintf("remedy %d", i+1), "%s. Mends %d of %d; %s.%s", w.describe(r), r.Mends, mis, left, w.leads(r))
	}
	var words []string
	for _, r := range w.p.Chosen {
		words = append(words, w.describe(r))
	}
	if len(words) > 0 {
		p.item("taken in this sheet", "%s", strings.Join(words, "; then "))
	}
	if w.p.AsChosen.Mismatched() > 0 {
		p.item("still out", "%s: do not cut before it is settled", w.out(w.p.AsChosen))
	}
}

// out names the pairs that do not go together.
func (w *writer) out(a edge.AssemblyPlan) string {
	var names []string
	for i, m := range a.Pairs {
		if m.Fit == edge.Mismatch {
			names = append(names, w.p.Spec.Pairs[i].Long+" against "+w.p.Spec.Pairs[i].Short)
		}
	}
	return strings.Join(names, "; ")
}

// leads tells what the edges in question measure once a remedy is taken.
func (w *writer) leads(r edge.Remedy) string {
	var parts []string
	for i, m := range w.p.AsSewn.Pairs {
		if m.Fit != edge.Mismatch || r.After[i].Fit == edge.Mismatch {
			continue
		}
		q := w.p.Spec.Pairs[i]
		parts = append(parts, q.Long+" "+w.xn(r.After[i].LongSewn)+" on "+q.Short+" "+w.xn(r.After[i].ShortSewn))
	}
	if len(parts) == 0 {
		return ""
	}
	return " Then: " + strings.Join(parts, "; ") + "."
}

// table is every edge and length, as drafted and both ways.
func (w *writer) table(p *part) {
	chosen := "as chosen"
	p.under("Every edge, as drafted, as sewn with nothing trimmed (A), and as chosen (B)")
	t := table{head: []string{"edge", "drafted", "A as sewn", "B " + chosen}}
	for _, e := range w.p.Edges {
		t.rows = append(t.rows, []string{e.Name, w.xn(e.Drafted), w.xn(e.AsSewn), w.xn(e.AsChosen)})
	}
	for i, q := range w.p.Spec.Pairs {
		a, b := w.p.AsSewn.Pairs[i], w.p.AsChosen.Pairs[i]
		t.rows = append(t.rows, []string{q.Long + " less " + q.Short, w.signed(a.Drafted), w.signed(a.Sewn), w.signed(b.Sewn)})
	}
	for _, d := range w.p.Drops {
		t.rows = append(t.rows, []string{d.Name, w.x(d.Drafted), w.x(d.AsSewn), w.x(d.AsChosen)})
	}
	for _, c := range w.p.Cuffs {
		t.rows = append(t.rows,
			[]string{c.Name + ", finished", w.x(c.Drafted.Finished), w.x(c.AsSewn.Finished), w.x(c.AsChosen.Finished)},
			[]string{"fullness into " + c.Name, c.Drafted.Overall.String(), c.AsSewn.Overall.String(), c.AsChosen.Overall.String()})
	}
	p.tabulate(t)
	for _, e := range w.p.Edges {
		if e.AtHem.IsZero() {
			continue
		}
		lies := "hangs lower"
		if s, err := e.AtHem.Sub(e.AsSewn).Sign(); err == nil && s < 0 {
			lies = "lies higher"
		}
		p.say("%s, as sewn (A), measures %s along the hem itself, which %s on flared sides.", e.Name, w.xn(e.AtHem), lies)
	}
}

func (w *writer) signed(n units.Near) string {
	if s, err := n.Sign(); err == nil && s > 0 {
		return "+" + w.xn(n)
	}
	return w.xn(n)
}
