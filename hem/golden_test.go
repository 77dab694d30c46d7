package hem_test

import (
	"flag"
	"fmt"
	"maps"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
)

var update = flag.Bool("update", false, "write testdata/golden.txt anew")

// TestGolden holds every sheet in full, its sources by their ids.
func TestGolden(t *testing.T) {
	var b strings.Builder
	all := sheets(t)
	for _, name := range slices.Sorted(maps.Keys(all)) {
		sheet := all[name]
		cites := sheet.Sources
		sheet.Sources = nil
		fmt.Fprintf(&b, "=== %s\n%s", name, sheet.Text(units.Notation{}))
		for _, c := range cites {
			fmt.Fprintf(&b, "Source %q %s %q %v\n", c.For, c.ID, c.Place, c.Known)
		}
	}
	const file = "testdata/golden.txt"
	if *update {
		if err := os.WriteFile(file, []byte(b.String()), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(strings.Split(string(want), "\n"), strings.Split(b.String(), "\n")); diff != "" {
		t.Error(diff)
	}
}
