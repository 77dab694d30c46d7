package seam_test

import (
	"errors"
	"reflect"
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

func TestKindText(t *testing.T) {
	want := map[seam.Kind]string{seam.Plain: "plain", seam.French: "french", seam.FlatFelled: "flat-felled", seam.Bound: "bound"}
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
	if _, err := seam.Kind(9).MarshalText(); !errors.Is(err, ticket.ErrUnknown) || seam.Kind(9).String() != "Kind(9)" {
		t.Errorf("a kind that is none: %v", err)
	}
	if err := k.UnmarshalText([]byte(strings.Repeat("French ", 1000))); !errors.Is(err, ticket.ErrUnknown) || len(err.Error()) > 400 {
		t.Errorf("a long name: %v", err)
	}
}

// Reads and the faults of Plan say the same, for every kind and field.
func TestKindReads(t *testing.T) {
	spec := reflect.TypeFor[seam.Spec]()
	for k := range seam.Kinds {
		for i := range spec.NumField() {
			name := spec.Field(i).Name
			s := seam.Spec{Kind: k}
			if f := reflect.ValueOf(&s).Elem().Field(i); f.Type() == reflect.TypeFor[units.Length]() {
				f.Set(reflect.ValueOf(in(5, 16)))
				_, err := s.Plan()
				if got := !errors.Is(err, ticket.ErrUnused); got != k.Reads(name) {
					t.Errorf("%v reads %s: %v, but Plan says %v", k, name, k.Reads(name), err)
				}
			} else if !k.Reads(name) {
				t.Errorf("%v does not read %s", k, name)
			}
		}
		if k.Reads("Sleeve") {
			t.Errorf("%v reads a field that is none", k)
		}
	}
	if seam.NoKind.Reads("Drafted") {
		t.Error("no kind reads a field")
	}
}
