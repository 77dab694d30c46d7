package ticket

import "example.com/clothyard/units/name"

var measureNames = name.Of[Measure]("measure", "none", "length", "ratio", "area", "count", "money")

// String is the measure's name, as in length.
func (m Measure) String() string { return measureNames.String(m) }

var opNames = name.Of[Op]("operation", "+", "-", "x", "/")

// String is the operation's sign: +, -, x or /.
func (o Op) String() string { return opNames.String(o) }

// MarshalText is the operation's sign, empty for [Plus].
func (o Op) MarshalText() ([]byte, error) { return opNames.Marshal(o) }

// UnmarshalText reads the operation's sign; empty text is [Plus].
func (o *Op) UnmarshalText(text []byte) error { return opNames.Unmarshal(o, text) }

var sideNames = name.Of[Sides]("sides", "", "right sides together", "wrong sides together", "right side on wrong side", "wrong side on right side")

// String is the trade's wording, as in "wrong sides together".
func (s Sides) String() string { return sideNames.String(s) }

// MarshalText is the trade's wording.
func (s Sides) MarshalText() ([]byte, error) { return sideNames.Marshal(s) }

// UnmarshalText reads the trade's wording.
func (s *Sides) UnmarshalText(text []byte) error { return sideNames.Unmarshal(s, text) }
