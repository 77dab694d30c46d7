package yardage

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A printed chart of bias strips: 12 cells. It lies between three quarters of
// the area and the whole of it with no steady factor, so it is data, not a rule.

// A BiasRow is one cell of the printed chart: how much bias a length of cloth of
// one width gives, the source saying about.
type BiasRow struct {
	Width  units.Length // of the cloth
	Length units.Length // of the cloth
	Strip  units.Length // width of the strip as cut
	Yield  units.Length // length of strip
	Source string       // id of the source, see [source.Lookup]
	Known  source.Known // how the figure is known
}

// Rows are 1/4, 1/2, 3/4 and 1 yd; columns 36, 48 and 54 in; yields in half yards.
var biasHalves = [4][3]int64{{9, 11, 14}, {20, 26, 28}, {32, 40, 44}, {44, 52, 59}}

var biasWidths = [3]int64{36, 48, 54}

// BiasChart yields every cell, the shortest cloth first.
func BiasChart(yield func(BiasRow) bool) {
	for row, cells := range biasHalves {
		for column, n := range cells {
			c := BiasRow{units.Inch.Of(biasWidths[column]), units.Yard.Frac(int64(row)+1, 4), units.Inch.Mixed(1, 5, 8), units.Yard.Frac(n, 2), srcBiasChart, source.Read}
			if !yield(c) {
				return
			}
		}
	}
}

// BiasFor is the printed cell for a cloth, or [ErrOutside]: the chart is not
// extended to other widths, lengths or strips.
func BiasFor(width, length, strip units.Length) (BiasRow, error) {
	for c := range BiasChart {
		if c.Width == width && c.Length == length && c.Strip == strip {
			return c, nil
		}
	}
	return BiasRow{}, ErrOutside
}
