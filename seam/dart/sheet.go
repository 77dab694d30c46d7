package dart

import (
	"slices"

	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

func (k Kind) title() string {
	switch k {
	case Single:
		return "Dart"
	case Double:
		return "Double-pointed dart"
	case French:
		return "French dart"
	case OpenEnded:
		return "Open-ended dart"
	}
	return "No dart"
}

// Sheet is the plan as work.
func (p Plan) Sheet() ticket.Sheet {
	d := p.Spec
	sh := ticket.Sheet{Title: d.Kind.title(), Assumed: p.Assumed, Cautions: []ticket.Caution{ticket.CutCare(), ticket.IronCare()}}
	if d.Width.IsZero() {
		return sh // the plan of no dart has nothing to say
	}
	sh.Answer = []ticket.Line{{Label: "it takes from the seam line", Result: ticket.About(p.AtSeam)}}
	sh.Lines = make([]ticket.Line, 0, 8)
	sh.Steps = make([]ticket.Step, 0, 10)
	sh.Sources = append(make([]source.Cite, 0, 8),
		source.Cite{For: "which way a dart is pressed", ID: "dress-making-trade-theory", Place: "p. 200", Known: source.Read},
		source.Practise("width in proportion to the distance from the point"))
	if d.Kind == Double {
		p.doubleSheet(&sh)
		return sh
	}
	p.edgeLines(&sh)
	p.edgeSteps(&sh)
	if d.pointed() {
		sh.Sources = append(sh.Sources, source.Cite{For: "the last stitches on the fold", ID: "darts-course-page", Known: source.Read})
	}
	if slices.Contains(p.Assumed, "allowance") {
		sh.Sources = append(sh.Sources, sew.StandardCite())
	}
	return sh
}

// pressed is the way a dart is pressed.
func (d Spec) pressed() string {
	if d.Across {
		return "downwards"
	}
	return "towards the centre front or the centre back"
}

// edgeLines is the working of a dart that opens on an edge.
func (p Plan) edgeLines(sh *ticket.Sheet) {
	d := p.Spec
	narrower := ticket.About(p.share(d.Allowance))
	sh.Lines = append(sh.Lines,
		ticket.Line{Label: "leg, both trued to it", Result: ticket.About(p.Leg)},
		ticket.Line{Label: "centre line as sewn, to the cut edge", Result: ticket.About(p.Centre)},
		ticket.Line{Label: "centre line as sewn, to the seam line", Result: ticket.About(p.Sewn), Terms: []ticket.Term{
			{Amount: ticket.About(p.Centre), Name: "to the cut edge"}, ticket.Less(d.Allowance, "allowance")}},
		ticket.Line{Label: "narrower at the seam line by", Result: narrower},
		ticket.Line{Label: "taken from the seam line", Result: ticket.About(p.AtSeam), Terms: []ticket.Term{
			ticket.Add(d.Width, "at the cut edge"), {Op: ticket.Minus, Amount: narrower, Name: "narrower"}}},
		ticket.Line{Label: "each leg from the fold, at the seam line", Result: ticket.About(p.Half), Terms: []ticket.Term{
			{Amount: ticket.About(p.AtSeam), Name: "both"}, {Op: ticket.Over, Amount: ticket.Of(2)}}})
	if p.Folds {
		sh.Lines = append(sh.Lines, ticket.Line{Label: "the fold stands out at the cut edge by", Result: ticket.About(p.Cap)})
	} else {
		sh.Cautions = append(sh.Cautions, ticket.Caution{
			Text:  "The dart is too wide for its length, or the edge too steep, for it to be folded over: its cap would not meet the seam. Slit it and press it open, or make two of it.",
			Refer: "common practice",
		})
	}
	if !d.Other.IsZero() {
		sh.Lines = append(sh.Lines, ticket.Sum("added to the other leg", p.Trued, ticket.Add(d.Leg, "leg"), ticket.Less(d.Other, "the other as drawn")))
	}
}

// edgeSteps is the work of a dart that opens on an edge.
func (p Plan) edgeSteps(sh *ticket.Sheet) {
	d, press := p.Spec, p.Spec.pressed()
	add := func(st ticket.Step) { sh.Steps = append(sh.Steps, st) }
	from := "the point"
	if d.Kind == OpenEnded {
		from = "where the stitching is let go"
	}
	if !d.Stop.IsZero() {
		add(ticket.Step{Do: "Mark where the stitching ends: the legs are drawn to there", At: ticket.Long(d.Stop), From: "the drawn point"})
		from = "where the stitching ends"
	}
	true1 := ticket.Step{Do: "Draw both legs to the cut edge, equally long", At: ticket.About(p.Leg), From: from}
	if !d.Other.IsZero() {
		true1.Do = "Draw both legs to the cut edge, and true the other leg to the same"
	}
	add(true1)
	if p.Folds {
		add(ticket.Step{Do: "Fold the paper dart the way it will be pressed, and only then cut the edge across it", Press: press,
			Note: "this gives the cap its shape; an edge cut flat leaves the dart short of the seam",
			Check: ticket.Check{
				What: "opened out again, how far the fold stands out beyond a ruler laid between the ends of the legs", Want: ticket.About(p.Cap),
				Mend: "fold it again with the legs matched all the way to the edge, and pressed the way the dart will be",
			}})
	} else {
		press = "open"
	}
	cut := ticket.Step{Do: "Slit the fold and trim it", Trim: ticket.Long(d.Trim), Note: "stop well short of the point"}
	if d.Kind == French && !d.Trim.IsZero() {
		cut.Do = "Cut the dart open inside its legs before it is sewn"
		add(cut)
	}
	stitch := ticket.Step{
		Do: "Fold on the centre line, legs matched, and stitch from the edge to the point", Together: ticket.RightTogether,
		Note: "the last stitches lie on the fold; tie the threads, do not backstitch at the point",
		Check: ticket.Check{
			What: "from the fold to the stitching, at the seam line", Want: ticket.About(p.Half), Give: ticket.Long(sew.Straightness(d.Tape)),
			Mend: "unpick from the edge to where it strays, and stitch along the drawn leg",
		},
	}
	switch d.Kind {
	case OpenEnded:
		stitch.Do = "Fold on the centre line, legs matched, and stitch from the edge to where it is let go"
		stitch.Note = "secure the end; beyond it the fold opens"
	case French:
		stitch.Do = "Match the legs and stitch from the edge to the point"
		if !d.Trim.IsZero() {
			stitch.Check.What = "between the legs as drawn, laid flat, at the seam line"
			stitch.Check.Want = ticket.About(p.AtSeam)
		}
	}
	add(stitch)
	switch {
	case d.Kind == Single && !d.Trim.IsZero():
		add(cut)
	case !p.Folds && d.Trim.IsZero():
		add(ticket.Step{Do: "Slit the fold along its middle", Note: cut.Note})
	}
	add(ticket.Step{Do: "Press the dart over a curved pad", Press: press})
}

// doubleSheet is the working and the work of a double-pointed dart.
func (p Plan) doubleSheet(sh *ticket.Sheet) {
	d := p.Spec
	sh.Lines = append(sh.Lines,
		ticket.Sum("from point to point", d.Length.Add(d.Lower), ticket.Add(d.Length, "upper half"), ticket.Add(d.Lower, "lower half")),
		ticket.Line{Label: "upper legs", Result: ticket.About(p.Leg)},
		ticket.Line{Label: "lower legs", Result: ticket.About(p.Below)},
		ticket.Line{Label: "each leg from the fold, at the widest", Result: ticket.About(p.Half), Terms: []ticket.Term{
			ticket.Add(d.Width, "both"), {Op: ticket.Over, Amount: ticket.Of(2)}}})
	sh.Steps = append(sh.Steps,
		ticket.Step{Do: "Mark both points and the widest place on the wrong side, and draw the legs"},
		ticket.Step{
			Do: "Fold on the centre line, legs matched, and stitch from the widest place to the upper point; then the other way to the lower one", Together: ticket.RightTogether,
			At: ticket.Long(d.Overlap), From: "where one row begins to where it has passed the start of the other",
			Note: "the rows run over each other by this at the widest place; the last stitches at both points lie on the fold; tie the threads there",
			Check: ticket.Check{
				What: "from the fold to the stitching, at the widest place", Want: ticket.About(p.Half), Give: ticket.Long(sew.Straightness(d.Tape)),
				Mend: "unpick from the widest place to where it strays, and stitch along the drawn leg",
			},
		})
	if !p.Clip.IsZero() {
		sh.Lines = append(sh.Lines, ticket.Sum("clip from the fold", p.Clip, ticket.Add(d.Width.DivInt(2), "half"), ticket.Less(d.clear(), "short of the stitching")))
		sh.Steps = append(sh.Steps, ticket.Step{Do: "Clip the fold at the widest place, so that the dart can lie flat", At: ticket.Long(p.Clip), From: "the fold", Note: "never through the stitching"})
		sh.Sources = append(sh.Sources, source.Cite{For: "a clip stops short of the stitching", ID: "trim-and-clip-page", Known: source.Read})
	}
	sh.Steps = append(sh.Steps, ticket.Step{Do: "Press the dart over a curved pad", Press: d.pressed()})
	sh.Sources = append(sh.Sources, source.Cite{For: "the rows overlap at the widest place, which is clipped", ID: "clothing-construction-handbook", Place: "darts", Known: source.Read})
}
