package gather

import (
	"embed"

	"example.com/clothyard/units/noun"
)

//go:embed words.txt examples.json
var files embed.FS

// Nouns are the nouns of this package.
func Nouns() []noun.Entry {
	return noun.List(files,
		noun.Of[Strip]("gather.strip"),
		noun.Of[Ruffle]("gather.ruffle"),
		noun.Of[Cuff]("gather.cuff"),
		noun.Of[Band]("gather.band"),
		noun.Of[Pleats]("gather.pleats"),
		noun.Of[Cartridge]("gather.cartridge"),
		noun.Of[Kick]("gather.kick"),
		noun.Of[Elastic]("gather.elastic"),
		noun.Of[Shirring]("gather.shirring"),
		noun.Of[CircleSkirt]("gather.circle"),
		noun.Of[Flounce]("gather.flounce"),
		noun.Of[Tiers]("gather.tiers"),
		noun.Of[Gores]("gather.gores"),
		noun.Of[Godet]("gather.godet"),
	)
}
