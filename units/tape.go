package units

import (
	"iter"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/name"
)

// A Tape is the measure that a sewer works by. Defaults, steps and tolerances follow it:
// 5/8 in on a tape of inches, 1.5 cm on a metric one. Zero is "not given".
type Tape uint8

// The tapes.
const (
	InchTape   Tape = iota + 1 // marked in 1/32 in
	MetricTape                 // marked in 1/2 mm
)

var tapes = name.Of[Tape]("tape", "none", "inch", "metric")

// String is inch or metric.
func (t Tape) String() string { return tapes.String(t) }

// MarshalText is the name of t, empty for zero.
func (t Tape) MarshalText() ([]byte, error) { return tapes.Marshal(t) }

// UnmarshalText reads the name of a tape. Empty text is zero.
func (t *Tape) UnmarshalText(text []byte) error { return tapes.Unmarshal(t, text) }

// Check records a tape that is given and is neither of the two, under its path.
func (t Tape) Check(a *fault.Audit, path string) {
	if t != 0 {
		tapes.Check(a, path, t)
	}
}

// Tapes yields both tapes.
func Tapes() iter.Seq[Tape] { return tapes.All() }

// Or is t where it is given. Where it is not, each length that lies on the marks of one
// tape only has a vote, and the majority decides; it is inches where the votes are equal.
func (t Tape) Or(lengths ...Length) Tape {
	if t != 0 {
		return t
	}
	metric := 0
	for _, l := range lengths {
		switch onInch, onMetric := InchTape.Marks(l), MetricTape.Marks(l); {
		case onMetric && !onInch:
			metric++
		case onInch && !onMetric:
			metric--
		}
	}
	if metric > 0 {
		return MetricTape
	}
	return InchTape
}

// Marks reports whether l lies on a mark of t: a whole number of 1/32 in or of 1/2 mm. It
// is false where t is neither tape.
func (t Tape) Marks(l Length) bool {
	switch t {
	case InchTape:
		return l.v.isMultiple(perInch / 32)
	case MetricTape:
		return l.v.isMultiple(perMillimetre / 2)
	}
	return false
}

// Of is inches on the one tape and metric on the other, as in t.Of(5/8 in, 1.5 cm). It is
// inches where t is not given.
func (t Tape) Of(inches, metric Length) Length {
	if t == MetricTape {
		return metric
	}
	return inches
}
