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

// The neck of the page's doublet bound on the bias instead of faced.
func ExampleBinding_Plan() {
	in := units.Inch
	p, err := seam.Binding{
		Kind: seam.SingleBinding, Finished: in.Frac(1, 4), Bias: true,
		Allowance: in.Frac(5, 8), Curve: units.Radians(units.RatioOf(-7, 2)),
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
	p, err := seam.Roll{Apart: units.Inch.Frac(1, 64), Angle: units.Turns(units.RatioOf(1, 1))}.Plan()
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
	p, err := seam.Favour{Edge: in.Mixed(15, 3, 4), Bend: units.Radians(units.RatioOf(1, 2))}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("smaller by", p.Spec.By, "all round, its outside edge", p.Under)
	// Output:
	// smaller by 1/16 in all round, its outside edge 15 23/32 in
}
