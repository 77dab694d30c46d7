package units

import (
	"math/big"
	"math/rand/v2"
	"testing"
)

// TestSeriesNest: with fewer places a series encloses what it comes to with many,
// and hardly more; for angles of any size, given exactly or between bounds.
func TestSeriesNest(t *testing.T) {
	r := rand.New(rand.NewPCG(34, 0))
	const more = 96
	for range 400 {
		places := uint(64 + r.IntN(400))
		size := uint(r.IntN(int(places) + 80))
		lo := someBits(r, size)
		hi := new(big.Int).Set(lo)
		width := int64(0)
		if r.IntN(2) == 0 {
			width = r.Int64N(1000)
			hi.Add(hi, big.NewInt(width))
		}
		x := fixed{lo, hi}
		// A point somewhere between the two, with many places.
		at := new(big.Int).Lsh(lo, more)
		if width > 0 {
			at.Add(at, new(big.Int).Abs(someBits(r, more)))
			if end := new(big.Int).Lsh(hi, more); at.Cmp(end) > 0 {
				at = end
			}
		}
		point := fixed{at, at}
		check := func(what string, rough, fine fixed) {
			t.Helper()
			low, high := new(big.Int).Lsh(rough.lo, more), new(big.Int).Lsh(rough.hi, more)
			if fine.lo.Cmp(low) < 0 || fine.hi.Cmp(high) > 0 {
				t.Fatalf("%s of %v to %d places is %v to %v, and with more %v to %v", what, x, places, low, high, fine.lo, fine.hi)
			}
			if w := new(big.Int).Sub(rough.hi, rough.lo); w.Cmp(big.NewInt(width+8)) > 0 {
				t.Fatalf("%s of %v to %d places is %v wide", what, x, places, w)
			}
		}
		for quarters := range 4 {
			rough, ok := sineFixed(x, quarters, places)
			fine, ok2 := sineFixed(point, quarters, places+more)
			if !ok || !ok2 {
				t.Fatal("too many turns")
			}
			check("the sine", rough, fine)
		}
		check("the arc tangent", arcTangentFixed(x, places), arcTangentFixed(point, places+more))
		width = 0
		check("pi", piFixed(places), piFixed(places+more))
	}
}

// someBits is a number of up to so many bits, of either sign.
func someBits(r *rand.Rand, bits uint) *big.Int {
	n := new(big.Int)
	for range bits/64 + 1 {
		n.Lsh(n, 64)
		n.Or(n, new(big.Int).SetUint64(r.Uint64()))
	}
	n.Rsh(n, 64*(bits/64+1)-bits)
	if r.IntN(2) == 0 {
		n.Neg(n)
	}
	return n
}
