package units_test

import (
	"database/sql"
	"database/sql/driver"
	"errors"
	"testing"

	"example.com/clothyard/units"
)

// FuzzStored: a text is refused with its place, or stored and read again as equal.
func FuzzStored(f *testing.F) {
	for _, s := range []string{"1 5/8 in", "15 mm", "1/3 yd", "2 1/2", "3 %", "2:1", "6 sq in", "-0.1 cm", "", "1e9 in", "24 L", "0/2 yd", "0 0/4 in", "1 mm +- 0.5 mm", "2 +- 0.1", "3:12", "90 deg + slope 1/4"} {
		f.Add(s, true)
		f.Add(s, false)
	}
	f.Fuzz(func(t *testing.T, s string, bytes bool) {
		var src any = s
		if bytes {
			src = []byte(s)
		}
		fuzzStored[units.Length](t, s, src)
		fuzzStored[units.Ratio](t, s, src)
		fuzzStored[units.Area](t, s, src)
		fuzzStored[units.Near](t, s, src)
		fuzzStored[units.NearRatio](t, s, src)
		fuzzStored[units.Angle](t, s, src)
	})
}

func fuzzStored[T interface {
	comparable
	driver.Valuer
}, P stores[T]](t *testing.T, s string, src any) {
	var a, b sql.Null[T]
	if err := a.Scan(src); err != nil {
		var pe *units.ParseError
		if !errors.As(err, &pe) || pe.Offset < 0 || pe.Offset > max(len(s), units.MaxText) {
			t.Fatalf("%q: %v", s, err)
		}
		return
	}
	if n, ok := any(a.V).(units.Near); ok {
		a.V = any(n.Settled()).(T)
	}
	if n, ok := any(a.V).(units.NearRatio); ok {
		a.V = any(n.Settled()).(T)
	}
	// The exact text of an odd fraction may be longer than what was read.
	v, err := a.V.Value()
	if err == nil {
		if err := b.Scan(v); err != nil || a != b {
			t.Fatalf("%q is stored as %v and read as %v, %v", s, v, b, err)
		}
	} else if len(s) < units.MaxText/8 {
		t.Fatalf("%q: %v", s, err)
	}
}
