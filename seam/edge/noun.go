package edge

import (
	"embed"

	"example.com/clothyard/units/noun"
)

//go:embed words.txt examples.json
var files embed.FS

// Nouns are the nouns of this package.
func Nouns() []noun.Entry {
	return noun.List(files,
		noun.Of[Spec]("seam.edge"),
		noun.Of[Pair]("seam.pair"),
		noun.Of[Assembly]("seam.assembly"),
		noun.Of[Meeting]("seam.meeting"),
	)
}
