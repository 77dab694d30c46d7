package hem

import (
	"embed"

	"example.com/clothyard/units/noun"
)

//go:embed words.txt examples.json
var files embed.FS

// Nouns are the nouns of this package.
func Nouns() []noun.Entry {
	return noun.List(files,
		noun.Of[Single]("hem.single"),
		noun.Of[Double]("hem.double"),
		noun.Of[Narrow]("hem.narrow"),
		noun.Of[Rolled]("hem.rolled"),
		noun.Of[ShirtTail]("hem.shirt-tail"),
		noun.Of[Circular]("hem.circular"),
		noun.Of[Slit]("hem.slit"),
		noun.Of[SeamSlit]("hem.seam-slit"),
		noun.Of[Blind]("hem.blind"),
		noun.Of[Faced]("hem.faced"),
		noun.Of[BiasFaced]("hem.bias-faced"),
		noun.Of[Bound]("hem.bound"),
		noun.Of[DoubleBound]("hem.double-bound"),
		noun.Of[TurnUp]("hem.turn-up"),
		noun.Of[Mitre]("hem.mitre"),
		noun.Of[Casing]("hem.casing"),
		noun.Of[Tucks]("hem.tucks"))
}
