package hem

import (
	"iter"
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
)

// A DepthRow is a printed depth of hem for a garment. Sources disagree: every row
// is kept and the caller chooses. Unless Note says otherwise the depth is that of
// the finished hem as the source words it.
type DepthRow struct {
	Garment string       // lower case, as in flared skirt
	Note    string       // cloth, period or what else the row is limited to
	Least   units.Length // zero where the source gives no lower figure
	Most    units.Length // zero where the source gives no upper figure
	Source  string       // id of the source, see source.Lookup
	Place   string       // where in it
	Known   source.Known // how the figure is known
}

// Depths yields the table of depths, in the order of the garments.
func Depths() iter.Seq[DepthRow] { return depths.All() }

// DepthsFor is every row for a garment, the highest rank of source first. It fails
// with a [fault.Fault] of [fault.Unknown] for a garment that is not in the
// table.
func DepthsFor(garment string) ([]DepthRow, error) {
	var rows []DepthRow
	for rank := source.Law; rank <= source.Other; rank++ {
		for _, d := range depths {
			if src, ok := source.Lookup(d.Source); ok && d.Garment == garment && src.Rank == rank {
				rows = append(rows, d)
			}
		}
	}
	if len(rows) == 0 {
		got := strconv.Itoa(len(garment)) + " bytes"
		if len(garment) <= fault.MaxName {
			got = strconv.Quote(garment)
		}
		return nil, &fault.Fault{Path: "garment", Got: got, Limit: "a garment of the table of hem depths", Kind: fault.Unknown}
	}
	return rows, nil
}

// Taken from forty printed rows; none is averaged or converted, so that a metric
// row is in millimetres.
var depths = source.Table[DepthRow]{
	{"any hem", "deepest", units.Length{}, inches(3, 0, 1), "hem-preparation-page", "", source.Read},
	{"any hem", "course of 1911", inches(0, 1, 8), inches(6, 0, 1), "domestic-art-text-book", "sampler number one", source.Read},
	{"any hem", "deep folded hem, more than this", units.Centimetre.Of(2), units.Length{}, "garment-hem-course", "deep hem", source.Read},
	{"blouse tucked in", "", inches(0, 1, 4), inches(0, 1, 2), "hem-depth-article", "", source.Read},
	{"blouse untucked", "", inches(0, 3, 8), inches(0, 3, 4), "hem-depth-article", "", source.Read},
	{"child's dress", "smocked", inches(2, 0, 1), inches(2, 0, 1), "smocked-dress-page", "", source.Read},
	{"circle skirt", "or rolled", inches(0, 1, 4), inches(0, 1, 4), "cotton-dress-bulletin", "", source.Read},
	{"circle skirt", "from a rolled hem; the lower figure cannot be read", units.Length{}, inches(2, 0, 1), "skirt-hem-leaflet", "", source.Read},
	{"coat", "", inches(1, 1, 2), inches(2, 0, 1), "hem-depth-article", "", source.Read},
	{"coat sleeve", "period; turn-up", inches(1, 1, 2), inches(1, 1, 2), "cutting-systems", "", source.Read},
	{"dress", "formal, gathered skirt", inches(2, 0, 1), inches(2, 0, 1), "extension-hem-answer", "", source.Read},
	{"dress", "", inches(1, 1, 2), inches(2, 0, 1), "hem-depth-article", "", source.Read},
	{"dress", "sheer cloth", inches(0, 1, 2), inches(0, 1, 2), "hem-depth-article", "", source.Read},
	{"dress", "heavy cloth, more than this", inches(2, 0, 1), units.Length{}, "hem-depth-article", "", source.Read},
	{"dress", "or skirt, general", inches(1, 1, 2), inches(2, 0, 1), "hem-width-page", "", source.Read},
	{"flared skirt", "moderately flared, medium weight", inches(2, 0, 1), inches(3, 0, 1), "cotton-dress-bulletin", "", source.Read},
	{"flared skirt", "", inches(1, 1, 2), inches(1, 1, 2), "cotton-dress-bulletin", "", source.Read},
	{"flared skirt", "full or flared", inches(0, 1, 4), inches(0, 3, 8), "hem-depth-article", "", source.Read},
	{"flared skirt", "any flared garment", inches(1, 1, 2), inches(2, 0, 1), "hem-preparation-page", "", source.Read},
	{"gored skirt", "of 60 to 70 in round", inches(2, 0, 1), inches(2, 0, 1), "skirt-hem-leaflet", "", source.Read},
	{"heavy skirt", "wool or cotton, this or less", units.Length{}, inches(2, 0, 1), "cotton-dress-bulletin", "", source.Read},
	{"jacket", "", inches(1, 1, 2), inches(2, 0, 1), "hem-depth-article", "", source.Read},
	{"narrow hem", "turned twice", inches(0, 1, 4), inches(0, 1, 4), "cotton-dress-bulletin", "", source.Read},
	{"narrow hem", "in all, with both turns", units.Length{}, units.Millimetre.Of(15), "garment-hem-course", "narrow folded hem", source.Read},
	{"petticoat", "for hemming", inches(3, 0, 1), inches(3, 0, 1), "sewing-course-book-three", "plain petticoat", source.Read},
	{"pullover", "", inches(0, 3, 8), inches(1, 1, 4), "hem-depth-article", "", source.Read},
	{"rolled hem", "", units.Length{}, units.Millimetre.Of(3), "garment-hem-course", "rolled hem", source.Read},
	{"shirt", "", inches(0, 3, 8), inches(0, 5, 8), "hem-depth-article", "", source.Read},
	{"shorts", "", inches(0, 5, 8), inches(1, 1, 4), "hem-depth-article", "", source.Read},
	{"straight skirt", "average, finished", inches(2, 1, 2), inches(2, 1, 2), "skirt-hem-leaflet", "", source.Read},
	{"straight skirt", "sheer cloth", units.Length{}, inches(4, 0, 1), "cotton-dress-bulletin", "", source.Read},
	{"straight skirt", "or A-line", inches(2, 0, 1), inches(3, 0, 1), "hem-depth-article", "", source.Read},
	{"straight skirt", "period", inches(2, 0, 1), inches(3, 0, 1), "skirt-design-page", "", source.Read},
	{"straight skirt", "period, tailored; the turning included", inches(4, 1, 2), inches(4, 1, 2), "womans-encyclopaedia", "lesson 8", source.Read},
	{"top", "", inches(0, 3, 4), inches(1, 1, 4), "hem-depth-article", "", source.Read},
	{"trousers", "women's", inches(0, 5, 8), inches(1, 1, 4), "hem-depth-article", "", source.Read},
	{"trousers", "men's", inches(2, 0, 1), inches(2, 0, 1), "hem-depth-article", "", source.Read},
	{"trousers", "women's, altered", units.Centimetre.Of(4), units.Centimetre.Of(4), "hem-alteration-page", "", source.Read},
	{"trousers", "men's, altered", units.Centimetre.Of(5), units.Centimetre.Of(5), "hem-alteration-page", "", source.Read},
	{"trousers", "general", inches(1, 1, 4), inches(1, 1, 2), "hem-width-page", "", source.Read},
	{"trousers", "period; inlay for a turn-up", inches(1, 1, 4), inches(1, 1, 4), "cutting-systems", "", source.Read},
}
