package hem

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A TurnRow is a printed pair of turns. The first row of a kind is its default, or the
// row that says metric on a metric tape; the rest stand for comparison.
type TurnRow struct {
	Name   string       // what the source makes of it
	Kind   string       // double, narrow, rolled, circular or turn-up
	First  units.Length // first turn; from the raw edge; zero where the source leaves it open
	Depth  units.Length // the hem that shows; zero where the source leaves it open
	Trim   units.Length // what is left of the first turn; zero where it is not trimmed
	Source string       // id of the source, see source.Lookup
	Place  string       // where in it
	Known  source.Known // how the figure is known
}

// Turns yields the table of turns.
func Turns() iter.Seq[TurnRow] { return turns.All() }

var (
	babyTurn   = turns[2]
	rolledTurn = turns[10]
	rolledMost = turns[11]

	turns = source.Table[TurnRow]{
		{"wide hem", "double", inches(0, 1, 4), units.Length{}, units.Length{}, "cotton-dress-bulletin", "wide hem", source.Read},
		{"narrow hem", "narrow", inches(0, 1, 4), inches(0, 1, 4), units.Length{}, "cotton-dress-bulletin", "narrow hem", source.Read},
		{"baby hem", "narrow", inches(0, 1, 2), inches(0, 1, 8), inches(0, 1, 8), "baby-hem-article", "", source.Read},
		{"petticoat hem", "double", inches(0, 1, 4), units.Inch.Of(2), units.Length{}, "clothing-and-health", "petticoat", source.Read},
		{"apron hem", "double", inches(0, 1, 4), units.Inch.Mixed(3, 1, 2), units.Length{}, "clothing-and-health", "apron", source.Read},
		{"towel hem", "double", inches(0, 1, 8), inches(0, 1, 4), units.Length{}, "clothing-and-health", "towel", source.Read},
		{"narrow hem", "narrow", inches(0, 1, 16), inches(0, 1, 8), units.Length{}, "dressmaking-course-two", "page 6", source.Read},
		{"narrow hem", "narrow", mm(2), mm(2), units.Length{}, "needlework-encyclopedia", "chapter 1", source.Read},
		{"napkin hem", "narrow", inches(0, 1, 4), inches(0, 1, 4), units.Length{}, "napkin-corner-page", "", source.Read},
		{"clean-finished hem", "double", inches(0, 1, 4), units.Length{}, units.Length{}, "hem-preparation-page", "", source.Read},
		{"roll of a baby hem", "rolled", units.Length{}, inches(0, 1, 8), units.Length{}, "baby-hem-article", "", source.Read},
		{"rolled hem, at most", "rolled", units.Length{}, mm(3), units.Length{}, "garment-hem-course", "rolled hem", source.Read},
		{"rolled by hand", "rolled", inches(0, 1, 4), units.Length{}, units.Length{}, "hand-rolled-page", "", source.Read},
		{"rolled by hand, fine", "rolled", inches(0, 1, 16), units.Length{}, units.Length{}, "hand-rolled-page", "", source.Read},
		{"circle skirt", "circular", units.Length{}, inches(0, 1, 4), units.Length{}, "cotton-dress-bulletin", "circle skirt", source.Read},
		{"deep curve", "circular", inches(0, 1, 2), inches(0, 1, 2), units.Length{}, "deep-curve-hem-page", "", source.Read},
		{"trouser turn-up", "turn-up", inches(1, 1, 2), inches(1, 1, 2), units.Length{}, "trouser-turn-up-page", "", source.Read},
		{"trouser turn-up", "turn-up", units.Centimetre.Of(1), units.Centimetre.Frac(7, 2), units.Length{}, "trouser-cuff-page", "", source.Read},
		{"narrow trouser turn-up", "turn-up", units.Centimetre.Frac(1, 2), units.Centimetre.Frac(5, 2), units.Length{}, "trouser-cuff-page", "", source.Read},
		{"clean-finished hem, metric", "double", mm(6), units.Length{}, units.Length{}, "hem-preparation-page", "", source.Read},
		{"narrow hem, metric", "narrow", mm(5), mm(5), units.Length{}, "", "", source.Practice},
		{"flared skirt, metric", "circular", mm(10), mm(10), units.Length{}, "flared-hem-page", "", source.Read},
	}
)

// wideTurn is the row whose first turn a double hem has by default.
func wideTurn(t units.Tape) TurnRow { return onTape(t, turns[0], turns[19]) }

// narrowTurn, rollTurn, circleTurn and insideTurn are the rows of a narrow hem, of a
// rolled one, of one round a circle, and of what is turned in inside a turn-up.
func narrowTurn(t units.Tape) TurnRow { return onTape(t, turns[1], turns[20]) }

func rollTurn(t units.Tape) TurnRow { return onTape(t, rolledTurn, rolledMost) }

func circleTurn(t units.Tape) TurnRow { return onTape(t, turns[14], turns[21]) }

func insideTurn(t units.Tape) TurnRow { return onTape(t, turns[16], turns[17]) }

// onTape is the row for a tape.
func onTape[R any](t units.Tape, inch, metric R) R {
	if t == units.MetricTape {
		return metric
	}
	return inch
}

// all cites the row that is the default, and then the rows that print something else.
func (t TurnRow) all(sh *ticket.Sheet, what string) {
	cite(sh, true, t.cite(what))
	for _, other := range turns {
		if other.Kind == t.Kind && other.Known != source.Practice && (other.First != t.First || other.Depth != t.Depth && !t.Depth.IsZero()) {
			cite(sh, true, other.cite("another pair of turns, "+other.Name))
		}
	}
}

func (t TurnRow) cite(what string) source.Cite {
	return source.Cite{For: what, ID: t.Source, Place: t.Place, Known: t.Known}
}
