package hem

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A TuckWidthRow is a printed depth of tuck. The first row of a kind is its default, or
// the row that says metric on a metric tape.
type TuckWidthRow struct {
	Name   string       // what the source calls it
	Kind   TuckKind     // the kind of tuck
	Depth  units.Length // from fold to stitching
	Source string       // id of the source, see source.Lookup
	Place  string       // where in it
	Known  source.Known // how the figure is known
}

// A TuckSpaceRow is a printed rule for the clear cloth between tucks.
type TuckSpaceRow struct {
	Name   string       // what the source says of it
	Kind   TuckKind     // the kind of tuck
	Space  units.Ratio  // clear cloth between two tucks, as part of the depth of one
	Source string       // id of the source, see source.Lookup
	Place  string       // where in it
	Known  source.Known // how the figure is known
}

// TuckWidths yields the table of depths of tucks.
func TuckWidths() iter.Seq[TuckWidthRow] { return tuckWidths.All() }

// TuckSpaces yields the table of spaces between tucks. The first row of a kind is
// its default.
func TuckSpaces() iter.Seq[TuckSpaceRow] { return tuckSpaces.All() }

var (
	tuckWidths = source.Table[TuckWidthRow]{
		{"pin tuck", PinTuck, inches(0, 1, 16), "adding-tucks-page", "", source.Read},
		{"narrow tuck", SpacedTuck, inches(0, 1, 8), "handicraft-for-girls", "exercise 41", source.Read},
		{"tuck of a skirt", SpacedTuck, inches(0, 1, 2), "clothing-and-health", "tucks", source.Read},
		{"nun's tuck, this or more", SpacedTuck, inches(2, 0, 1), "new-dressmaker", "page 101", source.Read},
		{"growth tuck of a hem", GrowthTuck, inches(0, 1, 2), "growth-tuck-hem-page", "", source.Read},
		{"pin tuck, metric", PinTuck, units.Millimetre.Of(2), "", "", source.Practice},
	}

	tuckSpaces = source.Table[TuckSpaceRow]{
		{"ordinary muslin", SpacedTuck, units.RatioOf(1, 2), "home-school-sewing", "chapter XXI", source.Read},
		{"as wide as the tuck", SpacedTuck, units.RatioOf(1, 1), "tuck-gauge-column", "", source.Read},
		{"as wide as the tuck, on old garments", GrowthTuck, units.RatioOf(1, 1), "growth-tuck-page", "", source.Read},
	}
)

// pinWidth is the row of a pin tuck.
func pinWidth(t units.Tape) TuckWidthRow { return onTape(t, tuckWidths[0], tuckWidths[5]) }

// A GrowthRow is a printed amount by which a child's garment is let out for one size.
type GrowthRow struct {
	Garment string       // what is let out, lower case
	Removed units.Length // how much for one size, in the length
	Source  string       // id of the source, see source.Lookup
	Place   string       // where in it
	Known   source.Known // how the figure is known
}

// Growths yields the table of what a child's garment is let out by.
func Growths() iter.Seq[GrowthRow] { return growths.All() }

var growths = source.Table[GrowthRow]{
	{"sizes 1 to 3, above the waist", inches(0, 1, 2), "growing-clothes-article", "", source.Read},
	{"sizes 1 to 3, below the waist", inches(0, 1, 2), "growing-clothes-article", "", source.Read},
	{"sizes 4 to 6, skirt of a short dress", inches(1, 1, 2), "growing-clothes-article", "", source.Read},
	{"sizes 4 to 6, bodice", inches(0, 1, 2), "growing-clothes-article", "", source.Read},
	{"floor-length skirt", inches(2, 1, 4), "growing-clothes-article", "", source.Read},
}
