package units

import "fmt"

// A Unit is a unit of length. The zero value, [NoUnit], is no unit at all.
//
// To make a length from a count, and to read a count from a length:
//
//	l := units.Inch.Frac(5, 8)       // 5/8 in
//	r := l.In(units.Millimetre)      // 15 7/8
//
// Cloth measures that differ by country, such as the ell, are not constants:
// one name would stand for several lengths.
type Unit uint8

// The units. An inch is exactly 25.4 mm; a ligne, the button trade's measure,
// is 1/40 inch.
const (
	NoUnit Unit = iota
	Inch
	Foot
	Yard
	Millimetre
	Centimetre
	Metre
	Ligne
)

// The base unit is 1/16000 mm: the inch, 1/128 inch, the ligne, the millimetre
// and the micrometre are all whole numbers of it.
const (
	perMillimetre = 16000
	perInch       = 406400
	per128th      = perInch / 128
)

// size is the number of base units in one u, or 0 if u is no unit.
func (u Unit) size() int64 {
	switch u {
	case Inch:
		return perInch
	case Foot:
		return 12 * perInch
	case Yard:
		return 36 * perInch
	case Millimetre:
		return perMillimetre
	case Centimetre:
		return 10 * perMillimetre
	case Metre:
		return 1000 * perMillimetre
	case Ligne:
		return perInch / 40
	}
	return 0
}

// mustSize panics for a value that is no unit, as a division by zero would.
func (u Unit) mustSize() int64 {
	if n := u.size(); n > 0 {
		return n
	}
	panic("units: " + u.String() + " is not a unit of length")
}

// Valid reports whether u is one of the units; [NoUnit] is none.
func (u Unit) Valid() bool { return u.size() > 0 }

// Metric reports whether u is a millimetre, a centimetre or a metre.
func (u Unit) Metric() bool { return u == Millimetre || u == Centimetre || u == Metre }

// Of is n units. It panics if u is not a unit.
func (u Unit) Of(n int64) Length { return Length{exact{num: u.mustSize()}.mulInt(n)} }

// Frac is num/den units. It panics if den is zero or u is not a unit.
func (u Unit) Frac(num, den int64) Length {
	return Length{exact{num: u.mustSize()}.mul(fraction(num, den))}
}

// Mixed is whole and num/den units, as in Inch.Mixed(1, 5, 8) for 1 5/8 in. A
// negative whole makes the fraction negative too, whatever its sign, so that
// Inch.Mixed(-1, 5, 8) is -1 5/8 in; after a whole of zero or more the fraction
// keeps its own sign. It panics if den is zero or u is not a unit.
func (u Unit) Mixed(whole, num, den int64) Length {
	part := u.Frac(num, den)
	if whole < 0 {
		return u.Of(whole).Sub(part.Abs())
	}
	return u.Of(whole).Add(part)
}

// String is the unit's symbol: in, ft, yd, mm, cm, m or L.
func (u Unit) String() string {
	switch u {
	case NoUnit:
		return "none"
	case Inch:
		return "in"
	case Foot:
		return "ft"
	case Yard:
		return "yd"
	case Millimetre:
		return "mm"
	case Centimetre:
		return "cm"
	case Metre:
		return "m"
	case Ligne:
		return "L"
	}
	return fmt.Sprintf("Unit(%d)", uint8(u))
}

// MarshalText is the unit's symbol, empty for [NoUnit].
func (u Unit) MarshalText() ([]byte, error) {
	switch {
	case u == NoUnit:
		return nil, nil
	case !u.Valid():
		return nil, &ParseError{Input: u.String(), Found: u.String(), Want: "a unit"}
	}
	return []byte(u.String()), nil
}

// UnmarshalText takes what the length grammar takes for a unit: a symbol, a
// word or a prime. Empty text is [NoUnit].
func (u *Unit) UnmarshalText(text []byte) error {
	if len(text) == 0 {
		*u = NoUnit
		return nil
	}
	if len(text) > MaxText {
		return tooLong(string(text[:MaxText]))
	}
	s := scanner{in: string(text)}
	v := s.unit()
	if v == NoUnit || s.at < len(s.in) {
		return s.fail(s.at, "a unit: in, ft, yd, mm, cm, m or L")
	}
	*u = v
	return nil
}

// Units yields every unit but [NoUnit].
func Units(yield func(Unit) bool) {
	for u := Inch; u <= Ligne; u++ {
		if !yield(u) {
			return
		}
	}
}
