package gather

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A PlacingRow is what one source prints of where gathering rows lie, measured
// from the raw edge. Sources disagree; [RufflePlan] follows the one that keeps the
// row within the seam.
type PlacingRow struct {
	How    string       // by hand or by machine
	First  units.Length // the row nearest the raw edge
	Second units.Length // the next; zero where there is none
	Third  units.Length // the next; zero where there is none
	Seam   units.Length // the seam allowance it belongs to; zero where the source names none
	Source string       // id in the list of sources
	Place  string       // page or chapter
	Known  source.Known // how the figure is known
}

// Cite is the row as a citation.
func (r PlacingRow) Cite() source.Cite {
	return source.Cite{For: "gathering rows, " + r.How, ID: r.Source, Place: r.Place, Known: r.Known}
}

var rowRows = [...]PlacingRow{
	{"by hand, double", eighths(2), eighths(4), units.Length{}, units.Length{}, "school-needlework", "double gathering on single material", source.Read},
	{"by hand, the least", eighths(2), eighths(4), units.Length{}, units.Length{}, "school-sewing", "paragraph 141", source.Read},
	{"by machine, on the seam line and inside it", eighths(3), eighths(5), units.Length{}, eighths(5), "machine-gathering-page", "", source.Read},
	{"by machine, close inside the seam line", eighths(4), eighths(5), units.Length{}, eighths(5), "gathering-stitch-glossary", "", source.Read},
	{"by machine, two rows", eighths(3), eighths(5), units.Length{}, units.Length{}, "gathering-rows-page", "", source.Read},
	{"by machine, three rows", eighths(2), eighths(4), eighths(6), units.Length{}, "gathering-rows-page", "", source.Read},
}

// Rows yields every row of the table of gathering rows.
func Rows(yield func(PlacingRow) bool) { each(rowRows[:], yield) }
