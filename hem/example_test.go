package hem_test

import (
	"encoding/json"
	"fmt"
	"strings"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
)

// The highwayman's shirt was drafted for a hem of 1 1/4 in. The wardrobe turns
// 3/8 in twice instead, and nobody has cut the allowance.
func ExampleDouble_Plan() {
	three8 := units.Inch.Frac(3, 8)
	shirt := hem.Double{TwoTurns: hem.TwoTurns{First: three8, Depth: three8}}
	shirt.Drafted = units.Inch.Mixed(1, 1, 4)
	shirt.Slope, shirt.Edges, shirt.Sweep = units.Slope(units.RatioOf(5, 64)), 4, units.Inch.Mixed(49, 3, 4)
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
func ExampleSlit_Plan() {
	turn := units.Inch.Frac(3, 16)
	p, err := hem.Slit{
		TwoTurns: hem.TwoTurns{First: turn, Depth: turn}, Sides: hem.Sides{Slit: units.Inch.Of(3), Sweep: units.Inch.Mixed(17, 1, 2)},
	}.Plan()
	fmt.Println(p.Others[0].Long, p.Others[0].Name, p.Swept, "to gather", err)
	// Output: 3/4 in turned in along the two sides 16 3/4 in to gather <nil>
}

// Left open in a French seam instead, the hem stands past the seam's line.
func ExampleSeamSlit_Plan() {
	turn := units.Inch.Frac(3, 16)
	p, err := hem.SeamSlit{TwoTurns: hem.TwoTurns{First: turn, Depth: turn}, SeamTake: units.Inch.Frac(7, 16)}.Plan()
	fmt.Println(p.Others[1].Name, p.Others[1].Long, err)
	// Output: each finished edge beyond the line of the seam 1/16 in <nil>
}

// Everything wrong with the fields together is said at once, in their order.
func ExampleSingle_Plan_faults() {
	_, err := hem.Single{
		Depth: units.Inch.Of(1), Stitch: units.Inch.Of(2), Curved: hem.Curved{Flare: hem.Flare{Slope: units.Slope(units.RatioOf(1, 12))}},
	}.Plan()
	fmt.Println(err)
	// Output:
	// stitch 2 in: out of range, want less than 1 in (depth)
	// edges: not given, want 1 to 1000, since slope is given
}

// A hem of any kind is one value, which writes its kind.
func ExampleAny() {
	h := hem.Any{Hem: hem.Bound{Binding: hem.Binding{Depth: units.Inch.Frac(1, 4)}}}
	text, err := json.Marshal(h)
	fmt.Println(string(text), err)
	p, err := h.Plan()
	fmt.Println(h.Title(), "of a strip", p.Strips[0].Width, "wide", err)
	// Output:
	// {"kind":"bound","depth":"1/4 in"} <nil>
	// Bound edge of a strip 1 in wide <nil>
}

// The ruff's strip is hemmed as a baby hem: the first turn is wide enough to
// stitch, and trimmed afterwards.
func ExamplePlan_Sheet() {
	p, err := hem.Narrow{
		Allowance: hem.Allowance{Drafted: units.Inch.Frac(5, 8)}, TwoTurns: hem.TwoTurns{First: units.Inch.Frac(1, 2), Trim: units.Inch.Frac(1, 8)},
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
	p, err := hem.Double{TwoTurns: hem.TwoTurns{First: three8, Depth: three8}}.Plan()
	fmt.Println(p.CutFor(units.Inch.Of(18), 2), err)
	// Output: 19 1/2 in <nil>
}

// The curtain-raiser's tablecloth is cut 48 in wide, with 1 in turned twice.
func ExamplePlan_Finished() {
	inch := units.Inch.Of(1)
	p, err := hem.Double{TwoTurns: hem.TwoTurns{First: inch, Depth: inch}}.Plan()
	fmt.Println(p.Finished(units.Inch.Of(48), 2), err)
	// Output: 44 in <nil>
}

// Where the hem crosses a French seam, whose ridge is of 5 layers, it is thick.
func ExamplePlan_Crossing() {
	p, err := hem.Narrow{}.Plan()
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
		fmt.Println(k.Kind(), "-", k.Title())
	}
	// Output:
	// single - Single hem
	// double - Double hem
	// narrow - Narrow hem
	// rolled - Rolled hem
	// shirt-tail - Shirt-tail hem
	// circular - Hem of a circle
	// slit - Hem round a cut slit
	// seam-slit - Hem round an opening left in a seam
	// blind - Blind hem
	// faced - Faced hem
	// bias-faced - Hem faced on the bias
	// bound - Bound edge
	// double-bound - Edge bound with a doubled binding
	// turn-up - Trouser turn-up
}

func ExampleTurns() {
	for t := range hem.Turns() {
		if t.Kind == "narrow" {
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

// The queen's napkin has hems of 1 in with 1/4 in turned under, mitred at the
// corners: where the seam starts on the folded edges, and how long it is.
func ExampleMitre_Plan() {
	p, err := hem.Mitre{A: hem.HemSide{First: units.Give(units.Inch.Frac(1, 4)), Depth: units.Inch.Of(1)}}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	seam, _ := units.Notation{}.Format(p.Seam.Mid())
	fmt.Println("marks", p.AlongA, "and", p.AlongB, "from the corner")
	fmt.Println("seam", seam)

	// Her train is hemmed 3 in deep at the end and 1 in at the sides.
	p, err = hem.Mitre{A: hem.HemSide{Depth: units.Inch.Of(3)}, B: hem.HemSide{Depth: units.Inch.Of(1)}}.Plan()
	fmt.Println("marks", p.AlongA, "along the end and", p.AlongB, "along the side", err)
	// Output:
	// marks 2 in and 2 in from the corner
	// seam scant 1 7/16 in
	// marks 2 in along the end and 6 in along the side <nil>
}

// The folds of a pennant's point meet too, its side leaning 3 over for 4 up.
func ExampleMitrePlan_Meets() {
	p, err := hem.Mitre{A: hem.HemSide{Depth: units.Inch.Of(1)}, B: hem.HemSide{Depth: units.Inch.Of(2)}, Lean: units.Slope(units.RatioOf(3, 4))}.Plan()
	fmt.Println(p.Meet.X, p.Meet.Y, p.Meets(), err)
	// Output: 3 1/4 in 1 in true <nil>
}

func ExampleMitre_Plan_solved() {
	p, err := hem.Mitre{A: hem.HemSide{Depth: units.Inch.Of(1)}}.Plan()
	fmt.Println(p.Spec.B.Depth, p.Spec.Trim, err)
	// Output: 1 in 1/4 in <nil>
}

func ExampleMitrePlan_Sheet() {
	p, err := hem.Mitre{A: hem.HemSide{Depth: units.Inch.Of(1)}}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p.Sheet().Lines[2].Text())
	// Output: corner of the folds to the mark on the first side: 2 in = 2 x 1 in depth of the other hem
}

// The breeches of the stable boy run on elastic of 3/4 in.
func ExampleCasing_Plan() {
	p, err := hem.Casing{Kind: hem.ElasticCasing, Width: units.Inch.Frac(3, 4)}.Plan()
	fmt.Println("tunnel", p.Spec.Tunnel, "allowance", p.Taken, err)

	// The front curtain runs on a rod of 1 in: 1/4 in of ease is not enough.
	p, err = hem.Casing{Kind: hem.RodCasing, Width: units.Inch.Of(1), Ease: units.Inch.Frac(1, 4)}.Plan()
	sign, _ := p.Room.Sign()
	fmt.Println("room", sign, err)
	// Output:
	// tunnel 1 in allowance 1 3/8 in <nil>
	// room -1 <nil>
}

// The page is nine years old: how long may the ends of his waist cord hang?
func ExampleCasing_Plan_cord() {
	p, err := hem.Casing{Kind: hem.CordCasing, Width: units.Inch.Frac(1, 4), Tail: units.Inch.Of(5), Months: 9 * 12}.Plan()
	fmt.Println("at most", p.TailMost, "so cut off", p.Over, err)
	// Output: at most 3 in so cut off 2 in <nil>
}

func ExampleCasing_Plan_solved() {
	p, err := hem.Casing{Kind: hem.CordCasing, Tunnel: units.Inch.Frac(3, 4)}.Plan()
	fmt.Println(p.Spec.Width, p.Spec.Ease, err)
	// Output: 1/2 in 1/4 in <nil>
}

func ExampleCasingPlan_Sheet() {
	p, err := hem.Casing{Kind: hem.ElasticCasing, Width: units.Inch.Of(1), Heading: units.Give(units.Inch.Frac(1, 2))}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, l := range p.Sheet().Lines[:3] {
		fmt.Println(l.Text())
	}
	// Output:
	// tunnel, clear: 1 1/4 in = 1 in elastic + 1/4 in ease
	// depth of the casing: 1 7/8 in = 1 1/4 in tunnel + 1/2 in above the upper row + 1/8 in below the lower row
	// taken by the casing: 2 1/8 in = 1 7/8 in depth + 1/4 in turn
}

// The orphan's skirt has two growth tucks of 1/2 in, the lower stitched 3 in above
// the edge of its section.
func ExampleTucks_Plan() {
	p, err := hem.Tucks{Kind: hem.GrowthTuck, Depth: units.Inch.Frac(1, 2), Count: 2, Edge: units.Inch.Of(3)}.Plan()
	fmt.Println("takes up", p.Removed, "clear between", p.Space, err)
	for _, tuck := range p.Places {
		fmt.Println(tuck.Number, tuck.Near, tuck.Fold, tuck.Far)
	}
	// Output:
	// takes up 2 in clear between 1/2 in <nil>
	// 1 3 in 3 1/2 in 4 in
	// 2 5 in 5 1/2 in 6 in
}

// The parlourmaid's apron front is 8 1/2 in wide, with pin tucks 1 in apart from 1/2 in
// inside its edges: no whole number fits.
func ExampleTucks_Plan_faults() {
	inch := units.Inch.Of(1)
	_, err := hem.Tucks{Kind: hem.PinTuck, Pitch: inch, Edge: units.Inch.Frac(1, 2), Span: units.Inch.Mixed(8, 1, 2)}.Plan()
	fmt.Println(err)
	// Output: span 8 1/2 in: disagrees with what else is given, want 8 in (8 tucks) or 9 in (9 tucks)
}

func ExampleTucks_Plan_solved() {
	p, err := hem.Tucks{Kind: hem.SpacedTuck, Depth: units.Inch.Frac(1, 4), Count: 5, Span: units.Inch.Of(10), Edge: units.Inch.Of(1)}.Plan()
	fmt.Println(p.Spec.Pitch, p.Removed, err)
	// Output: 2 in 2 1/2 in <nil>
}

// Marked to the nearest 1/16 in, each tuck is as near to its place as can be.
func ExampleTucksPlan_Marks() {
	p, err := hem.Tucks{Kind: hem.PinTuck, Count: 4, Span: units.Inch.Of(4)}.Plan()
	for tuck := range p.Marks(units.Inch.Frac(1, 16), units.HalfAway) {
		fmt.Println(tuck.Fold, tuck.Off)
	}
	fmt.Println(err)
	// Output:
	// 1/16 in 0 in
	// 1 1/2 in 1/48 in
	// 3 in -1/48 in
	// 4 7/16 in 0 in
	// <nil>
}

func ExampleTucksPlan_Sheet() {
	p, err := hem.Tucks{Kind: hem.SpacedTuck, Depth: units.Inch.Frac(1, 2), Count: 3, Pitch: units.Inch.Of(1)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p.Sheet().Lines[1].Text())
	// Output: taken up by all: 3 in = 1 in each x 3 tucks
}

// The witch's cloak is a full circle; its hem of 1 in has as much to lose as any
// other circle's.
func ExampleCircular_Plan() {
	p, err := hem.Circular{TwoTurns: hem.TwoTurns{First: units.Inch.Frac(1, 4), Depth: units.Inch.Of(1)}, Radius: units.Inch.Of(50)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	lose, _ := units.Notation{}.Format(p.Fullness.Mid())
	round, _ := units.Notation{}.Format(p.Round.Mid())
	fmt.Println("to lose", lose, "round", round)
	// Output: to lose 12 9/16 in round scant 314 3/16 in
}

// The parson's trousers have turn-ups of 1 1/2 in and taper to the foot.
func ExampleTurnUp_Plan() {
	p, err := hem.TurnUp{Depth: units.Inch.Mixed(1, 1, 2), Flare: hem.Flare{Slope: units.Slope(units.RatioOf(-1, 24)), Edges: 2}}.Plan()
	fmt.Println("allowance", p.Taken, "folds", p.Folds[0].Raw, p.Folds[1].Raw, p.Folds[2].Raw, err)
	fmt.Println("too tight by", p.Lack)
	// Output:
	// allowance 4 1/2 in folds 1 1/2 in 3 in 4 1/2 in <nil>
	// too tight by 1/4 in
}

// The binding is joined from pieces of 30 in.
func ExamplePlan_Strip() {
	p, err := hem.Bound{Binding: hem.Binding{Depth: units.Inch.Frac(1, 4)}, Curved: hem.Curved{Flare: hem.Flare{Sweep: units.Inch.Of(84)}}}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	ring, err := p.Strip(units.Inch.Of(30), units.Inch.Frac(1, 4), units.Length{}, true).Plan()
	fmt.Println(ring.Spec.Pieces, "pieces,", ring.Spare, "to spare", err)
	// Output: 3 pieces, 4 1/2 in to spare <nil>
}

// How to cut the side seam of a flared hem so that it lies flat when turned.
func ExampleTaper() {
	p, err := hem.Single{Depth: units.Inch.Of(2), Curved: hem.Curved{Flare: hem.Flare{Slope: units.Slope(units.RatioOf(1, 8)), Edges: 4}}}.Plan()
	for _, point := range p.Taper {
		fmt.Println(point.At, point.Down, "down,", point.Out, "out", err)
	}
	// Output:
	// finished edge 0 in down, 0 in out <nil>
	// raw edge 2 in down, -1/4 in out <nil>
}

// The highwayman's shirt tail, drawn edge-on: the turns are equal, so that the raw
// edge lies in the crease of the finished edge.
func ExamplePlan_Sections() {
	p, err := hem.ShirtTail{TwoTurns: hem.TwoTurns{Depth: units.MustParse("1/4 in")}, Curved: hem.Curved{Circle: units.Turns(units.RatioOf(1, 2))}}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	drawings, err := p.Sections(units.MustParse("1/32 in"))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, d := range drawings {
		fmt.Println(d.Title)
		for _, m := range d.Dimensions {
			fmt.Println(m.Name, m.Amount)
		}
		for _, s := range d.Stitches {
			fmt.Println(s.Name, "through", strings.Join(s.Pierce, ", "))
		}
	}
	_, err = p.Sections(units.MustParse("3/8 in"))
	fmt.Println(err)
	// Output:
	// Shirt-tail hem
	// hem 1/4 in
	// from the finished edge to the row 3/16 in
	// first turn 1/4 in
	// hem stitching through cloth, cloth, cloth
	// thickness 3/8 in: out of range, want at most 1/4 in (spec.depth)
}

// The drawstring of the miller's sack, with a frill above its upper row.
func ExampleCasingPlan_Sections() {
	p, err := hem.Casing{Kind: hem.CordCasing, Width: units.MustParse("3/8 in"), Ease: units.MustParse("1/4 in"), Heading: units.Give(units.MustParse("1 in"))}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	drawings, err := p.Sections(units.Length{})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range drawings[0].Dimensions {
		fmt.Println(m.Name, m.Amount)
	}
	// Output:
	// casing 1 3/4 in
	// tunnel 5/8 in
	// above the upper row 1 in
	// below the lower row 1/8 in
	// turned in 1/4 in
}

// A growth tuck in the page's doublet.
func ExampleTucksPlan_Sections() {
	p, err := hem.Tucks{Kind: hem.GrowthTuck, Removed: units.MustParse("1 1/2 in"), Edge: units.MustParse("2 in")}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	drawings, err := p.Sections(units.Length{})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, d := range drawings {
		fmt.Println(d.Title, d.Dimensions[0].Amount)
	}
	// Output:
	// Growth tucks, one tuck stitched 3/4 in
	// Growth tucks, one tuck standing 3/4 in
	// Growth tucks, one tuck pressed 3/4 in
}
