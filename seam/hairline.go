package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/ticket"
)

// A Hairline is a narrow zigzag on the stitching line, trimmed close, for sheer
// cloth.
type Hairline struct {
	Allowance
	// First is the row that makes the seam, from the raw edges as cut. May be omitted;
	// the default is cut.
	First units.Length `json:"first,omitzero"`
	// Trim is what is left of both allowances. May be omitted; the default is 1/8 in
	// (3 mm), but no more than first.
	Trim units.Length `json:"trim,omitzero"`
}

// Plan works the seam out.
func (s Hairline) Plan() (Plan, error) { return plan(s) }

// Taking moves the row.
func (s Hairline) Taking(each units.Length) (Seam, bool) {
	s.First = each
	usual := s
	usual.Trim = units.Length{}
	return taking(each, s, usual)
}

func (s *Hairline) solve(v *solver) {
	if v.row(&s.First) {
		v.trimmed(&s.Trim, s.First, usualTrim.on(s.Tape))
	}
}

func (s Hairline) answer(p *Plan) {
	p.Finished, p.Plies, p.Raw = s.Trim, 3, true
	p.trim(s.Trim, s.least(s.First, s.Trim), s.First)
}

func (s Hairline) sheet(p Plan, sh *ticket.Sheet) {
	p.begin(sh, rowTakes(s.First))
	sh.Steps = append(sh.Steps,
		p.first("Stitch a short, narrow zigzag on the stitching line, over a fine cord if the cloth is soft", ticket.RightTogether, s.First),
		trimStep("Trim both allowances close to the zigzag", s.Trim, s.First),
		p.pressed(true))
	p.finish(sh, 0, s.Trim)
	sh.Cautions = append(sh.Cautions, ticket.Caution{
		Text:  "Too little is left beside a hairline seam to bear a pull: use it in sheer cloth where nothing strains it.",
		Refer: "the source of the figures says so",
	})
	p.printed(sh, EnclosedRow{First: s.First, Second: s.Trim, Trim: s.Trim})
}

func (s Hairline) size(Plan) size {
	return size{ply: s.First, wide: s.Trim, needs: []need{fromRaw("first", s.First), trimNeed(s.Trim, 4)}}
}

func (s Hairline) draw(k *sketch) {
	k.sewn("sewn", s.First, false)
	k.stage("pressed to one side", lies+"Both allowances are pressed to the right.")
	k.aside(s.Trim, s.Trim, section.Raw, section.Raw)
	k.mark("from the seam to the raw edges", section.Above, k.half(0), s.Trim, 4, s.Trim)
}
