package section_test

import (
	"fmt"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/ticket"
)

// The hem of a ruff, turned twice by a quarter of an inch: drawn, proven, and
// told in words.
func ExampleDrawing_SVG() {
	t, quarter := units.MustParse("1/40 in"), units.MustParse("1/4 in")
	half := t.DivInt(2)
	fold := quarter.Sub(half).Neg()
	ruff := section.Drawing{
		Title: "Hem of the ruff", Thickness: t,
		Plies: []section.Ply{{
			Name: "lawn", Fill: section.Hatched, Start: section.RunsOn, Finish: section.Hidden, Face: section.Right,
			Path: section.From(section.At(quarter.MulInt(-3), units.Length{}), t).To(half.Neg()).Step(2).To(fold).Step(-1).To(t.Neg()).Path(),
		}},
		Stitches: []section.Stitch{{
			Name: "slip stitches", From: section.At(quarter.MulInt(-3).DivInt(4), t.MulInt(3)), To: section.At(quarter.MulInt(-3).DivInt(4), t.Neg()),
			Pierce: []string{"lawn", "lawn", "lawn"},
		}},
		Dimensions: []section.Dimension{{
			Name: "hem", From: section.At(quarter.Neg(), t), To: section.At(units.Length{}, t), Side: section.Below, Amount: ticket.Long(quarter),
		}},
	}
	svg, err := ruff.SVG(units.Notation{})
	if err != nil {
		fmt.Println(err)
		return
	}
	words := string(svg)
	words = words[strings.Index(words, "<desc"):strings.Index(words, "</desc>")]
	fmt.Println(strings.ReplaceAll(words[strings.Index(words, ">")+1:], ". ", ".\n"))
	// Output:
	// Ply lawn: runs on at one end, a raw edge shut in at the other.
	// Row 1, slip stitches: through lawn, lawn, lawn.
	// Measure: hem 1/4 in.
	// Along the cloth: 8 times life size.
	// Across it the thickness is exaggerated.
}

// A raw edge that the second pass of a French seam would catch is refused.
func ExampleDrawing_Check() {
	t := units.MustParse("1/32 in")
	trimmed := frenchSecond(units.MustParse("1/4 in"), units.MustParse("1/8 in"), t, units.MustParse("1 in"))
	uncut := frenchSecond(units.MustParse("1/4 in"), units.MustParse("3/16 in"), t, units.MustParse("1 in"))
	fmt.Println(trimmed.Check())
	fmt.Println(uncut.Check())
	// Output:
	// <nil>
	// stitches[1] (-1/4 in, 3/32 in): section: the stitch does not pierce what it names, want clear of the edge of upper
}

// A pen runs along, folds and runs back.
func ExampleFrom() {
	t := units.MustParse("1/32 in")
	for _, p := range section.From(section.At(units.Length{}, units.Length{}), t).To(units.MustParse("2 in")).Fold(1, units.MustParse("5/8 in")).Path() {
		fmt.Println(p.X, p.Y)
	}
	// Output:
	// 0 in 0 in
	// 2 in 0 in
	// 2 in 1/32 in
	// 1 3/8 in 1/32 in
}

// How far a drawing reaches, for laying two beside each other.
func ExampleDrawing_Extent() {
	low, high := doubleHem(units.MustParse("1/4 in"), units.MustParse("1 in"), units.MustParse("1/16 in"), units.MustParse("1/32 in"), units.MustParse("1 in")).Extent()
	fmt.Println(low.X, "to", high.X)
	// Output: -2 in to 0 in
}
