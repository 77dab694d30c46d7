package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Slit is a slit cut into whole cloth, with a double hem along both sides. No allowance is
// drafted for it. A hem alone has no cloth to turn at its top.
type Slit struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	TwoTurns
	// Faced says that the top is finished with a small facing; otherwise a tuck that
	// tapers to nothing is taken across it.
	Faced bool `json:"faced,omitzero"`
	Sides
}

// Sides are the two sides of a slit, and the edge that it opens into.
type Sides struct {
	// Slit is the length of the slit from the edge to its top. May be omitted; only the
	// length of hem to sew needs it.
	Slit units.Length `json:"slit,omitzero"`
	// Sweep is the drafted length of the edge that the slit opens into. May be omitted;
	// the plan then has no length of it.
	Sweep units.Length `json:"sweep,omitzero"`
}

func (s Sides) edge() edge { return edge{sweep: s.Sweep} }

// Plan works the hem out.
func (s Slit) Plan() (Plan, error) { return plan(s) }

// With is the same hem with the tape of the allowance.
func (s Slit) With(a Allowance) Hem { s.Tape = a.Tape; return s }

// Allowed is the tape alone.
func (s Slit) Allowed() Allowance { return Allowance{Tape: s.Tape} }

func (s *Slit) tape() *units.Tape { return &s.Tape }

func (s *Slit) solve(v *solver) { s.slit(v) }

// slit solves the turns of a slit, which must be given one measure.
func (t *TwoTurns) slit(v *solver) {
	if t.Depth.IsZero() && t.Take.IsZero() {
		return
	}
	t.unequal(v)
	t.row(v)
}

func (s Slit) answer(p *Plan) {
	s.turns(p)
	p.slit(s.Slit)
}

// slit is what is to sew round a slit, and what its sides take in.
func (p *Plan) slit(length units.Length) {
	p.Run = length.MulInt(2)
	p.other("turned in along the two sides", p.Taken.MulInt(2))
}

func (s Slit) sheet(p Plan, sh *ticket.Sheet) {
	s.sides(p, sh)
	p.slitLines(sh, s.Slit)
	open := ticket.Step{Do: "Mark the line of the slit and cut it", Note: "Staystitch a narrow point round the top before cutting"}
	if !s.Slit.IsZero() {
		open.At, open.From = ticket.Long(s.Slit), "the edge, up to the top of the slit"
	}
	top := ticket.Step{
		Together: ticket.RightTogether, Press: "flat",
		Do:   "Fold the top of the slit across and stitch a tuck across the point that tapers to nothing at both ends",
		Note: "The tuck takes in the last of the turned hem at the point; fasten it off at both ends",
	}
	sh.Steps = append(sh.Steps, open)
	if s.Faced {
		top.Do = "Face the top of the slit with a small square of the cloth, turned under on its outer edges"
		top.Note = "Stitch it round the point before the sides are turned, clip to the point, and turn it to the wrong side"
		sh.Steps = append(sh.Steps, top)
	}
	sh.Steps = append(append(sh.Steps, s.turn(p)...), p.stitch())
	if !s.Faced {
		sh.Steps = append(sh.Steps, top)
	}
	p.sweptStep(sh)
	sh.Cautions = append(sh.Cautions, noSnips, ticket.Caution{Text: "At the top of a cut slit there is no cloth to turn: the corner frays from the first wash unless it is held by the tuck or the facing."})
	s.slitCites(p, sh, s.Tape)
}

// sides is the working of the sides of a slit.
func (t TwoTurns) sides(p Plan, sh *ticket.Sheet) {
	t.lines(p, sh, "each finished edge lies beyond the line drafted by", "each finished edge lies inside the line drafted by")
	sh.Lines = append(sh.Lines, line("turned in along the two sides", ticket.Long(p.Taken.MulInt(2)), plus(p.Taken, "taken"), term(ticket.By, two, "sides")))
}

func (p Plan) slitLines(sh *ticket.Sheet, slit units.Length) {
	sh.Lines = append(sh.Lines, line("drift "+either(p.SweepDrift, "adds to", "takes from")+" the edge that the slit opens into", ticket.Long(p.SweepDrift.Abs()),
		plus(p.Drift.Abs(), "each side"), term(ticket.By, two, "sides")))
	if !slit.IsZero() {
		sh.Lines = append(sh.Lines, line("hem to sew", ticket.Long(p.Run), plus(slit, "slit"), term(ticket.By, two, "sides")))
	}
	p.swept(sh, "edge that the slit opens into, as sewn")
}

func (p Plan) sweptStep(sh *ticket.Sheet) {
	if p.Swept.IsZero() {
		return
	}
	sh.Steps = append(sh.Steps, ticket.Step{Do: "Measure the edge that the slit opens into", Check: ticket.Check{
		What: "from finished edge to finished edge of the slit, round the piece", Want: ticket.Long(p.Swept), Give: ticket.Long(p.give().MulInt(2)),
		Mend: "Turn each side again; an error of one turn counts on both sides",
	}})
}

func (t TwoTurns) slitCites(p Plan, sh *ticket.Sheet, tape units.Tape) {
	if p.assumes("first") {
		wideTurn(tape).all(sh, "first turn of a double hem")
	}
	cite(sh, p.assumes("stitch"), stitched)
	cite(sh, !t.Trim.IsZero(), babyTurn.cite("first turn stitched, trimmed and rolled"))
	cite(sh, true, source.Practise("ends of a slit"), addsUp)
}

var noSnips = ticket.Caution{Text: "Mark with chalk or thread, not with snips: a snip can be deeper than the turn that should hide it."}

// A SeamSlit is a slit left open in a seam, the allowance clipped where the seam ends. It
// has a double hem along both sides.
type SeamSlit struct {
	Allowance
	TwoTurns
	Sides
	// SeamTake is what the seam takes from each side, from the raw edge to the line of
	// its last row. It is needed.
	SeamTake units.Length `json:"seamTake,omitzero"`
}

// Plan works the hem out.
func (s SeamSlit) Plan() (Plan, error) { return plan(s) }

// With is the same hem on a seam of another allowance.
func (s SeamSlit) With(a Allowance) Hem { s.Allowance = a; return s }

func (s *SeamSlit) solve(v *solver) {
	s.slit(v)
	s.Allowance.fill(s.SeamTake)
}

func (s *SeamSlit) check(v *solver) {
	s.TwoTurns.check(v)
	v.audit.Need("seamTake", s.SeamTake)
}

// jog is how far each finished edge lies beyond the line of the seam.
func (s SeamSlit) jog() units.Length { return s.SeamTake.Sub(s.Take) }

func (s SeamSlit) answer(p *Plan) {
	s.turns(p)
	p.slit(s.Slit)
	p.other("each finished edge beyond the line of the seam", s.jog())
}

func (s SeamSlit) sheet(p Plan, sh *ticket.Sheet) {
	s.sides(p, sh)
	sh.Lines = append(sh.Lines, line("each finished edge beyond the line of the seam", ticket.Long(s.jog()),
		plus(s.SeamTake, "taken by the seam"), minus(s.Take, "taken by the hem")).Turned("each finished edge inside the line of the seam"))
	p.slitLines(sh, s.Slit)
	open := ticket.Step{
		Do:   "Close the seam down to the top of the opening, fasten off, and clip both allowances to the last stitch",
		Note: "Clip in to the line of the seam and no further; press the seam above the clip before turning the hem",
	}
	if !s.Slit.IsZero() {
		open.At, open.From = ticket.Long(s.Slit), "the edge, up to the last stitch"
	}
	top := ticket.Step{
		Do: "Lay the hems under the end of the seam and stitch a bar across it, through all layers", Press: "flat",
		Note: "The finished edges meet on the line of the seam",
		Check: ticket.Check{
			What: "at the clip, from the line of the seam to the finished edge", Want: ticket.Long(s.jog().Abs()), Give: ticket.Long(p.give().DivInt(2)),
			Mend: "Turn the side of the opening again to the depth of the seam",
		},
	}
	sh.Cautions = append(sh.Cautions, noSnips)
	switch s.jog().Sign() {
	case 1:
		top.Note = "The finished edges pass the line of the seam and lap: lay one on the other at the clip"
	case -1:
		top.Note = "The finished edges stand back from the line of the seam: take a shallower hem where the edges should meet"
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "The hem takes more than the seam: the two edges of the opening gape below it."})
	}
	sh.Steps = append(append(append(sh.Steps, open), s.turn(p)...), p.stitch(), top)
	p.sweptStep(sh)
	s.slitCites(p, sh, s.Tape)
}
