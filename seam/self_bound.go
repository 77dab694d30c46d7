package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A SelfBound is a seam with one allowance trimmed, the other folded twice round it as its
// binding. First is twice width and turned.
type SelfBound struct {
	Allowance
	// First is the row that makes the seam, from the raw edges as cut. May be omitted;
	// the default is twice width and turned where both are given, else cut.
	First units.Length `json:"first,omitzero"`
	// Width is that of the binding, from the seam to the second fold. May be omitted; the
	// default is half of what turned leaves of first.
	Width units.Length `json:"width,omitzero"`
	// Turned is the first fold of the wide allowance, from the fold to the raw edge. May
	// be omitted; the default is first less twice width, or half of what trim leaves of
	// first: the first fold then meets the trimmed edge.
	Turned units.Length `json:"turned,omitzero"`
	// Trim is what is left of the under allowance. May be omitted; the default is 1/8 in
	// (3 mm), or as much less as a quarter of first, the first fold or the binding asks
	// for, but no less than 1/16 in (1.5 mm), or 1/8 in (3 mm) where the cloth frays.
	Trim units.Length `json:"trim,omitzero"`
}

// Plan works the seam out.
func (s SelfBound) Plan() (Plan, error) { return plan(s) }

// Taking moves the row, and keeps the width where it can.
func (s SelfBound) Taking(each units.Length) (Seam, bool) {
	var tries []Seam
	s.First = each
	for _, width := range [...]units.Length{s.Width, {}} {
		s.Width = width
		whole := s
		whole.Trim = units.Length{}
		bare := whole
		bare.Turned = units.Length{}
		tries = append(tries, s, whole, bare)
	}
	return taking(each, tries...)
}

func (s *SelfBound) solve(v *solver) {
	v.follows(&s.First, s.Width, 2, s.Turned, "first")
	if !v.row(&s.First) {
		return
	}
	least := s.leastTrim()
	usual := usualTrim.on(s.Tape).Min(s.First.DivInt(4)).Max(least)
	path, value := "turned", s.Turned
	switch {
	case s.Width.IsZero() && s.Turned.IsZero():
		if most := least.MulInt(3); s.Trim.IsZero() && s.First.Cmp(most) <= 0 {
			v.audit.Fault("first", s.First.String(), "more than {0} (three times {1}"+leastOfUnder+")", ErrHidden, most, least)
			return
		}
		fill(&s.Trim, usual)
		s.Turned = s.First.Sub(s.Trim).DivInt(2)
		value = s.Turned
		s.Width = s.First.Sub(s.Turned).DivInt(2)
	case s.Width.IsZero():
		s.Width = s.First.Sub(s.Turned).DivInt(2)
	case s.Turned.IsZero():
		s.Turned = s.First.Sub(s.Width.MulInt(2))
		path, value = "width", s.Width
	case s.Turned.Add(s.Width.MulInt(2)) != s.First:
		v.audit.Fault("turned", s.Turned.String(), "{0} (first less twice width)", fault.Conflict, s.First.Sub(s.Width.MulInt(2)))
		return
	}
	half := s.First.DivInt(2)
	if s.Turned.Sign() <= 0 || !s.Turned.Less(half) {
		switch {
		case path == "width":
			v.audit.Fault(path, value.String(), "more than {0} and less than {1} (a quarter and half of first)", ErrFlat, half.DivInt(2), half)
		case s.Trim.IsZero(): // what shuts in the least of the under ply is less
			v.shutIn(path, value, s.First, least)
		default:
			v.audit.Fault(path, value.String(), "less than {0} (half of first)", ErrFlat, half)
		}
		return
	}
	room := s.First.Sub(s.Turned.MulInt(2)) // as far as the turned edge comes back towards the seam
	if s.Trim.IsZero() && (!least.Less(s.Width) || room.Less(least)) {
		v.shutIn(path, value, s.First, least)
		return
	}
	v.trimmed(&s.Trim, s.First, inside(usual.Min(room), s.Width).Max(least))
	v.hides(s.Trim, s.Width, "width")
	if room.Less(s.Trim) {
		v.audit.Fault("turned", s.Turned.String(), "at most {0} (the first fold meets the trimmed edge)", ErrFlat, s.First.Sub(s.Trim).DivInt(2))
	}
}

// shutIn is the fault of a self-bound seam that does not shut in the least that must be
// left of its under ply, by what was given of it.
func (v *solver) shutIn(path string, value, first, least units.Length) {
	quarter, half, rest := first.Add(least).DivInt(4), first.Sub(least).DivInt(2), first.Sub(least.MulInt(2))
	limit, amount := "", units.Length{}
	switch {
	case path == "width" && least.Less(quarter):
		limit, amount = "at least {0} (a quarter of first and of {1}", quarter
	case path == "width":
		limit, amount = "more than {0} ({1}", least
	case rest.Cmp(half) <= 0:
		limit, amount = "less than {0} (first less twice {1}", rest
	default:
		limit, amount = "at most {0} (half of first less {1}", half
	}
	v.audit.Fault(path, value.String(), limit+leastOfUnder+")", ErrHidden, amount, least)
}

// leastOfUnder names what a length is.
const leastOfUnder = ", the least of the under ply"

func (s SelfBound) answer(p *Plan) {
	p.Finished, p.Turned, p.Plies = s.Width, s.Turned, 5
	// A first fold wider than the binding goes round the second fold and comes back as
	// far as this.
	if back := s.Width.MulInt(2).Sub(s.Turned); s.Width.Less(s.Turned) && !s.Trim.Less(back) {
		p.Plies = 6
	}
	p.Under.trim(s.Trim, s.least(s.First, s.Trim), s.Width.Sub(clearance.on(s.Tape)).Min(s.First.Sub(s.Turned.MulInt(2))))
}

func (s SelfBound) sheet(p Plan, sh *ticket.Sheet) {
	p.begin(sh, rowTakes(s.First))
	sh.Lines = append(sh.Lines,
		line("the wide allowance", s.First, plus(s.Width, "binding"), plus(s.Width, "binding again"), plus(s.Turned, "first fold")),
		line("clear inside the binding", s.Width.Sub(s.Trim), plus(s.Width, "binding"), minus(s.Trim, "left of the under ply")))
	sh.Steps = append(sh.Steps,
		p.first("Stitch the seam", ticket.RightTogether, s.First),
		trimStep("Trim the under allowance only", s.Trim, s.First),
		ticket.Step{Do: "Fold the wide allowance over, its raw edge towards the trimmed one", At: ticket.Long(s.Turned), From: "the raw edge", Press: "the fold sharp"},
		ticket.Step{
			Do:    "Fold it again, the first fold onto the seam, and stitch it down beside the seam",
			Check: p.check("across the binding", s.Width, "unpick, press both folds again and stitch"),
			Note:  "through the allowances only",
		},
		ticket.Step{Do: "Press the bound seam", Press: "to the back"})
	p.tight(sh, "binding", s.Width.Sub(s.Trim), s.First)
	sh.Sources = append(sh.Sources, source.Practise("the folds of a self-bound seam"))
	p.printed(sh, EnclosedRow{First: s.First, Second: s.Width, Trim: s.Trim, Turn: s.Turned})
}

func (s SelfBound) size(Plan) size {
	needs := []need{fromRaw("first", s.First), trimNeed(s.Trim, 4), turnNeed(s.Turned)}
	if over := s.Turned.Sub(s.Width); over.Sign() > 0 {
		needs = append(needs, need{"turned", s.Turned, "round the second fold", over, 4})
	}
	return size{ply: s.First, wide: s.Width.Max(s.Trim), needs: needs}
}

// draw measures from the inside of the turn, where the first fold comes to lie, to the
// inside of the second fold.
func (s SelfBound) draw(k *sketch) {
	k.sewn("sewn", s.First, false)

	// From x the wide allowance lies at the level z over the trimmed one.
	fold := func(l layer, x units.Length, z int) layer {
		second := x.Add(s.Width)
		l = l.level(z).to(second.Add(k.h)).level(z - 3).to(x.Add(k.h)).level(z - 2)
		if s.Width.Less(s.Turned) {
			return l.to(second.Sub(k.h)).level(z - 1).to(second.Sub(s.Turned.Sub(s.Width)))
		}
		return l.to(x.Add(s.Turned))
	}
	marks := func(x units.Length, z int64) {
		k.mark("trimmed to", section.Below, x, x.Add(s.Trim), 2*z-2, s.Trim)
		k.mark("binding", section.Above, x, x.Add(s.Width), 2*z, s.Width)
	}
	through := []string{upperPly, underPly, upperPly, upperPly}

	zero, once := k.half(0), s.Width.MulInt(2)
	k.stage("folded once", "Right sides together, the under allowance trimmed, the wide one folded over towards it.")
	left := k.beside(once).Neg()
	k.upper(k.from(left, 1).to(once.Sub(k.h)).level(0).to(once.Sub(s.Turned)), section.Raw, section.Right)
	k.under(k.from(left, 0).to(s.Trim), section.Raw, section.Left)
	k.row("the seam", zero, 5, -3, upperPly, underPly)
	k.mark("trimmed to", section.Below, zero, s.Trim, 0, s.Trim)
	k.mark("first fold", section.Above, once.Sub(s.Turned), once, 2, s.Turned)

	k.stage("folded and stitched", "Right sides together, the wide allowance folded twice round the trimmed one, its first fold onto the seam.")
	left = k.run.Neg()
	k.upper(fold(k.from(left, 3), zero, 3), section.Hidden, section.Right)
	k.under(k.from(left, 2).to(s.Trim), section.Hidden, section.Left)
	k.row("the seam", zero, 9, 3, upperPly, underPly)
	k.row("the binding", k.half(3), 9, -3, through...)
	marks(zero, 3)

	k.stage("pressed", lies+"The binding is pressed to the right.")
	k.upper(fold(k.from(left, 0).to(k.half(-1)), k.t, 4), section.Hidden, section.Right)
	k.under(k.from(k.t.Add(s.Width).Add(k.run), 0).to(k.half(1)).level(3).to(k.t.Add(s.Trim)), section.Hidden, section.Left)
	k.level("the seam", 5, upperPly, underPly)
	k.row("the binding", k.half(5), 11, 1, through...)
	marks(k.t, 4)
}
