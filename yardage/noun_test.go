package yardage_test

import (
	"testing"

	"example.com/clothyard/yardage"
	"example.com/clothyard/units/noun/nountest"
)

func TestContract(t *testing.T) { nountest.Contract(t, yardage.Nouns()) }

func TestWords(t *testing.T) { nountest.Words(t, yardage.Nouns()) }
