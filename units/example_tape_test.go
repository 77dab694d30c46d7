package units_test

import (
	"fmt"

	"example.com/clothyard/units"
)

// sixteenth is the finest mark on the tape.
var sixteenth = units.MustParse("1/16 in")

// Round to a mark of the tape only at the end, and keep what is left: a third of the
// neckline, twelve times over, is four necklines.
func Example_tape() {
	neckline := units.MustParse("14 1/8 in")
	third := neckline.DivInt(3)
	mark, residue := third.Round(sixteenth, units.HalfAway)
	fmt.Println("one third:", third, "on the tape", mark)
	fmt.Println("twelve of the exact:", third.MulInt(12))
	fmt.Println("twelve of the mark: ", mark.MulInt(12), "which is out by", residue.MulInt(12))
	// Output:
	// one third: 4 17/24 in on the tape 4 11/16 in
	// twelve of the exact: 56 1/2 in
	// twelve of the mark:  56 1/4 in which is out by 1/4 in
}
