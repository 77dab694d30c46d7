package strip_test

import (
	"testing"

	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/strip"
)

func FuzzSpec(f *testing.F) { nountest.Fuzz(f, strip.Nouns()) }
