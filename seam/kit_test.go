package seam_test

import (
	"math"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
)

func in(num, den int64) units.Length { return units.Inch.Frac(num, den) }

func planned(t *testing.T, s interface{ Plan() (seam.Plan, error) }) seam.Plan {
	t.Helper()
	p, err := s.Plan()
	if err != nil {
		t.Fatalf("%+v: %v", s, err)
	}
	return p
}

// on is a seam on plies of another allowance.
func on(s seam.Seam, a seam.Allowance) seam.Any { return seam.Any{Seam: s}.With(a) }

// huge is 10 to the power of 19 n inches.
func huge(n int) units.Length {
	l := units.Inch.Of(1)
	for range n {
		l = l.MulInt(math.MaxInt64)
	}
	return l
}
