package layout_test

import (
	"context"
	"errors"
	"fmt"
	"math/big"
	"slices"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
)

// slow checks a lay another way: every corner as a fraction of an inch, every
// pair of pieces, by the area they have in common. It says what is wrong, and
// nothing of a good lay.
func slow(s layout.Spec, placements []layout.Placement) string {
	rat := func(l units.Length) *big.Rat { return l.In(units.Inch).Rat() }
	type box struct{ x, y [2]*big.Rat }
	half := new(big.Rat).Quo(rat(s.Cloth.Gap), big.NewRat(2, 1))
	count := map[[2]int]int{}
	boxes := make([]box, len(placements))
	for i, at := range placements {
		if at.Piece < 0 || at.Piece >= len(s.Pieces) {
			return fmt.Sprintf("%d: no piece %d", i, at.Piece)
		}
		p := s.Pieces[at.Piece]
		w, l := rat(p.Wide), rat(p.Long)
		if at.Across {
			w, l = l, w
			if p.Turn != layout.Quarter {
				return fmt.Sprintf("%d: turned", i)
			}
		}
		count[[2]int{at.Piece, at.Copy}]++
		x, y := rat(at.X), rat(at.Y)
		far, end := new(big.Rat).Add(x, w), new(big.Rat).Add(y, l)
		right := new(big.Rat).Sub(rat(s.Cloth.Wide), rat(s.Cloth.Selvedge))
		low := new(big.Rat).Sub(rat(s.Cloth.Long), rat(s.Cloth.Ends))
		if x.Cmp(rat(s.Cloth.Selvedge)) < 0 || far.Cmp(right) > 0 || y.Cmp(rat(s.Cloth.Ends)) < 0 || s.Cloth.Long.Sign() > 0 && end.Cmp(low) > 0 {
			return fmt.Sprintf("%d: off the cloth", i)
		}
		// Each piece grown by half the gap on every side.
		boxes[i] = box{
			[2]*big.Rat{x.Sub(x, half), far.Add(far, half)},
			[2]*big.Rat{y.Sub(y, half), end.Add(end, half)},
		}
	}
	for i, p := range s.Pieces {
		for copy := range p.Count {
			if n := count[[2]int{i, copy + 1}]; n != 1 {
				return fmt.Sprintf("piece %d, copy %d: laid %d times", i, copy+1, n)
			}
			delete(count, [2]int{i, copy + 1})
		}
	}
	if len(count) > 0 {
		return "copies that are none"
	}
	common := func(a, b [2]*big.Rat) *big.Rat {
		lo, hi := a[0], a[1]
		if b[0].Cmp(lo) > 0 {
			lo = b[0]
		}
		if b[1].Cmp(hi) < 0 {
			hi = b[1]
		}
		return new(big.Rat).Sub(hi, lo)
	}
	for i, a := range boxes {
		for j, b := range boxes[:i] {
			if common(a.x, b.x).Sign() > 0 && common(a.y, b.y).Sign() > 0 {
				return fmt.Sprintf("%d on %d", i, j)
			}
		}
	}
	return ""
}

// drawn makes a Spec and a lay, good or bad, from bytes.
func drawn(data []byte) (layout.Spec, []layout.Placement) {
	next := func() int64 {
		if len(data) == 0 {
			return 0
		}
		b := data[0]
		data = data[1:]
		return int64(b)
	}
	size := func() units.Length {
		n := next()
		return units.Inch.Frac(n%32+1, 1+n/32) // 1/8 in to 32 in
	}
	s := layout.Spec{Work: 1, Cloth: layout.Cloth{Wide: units.Inch.Of(33 + next()%32)}}
	if odd := next(); odd%2 == 1 {
		s.Cloth.Selvedge, s.Cloth.Gap, s.Cloth.Ends = units.Inch.Frac(odd%8, 16), units.Inch.Frac(odd/8%4, 8), units.Inch.Frac(odd/32, 2)
	}
	if long := next(); long%4 == 0 {
		s.Cloth.Long = units.Inch.Of(1 + long)
	}
	for range 1 + next()%5 {
		s.Pieces = append(s.Pieces, layout.Piece{Name: string(rune('a' + len(s.Pieces))), Wide: size(), Long: size(), Count: int(1 + next()%3), Turn: layout.Turn(next() % 4)})
	}
	var placements []layout.Placement
	for len(data) > 0 && len(placements) < 20 {
		how := next()
		placements = append(placements, layout.Placement{
			Piece: int(how%6) - int(how/250), Copy: int(how / 6 % 4), Across: how/24%2 == 1,
			X: units.Inch.Frac(next()-2, 4), Y: units.Inch.Frac(next()-2, 2),
		})
	}
	return s, placements
}

// Verify and the slow check agree on every lay.
func FuzzVerify(f *testing.F) {
	f.Add([]byte("two pieces side by side, perhaps"))
	f.Add([]byte{8, 0, 1, 0, 7, 7, 0, 0, 6, 2, 2}) // one piece, good
	f.Add([]byte{8, 0, 1, 0, 7, 7, 0, 0, 6, 1, 2}) // off the selvedge
	f.Add([]byte{8, 0, 1, 0, 7, 7, 1, 0, 6, 2, 2, 12, 33, 2})
	f.Add([]byte{8, 0, 1, 0, 7, 7, 1, 0, 6, 2, 2, 12, 34, 2})
	f.Fuzz(func(t *testing.T, data []byte) {
		s, placements := drawn(data)
		if _, err := s.Solve(); err != nil {
			return // the faults of a Spec are FuzzSpec's
		}
		if askew(s) {
			return
		}
		err, want := layout.Verify(s, placements), slow(s, placements)
		if (err == nil) != (want == "") {
			t.Fatalf("Verify: %v\nslow: %s\n%+v\n%+v", err, want, s, placements)
		}
	})
}

// askew reports whether a piece is cut on the bias: slow knows no rectangle that
// lies so.
func askew(s layout.Spec) bool {
	return slices.ContainsFunc(s.Pieces, func(p layout.Piece) bool { return p.Turn == layout.Bias })
}

// No Spec makes a Plan panic; a Plan that is given keeps what it promises, and
// one that is not names the field.
func FuzzSpec(f *testing.F) {
	f.Add([]byte("a highwayman's shirt"))
	f.Add([]byte{40, 255, 8, 4, 30, 60, 2, 2, 200, 90, 1, 0, 17, 80, 2, 3})
	f.Add([]byte{0, 0, 4, 0, 31, 31, 2, 0}) // not enough cloth
	f.Add([]byte{})
	f.Fuzz(func(t *testing.T, data []byte) {
		s, placements := drawn(data)
		if len(placements) > 0 && len(data)%3 == 0 {
			s.Cloth.Gap, s.Work = placements[0].X.Scale(units.RatioOf(int64(len(data)), 7)), len(data)-9
			s.Pieces[0].Wide = placements[0].Y
			s.Work = max(min(s.Work, 1), -1)
			if s.Work == 0 {
				s.Work = 1
			}
		}
		p, err := s.Plan(context.Background())
		if err != nil {
			faults := list(err)
			if len(faults) == 0 {
				t.Fatal(err)
			}
			for _, one := range faults {
				if one.Path == "" || one.Err == nil {
					t.Errorf("a fault without path or kind: %v", err)
				}
			}
			return
		}
		open := s
		if !p.Fits {
			open.Cloth.Long = units.Length{}
			if err := layout.Verify(s, p.Placements); !errors.Is(err, layout.ErrOutside) {
				t.Errorf("does not fit, yet %v", err)
			}
		}
		if wrong := slow(open, p.Placements); wrong != "" && !askew(s) {
			t.Error(wrong)
		}
		if p.Lay.Less(p.Bound) {
			t.Errorf("lay %v, bound %v", p.Lay, p.Bound)
		}
		if err := p.Sheet().Check(); err != nil {
			t.Error(err)
		}
		if p.Sheet().Text() == "" || p.SVG() == "" {
			t.Error("nothing to read")
		}
	})
}
