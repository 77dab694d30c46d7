package seam_test

import (
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units/ticket"
)

// lineOf is the line of a sheet so labelled.
func lineOf(t *testing.T, sh ticket.Sheet, label string) ticket.Line {
	t.Helper()
	if err := sh.Check(); err != nil {
		t.Error(err)
	}
	for _, l := range sh.Lines {
		if l.Label == label {
			return l
		}
	}
	t.Errorf("no line %q in %+v", label, sh.Lines)
	return ticket.Line{}
}

// What is less than nothing longer is shorter.
func TestShorterIsSaid(t *testing.T) {
	for _, s := range []seam.Seam{
		seam.Plain{First: in(13, 16)},
		seam.Plain{Allowance: seam.Allowance{Drafted: in(1, 1), DraftedUnder: in(1, 2), Cut: in(1, 1), CutUnder: in(1, 2)}, First: in(15, 16)},
	} {
		want := in(3, 8)
		p := planned(t, s)
		if got := lineOf(t, p.Sheet(), "an edge crossed square comes out shorter by").Result; got != ticket.Long(want) {
			t.Errorf("shorter by %v, want %v", got, want)
		}
	}
}
