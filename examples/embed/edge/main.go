// Edge takes a seam as it will be sewn and tells how long an edge that it crosses
// comes out.
package main

import (
	"fmt"
	"io"
	"log"
	"os"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
)

func main() {
	if err := tell(os.Stdout); err != nil {
		log.Fatal(err)
	}
}

func tell(w io.Writer) error {
	shoulder := seam.French{ // the pattern drew a plain seam of 5/8 in
		First:  units.Inch.Frac(3, 16),
		Second: units.Inch.Frac(1, 4),
	}
	sewn, err := shoulder.Plan()
	if err != nil {
		return err
	}
	neck := edge.Spec{
		Name: "neck",
		Net:  units.Inch.Frac(33, 2),
		Takes: []edge.Take{{
			Name:    "shoulder",
			Drafted: sewn.Upper.Drafted,
			Taken:   sewn.Upper.Taken,
			Plies:   4, // two shoulders of two plies
		}},
	}
	edge, err := neck.Plan()
	if err != nil {
		return err
	}
	_, err = fmt.Fprintf(w, "each ply keeps %v of the allowance drafted, so the neck comes out %v in place of %v\n",
		sewn.Upper.Drift, edge.Sewn, edge.Drafted)
	return err
}
