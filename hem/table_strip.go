package hem

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// A StripRow is a printed facing, binding or placket strip: how it is sewn on and
// turned, and what it finishes to. The first row of a kind is its default, or the row that
// says metric on a metric tape.
type StripRow struct {
	Name   string       // what the source makes of it
	Kind   string       // faced, bound or double-bound
	Cut    units.Length // width as cut; zero where the source gives a rule only
	Seam   units.Length // the seam by which it is sewn on; zero where it is that of the finished width
	Turn   units.Length // the turn of its free edge; zero where it is that of the finished width
	Depth  units.Length // finished width; zero where it is the caller's
	Source string       // id of the source, see source.Lookup
	Place  string       // where in it
	Known  source.Known // how the figure is known
}

// Strips yields the table of strips.
func Strips() iter.Seq[StripRow] { return strips.All() }

var (
	bindingStrip = strips[3]
	doubledStrip = strips[4]

	strips = source.Table[StripRow]{
		{"facing", "faced", units.Length{}, inches(0, 1, 4), inches(0, 1, 4), units.Length{}, "school-needlework", "facing", source.Read},
		{"hem facing", "faced", inches(3, 0, 1), inches(0, 1, 2), inches(0, 1, 2), inches(2, 0, 1), "hem-facing-page", "", source.Read},
		{"placket facing", "faced", inches(2, 1, 4), units.Length{}, units.Length{}, units.Length{}, "sewing-lessons-model", "model 14", source.Read},
		{"binding of four times the finished width", "bound", units.Length{}, units.Length{}, units.Length{}, units.Length{}, "bias-binding-guideline", "", source.Read},
		{"doubled binding of six times the finished width", "double-bound", units.Length{}, units.Length{}, units.Length{}, units.Length{}, "bias-binding-guideline", "French binding", source.Read},
		{"bias band", "bound", inches(2, 1, 2), inches(0, 1, 4), inches(0, 1, 4), inches(1, 0, 1), "clothing-and-health", "bias band", source.Read},
		{"placket strip", "bound", inches(2, 1, 2), inches(0, 1, 4), inches(0, 1, 4), inches(1, 0, 1), "clothing-and-health", "placket", source.Read},
		{"continuous placket strip", "bound", inches(1, 1, 2), inches(0, 1, 4), inches(0, 1, 4), inches(0, 1, 2), "sleeve-placket-page", "", source.Read},
		{"bound cuff placket strip", "bound", inches(1, 1, 4), inches(0, 1, 4), inches(0, 1, 4), inches(0, 3, 8), "cuff-placket-page", "", source.Read},
		{"placket binding", "bound", inches(1, 1, 4), inches(0, 1, 4), inches(0, 1, 4), units.Length{}, "placket-pointers-page", "", source.Read},
		{"hem facing, metric", "faced", units.Length{}, mm(12), mm(12), mm(50), "hem-facing-page", "", source.Read},
	}
)

// facingStrip is the row of a facing.
func facingStrip(t units.Tape) StripRow { return onTape(t, strips[0], strips[10]) }

func (s StripRow) cite(what string) source.Cite {
	return source.Cite{For: what, ID: s.Source, Place: s.Place, Known: s.Known}
}

// A FoldBackRow is a printed distance by which the inner edge of a blind hem stands
// beyond the fold of the garment. The first row is the default, or the row that says
// metric on a metric tape.
type FoldBackRow struct {
	Name   string       // what the source says of it
	Least  units.Length // at least; from the fold of the garment to the edge of the hem
	Most   units.Length // at most; the same as Least where the source gives one figure
	Source string       // id of the source, see source.Lookup
	Place  string       // where in it
	Known  source.Known // how the figure is known
}

// FoldBacks yields the table of distances for a blind hem.
func FoldBacks() iter.Seq[FoldBackRow] { return foldBacks.All() }

var foldBacks = source.Table[FoldBackRow]{
	{"stretch cloth, by machine", inches(0, 1, 4), inches(0, 3, 8), "machine-handbook-blind-hem", "page 80", source.Read},
	{"by machine", inches(0, 1, 4), inches(0, 1, 4), "blind-hem-note", "", source.Read},
	{"by machine, turned under first", inches(0, 1, 4), inches(0, 1, 4), "double-blind-hem-note", "", source.Read},
	{"by machine, metric", mm(5), mm(5), "blind-hem-page", "", source.Read},
	{"by hand", inches(0, 1, 4), inches(0, 1, 4), "blindstitch-glossary", "", source.Read},
}

// blindBack is the row of a blind hem.
func blindBack(t units.Tape) FoldBackRow { return onTape(t, foldBacks[0], foldBacks[3]) }

// all cites the row of a blind hem, and then the others.
func (b FoldBackRow) all(sh *ticket.Sheet) {
	cite(sh, true, b.cite("edge of a blind hem beyond the fold"))
	for _, other := range foldBacks {
		if other != b {
			cite(sh, true, other.cite("another such edge, "+other.Name))
		}
	}
}

func (b FoldBackRow) cite(what string) source.Cite {
	return source.Cite{For: what, ID: b.Source, Place: b.Place, Known: b.Known}
}
