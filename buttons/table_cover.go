package buttons

import (
	"iter"

	"example.com/clothyard/units"
	"example.com/clothyard/units/name"
	"example.com/clothyard/units/source"
)

// A Mould is what a circle of cloth covers.
type Mould uint8

// The moulds. The zero value is not given, which a [Cover] takes as ButtonMould.
const (
	NoMould     Mould = iota
	ButtonMould       // a button or a button form, closed at the back
	RingMould         // a ring, covered on both sides
	SnapMould         // half of a snap, whose stud pierces the cloth
)

var moulds = name.Of[Mould]("mould", "", "button", "ring", "snap")

// String is the name of the mould, empty for NoMould.
func (m Mould) String() string { return moulds.String(m) }

// MarshalText is the name of the mould.
func (m Mould) MarshalText() ([]byte, error) { return moulds.Marshal(m) }

// UnmarshalText reads the name of a mould; empty text is NoMould.
func (m *Mould) UnmarshalText(text []byte) error { return moulds.Unmarshal(m, text) }

// A CoverRow is a printed rule for the circle of cloth that covers a mould.
type CoverRow struct {
	Name   string       // what it says
	Of     Mould        // what is covered
	Tape   units.Tape   // the tape that the gathering is for; zero where the row has none
	Least  units.Ratio  // across the circle, at least so many times the mould; zero where not told
	Most   units.Ratio  // at most so many times; zero where not told
	Gather units.Length // from the edge of the circle to the running stitches; zero where not told
	Source string       // id of the source, see [source.Lookup]
	Place  string       // page or section
	Known  source.Known // how the figure is known
}

// The first row of a mould that has a figure is its default. They disagree: a button
// form with a back plate wants less cloth than one that is sewn shut.
var coverRows = source.Table[CoverRow]{
	{"twice the button", ButtonMould, 0, units.RatioOf(2, 1), units.RatioOf(2, 1), units.Length{}, "sewtionary", "button", source.Read},
	{"at least twice the button", ButtonMould, 0, units.RatioOf(2, 1), units.Ratio{}, units.Length{}, "covered-button-tutorial", "", source.Read},
	{"two to two and a half times the button", ButtonMould, 0, units.RatioOf(2, 1), units.RatioOf(5, 2), units.Length{}, "covered-button-guide", "step 1", source.Read},
	{"10 cm for a button of 5 cm", ButtonMould, 0, units.RatioOf(2, 1), units.RatioOf(2, 1), units.Length{}, "covered-button-page", "", source.Read},
	{"a little larger than the mould, the edges not meeting at the back", ButtonMould, units.InchTape, units.Ratio{}, units.RatioOf(2, 1), units.Inch.Frac(1, 8), "new-dressmaker", "page 116", source.Read},
	{"run near the edge", ButtonMould, units.MetricTape, units.Ratio{}, units.Ratio{}, units.Millimetre.Of(3), "", "", source.Practice},
	{"twice the ring", RingMould, units.InchTape, units.RatioOf(2, 1), units.RatioOf(2, 1), units.Inch.Frac(1, 4), "extension-ring-circular", "", source.Read},
	{"run near the edge", RingMould, units.MetricTape, units.Ratio{}, units.Ratio{}, units.Millimetre.Of(6), "", "", source.Practice},
	{"three to four times the snap", SnapMould, 0, units.RatioOf(3, 1), units.RatioOf(4, 1), units.Length{}, "fastenings-article", "", source.Read},
	{"run near the edge", SnapMould, units.InchTape, units.Ratio{}, units.Ratio{}, units.Inch.Frac(1, 8), "", "", source.Practice},
	{"run near the edge", SnapMould, units.MetricTape, units.Ratio{}, units.Ratio{}, units.Millimetre.Of(3), "", "", source.Practice},
}

// CoverRows are the printed rules.
func CoverRows() iter.Seq[CoverRow] { return coverRows.All() }
