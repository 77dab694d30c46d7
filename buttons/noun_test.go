package buttons_test

import (
	"testing"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units/noun/nountest"
)

func TestContract(t *testing.T) { nountest.Contract(t, buttons.Nouns()) }

func TestWords(t *testing.T) { nountest.Words(t, buttons.Nouns()) }
