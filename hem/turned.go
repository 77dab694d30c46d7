package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// TwoTurns are the turns of a hem that is turned twice, so that the raw edge is hidden.
type TwoTurns struct {
	// First is the depth of the first turn, the part that is hidden, from the raw edge to
	// the first fold. It follows from depth and take, or may be omitted; the default of a
	// double hem and of a slit is 1/4 in (6 mm), or half the hem where that is too deep;
	// the others have equal turns.
	First units.Length `json:"first,omitzero"`
	// Depth is the depth of the hem as it shows on the wrong side, from the last fold,
	// which is the finished edge, to the inner fold. It follows from first and take, or
	// may be omitted but for a slit; the default of a double hem is what take leaves, of
	// the others what is printed for the kind.
	Depth units.Length `json:"depth,omitzero"`
	// Take is all that the hem takes, first + depth. May be omitted; the default of a
	// double hem without depth is cut, which puts the finished edge on the line drafted.
	Take units.Length `json:"take,omitzero"`
	// Trim is what is left of the first turn where it is trimmed after the fold has
	// been stitched, as for a baby hem, from the first fold. May be omitted; nothing is
	// then trimmed.
	Trim units.Length `json:"trim,omitzero"`
	// Stitch is the distance of the stitching from the inner fold, into the hem. It lies
	// within the first turn, as trimmed, or it does not catch that. May be omitted; the
	// default is 1/16 in (2 mm), but at most half of depth and half of the first turn.
	Stitch units.Length `json:"stitch,omitzero"`
}

func (t TwoTurns) taken() units.Length { return t.Take }
func (t TwoTurns) reach() units.Length { return t.Depth.MulInt(2) }

// turned is what is hidden of the first turn once it is trimmed: what has to lie
// flat inside the hem.
func (t TwoTurns) turned() units.Length {
	if t.Trim.IsZero() {
		return t.First
	}
	return t.Trim
}

// derive fills the one of first, depth and take that follows from the others.
func (t *TwoTurns) derive() { follows(&t.First, &t.Depth, &t.Take, 1) }

// follows fills the one that follows of take = first + n x depth.
func follows(first, depth, take *units.Length, n int64) {
	switch f, d, t := !first.IsZero(), !depth.IsZero(), !take.IsZero(); {
	case f && d && !t:
		*take = first.Add(depth.MulInt(n))
	case f && t && !d:
		*depth = take.Sub(*first).DivInt(n)
	case d && t && !f:
		*first = take.Sub(depth.MulInt(n))
	}
}

// unequal fills the turns of a hem whose first turn has a depth of its own.
func (t *TwoTurns) unequal(v *solver) {
	if t.First.IsZero() && !t.Depth.IsZero() {
		t.First = wideTurn(v.tape).First.Min(t.Depth)
	} else if t.First.IsZero() {
		t.First = wideTurn(v.tape).First.Min(t.Take.DivInt(2))
	}
	t.derive()
}

// equal fills equal turns, so that the raw edge lies in the fold, of the depth given
// where no turn is.
func (t *TwoTurns) equal(usual units.Length) {
	switch f, d, k := t.First.IsZero(), t.Depth.IsZero(), t.Take.IsZero(); {
	case f && d && k:
		t.First, t.Depth = usual, usual
	case f && d:
		t.First = t.Take.DivInt(2)
	case f && k:
		t.First = t.Depth
	case d && k:
		t.Depth = t.turned()
	}
	t.derive()
}

// row fills the distance of the stitching.
func (t *TwoTurns) row(v *solver) {
	if t.Depth.Sign() > 0 {
		fill(&t.Stitch, stitchFold(v.tape).Min(t.Depth.DivInt(2)).Min(t.turned().DivInt(2)))
	}
}

// check looks for turns that do not lie one within the other, and a row that misses them.
func (t TwoTurns) check(v *solver) {
	a := &v.audit
	deep := t.Trim.IsZero() && t.Depth.Sign() > 0 && t.Depth.Less(t.First)
	switch {
	case t.Depth.IsZero() && t.Take.IsZero():
		v.missing("depth", "more than 0 in, or take")
		return
	case !v.was["take"].IsZero():
		agree(v, 1)
	case t.Depth.Sign() <= 0:
		a.Fault("first", t.First.String(), "less than {0} (cut)", fault.Range, t.Take)
	}
	if t.Depth.Sign() <= 0 || t.First.Sign() <= 0 {
		return
	}
	switch {
	case deep && v.was["first"].IsZero():
		a.Fault("take", t.Take.String(), "at most {0} (twice depth)", fault.Range, t.Depth.MulInt(2))
	case deep: // the turn would reach past the finished edge
		a.Fault("first", t.First.String(), "at most {0} (depth), or a trim of that", fault.Range, t.Depth)
	}
	fault.AtMost(a, "trim", t.Trim, t.First.Min(t.Depth), "the lesser of first and depth", fault.Range)
	catches(a, t.Stitch, t.Depth, t.turned(), !t.Trim.IsZero())
}

// agree looks for a take that is not first + n x depth, or leaves nothing for one of them.
func agree(v *solver, n int64) {
	a, first, depth, take := &v.audit, v.was["first"], v.was["depth"], v.was["take"]
	sum, part, all := first.Add(depth.MulInt(n)), "depth", "first + depth"
	if n > 1 {
		part, all = "twice depth", "first + twice depth"
	}
	if !first.IsZero() {
		part = "first"
	}
	switch {
	case !first.IsZero() && !depth.IsZero():
		if take != sum {
			a.Fault("take", take.String(), "{0} ("+all+")", fault.Conflict, sum)
		}
	case !sum.Less(take) && !sum.IsZero():
		a.Fault("take", take.String(), "more than {0} ("+part+")", fault.Conflict, sum)
	}
}

// catches looks for a row that lies on the raw edge of the first turn or beyond it, or
// outside the hem. A turn that is too deep has its own fault.
func catches(a *fault.Audit, stitch, depth, turned units.Length, trimmed bool) {
	name := "first"
	if trimmed {
		name = "trim"
	}
	switch {
	case !depth.Less(turned) && !stitch.Less(turned):
		a.Fault("stitch", stitch.String(), "less than {0} ("+name+"), or the row does not catch the turn", fault.Range, turned)
	case !stitch.Less(depth):
		a.Fault("stitch", stitch.String(), "less than {0} (depth)", fault.Range, depth)
	}
}

func (t TwoTurns) answer(p *Plan) {
	t.turns(p)
	p.taper("finished edge", units.Length{}, units.Length{})
	p.taper("first fold", t.Depth, t.Depth)
	p.taper("raw edge", t.Take, t.Depth.Sub(t.First))
}

// turns fills the folds and the row.
func (t TwoTurns) turns(p *Plan) {
	p.Plies = 3
	p.fold("first fold", t.First)
	p.fold("finished edge", t.Take)
	p.RawToStitch, p.FinishedToStitch = t.First.Add(t.Stitch), t.Depth.Sub(t.Stitch)
}

// lines are the working of the two turns.
func (t TwoTurns) lines(p Plan, sh *ticket.Sheet, out, in string) {
	p.begin(sh, p.takes(plus(t.First, "first turn"), plus(t.Depth, "depth")), out, in)
	sh.Lines = append(sh.Lines, stitchLines(p, t.First, t.Depth, t.Stitch)...)
}

// stitchLines are where the row of a hem with a first turn lies.
func stitchLines(p Plan, first, depth, stitch units.Length) []ticket.Line {
	return []ticket.Line{
		line("raw edge to stitching, flat", ticket.Long(p.RawToStitch), plus(first, "first turn"), plus(stitch, "from the inner fold")),
		finishedLine(p, depth, stitch),
	}
}

func finishedLine(p Plan, depth, stitch units.Length) ticket.Line {
	return line("finished edge to stitching", ticket.Long(p.FinishedToStitch), plus(depth, "depth"), minus(stitch, "stitching from the inner edge of the hem"))
}

// turn are the steps of the two turns.
func (t TwoTurns) turn(p Plan) []ticket.Step {
	st := []ticket.Step{{Do: "Turn in the raw edge and press the first fold", At: ticket.Long(t.First), From: "the raw edge", Press: "to the wrong side"}}
	if !t.Trim.IsZero() {
		st = []ticket.Step{
			{Do: "Stitch a row for the first fold to turn on", At: ticket.Long(t.First), From: "the raw edge"},
			{Do: "Turn on the row, stitch close to the fold, and trim", Trim: ticket.Long(t.Trim), Press: "to the wrong side",
				Note: "Trim after stitching, with the point of the shears away from the garment"}}
	}
	return append(st, secondTurn(p, t.Depth))
}

func secondTurn(p Plan, depth units.Length) ticket.Step {
	return ticket.Step{
		Do: "Turn again and press the second fold, which is the finished edge", At: ticket.Long(depth), From: "the first fold", Press: "to the wrong side",
		Note: p.fullness(), Check: p.deep("from the finished edge to the first fold, on the wrong side", depth),
	}
}

// along is the work along an edge: the working, and the steps with the row given.
func (t TwoTurns) along(p Plan, sh *ticket.Sheet, row ticket.Step, ease string) {
	t.lines(p, sh, longer, shorter)
	p.edges(sh, turnedUp(t.Depth))
	sh.Steps = append(sh.Steps, p.mark(trebles))
	p.ease(sh, t.First, ease)
	sh.Steps = append(append(sh.Steps, t.turn(p)...), row, p.length())
	p.drifts(sh)
}

// cite cites what a hem of two turns rests on beside its turns.
func (t TwoTurns) cite(p Plan, sh *ticket.Sheet) {
	cite(sh, !t.Trim.IsZero(), babyTurn.cite("first turn stitched, trimmed and rolled"))
	p.end(sh, true)
	cite(sh, true, addsUp)
}

// narrow is the sheet of a hem of two equal turns, which are those of a row by default.
func (t TwoTurns) narrow(p Plan, sh *ticket.Sheet, usual TurnRow, row ticket.Step, ease string) {
	t.along(p, sh, row, ease)
	first, depth := p.assumes("first"), p.assumes("depth")
	if first && depth && p.assumes("take") {
		usual.all(sh, "turns of a narrow hem")
	} else {
		cite(sh, first || depth, source.Practise("equal turns, so that the raw edge lies in the fold"))
	}
}

// wide warns of a narrow hem that is none.
func (t TwoTurns) wide(p Plan, sh *ticket.Sheet) {
	if !narrowMost.Less(t.Take) {
		return
	}
	sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "This takes more than is usual for a narrow hem.", Refer: "a course sets the limit: see the sources"})
	cite(sh, true, source.Cite{For: "most that a narrow hem takes", ID: "garment-hem-course", Place: "narrow folded hem", Known: source.Read})
}

// loses warns of fullness that narrow turns have to lose.
func (p Plan) loses(sh *ticket.Sheet) {
	if !p.Fullness.IsZero() {
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "A narrow hem has to lose its fullness within its own turns: press the first turn over a row of ease stitches and try a hand's length first."})
	}
}

func (t TwoTurns) measures() []measure {
	ms := []measure{{"spec.depth", t.Depth}}
	if !t.Trim.IsZero() {
		ms = append(ms, measure{"spec.trim", t.Trim})
	}
	return append(ms, measure{"spec.first", t.First})
}

// draw draws a hem of two turns, and before it, where the first turn is trimmed, the
// flat edge with the row that it turns on.
func (t TwoTurns) draw(p Plan, k sketch) []section.Drawing {
	flat, first := k, t.First.Neg()
	flat.begin(", the row to turn on", "The cloth lies flat, right side down, its raw edge on the right.")
	flat.cloth(flat.from(first.Sub(flat.run), 0).To(origin), section.RunsOn, section.Raw, section.Right)
	flat.row("row to turn on", first, 3, -3, cloth)
	flat.measure("first turn", section.Below, first, origin, 0, t.First)

	depth, row := t.Depth.Neg(), p.FinishedToStitch.Neg()
	k.begin("", lies)
	k.cloth(k.from(depth.Sub(k.run), 0).To(k.half(1)).Step(2).To(depth.Sub(k.half(1))).Step(-1).To(depth.Add(t.turned())), section.RunsOn, section.Hidden, section.Right)
	k.row("hem stitching", row, 6, -2, times(t.caught(2), cloth)...)
	if !t.Trim.IsZero() {
		// The row lies in the fold that was turned on it.
		k.Stitches = append(k.Stitches, section.Stitch{Name: "row turned on", From: k.at(depth.Sub(k.half(3)), 3), To: k.at(depth, 3), Pierce: []string{cloth}})
		k.Desc += " A row close to the first fold, which no measure places, is left out."
	}
	k.measure("hem", section.Above, depth, origin, 4, t.Depth)
	k.measure(rowName, section.Below, row, origin, 0, p.FinishedToStitch)
	t.measureTurn(&k, 2)
	if t.Trim.IsZero() {
		return []section.Drawing{k.Drawing}
	}
	return []section.Drawing{flat.Drawing, k.Drawing}
}

// caught is how many plies the row goes through: those of the hem beside its first
// turn, and the turn where the row is within it.
func (t TwoTurns) caught(others int) int {
	if t.turned().Less(t.Stitch) {
		return others
	}
	return others + 1
}

func (t TwoTurns) measureTurn(k *sketch, halves int64) {
	name, depth := "first turn", t.Depth.Neg()
	if !t.Trim.IsZero() {
		name = "first turn, trimmed"
	}
	k.measure(name, section.Below, depth, depth.Add(t.turned()), halves, t.turned())
}
