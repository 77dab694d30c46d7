package hem

import (
	"example.com/clothyard/units/ticket"
)

// A Double is a hem turned twice, by equal or unequal turns, so that the raw edge is hidden.
type Double struct {
	Allowance
	TwoTurns
	Curved
}

// Plan works the hem out.
func (s Double) Plan() (Plan, error) { return plan(s) }

// With is the same hem on an edge of another allowance.
func (s Double) With(a Allowance) Hem { s.Allowance = a; return s }

func (s *Double) solve(v *solver) {
	fill(&s.Cut, s.Drafted)
	if s.Depth.IsZero() && s.Take.IsZero() {
		s.Take = s.Cut
		s.derive()
	}
	s.unequal(v)
	s.Allowance.fill(s.Take)
	s.row(v)
}

func (s Double) sheet(p Plan, sh *ticket.Sheet) {
	if s.First == s.Depth {
		sh.Title += " of equal turns"
	}
	s.along(p, sh, p.stitch(), "")
	if p.assumes("first") {
		wideTurn(s.Tape).all(sh, "first turn of a double hem")
	}
	p.onTheLine(sh)
	cite(sh, p.assumes("stitch"), stitched)
	s.cite(p, sh)
}
