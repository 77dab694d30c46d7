package hem_test

import (
	"errors"
	"math"
	"reflect"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// A reader makes fields of bytes: two for each, the first a choice of denominator
// or of something huge, the second the count.
type reader []byte

func (r *reader) next() (byte, int64) {
	if len(*r) < 2 {
		return 0, 0
	}
	a, b := (*r)[0], int64(int8((*r)[1]))
	*r = (*r)[2:]
	return a, b
}

func (r *reader) long() units.Length {
	choice, n := r.next()
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

func (r *reader) ratio() units.Ratio {
	den, num := r.next()
	return units.RatioOf(num, int64(den)+1)
}

func (r *reader) count() int {
	scale, n := r.next()
	if scale == 255 {
		return math.MaxInt
	}
	return int(n)
}

// specOf reads a spec from bytes.
func specOf(data []byte) hem.Spec {
	r := (*reader)(&data)
	kind, opening := r.next()
	s := hem.Spec{Kind: hem.Kind(kind % 16), Opening: hem.Opening(opening % 5)}
	if kind >= 128 {
		s.Opening = hem.NoOpening
	}
	s.Drafted, s.Cut, s.First, s.Depth, s.Take = r.long(), r.long(), r.long(), r.long(), r.long()
	s.Trim, s.Stitch, s.Sweep, s.Slit, s.SeamTake = r.long(), r.long(), r.long(), r.long(), r.long()
	s.Slope = r.ratio()
	s.Edges = r.count()
	s.Back, s.Seam, s.Favour, s.Spare, s.Radius = r.long(), r.long(), r.long(), r.long(), r.long()
	s.Circle, s.Hollow = r.ratio(), r.ratio()
	s.Doubled = r.count() < 0
	return s
}

// refused checks the faults of a spec that is not planned.
func refused(t *testing.T, err error) {
	t.Helper()
	var fs fault.Faults
	if !errors.As(err, &fs) || len(fs) == 0 {
		t.Fatalf("%T %v", err, err)
	}
	for _, one := range fs {
		if one.Path == "" || one.Limit == "" || one.Kind == "" {
			t.Errorf("%+v", one)
		}
	}
}

// written checks that a sheet works and is not empty in two notations.
func written(t *testing.T, sheet ticket.Sheet) {
	t.Helper()
	if err := sheet.Check(); err != nil {
		t.Error(err)
	}
	if sheet.Text() == "" || sheet.Text(units.Notation{Unit: units.Centimetre, Step: units.Millimetre.Frac(1, 10)}) == "" {
		t.Error("an empty sheet")
	}
}

func FuzzSpec(f *testing.F) {
	f.Add([]byte{})                                                                                                                         // nothing given
	f.Add([]byte{130, 0, 5, 20, 0, 0, 5, 6, 5, 6, 0, 0, 0, 0, 0, 0, 5, 100, 0, 0, 0, 0, 63, 5, 0, 4})                                       // double on a flare
	f.Add([]byte{129, 0, 0, 0, 0, 0, 0, 0, 5, 6})                                                                                           // single
	f.Add([]byte{131, 0, 0, 0, 0, 0, 5, 8, 0, 0, 0, 0, 5, 2})                                                                               // narrow, trimmed
	f.Add([]byte{4, 1, 0, 0, 0, 0, 5, 3, 5, 3})                                                                                             // slit, tucked
	f.Add([]byte{4, 3, 5, 10, 0, 0, 5, 3, 5, 3, 0, 0, 0, 0, 0, 0, 5, 100, 5, 48, 5, 7})                                                     // slit in a seam
	f.Add([]byte{133, 0, 0, 0, 0, 0, 0, 0, 5, 32})                                                                                          // blind
	f.Add([]byte{134, 0, 0, 0, 0, 0, 0, 0, 5, 1})                                                                                           // rolled
	f.Add([]byte{135, 0, 0, 0, 0, 0, 0, 0, 5, 32, 0, 0, 0, 0, 0, 0, 5, 99, 0, 0, 0, 0, 63, 5, 0, 4, 0, 0, 5, 4, 5, 1, 5, 2})                // faced
	f.Add([]byte{137, 0, 5, 10, 0, 0, 0, 0, 5, 8, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 5, 4})                              // bound
	f.Add([]byte{138, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 3, 1, 3, 1}) // shirt tail
	f.Add([]byte{139, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 5, 100})                 // circular
	f.Add([]byte{140, 0, 0, 0, 0, 0, 0, 0, 5, 24, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 15, 255, 0, 2})                                       // turn-up
	f.Add([]byte{130, 0, 3, 127, 3, 128, 3, 1, 3, 2, 0, 0, 4, 1, 4, 1, 3, 127, 0, 0, 0, 0, 255, 127, 255, 127})                             // huge and tiny
	f.Add([]byte{133, 4, 1, 255, 1, 255, 1, 255, 1, 255, 1, 255, 1, 255, 1, 255, 1, 255, 1, 255, 1, 255, 1, 9, 0, 9})                       // all wrong
	f.Fuzz(func(t *testing.T, data []byte) {
		s := specOf(data)
		p, err := s.Plan()
		solved := p.Spec
		if err != nil {
			if refused(t, err); !reflect.ValueOf(p).IsZero() {
				t.Fatal("something beside the faults")
			}
			return
		}
		bound, faced := s.Kind == hem.Bound, s.Kind == hem.FacedHem || s.Kind == hem.BiasFaced
		if p.Taken.Add(p.Drift) != solved.Cut || !bound && p.Taken.Sign() <= 0 || p.FinishedToStitch.Sign() <= 0 {
			t.Errorf("%+v", p)
		}
		if !bound && !faced && s.Kind != hem.TurnUp && p.RawToStitch.Add(p.FinishedToStitch) != p.Taken {
			t.Errorf("%+v", p)
		}
		if (bound || faced) != (p.StripWidth.Sign() > 0) || p.StripWidth.Less(p.StripToFold) {
			t.Errorf("the strip of %+v", p)
		}
		if lo, _ := p.Round.Bounds(); !s.Sweep.IsZero() && (p.Swept.Sign() <= 0 || s.Kind != hem.Slit && lo.Sign() <= 0) {
			t.Errorf("nothing left: %+v", p)
		}
		again, err := solved.Plan()
		if again.Assumed = p.Assumed; err != nil || !reflect.DeepEqual(again, p) {
			t.Errorf("planned again: %+v %v", again, err)
		}
		last := units.Length{}.Sub(units.Length{})
		for _, point := range p.Taper {
			if point.Down.Less(last) || point.Inset.Add(point.Out) != point.Down.Scale(p.Spec.Slope) {
				t.Errorf("%+v of %+v", point, p)
			}
			last = point.Down
		}
		written(t, p.Sheet())
	})
}

// FuzzTucks takes any bytes for tucks.
func FuzzTucks(f *testing.F) {
	f.Add([]byte{1, 0, 5, 8, 0, 3, 0, 0, 5, 16, 5, 4})
	f.Add([]byte{2, 0, 0, 0, 0, 7, 0, 0, 0, 0, 5, 4, 5, 100})
	f.Add([]byte{3, 0, 5, 8, 0, 4})
	f.Add([]byte{4, 0, 0, 0, 0, 0, 5, 24})
	f.Add([]byte{1, 0, 4, 1, 0, 0, 3, 1, 3, 1, 3, 1, 3, 1})
	f.Fuzz(func(t *testing.T, data []byte) {
		r := (*reader)(&data)
		kind, _ := r.next()
		s := hem.Tucks{Kind: hem.TuckKind(kind % 7), Depth: r.long(), Count: r.count(), Removed: r.long(), Pitch: r.long(), Edge: r.long(), Span: r.long()}
		p, err := s.Plan()
		if err != nil {
			if refused(t, err); !reflect.ValueOf(p).IsZero() {
				t.Error("something beside the faults")
			}
			return
		}
		again, err := p.Spec.Plan()
		if again.Assumed = p.Assumed; err != nil || !reflect.DeepEqual(again, p) {
			t.Errorf("planned again: %+v %v", again, err)
		}
		n, before := 0, units.Length{}
		for tuck := range p.Marks(units.Inch.Frac(1, 16), units.HalfAway) {
			n++
			// Finer than the tape's marks two tucks may be read to overlap; where they
			// exactly lie they do not.
			if tuck.Number != n || tuck.Near.Add(tuck.Off).Less(before) || tuck.Far.Sub(tuck.Near) != p.PerTuck {
				t.Errorf("%+v of %+v", tuck, p)
			}
			if before = tuck.Far.Add(tuck.Off); n == 40 {
				break
			}
		}
		if n != min(40, p.Spec.Count) || p.Cloth.Sub(p.Removed) != p.Spec.Span {
			t.Errorf("%d marks of %+v", n, p)
		}
		written(t, p.Sheet())
	})
}

// FuzzCasing takes any bytes for a casing.
func FuzzCasing(f *testing.F) {
	f.Add([]byte{1, 0, 0, 0, 5, 12})
	f.Add([]byte{2, 1, 0, 0, 5, 6, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 5, 100, 0, 0, 5, 96, 0, 60})
	f.Add([]byte{3, 0, 0, 0, 0, 0, 5, 48})
	f.Add([]byte{1, 2, 0, 0, 5, 12, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 5, 100})
	f.Fuzz(func(t *testing.T, data []byte) {
		r := (*reader)(&data)
		kind, how := r.next()
		s := hem.Casing{Kind: hem.CasingKind(kind % 6), Applied: how&2 != 0, Neck: how&1 != 0}
		s.Drafted, s.Width, s.Girth, s.Ease, s.Tunnel, s.Turn = r.long(), r.long(), r.long(), r.long(), r.long(), r.long()
		s.Heading, s.Lower, s.Around, s.End, s.Tail, s.Months = r.long(), r.long(), r.long(), r.long(), r.long(), r.count()
		s.Opening = r.long()
		p, err := s.Plan()
		if err != nil {
			if refused(t, err); !reflect.ValueOf(p).IsZero() {
				t.Error("something beside the faults")
			}
			return
		}
		again, err := p.Spec.Plan()
		if again.Assumed = p.Assumed; err != nil || !reflect.DeepEqual(again, p) {
			t.Errorf("planned again: %+v %v", again, err)
		}
		if p.Spec.Tunnel.Sign() <= 0 || p.Depth.Less(p.FinishedToLower) || s.Applied != (p.StripWidth.Sign() > 0) || s.Applied != p.Taken.IsZero() {
			t.Errorf("%+v", p)
		}
		written(t, p.Sheet())
	})
}

// FuzzMitre takes any bytes for a mitre.
func FuzzMitre(f *testing.F) {
	f.Add([]byte{5, 4, 5, 16})
	f.Add([]byte{0, 0, 5, 16, 5, 4, 5, 32, 1, 1})
	f.Add([]byte{0, 0, 1, 25, 0, 0, 1, 25, 4, 246, 1, 3})
	f.Add([]byte{4, 1, 4, 1, 4, 1, 4, 127, 255, 1})
	f.Fuzz(func(t *testing.T, data []byte) {
		r := (*reader)(&data)
		s := hem.Mitre{A: hem.HemSide{First: r.long(), Depth: r.long()}, B: hem.HemSide{First: r.long(), Depth: r.long()}, Lean: r.ratio(), Trim: r.long()}
		p, err := s.Plan()
		if err != nil {
			if refused(t, err); !reflect.ValueOf(p).IsZero() {
				t.Error("something beside the faults")
			}
			return
		}
		if !p.Meets() {
			t.Errorf("does not meet: %+v", p)
		}
		for name, n := range map[string]units.Near{"AlongA": p.AlongA, "AlongB": p.AlongB, "Seam": p.Seam, "Reach": p.Reach} {
			if _, hi := n.Bounds(); hi.Sign() <= 0 {
				t.Errorf("%s is %v of %+v", name, n, p)
			}
		}
		written(t, p.Sheet())
	})
}
