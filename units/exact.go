package units

import (
	"math/big"
	"math/bits"
	"unique"
)

// exact is the one number under Length, Ratio and Area: a rational in lowest
// terms with a positive denominator. It is 24 bytes on a 64-bit machine:
//
//	num   the numerator, or the whole number
//	less  the denominator less one, so that the zero value is 0/1; -1 marks wide
//	wide  the interned key of a value whose numerator or denominator has left 64 bits
//
// A value has exactly one form: wide is used only where the small form cannot
// hold it, so that == compares numbers. Whole values add without a division;
// fractions work in 128 bits; the wide form goes through math/big.
type exact struct {
	num  int64
	less int64
	wide unique.Handle[string]
}

func (a exact) isWide() bool { return a.less < 0 }

func (a exact) isZero() bool { return a == exact{} }

func (a exact) den() uint64 { return uint64(a.less) + 1 }

// magnitude is |n| without the overflow of the most negative integer.
func magnitude(n int64) uint64 {
	if n < 0 {
		return -uint64(n)
	}
	return uint64(n)
}

// small builds a value from a sign, a magnitude and a denominator that have no
// common factor. Both must fit: see make128 for those that may not.
func small(neg bool, num, den uint64) exact {
	n := int64(num)
	if neg {
		n = -n
	}
	return exact{num: n, less: int64(den - 1)}
}

const top = 1 << 63

func fits(neg bool, num, den uint64) bool {
	return den <= top && (num < top || neg && num == top)
}

// make128 builds a value from magnitudes in lowest terms.
func make128(neg bool, num, den uint128) exact {
	if num.hi == 0 && den.hi == 0 && fits(neg, num.lo, den.lo) {
		return small(neg, num.lo, den.lo)
	}
	n, d := num.big(), den.big()
	if neg {
		n.Neg(n)
	}
	return fromRat(new(big.Rat).SetFrac(n, d))
}

// fraction is num/den reduced; it panics if den is zero.
func fraction(num, den int64) exact {
	if den == 0 {
		panic("units: division by zero")
	}
	n, d := magnitude(num), magnitude(den)
	g := gcd(n%d, d)
	n, d = n/g, d/g
	return make128((num < 0) != (den < 0) && num != 0, uint128{lo: n}, uint128{lo: d})
}

func (a exact) add(b exact) exact {
	if a.less|b.less == 0 {
		if s := a.num + b.num; (a.num^s)&(b.num^s) >= 0 {
			return exact{num: s}
		}
	}
	return addSlow(a, b)
}

func (a exact) sub(b exact) exact {
	if a.less|b.less == 0 {
		if s := a.num - b.num; (a.num^b.num)&(a.num^s) >= 0 {
			return exact{num: s}
		}
	}
	return subSlow(a, b)
}

// subSlow stands apart so that the quick way of sub needs no room for it.
func subSlow(a, b exact) exact { return addSlow(a, b.neg()) }

// addSlow follows the two-gcd scheme: with g = gcd(da, db), the common factor
// of the sum's numerator and denominator divides g.
func addSlow(a, b exact) exact {
	if a.isWide() || b.isWide() {
		return fromRat(new(big.Rat).Add(a.rat(), b.rat()))
	}
	da, db := a.den(), b.den()
	g, ra, rb := uint64(1), da, db
	if da == db {
		g, ra, rb = da, 1, 1
	} else if da > 1 && db > 1 {
		if g = gcd(da, db); g > 1 {
			ra, rb = da/g, db/g
		}
	}
	if (magnitude(a.num)|magnitude(b.num)|da|db)>>31 == 0 {
		return addNarrow(a.num*int64(rb)+b.num*int64(ra), ra, db, g)
	}
	neg, t := addSigned(
		a.num < 0, mul64(magnitude(a.num), rb),
		b.num < 0, mul64(magnitude(b.num), ra))
	if t.isZero() {
		return exact{}
	}
	common := uint64(1)
	if g > 1 {
		common = gcd(t.mod(g), g)
		t = t.div(common)
	}
	return make128(neg, t, mul64(ra, db/common))
}

// addNarrow is the end of addSlow where no term leaves 63 bits: t/(ra db), in
// which only g and t can have a factor in common.
func addNarrow(t int64, ra, db, g uint64) exact {
	m := magnitude(t)
	if g > 1 {
		if common := gcd(m%g, g); common > 1 {
			m, db = m/common, db/common
		}
	}
	return small(t < 0, m, ra*db)
}

func (a exact) neg() exact {
	if a.less >= 0 && a.num != -top {
		return exact{num: -a.num, less: a.less}
	}
	return fromRat(new(big.Rat).Neg(a.rat()))
}

func (a exact) sign() int {
	switch {
	case a.isWide():
		return a.rat().Sign()
	case a.num < 0:
		return -1
	case a.num > 0:
		return 1
	}
	return 0
}

func (a exact) abs() exact {
	if a.sign() < 0 {
		return a.neg()
	}
	return a
}

func (a exact) cmp(b exact) int {
	if a.less|b.less == 0 {
		switch {
		case a.num < b.num:
			return -1
		case a.num > b.num:
			return 1
		}
		return 0
	}
	return cmpSlow(a, b)
}

func cmpSlow(a, b exact) int {
	if a == b {
		return 0
	}
	if a.isWide() || b.isWide() {
		return a.rat().Cmp(b.rat())
	}
	if sa, sb := a.sign(), b.sign(); sa != sb {
		if sa < sb {
			return -1
		}
		return 1
	}
	c := mul64(magnitude(a.num), b.den()).cmp(mul64(magnitude(b.num), a.den()))
	if a.num < 0 {
		return -c
	}
	return c
}

// mul cancels crosswise first, so that the products are in lowest terms.
func (a exact) mul(b exact) exact {
	if a.isWide() || b.isWide() {
		return fromRat(new(big.Rat).Mul(a.rat(), b.rat()))
	}
	return product((a.num < 0) != (b.num < 0), magnitude(a.num), a.den(), magnitude(b.num), b.den())
}

// quo panics if b is zero.
func (a exact) quo(b exact) exact {
	if b.isZero() {
		panic("units: division by zero")
	}
	if a.isWide() || b.isWide() {
		return fromRat(new(big.Rat).Quo(a.rat(), b.rat()))
	}
	return product((a.num < 0) != (b.num < 0), magnitude(a.num), a.den(), b.den(), magnitude(b.num))
}

func product(neg bool, na, da, nb, db uint64) exact {
	if na == 0 || nb == 0 {
		return exact{}
	}
	if db > 1 && na > 1 {
		g := gcd(na%db, db)
		na, db = na/g, db/g
	}
	if da > 1 && nb > 1 {
		g := gcd(nb%da, da)
		nb, da = nb/g, da/g
	}
	return make128(neg, mul64(na, nb), mul64(da, db))
}

func (a exact) mulInt(n int64) exact {
	if a.less == 0 && int64(int32(a.num)) == a.num && int64(int32(n)) == n {
		return exact{num: a.num * n}
	}
	return a.mulWord(n)
}

func (a exact) mulWord(n int64) exact {
	if a.less == 0 {
		hi, lo := bits.Mul64(uint64(a.num), uint64(n))
		// The signed high word: correct the unsigned product for each negative operand.
		h := int64(hi)
		if a.num < 0 {
			h -= n
		}
		if n < 0 {
			h -= a.num
		}
		if h == int64(lo)>>63 {
			return exact{num: int64(lo)}
		}
	}
	return a.mul(exact{num: n})
}

// divInt panics if n is zero.
func (a exact) divInt(n int64) exact {
	if a.less != 0 || n <= 0 {
		return a.quo(exact{num: n})
	}
	m, d := magnitude(a.num), uint64(n)
	q, r := m/d, m%d
	if r == 0 {
		return small(a.num < 0, q, 1)
	}
	if g := gcd(r, d); g > 1 {
		m, d = m/g, d/g
	}
	return small(a.num < 0, m, d)
}

// isMultiple reports whether a is a whole multiple of the positive whole number n.
func (a exact) isMultiple(n int64) bool {
	switch {
	case a.less == 0:
		return a.num%n == 0
	case a.less > 0:
		return false
	}
	r := a.rat()
	return r.IsInt() && new(big.Int).Rem(r.Num(), big.NewInt(n)).Sign() == 0
}

// rat is a as a big.Rat of the caller's own.
func (a exact) rat() *big.Rat {
	if a.isWide() {
		return decodeWide(a.wide.Value())
	}
	r := new(big.Rat).SetInt64(a.num)
	if a.less > 0 {
		r.SetFrac(r.Num(), new(big.Int).SetUint64(a.den()))
	}
	return r
}

// fromRat normalises: the wide form is used only where the small one cannot hold r.
func fromRat(r *big.Rat) exact {
	n, d := r.Num(), r.Denom()
	if d.IsUint64() && n.CmpAbs(maxMagnitude()) <= 0 {
		neg := n.Sign() < 0
		num := new(big.Int).Abs(n).Uint64()
		if fits(neg, num, d.Uint64()) {
			return small(neg, num, d.Uint64())
		}
	}
	return exact{less: -1, wide: unique.Make(encodeWide(r))}
}

func maxMagnitude() *big.Int { return new(big.Int).SetUint64(1<<64 - 1) }

// encodeWide writes sign, length of the numerator's bytes, numerator, denominator.
func encodeWide(r *big.Rat) string {
	n := r.Num().Bytes()
	key := make([]byte, 0, 9+len(n)+(r.Denom().BitLen()+7)/8)
	sign := byte(0)
	if r.Sign() < 0 {
		sign = 1
	}
	key = append(key, sign)
	for shift := 56; shift >= 0; shift -= 8 {
		key = append(key, byte(uint64(len(n))>>shift))
	}
	key = append(key, n...)
	return string(append(key, r.Denom().Bytes()...))
}

func decodeWide(key string) *big.Rat {
	size := 0
	for _, b := range []byte(key[1:9]) {
		size = size<<8 | int(b)
	}
	body := []byte(key[9:])
	num := new(big.Int).SetBytes(body[:size])
	if key[0] == 1 {
		num.Neg(num)
	}
	return new(big.Rat).SetFrac(num, new(big.Int).SetBytes(body[size:]))
}
