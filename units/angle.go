package units

import (
	"cmp"
	"math/big"

	"example.com/clothyard/units/fault"
)

// An Angle is an exact angle, in one of three forms: a part of a turn, as 45 deg; a
// slope, which is whole quarter turns and the angle of a tangent, as 90 deg +
// slope 1/4; or an arc, as 1/2 rad. It is an immutable value, its zero value is no
// angle, and == is equality: no number is both a slope and a part of a turn but
// where the tangent is 0 or 1, which are kept as parts of a turn, and no arc is
// either but 0. An angle is not reduced: 5/4 turn is not 1/4 turn.
//
// Its sine and the like are a [NearRatio], exact where they are rational.
type Angle struct {
	v        exact // the part of a turn, the tangent, or the radians
	quarters int32 // the whole quarter turns of a slope
	form     angleForm
}

type angleForm uint8

const (
	turned angleForm = iota
	sloped           // the tangent is above 0 and not 1
	arced            // the radians are not 0
)

// MaxQuarters is the most quarter turns that a slope may stand after, either way.
const MaxQuarters = 1 << 30

// MaxAngleBits bounds the terms of the tangent that [Angle.MulInt] makes.
const MaxAngleBits = 1 << 14

// NoSum is the fault of two angles whose sum is none of the forms of an Angle.
const NoSum fault.Kind = "cannot be added exactly"

// Turns is the angle of a part of a whole turn, or of more.
func Turns(part Ratio) Angle { return Angle{v: part.v} }

// Degrees is the angle of d degrees, d/360 of a turn.
func Degrees(d Ratio) Angle { return Angle{v: d.v.divInt(360)} }

// Radians is the angle of an arc of r times the radius.
func Radians(r Ratio) Angle {
	if r.IsZero() {
		return Angle{}
	}
	return Angle{v: r.v, form: arced}
}

// Slope is the angle, below a quarter turn either way, that has the tangent given:
// how far it rises for each unit that it runs.
func Slope(tangent Ratio) Angle {
	a, _ := slope(0, tangent.v)
	return a
}

// slope is the angle of whole quarter turns and a tangent; it is false where there
// are too many.
func slope(quarters int64, tangent exact) (Angle, bool) {
	if tangent.sign() < 0 {
		quarters, tangent = quarters-1, exact{num: -1}.quo(tangent)
	}
	switch tangent {
	case exact{}:
		return Angle{v: fraction(quarters, 4)}, true
	case exact{num: 1}:
		return Angle{v: fraction(quarters, 4).add(fraction(1, 8))}, true
	}
	if quarters < -MaxQuarters || quarters >= MaxQuarters {
		return Angle{}, false
	}
	return Angle{v: tangent, quarters: int32(quarters), form: sloped}, true
}

// inQuarters is a as whole quarter turns and a tangent of 0 or more; it is false
// where a is no such angle.
func (a Angle) inQuarters() (quarters int64, tangent exact, ok bool) {
	switch {
	case a.form == sloped:
		return int64(a.quarters), a.v, true
	case a.form == arced:
		return 0, exact{}, false
	}
	eighths := a.v.mulInt(8)
	if eighths.less != 0 || magnitude(eighths.num) > 2*MaxQuarters {
		return 0, exact{}, false
	}
	return eighths.num >> 1, exact{num: eighths.num & 1}, true
}

// Add is a + b. Parts of a turn add, and so do arcs; slopes add to each other and to
// eighths of a turn. Of others, and of a slope past [MaxQuarters], the sum is
// refused with a [*fault.Fault] of the kind [NoSum].
func (a Angle) Add(b Angle) (Angle, error) {
	switch {
	case b.IsZero():
		return a, nil
	case a.IsZero():
		return b, nil
	case a.form == b.form && a.form != sloped:
		if a.v = a.v.add(b.v); a.v.isZero() {
			return Angle{}, nil
		}
		return a, nil
	}
	quarters, s, ok := a.inQuarters()
	more, t, fit := b.inQuarters()
	if ok && fit {
		// The tangent of the sum is (s + t)/(1 - s t). Past a quarter turn it is
		// below zero, and that of the angle left is -1 over it.
		up, down := s.add(t), exact{num: 1}.sub(s.mul(t))
		if quarters += more; down.sign() <= 0 {
			quarters, up, down = quarters+1, down.neg(), up
		}
		if sum, ok := slope(quarters, up.quo(down)); ok {
			return sum, nil
		}
	}
	return Angle{}, &fault.Fault{Got: b.String(), Kind: NoSum, Limit: "an angle of the form of {0}", Amounts: []string{a.String()}}
}

// Sub is a - b, refused where [Angle.Add] is.
func (a Angle) Sub(b Angle) (Angle, error) { return a.Add(b.Neg()) }

// Neg is -a.
func (a Angle) Neg() Angle {
	if a.form == sloped {
		return Angle{v: exact{num: 1}.quo(a.v), quarters: -1 - a.quarters, form: sloped}
	}
	a.v = a.v.neg()
	return a
}

// MulInt is n times a. Of a slope it is refused with a [*fault.Fault] where its tangent
// would pass [MaxAngleBits], or its quarter turns [MaxQuarters].
func (a Angle) MulInt(n int64) (Angle, error) {
	if n == 0 {
		return Angle{}, nil
	}
	if a.form != sloped {
		a.v = a.v.mulInt(n)
		return a, nil
	}
	times, x, sum := magnitude(n), a, Angle{}
	if n < 0 {
		x = a.Neg()
	}
	var err error
	if most := MaxAngleBits / uint64(a.v.bits()); times > most {
		return Angle{}, &fault.Fault{Got: a.String(), Kind: fault.Range, Limit: "an angle that need not be multiplied by more than " + exact{num: int64(most)}.text()}
	}
	for {
		if times&1 == 1 {
			if sum, err = sum.Add(x); err != nil {
				return Angle{}, err
			}
		}
		if times >>= 1; times == 0 {
			return sum, nil
		}
		if x, err = x.Add(x); err != nil {
			return Angle{}, err
		}
	}
}

// bits is how long the terms of a are together.
func (a exact) bits() int {
	r := a.rat()
	return r.Num().BitLen() + r.Denom().BitLen()
}

func (a exact) text() string { return string(a.appendMixed(nil)) }

// IsZero reports whether a is zero, which a Spec reads as "not given".
func (a Angle) IsZero() bool { return a == Angle{} }

// Sign is -1, 0 or 1 as a is negative, zero or positive.
func (a Angle) Sign() int {
	switch {
	case a.form != sloped:
		return a.v.sign()
	case a.quarters < 0:
		return -1
	}
	return 1
}

// Cmp is -1, 0 or 1 as a is less than, equal to or greater than b. It fails with
// [ErrBound] where two angles of different forms are too close to be told apart
// within the limit of work, which takes hundreds of digits.
func (a Angle) Cmp(b Angle) (int, error) {
	switch {
	case a == b:
		return 0, nil
	case a.form == b.form && a.quarters == b.quarters:
		return a.v.cmp(b.v), nil
	case a.Sign() != b.Sign():
		return cmp.Compare(a.Sign(), b.Sign()), nil
	case a.form != arced && b.form != arced:
		if c := a.quarter().Cmp(b.quarter()); c != 0 {
			return c, nil
		}
	}
	return a.InRadians().Cmp(b.InRadians())
}

// quarter is the number of the quarter turn in which a lies, which is no arc.
func (a Angle) quarter() *big.Int {
	if a.form == sloped {
		return big.NewInt(int64(a.quarters))
	}
	return a.v.mulInt(4).round(exact{num: 1}, Down).rat().Num()
}
