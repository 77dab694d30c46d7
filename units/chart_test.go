package units_test

import (
	"testing"

	"example.com/clothyard/units"
)

// No chart has two rows for a length, nor one that is far from the truth.
func TestCharts(t *testing.T) {
	type cell struct {
		chart string
		of    units.Length
	}
	seen := map[cell]bool{}
	for r := range units.ChartRows() {
		at := cell{r.Chart, r.Of}
		if seen[at] || r.Of.Sign() <= 0 || r.Of.DivInt(9).Less(r.Off().Abs()) {
			t.Errorf("%+v stands twice, or is out by more than a ninth", r)
		}
		seen[at] = true
	}
}

// TestMetresBought is the rule outside the printed table.
func TestMetresBought(t *testing.T) {
	for of, want := range map[string]string{
		"1/8 yd": "0.15 m", "1 1/2 yd": "1.4 m", "2 7/8 yd": "2.65 m", // left out of the table
		"5 cm": "5 cm", "51 mm": "5 cm", "51.01 mm": "10 cm", "0.5 mm": "5 cm", "1 mm": "5 cm",
		"0 m": "0 m", "-1 m": "0 m", "100 m": "100 m", "100000000000000000000 m": "100000000000000000000 m",
	} {
		if got := units.MetresBought(units.MustParse(of)); got != units.MustParse(want) {
			t.Errorf("%s is bought as %v, want %s", of, got, want)
		}
	}
	before := units.Length{}
	for k := range int64(2000) {
		got := units.MetresBought(units.Millimetre.Of(k))
		if got.Less(before) || got.Add(units.Millimetre.Of(1)).Less(units.Millimetre.Of(k)) || !got.IsMultiple(units.Centimetre.Of(5)) {
			t.Fatalf("%d mm is bought as %v", k, got)
		}
		before = got
	}
}
