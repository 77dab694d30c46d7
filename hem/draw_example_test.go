package hem_test

import (
	"fmt"
	"strings"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
)

// The highwayman's shirt tail, drawn edge-on: the turns are equal, so that the raw
// edge lies in the crease of the finished edge.
func ExamplePlan_Sections() {
	p, err := hem.Spec{Kind: hem.ShirtTail, Depth: units.MustParse("1/4 in"), Circle: units.RatioOf(1, 2)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	drawings, err := p.Sections(units.MustParse("1/32 in"))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, d := range drawings {
		fmt.Println(d.Title)
		for _, m := range d.Dimensions {
			fmt.Println(m.Name, m.Amount)
		}
		for _, s := range d.Stitches {
			fmt.Println(s.Name, "through", strings.Join(s.Pierce, ", "))
		}
	}
	_, err = p.Sections(units.MustParse("3/8 in"))
	fmt.Println(err)
	// Output:
	// Shirt-tail hem
	// hem 1/4 in
	// from the finished edge to the row 3/16 in
	// first turn 1/4 in
	// hem stitching through cloth, cloth, cloth
	// thickness 3/8 in: out of range, want at most 1/4 in (spec.depth)
}

// The drawstring of the miller's sack, with a frill above its upper row.
func ExampleCasingPlan_Sections() {
	p, err := hem.Casing{Kind: hem.CordCasing, Width: units.MustParse("3/8 in"), Ease: units.MustParse("1/4 in"), Heading: units.MustParse("1 in")}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	drawings, err := p.Sections(units.Length{})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range drawings[0].Dimensions {
		fmt.Println(m.Name, m.Amount)
	}
	// Output:
	// casing 1 3/4 in
	// tunnel 5/8 in
	// above the upper row 1 in
	// below the lower row 1/8 in
	// turned in 1/4 in
}

// A growth tuck in the page's doublet.
func ExampleTucksPlan_Sections() {
	p, err := hem.Tucks{Kind: hem.GrowthTuck, Removed: units.MustParse("1 1/2 in"), Edge: units.MustParse("2 in")}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	drawings, err := p.Sections(units.Length{})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, d := range drawings {
		fmt.Println(d.Title, d.Dimensions[0].Amount)
	}
	// Output:
	// Growth tucks, one tuck stitched 3/4 in
	// Growth tucks, one tuck standing 3/4 in
	// Growth tucks, one tuck pressed 3/4 in
}
