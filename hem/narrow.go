package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Narrow is a double hem of small depth.
type Narrow struct {
	Allowance
	TwoTurns
	Curved
}

// Plan works the hem out.
func (s Narrow) Plan() (Plan, error) { return plan(s) }

// With is the same hem on an edge of another allowance.
func (s Narrow) With(a Allowance) Hem { s.Allowance = a; return s }

func (s *Narrow) solve(v *solver) { narrow(v, &s.Allowance, &s.TwoTurns, narrowTurn(v.tape)) }

// narrow solves a hem of equal turns.
func narrow(v *solver, a *Allowance, t *TwoTurns, usual TurnRow) {
	fill(&a.Cut, a.Drafted)
	t.equal(usual.Depth)
	a.fill(t.Take)
	t.row(v)
}

func (s Narrow) sheet(p Plan, sh *ticket.Sheet) {
	s.narrow(p, sh, narrowTurn(s.Tape), p.stitch(), "")
	cite(sh, p.assumes("stitch"), stitched)
	s.wide(p, sh)
	p.loses(sh)
	s.cite(p, sh)
}

// A Rolled is a hem whose raw edge is rolled over twice, between the fingers or by the foot.
type Rolled struct {
	Allowance
	TwoTurns
	Curved
}

// Plan works the hem out.
func (s Rolled) Plan() (Plan, error) { return plan(s) }

// With is the same hem on an edge of another allowance.
func (s Rolled) With(a Allowance) Hem { s.Allowance = a; return s }

func (s *Rolled) solve(v *solver) { narrow(v, &s.Allowance, &s.TwoTurns, rollTurn(v.tape)) }

func (s Rolled) sheet(p Plan, sh *ticket.Sheet) {
	row := p.stitch()
	row.Do = "Slip-stitch or edge-stitch the roll from the wrong side"
	row.Note = "By hand roll a little at a time and draw the thread up every few stitches"
	s.narrow(p, sh, rollTurn(s.Tape), row, "")
	cite(sh, p.assumes("stitch"), stitched)
	if rolledTurn.Depth.Less(s.Depth) {
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "This is deeper than is usual for a rolled hem, and will not roll of itself.", Refer: "a course sets the limit: see the sources"})
		cite(sh, true, rolledTurn.cite("most that a rolled hem is deep"), rolledMost.cite("the same in millimetres"))
	}
	p.loses(sh)
	s.cite(p, sh)
}

// A ShirtTail is a narrow double hem along a curved tail. It needs circle or hollow.
type ShirtTail struct {
	Allowance
	TwoTurns
	Curved
}

// Plan works the hem out.
func (s ShirtTail) Plan() (Plan, error) { return plan(s) }

// With is the same hem on an edge of another allowance.
func (s ShirtTail) With(a Allowance) Hem { s.Allowance = a; return s }

func (s *ShirtTail) solve(v *solver) { narrow(v, &s.Allowance, &s.TwoTurns, narrowTurn(v.tape)) }

func (s *ShirtTail) check(v *solver) {
	s.TwoTurns.check(v)
	if s.Circle.IsZero() && s.Hollow.IsZero() {
		v.missing("circle", "more than 0 deg, or hollow")
	}
}

func (s ShirtTail) sheet(p Plan, sh *ticket.Sheet) {
	s.narrow(p, sh, narrowTurn(s.Tape), p.stitch(), "")
	cite(sh, p.assumes("stitch"), stitched)
	s.wide(p, sh)
	p.loses(sh)
	s.cite(p, sh)
}

// A Circular is a narrow double hem round a circle or a sector of one.
type Circular struct {
	Allowance
	TwoTurns
	// Circle is the part of a full turn that the edge goes round, at most 1,000 turns.
	// May be omitted; the default is 1 turn.
	Circle units.Angle `json:"circle,omitzero"`
	// Radius is the radius of the drafted finished line. May be omitted; only the length
	// round the edge needs it.
	Radius units.Length `json:"radius,omitzero"`
}

// Plan works the hem out.
func (s Circular) Plan() (Plan, error) { return plan(s) }

// With is the same hem on an edge of another allowance.
func (s Circular) With(a Allowance) Hem { s.Allowance = a; return s }

func (s Circular) edge() edge {
	part, _ := s.Circle.InTurns().Exact()
	return edge{circle: part, radius: s.Radius}
}

func (s *Circular) solve(v *solver) {
	narrow(v, &s.Allowance, &s.TwoTurns, circleTurn(v.tape))
	if s.Circle.IsZero() {
		s.Circle = units.Turns(units.RatioOf(1, 1))
	}
}

func (s *Circular) check(v *solver) {
	s.TwoTurns.check(v)
	// The inner edge of the hem must still lie on the cloth.
	if least := s.Depth.Add(s.Take).Sub(s.Cut); !s.Radius.IsZero() && s.Depth.Sign() > 0 && !least.Less(s.Radius) {
		v.audit.Fault("radius", s.Radius.String(), "more than {0} (depth less the drift)", fault.Range, least)
	}
}

func (s Circular) sheet(p Plan, sh *ticket.Sheet) {
	s.narrow(p, sh, circleTurn(s.Tape), p.stitch(), "Draw it up evenly all round: a circle has no straight run")
	cite(sh, p.assumes("circle"), source.Practise("a whole circle"))
	cite(sh, p.assumes("stitch"), stitched)
	p.loses(sh)
	sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "A circle drops where it is cut on the bias: hang it for a day, then level the edge from the floor before hemming it."})
	s.cite(p, sh)
}
