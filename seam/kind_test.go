package seam_test

import (
	"errors"
	"reflect"
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

func TestKindText(t *testing.T) {
	want := map[seam.Kind]string{
		seam.Plain: "plain", seam.French: "french", seam.FlatFelled: "flat-felled", seam.Bound: "bound",
		seam.TurnedStitched: "turned-and-stitched", seam.MockFrench: "mock-french", seam.MockFelled: "mock-felled", seam.UntrimmedFell: "untrimmed-fell",
		seam.Welt: "welt", seam.Lapped: "lapped", seam.LappedTurned: "lapped-turned", seam.LappedRaw: "lapped-raw", seam.Slot: "slot",
		seam.Hairline: "hairline", seam.HongKong: "hong-kong", seam.SelfBound: "self-bound", seam.Piped: "piped", seam.Graded: "graded",
	}
	for k := range seam.Kinds {
		text, err := k.MarshalText()
		if err != nil || string(text) != want[k] || k.String() != want[k] || !k.Valid() {
			t.Errorf("%d: %q, %v", k, text, err)
		}
		back := seam.NoKind
		if err := back.UnmarshalText(text); err != nil || back != k {
			t.Errorf("%s read as %v, %v", text, back, err)
		}
		delete(want, k)
	}
	if len(want) > 0 {
		t.Errorf("kinds not yielded: %v", want)
	}
	for range seam.Kinds {
		break // a loop may stop early
	}
	k := seam.Plain
	if err := k.UnmarshalText(nil); err != nil || k != seam.NoKind {
		t.Errorf("empty text: %v, %v", k, err)
	}
	if text, err := seam.NoKind.MarshalText(); len(text) > 0 || err != nil || seam.NoKind.String() != "none" {
		t.Errorf("no kind: %q, %v", text, err)
	}
	if _, err := seam.Kind(99).MarshalText(); !errors.Is(err, fault.Unknown) || seam.Kind(99).String() != "Kind(99)" {
		t.Errorf("a kind that is none: %v", err)
	}
	if err := k.UnmarshalText([]byte(strings.Repeat("French ", 1000))); !errors.Is(err, fault.Unknown) || len(err.Error()) > 600 {
		t.Errorf("a long name: %v", err)
	}
}

// Reads and the faults of Plan say the same, for every kind and field.
func TestKindReads(t *testing.T) {
	spec := reflect.TypeFor[seam.Spec]()
	for k := range seam.Kinds {
		for i := range spec.NumField() {
			name := key(spec.Field(i).Name)
			s := seam.Spec{Kind: k}
			switch f := reflect.ValueOf(&s).Elem().Field(i); f.Type() {
			case reflect.TypeFor[units.Length]():
				f.Set(reflect.ValueOf(in(5, 16)))
			case reflect.TypeFor[int]():
				f.SetInt(3)
			case reflect.TypeFor[seam.Finish]():
				f.Set(reflect.ValueOf(seam.Pinked))
			case reflect.TypeFor[bool]():
				f.SetBool(true)
			}
			_, err := s.Plan()
			if got := !errors.Is(err, fault.Unused); got != k.Reads(name) {
				t.Errorf("%v reads %s: %v, but Plan says %v", k, name, k.Reads(name), err)
			}
		}
		if k.Reads("Sleeve") {
			t.Errorf("%v reads a field that is none", k)
		}
	}
	if seam.NoKind.Reads("drafted") {
		t.Error("no kind reads a field")
	}
}

func TestFinishText(t *testing.T) {
	want := map[seam.Finish]string{seam.Overcast: "overcast", seam.Zigzagged: "zigzagged", seam.Pinked: "pinked"}
	for f := range seam.Finishes {
		text, err := f.MarshalText()
		if err != nil || string(text) != want[f] || f.String() != want[f] || !f.Valid() {
			t.Errorf("%d: %q, %v", f, text, err)
		}
		back := seam.NoFinish
		if err := back.UnmarshalText(text); err != nil || back != f {
			t.Errorf("%s read as %v, %v", text, back, err)
		}
		delete(want, f)
	}
	if len(want) > 0 {
		t.Errorf("finishes not yielded: %v", want)
	}
	for range seam.Finishes {
		break
	}
	f := seam.Pinked
	if err := f.UnmarshalText(nil); err != nil || f != seam.NoFinish {
		t.Errorf("empty text: %v, %v", f, err)
	}
	if text, err := seam.NoFinish.MarshalText(); len(text) > 0 || err != nil || seam.NoFinish.String() != "none" {
		t.Errorf("no finish: %q, %v", text, err)
	}
	if _, err := seam.Finish(9).MarshalText(); !errors.Is(err, fault.Unknown) || seam.Finish(9).String() != "Finish(9)" {
		t.Errorf("a finish that is none: %v", err)
	}
	if err := f.UnmarshalText([]byte(strings.Repeat("Pinked ", 1000))); !errors.Is(err, fault.Unknown) || len(err.Error()) > 400 {
		t.Errorf("a long name: %v", err)
	}
}

// key is the key of a field in JSON.
func key(name string) string { return strings.ToLower(name[:1]) + name[1:] }
