package buttons

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// A LapRuleRow is a printed rule for how far the front goes past the centre line.
type LapRuleRow struct {
	Name   string       // what it says
	Times  units.Ratio  // times the diameter of the button
	Add    units.Length // and so much more
	Least  bool         // the rule is a lower limit
	Source string       // id of the source, see [source.Lookup]
	Place  string       // page or section
	Known  source.Known // how the figure is known
}

// Lap is what the rule gives for a button of the diameter.
func (r LapRuleRow) Lap(diameter units.Length) units.Length {
	return diameter.Scale(r.Times).Add(r.Add)
}

// The first row is the default of a lap on a tape of inches: of the rules it is the one
// that a list of standards prints. The second is the same on a metric tape. They disagree,
// and agree only for single sizes.
var lapRules = source.Table[LapRuleRow]{
	{"half the diameter and a quarter inch", units.RatioOf(1, 2), units.Inch.Frac(1, 4), false, "construction-standards-list", "page 24", source.Read},
	{"half the diameter and 6 mm", units.RatioOf(1, 2), units.Millimetre.Of(6), false, "", "", source.Practice},
	{"three quarters of the diameter", units.RatioOf(3, 4), units.Length{}, true, "", "", source.Practice},
	{"the diameter", units.RatioOf(1, 1), units.Length{}, false, "placket-drafting-page", "", source.Read},
	{"one and a half times the diameter, small buttons", units.RatioOf(3, 2), units.Length{}, false, "placket-drafting-page", "", source.Read},
	{"half the diameter, so that the button stays on the front", units.RatioOf(1, 2), units.Length{}, true, "garment-course-fasteners", "page 27312", source.Read},
}

// LapRules yields the rules; the first is the default in inches, the second the metric one.
func LapRules() iter.Seq[LapRuleRow] { return lapRules.All() }

// defaultLap is the rule of a tape.
func defaultLap(t units.Tape) LapRuleRow {
	if t == units.MetricTape {
		return lapRules[1]
	}
	return lapRules[0]
}
