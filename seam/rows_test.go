package seam_test

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// csvRows reads a file of testdata and checks its header.
func csvRows(t *testing.T, name, header string) [][]string {
	t.Helper()
	f, err := os.Open(filepath.Join("testdata", name))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(rows) < 2 || strings.Join(rows[0], ",") != header {
		t.Fatalf("%s is empty or has another header", name)
	}
	return rows[1:]
}

// Every row of the figures gathered is a row of the handbook, a row of a table, or
// left out for a reason: never two of these, and never twice.
func TestRowsAreKeptOrLeftOut(t *testing.T) {
	const book = "id,kind,given,want,source,place,known,reason"
	seen := map[string]string{}
	put := func(id, where string) {
		if was, ok := seen[id]; ok || id == "" {
			t.Errorf("%s stands in %s and in %s", id, was, where)
		}
		seen[id] = where
	}
	for _, name := range []string{"handbook.csv", "../dart/testdata/handbook.csv", "../alter/testdata/handbook.csv", "../edge/testdata/handbook.csv"} {
		for _, r := range csvRows(t, name, book) {
			if _, ok := seen[r[0]]; !ok { // the handbooks may test one row in two nouns
				put(r[0], name)
			}
		}
	}
	for _, r := range csvRows(t, "rows.csv", "id,table,source,figure") {
		put(r[0], "rows.csv")
		if !inTable(t, r[1], r[2], r[3]) {
			t.Errorf("%s: no row of %s from %s says %s", r[0], r[1], r[2], r[3])
		}
	}
	for _, name := range []string{"omitted.csv", "../dart/testdata/omitted.csv"} {
		for _, r := range csvRows(t, name, "id,reason") {
			put(r[0], name)
			if r[1] == "" {
				t.Errorf("%s: no reason", r[0])
			}
		}
	}
	if len(seen) < 350 {
		t.Errorf("only %d rows", len(seen))
	}
}

// inTable looks for a row of the table that has this source and this figure.
func inTable(t *testing.T, table, src, figure string) bool {
	t.Helper()
	found := false
	match := func(c source.Cite, widths ...units.Length) {
		for _, w := range widths {
			found = found || c.ID == src && w == units.MustParse(figure)
		}
	}
	switch table {
	case "Enclosed":
		for r := range seam.Enclosed {
			match(r.Cite(), r.Total, r.First, r.Second, r.Trim, r.Turn, r.Strip)
		}
	case "Allowances":
		for r := range seam.Allowances {
			match(r.Cite(), r.Width)
		}
	case "Trims":
		for r := range seam.Trims {
			match(r.Cite(), r.Width, r.Most)
		}
	case "Codes":
		for r := range seam.Codes {
			found = found || r.Source == src && r.Code == figure
		}
	default:
		t.Fatalf("no table %s", table)
	}
	return found
}
