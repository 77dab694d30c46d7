package hem

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/safety"
	"example.com/clothyard/units/source"
)

// A CasingEaseRow is a printed allowance by which a casing is wider than what it holds.
type CasingEaseRow struct {
	Name   string       // what the source says of it
	Kind   CasingKind   // what the casing holds
	Ease   units.Length // how much wider the tunnel is; zero where Part
	Part   units.Ratio  // the same as a part of Width; zero where Ease
	Round  bool         // Ease is added to the measure round a rod, not to its diameter
	Source string       // id of the source, see source.Lookup
	Place  string       // where in it
	Known  source.Known // how the figure is known
}

// CasingEases yields the table of eases. The first row of a kind that
// lies on the tape is its default, for a rod the first for the measure that is given.
// For a rod it is what lets the rod through: a tunnel of at least half the measure round
// it, which is about 1 4/7 of its diameter.
func CasingEases() iter.Seq[CasingEaseRow] { return casingEases.All() }

// A CasingTurnRow is a printed turn of the raw edge of a casing, or the place of its
// rows.
type CasingTurnRow struct {
	Name   string       // what the source says of it
	Turn   units.Length // turned under; zero where the row is about the stitching
	Upper  units.Length // from the fold to the upper row; zero where none is printed
	Lower  units.Length // from the inner fold to the lower row; zero where none is printed
	Open   units.Length // left open in the lower row for threading; zero where none is printed
	Source string       // id of the source, see source.Lookup
	Place  string       // where in it
	Known  source.Known // how the figure is known
}

// CasingTurns yields the table of turns. The first row is the default, and the row
// edge stitched that of Lower; on a metric tape it is the row that says so.
func CasingTurns() iter.Seq[CasingTurnRow] { return casingTurns.All() }

var (
	casingEases = source.Table[CasingEaseRow]{
		{"any elastic", ElasticCasing, inches(0, 1, 4), units.Ratio{}, false, "waistband-casing-leaflet", "", source.Read},
		{"any elastic, at least", ElasticCasing, units.Millimetre.Of(6), units.Ratio{}, false, "casing-project-guide", "", source.Read},
		{"any elastic, at least", ElasticCasing, inches(0, 1, 8), units.Ratio{}, false, "fold-down-casing-leaflet", "", source.Read},
		{"any elastic", ElasticCasing, inches(0, 1, 4), units.Ratio{}, false, "sewing-test-bank", "", source.Read},
		{"applied strip, before stitching", ElasticCasing, inches(0, 1, 2), units.Ratio{}, false, "clothing-construction-handbook", "applied casing", source.Read},
		{"drawstring, at least", CordCasing, inches(0, 1, 4), units.Ratio{}, false, "fold-down-casing-leaflet", "", source.Read},
		{"twice the diameter, at least", RodCasing, units.Length{}, units.RatioOf(1, 1), false, "home-making-manual", "portieres", source.Read},
		{"simple casing, at least", RodCasing, inches(0, 1, 4), units.Ratio{}, false, "home-sewing-handbook", "casings", source.Read},
		{"simple casing, at most", RodCasing, inches(1, 0, 1), units.Ratio{}, false, "home-sewing-handbook", "casings", source.Read},
		{"to the measure round the rod", RodCasing, inches(0, 1, 2), units.Ratio{}, true, "rod-pocket-page", "", source.Read},
		{"to the diameter, at least", RodCasing, inches(0, 1, 4), units.Ratio{}, false, "curtain-making-page", "", source.Read},
		{"drawstring, metric", CordCasing, units.Millimetre.Of(6), units.Ratio{}, false, "", "", source.Practice},
		{"to the measure round the rod, metric", RodCasing, units.Centimetre.Of(1), units.Ratio{}, true, "", "", source.Practice},
	}

	casingTurns = source.Table[CasingTurnRow]{
		{"folded down or applied", inches(0, 1, 4), units.Length{}, units.Length{}, inches(2, 0, 1), "clothing-construction-handbook", "self-casing", source.Read},
		{"waistband", inches(0, 1, 4), inches(0, 1, 8), units.Length{}, units.Length{}, "waistband-casing-leaflet", "", source.Read},
		{"waistband, metric", units.Millimetre.Of(6), inches(0, 1, 16), units.Length{}, units.Length{}, "casing-project-guide", "", source.Read},
		{"curtain", inches(0, 1, 2), units.Length{}, units.Length{}, units.Length{}, "home-sewing-handbook", "casings", source.Read},
		// A fold of 1 3/4 in is printed, with an opening of 1 5/8 in.
		{"edge stitched", units.Length{}, units.Length{}, inches(0, 1, 8), units.Length{}, "elastic-casing-page", "", source.Computed},
		{"edge stitched, metric", units.Length{}, units.Length{}, mm(3), units.Length{}, "", "", source.Practice},
		{"folded down or applied, metric", mm(6), units.Length{}, units.Length{}, mm(50), "clothing-construction-handbook", "self-casing", source.Read},
	}
)

// casingTurn is the row of the turn, casingRow that of the row inside the fold, and
// casingOpening that of the way in.
func casingTurn(t units.Tape) CasingTurnRow { return onTape(t, casingTurns[0], casingTurns[2]) }

func casingRow(t units.Tape) CasingTurnRow { return onTape(t, casingTurns[4], casingTurns[5]) }

func casingOpening(t units.Tape) CasingTurnRow { return onTape(t, casingTurns[0], casingTurns[6]) }

// casingEase is the default ease of a kind, the first of its rows that lies on the
// tape; of a rod, the first for the measure round it, or for its diameter.
func casingEase(k CasingKind, round bool, t units.Tape) CasingEaseRow {
	for _, e := range casingEases {
		if e.Kind == k && e.Round == round && t.Marks(e.Ease) {
			return e
		}
	}
	return CasingEaseRow{}
}

// tailMost is the shortest limit on the free end of a cord for a wearer of an age
// in months, and whether a rule allows none.
func tailMost(months int, neck bool) (most units.Length, barred bool) {
	for l := range safety.Tails(months, neck) {
		switch {
		case l.None:
			barred = true
		case most.IsZero() || l.Length.Less(most):
			most = l.Length
		}
	}
	return most, barred
}
