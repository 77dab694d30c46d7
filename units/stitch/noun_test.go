package stitch_test

import (
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/stitch"
)

func TestContract(t *testing.T) { nountest.Contract(t, stitch.Nouns()) }

func TestWords(t *testing.T) { nountest.Words(t, stitch.Nouns()) }

func FuzzNouns(f *testing.F) { nountest.Fuzz(f, stitch.Nouns()) }

func TestHandbook(t *testing.T) {
	nountest.Handbook(t, "testdata/handbook.csv", stitch.Nouns(), map[string]nountest.Sum{
		"class": nountest.Row(stitch.ClassRows()), "type": nountest.Row(stitch.TypeRows()), "ratio": nountest.Row(stitch.RatioRows()),
		"formula": nountest.Row(stitch.FormulaRows()), "waste": nountest.Row(stitch.WasteRows()), "row": nountest.Row(stitch.Densities()),
		"conversion": nountest.Row(stitch.Conversions()), "count": nountest.Row(stitch.Counts()), "needle": nountest.Row(stitch.Needles()),
	})
}

// Every type is in the class of its first figure.
func TestClassOfType(t *testing.T) {
	for k := range stitch.Types() {
		if k.Class().String() != k.String()[:1]+"00" {
			t.Errorf("%v is in class %v", k, k.Class())
		}
	}
	if c := stitch.Type(200).Class(); c != 0 {
		t.Errorf("no type is in class %v", c)
	}
}

func in(s string) units.Length { return units.MustParse(s + " in") }

func of(n, d int64) units.Ratio { return units.RatioOf(n, d) }
