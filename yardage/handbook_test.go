package yardage_test

import (
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/yardage"
)

func TestHandbook(t *testing.T) {
	nountest.Handbook(t, "testdata/handbook.csv", yardage.Nouns(), map[string]nountest.Sum{"grid-chart": nountest.Row(yardage.Grid), "bias-chart": biasChart, "lengths": lengths,
		"made-up": nountest.Row(yardage.MadeUp), "norm": nountest.Row(yardage.Norms), "addition": nountest.Row(yardage.Additions), "repeat-share": nountest.Row(yardage.RepeatShares),
		"shrinkage": nountest.Row(yardage.Shrinkages), "counter": nountest.Row(yardage.Counters)})
}

// biasChart is a cell of a printed chart of bias strips.
func biasChart(given map[string]string) (map[string]any, error) {
	c, err := yardage.BiasFor(units.MustParse(given["width"]), units.MustParse(given["length"]), units.MustParse(given["strip"]))
	return map[string]any{"yield": c.Yield}, err
}

// lengths is a sum of lengths with their signs.
func lengths(given map[string]string) (map[string]any, error) {
	var total units.Length
	for _, l := range given {
		total = total.Add(units.MustParse(l))
	}
	return map[string]any{"total": total}, nil
}
