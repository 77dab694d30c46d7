// Package gather works out cloth that is drawn up onto a shorter edge: a strip
// and its fullness, a ruffle that goes round a curve, a sleeve gathered into its
// cuff, a band and the edge that is taken up onto it. Beside these stand sections
// laid in pleats, elastic, shirring, and skirts: part of a circle, flounced, tiered or gored.
//
//	// three pieces of 12 1/4 in onto a collar of 15 3/4 in: fullness 2 1/7
//	p, err := gather.Strip{Strip: pieces, Edge: collar}.Plan()
//	fmt.Print(p.Sheet().Text(units.Notation{}))
//
// Every length is measured along seam lines, never along a cut edge, and every
// length of a garment is one as sewn: the package takes no seam off a sleeve or
// an edge. Fullness is the length of the strip as sewn over the length of the
// edge; the tables of [Fullnesses] and [Eases] tell what is usual, each row
// with its source, and rows that disagree stand side by side.
package gather
