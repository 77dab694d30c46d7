package units_test

import (
	"fmt"

	"example.com/clothyard/units"
)

// The pieces of a page's doublet, along the cloth.
var pieces = [...]string{"22 1/2 in", "17 3/4 in", "9 1/8 in", "45 mm"}

// Add up what lies along the cloth, in any units, and round up to what a shop cuts.
func Example_buy() {
	var along []units.Length
	for _, text := range pieces {
		along = append(along, units.MustParse(text))
	}
	exact := units.Sum(along...)
	bought, spare := exact.Round(units.Yard.Frac(1, 8), units.Up)
	text, _ := units.Notation{Unit: units.Yard}.Format(bought)
	fmt.Println("exactly", exact)
	fmt.Println("buy", text, "and have", spare.Neg(), "over")
	fmt.Println("or", units.MetresBought(bought).In(units.Metre), "m")
	// Output:
	// exactly 1299.125 mm
	// buy 1 1/2 yd and have 72.475 mm over
	// or 1 2/5 m
}
