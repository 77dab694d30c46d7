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
	num, den int64 // of an inch
	use      string
	source   string
	known    source.Known
}{
	{1, 2, "widths of a curtain", srcCurtainEstimate, source.Read},
	{1, 2, "widths of a curtain", srcCurtainLesson, source.Read},
}

// Joins yields every row; the first is the default of [Panels].
func Joins(yield func(JoinRow) bool) {
	for _, r := range joinRows {
		if !yield(JoinRow{units.Inch.Frac(r.num, r.den), r.use, r.source, r.known}) {
			return
		}
	}
}

// joinDefault is the first row.
func joinDefault() units.Length {
	r := joinRows[0]
	return units.Inch.Frac(r.num, r.den)
}
