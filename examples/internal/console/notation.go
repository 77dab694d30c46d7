package console

import "example.com/clothyard/units"

// Notations are what -units asks for: inches, metric or both. Where it is not given, they
// follow the tape.
func Notations(system string, tape units.Tape) ([]units.Notation, bool) {
	metric := units.Notation{Unit: units.Millimetre}
	switch {
	case system == "both":
		return []units.Notation{{}, metric}, true
	case system == "metric", system == "" && tape == units.MetricTape:
		return []units.Notation{metric}, true
	case system == "inches", system == "":
		return []units.Notation{{}}, true
	}
	return nil, false
}
