package units_test

import (
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
)

// Every figure of every table is as its source prints it.
func TestPrinted(t *testing.T) {
	nountest.Tables(t, "testdata/tables.csv", map[string]any{"chart": units.ChartRows(), "measure": units.OldMeasures()})
}
