package dart_test

import (
	"fmt"

	"example.com/clothyard/seam/dart"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
)

// show prints a figure to the nearest 1/32 in.
func show(what string, n units.Near) {
	mark, _, err := n.Round(units.Inch.Frac(1, 32), units.HalfAway)
	fmt.Println(what, mark, err == nil)
}

// A bust dart of the shirt, 6 in long and 1 in wide where it meets the cut edge.
func ExampleSpec_Plan() {
	p, err := dart.Spec{Length: units.Inch.Of(6), Width: units.Inch.Of(1), Allowance: units.Inch.Frac(5, 8)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	taken, _ := p.AtSeam.Exact()
	fmt.Println("it takes", taken.In(units.Inch), "in from the side seam")
	// Output:
	// it takes 43/48 in from the side seam
}

// The fish-eye dart in the back of the page's doublet.
func ExampleSpec_Plan_doublePointed() {
	p, err := dart.Spec{Kind: dart.Double, Length: units.Inch.Of(5), Lower: units.Inch.Of(6), Width: units.Inch.Of(1)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	third, _ := p.Across(units.Inch.Of(8))
	fmt.Println("takes", p.AtSeam, "at the waist and", third, "3 in below it")
	fmt.Println("clip", p.Clip, "deep; the rows overlap by", p.Spec.Overlap)
	// Output:
	// takes 1 in at the waist and 1/2 in 3 in below it
	// clip 3/8 in deep; the rows overlap by 1 in
}

// A French dart in the widow's bodice: too wide to be left folded, it is cut open.
func ExampleSpec_Plan_french() {
	p, err := dart.Spec{Kind: dart.French, Length: units.Inch.Of(10), Width: units.Inch.Of(2), Allowance: units.Inch.Frac(5, 8), Across: true}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("takes", p.AtSeam, "from the side seam; trimmed to", p.Spec.Trim)
	show("its fold stands out at the cut edge by", p.Cap)
	// Output:
	// takes 1 7/8 in from the side seam; trimmed to 5/8 in
	// its fold stands out at the cut edge by 3/16 in true
}

// A dart let go after 4 in, in the sleeve of the highwayman's shirt.
func ExampleSpec_Plan_openEnded() {
	p, err := dart.Spec{Kind: dart.OpenEnded, Length: units.Inch.Of(4), Width: units.Inch.Of(1), End: units.Inch.Frac(1, 2), Allowance: units.Inch.Of(1)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("takes", p.AtSeam, "from the seam")
	// Output:
	// takes 7/8 in from the seam
}

// What the side dart takes from the side seam, as one of the takes of that edge.
func ExamplePlan_Take() {
	d, err := dart.Spec{Length: units.Inch.Of(6), Width: units.Inch.Of(1), Allowance: units.Inch.Of(1)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	take, ok := d.Take("dart", units.Length{})
	side, err := edge.Spec{Name: "side", Along: units.Inch.Of(9), Takes: []edge.Take{take}}.Plan()
	fmt.Println(side.Sewn, ok, err)
	// Output:
	// 8 1/6 in true <nil>
}

// The shoulder dart of the doublet is moved to the waist, where it is longer and so
// wider.
func ExamplePivot_Plan() {
	in := units.Inch
	p, err := dart.Pivot{Length: in.Of(6), Width: in.Of(1), To: in.Of(9)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("wide", p.Width, "and left of the old", p.Left)
	// Output:
	// wide 1 1/2 in and left of the old 0 in
}

// What is printed of the double-pointed dart.
func ExampleFigures() {
	for r := range dart.Figures {
		if r.Where == "double-pointed" {
			fmt.Println(r.What, r.Least, r.Source)
		}
	}
	// Output:
	// overlap at the widest place 1 in dart-class-notes
	// overlap at the widest place 1 in clothing-construction-handbook
}
