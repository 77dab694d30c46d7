package seam_test

import (
	"fmt"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
)

// The highwayman's shirt is drafted with 5/8 in; the wardrobe sews it in lawn with
// narrow French seams.
func ExampleSpec_Plan_french() {
	p, err := seam.Spec{
		Kind:    seam.French,
		Drafted: units.Inch.Frac(5, 8),
		First:   units.Inch.Frac(3, 16),
		Second:  units.Inch.Frac(1, 4),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("each ply gives up", p.Upper.Taken, "and keeps", p.Upper.Drift)
	fmt.Println("each side seam makes the body", p.Gain, "bigger")
	fmt.Println("trim to", p.Spec.Trim, "and assumed:", p.Assumed)
	// Output:
	// each ply gives up 7/16 in and keeps 3/16 in
	// each side seam makes the body 3/8 in bigger
	// trim to 1/8 in and assumed: [draftedUnder cut cutUnder trim]
}

// The page's doublet has an inlay of 1 in on its back, for next year's page.
func ExampleSpec_Plan_unequalPlies() {
	p, err := seam.Spec{
		Kind:         seam.Plain,
		Drafted:      units.Inch.Of(1),
		DraftedUnder: units.Inch.Frac(5, 8),
		First:        units.Inch.Frac(7, 16),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("back", p.Upper.Drift, "front", p.Under.Drift, "together", p.Gain)
	// Output:
	// back 9/16 in front 3/16 in together 3/4 in
}

// A printed fell that cannot be sewn, for the miller's breeches.
func ExampleSpec_Plan_flatFelled() {
	s := seam.Spec{Kind: seam.FlatFelled, First: units.Inch.Frac(5, 8), Second: units.Inch.Frac(1, 4)}
	if _, err := s.Plan(); err != nil {
		fmt.Println(err)
	}
	s.First = units.Inch.Frac(1, 2)
	p, err := s.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("turn in", p.Turned, "under a fell of", p.Finished, "in", p.Plies, "plies")
	// Output:
	// second 1/4 in: would not lie flat, want at least 5/16 in (half of first), or first trimmed to 1/2 in at most
	// turn in 1/4 in under a fell of 1/4 in in 4 plies
}

// The village hall has no overlock: the blacksmith's apron is sewn with offset
// edges instead of trimming, and the pattern drew 5/8 in.
func ExampleSpec_Plan_untrimmedFell() {
	p, err := seam.Spec{Kind: seam.UntrimmedFell, Drafted: units.Inch.Frac(5, 8)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("the upper ply gives", p.Upper.Taken, "and the under one", p.Under.Taken)
	fmt.Println("each such seam makes the apron", p.Gain, "bigger")
	// Output:
	// the upper ply gives 1/4 in and the under one 1/2 in
	// each such seam makes the apron 1/2 in bigger
}

// The squire's unlined jacket gets a strip of silk along every allowance.
func ExampleSpec_Plan_hongKong() {
	p, err := seam.Spec{Kind: seam.HongKong, Drafted: units.Inch.Frac(5, 8)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("cut", p.Spec.Strip, "wide,", p.Wrapped, "left beneath; never less than", p.StripLeast)
	// Output:
	// cut 1 in wide, 1/2 in left beneath; never less than 3/4 in
}

// One allowance of the page's shirt is trimmed and the other folded twice round it.
func ExampleSpec_Plan_selfBound() {
	p, err := seam.Spec{Kind: seam.SelfBound, Drafted: units.Inch.Frac(5, 8), Trim: units.Inch.Frac(1, 8)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("fold", p.Turned, "first: the binding is", p.Finished, "in", p.Plies, "plies")
	_, err = seam.Spec{Kind: seam.SelfBound, Drafted: units.Inch.Frac(5, 8), Trim: units.Inch.Frac(1, 4)}.Plan()
	fmt.Println(err)
	// Output:
	// fold 1/4 in first: the binding is 3/16 in in 6 plies
	// trim 1/4 in: raw edge would show, want less than 7/32 in (second)
}

// A lapped seam by the printed figures leaves the tumbler's smock too big.
func ExampleSpec_Plan_lapped() {
	for _, s := range []seam.Spec{
		{Kind: seam.LappedTurned, Turned: units.Inch.Frac(1, 8), Second: units.Inch.Frac(1, 4)},
		{Kind: seam.LappedTurned},
	} {
		p, err := s.Plan()
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println("turned", p.Turned, "lapped", p.Finished, "gain", p.Gain)
	}
	// Output:
	// turned 1/8 in lapped 1/4 in gain 3/4 in
	// turned 3/8 in lapped 1/2 in gain 0 in
}

// A collar with its interfacing: three layers, the widest next to the outside.
func ExamplePlan_Grade() {
	p, err := seam.Spec{Kind: seam.Graded, Layers: 3}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for i := range p.Spec.Layers {
		fmt.Println(p.Grade(i))
	}
	// Output:
	// 1/4 in
	// 3/16 in
	// 1/8 in
}

// A finish does not change what a seam takes.
func ExampleFinishes() {
	for f := range seam.Finishes {
		p, err := seam.Spec{Kind: seam.Plain, Finish: f}.Plan()
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(f, p.Upper.Taken, p.Raw)
	}
	// Output:
	// overcast 5/8 in false
	// zigzagged 5/8 in false
	// pinked 5/8 in true
}

// What a felled seam is called in the standards, as far as it is known.
func ExampleCodes() {
	for r := range seam.Codes {
		if r.Kind == seam.FlatFelled {
			fmt.Printf("%s %s: %s (%v)\n", r.Standard, r.Code, r.Meaning, r.Known)
		}
	}
	// Output:
	// Fed-Std-751a LSc: flat-felled; one, two or three needles (read)
	// ASTM D6193 LSc: felled (memory)
	// ISO 4916 2.04.06: felled (memory)
}

// The ghost's cloak frays and is unlined: its seams are bound.
func ExampleSpec_Plan_bound() {
	p, err := seam.Spec{Kind: seam.Bound, Second: units.Inch.Frac(3, 8), Fraying: true}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("single", p.StripSingle, "double", p.StripDouble, "or", p.StripDoubleWide)
	// Output:
	// single 1 1/2 in double 2 1/4 in or 2 1/2 in
}

// Sewn by the whole allowance, in a cloth that frays.
func ExamplePlan_Sheet() {
	p, err := seam.Spec{Kind: seam.Plain, Drafted: units.Inch.Frac(5, 8), Trim: units.Inch.Frac(3, 8), Fraying: true}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for i, st := range p.Sheet().Steps {
		fmt.Print(st.Text(i+1, units.Notation{}))
	}
	// Output:
	//  1 Cut two test pieces of the same cloth, and seam them as below.
	//      guide: 6 in from side to side
	//      CHECK: across the seamed swatch, square to the seam = 10 3/4 in, 1/16 in
	//        either way
	//      if it is out: move the guide of the row by half of what it is out: wider
	//        where the swatch is too wide, narrower where it is too narrow
	//  2 Stitch the seam, RIGHT SIDES TOGETHER.
	//      guide: 5/8 in from the raw edge
	//  3 Trim both allowances.
	//      trim: to 3/8 in beyond the stitching
	//      CHECK: from the stitching to the trimmed edge = 3/8 in
	//      if it is out: trim again where it is too wide; where it is too narrow
	//        overcast the edge before going on
	//  4 Press the seam.
	//      press: flat as sewn, then open
	//      note: overcast or bind each raw edge, or trim, zigzag and press both to one
	//        side
	//      CHECK: from the seam to the raw edge on each side = 3/8 in, 1/16 in either
	//        way
	//      if it is out: unpick where it wanders and stitch again from a guide on the
	//        plate
}

// What is printed for a bound seam, rule by rule.
func ExampleBindings() {
	for r := range seam.Bindings {
		if r.Finished == units.Inch.Frac(1, 4) {
			fmt.Printf("%s: %v\n", r.Rule, r.Strip)
		}
	}
	// Output:
	// single, twice finished and two turns: 3/4 in
	// single, 4 times finished: 1 in
	// single, 4 times finished: 1 in
	// folded double, 6 times finished: 1 1/2 in
	// folded double, 4 times finished and 1 in: 2 in
}

// The kinds that turn an edge in, and so need a figure for it.
func ExampleKinds() {
	for k := range seam.Kinds {
		if k.Reads("turned") {
			fmt.Println(k)
		}
	}
	// Output:
	// flat-felled
	// turned-and-stitched
	// mock-french
	// mock-felled
	// untrimmed-fell
	// lapped-turned
	// self-bound
}
