package seam

import (
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is the plan as work.
func (p BindingPlan) Sheet() ticket.Sheet {
	b := p.Spec
	sh := ticket.Sheet{Title: "No binding", Assumed: p.Assumed, Cautions: []ticket.Caution{ticket.CutCare(), ticket.IronCare()}}
	if b.Seam.IsZero() {
		return sh // the plan of no strip has nothing to say
	}
	sh.Answer = []ticket.Line{{Label: "cut the strip wide", Result: ticket.About(p.Width)}}
	if p.Pieces > 0 {
		sh.Answer = append(sh.Answer, ticket.Line{Label: "strips", Result: ticket.Of(p.Pieces)})
	}
	sh.Lines = make([]ticket.Line, 0, 8)
	sh.Steps = make([]ticket.Step, 0, 8)
	sh.Sources = make([]source.Cite, 0, 5)
	wide := ticket.Line{Label: "width to be cut", Result: ticket.About(p.Width), Terms: make([]ticket.Term, 0, 5)}
	switch b.Kind {
	case SingleBinding:
		sh.Title = "Binding of one thickness"
		wide.Terms = append(wide.Terms, plus(b.Finished, "finished"), times(2), plus(b.Seam, "to the first row"), plus(b.Turn, "turned in"))
		sh.Sources = append(sh.Sources, source.Cite{For: "four times finished", ID: "bias-binding-guideline", Known: source.Read})
	case DoubleBinding:
		sh.Title = "Binding folded double"
		wide.Terms = append(wide.Terms, plus(b.Finished, "finished"), times(2), plus(b.Seam, "to the first row"), times(2))
		sh.Sources = append(sh.Sources, source.Cite{For: "six times finished", ID: "bias-binding-guideline", Known: source.Read},
			source.Cite{For: "four times finished and a fixed amount", ID: "binding-width-page", Known: source.Read})
	case Piping:
		sh.Title = "Piping"
		sh.Lines = append(sh.Lines, ticket.Line{Label: "round the cord", Result: ticket.About(p.Bare.Plus(b.flat().Neg()))})
		wide.Terms = append(wide.Terms, ticket.Term{Amount: ticket.About(p.Bare.Plus(b.flat().Neg())), Name: "round the cord"}, plus(b.flat(), "both allowances"))
		sh.Sources = append(sh.Sources, source.Practise("way round the cord and both allowances"))
	}
	if !b.give().IsZero() {
		wide.Terms = append(wide.Terms, plus(b.give(), "give"))
	}
	sh.Lines = append(sh.Lines, wide)
	if !b.Curve.IsZero() {
		sh.Lines = append(sh.Lines, bent("the edge would differ by, were the allowance left on", p.IfLeft, b.Allowance, "allowance", b.Curve))
	}
	p.lengthLines(&sh)
	p.steps(&sh)
	if b.Bias {
		sh.Sources = append(sh.Sources, source.Practise("a bias strip narrows as it is stretched"))
	}
	return sh
}

// lengthLines is the working of the length.
func (p BindingPlan) lengthLines(sh *ticket.Sheet) {
	b := p.Spec
	if b.Edge.IsZero() {
		return
	}
	need := line("strip needed", p.Needed, plus(b.Edge, "along the seam line"))
	if b.Corners > 0 {
		sh.Lines = append(sh.Lines, line("for the mitres", p.Mitres, plus(b.Seam, "to the first row"), times(2), times(b.Corners)))
		need.Terms = append(need.Terms, plus(p.Mitres, "for the mitres"))
	}
	sh.Lines = append(sh.Lines, need)
	if p.Pieces == 0 {
		return
	}
	sewn := ticket.Line{Label: "strip as sewn", Result: ticket.About(p.Sewn), Terms: append(make([]ticket.Term, 0, 4),
		ticket.Term{Amount: ticket.About(p.Each), Name: "each"}, times(p.Pieces))}
	if p.Joins > 0 {
		sewn.Terms = append(sewn.Terms, ticket.Term{Op: ticket.Minus, Amount: ticket.About(p.JoinLoss.MulInt(int64(p.Joins))), Name: "the joins"})
	}
	if !b.Ends.IsZero() {
		sewn.Terms = append(sewn.Terms, minus(b.Ends.MulInt(2), "the two ends"))
	}
	sh.Lines = append(sh.Lines, sewn,
		ticket.Line{Label: "to spare", Result: ticket.About(p.Spare), Terms: []ticket.Term{
			{Amount: ticket.About(p.Sewn), Name: "as sewn"}, minus(p.Needed, "needed")}},
		ticket.Line{Label: "length of cloth that the strips take", Result: ticket.About(p.Uses)})
}

// steps is the work.
func (p BindingPlan) steps(sh *ticket.Sheet) {
	b := p.Spec
	add := func(st ticket.Step) { sh.Steps = append(sh.Steps, st) }
	cut := ticket.Step{Do: "Cut the strip along the grain or across it", At: ticket.About(p.Width), From: "edge to edge, square to the strip"}
	if b.Bias {
		cut.Do, cut.Note = "Cut the strip on the bias", "half a right angle to the selvedge: fold the selvedge onto a thread drawn across"
	}
	add(cut)
	if p.Joins > 0 {
		join := ticket.Step{Do: "Join the strips", Together: ticket.RightTogether, At: ticket.Long(b.Join), From: "the raw ends", Press: "open"}
		if b.Bias {
			join.Note = "ends cut along the grain, the strips at right angles, so that their seam lines cross at the edges of the strip"
		}
		add(join)
	}
	if !b.Allowance.IsZero() {
		add(ticket.Step{Do: "Cut the allowance off the edge: a bound edge takes nothing", At: ticket.Long(b.Allowance), From: "the raw edge",
			Check: ticket.Check{What: "what is cut off, across", Want: ticket.Long(b.Allowance), Give: ticket.Long(sew.Straightness(b.Tape)), Mend: "cut again to the drawn line; an edge left too high makes a neck too small"}})
	}
	seamed := ticket.Step{Do: "Stitch the strip to the edge", Together: ticket.RightTogether, At: ticket.Long(b.Seam), From: "the raw edges, which lie together"}
	if b.Kind == Piping {
		add(ticket.Step{Do: "Fold the strip over the cord, wrong side in, and stitch close to the cord",
			Check: ticket.Check{What: "from the stitching to both raw edges", Want: ticket.Long(b.Seam), Give: ticket.Long(sew.Straightness(b.Tape)), Mend: "trim the wider allowance, or move the cord along the fold"}})
		seamed.Do = "Baste the piping to the edge, then close the seam just inside the first row"
		add(seamed)
		return
	}
	if b.Kind == DoubleBinding {
		add(ticket.Step{Do: "Press the strip in half along its length, wrong side in"})
		seamed.Do = "Stitch both raw edges of the strip to the edge"
	}
	switch {
	case b.Curve.Sign() < 0:
		seamed.Note = "along a hollow edge stretch the strip a little, so that its fold lies flat"
	case b.Curve.Sign() > 0:
		seamed.Note = "round an edge that bulges ease the strip in, so that its fold reaches round"
	}
	if b.Corners > 0 {
		if seamed.Note != "" {
			seamed.Note += "; "
		}
		seamed.Note += "stop as far short of each corner as the row is from the edge; fold the strip up and down again flush with the edge, and go on"
	}
	add(seamed)
	wrap := ticket.Step{Do: "Turn the strip over the edge and stitch its fold down just over the first row",
		Check: ticket.Check{What: "the binding, on the face", Want: ticket.Long(b.Finished), Give: ticket.Long(sew.Straightness(b.Tape)), Mend: "trim the raw edges inside it evenly where it is too wide; where it is too narrow unpick and stitch nearer"}}
	if b.Kind == SingleBinding {
		add(ticket.Step{Do: "Press the free edge in", At: ticket.Long(b.Turn), From: "the free edge"})
	}
	add(wrap)
}
