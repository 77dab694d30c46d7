package seam_test

import (
	"encoding/binary"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
)

// reader takes lengths off the bytes of a fuzz input; at their end all are zero.
type reader struct{ b []byte }

func (r *reader) byte() byte {
	if len(r.b) == 0 {
		return 0
	}
	c := r.b[0]
	r.b = r.b[1:]
	return c
}

func (r *reader) length() units.Length {
	switch how := r.byte(); {
	case how < 100:
		return units.Length{}
	case how < 200:
		return units.Inch.Frac(int64(int8(r.byte())), 16)
	case how < 240:
		return units.Millimetre.Frac(int64(r.byte()), 1+int64(r.byte()))
	}
	var b [8]byte
	r.b = r.b[copy(b[:], r.b):]
	n := int64(binary.LittleEndian.Uint64(b[:]))
	return units.Metre.Of(n).MulInt(n)
}

func FuzzSpec(f *testing.F) {
	f.Add([]byte{2, 0, 150, 10, 0, 0, 0, 150, 3, 150, 4}) // French, 3/16 and 1/4 on 5/8
	f.Add([]byte{1, 1})                                   // plain in cloth that frays
	f.Add([]byte{3, 0, 210, 15, 0})                       // felled, metric
	f.Add([]byte{4, 0, 250, 1, 2, 3, 4, 5, 6, 7, 8})      // bound, huge
	f.Add([]byte{2, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 150, 1})
	for kind := range byte(20) {
		f.Add([]byte{kind})                               // by default, and two that are no kind
		f.Add([]byte{kind, 1, 150, 16, 0, 0, 0, 150, 10}) // in cloth that frays
	}
	f.Fuzz(func(t *testing.T, b []byte) {
		r := &reader{b}
		s := seam.Spec{Kind: seam.Kind(r.byte() % 20)}
		flags := r.byte()
		s.Fraying, s.Aside = flags&1 == 1, flags&2 == 2
		s.Finish, s.Layers = seam.Finish(flags>>2&7), int(int8(flags))>>5
		for _, l := range specLengths(&s) {
			*l.at = r.length()
		}
		if p, err := s.Plan(); err != nil {
			faultPaths(t, err)
		} else {
			holds(t, s, p)
		}
	})
}
