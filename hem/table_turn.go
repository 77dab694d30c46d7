package hem

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// A Turn is a printed pair of turns. The first row for wide and for narrow hems
// is the default; the rest stand for comparison.
type Turn struct {
	Name   string       // what the source makes of it
	Kind   Kind         // Double or Narrow
	First  units.Length // first turn; from the raw edge
	Depth  units.Length // the hem that shows; zero where the source leaves it open
	Trim   units.Length // what is left of the first turn; zero where it is not trimmed
	Source string       // id of the source, see ticket.Lookup
	Place  string       // where in it
	Known  ticket.Known // how the figure is known
}

// Turns yields the table of turns.
func Turns(yield func(Turn) bool) {
	for _, t := range turns {
		if !yield(t) {
			return
		}
	}
}

var (
	wideTurn   = turns[0]
	narrowTurn = turns[1]
	babyTurn   = turns[2]

	turns = [...]Turn{
		{"wide hem", Double, inches(0, 1, 4), units.Length{}, units.Length{}, "cotton-dress-bulletin", "wide hem", ticket.Read},
		{"narrow hem", Narrow, inches(0, 1, 4), inches(0, 1, 4), units.Length{}, "cotton-dress-bulletin", "narrow hem", ticket.Read},
		{"baby hem", Narrow, inches(0, 1, 2), inches(0, 1, 8), inches(0, 1, 8), "baby-hem-article", "", ticket.Read},
		{"petticoat hem", Double, inches(0, 1, 4), units.Inch.Of(2), units.Length{}, "clothing-and-health", "petticoat", ticket.Read},
		{"apron hem", Double, inches(0, 1, 4), units.Inch.Mixed(3, 1, 2), units.Length{}, "clothing-and-health", "apron", ticket.Read},
		{"towel hem", Double, inches(0, 1, 8), inches(0, 1, 4), units.Length{}, "clothing-and-health", "towel", ticket.Read},
		{"narrow hem", Narrow, inches(0, 1, 16), inches(0, 1, 8), units.Length{}, "dressmaking-course-two", "page 6", ticket.Read},
		{"narrow hem", Narrow, units.Millimetre.Of(2), units.Millimetre.Of(2), units.Length{}, "needlework-encyclopedia", "chapter 1", ticket.Read},
		{"napkin hem", Narrow, inches(0, 1, 4), inches(0, 1, 4), units.Length{}, "napkin-corner-page", "", ticket.Read},
		{"clean-finished hem", Double, inches(0, 1, 4), units.Length{}, units.Length{}, "hem-preparation-page", "", ticket.Read},
	}
)
