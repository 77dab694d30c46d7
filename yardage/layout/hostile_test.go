package layout_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
)

// The plan of nothing, and one whose placements are of no piece, have a sheet, a
// drawing and the rest, all of them empty.
func TestZero(t *testing.T) {
	for _, p := range []layout.Plan{{}, {Placements: []layout.Placement{{}, {Piece: -1, Across: true}, {Piece: 9, Copy: 2, Part: 1, Of: 3, Half: true}}}} {
		if err := p.Sheet().Check(); err != nil {
			t.Error(err)
		}
		p.Sheet().Text()
		if p.SVG() != "" || p.Rests() != nil {
			t.Errorf("%q, %v", p.SVG(), p.Rests())
		}
		for _, at := range p.Placements {
			first, second := at.Copies(p.Spec)
			if wide, long := at.Size(p.Spec); !wide.IsZero() || !long.IsZero() || at.Corners(p.Spec) != nil || at.Notches(p.Spec) != nil || at.Mirrored(p.Spec) || first+second != 0 {
				t.Errorf("%+v", at)
			}
		}
	}
	if !(layout.Spec{}).Area().IsZero() {
		t.Error("area")
	}
}

// Two pieces of one name cannot be told apart on a sheet; pieces without any can,
// by their numbers.
func TestNamedTwice(t *testing.T) {
	cuff := layout.Piece{Name: "cuff", Wide: in("4"), Long: in("9"), Count: 2}
	none := cuff
	none.Name = ""
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("40")}, Pieces: []layout.Piece{cuff, none, cuff, none, cuff}}
	_, err := s.Solve()
	if diff := cmp.Diff([]found{{"pieces[2].name", fault.Twice}, {"pieces[4].name", fault.Twice}}, list(err), sameError); diff != "" {
		t.Error(diff)
	}
	if err := layout.Verify(s, nil); !errors.Is(err, fault.Twice) {
		t.Error(err)
	}
}

// What no letter is has no place in a name, nor in a fault about one.
func TestNamesUnfit(t *testing.T) {
	for _, bad := range []string{"\x1b[2J", "\u0085", "\u202e", "\u2066", "\uffff", "\ufdd0", "\x80", strings.Repeat("x", 1<<20)} {
		s := layout.Spec{Cloth: layout.Cloth{Wide: in("40"), RepeatX: in("3"), Phases: []layout.Phase{{Notch: bad}, {Notch: bad}}},
			Pieces: []layout.Piece{{Name: bad, Wide: in("4"), Long: in("9"), Count: 1}, {Wide: in("4"), Long: in("9"), Count: 1, Notches: []layout.Notch{{Name: bad}, {Name: bad}}}}}
		_, err := s.Solve()
		paths := fmt.Sprint(list(err))
		for _, want := range []string{"cloth.phases[0].notch", "pieces[0].name", "pieces[1].notches[0].name"} {
			if !strings.Contains(paths, want) {
				t.Errorf("%.20q: %s", bad, paths)
			}
		}
		if err != nil && (strings.Contains(err.Error(), bad) || len(err.Error()) > 4000) {
			t.Errorf("%.20q is told as it is, in %d bytes", bad, len(err.Error()))
		}
	}
}

// The points of all flaws are bounded together.
func TestFlawPoints(t *testing.T) {
	saw := make([]layout.Point, 0, layout.MaxPoints)
	for k := range int64(layout.MaxPoints - 2) {
		saw = append(saw, layout.Point{X: units.Millimetre.Of(k), Y: units.Millimetre.Of(20 + k%2)})
	}
	saw = append(saw, layout.Point{X: units.Millimetre.Of(layout.MaxPoints)}, layout.Point{})
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("90")}, Pieces: []layout.Piece{{Wide: in("4"), Long: in("9"), Count: 1}}}
	for range layout.MaxFlawPoints / layout.MaxPoints {
		s.Cloth.Flaws = append(s.Cloth.Flaws, layout.Flaw{Outline: saw})
	}
	if _, err := s.Solve(); err != nil {
		t.Error(err)
	}
	s.Cloth.Flaws = append(s.Cloth.Flaws, layout.Flaw{Outline: saw[:3]})
	_, err := s.Solve()
	if diff := cmp.Diff([]found{{"cloth.flaws", fault.Range}}, list(err), sameError); diff != "" {
		t.Error(diff)
	}
}

// A limit that a fault names is one that can be kept: what is just within it is not
// refused for the same.
func TestLimits(t *testing.T) {
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("10")}, Pieces: []layout.Piece{{Wide: in("12"), Long: in("9"), Count: 1}}}
	err := layout.Verify(s, []layout.Placement{{Copy: 1}})
	if !errors.Is(err, layout.ErrOutside) || !strings.Contains(err.Error(), "want at most 10 in across") {
		t.Error(err)
	}
	s.Cloth.Long = in("8")
	s.Pieces[0].Wide = in("9")
	err = layout.Verify(s, []layout.Placement{{Copy: 1}})
	if !errors.Is(err, layout.ErrOutside) || !strings.Contains(err.Error(), "want at most 8 in along") {
		t.Error(err)
	}
	fine := layout.Spec{Cloth: layout.Cloth{Wide: in("10")}, Pieces: []layout.Piece{{Outline: outline("0,0 4,0 0,5"), Count: 1}}}
	fine.Pieces[0].Outline[1].X = in("4").Add(units.Inch.Frac(1, 1<<57))
	_, err = fine.Solve()
	if !errors.Is(err, layout.ErrGrid) || !strings.Contains(err.Error(), fmt.Sprint(int64(layout.MaxGrid/4))) {
		t.Error(err)
	}
	fine.Pieces[0].Outline[1].X = in("4").Add(units.Inch.Frac(1, 1<<54))
	if _, err = fine.Solve(); err != nil {
		t.Error(err)
	}
}

// However flaws cover the cloth, what is left is found without marking each place
// for each of them.
func TestLeftoverFlaws(t *testing.T) {
	p := layout.Plan{Spec: layout.Spec{Cloth: layout.Cloth{Wide: in("60"), Long: in("100")}}, Used: in("100")}
	for k := range int64(layout.MaxFlaws) {
		step := units.Inch.Frac(k, 100)
		p.Spec.Cloth.Flaws = append(p.Spec.Cloth.Flaws, layout.Flaw{X: step, Y: step, Wide: in("60").Sub(step.MulInt(2)), Long: in("100").Sub(step.MulInt(2))})
	}
	if rests := p.Rests(); rests != nil {
		t.Error(rests)
	}
	p.Spec.Cloth.Flaws = p.Spec.Cloth.Flaws[100:101] // 1 in all round
	want := []layout.Rest{{Wide: in("1"), Long: in("100")}, {X: in("59"), Wide: in("1"), Long: in("100")}, {X: in("1"), Wide: in("58"), Long: in("1")}, {X: in("1"), Y: in("99"), Wide: in("58"), Long: in("1")}}
	if diff := cmp.Diff(want, p.Rests(), sameLength); diff != "" {
		t.Error(diff)
	}
}
