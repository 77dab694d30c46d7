package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Welt is a plain seam pressed to one side, one allowance trimmed, the other
// caught by a row from outside.
type Welt struct {
	Allowance
	// First is the row that makes the seam, from the raw edges as cut. May be omitted;
	// the default is cut.
	First units.Length `json:"first,omitzero"`
	// Row is the row from outside, from the seam, which misses the trimmed edge and
	// catches the wide one. May be omitted; the default is 3/8 in (1 cm) where that lies
	// between the two, else half way between them.
	Row units.Length `json:"row,omitzero"`
	// Trim is what is left of the under allowance. May be omitted; the default is 1/4 in
	// (6 mm), but no more than half of first, and where row is given within it, half of
	// row.
	Trim units.Length `json:"trim,omitzero"`
	// Finish keeps the raw edges from fraying. May be omitted; the edges then stay as
	// cut.
	Finish Finish `json:"finish,omitzero"`
}

// Plan works the seam out.
func (s Welt) Plan() (Plan, error) { return plan(s) }

// Taking moves the row that makes the seam, and keeps the other where it can.
func (s Welt) Taking(each units.Length) (Seam, bool) {
	s.First = each
	whole, usual := s, s
	whole.Trim, usual.Trim, usual.Row = units.Length{}, units.Length{}, units.Length{}
	return taking(each, s, whole, Welt{Allowance: s.Allowance, First: each, Trim: s.Trim, Finish: s.Finish}, usual)
}

func (s *Welt) solve(v *solver) {
	if !v.row(&s.First) {
		return
	}
	v.trimmed(&s.Trim, s.First, inside(weltTrim.on(s.Tape).Min(s.First.DivInt(2)), s.Row))
	usual := usualWelt.on(s.Tape)
	if !s.Trim.Less(usual) || !usual.Less(s.First) {
		usual = s.Trim.Add(s.First).DivInt(2)
	}
	fill(&s.Row, usual)
	if !s.Row.Less(s.First) {
		v.audit.Fault("row", s.Row.String(), "less than {0} (first), to catch the wide allowance", fault.Range, s.First)
	}
	v.hides(s.Trim, s.Row, "row")
}

func (s Welt) answer(p *Plan) {
	p.Finished, p.Plies, p.Rows, p.Raw = s.Row, 3, 1, s.Finish.raw()
	p.Upper.trim(s.First, s.Row.Add(s.leastTrim()).Min(s.First), s.First)
	p.Under.trim(s.Trim, s.least(s.First, s.Trim), s.Row.Sub(clearance.on(s.Tape)))
}

func (s Welt) sheet(p Plan, sh *ticket.Sheet) {
	p.begin(sh, rowTakes(s.First))
	sh.Lines = append(sh.Lines,
		line("clear between the trimmed edge and the row", s.Row.Sub(s.Trim), plus(s.Row, "row"), minus(s.Trim, "left of the under ply")),
		line("caught beyond the row", s.First.Sub(s.Row), plus(s.First, "allowance"), minus(s.Row, "row")))
	sh.Steps = append(sh.Steps,
		p.first("Stitch the seam", ticket.RightTogether, s.First),
		ticket.Step{Do: "Press the seam", Press: "flat as sewn, then both allowances towards the under ply"},
		trimStep("Trim the under allowance only", s.Trim, s.First))
	p.finish(sh, s.Finish, s.Trim)
	sh.Steps = append(sh.Steps, ticket.Step{
		Do: "Stitch from the right side through the wide allowance", At: ticket.Long(s.Row), From: "the seam",
		Note:  "the row must miss the trimmed edge and catch the wide one",
		Check: p.check("from the seam to the row", s.Row, "unpick the row and stitch it again from the seam as the guide"),
	}, ticket.Step{Do: "Press the welt", Press: "flat from the wrong side"})
	p.tight(sh, "welt", s.Row.Sub(s.Trim), s.First)
	sh.Sources = append(sh.Sources, source.Practise("the row between the trimmed edge and the wide one"))
	p.printed(sh, EnclosedRow{First: s.First, Second: s.Row, Trim: s.Trim})
}

func (s Welt) size(Plan) size {
	return size{ply: s.First, wide: s.First, needs: s.Finish.needs(s.Allowance, s.Trim,
		fromRaw("first", s.First), trimNeed(s.Trim, 3),
		need{"row", s.Row, "between the trimmed edge and the row", s.Row.Sub(s.Trim), 2},
		need{"row", s.Row, "between the row and the wide edge", s.First.Sub(s.Row), 2})}
}

func (s Welt) draw(k *sketch) {
	k.sewn("sewn", s.First, false)
	k.stage("pressed and stitched"+s.Finish.drawn(), lies+"Both allowances are pressed to the right; the row from the right side misses the trimmed edge and catches the wide one.")
	k.aside(s.First, s.Trim, s.Finish.end(), section.Hidden)
	k.row("from the right side", s.Row, 6, -3, upperPly, underPly)
	k.mark("trimmed to", section.Below, k.half(0), s.Trim, 2, s.Trim)
	k.mark("welt", section.Below, k.half(0), s.Row, -3, s.Row)
	k.mark("wide allowance", section.Above, k.half(0), s.First, 4, s.First)
	s.Finish.draw(k, s.Trim, "wide edge", s.First, 4, upperPly)
	s.Finish.draw(k, s.Trim, "trimmed edge", s.Trim, 2, underPly)
}
