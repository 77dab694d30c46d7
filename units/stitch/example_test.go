package stitch_test

import (
	"fmt"

	"example.com/clothyard/units"
	"example.com/clothyard/units/stitch"
)

// The old pattern of the page's doublet says twelve stitches to the inch; the
// machine's dial is in millimetres, and has steps of its own.
func ExampleDensity_Plan() {
	p, err := stitch.Density{PerInch: units.RatioOf(12, 1)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	dial, residue := p.Spec.StitchLength.Round(units.Millimetre.Frac(1, 10), units.HalfAway)
	fmt.Println("exactly", p.Spec.StitchLength.In(units.Millimetre), "mm")
	fmt.Println("on the dial", dial, "which is off by", residue.In(units.Millimetre), "mm")
	// Output:
	// exactly 2 7/60 mm
	// on the dial 2.1 mm which is off by 1/60 mm
}

// Uneven basting holds the ruff while it is set: a stitch of 1/8 in, then 3/8 in
// left free.
func ExampleDensity_Plan_solved() {
	dPlan, err := stitch.Density{StitchLength: units.MustParse("1/8 in"), Space: units.MustParse("3/8 in"), Run: units.MustParse("15 in")}.Plan()
	d := dPlan.Spec
	fmt.Println(d.PerInch, "to the inch,", d.Stitches, "in the row", err)
	// Output: 2 to the inch, 30 in the row <nil>
}

// One side seam of the highwayman's shirt, lockstitched.
func ExampleThread_Plan() {
	p, err := stitch.Thread{Stitch: stitch.Lock301, Seam: units.MustParse("18 in")}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p.Total, "in the seam,", p.Needle, "of it from the needle")
	fmt.Println(p.Need, "with the waste; assumed:", p.Assumed)
	// Output:
	// 45 in in the seam, 22 1/2 in of it from the needle
	// 51 3/4 in with the waste; assumed: [by ratio needleShare waste]
}

// By geometry: the chain stitch that holds the canvas of a stage cloak.
func ExampleThread_Plan_geometry() {
	p, err := stitch.Thread{
		Stitch: stitch.Chain401, Seam: units.MustParse("42 in"),
		Thickness: units.MustParse(".075 in"), PerInch: units.RatioOf(8, 1),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, l := range p.Sheet().Lines[:3] {
		fmt.Println(l.Text(units.Notation{Step: units.Inch.Frac(1, 1000), Decimal: true}))
	}
	// Output:
	// stitches to the inch: 8 = 1 in one inch / 3.175 mm stitch
	// lengths of thread to one of seam: 5 1/5 = 0.075 in thickness / 3.175 mm stitch x 2 passes + 4 along the seam
	// thread in the seam: 218.400 in = 42 in seam x 5 1/5 lengths of thread
}

// By a sample: three inches sewn and unpicked.
func ExampleThread_Plan_solved() {
	s, err := stitch.Thread{
		Stitch: stitch.Chain401, Seam: units.MustParse("42 in"),
		Sample: units.MustParse("3 in"), SampleNeedle: units.MustParse("9 in"), SampleUnder: units.MustParse("8 in"),
	}.Plan()
	fmt.Println(s.Spec.By, s.Spec.Waste, err)
	// Output: sample 3/20 <nil>
}

// All the seams of the shirt, and whole spools of a hundred metres.
func ExampleGarment_Plan() {
	p, err := stitch.Garment{
		Seams: []stitch.Run{
			{Name: "French seams, both passes", Count: 4, Thread: stitch.Thread{Stitch: stitch.Lock301, Seam: units.MustParse("44 in")}},
			{Name: "armholes", Count: 2, Thread: stitch.Thread{Stitch: stitch.Lock301, Seam: units.MustParse("19 1/8 in")}},
			{Name: "armholes, zigzagged", Count: 2, Thread: stitch.Thread{Stitch: stitch.Zigzag304, Seam: units.MustParse("19 1/8 in")}},
			{Name: "hem", Thread: stitch.Thread{Stitch: stitch.Lock301, Seam: units.MustParse("49 3/4 in")}},
		},
		Spool: units.Metre.Of(100),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, l := range p.Sheet().Lines {
		fmt.Println(l.Label+":", l.Result.Text(units.Notation{Unit: units.Yard, Compound: true}))
	}
	fmt.Println(p.Spools, "spool")
	// Output:
	// French seams, both passes: 14 yd 2 in
	// armholes: scant 3 yd 2 in (3 yd 1 31/32 in)
	// armholes, zigzagged: 6 yd 25 15/16 in (6 yd 25 149/160 in)
	// hem: scant 3 yd 35 1/16 in (3 yd 35 1/32 in)
	// all the thread: 27 yd 28 15/16 in (27 yd 28 149/160 in)
	// of which under thread: full 13 yd 32 7/16 in (13 yd 32 149/320 in)
	// left on the spools: full 81 yd 20 1/16 in (81 yd 20 1557/20320 in)
	// 1 spool
}

// A refusal names every field that is wrong.
func ExampleGarment_Plan_solved() {
	_, err := stitch.Garment{Seams: []stitch.Run{{Name: "hem", Count: -1, Thread: stitch.Thread{Stitch: stitch.Cover607, Seam: units.MustParse("9 in")}}}}.Plan()
	fmt.Println(err)
	// Output:
	// seams[0].count -1: out of range, want 1 to 10000
	// seams[0].thread.ratio: not given, want 1 or more: no row of the table gives one for 607
}

// The needle and the stitch for the doublet's corduroy.
func ExampleSetting_Plan() {
	p, err := stitch.Setting{Cloth: stitch.BottomWeight}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("needle %d/%d, %v to %v stitches to the inch\n", p.Spec.Needle, p.Size, p.LeastPerInch, p.MostPerInch)
	// Output: needle 90/14, 8 to 10 stitches to the inch
}

// What no table has is a fault and never a guess.
func ExampleSetting_Plan_solved() {
	_, err := stitch.Setting{Cloth: stitch.Brocade, Needle: 95}.Plan()
	fmt.Println(err)
	// Output: needle 95: not known, want one of 60, 70, 75, 80, 90, 100, 110, 120
}

// Two sources on one stitch: both rows stand.
func ExampleRatioRows() {
	for r := range stitch.RatioRows() {
		if r.Type == stitch.Zigzag304 {
			fmt.Println(r.Ratio, r.Known)
		}
	}
	// Output:
	// 5 1/2 read
	// 7 memory
}

// What the pages print for twelve to the inch, and how far off each is.
func ExampleConversions() {
	for r := range stitch.Conversions() {
		if r.PerInch == units.RatioOf(12, 1) {
			fmt.Println(r.Printed, "off by", r.Off().In(units.Millimetre), "mm")
		}
	}
	// Output:
	// 2.1 mm off by -1/60 mm
	// 2 mm off by -7/60 mm
	// 2 mm off by -7/60 mm
}
