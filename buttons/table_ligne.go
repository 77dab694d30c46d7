package buttons

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A LigneRow is a row of a printed chart of button sizes. The charts round each
// in its own way and disagree; the exact size is [LigneRow.Exact].
type LigneRow struct {
	Lignes int          // the size
	Inches units.Length // as printed in inches; zero where the chart has none
	Metric units.Length // as printed in millimetres
	Note   string       // a slip of the chart; empty if none
	Source string       // id of the source, see [source.Lookup]
	Known  source.Known // how the figure is known
}

// Exact is the size by definition: 40 lignes to the inch.
func (r LigneRow) Exact() units.Length { return units.Ligne.Of(int64(r.Lignes)) }

// As printed, 53 rows: 25, 13 and 15 sizes of three charts. A fourth, found only
// in a damaged copy of a textbook that could not be named, is left out.
var ligneRows = source.Table[LigneRow]{
	{12, units.Inch.Frac(5, 16), units.Millimetre.Frac(15, 2), "", "ligne-chart-25-sizes", source.Read},
	{13, units.Inch.Frac(5, 16), units.Millimetre.Of(8), "", "ligne-chart-25-sizes", source.Read},
	{14, units.Inch.Frac(11, 32), units.Millimetre.Of(9), "", "ligne-chart-25-sizes", source.Read},
	{15, units.Inch.Frac(3, 8), units.Millimetre.Frac(19, 2), "", "ligne-chart-25-sizes", source.Read},
	{16, units.Inch.Frac(13, 32), units.Millimetre.Of(10), "", "ligne-chart-25-sizes", source.Read},
	{17, units.Inch.Frac(7, 16), units.Millimetre.Frac(21, 2), "", "ligne-chart-25-sizes", source.Read},
	{18, units.Inch.Frac(15, 32), units.Millimetre.Frac(23, 2), "", "ligne-chart-25-sizes", source.Read},
	{20, units.Inch.Frac(1, 2), units.Millimetre.Frac(25, 2), "", "ligne-chart-25-sizes", source.Read},
	{22, units.Inch.Frac(9, 16), units.Millimetre.Of(14), "", "ligne-chart-25-sizes", source.Read},
	{24, units.Inch.Frac(5, 8), units.Millimetre.Of(15), "", "ligne-chart-25-sizes", source.Read},
	{26, units.Inch.Frac(21, 32), units.Millimetre.Of(16), "", "ligne-chart-25-sizes", source.Read},
	{28, units.Inch.Frac(23, 32), units.Millimetre.Of(18), "", "ligne-chart-25-sizes", source.Read},
	{30, units.Inch.Frac(3, 4), units.Millimetre.Of(19), "", "ligne-chart-25-sizes", source.Read},
	{32, units.Inch.Frac(13, 16), units.Millimetre.Of(20), "", "ligne-chart-25-sizes", source.Read},
	{34, units.Inch.Frac(27, 32), units.Millimetre.Frac(43, 2), "", "ligne-chart-25-sizes", source.Read},
	{36, units.Inch.Frac(7, 8), units.Millimetre.Of(23), "", "ligne-chart-25-sizes", source.Read},
	{38, units.Inch.Frac(15, 16), units.Millimetre.Of(24), "", "ligne-chart-25-sizes", source.Read},
	{40, units.Inch.Of(1), units.Millimetre.Of(25), "", "ligne-chart-25-sizes", source.Read},
	{42, units.Inch.Mixed(1, 1, 25), units.Millimetre.Of(26), "", "ligne-chart-25-sizes", source.Read},
	{44, units.Inch.Mixed(1, 3, 32), units.Millimetre.Of(28), "", "ligne-chart-25-sizes", source.Read},
	{45, units.Inch.Mixed(1, 3, 16), units.Millimetre.Of(30), "both are off: 30 mm is 47.2 L", "ligne-chart-25-sizes", source.Read},
	{48, units.Inch.Mixed(1, 3, 16), units.Millimetre.Of(30), "", "ligne-chart-25-sizes", source.Read},
	{54, units.Inch.Mixed(1, 5, 16), units.Millimetre.Of(34), "the inches are off", "ligne-chart-25-sizes", source.Read},
	{60, units.Inch.Mixed(1, 1, 2), units.Millimetre.Of(38), "", "ligne-chart-25-sizes", source.Read},
	{64, units.Inch.Mixed(1, 9, 16), units.Millimetre.Of(40), "", "ligne-chart-25-sizes", source.Read},
	{16, units.Inch.Frac(3, 8), units.Millimetre.Of(10), "", "ligne-chart-13-sizes", source.Read},
	{18, units.Inch.Frac(7, 16), units.Millimetre.Of(11), "", "ligne-chart-13-sizes", source.Read},
	{20, units.Inch.Frac(1, 2), units.Millimetre.Frac(25, 2), "", "ligne-chart-13-sizes", source.Read},
	{22, units.Inch.Frac(9, 16), units.Millimetre.Of(14), "", "ligne-chart-13-sizes", source.Read},
	{24, units.Inch.Frac(5, 8), units.Millimetre.Frac(31, 2), "", "ligne-chart-13-sizes", source.Read},
	{28, units.Inch.Frac(11, 16), units.Millimetre.Of(18), "", "ligne-chart-13-sizes", source.Read},
	{30, units.Inch.Frac(3, 4), units.Millimetre.Of(19), "", "ligne-chart-13-sizes", source.Read},
	{36, units.Inch.Frac(7, 8), units.Millimetre.Of(23), "", "ligne-chart-13-sizes", source.Read},
	{40, units.Inch.Of(1), units.Millimetre.Frac(51, 2), "called exact, and off by 0.1 mm", "ligne-chart-13-sizes", source.Read},
	{45, units.Inch.Mixed(1, 1, 8), units.Millimetre.Frac(57, 2), "", "ligne-chart-13-sizes", source.Read},
	{50, units.Inch.Mixed(1, 1, 4), units.Millimetre.Frac(63, 2), "", "ligne-chart-13-sizes", source.Read},
	{60, units.Inch.Mixed(1, 1, 2), units.Millimetre.Of(38), "", "ligne-chart-13-sizes", source.Read},
	{80, units.Inch.Of(2), units.Millimetre.Of(51), "", "ligne-chart-13-sizes", source.Read},
	{12, units.Length{}, units.Millimetre.Of(8), "", "ligne-chart-15-sizes", source.Read},
	{14, units.Length{}, units.Millimetre.Of(9), "", "ligne-chart-15-sizes", source.Read},
	{16, units.Length{}, units.Millimetre.Of(10), "", "ligne-chart-15-sizes", source.Read},
	{18, units.Length{}, units.Millimetre.Of(11), "", "ligne-chart-15-sizes", source.Read},
	{20, units.Length{}, units.Millimetre.Of(12), "12.7 mm cut to 12", "ligne-chart-15-sizes", source.Read},
	{22, units.Length{}, units.Millimetre.Of(14), "", "ligne-chart-15-sizes", source.Read},
	{24, units.Length{}, units.Millimetre.Of(15), "", "ligne-chart-15-sizes", source.Read},
	{28, units.Length{}, units.Millimetre.Of(18), "", "ligne-chart-15-sizes", source.Read},
	{30, units.Length{}, units.Millimetre.Of(19), "", "ligne-chart-15-sizes", source.Read},
	{32, units.Length{}, units.Millimetre.Of(20), "", "ligne-chart-15-sizes", source.Read},
	{34, units.Length{}, units.Millimetre.Of(21), "", "ligne-chart-15-sizes", source.Read},
	{36, units.Length{}, units.Millimetre.Of(23), "", "ligne-chart-15-sizes", source.Read},
	{38, units.Length{}, units.Millimetre.Of(24), "", "ligne-chart-15-sizes", source.Read},
	{40, units.Length{}, units.Millimetre.Of(25), "", "ligne-chart-15-sizes", source.Read},
	{48, units.Length{}, units.Millimetre.Of(30), "", "ligne-chart-15-sizes", source.Read},
}

// LigneRows yields the rows of every chart, chart by chart.
func LigneRows() iter.Seq[LigneRow] { return ligneRows.All() }

// LignesAt yields what each chart prints for a size; nothing for a size that no
// chart has.
func LignesAt(lignes int) iter.Seq[LigneRow] {
	return ligneRows.Where(func(r LigneRow) bool { return r.Lignes == lignes })
}

// A UseRow is where buttons of a size are usual.
type UseRow struct {
	Where       string       // the garment or the place
	Least, Most int          // in lignes; equal where one size is printed
	Source      string       // id of the source, see [source.Lookup]
	Known       source.Known // how the figure is known
}

// As printed, 13 rows.
var uses = source.Table[UseRow]{
	{"shirt collar", 13, 13, "button-uses-page", source.Read},
	{"shirt sleeve", 15, 15, "button-uses-page", source.Read},
	{"shirt front", 16, 20, "button-uses-page", source.Read},
	{"trousers", 22, 24, "button-uses-page", source.Read},
	{"trousers, back pocket", 24, 28, "button-uses-page", source.Read},
	{"suit sleeve", 24, 24, "button-uses-page", source.Read},
	{"jacket", 32, 32, "button-uses-page", source.Read},
	{"jacket, double-breasted", 34, 36, "button-uses-page", source.Read},
	{"outerwear", 40, 45, "button-uses-page", source.Read},
	{"shirt front", 18, 18, "ligne-chart-15-sizes", source.Read},
	{"jacket cuff", 24, 24, "ligne-chart-15-sizes", source.Read},
	{"trousers", 28, 28, "ligne-chart-15-sizes", source.Read},
	{"jacket", 32, 32, "ligne-chart-15-sizes", source.Read},
}

// Uses yields the usual sizes.
func Uses() iter.Seq[UseRow] { return uses.All() }
