package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/ticket"
)

// A Single is a hem turned once, its raw edge finished flat.
type Single struct {
	Allowance
	// Depth is the depth of the hem, from the fold to the raw edge. May be omitted; the
	// default is take, or cut, which puts the finished edge on the line drafted.
	Depth units.Length `json:"depth,omitzero"`
	// Take is all that the hem takes: its depth. May be omitted; the default is depth.
	Take units.Length `json:"take,omitzero"`
	// Stitch is the distance of the stitching from the raw edge. May be omitted; the
	// default is 1/4 in (6 mm), but at most half of depth.
	Stitch units.Length `json:"stitch,omitzero"`
	Curved
}

// Plan works the hem out.
func (s Single) Plan() (Plan, error) { return plan(s) }

// With is the same hem on an edge of another allowance.
func (s Single) With(a Allowance) Hem { s.Allowance = a; return s }

func (s Single) taken() units.Length { return s.Take }
func (s Single) reach() units.Length { return s.Depth.MulInt(2) }

func (s *Single) derive() {
	fill(&s.Depth, s.Take)
	fill(&s.Take, s.Depth)
}

func (s *Single) solve(v *solver) {
	fill(&s.Cut, s.Drafted)
	fill(&s.Take, s.Cut)
	s.derive()
	s.Allowance.fill(s.Take)
	fill(&s.Stitch, stitchRaw(v.tape).Min(s.Depth.DivInt(2)))
}

func (s *Single) check(v *solver) {
	switch {
	case s.Depth.IsZero():
		v.missing("depth", "more than 0 in, or take")
		return
	case s.Take != s.Depth:
		v.audit.Fault("take", s.Take.String(), "{0} (depth)", fault.Conflict, s.Depth)
	}
	if !s.Stitch.Less(s.Depth) {
		v.audit.Fault("stitch", s.Stitch.String(), "less than {0} (depth)", fault.Range, s.Depth)
	}
}

func (s Single) answer(p *Plan) {
	p.turnedOnce(s.Depth, s.Take)
	p.RawToStitch, p.FinishedToStitch = s.Stitch, s.Depth.Sub(s.Stitch)
}

func (s Single) sheet(p Plan, sh *ticket.Sheet) {
	p.begin(sh, p.takes(plus(s.Depth, "depth")), longer, shorter)
	sh.Lines = append(sh.Lines, finishedLine(p, s.Depth, s.Stitch))
	p.edges(sh, turnedUp(s.Depth))
	p.once(sh, s.Depth)
	row := p.stitch()
	row.Do = "Fold the hem back under the garment and blind-stitch it, or topstitch it"
	row.Note = "The stitches catch a thread or two of the garment and lie below the finished raw edge"
	sh.Steps = append(sh.Steps, row, p.length())
	p.drifts(sh)
	rawShows(sh)
	p.onTheLine(sh)
	cite(sh, p.assumes("stitch"), stitched)
	p.end(sh, true)
	cite(sh, true, addsUp)
}

func (s Single) measures() []measure { return []measure{{"spec.depth", s.Depth}} }

func (s Single) draw(p Plan, k sketch) []section.Drawing {
	depth, row := s.Depth.Neg(), p.FinishedToStitch.Neg()
	k.begin("", lies)
	k.cloth(k.from(depth.Sub(k.run), 0).To(k.half(1)).Step(1).To(depth), section.RunsOn, section.Neat, section.Right)
	k.row("hem stitching", row, 4, -2, cloth, cloth)
	k.measure("hem", section.Above, depth, origin, 2, s.Depth)
	k.measure("from the raw edge to the row", section.Below, depth, row, 2, p.RawToStitch)
	k.measure(rowName, section.Below, row, origin, 0, p.FinishedToStitch)
	return []section.Drawing{k.Drawing}
}
