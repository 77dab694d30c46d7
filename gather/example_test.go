package gather_test

import (
	"fmt"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
	"example.com/clothyard/units/strip"
)

// A ruff for the village players: how many lengths of 44 in does a neckband of
// 15 1/2 in take at five times its length?
func ExampleStrip_Plan() {
	p, err := gather.Strip{
		Strip:    strip.Spec{Each: units.MustParse("44 in"), Allowance: units.Give(units.MustParse("1/4 in"))},
		Edge:     units.MustParse("15 1/2 in"),
		Fullness: units.RatioOf(5, 1),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p.Strip.Spec.Pieces, "lengths make", p.Strip.Sewn, "and a fullness of", p.Fullness)
	fmt.Println(p.Surplus, "more than asked for")
	// Output:
	// 2 lengths make 87 1/2 in and a fullness of 5 20/31
	// 10 in more than asked for
}

// The frill of the highwayman's shirt stands up from a collar whose outer edge
// bulges by half a radian in all.
func ExampleRuffle_Plan() {
	p, err := gather.Ruffle{
		Strip: gather.Strip{
			Strip: strip.Spec{
				Pieces: 3, Each: units.MustParse("12 1/4 in"),
				Allowance: units.Give(units.MustParse("1/2 in")), Ends: units.MustParse("1/2 in"),
			},
			Edge: units.MustParse("15 3/4 in"),
		},
		Depth:  units.MustParse("1 1/4 in"),
		Folded: true,
		Turn:   units.Radians(units.RatioOf(1, 2)),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("cut", p.CutDepth, "deep, row at", p.Row)
	fmt.Println("fullness", p.Strip.Fullness, "at the seam,", p.OuterFullness, "at the free edge of", p.Outer)
	for _, m := range p.Marks {
		fmt.Println("mark", m.Full, "to", m.Edge)
	}
	fmt.Println("joins clear of the marks by", p.Clear)
	fmt.Println("assumed:", p.Assumed)
	// Output:
	// cut 3 3/4 in deep, row at 1/2 in
	// fullness 2 1/7 at the seam, 2 8/131 at the free edge of 16 3/8 in
	// mark 8 7/16 in to 3 15/16 in
	// mark 16 7/8 in to 7 7/8 in
	// mark 25 5/16 in to 11 13/16 in
	// joins clear of the marks by 2 13/16 in
	// assumed: [tape allowance inside rows parts]
}

// A gathered edge round the four corners of a page's tabard: the free edge is
// known within a bound, since a corner brings in pi.
func ExampleRuffle_Plan_corners() {
	p, err := gather.Ruffle{
		Strip: gather.Strip{
			Strip: strip.Spec{Pieces: 3, Each: units.MustParse("41 in"), Allowance: units.Give(units.MustParse("1/2 in")), Ring: true},
			Edge:  units.MustParse("60 in"),
		},
		Depth: units.MustParse("2 in"), Hem: units.MustParse("1/4 in"), Corners: 4,
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	mark, _, err := p.Outer.Round(units.MustParse("1/8 in"), units.HalfAway)
	fmt.Println("free edge about", mark, err)
	for _, j := range p.Joins {
		fmt.Println("join at", j.Full, "on the strip,", j.Edge, "on the edge")
	}
	// Output:
	// free edge about 72 5/8 in <nil>
	// join at 40 in on the strip, 20 in on the edge
	// join at 80 in on the strip, 40 in on the edge
	// join at 120 in on the strip, 60 in on the edge
}

// The cuff of the highwayman's shirt, half an inch of the sleeve kept flat on
// each side of the slit.
func ExampleCuff_Plan() {
	c := gather.Cuff{
		Wrist: units.MustParse("6 3/4 in"), Ease: units.MustParse("1 1/4 in"), Lap: units.Give(units.MustParse("1 in")),
		Depth:  units.MustParse("2 1/4 in"),
		Sleeve: units.MustParse("17 1/8 in"),
		Flat:   units.MustParse("1/2 in"),
	}
	_, err := c.Plan()
	fmt.Println(err)
	c.Setting = gather.Flush
	p, err := c.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("cut", p.CutLength, "by", p.CutDepth, "for", p.Finished)
	fmt.Println(p.Gathered, "into", p.Into, "is", p.Fullness)
	// Output:
	// setting: not given, want one of flush, extended
	// cut 10 1/4 in by 5 3/4 in for 9 in
	// 16 1/8 in into 8 in is 2 1/64
}

// The working of a cuff, in the teacher's metric.
func ExampleCuffPlan_Sheet() {
	p, err := gather.Cuff{
		Finished: units.MustParse("23 cm"), Depth: units.MustParse("6 cm"), Allowance: units.MustParse("1.5 cm"),
		Turned: units.MustParse("1.2 cm"), Sleeve: units.MustParse("41 cm"), Setting: gather.Flush,
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, line := range p.Sheet().Lines[:3] {
		fmt.Println(line.Text(units.Notation{Unit: units.Centimetre}))
	}
	// Output:
	// finished cuff: 23.0 cm
	// length as cut: 26.0 cm = 23 cm finished + 3 cm two allowances
	// depth as cut: 15.0 cm = 6 cm depth + 1.5 cm allowance x 2 because it is folded
}

// Sources that disagree stand side by side.
func ExampleFullnesses() {
	for r := range gather.Fullnesses {
		if r.Use == "frill" && r.Cloth == "any" {
			fmt.Println(r.Low, "to", r.High, r.Known)
		}
	}
	// Output:
	// 3 to 3 read
	// 2 1/2 to 2 1/2 read
}
