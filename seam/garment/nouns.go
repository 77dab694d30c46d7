package garment

import (
	"slices"

	"example.com/clothyard/buttons"
	"example.com/clothyard/gather"
	"example.com/clothyard/hem"
	"example.com/clothyard/seam"
	"example.com/clothyard/seam/alter"
	"example.com/clothyard/seam/dart"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/stitch"
	"example.com/clothyard/units/strip"
	"example.com/clothyard/yardage"
	"example.com/clothyard/yardage/layout"
)

// Nouns are the nouns of the whole library.
func Nouns() []noun.Entry {
	return slices.Concat(seam.Nouns(), edge.Nouns(), dart.Nouns(), alter.Nouns(), hem.Nouns(), gather.Nouns(), buttons.Nouns(), yardage.Nouns(), layout.Nouns(), strip.Nouns(), stitch.Nouns())
}

// registry finds the noun of a part.
var registry = noun.NewRegistry(Nouns())
