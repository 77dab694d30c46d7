package units_test

import (
	"errors"
	"fmt"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// The highwayman's shirt is drafted in inches, and the linen came in metric.
func Example() {
	seam := units.MustParse("1-5/8 in").Add(units.Millimetre.Of(3))
	mark, residue := seam.Round(units.Inch.Frac(1, 16), units.HalfAway)
	text, _ := units.Notation{Glyphs: true}.Format(seam)
	fmt.Println("exactly ", seam)
	fmt.Println("the mark", mark, "and", residue)
	fmt.Println("in words", text)
	// Output:
	// exactly  44.275 mm
	// the mark 1 3/4 in and -0.175 mm
	// in words 1¾ in
}

func ExampleParse() {
	for _, text := range []string{`1-5/8"`, "1⅝ in", "1 yd 4 1/2 in", "24 L", "5' 4\"", "1 13/8 in", "15"} {
		l, err := units.Parse(text)
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Println(text, "=", l)
	}
	// Output:
	// 1-5/8" = 1 5/8 in
	// 1⅝ in = 1 5/8 in
	// 1 yd 4 1/2 in = 40 1/2 in
	// 24 L = 15.24 mm
	// 5' 4" = 64 in
	// units: "1 13/8 in" at byte 2: found "13/8", want a fraction less than one after a whole number
	// units: "15" at byte 2: found the end, want a unit: in, ft, yd, mm, cm, m or L
}

// A form with one box for inches, filled in by a wardrobe abroad.
func ExampleParser() {
	box := units.Parser{Bare: units.Inch}
	bust, err := box.Parse("36 1/2")
	fmt.Println(bust, err)
	abroad := units.Parser{Bare: units.Centimetre, DecimalComma: true}
	bust, err = abroad.Parse("92,71")
	fmt.Println(bust, err)
	// Output:
	// 36 1/2 in <nil>
	// 36 1/2 in <nil>
}

// A ruff of three strips: thirds of an inch are exact.
func ExampleLength() {
	ruff := units.MustParse("100 in")
	third := ruff.DivInt(3)
	fmt.Println(third, "each, together", third.MulInt(3))
	neck := units.MustParse("14 1/2 in")
	fmt.Println("fullness", ruff.Div(neck))
	fmt.Println("in centimetres", third.In(units.Centimetre))
	// Output:
	// 33 1/3 in each, together 100 in
	// fullness 6 26/29
	// in centimetres 84 2/3
}

func ExampleLength_Round() {
	l := units.MustParse("-5 5/16 in")
	for _, m := range []units.Mode{units.HalfAway, units.HalfEven, units.Down, units.Up, units.ToZero} {
		mark, residue := l.Round(units.Inch.Frac(1, 8), m)
		fmt.Printf("%-9v %10v and %v\n", m, mark, residue)
	}
	// Output:
	// half-away  -5 3/8 in and 1/16 in
	// half-even  -5 1/4 in and -1/16 in
	// down       -5 3/8 in and 1/16 in
	// up         -5 1/4 in and -1/16 in
	// to-zero    -5 1/4 in and -1/16 in
}

// Seven buttons on a page's doublet, measured from the top one, to a sixteenth.
func ExampleMarks() {
	span := units.MustParse("11 in")
	n := 1
	for mark, residue := range units.Marks(span, 6, units.Inch.Frac(1, 16), units.HalfAway) {
		fmt.Printf("button %d at %-10v off by %v\n", n, mark, residue)
		n++
	}
	// Output:
	// button 1 at 0 in       off by 0 in
	// button 2 at 1 13/16 in off by 1/48 in
	// button 3 at 3 11/16 in off by -1/48 in
	// button 4 at 5 1/2 in   off by 0 in
	// button 5 at 7 5/16 in  off by 1/48 in
	// button 6 at 9 3/16 in  off by -1/48 in
	// button 7 at 11 in      off by 0 in
}

// One length in the notations of four readers.
func ExampleNotation() {
	l := units.MustParse("40 5/8 in")
	for _, n := range []units.Notation{
		{},
		{Glyphs: true},
		{Unit: units.Yard, Compound: true},
		{Unit: units.Centimetre, DecimalComma: true},
	} {
		text, residue := n.Format(l)
		fmt.Printf("%-18s leaves %v\n", text, residue)
	}
	// Output:
	// 40 5/8 in          leaves 0 in
	// 40⅝ in             leaves 0 in
	// 1 yd 4 5/8 in      leaves 0 in
	// 103,2 cm           leaves -0.125 mm
}

// A cloak cut as a full circle: its hem is an irrational length.
func ExampleNear() {
	radius := units.MustParse("40 in")
	hem := units.Pi().Of(radius.MulInt(2))
	fmt.Println(hem)
	mark, _, err := hem.Round(units.Inch.Frac(1, 8), units.Up)
	fmt.Println("braid to buy:", mark, err)
	longer, err := hem.Cmp(units.Exactly(units.MustParse("7 yd")))
	fmt.Println("against seven yards:", longer, err)
	// Output:
	// 6383.716271 mm +- 0.000002 mm
	// braid to buy: 251 3/8 in <nil>
	// against seven yards: -1 <nil>
}

func ExampleSqrt() {
	side := units.MustParse("54 in")
	diagonal, err := units.Sqrt(side.Times(side).MulInt(2), units.Length{})
	if err != nil {
		fmt.Println(err)
		return
	}
	mark, _, err := diagonal.Round(units.Inch.Frac(1, 8), units.Down)
	fmt.Println("the bias of a yard and a half of cloth is", mark, err)
	// Output: the bias of a yard and a half of cloth is 76 1/4 in <nil>
}

func ExampleRatio() {
	fullness := units.RatioOf(5, 2)
	fmt.Println(units.MustParse("9 in").Scale(fullness), "of cloth into 9 in")
	shrinkage, err := units.ParseRatio("3 %")
	fmt.Println(units.Yard.Of(2).Scale(shrinkage), "lost in the wash", err)
	// Output:
	// 22 1/2 in of cloth into 9 in
	// 54.864 mm lost in the wash <nil>
}

func ExampleArea() {
	a := units.Inch.Of(18).Times(units.Yard.Of(1))
	fmt.Println(a, "is", a.In(units.Yard), "of a square yard, and on cloth of 45 in takes", a.Over(units.Inch.Of(45)))
	// Output: 648 sq in is 1/2 of a square yard, and on cloth of 45 in takes 365.76 mm
}

func ExampleUnit() {
	fmt.Println(units.Inch.Mixed(1, 5, 8), units.Yard.Frac(3, 8), units.Ligne.Of(40))
	// Output: 1 5/8 in 13 1/2 in 1 in
}

// Charts do not agree on half an inch.
func ExampleChartRows() {
	half := units.MustParse("1/2 in")
	for r := range units.ChartRows() {
		if r.Of == half {
			fmt.Println(r.Chart, r.Printed, "off by", r.Off())
		}
	}
	// Output:
	// guide-inches 12 mm off by -0.7 mm
	// tailoring-inches 13 mm off by 0.3 mm
	// quarter-inches 12.5 mm off by -0.2 mm
	// decimal-inches 1/2 in off by 0 in
	// envelope-inches 13 mm off by 0.3 mm
}

func ExampleMetresBought() {
	for _, text := range []string{"7/8 yd", "1 yd", "2 7/8 yd"} {
		n := units.Notation{Unit: units.Metre, Step: units.Centimetre.Of(1)}
		bought, _ := n.Format(units.MetresBought(units.MustParse(text)))
		fmt.Println(text, "is bought as", bought)
	}
	// Output:
	// 7/8 yd is bought as 0.80 m
	// 1 yd is bought as 0.95 m
	// 2 7/8 yd is bought as 2.65 m
}

// An old pattern asks for an ell of lace, and there are several.
func ExampleOldMeasures() {
	for m := range units.OldMeasures() {
		if m.Name == "ell" && m.Known == source.Read {
			fmt.Println(m.Where, m.Length)
		}
	}
	// Output:
	// England 45 in
	// Flanders 27 in
	// France 54 in
	// Scotland 37 in
}

func ExampleParseError() {
	_, err := units.Parse("5/8 inn")
	var fault *units.ParseError
	if errors.As(err, &fault) {
		fmt.Println(fault.Offset, fault.Found)
	}
	// Output: 4 "inn"
}
