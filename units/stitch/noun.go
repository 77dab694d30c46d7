package stitch

import (
	"embed"

	"example.com/clothyard/units/noun"
)

//go:embed words.txt examples.json
var files embed.FS

// Nouns are the nouns of this package.
func Nouns() []noun.Entry {
	return noun.List(files,
		noun.Of[Density]("stitch.density"),
		noun.Of[Setting]("stitch.setting"),
		noun.Of[Thread]("stitch.thread"),
		noun.Of[Garment]("stitch.garment"),
	)
}
