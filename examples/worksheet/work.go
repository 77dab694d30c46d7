package main

import (
	"fmt"
	"slices"

	"example.com/clothyard/examples/garment"
	"example.com/clothyard/seam"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// cutting is what is cut otherwise than the tissue has it, and where each piece lies.
func (w *writer) cutting() part {
	p := part{title: "Cut"}
	if len(w.p.Cuts) == 0 {
		p.say("Every allowance as the tissue has it.")
	}
	for _, r := range w.p.Chosen {
		if r.Act == edge.SpreadPartner {
			p.item(r.Edge, "%s, and draw what lies along it anew", w.spreading(r))
		}
	}
	if len(w.p.Cuts) > 0 {
		p.under("Allowances that differ from the tissue; all others as it has them")
		for _, c := range w.p.Cuts {
			where := ""
			if c.Where != "" {
				where = ": " + c.Where
			}
			p.item(c.Seam, "cut at %s, not %s%s", w.m(c.Cut), w.x(c.Tissue), where)
		}
	}
	if len(w.p.AsChosen.Seams) > 0 {
		p.under("Each seam in three numbers: cut, taken, and the finished width")
		t := table{head: []string{"seam", "cut", "takes", "finished", "plies at the thickest"}}
		for i, s := range w.p.AsChosen.Seams {
			cut, takes := w.x(s.Upper.Cut), w.x(s.Upper.Taken)
			if s.Under.Cut != s.Upper.Cut {
				cut += " and " + w.x(s.Under.Cut)
			}
			if s.Under.Taken != s.Upper.Taken {
				takes += " and " + w.x(s.Under.Taken)
			}
			t.rows = append(t.rows, []string{w.p.Spec.Seams[i].Name + ", " + kindName(s.Spec), cut, takes, w.x(s.Finished), fmt.Sprint(s.Plies)})
		}
		p.tabulate(t)
	}
	lay := w.p.Cloth.Own
	whose := "your own lay"
	if len(lay.Placements) == 0 {
		lay, whose = w.p.Cloth.Lay, "the lay found here"
	}
	if len(lay.Placements) == 0 {
		return p
	}
	p.under("Where each piece lies, by " + whose + ": its corner nearest the squared end and the left selvedge, allowances included")
	t := table{head: []string{"piece", "wide", "long", "from the selvedge", "from the end"}}
	for _, o := range lay.Placements {
		piece := lay.Spec.Pieces[o.Piece]
		name := piece.Name
		if piece.Count > 1 {
			name += fmt.Sprintf(" %d", o.Copy)
		}
		if w.p.Spec.Pieces[o.Piece].Pair && o.Copy%2 == 0 {
			name += ", face down"
		}
		if o.Across {
			name += ", turned"
		}
		wide, long := o.Size(lay.Spec)
		t.rows = append(t.rows, []string{name, w.x(wide), w.x(long), w.x(o.X), w.x(o.Y)})
	}
	p.tabulate(t)
	return p
}

// work is the ticket: every operation in order.
func (w *writer) work() part {
	p := part{title: "Work ticket"}
	if len(w.p.Spec.Work) > 0 {
		p.say("A guide is the distance from the needle. Where the plate has no such line, stick a tape on it at that distance. Do each CHECK before going on. Measure an edge along its stitching line, never along the cut edge, which is longer or shorter where it curves.")
	}
	for _, t := range w.p.Spec.Work {
		w.swatched = w.swatched || t.Swatch != ""
	}
	for i, t := range w.p.Spec.Work {
		b := block{head: fmt.Sprintf("Step %d. %s", i+1, t.Title)}
		if t.Wash {
			b.steps = append(b.steps, w.step(w.wash()))
		}
		if t.Swatch != "" {
			b.steps = append(b.steps, w.swatch(t.Swatch)...)
		}
		for _, s := range t.Before {
			b.steps = append(b.steps, w.step(w.own(s)))
		}
		if t.Lay {
			b.steps = append(b.steps, w.step(ticket.Step{Do: "Lay the pieces as listed under CUT and cut them out", Note: "lay all of them before cutting any"}))
			w.take(ticket.Sheet{Cautions: []ticket.Caution{ticket.CutCare()}})
			w.cut = true
		}
		for _, name := range t.Seams {
			k := slices.IndexFunc(w.p.Spec.Seams, func(s garment.Seam) bool { return s.Name == name })
			w.seamSteps(&b, w.p.Spec.Seams[k], w.p.AsChosen.Seams[k], len(t.Seams) > 1)
		}
		for _, f := range w.p.Frills {
			if f.Name == t.Frill {
				w.steps(&b, w.take(f.Ruffle.Sheet()))
			}
		}
		for _, c := range w.p.Cuffs {
			if c.Name == t.Cuff {
				w.steps(&b, w.take(c.AsChosen.Sheet()))
			}
		}
		for _, h := range w.p.Hems {
			if h.Name == t.Hem {
				w.steps(&b, w.take(h.AsChosen.Sheet()))
			}
		}
		for k, r := range w.p.Rows {
			if r.Name == t.Row {
				w.steps(&b, w.take(r.AsChosen.Sheet()))
				w.take(w.p.Hole.Sheet())
				w.take(w.p.Rows[k].Lap.Sheet())
				w.take(w.p.Stock.Sheet())
			}
		}
		for _, s := range t.After {
			b.steps = append(b.steps, w.step(w.own(s)))
		}
		for _, c := range t.Check {
			if g, ok := w.gauge(c, i); ok {
				b.steps = append(b.steps, step{"Check before going on", g.Items(w.in...)})
			}
		}
		p.blocks = append(p.blocks, b)
	}
	return p
}

func (w *writer) own(s garment.Step) ticket.Step {
	t := ticket.Step{Do: w.fill(s.Do), From: w.fill(s.From), Press: w.fill(s.Press), Note: w.fill(s.Note)}
	switch {
	case s.Right:
		t.Together = ticket.RightTogether
	case s.Wrong:
		t.Together = ticket.WrongTogether
	}
	if !s.At.IsZero() {
		t.At = ticket.Long(s.At)
	}
	if !s.Trim.IsZero() {
		t.Trim = ticket.Long(s.Trim)
	}
	return t
}

func (w *writer) step(s ticket.Step) step { return step{s.Head(), s.Items(w.in...)} }

func (w *writer) steps(b *block, s ticket.Sheet) {
	for _, st := range s.Steps {
		b.steps = append(b.steps, w.step(st))
	}
}

func (w *writer) seamSteps(b *block, s garment.Seam, p seam.Plan, several bool) {
	sheet := w.take(p.Sheet())
	if w.cut {
		// What was cut out by the list is not cut again.
		as := p.Spec.Plies()
		as.Drafted, as.DraftedUnder, as.Cut, as.CutUnder = p.Upper.Cut, p.Under.Cut, units.Length{}, units.Length{}
		if q, err := p.Spec.With(as).Plan(); err == nil {
			p, sheet = q, q.Sheet()
		}
	}
	for i, st := range sheet.Steps {
		if w.swatched && st == p.Swatch() {
			continue // tried once, in a task of its own
		}
		if several {
			st.Do = s.Name + ": " + st.Do
		}
		if i == len(sheet.Steps)-1 && s.Press != "" && st.Press != "" {
			st.Press = s.Press
		}
		b.steps = append(b.steps, w.step(st))
	}
}

// wash is the measuring after the wash.
func (w *writer) wash() ticket.Step {
	r := w.p.Cloth.Remnant
	st := ticket.Step{Do: "Wash as the garment will be washed, press, measure the length, and only then square both ends"}
	if !r.LeastWashed.IsZero() {
		st.Note = "about " + w.m(r.Washed) + " is to be expected"
		st.Check = ticket.Check{What: "length before squaring, at least", Want: ticket.Long(r.LeastWashed),
			Mend: "if it is less, do not cut: find another lay or more cloth"}
	}
	return st
}

// swatch is the trial of a seam, and what a plain seam as drafted would measure.
func (w *writer) swatch(name string) []step {
	k := slices.IndexFunc(w.p.Spec.Seams, func(s garment.Seam) bool { return s.Name == name })
	p := w.p.AsChosen.Seams[k]
	st := p.Swatch()
	st.Do = "Cut two test pieces of the cloth, and seam them as the " + name
	if piece, ok := st.At.Near().Exact(); ok {
		st.Note = "a plain seam at the drafted allowance would leave " + w.m(piece.MulInt(2).Sub(p.Upper.Drafted).Sub(p.Under.Drafted))
	}
	return []step{w.step(st)}
}

// gauge is what must measure what, with the mend that the seams allow.
func (w *writer) gauge(c garment.Gauge, task int) (ticket.Check, bool) {
	give := ticket.Long(units.Inch.Frac(1, 16))
	switch {
	case c.Edge != "":
		for i, e := range w.p.Edges {
			if e.Name == c.Edge {
				what := e.Name
				if note := w.p.Spec.Edges[i].Note; note != "" {
					what += ", " + note
				}
				return ticket.Check{What: what, Want: ticket.About(e.AsChosen), Give: give, Mend: w.mend(i, c, task)}, true
			}
		}
	case c.Drop != "":
		for _, d := range w.p.Drops {
			if d.Name == c.Drop {
				return ticket.Check{What: d.Name, Want: ticket.Long(d.AsChosen), Give: give, Mend: w.fill(c.Mend)}, true
			}
		}
	}
	return ticket.Check{What: w.fill(c.What), Want: ticket.Long(c.Want), Give: give, Mend: w.fill(c.Mend)}, c.What != ""
}

// mend says what one sixteenth on the crossing seam is worth along the edge, and
// what has to be undone first where the seam was sewn in an earlier task.
func (w *writer) mend(edge int, c garment.Gauge, task int) string {
	t := w.p.Spec.Work[task]
	if c.Mend != "" {
		return w.fill(c.Mend)
	}
	crossings := w.p.AsSewn.Spec.Edges[edge].Crossings
	name := ""
	for _, x := range crossings {
		if name == "" || slices.Contains(t.Seams, x.Seam) {
			name = x.Seam
		}
	}
	if name == "" {
		return ""
	}
	k := slices.IndexFunc(w.p.Spec.Seams, func(s garment.Seam) bool { return s.Name == name })
	pass := "the seam"
	if _, twice := w.p.AsChosen.Seams[k].Spec.Seam.(seam.French); twice {
		pass = "the second pass"
	}
	mark := units.Inch.Frac(1, 16)
	var total units.Near
	times, plies, slant := 0, 0, ""
	for _, x := range crossings {
		if x.Seam != name {
			continue
		}
		by := units.Exactly(mark.MulInt(int64(x.Times * x.Plies)))
		if !x.Slant.IsZero() {
			if c, err := units.ExactlyRatio(units.RatioOf(1, 1)).Quo(x.Slant.Sin()); err == nil {
				l, _ := by.Exact()
				by, slant = c.Of(l), ", at their slant"
			}
		}
		total, times, plies = total.Add(by), times+x.Times, plies+x.Times*x.Plies
	}
	each, sum := name, fmt.Sprintf("%s, %s in all", count(times, "seam", "seams"), count(plies, "ply", "plies"))
	if plies%times == 0 {
		sum = fmt.Sprintf("%s x %s", count(times, "seam", "seams"), count(plies/times, "ply", "plies"))
	}
	if times > 1 {
		each = "each " + each
	}
	first := ""
	if sewn := func(t garment.Task) bool { return slices.Contains(t.Seams, name) }; !sewn(t) && slices.ContainsFunc(w.p.Spec.Work[:task], sewn) {
		first = "first unpick what is sewn across the " + name + "; then "
	}
	return fmt.Sprintf("%s%s too long: take %s of %s wider by %s (%s%s); too short: narrower by as much",
		first, w.n(total), pass, each, w.m(mark), sum, slant)
}

// kit is thread and needle.
func (w *writer) kit() part {
	p := part{title: "Thread and needle"}
	for _, n := range w.p.Spec.Kit {
		p.item(n.Head, "%s", w.fill(n.Text))
	}
	if len(w.p.Spec.Kit) == 0 {
		p.say("As the cloth asks: try stitch and needle on a scrap first.")
	}
	return p
}

// care is every caution, each once.
func (w *writer) care() part {
	p := part{title: "Take care"}
	w.take(ticket.Sheet{Cautions: append([]ticket.Caution{ticket.CutCare(), ticket.IronCare()}, w.p.Spec.Care...)})
	for _, c := range w.cautions {
		t := w.fill(c.Text)
		if c.Refer != "" {
			t += " (" + w.fill(c.Refer) + ")"
		}
		p.blocks = append(p.blocks, block{bullet: t})
	}
	return p
}

// sources is where rules and figures come from, each once.
func (w *writer) sources() part {
	p := part{title: "Sources"}
	p.say("The measures are the garment's own. The rules and the figures taken from tables:")
	for _, c := range w.cites {
		p.blocks = append(p.blocks, block{bullet: c.Text()})
	}
	return p
}
