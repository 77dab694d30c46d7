package gather

import (
	"slices"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A FullnessRow is what one source prints of the fullness of one use in one
// cloth: length of the strip over the length it is gathered onto. Where sources
// disagree there are several rows, and the caller chooses.
type FullnessRow struct {
	Use    string       // what it is for, as in straight ruffle
	Cloth  string       // the cloth, as in lawn; any where the source names none
	Low    units.Ratio  // the least
	High   units.Ratio  // the most; zero where only a least is given
	Note   string       // what else the source says
	Source string       // id in the list of sources; empty for common practice
	Place  string       // page or chapter
	Known  source.Known // how the figure is known
}

// Cite is the row as a citation.
func (r FullnessRow) Cite() source.Cite {
	return source.Cite{For: r.Use + ", " + r.Cloth, ID: r.Source, Place: r.Place, Known: r.Known}
}

// half is n halves, third n thirds, quarter n quarters.
func half(n int64) units.Ratio    { return units.RatioOf(n, 2) }
func third(n int64) units.Ratio   { return units.RatioOf(n, 3) }
func quarter(n int64) units.Ratio { return units.RatioOf(n, 4) }

// Rows that name a publication are as it prints them, the rest are common practice.
var fullnessRows = [...]FullnessRow{
	{"frill", "any", half(6), half(6), "worked example", "vocational-dressmaking-practice", "page 212", source.Read},
	{"frill", "any", half(5), half(5), "exercise: the finished frill is two fifths of the strip", "vocational-dressmaking-practice", "page 212", source.Read},
	{"tiers", "any", half(3), half(4), "each tier to the one above; the first 1 to 1 1/2 widths of cloth", "vocational-dressmaking-theory", "page 250", source.Read},
	{"full ruffle", "any", half(6), half(6), "a column that also calls 2 times 1 1/2", "extension-newspaper-column", "", source.Read},
	{"gathers", "any", half(3), units.Ratio{}, "below this, ease", "costume-construction-text", "chapter 11", source.Read},
	{"bias ruffle", "silk or sateen", quarter(5), third(4), "", "clothing-for-women", "bias ruffles", source.Read},
	{"dust ruffle", "cotton", quarter(5), third(4), "finished 4 to 5 in deep", "clothing-for-women", "petticoats, part 2", source.Read},
	{"leg ruffle", "cotton", third(4), half(3), "each leg of a pair of drawers", "clothing-for-women", "drawers", source.Read},
	{"petticoat ruffle", "lawn", half(3), half(3), "5 to 10 in deep", "clothing-and-health", "lesson 12", source.Read},
	{"shirred ruche", "chiffon or other soft sheer", half(6), half(6), "", "new-dressmaker", "chapter 28", source.Read},
	{"shirred ruche", "taffeta or messaline", half(4), half(4), "about", "new-dressmaker", "chapter 28", source.Read},
	{"hand gathering", "any", half(4), half(4), "pass over twice as much as is taken up", "school-needlework", "gathering and placing of gathers", source.Read},
	{"smocking", "any", half(8), half(8), "drawn to about a quarter", "clothing-for-women", "", source.Read},
	{"ruffle", "any", half(3), half(6), "by the fullness wanted and the weight of the cloth", "ruffle-estimate-page", "", source.Read},
	{"straight ruffle", "light", half(4), half(6), "", "straight-ruffle-sheet", "step 1", source.Read},
	{"gathers", "fine and soft", half(4), half(4), "", "fullness-lesson-sheet", "", source.Read},
	{"bed ruffle", "light", half(5), half(6), "lighter cloth needs more", "bed-skirt-page", "", source.Read},
	{"bed ruffle", "medium or light", half(5), half(5), "", "bed-ruffle-page", "", source.Read},
	{"ruffle", "heavy", half(3), half(3), "", "", "", source.Practice},
	{"ruffle", "medium", half(4), half(5), "", "", "", source.Practice},
	{"gathered skirt", "medium", half(4), half(5), "", "", "", source.Practice},
	{"puff sleeve into band", "light", half(3), half(4), "", "", "", source.Practice},
	{"curtain", "medium", half(4), half(5), "", "", "", source.Practice},
	{"curtain", "sheer", half(6), half(7), "", "", "", source.Practice},
	{"ruffle", "shoulder of an apron", half(3), half(3), "half as much more", "scientific-sewing", "fifth grade, second model", source.Practice},
	{"apron ruffle", "any", third(4), third(4), "a third longer than the band, and 4 in for the ends", "scientific-sewing", "plain sewing apron", source.Practice},
	{"frill", "cap or shirt", half(4), half(6), "twice; three times is very full", "workwomans-guide", "line 1377", source.Practice},
	{"shirring", "any", half(4), half(4), "drawn to half; rows at most 1/2 in apart", "shirring-page", "", source.Read},
	{"shirring", "light", half(3), half(4), "", "", "", source.Practice},
	{"smocking", "any", half(5), half(5), "", "", "", source.Practice},
	{"smocking", "light", half(6), half(6), "", "", "", source.Practice},
	{"smocking", "batiste", half(8), half(8), "three is thin, five dense", "smocking-ratio-page", "", source.Read},
}

// fullnessFor is the first row of a use, which the table has.
func fullnessFor(use string) FullnessRow {
	return fullnessRows[slices.IndexFunc(fullnessRows[:], func(r FullnessRow) bool { return r.Use == use })]
}

// Fullnesses yields every row of the table of fullness.
func Fullnesses(yield func(FullnessRow) bool) { each(fullnessRows[:], yield) }
