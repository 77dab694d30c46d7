package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A HongKong is a plain seam pressed open, each allowance by itself in a flat
// binding.
type HongKong struct {
	Allowance
	// First is the row that makes the seam, from the raw edges as cut. May be omitted;
	// the default is cut.
	First units.Length `json:"first,omitzero"`
	// Width is the finished width of each binding. May be omitted; the default is 1/4 in
	// (6 mm) where trim is 1/2 in (1.2 cm) or more, else half of trim.
	Width units.Length `json:"width,omitzero"`
	// Trim is what is left of both allowances. May be omitted; nothing is then trimmed
	// off.
	Trim units.Length `json:"trim,omitzero"`
	// Strip is how wide each strip is cut. May be omitted; the default is 1 in (2.5 cm)
	// where trim is 1/2 in (1.2 cm) or more, width is as by default and that is wide
	// enough; else trim, twice width and thickness, so that its under edge lies along the
	// seam.
	Strip units.Length `json:"strip,omitzero"`
}

// Plan works the seam out.
func (s HongKong) Plan() (Plan, error) { return plan(s) }

// Taking moves the row, and keeps the width where it can.
func (s HongKong) Taking(each units.Length) (Seam, bool) {
	s.First = each
	whole, usual := s, s
	whole.Trim, usual.Trim, usual.Width = units.Length{}, units.Length{}, units.Length{}
	return taking(each, s, whole, usual)
}

func (s *HongKong) solve(v *solver) {
	if !v.row(&s.First) {
		return
	}
	v.trimmed(&s.Trim, s.First, s.First)
	usual, roomy := usualBinding.on(s.Tape), !s.Trim.Less(roomyTrim.on(s.Tape))
	if roomy {
		fill(&s.Width, usual)
	}
	fill(&s.Width, s.Trim.DivInt(2))
	if !s.Width.Less(s.Trim) {
		v.audit.Fault("width", s.Width.String(), "less than {0} (what is left of the allowance to bind)", fault.Range, s.Trim)
		return
	}
	if strip := usualStrip.on(s.Tape); roomy && s.Width == usual && s.leastStrip().Less(strip) {
		fill(&s.Strip, strip)
	}
	fill(&s.Strip, s.Trim.Add(s.Width.MulInt(2)).Add(s.Thickness))
	if !s.leastStrip().Less(s.Strip) {
		v.audit.Fault("strip", s.Strip.String(), "more than {0} (for its under edge to be caught)", ErrHidden, s.leastStrip())
	}
}

// leastStrip is the strip whose under edge would only just reach the stitching.
func (s HongKong) leastStrip() units.Length { return s.Width.MulInt(3).Add(s.Thickness) }

// wrapped is what of the strip lies on the under face of the allowance.
func (s HongKong) wrapped() units.Length { return s.Strip.Sub(s.Width.MulInt(2)).Sub(s.Thickness) }

func (s HongKong) answer(p *Plan) {
	p.Finished, p.Plies = s.Width, 5
	p.strip("least", s.leastStrip())
	p.strip("on the under face", s.wrapped())
	p.trim(s.Trim, s.Width, s.First)
}

func (s HongKong) sheet(p Plan, sh *ticket.Sheet) {
	p.begin(sh, rowTakes(s.First))
	wrapped := line("left of the strip on the under face", s.wrapped(), plus(s.Strip, "strip"), minus(s.Width, "seam of the strip"), minus(s.Width, "over the edge"))
	if !s.Thickness.IsZero() {
		wrapped.Terms = append(wrapped.Terms, minus(s.Thickness, "round the cloth"))
	}
	sh.Lines = append(sh.Lines, wrapped, line("and caught by", s.wrapped().Sub(s.Width), plus(s.wrapped(), "under face"), minus(s.Width, "finished")))
	sh.Steps = append(sh.Steps, p.first("Stitch the seam", ticket.RightTogether, s.First))
	trimmed(sh, "Trim both allowances", s.Trim, s.First)
	last := ticket.Step{Do: "Press the seam again", Press: "open"}
	if s.Trim.Less(s.wrapped()) {
		last.Do = "Trim the under edge of the strip beside the last row, and press the seam again"
		last.Note = "left whole it would reach past the seam"
	}
	sh.Steps = append(sh.Steps,
		ticket.Step{Do: "Press the seam", Press: "flat as sewn, then open"},
		ticket.Step{Do: "Cut a strip for each allowance", At: ticket.Long(s.Strip), From: "edge to edge", Note: "on the bias; a bias strip narrows as it stretches, so cut it full"},
		ticket.Step{Do: "Stitch a strip to each allowance", Together: ticket.RightTogether, At: ticket.Long(s.Width), From: "the raw edges"},
		ticket.Step{
			Do: "Wrap the strip over the raw edge and stitch in the ditch beside it", Note: "its under edge is left raw if it is bias",
			Check: p.check("across the binding, on the upper face", s.Width, "unpick the last row, trim the raw edges level and wrap the strip again"),
		},
		last)
	sh.Sources = append(sh.Sources, source.Practise("the under edge of the strip caught by the last row"))
	p.printed(sh, EnclosedRow{First: s.Width, Trim: s.Trim, Strip: s.Strip}) // the row that sets the strip stands first there
}

func (s HongKong) size(Plan) size {
	half := s.Strip.DivInt(2)
	return size{ply: s.First.Max(half), wide: s.Trim.Max(half), needs: []need{
		fromRaw("first", s.First),
		{"width", s.Width, "across the binding", s.Width, 4},
		{"width", s.Width, "between the seam and the binding", s.Trim.Sub(s.Width), 3},
		{"strip", s.Strip, "caught by the last row", s.wrapped().Sub(s.Width), 3},
	}}
}

// draw measures each allowance from the inside of its turn, as far as the under edge of
// its strip may come, and the binding from its fold to the raw edge of the allowance.
func (s HongKong) draw(k *sketch) {
	k.sewn("sewn", s.First, false)
	const left, right = "left strip", "right strip"
	edge := k.t.Add(s.Trim)
	far := edge.Add(k.run)
	in := edge.Sub(s.Width)

	k.stage("strip sewn on", lies+"The allowances are pressed open; a strip lies on the right one, right sides together, the raw edges even. The left one is done alike.")
	k.upper(k.from(far.Max(s.Strip.Sub(in)).Neg(), 0).to(k.half(-1)).level(1).to(edge.Neg()), section.Raw, section.Right)
	k.under(k.from(far, 0).to(k.half(1)).level(1).to(edge), section.Raw, section.Left)
	k.ply(right, section.Crossed, k.from(edge, 2).to(edge.Sub(s.Strip)), section.Raw, section.Raw, section.Left)
	k.level("the seam", 5, upperPly, underPly)
	k.row("the strip", in, 6, 1, right, underPly)
	k.mark("allowance", section.Below, k.t, edge, 2, s.Trim)
	k.mark("strip from the raw edge", section.Above, in, edge, 4, s.Width)
	k.mark("strip", section.Above, edge.Sub(s.Strip), edge, 4, s.Strip)

	desc := lies + "The allowances are pressed open, each in its strip."
	under := s.wrapped()
	if s.Trim.Less(under) {
		desc += " The under edge of the strip is trimmed off at the seam."
		under = s.Trim
	}
	k.stage("wrapped and stitched", desc)
	end, wall := edge.Sub(under), edge.Add(k.h)
	fold, first, ditch := in.Add(k.h), in.Add(k.t), in.Sub(k.h)
	k.upper(k.from(far.Neg(), 0).to(k.half(-1)).level(2).to(edge.Neg()), section.Hidden, section.Right)
	k.under(k.from(far, 0).to(k.half(1)).level(2).to(edge), section.Hidden, section.Left)
	k.ply(left, section.Crossed, k.from(edge.Neg(), 3).to(fold.Neg()).level(4).to(wall.Neg()).level(1).to(end.Neg()), section.Hidden, section.Hidden, section.Right)
	k.ply(right, section.Crossed, k.from(edge, 3).to(fold).level(4).to(wall).level(1).to(end), section.Hidden, section.Hidden, section.Left)
	k.level("the seam", 5, upperPly, underPly)
	k.row("left strip", first.Neg(), 7, 3, left, upperPly)
	k.row("left, in the ditch", ditch.Neg(), 6, 1, upperPly, left)
	k.row("right strip", first, 7, 3, right, underPly)
	k.row("right, in the ditch", ditch, 6, 1, underPly, right)
	k.mark("left binding", section.Above, in.Neg(), edge.Neg(), 8, s.Width)
	k.mark("right binding", section.Above, in, edge, 8, s.Width)
	k.mark("allowance", section.Below, k.t, edge, 4, s.Trim)
	k.mark("strip on the under face", section.Below, end, edge, 2, under)
}
