package buttons

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A SpacingRow is a printed figure for where buttons go. Least and Most are equal
// where one figure is printed; one of them is zero where there is no such limit.
type SpacingRow struct {
	Item     string       // what is measured
	Diameter units.Ratio  // times the diameter, before the lengths are added
	Least    units.Length // at least
	Most     units.Length // at most
	Note     string       // a slip in the source, or a reading of it; empty if none
	Source   string       // id of the source, see [source.Lookup]; empty for common practice
	Known    source.Known // how the figure is known
}

// As printed; the limits are those of the sources and not of this package.
var spacings = source.Table[SpacingRow]{
	{gapRule, none, units.Inch.Of(3), units.Inch.Mixed(3, 1, 2), "", "garment-course-fasteners", source.Read},
	{"gap, jackets", none, units.Centimetre.Of(9), units.Centimetre.Of(10), "usual; the upper limit is printed as 1.5 cm", "button-setting-page", source.Read},
	{"gap, jackets, at least", none, units.Centimetre.Of(6), units.Length{}, "", "button-setting-page", source.Read},
	{"first button below the neck seam", one, units.Millimetre.Of(6), units.Millimetre.Of(6), "added to the diameter", "buttonhole-rules-page", source.Read},
	{"first buttonhole below the neck edge", none, units.Length{}, units.Inch.Of(1), "", "buttonhole-spacing-page", source.Read},
	{"first buttonhole below the neck point, a tailored front", none, units.Inch.Frac(1, 2), units.Inch.Frac(1, 2), "", "tailored-buttonhole-page", source.Read},
	{hemRule, none, units.Inch.Of(4), units.Inch.Of(4), "about", "buttonhole-placing-page", source.Read},
	{"waist button above the waistline, a jacket with one button", none, units.Centimetre.Of(2), units.Centimetre.Of(2), "", "button-setting-page", source.Read},
	{"row to centre front, double-breasted", none, units.Centimetre.Of(6), units.Centimetre.Of(8), "another page prints 10 to 11 cm from row to row", "button-setting-page", source.Read},
	{"centre front to edge, single-breasted", none, units.Centimetre.Of(2), units.Centimetre.Of(3), "", "button-setting-page", source.Read},
	{"hole past the centre line, horizontal", none, units.Inch.Frac(1, 8), units.Inch.Frac(1, 8), "printed as 3 mm too", "buttonhole-placing-page", source.Read},
	{"button below the upper end of a vertical hole", none, units.Inch.Frac(1, 8), units.Inch.Frac(1, 8), "about", "buttonhole-placing-page", source.Read},
	{neckRule, none, units.Inch.Of(1), units.Inch.Of(1), "", "button-placement-tutorial", source.Read},
	{neckRule + metric, none, units.Centimetre.Frac(5, 2), units.Centimetre.Frac(5, 2), "", "button-placement-tutorial", source.Read},
	{hemRule + metric, none, units.Centimetre.Of(10), units.Centimetre.Of(10), "", "", source.Practice},
	{gapRule + metric, none, units.Length{}, units.Centimetre.Of(9), "", "", source.Practice},
	{"gap, hook", none, units.Inch.Mixed(1, 1, 4), units.Inch.Mixed(1, 1, 4), "hooks and eyes by turns", "new-dressmaker", source.Read},
	{"gap, hook" + metric, none, units.Centimetre.Of(3), units.Centimetre.Of(3), "", "", source.Practice},
	{"gap, snap", none, units.Inch.Of(2), units.Inch.Of(2), "where there is no strain", "new-dressmaker", source.Read},
	{"gap, snap" + metric, none, units.Centimetre.Of(5), units.Centimetre.Of(5), "", "", source.Practice},
	{"edge to hook", none, units.Inch.Frac(1, 8), units.Inch.Frac(1, 8), "", "extension-fastener-guide", source.Read},
	{"edge to hook" + metric, none, units.Millimetre.Of(3), units.Millimetre.Of(3), "printed beside 1/8 in", "construction-standards-list", source.Read},
	{"edge to hook, on a closing", none, units.Inch.Frac(1, 4), units.Inch.Frac(1, 4), "the last sewing", "new-dressmaker", source.Read},
	{"edge to hook, on a belt", none, units.Inch.Frac(1, 16), units.Inch.Frac(1, 16), "", "home-making-manual", source.Read},
	{"edge to snap", none, units.Inch.Frac(1, 8), units.Length{}, "", "", source.Practice},
	{"edge to snap" + metric, none, units.Millimetre.Of(3), units.Length{}, "", "", source.Practice},
	{"mark of the tape", none, units.Inch.Frac(1, 16), units.Inch.Frac(1, 16), "", "", source.Practice},
}

// The items that a [Row] takes its defaults from; those of a metric tape end so.
const (
	neckRule = "top button below the neck edge"
	hemRule  = "last button above the hem"
	gapRule  = "gap, shirts"
	metric   = ", metric"
)

// spacing is the figure of an item for a tape, its greatest where it is a range.
func spacingOf(item string, t units.Tape) (units.Length, source.Cite) {
	if t == units.MetricTape {
		item += metric
	}
	for _, s := range spacings {
		if s.Item == item {
			return s.Least.Max(s.Most), source.Cite{For: item, ID: s.Source, Known: s.Known}
		}
	}
	return units.Length{}, source.Cite{}
}

// Spacings yields the printed figures.
func Spacings() iter.Seq[SpacingRow] { return spacings.All() }
