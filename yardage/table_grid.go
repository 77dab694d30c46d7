package yardage

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// The printed chart of garment lengths by width of cloth: 12 rows, one garment
// each, by 9 widths, 108 cells, in eighths of a yard. Taken cell by cell; the
// 32 in column is from memory but for one cell that a second print confirms. It
// is data: no rule of area or rounding makes it, so nothing is computed from it.

// ErrOutside is returned for a look-up that a printed table does not hold.
const ErrOutside fault.Kind = "not in the printed table"

// A GridRow is one cell of a printed chart. Source tells the prints apart.
type GridRow struct {
	Row      int          // counted from 1 in its own print; all the cells of a row are one garment
	From, To units.Length // the widths of cloth that head the column, equal where one is printed
	Length   units.Length // the length of cloth for that garment on that width
	Source   string       // id of the source, see [source.Lookup]
	Known    source.Known // how the figure is known
}

var gridColumns = [...]struct{ from, to int64 }{
	{32, 32}, {35, 36}, {39, 39}, {41, 41}, {44, 45}, {50, 50}, {52, 54}, {58, 60}, {66, 66},
}

var gridEighths = [12][len(gridColumns)]int64{
	{15, 14, 12, 12, 11, 10, 9, 8, 7},
	{18, 16, 14, 14, 13, 12, 11, 10, 9},
	{20, 18, 16, 16, 14, 13, 12, 11, 10},
	{22, 20, 18, 18, 17, 14, 14, 13, 12},
	{25, 23, 20, 20, 18, 16, 15, 14, 13},
	{27, 25, 22, 22, 20, 18, 16, 15, 14},
	{30, 27, 24, 23, 22, 19, 18, 16, 15},
	{32, 30, 26, 25, 23, 21, 19, 18, 17},
	{35, 34, 28, 27, 25, 22, 21, 19, 18},
	{37, 36, 30, 29, 27, 24, 22, 21, 20},
	{40, 38, 32, 31, 29, 26, 23, 22, 21},
	{42, 40, 34, 33, 31, 27, 25, 23, 22},
}

// gridAdded is the allowance printed with the chart.
func gridAdded() units.Length { return units.Yard.Frac(1, 4) }

func gridLength(row, column int) units.Length { return units.Yard.Frac(gridEighths[row][column], 8) }

// gridSource is where a cell was read. The one cell of the 32 in column that was
// read stands in row 7.
func gridSource(row, column int) string {
	switch {
	case column > 0:
		return srcGrid
	case row == 6:
		return srcGrid32
	}
	return srcExtensionGrid
}

func gridKnown(row, column int) source.Known {
	if gridSource(row, column) == srcExtensionGrid {
		return source.Memory
	}
	return source.Read
}

func gridCellRow(row, column int) GridRow {
	c := gridColumns[column]
	return GridRow{row + 1, units.Inch.Of(c.from), units.Inch.Of(c.to), gridLength(row, column), gridSource(row, column), gridKnown(row, column)}
}

// A second print of the chart leaves out one row and the widest column, and heads its
// last column otherwise. The cells that it has agree.
const (
	gridLeftOut   = 10
	gridLastWidth = 60
)

// Grid yields every cell of the printed charts: the first print and its 32 in column row
// by row, then the second print.
func Grid(yield func(GridRow) bool) {
	for row := range gridEighths {
		for column := range gridColumns {
			if !yield(gridCellRow(row, column)) {
				return
			}
		}
	}
	n := 0
	for row := range gridEighths {
		if row+1 == gridLeftOut {
			continue
		}
		n++
		for column := 1; column < len(gridColumns)-1; column++ {
			c := gridCellRow(row, column)
			c.Row, c.Source = n, srcGridCopy
			if column == len(gridColumns)-2 {
				c.From = units.Inch.Of(gridLastWidth)
			}
			if !yield(c) {
				return
			}
		}
	}
}

// gridPlace is a column and how it was found.
type gridPlace struct {
	column int
	known  source.Known // Memory where the width is a metric one paired with a heading from memory
}

// gridColumn finds the column that a width of cloth falls under: a heading holds
// the widths it names and those between; the metric width that the trade pairs
// with a heading counts as that heading.
func gridColumn(width units.Length) (gridPlace, bool) {
	for i, c := range gridColumns {
		if !width.Less(units.Inch.Of(c.from)) && !units.Inch.Of(c.to).Less(width) {
			return gridPlace{i, source.Read}, true
		}
	}
	for _, pair := range clothPairs {
		if units.Centimetre.Of(pair.cm) != width {
			continue
		}
		for i, c := range gridColumns {
			if c.from <= pair.from && pair.to <= c.to {
				return gridPlace{i, pair.known}, true
			}
		}
	}
	return gridPlace{}, false
}

func gridFind(asked, from, to units.Length) (f, t gridPlace, row int, ok bool) {
	if f, ok = gridColumn(from); !ok {
		return f, t, 0, false
	}
	if t, ok = gridColumn(to); !ok {
		return f, t, 0, false
	}
	// Every column rises strictly from row to row, so there is at most one.
	for row = range gridEighths {
		if gridLength(row, f.column) == asked {
			return f, t, row, true
		}
	}
	return f, t, 0, false
}

// gridNear is the rows of the chart next to a length between them: the last below it
// and the first above it, on both widths.
func gridNear(asked units.Length, from, to int) (near []GridPair) {
	for row := range gridEighths {
		p := GridPair{row + 1, gridLength(row, from), gridLength(row, to)}
		if asked.Less(p.Asked) {
			return append(near, p)
		}
		near = []GridPair{p}
	}
	return near
}

// GridFor finds the printed cell for a garment that asks a length on cloth of one
// width, on cloth of another. The chart is not extended: a width under no heading and a
// length between two rows are faults of kind [ErrOutside], which name the headings or
// the nearest rows.
func GridFor(asked, from, to units.Length) (GridRow, error) {
	var a fault.Audit
	f, t, row, ok := gridFind(asked, from, to)
	if ok {
		return gridCellRow(row, t.column), nil
	}
	for _, w := range []struct {
		path  string
		width units.Length
	}{{"from", from}, {"to", to}} {
		if _, ok := gridColumn(w.width); !ok {
			a.Fault(w.path, w.width.String(), "32, 35 to 36, 39, 41, 44 to 45, 50, 52 to 54, 58 to 60 or 66 in, the widths of the chart", ErrOutside)
		}
	}
	if !a.Failed() {
		yards := units.Notation{Unit: units.Yard}
		limit := ""
		for i, p := range gridNear(asked, f.column, t.column) {
			if i > 0 {
				limit += " or "
			}
			limit += yards.Exact(p.Asked) + " (row " + ticket.Of(p.Row).String() + ", " + yards.Exact(p.Length) + ")"
		}
		a.Fault("asked", yards.Exact(asked), limit+", the nearest of the chart", ErrOutside)
	}
	return GridRow{}, a.Err()
}
