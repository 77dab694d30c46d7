package hem_test

import (
	"fmt"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
)

// The highwayman's shirt was drafted for a hem of 1 1/4 in. The wardrobe turns
// 3/8 in twice instead, and nobody has cut the allowance.
func ExampleSpec_Plan() {
	three8 := units.Inch.Frac(3, 8)
	shirt := hem.Spec{
		Kind: hem.Double, Drafted: units.Inch.Mixed(1, 1, 4), First: three8, Depth: three8,
		Slope: units.RatioOf(5, 64), Edges: 4, Sweep: units.Inch.Mixed(49, 3, 4),
	}
	p, err := shirt.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("takes", p.Taken)
	fmt.Println("longer by", p.Drift)
	fmt.Println("round the hem", units.Notation{}.Exact(p.Swept))
	fmt.Println("to ease in", units.Notation{}.Exact(p.Excess))

	shirt.Cut = p.Taken
	p, err = shirt.Plan()
	fmt.Println("cut to what it takes: longer by", p.Drift, err)
	// Output:
	// takes 3/4 in
	// longer by 1/2 in
	// round the hem 49 29/32 in
	// to ease in 15/64 in
	// cut to what it takes: longer by 0 in <nil>
}

// The sleeve of the same shirt is slit, and the slit takes from the edge that is
// gathered into the cuff.
func ExampleSpec_Plan_slit() {
	turn := units.Inch.Frac(3, 16)
	p, err := hem.Spec{
		Kind: hem.Slit, Opening: hem.Tucked, First: turn, Depth: turn,
		Slit: units.Inch.Of(3), Sweep: units.Inch.Mixed(17, 1, 2),
	}.Plan()
	fmt.Println(p.Lost, "off,", p.Swept, "to gather", err)

	// Left open in a French seam instead, the hem stands past the seam's line.
	p, err = hem.Spec{
		Kind: hem.Slit, Opening: hem.InSeam, First: turn, Depth: turn,
		Drafted: units.Inch.Frac(5, 8), SeamTake: units.Inch.Frac(7, 16),
	}.Plan()
	fmt.Println("jog at the clip", p.Jog, err)
	// Output:
	// 3/4 in off, 16 3/4 in to gather <nil>
	// jog at the clip 1/16 in <nil>
}

// Everything wrong is said at once, in the order of the fields.
func ExampleSpec_Plan_faults() {
	_, err := hem.Spec{
		Kind: hem.Single, First: units.Inch.Frac(1, 4), Depth: units.Inch.Of(1), Stitch: units.Inch.Of(2),
		Slope: units.RatioOf(1, 12),
	}.Plan()
	fmt.Println(err)
	// Output:
	// first 1/4 in: not used here, want none for single
	// edges: not given, want 1 to 1000, since slope is given
}

// The page's doublet is drafted 1 in below the waist: the solved Spec says what a
// hem at the drafted line would be.
func ExampleSpec_Plan_solved() {
	p, err := hem.Spec{Kind: hem.Double, Drafted: units.Inch.Of(1)}.Plan()
	fmt.Println(p.Spec.First, "and", p.Spec.Depth, err)
	// Output: 1/4 in and 3/4 in <nil>
}

// The ruff's strip is hemmed as a baby hem: the first turn is wide enough to
// stitch, and trimmed afterwards.
func ExamplePlan_Sheet() {
	p, err := hem.Spec{
		Kind: hem.Narrow, Drafted: units.Inch.Frac(5, 8), First: units.Inch.Frac(1, 2), Trim: units.Inch.Frac(1, 8),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	sheet := p.Sheet()
	for _, l := range sheet.Lines {
		fmt.Println(l.Text())
	}
	for i, s := range sheet.Steps[1:4] {
		fmt.Print(s.Text(i+2, units.Notation{}))
	}
	// Output:
	// taken by the hem: 5/8 in = 1/2 in first turn + 1/8 in depth
	// garment comes out longer by: 0 in = 5/8 in allowance as cut - 5/8 in taken
	// raw edge to stitching, flat: 9/16 in = 1/2 in first turn + 1/16 in from the inner fold
	// finished edge to stitching: 1/16 in = 1/8 in depth - 1/16 in stitching from the inner edge of the hem
	//  2 Stitch a row for the first fold to turn on.
	//      guide: 1/2 in from the raw edge
	//  3 Turn on the row, stitch close to the fold, and trim.
	//      trim: to 1/8 in beyond the stitching
	//      press: to the wrong side
	//      note: Trim after stitching, with the point of the shears away from the
	//        garment
	//  4 Turn again and press the second fold, which is the finished edge.
	//      guide: 1/8 in from the first fold
	//      press: to the wrong side
	//      CHECK: from the finished edge to the first fold, on the wrong side =
	//        1/8 in, 1/32 in either way
	//      if it is out: Press the last fold out and fold again from the mark; do not
	//        make it up in the stitching
}

// Kerchiefs for the chorus are to finish 18 in square with 3/8 in turned twice.
func ExamplePlan_CutFor() {
	three8 := units.Inch.Frac(3, 8)
	p, err := hem.Spec{Kind: hem.Double, First: three8, Depth: three8}.Plan()
	fmt.Println(p.CutFor(units.Inch.Of(18), 2), err)
	// Output: 19 1/2 in <nil>
}

// The curtain-raiser's tablecloth is cut 48 in wide, with 1 in turned twice.
func ExamplePlan_Finished() {
	inch := units.Inch.Of(1)
	p, err := hem.Spec{Kind: hem.Double, First: inch, Depth: inch}.Plan()
	fmt.Println(p.Finished(units.Inch.Of(48), 2), err)
	// Output: 44 in <nil>
}

// Where the hem crosses a French seam, whose ridge is of 5 layers, it is thick.
func ExamplePlan_Crossing() {
	p, err := hem.Spec{Kind: hem.Narrow}.Plan()
	fmt.Println(p.Crossing(5), "layers", err)
	// Output: 15 layers <nil>
}

// Sources disagree about a flared skirt: the wardrobe mistress chooses.
func ExampleDepthsFor() {
	rows, err := hem.DepthsFor("flared skirt")
	for _, d := range rows {
		fmt.Printf("%-8v to %-8v %s\n", d.Least, d.Most, d.Source)
	}
	fmt.Println(err)
	// Output:
	// 2 in     to 3 in     cotton-dress-bulletin
	// 1 1/2 in to 1 1/2 in cotton-dress-bulletin
	// 1/4 in   to 3/8 in   hem-depth-article
	// 1 1/2 in to 2 in     hem-preparation-page
	// <nil>
}

func ExampleKinds() {
	for k := range hem.Kinds() {
		fmt.Println(k)
	}
	// Output:
	// single
	// double
	// narrow
	// slit
	// blind
	// rolled
	// faced
	// bias-faced
	// bound
	// shirt-tail
	// circular
	// turn-up
}

func ExampleOpenings() {
	for o := range hem.Openings() {
		fmt.Println(o)
	}
	// Output:
	// tucked
	// faced
	// in-seam
}

func ExampleTurns() {
	for t := range hem.Turns() {
		if t.Kind == hem.Narrow {
			fmt.Println(t.First, "then", t.Depth)
		}
	}
	// Output:
	// 1/4 in then 1/4 in
	// 1/2 in then 1/8 in
	// 1/16 in then 1/8 in
	// 2 mm then 2 mm
	// 1/4 in then 1/4 in
	// 5 mm then 5 mm
}

func ExampleDepths() {
	n := 0
	for range hem.Depths() {
		n++
	}
	fmt.Println(n, "rows")
	// Output: 41 rows
}
