package alter_test

import (
	"fmt"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/alter"
	"example.com/clothyard/units"
)

// show prints a figure to the nearest 1/32 in.
func show(what string, n units.Near) {
	mark, _, err := n.Round(units.Inch.Frac(1, 32), units.HalfAway)
	fmt.Println(what, mark, err == nil)
}

// A sleeve 1/2 in longer than its armhole.
func ExampleEasing_Plan() {
	in := units.Inch
	p, err := alter.Easing{Long: in.Mixed(19, 1, 4), Zones: alter.SleeveZones(in.Mixed(9, 3, 8), in.Mixed(9, 3, 8))}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for i, z := range p.Zones {
		fmt.Println(p.Spec.Zones[i].Name, z.Ease)
	}
	fmt.Println("smooth:", p.Smooth)
	// Output:
	// front underarm 0 in
	// front 1/4 in
	// front shoulder 0 in
	// back shoulder 0 in
	// back 1/4 in
	// back underarm 0 in
	// smooth: true
}

// The doublet must be let out by 3 in for another page. The side seams have 1 in of
// allowance, the back seam is French and made up.
func ExampleLetting_Plan() {
	in := units.Inch
	p, err := alter.Letting{
		Total: in.Of(3),
		Seams: []alter.Let{
			{Name: "side", Times: 2, Spec: seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: in.Of(1)}}}},
			{Name: "back", Sewn: true, Then: seam.Any{Seam: seam.Plain{}}, Spec: seam.Any{Seam: seam.French{First: in.Frac(3, 8), Second: in.Frac(1, 4)}}},
		},
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for i, s := range p.Seams {
		fmt.Println(p.Spec.Seams[i].Name, "each ply", s.Each, "of", s.Gives, "- then a", s.After.Spec.Kind(), "seam of", s.Take)
	}
	// Output:
	// side each ply 11/16 in of 3/4 in - then a plain seam of 5/16 in
	// back each ply 1/8 in of 1/8 in - then a plain seam of 1/4 in
}

// A skirt lengthened by 2 in, whose flared side is sewn to a straight one.
func ExampleLengthening_Plan() {
	in := units.Inch
	p, err := alter.Lengthening{By: in.Of(2), Height: in.Of(30), Run: in.Of(4)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	show("the straight piece by", p.WithBy)
	fmt.Println("the flared side is drawn again over a step of", p.Jog)
	// Output:
	// the straight piece by 1 31/32 in true
	// the flared side is drawn again over a step of 4/15 in
}
