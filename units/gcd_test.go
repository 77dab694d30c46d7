package units_test

import (
	"math/big"
	"testing"

	"example.com/clothyard/units"
)

// TestGcd goes through all small pairs, which are looked up, and large ones at random.
func TestGcd(t *testing.T) {
	check := func(a, b uint64) {
		t.Helper()
		want := new(big.Int).GCD(nil, nil, new(big.Int).SetUint64(a), new(big.Int).SetUint64(b))
		if got := units.Gcd(a, b); got != want.Uint64() {
			t.Fatalf("gcd(%d, %d) = %d, want %v", a, b, got, want)
		}
	}
	for a := range uint64(70) {
		for b := range uint64(70) {
			check(a, b)
		}
	}
	r := seeded(15)
	for range *oracleN * 10 {
		common := r.Uint64() >> r.IntN(64)
		a, b := r.Uint64()>>r.IntN(64), r.Uint64()>>r.IntN(64)
		check(a, b)
		check(a*common, b*common) // what the words hold of it
		check(a, 1<<63)
	}
}
