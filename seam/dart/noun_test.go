package dart_test

import (
	"testing"

	"example.com/clothyard/seam/dart"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/noun/nountest"
)

func TestContract(t *testing.T) {
	nountest.Contract(t, dart.Nouns())
}

func TestWords(t *testing.T) { nountest.Words(t, dart.Nouns()) }

func TestHandbook(t *testing.T) {
	nountest.Handbook(t, "testdata/handbook.csv", dart.Nouns(), map[string]nountest.Sum{"across": across})
}

// across is how wide a dart is at the cut edge.
func across(given map[string]string) (map[string]any, error) {
	var pairs []string
	for name, value := range given {
		pairs = append(pairs, name+"="+value)
	}
	var d dart.Spec
	if err := (noun.Reader{}).Pairs(pairs, &d); err != nil {
		return nil, err
	}
	p, err := d.Plan()
	if err != nil {
		return nil, err
	}
	edge, err := p.Across(d.Length)
	return map[string]any{"leg": p.Leg, "atEdge": edge}, err
}

func FuzzNouns(f *testing.F) { nountest.Fuzz(f, dart.Nouns()) }
