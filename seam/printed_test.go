package seam_test

import (
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units/noun/nountest"
)

// Every figure of every table is as its source prints it.
func TestPrinted(t *testing.T) {
	nountest.Tables(t, "testdata/tables.csv", map[string]any{
		"trim": seam.Trims, "code": seam.Codes, "allowance": seam.Allowances, "enclosed": seam.Enclosed, "binding": seam.Bindings,
	})
}
