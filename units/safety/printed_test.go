package safety_test

import (
	"testing"

	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/safety"
)

// Every figure of the table is as its source prints it.
func TestPrinted(t *testing.T) {
	nountest.Tables(t, "testdata/tables.csv", map[string]any{"limit": safety.Limits()})
}
