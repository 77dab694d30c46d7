package units

import (
	"math/big"
	"math/bits"
)

// uint128 is the magnitude of a middle value.
type uint128 struct{ hi, lo uint64 }

func mul64(a, b uint64) uint128 {
	hi, lo := bits.Mul64(a, b)
	return uint128{hi, lo}
}

func (a uint128) isZero() bool { return a.hi|a.lo == 0 }

func (a uint128) cmp(b uint128) int {
	switch {
	case a == b:
		return 0
	case a.hi < b.hi, a.hi == b.hi && a.lo < b.lo:
		return -1
	}
	return 1
}

func (a uint128) sub(b uint128) uint128 {
	lo, borrow := bits.Sub64(a.lo, b.lo, 0)
	hi, _ := bits.Sub64(a.hi, b.hi, borrow)
	return uint128{hi, lo}
}

// add is exact for magnitudes below 1<<127, which all products here are.
func (a uint128) add(b uint128) uint128 {
	lo, carry := bits.Add64(a.lo, b.lo, 0)
	hi, _ := bits.Add64(a.hi, b.hi, carry)
	return uint128{hi, lo}
}

// quoRem divides by d, which must be greater than a.hi.
func (a uint128) quoRem(d uint64) (q, r uint64) {
	if a.hi == 0 {
		return a.lo / d, a.lo % d
	}
	return bits.Div64(a.hi, a.lo, d)
}

func (a uint128) mod(m uint64) uint64 {
	_, r := bits.Div64(a.hi%m, a.lo, m)
	return r
}

func (a uint128) div(m uint64) uint128 {
	hi := a.hi / m
	lo, _ := bits.Div64(a.hi%m, a.lo, m)
	return uint128{hi, lo}
}

func (a uint128) big() *big.Int {
	n := new(big.Int).SetUint64(a.hi)
	n.Lsh(n, 64)
	return n.Or(n, new(big.Int).SetUint64(a.lo))
}

// shift is a shifted up, by less than 128.
func (a uint128) shift(by uint) uint128 {
	return uint128{a.hi<<by | a.lo<<(by-64) | a.lo>>(64-by), a.lo << by}
}

// addSigned adds two signed magnitudes.
func addSigned(negA bool, a uint128, negB bool, b uint128) (neg bool, sum uint128) {
	if negA == negB {
		return negA, a.add(b)
	}
	if a.cmp(b) >= 0 {
		return negA, a.sub(b)
	}
	return negB, b.sub(a)
}

// gcd is the greatest common divisor; gcd(0, n) is n. The denominators of
// sewing are small, and for those it is looked up.
func gcd(a, b uint64) uint64 {
	if a|b < 32 {
		return uint64(gcds[a<<5|b])
	}
	return gcdHalving(a, b)
}

// gcds holds gcd(a, b) at 32a + b.
var gcds = func() (t [32 * 32]uint8) {
	for i := range uint64(len(t)) {
		t[i] = uint8(gcdHalving(i>>5, i&31))
	}
	return t
}()

// gcdHalving has no branch that the machine would have to guess. None of its
// shifts reaches 64; to say so saves the machine a test of each.
func gcdHalving(a, b uint64) uint64 {
	if a == 0 || b == 0 {
		return a | b
	}
	shift := bits.TrailingZeros64(a|b) & 63
	a >>= bits.TrailingZeros64(a) & 63
	for b != 0 {
		b >>= bits.TrailingZeros64(b) & 63
		d, less := bits.Sub64(b, a, 0)
		a += d & -less         // the lesser of the two
		b = (d ^ -less) + less // their distance
	}
	return a << shift
}
