package layout_test

import (
	"context"
	"errors"
	"math/rand/v2"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
)

// A repeat that nothing is matched to is refused, by Solve and by Verify, and is
// good as soon as a piece asks for it.
func TestRepeatUnused(t *testing.T) {
	bare := []layout.Piece{{Name: "cuff", Wide: in("4"), Long: in("9"), Count: 1}}
	notched := []layout.Piece{{Name: "cuff", Wide: in("4"), Long: in("9"), Count: 1, Notches: []layout.Notch{{Name: "top"}}}}
	centred := []layout.Piece{{Name: "cuff", Wide: in("4"), Long: in("9"), Count: 1, Centred: true}}
	for _, test := range []struct {
		why    string
		cloth  layout.Cloth
		pieces []layout.Piece
		want   []string
	}{
		{"stripes, no notch", layout.Cloth{RepeatX: in("3")}, bare, []string{"cloth.repeatX"}},
		{"checks, no notch", layout.Cloth{RepeatX: in("3"), RepeatY: in("4")}, bare, []string{"cloth.repeatX", "cloth.repeatY"}},
		{"checks, a piece is centred", layout.Cloth{RepeatX: in("3"), RepeatY: in("4")}, centred, []string{"cloth.repeatY"}},
		{"an axis, no piece is centred", layout.Cloth{RepeatX: in("3"), Axis: in("1")}, notched, []string{"cloth.axis"}},
		{"stripes and an axis, a piece is centred", layout.Cloth{RepeatX: in("3"), Axis: in("1")}, centred, nil},
		{"checks, a notch", layout.Cloth{RepeatX: in("3"), RepeatY: in("4")}, notched, nil},
	} {
		test.cloth.Wide = in("40")
		s := layout.Spec{Cloth: test.cloth, Pieces: test.pieces}
		var want []found
		for _, path := range test.want {
			want = append(want, found{path, fault.Unused})
		}
		_, err := s.Solve()
		if diff := cmp.Diff(want, list(err), sameError); diff != "" {
			t.Errorf("%s: %s", test.why, diff)
		}
		if err := layout.Verify(s, []layout.Placement{{Copy: 1}}); errors.Is(err, fault.Unused) != (want != nil) {
			t.Errorf("%s: Verify: %v", test.why, err)
		}
	}
}

// The Spec of a plan, or a solved one, is valid and gives the same plan.
func TestPlanAgain(t *testing.T) {
	r := rand.New(rand.NewPCG(31, 32))
	var specs []layout.Spec
	for range 4 {
		specs = append(specs, random(r), nested(t, r), trial(t, r))
	}
	specs[0].Work = 0 // given by default
	specs = append(specs, layout.Spec{Cloth: layout.Cloth{Wide: in("40")}, Work: 1, Pieces: []layout.Piece{
		{Name: "band", Wide: in("3"), Long: in("90"), Count: 2, Parts: 3, Turn: layout.Quarter, Join: in("1/2"), Allowance: []units.Length{in("5/8")}}}})
	good := 0
	for _, s := range specs {
		p, err := s.Plan(context.Background())
		if list(err) != nil {
			continue // notches that no turning matches
		} else if err != nil {
			t.Fatal(err)
		}
		good++
		solved, err := s.Solve()
		if err != nil {
			t.Fatal(err)
		}
		p.Assumed = nil // of the solved Spec nothing is
		for _, again := range []layout.Spec{solved, p.Spec} {
			q, err := again.Plan(context.Background())
			if diff := cmp.Diff(p, q, sameLength, sameRatio); err != nil || diff != "" {
				t.Fatalf("%v %s", err, diff)
			}
		}
	}
	if good < 11 {
		t.Errorf("%d plans of %d", good, len(specs))
	}
}
