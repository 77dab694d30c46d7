package units

import (
	"math/big"
	"strconv"
)

// String is the exact text of l, with its unit; [Parse] reads it back. It is in
// inches where l is a whole number of 1/128 inch, else in millimetres where l
// ends within four decimals of one, else an inch fraction. It never rounds.
func (l Length) String() string {
	var buf [64]byte
	return string(l.append(buf[:0]))
}

// AppendText appends the exact text of l, as [Length.String] gives it.
func (l Length) AppendText(b []byte) ([]byte, error) { return checkSize(b, l.append(b)) }

// MarshalText is the exact text of l, as [Length.String] gives it. It fails
// only where the text would be longer than [MaxText].
func (l Length) MarshalText() ([]byte, error) { return l.AppendText(nil) }

// UnmarshalText reads a length as [Parse] does.
func (l *Length) UnmarshalText(text []byte) error {
	v, err := Parse(string(text))
	if err == nil {
		*l = v
	}
	return err
}

// checkSize refuses exact text that could not be read back.
func checkSize(before, after []byte) ([]byte, error) {
	if n := len(after) - len(before); n > MaxText {
		return before, tooLong(string(after[len(before):]))
	}
	return after, nil
}

func (l Length) append(b []byte) []byte {
	if l.v.isMultiple(per128th) {
		return append(l.v.quo(exact{num: perInch}).appendMixed(b), " in"...)
	}
	mm := l.v.quo(exact{num: perMillimetre})
	if ticks := mm.mul(exact{num: 10_000}); ticks.isMultiple(1) {
		return append(ticks.appendDecimal(b, 4, '.', true), " mm"...)
	}
	return append(l.v.quo(exact{num: perInch}).appendMixed(b), " in"...)
}

// String is the exact text of r, a mixed number such as 2 1/7; [ParseRatio]
// reads it back. It never rounds.
func (r Ratio) String() string {
	var buf [64]byte
	return string(r.v.appendMixed(buf[:0]))
}

// AppendText appends the exact text of r, as [Ratio.String] gives it.
func (r Ratio) AppendText(b []byte) ([]byte, error) { return checkSize(b, r.v.appendMixed(b)) }

// MarshalText is the exact text of r. It fails only where the text would be
// longer than [MaxText].
func (r Ratio) MarshalText() ([]byte, error) { return r.AppendText(nil) }

// UnmarshalText reads a ratio as [ParseRatio] does.
func (r *Ratio) UnmarshalText(text []byte) error {
	v, err := ParseRatio(string(text))
	if err == nil {
		*r = v
	}
	return err
}

// String is the exact text of a, a mixed number of square inches, or of square
// millimetres where that is the shorter fraction; [ParseArea] reads it back.
func (a Area) String() string {
	var buf [64]byte
	return string(a.append(buf[:0]))
}

// AppendText appends the exact text of a, as [Area.String] gives it.
func (a Area) AppendText(b []byte) ([]byte, error) { return checkSize(b, a.append(b)) }

// MarshalText is the exact text of a. It fails only where the text would be
// longer than [MaxText].
func (a Area) MarshalText() ([]byte, error) { return a.AppendText(nil) }

// UnmarshalText reads an area as [ParseArea] does.
func (a *Area) UnmarshalText(text []byte) error {
	v, err := ParseArea(string(text))
	if err == nil {
		*a = v
	}
	return err
}

func (a Area) append(b []byte) []byte {
	in, mm := a.In(Inch).v, a.In(Millimetre).v
	inches := in.less <= mm.less
	if in.isWide() || mm.isWide() {
		inches = in.rat().Denom().Cmp(mm.rat().Denom()) <= 0
	}
	if inches {
		return append(in.appendMixed(b), " sq in"...)
	}
	return append(mm.appendMixed(b), " sq mm"...)
}

// appendMixed writes 5, 5/8, 1 5/8 or -1 5/8.
func (a exact) appendMixed(b []byte) []byte {
	if a.isWide() {
		return appendMixedBig(b, a.rat())
	}
	if a.num < 0 {
		b = append(b, '-')
	}
	n, d := magnitude(a.num), a.den()
	if q := n / d; q > 0 || d == 1 {
		b = strconv.AppendUint(b, q, 10)
		if n %= d; n == 0 {
			return b
		}
		b = append(b, ' ')
	}
	b = strconv.AppendUint(b, n, 10)
	b = append(b, '/')
	return strconv.AppendUint(b, d, 10)
}

func appendMixedBig(b []byte, r *big.Rat) []byte {
	if r.Sign() < 0 {
		b = append(b, '-')
	}
	q, n := new(big.Int).QuoRem(new(big.Int).Abs(r.Num()), r.Denom(), new(big.Int))
	if q.Sign() > 0 || n.Sign() == 0 {
		b = q.Append(b, 10)
		if n.Sign() == 0 {
			return b
		}
		b = append(b, ' ')
	}
	b = n.Append(b, 10)
	b = append(b, '/')
	return r.Denom().Append(b, 10)
}

// appendDecimal writes a whole number of 10^-places, trimmed of closing zeros if asked.
func (a exact) appendDecimal(b []byte, places int, mark byte, trim bool) []byte {
	var buf [32]byte
	var digits []byte
	if a.isWide() {
		r := a.rat()
		digits = new(big.Int).Abs(r.Num()).Append(buf[:0], 10)
		if r.Sign() < 0 {
			b = append(b, '-')
		}
	} else {
		digits = strconv.AppendUint(buf[:0], magnitude(a.num), 10)
		if a.num < 0 {
			b = append(b, '-')
		}
	}
	cut := len(digits) - places
	if cut <= 0 {
		b = append(b, '0')
	} else {
		b = append(b, digits[:cut]...)
		digits = digits[cut:]
		cut = 0
	}
	if trim {
		for len(digits) > 0 && digits[len(digits)-1] == '0' {
			digits = digits[:len(digits)-1]
		}
		if len(digits) == 0 {
			return b
		}
	}
	if places == 0 {
		return b
	}
	b = append(b, mark)
	for range -cut {
		b = append(b, '0')
	}
	return append(b, digits...)
}
