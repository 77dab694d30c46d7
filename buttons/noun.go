package buttons

import (
	"embed"

	"example.com/clothyard/units/noun"
)

//go:embed words.txt examples.json
var files embed.FS

// Nouns are the nouns of this package.
func Nouns() []noun.Entry {
	return noun.List(files,
		noun.Of[Row]("buttons.row"),
		noun.Of[Hole]("buttons.hole"),
		noun.Of[Lap]("buttons.lap"),
		noun.Of[Loop]("buttons.loop"),
		noun.Of[Cover]("buttons.cover"),
		noun.Of[Stock]("buttons.stock"),
	)
}
