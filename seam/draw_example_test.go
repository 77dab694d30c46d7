package seam_test

import (
	"fmt"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
)

// The side seam of the highwayman's shirt, stage by stage: what is measured in
// each picture.
func ExamplePlan_Sections() {
	p, err := seam.French{First: units.MustParse("3/16 in"), Second: units.MustParse("1/4 in")}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	stages, err := p.Sections(units.Length{})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, d := range stages {
		fmt.Printf("%s: %d plies, %d rows\n", d.Title, len(d.Plies), len(d.Stitches))
		for _, m := range d.Dimensions {
			fmt.Println("-", m.Name, m.Amount)
		}
	}
	// Too thick a ply, and the trimmed edges have no room in the ridge.
	_, err = p.Sections(units.MustParse("1/15 in"))
	fmt.Println(err)
	// Output:
	// French seam, first pass: 2 plies, 1 rows
	// - from the raw edge 3/16 in
	// French seam, second pass: 2 plies, 2 rows
	// - trimmed to 1/8 in
	// - second pass from the fold 1/4 in
	// French seam, pressed: 2 plies, 2 rows
	// - trimmed to 1/8 in
	// - ridge 1/4 in
	// spec.trim 1/8 in: out of range, want at least 2/15 in between the trimmed edges and the second pass, drawn so thick
}
