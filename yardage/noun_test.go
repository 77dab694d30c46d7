package yardage_test

import (
	"testing"

	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/yardage"
)

func TestContract(t *testing.T) { nountest.Contract(t, yardage.Nouns()) }

func TestWords(t *testing.T) { nountest.Words(t, yardage.Nouns()) }
