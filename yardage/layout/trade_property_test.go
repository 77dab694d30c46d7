package layout_test

import (
	"context"
	"errors"
	"math/big"
	"math/rand/v2"
	"slices"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
)

// each more or less often.
func trial(t testing.TB, r *rand.Rand) layout.Spec {
	s := layout.Spec{Work: 1, Seed: r.Uint64(), Cloth: layout.Cloth{Wide: in("40").Add(in("1/4").MulInt(r.Int64N(40))), Selvedge: in("1/2"), Ends: in("1/4")}}
	c := &s.Cloth
	c.Folded, c.OneWay = r.IntN(2) == 0, r.IntN(3) == 0
	if c.Folded && r.IntN(3) == 0 {
		c.Fold = in("16")
	}
	if r.IntN(3) == 0 {
		c.Gap = in("1/8")
	}
	if r.IntN(2) == 0 {
		c.RepeatX = in("1/2").MulInt(1 + r.Int64N(8))
	}
	if r.IntN(2) == 0 {
		c.RepeatY = in("1/3").MulInt(1 + r.Int64N(12))
	}
	for range r.IntN(4) {
		c.Flaws = append(c.Flaws, layout.Flaw{X: in("1").MulInt(r.Int64N(40)), Y: in("1").MulInt(r.Int64N(12)), Wide: in("1/2").MulInt(1 + r.Int64N(9)), Long: in("1/3").MulInt(1 + r.Int64N(9))})
	}
	if r.IntN(4) == 0 {
		c.Flaws = append(c.Flaws, layout.Flaw{Outline: outline("3,2 21,5 17,9")})
	}
	half := outline("0,0 5,0 4,7 0,9")
	for i := range 1 + r.IntN(4) {
		p := layout.Piece{Name: string(rune('a' + i)), Wide: in("1/2").MulInt(1 + r.Int64N(18)), Long: in("1").MulInt(1 + r.Int64N(12)), Count: 1 + r.IntN(3), Turn: layout.Turn(r.IntN(4))}
		switch r.IntN(4) {
		case 0:
			one := shapes(t, r, 1)[0]
			p.Wide, p.Long, p.Outline = units.Length{}, units.Length{}, one.Outline
		case 1:
			p.Fold, p.Turn = true, layout.Turn(r.IntN(3))
			if r.IntN(2) == 0 {
				p.Wide, p.Long, p.Outline = units.Length{}, units.Length{}, half
			}
		}
		if r.IntN(4) == 0 {
			p.Allowance = []units.Length{in("1/8").MulInt(1 + r.Int64N(5))}
		}
		if !p.Fold && r.IntN(3) == 0 {
			p.Pair, p.Count = true, 2
		}
		if r.IntN(2) == 0 {
			p.Notches = []layout.Notch{{Name: "waist", At: layout.Point{X: in("1"), Y: in("1/2").MulInt(r.Int64N(9))}}}
		}
		s.Pieces = append(s.Pieces, p)
	}
	if !slices.ContainsFunc(s.Pieces, func(p layout.Piece) bool { return len(p.Notches) > 0 }) {
		c.RepeatX, c.RepeatY = units.Length{}, units.Length{}
	}
	return s
}

// inch, and says what does not hold.
func wrong(s layout.Spec, lay []layout.Placement) string {
	rat := func(l units.Length) *big.Rat { return l.In(units.Inch).Rat() }
	var flaws [][]corner
	double := s.Cloth.Wide.DivInt(2)
	if s.Cloth.Fold.Sign() > 0 {
		double = s.Cloth.Fold
	}
	for _, f := range s.Cloth.Flaws {
		pts := f.Outline
		if pts == nil {
			x, y := f.X.Add(f.Wide), f.Y.Add(f.Long)
			pts = []layout.Point{{X: f.X, Y: f.Y}, {X: x, Y: f.Y}, {X: x, Y: y}, {X: f.X, Y: y}}
		}
		if !s.Cloth.Folded {
			flaws = append(flaws, cornersOf(pts))
			continue
		}
		for _, sign := range []int64{1, -1} {
			var layer []layout.Point
			for _, q := range pts {
				layer = append(layer, layout.Point{X: q.X.Sub(double).MulInt(sign), Y: q.Y})
			}
			flaws = append(flaws, cornersOf(layer))
		}
	}
	first := map[string]layout.Point{}
	for i, at := range lay {
		own := cornersOf(at.Corners(s))
		for _, other := range lay[:i] {
			q := cornersOf(other.Corners(s))
			if overlap(own, q) || s.Cloth.Gap.Sign() > 0 && apart(own, q).Cmp(rat(s.Cloth.Gap)) < 0 {
				return "overlap"
			}
		}
		for _, q := range flaws {
			if overlap(own, q) {
				return "flaw"
			}
		}
		one := s.Pieces[at.Piece]
		if one.Fold && s.Cloth.Folded && at.X.Sign() != 0 {
			return "fold"
		}
		if (at.Across || at.Half) && (s.Cloth.OneWay || one.Turn == layout.Keep) {
			return "turned"
		}
		for _, n := range at.Notches(s) {
			q, known := first[n.Name]
			if !known {
				first[n.Name] = n.At
				continue
			}
			for _, d := range [][2]units.Length{{n.At.X.Sub(q.X), s.Cloth.RepeatX}, {n.At.Y.Sub(q.Y), s.Cloth.RepeatY}} {
				if d[1].Sign() > 0 && !new(big.Rat).Quo(rat(d[0]), rat(d[1])).IsInt() {
					return "match"
				}
			}
		}
	}
	return ""
}

// is good or bad for Verify as it is for the slow check.
func TestTrade(t *testing.T) {
	t.Parallel()
	r := rand.New(rand.NewPCG(21, 22))
	good, refused, bad := 0, 0, map[string]int{}
	for range often(40) {
		s := trial(t, r)
		p, err := s.Plan(context.Background())
		if err != nil {
			if list(err) == nil {
				t.Fatalf("%v\n%+v", err, s)
			}
			refused++
			continue
		}
		good++
		if why := wrong(s, p.Placements); why != "" {
			t.Fatalf("%s: %+v\n%+v", why, s, p.Placements)
		}
		if p.Lay.Less(p.Bound) || units.RatioOf(1, 1).Less(p.Density) {
			t.Errorf("lay %v, bound %v, density %v", p.Lay, p.Bound, p.Density)
		}
		if err := p.Sheet().Check(); err != nil || p.SVG() == "" {
			t.Error(err)
		}
		copies := make([]int, len(s.Pieces))
		for _, at := range p.Placements {
			first, second := at.Copies(s)
			copies[at.Piece]++
			if first != at.Copy {
				t.Errorf("%+v cuts copy %d", at, first)
			}
			if second > 0 {
				copies[at.Piece]++
			}
		}
		for i, n := range copies {
			if n != s.Pieces[i].Count {
				t.Errorf("piece %d: %d copies of %d", i, n, s.Pieces[i].Count)
			}
		}
		for _, rest := range p.Leftover {
			hole := layout.Flaw{X: rest.X, Y: rest.Y, Wide: rest.Wide, Long: rest.Long}
			open := s
			open.Cloth.Flaws = []layout.Flaw{hole}
			if s.Cloth.Folded { // measured from the fold: put it on the right-hand layer
				double := s.Cloth.Wide.DivInt(2)
				if s.Cloth.Fold.Sign() > 0 {
					double = s.Cloth.Fold
				}
				open.Cloth.Flaws[0].X = hole.X.Add(double)
			}
			if err := layout.Verify(open, p.Placements); errors.Is(err, layout.ErrFlaw) {
				t.Errorf("leftover is not empty: %v", err)
			}
		}
		for range 8 {
			lay := slices.Clone(p.Placements)
			one := &lay[r.IntN(len(lay))]
			by := in("1/6").MulInt(r.Int64N(13) - 6)
			if r.IntN(2) == 0 {
				one.X = one.X.Add(by)
			} else {
				one.Y = one.Y.Add(by)
			}
			err, why := layout.Verify(s, lay), wrong(s, lay)
			kinds := map[string]error{"overlap": layout.ErrOverlap, "flaw": layout.ErrFlaw, "fold": layout.ErrFold, "match": layout.ErrMatch}
			if why != "" && !errors.Is(err, kinds[why]) || why == "" && err != nil && !errors.Is(err, layout.ErrOutside) {
				t.Fatalf("Verify: %v\nslow: %s\n%+v\n%+v", err, why, s, lay)
			}
			bad[why]++
		}
	}
	half, some := often(20), often(3)
	if good < half || refused > half || bad["overlap"] < half || bad["flaw"] < some || bad["fold"] < some || bad["match"] < often(10) || bad[""] < half {
		t.Errorf("%d good, %d refused, nudged %v", good, refused, bad)
	}
}

// Pieces thrown anywhere, on any cloth: Verify and the slow check agree.
func FuzzTrade(f *testing.F) {
	for seed := range uint64(12) {
		f.Add(seed, int64(3), int64(40))
	}
	f.Fuzz(func(t *testing.T, seed uint64, x, y int64) {
		r := rand.New(rand.NewPCG(seed, 5))
		s := trial(t, r)
		if _, err := s.Solve(); err != nil {
			if list(err) == nil {
				t.Fatal(err)
			}
			return
		}
		var lay []layout.Placement
		for i, p := range s.Pieces {
			for copy := 1; copy <= p.Count; copy++ {
				at := layout.Placement{Piece: i, Copy: copy, X: in("1/6").MulInt(r.Int64N(200)), Y: in("1/6").MulInt(r.Int64N(400))}
				at.Across, at.Half = p.Turn >= layout.Quarter && r.IntN(2) == 0, p.Turn != layout.Keep && r.IntN(2) == 0
				if p.Fold && s.Cloth.Folded {
					at.Across = false
					if r.IntN(4) > 0 {
						at.X = units.Length{}
					}
				}
				if _, second := at.Copies(s); second > 0 {
					copy++
				}
				lay = append(lay, at)
			}
		}
		lay[0].X = lay[0].X.Add(units.Inch.Frac(x, 64))
		lay[0].Y = lay[0].Y.Add(units.Inch.Frac(y, 64))
		err, why := layout.Verify(s, lay), wrong(s, lay)
		for _, one := range list(err) {
			if one.Path == "" || errors.Is(one.Err, layout.ErrCount) {
				t.Errorf("%v: %+v %+v", err, s, lay)
			}
		}
		kinds := map[string]error{"overlap": layout.ErrOverlap, "flaw": layout.ErrFlaw, "fold": layout.ErrFold, "match": layout.ErrMatch, "turned": layout.ErrTurn}
		if why != "" && !errors.Is(err, kinds[why]) && !errors.Is(err, layout.ErrGrid) || why == "" && err != nil && !errors.Is(err, layout.ErrOutside) && !errors.Is(err, layout.ErrGrid) {
			t.Errorf("Verify: %v\nslow: %s\n%+v\n%+v", err, why, s, lay)
		}
	})
}

// A thousand pieces that are matched, on cloth full of holes, are laid.
func TestManyMatched(t *testing.T) {
	t.Parallel()
	s := layout.Spec{Work: 1, Cloth: layout.Cloth{Wide: in("60"), RepeatX: in("5"), RepeatY: in("3")}}
	for i := range 200 {
		s.Cloth.Flaws = append(s.Cloth.Flaws, layout.Flaw{X: in("1").MulInt(int64(i * 7 % 59)), Y: in("1").MulInt(int64(i)), Wide: in("1/2"), Long: in("1/2")})
		s.Pieces = append(s.Pieces, layout.Piece{Wide: in("1/2").MulInt(int64(3 + i%9)), Long: in("1/2").MulInt(int64(5 + i%7)), Count: 5, Notches: []layout.Notch{{Name: string(rune('a' + i%5))}}})
	}
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if len(p.Placements) != 1000 {
		t.Errorf("%d placements", len(p.Placements))
	}
}
