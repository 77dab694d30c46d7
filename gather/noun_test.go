package gather_test

import (
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units/noun/nountest"
)

func TestContract(t *testing.T) { nountest.Contract(t, gather.Nouns()) }

func TestWords(t *testing.T) { nountest.Words(t, gather.Nouns()) }
