package units_test

import (
	"slices"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// TestChartsDisagree: the charts stay apart, and nothing is read between two rows.
func TestChartsDisagree(t *testing.T) {
	p := units.MustParse
	for _, c := range []struct {
		chart   units.Chart
		of      string
		printed string // empty where the chart has no row
	}{
		{units.GuideInches, "5/8 in", "16 mm"},
		{units.EnvelopeInches, "5/8 in", "1.5 cm"},
		{units.TailoringInches, "5/8 in", ""},
		{units.GuideInches, "1/2 in", "12 mm"},
		{units.TailoringInches, "1/2 in", "1.3 cm"},
		{units.QuarterInches, "1/2 in", "1.25 cm"},
		{units.GuideYards, "18 in", "45.7 cm"},
		{units.MixedYards, "1/2 yd", "45.75 cm"},
		{units.BoughtYards, "1/2 yd", "0.5 m"},
		{units.BoughtYards, "1 1/2 yd", ""},
		{units.BoughtYards, "1/8 yd", ""},
		{units.GuideInches, "7/8 in", ""},
		{units.NoChart, "1 in", ""},
		{units.Chart(200), "1 in", ""},
	} {
		r, ok := c.chart.Find(p(c.of))
		if ok != (c.printed != "") || ok && r.Printed != p(c.printed) {
			t.Errorf("%v of %s: %v, %v; want %s", c.chart, c.of, r.Printed, ok, c.printed)
		}
	}
	if bad := units.Chart(200); bad.Source() != "" || bad.Known() != "" || len(slices.Collect(bad.Rows())) != 0 {
		t.Error("a chart that is none has something")
	}
}

// TestChartSources: each chart names a source in the list, and so does each old
// measure that is not common practice.
func TestChartSources(t *testing.T) {
	for c := range units.Charts {
		_, found := source.Lookup(c.Source())
		if !found || c.Known() != source.Read.String() && c.Known() != source.Memory.String() {
			t.Errorf("%v: source %q, %s", c, c.Source(), c.Known())
		}
		seen := map[units.Length]bool{}
		for r := range c.Rows() {
			if seen[r.Of] || r.Of.Sign() <= 0 || r.Printed.Sign() <= 0 {
				t.Errorf("%v: row %v = %v", c, r.Of, r.Printed)
			}
			if off := r.Off().Abs(); r.Of.DivInt(9).Less(off) {
				t.Errorf("%v: %v printed as %v is out by more than a ninth", c, r.Of, r.Printed)
			}
			seen[r.Of] = true
		}
	}
	for m := range units.ClothMeasures {
		_, found := source.Lookup(m.Source)
		if m.Name == "" || m.Where == "" || m.Length.Sign() <= 0 || found != (m.Known == source.Read.String()) || !found && m.Known != source.Practice.String() {
			t.Errorf("%+v", m)
		}
	}
	if ells := slices.Collect(units.ClothNamed("ell")); len(ells) != 8 {
		t.Errorf("%d ells", len(ells))
	}
	for range units.ClothNamed("ell") {
		break
	}
	if got := slices.Collect(units.ClothNamed("cubit")); got != nil {
		t.Errorf("%v", got)
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
