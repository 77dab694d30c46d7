package alter

import (
	"embed"

	"example.com/clothyard/units/noun"
)

//go:embed words.txt examples.json
var files embed.FS

// Nouns are the nouns of this package.
func Nouns() []noun.Entry {
	return noun.List(files,
		noun.Of[Letting]("seam.letting"),
		noun.Of[Lengthening]("seam.lengthening"),
		noun.Of[Easing]("seam.easing"),
	)
}
