package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/ticket"
)

// A TurnUp is a trouser turn-up: the hem is turned in and the leg turned up over it,
// to the outside.
type TurnUp struct {
	Allowance
	// First is the hem inside the leg. It follows from depth and take, or may be omitted;
	// the default is depth (1 cm on a metric tape).
	First units.Length `json:"first,omitzero"`
	// Depth is the height of the cuff. It follows from first and take. May be omitted;
	// the default is what take leaves.
	Depth units.Length `json:"depth,omitzero"`
	// Take is all that the turn-up takes: first + 2 x depth. May be omitted; the default
	// without depth is cut, which puts the foot of the leg on the line drafted.
	Take units.Length `json:"take,omitzero"`
	// Stitch is the distance of the stitching from the raw edge inside the leg, less than
	// first. May be omitted; the default is 1/4 in (6 mm), but at most half of first.
	Stitch units.Length `json:"stitch,omitzero"`
	Flare
}

// Plan works the hem out.
func (s TurnUp) Plan() (Plan, error) { return plan(s) }

// With is the same hem on an edge of another allowance.
func (s TurnUp) With(a Allowance) Hem { s.Allowance = a; return s }

func (s TurnUp) taken() units.Length { return s.Take }
func (s TurnUp) reach() units.Length { return s.Depth.MulInt(2) }

func (s *TurnUp) derive() { follows(&s.First, &s.Depth, &s.Take, 2) }

func (s *TurnUp) solve(v *solver) {
	fill(&s.Cut, s.Drafted)
	if s.Depth.IsZero() && s.Take.IsZero() {
		s.Take = s.Cut
		s.derive()
	}
	inside := s.Depth
	if s.Depth.IsZero() {
		inside = s.Take.DivInt(3)
	}
	if s.Tape == units.MetricTape {
		inside = inside.Min(insideTurn(s.Tape).First)
	}
	fill(&s.First, inside)
	s.derive()
	s.Allowance.fill(s.Take)
	fill(&s.Stitch, stitchRaw(v.tape).Min(s.First.DivInt(2)))
}

func (s *TurnUp) check(v *solver) {
	switch {
	case s.Depth.IsZero() && s.Take.IsZero():
		v.missing("depth", "more than 0 in, or take")
		return
	case !v.was["take"].IsZero():
		agree(v, 2)
	case s.Depth.Sign() <= 0:
		v.audit.Fault("first", s.First.String(), "less than {0} (cut)", fault.Range, s.Take)
	}
	if s.First.Sign() > 0 && s.Depth.Sign() > 0 && !s.Stitch.Less(s.First) {
		v.audit.Fault("stitch", s.Stitch.String(), "less than {0} (first)", fault.Range, s.First)
	}
}

func (s TurnUp) answer(p *Plan) {
	p.Plies = 4
	p.fold("lower fold", s.First)
	p.fold("top of the turn-up", s.First.Add(s.Depth))
	p.fold("finished edge", s.Take)
	p.RawToStitch, p.FinishedToStitch = s.Stitch, s.First.Sub(s.Stitch)
	p.taper("finished edge", units.Length{}, units.Length{})
	p.taper("top of the turn-up", s.Depth, s.Depth)
	p.taper("lower fold", s.Depth.MulInt(2), units.Length{})
	p.taper("raw edge", s.Take, s.First)
}

func (s TurnUp) sheet(p Plan, sh *ticket.Sheet) {
	top := s.First.Add(s.Depth)
	p.begin(sh, p.takes(plus(s.Depth, "depth"), term(ticket.By, two, "layers"), plus(s.First, "hem inside")), longer, shorter)
	sh.Lines = append(sh.Lines,
		line("raw edge to the top of the turn-up", ticket.Long(top), plus(s.First, "hem inside"), plus(s.Depth, "depth")),
		line("finished edge to stitching, inside the leg", ticket.Long(p.FinishedToStitch), plus(s.First, "hem inside"), minus(s.Stitch, "stitching from the raw edge")))
	p.edges(sh, turnedUp(s.Depth))
	note := ""
	if !s.Slope.IsZero() {
		note = "The leg is not straight here: cut the seams of the turn-up as mirrors about each fold, or it cannot lie flat on the leg"
	}
	sh.Steps = append(sh.Steps,
		p.mark("Finish the raw edge flat; press the leg seams open within the turn-up"),
		ticket.Step{
			Do: "Mark the three folds: the foot of the leg, the top of the turn-up and its lower fold", At: ticket.Long(s.Depth), From: "one fold to the next, upwards from the lower one",
			Check: ticket.Check{What: "from the raw edge to the lower fold", Want: ticket.Long(s.First), Give: ticket.Long(p.give()), Mend: "Mark again from the raw edge; an error here shows at the foot of the leg"},
		},
		ticket.Step{
			Do: "Turn the hem in on the top fold of the turn-up and press", At: ticket.Long(top), From: "the raw edge", Press: "to the wrong side", Note: note,
		},
		ticket.Step{
			Do: "Stitch the hem to the leg round the inside", At: ticket.Long(s.Stitch), From: "the raw edge",
			Note: "Keep the row between the raw edge and the lower fold, so that the turn-up hides it",
		},
		ticket.Step{
			Do: "Turn the folded edge up over the right side of the leg, on the foot of the leg, and press", At: ticket.Long(s.Depth), From: "the top fold", Press: "upwards",
			Check: p.deep("from the foot of the leg to the top of the turn-up", s.Depth),
		},
		ticket.Step{Do: "Catch the turn-up to the leg at both seams, inside its top, and at the centre of front and back"},
		p.length())
	p.drifts(sh)
	if !p.FinishedToStitch.Less(s.Depth) {
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "The hem inside the leg reaches above the turn-up: its stitching shows on the right side. Take a shallower hem, or catch it by hand."})
	}
	if p.Excess.Sign() < 0 {
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "A leg that narrows to the foot makes a turn-up too tight for the leg above it: cut its seams as mirrors about each fold."})
	}
	if p.assumes("first") {
		insideTurn(s.Tape).all(sh, "hem inside a turn-up"+map[bool]string{true: ", as deep as the turn-up"}[s.First == s.Depth])
	}
	p.onTheLine(sh)
	cite(sh, p.assumes("stitch"), stitched)
	p.end(sh, false)
	cite(sh, true, addsUp)
}

func (s TurnUp) measures() []measure {
	return []measure{{"spec.depth", s.Depth}, {"spec.first", s.First}}
}

// draw draws the hem turned in on the top fold and stitched, and the turn-up as worn, the
// folded edge turned up on the foot of the leg.
func (s TurnUp) draw(p Plan, k sketch) []section.Drawing {
	worn := k
	edge := s.First.Add(s.Depth)
	raw := edge.Neg()
	row := raw.Add(p.RawToStitch)
	k.begin(", the hem turned in and stitched", "The leg lies right side down, the top fold of the turn-up on the right.")
	k.cloth(k.from(raw.Sub(k.run), 0).To(k.half(1)).Step(1).To(raw), section.RunsOn, section.Neat, section.Right)
	k.row("hem stitching", row, 4, -2, cloth, cloth)
	k.measure("from the raw edge to the top fold", section.Above, raw, origin, 2, edge)
	k.measure("from the raw edge to the row", section.Below, raw, row, 2, p.RawToStitch)

	raw, row = s.First.Neg(), p.FinishedToStitch.Neg()
	top := s.Depth.Neg()
	worn.begin("", "The leg lies right side down, its foot on the right; the turn-up is underneath.")
	worn.cloth(worn.from(raw.Min(top).Sub(worn.run), 0).To(worn.half(1)).Step(-1).To(top.Sub(worn.half(1))).Step(-1).To(worn.half(3)).Step(3).To(raw), section.RunsOn, section.Neat, section.Right)
	worn.row("hem stitching", row, 4, -1, cloth, cloth)
	worn.measure("hem inside", section.Above, raw, origin, 2, s.First)
	worn.measure("from the foot to the row", section.Above, row, origin, 0, p.FinishedToStitch)
	worn.measure("turn-up", section.Below, top, origin, -4, s.Depth)
	return []section.Drawing{k.Drawing, worn.Drawing}
}
