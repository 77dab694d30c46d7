package stitch_test

import (
	"errors"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/stitch"
)

// complete asks of an error that it is faults, each with its field.
func complete(t *testing.T, err error) {
	t.Helper()
	var faults fault.Faults
	if !errors.As(err, &faults) || len(faults) == 0 {
		t.Fatalf("no faults: %v", err)
	}
	for _, f := range faults {
		if f.Path == "" || f.Kind == "" {
			t.Fatalf("a fault without a field: %v", f)
		}
	}
}

// FuzzSpec reads a Spec of each noun from bytes: eight to a number.
func FuzzSpec(f *testing.F) {
	f.Add([]byte("\x04\x00\x12\x00"), int64(8))                                                             // a lockstitched seam by ratio
	f.Add([]byte("\x04\x02\x12\x00\x01\x00\x01\x00"), int64(16))                                            // by geometry
	f.Add([]byte("\x06\x03\x2a\x00\x00\x00\x00\x03\x09\x08\x00\x0f"), int64(1))                             // by sample
	f.Add([]byte("\xff\xff\xff\xff\xff\xff\xff\xff\xff\xff\xff\xff\xff\xff\xff\xff\xff\xff\xff"), int64(7)) // all wrong
	f.Fuzz(func(t *testing.T, b []byte, den int64) {
		if den == 0 {
			den = 1
		}
		at := 0
		next := func() int64 {
			if at >= len(b) {
				return 0
			}
			at++
			n := int64(int8(b[at-1]))
			if n == -77 {
				return 1 << 62
			}
			return n
		}
		long := func() units.Length { return units.Inch.Frac(next(), den) }
		pure := func() units.Ratio { return units.RatioOf(next(), den) }
		s := stitch.Thread{
			Stitch: stitch.Type(next()), By: stitch.Method(next()), Seam: long(), Ratio: pure(), StitchLength: long(), PerInch: pure(),
			Thickness: long(), Width: long(), Sample: long(), SampleNeedle: long(), SampleUnder: long(), NeedleShare: pure(), Waste: pure(),
		}
		if p, err := s.Plan(); err != nil {
			complete(t, err)
		} else {
			if p.Need.Less(p.Total) || p.Total.Less(p.Spec.Seam) || p.Under.Sign() < 0 || p.Needle.Sign() < 0 {
				t.Fatalf("%+v", p)
			}
			if err := p.Sheet().Check(); err != nil {
				t.Fatal(err)
			}
		}
		g := stitch.Garment{Seams: []stitch.Run{{Name: string(b), Count: int(next()), Thread: s}, {Thread: s}}, Waste: pure(), Spool: long()}
		if p, err := g.Plan(); err != nil {
			complete(t, err)
		} else if err := p.Sheet().Check(); err != nil || p.Spare.Sign() < 0 {
			t.Fatal(err, p.Spare)
		}
		d := stitch.Density{StitchLength: long(), Space: long(), PerInch: pure(), Run: long(), Stitches: pure()}
		if p, err := d.Plan(); err != nil {
			complete(t, err)
		} else if err := p.Sheet().Check(); err != nil || p.Pitch.Sign() <= 0 || p.Spec.StitchLength.Sign() <= 0 {
			t.Fatalf("%+v, %v", p, err)
		}
		w := stitch.Setting{Job: stitch.Job(next()), Cloth: stitch.Cloth(next()), Needle: int(next())}
		if p, err := w.Plan(); err != nil {
			complete(t, err)
		} else if err := p.Sheet().Check(); err != nil || p.Short.Sign() <= 0 {
			t.Fatalf("%+v, %v", p, err)
		}
	})
}
