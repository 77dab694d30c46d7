package units_test

import (
	"fmt"

	"example.com/clothyard/units"
)

// seams are the allowances that a pattern from abroad asks for.
var seams = [...]string{"1/4 in", "3/8 in", "5/8 in", "1 in"}

// Convert exactly, and find what a printed chart of rounded equivalents says instead.
func Example_convert() {
	for _, text := range seams {
		l := units.MustParse(text)
		printed := "not printed"
		for row := range units.ChartRows() {
			if row.Chart == "guide-inches" && row.Of == l {
				printed = row.Printed.String()
			}
		}
		fmt.Printf("%-7s is %v mm, the chart has %s\n", text, l.In(units.Millimetre), printed)
	}
	// Output:
	// 1/4 in  is 6 7/20 mm, the chart has 6 mm
	// 3/8 in  is 9 21/40 mm, the chart has 10 mm
	// 5/8 in  is 15 7/8 mm, the chart has 16 mm
	// 1 in    is 25 2/5 mm, the chart has 25 mm
}
