package noun_test

import (
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun"
)

// taped is a Spec with lengths in every place where one may stand.
type taped struct {
	Tape  units.Tape
	Depth units.Length
	Lap   units.Given[units.Length]
	Takes []struct{ Taken units.Length }
	Cloth struct{ Width units.Length }
	Any   any
}

// TestTape: the tape given holds; where none is, the lengths decide, wherever they stand.
func TestTape(t *testing.T) {
	l := units.MustParse
	depth, lap := l("2 cm"), units.Give(l("5 mm"))
	for _, test := range []struct {
		name string
		spec taped
		want units.Tape
	}{
		{"nothing given", taped{}, units.InchTape},
		{"a field", taped{Depth: depth}, units.MetricTape},
		{"a given", taped{Lap: lap}, units.MetricTape},
		{"a list", taped{Takes: []struct{ Taken units.Length }{{depth}}}, units.MetricTape},
		{"a part", taped{Cloth: struct{ Width units.Length }{depth}}, units.MetricTape},
		{"a choice", taped{Any: &taped{Depth: depth}}, units.MetricTape},
		{"one of each", taped{Depth: depth, Cloth: struct{ Width units.Length }{l("5/8 in")}}, units.InchTape},
		{"the most", taped{Depth: depth, Lap: lap, Cloth: struct{ Width units.Length }{l("5/8 in")}}, units.MetricTape},
		{"the tape given", taped{Tape: units.MetricTape, Depth: l("5/8 in")}, units.MetricTape},
	} {
		if got := noun.Tape(test.spec); got != test.want {
			t.Errorf("%s: %v, want %v", test.name, got, test.want)
		}
	}
}
