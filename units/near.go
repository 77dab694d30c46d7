package units

import (
	"errors"
	"fmt"
	"strings"
)

// A Near is a length that may be irrational: a circle, a diagonal, an arc. It
// encloses the true value between two exact lengths. Its zero value is the
// exact length zero. Two Nears are == where they were made alike; to compare
// what they measure use [Near.Cmp].
type Near struct{ v interval }

// DefaultWithin is the bound used where none is asked: 1/1000 mm.
func DefaultWithin() Length { return Length{exact{num: 16}} }

// Exactly is l as a Near.
func Exactly(l Length) Near { return Near{point(l.v)} }

// Exact is the length, where n is known exactly.
func (n Near) Exact() (l Length, ok bool) { return Length{n.v.lo}, n.v.isExact() }

// IsZero reports whether n is exactly zero.
func (n Near) IsZero() bool { return n == Near{} }

// Bounds are the two lengths between which the true value lies.
func (n Near) Bounds() (lo, hi Length) { return Length{n.v.lo}, Length{n.v.hi} }

// Mid is the length half way between the bounds.
func (n Near) Mid() Length { return Length{n.v.lo.add(n.v.hi).divInt(2)} }

// Within is the most by which Mid can differ from the true value; zero if n is exact.
func (n Near) Within() Length { return Length{n.v.hi.sub(n.v.lo).divInt(2)} }

// Add is n + m; the bounds add up.
func (n Near) Add(m Near) Near { return Near{n.v.add(m.v)} }

// Sub is n - m.
func (n Near) Sub(m Near) Near { return Near{n.v.sub(m.v)} }

// Neg is -n.
func (n Near) Neg() Near { return Near{n.v.times(exact{num: -1})} }

// Plus is n + l.
func (n Near) Plus(l Length) Near { return Near{n.v.plus(l.v)} }

// Scale is n times r.
func (n Near) Scale(r Ratio) Near { return Near{n.v.times(r.v)} }

// MulInt is n times k.
func (n Near) MulInt(k int64) Near { return Near{n.v.times(exact{num: k})} }

// DivInt is n / k. It panics if k is zero.
func (n Near) DivInt(k int64) Near { return Near{n.v.quo(exact{num: k})} }

// Div is n / l, a pure number. It panics if l is zero.
func (n Near) Div(l Length) NearRatio { return NearRatio{n.v.quo(l.v)} }

// Under is l / n, a pure number, as the fullness of a strip on a curved edge. It
// fails with [ErrBound] where n cannot be told from zero.
func (n Near) Under(l Length) (NearRatio, error) {
	v, err := n.v.under(l.v)
	return NearRatio{v}, err
}

// Refine encloses n again to the bound given, which must be more than zero. It
// fails with [ErrBound] where that would pass the limit of work, or where n was
// read from text that gave bounds only.
func (n Near) Refine(within Length) (Near, error) {
	v, err := n.v.refine(within.v)
	return Near{v}, err
}

// Cmp is -1, 0 or 1 as n is shorter than, equal to or longer than m, refining both until
// it is decided. Sums of roots, of circles and of what else is irrational are found equal
// where their terms come to the same, in whatever order they were added; so are roots that
// are multiples of each other, as those of 2 and 8. It fails with [ErrBound] where it
// cannot be decided, as for equal lengths that were made differently otherwise.
func (n Near) Cmp(m Near) (int, error) { return n.Sub(m).Sign() }

// Sign is -1, 0 or 1 as n is negative, zero or positive, as [Near.Cmp] decides it.
func (n Near) Sign() (int, error) { return n.v.decided() }

// Round is the mark that n is read to and the residue, n less the mark. It
// refines n until the mark is decided, and fails with [ErrBound] where it
// cannot be. A step of zero or less fails too, unless n is exact.
func (n Near) Round(step Length, m Mode) (mark Length, residue Near, err error) {
	if step.Sign() <= 0 {
		if !n.v.isExact() {
			return Length{}, n, ErrBound
		}
		return Length{n.v.lo}, Near{}, nil
	}
	v, _, err := decide(n.v, func(e exact) exact { return e.round(step.v, m) })
	if err != nil {
		return Length{}, n, err
	}
	return Length{v}, Near{n.v.sub(point(v))}, nil
}

// Sqrt is the side of the square of area a, enclosed to within the bound given;
// zero asks for [DefaultWithin]. It is exact where the root is rational. It
// fails with [ErrNegative] for a negative area and [ErrBound] past the limit of
// work, where the area has more bits than [MaxRoot] too.
func Sqrt(a Area, within Length) (Near, error) {
	if a.Sign() < 0 {
		return Near{}, ErrNegative
	}
	if within.IsZero() {
		within = DefaultWithin()
	}
	v, err := boundedRoot(a.v, within.v)
	return Near{v}, err
}

// A NearRatio is a pure number that may be irrational, such as pi. It encloses
// the true value between two exact ratios, as a [Near] does a length.
type NearRatio struct{ v interval }

const billion = 1_000_000_000

// ratioWithin bounds a NearRatio where no bound is asked: a thousand-millionth.
func ratioWithin() exact { return fraction(1, billion) }

// ExactlyRatio is r as a NearRatio.
func ExactlyRatio(r Ratio) NearRatio { return NearRatio{point(r.v)} }

// Pi is the ratio of a circle to its diameter, within a thousand-millionth; a
// length made with it can be refined as far as one likes.
func Pi() NearRatio {
	return NearRatio{irrational(fraction(3141592653, billion), fraction(3141592654, billion), "p")}
}

// SqrtRatio is the square root of r, within a thousand-millionth. It fails with
// [ErrNegative] for a negative number and [ErrBound] past the limit of work, as
// [Sqrt] does.
func SqrtRatio(r Ratio) (NearRatio, error) {
	if r.Sign() < 0 {
		return NearRatio{}, ErrNegative
	}
	v, err := boundedRoot(r.v, ratioWithin())
	return NearRatio{v}, err
}

// Exact is the ratio, where n is known exactly.
func (n NearRatio) Exact() (r Ratio, ok bool) { return Ratio{n.v.lo}, n.v.isExact() }

// IsZero reports whether n is exactly zero.
func (n NearRatio) IsZero() bool { return n == NearRatio{} }

// Bounds are the two ratios between which the true value lies.
func (n NearRatio) Bounds() (lo, hi Ratio) { return Ratio{n.v.lo}, Ratio{n.v.hi} }

// Mid is the ratio half way between the bounds.
func (n NearRatio) Mid() Ratio { return Ratio{n.v.lo.add(n.v.hi).divInt(2)} }

// Within is the most by which Mid can differ from the true value; zero if n is exact.
func (n NearRatio) Within() Ratio { return Ratio{n.v.hi.sub(n.v.lo).divInt(2)} }

// Add is n + m.
func (n NearRatio) Add(m NearRatio) NearRatio { return NearRatio{n.v.add(m.v)} }

// Sub is n - m.
func (n NearRatio) Sub(m NearRatio) NearRatio { return NearRatio{n.v.sub(m.v)} }

// Mul is n times m.
func (n NearRatio) Mul(m NearRatio) NearRatio { return NearRatio{n.v.mul(m.v)} }

// Scale is n times r.
func (n NearRatio) Scale(r Ratio) NearRatio { return NearRatio{n.v.times(r.v)} }

// Of is the length n times l.
func (n NearRatio) Of(l Length) Near { return Near{n.v.times(l.v)} }

// Sign is -1, 0 or 1 as n is negative, zero or positive; it fails with
// [ErrBound] where that cannot be decided.
func (n NearRatio) Sign() (int, error) { return n.v.decided() }

// between separates the middle of an enclosure from its bound in text.
const between = " +- "

// inDecimals is the middle of an enclosure and its bound in units of the size given,
// widened to whole decimal places where they do not end in them. Widened again they stay
// as they are.
func (n interval) inDecimals(size exact) (mid, bound exact, places int) {
	n.lo, n.hi = n.lo.quo(size), n.hi.quo(size)
	half, step := n.hi.sub(n.lo).divInt(2), exact{num: 1}
	for places < 18 && half.cmp(step) < 0 {
		places, step = places+1, step.divInt(10)
	}
	for {
		lo, hi := n.lo.round(step, Down), n.hi.round(step, Up)
		mid = lo.add(hi).divInt(2).round(step, Down)
		bound = hi.sub(mid)
		if coarser := step.mulInt(10); places > 0 && coarser.cmp(bound) <= 0 {
			places, step = places-1, coarser
			continue
		}
		return mid, bound, places
	}
}

// decimals is the text of an enclosure that [interval.inDecimals] widens.
func (n interval) decimals(size exact, unit string, mark byte) string {
	mid, bound, places := n.inDecimals(size)
	scale := pow10(places)
	b := mid.mul(scale).appendDecimal(nil, places, mark, false)
	b = append(b, unit+between...)
	b = bound.mul(scale).appendDecimal(b, places, mark, false)
	return string(append(b, unit...))
}

// settled is what the text of an enclosure says, in base units of the size given.
func (n interval) settled(size exact) interval {
	if n.isExact() {
		return n
	}
	mid, bound, _ := n.inDecimals(size)
	return interval{lo: mid.sub(bound).mul(size), hi: mid.add(bound).mul(size)}
}

// Settled is n with its bounds rounded outwards to what its text says, so that text and
// value are the same and it reads back equal. It cannot be refined: sums and comparisons
// come before it.
func (n Near) Settled() Near { return Near{n.v.settled(exact{num: perMillimetre})} }

// Settle settles each of the lengths in place, as the last thing that a plan does;
// see [Near.Settled]. What can be refined is known within a millionth of a
// millimetre first.
func Settle(lengths ...*Near) {
	for _, n := range lengths {
		if fine, err := n.Refine(DefaultWithin().DivInt(1000)); err == nil {
			*n = fine
		}
		*n = n.Settled()
	}
}

// Settled is n with its bounds rounded outwards to what its text says, as
// [Near.Settled] is a length.
func (n NearRatio) Settled() NearRatio { return NearRatio{n.v.settled(exact{num: 1})} }

// String is the exact text of n where it is exact, else a middle and a bound in
// decimals of a millimetre, as in 15.2405 mm +- 0.0005 mm. [ParseNear] reads it
// back to bounds that enclose those of n.
func (n Near) String() string {
	if l, ok := n.Exact(); ok {
		return l.String()
	}
	return n.v.decimals(exact{num: perMillimetre}, " mm", '.')
}

// AppendText appends the text of [Near.String].
func (n Near) AppendText(b []byte) ([]byte, error) { return checkSize(b, append(b, n.String()...)) }

// MarshalText is the text of [Near.String]; it fails only where that would be
// longer than [MaxText].
func (n Near) MarshalText() ([]byte, error) { return n.AppendText(nil) }

// UnmarshalText reads a Near as [ParseNear] does.
func (n *Near) UnmarshalText(text []byte) error {
	v, err := ParseNear(string(text))
	if err == nil {
		*n = v
	}
	return err
}

// Format writes n for fmt as [Length.Format] does a length.
func (n Near) Format(s fmt.State, verb rune) { format(s, verb, "units.Near", n.String()) }

// ParseNear reads a length, or a length and a bound, as [Near.String] writes
// them. What is read from a bound cannot be refined.
func ParseNear(text string) (Near, error) {
	v, err := parseBounds(text, func(part string) (exact, error) {
		l, err := Parse(part)
		return l.v, err
	})
	return Near{v}, err
}

// parseBounds reads a middle and, if there is one, a bound on either side of it.
func parseBounds(text string, parse func(string) (exact, error)) (interval, error) {
	if len(text) > MaxText {
		return interval{}, tooLong(text)
	}
	head, tail, ok := strings.Cut(text, between)
	mid, err := parse(head)
	if err != nil {
		return interval{}, inWhole(err, text, 0)
	}
	if !ok {
		return point(mid), nil
	}
	at := len(head) + len(between)
	bound, err := parse(tail)
	if err != nil {
		return interval{}, inWhole(err, text, at)
	}
	if bound.sign() < 0 {
		return interval{}, &ParseError{Input: strings.Clone(text), Offset: at, Found: quoteFound(tail), Want: "a bound of zero or more"}
	}
	return interval{lo: mid.sub(bound), hi: mid.add(bound)}, nil
}

// inWhole places a fault found in a part of a text in the whole of it.
func inWhole(err error, text string, from int) error {
	var e *ParseError
	if errors.As(err, &e) {
		e.Input, e.Offset = strings.Clone(text), e.Offset+from
	}
	return err
}

// String is the exact text of n where it is exact, else a middle and a bound in
// decimals. [ParseNearRatio] reads it back to bounds that enclose those of n.
func (n NearRatio) String() string {
	if r, ok := n.Exact(); ok {
		return r.String()
	}
	return n.v.decimals(exact{num: 1}, "", '.')
}

// AppendText appends the text of [NearRatio.String].
func (n NearRatio) AppendText(b []byte) ([]byte, error) {
	return checkSize(b, append(b, n.String()...))
}

// MarshalText is the text of [NearRatio.String]; it fails only where that would
// be longer than [MaxText].
func (n NearRatio) MarshalText() ([]byte, error) { return n.AppendText(nil) }

// UnmarshalText reads a NearRatio as [ParseNearRatio] does.
func (n *NearRatio) UnmarshalText(text []byte) error {
	v, err := ParseNearRatio(string(text))
	if err == nil {
		*n = v
	}
	return err
}

// Format writes n for fmt as [Length.Format] does a length.
func (n NearRatio) Format(s fmt.State, verb rune) { format(s, verb, "units.NearRatio", n.String()) }

// ParseNearRatio reads a ratio, or a ratio and a bound. What is read from a
// bound cannot be refined.
func ParseNearRatio(text string) (NearRatio, error) {
	v, err := parseBounds(text, func(part string) (exact, error) {
		r, err := ParseRatio(part)
		return r.v, err
	})
	return NearRatio{v}, err
}
