package dart_test

import (
	"testing"

	"example.com/clothyard/seam/dart"
	"example.com/clothyard/units/noun/nountest"
)

// Every figure of the table is as its source prints it.
func TestPrinted(t *testing.T) {
	nountest.Tables(t, "testdata/tables.csv", map[string]any{"dart": dart.Figures})
}
