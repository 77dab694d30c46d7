package layout_test

import (
	"context"
	"fmt"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
)

// The envelope of the highwayman's shirt asks for 99 inches; there are 85 1/2,
// which washing makes shorter and narrower. Does the cloth do?
func ExampleSpec_Plan() {
	inch := units.Inch
	p, err := layout.Spec{
		Cloth: layout.Cloth{
			Wide:     inch.Of(45).Scale(units.RatioOf(98, 100)),
			Long:     inch.Mixed(85, 1, 2).Scale(units.RatioOf(97, 100)),
			Selvedge: inch.Frac(1, 2),
			Ends:     inch.Frac(1, 2),
		},
		Pieces: []layout.Piece{
			{Name: "back", Wide: inch.Mixed(25, 1, 4), Long: inch.Mixed(31, 3, 16), Count: 1},
			{Name: "facing", Wide: inch.Mixed(1, 7, 8), Long: inch.Mixed(27, 7, 8), Count: 2},
			{Name: "sleeve", Wide: inch.Mixed(18, 3, 4), Long: inch.Mixed(22, 1, 2), Count: 2},
			{Name: "front", Wide: inch.Mixed(13, 3, 4), Long: inch.Mixed(31, 3, 16), Count: 2},
			{Name: "cuff", Wide: inch.Mixed(10, 1, 4), Long: inch.Mixed(5, 3, 4), Count: 2},
			{Name: "collar", Wide: inch.Of(4), Long: inch.Of(17), Count: 2},
			{Name: "frill", Wide: inch.Mixed(12, 1, 4), Long: inch.Mixed(3, 3, 4), Count: 3},
			{Name: "back neck facing", Wide: inch.Mixed(7, 1, 2), Long: inch.Of(4), Count: 1},
		},
	}.Plan(context.Background())
	if err != nil {
		fmt.Println(err)
		return
	}
	exact := units.Notation{}.Exact
	fmt.Println("fits:", p.Fits)
	fmt.Println("lay:", exact(p.Lay))
	fmt.Println("to spare:", exact(p.Spare))
	// Output:
	// fits: true
	// lay: 76 3/16 in
	// to spare: 5 299/400 in
}

// A hand's own lay of a page's doublet is checked. The second sleeve was chalked
// a quarter inch too near to the first.
func ExampleVerify() {
	inch := units.Inch
	s := layout.Spec{
		Cloth: layout.Cloth{Wide: inch.Of(36), Selvedge: inch.Frac(1, 2)},
		Pieces: []layout.Piece{
			{Name: "sleeve", Wide: inch.Of(14), Long: inch.Of(18), Count: 2},
			{Name: "pocket", Wide: inch.Of(6), Long: inch.Of(7), Count: 1},
		},
	}
	fmt.Println(layout.Verify(s, []layout.Placement{
		{Piece: 0, Copy: 1, X: inch.Frac(1, 2)},
		{Piece: 0, Copy: 2, X: inch.Mixed(14, 1, 4)},
		{Piece: 1, Copy: 1, X: inch.Mixed(28, 3, 4)},
	}))
	// Output:
	// placements[1] sleeve 2: pieces overlap, want clear of sleeve 1, placements[0]
}

// The strips of a ruff may lie either way; the worksheet says where each goes.
func ExamplePlan_Sheet() {
	inch := units.Inch
	p, err := layout.Spec{
		Cloth: layout.Cloth{Wide: inch.Of(36)},
		Pieces: []layout.Piece{
			{Name: "ruff strip", Wide: inch.Of(4), Long: inch.Of(36), Count: 2, Turn: layout.Quarter},
			{Name: "collar band", Wide: inch.Of(3), Long: inch.Of(17), Count: 2, Turn: layout.Quarter},
		},
		Work: 1,
	}.Plan(context.Background())
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, step := range p.Sheet().Steps[1:5] {
		fmt.Printf("%s: %v from %s, %v from the selvedge; %s\n", step.Do, step.At, step.From, step.Check.Want, step.Note)
	}
	fmt.Println("length used:", p.Used)
	// Output:
	// Lay ruff strip, copy 1: 0 in from the cut end, 0 in from the selvedge; turned a quarter: its grain line lies across the cloth
	// Lay ruff strip, copy 2: 4 in from the cut end, 0 in from the selvedge; turned a quarter: its grain line lies across the cloth
	// Lay collar band, copy 1: 8 in from the cut end, 0 in from the selvedge; turned a quarter: its grain line lies across the cloth
	// Lay collar band, copy 2: 8 in from the cut end, 19 in from the selvedge; turned a quarter: its grain line lies across the cloth
	// length used: 11 in
}

// Solve checks a Spec without searching. What cannot be, whatever the lay, is
// refused with the reason.
func ExampleSpec_Solve() {
	inch := units.Inch
	_, err := layout.Spec{
		Cloth:  layout.Cloth{Wide: inch.Of(45), Long: inch.Of(36)},
		Pieces: []layout.Piece{{Name: "napkin", Wide: inch.Of(12), Long: inch.Of(12), Count: 10}},
	}.Solve()
	fmt.Println(err)
	// Output:
	// cloth.long 36 in: out of range, want at least 48 in (what the pieces take up, whatever the lay)
}

func ExampleCloth_Usable() {
	c := layout.Cloth{Wide: units.Inch.Of(45), Selvedge: units.Inch.Frac(1, 2)}
	fmt.Println(c.Usable())
	// Output: 44 in
}

func ExamplePlacement_Size() {
	s := layout.Spec{Pieces: []layout.Piece{{Name: "cuff", Wide: units.Inch.Of(10), Long: units.Inch.Of(6), Count: 1, Turn: layout.Quarter}}}
	fmt.Println(layout.Placement{Piece: 0, Copy: 1, Across: true}.Size(s))
	// Output: 6 in 10 in
}

func ExamplePlan_SVG() {
	p, err := layout.Spec{
		Cloth:  layout.Cloth{Wide: units.Inch.Of(36)},
		Pieces: []layout.Piece{{Name: "cloak", Wide: units.Inch.Of(30), Long: units.Inch.Of(50), Count: 1}},
		Work:   1,
	}.Plan(context.Background())
	fmt.Println(err, strings.Count(p.SVG(), "<rect"), "rectangles: the cloth, what may be used of it, the cloak")
	// Output: <nil> 3 rectangles: the cloth, what may be used of it, the cloak
}
