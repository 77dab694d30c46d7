package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/ticket"
)

// A Blind is a hem turned up, the garment folded back over it, and caught so that no
// stitching shows.
type Blind struct {
	Allowance
	// First is the depth of a first turn, from the raw edge to the first fold. It follows
	// from depth and take, or may be omitted; the hem is then turned once, its raw edge
	// finished flat.
	First units.Length `json:"first,omitzero"`
	// Depth is the depth of the hem, from the finished edge to the inner fold, or to the
	// raw edge where there is no first turn. It follows from first and take. May be
	// omitted; the default is what take leaves.
	Depth units.Length `json:"depth,omitzero"`
	// Take is all that the hem takes: first + depth. May be omitted; the default without
	// depth is cut, which puts the finished edge on the line drafted.
	Take units.Length `json:"take,omitzero"`
	// Back is how far the inner edge of the hem stands beyond the fold of the garment
	// when that is folded back for stitching. May be omitted; the default is 1/4 in
	// (5 mm), but at most half of depth.
	Back units.Length `json:"back,omitzero"`
	// Stitch is the distance of the stitching from the inner edge of the hem, at most
	// back, and within a first turn. May be omitted; the default is half of back, but at
	// most half of first.
	Stitch units.Length `json:"stitch,omitzero"`
	Curved
}

// Plan works the hem out.
func (s Blind) Plan() (Plan, error) { return plan(s) }

// With is the same hem on an edge of another allowance.
func (s Blind) With(a Allowance) Hem { s.Allowance = a; return s }

func (s Blind) taken() units.Length { return s.Take }
func (s Blind) reach() units.Length { return s.Depth.MulInt(2) }

func (s *Blind) derive() {
	if !s.First.IsZero() || !s.Depth.IsZero() && !s.Take.IsZero() {
		follows(&s.First, &s.Depth, &s.Take, 1)
		return
	}
	fill(&s.Depth, s.Take)
	fill(&s.Take, s.Depth)
}

func (s *Blind) solve(v *solver) {
	fill(&s.Cut, s.Drafted)
	if s.Depth.IsZero() && s.Take.IsZero() {
		s.Take = s.Cut
		s.derive()
	}
	s.Allowance.fill(s.Take)
	if s.Depth.Sign() <= 0 {
		return
	}
	fill(&s.Back, blindBack(v.tape).Least.Min(s.Depth.DivInt(2)))
	half := s.Back.DivInt(2)
	if s.First.Sign() > 0 {
		half = half.Min(s.First.DivInt(2)) // or the row would not catch the turn
	}
	fill(&s.Stitch, half)
}

func (s *Blind) check(v *solver) {
	a := &v.audit
	switch {
	case s.Depth.IsZero() && s.Take.IsZero():
		v.missing("depth", "more than 0 in, or take")
		return
	case v.was["take"].IsZero():
		if s.Depth.Sign() <= 0 {
			a.Fault("first", s.First.String(), "less than {0} (cut)", fault.Range, s.Take)
		}
	case v.was["first"].IsZero() && v.was["take"].Less(v.was["depth"]):
		a.Fault("take", s.Take.String(), "{0} (depth) or more", fault.Conflict, s.Depth)
	case !v.was["first"].IsZero():
		agree(v, 1)
	}
	if s.Depth.Sign() <= 0 || s.First.Sign() < 0 {
		return
	}
	switch deep := s.Depth.Less(s.First); {
	case deep && v.was["first"].IsZero():
		a.Fault("take", s.Take.String(), "at most {0} (twice depth)", fault.Range, s.Depth.MulInt(2))
	case deep:
		a.Fault("first", s.First.String(), "at most {0} (depth)", fault.Range, s.Depth)
	}
	if !s.Back.Less(s.Depth) {
		a.Fault("back", s.Back.String(), "less than {0} (depth)", fault.Range, s.Depth)
	}
	switch {
	case s.Back.Less(s.Stitch):
		a.Fault("stitch", s.Stitch.String(), "at most {0} (back)", fault.Range, s.Back)
	case !s.First.IsZero():
		catches(a, s.Stitch, s.Depth, s.First, false)
	}
}

func (s Blind) answer(p *Plan) {
	if s.First.IsZero() {
		p.turnedOnce(s.Depth, s.Take)
		p.RawToStitch, p.FinishedToStitch = s.Stitch, s.Depth.Sub(s.Stitch)
	} else {
		s.turns().answer(p)
	}
	p.other("finished edge to the fold of the garment", s.fold())
}

// turns are those of a blind hem that is turned under first.
func (s Blind) turns() TwoTurns {
	return TwoTurns{First: s.First, Depth: s.Depth, Take: s.Take, Stitch: s.Stitch}
}

// fold is from the finished edge up to the fold of the garment, folded back.
func (s Blind) fold() units.Length { return s.Depth.Sub(s.Back) }

func (s Blind) sheet(p Plan, sh *ticket.Sheet) {
	lines := stitchLines(p, s.First, s.Depth, s.Stitch)
	fold := line("finished edge to the fold of the garment", ticket.Long(s.fold()), plus(s.Depth, "depth"), minus(s.Back, "standing out beyond the fold"))
	if s.First.IsZero() {
		p.begin(sh, p.takes(plus(s.Depth, "depth")), longer, shorter)
		sh.Lines = append(sh.Lines, fold, lines[1])
		p.once(sh, s.Depth)
	} else {
		p.begin(sh, p.takes(plus(s.First, "first turn"), plus(s.Depth, "depth")), longer, shorter)
		sh.Lines = append(sh.Lines, lines[0], fold, lines[1])
		sh.Steps = append(sh.Steps, p.mark(trebles))
		p.ease(sh, s.First, "")
		sh.Steps = append(sh.Steps, s.turns().turn(p)...)
	}
	p.edges(sh, turnedUp(s.Depth))
	row := p.stitch()
	row.Do = "Stitch along the edge that stands out, every few stitches biting the fold of the garment by a thread or two"
	row.Note = "Open the garment out and look at the right side before going on: only the bites show, as dots"
	sh.Steps = append(sh.Steps, ticket.Step{
		Do: "Fold the garment back on its right side, so that the inner edge of the hem stands out beyond the fold", At: ticket.Long(s.fold()), From: "the finished edge",
		Check: ticket.Check{
			What: "from the fold of the garment to the inner edge of the hem", Want: ticket.Long(s.Back), Give: ticket.Long(p.give().Min(s.Back.DivInt(4))),
			Mend: "Shift the fold, not the hem: pin it again along its whole length before stitching",
		},
	}, row, p.length())
	p.drifts(sh)
	if s.First.IsZero() {
		rawShows(sh)
	}
	p.onTheLine(sh)
	if p.assumes("back") {
		blindBack(s.Tape).all(sh)
	}
	cite(sh, p.assumes("stitch"), stitched)
	p.end(sh, true)
	cite(sh, true, addsUp)
}

func (s Blind) measures() []measure {
	ms := []measure{{"spec.depth", s.Depth}}
	if !s.First.IsZero() {
		ms = append(ms, measure{"spec.first", s.First})
	}
	return append(ms, measure{"others[0].long", s.fold()})
}

// draw draws the garment folded back on its right side, and opened out.
func (s Blind) draw(p Plan, k sketch) []section.Drawing {
	out := k
	depth, row, back := s.Depth.Neg(), p.FinishedToStitch.Neg(), s.fold().Neg()
	k.begin(", folded back for stitching", "The hem lies right side down with its finished edge on the right, and the garment is folded back over it on its right side.")
	end, pen, lift, caught := section.Neat, k.from(depth, 0), int64(1), 1
	if !s.First.IsZero() {
		// The raw edge is shut in only as far as the garment covers it.
		end, lift, caught = section.Hidden, 2, s.turns().caught(1)
		if s.First.Less(s.Back) {
			end = section.Raw
		}
		pen = k.from(depth.Add(s.First), 2).To(depth.Sub(k.half(1))).Step(-1)
	}
	k.cloth(pen.To(k.half(1)).Step(int(lift)).To(back.Add(k.half(1))).Step(1).To(k.run), end, section.RunsOn, section.Right)
	swing := 2*lift + 1 // between the two plies of the garment
	top := swing
	if row == back {
		top = 2*lift - 1 // under the fold
	}
	k.row("row on the hem", row, top, -2, times(caught, cloth)...)
	k.Stitches = append(k.Stitches, section.Stitch{Name: "bites into the fold of the garment", From: k.at(back.Add(k.t), swing), To: k.at(row, swing), Pierce: []string{cloth}})
	k.measure("hem", section.Above, depth, origin, 0, s.Depth)
	k.measure("stands out", section.Below, depth, back, 0, s.Back)
	k.measure(rowName, section.Below, row, origin, 0, p.FinishedToStitch)
	k.measure("from the finished edge to the fold of the garment", section.Below, back, origin, 0, s.fold())

	out.begin(", opened out", lies)
	pen = out.from(depth.Sub(out.run), 0).To(out.half(1))
	top = int64(4)
	if s.First.IsZero() {
		out.cloth(pen.Step(1).To(depth), section.RunsOn, section.Neat, section.Right)
	} else {
		top = 6
		out.cloth(pen.Step(2).To(depth.Sub(out.half(1))).Step(-1).To(depth.Add(s.First)), section.RunsOn, section.Hidden, section.Right)
	}
	out.row("row on the hem", row, top, 1, times(caught, cloth)...)
	out.row("bites into the garment", back, 1, -3, cloth)
	out.measure("hem", section.Above, depth, origin, top-2, s.Depth)
	out.measure(rowName, section.Below, row, origin, 0, p.FinishedToStitch)
	out.measure("from the finished edge to the bites", section.Below, back, origin, 0, s.fold())
	if !s.First.IsZero() {
		s.turns().measureTurn(&out, 2)
	}
	return []section.Drawing{k.Drawing, out.Drawing}
}
