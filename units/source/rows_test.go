package source_test

import (
	"slices"
	"testing"

	"example.com/clothyard/units/source"
)

func TestTable(t *testing.T) {
	rows := source.Table[string]{"hem", "hip", "neck"}
	h := func(s string) bool { return s[0] == 'h' }
	if got := slices.Collect(rows.All()); !slices.Equal(got, rows) {
		t.Error(got)
	}
	if got := slices.Collect(rows.Where(h)); !slices.Equal(got, []string{"hem", "hip"}) {
		t.Error(got)
	}
	if got, found := rows.First(h); got != "hem" || !found {
		t.Error(got, found)
	}
	if got, found := rows.First(func(s string) bool { return s == "cuff" }); got != "" || found {
		t.Error(got, found)
	}
}
