package hem_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units/fault"
)

func TestKind(t *testing.T) {
	want := []string{"single", "double", "narrow", "slit", "blind", "rolled", "faced", "bias-faced", "bound", "shirt-tail", "circular", "turn-up"}
	for k := range hem.Kinds {
		text, err := k.MarshalText()
		if err != nil || string(text) != want[0] || k.String() != want[0] || !k.Valid() {
			t.Errorf("%d is %q %v", k, text, err)
		}
		var back hem.Kind
		if err := back.UnmarshalText(text); err != nil || back != k {
			t.Errorf("%s is read as %s, %v", text, back, err)
		}
		want = want[1:]
	}
	if len(want) > 0 {
		t.Errorf("no %v", want)
	}
	for range hem.Kinds {
		break
	}
	k := hem.Slit
	if err := k.UnmarshalText(nil); err != nil || k != hem.NoKind || k.Valid() || k.String() != "none" {
		t.Errorf("empty text: %s %v", k, err)
	}
	if text, err := k.MarshalText(); len(text) > 0 || err != nil {
		t.Errorf("no kind is written %q %v", text, err)
	}
	if _, err := hem.Kind(13).MarshalText(); !errors.Is(err, fault.Unknown) || hem.Kind(13).Valid() || hem.Kind(13).String() != "Kind(13)" {
		t.Error(err)
	}
	for _, text := range []string{"none", "Single", " single", strings.Repeat("x", 1e6)} {
		k = hem.Double
		err := k.UnmarshalText([]byte(text))
		if !errors.Is(err, fault.Unknown) || k != hem.Double || len(err.Error()) > 300 {
			t.Errorf("%.20q: %s %v", text, k, err)
		}
	}
}

func TestOpening(t *testing.T) {
	var got []string
	for o := range hem.Openings {
		text, err := o.MarshalText()
		var back hem.Opening
		if err2 := back.UnmarshalText(text); err != nil || err2 != nil || back != o || !o.Valid() {
			t.Errorf("%s: %v %v", o, err, err2)
		}
		got = append(got, o.String())
	}
	if !slices.Equal(got, []string{"tucked", "faced", "in-seam"}) {
		t.Error(got)
	}
	for range hem.Openings {
		break
	}
	o := hem.Tucked
	if err := o.UnmarshalText([]byte("open")); !errors.Is(err, fault.Unknown) || o != hem.Tucked {
		t.Error(o, err)
	}
	if _, err := hem.Opening(4).MarshalText(); err == nil {
		t.Error("opening 4 is written")
	}
	if hem.NoOpening.String() != "none" || hem.NoOpening.Valid() {
		t.Error("NoOpening")
	}
}
