package seam

import (
	"embed"

	"example.com/clothyard/units/noun"
)

//go:embed words.txt examples.json
var files embed.FS

// Nouns are the nouns of this package.
func Nouns() []noun.Entry {
	return noun.List(files,
		noun.Of[Spec]("seam.seam"),
		noun.Of[Binding]("seam.binding"),
		noun.Of[Row]("seam.row"),
		noun.Of[Favour]("seam.favour"),
		noun.Of[Roll]("seam.roll"),
	)
}
