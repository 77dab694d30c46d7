package yardage

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A Counter is a step in which cloth is cut for sale. What is bought goes up to
// it; what a made-up piece yields goes down to it; only a scale is read to the
// nearest.
type Counter struct {
	Step   units.Length // the step
	Use    string       // where it is used
	Source string       // id of the source, see [source.Lookup]; empty for common practice
	Known  source.Known // how the figure is known
}

var counterRows = [...]struct {
	unit     units.Unit
	num, den int64
	use      string
	source   string
	known    source.Known
}{
	{units.Yard, 1, 8, "shops; the default", srcSchool, source.Read},
	{units.Yard, 1, 4, "shops", srcSchool, source.Read},
	{units.Yard, 1, 3, "shops that sell thirds", srcWorkplace, source.Read},
	{units.Yard, 1, 2, "furnishing cloth", srcDrapesMeasuring, source.Read},
	{units.Yard, 1, 1, "whole yards", srcYardLesson, source.Read},
	{units.Yard, 1, 10, "decimal yards", "", source.Practice},
	{units.Metre, 1, 4, "metric shops, quilting cloth", srcMetricCounter, source.Read},
	{units.Metre, 1, 2, "curtain orders", srcCurtainMeasure, source.Read},
	{units.Metre, 1, 10, "metric shops", "", source.Practice},
	{units.Centimetre, 5, 1, "printed equivalents of yards", srcYardMetres, source.Read},
}

// Counters yields every step. Sources disagree: the caller chooses. The first row is the
// default in inches, and 10 cm the metric one.
func Counters(yield func(Counter) bool) {
	for _, r := range counterRows {
		if !yield(Counter{r.unit.Frac(r.num, r.den), r.use, r.source, r.known}) {
			return
		}
	}
}

// counterDefault is the row of a tape: the first, or that of metric shops.
func counterDefault(t units.Tape) units.Length {
	r := counterRows[0]
	if t == units.MetricTape {
		r = counterRows[8]
	}
	return r.unit.Frac(r.num, r.den)
}
