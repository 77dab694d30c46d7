package units_test

import (
	"flag"
	"fmt"

	"example.com/clothyard/units"
)

// options are those of a program that plans a hem.
type options struct {
	depth units.Length
	tape  units.Unit
	mode  units.Mode
}

// Take lengths, units and modes from a command line.
func Example_flag() {
	var o options
	fs := flag.NewFlagSet("hem", flag.ContinueOnError)
	fs.TextVar(&o.depth, "depth", units.MustParse("1 in"), "depth of the hem")
	fs.TextVar(&o.tape, "tape", units.Inch, "unit of the tape")
	fs.TextVar(&o.mode, "mode", units.HalfAway, "direction of rounding")
	if err := fs.Parse([]string{"-depth", "1 1/4 in", "-tape", "cm"}); err != nil {
		fmt.Println(err)
		return
	}
	text, _ := units.Notation{Unit: o.tape, Mode: o.mode}.Format(o.depth)
	fmt.Println(text)
	// Output:
	// 3.2 cm
}
