package sqltext_test

import (
	"errors"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/sqltext"
)

// FuzzText: a text is refused with its place, or stored and read again as equal.
func FuzzText(f *testing.F) {
	for _, s := range []string{"1 5/8 in", "15 mm", "1/3 yd", "2 1/2", "3 %", "2:1", "6 sq in", "-0.1 cm", "", "1e9 in", "24 L", "0/2 yd", "0 0/4 in"} {
		f.Add(s, true)
		f.Add(s, false)
	}
	f.Fuzz(func(t *testing.T, s string, bytes bool) {
		var src any = s
		if bytes {
			src = []byte(s)
		}
		var l, l2 sqltext.NullLength
		var r, r2 sqltext.NullRatio
		var a, a2 sqltext.NullArea
		for _, c := range []struct {
			err   error
			again func() (any, error)
			same  func() bool
		}{
			{l.Scan(src), func() (any, error) { v, err := l.Value(); return v, errors.Join(err, l2.Scan(v)) }, func() bool { return l == l2 }},
			{r.Scan(src), func() (any, error) { v, err := r.Value(); return v, errors.Join(err, r2.Scan(v)) }, func() bool { return r == r2 }},
			{a.Scan(src), func() (any, error) { v, err := a.Value(); return v, errors.Join(err, a2.Scan(v)) }, func() bool { return a == a2 }},
		} {
			if c.err != nil {
				var pe *units.ParseError
				if !errors.As(c.err, &pe) || pe.Offset < 0 || pe.Offset > max(len(s), units.MaxText) {
					t.Fatalf("%q: %v", s, c.err)
				}
				continue
			}
			// The exact text of an odd fraction may be longer than what was read.
			if v, err := c.again(); err == nil && !c.same() {
				t.Fatalf("%q is stored as %v and not read back", s, v)
			} else if err != nil && len(s) < units.MaxText/8 {
				t.Fatalf("%q: %v", s, err)
			}
		}
	})
}
