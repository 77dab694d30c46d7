package stitch_test

import (
	"iter"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/stitch"
)

// total counts the rows of a table, stops early once, and asks each for a source.
func total[R any](t *testing.T, name string, rows iter.Seq[R], want int, cite func(R) (string, source.Known)) {
	t.Helper()
	n := 0
	for r := range rows {
		n++
		id, known := cite(r)
		if _, ok := source.Lookup(id); !ok || known != source.Read && known != source.Memory {
			t.Errorf("%s: source %q, known %v", name, id, known)
		}
	}
	for range rows {
		break
	}
	if n != want {
		t.Errorf("%s: %d rows, want %d", name, n, want)
	}
}

func TestTables(t *testing.T) {
	total(t, "classes", stitch.ClassRows, 7, func(r stitch.ClassRow) (string, source.Known) { return r.Source, r.Known })
	total(t, "types", stitch.TypeRows, 26, func(r stitch.TypeRow) (string, source.Known) { return r.Source, r.Known })
	total(t, "ratios", stitch.RatioRows, 15, func(r stitch.RatioRow) (string, source.Known) { return r.Source, r.Known })
	total(t, "formulas", stitch.FormulaRows, 4, func(r stitch.FormulaRow) (string, source.Known) { return r.Source, r.Known })
	total(t, "waste", stitch.WasteRows, 2, func(r stitch.WasteRow) (string, source.Known) { return r.Source, r.Known })
	total(t, "densities", stitch.Densities, 40, func(r stitch.DensityRow) (string, source.Known) { return r.Source, r.Known })
	total(t, "conversions", stitch.Conversions, 24, func(r stitch.ConversionRow) (string, source.Known) { return r.Source, r.Known })
	total(t, "counts", stitch.Counts, 4, func(r stitch.CountRow) (string, source.Known) { return r.Source, r.Known })
	total(t, "needles", stitch.Needles, 13, func(r stitch.NeedleRow) (string, source.Known) { return r.Source, r.Known })
}

// Every type has a row, every job a density, every cloth a density; what is none
// of them has nothing.
func TestLookups(t *testing.T) {
	for k := range stitch.Types() {
		n := 0
		for range k.Rows() {
			n++
		}
		if n == 0 && k != stitch.Chain401 { // used by the tables, described by none
			t.Errorf("no row for %v", k)
		}
	}
	for k := range stitch.Jobs() {
		for r := range k.Rows() {
			if r.Job != k || r.MostPerInch.Less(r.LeastPerInch) || r.LongLength.Less(r.ShortLength) || r.Use == "" {
				t.Errorf("%v has %+v", k, r)
			}
			break
		}
	}
	for k := range stitch.Cloths() {
		n := 0
		for range k.Rows() {
			n++
			break
		}
		if n == 0 {
			t.Errorf("no density for %v", k)
		}
	}
	for k := range stitch.Classes() {
		n := 0
		for range k.Rows() {
			n++
			break
		}
		if n == 0 {
			t.Errorf("no row for class %v", k)
		}
	}
	for range stitch.NoJob.Rows() {
		t.Error("a density for no job")
	}
	for range stitch.NoCloth.Rows() {
		t.Error("a density for no cloth")
	}
	if _, ok := stitch.NoCloth.Needle(); ok {
		t.Error("a needle for no cloth")
	}
	for range stitch.Printed(units.RatioOf(11, 1)) {
		t.Error("no table prints 11")
	}
	n := 0
	for range stitch.Printed(units.RatioOf(12, 1)) {
		n++
		if n == 2 {
			break
		}
	}
	if n != 2 {
		t.Error("three tables print 12")
	}
	for range stitch.Lock301.Rows() {
		break // may stop early
	}
	for range stitch.Lock301.Ratios() {
		break
	}
	if _, ok := stitch.Cover602.Formula(); ok {
		t.Error("no formula is printed for 602")
	}
}
