package seam_test

import (
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units/noun/nountest"
)

func TestContract(t *testing.T) { nountest.Contract(t, seam.Nouns()) }

func TestWords(t *testing.T) { nountest.Words(t, seam.Nouns()) }

func FuzzNouns(f *testing.F) { nountest.Fuzz(f, seam.Nouns()) }

func TestHandbook(t *testing.T) {
	nountest.Handbook(t, "testdata/handbook.csv", seam.Nouns(), nil)
}
