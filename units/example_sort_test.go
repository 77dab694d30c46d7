package units_test

import (
	"fmt"
	"maps"
	"slices"

	"example.com/clothyard/units"
)

// ribbons in the box, as they are labelled.
var ribbons = [...]string{"1/4 in", "6.35 mm", "3/8 in", "10 mm", "0.375 in", "1/2 in"}

// Sort, compare and count lengths: == is equality of numbers in whatever unit they were
// written, so that a length is the key of a map.
func Example_sort() {
	count := map[units.Length]int{}
	for _, text := range ribbons {
		count[units.MustParse(text)]++
	}
	for _, width := range slices.SortedFunc(maps.Keys(count), units.Length.Cmp) {
		fmt.Println(width, "x", count[width])
	}
	// Output:
	// 1/4 in x 2
	// 3/8 in x 2
	// 10 mm x 1
	// 1/2 in x 1
}
