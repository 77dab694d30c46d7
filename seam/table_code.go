package seam

import (
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A CodeRow is one designation of a seam in a standard, as one source gives it.
// The standards themselves were not at hand, so a row says what a source says of
// them. The classes of stitches stand in package units/stitch.
type CodeRow struct {
	Standard string       // the standard, or both where a source sets them equal
	Code     string       // the designation, as in LSc; what the row is about where it names no seam
	Meaning  string       // what the source says it is
	Kind     string       // the kind here that it names, as in flat-felled; empty where none is meant
	Note     string       // where sources disagree or are unsure; empty if nothing
	Source   string       // id, see [source.Lookup]
	Place    string       // page or section; empty if none
	Known    source.Known // how the row is known
}

// Cite is the row as a citation.
func (r CodeRow) Cite() source.Cite {
	return source.Cite{For: r.Standard + " " + r.Code, ID: r.Source, Place: r.Place, Known: r.Known}
}

// Codes yields the designations of seams in the standards. Where a source sets a
// letter code equal to a number, the two stand in rows of their own. Equalities
// are from memory, and a French seam has none that can be relied on.
func Codes(yield func(CodeRow) bool) {
	for _, r := range codes {
		if !yield(r) {
			return
		}
	}
}

// coded cites the designations of the seam that were read in a source.
func (p Plan) coded(sh *ticket.Sheet) {
	for i := range codes {
		if r := &codes[i]; r.Kind == p.Spec.Kind() && r.Known == source.Read {
			sh.Sources = append(sh.Sources, r.Cite())
		}
	}
}

const (
	fedStd  = "Fed-Std-751a"
	fedASTM = "Fed-Std-751a, ASTM D6193"
	astm    = "ASTM D6193"
	iso     = "ISO 4916"
	equals  = "set equal to "
)

// codes is the table: 35 rows.
var codes = [...]CodeRow{
	{Standard: fedStd, Code: "classes", Meaning: "four seam classes, SS, LS, BS, FS, and two stitching classes, EF, OS", Source: "seam-class-slides", Known: source.Read},
	{Standard: "BS 3870:1991, ISO 4916", Code: "classes", Meaning: "1 superimposed, 2 lapped, 3 bound, 4 flat, 5 decorative, 6 edge neatening, 7 applied, 8 others",
		Note: "the numbers do not match the letters one to one", Source: "seam-class-page", Known: source.Read},
	{Standard: fedStd, Code: "LS", Meaning: "101 lapped types, the largest class", Source: "seam-type-slides", Known: source.Read},
	{Standard: fedStd, Code: "SS", Meaning: "60 superimposed types", Source: "seams-and-stitches-part-two", Known: source.Read},
	{Standard: fedStd, Code: "301-SSa-1", Meaning: "how a seam is specified: stitch, class and type, rows of stitching", Source: "aircrew-survival-manual", Place: "p. 246", Known: source.Read},

	{Standard: fedStd, Code: "LSa", Meaning: "two plies overlap at the edges; one or two needles", Kind: "lapped-raw", Source: "seam-class-lapped-page", Known: source.Read},
	{Standard: fedStd, Code: "LSb", Meaning: "overlap with one edge folded; one or two needles", Kind: "lapped", Source: "seam-class-lapped-page", Known: source.Read},
	{Standard: fedStd, Code: "LSc", Meaning: "flat-felled; one, two or three needles", Kind: "flat-felled", Source: "seam-class-lapped-page", Known: source.Read},
	{Standard: fedStd, Code: "LSd", Meaning: "a folded ply set on the middle of another, as a patch pocket", Source: "seam-class-lapped-page", Known: source.Read},
	{Standard: fedStd, Code: "LSe", Meaning: "three plies, as a yoke", Source: "seam-class-lapped-page", Known: source.Read},
	{Standard: fedStd, Code: "LSn", Meaning: "two plies with clean edges, folded and bound", Source: "seam-class-lapped-page", Known: source.Read},
	{Standard: fedStd, Code: "LSq", Meaning: "two plies, two needles", Source: "seam-class-lapped-page", Known: source.Read},
	{Standard: fedASTM, Code: "SSe", Meaning: "run together, turned and topstitched, as collars and cuffs", Source: "seam-class-slides", Known: source.Read},
	{Standard: fedASTM, Code: "SSh", Meaning: "a seam then covered, in knits", Source: "seam-class-slides", Known: source.Read},
	{Standard: fedASTM, Code: "SSk", Meaning: "a seam with piping", Kind: "piped", Source: "seam-class-slides", Known: source.Read},
	{Standard: fedASTM, Code: "SSn", Meaning: "a seam with folded edges, against slippage", Source: "seam-class-slides", Known: source.Read},
	{Standard: fedASTM, Code: "SSq", Meaning: "a seam, a fold and a cord, as LSe in two steps", Source: "seam-class-slides", Known: source.Read},
	{Standard: fedASTM, Code: "SSw", Meaning: "mock felled", Kind: "mock-felled", Source: "seam-session-slides", Known: source.Read},

	{Standard: astm, Code: "SSa", Meaning: "plain superimposed", Kind: "plain", Note: equals + "1.01.01", Source: "seam-drawing-bulletin", Known: source.Memory},
	{Standard: iso, Code: "1.01.01", Meaning: "plain superimposed", Kind: "plain", Note: equals + "SSa", Source: "seam-drawing-bulletin", Known: source.Memory},
	{Standard: astm, Code: "SSae", Meaning: "French", Kind: "french", Note: "the numbers recalled beside it disagree", Source: "seam-drawing-bulletin", Known: source.Memory},
	{Standard: iso, Code: "1.06.02 or 1.06.03", Meaning: "French", Kind: "french", Note: "in dispute: do not rely on either without the standard", Source: "seam-drawing-bulletin", Known: source.Memory},
	{Standard: astm, Code: "LSc", Meaning: "felled", Kind: "flat-felled", Note: equals + "2.04.06", Source: "seam-drawing-bulletin", Known: source.Memory},
	{Standard: iso, Code: "2.04.06", Meaning: "felled", Kind: "flat-felled", Note: equals + "LSc", Source: "seam-drawing-bulletin", Known: source.Memory},
	{Standard: iso, Code: "5.31.01", Meaning: "patch pocket", Note: equals + "LSd; other lists have a number of class 2", Source: "seam-drawing-bulletin", Known: source.Memory},
	{Standard: astm, Code: "BSa", Meaning: "bound, raw edges of the binding", Note: equals + "3.01.01", Source: "seam-drawing-bulletin", Known: source.Memory},
	{Standard: iso, Code: "3.01.01", Meaning: "bound, raw edges of the binding", Note: equals + "BSa", Source: "seam-drawing-bulletin", Known: source.Memory},
	{Standard: astm, Code: "BSb", Meaning: "bound, one edge of the binding turned", Note: equals + "3.03.01", Source: "seam-drawing-bulletin", Known: source.Memory},
	{Standard: iso, Code: "3.03.01", Meaning: "bound, one edge of the binding turned", Note: equals + "BSb", Source: "seam-drawing-bulletin", Known: source.Memory},
	{Standard: astm, Code: "BSc", Meaning: "bound, both edges of the binding turned", Kind: "bound", Note: equals + "3.05.01", Source: "seam-drawing-bulletin", Known: source.Memory},
	{Standard: iso, Code: "3.05.01", Meaning: "bound, both edges of the binding turned", Kind: "bound", Note: equals + "BSc", Source: "seam-drawing-bulletin", Known: source.Memory},
	{Standard: astm + ", " + iso, Code: "EFa, 6.02.01", Meaning: "hem turned once", Source: "seam-drawing-bulletin", Known: source.Memory},
	{Standard: astm + ", " + iso, Code: "EFb, 6.03.01", Meaning: "hem turned twice", Source: "seam-drawing-bulletin", Known: source.Memory},
	{Standard: astm + ", " + iso, Code: "EFd, 6.01.01", Meaning: "serged edge", Source: "seam-drawing-bulletin", Known: source.Memory},
	{Standard: astm + ", " + iso, Code: "OSa, 5.01.01", Meaning: "ornamental row", Source: "seam-drawing-bulletin", Known: source.Memory},
}
