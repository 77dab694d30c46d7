package source

import (
	"iter"
	"slices"
)

// A Table is rows of figures, those that are preferred first. A package keeps it to
// itself and shows All, so that nobody can change a row.
type Table[R any] []R

// All yields every row.
func (t Table[R]) All() iter.Seq[R] { return slices.Values(t) }

// Where yields the rows for which ok holds.
func (t Table[R]) Where(ok func(R) bool) iter.Seq[R] {
	return func(yield func(R) bool) {
		for _, r := range t {
			if ok(r) && !yield(r) {
				return
			}
		}
	}
}

// First is the first row for which ok holds, and whether there is one.
func (t Table[R]) First(ok func(R) bool) (row R, found bool) {
	for r := range t.Where(ok) {
		return r, true
	}
	return row, false
}
