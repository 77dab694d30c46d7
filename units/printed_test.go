package units_test

import (
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
)

// printedCell is a cell of a chart with what the chart says of itself.
type printedCell struct {
	Chart         units.Chart
	Of, Printed   units.Length
	Source, Known string
}

func printedCells(yield func(printedCell) bool) {
	for c := range units.Charts {
		for r := range c.Rows() {
			if !yield(printedCell{c, r.Of, r.Printed, c.Source(), c.Known()}) {
				return
			}
		}
	}
}

// Every figure of every table is as its source prints it.
func TestPrinted(t *testing.T) {
	nountest.Tables(t, "testdata/tables.csv", map[string]any{"chart": printedCells, "measure": units.ClothMeasures})
}
