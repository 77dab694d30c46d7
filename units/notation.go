package units

import (
	"cmp"
	"math/bits"
	"strconv"
	"strings"

	"example.com/clothyard/units/fault"
)

// A Notation says how a length is written for people, and to what mark it is
// read. The zero Notation writes inches to the nearest 1/16, as 5 5/16 in. It
// is a value: change a copy as you like.
//
// A length within 1/4 mm of a mark is written as that mark: nobody sees less on a tape.
// One that lies further off is written as the trade does: scant where it is a little less
// than the mark, full where it is a little more, as in scant 6 in. Where the residue is
// greater than Slack it is written out instead, so that the text never hides more than
// the reader agreed to.
type Notation struct {
	Unit         Unit   // default inches
	Step         Length // from one mark to the next; default 1/16 of an inch or a foot, 1/8 yd, 1 L, 1 mm
	Compound     bool   // yards and inches, feet and inches, metres and centimetres
	Decimal      bool   // decimals instead of fractions, as metric units always have
	Glyphs       bool   // 1⅝ instead of 1 5/8, where there is a glyph
	DecimalComma bool   // 1,5 instead of 1.5
	Mode         Mode   // direction of rounding to a mark
	Slack        Length // the most that scant and full may hide, negative for nothing; default 1/32 in
}

// near is how close to a mark, other than that of nothing, a length is written as the
// mark. It holds where marks are at least twice as far apart: on finer marks every length
// is as close.
const near = perMillimetre / 4

// Check records what is wrong with n, under its path: a unit or a mode that is none, a
// negative step.
func (n Notation) Check(a *fault.Audit, path string) {
	if n.Unit != NoUnit && !n.Unit.Valid() {
		a.Fault(fault.Join(path, "unit"), n.Unit.String(), "one of in, ft, yd, mm, cm, m, L", fault.Unknown)
	}
	a.NotNegative(fault.Join(path, "step"), n.Step)
	if _, err := n.Mode.MarshalText(); err != nil {
		a.Fault(fault.Join(path, "mode"), n.Mode.String(), "one of "+strings.Join(modeNames[:], ", "), fault.Unknown)
	}
}

// form is what a Notation comes to: the unit in which the last part of a text stands, the
// step, how often that goes into the unit, zero where it does not, and the decimals that
// every mark has; -1 where marks are fractions.
type form struct {
	unit   Unit
	step   exact
	steps  int64
	places int
}

// form panics for a unit that is none.
func (n Notation) form() form {
	f := form{unit: n.Unit, step: n.Step.v.abs(), places: -1}
	if f.unit == NoUnit {
		f.unit = Inch
	}
	size := f.unit.mustSize()
	if f.step.isZero() {
		f.step = f.unit.step()
	}
	if n.Compound {
		switch f.unit {
		case Yard, Foot:
			f.unit = Inch
			if n.Step.IsZero() {
				f.step = f.unit.step()
			}
		case Metre:
			f.unit = Centimetre
		}
		size = f.unit.size()
	}
	if f.step.less == 0 && size%f.step.num == 0 {
		f.steps = size / f.step.num
	}
	if n.Decimal || f.unit.Metric() {
		if places, ok := (Ratio{f.step.quo(exact{num: size})}).decimals(); ok {
			f.places = places
		}
	}
	return f
}

// step is the distance between two marks where a Notation gives none.
func (u Unit) step() exact {
	switch u {
	case Yard:
		return exact{num: u.size() / 8}
	case Ligne:
		return exact{num: u.size()}
	case Millimetre, Centimetre, Metre:
		return exact{num: perMillimetre}
	}
	return exact{num: u.size()}.divInt(16)
}

// Spacing is the distance between two marks of n: its Step or the default, 1/16 inch for
// the zero Notation.
func (n Notation) Spacing() Length { return Length{n.form().step} }

func (n Notation) slack() Length {
	if n.Slack.IsZero() {
		return Length{exact{num: perInch / 32}}
	}
	return n.Slack
}

// Round is the mark that l is read to, and the residue: l == mark + residue.
func (n Notation) Round(l Length) (mark, residue Length) { return l.Round(n.Spacing(), n.Mode) }

// Format is the text of l in n, and the residue that the text leaves out: l less
// what it states. That is zero where l lies on a mark and where the text has the
// residue as a number, as in 6 in plus 3/64 in. [Notation.Round] tells the residue in
// any case. Format panics for a Unit that is none, as [Length.In] does; what was read
// from a file or a form is asked of [Notation.Check] first.
func (n Notation) Format(l Length) (text string, residue Length) {
	var buf [64]byte
	b, residue := n.Append(buf[:0], l)
	return string(b), residue
}

// Append appends the text of [Notation.Format] to b.
func (n Notation) Append(b []byte, l Length) ([]byte, Length) {
	f := n.form()
	if l.v.less == 0 {
		if text, residue, ok := n.quick(b, l.v.num, &f); ok {
			return text, Length{exact{num: residue}}
		}
	}
	return n.appendAny(b, l, &f)
}

// quick is Append where length, step and slack are whole numbers of base units
// and the residue need not be written; ok is false where that is not so.
func (n *Notation) quick(b []byte, num int64, f *form) (text []byte, residue int64, ok bool) {
	u, steps, step := f.unit, uint64(f.steps), uint64(f.step.num)
	if steps == 0 || f.places >= 0 && steps != uint64(pow10(f.places).num) {
		return b, 0, false
	}
	slack := n.Slack.v.num
	if n.Slack.IsZero() {
		slack = perInch / 32
	}
	binary := steps&(steps-1) == 0 // then no division by steps is needed
	shift := bits.TrailingZeros64(steps) & 63
	if n.Slack.v.less != 0 || n.Glyphs || n.Compound && u != n.Unit {
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
		switch off := max(residue, -residue); {
		case off > slack:
			return b, 0, false
		case off > near || step < 2*near || q == 0:
			b = append(b, word...)
		}
	}
	if num < 0 {
		residue = -residue
		if q > 0 {
			b = append(b, '-')
		}
	}
	if f.places >= 0 {
		b = exact{num: int64(q)}.appendDecimal(b, f.places, n.mark(), false)
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
func (n Notation) appendAny(b []byte, l Length, f *form) ([]byte, Length) {
	mark, residue := l.Round(Length{f.step}, n.Mode)
	if residue.IsZero() {
		return n.appendMark(b, mark, f), residue
	}
	over, off := residue.Sign() > 0, residue.Abs()
	if n.slack().Less(off) {
		b = n.appendMark(b, mark, f)
		if over {
			b = append(b, " plus "...)
		} else {
			b = append(b, " less "...)
		}
		return n.appendExact(b, off, f), Length{}
	}
	switch {
	case off.v.cmp(exact{num: near}) <= 0 && f.step.cmp(exact{num: 2 * near}) >= 0 && !mark.IsZero():
	case over == (mark.Sign() >= 0):
		b = append(b, "full "...)
	default:
		b = append(b, "scant "...)
	}
	return n.appendMark(b, mark, f), residue
}

// Exact is the exact text of l in n's unit, whatever its marks: decimals
// where n writes decimals and they end, else a fraction. [Parse] reads it back,
// unless n has a decimal comma.
func (n Notation) Exact(l Length) string {
	var buf [64]byte
	f := n.form()
	return string(n.appendExact(buf[:0], l, &f))
}

func (n Notation) appendExact(b []byte, l Length, f *form) []byte {
	return n.appendParts(b, l, f, -1)
}

func (n Notation) appendMark(b []byte, mark Length, f *form) []byte {
	return n.appendParts(b, mark, f, f.places)
}

// appendParts writes an exact length, with so many decimals where that is exact.
func (n Notation) appendParts(b []byte, l Length, f *form, places int) []byte {
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
	count := rest.In(f.unit)
	if n.Decimal || f.unit.Metric() {
		ok := places >= 0 && count.v.mul(pow10(places)).isMultiple(1)
		if !ok {
			places, ok = count.decimals()
		}
		if ok {
			b = count.v.mul(pow10(places)).appendDecimal(b, places, n.mark(), false)
			return appendSymbol(b, f.unit)
		}
	}
	return appendUnit(b, count, f.unit, n)
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
