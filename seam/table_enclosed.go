package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// An EnclosedRow is one printed set of widths for a seam of several stages. A
// width that the source does not print is zero; where it prints a range, the
// field is the least and the one ending in Most the greatest.
type EnclosedRow struct {
	Seam  string       // the name of the seam, as in french, flat-felled, hong-kong
	Total units.Length // allowance of each ply in all; zero where it is not printed
	First units.Length // the first pass: from the raw edge, or from the fold where Note says so
	Trim  units.Length // what is left of the trimmed ply, or plies, afterwards
	// Second is the second pass of a French seam, the finished fell or binding
	// of the others, and for those sewn in two rows the second row from the first.
	Second units.Length
	Turn   units.Length // what is folded in
	Strip  units.Length // the strip to cut, where there is one

	TotalMost, FirstMost, TrimMost, SecondMost, TurnMost, StripMost units.Length // the upper ends of the ranges printed; zero where one figure is

	Note   string       // what else the source says; empty if nothing
	Source string       // id, see [source.Lookup]; empty for common practice
	Place  string       // page or section; empty if none
	Known  source.Known // how the figure is known
}

// Cite is the row as a citation.
func (r EnclosedRow) Cite() source.Cite {
	return source.Cite{For: r.Seam + " widths", ID: r.Source, Place: r.Place, Known: r.Known}
}

// Enclosed yields the printed widths of seams of several stages. Within one kind
// of seam the source of highest rank stands first: a plan takes its defaults from
// the first row that fits. Rows disagree with each other, as their sources do.
func Enclosed(yield func(EnclosedRow) bool) {
	for i := range enclosed {
		if !yield(enclosed[i]) {
			return
		}
	}
}

// printedFrench is the first printed set of passes that come to the total, with
// the pass that is given, if one is. The row is zero if none is printed.
func printedFrench(total, first, second units.Length) EnclosedRow {
	for i := range enclosed {
		r := &enclosed[i]
		if r.Seam != "french" || r.First.IsZero() || r.Second.IsZero() || !r.FirstMost.IsZero() || !r.SecondMost.IsZero() {
			continue
		}
		if r.First.Add(r.Second) == total && (first.IsZero() || first == r.First) && (second.IsZero() || second == r.Second) {
			return *r
		}
	}
	return EnclosedRow{}
}

// printedFell is the first printed fell for a seam sewn at first from the raw edges.
func printedFell(first units.Length) EnclosedRow {
	for i := range enclosed {
		if r := &enclosed[i]; r.Seam == "flat-felled" && r.First == first && !r.Second.IsZero() && r.FirstMost.IsZero() {
			return *r
		}
	}
	return EnclosedRow{}
}

func fiveEighths() units.Length { return inch(5, 8) }

// enclosed is the table: 82 rows, inches and metric each as printed.
var enclosed = [...]EnclosedRow{
	// French.
	{Seam: "french", First: inch(3, 8), Trim: inch(1, 8), Second: inch(3, 8), Note: "1/8 in more than the usual 5/8 in", Source: "extension-french-seam-sheet", Known: source.Read},
	{Seam: "french", First: inch(3, 8), Second: inch(1, 4), Note: "trimmed close to the stitching", Source: "extension-construction-card", Known: source.Read},
	{Seam: "french", Total: fiveEighths(), First: inch(3, 8), Trim: inch(1, 8), Second: inch(1, 4), Note: "the sum is printed", Source: "clothing-construction-handbook", Known: source.Read},
	{Seam: "french", Total: mm(15), First: mm(9), Trim: mm(3), Second: mm(6), Note: "the metric set of the same page", Source: "clothing-construction-handbook", Known: source.Read},
	{Seam: "french", First: inch(1, 8), Second: inch(1, 4), Note: "second row measured from the creased edge", Source: "dressmaking-course", Place: "p. 98", Known: source.Read},
	{Seam: "french", First: inch(1, 6), Second: inch(1, 4), Source: "educational-needlecraft", Place: "lesson 2", Known: source.Read},
	{Seam: "french", First: inch(1, 8), Note: "by hand; ravellings only are cut away", Source: "school-needlework", Place: "French Seam", Known: source.Read},
	{Seam: "french", Trim: inch(1, 8), Second: inch(1, 4), Source: "clothing-and-health", Place: "lines 2189-2194", Known: source.Read},
	{Seam: "french", First: inch(1, 4), Trim: inch(1, 8), Second: inch(3, 8), Note: "trimmed by 1/8 in; advises about 1/8 in more for the turn of cloth", Source: "tablecloth-seams-thread", Known: source.Read},
	{Seam: "french", First: inch(1, 4), Trim: inch(1, 8), Second: inch(3, 8), Source: "french-seam-definition", Known: source.Read},
	{Seam: "french", Total: fiveEighths(), First: inch(3, 8), Trim: inch(1, 8), Second: inch(1, 4), Note: "states 3/8 + 2/8 = 5/8", Source: "french-seam-sums", Known: source.Read},
	{Seam: "french", Total: inch(1, 2), First: inch(1, 4), Trim: inch(1, 8), Second: inch(1, 4), Source: "french-seam-sums", Known: source.Read},
	{Seam: "french", Trim: mm(5), Note: "first pass half the allowance, second on the stitching line; prints 1/4 in beside 5 mm", Source: "seam-finishing-methods", Known: source.Read},
	{Seam: "french", Second: inch(1, 4), Note: "first pass scant 1/4 in, not trimmed", Source: "pillowcase-seams", Known: source.Read},
	{Seam: "french", First: inch(1, 8), FirstMost: inch(1, 4), Second: inch(3, 8), Note: "stray threads cut away; a child's dress", Source: "child-dress-seams", Known: source.Read},
	{Seam: "french", First: mm(3), FirstMost: mm(4), Second: mm(5), SecondMost: mm(7), Note: "the second must exceed the first", Source: "stitch-and-seam-names", Known: source.Read},
	{Seam: "fell-french", Trim: inch(1, 8), Turn: inch(1, 8), Note: "the edge toward you trimmed, the other turned and brought to the seam line", Source: "new-dressmaker", Place: "ch. 17", Known: source.Read},
	{Seam: "mock-french", Total: fiveEighths(), First: fiveEighths(), Second: inch(5, 16), Turn: inch(5, 16), Note: "each allowance pressed in half inward", Source: "seams-article", Known: source.Read},

	// Flat-felled: Second is the finished fell, Turn what is turned in.
	{Seam: "flat-felled", Total: fiveEighths(), First: fiveEighths(), Trim: inch(1, 8), Second: inch(3, 8), Turn: inch(1, 4), Source: "clothing-construction-handbook", Known: source.Read},
	{Seam: "flat-felled", Total: mm(15), First: mm(15), Trim: mm(3), Second: mm(9), Turn: mm(6), Note: "the metric set of the same page", Source: "clothing-construction-handbook", Known: source.Read},
	{Seam: "flat-felled", Total: inch(1, 2), First: inch(1, 2), Trim: inch(1, 8), Note: "the turn is not printed", Source: "clothing-and-health", Place: "lines 5296-5299", Known: source.Read},
	{Seam: "flat-felled", First: mm(10), FirstMost: mm(20), Note: "tacked; the inner edge cut to half, the outer turned in and hemmed", Source: "needlework-encyclopedia", Place: "ch. 1", Known: source.Read},
	{Seam: "flat-felled", Total: fiveEighths(), First: fiveEighths(), Trim: inch(1, 8), Second: inch(5, 16), Turn: inch(5, 16), Note: "half of the remaining allowance turned under", Source: "tablecloth-seams-thread", Known: source.Read},
	{Seam: "flat-felled", Total: fiveEighths(), First: fiveEighths(), Trim: inch(1, 8), TrimMost: inch(1, 4), Second: inch(5, 16), Turn: inch(5, 16), Note: "raw edge brought to the stitching; edge-stitch about 1/8 in from the fold", Source: "fell-machine-guide", Known: source.Read},
	{Seam: "flat-felled", Turn: mm(3), Note: "under allowance to half", Source: "seam-finishing-methods", Known: source.Read},
	{Seam: "flat-felled", Total: fiveEighths(), First: fiveEighths(), Trim: inch(1, 4), Second: inch(3, 8), Turn: inch(1, 4), Source: "fell-how-to-sheet", Known: source.Read},
	{Seam: "flat-felled", Total: fiveEighths(), First: fiveEighths(), Trim: inch(1, 4), Second: inch(5, 16), Turn: inch(5, 16), Note: "right sides together", Source: "fell-how-to-page", Known: source.Read},
	{Seam: "flat-felled", Total: inch(7, 8), First: inch(7, 8), Trim: inch(1, 4), Note: "heavy cloth, 1/4 in more", Source: "fell-heavy-cloth-page", Known: source.Read},
	{Seam: "flat-felled", Total: fiveEighths(), First: fiveEighths(), Trim: inch(1, 4), Source: "seam-finishes-series", Known: source.Read},
	{Seam: "flat-felled", Total: fiveEighths(), First: fiveEighths(), Trim: inch(1, 8), Second: inch(1, 4), Turn: inch(3, 8), Note: "cannot lie flat: the turned edge is wider than the fell", Source: "seams-article", Known: source.Read},
	{Seam: "flat-felled", Total: inch(1, 2), First: inch(1, 2), Trim: inch(1, 8), Second: inch(1, 4), Turn: inch(1, 4), Note: "upper folded to the seam", Source: "self-enclosed-seams", Known: source.Read},
	{Seam: "flat-felled", Total: fiveEighths(), First: fiveEighths(), Trim: inch(1, 8), Second: inch(5, 16), Turn: inch(5, 16), Note: "upper folded to the seam", Source: "self-enclosed-seams", Known: source.Read},
	{Seam: "flat-felled", Total: fiveEighths(), First: fiveEighths(), Note: "whatever the pattern drew", Source: "fell-allowance-notes", Known: source.Read},
	{Seam: "flat-felled", Trim: inch(1, 4), Source: "seam-cards", Known: source.Read},
	{Seam: "flat-felled", Total: fiveEighths(), First: fiveEighths(), Trim: inch(1, 4), Second: inch(3, 8), Turn: inch(1, 4), Note: "a least allowance", Source: "seam-finish-part-two", Known: source.Read},
	{Seam: "flat-felled", Total: mm(15), First: mm(15), Trim: mm(6), Second: mm(9), Turn: mm(6), Note: "the metric set of the same page", Source: "seam-finish-part-two", Known: source.Read},
	{Seam: "flat-felled", Total: mm(15), First: mm(15), Trim: mm(3), SecondMost: units.Millimetre.Frac(15, 2), Note: "the fell at most half the allowance", Source: "seams-teaching-page", Known: source.Read},
	{Seam: "straight-fell", Trim: inch(1, 8), Note: "by hand; edges offset by this instead of trimming", Source: "school-needlework", Place: "Straight Way Fell", Known: source.Read},
	{Seam: "untrimmed-fell", Total: inch(3, 4), First: inch(1, 4), Second: inch(1, 4), Turn: inch(1, 4), Note: "upper set back; allowances 1/4 and 1/2 in together", Source: "fell-untrimmed-page", Known: source.Read},
	{Seam: "untrimmed-fell", Total: inch(3, 4), First: inch(1, 4), Second: inch(1, 4), Turn: inch(1, 4), Note: "lower projects; allowances 1/4 and 1/2 in together", Source: "fell-untrimmed-notes", Known: source.Read},
	{Seam: "untrimmed-fell", Total: mm(24), First: mm(8), Second: mm(8), Turn: mm(8), Note: "wide foot, about; allowances once and twice the foot", Source: "self-finished-seams-handout", Known: source.Read},
	{Seam: "untrimmed-fell", Total: mm(12), First: mm(4), Second: mm(4), Turn: mm(4), Note: "narrow foot, about; allowances once and twice the foot", Source: "self-finished-seams-handout", Known: source.Read},
	{Seam: "untrimmed-fell", Turn: mm(5), Second: mm(1), SecondMost: mm(2), Note: "lower projects by the turn; second row from the fold", Source: "stitch-and-seam-names", Known: source.Read},
	{Seam: "serged-fell", First: inch(1, 16), Second: inch(1, 4), Note: "rows from the ridge, and from the first", Source: "serged-fell-page", Known: source.Read},
	{Seam: "mock-felled", First: inch(1, 2), Source: "faux-fell-page", Known: source.Read},
	{Seam: "mock-felled", Trim: inch(1, 8), Note: "the other folded in half round it", Source: "seam-finish-notes", Known: source.Read},

	// Bound, self-bound, Hong Kong.
	{Seam: "bound", Total: inch(1, 4), First: inch(1, 4), Second: inch(1, 4), Turn: inch(1, 8), Strip: inch(3, 4), Note: "binding set 1/8 in in from the seam edge, the other side turned 1/8 in", Source: "handicraft-for-girls", Place: "Bound Seam, line 2914", Known: source.Read},
	{Seam: "bound", Total: inch(3, 8), First: inch(3, 8), Second: inch(1, 4), Note: "tape narrower than the allowance", Source: "bound-seam-tutorial", Known: source.Read},
	{Seam: "bound", Second: inch(1, 4), Strip: units.Inch.Of(1), Source: "bias-bound-page", Known: source.Read},
	{Seam: "bound", Total: fiveEighths(), First: fiveEighths(), Note: "folded tape stitched on its crease; the allowance trimmed if the tape does not reach", Source: "taped-seams-tutorial", Known: source.Read},
	{Seam: "self-bound", Total: inch(1, 2), TotalMost: fiveEighths(), Trim: inch(1, 8), Second: inch(1, 8), SecondMost: inch(3, 16), Turn: inch(1, 4), Note: "wide side folded to the trimmed edge, then to the seam", Source: "self-bound-tutorial", Known: source.Read},
	{Seam: "self-bound", Total: inch(1, 2), First: inch(1, 2), Note: "one layer graded; folded over twice", Source: "self-bound-page", Known: source.Read},
	{Seam: "hong-kong", First: inch(1, 8), Total: fiveEighths(), Strip: inch(7, 8), Note: "strip is the allowance and 1/4 in", Source: "hong-kong-article", Known: source.Read},
	{Seam: "hong-kong", First: inch(1, 4), Strip: units.Inch.Of(1), Source: "hong-kong-video-page", Known: source.Read},
	{Seam: "hong-kong", First: inch(1, 4), Second: inch(1, 8), Strip: units.Inch.Of(1), Note: "second row from the edge", Source: "hong-kong-finish-page", Known: source.Read},
	{Seam: "hong-kong", Strip: units.Inch.Of(1), Note: "silk", Source: "couture-edge-page", Known: source.Read},
	{Seam: "hong-kong", First: inch(1, 4), Trim: inch(1, 8), Strip: inch(5, 4), Source: "sewing-essentials", Known: source.Memory},
	{Seam: "hong-kong", First: inch(1, 4), Strip: inch(3, 2), Source: "complete-guide-to-sewing", Known: source.Memory},

	// Others.
	{Seam: "double-cloth", Total: fiveEighths(), First: fiveEighths(), Trim: inch(3, 8), Note: "layers parted for twice the seam", Source: "extension-complex-seams", Known: source.Read},
	{Seam: "hairline", Trim: inch(1, 8), Note: "narrow zigzag on the seam line; sheer cloth, no strain", Source: "extension-construction-card", Known: source.Read},
	{Seam: "turned-and-stitched", Turn: inch(1, 4), Source: "extension-construction-card", Known: source.Read},
	{Seam: "turned-and-stitched", Turn: mm(3), Note: "prints 1/8 in beside 3 mm", Source: "seam-finishing-methods", Known: source.Read},
	{Seam: "turned-and-stitched", Turn: inch(1, 8), TurnMost: inch(1, 4), Source: "seam-finish-notes", Known: source.Read},
	{Seam: "turned-and-stitched", Total: fiveEighths(), Turn: inch(1, 4), Note: "leaves 3/8 in", Source: "seam-cards", Known: source.Read},
	{Seam: "pinked", First: inch(1, 4), Note: "row from the raw edge, then pinked", Source: "seam-cards", Known: source.Read},
	{Seam: "lapped-turned", Turn: inch(1, 8), Second: inch(1, 4), SecondMost: inch(1, 2), Note: "turned on both plies; Second is the lap; two rows", Source: "school-sewing", Place: "par. 139", Known: source.Read},
	{Seam: "lapped-raw", Second: fiveEighths(), Note: "lapped by the whole allowance; second row from the first", Source: "new-dressmaker", Place: "p. 94", Known: source.Read},
	{Seam: "lapped", Note: "ornamental row at the edge, or about 1/2 in from it; one turning narrower", Source: "womans-encyclopaedia", Place: "lesson 2", Known: source.Read},
	{Seam: "strap", Second: fiveEighths(), Strip: inch(5, 4), Note: "strip twice the finished strap", Source: "new-dressmaker", Place: "p. 94", Known: source.Read},
	{Seam: "cord", First: inch(1, 16), Total: fiveEighths(), Note: "row from the fold", Source: "clothing-for-women", Place: "tailored skirt, part 4", Known: source.Read},
	{Seam: "cord", First: inch(1, 4), Note: "row from the seam through three thicknesses", Source: "tailored-seams-page", Known: source.Read},
	{Seam: "double-stitched-welt", SecondMost: inch(1, 4), Source: "tailored-seams-page", Known: source.Read},
	{Seam: "plain-tailored", Total: inch(1, 2), Note: "firm cloth; wider where it frays", Source: "womans-encyclopaedia", Place: "lesson 2", Known: source.Read},
	{Seam: "welt", Total: fiveEighths(), First: fiveEighths(), Trim: inch(1, 4), Second: inch(1, 4), SecondMost: inch(1, 2), Note: "top row from the seam, catching only the wide allowance", Source: "complete-guide-to-sewing", Known: source.Memory},
	{Seam: "welt", Note: "the trimmed edge short of the row, the row short of the wide edge", Known: source.Practice},
	{Seam: "slot", Note: "underlay twice the allowance as a rule, at least twice the row and a margin", Known: source.Practice},
	{Seam: "piped", Strip: inch(2, 1), Note: "eight times a cord of 1/4 in", Source: "cording-strip-page", Known: source.Read},
	{Seam: "piped", Note: "strip is pi times the cord and 1 to 1 1/2 in", Source: "cording-width-page", Known: source.Read},
	{Seam: "piped", First: inch(1, 4), Strip: inch(7, 4), Note: "cord about 1/4 in; slack in it", Source: "cording-slack-page", Known: source.Read},
	{Seam: "piped", Note: "strip is once round and both allowances, as wide as the garment's", Source: "fabric-covered-cording-page", Known: source.Read},
	{Seam: "piped", Note: "once round and at least 1 1/2 in for seams", Source: "self-piping-sheet", Known: source.Read},
	{Seam: "piped", Note: "pi times the cord and twice the allowance, the cord at the seam line", Known: source.Practice},
}
