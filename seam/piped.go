package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// piped solves the seam with a covered cord in it.
func (v *solver) piped() {
	if !v.single() {
		return
	}
	v.trimmed(v.First)
	v.fill(&v.Cord, fieldCord, usualCord())
}

func (p *Plan) piped() {
	s := p.Spec
	p.Finished = s.Trim
	p.Plies = 5
	p.Raw = true
	p.StripCorded = units.Pi().Of(s.Cord.Add(s.Thickness)).Plus(s.First.MulInt(2))
	p.Upper.bounds(p.least(), s.First)
	p.Under.bounds(p.least(), s.First)
}

func (p Plan) pipedSheet(sh *ticket.Sheet) {
	s := p.Spec
	sh.Lines = append(sh.Lines, ticket.Line{
		Label: "strip to cover the cord", Result: ticket.About(p.StripCorded),
		Terms: []ticket.Term{
			{Amount: ticket.About(units.Pi().Of(s.Cord.Add(s.Thickness))), Name: "once round the cord"},
			plus(s.First, "one allowance"), plus(s.First, "the other"),
		},
	})
	sh.Steps = append(sh.Steps,
		ticket.Step{Do: "Cut the strip, on the bias where the seam curves", At: ticket.About(p.StripCorded), From: "edge to edge", Note: "round up to a mark of the tape; a bias strip narrows as it stretches"},
		ticket.Step{Do: "Fold the strip round the cord, wrong side in, and stitch close to the cord", At: ticket.Long(s.First), From: "the raw edges of the strip"},
		ticket.Step{Do: "Baste the covered cord to the right side of the under ply, all raw edges even", At: ticket.Long(s.First), From: "the raw edge"},
		p.first("Lay the upper ply over it and stitch, close against the cord", ticket.RightTogether))
	if s.Trim != s.First {
		sh.Steps = append(sh.Steps, p.trimStep("Trim the allowances"))
	}
	last := p.pressed()
	last.Press = "with the point of the iron, all allowances to one side"
	last.Check.What = "from the seam to the raw edges"
	last.Note = "in thick cloth trim the allowances of the strip narrower than the others"
	sh.Steps = append(sh.Steps, last)
	p.finish(sh)
	sh.Sources = append(sh.Sources, source.Practise("strip once round the cord and two allowances"))
	p.printed(sh)
}

// graded solves the seam whose layers are trimmed in steps.
func (v *solver) graded() {
	if !v.single() {
		return
	}
	if v.Layers == 0 {
		v.Layers = 2
		v.assumed |= fieldLayers
	}
	usual := usualGrade()
	if !usualTrim().Less(v.First) || !v.TrimUnder.IsZero() && !v.TrimUnder.Less(usual) {
		usual = v.First
	}
	v.trimmed(usual)
	v.fill(&v.TrimUnder, fieldTrimUnder, inside(usualTrim(), v.Trim))
	switch {
	case v.TrimUnder.Less(v.Trim):
		v.holds("trimUnder", v.TrimUnder)
	default:
		v.audit.Fault("trimUnder", v.TrimUnder.String(), "less than "+v.Trim.String()+" (trim)", fault.Range)
	}
}

func (p *Plan) graded() {
	s := p.Spec
	p.Finished = s.Trim
	p.Plies = s.Layers + 2
	// The widths are the marks of an equal division from the narrowest to the widest.
	for mark := range units.Marks(s.Trim.Sub(s.TrimUnder), s.Layers-1, units.Length{}, units.HalfAway) {
		if p.Step = mark; !mark.IsZero() {
			break
		}
	}
	p.Upper.bounds(s.TrimUnder, s.First)
	p.Under.bounds(leastTrim(s.Fraying).Min(s.TrimUnder), s.Trim)
}

// Grade is what is left of layer i of a graded seam, counted from the outside of
// the garment from 0: the widest first. It is zero for a layer that the seam has
// not.
func (p Plan) Grade(i int) units.Length {
	if i < 0 || i >= p.Spec.Layers {
		return units.Length{}
	}
	return p.Spec.Trim.Sub(p.Step.MulInt(int64(i)))
}

func (p Plan) gradedSheet(sh *ticket.Sheet) {
	s := p.Spec
	sh.Lines = append(sh.Lines, line("the widest layer", s.Trim, plus(p.Step, "from layer to layer"), times(s.Layers-1), plus(s.TrimUnder, "the narrowest")))
	sh.Steps = append(sh.Steps, p.first("Stitch the seam", ticket.RightTogether))
	for i := range s.Layers {
		st := ticket.Step{Do: "Trim the next layer narrower", Trim: ticket.Long(p.Grade(i))}
		switch i {
		case 0:
			st.Do = "Trim the layer next to the outside of the garment, the widest"
		case s.Layers - 1:
			st.Do = "Trim the innermost layer, the narrowest"
		}
		sh.Steps = append(sh.Steps, st)
	}
	sh.Steps = append(sh.Steps,
		ticket.Step{Do: "Clip inward curves and notch outward ones", Note: "short of the stitching"},
		ticket.Step{
			Do: "Turn to the right side and press", Press: "the seam rolled a little to the inside",
			Check: ticket.Check{
				What: "inside, from the seam to the widest raw edge", Want: ticket.Long(s.Trim), Give: ticket.Long(straightness()),
				Mend: "turn back and trim again where a ridge shows through",
			},
		})
	sh.Sources = append(sh.Sources,
		source.Cite{For: "the layer next to the outside, widest", ID: "apparel-textbook", Place: "p. 451", Known: source.Read},
		source.Cite{For: "the smallest grade", ID: "apparel-class-slides", Known: source.Read},
		source.Practise("equal steps from layer to layer"))
}
