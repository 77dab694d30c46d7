package strip_test

import (
	"errors"
	"reflect"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/strip"
)

func FuzzSpec(f *testing.F) {
	f.Add(3, int64(49), int64(2), int64(2), int64(0), int64(4), false)        // the frill of a collar
	f.Add(0, int64(180), int64(2), int64(0), int64(400), int64(4), true)      // pieces wanted for a ring
	f.Add(-1, int64(-1), int64(-1), int64(-1), int64(-1), int64(3), true)     // all wrong
	f.Add(2, int64(0), int64(1<<62), int64(7), int64(1<<62), int64(7), false) // beyond 64 bits
	f.Fuzz(func(t *testing.T, pieces int, each, allowance, ends, least, den int64, ring bool) {
		if den == 0 {
			den = 1
		}
		s := strip.Spec{
			Pieces: pieces, Each: units.Inch.Frac(each, den), Allowance: units.Inch.Frac(allowance, den),
			Ends: units.Inch.Frac(ends, den), Least: units.Inch.Frac(least, den), Ring: ring,
		}
		p, err := s.Plan()
		if err != nil {
			var faults fault.Faults
			if !errors.As(err, &faults) || len(faults) == 0 {
				t.Fatalf("no faults: %v", err)
			}
			for _, f := range faults {
				if f.Path == "" || f.Kind == "" {
					t.Fatalf("a fault without a field: %v", f)
				}
			}
			return
		}
		if p.Sewn.Sign() <= 0 || p.Spare.Sign() < 0 || p.Spec.Pieces < 1 || p.Spec.Pieces > strip.MaxPieces {
			t.Fatalf("%+v", p)
		}
		if last := p.Join(p.Joins); p.Joins > 0 && (last.Sign() <= 0 || p.Sewn.Less(last)) {
			t.Fatalf("join at %v of %v", last, p.Sewn)
		}
		if again, err := p.Spec.Plan(); err != nil || !reflect.DeepEqual(again, p) {
			t.Fatalf("solved twice: %+v, %v", again, err)
		}
		if err := p.Sheet().Check(); err != nil {
			t.Fatal(err)
		}
	})
}
