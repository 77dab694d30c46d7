package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A Faced is a hem with a strip or a shaped facing of the straight cloth sewn to it and
// turned in.
type Faced struct {
	Allowance
	Facing
	Curved
}

// Plan works the hem out.
func (s Faced) Plan() (Plan, error) { return plan(s) }

// With is the same hem on an edge of another allowance.
func (s Faced) With(a Allowance) Hem { s.Allowance = a; return s }

func (s *Faced) solve(v *solver) { s.Facing.solve(v, &s.Allowance) }

func (s Faced) sheet(p Plan, sh *ticket.Sheet) {
	note := "Cut it with the grain of the edge that it faces"
	if !p.Fullness.IsZero() || !p.Lack.IsZero() {
		note = "Or cut the facing to the shape of the edge, its free edge that much shorter or longer; then nothing is left to lose"
	}
	s.Facing.sheet(p, sh, note, nil)
}

// A BiasFaced is a hem faced with a strip cut on the bias.
type BiasFaced struct {
	Allowance
	Facing
	Curved
}

// Plan works the hem out.
func (s BiasFaced) Plan() (Plan, error) { return plan(s) }

// With is the same hem on an edge of another allowance.
func (s BiasFaced) With(a Allowance) Hem { s.Allowance = a; return s }

func (s *BiasFaced) solve(v *solver) { s.Facing.solve(v, &s.Allowance) }

func (s BiasFaced) sheet(p Plan, sh *ticket.Sheet) {
	s.Facing.sheet(p, sh, "Cut it on the true bias; it grows narrower as it is stretched, so measure it after pressing it to the curve", []ticket.Caution{narrows})
}

var narrows = ticket.Caution{Text: "A strip on the bias narrows as it is stretched: add to its width, and try a hand's length first."}

// A Facing is a strip that is sewn to an edge and turned in.
type Facing struct {
	// Depth is the depth of the facing as it shows on the wrong side, from the finished
	// edge to the fold of its free edge. It is needed.
	Depth units.Length `json:"depth,omitzero"`
	// First is the turn of the free edge, at most depth less favour, where the seam lies.
	// May be omitted; the default is 1/4 in (12 mm), or as much as there is room for.
	First units.Length `json:"first,omitzero"`
	// Take is all that is taken off the garment: seam + favour. May be omitted; the
	// default without seam is cut, which puts the finished edge on the line drafted.
	Take units.Length `json:"take,omitzero"`
	// Seam is the seam by which the facing is sewn on, from the raw edge of the garment.
	// It follows from take and favour, or may be omitted; the default is what cut leaves
	// for it, or 1/4 in (12 mm) where cut is omitted too.
	Seam units.Length `json:"seam,omitzero"`
	// Favour is how far the seam is rolled to the wrong side, so that the facing does not
	// show, from the finished edge. May be omitted; the seam then lies on that edge.
	Favour units.Length `json:"favour,omitzero"`
	// Stitch is the distance of the stitching from the fold of the free edge, not on the
	// raw edge of its turn, and less than depth less favour. May be omitted; the default
	// is 1/16 in (2 mm), but at most half of depth and half of first.
	Stitch units.Length `json:"stitch,omitzero"`
	// Spare is what is added to the width of the strip for the turn of the cloth and the
	// give of the bias; 1/8 in (3 mm) on the bias is common practice. May be omitted;
	// nothing is then added.
	Spare units.Length `json:"spare,omitzero"`
}

func (f Facing) taken() units.Length { return f.Take }
func (f Facing) reach() units.Length { return f.Depth.Add(f.Favour) }

// room is what the turn of the free edge has: as far as the seam.
func (f Facing) room() units.Length { return f.Depth.Sub(f.Favour) }

func (f *Facing) derive() {
	if !f.Seam.IsZero() && f.Take.IsZero() {
		f.Take = f.Seam.Add(f.Favour)
	} else if !f.Take.IsZero() && f.Seam.IsZero() {
		f.Seam = f.Take.Sub(f.Favour)
	}
}

func (f *Facing) solve(v *solver, a *Allowance) {
	fill(&a.Cut, a.Drafted)
	if f.Take.IsZero() && f.Favour.Less(a.Cut) {
		f.Take = a.Cut
	} else if f.Take.IsZero() {
		f.Seam = facingStrip(v.tape).Seam
	}
	if f.room().Sign() > 0 {
		fill(&f.First, facingStrip(v.tape).Turn.Min(f.room()))
	}
	f.derive()
	a.fill(f.Take)
	fill(&f.Stitch, stitchFold(v.tape).Min(f.Depth.DivInt(2)).Min(f.First.DivInt(2)))
}

func (f Facing) check(v *solver) {
	a := &v.audit
	sum := v.was["seam"].Add(v.was["favour"])
	switch {
	case v.was["take"].IsZero():
	case !v.was["seam"].IsZero() && v.was["take"] != sum:
		a.Fault("take", f.Take.String(), "{0} (seam + favour)", fault.Conflict, sum)
	case v.was["seam"].IsZero() && !sum.Less(v.was["take"]):
		a.Fault("take", f.Take.String(), "more than {0} (favour)", fault.Conflict, sum)
	}
	if f.Depth.IsZero() {
		v.missing("depth", "more than 0 in")
		return
	}
	if !f.Favour.Less(f.Depth) {
		a.Fault("favour", f.Favour.String(), "less than {0} (depth)", fault.Range, f.Depth)
		return
	}
	name := "depth"
	if !f.Favour.IsZero() {
		name = "depth less favour"
	}
	fault.AtMost(a, "first", f.First, f.room(), name, fault.Range)
	switch {
	case !f.Stitch.Less(f.room()):
		a.Fault("stitch", f.Stitch.String(), "less than {0} ("+name+")", fault.Range, f.room())
	case f.Stitch == f.First:
		a.Fault("stitch", f.Stitch.String(), "more or less than {0} (first), where the raw edge of the turn lies", fault.Range, f.First)
	}
}

func (f Facing) answer(p *Plan) {
	p.Plies = 4
	if f.Depth.Less(f.Take.Add(f.First)) {
		p.Plies = 5 // the turn of the free edge lies on the allowances of the seam
	}
	p.fold("finished edge", f.Take)
	p.RawToStitch, p.FinishedToStitch = f.Seam, f.Depth.Sub(f.Stitch)
	fold := f.Seam.Add(f.Depth).Sub(f.Favour)
	p.Strips = []Strip{{facing, fold.Add(f.First).Add(f.Spare), fold, p.Plies - 2}}
}

// stripLines are the width of the strip and where it is folded: the terms as far as the
// fold, and those beyond it.
func (p Plan) stripLines(sh *ticket.Sheet, spare units.Length, fold []ticket.Term, beyond ...ticket.Term) {
	if !spare.IsZero() {
		beyond = append(beyond, plus(spare, "spare"))
	}
	sh.Lines = append(sh.Lines,
		line("strip, from the edge that is sewn on to the fold", ticket.Long(p.Strips[0].Fold), fold...),
		line("width of the strip", ticket.Long(p.Strips[0].Width), append(fold[:len(fold):len(fold)], beyond...)...))
}

// stripSteps are the steps of a strip until it is sewn on.
func (p Plan) stripSteps(sh *ticket.Sheet, note, turn, from, press string, sewn ticket.Step) {
	cut := p.mark("Press the ridges of seams that cross the edge open or apart, since the strip is sewn over them")
	if p.LineToRaw.IsZero() {
		cut.Do = "Mark the drafted finished line and cut the whole allowance away along it"
		cut.Note = "Staystitch a curved edge inside the seam before cutting, so that it does not stretch"
	}
	width := ticket.Long(p.Strips[0].Width)
	sewn.Do, sewn.Together, sewn.From = "Stitch the strip to the edge, raw edges even", ticket.RightTogether, "the raw edge"
	sh.Steps = append(sh.Steps, cut,
		ticket.Step{
			Do: "Cut the strip and join its pieces", At: width, From: "edge to edge across the strip", Press: "the joins open", Note: note,
			Check: ticket.Check{What: "across the strip, in several places", Want: width, Give: ticket.Long(p.give().DivInt(2)), Mend: "Cut it again where it is narrow; trim it where it is wide"},
		},
		ticket.Step{Do: turn, At: ticket.Long(p.Strips[0].Fold), From: from, Press: press}, sewn)
}

func (f Facing) sheet(p Plan, sh *ticket.Sheet, note string, more []ticket.Caution) {
	takes := []ticket.Term{plus(f.Seam, "seam")}
	fold := []ticket.Term{plus(f.Depth, "depth"), plus(f.Seam, "seam")}
	b := bend{
		terms: []ticket.Term{plus(f.Depth, "depth")},
		each:  "free edge of the facing, cut to shape, lies inside its straight run by, at each side edge", less: "free edge of the facing, cut to shape, lies outside its straight run by, at each side edge",
		all: "turned cloth to lose, at the inner edge of the hem", lacks: "turned cloth too short by",
		circle: "round a circle of the depth as radius",
	}
	roll := ticket.Step{
		Do: "Press the seam towards the facing, understitch, and turn the facing to the wrong side with the seam on the fold", Press: "from the wrong side",
		Note:  "Grade the allowances under the facing, the widest next to the garment",
		Check: p.deep("from the finished edge to the free edge of the facing, on the wrong side", f.Depth),
	}
	if !f.Favour.IsZero() {
		rolled := plus(f.Favour, "rolled to the wrong side")
		takes, b.terms = append(takes, rolled), append(b.terms, rolled)
		fold = append(fold, minus(f.Favour, "rolled to the wrong side"))
		b.circle = "round a circle of the depth and the roll as radius"
		roll.Do = "Press the seam towards the facing, understitch, and turn the facing to the wrong side with the seam rolled inside"
		roll.At, roll.From = ticket.Long(f.Favour), "the finished edge, inwards"
	}
	p.begin(sh, p.takes(takes...), longer, shorter)
	p.stripLines(sh, f.Spare, fold, plus(f.First, "turn of the free edge"))
	sh.Lines = append(sh.Lines, finishedLine(p, f.Depth, f.Stitch))
	p.edges(sh, b)

	p.stripSteps(sh, note, "Turn in the free edge of the strip", "the edge that is sewn on", "to the wrong side", ticket.Step{At: ticket.Long(f.Seam),
		Note: "Lay the strip flat along a straight edge; stretch it a little round a convex curve and ease it round a concave one, so that its free edge lies flat"})
	sh.Steps = append(sh.Steps, roll, ticket.Step{
		Do: "Stitch the free edge down from the wrong side, or catch it by hand", At: ticket.Long(p.FinishedToStitch), From: "the finished edge", Note: p.shrunk(),
	}, p.length())

	p.drifts(sh)
	if f.Depth.Less(f.Take) {
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "The seam of the facing is wider than the facing is deep: trim and grade its allowances after stitching, or they stand out above it."})
	}
	if f.First.Less(f.Stitch) {
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "The row lies beyond the turn of the facing's free edge and does not hold it: catch the edge by hand, or stitch nearer to its fold."})
	}
	sh.Cautions = append(sh.Cautions, more...)

	row := facingStrip(p.Spec.Allowed().Tape)
	cite(sh, p.assumes("first"), row.cite("turn of the facing's free edge"))
	if p.assumes("seam") && p.assumes("drafted") && p.assumes("cut") {
		cite(sh, true, row.cite("seam of a facing"))
	} else {
		cite(sh, p.assumes("seam"), source.Practise("seam of a facing on the drafted line"))
	}
	cite(sh, p.assumes("stitch"), stitched)
	p.end(sh, false)
	cite(sh, true, stripAddsUp)
}

var stripAddsUp = source.Practise("parts of the strip add up to its width")

// shrunk is how a facing that is not cut to shape is made to lie.
func (p Plan) shrunk() string {
	switch {
	case !p.Fullness.IsZero() && !p.Lack.IsZero():
		return "Shrink the fullness of the free edge with steam on the convex curves, and stretch it on the concave ones"
	case !p.Fullness.IsZero():
		return "Shrink the fullness of the free edge with steam, or lay it in small pleats under the stitching"
	case !p.Lack.IsZero():
		return "Stretch the free edge under the iron until it lies flat, or cut the facing to shape"
	}
	return ""
}

func (f Facing) measures() []measure {
	return []measure{{"spec.depth", f.Depth}, {"spec.first", f.First}, {"spec.seam", f.Seam}}
}

const facing = "facing"

// draw draws the facing sewn to the raw edge, which is at 0, and turned in, its free edge
// stitched down. The allowances of the seam lie on the garment and under the facing.
func (f Facing) draw(p Plan, k sketch) []section.Drawing {
	in := k
	k.sewn(p, f.First)
	depth, row, seam, raw := f.Depth.Neg(), p.FinishedToStitch.Neg(), f.Favour.Neg(), f.Take.Neg()
	turned := depth.Add(f.First)
	in.begin(", turned in", lies)
	// Where there is room, the facing steps down beyond the allowances; where there
	// is none, the turn lies level with the allowance of the facing, or on it.
	foot := raw.Sub(in.t)
	steps := !foot.Less(turned) && (raw.Less(row) || row.Less(foot))
	pen, top := in.from(raw, 4).To(seam.Add(in.half(1))), 3
	shut, ours := section.Hidden, section.Hidden // the allowances of the facing and of the garment
	if raw.Less(row) && !steps {
		ours = section.Raw // nothing lies ahead of it, since the row is nearer the finished edge
	}
	switch {
	case steps:
		pen = pen.Step(1).To(raw.Sub(in.half(1))).Step(-1)
	case raw.Less(turned):
		pen, top, shut = pen.Step(2), 4, ours
	default:
		pen = pen.Step(1)
	}
	in.cloth(in.from(depth.Min(raw).Sub(in.run), 0).To(in.half(1)).Step(1).To(raw), section.RunsOn, ours, section.Right)
	in.strip(facing, pen.To(depth.Sub(in.half(1))).Step(-1).To(turned), shut, section.Hidden, section.Right)
	in.row("seam", seam, 5, 1, facing, cloth)
	pierce := times(TwoTurns{First: f.First, Stitch: f.Stitch}.caught(1), facing)
	if raw.Less(row) {
		pierce = append(pierce, facing, cloth)
	}
	in.row("free edge", row, int64(2*top+2), -2, append(pierce, cloth)...)
	in.measure("facing", section.Above, depth, origin, int64(2*top), f.Depth)
	in.measure("favour", section.Above, seam, origin, 2, f.Favour)
	in.measure(rowName, section.Below, row, origin, 0, p.FinishedToStitch)
	in.measure("seam", section.Below, raw, seam, 2, f.Seam)
	in.measure("turned in", section.Below, depth, turned, 2, f.First)
	return []section.Drawing{k.Drawing, in.Drawing}
}
