package buttons

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A Spacing is a printed figure for where buttons go. Least and Most are equal
// where one figure is printed; one of them is zero where there is no such limit.
type Spacing struct {
	Item     string       // what is measured
	Diameter units.Ratio  // times the diameter, before the lengths are added
	Least    units.Length // at least
	Most     units.Length // at most
	Note     string       // a slip in the source, or a reading of it; empty if none
	Source   string       // id of the source, see [source.Lookup]; empty for common practice
	Known    source.Known // how the figure is known
}

// As printed, 13 rows; the limits are those of the sources and not of this package.
var spacings = [...]Spacing{
	{"gap, shirts", none, units.Inch.Of(3), units.Inch.Mixed(3, 1, 2), "", "garment-course-fasteners", source.Read},
	{"gap, jackets", none, units.Centimetre.Of(9), units.Centimetre.Of(10), "usual; the upper limit is printed as 1.5 cm", "button-setting-page", source.Read},
	{"gap, jackets, at least", none, units.Centimetre.Of(6), units.Length{}, "", "button-setting-page", source.Read},
	{"first button below the neck seam", one, units.Millimetre.Of(6), units.Millimetre.Of(6), "added to the diameter", "buttonhole-rules-page", source.Read},
	{"first buttonhole below the neck edge", none, units.Length{}, units.Inch.Of(1), "", "buttonhole-spacing-page", source.Read},
	{"first buttonhole below the neck point, a tailored front", none, units.Inch.Frac(1, 2), units.Inch.Frac(1, 2), "", "tailored-buttonhole-page", source.Read},
	{"last button above the hem", none, units.Inch.Of(4), units.Inch.Of(4), "about", "buttonhole-placing-page", source.Read},
	{"waist button above the waistline, a jacket with one button", none, units.Centimetre.Of(2), units.Centimetre.Of(2), "", "button-setting-page", source.Read},
	{"row to centre front, double-breasted", none, units.Centimetre.Of(6), units.Centimetre.Of(8), "another page prints 10 to 11 cm from row to row", "button-setting-page", source.Read},
	{"centre front to edge, single-breasted", none, units.Centimetre.Of(2), units.Centimetre.Of(3), "", "button-setting-page", source.Read},
	{"hole past the centre line, horizontal", none, units.Inch.Frac(1, 8), units.Inch.Frac(1, 8), "printed as 3 mm too", "buttonhole-placing-page", source.Read},
	{"button below the upper end of a vertical hole", none, units.Inch.Frac(1, 8), units.Inch.Frac(1, 8), "about", "buttonhole-placing-page", source.Read},
	{"mark of the tape", none, units.Inch.Frac(1, 16), units.Inch.Frac(1, 16), "", "", source.Practice},
}

// Spacings yields the printed figures.
func Spacings(yield func(Spacing) bool) {
	for _, s := range spacings {
		if !yield(s) {
			return
		}
	}
}
