package strip_test

import (
	"fmt"

	"example.com/clothyard/units"
	"example.com/clothyard/units/strip"
)

// The frill of the highwayman's shirt is joined from three pieces, and its ends
// are turned in.
func ExampleSpec_Plan() {
	p, err := strip.Spec{
		Pieces:    3,
		Each:      units.MustParse("12 1/4 in"),
		Allowance: units.Give(units.MustParse("1/2 in")),
		Ends:      units.MustParse("1/2 in"),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p.Sewn, "with joins at", p.Places[0], "and", p.Places[1])
	fmt.Println(p.Working().Text())
	// Output:
	// 33 3/4 in with joins at 11 1/4 in and 22 1/2 in
	// strip as sewn: 33 3/4 in = 12 1/4 in each x 3 pieces - 2 in the joins - 1 in the two ends
}

// How many widths of cloth does the hem ruffle of a page's cloak take, sewn into
// a ring?
func ExampleSpec_Plan_solved() {
	s, err := strip.Spec{
		Each:      units.MustParse("44 in"),
		Allowance: units.Give(units.MustParse("1/2 in")),
		Ring:      true,
		Least:     units.MustParse("180 in"),
	}.Plan()
	fmt.Println(s.Spec.Pieces, err)
	// Output: 5 <nil>
}

// A ring has one join more than a strip with open ends.
func ExamplePlan() {
	s := strip.Spec{Pieces: 2, Each: units.MustParse("20 in"), Allowance: units.Give(units.MustParse("1/2 in"))}
	for _, ring := range []bool{false, true} {
		s.Ring = ring
		p, err := s.Plan()
		fmt.Println(p.Sewn, "joined at", p.Places, err)
	}
	// Output:
	// 39 in joined at [19 1/2 in] <nil>
	// 38 in joined at [19 in 38 in] <nil>
}
