package units_test

import (
	"errors"
	"fmt"

	"example.com/clothyard/units"
)

// asWritten is the list of measures for a highwayman's shirt, in the hands of four people.
var asWritten = [...]string{`15 1/2"`, "1-5/8 in.", "92,5 cm", "1 yd 4½ in", "5/8-inch", "1 13/8 in", "7"}

// Read measures as people write them. A fault tells its place, so that a form can point to it.
func Example_read() {
	abroad := units.Parser{DecimalComma: true}
	for _, text := range asWritten {
		l, err := units.Parse(text)
		if err != nil {
			if m, other := abroad.Parse(text); other == nil {
				l, err = m, nil
			}
		}
		var fault *units.ParseError
		if errors.As(err, &fault) {
			fmt.Printf("%-11s byte %d: want %s\n", text, fault.Offset, fault.Want)
			continue
		}
		fmt.Printf("%-11s %v\n", text, l)
	}
	// Output:
	// 15 1/2"     15 1/2 in
	// 1-5/8 in.   1 5/8 in
	// 92,5 cm     925 mm
	// 1 yd 4½ in  40 1/2 in
	// 5/8-inch    5/8 in
	// 1 13/8 in   byte 2: want a fraction less than one after a whole number
	// 7           byte 1: want a unit: in, ft, yd, mm, cm, m or L
}
