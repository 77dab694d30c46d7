package dart_test

import (
	"testing"

	"example.com/clothyard/seam/dart"
	"example.com/clothyard/units/noun/nountest"
)

func TestContract(t *testing.T) {
	nountest.Contract(t, dart.Nouns())
}

func TestWords(t *testing.T) { nountest.Words(t, dart.Nouns()) }
