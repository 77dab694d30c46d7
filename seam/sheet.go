package seam

import (
	"slices"

	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is the plan as work: the working, every stage with its guide, trim, pressing and
// check, the cautions and the sources.
func (p Plan) Sheet() ticket.Sheet {
	sh := ticket.Sheet{Title: p.Spec.Title(), Assumed: p.Assumed}
	if p.Spec.Kind() == "" {
		return sh // the plan of no seam has nothing to say
	}
	p.Spec.sheet(p, &sh)
	p.coded(&sh)
	return sh
}

// begin is what every sheet begins with: the answer, what the seam takes, the sum of the
// drift, the cutting, the test swatch, the cautions that always hold.
func (p Plan) begin(sh *ticket.Sheet, taken ...ticket.Line) {
	s := p.Spec.Plies()
	sh.Answer = []ticket.Line{line("each ply gives up", p.Upper.Taken)}
	if p.Upper.Taken != p.Under.Taken {
		sh.Answer = []ticket.Line{line("the upper ply gives up", p.Upper.Taken), line("the under one", p.Under.Taken)}
	}
	if !p.Gain.IsZero() {
		sh.Answer = append(sh.Answer, line("an edge crossed square comes out longer by", p.Gain).Turned("an edge crossed square comes out shorter by"))
	}
	sh.Lines = append(taken,
		line("drift of the upper ply", p.Upper.Drift, plus(s.Cut, "cut"), minus(p.Upper.Taken, "taken")),
		line("drift of the under ply", p.Under.Drift, plus(s.CutUnder, "cut"), minus(p.Under.Taken, "taken")),
		line("an edge crossed square comes out longer by", p.Gain, plus(p.Upper.Drift, "upper"), plus(p.Under.Drift, "under")).
			Turned("an edge crossed square comes out shorter by"))
	if s.Cut != s.CutUnder && p.Upper.Taken == p.Under.Taken {
		wide, narrow := s.Cut.Max(s.CutUnder), s.Cut.Min(s.CutUnder)
		sh.Lines = append(sh.Lines, line("the drafted lines lie apart by", wide.Sub(narrow), plus(wide, "wider allowance"), minus(narrow, "narrower allowance")))
	}
	p.cutting(sh)
	sh.Lines = append(sh.Lines, line("the test swatch measures across", p.Across,
		plus(p.Piece, "one piece"), plus(p.Piece, "the other"), minus(p.Upper.Taken, "taken from the one"), minus(p.Under.Taken, "taken from the other")))
	sh.Steps = append(sh.Steps, p.Swatch())
	sh.Cautions = append(sh.Cautions, ticket.CutCare(), ticket.IronCare())
	if p.Upper.Drift.Sign() < 0 || p.Under.Drift.Sign() < 0 {
		sh.Cautions = append(sh.Cautions, ticket.Caution{
			Text:  "The seam takes more than was cut for it: the piece comes out smaller than drafted.",
			Refer: "the working above says by how much on each ply",
		})
	}
	if p.assumes("drafted") {
		sh.Sources = append(sh.Sources, sew.StandardCite())
	}
	sh.Sources = append(sh.Sources, sew.StraightnessCite(p.Spec.Plies().Tape))
}

// assumes reports whether the field of that key rests on a default.
func (p Plan) assumes(key string) bool { return slices.Contains(p.Assumed, key) }

// eachTakes is the line of what a seam takes from each ply.
func eachTakes(take units.Length, terms ...ticket.Term) ticket.Line {
	return line("taken from each ply", take, terms...)
}

// rowTakes is that line of a seam sewn in one row.
func rowTakes(first units.Length) ticket.Line {
	return eachTakes(first, plus(first, "from the raw edge to the seam"))
}

// cutting is what is done to the raw edges before the first pass.
func (p Plan) cutting(sh *ticket.Sheet) {
	s := p.Spec.Plies()
	const from = "the drafted stitching line"
	upper, under := s.Cut.Less(s.Drafted), s.CutUnder.Less(s.DraftedUnder)
	switch {
	case upper && under && s.Cut == s.CutUnder:
		sh.Steps = append(sh.Steps, ticket.Step{Do: "Cut both plies to the narrower allowance", At: ticket.Long(s.Cut), From: from})
	default:
		if upper {
			sh.Steps = append(sh.Steps, ticket.Step{Do: "Cut the upper ply to the narrower allowance", At: ticket.Long(s.Cut), From: from})
		}
		if under {
			sh.Steps = append(sh.Steps, ticket.Step{Do: "Cut the under ply to the narrower allowance", At: ticket.Long(s.CutUnder), From: from})
		}
	}
	if s.Cut != s.CutUnder && p.Upper.Taken == p.Under.Taken {
		sh.Steps = append(sh.Steps, ticket.Step{
			Do: "Trim both plies to one allowance before the first row, if their drafted lines are to meet",
			At: ticket.Long(s.Cut.Min(s.CutUnder)), From: from,
			Note: "the figures here are for plies left as cut: the raw edges meet and the drafted lines do not. Once trimmed, plan again with that allowance as cut",
		})
	}
}

// Swatch is the test before the garment: two pieces seamed as planned must measure
// across what is left of both. It is among the steps of the sheet, before the first
// pass; a garment with several seams alike tests it once.
func (p Plan) Swatch() ticket.Step {
	mend := "move the guide of the row by half of what it is out: wider where the swatch is too wide, narrower where it is too narrow"
	switch p.Spec.Seam.(type) {
	case French:
		mend = "move the guide of the second pass by half of what it is out: wider where the swatch is too wide, narrower where it is too narrow"
	case Lapped, LappedTurned, LappedRaw:
		mend = "lap the plies by what it is out: further where the swatch is too wide, less where it is too narrow"
	}
	check := p.check("across the seamed swatch, square to the seam", p.Across, mend)
	return ticket.Step{Do: "Cut two test pieces of the same cloth, and seam them as below", At: ticket.Long(p.Piece), From: "side to side", Check: check}
}

// check is a check of a width that a row of stitching gives.
func (p Plan) check(what string, want units.Length, mend string) ticket.Check {
	return ticket.Check{What: what, Want: ticket.Long(want), Give: sew.Hand(p.Spec.Plies().Tape), Mend: mend}
}

// first is the row that makes a seam, from the raw edges.
func (p Plan) first(do string, sides ticket.Sides, first units.Length) ticket.Step {
	st := ticket.Step{Do: do, Together: sides, At: ticket.Long(first), From: "the raw edge"}
	if !snip.on(p.Spec.Plies().Tape).Less(first) {
		st.Note = "mark notches with chalk or thread; a snip would reach the stitching"
	}
	return st
}

// trimStep is the trim after the first row.
func trimStep(do string, trim, first units.Length) ticket.Step {
	if trim == first {
		return ticket.Step{Do: "Clip loose threads", Note: "nothing of the allowance is trimmed off"}
	}
	return ticket.Step{
		Do: do, Trim: ticket.Long(trim),
		Check: ticket.Check{
			What: "from the stitching to the trimmed edge", Want: ticket.Long(trim),
			Mend: "trim again where it is too wide; where it is too narrow overcast the edge before going on",
		},
	}
}

// trimmed adds the trim after the first row, where something is trimmed.
func trimmed(sh *ticket.Sheet, do string, trim, first units.Length) {
	if trim != first {
		sh.Steps = append(sh.Steps, trimStep(do, trim, first))
	}
}

// tight warns of an edge that is hidden with less to spare than the trade asks.
func (p Plan) tight(sh *ticket.Sheet, under string, left, first units.Length) {
	s := p.Spec.Plies()
	if left.Less(clearance.on(s.Tape)) {
		sh.Cautions = append(sh.Cautions, ticket.Caution{
			Text:  "Very little cloth lies between the trimmed edge and the stitching of the " + under + ": whiskers may come through.",
			Refer: "common practice; sew the test swatch first",
		})
	}
	if first.Less(s.leastTrim()) {
		sh.Cautions = append(sh.Cautions, ticket.Caution{
			Text:  "The first row lies very near the raw edge and may pull out of it.",
			Refer: "common practice; sew the test swatch first",
		})
	}
}

// printed cites the rows of [Enclosed] for this kind of seam, and says whether their
// figures are those here, which are given as a row.
func (p Plan) printed(sh *ticket.Sheet, is EnclosedRow) {
	name := p.Spec.Kind()
	for i := range enclosed {
		r := &enclosed[i]
		if r.Seam != name {
			continue
		}
		figures, other := false, false
		for _, f := range [...]struct{ least, most, is units.Length }{
			{r.First, r.FirstMost, is.First}, {r.Second, r.SecondMost, is.Second}, {r.Trim, r.TrimMost, is.Trim},
			{r.Turn, r.TurnMost, is.Turn}, {r.Strip, r.StripMost, is.Strip},
		} {
			if f.least.IsZero() || f.is.IsZero() {
				continue
			}
			figures = true
			other = other || f.is.Less(f.least) || f.least.Max(f.most).Less(f.is)
		}
		c := source.Cite{For: "the seam and its rule", ID: r.Source, Place: r.Place, Known: r.Known}
		switch {
		case other:
			c.For = "other figures for this seam"
		case figures:
			c.For = "figures as here"
		}
		sh.Sources = append(sh.Sources, c)
	}
}
