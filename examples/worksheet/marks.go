package main

import (
	"fmt"
	"slices"
	"strings"

	"example.com/clothyard/buttons"
	"example.com/clothyard/examples/garment"
	"example.com/clothyard/hem"
	"example.com/clothyard/seam"
	"example.com/clothyard/units"
)

// marks is every place to be marked, as a reading of the tape from a named end.
func (w *writer) marks() part {
	p := part{title: "Marks"}
	for _, f := range w.p.Frills {
		w.frill(&p, f)
	}
	for _, c := range w.p.Cuffs {
		w.cuff(&p, c)
	}
	for _, h := range w.p.Hems {
		w.hem(&p, h)
	}
	if len(w.p.Rows) > 0 {
		w.tin(&p)
	}
	for i, r := range w.p.Rows {
		w.row(&p, w.p.Spec.Rows[i], r)
	}
	return p
}

func (w *writer) frill(p *part, f garment.FrillPlan) {
	r := f.Ruffle
	s := r.Strip.Strip
	k := slices.IndexFunc(w.p.Spec.Frills, func(x garment.Frill) bool { return x.Name == f.Name })
	edge := w.p.Spec.Frills[k].Edge
	p.under("Frill: " + f.Name + ", onto the " + edge)
	p.item("cut", "%s of %s by %s", count(s.Spec.Pieces, "strip", "strips"), w.m(s.Spec.Each), w.m(r.CutDepth))
	p.item("joined", "%s end to end, %s after the joins and the ends", w.m(s.Spec.Each.MulInt(int64(s.Spec.Pieces))), w.m(s.Sewn))
	p.item("gathering row", "%s from the raw edge", w.m(r.Row))
	p.item("fullness at the seam", "%s to 1 on %s", r.Strip.Fullness, w.m(r.Strip.Edge))
	if full, ok := r.OuterFullness.Exact(); ok {
		p.item("at the free edge", "%s to 1 on %s", full, w.n(r.Outer))
	} else {
		p.item("at the free edge", "on %s", w.n(r.Outer))
	}
	p.item("marks", "from the same end of both, seam line to seam line: first the frill, then the %s", edge)
	t := table{head: []string{"mark", "on the frill", "on the " + edge}}
	for i, m := range r.Marks {
		t.rows = append(t.rows, []string{fmt.Sprintf("%d of %d", i+1, r.Spec.Parts), w.m(m.Full), w.m(m.Edge)})
	}
	for i, m := range r.Joins {
		t.rows = append(t.rows, []string{fmt.Sprintf("join %d", i+1), w.m(m.Full), w.m(m.Edge)})
	}
	p.tabulate(t)
	if !r.Clear.IsZero() {
		p.say("The nearest join lies %s from a mark.", w.m(r.Clear))
	}
	if !f.Double.IsZero() {
		p.say("For a fullness of exactly 2 cut each strip %s.", w.m(f.Double))
	}
	if !f.Spread.IsZero() {
		p.say("If the pattern were spread at its notches instead, the edge would be %s and the fullness %s.", w.m(f.Spread), f.Thin)
	}
}

func (w *writer) cuff(p *part, c garment.CuffPlan) {
	k := c.AsChosen
	p.under("Cuff: " + c.Name + ", a mirrored pair for left and right")
	p.item("cut", "%s by %s", w.m(k.CutLength), w.m(k.CutDepth))
	p.item("finished", "%s", w.m(k.Finished))
	if !k.Past.IsZero() {
		p.item("inner edge", "turned %s, so that its fold passes the seam by %s and is caught", w.m(k.Spec.Turned), w.m(k.Past))
	}
	p.item("fullness", "%s of sleeve into %s: %s to 1", w.m(k.Spec.Sleeve), w.m(k.Onto), k.Overall)
	if !k.Spec.Flat.IsZero() {
		p.item("kept flat each side of the slit", "%s, so that %s gathers into %s: %s to 1", w.m(k.Spec.Flat), w.m(k.Gathered), w.m(k.Into), k.Fullness)
	}
	p.item("marks", "from one finished edge of the slit along the sleeve, and from the finished end of the cuff that is sewn there")
	t := table{head: []string{"mark", "on the sleeve", "on the cuff"}}
	for i, m := range k.Marks {
		t.rows = append(t.rows, []string{fmt.Sprintf("%d of %d", i+1, k.Spec.Parts), w.m(m.Full), w.m(m.Edge)})
	}
	p.tabulate(t)
}

func (w *writer) hem(p *part, h garment.HemPlan) {
	c := h.AsChosen
	p.under("Hem: " + h.Name)
	if c.Spec.Kind == hem.Slit {
		p.item("each side", "turned %s, then %s", w.m(c.Spec.First), w.m(c.Spec.Depth))
		p.item("off the edge it opens into", "%s", w.m(c.Lost))
		return
	}
	p.item("raw edge", "%s below the finished line", w.m(c.LineToRaw))
	if !c.RawToSecondFold.IsZero() {
		p.item("first fold", "%s below the finished line", w.m(c.LineToFirstFold))
		p.item("second fold", "%s", w.onLine(c.LineToSecondFold))
	} else {
		p.item("fold", "%s", w.onLine(c.LineToFirstFold))
	}
	p.item("stitching", "%s above the finished edge", w.m(c.FinishedToStitch))
	if !c.Excess.IsZero() {
		p.item("to ease in on the flare", "%s in all, %s at each of %d edges", w.m(c.Excess), w.m(c.Inset), c.Spec.Edges)
	}
}

func (w *writer) onLine(l units.Length) string {
	switch l.Sign() {
	case 0:
		return "on the finished line"
	case 1:
		return w.m(l) + " below the finished line"
	}
	return w.m(l.Neg()) + " above the finished line"
}

// tin is the count of the buttons.
func (w *writer) tin(p *part) {
	s := w.p.Stock
	p.under("Buttons")
	p.item("drafted", "%d (%s)", s.Need, w.spread(draftedCounts(s)))
	p.item("in the tin", "%d", s.Spec.Have)
	if s.Short == 0 {
		p.item("spare", "%d", s.Spare)
	} else {
		p.item("short", "%d", s.Short)
		for i, g := range s.Gives {
			if g.Up > s.Gives[0].Up {
				break
			}
			label := "taken in this sheet"
			if i > 0 {
				label = "or"
			}
			p.item(label, "%s = %d, %d to spare", w.spread(g.Counts), s.Need-g.Up, g.Spare)
		}
		if s.Gives[0].Spare == 0 {
			p.say("None to spare: sew them on well and keep an eye on the floor.")
		}
	}
	h := w.p.Hole
	p.item("hole", "%s, from %s: %s across and %s thick", w.m(h.Cut), w.n(h.Exact), w.m(h.Spec.Diameter), w.m(h.Spec.Thickness))
}

func draftedCounts(s buttons.StockPlan) []int {
	var n []int
	for _, p := range s.Spec.Places {
		n = append(n, p.Count)
	}
	return n
}

// spread is a count for every row: front 9 + each cuff 2 x 1.
func (w *writer) spread(counts []int) string {
	var parts []string
	for i, p := range w.p.Stock.Spec.Places {
		t := fmt.Sprintf("%s %d", p.Name, counts[i])
		if p.Times > 1 {
			t += fmt.Sprintf(" x %d", p.Times)
		}
		parts = append(parts, t)
	}
	return strings.Join(parts, " + ")
}

func (w *writer) row(p *part, spec garment.Row, r garment.RowPlan) {
	p.under(fmt.Sprintf("Buttons: %s, %d, measured from %s", r.Name, r.AsChosen.Spec.Count, r.AsChosen.Spec.From))
	w.places(p, r.AsChosen)
	switch r.Lap.Spec.Setting {
	case buttons.Vertical:
		p.item("each hole", "vertical, %s long: from %s above the mark to %s below it", w.m(r.Hole.Cut), w.m(r.Hole.Start.Neg()), w.m(r.Hole.End))
	case buttons.Horizontal:
		p.item("each hole", "horizontal, from %s to %s from the end; the button %s from the other end", w.m(r.Lap.OuterEnd), w.m(r.Lap.InnerEnd), w.m(r.Lap.Spec.Lap))
	}
	if r.Lap.Crosses {
		p.item("CLASH", "the topstitching at %s runs through the hole by %s", w.m(r.Lap.Spec.Topstitch), w.m(r.Lap.Clash))
	} else if r.Across.Crosses {
		p.item("why not horizontal", "a horizontal hole would end %s from the edge and cross the topstitching at %s by %s", w.m(r.Across.InnerEnd), w.m(r.Across.Spec.Topstitch), w.m(r.Across.Clash))
	}
	if !r.BelowNow.IsZero() {
		p.item("below the last", "%s to the finished hem (%s if the hem were left as the tissue has it)", w.m(r.BelowNow), w.m(r.BelowThen))
	}
	if r.AsChosen.Spec.Count != r.Drafted.Spec.Count {
		var at []string
		for _, l := range r.Drafted.Places {
			at = append(at, w.x(l.Exact))
		}
		p.item("drafted", "%d, at %s", r.Drafted.Spec.Count, strings.Join(at, ", "))
	}
	w.others(p, r)
}

// places is the table of marks, and what laying gap after gap would do.
func (w *writer) places(p *part, r buttons.RowPlan) {
	t := table{head: []string{"button and hole", "tape", "exact"}}
	for i, at := range r.Places {
		text, _ := w.in[0].Format(at.Exact)
		t.rows = append(t.rows, []string{fmt.Sprint(i + 1), text, w.x(at.Exact)})
	}
	p.tabulate(t)
	if r.Spec.Count < 2 {
		return
	}
	p.item("gap", "%s", w.m(r.Gap))
	p.item("on the tape", "no mark is off by more than %s, no gap by more than %s", w.x(r.WorstMark), w.x(r.WorstGap))
	if r.CreepUp.IsZero() {
		return
	}
	up, _ := r.Gap.Round(r.Spec.Step, units.Up)
	down, _ := r.Gap.Round(r.Spec.Step, units.Down)
	p.item("measure every mark from the end", "%s laid off gap after gap ends %s too far, %s ends %s short", w.m(up), w.m(r.CreepUp), w.m(down), w.m(r.CreepDown.Neg()))
}

// others is the row with another count of the same tin.
func (w *writer) others(p *part, r garment.RowPlan) {
	s := w.p.Stock
	k := slices.IndexFunc(w.p.Rows, func(x garment.RowPlan) bool { return x.Name == r.Name })
	for i, g := range s.Gives {
		if i == 0 || g.Up > s.Gives[0].Up || g.Counts[k] == r.AsChosen.Spec.Count || g.Counts[k] == r.Drafted.Spec.Count {
			continue
		}
		o, err := garment.Recount(r.Drafted.Spec, g.Counts[k]).Plan()
		if err != nil {
			continue
		}
		var at []string
		for _, l := range o.Places {
			at = append(at, w.x(l.Exact))
		}
		text := fmt.Sprintf("gap %s, at %s", w.x(o.Gap), strings.Join(at, ", "))
		if pairs, err := o.Reused(r.Drafted.Spec); err == nil {
			var same []string
			for _, d := range pairs {
				same = append(same, fmt.Sprint(d.Old))
			}
			if len(same) > 0 {
				text += "; drafted marks " + strings.Join(same, ", ") + " still serve"
			}
		}
		p.item(fmt.Sprintf("or with %d", g.Counts[k]), "%s", text)
	}
}

// way is the word for an amount's direction, which then stands without a sign.
func way(l units.Length, plus, minus string) string {
	if l.Sign() < 0 {
		return minus
	}
	return plus
}

// two is what both plies have, once where it is the same.
func (w *writer) two(upper, under units.Length) string {
	if upper == under {
		return w.m(upper)
	}
	return w.m(upper) + " and " + w.m(under)
}

// kindName is the kind of a seam as it is written in a sentence.
func kindName(s seam.Any) string {
	return strings.ReplaceAll(s.Kind(), "french", "French")
}

// changes is what was substituted and what it did.
func (w *writer) changes() part {
	p := part{title: "What was substituted, and what it changed"}
	for i, s := range w.p.AsSewn.Seams {
		g := w.p.Spec.Seams[i]
		if s.Upper.Drift.IsZero() && s.Under.Drift.IsZero() {
			continue
		}
		times := max(1, g.Times)
		p.under(g.Name)
		p.item("drafted", "%s", w.two(s.Upper.Drafted, s.Under.Drafted))
		p.item("takes now", "%s, by a %s seam", w.two(s.Upper.Taken, s.Under.Taken), kindName(s.Spec))
		up, under := s.Upper.Drift, s.Under.Drift
		switch {
		case up == under:
			p.item("each ply "+way(up, "keeps", "loses"), "%s", w.m(up.Abs()))
		case up.Sign() >= 0 && under.Sign() >= 0:
			p.item("each ply keeps", "upper %s, under %s", w.m(up), w.m(under))
		default:
			p.item("each ply", "upper %s %s, under %s %s", way(up, "keeps", "loses"), w.m(up.Abs()), way(under, "keeps", "loses"), w.m(under.Abs()))
		}
		p.item("each seam "+way(s.Gain, "gives", "takes up"), "%s", w.m(s.Gain.Abs()))
		if times > 1 {
			p.item(fmt.Sprintf("%d seams %s", times, way(s.Gain, "give", "take up")), "%s", w.m(s.Gain.MulInt(int64(times)).Abs()))
		}
		if now := w.p.AsChosen.Seams[i]; now.Gain != s.Gain {
			how := "cut at " + w.two(now.Upper.Cut, now.Under.Cut) + ", sewn as meant"
			if now.Upper.Taken != s.Upper.Taken {
				how = "sewn to take " + w.two(now.Upper.Taken, now.Under.Taken)
			}
			p.item("as chosen", "%s: each seam %s %s", how, way(now.Gain, "gives", "takes up"), w.m(now.Gain.Abs()))
		}
	}
	for i, h := range w.p.Hems {
		if h.AsSewn.Drift.IsZero() || h.AsSewn.Spec.Kind == hem.Slit {
			continue
		}
		p.under(w.p.Spec.Hems[i].Name)
		p.item("drafted", "%s", w.m(h.AsSewn.Spec.Drafted))
		p.item("takes now", "%s", w.m(h.AsSewn.Taken))
		p.item("as sewn", "the garment hangs %s %s", w.m(h.AsSewn.Drift.Abs()), way(h.AsSewn.Drift, "longer", "shorter"))
		p.item("as chosen", "cut at %s, so the length stays", w.m(h.AsChosen.Spec.Cut))
	}
	if len(w.p.Edges) > 0 {
		p.under("Edges that come out otherwise than drafted, as chosen")
		none := true
		for _, e := range w.p.Edges {
			if e.AsChosen != e.Drafted {
				p.item(e.Name, "%s, drafted %s (%s)", w.xn(e.AsChosen), w.xn(e.Drafted), w.signed(e.AsChosen.Sub(e.Drafted)))
				none = false
			}
		}
		if none {
			p.say("None.")
		}
	}
	return p
}
