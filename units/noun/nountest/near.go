package nountest

import (
	"testing"

	"example.com/clothyard/units"
)

// NearTo fails unless n rounds to want on a ten-thousandth of an inch.
func NearTo(t *testing.T, what string, n units.Near, want string) {
	t.Helper()
	step := units.Inch.Frac(1, 10_000)
	got, _, err := n.Round(step, units.HalfAway)
	if err != nil {
		t.Fatal(err)
	}
	if w, _ := units.MustParse(want).Round(step, units.HalfAway); got != w {
		t.Errorf("%s: %v, want %s", what, n, want)
	}
}

// ExactTo fails unless n is want, exactly.
func ExactTo(t *testing.T, what string, n units.Near, want units.Length) {
	t.Helper()
	if got, ok := n.Exact(); !ok || got != want {
		t.Errorf("%s: %v, want %v", what, n, want)
	}
}
