package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Plain is a seam with one row, right sides together, its allowances pressed open or to one
// side.
type Plain struct {
	Allowance
	// First is the row that makes the seam, from the raw edges as cut. May be omitted;
	// the default is cut.
	First units.Length `json:"first,omitzero"`
	// Trim is what is left of both allowances. May be omitted; nothing is then trimmed
	// off.
	Trim units.Length `json:"trim,omitzero"`
	// Finish keeps the raw edges from fraying. May be omitted; the edges then stay as
	// cut.
	Finish Finish `json:"finish,omitzero"`
	// Aside says that the seam is pressed to one side and not open.
	Aside bool `json:"aside,omitzero"`
}

// Plan works the seam out.
func (s Plain) Plan() (Plan, error) { return plan(s) }

// Taking moves the row.
func (s Plain) Taking(each units.Length) (Seam, bool) {
	s.First = each
	whole := s
	whole.Trim = units.Length{}
	return taking(each, s, whole)
}

func (s *Plain) solve(v *solver) {
	if v.row(&s.First) {
		v.trimmed(&s.Trim, s.First, s.First)
	}
}

func (s Plain) answer(p *Plan) {
	p.Finished, p.Plies, p.Raw = s.Trim, 2, s.Finish.raw()
	if s.Aside {
		p.Plies = 3
	}
	p.trim(s.Trim, s.least(s.First, s.Trim), s.First)
}

// pressed is the last pressing of a seam in one row, with its check.
func (p Plan) pressed(aside bool) ticket.Step {
	st := ticket.Step{
		Do: "Press the seam", Press: "flat as sewn, then open",
		Check: p.check("from the seam to the raw edge on each side", p.Finished, "unpick where it wanders and stitch again from a guide on the plate"),
	}
	if aside {
		st.Press = "flat as sewn, then both allowances to one side"
		st.Check.What = "from the seam to the raw edges"
	}
	return st
}

func (s Plain) sheet(p Plan, sh *ticket.Sheet) {
	p.begin(sh, rowTakes(s.First))
	sh.Steps = append(sh.Steps, p.first("Stitch the seam", ticket.RightTogether, s.First))
	trimmed(sh, "Trim both allowances", s.Trim, s.First)
	last := p.pressed(s.Aside)
	if s.Fraying && s.Finish == 0 {
		last.Note = "overcast or bind each raw edge, or trim, zigzag and press both to one side"
	}
	if s.Aside && s.Finish == 0 {
		sh.Sources = append(sh.Sources, source.Practise("plain seam pressed to one side"))
	} else {
		sh.Sources = append(sh.Sources, source.Practise("plain seam pressed open"))
	}
	p.finish(sh, s.Finish, s.Trim)
	sh.Steps = append(sh.Steps, last)
}

func (s Plain) size(Plan) size {
	return size{ply: s.First, wide: s.Trim, needs: s.Finish.needs(s.Allowance, s.Trim, fromRaw("first", s.First), trimNeed(s.Trim, 4))}
}

func (s Plain) draw(k *sketch) {
	k.sewn("sewn", s.First, false)
	if s.Aside {
		k.stage("pressed to one side"+s.Finish.drawn(), lies+"Both allowances are pressed to the right.")
		k.aside(s.Trim, s.Trim, s.Finish.end(), s.Finish.end())
		k.mark("from the seam to the raw edges", section.Above, k.half(0), s.Trim, 4, s.Trim)
		s.Finish.draw(k, s.Trim, "upper edge", s.Trim, 4, upperPly)
		s.Finish.draw(k, s.Trim, "under edge", s.Trim, 2, underPly)
		return
	}
	k.stage("pressed open"+s.Finish.drawn(), lies+"The allowances are pressed open.")
	k.opened(s.Trim, s.Finish.end())
	k.level("the seam", 5, upperPly, underPly)
	k.mark("upper allowance", section.Above, k.half(0), s.Trim.Neg(), 2, s.Trim)
	k.mark("under allowance", section.Above, k.half(0), s.Trim, 2, s.Trim)
	s.Finish.draw(k, s.Trim, "upper edge", s.Trim.Neg(), 2, upperPly)
	s.Finish.draw(k, s.Trim, "under edge", s.Trim, 2, underPly)
}

// opened draws two allowances trimmed and pressed open.
func (k *sketch) opened(trim units.Length, end section.End) {
	k.upper(k.from(trim.Add(k.run).Neg(), 0).to(k.half(-1)).level(1).to(trim.Neg()), end, section.Right)
	k.under(k.from(trim.Add(k.run), 0).to(k.half(1)).level(1).to(trim), end, section.Left)
}

// aside draws two allowances, one upon the other on the right of the seam, the upper one
// as wide as up and the under one as wide as down.
func (k *sketch) aside(up, down units.Length, upper, under section.End) {
	k.upper(k.from(k.run.Neg(), 0).to(k.half(-1)).level(2).to(up), upper, section.Right)
	k.under(k.from(up.Add(k.run), 0).to(k.half(1)).level(1).to(down), under, section.Left)
	k.level("the seam", 5, upperPly, underPly)
}
