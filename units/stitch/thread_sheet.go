package stitch

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// sampleLength is the length of the seam that a sheet asks to be sewn as a test, on
// the tape that the seam is given on: common practice.
func (t Thread) sampleLength() units.Length {
	if noun.Tape(t) == units.MetricTape {
		return units.Centimetre.Of(25)
	}
	return units.Inch.Of(10)
}

// Sheet is the working, and how to test the figure on a sample before thread is
// bought or bobbins are wound.
func (p ThreadPlan) Sheet() ticket.Sheet {
	t := p.Spec
	sh := ticket.Sheet{Title: "Thread for a seam, stitch type " + t.Stitch.String(), Assumed: p.Assumed}
	if t.By == 0 {
		sh.Title = "Thread for a seam"
		return sh // the plan of nothing has nothing to say
	}
	sh.Answer = []ticket.Line{{Label: "thread to have", Result: ticket.Long(p.Need)}}
	p.perLength(&sh)
	sh.Lines = append(sh.Lines, ticket.Line{
		Label: "thread in the seam", Result: ticket.Long(p.Total),
		Terms: []ticket.Term{term(ticket.Plus, ticket.Long(t.Seam), "seam"), term(ticket.By, ticket.Times(p.PerLength), "lengths of thread")},
	})
	with := ticket.Times(all.Add(t.Waste))
	sh.Lines = append(sh.Lines, ticket.Line{
		Label: "thread with the waste", Result: ticket.Long(p.Need),
		Terms: []ticket.Term{term(ticket.Plus, ticket.Long(p.Total), "in the seam"), term(ticket.By, with, "with the waste")},
	})
	if p.Split {
		p.split(&sh, with)
	}
	test := ticket.Step{
		Do: "Sew a sample with the cloth, plies, needle and tension of the seam, cut out its middle, unpick and measure", At: ticket.Long(t.sampleLength()), From: "one cut to the other",
		Check: ticket.Check{What: "all its thread, drawn straight", Want: ticket.Long(t.sampleLength().Scale(p.PerLength)), Mend: "plan again by this sample"},
	}
	sh.Steps = append(sh.Steps, test)
	if p.Split && !p.Under.IsZero() {
		sh.Steps = append(sh.Steps, ticket.Step{
			Do: "Wind the under thread before the seam is begun, so that it does not run out within it", At: ticket.Long(p.UnderNeed), From: "one end of the thread to the other",
		})
	}
	sh.Cautions = append(sh.Cautions,
		ticket.Caution{Text: "Thread varies with tension, cloth and operator: an estimate buys thread, a sample settles it.", Refer: "the sewn sample decides"},
		ticket.CutCare())
	p.cites(&sh)
	return sh
}

// perLength is how the thread to a length of seam was found.
func (p ThreadPlan) perLength(sh *ticket.Sheet) {
	t := p.Spec
	line := ticket.Line{Label: "lengths of thread to one of seam", Result: ticket.Times(p.PerLength)}
	switch t.By {
	case ByRatio:
		// the figure is stated, not worked
	case ByGeometry:
		sh.Lines = append(sh.Lines, ticket.Line{
			Label: "stitches to the inch", Result: ticket.Times(t.PerInch),
			Terms: []ticket.Term{term(ticket.Plus, ticket.Long(units.Inch.Of(1)), "one inch"), term(ticket.Over, ticket.Machine(t.StitchLength), "stitch")},
		})
		f, _ := t.Stitch.formula()
		if f.Wide > 0 {
			line.Terms = append(line.Terms, term(ticket.Plus, ticket.Long(t.Width), "width"))
		}
		line.Terms = append(line.Terms,
			term(ticket.Plus, ticket.Long(t.Thickness), "thickness"),
			term(ticket.Over, ticket.Machine(t.StitchLength), "stitch"),
			term(ticket.By, ticket.Of(f.Thick), "passes"),
			term(ticket.Plus, ticket.Of(f.Fixed), "along the seam"))
	default:
		line.Terms = append(line.Terms, term(ticket.Plus, ticket.Long(t.SampleNeedle), "needle"))
		if !t.SampleUnder.IsZero() {
			line.Terms = append(line.Terms, term(ticket.Plus, ticket.Long(t.SampleUnder), "under"))
		}
		line.Terms = append(line.Terms, term(ticket.Over, ticket.Long(t.Sample), "sample"))
	}
	sh.Lines = append(sh.Lines, line)
}

// split is how the thread divides between the needle and what is under the cloth.
func (p ThreadPlan) split(sh *ticket.Sheet, with ticket.Amount) {
	t := p.Spec
	needle := ticket.Line{Label: "needle thread in the seam", Result: ticket.Long(p.Needle)}
	if t.By == BySample {
		needle.Terms = []ticket.Term{
			term(ticket.Plus, ticket.Long(t.SampleNeedle), "needle"), term(ticket.Over, ticket.Long(t.Sample), "sample"), term(ticket.By, ticket.Long(t.Seam), "seam"),
		}
	} else {
		needle.Terms = []ticket.Term{term(ticket.Plus, ticket.Long(p.Total), "in the seam"), term(ticket.By, ticket.Times(t.NeedleShare), "share of the needle")}
	}
	sh.Lines = append(sh.Lines, needle, ticket.Line{
		Label: "under thread in the seam", Result: ticket.Long(p.Under),
		Terms: []ticket.Term{term(ticket.Plus, ticket.Long(p.Total), "in the seam"), term(ticket.Minus, ticket.Long(p.Needle), "needle")},
	}, ticket.Line{
		Label: "needle thread with the waste", Result: ticket.Long(p.NeedleNeed),
		Terms: []ticket.Term{term(ticket.Plus, ticket.Long(p.Needle), "needle"), term(ticket.By, with, "with the waste")},
	}, ticket.Line{
		Label: "under thread with the waste", Result: ticket.Long(p.UnderNeed),
		Terms: []ticket.Term{term(ticket.Plus, ticket.Long(p.Under), "under"), term(ticket.By, with, "with the waste")},
	})
}

// cites are the rows that the plan stands on, and those that disagree with it.
func (p ThreadPlan) cites(sh *ticket.Sheet) {
	t := p.Spec
	switch t.By {
	case ByRatio:
		for r := range t.Stitch.ratios() {
			sh.Sources = append(sh.Sources, r.Cite())
		}
	case ByGeometry:
		f, _ := t.Stitch.formula()
		sh.Sources = append(sh.Sources, f.Cite())
	default:
		sh.Sources = append(sh.Sources, source.Cite{For: "thread by a sample", ID: "thread-estimate-page", Known: source.Read})
	}
	if slices.Contains(p.Assumed, "needleShare") {
		_, r := t.Stitch.share()
		c := r.Cite()
		c.For = "share of the needle"
		sh.Sources = append(sh.Sources, c)
	}
	for _, w := range wasteRows {
		sh.Sources = append(sh.Sources, source.Cite{For: "waste", ID: w.Source, Known: w.Known})
	}
}
