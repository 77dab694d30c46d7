package seam_test

import (
	"testing"

	"example.com/clothyard/seam"
)

// A self-bound seam is never refused for a trim that was not given: what was given
// leaves no room for the least of the under ply, and is named.
func TestSelfBoundTrim(t *testing.T) {
	for _, c := range []struct {
		spec  seam.SelfBound
		fault string // or none, and this is left
		trim  int64  // in 64ths
	}{
		{seam.SelfBound{First: in(1, 2)}, "", 8},
		{seam.SelfBound{First: in(3, 8)}, "", 6},
		{seam.SelfBound{First: in(7, 16), Allowance: seam.Allowance{Fraying: true}}, "", 8},
		{seam.SelfBound{First: in(3, 8), Allowance: seam.Allowance{Fraying: true}}, "first 3/8 in: raw edge would show, want more than 3/8 in (three times 1/8 in, the least of the under ply)", 0},
		{seam.SelfBound{First: in(1, 16)}, "first 1/16 in: raw edge would show, want more than 3/16 in (three times 1/16 in, the least of the under ply)", 0},
		{seam.SelfBound{First: in(5, 8), Width: in(11, 64), Allowance: seam.Allowance{Fraying: true}}, "width 11/64 in: raw edge would show, want at least 3/16 in (a quarter of first and of 1/8 in, the least of the under ply)", 0},
		{seam.SelfBound{First: in(5, 16), Width: in(1, 8), Allowance: seam.Allowance{Fraying: true}}, "width 1/8 in: raw edge would show, want more than 1/8 in (1/8 in, the least of the under ply)", 0},
		{seam.SelfBound{First: in(5, 8), Turned: in(19, 64), Allowance: seam.Allowance{Fraying: true}}, "turned 19/64 in: raw edge would show, want at most 1/4 in (half of first less 1/8 in, the least of the under ply)", 0},
		{seam.SelfBound{First: in(5, 8), Turned: in(1, 4), Allowance: seam.Allowance{Fraying: true}}, "", 8},
		{seam.SelfBound{First: in(5, 8), Trim: in(5, 64), Allowance: seam.Allowance{Fraying: true}}, "trim 5/64 in: out of range, want at least 3 mm (cloth that frays)", 0},
	} {
		c.spec.Drafted = in(5, 8)
		p, err := c.spec.Plan()
		switch {
		case err != nil && err.Error() != c.fault, err == nil && c.fault != "":
			t.Errorf("%+v:\n%v, want\n%s", c.spec, err, c.fault)
		case err == nil && p.Under.Left != in(c.trim, 64):
			t.Errorf("%+v: %v is left", c.spec, p.Under.Left)
		}
	}
}
