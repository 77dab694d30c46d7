package units

import (
	"fmt"
	"math/big"
)

// A Mode is a direction of rounding. The zero value is [HalfAway], what a hand
// does with a tape: to the nearest mark, a tie away from zero.
type Mode uint8

// The modes. Down and Up are towards the lesser and the greater number, so that
// for a negative amount they differ from towards and away from zero.
const (
	HalfAway Mode = iota // to the nearest mark, a tie away from zero
	HalfEven             // to the nearest mark, a tie to the even count of steps
	Down                 // to the mark at or below
	Up                   // to the mark at or above
	ToZero               // to the mark at or nearer zero
)

var modeNames = [...]string{"half-away", "half-even", "down", "up", "to-zero"}

// String is the mode's name, as in half-away.
func (m Mode) String() string {
	if int(m) < len(modeNames) {
		return modeNames[m]
	}
	return fmt.Sprintf("Mode(%d)", uint8(m))
}

// MarshalText is the mode's name.
func (m Mode) MarshalText() ([]byte, error) {
	if int(m) >= len(modeNames) {
		return nil, &ParseError{Input: m.String(), Found: m.String(), Want: "a mode of rounding"}
	}
	return []byte(modeNames[m]), nil
}

// UnmarshalText takes a mode's name.
func (m *Mode) UnmarshalText(text []byte) error {
	for i, name := range modeNames {
		if name == string(text) {
			*m = Mode(i)
			return nil
		}
	}
	in := clip(string(text))
	return &ParseError{Input: in, Found: quoteFound(in), Want: "half-away, half-even, down, up or to-zero"}
}

// away decides whether a magnitude with quotient q steps and a remainder goes
// to q+1. The remainder is nonzero; half is its comparison with half a step.
func (m Mode) away(neg bool, odd bool, half int) bool {
	switch m {
	case Down:
		return neg
	case Up:
		return !neg
	case ToZero:
		return false
	case HalfEven:
		return half > 0 || half == 0 && odd
	}
	return half >= 0
}

// Round is the mark nearest to l, a whole number of steps, by the mode given,
// and the residue: l == mark + residue, always. A step of zero or less does not
// round: the mark is l and the residue zero.
func (l Length) Round(step Length, m Mode) (mark, residue Length) {
	if step.Sign() <= 0 {
		return l, Length{}
	}
	v := l.v.round(step.v, m)
	return Length{v}, Length{l.v.sub(v)}
}

// Round is the multiple of step nearest to r by the mode given, and the
// residue: r == mark + residue. A step of zero or less does not round.
func (r Ratio) Round(step Ratio, m Mode) (mark, residue Ratio) {
	if step.Sign() <= 0 {
		return r, Ratio{}
	}
	v := r.v.round(step.v, m)
	return Ratio{v}, Ratio{r.v.sub(v)}
}

// Int is r rounded to a whole number by the mode given, and whether it fits an int64.
func (r Ratio) Int(m Mode) (n int64, ok bool) {
	v := r.v.round(exact{num: 1}, m)
	if v.less != 0 {
		return 0, false
	}
	return v.num, true
}

// round is the multiple of a positive step nearest to a. The quotient of a and
// the step is taken in one division of 128 bits by 64 where it fits.
func (a exact) round(step exact, m Mode) exact {
	if !a.isWide() && !step.isWide() {
		n := mul64(magnitude(a.num), step.den())
		d := mul64(a.den(), uint64(step.num))
		if d.hi == 0 && n.hi < d.lo {
			q, r := n.quoRem(d.lo)
			if r == 0 {
				return a
			}
			half := 1
			if r < d.lo-r {
				half = -1
			} else if r == d.lo-r {
				half = 0
			}
			if q < top-1 {
				if m.away(a.num < 0, q&1 == 1, half) {
					q++
				}
				k := int64(q)
				if a.num < 0 {
					k = -k
				}
				return step.mulInt(k)
			}
		}
	}
	return a.roundBig(step, m)
}

func (a exact) roundBig(step exact, m Mode) exact {
	s := step.rat()
	ratio := new(big.Rat).Quo(a.rat(), s)
	neg := ratio.Sign() < 0
	q, r := new(big.Int).QuoRem(new(big.Int).Abs(ratio.Num()), ratio.Denom(), new(big.Int))
	if r.Sign() == 0 {
		return a
	}
	half := r.Lsh(r, 1).Cmp(ratio.Denom())
	if m.away(neg, q.Bit(0) == 1, half) {
		q.Add(q, big.NewInt(1))
	}
	if neg {
		q.Neg(q)
	}
	return fromRat(s.Mul(s, new(big.Rat).SetInt(q)))
}

// A tape finds the marks of a divided span, each in one division of 128 bits by
// 64: the k-th place is k num / den steps. The zero tape finds none.
type tape struct {
	step     exact
	neg      bool   // the span is negative
	num, den uint64 // one gap in steps
	fine     uint64 // a remainder of 1 is 1/fine base units
}

// newTape is the zero tape where a term would leave 64 bits, or a part of a residue 63.
func newTape(span exact, gaps uint64, step exact) tape {
	if span.isWide() || step.isWide() || step.num <= 0 {
		return tape{}
	}
	num := mul64(magnitude(span.num), step.den())
	gap := mul64(span.den(), gaps)
	den, fine := mul64(gap.lo, uint64(step.num)), mul64(gap.lo, step.den())
	if num.hi|gap.hi|den.hi|fine.hi != 0 || (den.lo|fine.lo)>>63 != 0 {
		return tape{}
	}
	return tape{step, span.num < 0, num.lo, den.lo, fine.lo}
}

func (t *tape) at(k uint64, m Mode) (mark, residue Length, ok bool) {
	n := mul64(t.num, k)
	if n.hi >= t.den {
		return mark, residue, false
	}
	q, r := n.quoRem(t.den)
	if q >= top-1 {
		return mark, residue, false
	}
	over := t.neg // the residue is negative
	if r > 0 {
		half := 1
		if r < t.den-r {
			half = -1
		} else if r == t.den-r {
			half = 0
		}
		if m.away(t.neg, q&1 == 1, half) {
			q, r, over = q+1, t.den-r, !t.neg
		}
		fine := t.fine
		if g := gcd(r%fine, fine); g > 1 {
			r, fine = r/g, fine/g
		}
		residue.v = small(over, r, fine)
	}
	steps := int64(q)
	if t.neg {
		steps = -steps
	}
	return Length{t.step.mulInt(steps)}, residue, true
}
