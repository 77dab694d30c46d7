package yardage

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A MadeRow is a printed length of cloth for something that is made up. No plan takes a
// figure from here: the sources do not print how they come to it.
type MadeRow struct {
	Made             string       // what is made
	Size             string       // its size or kind
	Width, WidthMost units.Length // of the cloth, equal where one is printed, zero where none is
	Cloth, ClothMost units.Length // the length of cloth, equal where one is printed
	Trim             units.Length // trimming for its edge; zero where none is printed
	Source           string       // id of the source, see [source.Lookup]
	Known            source.Known // how the figure is known
}

// The lengths are in units of 1/24 yd or 1 cm.
var madeRows = [...]struct {
	made, size string
	from, to   int64
	unit       units.Unit
	lo, hi     int64
	trim       int64
	source     string
}{
	{"dust ruffle twin", "14 in drop gathered or box pleat", 0, 0, units.Yard, 144, 144, 0, "dust-ruffle-table"},
	{"dust ruffle queen", "14 in drop gathered or box pleat", 0, 0, units.Yard, 168, 168, 0, "dust-ruffle-table"},
	{"dust ruffle twin", "14 in drop tailored", 0, 0, units.Yard, 84, 84, 0, "dust-ruffle-table"},
	{"dust ruffle queen", "14 in drop tailored", 0, 0, units.Yard, 108, 108, 0, "dust-ruffle-table"},
	{"dust ruffle twin", "21 in drop gathered or box pleat", 0, 0, units.Yard, 204, 204, 0, "dust-ruffle-table"},
	{"dust ruffle queen", "21 in drop gathered or box pleat", 0, 0, units.Yard, 240, 240, 0, "dust-ruffle-table"},
	{"dust ruffle twin", "21 in drop tailored", 0, 0, units.Yard, 132, 132, 0, "dust-ruffle-table"},
	{"dust ruffle queen", "21 in drop tailored", 0, 0, units.Yard, 150, 150, 0, "dust-ruffle-table"},
	{"slipcover", "large sofa", 60, 60, units.Yard, 240, 336, 0, "slipcover-table"},
	{"slipcover", "large sofa", 45, 45, units.Yard, 384, 480, 0, "slipcover-table"},
	{"slipcover", "small sofa", 60, 60, units.Yard, 144, 192, 0, "slipcover-table"},
	{"slipcover", "small sofa", 45, 45, units.Yard, 240, 288, 0, "slipcover-table"},
	{"table skirt round 27 in repeat", "top 24 base 24", 0, 0, units.Yard, 108, 108, 0, "round-cloth-table"},
	{"table skirt round 27 in repeat", "top 27 base 30", 0, 0, units.Yard, 144, 144, 0, "round-cloth-table"},
	{"pillow cover", "standard 20 x 26", 54, 54, units.Yard, 15, 15, 0, "pillow-cover-table"},
	{"pillow cover", "queen 20 x 30", 54, 54, units.Yard, 27, 27, 0, "pillow-cover-table"},
	{"pillow cover", "king 20 x 36", 54, 54, units.Yard, 30, 30, 0, "pillow-cover-table"},
	{"pillow cover", "square 12", 54, 54, units.Yard, 8, 8, 0, "pillow-cover-table"},
	{"pillow cover", "square 14", 54, 54, units.Yard, 12, 12, 0, "pillow-cover-table"},
	{"pillow cover", "square 16", 54, 54, units.Yard, 12, 12, 0, "pillow-cover-table"},
	{"pillow cover", "square 18", 54, 54, units.Yard, 15, 15, 0, "pillow-cover-table"},
	{"pillow cover", "square 20", 54, 54, units.Yard, 18, 18, 0, "pillow-cover-table"},
	{"pillow cover", "square 30", 54, 54, units.Yard, 24, 24, 0, "pillow-cover-table"},
	{"basic square pillow", "16 in", 0, 0, units.Yard, 12, 12, 48, "square-pillow-page"},
	{"basic square pillow", "18 in", 0, 0, units.Yard, 12, 12, 54, "square-pillow-page"},
	{"basic square pillow", "20 in", 0, 0, units.Yard, 16, 16, 56, "square-pillow-page"},
	{"basic square pillow", "22 in", 0, 0, units.Yard, 16, 16, 60, "square-pillow-page"},
	{"shirt cloth, factory", "formal full sleeve", 60, 60, units.Centimetre, 160, 160, 0, "shirt-metres-page"},
	{"shirt cloth, factory", "formal full sleeve", 44, 44, units.Centimetre, 210, 210, 0, "shirt-metres-page"},
	{"shirt cloth, factory", "formal half sleeve", 60, 60, units.Centimetre, 140, 140, 0, "shirt-metres-page"},
	{"shirt cloth, factory", "formal half sleeve", 44, 44, units.Centimetre, 190, 190, 0, "shirt-metres-page"},
	{"shirt cloth, factory", "short shirt full sleeve", 60, 60, units.Centimetre, 145, 145, 0, "shirt-metres-page"},
	{"shirt cloth, factory", "short shirt full sleeve", 44, 44, units.Centimetre, 190, 190, 0, "shirt-metres-page"},
	{"shirt cloth, factory", "short shirt half sleeve", 60, 60, units.Centimetre, 130, 130, 0, "shirt-metres-page"},
	{"shirt cloth, factory", "short shirt half sleeve", 44, 44, units.Centimetre, 175, 175, 0, "shirt-metres-page"},
	{"shirt cloth, custom", "shirt", 58, 60, units.Centimetre, 160, 160, 0, "shirt-metres-page"},
	{"shirt cloth, custom", "shirt", 36, 44, units.Centimetre, 225, 225, 0, "shirt-metres-page"},
	{"sheet as cloth", "twin flat", 45, 45, units.Yard, 84, 84, 0, "sheet-as-cloth-table"},
	{"sheet as cloth", "full flat", 45, 45, units.Yard, 108, 108, 0, "sheet-as-cloth-table"},
	{"sheet as cloth", "queen flat", 45, 45, units.Yard, 132, 132, 0, "sheet-as-cloth-table"},
	{"sheet as cloth", "king flat", 45, 45, units.Yard, 144, 144, 0, "sheet-as-cloth-table"},
	{"sheet size", "crib flat", 42, 42, units.Yard, 48, 48, 0, "sheet-size-table"},
	{"sheet size", "twin flat", 66, 66, units.Yard, 64, 64, 0, "sheet-size-table"},
	{"sheet size", "twin XL flat", 66, 66, units.Yard, 68, 68, 0, "sheet-size-table"},
	{"sheet size", "full flat", 81, 81, units.Yard, 64, 64, 0, "sheet-size-table"},
}

// MadeUp yields every row.
func MadeUp(yield func(MadeRow) bool) {
	for _, r := range madeRows {
		m := MadeRow{r.made, r.size, units.Inch.Of(r.from), units.Inch.Of(r.to), printed(r.unit, r.lo), printed(r.unit, r.hi), printed(r.unit, r.trim), r.source, source.Read}
		if !yield(m) {
			return
		}
	}
}

// printed is a length in centimetres or in twenty-fourths of a yard.
func printed(u units.Unit, n int64) units.Length {
	if u == units.Yard {
		return u.Frac(n, 24)
	}
	return u.Of(n)
}

// A NormRow is cloth for a coat by an official norm, in one of three size columns, whose
// heads are not known.
type NormRow struct {
	Height units.Length // of the wearer; zero where none is printed
	Long   units.Length // of the coat; zero for the second material
	Width  units.Length // of the cloth
	Column int          // of the size, 1 to 3
	Cloth  units.Length // the length of cloth
	Second bool         // for the second material, the lining or the interlining
	Source string       // id of the source, see [source.Lookup]
	Known  source.Known // how the figure is known
}

// Centimetres: height, length, width, and the cloth for each size.
var normRows = [...][6]int64{
	{146, 101, 100, 355, 370, 380},
	{146, 101, 140, 255, 265, 275},
	{152, 104, 100, 360, 375, 385},
	{152, 104, 140, 260, 270, 280},
	{158, 107, 100, 370, 385, 395},
	{158, 107, 140, 265, 275, 285},
	{164, 110, 100, 375, 390, 400},
	{164, 110, 140, 270, 280, 290},
	{170, 113, 100, 385, 400, 415},
	{170, 113, 140, 280, 290, 295},
	{176, 116, 100, 395, 410, 425},
	{176, 116, 140, 285, 300, 305},
	{0, 119, 100, 405, 420, 435},
	{0, 119, 140, 295, 305, 310},
	{0, 122, 100, 415, 430, 445},
	{0, 122, 140, 300, 315, 320},
	{0, 125, 100, 425, 435, 450},
	{0, 125, 140, 310, 320, 325},
	{164, 0, 90, 110, 120, 0},
	{164, 0, 110, 90, 100, 0},
	{164, 0, 150, 70, 80, 0},
	{176, 0, 90, 120, 130, 0},
	{176, 0, 110, 100, 110, 0},
}

// Norms yields every row.
func Norms(yield func(NormRow) bool) {
	cm := units.Centimetre.Of
	for _, r := range normRows {
		for i, cloth := range r[3:] {
			if n := (NormRow{cm(r[0]), cm(r[1]), cm(r[2]), i + 1, cm(cloth), r[1] == 0, srcNorms, source.Read}); cloth > 0 && !yield(n) {
				return
			}
		}
	}
}

// An AdditionRow is what a source adds to a length of cloth: a length, a share of it, or
// repeats of the pattern. [Width] adds those of the chart and its repeats; no plan takes
// the others.
type AdditionRow struct {
	For              string       // what it is added for
	Length, Most     units.Length // the length added, equal where one is printed
	Share, ShareMost units.Ratio  // the share added, equal where one is printed
	Repeats          units.Ratio  // the repeats added
	Source           string       // id of the source, see [source.Lookup]
	Known            source.Known // how the figure is known
}

var additionRows = [...]AdditionRow{
	{For: "curtains, for the start", Repeats: units.RatioOf(1, 1), Source: "repeat-buying-page", Known: source.Read},
	{For: "plaid, each piece along the cloth", Repeats: units.RatioOf(1, 1), Source: "stacked-plaid-page", Known: source.Read},
	{For: "plaid of a small repeat", Length: units.Yard.Frac(1, 2), Most: units.Yard.Frac(1, 2), Source: "plaid-piece-page", Known: source.Read},
	{For: "plaid of a large repeat", Length: units.Yard.Frac(1, 1), Most: units.Yard.Frac(1, 1), Source: "plaid-piece-page", Known: source.Read},
	{For: "plaid, at least", Share: units.RatioOf(1, 4), ShareMost: units.RatioOf(1, 4), Source: "sewing-techniques-dictionary", Known: source.Read},
	{For: "a large difference of width, one-way cloth, or sleeves cut in one with the body", Length: units.Yard.Frac(1, 4), Most: units.Yard.Frac(1, 4), Source: "width-conversion-chart", Known: source.Read},
	{For: "a large repeat", Repeats: units.RatioOf(1, 1), Source: "width-conversion-additions", Known: source.Read},
	{For: "doubt about the width", Length: units.Yard.Frac(1, 2), Most: units.Yard.Frac(1, 2), Source: "width-conversion-additions", Known: source.Read},
	{For: "a tablecloth of natural fibre, for shrinkage", Share: units.RatioOf(3, 20), ShareMost: units.RatioOf(3, 20), Source: "round-tablecloth-answer", Known: source.Read},
	{For: "curtains, for ease and overlap", Length: units.Centimetre.Frac(10, 1), Most: units.Centimetre.Frac(10, 1), Share: units.RatioOf(1, 10), ShareMost: units.RatioOf(1, 10), Source: "lined-pleat-page", Known: source.Read},
	{For: "a half drop", Repeats: units.RatioOf(1, 2), Source: "half-drop-cutting-page", Known: source.Read},
	{For: "welt of a chair", Length: units.Yard.Frac(3, 2), Most: units.Yard.Frac(3, 2), Source: "welt-topic", Known: source.Read},
	{For: "welt of a sofa", Length: units.Yard.Frac(3, 1), Most: units.Yard.Frac(3, 1), Source: "welt-topic", Known: source.Read},
	{For: "a seat of a large motif", Length: units.Yard.Frac(1, 4), Most: units.Yard.Frac(1, 4), Source: "slip-seat-page", Known: source.Read},
	{For: "plaid in one layer, each large piece", Repeats: units.RatioOf(1, 1), Source: "plaid-yardage-article", Known: source.Read},
	{For: "a large motif", Length: units.Centimetre.Frac(30, 1), Most: units.Centimetre.Frac(50, 1), Source: "metres-of-cloth-page", Known: source.Read},
	{For: "pockets, collars, stripes, checks or a border", Length: units.Centimetre.Frac(30, 1), Most: units.Centimetre.Frac(40, 1), Source: "tailoring-digest", Known: source.Read},
	{For: "a slipcover of natural fibre, for shrinkage", Length: units.Yard.Frac(3, 1), Most: units.Yard.Frac(3, 1), Source: "slipcover-table", Known: source.Read},
	{For: "a three-tier skirt of cotton, for shrinkage", Length: units.Yard.Frac(1, 2), Most: units.Yard.Frac(1, 2), Source: "tier-skirt-page", Known: source.Read},
	{For: "a defect of cloth in trade", Length: units.Yard.Frac(1, 4), Most: units.Yard.Frac(1, 4), Source: "export-terms", Known: source.Read},
}

// Additions yields every row. Sources disagree: all rows stay.
func Additions(yield func(AdditionRow) bool) {
	for _, r := range additionRows {
		if !yield(r) {
			return
		}
	}
}

// A RepeatRow is the share that upholstery adds to a length of plain cloth, for a sum of
// the repeats along and across.
type RepeatRow struct {
	From, To units.Length // the sum of the two repeats, inches
	Share    units.Ratio  // added to the length
	Cloth    units.Length // the least width of cloth it is printed for
	Source   string       // id of the source, see [source.Lookup]
	Known    source.Known // how the figure is known
}

var repeatRows = [...]struct {
	from, to, percent, cloth int64
	source                   string
}{
	{3, 14, 10, 54, "upholstery-repeat-page"},
	{15, 19, 15, 54, "upholstery-repeat-page"},
	{20, 27, 20, 54, "upholstery-repeat-page"},
	{28, 36, 25, 54, "upholstery-repeat-page"},
	{37, 43, 30, 54, "upholstery-repeat-page"},
	{44, 51, 35, 54, "upholstery-repeat-page"},
	{3, 14, 10, 54, "repeat-adjustment-page"},
	{15, 19, 15, 54, "repeat-adjustment-page"},
	{20, 27, 20, 54, "repeat-adjustment-page"},
	{28, 36, 25, 54, "repeat-adjustment-page"},
	{37, 45, 30, 54, "repeat-adjustment-page"},
	{46, 54, 35, 54, "repeat-adjustment-page"},
	{3, 14, 20, 50, "repeat-adjustment-page"},
	{15, 19, 25, 50, "repeat-adjustment-page"},
	{20, 27, 30, 50, "repeat-adjustment-page"},
	{28, 36, 35, 50, "repeat-adjustment-page"},
	{37, 45, 40, 50, "repeat-adjustment-page"},
	{46, 54, 45, 50, "repeat-adjustment-page"},
	{2, 14, 10, 54, "cushion-yardage-guide"},
	{14, 19, 15, 54, "cushion-yardage-guide"},
	{19, 27, 20, 54, "cushion-yardage-guide"},
	{27, 36, 25, 54, "cushion-yardage-guide"},
	{36, 45, 30, 54, "cushion-yardage-guide"},
}

// RepeatShares yields every row. The bands of a source have gaps, as printed.
func RepeatShares(yield func(RepeatRow) bool) {
	for _, r := range repeatRows {
		if !yield(RepeatRow{units.Inch.Of(r.from), units.Inch.Of(r.to), units.RatioOf(r.percent, 100), units.Inch.Of(r.cloth), r.source, source.Read}) {
			return
		}
	}
}
