package seam_test

import (
	"encoding/json"
	"fmt"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
)

// The highwayman's shirt is drafted with 5/8 in; the wardrobe sews it in lawn with
// narrow French seams.
func ExampleFrench_Plan() {
	p, err := seam.French{Allowance: seam.Allowance{Drafted: units.Inch.Frac(5, 8)}, First: units.Inch.Frac(3, 16), Second: units.Inch.Frac(1, 4)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("each ply gives up", p.Upper.Taken, "and keeps", p.Upper.Drift)
	fmt.Println("each side seam makes the body", p.Gain, "bigger")
	fmt.Println("assumed:", p.Assumed)
	// Output:
	// each ply gives up 7/16 in and keeps 3/16 in
	// each side seam makes the body 3/8 in bigger
	// assumed: [tape draftedUnder cut cutUnder trim]
}

// The page's doublet has an inlay of 1 in on its back, for next year's page.
func ExamplePlain_Plan_unequalPlies() {
	p, err := seam.Plain{Allowance: seam.Allowance{Drafted: units.Inch.Of(1), DraftedUnder: units.Inch.Frac(5, 8)}, First: units.Inch.Frac(7, 16)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("back", p.Upper.Drift, "front", p.Under.Drift, "together", p.Gain)
	// Output:
	// back 9/16 in front 3/16 in together 3/4 in
}

// A printed fell that cannot be sewn, for the miller's breeches.
func ExampleFlatFelled_Plan() {
	s := seam.FlatFelled{First: units.Inch.Frac(5, 8), Width: units.Inch.Frac(1, 4)}
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
	// width 1/4 in: would not lie flat, want at least 5/16 in (half of first), or first trimmed to 1/2 in at most
	// turn in 1/4 in under a fell of 1/4 in in 4 plies
}

// The village hall has no overlock: the blacksmith's apron is sewn with offset
// edges instead of trimming, and the pattern drew 5/8 in.
func ExampleUntrimmedFell_Plan() {
	p, err := seam.UntrimmedFell{Allowance: seam.Allowance{Drafted: units.Inch.Frac(5, 8)}}.Plan()
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
func ExampleHongKong_Plan() {
	p, err := seam.HongKong{Allowance: seam.Allowance{Drafted: units.Inch.Frac(5, 8)}}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, s := range p.Strips {
		fmt.Println(s.Rule, s.Width)
	}
	// Output:
	// least 3/4 in
	// on the under face 1/2 in
}

// One allowance of the page's shirt is trimmed and the other folded twice round it.
func ExampleSelfBound_Plan() {
	p, err := seam.SelfBound{Allowance: seam.Allowance{Drafted: units.Inch.Frac(5, 8)}, Trim: units.Inch.Frac(1, 8)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("fold", p.Turned, "first: the binding is", p.Finished, "in", p.Plies, "plies")
	_, err = seam.SelfBound{Allowance: seam.Allowance{Drafted: units.Inch.Frac(5, 8)}, Trim: units.Inch.Frac(1, 4)}.Plan()
	fmt.Println(err)
	// Output:
	// fold 1/4 in first: the binding is 3/16 in in 6 plies
	// trim 1/4 in: raw edge would show, want less than 7/32 in (width)
}

// A lapped seam by the printed figures leaves the tumbler's smock too big.
func ExampleLappedTurned_Plan() {
	for _, s := range []seam.Seam{
		seam.LappedTurned{Turned: units.Inch.Frac(1, 8), Lap: units.Inch.Frac(1, 4)},
		seam.LappedTurned{},
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
func ExampleGraded_Plan() {
	p, err := seam.Graded{Layers: 3}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p.Grades)
	// Output:
	// [1/4 in 3/16 in 1/8 in]
}

// A finish does not change what a seam takes.
func ExampleFinishes() {
	for f := range seam.Finishes() {
		p, err := seam.Plain{Finish: f}.Plan()
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
		if r.Kind == "flat-felled" {
			fmt.Printf("%s %s: %s (%v)\n", r.Standard, r.Code, r.Meaning, r.Known)
		}
	}
	// Output:
	// Fed-Std-751a LSc: flat-felled; one, two or three needles (read)
	// ASTM D6193 LSc: felled (memory)
	// ISO 4916 2.04.06: felled (memory)
}

// The ghost's cloak frays and is unlined: its seams are bound.
func ExampleBound_Plan() {
	p, err := seam.Bound{Allowance: seam.Allowance{Fraying: true}, Width: units.Inch.Frac(3, 8)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, s := range p.Strips {
		fmt.Println(s.Rule, s.Width)
	}
	// Output:
	// single binding 1 1/2 in
	// folded double 2 1/4 in
	// folded double, with a fixed seam 2 1/2 in
}

// Sewn by the whole allowance, in a cloth that frays.
func ExamplePlan_Sheet() {
	p, err := seam.Plain{Allowance: seam.Allowance{Drafted: units.Inch.Frac(5, 8), Fraying: true}, Trim: units.Inch.Frac(3, 8)}.Plan()
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

// A garment file says in one field how a seam is sewn, whatever the kind.
func ExampleAny() {
	var sewn seam.Any
	if err := json.Unmarshal([]byte(`{"kind": "french", "first": "3/16 in", "second": "1/4 in"}`), &sewn); err != nil {
		fmt.Println(err)
		return
	}
	p, err := sewn.Plan()
	fmt.Println(sewn.Title(), "takes", p.Upper.Taken, err)
	wider, ok := sewn.Taking(units.Inch.Frac(5, 8))
	text, err := json.Marshal(wider)
	fmt.Println(ok, string(text), err)
	// Output:
	// French seam takes 7/16 in <nil>
	// true {"kind":"french","first":"3/8 in","second":"1/4 in"} <nil>
}
