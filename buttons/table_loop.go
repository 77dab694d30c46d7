package buttons

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A LoopRow is what a tube for button loops is made of.
type LoopRow struct {
	Name   string       // what it says
	Tape   units.Tape   // the tape that it is for
	Strip  units.Length // width of the bias strip
	Width  units.Length // from the fold to the stitching: the tube is so wide
	Seam   units.Length // each end of a loop in the seam
	Source string       // id of the source, see [source.Lookup]
	Known  source.Known // how the figure is known
}

// The first row of a tape that has a figure is its default.
var loopRows = source.Table[LoopRow]{
	{"tube", units.MetricTape, units.Centimetre.Frac(5, 2), units.Millimetre.Of(5), units.Length{}, "loop-tutorial", source.Read},
	{"tube", units.InchTape, units.Inch.Of(1), units.Inch.Frac(3, 16), units.Length{}, "", source.Practice},
	{"ends in the seam", units.MetricTape, units.Length{}, units.Length{}, units.Centimetre.Frac(3, 2), "", source.Practice},
	{"ends in the seam", units.InchTape, units.Length{}, units.Length{}, units.Inch.Frac(5, 8), "", source.Practice},
}

// LoopRows are the figures.
func LoopRows() iter.Seq[LoopRow] { return loopRows.All() }

// corded is how many times as long as the strip the cord in it is: one half fills the
// tube, the other draws it over.
const corded = 2
