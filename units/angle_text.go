package units

import "fmt"

// ParseAngle reads an angle: 45 deg, 45°, 51 3/7 degrees, 1/8 turn, 1/2 rad, slope 1/4,
// or quarter turns and a slope, as in 90 deg + slope 1/4. 3:12 and 3 in 12 are the slope
// of 3 to 12, and so is slope 3:12. A number alone is refused. A fault is a [*ParseError].
func ParseAngle(text string) (Angle, error) {
	if len(text) > MaxText {
		return Angle{}, tooLong(text)
	}
	s := scanner{in: text}
	s.spaces()
	a, err := s.angle(s.sign())
	if err != nil {
		return Angle{}, err
	}
	if s.spaces(); s.at < len(s.in) {
		return Angle{}, s.fail(s.at, "the end")
	}
	return a, nil
}

// angle reads what stands after a sign.
func (s *scanner) angle(neg bool) (Angle, error) {
	if s.slopeWord() {
		return s.slope(neg)
	}
	n, err := s.number()
	if err != nil {
		return Angle{}, err
	}
	if !s.spaces() {
		s.joint()
	}
	at := s.at
	var a Angle
	switch s.word() {
	case "deg", "degree", "degrees":
		a = Turns(Ratio{quotient(neg, &n, &numeral{whole: "360"})})
	case "turn", "turns":
		a = Turns(Ratio{quotient(neg, &n, &numeral{whole: "1"})})
	case "rad", "radian", "radians":
		return Radians(Ratio{quotient(neg, &n, &numeral{whole: "1"})}), nil
	case "in":
		return s.over(neg, &n)
	case "":
		switch {
		case s.eat(":"):
			return s.over(neg, &n)
		case s.eat("°"):
			a = Turns(Ratio{quotient(neg, &n, &numeral{whole: "360"})})
		default:
			return Angle{}, s.fail(at, needs)
		}
	default:
		return Angle{}, s.fail(at, needs)
	}
	// A slope may follow a part of a turn.
	s.spaces()
	from := s.at
	if neg = s.sign(); s.at == from {
		return a, nil
	}
	s.spaces()
	if at = s.at; !s.slopeWord() {
		return Angle{}, s.fail(at, "slope")
	}
	b, err := s.slope(neg)
	if err != nil {
		return Angle{}, err
	}
	if a, err = a.Add(b); err != nil {
		return Angle{}, s.fail(at, "a slope after quarter turns only, of which there are not too many")
	}
	return a, nil
}

const needs = "deg, turn, slope or rad, as an angle needs one of them"

func (s *scanner) slopeWord() bool {
	at := s.at
	if s.word() == "slope" {
		return true
	}
	s.at = at
	return false
}

// slope reads the number, or the two, after the word.
func (s *scanner) slope(neg bool) (Angle, error) {
	s.spaces()
	if s.sign() {
		neg = !neg
	}
	n, err := s.number()
	if err != nil {
		return Angle{}, err
	}
	end := s.at
	s.spaces()
	if at := s.at; s.eat(":") || s.word() == "in" {
		return s.over(neg, &n)
	} else if s.at > at {
		return Angle{}, s.fail(at, "the end, : or in")
	}
	s.at = end
	return Slope(Ratio{quotient(neg, &n, &numeral{whole: "1"})}), nil
}

// over reads what the rise of a slope is over.
func (s *scanner) over(neg bool, rise *numeral) (Angle, error) {
	s.spaces()
	at := s.at
	run, err := s.number()
	if err != nil {
		return Angle{}, err
	}
	if run.isZero() {
		return Angle{}, s.fail(at, "a number other than zero")
	}
	return Slope(Ratio{quotient(neg, rise, &run)}), nil
}

// String is the exact text of a: 45 deg, slope 1/4, 90 deg + slope 1/4 or 1/2 rad.
// [ParseAngle] reads it back.
func (a Angle) String() string {
	var buf [64]byte
	return string(a.append(buf[:0]))
}

func (a Angle) append(b []byte) []byte {
	switch a.form {
	case turned:
		return append(a.v.mulInt(360).appendMixed(b), " deg"...)
	case arced:
		return append(a.v.appendMixed(b), " rad"...)
	}
	sign := "+"
	if a.quarters < 0 {
		a, sign = a.Neg(), "-"
	}
	switch {
	case a.quarters > 0:
		if sign == "-" {
			b = append(b, '-')
		}
		b = append(exact{num: 90 * int64(a.quarters)}.appendMixed(b), " deg "+sign+" slope "...)
	case sign == "-":
		b = append(b, "-slope "...)
	default:
		b = append(b, "slope "...)
	}
	return a.v.appendMixed(b)
}

// AppendText appends the exact text of a, as [Angle.String] gives it.
func (a Angle) AppendText(b []byte) ([]byte, error) { return checkSize(b, a.append(b)) }

// MarshalText is the exact text of a. It fails only where the text would be longer than
// [MaxText].
func (a Angle) MarshalText() ([]byte, error) { return a.AppendText(nil) }

// UnmarshalText reads an angle as [ParseAngle] does.
func (a *Angle) UnmarshalText(text []byte) error {
	v, err := ParseAngle(string(text))
	if err == nil {
		*a = v
	}
	return err
}

// Format writes a for fmt as [Length.Format] does a length.
func (a Angle) Format(s fmt.State, verb rune) { format(s, verb, "units.Angle", a.String()) }
