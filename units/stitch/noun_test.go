package stitch_test

import (
	"testing"

	"example.com/clothyard/units/stitch"
	"example.com/clothyard/units/noun/nountest"
)

func TestContract(t *testing.T) { nountest.Contract(t, stitch.Nouns()) }

func TestWords(t *testing.T) { nountest.Words(t, stitch.Nouns()) }
