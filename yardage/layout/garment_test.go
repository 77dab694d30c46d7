package layout_test

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
)

var sameLength = cmp.Comparer(func(a, b units.Length) bool { return a == b })

func in(s string) units.Length { return units.MustParse(s + " in") }

// shirt is the highwayman's shirt: cloth of 85 1/2 in by 45 in, once washed.
func shirt() layout.Spec {
	return layout.Spec{
		Cloth: layout.Cloth{
			Wide:     in("45").Scale(units.RatioOf(98, 100)),
			Selvedge: in("1/2"),
			Long:     in("85 1/2").Scale(units.RatioOf(97, 100)),
			Ends:     in("1/2"),
		},
		Pieces: []layout.Piece{
			{Name: "back", Wide: in("25 1/4"), Long: in("31 3/16"), Count: 1},
			{Name: "facing", Wide: in("1 7/8"), Long: in("27 7/8"), Count: 2},
			{Name: "sleeve", Wide: in("18 3/4"), Long: in("22 1/2"), Count: 2},
			{Name: "front", Wide: in("13 3/4"), Long: in("31 3/16"), Count: 2},
			{Name: "cuff", Wide: in("10 1/4"), Long: in("5 3/4"), Count: 2},
			{Name: "collar", Wide: in("4"), Long: in("17"), Count: 2},
			{Name: "frill", Wide: in("12 1/4"), Long: in("3 3/4"), Count: 3},
			{Name: "back neck facing", Wide: in("7 1/2"), Long: in("4"), Count: 1},
		},
	}
}

// byHand is the same shirt laid by hand, from the corner inside selvedge and end.
func byHand() []layout.Placement {
	at := func(piece, copy int, x, y string) layout.Placement {
		return layout.Placement{Piece: piece, Copy: copy, X: in(x).Add(in("1/2")), Y: in(y).Add(in("1/2"))}
	}
	return []layout.Placement{
		at(0, 1, "0", "0"),
		at(1, 1, "25 1/4", "0"), at(1, 2, "27 1/8", "0"),
		at(2, 1, "0", "31 3/16"), at(2, 2, "0", "53 11/16"),
		at(3, 1, "29 1/4", "0"), at(3, 2, "29 1/4", "31 3/16"),
		at(4, 1, "18 3/4", "31 3/16"), at(4, 2, "18 3/4", "36 15/16"),
		at(5, 1, "18 3/4", "42 11/16"), at(5, 2, "22 3/4", "42 11/16"),
		at(6, 1, "29 1/4", "62 3/8"), at(6, 2, "29 1/4", "66 1/8"), at(6, 3, "29 1/4", "69 7/8"),
		at(7, 1, "18 3/4", "59 11/16"),
	}
}

// The two solutions agree: the hand's lay is good, and the search finds one as
// short from nothing.
func TestShirt(t *testing.T) {
	s := shirt()
	if err := layout.Verify(s, byHand()); err != nil {
		t.Fatal(err)
	}
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if hand := in("76 3/16"); hand.Less(p.Lay) {
		t.Errorf("lay %v, by hand %v", p.Lay, hand)
	}
	if !p.Fits || p.Stopped || !slices.Equal(p.Assumed, []string{"work"}) || p.Spec.Work != layout.DefaultWork {
		t.Errorf("fits %v, stopped %v, assumed %q, work %d", p.Fits, p.Stopped, p.Assumed, p.Spec.Work)
	}
	if sum := p.Used.Add(p.Spare); sum != s.Cloth.Long {
		t.Errorf("used and spare make %v", sum)
	}
	if right := p.Wide.Sub(s.Cloth.Usable()); right.Sign() > 0 {
		t.Errorf("%v too wide", right)
	}
	if area := p.Density.Mul(s.Cloth.Usable().Div(p.Lay)); area.Sign() <= 0 || p.Density.Cmp(units.RatioOf(1, 1)) > 0 {
		t.Errorf("density %v", p.Density)
	}
	// A hair narrower than the hand's lay is wide, and the hand's lay is off the cloth.
	s.Cloth.Wide = in("44").Sub(in("1/1000"))
	if err := layout.Verify(s, byHand()); !errors.Is(err, layout.ErrOutside) {
		t.Errorf("narrower cloth: %v", err)
	}
}

// A lay that is too long for the cloth is given all the same, with what it lacks.
func TestTooLong(t *testing.T) {
	s := shirt()
	s.Cloth.Long = in("72")
	s.Work = 1
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if p.Fits || p.Spare != s.Cloth.Long.Sub(p.Used) || p.Spare.Sign() >= 0 {
		t.Errorf("fits %v, spare %v of %v", p.Fits, p.Spare, p.Used)
	}
	if err := layout.Verify(s, p.Placements); !errors.Is(err, layout.ErrOutside) {
		t.Errorf("against the cloth given: %v", err)
	}
	s.Cloth.Long = units.Length{}
	if err := layout.Verify(s, p.Placements); err != nil {
		t.Errorf("against a cloth long enough: %v", err)
	}
	if text := p.Sheet().Text(); !strings.Contains(text, "longer than the cloth") {
		t.Errorf("no caution:\n%s", text)
	}
}

// Where turning gains nothing the grain is kept.
func TestGrainKept(t *testing.T) {
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("12")}, Work: 1, Pieces: []layout.Piece{
		{Name: "pocket", Wide: in("3"), Long: in("4"), Count: 12, Turn: layout.Quarter},
	}}
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	if p.Lay != in("12") || p.Lay != p.Bound {
		t.Errorf("lay %v, bound %v", p.Lay, p.Bound)
	}
	want := make([]layout.Placement, 12)
	for i := range want {
		want[i] = layout.Placement{Copy: i + 1, X: in("3").MulInt(int64(i % 4)), Y: in("4").MulInt(int64(i / 4))}
	}
	if diff := cmp.Diff(want, p.Placements, sameLength); diff != "" {
		t.Error(diff)
	}
}

// The lay is the same on every machine, whatever its word and however many
// processors it has: this one was written down once.
func TestSameEverywhere(t *testing.T) {
	s := doublet()
	s.Pieces[1].Count, s.Seed = 7, 11
	s.Cloth.Long = units.Length{}
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	for _, at := range p.Placements {
		fmt.Fprintln(&b, at.Piece, at.Copy, at.Across, at.X, at.Y)
	}
	const want = "0 1 false 1/2 in 1 in\n1 1 true 16 3/4 in 1 in\n1 2 true 28 1/2 in 1 in\n1 3 false 16 3/4 in 7 1/4 in\n1 4 false 23 in 7 1/4 in\n" +
		"1 5 false 29 1/2 in 7 1/4 in\n1 6 true 21 1/4 in 14 1/2 in\n1 7 true 28 1/2 in 14 1/2 in\n"
	if diff := cmp.Diff(want, b.String()); diff != "" {
		t.Errorf("lay %v, bound %v: %s", p.Lay, p.Bound, diff)
	}
}
