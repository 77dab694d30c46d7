package strip_test

import (
	"testing"

	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/strip"
)

func TestContract(t *testing.T) { nountest.Contract(t, strip.Nouns()) }

func TestWords(t *testing.T) { nountest.Words(t, strip.Nouns()) }
