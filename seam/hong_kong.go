package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// hongKong solves the seam whose allowances are each bound flat.
func (v *solver) hongKong() {
	if !v.single() {
		return
	}
	v.trimmed(v.First)
	roomy := !v.Trim.Less(inch(1, 2))
	usual := v.Trim.DivInt(2)
	if roomy {
		usual = usualBinding()
	}
	v.fill(&v.Second, fieldSecond, usual)
	if !v.Second.Less(v.Trim) {
		v.audit.Fault("second", v.Second.String(), "less than "+v.Trim.String()+" (what is left of the allowance to bind)", fault.Range)
		return
	}
	low := hongKongLeast(v.Spec)
	strip := v.Trim.Add(v.Second.MulInt(2)).Add(v.Thickness) // its under edge lies along the seam
	if one := units.Inch.Of(1); roomy && v.Second == usualBinding() && low.Less(one) {
		strip = one
	}
	v.fill(&v.Strip, fieldStrip, strip)
	if !low.Less(v.Strip) {
		v.audit.Fault("strip", v.Strip.String(), "more than "+low.String()+" (for its under edge to be caught)", ErrHidden)
	}
}

// hongKongLeast is the strip whose under edge would only just reach the stitching.
func hongKongLeast(s Spec) units.Length { return s.Second.MulInt(3).Add(s.Thickness) }

func (p *Plan) hongKong() {
	s := p.Spec
	p.Finished = s.Second
	p.Plies = 5
	p.StripLeast = hongKongLeast(s)
	p.Wrapped = s.Strip.Sub(s.Second.MulInt(2)).Sub(s.Thickness)
	p.Upper.bounds(s.Second, s.First)
	p.Under.bounds(s.Second, s.First)
}

func (p Plan) hongKongSheet(sh *ticket.Sheet) {
	s := p.Spec
	wrapped := line("left of the strip on the under face", p.Wrapped, plus(s.Strip, "strip"), minus(s.Second, "seam of the strip"), minus(s.Second, "over the edge"))
	if !s.Thickness.IsZero() {
		wrapped.Terms = append(wrapped.Terms, minus(s.Thickness, "round the cloth"))
	}
	sh.Lines = append(sh.Lines, wrapped, line("and caught by", p.Wrapped.Sub(s.Second), plus(p.Wrapped, "under face"), minus(s.Second, "finished")))
	sh.Steps = append(sh.Steps, p.first("Stitch the seam", ticket.RightTogether))
	if s.Trim != s.First {
		sh.Steps = append(sh.Steps, p.trimStep("Trim both allowances"))
	}
	sh.Steps = append(sh.Steps,
		ticket.Step{Do: "Press the seam", Press: "flat as sewn, then open"},
		ticket.Step{Do: "Cut a strip for each allowance", At: ticket.Long(s.Strip), From: "edge to edge", Note: "on the bias; a bias strip narrows as it stretches, so cut it full"},
		ticket.Step{Do: "Stitch a strip to each allowance", Together: ticket.RightTogether, At: ticket.Long(s.Second), From: "the raw edges"},
		ticket.Step{
			Do: "Wrap the strip over the raw edge and stitch in the ditch beside it", Note: "its under edge is left raw if it is bias",
			Check: ticket.Check{
				What: "across the binding, on the upper face", Want: ticket.Long(s.Second), Give: ticket.Long(straightness()),
				Mend: "unpick the last row, trim the raw edges level and wrap the strip again",
			},
		},
		ticket.Step{Do: "Press the seam again", Press: "open"})
	if s.Trim.Less(p.Wrapped) {
		last := &sh.Steps[len(sh.Steps)-1]
		last.Do = "Trim the under edge of the strip beside the last row, and press the seam again"
		last.Note = "left whole it would reach past the seam"
	}
	sh.Sources = append(sh.Sources, source.Practise("the under edge of the strip caught by the last row"))
	p.printed(sh)
}

// selfBound solves First = Turned + 2 Second: the wide allowance is folded to the
// trimmed edge and then to the seam.
func (v *solver) selfBound() {
	if v.First.IsZero() && v.Take.IsZero() && !v.Second.IsZero() && !v.Turned.IsZero() {
		v.First = v.Turned.Add(v.Second.MulInt(2))
	}
	if !v.single() {
		return
	}
	least := leastTrim(v.Fraying)
	usual := usualTrim().Min(v.First.DivInt(4)).Max(least)
	path, value := "turned", v.Turned
	switch {
	case v.Second.IsZero() && v.Turned.IsZero():
		if v.Trim.IsZero() && v.First.Cmp(least.MulInt(3)) <= 0 {
			v.audit.Fault("first", v.First.String(), "more than "+least.MulInt(3).String()+" (three times "+least.String()+leastOfUnder+")", ErrHidden)
			return
		}
		v.fill(&v.Trim, fieldTrim, usual)
		v.fill(&v.Turned, fieldTurned, v.First.Sub(v.Trim).DivInt(2))
		value = v.Turned
		v.Second = v.First.Sub(v.Turned).DivInt(2)
	case v.Second.IsZero():
		v.Second = v.First.Sub(v.Turned).DivInt(2)
	case v.Turned.IsZero():
		v.Turned = v.First.Sub(v.Second.MulInt(2))
		path, value = "second", v.Second
	case v.Turned.Add(v.Second.MulInt(2)) != v.First:
		v.audit.Fault("turned", v.Turned.String(), v.First.Sub(v.Second.MulInt(2)).String()+" (first less twice second)", fault.Conflict)
		return
	}
	half := v.First.DivInt(2)
	if v.Turned.Sign() <= 0 || !v.Turned.Less(half) {
		if path == "turned" {
			v.audit.Fault(path, value.String(), "less than "+half.String()+" (half of first)", ErrFlat)
		} else {
			v.audit.Fault(path, value.String(), "more than "+half.DivInt(2).String()+" and less than "+half.String()+" (a quarter and half of first)", ErrFlat)
		}
		return
	}
	room := v.First.Sub(v.Turned.MulInt(2)) // as far as the turned edge comes back towards the seam
	if v.Trim.IsZero() && (!least.Less(v.Second) || room.Less(least)) {
		v.shutIn(path, value, least)
		return
	}
	v.trimmed(inside(usual.Min(room), v.Second).Max(least))
	v.hides(v.Second, "second")
	if room.Less(v.Trim) {
		v.audit.Fault("turned", v.Turned.String(), "at most "+v.First.Sub(v.Trim).DivInt(2).String()+" (the first fold meets the trimmed edge)", ErrFlat)
	}
}

// shutIn is the fault of a self-bound seam that does not shut in the least that must
// be left of its under ply, by what was given of it.
func (v *solver) shutIn(path string, value, least units.Length) {
	limit := ""
	switch quarter, half := v.First.Add(least).DivInt(4), v.First.Sub(least).DivInt(2); {
	case path == "second" && least.Less(quarter):
		limit = "at least " + quarter.String() + " (a quarter of first and of "
	case path == "second":
		limit = "more than " + least.String() + " ("
	case v.First.Sub(least.MulInt(2)).Cmp(half) <= 0:
		limit = "less than " + v.First.Sub(least.MulInt(2)).String() + " (first less twice "
	default:
		limit = "at most " + half.String() + " (half of first less "
	}
	v.audit.Fault(path, value.String(), limit+least.String()+leastOfUnder+")", ErrHidden)
}

// leastOfUnder names what a length is.
const leastOfUnder = ", the least of the under ply"

func (p *Plan) selfBound() {
	s := p.Spec
	p.Finished = s.Second
	p.Plies = 5
	// A first fold wider than the binding goes round the second fold and comes
	// back as far as this.
	back := s.Second.MulInt(2).Sub(s.Turned)
	if s.Second.Less(s.Turned) && !s.Trim.Less(back) {
		p.Plies = 6
	}
	p.Upper.bounds(s.First, s.First)
	p.Under.bounds(p.least(), s.Second.Sub(clearance()).Min(s.First.Sub(s.Turned.MulInt(2))))
}

func (p Plan) selfBoundSheet(sh *ticket.Sheet) {
	s := p.Spec
	sh.Lines = append(sh.Lines,
		line("the wide allowance", s.First, plus(s.Second, "binding"), plus(s.Second, "binding again"), plus(s.Turned, "first fold")),
		line("clear inside the binding", s.Second.Sub(s.Trim), plus(s.Second, "binding"), minus(s.Trim, "left of the under ply")))
	sh.Steps = append(sh.Steps,
		p.first("Stitch the seam", ticket.RightTogether),
		p.trimStep("Trim the under allowance only"),
		ticket.Step{Do: "Fold the wide allowance over, its raw edge towards the trimmed one", At: ticket.Long(s.Turned), From: "the raw edge", Press: "the fold sharp"},
		ticket.Step{
			Do: "Fold it again, the first fold onto the seam, and stitch it down beside the seam",
			Check: ticket.Check{
				What: "across the binding", Want: ticket.Long(s.Second), Give: ticket.Long(straightness()),
				Mend: "unpick, press both folds again and stitch",
			},
			Note: "through the allowances only",
		},
		ticket.Step{Do: "Press the bound seam", Press: "to the back"})
	p.tight(sh, "binding")
	sh.Sources = append(sh.Sources, source.Practise("the folds of a self-bound seam"))
	p.printed(sh)
}
