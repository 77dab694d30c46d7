package hem

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Sheet is the work in steps, the working, and what it rests on. Every line of
// the working passes [ticket.Line.Check].
func (p Plan) Sheet() ticket.Sheet {
	sh := ticket.Sheet{Title: p.Spec.Title(), Assumed: p.Assumed}
	if p.Spec.Kind() == "" {
		return sh // the plan of no hem has nothing to say
	}
	sh.Answer = p.answer()
	p.Spec.sheet(p, &sh)
	sh.Cautions = append(sh.Cautions, ticket.IronCare(), ticket.CutCare())
	return sh
}

// answer is what the hem takes, the strip that it needs, and the guide at the machine.
func (p Plan) answer() (lines []ticket.Line) {
	if !p.Taken.IsZero() {
		lines = append(lines, line("it takes", ticket.Long(p.Taken)).Turned("it stands out by"))
	}
	for _, s := range p.Strips {
		lines = append(lines, line("cut the strip wide", ticket.Long(s.Width)))
	}
	if !p.FinishedToStitch.IsZero() {
		lines = append(lines, line("stitch from the finished edge at", ticket.Long(p.FinishedToStitch)))
	}
	return lines
}

// give is what a hand keeps to.
func (p Plan) give() units.Length { return give(p.Spec.Allowed().Tape) }

// assumes reports whether the field of that key rests on a default.
func (p Plan) assumes(key string) bool { return slices.Contains(p.Assumed, key) }

func line(label string, result ticket.Amount, terms ...ticket.Term) ticket.Line {
	return ticket.Line{Label: label, Terms: terms, Result: result}
}

func term(op ticket.Op, a ticket.Amount, name string) ticket.Term {
	return ticket.Term{Op: op, Amount: a, Name: name}
}

func plus(l units.Length, name string) ticket.Term { return term(ticket.Plus, ticket.Long(l), name) }

func minus(l units.Length, name string) ticket.Term { return term(ticket.Minus, ticket.Long(l), name) }

// either is the first of two texts, the second where n is negative.
func either(n units.Length, text, negative string) string {
	if n.Sign() < 0 {
		return negative
	}
	return text
}

// takes is the line of what the hem takes.
func (p Plan) takes(terms ...ticket.Term) ticket.Line {
	return line("taken by the hem", ticket.Long(p.Taken), terms...)
}

// How the garment comes out, by its drift.
const (
	longer  = "garment comes out longer by"
	shorter = "garment comes out shorter by"
)

// begin is what the working begins with: what the hem takes, what is cut off, the drift.
func (p Plan) begin(sh *ticket.Sheet, takes ticket.Line, out, in string) {
	a := p.Spec.Allowed()
	sh.Lines = append(sh.Lines, takes)
	if !p.CutOff.IsZero() {
		sh.Lines = append(sh.Lines, line("to cut off the allowance drafted", ticket.Long(p.CutOff), plus(a.Drafted, "drafted"), minus(a.Cut, "as cut")).
			Turned("left on beyond the allowance drafted"))
	}
	sh.Lines = append(sh.Lines, line(out, ticket.Long(p.Drift), plus(a.Cut, "allowance as cut"), minus(p.Taken, "taken")).Turned(in))
}

// drifts warns of a garment that comes out longer or shorter.
func (p Plan) drifts(sh *ticket.Sheet) {
	switch p.Drift.Sign() {
	case 1:
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "The hem takes less than the allowance: the garment comes out longer than drafted. " +
			"To keep the length, cut the allowance to what the hem takes before turning it."})
	case -1:
		sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "The hem takes more than the allowance: it turns up cloth of the garment, which comes out shorter than drafted."})
	}
}

// A bend is how the working names what a flared or curved edge asks of the turned cloth.
type bend struct {
	terms       []ticket.Term // how far apart the two lines are
	each, less  string        // what each side edge does where the reach times the slope is positive, and where it is negative
	all, lacks  string        // the same of all of them
	circle      string        // the circle round which it is reckoned
	opens, edge string        // the edge that is hemmed, as it drifts and as it is sewn
}

// turnedUp is the bend of a hem turned up by its depth.
func turnedUp(depth units.Length) bend {
	return bend{
		terms: []ticket.Term{term(ticket.Plus, two, ""), term(ticket.By, ticket.Long(depth), "depth")},
		each:  "each side edge, mirrored, lies inside its straight run by", less: "each side edge, mirrored, lies outside its straight run by",
		all: "turned cloth to lose, at the inner edge of the hem", lacks: "turned cloth too short by",
		circle: "round a circle of twice the depth as radius",
	}
}

// edges are the lines of what the slope and the curves of the edge come to.
func (p Plan) edges(sh *ticket.Sheet, b bend) {
	e := p.Spec.edge()
	sloped := term(ticket.By, ticket.Times(e.slope.Abs()), "slope")
	if !e.slope.IsZero() {
		sh.Lines = append(sh.Lines,
			line(either(p.Inset, b.each, b.less), ticket.Long(p.Inset.Abs()), append(b.terms, sloped)...),
			line(either(p.Excess, b.all, b.lacks), ticket.Long(p.Excess.Abs()), plus(p.Inset.Abs(), "each edge"), term(ticket.By, ticket.Of(e.edges), "edges")))
		if !p.Drift.IsZero() {
			sh.Lines = append(sh.Lines, line("drift "+either(p.SweepDrift, "adds to", "takes from")+" the edge that is hemmed", ticket.Long(p.SweepDrift.Abs()),
				plus(p.Drift.Abs(), "drift"), sloped, term(ticket.By, ticket.Of(e.edges), "edges")))
		}
	}
	lose, gain, reach := e.bends(p.Spec.reach())
	whole := units.RatioOf(1, 1)
	girth := term(ticket.Plus, ticket.About(arc(whole, reach)), b.circle)
	if !lose.IsZero() {
		sh.Lines = append(sh.Lines, line("turned cloth to lose on the curves", ticket.About(arc(lose, reach)), girth, term(ticket.By, ticket.Times(lose), "of a circle")))
	}
	if !gain.IsZero() {
		sh.Lines = append(sh.Lines, line("turned cloth too short on the curves by", ticket.About(arc(gain, reach)), girth, term(ticket.By, ticket.Times(gain), "of a circle")))
	}
	if !e.radius.IsZero() {
		sh.Lines = append(sh.Lines, line("round the finished edge, as sewn", ticket.About(p.Round),
			term(ticket.Plus, ticket.About(arc(whole, e.radius.Add(p.Drift))), "round the whole circle"), term(ticket.By, ticket.Times(e.circle), "of a circle")))
	}
	p.swept(sh, "edge that is hemmed, as sewn")
	if turn := e.circle.Sub(e.hollow); !e.sweep.IsZero() && !turn.IsZero() && !p.Drift.IsZero() {
		sh.Lines = append(sh.Lines, line("the same, with the drift of its curves", ticket.About(p.Round),
			term(ticket.Plus, ticket.About(arc(whole, p.Drift)), "round a circle of the drift as radius"),
			term(ticket.By, ticket.Times(turn), "of a circle, the convex curves less the concave"), plus(p.Swept, "along the straight")))
	}
}

// swept is the line of the edge as sewn.
func (p Plan) swept(sh *ticket.Sheet, label string) {
	sweep := p.Spec.edge().sweep
	if sweep.IsZero() {
		return
	}
	op := ticket.Plus
	if p.SweepDrift.Sign() < 0 {
		op = ticket.Minus
	}
	sh.Lines = append(sh.Lines, line(label, ticket.Long(p.Swept), plus(sweep, "drafted"), term(op, ticket.Long(p.SweepDrift.Abs()), "drift")))
}

// mark is the step that every hem begins with.
func (p Plan) mark(note string) ticket.Step {
	return ticket.Step{
		Do: "Mark the drafted finished line and cut the allowance even below it", At: ticket.Long(p.LineToRaw), From: "the drafted finished line", Note: note,
	}
}

// The notes on seams that cross a hem.
const (
	doubles = "Seams that cross the hem: press the ridges of neighbouring seams opposite ways, since the hem doubles each of them"
	trebles = "Seams that cross the hem: press the ridges of neighbouring seams opposite ways, since the hem trebles each of them"
)

// ease is the row that draws up what the turned cloth has to lose; it lies within what is
// turned first. There is none where nothing has to be lost.
func (p Plan) ease(sh *ticket.Sheet, turned units.Length, note string) {
	if p.Fullness.IsZero() {
		return
	}
	if note == "" && p.Excess.Sign() <= 0 {
		note = "Draw it up on the convex curves only; over a straight run it lies flat"
	} else if note == "" {
		note = "Instead, where the side seams are not yet sewn, cut each side edge as the mirror of itself about every fold: then nothing is left to ease"
	}
	sh.Steps = append(sh.Steps, ticket.Step{
		Do: "Run a row of long ease stitches along the turned cloth, to be drawn up from the bobbin thread",
		At: ticket.Long(easeRow(p.Spec.Allowed().Tape).Min(turned.DivInt(2))), From: "the raw edge", Note: note,
	})
}

// fullness is how turned cloth is made to lie that is too long or too short.
func (p Plan) fullness() string {
	switch {
	case !p.Fullness.IsZero() && !p.Lack.IsZero():
		return "Draw up the fullness of the convex curves and shrink it with steam; on the concave curves stretch the turned edge, and snip it to the first fold if it will not lie"
	case !p.Fullness.IsZero():
		return "Draw up the fullness evenly between the seams and shrink it with steam before stitching"
	case p.Excess.Sign() < 0:
		return "The turned cloth is too short to lie flat: cut the side edges as mirrors about each fold, or let the side seams open within the hem"
	case !p.Lack.IsZero():
		return "The turned cloth is too short to lie flat round the concave curves: stretch its edge under the iron, and snip it to the first fold if it will not lie"
	}
	return ""
}

// once is the turn of a hem that is turned once, its raw edge finished flat.
func (p Plan) once(sh *ticket.Sheet, depth units.Length) {
	sh.Steps = append(sh.Steps, p.mark(doubles), ticket.Step{Do: "Finish the raw edge flat: overcast, bind or pink it"})
	p.ease(sh, depth, "")
	sh.Steps = append(sh.Steps, ticket.Step{
		Do: "Turn the hem up and press the fold", At: ticket.Long(depth), From: "the raw edge", Press: "to the wrong side",
		Note: p.fullness(), Check: p.deep("from the finished edge to the raw edge", depth),
	})
}

// rawShows warns of a raw edge on the wrong side.
func rawShows(sh *ticket.Sheet) {
	sh.Cautions = append(sh.Cautions, ticket.Caution{Text: "The raw edge of a single hem shows on the wrong side: overcast, bind or pink it before it is turned, or cloth that frays will work loose."})
}

// deep is the check of a depth.
func (p Plan) deep(what string, depth units.Length) ticket.Check {
	return ticket.Check{
		What: what, Want: ticket.Long(depth), Give: ticket.Long(p.give().Min(depth.DivInt(4))),
		Mend: "Press the last fold out and fold again from the mark; do not make it up in the stitching",
	}
}

// stitch is the row of a hem that is turned up.
func (p Plan) stitch() ticket.Step {
	return ticket.Step{
		Do: "Stitch the hem from the wrong side, with the guide at the finished edge", At: ticket.Long(p.FinishedToStitch), From: "the finished edge",
		Note: "Set a tape on the plate if the plate has no such mark",
	}
}

// length is the last step: the length of the garment.
func (p Plan) length() ticket.Step {
	check := ticket.Check{
		What: "from the finished edge to the drafted finished line", Want: ticket.Long(units.Length{}), Give: ticket.Long(p.give()),
		Mend: "Unpick, press flat, and turn the last fold on the marked line",
	}
	switch p.Drift.Sign() {
	case 1:
		check.What, check.Mend = "from the drafted finished line down to the finished edge", "Unpick and turn it again from the raw edge; where the drafted length is wanted, first cut the allowance to what the hem takes"
	case -1:
		check.What, check.Mend = "from the drafted finished line up to the finished edge", "Unpick and turn it again from the raw edge; where the drafted length is wanted, take a shallower hem or face the edge"
	}
	check.Want = ticket.Long(p.Drift.Abs())
	return ticket.Step{Do: "Press the hem and measure the length", Check: check}
}

// cite adds a citation where it holds.
func cite(sh *ticket.Sheet, holds bool, cites ...source.Cite) {
	if holds {
		sh.Sources = append(sh.Sources, cites...)
	}
}

// onTheLine cites that a hem takes what is cut where nothing says what it takes.
func (p Plan) onTheLine(sh *ticket.Sheet) {
	cite(sh, p.assumes("take") && p.assumes("depth"), source.Practise("finished edge on the drafted line"))
}

// end is what the citations end with. Eased says that the turned cloth is eased on a row.
func (p Plan) end(sh *ticket.Sheet, eased bool) {
	e := p.Spec.edge()
	cite(sh, !p.Fullness.IsZero() && eased, source.Cite{For: "row of ease stitches from the raw edge", ID: "apparel-textbook", Place: "page 459", Known: source.Read})
	cite(sh, !e.slope.IsZero(), source.Cite{For: "fullness of a flared hem and its mirrored side edge, by geometry", Known: source.Computed})
	cite(sh, !e.circle.IsZero() || !e.hollow.IsZero(), source.Cite{For: "fullness of a hem on a curve, by geometry", Known: source.Computed})
}

var (
	stitched = source.Practise("distance of the stitching")
	addsUp   = source.Practise("depth of the hem and its turns add up to what it takes")
)
