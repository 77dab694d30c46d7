package layout_test

import (
	"context"
	"errors"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
)

// random is a good Spec of a few pieces in mixed fractions.
func random(r *rand.Rand) layout.Spec {
	steps := [...]units.Length{in("1"), in("1/8"), units.Millimetre.Of(5), in("1/3"), in("2/7"), in("1/64")}
	size := func(most int64) units.Length {
		step := steps[r.IntN(len(steps))]
		n, _ := units.Inch.Of(most).Div(step).Int(units.Down)
		return step.MulInt(1 + r.Int64N(n))
	}
	s := layout.Spec{Work: 1, Seed: r.Uint64(), Cloth: layout.Cloth{Wide: in("40").Add(size(20))}}
	if r.IntN(2) == 0 {
		s.Cloth.Selvedge, s.Cloth.Gap, s.Cloth.Ends = size(1), size(1), size(2)
	}
	for range 1 + r.IntN(8) {
		s.Pieces = append(s.Pieces, layout.Piece{Wide: size(30), Long: size(50), Count: 1 + r.IntN(3), Turn: layout.Turn(r.IntN(3))})
		if last := &s.Pieces[len(s.Pieces)-1]; r.IntN(4) == 0 {
			last.Wide = last.Long.Min(in("30")) // a square, or nearly
		}
	}
	return s
}

// What holds of every lay: it is good, no shorter than its bound, its figures
// are those of its placements, and the same Spec gives it again.
func TestLays(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for range 60 {
		s := random(r)
		p, err := s.Plan(context.Background())
		if err != nil {
			t.Fatal(err)
		}
		if err := layout.Verify(s, p.Placements); err != nil {
			t.Fatal(err)
		}
		if err := slow(s, p.Placements); err != "" {
			t.Fatal(err)
		}
		if p.Lay.Less(p.Bound) || p.Stopped || !p.Fits || !p.Spare.IsZero() || len(p.Assumed) > 0 {
			t.Errorf("lay %v, bound %v, %+v", p.Lay, p.Bound, p)
		}
		if p.Used != p.Lay.Add(s.Cloth.Ends.MulInt(2)) {
			t.Errorf("used %v, lay %v", p.Used, p.Lay)
		}
		if err := p.Sheet().Check(); err != nil {
			t.Error(err)
		}
		again, err := s.Plan(context.Background())
		if diff := cmp.Diff(p, again, sameLength, sameRatio); diff != "" || err != nil {
			t.Errorf("%v %s", err, diff)
		}
	}
}

// A good lay nudged by a little is good or bad for Verify as it is for the slow
// check.
func TestNudged(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 8))
	good := 0
	for range 25 {
		s := random(r)
		p, err := s.Plan(&patience{Context: context.Background(), enough: 2})
		if err != nil {
			t.Fatal(err)
		}
		s.Cloth.Long = p.Used
		for range 40 {
			lay := slices.Clone(p.Placements)
			one := &lay[r.IntN(len(lay))]
			by := in("1/16").MulInt(r.Int64N(9) - 4)
			switch r.IntN(3) {
			case 0:
				one.X = one.X.Add(by)
			case 1:
				one.Y = one.Y.Add(by)
			case 2:
				one.Across = !one.Across
			}
			err, want := layout.Verify(s, lay), slow(s, lay)
			if (err == nil) != (want == "") {
				t.Fatalf("Verify: %v\nslow: %s\n%+v\n%+v", err, want, s, lay)
			}
			if err == nil {
				good++
			}
		}
	}
	if good < 100 || good > 900 {
		t.Errorf("%d good lays of 1000", good)
	}
}

var sameRatio = cmp.Comparer(func(a, b units.Ratio) bool { return a == b })

// More work never gives a longer lay.
func TestMoreWork(t *testing.T) {
	for seed := range uint64(3) {
		s := rectangles(t, "c3p3")
		for i := range s.Pieces {
			s.Pieces[i].Turn = layout.Keep
		}
		s.Seed = seed
		var last units.Length
		for _, work := range []int{1, 2, 3, 7, 15} {
			s.Work = work
			p, err := s.Plan(context.Background())
			if err != nil {
				t.Fatal(err)
			}
			if last.Sign() > 0 && last.Less(p.Lay) {
				t.Errorf("seed %d: work %d gives %v, less work gave %v", seed, work, p.Lay, last)
			}
			last = p.Lay
		}
	}
}

// The bound is never above what can be done: pieces cut out of a whole can be
// laid in its length.
func TestBoundOfWhole(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for range 200 {
		wide, long := 8+r.Int64N(40), 8+r.Int64N(60)
		s := whole(r, wide, long, 2+r.IntN(12))
		p, err := s.Plan(&patience{Context: context.Background(), enough: 1 + r.IntN(3)})
		if err != nil {
			t.Fatal(err)
		}
		if whole := units.Inch.Of(long); whole.Less(p.Bound) {
			t.Errorf("bound %v of %v by %v: %v", p.Bound, wide, long, s.Pieces)
		}
	}
}

// whole cuts a rectangle straight through again and again, into n pieces at most.
func whole(r *rand.Rand, wide, long int64, n int) layout.Spec {
	sizes := [][2]int64{{wide, long}}
	for tries := 0; len(sizes) < n && tries < 9*n; tries++ {
		i, side := r.IntN(len(sizes)), r.IntN(2)
		if sizes[i][side] < 2 {
			continue
		}
		rest := sizes[i]
		rest[side] = 1 + r.Int64N(sizes[i][side]-1)
		sizes[i][side] -= rest[side]
		sizes = append(sizes, rest)
	}
	s := layout.Spec{Work: 1, Cloth: layout.Cloth{Wide: units.Inch.Of(wide)}}
	for _, one := range sizes {
		s.Pieces = append(s.Pieces, layout.Piece{Wide: units.Inch.Of(one[0]), Long: units.Inch.Of(one[1]), Count: 1, Turn: layout.Turn(r.IntN(3))})
	}
	return s
}

// A thousand pieces are laid, and laid well: cut from one whole, they take
// little more than its length.
func TestThousand(t *testing.T) {
	s := whole(rand.New(rand.NewPCG(5, 6)), 400, 1000, layout.MaxPieces)
	if n := len(s.Pieces); n != layout.MaxPieces {
		t.Fatalf("%d pieces", n)
	}
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if in("1100").Less(p.Lay) || p.Lay.Less(in("1000")) {
		t.Errorf("lay %v of 1000 in", p.Lay)
	}
	if sheet := p.Sheet(); len(sheet.Steps) != layout.MaxSteps+3 || sheet.Check() != nil {
		t.Errorf("%d steps, %v", len(sheet.Steps), sheet.Check())
	}
}

// patience is a context that is done once it has been asked so many times.
type patience struct {
	context.Context
	asked, enough int
}

func (p *patience) Err() error {
	if p.asked++; p.asked > p.enough {
		return context.Canceled
	}
	return nil
}

// Stopped with a lay in hand, the lay is returned; before that, the reason is.
func TestStopped(t *testing.T) {
	s := shirt()
	full, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	for _, enough := range []int{1, 2, 5, 40} {
		p, err := s.Plan(&patience{Context: context.Background(), enough: enough})
		if err != nil || !p.Stopped || p.Lay.Less(full.Lay) {
			t.Fatalf("asked %d times: stopped %v with %v, %v", enough, p.Stopped, p.Lay, err)
		}
		open := s
		open.Cloth.Long = units.Length{}
		if err := layout.Verify(open, p.Placements); err != nil {
			t.Error(err)
		}
		if text := p.Sheet().Text(); !strings.Contains(text, "stopped early") {
			t.Errorf("no caution:\n%s", text)
		}
	}
	if p, err := s.Plan(&patience{Context: context.Background()}); !errors.Is(err, context.Canceled) || p.Placements != nil {
		t.Errorf("%d placements, %v", len(p.Placements), err)
	}
	ctx, cancel := context.WithCancelCause(context.Background())
	late := errors.New("the shop has shut")
	cancel(late)
	if _, err := s.Plan(ctx); !errors.Is(err, late) {
		t.Error(err)
	}
}
