package gather

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// What the defaults are of: the names of the rows of [Defaults].
const (
	seamAllowance = "seam allowance"
	rowInside     = "row inside the seam"
	foldPast      = "fold past the seam"
	oneRow        = "one row, hidden by the seam"
	quarters      = "quarters"
	oneGodet      = "one godet"
	bandEase      = "ease of a waistband"
	underlap      = "underlap of a waistband"
	gatherStitch  = "gathering stitch"
	easeLimit     = "limit of ease before gathers"
	chalkStep     = "mark of a radius"

	shirringApart   = "from row to row of shirring"
	kickDepth       = "depth of a kick pleat"
	cartridgeStitch = "stitch of cartridge pleats"
	cartridgeTurn   = "fold above cartridge pleats"
	cartridgeRows   = "rows of cartridge pleats"
	cartridgeApart  = "from row to row of cartridge pleats"

	elasticLap   = "lap of elastic"
	openingLeast = "opening of a casing"
	openingMore  = "opening of a casing, beyond the elastic"
)

// A DefaultRow is what something is taken to be where it is not given.
type DefaultRow struct {
	Of     string       // what it is the default of
	Tape   units.Tape   // the tape that it is for; zero for both
	Length units.Length // its value, where it is a length
	Count  int          // its value, where it is a count
	Cite   source.Cite  // where it comes from
}

func millimetres(n int64) units.Length { return units.Millimetre.Of(n) }

var defaultRows = [...]DefaultRow{
	{Of: seamAllowance, Tape: units.InchTape, Length: eighths(5), Cite: source.Practise(seamAllowance)},
	{Of: seamAllowance, Tape: units.MetricTape, Length: millimetres(15), Cite: source.Practise(seamAllowance)},
	{Of: rowInside, Tape: units.InchTape, Length: eighths(1), Cite: source.Cite{For: rowInside, ID: "gathering-stitch-glossary", Known: source.Read}},
	{Of: rowInside, Tape: units.MetricTape, Length: millimetres(3), Cite: source.Practise(rowInside)},
	{Of: foldPast, Tape: units.InchTape, Length: eighths(1), Cite: source.Practise(foldPast)},
	{Of: foldPast, Tape: units.MetricTape, Length: millimetres(3), Cite: source.Practise(foldPast)},
	{Of: oneRow, Count: 1, Cite: source.Practise(oneRow)},
	{Of: quarters, Count: 4, Cite: source.Practise(quarters)},
	{Of: oneGodet, Count: 1, Cite: source.Practise(oneGodet)},
	{Of: bandEase, Tape: units.InchTape, Length: eighths(4), Cite: source.Cite{For: bandEase, ID: costume, Place: girths, Known: source.Read}},
	{Of: bandEase, Tape: units.MetricTape, Length: millimetres(10), Cite: source.Practise(bandEase)},
	{Of: underlap, Tape: units.InchTape, Length: eighths(8), Cite: source.Cite{For: underlap, ID: "cotton-dress-bulletin", Place: "make the skirt band", Known: source.Read}},
	{Of: underlap, Tape: units.MetricTape, Length: millimetres(40), Cite: source.Cite{For: underlap, ID: "waist-band-course", Place: "steps 1 to 3", Known: source.Read}},
	{Of: gatherStitch, Length: millimetres(4), Cite: source.Cite{For: gatherStitch, ID: "gathering-stitch-glossary", Known: source.Read}},
	{Of: easeLimit, Tape: units.MetricTape, Length: millimetres(50), Cite: source.Practise(easeLimit)},
	{Of: chalkStep, Tape: units.InchTape, Length: units.Inch.Frac(1, 16), Cite: source.Practise(chalkStep)},
	{Of: chalkStep, Tape: units.MetricTape, Length: millimetres(1), Cite: source.Practise(chalkStep)},
	{Of: shirringApart, Tape: units.InchTape, Length: eighths(2), Cite: source.Cite{For: shirringApart, ID: "shirring-thread", Known: source.Read}},
	{Of: shirringApart, Tape: units.MetricTape, Length: millimetres(6), Cite: source.Practise(shirringApart)},
	{Of: kickDepth, Tape: units.InchTape, Length: eighths(16), Cite: source.Cite{For: kickDepth, ID: "kick-pleat-drafting-page", Known: source.Read}},
	{Of: kickDepth, Tape: units.MetricTape, Length: millimetres(55), Cite: source.Cite{For: kickDepth, ID: "kick-pleat-metric-page", Known: source.Read}},
	{Of: cartridgeStitch, Tape: units.InchTape, Length: eighths(4), Cite: source.Cite{For: cartridgeStitch, ID: "cartridge-pleats-page", Known: source.Read}},
	{Of: cartridgeStitch, Tape: units.MetricTape, Length: millimetres(10), Cite: source.Practise(cartridgeStitch)},
	{Of: cartridgeTurn, Tape: units.InchTape, Length: eighths(8), Cite: source.Cite{For: cartridgeTurn, ID: "cartridge-pleats-page", Known: source.Read}},
	{Of: cartridgeTurn, Tape: units.MetricTape, Length: millimetres(25), Cite: source.Practise(cartridgeTurn)},
	{Of: cartridgeRows, Count: 2, Cite: source.Cite{For: cartridgeRows, ID: "cartridge-pleats-page", Known: source.Read}},
	{Of: cartridgeApart, Tape: units.InchTape, Length: eighths(2), Cite: source.Cite{For: cartridgeApart, ID: "cartridge-how-to", Known: source.Read}},
	{Of: cartridgeApart, Tape: units.MetricTape, Length: millimetres(6), Cite: source.Practise(cartridgeApart)},
	{Of: elasticLap, Tape: units.InchTape, Length: eighths(4), Cite: source.Cite{For: elasticLap, ID: "aprons-and-skirts-bulletin", Place: "slippers", Known: source.Read}},
	{Of: elasticLap, Tape: units.MetricTape, Length: millimetres(10), Cite: source.Practise(elasticLap)},
	{Of: openingLeast, Tape: units.InchTape, Length: eighths(16), Cite: source.Practise(openingLeast)},
	{Of: openingLeast, Tape: units.MetricTape, Length: millimetres(50), Cite: source.Practise(openingLeast)},
	{Of: openingMore, Tape: units.InchTape, Length: eighths(4), Cite: source.Practise(openingMore)},
	{Of: openingMore, Tape: units.MetricTape, Length: millimetres(10), Cite: source.Practise(openingMore)},
}

// Defaults yields every default of this package.
func Defaults(yield func(DefaultRow) bool) { each(defaultRows[:], yield) }

// each yields the rows of a table.
func each[R any](rows []R, yield func(R) bool) {
	for _, r := range rows {
		if !yield(r) {
			return
		}
	}
}

// usual is the default of something on a tape.
func usual(of string, tape units.Tape) DefaultRow {
	for _, r := range defaultRows {
		if r.Of == of && (r.Tape == 0 || r.Tape == tape) {
			return r
		}
	}
	return DefaultRow{}
}

// cites are the citations of the defaults among what was assumed, by their keys.
func cites(assumed []string, tape units.Tape, of map[string]string) []source.Cite {
	var all []source.Cite
	for _, key := range assumed {
		if name, ok := of[key]; ok {
			all = append(all, usual(name, tape).Cite)
		}
	}
	return all
}

// fill sets a length that is not given to its default.
func fill(l *units.Length, of string, tape units.Tape) {
	if l.IsZero() {
		*l = usual(of, tape).Length
	}
}

// fillCount sets a count that is not given to its default.
func fillCount(n *int, of string) {
	if *n == 0 {
		*n = usual(of, 0).Count
	}
}
