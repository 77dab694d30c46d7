package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Lapped is a seam with the upper allowance turned under, laid over the under one and
// stitched from outside.
type Lapped struct {
	Allowance
	// Turned is what is turned under of the upper ply, from its raw edge to the fold. May
	// be omitted; the default is cut.
	Turned units.Length `json:"turned,omitzero"`
	// Lap is how far the under ply reaches under the upper one, from its raw edge to the
	// fold. May be omitted; the default is cutUnder.
	Lap units.Length `json:"lap,omitzero"`
	// Row is the row, from the fold. May be omitted; the default is 1/8 in (3 mm), the
	// widest edge-stitch, but no more than half of turned and of lap.
	Row units.Length `json:"row,omitzero"`
}

// Plan works the seam out.
func (s Lapped) Plan() (Plan, error) { return plan(s) }

// Taking turns and laps so much.
func (s Lapped) Taking(each units.Length) (Seam, bool) {
	s.Turned, s.Lap = each, each
	usual := s
	usual.Row = units.Length{}
	return taking(each, s, usual)
}

func (s *Lapped) solve(v *solver) {
	fill(&s.Turned, s.Cut)
	fill(&s.Lap, s.CutUnder)
	v.upper, v.under = s.Turned, s.Lap
	narrow, name := s.Turned, "turned"
	if s.Lap.Less(narrow) {
		narrow, name = s.Lap, "lap"
	}
	fill(&s.Row, edgeStitch.on(s.Tape).Min(narrow.DivInt(2)))
	if !s.Row.Less(narrow) {
		v.audit.Fault("row", s.Row.String(), "less than {0} ("+name+"), to catch both allowances", fault.Range, narrow)
		return
	}
	// The fold takes half round of what is turned under, and stands out.
	v.thin(round(s.Thickness, 0).Plus(s.Thickness.Neg()), s.Turned.Sub(s.Row), "the turned edge must reach past the row")
}

func (s Lapped) answer(p *Plan) {
	p.Finished, p.Turned, p.Plies, p.Rows, p.Raw = s.Lap, s.Turned, 3, 1, true
	low := s.Row.Add(s.leastTrim())
	p.Upper.trim(s.Turned, low.Min(s.Turned), s.Turned)
	p.Under.trim(s.Lap, low.Min(s.Lap), s.Lap)
	p.Turn = lapTurn(s.Thickness)
}

// lapTurn is what the fold of a lapped edge takes: both what is turned in and the lap are
// measured from it.
func lapTurn(t units.Length) units.Near {
	if t.IsZero() {
		return units.Near{}
	}
	return round(t, 0).Plus(standsOut(t, 0).MulInt(-2))
}

func (s Lapped) sheet(p Plan, sh *ticket.Sheet) {
	p.begin(sh,
		line("taken from the upper ply", s.Turned, plus(s.Turned, "turned under")),
		line("taken from the under ply", s.Lap, plus(s.Lap, "from its raw edge to the fold")))
	sh.Lines = append(sh.Lines, line("caught beyond the row, under ply", s.Lap.Sub(s.Row), plus(s.Lap, "lap"), minus(s.Row, "row")))
	p.turnLines(sh)
	sh.Steps = append(sh.Steps,
		ticket.Step{Do: "Turn the upper allowance under", At: ticket.Long(s.Turned), From: "the raw edge of the upper ply", Press: "the fold sharp"},
		ticket.Step{
			Do: "Lay the upper fold on the under ply", Together: ticket.WrongOnRight, At: ticket.Long(s.Lap), From: "the raw edge of the under ply",
			Check: p.check("from the fold to the raw edge beneath", s.Lap, "pin again; a thread marked on the under ply keeps it true"),
		},
		ticket.Step{Do: "Stitch from the right side", At: ticket.Long(s.Row), From: "the fold"},
		ticket.Step{Do: "Press the seam", Press: "from the wrong side"})
	p.finish(sh, 0, units.Length{})
	if p.assumes("row") {
		sh.Sources = append(sh.Sources, source.Cite{For: "the row along the fold", ID: "edge-stitch-note", Known: source.Read})
	}
	sh.Sources = append(sh.Sources, source.Practise("the fold laid on the stitching line of the under ply"))
	p.printed(sh, EnclosedRow{First: s.Turned, Second: s.Lap, Turn: s.Turned})
}

func (s Lapped) size(Plan) size {
	wide := s.Turned.Max(s.Lap)
	return size{ply: wide, wide: wide, needs: []need{
		{"turned", s.Turned, "turned under", s.Turned, 4},
		{"row", s.Row, "from the fold to the row", s.Row, 3},
		{"row", s.Row, "between the row and the turned edge", s.Turned.Sub(s.Row), 2},
		{"row", s.Row, "between the row and the edge beneath", s.Lap.Sub(s.Row), 2},
	}}
}

// laps says how the plies of a lapped seam lie.
const laps = "The garment lies right side up, the upper ply on the left. "

// draw has the fold at 0; the two plies keep their levels beyond the lap.
func (s Lapped) draw(k *sketch) {
	k.stage("stitched", laps+"Its turned edge is laid over the edge of the under ply.")
	left := s.Turned.Max(s.Lap).Add(k.run).Neg()
	k.upper(k.from(left, 2).to(k.half(-1)).level(1).to(s.Turned.Neg()), section.Raw, section.Left)
	k.under(k.from(k.run, 0).to(s.Lap.Neg()), section.Raw, section.Right)
	k.row("from the right side", s.Row.Neg(), 7, -3, upperPly, upperPly, underPly)
	k.mark("turned under", section.Below, s.Turned.Neg(), k.half(0), 2, s.Turned)
	k.mark("from the edge beneath to the fold", section.Below, s.Lap.Neg(), k.half(0), 0, s.Lap)
	k.mark("row from the fold", section.Above, s.Row.Neg(), k.half(0), 4, s.Row)
}

// A LappedTurned is a seam with both edges turned, one lapped over the other, and a row along
// each fold. It takes turned and half of lap from each ply.
type LappedTurned struct {
	Allowance
	// Lap is the lap, from fold to fold. May be omitted; the default is what turned leaves
	// of both allowances cut, or 1/2 in (1.2 cm) where that hides the turned edges and
	// leaves something to turn, else cut.
	Lap units.Length `json:"lap,omitzero"`
	// Turned is what is turned of each edge, from the fold to the raw edge. May be
	// omitted; the default is cut less half of lap.
	Turned units.Length `json:"turned,omitzero"`
}

// Plan works the seam out.
func (s LappedTurned) Plan() (Plan, error) { return plan(s) }

// Taking keeps the lap, or what is turned, or laps as much as is usual.
func (s LappedTurned) Taking(each units.Length) (Seam, bool) {
	usual := s.usualLap(each)
	return taking(each,
		LappedTurned{s.Allowance, s.Lap, each.Sub(s.Lap.DivInt(2))},
		LappedTurned{s.Allowance, each.Sub(s.Turned).MulInt(2), s.Turned},
		LappedTurned{s.Allowance, usual, each.Sub(usual.DivInt(2))},
		LappedTurned{s.Allowance, each, each.DivInt(2)})
}

func (s *LappedTurned) solve(v *solver) {
	path, value := "turned", s.Turned
	all := s.Cut.MulInt(2)
	limit, most, least := "less than {0} (lap)", s.Lap, units.Length{}
	if s.Lap.IsZero() || s.Turned.IsZero() {
		if s.Cut != s.CutUnder {
			if s.Turned.IsZero() {
				v.missing("turned")
			} else {
				v.missing("lap")
			}
			return
		}
		limit, most = "less than {0} (two thirds of cut)", all.Scale(units.RatioOf(1, 3))
		if s.Turned.IsZero() {
			limit, most, least = "more than {1} and less than {0} (two thirds of cut, and twice cut)", all, most
			fill(&s.Lap, s.usualLap(s.Cut))
			path, value = "lap", s.Lap
			s.Turned = s.Cut.Sub(s.Lap.DivInt(2))
		} else {
			s.Lap = s.Cut.Sub(s.Turned).MulInt(2)
		}
	}
	v.upper = s.Turned.Add(s.Lap.DivInt(2))
	v.under = v.upper
	if s.Turned.Sign() > 0 && s.Turned.Less(s.Lap) {
		v.thin(round(s.Thickness, 0), s.Turned, "the fold must leave an edge turned")
		return
	}
	v.audit.Fault(path, value.String(), limit, ErrHidden, most, least)
}

// usualLap is the usual one where that hides the turned edges and leaves something to
// turn, else as much as is taken.
func (s LappedTurned) usualLap(take units.Length) units.Length {
	if lap := usualLap.on(s.Tape); lap.Less(take.MulInt(2)) && take.MulInt(2).Less(lap.MulInt(3)) {
		return lap
	}
	return take
}

func (s LappedTurned) answer(p *Plan) {
	p.Finished, p.Turned, p.Plies, p.Rows = s.Lap, s.Turned, 3, 2
	if !s.Turned.MulInt(2).Less(s.Lap) {
		p.Plies = 4
	}
	low := s.least(p.Upper.Taken, units.Length{}).Min(s.Turned)
	most := s.Lap.Sub(clearance.on(s.Tape))
	p.trim(p.Upper.Taken, low, most)
	p.Turn = lapTurn(s.Thickness)
	p.TurnUnder = p.Turn
}

func (s LappedTurned) sheet(p Plan, sh *ticket.Sheet) {
	p.begin(sh, halfLapTakes(s.Lap, plus(s.Turned, "turned")))
	sh.Lines = append(sh.Lines,
		line("cloth that the pair takes", p.Upper.Taken.MulInt(2), plus(s.Lap, "lap"), plus(s.Turned, "turned under"), plus(s.Turned, "turned up")))
	p.turnLines(sh)
	sh.Steps = append(sh.Steps,
		ticket.Step{Do: "Turn the upper edge to the wrong side", At: ticket.Long(s.Turned), From: "the raw edge of the upper ply", Press: "the fold sharp"},
		ticket.Step{Do: "Turn the under edge to the right side", At: ticket.Long(s.Turned), From: "the raw edge of the under ply", Press: "the fold sharp"},
		p.lapStep(s.Lap, "fold to fold"),
		ticket.Step{Do: "Stitch a row close to each fold", Note: "the one beneath from the wrong side"},
		ticket.Step{Do: "Press the seam", Press: "from the wrong side"})
	p.printed(sh, EnclosedRow{First: p.Upper.Taken, Second: s.Lap, Turn: s.Turned})
}

// halfLapTakes is the line of what a lap of two edges alike takes from each ply.
func halfLapTakes(lap units.Length, more ...ticket.Term) ticket.Line {
	take := lap.DivInt(2)
	for _, t := range more {
		l, _ := t.Amount.Near().Exact()
		take = take.Add(l)
	}
	terms := append([]ticket.Term{plus(lap, "lap"), {Op: ticket.Over, Amount: ticket.Of(2)}}, more...)
	return eachTakes(take, terms...)
}

// lapStep laps two edges that are alike.
func (p Plan) lapStep(lap units.Length, from string) ticket.Step {
	return ticket.Step{
		Do: "Lap the upper ply over the under one", Together: ticket.WrongOnRight, At: ticket.Long(lap), From: from,
		Check: p.check("across the lap", lap, "pin again; a line of chalk on the under ply keeps it true"),
	}
}

func (s LappedTurned) size(Plan) size {
	return size{ply: s.Lap.Max(s.Turned.Add(s.Lap.DivInt(2))), wide: s.Lap, needs: []need{
		turnNeed(s.Turned),
		{"turned", s.Turned, "between the turned edge and the other fold", s.Lap.Sub(s.Turned), 4},
	}}
}

// draw has the middle of the lap at 0. The turned edges lie end to end where there is
// room for both.
func (s LappedTurned) draw(k *sketch) {
	k.stage("stitched", laps+"Both edges are turned, and the folds lapped over each other.")
	top, in := k.tops()
	lap := s.Lap.DivInt(2)
	fold, raw, row := lap.Sub(k.h), lap.Sub(s.Turned), lap.Sub(k.half(3))
	far := lap.Add(k.run)
	k.upper(k.from(far.Neg(), top).to(fold).level(in).to(raw), section.Hidden, section.Left)
	k.under(k.from(far, 0).to(fold.Neg()).level(1).to(raw.Neg()), section.Hidden, section.Right)
	high := int64(2*top + 3)
	k.row("under fold", row.Neg(), high, -3, upperPly, underPly, underPly)
	k.row("upper fold", row, high, -3, upperPly, upperPly, underPly)
	k.mark("turned up", section.Below, lap.Neg(), raw.Neg(), 2, s.Turned)
	k.mark("turned under", section.Below, raw, lap, int64(2*in), s.Turned)
	k.mark("lap", section.Above, lap.Neg(), lap, int64(2*top), s.Lap)
}

// A LappedRaw is a seam with its raw edges lapped, and a row along each. It takes half of the
// lap from each ply.
type LappedRaw struct {
	Allowance
	// Lap is the lap, from raw edge to raw edge. May be omitted; the default is twice cut.
	Lap units.Length `json:"lap,omitzero"`
}

// Plan works the seam out.
func (s LappedRaw) Plan() (Plan, error) { return plan(s) }

// Taking laps twice as much.
func (s LappedRaw) Taking(each units.Length) (Seam, bool) {
	return taking(each, LappedRaw{s.Allowance, each.MulInt(2)})
}

func (s *LappedRaw) solve(v *solver) {
	if s.Cut == s.CutUnder {
		fill(&s.Lap, s.Cut.MulInt(2))
	}
	if s.Lap.IsZero() {
		v.missing("lap")
	}
	v.upper, v.under = s.Lap.DivInt(2), s.Lap.DivInt(2)
}

func (s LappedRaw) answer(p *Plan) {
	p.Finished, p.Plies, p.Rows, p.Raw = s.Lap, 2, 2, true
}

func (s LappedRaw) sheet(p Plan, sh *ticket.Sheet) {
	p.begin(sh, halfLapTakes(s.Lap))
	sh.Steps = append(sh.Steps,
		p.lapStep(s.Lap, "raw edge to raw edge"),
		ticket.Step{Do: "Stitch close to the upper raw edge, and again close to the edge beneath"},
		ticket.Step{Do: "Press the seam", Press: "from the wrong side"})
	p.finish(sh, 0, units.Length{})
	if p.Gain.Sign() > 0 {
		sh.Cautions = append(sh.Cautions, ticket.Caution{
			Text:  "A lap narrower than both allowances together leaves the garment bigger, unless the edges are cut back first.",
			Refer: "the working above says by how much",
		})
	}
	p.printed(sh, EnclosedRow{First: p.Upper.Taken, Second: s.Lap})
}

func (s LappedRaw) size(Plan) size {
	return size{ply: s.Lap, wide: s.Lap, needs: []need{{"lap", s.Lap, "across the lap", s.Lap, 8}}}
}

// draw has the middle of the lap at 0.
func (s LappedRaw) draw(k *sketch) {
	k.stage("stitched", laps+"Its raw edge is laid over that of the under ply.")
	lap := s.Lap.DivInt(2)
	far, row := lap.Add(k.run), lap.Sub(k.half(3))
	k.upper(k.from(far.Neg(), 1).to(lap), section.Raw, section.Left)
	k.under(k.from(far, 0).to(lap.Neg()), section.Raw, section.Right)
	k.row("edge beneath", row.Neg(), 5, -3, upperPly, underPly)
	k.row("upper edge", row, 5, -3, upperPly, underPly)
	k.mark("lap", section.Above, lap.Neg(), lap, 2, s.Lap)
}
