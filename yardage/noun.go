package yardage

import (
	"embed"

	"example.com/clothyard/units/noun"
)

//go:embed words.txt examples.json
var files embed.FS

// Nouns are the nouns of this package.
func Nouns() []noun.Entry {
	return noun.List(files,
		noun.Of[Width]("yardage.width"),
		noun.Of[Remnant]("yardage.remnant"),
		noun.Of[Purchase]("yardage.purchase"),
		noun.Of[Price]("yardage.price"),
		noun.Of[Panels]("yardage.panels"),
		noun.Of[Bias]("yardage.bias"),
		noun.Of[Swatch]("yardage.swatch"),
		noun.Of[Pieces]("yardage.pieces"),
		noun.Of[Bill]("yardage.bill"),
	)
}
