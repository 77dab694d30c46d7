package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A French is a seam with two passes, the raw edges shut inside the second. It takes both from
// each ply.
type French struct {
	Allowance
	// First is the first pass, from the raw edges as cut, which lie together. May be
	// omitted, as second may; the default is the pair of passes printed for the allowance
	// cut, or one that goes with the other pass; where none is printed, half the
	// allowance each, or beside a pass that is given 3/8 in (9 mm) for the first and
	// 1/4 in (6 mm) for the second.
	First units.Length `json:"first,omitzero"`
	// Second is the second pass, from the fold: the width of the ridge. May be omitted;
	// the default is as first says.
	Second units.Length `json:"second,omitzero"`
	// Trim is what is left of both allowances beyond the first pass before the second is
	// sewn. May be omitted; the default is what is printed with the passes, or 1/8 in
	// (3 mm), but no more than first.
	Trim units.Length `json:"trim,omitzero"`
}

// Plan works the seam out.
func (s French) Plan() (Plan, error) { return plan(s) }

// Taking widens the first pass, so that the ridge stays, or narrows the second, so that
// enough is caught; where that cannot be, it changes the other, or takes halves.
func (s French) Taking(each units.Length) (Seam, bool) {
	is := s
	if p, err := s.Plan(); err == nil {
		is = p.Spec.Seam.(French)
	}
	passes := [...][2]units.Length{{each.Sub(is.Second), is.Second}, {is.First, each.Sub(is.First)}, {each.DivInt(2), each.DivInt(2)}}
	if each.Less(is.First.Add(is.Second)) {
		passes[0], passes[1] = passes[1], passes[0]
	}
	var tries []Seam
	for _, pass := range passes {
		s.First, s.Second = pass[0], pass[1]
		untrimmed := s
		untrimmed.Trim = units.Length{}
		tries = append(tries, s, untrimmed)
	}
	return taking(each, tries...)
}

func (s *French) solve(v *solver) {
	usual := usualTrim.on(s.Tape)
	if s.First.IsZero() || s.Second.IsZero() {
		row := printedFrench(s.Cut, s.First, s.Second)
		switch equal := s.Cut == s.CutUnder; {
		case equal && !row.First.IsZero():
			s.First, s.Second = row.First, row.Second
			if !row.Trim.IsZero() {
				usual = row.Trim
			}
		case !s.First.IsZero():
			s.Second = usualSecond.on(s.Tape)
		case !s.Second.IsZero():
			s.First = usualFirst.on(s.Tape)
		case !equal:
			v.missing("first")
			return
		default:
			s.First, s.Second = s.Cut.DivInt(2), s.Cut.DivInt(2)
		}
	}
	v.upper, v.under = s.First.Add(s.Second), s.First.Add(s.Second)
	if low := narrowest.on(s.Tape); s.Second.Cmp(low) <= 0 {
		v.audit.Fault("second", s.Second.String(), "more than {0} (the trimmed edges must fit inside)", fault.Range, low)
	}
	v.trimmed(&s.Trim, s.First, usual)
	// The first pass lies inside the fold, by as much as the cloth is thick.
	room := s.Second.Sub(s.Trim)
	if v.hides(s.Trim, s.Second, "second"); room.Sign() > 0 && !s.Thickness.IsZero() && !s.Thickness.Less(room) {
		v.audit.Fault("thickness", s.Thickness.String(), "less than {0} (second less trim)", ErrHidden, room)
	}
}

// inside is how far the trimmed edges lie from the second pass.
func (s French) inside() units.Length { return s.Second.Sub(s.Trim).Sub(s.Thickness) }

func (s French) answer(p *Plan) {
	p.Finished, p.Plies = s.Second, 5
	most := s.Second.Sub(clearance.on(s.Tape)).Sub(s.Thickness).Min(s.First)
	p.trim(s.Second.Add(s.Trim), s.least(s.First, s.Trim), most)
	if t := s.Thickness; !t.IsZero() { // the first pass lies where the half round begins, and is measured flat
		p.Turn = round(t, 0).Plus(standsOut(t, 0).Neg())
		p.TurnUnder = p.Turn
	}
}

func (s French) sheet(p Plan, sh *ticket.Sheet) {
	p.begin(sh, eachTakes(p.Upper.Taken, plus(s.First, "first pass"), plus(s.Second, "second pass")))
	clear := line("clear inside the ridge", s.inside(), plus(s.Second, "second pass"), minus(s.Trim, "left after trimming"))
	if !s.Thickness.IsZero() {
		clear.Terms = append(clear.Terms, minus(s.Thickness, "the fold, outside the first pass"))
	}
	sh.Lines = append(sh.Lines, clear)
	p.turnLines(sh)
	second := ticket.Step{
		Do: "Stitch the second pass", Together: ticket.RightTogether, At: ticket.Long(s.Second), From: "the fold",
		Note:  "the trimmed edges must lie wholly inside",
		Check: p.check("across the ridge", s.Second, "unpick the second pass and sew it again, wider where threads show through"),
	}
	sh.Steps = append(sh.Steps,
		p.first("Stitch the first pass", ticket.WrongTogether, s.First),
		ticket.Step{Do: "Press the first pass", Press: "flat as sewn, then open"},
		trimStep("Trim both allowances just before the second pass", s.Trim, s.First),
		ticket.Step{Do: "Fold the plies back along the stitching", Together: ticket.RightTogether, Press: "with the stitching exactly on the fold"},
		second,
		ticket.Step{Do: "Press the ridge", Press: "to the back", Note: "where two ridges meet press them opposite ways"})
	p.tight(sh, "second pass", s.inside(), s.First)
	sh.Sources = append(sh.Sources,
		source.Cite{For: "trim before the second pass", ID: "extension-french-seam-sheet", Known: source.Read},
		source.Practise("the clearance inside the second pass"))
	if p.assumes("first") && p.assumes("second") && s.First == s.Second {
		sh.Sources = append(sh.Sources, source.Cite{For: "half of the allowance for each pass", ID: "seam-finishing-methods", Known: source.Read})
	}
	for i := range enclosed {
		r := &enclosed[i]
		if r.Seam != "french" || r.First.IsZero() || r.Second.IsZero() || !r.FirstMost.IsZero() || r.First.Add(r.Second) != p.Upper.Taken {
			continue
		}
		c := source.Cite{For: "passes as here", ID: r.Source, Place: r.Place, Known: r.Known}
		if r.First != s.First {
			c.For = "other passes that come to the same"
		}
		sh.Sources = append(sh.Sources, c)
	}
}

func (s French) size(Plan) size {
	return size{
		ply: s.First.Max(s.Second), wide: s.Second.Max(s.Trim), needs: []need{
			fromRaw("first", s.First),
			{"trim", s.Trim, "from the seam to the trimmed edge", s.Trim, 3},
			{"trim", s.Trim, "between the trimmed edges and the second pass", s.Second.Sub(s.Trim), 4},
		},
	}
}

// draw draws the two passes of the seam and the ridge pressed over. The first pass lies
// inside the fold, whose face is the width of the ridge from the second.
func (s French) draw(k *sketch) {
	k.sewn("first pass", s.First, true)
	k.last().Stitches[0].Name = "first pass"
	fold, first := s.Second.Sub(k.h), s.Second.Sub(k.t)
	raw := first.Sub(s.Trim)

	k.stage("second pass", "Right sides together, the first pass at the fold, the trimmed edges inside.")
	left := k.run.Neg()
	k.upper(k.from(left, 2).to(k.t.Neg()).level(3).to(fold).level(2).to(raw), section.Hidden, section.Right)
	k.under(k.from(left, 1).to(k.t.Neg()).level(0).to(fold).level(1).to(raw), section.Hidden, section.Left)
	k.row("first pass", first, 5, 1, upperPly, underPly)
	k.row("second pass", k.half(0), 9, -3, upperPly, underPly)
	k.mark("trimmed to", section.Below, raw, first, 2, s.Trim)
	k.mark("second pass from the fold", section.Below, k.half(0), s.Second, 0, s.Second)

	k.stage("pressed", lies+"The ridge is pressed to the right.")
	k.upper(k.from(left, 0).to(k.half(-1)).level(4).to(fold).level(3).to(raw), section.Hidden, section.Right)
	k.under(k.from(s.Second.Add(k.run), 0).to(k.half(1)).level(1).to(fold).level(2).to(raw), section.Hidden, section.Left)
	k.row("first pass", first, 7, 3, upperPly, underPly)
	k.level("second pass", 5, upperPly, underPly)
	k.mark("trimmed to", section.Below, raw, first, 4, s.Trim)
	k.mark("ridge", section.Above, k.half(0), s.Second, 8, s.Second)
}
