package console

import "example.com/clothyard/units"

// Notations are how lengths are written for people who ask for inches, metric or
// both; ok is false for another word.
func Notations(system string) ([]units.Notation, bool) {
	metric := units.Notation{Unit: units.Millimetre}
	switch system {
	case "inches":
		return []units.Notation{{}}, true
	case "metric":
		return []units.Notation{metric}, true
	case "both":
		return []units.Notation{{}, metric}, true
	}
	return nil, false
}
