package strip_test

import (
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/strip"
)

func TestContract(t *testing.T) { nountest.Contract(t, strip.Nouns()) }

func TestWords(t *testing.T) { nountest.Words(t, strip.Nouns()) }

func TestHandbook(t *testing.T) { nountest.Handbook(t, "testdata/handbook.csv", strip.Nouns(), nil) }

func FuzzNouns(f *testing.F) { nountest.Fuzz(f, strip.Nouns()) }

func in(s string) units.Length { return units.MustParse(s + " in") }

func give(s string) units.Given[units.Length] { return units.Give(in(s)) }
