package ticket_test

import (
	"errors"
	"strings"
	"testing"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

func TestEnumerationNames(t *testing.T) {
	type sort uint8
	names := []string{"none", "plain", "flat-felled"}
	for k, want := range []string{"none", "plain", "flat-felled", "Sort(3)"} {
		if got := ticket.NameOf(sort(k), names, "Sort"); got != want {
			t.Errorf("%d is %q, want %q", k, got, want)
		}
	}
	for k, want := range []string{"", "plain", "flat-felled"} {
		text, err := ticket.NameText(sort(k), names, "Sort")
		if string(text) != want || err != nil {
			t.Errorf("%d as text is %q, %v", k, text, err)
		}
		back := sort(9)
		if err := ticket.ReadName(&back, text, names, "Sort"); back != sort(k) || err != nil {
			t.Errorf("%q is read as %d, %v", text, back, err)
		}
	}
	if _, err := ticket.NameText(sort(3), names, "Sort"); !errors.Is(err, fault.Unknown) {
		t.Errorf("%v", err)
	}
	for _, text := range []string{"none", "Plain", "felled", strings.Repeat("x", 1000)} {
		k := sort(2)
		err := ticket.ReadName(&k, []byte(text), names, "Sort")
		var f *fault.Fault
		if !errors.As(err, &f) || f.Path != "Sort" || f.Limit != "one of plain, flat-felled" || len(f.Got) > 50 || k != 2 {
			t.Errorf("%.20q: %v, %d", text, err, k)
		}
	}
}
