package stitch_test

import (
	"testing"

	"example.com/clothyard/units/stitch"
)

// Every type is in the class of its first figure.
func TestClassOfType(t *testing.T) {
	for k := range stitch.Types() {
		if !k.Valid() || k.Class().String() != k.String()[:1]+"00" {
			t.Errorf("%v is in class %v", k, k.Class())
		}
	}
	for _, k := range []stitch.Type{stitch.NoType, 200} {
		if k.Class() != stitch.NoClass || k.Valid() {
			t.Errorf("%v is in class %v", k, k.Class())
		}
	}
}
