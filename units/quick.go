package units

import "math/bits"

// quickDigits is the most digits that quick reads as a number: two such numbers
// and the size of a unit, multiplied, stay within 64 bits.
const quickDigits = 6

// quick reads a part of a length as people mostly write it: a number such as 5,
// 1 5/8, 1-5/8, 5/8 or 1.625, of few digits, perhaps a blank, and the symbol of a
// unit up to a blank or the end. It gives the value in base units. All else it
// leaves where it stands and gives NoUnit for; the scanner then reads it, which
// knows the whole grammar and every fault. What both can read they read alike.
func (s *scanner) quick(last Unit) (exact, Unit) {
	in := s.in
	num, at, ok := few(in, s.at)
	if !ok || at == len(in) {
		return exact{}, NoUnit
	}
	whole, den, mixed := uint64(0), uint64(1), false
	c := in[at]
	if (c == ' ' || c == '-') && at+1 < len(in) && in[at+1]-'0' <= 9 {
		whole, mixed = num, true
		if num, at, ok = few(in, at+1); !ok || at == len(in) || in[at] != '/' {
			return exact{}, NoUnit
		}
		c = '/'
	}
	switch c {
	case '/':
		if den, at, ok = few(in, at+1); !ok || den == 0 || mixed && num >= den {
			return exact{}, NoUnit
		}
		num += whole * den
	case '.', ',':
		if (c == ',') != s.comma {
			return exact{}, NoUnit
		}
		from := at + 1
		var places uint64
		if places, at, ok = few(in, from); !ok {
			return exact{}, NoUnit
		}
		for range at - from {
			den *= 10
		}
		num = num*den + places
	}
	if at < len(in) && in[at] == ' ' {
		at++
	}
	u, at := symbol(in, at)
	if u == NoUnit || at < len(in) && in[at] != ' ' || last != NoUnit && !follows(last, u) {
		return exact{}, NoUnit
	}
	num *= uint64(u.size())
	if den&(den-1) == 0 {
		// Halves to sixteenths are most of what there is, and need no division.
		both := min(bits.TrailingZeros64(den), bits.TrailingZeros64(num)) & 63
		num, den = num>>both, den>>both
	} else if r := num % den; r == 0 {
		num, den = num/den, 1
	} else if g := gcd(r, den); g > 1 {
		num, den = num/g, den/g
	}
	if num >= top {
		return exact{}, NoUnit
	}
	s.at = at
	return small(false, num, den), u
}

// few reads a number of one to quickDigits digits.
func few(in string, at int) (n uint64, end int, ok bool) {
	end = at
	for end < len(in) && in[end]-'0' <= 9 {
		n = 10*n + uint64(in[end]-'0')
		end++
	}
	return n, end, 0 < end-at && end-at <= quickDigits
}

// symbol reads the symbol of a unit; a longer word may begin with it.
func symbol(in string, at int) (Unit, int) {
	if at+2 <= len(in) {
		switch in[at : at+2] {
		case "in":
			return Inch, at + 2
		case "mm":
			return Millimetre, at + 2
		case "cm":
			return Centimetre, at + 2
		case "ft":
			return Foot, at + 2
		case "yd":
			return Yard, at + 2
		}
	}
	if at < len(in) {
		switch in[at] {
		case '"':
			return Inch, at + 1
		case '\'':
			return Foot, at + 1
		case 'm':
			return Metre, at + 1
		case 'L':
			return Ligne, at + 1
		}
	}
	return NoUnit, at
}
