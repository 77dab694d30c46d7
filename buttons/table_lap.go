package buttons

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A LapRule is a printed rule for how far the front goes past the centre line.
type LapRule struct {
	Name   string       // what it says
	Times  units.Ratio  // times the diameter of the button
	Add    units.Length // and so much more
	Least  bool         // the rule is a lower limit
	Source string       // id of the source, see [source.Lookup]
	Place  string       // page or section
	Known  source.Known // how the figure is known
}

// Lap is what the rule gives for a button of the diameter.
func (r LapRule) Lap(diameter units.Length) units.Length { return diameter.Scale(r.Times).Add(r.Add) }

// The first row is the default of Lap.Lap: of the rules it is the one that a
// list of standards prints. They disagree, and agree only for single sizes.
var lapRules = [...]LapRule{
	{"half the diameter and a quarter inch", units.RatioOf(1, 2), units.Inch.Frac(1, 4), false, "construction-standards-list", "page 24", source.Read},
	{"three quarters of the diameter", units.RatioOf(3, 4), units.Length{}, true, "", "", source.Practice},
	{"the diameter", units.RatioOf(1, 1), units.Length{}, false, "placket-drafting-page", "", source.Read},
	{"one and a half times the diameter, small buttons", units.RatioOf(3, 2), units.Length{}, false, "placket-drafting-page", "", source.Read},
	{"half the diameter, so that the button stays on the front", units.RatioOf(1, 2), units.Length{}, true, "garment-course-fasteners", "page 27312", source.Read},
}

// LapRules yields the printed rules; the first is the default.
func LapRules(yield func(LapRule) bool) {
	for _, r := range lapRules {
		if !yield(r) {
			return
		}
	}
}

func defaultLap() LapRule { return lapRules[0] }
