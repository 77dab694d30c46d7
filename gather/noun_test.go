package gather_test

import (
	"errors"
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
)

func in(s string) units.Length { return units.MustParse(s + " in") }

func TestContract(t *testing.T) { nountest.Contract(t, gather.Nouns()) }

func TestWords(t *testing.T) { nountest.Words(t, gather.Nouns()) }

func TestHandbook(t *testing.T) {
	nountest.Handbook(t, "testdata/handbook.csv", gather.Nouns(), map[string]nountest.Sum{"fullness": fullnessOf, "ease": easeOf})
}

// fullnessOf is the row of the table of fullness of a use, a cloth and a source.
func fullnessOf(given map[string]string) (map[string]any, error) {
	for r := range gather.Fullnesses {
		if r.Use == given["use"] && r.Cloth == given["cloth"] && r.Source == given["from"] {
			return map[string]any{"low": r.Low, "high": r.High}, nil
		}
	}
	return nil, errors.New("no such row")
}

// easeOf is the row of the table of ease of a place, a garment and a source.
func easeOf(given map[string]string) (map[string]any, error) {
	for r := range gather.Eases {
		if r.Place == given["place"] && r.Garment == given["garment"] && r.Source == given["from"] {
			return map[string]any{"low": r.Low, "high": r.High}, nil
		}
	}
	return nil, errors.New("no such row")
}
