package layout_test

import (
	"testing"

	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/yardage/layout"
)

func TestContract(t *testing.T) { nountest.Contract(t, layout.Nouns()) }

func TestWords(t *testing.T) { nountest.Words(t, layout.Nouns()) }
