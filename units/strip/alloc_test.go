package strip_test

import (
	"testing"

	"example.com/clothyard/units/strip"
)

func TestAllocs(t *testing.T) {
	s := strip.Spec{Pieces: 3, Each: in("12 1/4"), Allowance: in("1/2"), Ends: in("1/2"), Least: in("30")}
	want := strip.Spec{Each: in("12 1/4"), Allowance: in("1/2"), Least: in("30")}
	p, err := s.Plan()
	if err != nil {
		t.Fatal(err)
	}
	for _, test := range []struct {
		name string
		f    func()
		most int
	}{
		{"Plan", func() { _, _ = s.Plan() }, 0},
		{"Plan that solves", func() { _, _ = want.Plan() }, 0},
		{"Join", func() { p.Join(2) }, 0},
		{"Working", func() { p.Working() }, 1},
		{"Sheet", func() { p.Sheet() }, 40},
	} {
		if got := int(testing.AllocsPerRun(100, test.f)); got > test.most {
			t.Errorf("%s: %d allocations, want at most %d", test.name, got, test.most)
		}
	}
}
