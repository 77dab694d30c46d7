package hem

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A Turn is a printed pair of turns. The first row of a kind is its default, or the
// row that says metric on a metric tape; the rest stand for comparison.
type Turn struct {
	Name   string       // what the source makes of it
	Kind   Kind         // Double, Narrow, Rolled, Circular or TurnUp
	First  units.Length // first turn; from the raw edge; zero where the source leaves it open
	Depth  units.Length // the hem that shows; zero where the source leaves it open
	Trim   units.Length // what is left of the first turn; zero where it is not trimmed
	Source string       // id of the source, see source.Lookup
	Place  string       // where in it
	Known  source.Known // how the figure is known
}

// Turns yields the table of turns.
func Turns() iter.Seq[Turn] { return turns.All() }

var (
	babyTurn   = turns[2]
	rolledTurn = turns[10]
	rolledMost = turns[11]
	turnUpTurn = turns[16]

	turns = source.Table[Turn]{
		{"wide hem", Double, inches(0, 1, 4), units.Length{}, units.Length{}, "cotton-dress-bulletin", "wide hem", source.Read},
		{"narrow hem", Narrow, inches(0, 1, 4), inches(0, 1, 4), units.Length{}, "cotton-dress-bulletin", "narrow hem", source.Read},
		{"baby hem", Narrow, inches(0, 1, 2), inches(0, 1, 8), inches(0, 1, 8), "baby-hem-article", "", source.Read},
		{"petticoat hem", Double, inches(0, 1, 4), units.Inch.Of(2), units.Length{}, "clothing-and-health", "petticoat", source.Read},
		{"apron hem", Double, inches(0, 1, 4), units.Inch.Mixed(3, 1, 2), units.Length{}, "clothing-and-health", "apron", source.Read},
		{"towel hem", Double, inches(0, 1, 8), inches(0, 1, 4), units.Length{}, "clothing-and-health", "towel", source.Read},
		{"narrow hem", Narrow, inches(0, 1, 16), inches(0, 1, 8), units.Length{}, "dressmaking-course-two", "page 6", source.Read},
		{"narrow hem", Narrow, units.Millimetre.Of(2), units.Millimetre.Of(2), units.Length{}, "needlework-encyclopedia", "chapter 1", source.Read},
		{"napkin hem", Narrow, inches(0, 1, 4), inches(0, 1, 4), units.Length{}, "napkin-corner-page", "", source.Read},
		{"clean-finished hem", Double, inches(0, 1, 4), units.Length{}, units.Length{}, "hem-preparation-page", "", source.Read},
		{"roll of a baby hem", Rolled, units.Length{}, inches(0, 1, 8), units.Length{}, "baby-hem-article", "", source.Read},
		{"rolled hem, at most", Rolled, units.Length{}, units.Millimetre.Of(3), units.Length{}, "garment-hem-course", "rolled hem", source.Read},
		{"rolled by hand", Rolled, inches(0, 1, 4), units.Length{}, units.Length{}, "hand-rolled-page", "", source.Read},
		{"rolled by hand, fine", Rolled, inches(0, 1, 16), units.Length{}, units.Length{}, "hand-rolled-page", "", source.Read},
		{"circle skirt", Circular, units.Length{}, inches(0, 1, 4), units.Length{}, "cotton-dress-bulletin", "circle skirt", source.Read},
		{"deep curve", Circular, inches(0, 1, 2), inches(0, 1, 2), units.Length{}, "deep-curve-hem-page", "", source.Read},
		{"trouser turn-up", TurnUp, inches(1, 1, 2), inches(1, 1, 2), units.Length{}, "trouser-turn-up-page", "", source.Read},
		{"trouser turn-up", TurnUp, units.Centimetre.Of(1), units.Centimetre.Frac(7, 2), units.Length{}, "trouser-cuff-page", "", source.Read},
		{"narrow trouser turn-up", TurnUp, units.Centimetre.Frac(1, 2), units.Centimetre.Frac(5, 2), units.Length{}, "trouser-cuff-page", "", source.Read},
		{"wide hem, metric", Double, units.Millimetre.Of(6), units.Length{}, units.Length{}, "", "", source.Practice},
		{"narrow hem, metric", Narrow, units.Millimetre.Of(5), units.Millimetre.Of(5), units.Length{}, "", "", source.Practice},
		{"hem of a circle, metric", Circular, units.Length{}, units.Millimetre.Of(5), units.Length{}, "", "", source.Practice},
	}
)

// wideTurn is the row whose first turn a double hem has by default.
func wideTurn(t units.Tape) Turn { return onTape(t, turns[0], turns[19]) }

// narrowTurn is the row whose depth a narrow hem of the kind has by default.
func narrowTurn(k Kind, t units.Tape) Turn {
	switch k {
	case Rolled:
		return onTape(t, rolledTurn, rolledMost)
	case Circular:
		return onTape(t, turns[14], turns[21])
	}
	return onTape(t, turns[1], turns[20])
}

// onTape is the row for a tape.
func onTape[R any](t units.Tape, inch, metric R) R {
	if t == units.MetricTape {
		return metric
	}
	return inch
}
