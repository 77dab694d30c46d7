package hem_test

import (
	"errors"
	"math"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// specOf reads a spec from bytes: two for each field, the first a choice of
// denominator or of something huge, the second the count.
func specOf(data []byte) hem.Spec {
	next := func() (byte, int64) {
		if len(data) < 2 {
			return 0, 0
		}
		a, b := data[0], int64(int8(data[1]))
		data = data[2:]
		return a, b
	}
	long := func() units.Length {
		choice, n := next()
		switch choice % 8 {
		case 0:
			return units.Length{}
		case 1:
			return units.Millimetre.Of(n)
		case 2:
			return units.Inch.Frac(n, 7)
		case 3:
			return units.Metre.Of(math.MaxInt64).MulInt(n).MulInt(math.MaxInt64)
		case 4:
			return units.Inch.Frac(n, math.MaxInt64)
		}
		return units.Inch.Frac(n, 16)
	}
	kind, opening := next()
	s := hem.Spec{Kind: hem.Kind(kind % 6), Opening: hem.Opening(opening % 5)}
	if kind >= 128 {
		s.Opening = hem.NoOpening
	}
	s.Drafted, s.Cut, s.First, s.Depth, s.Take = long(), long(), long(), long(), long()
	s.Trim, s.Stitch, s.Sweep, s.Slit, s.SeamTake = long(), long(), long(), long(), long()
	den, num := next()
	s.Slope = units.RatioOf(num, int64(den)+1)
	scale, edges := next()
	s.Edges = int(edges)
	if scale == 255 {
		s.Edges = math.MaxInt
	}
	return s
}

func FuzzSpec(f *testing.F) {
	f.Add([]byte{})                                                                                                   // nothing given
	f.Add([]byte{130, 0, 5, 20, 0, 0, 5, 6, 5, 6, 0, 0, 0, 0, 0, 0, 5, 100, 0, 0, 0, 0, 63, 5, 0, 4})                 // double on a flare
	f.Add([]byte{129, 0, 0, 0, 0, 0, 0, 0, 5, 6})                                                                     // single
	f.Add([]byte{131, 0, 0, 0, 0, 0, 5, 8, 0, 0, 0, 0, 5, 2})                                                         // narrow, trimmed
	f.Add([]byte{4, 1, 0, 0, 0, 0, 5, 3, 5, 3})                                                                       // slit, tucked
	f.Add([]byte{4, 3, 5, 10, 0, 0, 5, 3, 5, 3, 0, 0, 0, 0, 0, 0, 5, 100, 5, 48, 5, 7})                               // slit in a seam
	f.Add([]byte{130, 0, 3, 127, 3, 128, 3, 1, 3, 2, 0, 0, 4, 1, 4, 1, 3, 127, 0, 0, 0, 0, 255, 127, 255, 127})       // huge and tiny
	f.Add([]byte{133, 4, 1, 255, 1, 255, 1, 255, 1, 255, 1, 255, 1, 255, 1, 255, 1, 255, 1, 255, 1, 255, 1, 9, 0, 9}) // all wrong
	f.Fuzz(func(t *testing.T, data []byte) {
		s := specOf(data)
		p, err := s.Plan()
		solved, serr := s.Solve()
		if (err == nil) != (serr == nil) {
			t.Fatalf("Plan %v, Solve %v", err, serr)
		}
		if err != nil {
			var fs ticket.Faults
			if !errors.As(err, &fs) || len(fs) == 0 || p != (hem.Plan{}) || solved != s {
				t.Fatalf("%T %v", err, err)
			}
			for _, one := range fs {
				if one.Path == "" || one.Limit == "" || one.Err == nil {
					t.Errorf("%+v", one)
				}
			}
			return
		}
		if p.Spec != solved {
			t.Errorf("planned %+v, solved %+v", p.Spec, solved)
		}
		if p.Taken.Add(p.Drift) != solved.Cut || p.Taken.Sign() <= 0 || p.FinishedToStitch.Sign() <= 0 || p.RawToStitch.Add(p.FinishedToStitch) != p.Taken {
			t.Errorf("%+v", p)
		}
		if !s.Sweep.IsZero() && p.Swept.Sign() <= 0 {
			t.Errorf("nothing left: %+v", p)
		}
		again, err := solved.Plan()
		if again.Assumed = p.Assumed; err != nil || again != p {
			t.Errorf("planned again: %+v %v", again, err)
		}
		sheet := p.Sheet()
		if err := sheet.Check(); err != nil {
			t.Error(err)
		}
		if sheet.Text() == "" || sheet.Text(units.Notation{Unit: units.Centimetre, Places: 2}) == "" {
			t.Error("an empty sheet")
		}
	})
}
