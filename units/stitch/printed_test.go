package stitch_test

import (
	"testing"

	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/stitch"
)

// Every figure of every table is as its source prints it.
func TestPrinted(t *testing.T) {
	nountest.Tables(t, "testdata/tables.csv", map[string]any{
		"class": stitch.ClassRows(), "type": stitch.TypeRows(), "ratio": stitch.RatioRows(), "formula": stitch.FormulaRows(), "waste": stitch.WasteRows(),
		"density": stitch.Densities(), "conversion": stitch.Conversions(), "count": stitch.Counts(), "needle": stitch.Needles(),
	})
}
