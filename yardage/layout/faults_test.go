package layout_test

import (
	"context"
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
)

// doublet is a page's doublet on a remnant, without fault.
func doublet() layout.Spec {
	return layout.Spec{
		Cloth:  layout.Cloth{Wide: in("36"), Selvedge: in("1/2"), Long: in("40"), Gap: in("1/4"), Ends: in("1")},
		Pieces: []layout.Piece{{Name: "back", Wide: in("16"), Long: in("18"), Count: 1}, {Name: "pocket", Wide: in("6"), Long: in("7"), Count: 2, Turn: layout.Quarter}},
		Work:   1,
	}
}

func huge() units.Length { return units.MustParse("1" + strings.Repeat("0", 300) + " in") }

func many(n int) []layout.Piece { return make([]layout.Piece, n) }

type found struct {
	Path string
	Err  error
}

func list(err error) []found {
	var faults fault.Faults
	if !errors.As(err, &faults) {
		return nil
	}
	out := make([]found, len(faults))
	for i, f := range faults {
		out[i] = found{f.Path, f.Kind}
	}
	return out
}

var sameError = cmp.Comparer(func(a, b error) bool { return a == b })

func TestFaults(t *testing.T) {
	tests := []struct {
		why    string
		change func(*layout.Spec)
		want   []found
		room   bool // each measure is good by itself
	}{
		{"nothing is given", func(s *layout.Spec) { *s = layout.Spec{} },
			[]found{{"cloth.wide", fault.Missing}, {"pieces", fault.Missing}}, false},
		{"all faults at once, in the order of the fields", func(s *layout.Spec) {
			s.Cloth = layout.Cloth{Wide: in("-36"), Selvedge: in("-1"), Long: in("-1"), Gap: in("-1"), Ends: in("-1")}
			s.Pieces = []layout.Piece{{Name: "back\n", Wide: in("-1"), Count: -1, Turn: 9}, {Wide: in("1"), Long: in("1")}}
			s.Work = -1
		}, []found{
			{"cloth.wide", fault.Sign}, {"cloth.selvedge", fault.Sign}, {"cloth.long", fault.Sign}, {"cloth.gap", fault.Sign}, {"cloth.ends", fault.Sign},
			{"pieces[0].name", fault.Form}, {"pieces[0].wide", fault.Sign}, {"pieces[0].long", fault.Missing}, {"pieces[0].count", fault.Range}, {"pieces[0].turn", fault.Unknown},
			{"pieces[1].count", fault.Missing}, {"work", fault.Range},
		}, false},
		{"selvedges leave nothing", func(s *layout.Spec) { s.Cloth.Selvedge = in("18") }, []found{{"cloth.selvedge", fault.Range}}, false},
		{"ends leave nothing", func(s *layout.Spec) { s.Cloth.Ends = in("20") }, []found{{"cloth.ends", fault.Range}}, false},
		{"too much work", func(s *layout.Spec) { s.Work = layout.MaxWork + 1 }, []found{{"work", fault.Range}}, false},
		{"a million pieces", func(s *layout.Spec) { s.Pieces = many(1_000_000) }, []found{{"pieces", fault.Range}}, false},
		{"counts that pass the limit together", func(s *layout.Spec) { s.Pieces[0].Count, s.Pieces[1].Count = 600, 401 }, []found{{"pieces", fault.Range}}, false},
		{"the greatest count", func(s *layout.Spec) { s.Pieces[0].Count = math.MaxInt }, []found{{"pieces[0].count", fault.Range}}, false},
		{"a long name", func(s *layout.Spec) { s.Pieces[1].Name = strings.Repeat("x", fault.MaxName+1) }, []found{{"pieces[1].name", fault.Range}}, false},
		{"wider than the cloth", func(s *layout.Spec) { s.Pieces[0].Wide = in("35 1/8") }, []found{{"pieces[0]", fault.Range}}, true},
		{"longer than the cloth", func(s *layout.Spec) { s.Pieces[0].Long = in("38 1/8") }, []found{{"pieces[0]", fault.Range}}, true},
		{"too large either way round", func(s *layout.Spec) { s.Pieces[1].Wide, s.Pieces[1].Long = in("36"), in("36") }, []found{{"pieces[1]", fault.Range}}, true},
		{"more than the cloth has room for", func(s *layout.Spec) { s.Pieces[1].Count = 30 }, []found{{"cloth.long", fault.Range}}, true},
		{"pieces that cannot lie side by side", func(s *layout.Spec) { s.Pieces[0].Wide, s.Pieces[0].Count = in("17 1/2"), 3 }, []found{{"cloth.long", fault.Range}}, true},
		{"a huge piece", func(s *layout.Spec) { s.Pieces[0].Wide = huge() }, []found{{"pieces[0]", fault.Range}}, true},
		{"a huge piece on a huge cloth", func(s *layout.Spec) { s.Cloth, s.Pieces[0].Wide = layout.Cloth{Wide: huge().MulInt(2)}, huge() }, []found{{"pieces[0].wide", layout.ErrGrid}}, true},
		{"a piece too long for its count", func(s *layout.Spec) {
			s.Cloth.Long, s.Pieces[0].Long, s.Pieces[0].Count = units.Length{}, units.Inch.Of(1<<50), 600
		}, []found{{"pieces[0]", layout.ErrGrid}}, true},
		{"a huge gap", func(s *layout.Spec) { s.Cloth.Gap = huge() }, []found{{"cloth.gap", layout.ErrGrid}}, true},
		{"a wide gap", func(s *layout.Spec) { s.Cloth.Gap = units.Inch.Of(1 << 62) }, []found{{"cloth.gap", layout.ErrGrid}}, true},
		{"no common grid", func(s *layout.Spec) {
			s.Pieces[0].Wide, s.Pieces[1].Long = units.Inch.Frac(1, 1<<35+1), units.Inch.Frac(1, 1<<35-1)
		}, []found{{"pieces[1].long", layout.ErrGrid}}, true},
		{"a common grid that is too fine", func(s *layout.Spec) {
			s.Pieces[0].Wide = units.Inch.Frac(1, 1<<58-1)
		}, []found{{"pieces[0].wide", layout.ErrGrid}}, true},
	}
	for _, test := range tests {
		t.Run(test.why, func(t *testing.T) {
			s := doublet()
			test.change(&s)
			_, errSolve := s.Solve()
			_, errPlan := s.Plan(context.Background())
			for name, err := range map[string]error{"Solve": errSolve, "Plan": errPlan} {
				if diff := cmp.Diff(test.want, list(err), sameError); diff != "" {
					t.Errorf("%s: %s", name, diff)
				}
			}
			// Verify asks only what a lay can be checked against: not how long to
			// search, nor whether there is room at all.
			want := slices.DeleteFunc(slices.Clone(test.want), func(f found) bool { return test.room || f.Path == "work" })
			if len(want) == 0 {
				want = []found{{"pieces[0].count", layout.ErrCount}, {"pieces[1].count", layout.ErrCount}}
			}
			if diff := cmp.Diff(want, list(layout.Verify(s, nil)), sameError); diff != "" {
				t.Errorf("Verify: %s", diff)
			}
			if len(errPlan.Error()) > 10_000 {
				t.Errorf("a message of %d bytes", len(errPlan.Error()))
			}
		})
	}
}

// The edges of what is good.
func TestNoFaults(t *testing.T) {
	tests := []struct {
		why    string
		change func(*layout.Spec)
	}{
		{"as it is", func(*layout.Spec) {}},
		{"exactly as wide as the cloth", func(s *layout.Spec) { s.Pieces[0].Wide = in("35") }},
		{"exactly as long as the cloth", func(s *layout.Spec) { s.Pieces[0].Long = in("38") }},
		{"too wide, but may turn", func(s *layout.Spec) { s.Pieces[1].Wide, s.Pieces[1].Count = in("36"), 1 }},
		{"too long across, so it stays", func(s *layout.Spec) { s.Pieces[1].Long, s.Pieces[1].Count = in("36"), 1 }},
		{"a gap wider than the cloth", func(s *layout.Spec) { s.Cloth.Long, s.Cloth.Gap = units.Length{}, in("50") }},
		{"cloth without end", func(s *layout.Spec) { s.Cloth.Wide, s.Cloth.Long = huge(), huge() }},
		{"ends without a length", func(s *layout.Spec) { s.Cloth.Long = units.Length{} }},
		{"thirds and sevenths", func(s *layout.Spec) { s.Pieces[0].Wide, s.Pieces[1].Long = in("16 1/3"), in("6 6/7") }},
		{"millimetres and inches", func(s *layout.Spec) { s.Pieces[0].Wide = units.MustParse("400 mm") }},
	}
	for _, test := range tests {
		t.Run(test.why, func(t *testing.T) {
			s := doublet()
			test.change(&s)
			solved, err := s.Solve()
			if err != nil || solved.Work != 1 {
				t.Fatal(solved.Work, err)
			}
			p, err := s.Plan(context.Background())
			if err != nil {
				t.Fatal(err)
			}
			if err := layout.Verify(s, p.Placements); err != nil || !p.Fits {
				t.Errorf("fits %v: %v", p.Fits, err)
			}
			if p.Lay.Less(p.Bound) {
				t.Errorf("lay %v shorter than its bound %v", p.Lay, p.Bound)
			}
		})
	}
}

// Work that is not given is filled; a nil context is never done.
func TestDefaults(t *testing.T) {
	s := doublet()
	s.Work = 0
	solved, err := s.Solve()
	if err != nil || solved.Work != layout.DefaultWork {
		t.Errorf("work %d: %v", solved.Work, err)
	}
	var none context.Context
	p, err := s.Plan(none)
	if err != nil || p.Stopped || !slices.Contains(p.Assumed, "work") || p.Spec.Work != layout.DefaultWork {
		t.Errorf("%+v: %v", p, err)
	}
	// The plan's pieces are its own.
	s.Pieces[0].Name = "changed"
	if p.Spec.Pieces[0].Name != "back" {
		t.Error("the plan changed with its Spec")
	}
}

func TestVerifyFaults(t *testing.T) {
	s := shirt()
	tests := []struct {
		why    string
		change func([]layout.Placement) []layout.Placement
		want   []found
	}{
		{"nothing laid", func(p []layout.Placement) []layout.Placement { return p[:0] }, []found{
			{"pieces[0].count", layout.ErrCount}, {"pieces[1].count", layout.ErrCount}, {"pieces[2].count", layout.ErrCount}, {"pieces[3].count", layout.ErrCount},
			{"pieces[4].count", layout.ErrCount}, {"pieces[5].count", layout.ErrCount}, {"pieces[6].count", layout.ErrCount}, {"pieces[7].count", layout.ErrCount}}},
		{"one left out", func(p []layout.Placement) []layout.Placement { return append(p[:4:4], p[5:]...) }, []found{{"pieces[2].count", layout.ErrCount}}},
		{"a hair over its neighbour", func(p []layout.Placement) []layout.Placement {
			p[3].Y = p[3].Y.Sub(units.Millimetre.Frac(1, 1_000_000))
			return p
		}, []found{{"placements[3]", layout.ErrOverlap}}},
		{"two in one place", func(p []layout.Placement) []layout.Placement { p[2].X = p[1].X; return p }, []found{{"placements[2]", layout.ErrOverlap}}},
		{"one inside another", func(p []layout.Placement) []layout.Placement { p[14].X, p[14].Y = in("5"), in("5"); return p }, []found{{"placements[14]", layout.ErrOverlap}}},
		{"on the selvedge", func(p []layout.Placement) []layout.Placement { p[0].X = in("7/16"); return p }, []found{{"placements[0].x", layout.ErrOutside}}},
		{"off the right-hand edge", func(p []layout.Placement) []layout.Placement { p[13].X = in("31 15/16"); return p }, []found{{"placements[13].x", layout.ErrOutside}}},
		{"in the cut end", func(p []layout.Placement) []layout.Placement { p[0].Y = in("0"); return p }, []found{{"placements[0].y", layout.ErrOutside}}},
		{"off the far end", func(p []layout.Placement) []layout.Placement { p[13].Y = in("79"); return p }, []found{{"placements[13].y", layout.ErrOutside}}},
		{"turned", func(p []layout.Placement) []layout.Placement { p[14].Across = true; return p }, []found{{"placements[14].across", layout.ErrTurn}}},
		{"no such piece", func(p []layout.Placement) []layout.Placement { p[0].Piece = 8; return p }, []found{{"placements[0].piece", fault.Unknown}, {"pieces[0].count", layout.ErrCount}}},
		{"a piece before the first", func(p []layout.Placement) []layout.Placement { p[0].Piece = math.MinInt; return p }, []found{{"placements[0].piece", fault.Unknown}, {"pieces[0].count", layout.ErrCount}}},
		{"copies counted from 0", func(p []layout.Placement) []layout.Placement { p[0].Copy = 0; return p }, []found{{"placements[0].copy", fault.Range}, {"pieces[0].count", layout.ErrCount}}},
		{"one copy too many", func(p []layout.Placement) []layout.Placement { p[2].Copy = 3; return p }, []found{{"placements[2].copy", fault.Range}, {"pieces[1].count", layout.ErrCount}}},
		{"one copy twice", func(p []layout.Placement) []layout.Placement { p[2].Copy = 1; return p }, []found{{"placements[2].copy", fault.Twice}, {"pieces[1].count", layout.ErrCount}}},
		{"a million placements", func([]layout.Placement) []layout.Placement { return make([]layout.Placement, 1_000_000) }, []found{{"placements", fault.Range}}},
	}
	for _, test := range tests {
		t.Run(test.why, func(t *testing.T) {
			if diff := cmp.Diff(test.want, list(layout.Verify(s, test.change(byHand()))), sameError); diff != "" {
				t.Error(diff)
			}
		})
	}
}

// Pieces that touch are clear of each other; with a gap they are not, and the
// fault names both.
func TestGap(t *testing.T) {
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("10")}, Work: 1, Pieces: []layout.Piece{{Name: "cuff", Wide: in("4"), Long: in("3"), Count: 2}, {Wide: in("1"), Long: in("1"), Count: 1}}}
	touch := []layout.Placement{{Copy: 1}, {Copy: 2, X: in("4")}, {Piece: 1, Copy: 1, Y: in("3")}}
	if err := layout.Verify(s, touch); err != nil {
		t.Fatal(err)
	}
	s.Cloth.Gap = in("1/8")
	err := layout.Verify(s, touch)
	const want = "placements[1] cuff 2: pieces overlap, want at least 1/8 in clear of cuff 1, placements[0]\n" +
		"placements[2] pieces[1]: pieces overlap, want at least 1/8 in clear of cuff 1, placements[0]"
	if err == nil || err.Error() != want {
		t.Errorf("got %v\nwant %v", err, want)
	}
	touch[1].X, touch[2].Y = in("4 1/8"), in("3 1/8")
	if err := layout.Verify(s, touch); err != nil {
		t.Error(err)
	}
	p, err := s.Plan(context.Background())
	if err != nil || p.Lay != in("3") || p.Wide != in("9 1/4") {
		t.Errorf("lay %v, width %v: %v", p.Lay, p.Wide, err)
	}
}
