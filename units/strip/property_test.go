package strip_test

import (
	"math/rand/v2"
	"reflect"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/strip"
)

// TestProperties builds strips out of random amounts and compares them with the
// same strips laid out piece by piece.
func TestProperties(t *testing.T) {
	r := rand.New(rand.NewPCG(12, 25))
	dens := []int64{1, 2, 3, 7, 8, 16, 25, 127}
	length := func(most int64) units.Length {
		return units.Inch.Frac(r.Int64N(most*8)+1, dens[r.IntN(len(dens))])
	}
	planned := 0
	for range 5000 {
		s := strip.Spec{Each: length(60), Allowance: length(1), Ring: r.IntN(2) == 0, Least: length(900)}
		if !s.Ring && r.IntN(2) == 0 {
			s.Ends = length(1)
		}
		p, err := s.Plan()
		if err != nil {
			continue
		}
		planned++
		n := p.Spec.Pieces
		if again, err := p.Spec.Plan(); err != nil || !reflect.DeepEqual(again, p) {
			t.Fatalf("%+v\nplanned again is %+v, %v", p, again, err)
		}
		// Lay the pieces out: each begins where the one before ended, less the join.
		at := p.Spec.Ends.Neg()
		for k := 1; k <= n; k++ {
			at = at.Add(s.Each)
			if k <= p.Joins {
				at = at.Sub(s.Allowance)
				if s.Ring && k == 1 {
					at = at.Sub(s.Allowance) // the first piece has a seam at its start too
				}
				if got := p.Join(k); got != at {
					t.Fatalf("%+v: join %d at %v, laid out %v", s, k, got, at)
				}
				if s.Ring && k == n {
					break
				}
				at = at.Sub(s.Allowance)
			}
		}
		end := at
		if !s.Ring {
			end = at.Sub(s.Ends)
		}
		if p.Sewn != end {
			t.Fatalf("%+v: %v long, laid out %v", s, p.Sewn, end)
		}
		if p.Sewn.Less(s.Least) || p.Spare != p.Sewn.Sub(s.Least) {
			t.Fatalf("%+v: %v with %v to spare", s, p.Sewn, p.Spare)
		}
		if n > 1 {
			fewer := s
			fewer.Pieces, fewer.Least = n-1, units.Length{}
			if q, err := fewer.Plan(); err == nil && !q.Sewn.Less(s.Least) {
				t.Fatalf("%+v: one piece less would do", s)
			}
		}
		back := strip.Spec{Pieces: n, Allowance: s.Allowance, Ends: s.Ends, Ring: s.Ring, Least: p.Sewn}
		if q, err := back.Plan(); err != nil || q.Spec.Each != s.Each {
			t.Fatalf("%+v: back to each %v, %v", s, q.Spec.Each, err)
		}
		if err := p.Working().Check(); err != nil {
			t.Fatal(err)
		}
	}
	if planned < 2000 {
		t.Errorf("only %d strips could be planned", planned)
	}
}
