package strip_test

import (
	"testing"

	"example.com/clothyard/units/strip"
	"example.com/clothyard/units/ticket"
)

// TestZeroPlans asks the plan of nothing for its sheet.
func TestZeroPlans(t *testing.T) {
	for _, sheet := range []ticket.Sheet{strip.Plan{}.Sheet(), strip.BindingPlan{}.Sheet()} {
		if err := sheet.Check(); err != nil || sheet.Title == "" || len(sheet.Steps) > 0 || len(sheet.Lines) > 0 {
			t.Errorf("the plan of nothing says %q, %v", sheet.Text(), err)
		}
	}
}
