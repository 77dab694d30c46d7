package gather_test

import (
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units/noun/nountest"
)

// Every figure of every table is as its source prints it.
func TestPrinted(t *testing.T) {
	nountest.Tables(t, "testdata/tables.csv", map[string]any{
		"default": gather.Defaults, "fullness": gather.Fullnesses, "row": gather.Rows, "ease": gather.Eases, "elastic": gather.Elastics,
	})
}
