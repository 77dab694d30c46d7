package garment

import (
	"fmt"
	"slices"
	"strings"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet tells what becomes of the edges, what mends those that no longer go together,
// and the work in order. How a seam is sewn that is sewn otherwise than drafted is told
// in the step that sews it first.
func (p Plan) Sheet() ticket.Sheet {
	sh := ticket.Sheet{Title: p.title(), Answer: p.answers(), Cautions: slices.Clone(p.Spec.Care)}
	if p.Spec.Version == 0 {
		return sh // the plan of no garment has nothing to say
	}
	for _, s := range p.Seams {
		if !s.Changed {
			continue
		}
		say := func(side seam.Side, whose string) {
			if side.Drift.IsZero() {
				return
			}
			l := ticket.Sum("each ply of the "+s.Name+" seam is wider by"+whose, side.Drift, ticket.Add(side.Cut, "cut"), ticket.Less(side.Taken, "taken"))
			sh.Lines = append(sh.Lines, l.Turned("each ply of the "+s.Name+" seam is narrower by"+whose))
		}
		say(s.Sewn.Upper, "")
		if s.Sewn.Under.Drift != s.Sewn.Upper.Drift {
			say(s.Sewn.Under, " (under ply)")
		}
	}
	for _, e := range p.Edges {
		if e.Change.IsZero() {
			continue
		}
		l := ticket.Line{Label: e.Name + " comes out longer by", Result: ticket.About(e.Change)}
		sh.Lines = append(sh.Lines, l.Turned(e.Name+" comes out shorter by"))
		if !e.Sewn.IsZero() {
			sh.Lines = append(sh.Lines, ticket.Line{Label: e.Name + " as sewn", Result: ticket.About(e.Sewn)})
		}
	}
	for _, q := range p.Pairs {
		if !q.Fullness.IsZero() {
			if full, ok := q.Fullness.Exact(); ok {
				sh.Lines = append(sh.Lines, ticket.Line{Label: "fullness of " + q.Long + " on " + q.Short, Result: ticket.Times(full)})
			}
		}
	}
	for _, r := range p.Chosen {
		sh.Lines = append(sh.Lines, r.lines("chosen")...)
	}
	for _, r := range p.Remedies {
		sh.Lines = append(sh.Lines, r.lines("to mend")...)
	}
	p.steps(&sh)
	if len(p.Loose) > 0 {
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "In no step of the work: " + strings.Join(p.Loose, ", ") + "."})
	}
	if len(p.Lays) > 0 && p.spread() {
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "The lay has the pieces as they are drawn: spread the pattern first, and lay them again."})
	}
	for _, s := range p.sheets() {
		for _, c := range s.Cautions {
			if !slices.Contains(sh.Cautions, c) {
				sh.Cautions = append(sh.Cautions, c)
			}
		}
		for _, c := range s.Sources {
			if !slices.Contains(sh.Sources, c) {
				sh.Sources = append(sh.Sources, c)
			}
		}
	}
	sh.Sources = append(sh.Sources, source.Practise("what a seam keeps of its allowance, each ply adds to every edge that it crosses"))
	return sh
}

// sheets are those of the parts, the lays and the seams that are sewn otherwise.
func (p Plan) sheets() (all []ticket.Sheet) {
	for _, l := range p.Lays {
		if len(l.Needs) == 0 {
			all = append(all, l.Lay.Sheet())
		}
	}
	for _, s := range p.Seams {
		if s.Changed {
			all = append(all, s.Sewn.Sheet())
		}
	}
	for _, part := range p.Parts {
		all = append(all, part.Sheet)
	}
	return all
}

// title is what it is, and the verdict.
func (p Plan) title() string {
	n := 0
	for _, q := range p.Pairs {
		if q.Fit == edge.Mismatch {
			n++
		}
	}
	title := p.Spec.Title
	if title == "" {
		title = "Garment"
	}
	if p.Spec.Scene != "" {
		title += ", " + p.Spec.Scene
	}
	for _, l := range p.Lays {
		if len(l.Needs) == 0 && !l.Lay.Fits {
			title += ": the " + l.Cloth.String() + " cloth is too short"
		}
	}
	switch {
	case len(p.Pairs) == 0:
		return title
	case n == 0:
		return title + ": every edge goes onto its partner"
	case n == 1:
		return title + ": one edge does not go onto its partner"
	}
	return fmt.Sprintf("%s: %d edges do not go onto their partners", title, n)
}

// answers are the cloth that the lays take, and the pairs that do not go together.
func (p Plan) answers() (lines []ticket.Line) {
	for _, l := range p.Lays {
		if len(l.Needs) > 0 {
			continue
		}
		lines = append(lines, ticket.Line{Label: "length of the " + l.Cloth.String() + " cloth that its pieces take", Result: ticket.Long(l.Lay.Used)})
		if !l.Lay.Fits {
			lines = append(lines, ticket.Line{Label: "wanting of it", Result: ticket.Long(l.Lay.Spare.Neg())})
		}
	}
	for _, q := range p.Pairs {
		if q.Fit != edge.Mismatch {
			continue
		}
		by := q.Change
		if !q.Excess.IsZero() {
			by = q.Excess
		}
		l := ticket.Line{Label: q.Long + " is longer than " + q.Short + " by", Result: ticket.About(by)}
		lines = append(lines, l.Turned(q.Long+" is shorter than "+q.Short+" by"))
	}
	return lines
}

// lines tell what a remedy asks for.
func (r Remedy) lines(why string) []ticket.Line {
	say := func(what string, l units.Length) ticket.Line {
		return ticket.Line{Label: why + ", " + r.Name + " (" + count(r.Remedy.Mends, "pair") + " mended): " + what, Result: ticket.Long(l)}
	}
	name := r.Remedy.Seam
	switch r.Remedy.Act {
	case edge.CutDrift:
		return []ticket.Line{say(count(r.Remedy.Cuts, "edge")+" of the "+name+" seam cut, before it is sewn, to", r.Remedy.Cut)}
	case edge.SpreadPartner:
		if r.Spread.Sign() < 0 {
			return []ticket.Line{say("the piece of "+r.Remedy.Edge+" folded shorter by", r.Spread.Neg())}
		}
		return []ticket.Line{say("the piece of "+r.Remedy.Edge+" spread by", r.Spread)}
	}
	if plan, err := r.Remedy.Spec.Plan(); err == nil {
		if s, ok := plan.Spec.Seam.(seam.French); ok {
			return []ticket.Line{say("the "+name+" seam sewn with a first pass of", s.First), say("and a second pass of", s.Second)}
		}
	}
	return []ticket.Line{say("the "+name+" seam sewn at", r.Remedy.Take)}
}

// count is so many things.
func count(n int, thing string) string {
	if n == 1 {
		return "1 " + thing
	}
	return fmt.Sprintf("%d %ss", n, thing)
}

// steps adds the work in order. How a seam or a hem is sewn that is sewn otherwise than
// drafted is told where it is sewn first.
func (p Plan) steps(sh *ticket.Sheet) {
	if len(p.Spec.Order) == 0 {
		sh.Steps = p.cutting()
	}
	told := map[any]int{}
	cut := max(0, slices.IndexFunc(p.Spec.Order, func(t Task) bool { return slices.Contains(t.Sews, Cut) }))
	for i, t := range p.Spec.Order {
		step := ticket.Step{Do: t.Do}
		if t.Do == "" {
			step.Do = "Sew " + strings.Join(t.Sews, ", ")
		}
		var how []ticket.Step
		// tell tells how something is sewn, or where that is told already: then only what
		// is cut first is told again, as allowances may differ.
		tell := func(name string, way any, sheet ticket.Sheet) {
			cutting := max(0, slices.IndexFunc(sheet.Steps, func(s ticket.Step) bool { return s.From != "the drafted stitching line" }))
			if first, ok := told[way]; ok {
				step.Note = join(step.Note, fmt.Sprintf("%s: as from step %d on", name, first))
				how = append(how, sheet.Steps[:cutting]...)
				return
			}
			told[way] = len(sh.Steps) + 2 + len(how) + cutting
			step.Note = join(step.Note, name+": "+strings.ToLower(sheet.Title)+", as follows")
			how = append(how, sheet.Steps...)
		}
		if i == cut {
			how = p.cutting()
		}
		for _, name := range t.Sews {
			for _, s := range p.Seams {
				if s.Name == name && s.Changed {
					tell(name, s.Sewn.Spec.With(seam.Allowance{}), s.Sewn.Sheet())
				}
			}
			for _, h := range p.Hems {
				if h.Name == name && h.Changed {
					tell(name, h.Sewn.Spec, h.Sewn.Sheet())
				}
			}
			for _, part := range p.Parts {
				if part.Name == name {
					how = append(how, part.Sheet.Steps...)
				}
			}
		}
		sh.Steps = append(append(sh.Steps, step), how...)
		for _, name := range t.Check {
			sh.Steps = append(sh.Steps, p.measure(name)...)
		}
	}
}

// cutting is how the pieces are laid and cut, where they are not yet.
func (p Plan) cutting() (steps []ticket.Step) {
	for _, l := range p.Lays {
		if len(l.Needs) == 0 && !slices.Contains(p.Spec.Done, Cut) {
			steps = append(steps, l.Lay.Sheet().Steps...)
		}
	}
	return steps
}

// join puts a note after another.
func join(note, more string) string {
	if note == "" {
		return more
	}
	return note + "; " + more
}

// measure is the step that checks an edge, where there is something to check.
func (p Plan) measure(name string) []ticket.Step {
	i := slices.IndexFunc(p.Edges, func(e EdgePlan) bool { return e.Name == name })
	e := p.Edges[i]
	step := ticket.Step{Do: "Measure " + name + " along its seam line", Note: "stand the tape on its edge, and do not pull the cloth"}
	switch {
	case !e.Sewn.IsZero():
		step.Check = ticket.Check{What: name, Want: ticket.About(e.Sewn), Give: ticket.Long(p.give(name, e.Sewn.Mid())), Mend: "unpick the row sewn last, and sew it again"}
	case !e.Change.IsZero():
		l := ticket.Line{Label: name + ", longer than its pattern by", Result: ticket.About(e.Change)}.Turned(name + ", shorter than its pattern by")
		step.Check = ticket.Check{What: l.Label, Want: l.Result, Mend: "unpick the row sewn last, and sew it again"}
	default:
		return nil
	}
	return []ticket.Step{step}
}

// give is how much either way is good enough for a finished length: so much for each ply
// that crosses it, and a share of its length; against a partner, only as much as the eye
// allows. The rule is common practice.
func (p Plan) give(name string, l units.Length) units.Length {
	ply, pass, share := units.Inch.Frac(1, 16), units.Inch.Frac(1, 32), l.DivInt(200)
	fine, coarse := units.Inch.Frac(1, 16), units.Inch.Frac(1, 8)
	small := units.Inch.Of(12)
	if p.Spec.Tape == units.MetricTape {
		ply, pass = units.Millimetre.Frac(3, 2), units.Millimetre.Frac(3, 4)
		fine, coarse, small = units.Millimetre.Of(2), units.Millimetre.Of(5), units.Centimetre.Of(30)
	}
	if p.partnered(name) {
		least := units.Inch.Frac(1, 16)
		step := least
		if p.Spec.Tape == units.MetricTape {
			least, step = units.Millimetre.Of(2), units.Millimetre.Of(1)
		}
		give, _ := least.Add(share).Round(step, units.Down)
		return give
	}
	sum := share
	for _, x := range find(p.Spec.Edges, name).Crossed {
		each := ply
		if i := slices.IndexFunc(p.Seams, func(s SeamPlan) bool { return s.Name == x.Name }); i >= 0 && twoPasses(p.Seams[i].Sewn.Spec) {
			each = each.Add(pass)
		}
		times, plies := max(1, x.Value.Times), x.Value.Plies
		if plies == 0 {
			plies = 2
		}
		sum = sum.Add(each.MulInt(int64(times * plies)))
	}
	step := coarse
	if l.Less(small) {
		step = fine
	}
	give, _ := sum.Round(step, units.HalfAway)
	return give.Max(step)
}

// partnered reports whether an edge is sewn to another that is as long.
func (p Plan) partnered(name string) bool {
	return slices.ContainsFunc(p.Spec.Pairs, func(q Pair) bool { return (q.Long == name || q.Short == name) && q.How != Gathered })
}

// twoPasses reports whether a seam is sewn twice, so that it may wander more.
func twoPasses(s seam.Any) bool {
	switch s.Seam.(type) {
	case seam.French, seam.FlatFelled, seam.MockFelled, seam.UntrimmedFell:
		return true
	}
	return false
}
