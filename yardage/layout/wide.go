package layout

import (
	"math/big"
	"math/bits"
)

// A wide is a signed whole number of 128 bits: enough for the product of two
// coordinates and a sum of a few of these, since every coordinate is below 2^61.
type wide struct {
	hi int64
	lo uint64
}

// wideOf is n, from 0 on and below 2^127.
func wideOf(n *big.Int) wide {
	hi := new(big.Int).Rsh(n, 64)
	return wide{hi.Int64(), new(big.Int).Sub(n, new(big.Int).Lsh(hi, 64)).Uint64()}
}

// times is a times b.
func times(a, b int64) wide {
	hi, lo := bits.Mul64(uint64(a), uint64(b))
	h := int64(hi)
	if a < 0 {
		h -= b
	}
	if b < 0 {
		h -= a
	}
	return wide{h, lo}
}

func (w wide) add(v wide) wide {
	lo, carry := bits.Add64(w.lo, v.lo, 0)
	return wide{w.hi + v.hi + int64(carry), lo}
}

func (w wide) sub(v wide) wide {
	lo, borrow := bits.Sub64(w.lo, v.lo, 0)
	return wide{w.hi - v.hi - int64(borrow), lo}
}

func (w wide) sign() int {
	switch {
	case w.hi < 0:
		return -1
	case w.hi == 0 && w.lo == 0:
		return 0
	}
	return 1
}

// over is w divided by d > 0, rounded down, and whether anything was left. The
// quotient must fit.
func (w wide) over(d int64) (n int64, rest bool) {
	below := w.hi < 0
	if below {
		w = wide{}.sub(w)
	}
	hi := uint64(w.hi)
	if hi >= uint64(d) {
		hi %= uint64(d)
	}
	q, r := bits.Div64(hi, w.lo, uint64(d))
	switch {
	case !below:
		return int64(q), r > 0
	case r > 0:
		return -int64(q) - 1, true
	}
	return -int64(q), false
}
