package seam_test

import (
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units/noun/nountest"
)

func TestContract(t *testing.T) {
	nountest.Contract(t, seam.Nouns(), "seam.edge own.plies", "seam.edge own.slant", "seam.match long.own.plies", "seam.match long.own.slant", "seam.match short.own.plies", "seam.match short.own.slant", "seam.match maxEase", "seam.assembly pairs.maxEase")
}

func TestWords(t *testing.T) { nountest.Words(t, seam.Nouns()) }
