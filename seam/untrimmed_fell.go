package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/ticket"
)

// An UntrimmedFell is a felled seam with its edges offset instead of trimmed: the under allowance is folded
// over the upper edge and stitched down. The upper ply gives the width of the fell, the
// under one that and what is folded over.
type UntrimmedFell struct {
	Allowance
	// Width is that of the finished fell: from the seam to the fold, and to the raw edge
	// of the upper ply, which lies in the fold. May be omitted; the default is 1/4 in
	// (6 mm), but where cut is less than cutUnder it is cut.
	Width units.Length `json:"width,omitzero"`
	// Turned is what is folded over of the under ply, from the fold to its raw edge. May
	// be omitted; the default is width, but where width is cut, no more than cutUnder
	// less cut.
	Turned units.Length `json:"turned,omitzero"`
}

// Plan works the seam out.
func (s UntrimmedFell) Plan() (Plan, error) { return plan(s) }

// Taking is false: the plies give up unequal amounts.
func (s UntrimmedFell) Taking(units.Length) (Seam, bool) { return s, false }

func (s *UntrimmedFell) solve(v *solver) {
	offset := s.Cut.Less(s.CutUnder)
	if offset {
		fill(&s.Width, s.Cut)
	}
	fill(&s.Width, usualSecond.on(s.Tape))
	usual := s.Width
	if offset && s.Width == s.Cut {
		usual = usual.Min(s.CutUnder.Sub(s.Cut))
	}
	fill(&s.Turned, usual)
	v.upper, v.under = s.Width, s.Width.Add(s.Turned)
	fault.AtMost(&v.audit, "turned", s.Turned, s.Width, "width", ErrFlat)
	// The upper raw edge reaches into the fold no further than where the half round begins.
	if !s.Thickness.IsZero() && !standsOut(s.Thickness, 1).Less(s.Width) {
		v.audit.Fault("thickness", s.Thickness.String(), "less than {0} (two thirds of width: the row must go through the upper ply)", fault.Range, s.Width.Scale(units.RatioOf(2, 3)))
	}
}

func (s UntrimmedFell) answer(p *Plan) {
	p.Finished, p.Turned, p.Plies, p.Rows = s.Width, s.Turned, 4, 2
	if t := s.Thickness; !t.IsZero() {
		// The under ply goes round the upper raw edge, which reaches into the fold no
		// further than where the half round begins.
		p.Turn = units.Exactly(standsOut(t, 1).Neg())
		p.TurnUnder = round(t, 1).Plus(standsOut(t, 1).Neg())
	}
}

func (s UntrimmedFell) sheet(p Plan, sh *ticket.Sheet) {
	p.begin(sh,
		line("taken from the upper ply", p.Upper.Taken, plus(s.Width, "from the raw edge to the seam")),
		line("taken from the under ply", p.Under.Taken, plus(s.Width, "from the fold to the seam"), plus(s.Turned, "folded over")))
	p.turnLines(sh)
	// No fell lets this row catch the edge folded over: that may be no wider than the fell.
	through := "the edge folded over ends short of this row: the row close to the fold holds it"
	if s.Turned == s.Width {
		through = "the edge folded over just reaches this row, which does not catch it: the row close to the fold holds it"
	}
	sh.Steps = append(sh.Steps,
		ticket.Step{
			Do: "Lay the upper ply back from the edge of the under ply", Together: ticket.WrongTogether, At: ticket.Long(s.Turned), From: "the raw edge of the under ply",
			Note: "with right sides together instead, the fell lies inside the garment",
		},
		ticket.Step{
			Do: "Fold the projecting edge of the under ply over the upper raw edge", At: ticket.Long(s.Turned), From: "the raw edge of the under ply",
			Press: "the fold against the upper raw edge",
		},
		ticket.Step{Do: "Stitch the seam through both plies", At: ticket.Long(s.Width), From: "the fold", Note: through},
		ticket.Step{Do: "Press the seam", Press: "flat as sewn, then the fold over towards the upper ply"},
		ticket.Step{
			Do: "Stitch close to the fold, through all four layers", At: ticket.Long(s.Width), From: "the seam",
			Note:  "the fold, the upper allowance, the edge folded over, and the garment",
			Check: p.check("across the fell", s.Width, "unpick this row, press the fell flat and stitch from the seam as the guide"),
		},
		ticket.Step{Do: "Press the fell", Press: "flat from both sides"})
	if p.Upper.Drift != p.Under.Drift {
		sh.Cautions = append(sh.Cautions, ticket.Caution{
			Text:  "The two plies give up unequal amounts: the seam leaves its drafted place, and notches move unequally.",
			Refer: "the working above says by how much on each ply",
		})
	}
	p.printed(sh, EnclosedRow{First: s.Width, Second: s.Width, Turn: s.Turned})
}

func (s UntrimmedFell) size(Plan) size {
	return size{ply: s.Width, wide: s.Width, needs: []need{fromRaw("width", s.Width), turnNeed(s.Turned)}}
}

// draw measures the fell from the inside of its fold, against which the upper raw edge
// lies.
func (s UntrimmedFell) draw(k *sketch) {
	k.stage("sewn", "Wrong sides together, the under ply folded over the raw edge of the upper one.")
	left, raw := k.run.Neg(), s.Width.Sub(s.Turned)
	k.under(k.from(left, 0).to(s.Width.Add(k.h)).level(2).to(raw), section.Raw, section.Right)
	k.upper(k.from(left, 1).to(s.Width), section.Hidden, section.Left)
	k.row("the seam", k.half(0), 3, -3, upperPly, underPly)
	k.mark("from the fold", section.Below, k.half(0), s.Width, 0, s.Width)
	k.mark("folded over", section.Above, raw, s.Width, 4, s.Turned)

	k.stage("pressed and stitched", "The garment lies flat, its right side up, the upper ply on the left. The fold is pressed over towards it and stitched down.")
	edge := s.Width.Neg()
	k.under(k.from(k.run, 0).to(k.half(3)).level(3).to(edge.Sub(k.h)).level(1).to(edge.Add(s.Turned)), section.Hidden, section.Right)
	k.upper(k.from(edge.Sub(k.run), 0).to(k.half(1)).level(2).to(edge), section.Hidden, section.Left)
	k.row("the seam", k.half(0), 9, 3, underPly, upperPly)
	k.row("the fell", edge.Add(k.t), 9, -3, underPly, upperPly, underPly, upperPly)
	k.mark("folded over", section.Below, edge, edge.Add(s.Turned), 2, s.Turned)
	k.mark("fell", section.Above, edge, k.half(0), 6, s.Width)
}
