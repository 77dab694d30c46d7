package stitch_test

import (
	"testing"

	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/stitch"
)

func TestContract(t *testing.T) { nountest.Contract(t, stitch.Nouns()) }

func TestWords(t *testing.T) { nountest.Words(t, stitch.Nouns()) }
