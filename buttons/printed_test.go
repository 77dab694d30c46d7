package buttons_test

import (
	"testing"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units/noun/nountest"
)

// Every figure of every table is as its source prints it.
func TestPrinted(t *testing.T) {
	nountest.Tables(t, "testdata/tables.csv", map[string]any{
		"hole": buttons.HoleRules(), "ligne": buttons.LigneRows(), "use": buttons.Uses(), "spacing": buttons.Spacings(), "lap": buttons.LapRules(),
		"cover": buttons.CoverRows(), "loop": buttons.LoopRows(),
	})
}
