package stitch_test

import (
	"testing"

	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/stitch"
)

func FuzzSpec(f *testing.F) { nountest.Fuzz(f, stitch.Nouns()) }
