package main

import (
	"os"

	"example.com/clothyard/units"
)

func Example() {
	if err := tell(os.Stdout, units.Inch.Frac(5, 4)); err != nil {
		panic(err)
	}
	// Output:
	// a double hem of 1 1/4 in takes 2 1/2 in
	// in millimetres 63.5 mm
	// as JSON {"hem":"1 1/4 in"}
	// from a database 1 1/4 in; NULL is a length: false
}
