package units

import (
	"cmp"
	"math/bits"
	"strconv"
)

// A Notation says how a length is written for people, and to what mark it is
// read. The zero Notation writes inches to the nearest 1/16, as 5 5/16 in. It
// is a value: change a copy as you like.
//
// A length that does not lie on a mark is written as the trade does: scant
// where it is a little less than the mark, full where it is a little more, as
// in scant 6 in. Where the residue is greater than Slack it is written out
// instead, so that the text never hides more than the reader agreed to.
type Notation struct {
	Unit         Unit   // default inches
	Compound     bool   // yards and inches, feet and inches, metres and centimetres
	Finest       int    // finest fraction, 16 for sixteenths; default 16 for inches, 8 for yards, 1 for lignes
	Places       int    // decimals instead of fractions; metric units default to whole millimetres
	Glyphs       bool   // 1⅝ instead of 1 5/8, where there is a glyph
	DecimalComma bool   // 1,5 instead of 1.5
	Mode         Mode   // direction of rounding to a mark
	Slack        Length // the most that scant and full may hide; default 1/32 in
}

// MaxFinest and MaxPlaces bound [Notation]'s Finest and Places; more is taken as the bound.
const (
	MaxFinest = 1 << 20
	MaxPlaces = 9
)

// fine is the unit in which the last part of a text stands, its steps in one
// unit, and whether those are decimal places.
func (n Notation) fine() (u Unit, steps int64, places int) {
	u = n.Unit
	if !u.Valid() {
		u = Inch
	}
	if n.Compound {
		switch u {
		case Yard, Foot:
			u = Inch
		case Metre:
			u = Centimetre
		}
	}
	places = max(0, min(n.Places, MaxPlaces))
	if places == 0 && u.Metric() {
		places = map3(u, 0, 1, 3)
	}
	if places > 0 || u.Metric() {
		steps = 1
		for range places {
			steps *= 10
		}
		return u, steps, places
	}
	steps = int64(max(0, min(n.Finest, MaxFinest)))
	if steps == 0 {
		switch u {
		case Yard:
			steps = 8
		case Ligne:
			steps = 1
		default:
			steps = 16
		}
	}
	return u, steps, 0
}

func map3(u Unit, mm, cm, m int) int {
	switch u {
	case Centimetre:
		return cm
	case Metre:
		return m
	}
	return mm
}

// Step is the distance between two marks of n, 1/16 inch for the zero Notation.
func (n Notation) Step() Length {
	u, steps, _ := n.fine()
	return Length{exact{num: u.size()}.divInt(steps)}
}

func (n Notation) slack() Length {
	if n.Slack.IsZero() {
		return Length{exact{num: perInch / 32}}
	}
	return n.Slack
}

// Round is the mark that l is read to, and the residue: l == mark + residue.
func (n Notation) Round(l Length) (mark, residue Length) { return l.Round(n.Step(), n.Mode) }

// Format is the text of l in n, and the residue that the text leaves out: l less
// what it states. That is zero where l lies on a mark and where the text has the
// residue as a number, as in 6 in plus 3/64 in. [Notation.Round] tells the residue in
// any case.
func (n Notation) Format(l Length) (text string, residue Length) {
	var buf [64]byte
	b, residue := n.Append(buf[:0], l)
	return string(b), residue
}

// Append appends the text of [Notation.Format] to b.
func (n Notation) Append(b []byte, l Length) ([]byte, Length) {
	u, steps, places := n.fine()
	if l.v.less == 0 {
		if text, residue, ok := n.quick(b, l.v.num, u, uint64(steps), places); ok {
			return text, Length{exact{num: residue}}
		}
	}
	return n.appendAny(b, l, u, steps, places)
}

// quick is Append where length, step and slack are whole numbers of base units
// and the residue need not be written; ok is false where that is not so.
func (n *Notation) quick(b []byte, num int64, u Unit, steps uint64, places int) (text []byte, residue int64, ok bool) {
	slack := n.Slack.v.num
	if n.Slack.IsZero() {
		slack = perInch / 32
	}
	size := uint64(u.size())
	binary := steps&(steps-1) == 0 // then no division by steps is needed
	shift := bits.TrailingZeros64(steps) & 63
	step := size >> shift
	if !binary {
		step = size / steps
	}
	if step*steps != size || n.Slack.v.less != 0 || n.Glyphs || n.Compound && u != n.Unit {
		return b, 0, false
	}
	q, r := magnitude(num)/step, magnitude(num)%step
	if r > 0 {
		residue = int64(r)
		word := "full "
		if n.Mode.away(num < 0, q&1 == 1, cmp.Compare(r, step-r)) {
			q, residue = q+1, int64(r)-int64(step)
			word = "scant "
		} else if num < 0 && q == 0 {
			word = "scant " // a little less than nothing
		}
		if max(residue, -residue) > slack {
			return b, 0, false
		}
		b = append(b, word...)
	}
	if num < 0 {
		residue = -residue
		if q > 0 {
			b = append(b, '-')
		}
	}
	if places > 0 || u.Metric() {
		b = exact{num: int64(q)}.appendDecimal(b, places, n.mark(), false)
		return appendSymbol(b, u), residue, true
	}
	whole, part := q>>shift, q&(steps-1)
	if !binary {
		whole, part = q/steps, q%steps
	}
	if whole > 0 || part == 0 {
		b = strconv.AppendUint(b, whole, 10)
	}
	if part > 0 {
		if whole > 0 {
			b = append(b, ' ')
		}
		if binary {
			common := bits.TrailingZeros64(part) & 63
			part, steps = part>>common, steps>>common
		} else {
			common := gcd(part, steps)
			part, steps = part/common, steps/common
		}
		b = strconv.AppendUint(b, part, 10)
		b = append(b, '/')
		b = strconv.AppendUint(b, steps, 10)
	}
	return appendSymbol(b, u), residue, true
}

// appendAny is Append for all lengths and notations.
func (n Notation) appendAny(b []byte, l Length, u Unit, steps int64, places int) ([]byte, Length) {
	mark, residue := l.Round(Length{exact{num: u.size()}.divInt(steps)}, n.Mode)
	if residue.IsZero() {
		return n.appendMark(b, mark, u, steps, places), residue
	}
	over := residue.Sign() > 0
	if n.slack().Less(residue.Abs()) {
		b = n.appendMark(b, mark, u, steps, places)
		if over {
			b = append(b, " plus "...)
		} else {
			b = append(b, " less "...)
		}
		return n.appendExact(b, residue.Abs()), Length{}
	}
	if over == (mark.Sign() >= 0) {
		b = append(b, "full "...)
	} else {
		b = append(b, "scant "...)
	}
	return n.appendMark(b, mark, u, steps, places), residue
}

// Exact is the exact text of l in n's unit, whatever its finest mark: decimals
// where n writes decimals and they end, else a fraction. [Parse] reads it back,
// unless n has a decimal comma.
func (n Notation) Exact(l Length) string {
	var buf [64]byte
	return string(n.appendExact(buf[:0], l))
}

func (n Notation) appendExact(b []byte, l Length) []byte {
	u, _, places := n.fine()
	if l.Sign() < 0 {
		b = append(b, '-')
		l = l.Neg()
	}
	big, rest := n.split(l)
	if !big.IsZero() {
		b = appendUnit(b, big.In(n.Unit), n.Unit, Notation{})
		if rest.IsZero() {
			return b
		}
		b = append(b, ' ')
	}
	count := rest.In(u)
	if places > 0 || u.Metric() {
		if digits, ok := count.decimals(); ok {
			b = count.v.mul(pow10(digits)).appendDecimal(b, digits, n.mark(), true)
			return appendSymbol(b, u)
		}
	}
	return appendUnit(b, count, u, n)
}

// decimals is how many decimals r needs, if it ends within 18.
func (r Ratio) decimals() (int, bool) {
	if r.v.isWide() {
		return 0, false
	}
	d := r.v.den()
	two, five := 0, 0
	for d%2 == 0 {
		d, two = d/2, two+1
	}
	for d%5 == 0 {
		d, five = d/5, five+1
	}
	return max(two, five), d == 1 && max(two, five) <= 18
}

func pow10(n int) exact {
	p := int64(1)
	for range n {
		p *= 10
	}
	return exact{num: p}
}

func (n Notation) mark() byte {
	if n.DecimalComma {
		return ','
	}
	return '.'
}

// split parts a length of zero or more into whole units of n.Unit and the rest.
func (n Notation) split(l Length) (big, rest Length) {
	if !n.Compound || n.Unit != Yard && n.Unit != Foot && n.Unit != Metre {
		return Length{}, l
	}
	return l.Round(n.Unit.Of(1), Down)
}

func (n Notation) appendMark(b []byte, mark Length, u Unit, steps int64, places int) []byte {
	if mark.Sign() < 0 {
		b = append(b, '-')
		mark = mark.Neg()
	}
	big, rest := n.split(mark)
	if !big.IsZero() {
		b = appendUnit(b, big.In(n.Unit), n.Unit, Notation{})
		if rest.IsZero() {
			return b
		}
		b = append(b, ' ')
	}
	if places > 0 || u.Metric() {
		b = rest.In(u).v.mulInt(steps).appendDecimal(b, places, n.mark(), false)
		return appendSymbol(b, u)
	}
	return appendUnit(b, rest.In(u), u, n)
}

// appendUnit writes a count of at least zero and a unit, as in 1 5/8 in.
func appendUnit(b []byte, count Ratio, u Unit, n Notation) []byte {
	if n.Glyphs && count.v.less > 0 {
		whole, part := count.Round(Ratio{exact{num: 1}}, Down)
		for _, g := range glyphs {
			if part == RatioOf(g.num, g.den) {
				if !whole.IsZero() {
					b = strconv.AppendInt(b, whole.v.num, 10)
				}
				b = append(b, string(g.r)...)
				return appendSymbol(b, u)
			}
		}
	}
	b = count.v.appendMixed(b)
	return appendSymbol(b, u)
}

func appendSymbol(b []byte, u Unit) []byte {
	b = append(b, ' ')
	return append(b, u.String()...)
}
