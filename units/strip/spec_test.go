package strip_test

import (
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/strip"
)

func TestJoins(t *testing.T) {
	open := strip.Spec{Pieces: 3, Each: in("12 1/4"), Allowance: in("1/2"), Ends: in("1/2")}
	ring := strip.Spec{Pieces: 3, Each: in("12 1/4"), Allowance: in("1/2"), Ring: true}
	for _, test := range []struct {
		why  string
		spec strip.Spec
		k    int
		want units.Length
	}{
		{"the end takes 1/2, the join 1/2 of the first piece", open, 1, in("11 1/4")},
		{"the second piece is 11 1/4 between seams", open, 2, in("22 1/2")},
		{"two joins only", open, 3, units.Length{}},
		{"joins count from 1", open, 0, units.Length{}},
		{"no join before the first", open, -1, units.Length{}},
		{"a ring starts at a seam", ring, 1, in("11 1/4")},
		{"and its last join closes it", ring, 3, in("33 3/4")},
		{"one piece has no join", strip.Spec{Pieces: 1, Each: in("9")}, 1, units.Length{}},
	} {
		p, err := test.spec.Plan()
		if err != nil {
			t.Fatal(err)
		}
		if got := p.Join(test.k); got != test.want {
			t.Errorf("%s: join %d at %v, want %v", test.why, test.k, got, test.want)
		}
	}
}

func TestSolve(t *testing.T) {
	for _, test := range []struct {
		why   string
		spec  strip.Spec
		n     int
		each  units.Length
		spare units.Length
	}{
		{"pieces from each", strip.Spec{Each: in("45"), Allowance: in("1/2"), Least: in("100")}, 3, in("45"), in("33")},
		{"exactly enough is enough", strip.Spec{Each: in("45"), Allowance: in("1/2"), Least: in("89")}, 2, in("45"), in("0")},
		{"one does, though a join would take all of it", strip.Spec{Each: in("1"), Allowance: in("1/2"), Least: in("3/4")}, 1, in("1"), in("1/4")},
		{"a ring of one piece", strip.Spec{Each: in("45"), Allowance: in("1/2"), Least: in("44"), Ring: true}, 1, in("45"), in("0")},
		{"a ring has one join more", strip.Spec{Each: in("45"), Allowance: in("1/2"), Least: in("89"), Ring: true}, 3, in("45"), in("43")},
		{"each from pieces", strip.Spec{Pieces: 3, Allowance: in("1/2"), Ends: in("1/2"), Least: in("33 3/4")}, 3, in("12 1/4"), in("0")},
		{"each in thirds", strip.Spec{Pieces: 3, Least: in("10")}, 3, in("3 1/3"), in("0")},
		{"one piece and its ends", strip.Spec{Pieces: 1, Allowance: in("5"), Ends: in("1/2"), Least: in("3")}, 1, in("4"), in("0")},
		{"all three agree", strip.Spec{Pieces: 3, Each: in("12 1/4"), Allowance: in("1/2"), Least: in("30")}, 3, in("12 1/4"), in("4 3/4")},
		{"nothing wanted", strip.Spec{Pieces: 2, Each: in("4")}, 2, in("4"), in("0")},
	} {
		gotPlan, err := test.spec.Plan()
		got := gotPlan.Spec
		if err != nil {
			t.Errorf("%s: %v", test.why, err)
			continue
		}
		p, err := got.Plan()
		if err != nil {
			t.Errorf("%s: solved and refused: %v", test.why, err)
		}
		if got.Pieces != test.n || got.Each != test.each || p.Spare != test.spare || p.Spec != got {
			t.Errorf("%s: %d of %v, spare %v, want %d of %v, spare %v", test.why, got.Pieces, got.Each, p.Spare, test.n, test.each, test.spare)
		}
	}
}

// TestSheet asks of every form of strip that the working holds and that the
// steps name what the form needs.
func TestSheet(t *testing.T) {
	for _, test := range []struct {
		spec         strip.Spec
		steps, lines int
	}{
		{strip.Spec{Pieces: 1, Each: in("9")}, 1, 1},
		{strip.Spec{Pieces: 2, Each: in("9"), Allowance: in("1/2")}, 2, 1},
		{strip.Spec{Pieces: 3, Each: in("9")}, 2, 1},
		{strip.Spec{Pieces: 3, Each: in("9"), Allowance: in("1/2"), Ends: in("1/4"), Least: in("20")}, 3, 2},
		{strip.Spec{Pieces: 3, Each: in("9"), Allowance: in("1/2"), Ring: true}, 2, 1},
	} {
		p, err := test.spec.Plan()
		if err != nil {
			t.Fatal(err)
		}
		s := p.Sheet()
		if err := s.Check(); err != nil {
			t.Error(err)
		}
		if len(s.Steps) != test.steps || len(s.Lines) != test.lines || s.Title == "" || len(s.Cautions) == 0 {
			t.Errorf("%+v: %d steps and %d lines, want %d and %d", test.spec, len(s.Steps), len(s.Lines), test.steps, test.lines)
		}
	}
}
