package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/ticket"
)

// A Slot is a seam with two folds that meet over an underlay, and a row beside each.
type Slot struct {
	Allowance
	// First is the basting that makes the folds, from the raw edges as cut. May be
	// omitted; the default is cut.
	First units.Length `json:"first,omitzero"`
	// Row is each row, from its fold. May be omitted; the default is 1/4 in (6 mm), but no
	// more than half of trim.
	Row units.Length `json:"row,omitzero"`
	// Trim is what is left of both allowances. May be omitted; nothing is then trimmed
	// off.
	Trim units.Length `json:"trim,omitzero"`
	// Strip is how wide the underlay is cut. May be omitted; the default is twice first.
	Strip units.Length `json:"strip,omitzero"`
	// Finish keeps the raw edges from fraying. May be omitted; the edges then stay as
	// cut.
	Finish Finish `json:"finish,omitzero"`
}

// Plan works the seam out.
func (s Slot) Plan() (Plan, error) { return plan(s) }

// Taking moves the folds, and keeps the rows where it can.
func (s Slot) Taking(each units.Length) (Seam, bool) {
	s.First = each
	whole, usual := s, s
	whole.Trim, usual.Trim, usual.Row = units.Length{}, units.Length{}, units.Length{}
	return taking(each, s, whole, usual)
}

func (s *Slot) solve(v *solver) {
	if !v.row(&s.First) {
		return
	}
	v.trimmed(&s.Trim, s.First, s.First)
	fill(&s.Row, usualSecond.on(s.Tape).Min(s.Trim.DivInt(2)))
	if !s.Row.Less(s.Trim) {
		v.audit.Fault("row", s.Row.String(), "less than {0} (trim), to catch the allowance", fault.Range, s.Trim)
		return
	}
	fill(&s.Strip, s.First.MulInt(2))
	fault.AtLeast(&v.audit, "strip", s.Strip, s.underlay(), "to be caught by both rows", fault.Range)
}

// underlay is the narrowest underlay: as far as each row and a margin beyond it.
func (s Slot) underlay() units.Length {
	return s.Row.Add(s.leastTrim().Min(s.First.Sub(s.Row))).MulInt(2)
}

func (s Slot) answer(p *Plan) {
	p.Finished, p.Plies, p.Rows, p.Raw = s.Row.MulInt(2), 3, 2, s.Finish.raw()
	p.strip("least underlay", s.underlay())
	low := s.underlay().DivInt(2).Min(s.Trim)
	p.trim(s.Trim, low, s.First)
}

func (s Slot) sheet(p Plan, sh *ticket.Sheet) {
	p.begin(sh, rowTakes(s.First))
	sh.Lines = append(sh.Lines,
		line("from row to row", p.Finished, plus(s.Row, "row from its fold"), times(2)),
		line("least underlay", s.underlay(), plus(s.underlay().DivInt(2), "row and margin"), times(2)))
	sh.Steps = append(sh.Steps, p.first("Baste the seam", ticket.RightTogether, s.First))
	trimmed(sh, "Trim both allowances", s.Trim, s.First)
	sh.Steps = append(sh.Steps, ticket.Step{Do: "Press the basted seam", Press: "open"})
	p.finish(sh, s.Finish, s.Trim)
	sh.Steps = append(sh.Steps,
		ticket.Step{Do: "Cut the underlay, and lay it under the seam, its middle on the basting", Together: ticket.WrongOnRight, At: ticket.Long(s.Strip), From: "edge to edge"},
		ticket.Step{
			Do: "Stitch from the right side on each side of the seam", At: ticket.Long(s.Row), From: "each fold",
			Check: p.check("from row to row", p.Finished, "unpick the row that wanders and stitch it again from the fold"),
		},
		ticket.Step{Do: "Take out the basting and press the slot", Press: "from the wrong side"})
	p.printed(sh, EnclosedRow{First: s.First, Second: p.Finished, Trim: s.Trim, Strip: s.Strip})
}

func (s Slot) size(Plan) size {
	half := s.Strip.DivInt(2)
	return size{ply: s.First.Max(half), wide: s.Trim.Max(half), needs: s.Finish.needs(s.Allowance, s.Trim,
		fromRaw("first", s.First),
		need{"row", s.Row, "from the fold to the row", s.Row, 4},
		need{"trim", s.Trim, "between the row and the raw edge", s.Trim.Sub(s.Row), 2},
		need{"strip", s.Strip, "between each row and the edge of the underlay", half.Sub(s.Row), 2})}
}

func (s Slot) draw(k *sketch) {
	k.sewn("basted", s.First, false)
	k.last().Stitches[0].Name = "basting"
	k.stage("stitched"+s.Finish.drawn(), lies+"The allowances are pressed open under the underlay; the basting is out, so that the two folds meet and are joined by the underlay alone.")
	k.opened(s.Trim, s.Finish.end())
	edge := s.Strip.DivInt(2)
	k.ply("underlay", section.Crossed, k.from(edge.Neg(), 2).to(edge), s.Finish.end(), s.Finish.end(), section.Right)
	k.row("left row", s.Row.Neg(), 6, -3, "underlay", upperPly, upperPly)
	k.row("right row", s.Row, 6, -3, "underlay", underPly, underPly)
	k.mark("left row from its fold", section.Below, s.Row.Neg(), k.half(0), -3, s.Row)
	k.mark("right row from its fold", section.Below, k.half(0), s.Row, -3, s.Row)
	k.mark("from row to row", section.Below, s.Row.Neg(), s.Row, -3, k.p.Finished)
	k.mark("allowance", section.Above, k.half(0), s.Trim, 2, s.Trim)
	k.mark("underlay", section.Above, edge.Neg(), edge, 4, s.Strip)
	s.Finish.draw(k, s.Trim, "upper edge", s.Trim.Neg(), 2, upperPly)
	s.Finish.draw(k, s.Trim, "under edge", s.Trim, 2, underPly)
}
