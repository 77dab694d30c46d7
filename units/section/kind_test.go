package section_test

import (
	"encoding"
	"errors"
	"fmt"
	"iter"
	"strings"
	"testing"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
)

type enum interface {
	~uint8
	fmt.Stringer
	encoding.TextMarshaler
}

// kinds tests one enumeration: its names, both ways, and what is none of them.
func kinds[K enum](t *testing.T, all iter.Seq[K], most int, unmarshal func(*K, []byte) error) {
	t.Helper()
	n, names := 0, map[string]bool{}
	for k := range all {
		n++
		text, err := k.MarshalText()
		if err != nil || string(text) != k.String() || names[k.String()] || len(text) == 0 {
			t.Errorf("%v is written %q, %v", k, text, err)
		}
		names[k.String()] = true
		var back K
		if err := unmarshal(&back, text); err != nil || back != k {
			t.Errorf("%q is read %v, %v", text, back, err)
		}
	}
	for range all {
		break // may stop early
	}
	if n != most {
		t.Errorf("%d values, want %d", n, most)
	}
	var zero K
	if text, err := zero.MarshalText(); len(text) != 0 || err != nil || zero.String() != "none" {
		t.Errorf("zero is %q, %q, %v", zero, text, err)
	}
	if err := unmarshal(&zero, nil); err != nil || zero != 0 {
		t.Errorf("empty text is %v, %v", zero, err)
	}
	for _, bad := range []string{"none", "no-such", strings.Repeat("x", 1000)} {
		var flt *fault.Fault
		if err := unmarshal(&zero, []byte(bad)); !errors.As(err, &flt) || !errors.Is(err, fault.Unknown) || flt.Path == "" || flt.Limit == "" {
			t.Errorf("%q: %v", bad, err)
		}
	}
	beyond := K(n + 1)
	if _, err := beyond.MarshalText(); !errors.Is(err, fault.Unknown) || !strings.HasSuffix(beyond.String(), fmt.Sprintf("(%d)", n+1)) {
		t.Errorf("%v: %v", beyond, err)
	}
}

func TestKinds(t *testing.T) {
	kinds(t, section.Fills, 4, (*section.Fill).UnmarshalText)
	kinds(t, section.Ends, 4, (*section.End).UnmarshalText)
	kinds(t, section.Faces, 2, (*section.Face).UnmarshalText)
	kinds(t, section.Sides, 2, (*section.Side).UnmarshalText)
}
