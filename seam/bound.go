package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Bound is a seam with one row, both allowances together in a binding.
type Bound struct {
	Allowance
	// First is the row that makes the seam, from the raw edges as cut. May be omitted;
	// the default is cut.
	First units.Length `json:"first,omitzero"`
	// Width is the finished width of the binding, on each face. May be omitted; the
	// default is 1/4 in (6 mm).
	Width units.Length `json:"width,omitzero"`
	// Trim is what is left of both allowances. May be omitted; nothing is then trimmed
	// off.
	Trim units.Length `json:"trim,omitzero"`
}

// Plan works the seam out.
func (s Bound) Plan() (Plan, error) { return plan(s) }

// Taking moves the row, and keeps the width where it can.
func (s Bound) Taking(each units.Length) (Seam, bool) {
	a := s.Allowance
	s.First = each
	return taking(each, s, Bound{Allowance: a, First: each, Width: s.Width}, Bound{Allowance: a, First: each}, Bound{Allowance: a, First: each, Width: each})
}

func (s *Bound) solve(v *solver) {
	if !v.row(&s.First) {
		return
	}
	fill(&s.Width, usualBinding.on(s.Tape))
	left := s.First
	if !s.Trim.IsZero() {
		left = left.Min(s.Trim)
	}
	fault.AtMost(&v.audit, "width", s.Width, left, "what is left of the allowance to bind", fault.Range)
	v.trimmed(&s.Trim, s.First, s.First)
}

func (s Bound) answer(p *Plan) {
	p.Finished, p.Plies = s.Width, 7
	p.trim(s.Trim, s.Width, s.First)
	p.strip("single binding", s.Width.MulInt(4))
	p.strip("folded double", s.Width.MulInt(6))
	p.strip("folded double, with a fixed seam", s.Width.MulInt(4).Add(fixedSeam.on(s.Tape)))
}

func (s Bound) sheet(p Plan, sh *ticket.Sheet) {
	p.begin(sh, rowTakes(s.First))
	strip, fixed := s.Width.MulInt(4), fixedSeam.on(s.Tape)
	sh.Lines = append(sh.Lines,
		line("strip, single binding", strip, plus(s.Width, "finished"), times(4)),
		line("strip, folded double", s.Width.MulInt(6), plus(s.Width, "finished"), times(6)),
		line("strip, folded double with a fixed seam", strip.Add(fixed), plus(s.Width, "finished"), times(4), plus(fixed, "seam and turn")))
	sh.Steps = append(sh.Steps, p.first("Stitch the seam", ticket.RightTogether, s.First))
	trimmed(sh, "Trim both allowances to one edge", s.Trim, s.First)
	sh.Steps = append(sh.Steps,
		ticket.Step{Do: "Cut the strip for a single binding", At: ticket.Long(strip), From: "edge to edge",
			Note: "on the bias where the seam curves; a bias strip narrows as it stretches, so cut it full"},
		ticket.Step{Do: "Stitch the strip to both allowances together", Together: ticket.RightTogether, At: ticket.Long(s.Width), From: "the raw edges"},
		ticket.Step{
			Do:    "Wrap the strip over the raw edges, turn its free edge in to the stitching, and stitch it down",
			Check: p.check("across the binding, on each face", s.Width, "unpick the last row, trim the raw edges level and wrap the strip again"),
		},
		ticket.Step{Do: "Press the bound seam", Press: "to the back", Note: "nothing is taken beyond the seam itself; an edge bound instead of faced is another thing"})
	sh.Sources = append(sh.Sources, source.Practise("both allowances bound together and pressed to one side"))
	for i := range bindings {
		r := &bindings[i]
		if r.Finished == s.Width {
			sh.Sources = append(sh.Sources, source.Cite{For: r.Rule, ID: r.Source, Place: r.Place, Known: r.Known})
		}
	}
}

func (s Bound) size(Plan) size {
	return size{ply: s.First, wide: s.Width.Max(s.Trim), needs: []need{
		fromRaw("first", s.First),
		{"width", s.Width, "across the binding", s.Width, 6},
	}}
}

// draw measures the allowance from the inside of its turn, as far as the binding may
// come, and the binding from its fold to the raw edges.
func (s Bound) draw(k *sketch) {
	k.sewn("sewn", s.First, false)
	const binding = "binding"
	strip := s.Width.MulInt(4)

	k.stage("strip sewn on", "Right sides together, the strip for a single binding on top, all raw edges even.")
	end := s.Trim.Sub(strip)
	left := end.Min(k.half(0)).Sub(k.run)
	k.upper(k.from(left, 1).to(s.Trim), section.Raw, section.Right)
	k.under(k.from(left, 0).to(s.Trim), section.Raw, section.Left)
	k.ply(binding, section.Crossed, k.from(s.Trim, 2).to(end), section.Raw, section.Raw, section.Left)
	k.row("the seam", k.half(0), 3, -3, upperPly, underPly)
	k.row("the strip", s.Trim.Sub(s.Width), 7, -3, binding, upperPly, underPly)
	k.mark("allowance", section.Below, k.half(0), s.Trim, 0, s.Trim)
	k.mark("strip from the raw edges", section.Above, s.Trim.Sub(s.Width), s.Trim, 4, s.Width)
	k.mark("strip", section.Above, end, s.Trim, 4, strip)

	edge := k.t.Add(s.Trim)
	in, wall := edge.Sub(s.Width), edge.Add(k.h)
	fold := in.Add(k.h)
	k.stage("bound and pressed", lies+"The binding is wrapped round both allowances, its free edge turned in and stitched down, and pressed to the right.")
	k.upper(k.from(k.run.Neg(), 0).to(k.half(-1)).level(4).to(edge), section.Hidden, section.Right)
	k.under(k.from(edge.Add(k.run), 0).to(k.half(1)).level(3).to(edge), section.Hidden, section.Left)
	k.ply(binding, section.Crossed, k.from(edge, 5).to(fold).level(6).to(wall).level(1).to(fold).level(2).to(edge), section.Hidden, section.Hidden, section.Left)
	k.level("the seam", 5, upperPly, underPly)
	k.row("the strip", in.Add(k.t), 11, 5, binding, upperPly, underPly)
	k.row("the binding", in.Add(k.half(4)), 15, 1, binding, binding, upperPly, underPly, binding, binding)
	k.mark("allowance", section.Below, k.t, edge, 6, s.Trim)
	k.mark("binding", section.Above, in, edge, 12, s.Width)
}
