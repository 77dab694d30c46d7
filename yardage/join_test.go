package yardage_test

import (
	"slices"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage"
)

// A join whose allowance is not given takes the one of the table, and the plan says
// so: 1 in a seam of a curtain of several widths, by the page on estimating curtains.
func TestPanelsAssumeTheJoin(t *testing.T) {
	p, err := yardage.Panels{Cover: in("70 in"), Fullness: units.RatioOf(2, 1), Width: in("54 in"), Drop: in("80 in")}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	if p.Spec.Widths != 3 || p.Spec.Seam != units.Give(in("1/2 in")) || p.Flat != in("160 in") || !slices.Equal(p.Assumed, []string{"tape", "seam"}) {
		t.Errorf("%d widths, a seam of %v, %v flat, assumed %q", p.Spec.Widths, p.Spec.Seam, p.Flat, p.Assumed)
	}
	text := p.Sheet().Text()
	for _, want := range []string{"1/2 in from the edge of each width", "Assumed: tape, seam", "Estimating curtain yardage"} {
		if !strings.Contains(text, want) {
			t.Errorf("the sheet does not say %q\n%s", want, text)
		}
	}

	// The joins decide: two widths of 54 in only meet at 108 in, and sewn they make 107 in.
	edge := yardage.Panels{Cover: in("108 in"), Fullness: units.RatioOf(1, 1), Width: in("54 in"), Drop: in("80 in")}
	if p, err := edge.Plan(); err != nil || p.Spec.Widths != 3 {
		t.Errorf("%d widths, %v: two do not cover once they are sewn", p.Spec.Widths, err)
	}
	edge.Seam = units.Give(units.Length{})
	p, err = edge.Plan()
	if err != nil || p.Spec.Widths != 2 || p.Flat != in("108 in") || !slices.Equal(p.Assumed, []string{"tape"}) || p.Spec.Seam.IsZero() {
		t.Errorf("%+v, %v: butted widths lose nothing", p, err)
	}
	if text := p.Sheet().Text(); strings.Contains(text, " 0 in from") || p.Sheet().Check() != nil {
		t.Errorf("a butted join has no allowance to take\n%s", text)
	}
	// One width has no join, and nothing is assumed for it.
	p, err = yardage.Panels{Widths: 1, Width: in("54 in"), Drop: in("80 in")}.Plan()
	if err != nil || !slices.Equal(p.Assumed, []string{"tape"}) || !p.Spec.Seam.IsZero() {
		t.Errorf("%+v, %v", p, err)
	}
}

// A width that the joins take is refused with the seam that was assumed.
func TestPanelsFaultTellsTheSeamAssumed(t *testing.T) {
	s := yardage.Panels{Widths: 3, Width: in("1 in"), Drop: in("80 in")}
	for _, c := range []struct {
		seam units.Given[units.Length]
		want string
	}{
		{units.Given[units.Length]{}, "width 1 in: out of range, want more than 1 in (what the joins and the sides take of one width, a seam of 1/2 in assumed)"},
		{units.Give(in("1/2 in")), "width 1 in: out of range, want more than 1 in (what the joins and the sides take of one width)"},
	} {
		s.Seam = c.seam
		if _, err := s.Plan(); err == nil || err.Error() != c.want {
			t.Errorf("%v\nwant %s", err, c.want)
		}
	}
}
