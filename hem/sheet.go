package hem

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

var (
	narrowMax = units.Millimetre.Of(15) // the most that a narrow hem takes in all
	maxStep   = 14                      // steps, lines and citations at most
	two       = ticket.Of(2)            // as a factor of a working
)

// give is what a hand keeps to, easeRow the distance of a row of ease stitches from the
// raw edge; both common practice on a metric tape.
func give(t units.Tape) units.Length {
	return t.Of(units.Inch.Frac(1, 16), units.Millimetre.Of(2))
}

func easeRow(t units.Tape) units.Length {
	return t.Of(units.Inch.Frac(1, 4), units.Millimetre.Of(6))
}

// Sheet is the work in steps, the working, and what it rests on. Every line of
// the working passes [ticket.Line.Check].
func (p Plan) Sheet() ticket.Sheet {
	s := ticket.Sheet{Title: p.title(), Assumed: p.Assumed}
	if !p.Spec.Kind.Valid() {
		return s
	}
	s.Lines = p.lines()
	s.Steps = p.steps()
	s.Cautions = p.cautions()
	s.Sources = p.sources()
	return s
}

func (p Plan) title() string {
	switch p.Spec.Kind {
	case Single:
		return "Single hem"
	case Double:
		if p.Spec.First == p.Spec.Depth {
			return "Double hem of equal turns"
		}
		return "Double hem"
	case Narrow:
		return "Narrow hem"
	case Slit:
		if p.Spec.Opening == InSeam {
			return "Hem round an opening left in a seam"
		}
		return "Hem round a cut slit"
	case Blind:
		return "Blind hem"
	case Rolled:
		return "Rolled hem"
	case FacedHem:
		return "Faced hem"
	case BiasFaced:
		return "Hem faced on the bias"
	case Bound:
		if p.Spec.Doubled {
			return "Edge bound with a doubled binding"
		}
		return "Bound edge"
	case ShirtTail:
		return "Shirt-tail hem"
	case Circular:
		return "Hem of a circle"
	case TurnUp:
		return "Trouser turn-up"
	}
	return "Hem"
}

func (p Plan) cautions() []ticket.Caution {
	s := p.Spec
	cs := make([]ticket.Caution, 0, maxStep)
	if s.Kind != Slit && s.Kind != Bound {
		switch p.Drift.Sign() {
		case 1:
			cs = append(cs, ticket.Caution{Text: "The hem takes less than the allowance: the garment comes out longer than drafted. " +
				"To keep the length, cut the allowance to what the hem takes before turning it."})
		case -1:
			cs = append(cs, ticket.Caution{Text: "The hem takes more than the allowance: it turns up cloth of the garment, which comes out shorter than drafted."})
		}
	}
	if (s.Kind == Narrow || s.Kind == ShirtTail) && narrowMax.Less(p.Taken) {
		cs = append(cs, ticket.Caution{Text: "This takes more than is usual for a narrow hem.", Refer: "a course sets the limit: see the sources"})
	}
	if s.Kind == Rolled && rolledTurn.Depth.Less(s.Depth) {
		cs = append(cs, ticket.Caution{Text: "This is deeper than is usual for a rolled hem, and will not roll of itself.", Refer: "a course sets the limit: see the sources"})
	}
	if !p.Fullness.IsZero() && s.Kind.narrow() {
		cs = append(cs, ticket.Caution{Text: "A narrow hem has to lose its fullness within its own turns: press the first turn over a row of ease stitches and try a hand's length first."})
	}
	if s.Kind == Slit {
		cs = append(cs, ticket.Caution{Text: "Mark with chalk or thread, not with snips: a snip can be deeper than the turn that should hide it."})
		if s.Opening == Tucked || s.Opening == Faced {
			cs = append(cs, ticket.Caution{Text: "At the top of a cut slit there is no cloth to turn: the corner frays from the first wash unless it is held by the tuck or the facing."})
		}
		if p.Jog.Sign() < 0 {
			cs = append(cs, ticket.Caution{Text: "The hem takes more than the seam: the two edges of the opening gape below it."})
		}
	}
	if s.Kind == Circular {
		cs = append(cs, ticket.Caution{Text: "A circle drops where it is cut on the bias: hang it for a day, then level the edge from the floor before hemming it."})
	}
	if s.Kind == Bound && !p.Drift.IsZero() {
		cs = append(cs, ticket.Caution{Text: "A binding takes nothing from the garment: whatever is left below the drafted line makes it longer, and a neck or an armhole tighter."})
	}
	if s.Kind.faced() && s.Depth.Less(s.Favour.Add(s.Seam)) {
		cs = append(cs, ticket.Caution{Text: "The seam of the facing is wider than the facing is deep: trim and grade its allowances after stitching, or they stand out above it."})
	}
	if s.Kind.faced() && s.First.Less(s.Stitch) {
		cs = append(cs, ticket.Caution{Text: "The row lies beyond the turn of the facing's free edge and does not hold it: catch the edge by hand, or stitch nearer to its fold."})
	}
	if s.Kind == BiasFaced || s.Kind == Bound {
		cs = append(cs, ticket.Caution{Text: "A strip on the bias narrows as it is stretched: add to its width, and try a hand's length first."})
	}
	if s.Kind == TurnUp && !p.FinishedToStitch.Less(s.Depth) {
		cs = append(cs, ticket.Caution{Text: "The hem inside the leg reaches above the turn-up: its stitching shows on the right side. Take a shallower hem, or catch it by hand."})
	}
	if s.Kind == TurnUp && p.Excess.Sign() < 0 {
		cs = append(cs, ticket.Caution{Text: "A leg that narrows to the foot makes a turn-up too tight for the leg above it: cut its seams as mirrors about each fold."})
	}
	if s.oneFold() {
		cs = append(cs, ticket.Caution{Text: "The raw edge of a single hem shows on the wrong side: overcast, bind or pink it before it is turned, or cloth that frays will work loose."})
	}
	return append(cs, ticket.IronCare(), ticket.CutCare())
}

func (p Plan) sources() []source.Cite {
	s := p.Spec
	cs := make([]source.Cite, 0, maxStep)
	first, depth := slices.Contains(p.Assumed, "first"), slices.Contains(p.Assumed, "depth")
	switch {
	case s.Kind.narrow() && first && depth && slices.Contains(p.Assumed, "take"):
		cs = narrowTurn(s.Kind, s.Tape).citeWith(cs, "turns of a narrow hem")
	case s.Kind.narrow() && (first || depth):
		cs = append(cs, source.Practise("equal turns, so that the raw edge lies in the fold"))
	case first && s.Kind == TurnUp:
		cs = turnUpTurn.citeWith(cs, "hem inside a turn-up, as deep as the turn-up")
	case first && s.Kind.faced():
		cs = append(cs, facingStrip(s.Tape).cite("turn of the facing's free edge"))
	case first && s.Kind == Bound:
		cs = append(cs, bindingStrip.cite("width of a binding, its turn as deep as itself"))
	case first:
		cs = wideTurn(s.Tape).citeWith(cs, "first turn of a double hem")
	}
	if slices.Contains(p.Assumed, "take") && slices.Contains(p.Assumed, "depth") && !s.Kind.narrow() {
		cs = append(cs, source.Practise("finished edge on the drafted line"))
	}
	if s.Doubled {
		cs = append(cs, doubledStrip.cite("width of a doubled binding"))
	}
	if slices.Contains(p.Assumed, "seam") {
		switch {
		case s.Kind == Bound:
			cs = append(cs, source.Practise("seam of a binding as deep as the binding"))
		case slices.Contains(p.Assumed, "drafted") && slices.Contains(p.Assumed, "cut"):
			cs = append(cs, facingStrip(s.Tape).cite("seam of a facing"))
		default:
			cs = append(cs, source.Practise("seam of a facing on the drafted line"))
		}
	}
	if s.Kind == Blind && slices.Contains(p.Assumed, "back") {
		for i, b := range foldBacks {
			what := "edge of a blind hem beyond the fold"
			if i > 0 {
				what = "another such edge, " + b.Name
			}
			cs = append(cs, source.Cite{For: what, ID: b.Source, Place: b.Place, Known: b.Known})
		}
	}
	if slices.Contains(p.Assumed, "circle") {
		cs = append(cs, source.Practise("a whole circle"))
	}
	if slices.Contains(p.Assumed, "stitch") {
		cs = append(cs, source.Practise("distance of the stitching"))
	}
	if (s.Kind == Narrow || s.Kind == ShirtTail) && narrowMax.Less(p.Taken) {
		cs = append(cs, source.Cite{For: "most that a narrow hem takes", ID: "garment-hem-course", Place: "narrow folded hem", Known: source.Read})
	}
	if !s.Trim.IsZero() {
		cs = append(cs, babyTurn.cite("first turn stitched, trimmed and rolled"))
	}
	if s.Kind == Rolled && rolledTurn.Depth.Less(s.Depth) {
		cs = append(cs, rolledTurn.cite("most that a rolled hem is deep"), rolledMost.cite("the same in millimetres"))
	}
	if !p.Fullness.IsZero() && !s.Kind.stripped() && s.Kind != TurnUp {
		cs = append(cs, source.Cite{For: "row of ease stitches from the raw edge", ID: "apparel-textbook", Place: "page 459", Known: source.Read})
	}
	if !s.Slope.IsZero() {
		cs = append(cs, source.Cite{For: "fullness of a flared hem and its mirrored side edge, by geometry", Known: source.Computed})
	}
	if !s.Circle.IsZero() || !s.Hollow.IsZero() {
		cs = append(cs, source.Cite{For: "fullness of a hem on a curve, by geometry", Known: source.Computed})
	}
	if s.Kind == Slit {
		cs = append(cs, source.Practise("ends of a slit"))
	}
	if s.Kind.stripped() {
		return append(cs, source.Practise("parts of the strip add up to its width"))
	}
	return append(cs, source.Practise("depth of the hem and its turns add up to what it takes"))
}

// citeWith cites the row that is the default, and then the rows that print
// something else.
func (t Turn) citeWith(cs []source.Cite, what string) []source.Cite {
	cs = append(cs, t.cite(what))
	for _, other := range turns {
		if other.Kind == t.Kind && other.Known != source.Practice && (other.First != t.First || other.Depth != t.Depth && !t.Depth.IsZero()) {
			cs = append(cs, other.cite("another pair of turns, "+other.Name))
		}
	}
	return cs
}

func (t Turn) cite(what string) source.Cite {
	return source.Cite{For: what, ID: t.Source, Place: t.Place, Known: t.Known}
}

func (s Strip) cite(what string) source.Cite {
	return source.Cite{For: what, ID: s.Source, Place: s.Place, Known: s.Known}
}
