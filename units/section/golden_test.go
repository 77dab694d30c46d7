package section_test

import (
	"encoding/json"
	"flag"
	"os"
	"reflect"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
)

var update = flag.Bool("update", false, "write the pictures of testdata")

// A drawing reads back equal from its JSON.
func TestJSON(t *testing.T) {
	for name, d := range golden() {
		text, err := json.Marshal(d)
		if err != nil {
			t.Fatal(err)
		}
		var back section.Drawing
		if err := json.Unmarshal(text, &back); err != nil || !reflect.DeepEqual(d, back) {
			t.Errorf("%s: %s reads back as %+v, %v", name, text, back, err)
		}
	}
}

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
