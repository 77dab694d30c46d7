package units

import (
	"strings"
	"unicode/utf8"
)

// A Parser reads lengths. The zero Parser asks for a unit after every number
// and takes a point as the decimal mark.
type Parser struct {
	Bare         Unit // the unit of a number that names none; NoUnit refuses it
	DecimalComma bool // 1,5 is 1 1/2; the point is then refused
}

// Parse reads a length such as 1 5/8 in, 1-5/8", 1⅝ in, .625 in, 5/8-inch, 5 ft. 4 in.,
// 1 yd 4 1/2 in, 15 mm or 24 L. The unit is compulsory. The package page has the grammar; a
// fault is a [*ParseError].
func Parse(s string) (Length, error) { return Parser{}.Parse(s) }

// MustParse is Parse for fixed strings and tests: it panics on a fault.
func MustParse(s string) Length {
	l, err := Parse(s)
	if err != nil {
		panic(err)
	}
	return l
}

// Parse reads a length as the function [Parse] does, with the parser's settings.
func (p Parser) Parse(text string) (Length, error) {
	if len(text) > MaxText {
		return Length{}, tooLong(text)
	}
	s := scanner{in: text, comma: p.DecimalComma}
	s.spaces()
	neg := s.sign()
	var sum tally
	var last Unit
	for {
		v, u := s.quick(last)
		if u == NoUnit {
			n, err := s.number()
			if err != nil {
				return Length{}, err
			}
			if !s.spaces() {
				s.joint()
			}
			at := s.at
			if u = s.unit(); u == NoUnit {
				if !p.Bare.Valid() || last != NoUnit || s.at < len(s.in) {
					return Length{}, s.fail(s.at, "a unit: in, ft, yd, mm, cm, m or L")
				}
				u = p.Bare
			}
			if last != NoUnit && !follows(last, u) {
				return Length{}, s.fail(at, "a smaller unit of the same system after "+last.String())
			}
			s.stop(s.in[at:s.at])
			sum.add(&n, u.size())
		} else if last == NoUnit {
			sum.v = v
		} else {
			sum.v = sum.v.add(v)
		}
		last = u
		if s.at == len(s.in) || s.spaces() && s.at == len(s.in) {
			return Length{sum.total(neg)}, nil
		}
	}
}

// follows reports whether next may stand after last in a compound length.
func follows(last, next Unit) bool {
	if last.Metric() != next.Metric() || last == Ligne || next == Ligne {
		return false
	}
	return next.size() < last.size()
}

// ParseRatio reads a pure number: 2 1/2, 2.5, 15/7, 3 %, 2.5x, 5:2 or 5 to 2. A fault is a
// [*ParseError].
func ParseRatio(text string) (Ratio, error) {
	if len(text) > MaxText {
		return Ratio{}, tooLong(text)
	}
	s := scanner{in: text}
	s.spaces()
	neg := s.sign()
	n, err := s.number()
	if err != nil {
		return Ratio{}, err
	}
	by := numeral{whole: "1"}
	s.spaces()
	switch {
	case s.eat("%"):
		by.whole = "100"
	case s.eat("x"), s.eat("×"):
	case s.eat(":"), s.eat("to"):
		s.spaces()
		at := s.at
		if by, err = s.number(); err != nil {
			return Ratio{}, err
		}
		if by.isZero() {
			return Ratio{}, s.fail(at, "a number other than zero")
		}
	}
	s.spaces()
	if s.at < len(s.in) {
		return Ratio{}, s.fail(s.at, "the end, %, x, : or to")
	}
	return Ratio{quotient(neg, &n, &by)}, nil
}

// ParseArea reads an area: a number, sq and a unit, as in 12 1/2 sq in, or a
// unit followed by ², ^2 or 2, as in 3 m². A fault is a [*ParseError].
func ParseArea(text string) (Area, error) {
	if len(text) > MaxText {
		return Area{}, tooLong(text)
	}
	s := scanner{in: text}
	s.spaces()
	neg := s.sign()
	n, err := s.number()
	if err != nil {
		return Area{}, err
	}
	s.spaces()
	at := s.at
	word := s.word()
	square := word == "sq" || word == "square"
	if square {
		s.spaces()
	} else {
		s.at = at
	}
	u := s.unit()
	if u == NoUnit {
		return Area{}, s.fail(s.at, "sq in, sq ft, sq yd, sq mm, sq cm, sq m or a unit with ²")
	}
	if !square && !s.eat("²") && !s.eat("^2") && !s.eat("2") {
		return Area{}, s.fail(s.at, "²")
	}
	s.spaces()
	if s.at < len(s.in) {
		return Area{}, s.fail(s.at, "the end")
	}
	var sum tally
	sum.add(&n, u.size()*u.size())
	return Area{sum.total(neg)}, nil
}

// scanner walks over a text of at most MaxText bytes.
type scanner struct {
	in    string
	at    int
	comma bool
}

func (s *scanner) fail(at int, want string) *ParseError {
	rest := s.in[at:]
	if i := strings.IndexAny(rest, " \t"); i > 0 {
		rest = rest[:i]
	}
	return &ParseError{Input: strings.Clone(s.in), Offset: at, Found: quoteFound(rest), Want: want}
}

func (s *scanner) eat(t string) bool {
	if strings.HasPrefix(s.in[s.at:], t) {
		s.at += len(t)
		return true
	}
	return false
}

// spaces skips blanks, tabs and the no-break and thin spaces, and tells whether there were any.
func (s *scanner) spaces() bool {
	start := s.at
	for s.at < len(s.in) {
		if c := s.in[s.at]; c == ' ' || c == '\t' {
			s.at++
		} else if c < utf8.RuneSelf || !s.eat("\u00a0") && !s.eat("\u2009") && !s.eat("\u202f") {
			break
		}
	}
	return s.at > start
}

// sign eats an optional sign and tells whether it was a minus.
func (s *scanner) sign() bool {
	if s.at < len(s.in) && '0' <= s.in[s.at] && s.in[s.at] <= '9' {
		return false
	}
	return !s.eat("+") && (s.eat("-") || s.eat("\u2212"))
}

func (s *scanner) digits() string {
	start := s.at
	for s.at < len(s.in) && '0' <= s.in[s.at] && s.in[s.at] <= '9' {
		s.at++
	}
	return s.in[start:s.at]
}

func (s *scanner) word() string {
	start := s.at
	for s.at < len(s.in) && ('a' <= s.in[s.at]|0x20 && s.in[s.at]|0x20 <= 'z') {
		s.at++
	}
	return s.in[start:s.at]
}

// number is a decimal, a whole number, a fraction, a mixed number or a glyph.
func (s *scanner) number() (n numeral, err error) {
	start := s.at
	if g, ok := s.glyph(); ok {
		return numeral{part: g}, nil
	}
	digits := s.digits()
	mark := "."
	if s.comma {
		mark = ","
	}
	if s.at < len(s.in) && s.in[s.at] == mark[0] {
		s.at++
		places := s.digits()
		if places == "" {
			return numeral{}, s.fail(s.at, "a digit after the decimal mark")
		}
		return numeral{whole: unpadded(digits), places: strings.TrimRight(places, "0")}, nil
	}
	if digits == "" {
		return numeral{}, s.fail(start, "a number")
	}
	if s.slash() {
		den, err := s.denominator()
		return numeral{num: unpadded(digits), den: den}, err
	}
	n.whole = unpadded(digits)
	if g, ok := s.glyph(); ok {
		n.part = g
		return n, nil
	}
	// A mixed number: blanks or one hyphen, then a fraction less than one.
	end := s.at
	hyphen := s.eat("-")
	if !hyphen && !s.spaces() {
		return n, nil
	}
	if g, ok := s.glyph(); ok {
		n.part = g
		return n, nil
	}
	from := s.at
	if digits = s.digits(); digits == "" {
		if hyphen && !s.letter(s.at) {
			return numeral{}, s.fail(from, "a fraction or a unit after the hyphen")
		}
		s.at = end
		return n, nil
	}
	if !s.slash() {
		return numeral{}, s.fail(from, "a fraction or a unit")
	}
	if n.den, err = s.denominator(); err != nil {
		return numeral{}, err
	}
	if n.num = unpadded(digits); len(n.num) > len(n.den) || len(n.num) == len(n.den) && n.num >= n.den {
		return numeral{}, s.fail(from, "a fraction less than one after a whole number")
	}
	return n, nil
}

// joint eats the hyphen of 5/8-inch.
func (s *scanner) joint() {
	if s.letter(s.at + 1) {
		s.eat("-")
	}
}

// letter reports whether an ASCII letter stands at a place.
func (s *scanner) letter(at int) bool {
	return at < len(s.in) && 'a' <= s.in[at]|0x20 && s.in[at]|0x20 <= 'z'
}

// stop eats the full stop of an abbreviated unit, as in 5/8 in. and 5 ft. 4 in.; a
// stop with a digit after it is the point of the next number.
func (s *scanner) stop(unit string) {
	switch unit {
	case "in", "ft", "yd", "yds":
		after := scanner{in: s.in, at: s.at}
		if after.eat(".") && (after.at == len(s.in) || after.spaces()) {
			s.at = after.at
		}
	}
}

func (s *scanner) slash() bool { return s.eat("/") || s.eat("\u2044") }

func (s *scanner) denominator() (string, error) {
	from := s.at
	digits := s.digits()
	if digits == "" {
		return "", s.fail(from, "a denominator")
	}
	den := unpadded(digits)
	if den == "" {
		return "", s.fail(from, "a denominator other than zero")
	}
	return den, nil
}

// glyph is a vulgar fraction in one character.
func (s *scanner) glyph() (exact, bool) {
	if s.at == len(s.in) || s.in[s.at] < utf8.RuneSelf {
		return exact{}, false
	}
	r, size := utf8.DecodeRuneInString(s.in[s.at:])
	for _, g := range glyphs {
		if g.r == r {
			s.at += size
			return fraction(g.num, g.den), true
		}
	}
	return exact{}, false
}

var glyphs = [...]struct {
	r        rune
	num, den int64
}{
	{'½', 1, 2}, {'¼', 1, 4}, {'¾', 3, 4}, {'⅛', 1, 8}, {'⅜', 3, 8}, {'⅝', 5, 8}, {'⅞', 7, 8},
	{'⅓', 1, 3}, {'⅔', 2, 3}, {'⅕', 1, 5}, {'⅖', 2, 5}, {'⅗', 3, 5}, {'⅘', 4, 5},
	{'⅙', 1, 6}, {'⅚', 5, 6}, {'⅐', 1, 7}, {'⅑', 1, 9}, {'⅒', 1, 10},
}

// unit eats a unit; NoUnit means that none stands here.
func (s *scanner) unit() Unit {
	at := s.at
	switch s.word() {
	case "in", "inch", "inches":
		return Inch
	case "ft", "foot", "feet":
		return Foot
	case "yd", "yds", "yard", "yards":
		return Yard
	case "mm", "millimetre", "millimetres", "millimeter", "millimeters":
		return Millimetre
	case "cm", "centimetre", "centimetres", "centimeter", "centimeters":
		return Centimetre
	case "m", "metre", "metres", "meter", "meters":
		return Metre
	case "L", "ligne", "lignes":
		return Ligne
	case "":
		switch {
		case s.eat(`"`), s.eat("\u2033"), s.eat("\u201d"):
			return Inch
		case s.eat("'"), s.eat("\u2032"), s.eat("\u2019"):
			return Foot
		}
	}
	s.at = at
	return NoUnit
}
