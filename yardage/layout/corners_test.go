package layout_test

import (
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
)

// Pieces of very many corners, none of which can be left out, are laid by
// plainer outlines that hold them.
func TestVeryManyCorners(t *testing.T) {
	step := units.Inch.Frac(1, 64)
	var comb []layout.Point
	for k := range int64(900) { // a saw whose teeth are all of other lengths
		comb = append(comb, layout.Point{X: step.MulInt(640 + 7*(k*k%61)), Y: step.MulInt(2 * k)}, layout.Point{X: step.MulInt(320 + 5*(k*k%53)), Y: step.MulInt(2*k + 1)})
	}
	comb = append(comb, layout.Point{Y: step.MulInt(1800)}, layout.Point{})
	s := layout.Spec{
		Cloth:  layout.Cloth{Wide: units.Inch.Of(45)},
		Pieces: []layout.Piece{{Name: "dragon's crest", Outline: comb, Count: 100, Turn: layout.Half}},
		Work:   1,
	}
	p, err := s.Plan(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	if err := layout.Verify(s, p.Placements); err != nil {
		t.Error(err)
	}
	if p.Stopped {
		t.Error("not searched")
	}
}
