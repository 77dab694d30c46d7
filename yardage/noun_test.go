package yardage_test

import (
	"testing"

	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/yardage"
)

func TestContract(t *testing.T) { nountest.Contract(t, yardage.Nouns()) }

func TestWords(t *testing.T) { nountest.Words(t, yardage.Nouns()) }

// Every figure on lengths of cloth is a line of the handbook, or is omitted with the
// reason.
func TestAccounted(t *testing.T) {
	nountest.Accounted(t, "testdata", "Y001-Y124 YS001-YS135 YB001-YB020 YF001-YF045 YMN001-YMN023 YWG001-YWG173 YWV001-YWV016 R001-R069 S001-S021 T001-T019")
}
