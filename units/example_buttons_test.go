package units_test

import (
	"fmt"

	"example.com/clothyard/units"
)

// buttons are those on the front of a footman's waistcoat.
const buttons = 8

// Put buttons at equal distances, each to a mark of the tape. No mark is found from the
// one before, so that nothing adds up on the way down.
func Example_buttons() {
	tape := units.Notation{}
	top, bottom := units.MustParse("3/4 in"), units.MustParse("19 1/2 in")
	span := bottom.Sub(top)
	n := 0
	for mark := range units.Marks(span, buttons-1, units.Inch.Frac(1, 16), units.HalfAway) {
		n++
		text, _ := tape.Format(top.Add(mark))
		fmt.Println("button", n, "at", text)
	}
	// Output:
	// button 1 at 3/4 in
	// button 2 at 3 7/16 in
	// button 3 at 6 1/8 in
	// button 4 at 8 13/16 in
	// button 5 at 11 7/16 in
	// button 6 at 14 1/8 in
	// button 7 at 16 13/16 in
	// button 8 at 19 1/2 in
}
