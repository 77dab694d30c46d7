package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A TurnedStitched is a plain seam pressed open, the edge of each allowance turned
// under and stitched. Trim is width and turned.
type TurnedStitched struct {
	Allowance
	// First is the row that makes the seam, from the raw edges as cut. May be omitted;
	// the default is cut.
	First units.Length `json:"first,omitzero"`
	// Trim is what is left of both allowances before their edges are turned. May be
	// omitted; the default is width and turned where both are given, else first.
	Trim units.Length `json:"trim,omitzero"`
	// Width is that of each finished allowance, from the seam to the fold. May be
	// omitted; the default is trim less turned.
	Width units.Length `json:"width,omitzero"`
	// Turned is what is turned under of each allowance, from the fold to the raw edge. May
	// be omitted; the default is trim less width, or 1/4 in (3 mm), but no more than half
	// of trim.
	Turned units.Length `json:"turned,omitzero"`
}

// A MockFrench is a plain seam, the edges of both allowances turned in towards each
// other and stitched together. Trim is width and turned.
type MockFrench struct {
	Allowance
	// First is the row that makes the seam, from the raw edges as cut. May be omitted;
	// the default is cut.
	First units.Length `json:"first,omitzero"`
	// Trim is what is left of both allowances before their edges are turned. May be
	// omitted; the default is width and turned where both are given, else first.
	Trim units.Length `json:"trim,omitzero"`
	// Width is that of the ridge, from the seam to the folds. May be omitted; the default
	// is trim less turned.
	Width units.Length `json:"width,omitzero"`
	// Turned is what is turned in of each allowance, from the fold to the raw edge. May be
	// omitted; the default is trim less width, or half of trim.
	Turned units.Length `json:"turned,omitzero"`
}

// Plan works the seam out.
func (s TurnedStitched) Plan() (Plan, error) { return plan(s) }

// Plan works the seam out.
func (s MockFrench) Plan() (Plan, error) { return plan(s) }

// Taking moves the row, and keeps the width where it can.
func (s TurnedStitched) Taking(each units.Length) (Seam, bool) {
	s.First = each
	whole := s
	whole.Trim = units.Length{}
	return taking(each, s, whole,
		TurnedStitched{Allowance: s.Allowance, First: each, Width: s.Width}, TurnedStitched{Allowance: s.Allowance, First: each, Turned: s.Turned},
		TurnedStitched{Allowance: s.Allowance, First: each})
}

// Taking moves the row, and keeps the width where it can.
func (s MockFrench) Taking(each units.Length) (Seam, bool) {
	s.First = each
	whole := s
	whole.Trim = units.Length{}
	return taking(each, s, whole,
		MockFrench{Allowance: s.Allowance, First: each, Width: s.Width}, MockFrench{Allowance: s.Allowance, First: each, Turned: s.Turned},
		MockFrench{Allowance: s.Allowance, First: each})
}

func (s *TurnedStitched) solve(v *solver) { v.turned(s, usualTurned.on(s.Tape)) }

func (s *MockFrench) solve(v *solver) { v.turned((*TurnedStitched)(s), units.Length{}) }

// turned solves both. What is turned is by default as much as is usual, or half of what
// is left of the allowance, where nothing is usual or that is less.
func (v *solver) turned(s *TurnedStitched, usual units.Length) {
	v.follows(&s.Trim, s.Width, 1, s.Turned, "trim")
	if !v.row(&s.First) {
		return
	}
	v.trimmed(&s.Trim, s.First, s.First)
	if s.Width.IsZero() {
		half := s.Trim.DivInt(2)
		if usual.IsZero() {
			usual = half
		}
		fill(&s.Turned, usual.Min(half))
	}
	v.fold(&s.Width, &s.Turned, s.Trim, "trim")
}

func (s TurnedStitched) answer(p *Plan) {
	p.Finished, p.Turned, p.Plies = s.Width, s.Turned, 3
	p.trim(s.Trim, s.Turned.MulInt(2), s.First)
}

func (s MockFrench) answer(p *Plan) {
	TurnedStitched(s).answer(p)
	p.Plies = 5
}

// begin is the work of both until the edges are turned.
func (s TurnedStitched) begin(p Plan, sh *ticket.Sheet) {
	p.begin(sh, rowTakes(s.First))
	sh.Lines = append(sh.Lines, line("left of each allowance, from seam to fold", s.Width, plus(s.Trim, "allowance"), minus(s.Turned, "turned in")))
	sh.Steps = append(sh.Steps, p.first("Stitch the seam", ticket.RightTogether, s.First))
	trimmed(sh, "Trim both allowances", s.Trim, s.First)
	sh.Sources = append(sh.Sources, source.Practise("a turned edge no wider than what is left beside it"))
	p.printed(sh, EnclosedRow{First: s.First, Second: s.Width, Trim: s.Trim, Turn: s.Turned})
}

// fold is the step that turns the edges.
func (s TurnedStitched) fold(p Plan, do, check string) ticket.Step {
	return ticket.Step{
		Do: do, At: ticket.Long(s.Turned), From: "the raw edge", Press: "the fold sharp",
		Check: p.check(check, s.Width, "press the fold again where it wanders"),
	}
}

func (s TurnedStitched) sheet(p Plan, sh *ticket.Sheet) {
	s.begin(p, sh)
	sh.Steps = append(sh.Steps,
		ticket.Step{Do: "Press the seam", Press: "flat as sewn, then open"},
		s.fold(p, "Turn each raw edge under, towards the garment", "from the seam to the fold on each side"),
		ticket.Step{Do: "Stitch close to each fold", Note: "through the allowance only"})
}

func (s MockFrench) sheet(p Plan, sh *ticket.Sheet) {
	t := TurnedStitched(s)
	t.begin(p, sh)
	sh.Steps = append(sh.Steps,
		t.fold(p, "Turn in the edges of both allowances towards each other", "from the seam to the folds"),
		ticket.Step{Do: "Stitch the two folds together, close to them", Note: "through the allowances only"},
		ticket.Step{Do: "Press the ridge", Press: "to the back", Note: "where two ridges meet press them opposite ways"})
}

func (s TurnedStitched) size(Plan) size {
	return size{ply: s.First, wide: s.Trim, needs: []need{fromRaw("first", s.First), turnNeed(s.Turned)}}
}

func (s MockFrench) size(p Plan) size {
	out := TurnedStitched(s).size(p)
	out.needs = append(out.needs, need{"width", s.Width, "from the seam to the folds", s.Width, 5})
	return out
}

// draw measures each allowance from the inside of its turn, which the turned edge may
// touch.
func (s TurnedStitched) draw(k *sketch) {
	k.sewn("sewn", s.First, false)
	k.stage("edges turned and stitched", lies+"The allowances are pressed open, the edge of each is turned under. They are measured from the inside of the turn at the seam.")
	fold := k.t.Add(s.Width)
	raw, row := fold.Sub(s.Turned), fold.Sub(k.half(3))
	far := fold.Add(k.run)
	k.upper(k.from(far.Neg(), 0).to(k.half(-1)).level(2).to(fold.Sub(k.h).Neg()).level(1).to(raw.Neg()), section.Hidden, section.Right)
	k.under(k.from(far, 0).to(k.half(1)).level(2).to(fold.Sub(k.h)).level(1).to(raw), section.Hidden, section.Left)
	k.level("the seam", 5, upperPly, underPly)
	k.row("left edge", row.Neg(), 6, 1, upperPly, upperPly)
	k.row("right edge", row, 6, 1, underPly, underPly)
	k.mark("left, from seam to fold", section.Above, k.t.Neg(), fold.Neg(), 4, s.Width)
	k.mark("right, from seam to fold", section.Above, k.t, fold, 4, s.Width)
	k.mark("left, turned in", section.Below, raw.Neg(), fold.Neg(), 2, s.Turned)
	k.mark("right, turned in", section.Below, raw, fold, 2, s.Turned)
}

// draw draws the ridge as it is stitched, and pressed over.
func (s MockFrench) draw(k *sketch) {
	k.sewn("sewn", s.First, false)
	fold, raw, row := s.Width.Sub(k.h), s.Width.Sub(s.Turned), s.Width.Sub(k.half(3))
	left := k.run.Neg()
	marks := func(height int64) {
		k.mark("turned in", section.Below, raw, s.Width, height, s.Turned)
		k.mark("from seam to folds", section.Above, k.half(0), s.Width, height+2, s.Width)
	}

	// The turned edges may reach the seam: the plies part right beside its row.
	k.stage("edges turned in and stitched", "Right sides together, the edges of both allowances turned in towards each other. They are measured from where the plies part beside the seam.")
	k.upper(k.from(left, 2).to(k.half(-1)).level(3).to(fold).level(2).to(raw), section.Hidden, section.Right)
	k.under(k.from(left, 1).to(k.half(-1)).level(0).to(fold).level(1).to(raw), section.Hidden, section.Left)
	k.row("the seam", k.half(-3), 7, -1, upperPly, underPly)
	k.row("the folds", row, 9, -3, upperPly, upperPly, underPly, underPly)
	marks(4)

	k.stage("pressed", lies+"The ridge is pressed to the right.")
	k.upper(k.from(left, 0).to(k.half(-1)).level(4).to(fold).level(3).to(raw), section.Hidden, section.Right)
	k.under(k.from(s.Width.Add(k.run), 0).to(k.half(1)).level(1).to(fold).level(2).to(raw), section.Hidden, section.Left)
	k.level("the seam", 5, upperPly, underPly)
	k.row("the folds", row, 11, 1, upperPly, upperPly, underPly, underPly)
	marks(6)
}
