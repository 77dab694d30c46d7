package yardage_test

import (
	"testing"

	"example.com/clothyard/yardage"
)

// The plan of nothing has a sheet, and so has one that names no unit.
func TestZeroPlans(t *testing.T) {
	for name, p := range map[string]planned{
		"width":    yardage.WidthPlan{},
		"purchase": yardage.PurchasePlan{},
		"remnant":  yardage.RemnantPlan{},
		"price":    yardage.PricePlan{},
		"no unit":  yardage.PricePlan{Spec: yardage.Price{Length: in("1 yd"), Per: 99}},
		"swatch":   yardage.SwatchPlan{},
		"panels":   yardage.PanelsPlan{},
		"bias":     yardage.BiasPlan{},
	} {
		if s := p.Sheet(); s.Title == "" || s.Text() == "" {
			t.Errorf("%s: no sheet", name)
		}
	}
	if text := (yardage.PricePlan{}).Text(); text != "0" {
		t.Errorf("nothing costs %q", text)
	}
}
