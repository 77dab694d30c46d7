package yardage

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A JoinRow is a printed allowance for the join of two widths of cloth.
type JoinRow struct {
	Seam   units.Length // taken from each of the two widths
	Use    string       // what is joined
	Source string       // id of the source, see [source.Lookup]
	Known  source.Known // how the figure is known
}

// Both sources print 1 in a join, which is half of it a width.
var joinRows = [...]struct {
	unit     units.Unit
	num, den int64
	use      string
	source   string
	known    source.Known
}{
	{units.Inch, 1, 2, "widths of a curtain", srcCurtainEstimate, source.Read},
	{units.Inch, 1, 2, "widths of a curtain", srcCurtainLesson, source.Read},
	{units.Millimetre, 15, 1, "widths of a curtain, metric", "", source.Practice},
}

// Joins yields every row; the first is the default of [Panels] in inches, the last the
// metric one.
func Joins(yield func(JoinRow) bool) {
	for _, r := range joinRows {
		if !yield(JoinRow{r.unit.Frac(r.num, r.den), r.use, r.source, r.known}) {
			return
		}
	}
}

// joinRow is the place of the row of a tape.
func joinRow(t units.Tape) int {
	if t == units.MetricTape {
		return len(joinRows) - 1
	}
	return 0
}

// joinDefault is the allowance of a tape.
func joinDefault(t units.Tape) units.Length {
	r := joinRows[joinRow(t)]
	return r.unit.Frac(r.num, r.den)
}

// joinCite is its source.
func joinCite(t units.Tape) source.Cite {
	r := joinRows[joinRow(t)]
	return source.Cite{For: "the seam of a join", ID: r.source, Known: r.known}
}
