package section_test

import (
	"flag"
	"os"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
)

var update = flag.Bool("update", false, "write the pictures of testdata anew")

// TestGolden holds every picture, as it was rendered and looked at.
func TestGolden(t *testing.T) {
	for name, d := range golden() {
		svg, err := d.SVG(units.Notation{}, units.Notation{Unit: units.Millimetre, Step: units.Millimetre.Frac(1, 10)})
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		file := "testdata/" + name + ".svg"
		if *update {
			if err := os.WriteFile(file, svg, 0o644); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(string(want), string(svg)); d != "" {
			t.Errorf("%s (-want +got):\n%s", name, d)
		}
	}
}
