package buttons_test

import (
	"testing"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units/noun/nountest"
)

func FuzzSpec(f *testing.F) { nountest.Fuzz(f, buttons.Nouns()) }
