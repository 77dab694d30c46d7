package yardage_test

import (
	"testing"

	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/yardage"
)

// Every figure of every table is as its source prints it.
func TestPrinted(t *testing.T) {
	nountest.Tables(t, "testdata/tables.csv", map[string]any{
		"width": yardage.ClothWidths, "counter": yardage.Counters, "grid": yardage.Grid, "shrinkage": yardage.Shrinkages, "bias": yardage.BiasChart,
		"join": yardage.Joins, "made up": yardage.MadeUp, "norm": yardage.Norms, "addition": yardage.Additions, "repeat share": yardage.RepeatShares,
	})
}
