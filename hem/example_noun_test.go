package hem_test

import (
	"fmt"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
)

// The queen's napkin has hems of 1 in with 1/4 in turned under, mitred at the
// corners: where the seam starts on the folded edges, and how long it is.
func ExampleMitre_Plan() {
	p, err := hem.Mitre{A: hem.HemSide{First: units.Inch.Frac(1, 4), Depth: units.Inch.Of(1)}}.Plan()
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
	p, err := hem.Mitre{A: hem.HemSide{Depth: units.Inch.Of(1)}, B: hem.HemSide{Depth: units.Inch.Of(2)}, Lean: units.RatioOf(3, 4)}.Plan()
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
	p, err := hem.Casing{Kind: hem.ElasticCasing, Width: units.Inch.Of(1), Heading: units.Inch.Frac(1, 2)}.Plan()
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
func ExampleSpec_Plan_circular() {
	p, err := hem.Spec{Kind: hem.Circular, First: units.Inch.Frac(1, 4), Depth: units.Inch.Of(1), Radius: units.Inch.Of(50)}.Plan()
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
func ExampleSpec_Plan_turnUp() {
	p, err := hem.Spec{Kind: hem.TurnUp, Depth: units.Inch.Mixed(1, 1, 2), Slope: units.RatioOf(-1, 24), Edges: 2}.Plan()
	fmt.Println("allowance", p.Taken, "folds", p.RawToFirstFold, p.RawToSecondFold, p.RawToThirdFold, err)
	fmt.Println("too tight by", p.Lack)
	// Output:
	// allowance 4 1/2 in folds 1 1/2 in 3 in 4 1/2 in <nil>
	// too tight by 1/4 in
}

// The neck of the chorus shifts is bound instead of faced: the allowance comes off.
func ExampleSpec_Plan_bound() {
	p, err := hem.Spec{Kind: hem.Bound, Drafted: units.Inch.Frac(5, 8), Depth: units.Inch.Frac(1, 4)}.Plan()
	fmt.Println("cut off", p.CutOff, "and cut the strip", p.StripWidth, "wide", err)
	// Output: cut off 5/8 in and cut the strip 1 in wide <nil>
}

// The binding is joined from pieces of 30 in.
func ExamplePlan_Strip() {
	p, err := hem.Spec{Kind: hem.Bound, Depth: units.Inch.Frac(1, 4), Sweep: units.Inch.Of(84)}.Plan()
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
	p, err := hem.Spec{Kind: hem.Single, Depth: units.Inch.Of(2), Slope: units.RatioOf(1, 8), Edges: 4}.Plan()
	for _, point := range p.Taper {
		fmt.Println(point.At, point.Down, "down,", point.Out, "out", err)
	}
	// Output:
	// finished edge 0 in down, 0 in out <nil>
	// raw edge 2 in down, -1/4 in out <nil>
}

func ExampleHemSide_Take() {
	fmt.Println(hem.HemSide{First: units.Inch.Frac(1, 4), Depth: units.Inch.Of(1)}.Take())
	// Output: 1 1/4 in
}
