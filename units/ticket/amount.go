package ticket

import (
	"strconv"
	"strings"

	"example.com/clothyard/units"
)

// A Measure says what an [Amount] measures.
type Measure uint8

// The measures. The zero value is no amount at all.
const (
	None   Measure = iota
	Length         // a length, exact or within a bound
	Ratio          // a pure number
	Area           // an area
	Count          // a number of things
	Money          // a price, as decimal text
)

// An Amount is a number of any of the kinds that a sum gives, so that it can be
// written in any notation later. It is comparable; the zero Amount is none.
type Amount struct {
	measure Measure
	near    units.Near
	ratio   units.Ratio
	area    units.Area
	count   int64
	money   string
	at      place
}

// A place is where a length is read, which has a measure of its own.
type place uint8

const (
	bench   place = iota // on the tape
	counter              // where cloth is bought, in yards or in metres
	machine              // at the machine, in millimetres
)

// Long is an exact length.
func Long(l units.Length) Amount { return Amount{measure: Length, near: units.Exactly(l)} }

// Cloth is a length of cloth as it is bought: in yards, or in metres.
func Cloth(l units.Length) Amount {
	return Amount{measure: Length, near: units.Exactly(l), at: counter}
}

// Machine is a length at the machine, as of a stitch or a needle: in millimetres, in
// every notation.
func Machine(l units.Length) Amount {
	return Amount{measure: Length, near: units.Exactly(l), at: machine}
}

// About is a length that may be known within a bound only. The bounds are those of
// its text; see [units.Near.Settled].
func About(n units.Near) Amount { return Amount{measure: Length, near: n.Settled()} }

// Times is a pure number.
func Times(r units.Ratio) Amount { return Amount{measure: Ratio, ratio: r} }

// Square is an area.
func Square(a units.Area) Amount { return Amount{measure: Area, area: a} }

// Of is a number of things.
func Of(n int) Amount { return Amount{measure: Count, count: int64(n)} }

// Price is an amount of money, as decimal text with its currency.
func Price(text string) Amount { return Amount{measure: Money, money: text} }

// Measure tells what a measures.
func (a Amount) Measure() Measure { return a.measure }

// IsZero reports whether a is no amount; an amount of 0 in is one.
func (a Amount) IsZero() bool { return a == Amount{} }

// Near is the length, zero if a is not one.
func (a Amount) Near() units.Near { return a.near }

// Number is a as a pure number: the ratio or the count; zero for the others.
func (a Amount) Number() units.Ratio {
	if a.measure == Count {
		return units.RatioOf(a.count, 1)
	}
	return a.ratio
}

// String is the exact text of a.
func (a Amount) String() string {
	switch a.measure {
	case Length:
		return a.near.String()
	case Ratio:
		return a.ratio.String()
	case Area:
		return a.area.String()
	case Count:
		return strconv.FormatInt(a.count, 10)
	case Money:
		return a.money
	}
	return ""
}

// Text is a written in the first notation, with the others after it in
// brackets. A length that does not lie on a mark of the first is followed by
// its exact text, so that nothing is lost.
func (a Amount) Text(in ...units.Notation) string {
	if a.measure != Length {
		return a.String()
	}
	in = a.notations(in)
	l, exact := a.near.Exact()
	if !exact {
		return a.about(in)
	}
	var extra []string
	if at, ok := atCounter(l, in[0]); ok && a.at == counter {
		for _, n := range in {
			if text := n.Exact(l); text != at {
				extra = append(extra, text)
			}
		}
		return bracketed(at, extra)
	}
	text, _ := in[0].Format(l)
	if a.at == machine {
		mark, _ := in[0].Round(l) // a dial is never scant or full
		text = in[0].Exact(mark)
	}
	if !l.IsMultiple(in[0].Spacing()) {
		if l.Abs().Less(in[0].Spacing()) {
			text = in[0].Exact(l) // less than a mark: there is none to read it by
		} else {
			extra = append(extra, in[0].Exact(l))
		}
	}
	for _, n := range in[1:] {
		extra = append(extra, n.Exact(l))
	}
	return bracketed(text, extra)
}

// notations are those that a is written in: those asked for, inches where none is, and
// at the machine its own.
func (a Amount) notations(in []units.Notation) []units.Notation {
	switch {
	case a.at == machine:
		return []units.Notation{{Unit: units.Millimetre, Step: units.Millimetre.Frac(1, 10)}}
	case len(in) == 0:
		return []units.Notation{{}}
	}
	return in
}

// atCounter is a length in eighths of a yard, or in hundredths of a metre, where it is
// a whole number of them.
func atCounter(l units.Length, n units.Notation) (string, bool) {
	if n.Unit.Metric() {
		return units.Notation{Unit: units.Metre}.Exact(l), l.IsMultiple(units.Centimetre.Of(1))
	}
	return units.Notation{Unit: units.Yard}.Exact(l), l.IsMultiple(units.Yard.Frac(1, 8))
}

// about is a length known within a bound, read to the nearest mark of each
// notation; one too small for a mark is said to be that.
func (a Amount) about(in []units.Notation) string {
	texts := make([]string, len(in))
	for i, n := range in {
		mark, _ := n.Round(a.near.Mid())
		texts[i] = "about " + n.Exact(mark)
		if mark.IsZero() {
			texts[i] = "less than " + n.Exact(n.Spacing())
		}
	}
	return bracketed(texts[0], texts[1:])
}

func bracketed(text string, extra []string) string {
	if len(extra) == 0 {
		return text
	}
	return text + " (" + strings.Join(extra, ", ") + ")"
}
