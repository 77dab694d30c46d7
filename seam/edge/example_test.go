package edge_test

import (
	"fmt"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
)

// exampleShirt is the highwayman's shirt with French seams where the pattern
// drafted plain ones.
func exampleShirt() edge.Assembly {
	in := units.Inch
	french := seam.Any{Seam: seam.French{Allowance: seam.Allowance{Drafted: in.Frac(5, 8)}, First: in.Frac(3, 16), Second: in.Frac(1, 4)}}
	return edge.Assembly{
		Seams: []edge.Joint{
			{Name: "shoulder", Spec: french},
			{Name: "side", Spec: french},
			{Name: "sleeve seam", Spec: french},
			{Name: "facing shoulder", Spec: seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: in.Frac(5, 8)}}}},
		},
		Edges: []edge.Course{
			{Name: "neck", Net: in.Mixed(16, 1, 2), Crossings: []edge.Crossing{{Seam: "shoulder", Times: 2}}},
			{Name: "facing neck", Net: in.Mixed(16, 1, 2), Crossings: []edge.Crossing{{Seam: "facing shoulder", Times: 2}}},
			{Name: "neck to centres", Net: in.Of(15), Crossings: []edge.Crossing{{Seam: "shoulder", Times: 2}}},
			{Name: "collar", Net: in.Of(15)},
			{Name: "armhole", Net: in.Mixed(18, 3, 4), Crossings: []edge.Crossing{{Seam: "shoulder"}, {Seam: "side"}}},
			{Name: "sleeve top", Net: in.Of(19), Crossings: []edge.Crossing{{Seam: "sleeve seam"}}},
		},
		Pairs: []edge.Partners{
			{Long: "neck", Short: "facing neck"},
			{Long: "neck to centres", Short: "collar"},
			{Long: "sleeve top", Short: "armhole"},
		},
	}
}

// The neck of the highwayman's shirt, drafted with allowances of 5/8 in and
// sewn with French seams of 3/16 and 1/4 in: two shoulders, four plies.
func ExampleSpec_Plan() {
	in := units.Inch
	neck := edge.Spec{
		Name: "neck",
		Net:  in.Mixed(16, 1, 2),
		Takes: []edge.Take{
			{Name: "shoulders", Drafted: in.Frac(5, 8), Taken: in.Frac(7, 16), Plies: 4},
		},
	}
	p, err := neck.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("drafted", p.Drafted)
	fmt.Println("sewn   ", p.Sewn)
	fmt.Println("change ", p.Change)
	// Output:
	// drafted 16 1/2 in
	// sewn    17 1/4 in
	// change  3/4 in
}

// A concave edge is shorter on its cut edge than on its seam line. Bound at 1/4
// in with the rest of the allowance cut off, the neck stays as it was drafted.
func ExampleSpec_Plan_curved() {
	in := units.Inch
	neck := edge.Spec{
		Name: "neck of the page's doublet",
		Net:  in.Mixed(16, 1, 2),
		Own:  edge.Take{Drafted: in.Frac(5, 8)},
		Turn: units.Radians(units.RatioOf(-7, 2)),
	}
	asDrafted, _ := neck.Plan()
	neck.Own.Cut, neck.Own.Taken = in.Frac(1, 4), in.Frac(1, 4)
	bound, _ := neck.Plan()
	fmt.Println("cut edge", asDrafted.CutLength, "for a seam line of", asDrafted.Sewn)
	fmt.Println("cut edge", bound.CutLength, "for a seam line of", bound.Sewn)
	// Output:
	// cut edge 14 5/16 in for a seam line of 16 1/2 in
	// cut edge 15 5/8 in for a seam line of 16 1/2 in
}

func ExamplePlan_Sheet() {
	in := units.Inch
	p, _ := edge.Spec{
		Name:  "armhole",
		Net:   in.Mixed(18, 3, 4),
		Takes: []edge.Take{{Name: "shoulder", Drafted: in.Frac(5, 8), Taken: in.Frac(7, 16)}},
	}.Plan()
	fmt.Print(p.Sheet().Text(units.Notation{}))
	// Output:
	// Edge: armhole: as sewn 19 1/8 in; longer than drafted by 3/8 in
	// Working
	//    drafted, between the seam lines: 18 3/4 in = 20 in raw end to raw end -
	//      1 1/4 in shoulder
	//    shoulder keeps in each ply: 3/16 in = 5/8 in as cut - 7/16 in taken
	//    shoulder adds to the edge: 3/8 in = 3/16 in each ply x 2 plies
	//    as sewn, between the seam lines: 19 1/8 in = 18 3/4 in as drafted + 3/8 in
	//      shoulder
	// Work
	//  1 Measure the armhole on its seam line, once the seams that cross it are sewn.
	//      note: Stand the tape on its edge along the stitching line and do not pull
	//        the cloth.
	//      CHECK: between the seam lines at its ends = 19 1/8 in, 1/16 in either way
	//      if it is out: what it is out, divided by the plies that the crossing seams
	//        have in it, is what each of these plies must take more or less
	// Assumed: takes.cut, takes.plies
	// Sources
	//    what a seam keeps of its allowance, each ply adds to every edge that the seam
	//      crosses: common practice
	//    edges are compared on their seam lines, never on the cut edges: common
	//      practice
	//    a line parallel to a curve is longer outside it and shorter inside, by the
	//      turning times the distance: common practice
}

// A sleeve drafted 1/4 in longer than its armhole is 1/8 in too short, once the
// shoulder, the side and the sleeve seam have each kept what they do not take.
func ExamplePair_Plan() {
	in := units.Inch
	kept := func(name string) edge.Take {
		return edge.Take{Name: name, Drafted: in.Frac(5, 8), Taken: in.Frac(7, 16)}
	}
	p, err := edge.Pair{
		Long:  edge.Spec{Name: "sleeve top", Net: in.Of(19), Takes: []edge.Take{kept("sleeve seam")}},
		Short: edge.Spec{Name: "armhole", Net: in.Mixed(18, 3, 4), Takes: []edge.Take{kept("shoulder"), kept("side")}},
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("drafted", p.Drafted, "- sewn", p.Sewn, "-", p.Fit)
	// Output: drafted 1/4 in - sewn -1/8 in - mismatch
}

// What mends a mismatch stands in the plan, with what it comes to.
func ExampleRemedy() {
	in := units.Inch
	m := edge.Pair{
		Long: edge.Spec{Name: "neck", Net: in.Mixed(16, 1, 2),
			Takes: []edge.Take{{Name: "shoulder", Drafted: in.Frac(5, 8), Taken: in.Frac(7, 16), Plies: 4}}},
		Short: edge.Spec{Name: "facing", Net: in.Mixed(16, 1, 2),
			Takes: []edge.Take{{Name: "facing shoulder", Drafted: in.Frac(5, 8), Plies: 4}}},
	}
	p, err := m.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, r := range p.Remedies {
		fmt.Printf("%v, %s: cut %v, take %v: %v\n", r.Act, r.Seam, r.Cut, r.Take, r.After[0].Fit)
	}
	// Output:
	// cut-drift, shoulder: cut 7/16 in, take 7/16 in: fits
	// change-pass, shoulder: cut 5/8 in, take 5/8 in: fits
	// sew-partner, facing shoulder: cut 5/8 in, take 7/16 in: fits
}

func ExampleAssembly_Plan() {
	p, err := exampleShirt().Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for i, c := range p.Spec.Edges {
		fmt.Printf("%-16s %9v %9v\n", c.Name, p.Edges[i].Drafted, p.Edges[i].Sewn)
	}
	for _, m := range p.Pairs {
		fmt.Printf("%s to %s: longer by %v, %v\n", m.LongName, m.ShortName, m.Sewn, m.Fit)
	}
	// Output:
	// neck             16 1/2 in 17 1/4 in
	// facing neck      16 1/2 in 16 1/2 in
	// neck to centres      15 in 15 3/4 in
	// collar               15 in     15 in
	// armhole          18 3/4 in 19 1/2 in
	// sleeve top           19 in 19 3/8 in
	// neck to facing neck: longer by 3/4 in, mismatch
	// neck to centres to collar: longer by 3/4 in, mismatch
	// sleeve top to armhole: longer by -1/8 in, mismatch
}

func ExampleAssembly_With() {
	a := exampleShirt()
	cut := units.Inch.Frac(7, 16) // the shoulders cut to what they take
	s := a.Seams[0].Spec.Cutting(cut, cut)
	b, err := a.With("shoulder", s)
	if err != nil {
		fmt.Println(err)
		return
	}
	before, _ := a.Plan()
	after, _ := b.Plan()
	fmt.Println(before.Mismatched(), "pairs do not go together;", after.Mismatched(), "once the shoulders are cut")
	// Output: 3 pairs do not go together; 0 once the shoulders are cut
}

// The best remedy mends all three pairs at once, and each can be carried out.
func ExampleAssemblyPlan_Mended() {
	p, err := exampleShirt().Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, r := range p.Remedies {
		fmt.Printf("%-14v %-16s mends %d, cuts %d, leaves %v\n", r.Act, r.Seam, r.Mends, r.Cuts, r.Left)
	}
	mended, _ := p.Mended(p.Remedies[0])
	ease, _ := mended.Pair("sleeve top", "armhole")
	fmt.Println("the sleeve then", ease.Fit, "in", ease.Sewn)
	// Output:
	// cut-drift      shoulder         mends 3, cuts 4, leaves 0 in
	// change-pass    shoulder         mends 3, cuts 0, leaves 0 in
	// cut-drift      side             mends 1, cuts 2, leaves 0 in
	// change-pass    side             mends 1, cuts 0, leaves 0 in
	// sew-partner    facing shoulder  mends 1, cuts 0, leaves 0 in
	// sew-partner    sleeve seam      mends 1, cuts 0, leaves 1/4 in
	// spread-partner                  mends 1, cuts 0, leaves 0 in
	// the sleeve then eases in 1/4 in
}

// A shoulder that meets the armhole at a slant on the front and square on the back.
func ExampleMeeting_Plan() {
	in := units.Inch
	p, err := edge.Meeting{Drafted: in.Frac(5, 8), Taken: in.Frac(7, 16), Front: units.Slope(units.RatioOf(4, 3))}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("the armhole gains", p.Gain, "and makes a peak of", p.Kink)
	// Output:
	// the armhole gains 27/64 in and makes a peak of slope 3/4
}

// How far off the neck may be, sewn by hand and eye.
func ExamplePlan_Budget() {
	shoulder := edge.Take{Name: "shoulder", Drafted: units.Inch.Frac(5, 8)}
	p, err := edge.Spec{Net: units.Inch.Mixed(16, 1, 2), Takes: []edge.Take{shoulder, shoulder}}.Plan()
	fmt.Println(p.Budget(), err)
	// Output:
	// 1/4 in <nil>
}
