package alter_test

import (
	"testing"

	"example.com/clothyard/seam/alter"
	"example.com/clothyard/units/noun/nountest"
)

func TestContract(t *testing.T) {
	nountest.Contract(t, alter.Nouns())
}

func TestWords(t *testing.T) { nountest.Words(t, alter.Nouns()) }
