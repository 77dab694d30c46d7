package buttons_test

import (
	"testing"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units"
)

func TestAllocations(t *testing.T) {
	row := buttons.Row{First: long("5/8 in"), Last: long("22 in"), Count: 9}
	limited := buttons.Row{First: long("5/8 in"), Last: long("22 in"), MinGap: long("2 in"), MaxGap: long("3 in"), Have: 12}
	flat := buttons.Hole{Diameter: units.Ligne.Of(18), Setting: buttons.Vertical}
	ball := buttons.Hole{Diameter: units.Ligne.Of(18), Outline: buttons.Ball}
	front := buttons.Lap{Hole: long("9/16 in"), Diameter: units.Ligne.Of(18), Topstitch: long("1 1/8 in"), Setting: buttons.Horizontal}
	tin := buttons.Stock{Have: 11, Places: []buttons.Placement{{Name: "front", Count: 9}, {Name: "cuff", Count: 2, Times: 2}}, Months: 30}

	rowPlan, err1 := row.Plan()
	flatPlan, err2 := flat.Plan()
	ballPlan, err3 := ball.Plan()
	lapPlan, err4 := front.Plan()
	tinPlan, err5 := tin.Plan()
	for _, err := range []error{err1, err2, err3, err4, err5} {
		if err != nil {
			t.Fatal(err)
		}
	}
	for _, c := range []struct {
		what string
		most int
		f    func()
	}{
		{"Row.Plan", 2, func() { _, _ = row.Plan() }},
		{"Row.Plan with limits", 2, func() { _, _ = limited.Plan() }},
		{"RowPlan.Marks", 2, func() {
			for range rowPlan.Marks() {
				continue
			}
		}},
		{"RowPlan.Sheet", 40, func() { rowPlan.Sheet() }},
		{"Hole.Plan", 2, func() { _, _ = flat.Plan() }},
		{"Hole.Plan of a ball", 2, func() { _, _ = ball.Plan() }},
		{"HolePlan.Sheet", 40, func() { flatPlan.Sheet() }},
		{"HolePlan.Sheet of a ball", 40, func() { ballPlan.Sheet() }},
		{"Lap.Plan", 2, func() { _, _ = front.Plan() }},
		{"LapPlan.Sheet", 40, func() { lapPlan.Sheet() }},
		{"Stock.Plan", 2, func() { _, _ = tin.Plan() }},
		{"StockPlan.Sheet", 40, func() { tinPlan.Sheet() }},
	} {
		if got := int(testing.AllocsPerRun(50, c.f)); got > c.most {
			t.Errorf("%s: %d allocations, want at most %d", c.what, got, c.most)
		}
	}
}
