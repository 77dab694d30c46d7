package layout_test

import (
	"context"
	"encoding/xml"
	"errors"
	"io"
	"math/rand/v2"
	"runtime"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
)

// nested is a good Spec of a few outlines and rectangles.
func nested(t testing.TB, r *rand.Rand) layout.Spec {
	s := layout.Spec{Work: 1, Seed: r.Uint64(), Cloth: layout.Cloth{Wide: in("20").Add(units.Inch.Frac(r.Int64N(9), 3))}}
	if r.IntN(2) == 0 {
		s.Cloth.Selvedge, s.Cloth.Gap, s.Cloth.Ends = in("1/2"), units.Inch.Frac(1, 1+r.Int64N(4)), in("1/4")
	}
	s.Pieces = shapes(t, r, 1+r.IntN(4))
	for i := range s.Pieces {
		p := &s.Pieces[i]
		p.Turn, p.Count = layout.Turn(r.IntN(3)), 1+r.IntN(3)
		if r.IntN(3) == 0 {
			p.Pair, p.Count = true, 2*p.Count
		}
	}
	if r.IntN(2) == 0 {
		s.Pieces = append(s.Pieces, layout.Piece{Wide: in("3"), Long: in("7/2"), Count: 1 + r.IntN(3), Turn: layout.Turn(r.IntN(3))})
	}
	return s
}

// What holds of every lay of outlines.
func TestOutlineLays(t *testing.T) {
	r := rand.New(rand.NewPCG(21, 22))
	for range 25 {
		s := nested(t, r)
		p, err := s.Plan(context.Background())
		if err != nil {
			t.Fatalf("%v\n%+v", err, s)
		}
		if err := layout.Verify(s, p.Placements); err != nil {
			t.Fatal(err)
		}
		if p.Lay.Less(p.Bound) || p.Stopped || !p.Fits {
			t.Errorf("lay %v, bound %v, %+v", p.Lay, p.Bound, p)
		}
		for i, a := range p.Placements {
			for _, b := range p.Placements[:i] {
				if overlap(cornersOf(a.Corners(s)), cornersOf(b.Corners(s))) {
					t.Fatalf("%+v and %+v overlap", a, b)
				}
			}
		}
		if err := p.Sheet().Check(); err != nil {
			t.Error(err)
		}
		wellFormed(t, p.SVG())
	}
}

// The same Spec gives the same lay, on one processor as on two, and more work
// never gives a longer one.
func TestOutlineWork(t *testing.T) {
	r := rand.New(rand.NewPCG(23, 24))
	s := nested(t, r)
	for i := range s.Pieces {
		s.Pieces[i].Count *= 4
	}
	var last layout.Plan
	for _, work := range []int{1, 2, 4} {
		s.Work = work
		one := plan(t, s)
		was := runtime.GOMAXPROCS(1)
		two := plan(t, s)
		runtime.GOMAXPROCS(was)
		if diff := cmp.Diff(one, two, sameLength, sameRatio); diff != "" {
			t.Error(diff)
		}
		if work > 1 && last.Lay.Less(one.Lay) {
			t.Errorf("work %d gives %v, less gave %v", work, one.Lay, last.Lay)
		}
		last = one
	}
	if s.Seed++; plan(t, s).Lay.IsZero() {
		t.Error("no lay")
	}
}

func plan(t *testing.T, s layout.Spec) layout.Plan {
	t.Helper()
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// Pieces cut from one whole go back into it.
func TestOutlineWhole(t *testing.T) {
	s := layout.Spec{Work: 20, Cloth: layout.Cloth{Wide: in("6")}, Pieces: []layout.Piece{
		{Outline: outline("0,0 6,0 3,4 0,3"), Count: 1, Turn: layout.Half},
		{Outline: outline("6,0 6,8 4,8 3,4"), Count: 1, Turn: layout.Half},
		{Outline: outline("0,3 3,4 4,8 0,8"), Count: 1, Turn: layout.Half},
	}}
	if p := plan(t, s); p.Lay != in("8") || p.Lay != p.Bound || p.Density != units.RatioOf(1, 1) {
		t.Errorf("lay %v, bound %v, density %v", p.Lay, p.Bound, p.Density)
	}
}

// Stopped with a lay in hand, that is returned; before, the reason is; and
// nothing goes on after the call.
func TestOutlineStopped(t *testing.T) {
	s := nested(t, rand.New(rand.NewPCG(25, 26)))
	before := runtime.NumGoroutine()
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	if p, err := s.Plan(ctx); !errors.Is(err, context.Canceled) || p.Placements != nil {
		t.Error(p, err)
	}
	for enough := 1; enough < 60; enough += 7 {
		p, err := s.Plan(&counted{Context: context.Background(), left: make(chan struct{}, enough)})
		if err != nil || layout.Verify(s, p.Placements) != nil || !p.Stopped && p.Lay != p.Bound {
			t.Errorf("%d: %v %v", enough, p.Stopped, err)
		}
	}
	layout.Ended(t, before)
}

// counted is a context that is done once it has been asked so many times, from
// any goroutine.
type counted struct {
	context.Context
	left chan struct{}
}

func (c *counted) Err() error {
	select {
	case c.left <- struct{}{}:
		return nil
	default:
		return context.Canceled
	}
}

// Hundreds of pieces, no two alike, and hundreds of a few kinds: a lay at once.
func TestOutlineHundreds(t *testing.T) {
	t.Parallel()
	r := rand.New(rand.NewPCG(27, 28))
	s := layout.Spec{Work: 1, Cloth: layout.Cloth{Wide: in("60")}, Pieces: shapes(t, r, 300)}
	for i := range s.Pieces {
		s.Pieces[i].Outline[0].X = s.Pieces[i].Outline[0].X.Add(units.Inch.Frac(int64(i), 1<<20))
		if _, err := (layout.Spec{Cloth: s.Cloth, Pieces: s.Pieces[i : i+1]}).Solve(); err != nil {
			s.Pieces[i] = s.Pieces[0]
		}
	}
	if p := plan(t, s); p.Density.Less(units.RatioOf(1, 3)) {
		t.Errorf("density %v", p.Density)
	}
	s.Pieces = s.Pieces[:4]
	for i := range s.Pieces {
		s.Pieces[i].Count = 60
	}
	if p := plan(t, s); p.Density.Less(units.RatioOf(1, 3)) {
		t.Errorf("density %v", p.Density)
	}
}

// An outline of many corners is laid by a plainer one that holds it.
func TestOutlineMany(t *testing.T) {
	var gear []layout.Point
	for i := range int64(60) { // a strip with a finely toothed edge and a bow on the other side
		gear = append(gear, layout.Point{X: units.Inch.Frac(i*100+i%2*7, 600), Y: units.Inch.Frac(i%2*5, 100)})
	}
	for i := int64(59); i >= 0; i-- {
		gear = append(gear, layout.Point{X: units.Inch.Frac(i, 6), Y: in("2").Add(units.Inch.Frac(i*(59-i), 900))})
	}
	s := layout.Spec{Work: 1, Cloth: layout.Cloth{Wide: in("21")}, Pieces: []layout.Piece{{Name: "scallop", Outline: gear, Count: 4, Turn: layout.Quarter}}}
	p := plan(t, s)
	if err := layout.Verify(s, p.Placements); err != nil || p.Density.Less(units.RatioOf(6, 10)) {
		t.Errorf("%v, density %v", err, p.Density)
	}
}

// The sheet and the drawing tell how each piece lies.
func TestOutlineSheet(t *testing.T) {
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("30")}, Pieces: []layout.Piece{{Name: "gore", Outline: outline("0,0 4,0 3,6"), Count: 4, Pair: true, Turn: layout.Quarter}}}
	p := layout.Plan{Spec: s, Placements: []layout.Placement{{Copy: 1}, {Copy: 2, Half: true}, {Copy: 3, Across: true}, {Copy: 4, Across: true, Half: true}}, Used: in("30")}
	text := p.Sheet().Text()
	for _, want := range []string{"turned end for end; the other hand", "turned a quarter", "turned three quarters", "smallest rectangle"} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
	if strings.Contains(text, "laid as rectangles") {
		t.Error(text)
	}
	if svg := p.SVG(); strings.Count(svg, "z\" fill=") != 4 || strings.Count(svg, "rotate(180)") != 2 {
		t.Error(svg)
	}
}

// The plan's outlines are its own.
func TestOutlineOwned(t *testing.T) {
	s := layout.Spec{Work: 1, Cloth: layout.Cloth{Wide: in("30")}, Pieces: []layout.Piece{{Outline: outline("0,0 4,0 3,6"), Count: 1}}}
	p := plan(t, s)
	s.Pieces[0].Outline[0] = layout.Point{X: in("9")}
	if !slices.Equal(p.Spec.Pieces[0].Outline, outline("0,0 4,0 3,6")) {
		t.Error(p.Spec.Pieces[0].Outline)
	}
}

// FuzzOutline makes outlines of any bytes: they are refused, or laid and proven.
func FuzzOutline(f *testing.F) {
	f.Add([]byte{0, 0, 40, 0, 20, 60}, uint8(2), uint8(3))
	f.Add([]byte{0, 0, 9, 0, 9, 9, 4, 3, 0, 9}, uint8(5), uint8(6))
	f.Add([]byte{0, 0, 9, 9, 9, 0, 0, 9}, uint8(1), uint8(0))
	f.Fuzz(func(t *testing.T, data []byte, count, how uint8) {
		if len(data) > 40 {
			data = data[:40]
		}
		p := layout.Piece{Count: int(count % 9), Turn: layout.Turn(how & 3), Pair: how&4 != 0}
		for i := 0; i+1 < len(data); i += 2 {
			p.Outline = append(p.Outline, layout.Point{X: units.Inch.Frac(int64(data[i]), 1+int64(how>>6)), Y: units.Millimetre.Of(int64(int8(data[i+1])))})
		}
		s := layout.Spec{Work: 1, Cloth: layout.Cloth{Wide: in("300"), Gap: units.Inch.Frac(int64(how>>4&3), 8)}, Pieces: []layout.Piece{p}}
		got, err := s.Plan(&counted{Context: context.Background(), left: make(chan struct{}, 20)})
		if err != nil {
			if faults := list(err); len(faults) == 0 || faults[0].Path == "" {
				t.Fatalf("%v", err)
			}
			return
		}
		if err := layout.Verify(s, got.Placements); err != nil {
			t.Fatal(err)
		}
		if err := got.Sheet().Check(); err != nil {
			t.Fatal(err)
		}
	})
}

// wellFormed reads a drawing as XML.
func wellFormed(t *testing.T, svg string) {
	t.Helper()
	for dec := xml.NewDecoder(strings.NewReader(svg)); ; {
		if _, err := dec.Token(); errors.Is(err, io.EOF) {
			return
		} else if err != nil {
			t.Fatalf("%v in\n%s", err, svg)
		}
	}
}
