package yardage_test

import (
	"fmt"

	"github.com/shopspring/decimal"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage"
)

// The highwayman's shirt asks 2 3/4 yd of 45 in cloth; the hamper holds 85 1/2 in.
func ExampleRemnant() {
	p, err := yardage.Remnant{
		Have: units.MustParse("85 1/2 in"), HaveWidth: units.MustParse("45 in"),
		Asked: units.MustParse("2 3/4 yd"), AskedWidth: units.MustParse("45 in"),
		Need: units.MustParse("76 3/16 in"), NeedWidth: units.MustParse("43 in"), // the lay of the pieces
		ShrinkLength: units.RatioOf(3, 100), ShrinkWidth: units.RatioOf(2, 100),
		Selvedge: units.MustParse("1/2 in"), Ends: units.MustParse("1 in"),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	n := units.Notation{}
	fmt.Println("short of the envelope:", n.Exact(p.Short))
	fmt.Println("to lay on:", n.Exact(p.Length), "by", n.Exact(p.Width))
	fmt.Println("spare:", n.Exact(p.Spare))
	fmt.Println(p.Verdict)
	// Output:
	// short of the envelope: 13 1/2 in
	// to lay on: 81 187/200 in by 43 1/10 in
	// spare: 5 299/400 in
	// fits-by-lay
}

// The least to buy for the same shirt.
func ExamplePurchase() {
	p, err := yardage.Purchase{Need: units.MustParse("76 3/16 in"), Ends: units.MustParse("1 in"), Shrink: units.RatioOf(3, 100)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(units.Notation{Unit: units.Yard}.Exact(p.Buy), "in steps of", units.Notation{Unit: units.Yard}.Exact(p.Spec.Counter))
	fmt.Println("assumed:", p.Assumed)
	// Output:
	// 2 1/4 yd in steps of 1/8 yd
	// assumed: [tape counter]
}

// The page's doublet asks 5 yd of 36 in cloth; the shop has 60 in.
func ExampleWidth() {
	p, err := yardage.Width{Asked: units.MustParse("5 yd"), From: units.MustParse("36 in"), To: units.MustParse("60 in")}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	yards := units.Notation{Unit: units.Yard}
	fmt.Println("by area:", yards.Exact(p.ByArea))
	fmt.Println("by the chart:", yards.Exact(p.ByGrid))
	fmt.Println("go by:", p.Trusted)
	// Output:
	// by area: 3 yd
	// by the chart: 2 7/8 yd
	// go by: chart
}

// The working of the same conversion, both figures side by side.
func ExampleWidthPlan_Sheet() {
	p, err := yardage.Width{Asked: units.MustParse("5 yd"), From: units.MustParse("36 in"), To: units.MustParse("60 in")}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, l := range p.Sheet().Lines {
		fmt.Println(l.Text(units.Notation{Unit: units.Yard}))
	}
	// Output:
	// by area: 3 yd = 5 yd asked x 1 yd width asked on / 1 2/3 yd width to be bought
	// by the printed chart: 2 7/8 yd
}

// Lining for the highwayman's coat, 81 in at 15.99 a metre.
func ExamplePrice() {
	p, err := yardage.Price{Length: units.MustParse("81 in"), Each: decimal.RequireFromString("15.99"), Per: units.Metre, Currency: "GBP"}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p.Text())
	fmt.Println("rounded away:", p.Residue)
	// Output:
	// 32.90 GBP
	// rounded away: -1087/500000
}

// A swatch of the calico for the ruffs, washed as they will be.
func ExampleSwatch() {
	p, err := yardage.Swatch{Before: units.MustParse("20 in"), After: units.MustParse("19 1/4 in")}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p.Spec.Shrink)
	// Output: 3/80
}

// The front curtain of the village stage, in widths of 54 in with an 11 in repeat.
func ExamplePanels() {
	p, err := yardage.Panels{
		Cover: units.MustParse("63 in"), Fullness: units.RatioOf(3, 1), Width: units.MustParse("54 in"),
		Drop: units.MustParse("100 in"), Hems: units.MustParse("14 in"), Repeat: units.MustParse("11 in"),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p.Spec.Widths, "widths of", p.Drop, "each in", p.Repeats, "repeats")
	fmt.Println("cloth:", units.Notation{Unit: units.Yard}.Exact(p.Length))
	// Output:
	// 4 widths of 121 in each in 11 repeats
	// cloth: 13 4/9 yd
}

// Bias to bind the page's doublet: ten yards, 3 in wide.
func ExampleBias() {
	p, err := yardage.Bias{Strip: units.MustParse("3 in"), Wanted: units.MustParse("10 yd")}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("square:", p.Spec.Square)
	fmt.Println("by area alone:", p.SideByArea)
	mark, _, err := p.Along().Round(units.MustParse("1/16 in"), units.HalfAway)
	fmt.Println("each strip along the straight edge:", mark, err)
	// Output:
	// square: 34 in
	// by area alone: 33 in
	// each strip along the straight edge: 4 1/4 in <nil>
}

// The printed chart is data: what it does not hold is not made up.
func ExampleGridFor() {
	cell, err := yardage.GridFor(units.MustParse("2 yd"), units.MustParse("36 in"), units.MustParse("54 in"))
	fmt.Println(units.Notation{Unit: units.Yard}.Exact(cell.Length), err)
	_, err = yardage.GridFor(units.MustParse("2 yd"), units.MustParse("36 in"), units.MustParse("47 in"))
	fmt.Println(err)
	// Output:
	// 1 3/8 yd <nil>
	// to 47 in: not in the printed table, want 32, 35 to 36, 39, 41, 44 to 45, 50, 52 to 54, 58 to 60 or 66 in, the widths of the chart
}

// What sources print for one cloth: a swatch decides.
func ExampleShrinkagesOf() {
	for s := range yardage.ShrinkagesOf("cotton, preshrunk") {
		fmt.Println(s.Length, "to", s.LengthMost)
	}
	// Output:
	// 1/50 to 1/20
	// 1/20 to 3/50
}
