package layout_test

import (
	"context"
	"fmt"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
)

// A page's doublet on folded cloth: half the back lies on the fold, one placement
// cuts both fronts, and the moth has been at one corner.
func ExamplePlacement_Copies() {
	inch := units.Inch
	s := layout.Spec{
		Cloth: layout.Cloth{Wide: inch.Of(45), Selvedge: inch.Frac(1, 2), Folded: true,
			Flaws: []layout.Flaw{{X: inch.Of(43), Wide: inch.Of(2), Long: inch.Of(6)}}},
		Pieces: []layout.Piece{
			{Name: "back", Wide: inch.Of(9), Long: inch.Of(18), Count: 1, Fold: true},
			{Name: "front", Wide: inch.Of(10), Long: inch.Of(18), Count: 2, Pair: true},
		},
		Work: 1,
	}
	p, err := s.Plan(context.Background())
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, at := range p.Placements {
		first, second := at.Copies(s)
		fmt.Println(s.Pieces[at.Piece].Name, first, second, at.X, at.Y)
	}
	fmt.Println("length used:", p.Used)
	// Output:
	// back 1 0 0 in 0 in
	// front 1 2 9 in 0 in
	// length used: 18 in
}

// How much must be bought, by the width of the cloth and by the eighth of a yard?
func ExampleWidths() {
	inch := units.Inch
	choices, err := layout.Widths(context.Background(), layout.Spec{
		Cloth:  layout.Cloth{Selvedge: inch.Frac(1, 2), Counter: inch.Mixed(4, 1, 2)},
		Pieces: []layout.Piece{{Name: "ruff strip", Wide: inch.Of(12), Long: inch.Of(30), Count: 6}},
		Work:   1,
	}, inch.Of(36), inch.Of(45), inch.Of(60))
	for _, c := range choices {
		fmt.Println(c.Cloth.Wide, c.Used, c.Buy)
	}
	fmt.Println(err)
	// Output:
	// 36 in 90 in 90 in
	// 45 in 60 in 63 in
	// 60 in 60 in 63 in
	// <nil>
}

// Velvet has a nap: is it dearer? Folded, the cloth is too narrow for these.
func ExampleWays() {
	inch := units.Inch
	gore := []layout.Point{{}, {X: inch.Of(12)}, {Y: inch.Of(20)}}
	ways, err := layout.Ways(context.Background(), layout.Spec{
		Cloth:  layout.Cloth{Wide: inch.Of(12)},
		Pieces: []layout.Piece{{Name: "gore", Outline: gore, Count: 2, Turn: layout.Half}},
		Work:   1,
	})
	for _, w := range ways {
		fmt.Println("folded", w.Cloth.Folded, "one way", w.Cloth.OneWay, w.Used)
	}
	fmt.Println(err)
	// Output:
	// folded false one way false 20 in
	// folded false one way true 40 in
	// <nil>
}

// What is left of the cloth when a cuff and its facing are cut.
func ExamplePlan_leftover() {
	inch := units.Inch
	p, err := layout.Spec{
		Cloth:  layout.Cloth{Wide: inch.Of(20), Long: inch.Of(10)},
		Pieces: []layout.Piece{{Name: "cuff", Wide: inch.Of(8), Long: inch.Of(6), Count: 2}},
		Work:   1,
	}.Plan(context.Background())
	for _, r := range p.Leftover {
		fmt.Println(r.Wide, "by", r.Long, "at", r.X, r.Y)
	}
	fmt.Println(err)
	// Output:
	// 20 in by 4 in at 0 in 6 in
	// 4 in by 6 in at 16 in 0 in
	// <nil>
}

func ExamplePiece_Bias() {
	binding := layout.Piece{Name: "binding", Wide: units.Inch.Of(2), Long: units.Inch.Of(40), Count: 1, Turn: layout.Bias}
	sin, cos := binding.Bias()
	fmt.Println(sin.Rat(), cos.Rat())
	// Output: 4059/5741 4060/5741
}

// On checks, the notch of the front and that of the sleeve are put on one place.
func ExamplePlacement_Notches() {
	inch := units.Inch
	s := layout.Spec{
		Cloth: layout.Cloth{Wide: inch.Of(30), RepeatY: inch.Of(4)},
		Pieces: []layout.Piece{
			{Name: "front", Wide: inch.Of(20), Long: inch.Of(21), Count: 1, Notches: []layout.Notch{{Name: "armhole", At: layout.Point{X: inch.Of(18), Y: inch.Of(15)}}}},
			{Name: "sleeve", Wide: inch.Of(14), Long: inch.Of(20), Count: 1, Notches: []layout.Notch{{Name: "armhole", At: layout.Point{X: inch.Of(2), Y: inch.Of(13)}}}},
		},
		Work: 1,
	}
	p, err := s.Plan(context.Background())
	for _, at := range p.Placements {
		fmt.Println(s.Pieces[at.Piece].Name, "at", at.Y, "notch at", at.Notches(s)[0].At.Y)
	}
	fmt.Println(err)
	// Output:
	// front at 0 in notch at 15 in
	// sleeve at 22 in notch at 35 in
	// <nil>
}

func ExampleSpec_PlanWatched() {
	s := layout.Spec{Cloth: layout.Cloth{Wide: units.Inch.Of(36)}, Work: 1,
		Pieces: []layout.Piece{{Name: "collar", Wide: units.Inch.Of(4), Long: units.Inch.Of(17), Count: 9}}}
	_, err := s.PlanWatched(context.Background(), func(now layout.Progress) { fmt.Println(now.Lay, now.Density, now.Work) })
	fmt.Println(err)
	// Output:
	// 17 in 1 1
	// <nil>
}

// The strip for a ruff, 88 in long, on cloth a yard wide: in how many parts, and
// where are they joined?
func ExamplePiece_parts() {
	inch := units.Inch
	s := layout.Spec{
		Cloth:  layout.Cloth{Wide: inch.Of(37), Selvedge: inch.Frac(1, 2)},
		Pieces: []layout.Piece{{Name: "ruff", Wide: inch.Of(88), Long: inch.Of(4), Count: 1, Parts: 4, Join: inch.Frac(1, 2)}},
		Work:   1,
	}
	p, err := s.Plan(context.Background())
	for _, at := range p.Placements {
		wide, _ := at.Size(s)
		fmt.Printf("part %d of %d, %v, at %v\n", at.Part, at.Of, wide, at.Y)
	}
	for _, line := range p.Sheet().Lines {
		if strings.HasPrefix(line.Label, "ruff") {
			fmt.Println(line.Label+":", line.Result.Text())
		}
	}
	fmt.Println(err)
	// Output:
	// part 1 of 3, 30 in, at 0 in
	// part 2 of 3, 30 in, at 4 in
	// part 3 of 3, 30 in, at 8 in
	// ruff: taken by the joins: 2 in
	// ruff: length of each part: 30 in
	// ruff: first join, from the strip's end: 29 1/2 in
	// ruff: from one join to the next: 29 in
	// <nil>
}

// The collar of a footman's livery has the middle of a stripe at its centre back,
// and the pockets begin on a stripe.
func ExamplePiece_centred() {
	inch := units.Inch
	s := layout.Spec{
		Cloth: layout.Cloth{Wide: inch.Of(30), RepeatX: inch.Of(3), Axis: inch.Frac(3, 2),
			Phases: []layout.Phase{{Notch: "edge", X: inch.Frac(3, 2)}}},
		Pieces: []layout.Piece{
			{Name: "collar", Wide: inch.Of(16), Long: inch.Of(4), Count: 1, Centred: true},
			{Name: "pocket", Wide: inch.Of(5), Long: inch.Of(6), Count: 2, Notches: []layout.Notch{{Name: "edge"}}},
		},
		Work: 1,
	}
	p, err := s.Plan(context.Background())
	for _, at := range p.Placements {
		wide, _ := at.Size(s)
		fmt.Println(s.Pieces[at.Piece].Name, "at", at.X, "middle at", at.X.Add(wide.DivInt(2)))
	}
	fmt.Println(err)
	// Output:
	// collar at 13 in middle at 21 in
	// pocket at 1 1/2 in middle at 4 in
	// pocket at 7 1/2 in middle at 10 in
	// <nil>
}
