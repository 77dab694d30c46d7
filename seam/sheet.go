package seam

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is the plan as work: the working, every stage with its guide, trim,
// pressing and check, the cautions and the sources.
func (p Plan) Sheet() ticket.Sheet {
	sh := ticket.Sheet{
		Title:    kindTitles[NoKind],
		Assumed:  p.Assumed,
		Steps:    make([]ticket.Step, 0, 10),
		Lines:    make([]ticket.Line, 0, 10),
		Cautions: make([]ticket.Caution, 0, 6),
		Sources:  make([]source.Cite, 0, 12),
	}
	if !p.Spec.Kind.Valid() {
		return sh // the plan of no seam has nothing to say
	}
	sh.Title = kindTitles[p.Spec.Kind]
	p.working(&sh)
	p.cutting(&sh)
	p.swatch(&sh)
	sh.Cautions = append(sh.Cautions, ticket.CutCare(), ticket.IronCare())
	p.smaller(&sh)
	p.cites(&sh)
	switch p.Spec.Kind {
	case French:
		p.frenchSheet(&sh)
	case FlatFelled, MockFelled:
		p.felledSheet(&sh)
	case Bound:
		p.boundSheet(&sh)
	case TurnedStitched, MockFrench:
		p.turnedSheet(&sh)
	case UntrimmedFell:
		p.untrimmedSheet(&sh)
	case Welt:
		p.weltSheet(&sh)
	case Lapped:
		p.lappedSheet(&sh)
	case LappedTurned:
		p.lappedTurnedSheet(&sh)
	case LappedRaw:
		p.lappedRawSheet(&sh)
	case Slot:
		p.slotSheet(&sh)
	case Hairline:
		p.hairlineSheet(&sh)
	case HongKong:
		p.hongKongSheet(&sh)
	case SelfBound:
		p.selfBoundSheet(&sh)
	case Piped:
		p.pipedSheet(&sh)
	case Graded:
		p.gradedSheet(&sh)
	default:
		p.plainSheet(&sh)
	}
	p.coded(&sh)
	return sh
}

// working is the sum that every seam has.
func (p Plan) working(sh *ticket.Sheet) {
	s := p.Spec
	const each = "taken from each ply"
	half := ticket.Term{Op: ticket.Over, Amount: ticket.Of(2)}
	switch s.Kind {
	case French:
		sh.Lines = append(sh.Lines, line(each, s.Take, plus(s.First, "first pass"), plus(s.Second, "second pass")))
	case Lapped:
		sh.Lines = append(sh.Lines,
			line("taken from the upper ply", p.Upper.Taken, plus(s.First, "turned under")),
			line("taken from the under ply", p.Under.Taken, plus(s.Second, "from its raw edge to the fold")))
	case UntrimmedFell:
		sh.Lines = append(sh.Lines,
			line("taken from the upper ply", p.Upper.Taken, plus(s.First, "from the raw edge to the seam")),
			line("taken from the under ply", p.Under.Taken, plus(s.First, "from the fold to the seam"), plus(s.Turned, "folded over")))
	case LappedTurned:
		sh.Lines = append(sh.Lines, line(each, s.Take, plus(s.Second, "lap"), half, plus(s.Turned, "turned")))
	case LappedRaw:
		sh.Lines = append(sh.Lines, line(each, s.Take, plus(s.Second, "lap"), half))
	default:
		sh.Lines = append(sh.Lines, line(each, s.Take, plus(s.First, "from the raw edge to the seam")))
	}
	sh.Lines = append(sh.Lines,
		line("drift of the upper ply", p.Upper.Drift, plus(s.Cut, "cut"), minus(p.Upper.Taken, "taken")),
		line("drift of the under ply", p.Under.Drift, plus(s.CutUnder, "cut"), minus(p.Under.Taken, "taken")),
		line("an edge crossed square comes out longer by", p.Gain, plus(p.Upper.Drift, "upper"), plus(p.Under.Drift, "under")).
			Turned("an edge crossed square comes out shorter by"))
	if s.Cut != s.CutUnder && p.Upper.Taken == p.Under.Taken {
		wide, narrow := s.Cut.Max(s.CutUnder), s.Cut.Min(s.CutUnder)
		sh.Lines = append(sh.Lines, line("the drafted lines lie apart by", wide.Sub(narrow), plus(wide, "wider allowance"), minus(narrow, "narrower allowance")))
	}
}

// cutting is what is done to the raw edges before the first pass.
func (p Plan) cutting(sh *ticket.Sheet) {
	s := p.Spec
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

// swatchPiece is how wide each of the two test pieces is cut.
func (p Plan) swatchPiece() units.Length {
	return units.Inch.Of(6).Max(p.Upper.Taken.Max(p.Under.Taken).MulInt(4))
}

// swatchAcross is what the two pieces then measure.
func (p Plan) swatchAcross() units.Length {
	return p.swatchPiece().MulInt(2).Sub(p.Upper.Taken).Sub(p.Under.Taken)
}

// Swatch is the test before the garment: two pieces seamed as planned must
// measure across what is left of both. It is among the steps of the sheet, before
// the first pass; a garment with several seams alike tests it once.
func (p Plan) Swatch() ticket.Step {
	mend := "move the guide of the row by half of what it is out: wider where the swatch is too wide, narrower where it is too narrow"
	switch p.Spec.Kind {
	case French:
		mend = "move the guide of the second pass by half of what it is out: wider where the swatch is too wide, narrower where it is too narrow"
	case Lapped, LappedTurned, LappedRaw:
		mend = "lap the plies by what it is out: further where the swatch is too wide, less where it is too narrow"
	}
	piece := p.swatchPiece()
	return ticket.Step{
		Do: "Cut two test pieces of the same cloth, and seam them as below", At: ticket.Long(piece), From: "side to side",
		Check: ticket.Check{
			What: "across the seamed swatch, square to the seam", Want: ticket.Long(p.swatchAcross()), Give: ticket.Long(straightness()),
			Mend: mend,
		},
	}
}

// swatch puts the test into the sheet, with its working.
func (p Plan) swatch(sh *ticket.Sheet) {
	piece := p.swatchPiece()
	sh.Lines = append(sh.Lines, line("the test swatch measures across", p.swatchAcross(),
		plus(piece, "one piece"), plus(piece, "the other"), minus(p.Upper.Taken, "taken from the one"), minus(p.Under.Taken, "taken from the other")))
	sh.Steps = append(sh.Steps, p.Swatch())
}

// first is the row that every seam begins with.
func (p Plan) first(do string, sides ticket.Sides) ticket.Step {
	st := ticket.Step{Do: do, Together: sides, At: ticket.Long(p.Spec.First), From: "the raw edge"}
	if !snip().Less(p.Spec.First) {
		st.Note = "mark notches with chalk or thread; a snip would reach the stitching"
	}
	return st
}

// trimStep is the trim after the first row; the plan says of which plies.
func (p Plan) trimStep(do string) ticket.Step {
	s := p.Spec
	if s.Trim == s.First {
		return ticket.Step{Do: "Clip loose threads", Note: "nothing of the allowance is trimmed off"}
	}
	return ticket.Step{
		Do: do, Trim: ticket.Long(s.Trim),
		Check: ticket.Check{
			What: "from the stitching to the trimmed edge", Want: ticket.Long(s.Trim),
			Mend: "trim again where it is too wide; where it is too narrow overcast the edge before going on",
		},
	}
}

// smaller warns of a ply that comes out smaller than drafted.
func (p Plan) smaller(sh *ticket.Sheet) {
	if p.Upper.Drift.Sign() < 0 || p.Under.Drift.Sign() < 0 {
		sh.Cautions = append(sh.Cautions, ticket.Caution{
			Text:  "The seam takes more than was cut for it: the piece comes out smaller than drafted.",
			Refer: "the working above says by how much on each ply",
		})
	}
}

// tight warns of an edge that is hidden with less to spare than the trade asks.
func (p Plan) tight(sh *ticket.Sheet, under string) {
	left := p.Spec.Second.Sub(p.Spec.Trim)
	if p.Spec.Kind == French {
		left = p.inside()
	}
	if left.Less(clearance()) {
		sh.Cautions = append(sh.Cautions, ticket.Caution{
			Text:  "Very little cloth lies between the trimmed edge and the stitching of the " + under + ": whiskers may come through.",
			Refer: "common practice; sew the test swatch first",
		})
	}
	if low := leastTrim(p.Spec.Fraying); p.Spec.First.Less(low) {
		sh.Cautions = append(sh.Cautions, ticket.Caution{
			Text:  "The first row lies very near the raw edge and may pull out of it.",
			Refer: "common practice; sew the test swatch first",
		})
	}
}

// cites are the sources of the allowances assumed.
func (p Plan) cites(sh *ticket.Sheet) {
	if slices.Contains(p.Assumed, "drafted") {
		sh.Sources = append(sh.Sources, standardCite())
	}
	sh.Sources = append(sh.Sources, straightnessCite())
}

// printed cites the rows of [Enclosed] for this kind of seam, and says whether
// their figures are those here.
func (p Plan) printed(sh *ticket.Sheet) {
	s := p.Spec
	name := s.Kind.String()
	first, second := s.First, p.Finished
	if s.Kind == HongKong { // the row that sets the strip stands first there
		first, second = s.Second, units.Length{}
	}
	for i := range enclosed {
		r := &enclosed[i]
		if r.Seam != name {
			continue
		}
		figures, other := false, false
		for _, f := range [...]struct{ least, most, is units.Length }{
			{r.First, r.FirstMost, first}, {r.Second, r.SecondMost, second}, {r.Trim, r.TrimMost, s.Trim},
			{r.Turn, r.TurnMost, p.Turned}, {r.Strip, r.StripMost, s.Strip},
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
