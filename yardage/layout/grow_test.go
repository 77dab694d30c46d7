package layout_test

import (
	"context"
	"errors"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
)

// inside reports whether a point is in an outline or on it.
func inside(pts []corner, q corner) bool {
	odd := false
	for i, a := range pts {
		b := pts[(i+1)%len(pts)]
		if reach(q, a, b).Sign() == 0 {
			return true
		}
		if x, ok := crossing(a, b, q.y); ok && x.Cmp(q.x) > 0 {
			odd = !odd
		}
	}
	return odd
}

// cutOf is the outline that is cut: that of the placement of the piece by itself,
// moved back to where it was drawn.
func cutOf(t *testing.T, p layout.Piece) []corner {
	t.Helper()
	p.Count = 1
	p.Notches = []layout.Notch{{Name: "origin"}}
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("1000")}, Pieces: []layout.Piece{p}}
	at := layout.Placement{Copy: 1}
	pts, origin := at.Corners(s), at.Notches(s)[0].At
	for i, q := range pts {
		pts[i] = layout.Point{X: q.X.Sub(origin.X), Y: q.Y.Sub(origin.Y)}
	}
	return cornersOf(pts)
}

// Every point that is nearer to the net outline than the allowance is inside what
// is cut, and no corner of what is cut is farther than a corner of 60 degrees
// brings it.
func TestGrown(t *testing.T) {
	t.Parallel()
	r := rand.New(rand.NewPCG(31, 32))
	grown := 0
	for _, p := range shapes(t, r, often(100)) {
		take := units.Inch.Frac(1+r.Int64N(7), 8)
		if r.IntN(3) == 0 {
			take = units.Millimetre.Of(15)
		}
		p.Allowance = []units.Length{take}
		if _, err := (layout.Spec{Cloth: layout.Cloth{Wide: in("100")}, Pieces: []layout.Piece{p}}).Solve(); err != nil {
			if !errors.Is(err, layout.ErrOutline) {
				t.Fatal(err)
			}
			continue
		}
		grown++
		net, cut := cornersOf(p.Outline), cutOf(t, p)
		most := take.In(units.Inch).Rat()
		for range 60 {
			i := r.IntN(len(net))
			a, b := net[i], net[(i+1)%len(net)]
			k := big.NewRat(r.Int64N(65), 64)
			q := corner{new(big.Rat).Sub(b.x, a.x), new(big.Rat).Sub(b.y, a.y)}
			q.x.Add(q.x.Mul(q.x, k), a.x)
			q.y.Add(q.y.Mul(q.y, k), a.y)
			// A step in a random direction, of a length just less than the allowance: a ratio of a right triangle.
			m, n := 1+r.Int64N(40), r.Int64N(40)
			h := m*m + n*n
			for _, near := range []int64{1000, 999, 500} {
				dx, dy := big.NewRat((m*m-n*n)*near, h*1000), big.NewRat(2*m*n*near, h*1000)
				if r.IntN(2) == 0 {
					dx.Neg(dx)
				}
				if r.IntN(2) == 0 {
					dy.Neg(dy)
				}
				at := corner{dx.Add(dx.Mul(dx, most), q.x), dy.Add(dy.Mul(dy, most), q.y)}
				if !inside(cut, at) {
					t.Fatalf("%v is %d/1000 of %v off %v, and outside %v", at, near, take, net, cut)
				}
			}
		}
		for _, c := range cut {
			var least *big.Rat
			for i, a := range net {
				if d := reach(c, a, net[(i+1)%len(net)]); least == nil || d.Cmp(least) < 0 {
					least = d
				}
			}
			if far := new(big.Rat).Mul(most, big.NewRat(9, 4)); least.Cmp(far) > 0 {
				t.Errorf("a corner is %v in off, for %v: %v, %v", least.FloatString(3), take, net, cut)
			}
		}
	}
	if grown < often(40) {
		t.Errorf("%d grown", grown)
	}
}

// Where the sides are straight to the cloth the allowance is exact, edge by edge;
// a slanted one is what it must be, and a step at most more.
func TestAllowance(t *testing.T) {
	point := func(x, y string) corner {
		return cornersOf([]layout.Point{{X: in(x), Y: in(y)}})[0]
	}
	show := cmp.Comparer(func(a, b *big.Rat) bool { return a.Cmp(b) == 0 })
	rect := layout.Piece{Wide: in("4"), Long: in("6"), Allowance: []units.Length{in("1"), in("1/2"), in("1/4"), in("1/8")}}
	if diff := cmp.Diff([]corner{point("-1/8", "-1"), point("4 1/2", "-1"), point("4 1/2", "6 1/4"), point("-1/8", "6 1/4")}, cutOf(t, rect), show, cmp.AllowUnexported(corner{})); diff != "" {
		t.Error(diff)
	}
	if area := rect.Area(); area != in("4 5/8").Times(in("7 1/4")) {
		t.Error(area)
	}
	for _, back := range []bool{false, true} {
		l := layout.Piece{Outline: outline("0,0 4,0 4,2 2,2 2,6 0,6"), Allowance: []units.Length{in("1"), in("1/2"), in("1/2"), in("1/2"), in("1/4"), in("1/8")}}
		want := []corner{point("-1/8", "-1"), point("4 1/2", "-1"), point("4 1/2", "2 1/2"), point("2 1/2", "2 1/2"), point("2 1/2", "6 1/4"), point("-1/8", "6 1/4")}
		if back {
			for i, j := 0, 5; i < j; i, j = i+1, j-1 {
				l.Outline[i], l.Outline[j], want[i], want[j] = l.Outline[j], l.Outline[i], want[j], want[i]
			}
			l.Allowance = []units.Length{in("1/4"), in("1/2"), in("1/2"), in("1/2"), in("1"), in("1/8")}
		}
		if diff := cmp.Diff(want, cutOf(t, l), show, cmp.AllowUnexported(corner{})); diff != "" {
			t.Errorf("back %v: %s", back, diff)
		}
	}
	// A side of 3 to 4: its length is whole, and so is the moved side's.
	tri := layout.Piece{Outline: outline("0,0 4,0 0,3"), Allowance: []units.Length{in("1")}}
	for _, c := range cutOf(t, tri) {
		// The slanted side, moved out by 1: 3x + 4y = 12 + 5.
		sum := new(big.Rat).Add(new(big.Rat).Mul(c.x, big.NewRat(3, 1)), new(big.Rat).Mul(c.y, big.NewRat(4, 1)))
		if sum.Cmp(big.NewRat(17, 1)) > 0 && new(big.Rat).Sub(sum, big.NewRat(17, 1)).Cmp(layout.GrowStep().MulInt(7*4).In(units.Inch).Rat()) > 0 {
			t.Errorf("%v is beyond the side", c)
		}
	}
	// In line with each other, two allowances meet in a step.
	step := layout.Piece{Outline: outline("0,0 4,0 8,0 8,3 0,3"), Allowance: []units.Length{in("1"), in("2"), {}, {}, {}}}
	if diff := cmp.Diff([]corner{point("0", "-1"), point("4", "-1"), point("4", "-2"), point("8", "-2"), point("8", "3"), point("0", "3")}, cutOf(t, step), show, cmp.AllowUnexported(corner{})); diff != "" {
		t.Error(diff)
	}
	step.Allowance[0], step.Allowance[1] = step.Allowance[1], step.Allowance[0]
	if n := len(cutOf(t, step)); n != 6 {
		t.Errorf("%d corners", n)
	}
	step.Allowance = []units.Length{in("1")}
	if diff := cmp.Diff([]corner{point("-1", "-1"), point("9", "-1"), point("9", "4"), point("-1", "4")}, cutOf(t, step), show, cmp.AllowUnexported(corner{})); diff != "" {
		t.Error(diff)
	}
	// No seam on the fold, and a plan of it all.
	s := layout.Spec{Work: 1, Cloth: layout.Cloth{Wide: in("30"), Folded: true}, Pieces: []layout.Piece{
		{Outline: outline("0,0 9,0 7,12 2,14 0,12"), Count: 1, Fold: true, Allowance: []units.Length{in("5/8")}},
		{Wide: in("4"), Long: in("4"), Count: 2, Fold: true, Allowance: []units.Length{in("1/2")}},
	}}
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if wide, long := p.Placements[1].Size(s); wide != in("4 1/2") || long != in("5") {
		t.Errorf("%v by %v", wide, long)
	}
	if p.Spec.Pieces[0].Wide != in("9") {
		t.Errorf("net %v", p.Spec.Pieces[0].Wide)
	}
}

// Allowances that cannot be.
func TestAllowanceFaults(t *testing.T) {
	u := outline("0,0 9,0 9,9 5,9 5,1 4,1 4,9 0,9")
	for _, test := range []struct {
		why   string
		piece layout.Piece
		want  found
	}{
		{"too few", layout.Piece{Wide: in("1"), Long: in("1"), Allowance: []units.Length{in("1"), in("1")}}, found{"pieces[0].allowance", fault.Range}},
		{"below zero", layout.Piece{Wide: in("1"), Long: in("1"), Allowance: []units.Length{in("-1")}}, found{"pieces[0].allowance[0]", fault.Sign}},
		{"on the fold", layout.Piece{Wide: in("1"), Long: in("1"), Fold: true, Allowance: []units.Length{{}, {}, {}, in("1")}}, found{"pieces[0].allowance[3]", fault.Conflict}},
		{"a slit that closes", layout.Piece{Outline: u, Allowance: []units.Length{in("1/2")}}, found{"pieces[0].allowance", layout.ErrOutline}},
		{"far beyond any grid", layout.Piece{Outline: u, Allowance: []units.Length{units.Inch.Of(1 << 50)}}, found{"pieces[0].allowance", layout.ErrGrid}},
		{"finer than any grid", layout.Piece{Outline: u, Allowance: []units.Length{units.Inch.Frac(1, 1<<61)}}, found{"pieces[0].allowance", layout.ErrGrid}},
	} {
		test.piece.Count = 1
		_, err := (layout.Spec{Cloth: layout.Cloth{Wide: in("100")}, Pieces: []layout.Piece{test.piece}}).Solve()
		if got := list(err); len(got) != 1 || got[0] != test.want {
			t.Errorf("%s: %v", test.why, err)
		}
	}
	open := layout.Piece{Outline: u, Count: 1, Allowance: []units.Length{in("3/8")}}
	if _, err := (layout.Spec{Cloth: layout.Cloth{Wide: in("100")}, Pieces: []layout.Piece{open}}).Solve(); err != nil {
		t.Error(err)
	}
}
