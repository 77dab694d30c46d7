package gather

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// An EaseRow is what one source prints of the ease at one place of a garment:
// how much longer or wider it is than what it goes on or round.
type EaseRow struct {
	Garment string       // as in fitted shirt
	Place   string       // as in bust, cap or wrist
	Low     units.Length // the least; zero is an answer where High or Least is given
	High    units.Length // the most; zero where Least
	Least   bool         // only a least is given
	Note    string       // what else the source says
	Source  string       // id in the list of sources; empty for common practice
	At      string       // page or chapter
	Known   source.Known // how the figure is known
}

// Cite is the row as a citation.
func (r EaseRow) Cite() source.Cite {
	return source.Cite{For: r.Garment + ", " + r.Place, ID: r.Source, Place: r.At, Known: r.Known}
}

// eighths is n eighths of an inch.
func eighths(n int64) units.Length { return units.Inch.Frac(n, 8) }

const (
	costume = "costume-construction-text"
	girths  = "chapter 16"
)

// As printed, or common practice. 8 eighths are an inch.
var easeRows = [...]EaseRow{
	{"bodice", "bust", eighths(12), eighths(16), false, "", costume, girths, source.Read},
	{"dress", "waist", eighths(6), eighths(8), false, "", costume, girths, source.Read},
	{"skirt or trousers, women's", "waist", eighths(4), eighths(6), false, "", costume, girths, source.Read},
	{"any", "hip", eighths(16), eighths(22), false, "", costume, girths, source.Read},
	{"fitted shirt, men's", "chest", eighths(12), eighths(20), false, "", costume, girths, source.Read},
	{"standard shirt, men's", "chest", units.Length{}, eighths(24), false, "up to", costume, girths, source.Read},
	{"trousers, men's", "waist", eighths(6), eighths(8), false, "", costume, girths, source.Read},
	{"trousers, men's", "seat", eighths(12), eighths(16), false, "", costume, girths, source.Read},
	{"trousers, men's", "thigh", eighths(8), units.Length{}, true, "", costume, girths, source.Read},
	{"eased seam", "limit before gathers", eighths(12), eighths(16), false, "in all", costume, "chapter 11", source.Read},
	{"sleeve", "upper arm", eighths(16), units.Length{}, true, "", "set-in-sleeve-article", "", source.Read},
	{"sleeve", "upper arm", eighths(16), eighths(24), false, "", "unfitted-sleeve-page", "", source.Read},
	{"set-in sleeve", "cap", eighths(8), eighths(12), false, "as textbooks are reported", "cap-ease-page", "", source.Read},
	{"set-in sleeve", "cap", eighths(8), eighths(16), false, "", "round-the-arm-page", "", source.Read},
	{"set-in sleeve", "cap, back half", eighths(4), eighths(5), false, "", "sleeve-facts-page", "", source.Read},
	{"set-in sleeve", "cap, front half", eighths(3), eighths(4), false, "", "sleeve-facts-page", "", source.Read},
	{"knit", "cap", units.Length{}, eighths(6), false, "none, or 1/2 to 3/4", "cap-ease-page", "", source.Read},
	{"tailored, the opposing view", "cap", units.Length{}, units.Length{}, false, "none at all", "cap-ease-dissent", "", source.Read},
	{"any woven, the least", "bust", eighths(24), units.Length{}, true, "", "least-ease-page", "", source.Read},
	{"any woven, the least", "waist", eighths(8), eighths(16), false, "", "least-ease-page", "", source.Read},
	{"any woven, the least", "hip", eighths(16), units.Length{}, true, "", "least-ease-page", "", source.Read},
	{"trousers", "crotch length", eighths(8), units.Length{}, true, "", "least-ease-page", "", source.Read},
	{"any woven, by the manual", "bust", eighths(16), eighths(32), false, "4 with a sleeve", "sewing-patterns-manual", "", source.Read},
	{"any woven, by the manual", "waist", eighths(8), eighths(16), false, "1 for a skirt, 2 for a blouse", "sewing-patterns-manual", "", source.Read},
	{"any woven, by the manual", "hip", eighths(16), eighths(16), false, "", "sewing-patterns-manual", "", source.Read},
	{"wearing ease, any size", "girths", millimetres(30), millimetres(30), false, "", "ease-allowances-page", "", source.Read},
	{"adjusted", "girths", millimetres(45), units.Length{}, true, "", "ease-allowances-page", "", source.Read},
	{"semi-fitted", "girths", millimetres(70), units.Length{}, true, "", "ease-allowances-page", "", source.Read},
	{"loose", "girths", millimetres(100), millimetres(150), false, "", "ease-allowances-page", "", source.Read},
	{"fitted bodice", "bust", millimetres(40), millimetres(60), false, "", "metric-ease-page", "", source.Read},
	{"fitted bodice", "waist", millimetres(20), millimetres(40), false, "", "metric-ease-page", "", source.Read},
	{"fitted bodice", "hip", millimetres(40), millimetres(60), false, "", "metric-ease-page", "", source.Read},
	{"shirt, metric", "bust", millimetres(60), millimetres(100), false, "", "metric-ease-page", "", source.Read},
	{"shirt, metric", "waist", millimetres(40), millimetres(80), false, "", "metric-ease-page", "", source.Read},
	{"shirt, metric", "hip", millimetres(60), millimetres(100), false, "", "metric-ease-page", "", source.Read},
	{"tailored jacket", "bust", millimetres(80), millimetres(120), false, "", "metric-ease-page", "", source.Read},
	{"tailored jacket", "waist", millimetres(60), millimetres(100), false, "", "metric-ease-page", "", source.Read},
	{"tailored jacket", "hip", millimetres(80), millimetres(120), false, "", "metric-ease-page", "", source.Read},
	{"woven trousers, metric", "waist", millimetres(40), millimetres(60), false, "", "metric-ease-page", "", source.Read},
	{"woven trousers, metric", "hip", millimetres(40), millimetres(60), false, "", "metric-ease-page", "", source.Read},
	{"knit trousers, metric", "waist", units.Length{}, millimetres(20), false, "", "metric-ease-page", "", source.Read},
	{"knit trousers, metric", "hip", millimetres(20), millimetres(40), false, "", "metric-ease-page", "", source.Read},
	{"set-in sleeve, as patterns have it", "cap", eighths(16), units.Length{}, true, "", "pattern-cap-ease-page", "", source.Read},
	{"trousers", "crotch depth", eighths(6), units.Length{}, true, "", "least-ease-page", "", source.Read},
	{"shirt sleeve", "cap", units.Length{}, eighths(4), false, "", "", "", source.Practice},
	{"long sleeve in a band or cuff", "wrist", eighths(8), eighths(16), false, "", "", "", source.Practice},
	{"cuff", "lap", eighths(6), eighths(8), false, "", "", "", source.Practice},
}

// Eases yields every row of the table of ease.
func Eases(yield func(EaseRow) bool) { each(easeRows[:], yield) }
