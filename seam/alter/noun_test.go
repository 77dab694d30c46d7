package alter_test

import (
	"testing"

	"example.com/clothyard/seam/alter"
	"example.com/clothyard/units/noun/nountest"
)

func TestContract(t *testing.T) {
	nountest.Contract(t, alter.Nouns())
}

func TestWords(t *testing.T) { nountest.Words(t, alter.Nouns()) }

func TestHandbook(t *testing.T) {
	nountest.Handbook(t, "testdata/handbook.csv", alter.Nouns(), nil)
}

func FuzzNouns(f *testing.F) { nountest.Fuzz(f, alter.Nouns()) }
