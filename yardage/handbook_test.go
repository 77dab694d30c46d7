package yardage_test

import (
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/yardage"
)

func TestHandbook(t *testing.T) {
	nountest.Handbook(t, "testdata/handbook.csv", yardage.Nouns(), map[string]nountest.Sum{"grid-chart": gridChart, "bias-chart": biasChart})
}

// gridChart is a cell of a printed chart of widths.
func gridChart(given map[string]string) (map[string]any, error) {
	c, err := yardage.GridFor(units.MustParse(given["asked"]), units.MustParse(given["from"]), units.MustParse(given["to"]))
	return map[string]any{"length": c.Length, "row": c.Row}, err
}

// biasChart is a cell of a printed chart of bias strips.
func biasChart(given map[string]string) (map[string]any, error) {
	c, err := yardage.BiasFor(units.MustParse(given["width"]), units.MustParse(given["length"]), units.MustParse(given["strip"]))
	return map[string]any{"yield": c.Yield}, err
}
