package edge_test

import (
	"testing"

	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units/noun/nountest"
)

func TestContract(t *testing.T) {
	nountest.Contract(t, edge.Nouns(), "seam.edge own.plies", "seam.edge own.slant", "seam.pair long.own.plies", "seam.pair long.own.slant", "seam.pair short.own.plies", "seam.pair short.own.slant")
}

func TestWords(t *testing.T) { nountest.Words(t, edge.Nouns()) }

func TestHandbook(t *testing.T) {
	nountest.Handbook(t, "testdata/handbook.csv", edge.Nouns(), nil)
}

func FuzzNouns(f *testing.F) { nountest.Fuzz(f, edge.Nouns()) }
