package gather

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// An ElasticRow is what one source prints of how long elastic, or a knit band, is
// for one use: as a ratio of the body or the edge, or as what it is shorter.
type ElasticRow struct {
	Use      string       // what it is for, as in waist casing
	Low      units.Ratio  // least ratio to the body or edge; zero where the source gives lengths
	High     units.Ratio  // greatest ratio
	LeastOff units.Length // the least that it is shorter; zero where the source gives ratios, or it may be as long
	MostOff  units.Length // the most that it is shorter
	Note     string       // what else the source says
	Source   string       // id in the list of sources; empty for common practice
	Place    string       // page or chapter
	Known    source.Known // how the figure is known
}

// Cite is the row as a citation.
func (r ElasticRow) Cite() source.Cite {
	return source.Cite{For: "elastic, " + r.Use, ID: r.Source, Place: r.Place, Known: r.Known}
}

var elasticRows = [...]ElasticRow{
	{Use: "waist casing", LeastOff: eighths(16), MostOff: eighths(16), Note: "another page has 2 to 3 in", Source: "sewing-trip-page", Known: source.Read},
	{Use: "waist casing", LeastOff: eighths(16), MostOff: eighths(32), Note: "snug", Source: "snug-elastic-page", Known: source.Read},
	{Use: "wrist casing", LeastOff: eighths(4), MostOff: eighths(4), Source: "snug-elastic-page", Known: source.Read},
	{Use: "waist, firm woven elastic", MostOff: eighths(8), Note: "the ends butted", Source: "cut-on-casing-note", Known: source.Read},
	{Use: "waist, soft knitted elastic", LeastOff: eighths(24), MostOff: eighths(40), Note: "the ends lapped", Source: "cut-on-casing-note", Known: source.Read},
	{Use: "ribbing", Low: units.RatioOf(2, 3), High: units.RatioOf(3, 4), Note: "16 in to about 12", Source: "ribbing-guideline", Known: source.Read},
	{Use: "knit band that stretches by 25 percent", Low: units.RatioOf(9, 10), High: units.RatioOf(19, 20), Source: "knit-neckband-page", Known: source.Read},
	{Use: "swimsuit leg, front", Low: units.RatioOf(1, 1), High: units.RatioOf(1, 1), Source: "swim-elastic-instructions", Known: source.Read},
	{Use: "swimsuit leg, back", Low: units.RatioOf(3, 4), High: units.RatioOf(3, 4), Note: "1/2 in of lap", Source: "swim-elastic-instructions", Known: source.Read},
	{Use: "swimsuit leg, back", Low: units.RatioOf(7, 10), High: units.RatioOf(7, 10), Note: "34 cm to 24", Source: "swim-leg-page", Known: source.Read},
	{Use: "swimsuit opening", Low: units.RatioOf(33, 50), High: units.RatioOf(33, 50), Source: "swim-opening-page", Known: source.Read},
	{Use: "waist of knit cloth", Low: units.RatioOf(4, 5), High: units.RatioOf(9, 10), Known: source.Practice},
	{Use: "gathered waist, to the cloth", Low: units.RatioOf(1, 2), High: units.RatioOf(2, 3), Known: source.Practice},
}

// Elastics yields every row of the table of elastic.
func Elastics(yield func(ElasticRow) bool) { each(elasticRows[:], yield) }
