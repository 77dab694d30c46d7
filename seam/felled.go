package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A FlatFelled is a seam with one allowance trimmed, the other turned in over it and stitched
// down. First is width and turned.
type FlatFelled struct {
	Allowance
	// First is the row that makes the seam, from the raw edges as cut. May be omitted;
	// the default is width and turned where both are given, else cut.
	First units.Length `json:"first,omitzero"`
	// Width is that of the finished fell, from the seam to the fold. May be omitted; the
	// default is first less turned, or the fell that is printed for first, or half of
	// first.
	Width units.Length `json:"width,omitzero"`
	// Turned is what is turned in of the upper allowance, from the fold to the raw edge.
	// May be omitted; the default is first less width.
	Turned units.Length `json:"turned,omitzero"`
	// Trim is what is left of the under allowance. May be omitted; the default is 1/8 in
	// (3 mm), or what is printed with the fell.
	Trim units.Length `json:"trim,omitzero"`
}

// A MockFelled is a plain seam of which one allowance is trimmed and the other
// folded in round it, held by two rows of topstitching. First is width and turned.
type MockFelled struct {
	Allowance
	// First is the row that makes the seam, from the raw edges as cut. May be omitted;
	// the default is width and turned where both are given, else cut.
	First units.Length `json:"first,omitzero"`
	// Width is that of the finished fell, from the seam to the fold. May be omitted; the
	// default is first less turned, or half of first.
	Width units.Length `json:"width,omitzero"`
	// Turned is what is folded in of the upper allowance, from the fold to the raw edge.
	// May be omitted; the default is first less width.
	Turned units.Length `json:"turned,omitzero"`
	// Trim is what is left of the under allowance. May be omitted; the default is 1/8 in
	// (3 mm).
	Trim units.Length `json:"trim,omitzero"`
}

// Plan works the seam out.
func (s FlatFelled) Plan() (Plan, error) { return plan(s) }

// Plan works the seam out.
func (s MockFelled) Plan() (Plan, error) { return plan(s) }

// Taking moves the row, and keeps the width where it can.
func (s FlatFelled) Taking(each units.Length) (Seam, bool) {
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

// Taking moves the row, and keeps the width where it can.
func (s MockFelled) Taking(each units.Length) (Seam, bool) {
	t, ok := FlatFelled(s).Taking(each)
	if !ok {
		return s, false
	}
	return taking(each, MockFelled(t.(FlatFelled)))
}

func (s *FlatFelled) solve(v *solver) {
	v.follows(&s.First, s.Width, 1, s.Turned, "first")
	if !v.row(&s.First) {
		return
	}
	usual := usualTrim.on(s.Tape)
	if row := printedFell(s.First); s.Width.IsZero() && s.Turned.IsZero() && !row.Second.IsZero() {
		s.Width = row.Second
		if !row.Trim.IsZero() {
			usual = row.Trim
		}
	}
	v.fell(s, usual)
}

func (s *MockFelled) solve(v *solver) {
	v.follows(&s.First, s.Width, 1, s.Turned, "first")
	if v.row(&s.First) {
		v.fell((*FlatFelled)(s), usualTrim.on(s.Tape))
	}
}

// fell fills the fell where nothing is printed for it, and checks it.
func (v *solver) fell(s *FlatFelled, usual units.Length) {
	if s.Turned.IsZero() {
		fill(&s.Width, s.First.DivInt(2))
	}
	v.fold(&s.Width, &s.Turned, s.First, "first")
	v.trimmed(&s.Trim, s.First, usual)
	if s.Width.Sign() > 0 {
		v.hides(s.Trim, s.Width, "width")
	}
}

func (s FlatFelled) answer(p *Plan) {
	p.Finished, p.Turned, p.Plies, p.Rows = s.Width, s.Turned, 3, 2
	if !s.Trim.Add(s.Turned).Less(s.Width) {
		p.Plies = 4
	}
	p.Under.trim(s.Trim, s.least(s.First, s.Trim), s.Width.Sub(clearance.on(s.Tape)).Min(s.First))
}

func (s MockFelled) answer(p *Plan) { FlatFelled(s).answer(p) }

func (s FlatFelled) sheet(p Plan, sh *ticket.Sheet) {
	s.work(p, sh, ticket.WrongTogether, "with right sides together instead, the fell lies inside the garment", ticket.Step{
		Do: "Lay the fold flat over the trimmed edge and stitch close to it",
	})
	sh.Sources = append(sh.Sources, source.Cite{For: "trim of the under ply", ID: "clothing-construction-handbook", Known: source.Read})
	if p.assumes("width") && s.Turned == s.Width {
		sh.Sources = append(sh.Sources, source.Cite{For: "half of the allowance turned in", ID: "tablecloth-seams-thread", Known: source.Read})
	}
	for i := range enclosed {
		r := &enclosed[i]
		if r.Seam != "flat-felled" || r.First != s.First || r.Second.IsZero() || r.Second.Less(r.Turn) {
			continue
		}
		c := source.Cite{For: "fell as here", ID: r.Source, Place: r.Place, Known: r.Known}
		if r.Second != s.Width {
			c.For = "another fell from the same allowance"
		}
		sh.Sources = append(sh.Sources, c)
	}
}

func (s MockFelled) sheet(p Plan, sh *ticket.Sheet) {
	FlatFelled(s).work(p, sh, ticket.RightTogether, "", ticket.Step{
		Do: "From the right side stitch through the fold that lies beneath", Note: "then a second row close beside the seam",
	})
	p.printed(sh, EnclosedRow{First: s.First, Second: s.Width, Trim: s.Trim, Turn: s.Turned})
}

// work is the work of a fell, which row is stitched down.
func (s FlatFelled) work(p Plan, sh *ticket.Sheet, sides ticket.Sides, note string, row ticket.Step) {
	p.begin(sh, rowTakes(s.First))
	sh.Lines = append(sh.Lines,
		line("turned in on the upper ply", s.Turned, plus(s.First, "allowance"), minus(s.Width, "finished fell")),
		line("clear under the fell", s.Width.Sub(s.Trim), plus(s.Width, "finished fell"), minus(s.Trim, "left of the under ply")))
	row.At, row.From = ticket.Long(s.Width), "the seam"
	row.Check = p.check("across the fell", s.Width, "unpick this row, press the fold again and stitch from the seam as the guide")
	sh.Steps = append(sh.Steps,
		p.first("Stitch the seam", sides, s.First),
		ticket.Step{Do: "Press the seam", Press: "flat as sewn, then both allowances towards the under ply", Note: note},
		trimStep("Trim the under allowance only", s.Trim, s.First),
		ticket.Step{
			Do: "Fold in the edge of the upper allowance", At: ticket.Long(s.Turned), From: "the raw edge", Press: "the fold sharp",
			Check: p.check("from the seam to the fold", s.Width, "press the fold again; an edge turned in too deep cannot lie flat"),
		},
		row,
		ticket.Step{Do: "Press the fell", Press: "flat from both sides"})
	p.tight(sh, "fell", s.Width.Sub(s.Trim), s.First)
	sh.Sources = append(sh.Sources, source.Practise("a turned edge no wider than the fell"))
}

func (s FlatFelled) size(Plan) size {
	out := s.fellSize()
	if gap := s.Width.Sub(s.Turned); gap.Sign() > 0 {
		out.needs = append(out.needs, need{"turned", s.Turned, "between the turned edge and the seam", gap, 2})
	}
	return out
}

func (s MockFelled) size(Plan) size { return FlatFelled(s).fellSize() }

func (s FlatFelled) fellSize() size {
	return size{ply: s.First, wide: s.Width.Max(s.Trim), needs: []need{
		fromRaw("first", s.First), trimNeed(s.Trim, 4),
		{"trim", s.Trim, "between the trimmed edge and the fold", s.Width.Sub(s.Trim), 4},
		turnNeed(s.Turned),
	}}
}

// tops are the levels of the fell: the upper allowance, and its edge turned in. The
// turned edge and the trimmed one lie end to end where there is room for both.
func (k *sketch) tops() (top, turned int) {
	if k.p.Plies == 3 {
		return 2, 1
	}
	return 3, 2
}

// draw draws the garment right side up. Its first row goes through the upper ply where it
// runs on over the fell; where the turned edge comes as far as the seam the row is drawn
// half a ply outside it.
func (s FlatFelled) draw(k *sketch) {
	k.sewn("sewn", s.First, true)
	k.stage("felled", "The garment lies flat, its right side up, the upper ply on the left. Its edge is turned in over the trimmed edge of the under ply and stitched down.")
	top, turned := k.tops()
	fold, raw := s.Width.Sub(k.h), s.Width.Sub(s.Turned)
	k.upper(k.from(k.run.Neg(), 0).to(k.half(-4)).level(top).to(fold).level(turned).to(raw), section.Hidden, section.Left)
	k.under(k.from(s.Width.Add(k.run), 0).to(k.half(-2)).level(1).to(s.Trim), section.Hidden, section.Right)
	high := int64(2*top + 3)
	seam := k.half(0)
	if raw.IsZero() {
		seam = k.half(-1)
	}
	k.row("the seam", seam, high, 1, upperPly, underPly)
	k.row("the fell", s.Width.Sub(k.half(3)), high, -3, upperPly, upperPly, underPly)
	s.mark(k, raw, top, turned)
}

// mark marks the measures of a fell.
func (s FlatFelled) mark(k *sketch, raw units.Length, top, turned int) {
	k.mark("trimmed to", section.Below, k.half(0), s.Trim, 2, s.Trim)
	k.mark("turned in", section.Below, raw, s.Width, int64(2*turned), s.Turned)
	k.mark("fell", section.Above, k.half(0), s.Width, int64(2*top), s.Width)
}

// draw has both rows sewn from the right side, the one beside the seam clear of the
// turned edge.
func (s MockFelled) draw(k *sketch) {
	k.sewn("sewn", s.First, false)
	k.stage("folded and stitched", lies+"The edge of the upper allowance is folded in round the trimmed edge; both rows are sewn from the right side.")
	top, turned := k.tops()
	fold, raw := s.Width.Sub(k.h), s.Width.Sub(s.Turned)
	k.upper(k.from(k.run.Neg(), 0).to(k.half(-1)).level(top).to(fold).level(turned).to(raw), section.Hidden, section.Right)
	k.under(k.from(s.Width.Add(k.run), 0).to(k.half(1)).level(1).to(s.Trim), section.Hidden, section.Left)
	high := int64(2*top + 3)
	k.level("the seam", 5, upperPly, underPly)
	k.row("through the fold", s.Width.Sub(k.half(3)), high, -3, upperPly, upperPly, underPly)
	beside := k.half(3)
	through := []string{upperPly, underPly, underPly}
	switch {
	case raw.Less(k.h.MulInt(5).DivInt(2)):
		through = []string{upperPly, upperPly, underPly, underPly}
	case raw.Less(k.half(4)):
		beside = k.h.MulInt(9).DivInt(4)
	}
	k.row("beside the seam", beside, high, -3, through...)
	FlatFelled(s).mark(k, raw, top, turned)
}
