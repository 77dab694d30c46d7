package units_test

import (
	"fmt"

	"example.com/clothyard/units"
)

// A flounce is gathered cloth sewn to a plain edge.
type flounce struct {
	edge     units.Length
	fullness string
}

// Work with pure numbers: fullness, shares and shrinkage are ratios.
func Example_fullness() {
	shrinkage, err := units.ParseRatio("3 %")
	if err != nil {
		fmt.Println(err)
		return
	}
	kept := units.RatioOf(1, 1).Sub(shrinkage)
	for _, f := range []flounce{{units.MustParse("40 in"), "2 1/2"}, {units.MustParse("1 m"), "3:2"}, {units.MustParse("36 in"), "1.75x"}} {
		r, err := units.ParseRatio(f.fullness)
		if err != nil {
			fmt.Println(err)
			continue
		}
		finished := f.edge.Scale(r)
		mark, _ := finished.Unscale(kept).Round(units.Inch.Frac(1, 8), units.Up)
		fmt.Println(f.edge, "at", r, "takes", finished, "and before the wash", mark)
	}
	// Output:
	// 40 in at 2 1/2 takes 100 in and before the wash 103 1/8 in
	// 1000 mm at 1 1/2 takes 1500 mm and before the wash 61 in
	// 36 in at 1 3/4 takes 63 in and before the wash 65 in
}
