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
		noun.Of[Dart]("seam.dart"),
		noun.Of[Edge]("seam.edge"),
		noun.Of[Match]("seam.match"),
		noun.Of[Assembly]("seam.assembly"),
		noun.Of[Meeting]("seam.meeting"),
		noun.Of[Letting]("seam.letting"),
		noun.Of[Lengthening]("seam.lengthening"),
		noun.Of[Binding]("seam.binding"),
		noun.Of[Row]("seam.row"),
		noun.Of[Pivot]("seam.pivot"),
		noun.Of[Favour]("seam.favour"),
		noun.Of[Roll]("seam.roll"),
		noun.Of[Easing]("seam.easing"),
	)
}
