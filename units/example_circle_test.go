package units_test

import (
	"fmt"

	"example.com/clothyard/units"
)

// skirt is a full circle with a hole for the waist.
type skirt struct{ waist, length units.Length }

// Cut a circle: its radius and its hem are irrational, and stay between two exact
// bounds, which are drawn closer until the mark on the tape is decided.
func Example_circle() {
	s := skirt{units.MustParse("27 1/2 in"), units.MustParse("41 in")}
	inch := units.Inch.Of(1)
	round := units.Pi().Scale(units.RatioOf(2, 1)) // of a circle, in radii
	share, err := round.Of(inch).Under(s.waist)
	if err != nil {
		fmt.Println(err)
		return
	}
	radius, _, err := share.Of(inch).Round(units.Inch.Frac(1, 16), units.HalfAway)
	fmt.Println("draw the waist at", radius, err)
	hem := round.Of(s.length).Plus(s.waist)
	braid, _, err := hem.Round(units.Yard.Frac(1, 8), units.Up)
	text, _ := units.Notation{Unit: units.Yard}.Format(braid)
	fmt.Println("braid for the hem", text, err)
	// Output:
	// draw the waist at 4 3/8 in <nil>
	// braid for the hem 8 yd <nil>
}
