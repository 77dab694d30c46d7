// Package whole has whole numbers of 128 bits, and points of whole numbers of steps: what
// the search for a lay and its proof both calculate with, and all that they share.
package whole

import (
	"math/big"
	"math/bits"
)

// A Wide is a signed whole number of 128 bits: enough for the product of two
// coordinates and a sum of a few of these, since every coordinate is below 2^61.
type Wide struct {
	Hi int64  // the upper half, with the sign
	Lo uint64 // the lower half
}

// Of is n, from 0 on and below 2^127.
func Of(n *big.Int) Wide {
	hi := new(big.Int).Rsh(n, 64)
	return Wide{hi.Int64(), new(big.Int).Sub(n, new(big.Int).Lsh(hi, 64)).Uint64()}
}

// Times is a times b.
func Times(a, b int64) Wide {
	hi, lo := bits.Mul64(uint64(a), uint64(b))
	h := int64(hi)
	if a < 0 {
		h -= b
	}
	if b < 0 {
		h -= a
	}
	return Wide{h, lo}
}

// Add is w + v.
func (w Wide) Add(v Wide) Wide {
	lo, carry := bits.Add64(w.Lo, v.Lo, 0)
	return Wide{w.Hi + v.Hi + int64(carry), lo}
}

// Sub is w - v.
func (w Wide) Sub(v Wide) Wide {
	lo, borrow := bits.Sub64(w.Lo, v.Lo, 0)
	return Wide{w.Hi - v.Hi - int64(borrow), lo}
}

// Sign is -1, 0 or 1, as w is negative, nothing or positive.
func (w Wide) Sign() int {
	switch {
	case w.Hi < 0:
		return -1
	case w.Hi == 0 && w.Lo == 0:
		return 0
	}
	return 1
}

// Over is w divided by d > 0, rounded down, and whether anything was left. The
// quotient must fit.
func (w Wide) Over(d int64) (n int64, rest bool) {
	below := w.Hi < 0
	if below {
		w = Wide{}.Sub(w)
	}
	hi := uint64(w.Hi)
	if hi >= uint64(d) {
		hi %= uint64(d)
	}
	q, r := bits.Div64(hi, w.Lo, uint64(d))
	switch {
	case !below:
		return int64(q), r > 0
	case r > 0:
		return -int64(q) - 1, true
	}
	return -int64(q), false
}

// A Point is a place, or so far across and along, in steps of a grid: X across the cloth and
// Y along it. Coordinates are below 2^61, so that differences are whole numbers
// of 64 bits and products of these of 128.
type Point struct {
	X, Y int64 // across and along
}

// Plus is v moved by u.
func (v Point) Plus(u Point) Point { return Point{v.X + u.X, v.Y + u.Y} }

// Minus is v as seen from u.
func (v Point) Minus(u Point) Point { return Point{v.X - u.X, v.Y - u.Y} }

// Modulo is a modulo r, from 0 on.
func Modulo(a, r int64) int64 {
	if a %= r; a < 0 {
		a += r
	}
	return a
}
