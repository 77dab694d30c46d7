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
		noun.Of[Plain]("seam.plain"),
		noun.Of[French]("seam.french"),
		noun.Of[FlatFelled]("seam.flat-felled"),
		noun.Of[Bound]("seam.bound"),
		noun.Of[TurnedStitched]("seam.turned-and-stitched"),
		noun.Of[MockFrench]("seam.mock-french"),
		noun.Of[MockFelled]("seam.mock-felled"),
		noun.Of[UntrimmedFell]("seam.untrimmed-fell"),
		noun.Of[Welt]("seam.welt"),
		noun.Of[Lapped]("seam.lapped"),
		noun.Of[LappedTurned]("seam.lapped-turned"),
		noun.Of[LappedRaw]("seam.lapped-raw"),
		noun.Of[Slot]("seam.slot"),
		noun.Of[Hairline]("seam.hairline"),
		noun.Of[HongKong]("seam.hong-kong"),
		noun.Of[SelfBound]("seam.self-bound"),
		noun.Of[Piped]("seam.piped"),
		noun.Of[Graded]("seam.graded"),
		noun.Of[Binding]("seam.binding"),
		noun.Of[Row]("seam.row"),
		noun.Of[Favour]("seam.favour"),
		noun.Of[Roll]("seam.roll"),
	)
}
