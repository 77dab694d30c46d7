package units

import (
	"math/big"
	"strings"
)

// A numeral is a number as it is written, before it is worked out: a whole number,
// perhaps with the places of a decimal, with num/den or with the part that a glyph
// stands for. The digits have no zeros before them, nor places any after; "" is 0.
// What is wrong with a number is seen in its digits, so that a long one is worked
// out once, if at all.
type numeral struct {
	whole, places string
	num, den      string // den is "" where there is no fraction
	part          exact
}

func unpadded(digits string) string { return strings.TrimLeft(digits, "0") }

func (n *numeral) isZero() bool {
	return n.whole == "" && n.places == "" && n.num == "" && n.part.isZero()
}

// wordDigits is the most digits that surely fit a word.
const wordDigits = 18

// small is the value of n, if its terms fit the machine's words.
func (n *numeral) small() (v exact, ok bool) {
	if len(n.whole)+len(n.places) > wordDigits || len(n.num) > wordDigits || len(n.den) > wordDigits {
		return exact{}, false
	}
	if n.places != "" {
		den := int64(1)
		for range n.places {
			den *= 10
		}
		return fraction(word(n.whole)*den+word(n.places), den), true
	}
	v = exact{num: word(n.whole)}
	if n.den != "" {
		v = v.add(fraction(word(n.num), word(n.den)))
	}
	return v.add(n.part), true
}

func word(digits string) (n int64) {
	for i := range len(digits) {
		n = 10*n + int64(digits[i]-'0')
	}
	return n
}

// large is the value of n, not reduced.
func (n *numeral) large() (num, den *big.Int) {
	if n.places != "" {
		return bigOf(n.whole + n.places), new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(len(n.places))), nil)
	}
	num, den = bigOf(n.whole), big.NewInt(1)
	if n.den != "" {
		den = bigOf(n.den)
		num.Add(num.Mul(num, den), bigOf(n.num))
	}
	if !n.part.isZero() {
		den.SetUint64(n.part.den())
		num.Add(num.Mul(num, den), big.NewInt(n.part.num))
	}
	return num, den
}

func bigOf(digits string) *big.Int {
	n := new(big.Int)
	if digits != "" {
		n.SetString(digits, 10)
	}
	return n
}

// A tally is a sum of numerals: v and, where there were large ones, num/den.
type tally struct {
	v        exact
	num, den *big.Int
}

// add adds n times size.
func (t *tally) add(n *numeral, size int64) {
	if v, ok := n.small(); ok {
		t.v = t.v.add(v.mul(exact{num: size}))
		return
	}
	num, den := n.large()
	num.Mul(num, big.NewInt(size))
	if t.num != nil {
		num.Mul(num, t.den)
		num.Add(num, t.num.Mul(t.num, den))
		den.Mul(den, t.den)
	}
	t.num, t.den = num, den
}

// total is the sum, worked out once.
func (t *tally) total(neg bool) exact {
	if t.num == nil {
		if neg {
			return t.v.neg()
		}
		return t.v
	}
	r := new(big.Rat).SetFrac(t.num, t.den)
	r.Add(r, t.v.rat())
	if neg {
		r.Neg(r)
	}
	return fromRat(r)
}

// quotient is n / by, which is not zero.
func quotient(neg bool, n, by *numeral) exact {
	v, ok := n.small()
	d, fits := by.small()
	if ok && fits {
		v = v.quo(d)
	} else {
		num, den := n.large()
		byNum, byDen := by.large()
		v = fromRat(new(big.Rat).SetFrac(num.Mul(num, byDen), den.Mul(den, byNum)))
	}
	if neg {
		v = v.neg()
	}
	return v
}
