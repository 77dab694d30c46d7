package outline_test

import (
	"errors"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
	"example.com/clothyard/yardage/layout/outline"
)

func TestTrapezoid(t *testing.T) {
	for _, test := range []struct {
		shape outline.Trapezoid
		want  []layout.Point
		err   string
	}{
		{outline.Trapezoid{Near: in("9"), Far: in("4"), Long: in("30")}, pts("0", "0", "9", "0", "6 1/2", "30", "2 1/2", "30"), "<nil>"},
		{outline.Trapezoid{Near: in("4"), Far: in("9"), Long: in("30"), Lean: in("2 1/2")}, pts("0", "0", "4", "0", "9", "30", "0", "30"), "<nil>"},
		{outline.Trapezoid{Far: in("-1")}, nil, "near: not given\nfar: wrong sign\nlong: not given"},
	} {
		got, err := test.shape.Points()
		if diff := cmp.Diff(test.want, got, exactly); diff != "" || paths(err) != test.err {
			t.Error(diff, paths(err))
		}
	}
}

func length2(q layout.Point) *big.Rat { p := at(q); return dot(p, p) }

func square(l units.Length) *big.Rat { r := l.In(units.Inch).Rat(); return mul(r, r) }

// The polygon of a sector holds it, keeps to the bound, and is an outline.
func TestSectors(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 1))
	for n := range 40 {
		s := outline.Sector{Outer: units.Inch.Frac(20+rng.Int64N(900), 8), Quarters: rng.IntN(4), Within: units.Inch.Frac(1, 1+rng.Int64N(40))}
		if rng.IntN(3) > 0 {
			s.Inner = s.Outer.Scale(units.RatioOf(1+rng.Int64N(63), 64))
		}
		switch rng.IntN(4) {
		case 0:
			s.Rest = units.RatioOf(1, 1+rng.Int64N(1_000_000))
		case 1:
			s.Rest = units.RatioOf(999_999, 1_000_000)
		case 2:
			s.Rest = units.RatioOf(rng.Int64N(40), 41)
		}
		if s.Quarters == 0 && s.Rest.IsZero() {
			s.Quarters, s.Inner = 4, units.Length{}
		}
		poly, err := s.Points()
		if err != nil {
			t.Fatalf("%+v: %v", s, err)
		}
		spec := layout.Spec{Cloth: layout.Cloth{Wide: in("1000")}, Pieces: []layout.Piece{{Name: "sector", Outline: poly, Count: 1}}}
		fine := s.Rest.Less(units.RatioOf(1, 10_000)) || units.RatioOf(9999, 10_000).Less(s.Rest)
		if _, err := spec.Solve(); err != nil && !(fine && errors.Is(err, layout.ErrGrid)) {
			t.Fatalf("%d %+v: %v\n%v", n, s, err, poly)
		}
		// Points of both edges, at exact directions all over the angle.
		limit := new(big.Rat)
		limit.SetInt64(int64(s.Quarters))
		limit.Add(limit, s.Rest.Rat())
		for k := range int64(21) {
			turn := mul(limit, big.NewRat(k, 20))
			q := 0
			for turn.Cmp(big.NewRat(1, 1)) > 0 {
				turn.Sub(turn, big.NewRat(1, 1))
				q++
			}
			if q == s.Quarters && turn.Cmp(s.Rest.Rat()) > 0 {
				continue
			}
			square := mul(turn, turn)
			under := new(big.Rat).Add(big.NewRat(1, 1), square)
			p := xy{new(big.Rat).Quo(new(big.Rat).Sub(big.NewRat(1, 1), square), under), new(big.Rat).Quo(new(big.Rat).Add(turn, turn), under)}
			for range q {
				p = xy{new(big.Rat).Neg(p[1]), p[0]}
			}
			for _, l := range []units.Length{s.Outer, s.Inner, s.Outer.Add(s.Inner).DivInt(2)} {
				r := l.In(units.Inch).Rat()
				if !holds(poly, xy{mul(p[0], r), mul(p[1], r)}) {
					t.Fatalf("%+v: the point at %d/20, %v from the middle, is outside", s, k, l)
				}
			}
			// More than Within inside the inner edge, and outside the outer, it is none.
			for _, l := range []units.Length{s.Outer.Add(s.Within), s.Inner.Sub(s.Within)} {
				r := l.In(units.Inch).Rat()
				if l.Sign() > 0 && holds(poly, xy{mul(p[0], r), mul(p[1], r)}) && r.Sign() > 0 {
					t.Fatalf("%+v: the point at %d/20, %v from the middle, is inside", s, k, l)
				}
			}
		}
		for _, q := range poly {
			if length2(q).Cmp(square(s.Outer.Add(s.Within))) > 0 {
				t.Fatalf("%+v: %v is too far out", s, q)
			}
		}
	}
}

func TestSectorExact(t *testing.T) {
	// The straight edges of a half circle skirt lie on the line through its middle.
	poly, err := outline.Sector{Outer: in("40"), Inner: in("8"), Quarters: 2, Within: in("1/8")}.Points()
	if err != nil {
		t.Fatal(err)
	}
	on := 0
	for _, q := range poly {
		if q.Y.IsZero() {
			on++
		}
		if q.Y.Sign() < 0 {
			t.Errorf("%v lies beyond the straight edge", q)
		}
	}
	if on != 4 || len(poly) > 60 {
		t.Errorf("%d points on the straight edges, %d in all", on, len(poly))
	}
	for _, test := range []struct {
		shape outline.Sector
		want  string
	}{
		{outline.Sector{}, "outer: not given\nrest: not given\nwithin: not given"},
		{outline.Sector{Outer: in("4"), Inner: in("4"), Quarters: 4, Within: in("1")}, "inner: disagrees with what else is given\nquarters: disagrees with what else is given"},
		{outline.Sector{Outer: in("4"), Inner: in("-1"), Quarters: 4, Rest: units.RatioOf(1, 2), Within: in("5")}, "inner: wrong sign\nrest: not used here\nwithin: out of range"},
		{outline.Sector{Outer: in("4"), Quarters: 5, Rest: units.RatioOf(1, 1), Within: in("1")}, "quarters: out of range\nrest: out of range"},
		{outline.Sector{Outer: in("4"), Quarters: 1, Within: in("1/1000000")}, "within: out of range"},
		{outline.Sector{Outer: in("1" + repeat("0", 300)), Quarters: 1, Within: in("1/1000000")}, "within: out of range"},
	} {
		if _, err := test.shape.Points(); paths(err) != test.want {
			t.Errorf("%+v:\n%s\nwant\n%s", test.shape, paths(err), test.want)
		}
	}
}
