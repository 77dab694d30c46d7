package layout_test

import (
	"context"
	"errors"
	"flag"
	"math/big"
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
)

var pairs = flag.Int("pairs", 5_000, "random pairs of outlines that the verifier and the slow check are asked about; a quarter of them with -short")

// outline reads corners in inches: "0,0 7,1 7,5".
func outline(text string) []layout.Point {
	var out []layout.Point
	for _, word := range strings.Fields(text) {
		x, y, _ := strings.Cut(word, ",")
		out = append(out, layout.Point{X: in(x), Y: in(y)})
	}
	return out
}

// corner is a corner in inches, for the slow check.
type corner struct{ x, y *big.Rat }

func cornersOf(pts []layout.Point) []corner {
	out := make([]corner, len(pts))
	for i, p := range pts {
		out[i] = corner{p.X.In(units.Inch).Rat(), p.Y.In(units.Inch).Rat()}
	}
	return out
}

// crossing is where the edge from a to b is at height y, if it is there.
func crossing(a, b corner, y *big.Rat) (*big.Rat, bool) {
	if (a.y.Cmp(y) < 0) == (b.y.Cmp(y) < 0) {
		return nil, false
	}
	t := new(big.Rat).Quo(new(big.Rat).Sub(y, a.y), new(big.Rat).Sub(b.y, a.y))
	return t.Add(t.Mul(t, new(big.Rat).Sub(b.x, a.x)), a.x), true
}

// spans are the crossings of an outline with the height y, from left to right.
func spans(pts []corner, y *big.Rat) []*big.Rat {
	var out []*big.Rat
	for i, a := range pts {
		if x, ok := crossing(a, pts[(i+1)%len(pts)], y); ok {
			out = append(out, x)
		}
	}
	slices.SortFunc(out, func(a, b *big.Rat) int { return a.Cmp(b) })
	return out
}

// overlap is the slow check: the cloth is cut into slices at every corner and at
// every crossing of edges; in the middle of a slice, the stretches inside the one
// outline and inside the other must not have a length in common.
func overlap(p, q []corner) bool {
	var ys []*big.Rat
	for _, c := range append(slices.Clone(p), q...) {
		ys = append(ys, c.y)
	}
	for i, a := range p {
		b := p[(i+1)%len(p)]
		for k, c := range q {
			d := q[(k+1)%len(q)]
			if y, ok := meeting(a, b, c, d); ok {
				ys = append(ys, y)
			}
		}
	}
	slices.SortFunc(ys, func(a, b *big.Rat) int { return a.Cmp(b) })
	for i := 1; i < len(ys); i++ {
		if ys[i-1].Cmp(ys[i]) == 0 {
			continue
		}
		mid := new(big.Rat).Add(ys[i-1], ys[i])
		mid.Quo(mid, big.NewRat(2, 1))
		a, b := spans(p, mid), spans(q, mid)
		for k := 0; k+1 < len(a); k += 2 {
			for m := 0; m+1 < len(b); m += 2 {
				if a[k].Cmp(b[m+1]) < 0 && b[m].Cmp(a[k+1]) < 0 {
					return true
				}
			}
		}
	}
	return false
}

// meeting is the height at which the lines of two edges cross.
func meeting(a, b, c, d corner) (*big.Rat, bool) {
	sub := func(x, y *big.Rat) *big.Rat { return new(big.Rat).Sub(x, y) }
	mul := func(x, y *big.Rat) *big.Rat { return new(big.Rat).Mul(x, y) }
	den := sub(mul(sub(b.x, a.x), sub(d.y, c.y)), mul(sub(b.y, a.y), sub(d.x, c.x)))
	if den.Sign() == 0 {
		return nil, false
	}
	t := sub(mul(sub(c.x, a.x), sub(d.y, c.y)), mul(sub(c.y, a.y), sub(d.x, c.x)))
	t.Quo(t, den)
	return t.Add(t.Mul(t, sub(b.y, a.y)), a.y), true
}

// apart is the distance of two outlines that do not overlap, the greater of that
// across and that along: from a corner of the one to an edge of the other.
func apart(p, q []corner) *big.Rat {
	var least *big.Rat
	for range 2 {
		for _, c := range p {
			for i, a := range q {
				if d := reach(c, a, q[(i+1)%len(q)]); least == nil || d.Cmp(least) < 0 {
					least = d
				}
			}
		}
		p, q = q, p
	}
	return least
}

// reach is the distance of a corner from an edge. Along the edge it falls and
// rises, so the least is at an end or where one of the two distances is zero or
// both are equal.
func reach(c, a, b corner) *big.Rat {
	ax, ay := new(big.Rat).Sub(a.x, c.x), new(big.Rat).Sub(a.y, c.y)
	bx, by := new(big.Rat).Sub(b.x, a.x), new(big.Rat).Sub(b.y, a.y)
	one := big.NewRat(1, 1)
	ts := []*big.Rat{new(big.Rat), one}
	zero := func(at, slope *big.Rat) {
		if slope.Sign() != 0 {
			t := new(big.Rat).Quo(at, slope)
			if t.Neg(t); t.Sign() > 0 && t.Cmp(one) < 0 {
				ts = append(ts, t)
			}
		}
	}
	zero(ax, bx)
	zero(ay, by)
	zero(new(big.Rat).Sub(ax, ay), new(big.Rat).Sub(bx, by))
	zero(new(big.Rat).Add(ax, ay), new(big.Rat).Add(bx, by))
	var least *big.Rat
	for _, t := range ts {
		x := new(big.Rat).Mul(t, bx)
		y := new(big.Rat).Mul(t, by)
		x.Abs(x.Add(x, ax))
		y.Abs(y.Add(y, ay))
		if y.Cmp(x) > 0 {
			x = y
		}
		if least == nil || x.Cmp(least) < 0 {
			least = x
		}
	}
	return least
}

// shapes are simple outlines of a few corners on a coarse grid, so that pairs of
// them often touch, share edges, or are the same.
func shapes(t testing.TB, r *rand.Rand, n int) []layout.Piece {
	t.Helper()
	var out []layout.Piece
	for tries := 0; len(out) < n; tries++ {
		if tries > 100*n {
			t.Fatal("no simple outlines")
		}
		p := layout.Piece{Count: 1, Turn: layout.Quarter}
		for range 3 + r.IntN(6) {
			p.Outline = append(p.Outline, layout.Point{X: units.Inch.Of(r.Int64N(9)), Y: units.Inch.Of(r.Int64N(9) - 4)})
		}
		if _, err := (layout.Spec{Cloth: layout.Cloth{Wide: in("100")}, Pieces: []layout.Piece{p}}).Solve(); err == nil {
			out = append(out, p)
		}
	}
	return out
}

// The verifier and the slow check never differ: of pairs that touch, that share
// edges, that overlap by a step, that lie in each other or on each other.
func TestVerifyPairs(t *testing.T) {
	t.Parallel()
	r := rand.New(rand.NewPCG(11, 12))
	list := shapes(t, r, 120)
	over, times := 0, often(*pairs)
	for i := range times {
		s := layout.Spec{Cloth: layout.Cloth{Wide: in("100")}}
		s.Pieces = []layout.Piece{list[r.IntN(len(list))], list[r.IntN(len(list))]}
		if i%8 == 0 {
			s.Pieces[1] = s.Pieces[0]
		}
		gap := i%5 == 0
		if gap {
			s.Cloth.Gap = units.Inch.Frac(1+r.Int64N(3), 2)
		}
		step := units.Inch.Frac(1, 1+r.Int64N(3))
		lay := []layout.Placement{{Piece: 0, Copy: 1, X: in("20"), Y: in("20")}, {Piece: 1, Copy: 1}}
		for k := range lay {
			lay[k].Across, lay[k].Half = r.IntN(2) == 0, r.IntN(2) == 0
		}
		lay[1].X = in("20").Add(step.MulInt(r.Int64N(31) - 15))
		lay[1].Y = in("20").Add(step.MulInt(r.Int64N(31) - 15))
		p, q := cornersOf(lay[0].Corners(s)), cornersOf(lay[1].Corners(s))
		want := overlap(p, q)
		if gap && !want {
			want = apart(p, q).Cmp(s.Cloth.Gap.In(units.Inch).Rat()) < 0
		}
		err := layout.Verify(s, lay)
		if errors.Is(err, layout.ErrOverlap) != want || err != nil && !want {
			t.Fatalf("pair %d: Verify %v, slow check %v\n%v\n%v", i, err, want, p, q)
		}
		if want {
			over++
		}
	}
	if over < times/10 || over > times*9/10 {
		t.Errorf("%d of %d overlap", over, times)
	}
}

// One step more and two pieces overlap, one step less and they are clear.
func TestVerifyByOneStep(t *testing.T) {
	comb := outline("0,0 7,0 7,6 6,6 6,1 4,1 4,6 3,6 3,1 1,1 1,6 0,6")
	for _, test := range []struct {
		why        string
		a, b       []layout.Point
		x, y       string
		dx, dy     int64 // the direction into overlap
		quarter    bool
		back, both bool // clear one step the other way, or an overlap both ways
	}{
		{why: "two edges", a: outline("0,0 4,0 2,4"), b: outline("0,0 4,0 2,4"), x: "4", y: "0", dx: -1, back: true},
		{why: "slanted edges", a: outline("0,0 4,0 2,4"), b: outline("0,4 4,4 2,0"), x: "2", y: "0", dx: -1, back: true},
		{why: "a corner in an edge", a: outline("0,0 4,0 4,4 0,4"), b: outline("2,0 4,2 2,4 0,2"), x: "4", y: "0", dx: -1, back: true},
		{why: "a peg that just fits", a: comb, b: outline("0,0 2,0 2,5 0,5"), x: "1", y: "1", dy: -1, back: true},
		{why: "a peg that has no room beside it", a: comb, b: outline("0,0 2,0 2,5 0,5"), x: "4", y: "1", dx: 1, both: true},
		{why: "on top of itself", a: comb, b: comb, x: "7", y: "0", dx: -1, back: true},
	} {
		t.Run(test.why, func(t *testing.T) {
			s := layout.Spec{Cloth: layout.Cloth{Wide: in("40")}, Pieces: []layout.Piece{{Outline: test.a, Count: 1}, {Outline: test.b, Count: 1}}}
			step := units.Inch.Frac(1, 1_000_000_000)
			at := func(n int64) error {
				return layout.Verify(s, []layout.Placement{{Piece: 0, Copy: 1, X: in("10"), Y: in("10")},
					{Piece: 1, Copy: 1, X: in("10").Add(in(test.x)).Add(step.MulInt(n * test.dx)), Y: in("10").Add(in(test.y)).Add(step.MulInt(n * test.dy))}})
			}
			if err := at(0); err != nil {
				t.Error(err)
			}
			if err := at(1); !errors.Is(err, layout.ErrOverlap) {
				t.Errorf("one step in: %v", err)
			}
			if err := at(-1); (err == nil) != test.back || test.both && !errors.Is(err, layout.ErrOverlap) {
				t.Errorf("one step out: %v", err)
			}
		})
	}
}

// A lay that lies on itself has no crossing and no corner inside another piece.
func TestVerifySame(t *testing.T) {
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("40")}, Pieces: []layout.Piece{{Name: "gore", Outline: outline("0,0 4,0 2,4"), Count: 2}}}
	err := layout.Verify(s, []layout.Placement{{Copy: 1}, {Copy: 2}})
	if !errors.Is(err, layout.ErrOverlap) || !strings.Contains(err.Error(), "gore 2") {
		t.Error(err)
	}
}

// What the verifier refuses besides overlap.
func TestVerifyOutlines(t *testing.T) {
	gore := layout.Spec{Cloth: layout.Cloth{Wide: in("9"), Selvedge: in("1/2"), Long: in("20")}, Pieces: []layout.Piece{{Outline: outline("0,0 4,0 2,6"), Count: 1}}}
	third := units.Inch.Frac(1, 1<<35+1)
	tests := []struct {
		why  string
		at   layout.Placement
		turn layout.Turn
		want error
	}{
		{"as drawn", layout.Placement{X: in("1/2")}, layout.Keep, nil},
		{"half where it may not", layout.Placement{X: in("1/2"), Half: true}, layout.Keep, layout.ErrTurn},
		{"half where it may", layout.Placement{X: in("1/2"), Half: true}, layout.Half, nil},
		{"across where it may not", layout.Placement{X: in("1/2"), Across: true}, layout.Half, layout.ErrTurn},
		{"three quarters", layout.Placement{X: in("5/2"), Across: true, Half: true}, layout.Quarter, nil},
		{"beyond the selvedge", layout.Placement{X: in("3"), Across: true}, layout.Quarter, layout.ErrOutside},
		{"beyond the end", layout.Placement{X: in("1/2"), Y: in("15")}, layout.Keep, layout.ErrOutside},
		{"no grid", layout.Placement{X: in("1/2").Add(third), Y: units.Inch.Frac(1, 1<<35-1)}, layout.Keep, layout.ErrGrid},
		{"a grid too fine for the cloth", layout.Placement{X: units.Inch.Frac(1<<58, 1<<59-1)}, layout.Keep, layout.ErrGrid},
		{"far off the cloth", layout.Placement{X: huge()}, layout.Keep, layout.ErrGrid},
	}
	for _, test := range tests {
		t.Run(test.why, func(t *testing.T) {
			s := gore
			s.Pieces = slices.Clone(s.Pieces)
			s.Pieces[0].Turn = test.turn
			test.at.Copy = 1
			if err := layout.Verify(s, []layout.Placement{test.at}); !errors.Is(err, test.want) {
				t.Error(err)
			}
		})
	}
	s := gore
	s.Cloth.Gap = third
	s.Pieces = []layout.Piece{{Outline: outline("0,0 4,0 2,6"), Count: 1}, {Wide: units.Inch.Frac(1, 1<<35-1), Long: in("1"), Count: 1}}
	if err := layout.Verify(s, nil); !errors.Is(err, layout.ErrGrid) {
		t.Error(err)
	}
	s.Pieces, s.Cloth.Gap = gore.Pieces, huge()
	if err := layout.Verify(s, nil); !errors.Is(err, layout.ErrGrid) {
		t.Error(err)
	}
	s.Pieces, s.Cloth.Gap = []layout.Piece{gore.Pieces[0], {Wide: huge(), Long: in("1"), Count: 1}}, units.Length{}
	if err := layout.Verify(s, []layout.Placement{{Piece: 1, Copy: 1}, {Piece: 7}}); !errors.Is(err, layout.ErrGrid) {
		t.Error(err)
	}
}

// Corners of turned and mirrored pieces, worked out by hand.
func TestCorners(t *testing.T) {
	s := layout.Spec{Pieces: []layout.Piece{{Outline: outline("1,1 4,1 1,3"), Count: 2, Pair: true, Turn: layout.Quarter}}}
	for _, test := range []struct {
		at   layout.Placement
		want string
	}{
		{layout.Placement{Copy: 1}, "0,0 3,0 0,2"},
		{layout.Placement{Copy: 1, X: in("5"), Y: in("7")}, "5,7 8,7 5,9"},
		{layout.Placement{Copy: 1, Across: true}, "2,0 2,3 0,0"},
		{layout.Placement{Copy: 1, Half: true}, "3,2 0,2 3,0"},
		{layout.Placement{Copy: 1, Across: true, Half: true}, "0,3 0,0 2,3"},
		{layout.Placement{Copy: 2}, "3,0 0,0 3,2"},
		{layout.Placement{Copy: 2, Across: true}, "2,3 2,0 0,3"},
	} {
		got := test.at.Corners(s)
		if want := outline(test.want); !slices.Equal(got, want) {
			t.Errorf("%+v: %v, want %v", test.at, got, want)
		}
		if wide, long := test.at.Size(s); test.at.Across != (wide == in("2")) || test.at.Across != (long == in("3")) {
			t.Errorf("%+v: %v by %v", test.at, wide, long)
		}
	}
	if (layout.Placement{Piece: 1}).Corners(s) != nil || (layout.Placement{Piece: -1, Copy: 2}).Mirrored(s) {
		t.Error("corners of no piece")
	}
}

// The area of a spec of outlines and rectangles.
func TestArea(t *testing.T) {
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("20")}, Pieces: []layout.Piece{
		{Outline: outline("0,0 4,0 2,6"), Count: 3}, {Outline: outline("2,6 4,0 0,0"), Count: 1}, {Wide: in("2"), Long: in("5"), Count: 2}}}
	if got := s.Area().In(units.Inch); got != units.RatioOf(68, 1) {
		t.Error(got)
	}
	solved, err := s.Solve()
	if err != nil || solved.Pieces[0].Wide != in("4") || solved.Pieces[0].Long != in("6") || !s.Pieces[0].Wide.IsZero() {
		t.Errorf("%v %+v", err, solved.Pieces[0])
	}
	if _, err := solved.Plan(context.Background()); err != nil {
		t.Errorf("a solved spec: %v", err)
	}
}

// What is refused of outlines.
func TestOutlineFaults(t *testing.T) {
	many := func(n int) []layout.Point {
		out := make([]layout.Point, n)
		for i := range out {
			out[i] = layout.Point{X: units.Inch.Of(int64(i)), Y: units.Inch.Of(int64(i) * int64(i))}
		}
		return out
	}
	tests := []struct {
		why   string
		piece layout.Piece
		path  string
		want  error
	}{
		{"two points", layout.Piece{Outline: outline("0,0 4,0")}, "pieces[0].outline", layout.ErrOutline},
		{"crosses itself", layout.Piece{Outline: outline("0,0 4,4 4,0 0,4")}, "pieces[0].outline", layout.ErrOutline},
		{"touches itself at a corner", layout.Piece{Outline: outline("0,0 4,0 2,2 4,4 0,4 2,2")}, "pieces[0].outline", layout.ErrOutline},
		{"goes back on itself", layout.Piece{Outline: outline("0,0 4,0 2,0 2,2")}, "pieces[0].outline", layout.ErrOutline},
		{"has no area", layout.Piece{Outline: outline("0,0 4,0 8,0")}, "pieces[0].outline", layout.ErrOutline},
		{"repeats a point", layout.Piece{Outline: outline("0,0 0,0 4,0 2,2")}, "pieces[0].outline", layout.ErrOutline},
		{"has too many points", layout.Piece{Outline: many(layout.MaxPoints + 1)}, "pieces[0].outline", layout.ErrOutline},
		{"has too many points with all copies", layout.Piece{Outline: many(layout.MaxPoints), Count: 101}, "pieces", layout.ErrOutline},
		{"shares no grid", layout.Piece{Outline: []layout.Point{{X: units.Inch.Frac(1, 1<<35+1)}, {X: in("1"), Y: units.Inch.Frac(1, 1<<35-1)}, {Y: in("1")}}}, "pieces[0].outline[1]", layout.ErrGrid},
		{"is huge", layout.Piece{Outline: []layout.Point{{}, {X: huge()}, {Y: in("1")}}}, "pieces[0].outline[1]", layout.ErrGrid},
		{"is too large for its grid", layout.Piece{Outline: []layout.Point{{X: units.Inch.Frac(1, 1<<40)}, {X: units.Inch.Of(1 << 40)}, {Y: in("1")}}}, "pieces[0].outline", layout.ErrGrid},
		{"is wider than it says", layout.Piece{Outline: outline("0,0 4,0 2,2"), Wide: in("3"), Long: in("2")}, "pieces[0].wide", nil},
		{"is a pair of three", layout.Piece{Outline: outline("0,0 4,0 2,2"), Pair: true, Count: 3}, "pieces[0].count", nil},
		{"is wider than the cloth", layout.Piece{Outline: outline("0,0 41,0 2,2")}, "pieces[0]", nil},
	}
	for _, test := range tests {
		t.Run(test.why, func(t *testing.T) {
			if test.piece.Count == 0 {
				test.piece.Count = 1
			}
			s := layout.Spec{Cloth: layout.Cloth{Wide: in("40")}, Pieces: []layout.Piece{test.piece}}
			if len(test.piece.Outline) > 100 {
				s.Cloth.Wide = in("9000")
			}
			_, err := s.Solve()
			got := list(err)
			if len(got) != 1 || got[0].Path != test.path {
				t.Fatalf("%v", err)
			}
			if errors.Is(test.want, layout.ErrGrid) && !errors.Is(err, layout.ErrGrid) {
				t.Error(err)
			}
			if len(err.Error()) > 2000 {
				t.Errorf("a message of %d bytes", len(err.Error()))
			}
		})
	}
	// Many pieces in a row on too fine a grid.
	tiny := units.Inch.Frac(1, 1<<52)
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("40")}, Pieces: []layout.Piece{{Outline: []layout.Point{{}, {X: in("30").Add(tiny)}, {Y: in("30")}}, Count: 900}}}
	if _, err := s.Solve(); !errors.Is(err, layout.ErrGrid) {
		t.Error(err)
	}
	s.Pieces = []layout.Piece{{Outline: []layout.Point{{}, {X: units.Inch.Frac(3, 1<<35+1)}, {Y: units.Inch.Frac(3, 1<<35+1)}}, Count: 1}}
	s.Cloth.Gap = units.Inch.Frac(1, 1<<35-1)
	if _, err := s.Solve(); !errors.Is(err, layout.ErrGrid) {
		t.Error(err)
	}
	s.Cloth.Gap = huge()
	if _, err := s.Solve(); !errors.Is(err, layout.ErrGrid) {
		t.Error(err)
	}
	if got := strconv.Itoa(layout.MaxCorners); got != "200000" {
		t.Error(got)
	}
}
