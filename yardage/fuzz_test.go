package yardage_test

import (
	"testing"

	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/yardage"
)

func FuzzSpec(f *testing.F) { nountest.Fuzz(f, yardage.Nouns()) }
