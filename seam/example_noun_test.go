package seam_test

import (
	"fmt"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
)

// show prints a figure to the nearest 1/32 in.
func show(what string, n units.Near) {
	mark, _, err := n.Round(units.Inch.Frac(1, 32), units.HalfAway)
	fmt.Println(what, mark, err == nil)
}

// The fish-eye dart in the back of the page's doublet.
func ExampleDart_Plan_doublePointed() {
	p, err := seam.Dart{Kind: seam.DoubleDart, Length: units.Inch.Of(5), Lower: units.Inch.Of(6), Width: units.Inch.Of(1)}.Plan()
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
func ExampleDart_Plan_french() {
	p, err := seam.Dart{Kind: seam.FrenchDart, Length: units.Inch.Of(10), Width: units.Inch.Of(2), Allowance: units.Inch.Frac(5, 8), Across: true}.Plan()
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
func ExampleDart_Plan_openEnded() {
	p, err := seam.Dart{Kind: seam.OpenEndedDart, Length: units.Inch.Of(4), Width: units.Inch.Of(1), End: units.Inch.Frac(1, 2), Allowance: units.Inch.Of(1)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("takes", p.AtSeam, "from the seam")
	// Output:
	// takes 7/8 in from the seam
}

// What the side dart takes from the side seam, as one of the takes of that edge.
func ExampleDartPlan_Take() {
	d, err := seam.Dart{Length: units.Inch.Of(6), Width: units.Inch.Of(1), Allowance: units.Inch.Of(1)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	take, ok := d.Take("dart", units.Length{})
	side, err := seam.Edge{Name: "side", Along: units.Inch.Of(9), Takes: []seam.Take{take}}.Plan()
	fmt.Println(side.Sewn, ok, err)
	// Output:
	// 8 1/6 in true <nil>
}

// The shoulder dart of the doublet is moved to the waist, where it is longer and so
// wider.
func ExamplePivot_Plan() {
	in := units.Inch
	p, err := seam.Pivot{Length: in.Of(6), Width: in.Of(1), To: in.Of(9)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("wide", p.Width, "and left of the old", p.Left)
	// Output:
	// wide 1 1/2 in and left of the old 0 in
}

// The neck of the page's doublet bound on the bias instead of faced.
func ExampleBinding_Plan() {
	in := units.Inch
	p, err := seam.Binding{
		Kind: seam.SingleBinding, Finished: in.Frac(1, 4), Bias: true,
		Allowance: in.Frac(5, 8), Curve: units.RatioOf(-7, 2),
		Edge: in.Mixed(16, 1, 2), Ends: in.Frac(1, 2), Cloth: in.Of(10),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("cut", p.Width, "wide,", p.Pieces, "strips; cut", p.Spec.Allowance, "off the edge first")
	fmt.Println("with the allowance left on the neck would differ by", p.IfLeft)
	show("a join takes", p.JoinLoss)
	// Output:
	// cut 1 1/8 in wide, 2 strips; cut 5/8 in off the edge first
	// with the allowance left on the neck would differ by -2 3/16 in
	// a join takes 23/32 in true
}

// Piping round a cord of 1/4 in: the strip is wider than eight times the cord.
func ExampleBinding_Plan_piping() {
	p, err := seam.Binding{Kind: seam.Piping, Cord: units.Inch.Frac(1, 4)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	mark, _, err := p.Width.Round(units.Inch.Frac(1, 16), units.Up)
	fmt.Println("cut", mark, "wide", err == nil)
	// Output:
	// cut 2 1/16 in wide true
}

// Topstitching 1 1/8 in from the front edge of the highwayman's shirt, and a
// buttonhole square to it.
func ExampleRow_Plan() {
	in := units.Inch
	p, err := seam.Row{Kind: seam.TopStitch, Distance: in.Mixed(1, 1, 8), Layer: in.Mixed(1, 1, 4), Start: in.Frac(5, 8), End: in.Mixed(1, 3, 16)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("catches the facing:", p.Caught)
	fmt.Println("runs into the hole by", p.Crosses)
	// Output:
	// catches the facing: true
	// runs into the hole by 1/16 in
}

// The inner stand of a collar, of linen 1/64 in thick.
func ExampleRoll_Plan() {
	p, err := seam.Roll{Apart: units.Inch.Frac(1, 64), Quarters: 4}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	show("cut it shorter by", p.Shorter)
	// Output:
	// cut it shorter by 3/32 in true
}

// The under collar of the highwayman's shirt.
func ExampleFavour_Plan() {
	in := units.Inch
	p, err := seam.Favour{Edge: in.Mixed(15, 3, 4), Bend: units.RatioOf(1, 2)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("smaller by", p.Spec.By, "all round, its outside edge", p.Under)
	// Output:
	// smaller by 1/16 in all round, its outside edge 15 23/32 in
}

// A sleeve 1/2 in longer than its armhole.
func ExampleEasing_Plan() {
	in := units.Inch
	p, err := seam.Easing{Long: in.Mixed(19, 1, 4), Zones: seam.SleeveZones(in.Mixed(9, 3, 8), in.Mixed(9, 3, 8))}.Plan()
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

// A shoulder that meets the armhole at a slant on the front and square on the back.
func ExampleMeeting_Plan() {
	in := units.Inch
	p, err := seam.Meeting{Drafted: in.Frac(5, 8), Taken: in.Frac(7, 16), Front: units.RatioOf(3, 4)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("the armhole gains", p.Gain, "and makes a peak of", p.Kink)
	// Output:
	// the armhole gains 27/64 in and makes a peak of 3/4
}

// The doublet must be let out by 3 in for another page. The side seams have 1 in of
// allowance, the back seam is French and made up.
func ExampleLetting_Plan() {
	in := units.Inch
	p, err := seam.Letting{
		Total: in.Of(3),
		Seams: []seam.Let{
			{Name: "side", Times: 2, Spec: seam.Spec{Kind: seam.Plain, Drafted: in.Of(1)}},
			{Name: "back", Sewn: true, Then: seam.Plain, Spec: seam.Spec{Kind: seam.French, First: in.Frac(3, 8), Second: in.Frac(1, 4)}},
		},
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for i, s := range p.Seams {
		fmt.Println(p.Spec.Seams[i].Name, "each ply", s.Each, "of", s.Gives, "- then a", s.After.Spec.Kind, "seam of", s.Take)
	}
	// Output:
	// side each ply 11/16 in of 3/4 in - then a plain seam of 5/16 in
	// back each ply 1/8 in of 1/8 in - then a plain seam of 1/4 in
}

// A skirt lengthened by 2 in, whose flared side is sewn to a straight one.
func ExampleLengthening_Plan() {
	in := units.Inch
	p, err := seam.Lengthening{By: in.Of(2), Height: in.Of(30), Run: in.Of(4)}.Plan()
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

// What is printed of the double-pointed dart.
func ExampleDartFigures() {
	for r := range seam.DartFigures {
		if r.Where == "double-pointed" {
			fmt.Println(r.What, r.Least, r.Source)
		}
	}
	// Output:
	// overlap at the widest place 1 in dart-class-notes
	// overlap at the widest place 1 in clothing-construction-handbook
}

// How far off the neck may be, sewn by hand and eye.
func ExampleEdgePlan_Budget() {
	shoulder := seam.Take{Name: "shoulder", Drafted: units.Inch.Frac(5, 8)}
	p, err := seam.Edge{Net: units.Inch.Mixed(16, 1, 2), Takes: []seam.Take{shoulder, shoulder}}.Plan()
	fmt.Println(p.Budget(), err)
	// Output:
	// 1/4 in <nil>
}

// A French seam that runs into a double hem.
func ExamplePlan_Stacked() {
	p, err := seam.Spec{Kind: seam.French}.Plan()
	fmt.Println(p.Stacked(3), "plies", err)
	// Output:
	// 15 plies <nil>
}
