package gather_test

import (
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units/noun/nountest"
)

func FuzzSpec(f *testing.F) { nountest.Fuzz(f, gather.Nouns()) }
