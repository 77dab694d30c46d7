package seam_test

import (
	"fmt"
	"os"
	"path/filepath"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
)

// stages writes a picture of every stage of a seam into a folder, with its measures
// in inches and in millimetres.
func stages(p seam.Plan, dir string) error {
	drawings, err := p.Sections(units.Length{}) // the zero thickness: as thick as shows well
	if err != nil {
		return err
	}
	for i, d := range drawings {
		svg, err := d.SVG(units.Notation{}, units.Notation{Unit: units.Millimetre, Step: units.Millimetre.Frac(1, 10)})
		if err != nil {
			return err
		}
		name := fmt.Sprintf("%d.svg", i+1)
		if err := os.WriteFile(filepath.Join(dir, name), svg, 0o644); err != nil {
			return err
		}
		fmt.Println(name, "is", d.Title)
	}
	return nil
}

// A lesson for the wardrobe's new hands: the working of the side seam of the
// highwayman's shirt, on the board, and its pictures to hand round. At the command
// line, examples/quick -draw does the same.
func Example_lesson() {
	p, err := seam.French{Allowance: seam.Allowance{Drafted: units.Inch.Frac(5, 8)}, First: units.Inch.Frac(3, 16), Second: units.Inch.Frac(1, 4)}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, line := range p.Sheet().Lines {
		fmt.Println(line.Text(units.Notation{}))
	}
	dir, err := os.MkdirTemp("", "lesson") // a folder of your own in a lesson
	if err != nil {
		fmt.Println(err)
		return
	}
	defer os.RemoveAll(dir)
	if err := stages(p, dir); err != nil {
		fmt.Println(err)
	}
	// Output:
	// taken from each ply: 7/16 in = 3/16 in first pass + 1/4 in second pass
	// drift of the upper ply: 3/16 in = 5/8 in cut - 7/16 in taken
	// drift of the under ply: 3/16 in = 5/8 in cut - 7/16 in taken
	// an edge crossed square comes out longer by: 3/8 in = 3/16 in upper + 3/16 in under
	// the test swatch measures across: 11 1/8 in = 6 in one piece + 6 in the other - 7/16 in taken from the one - 7/16 in taken from the other
	// clear inside the ridge: 1/8 in = 1/4 in second pass - 1/8 in left after trimming
	// 1.svg is French seam, first pass
	// 2.svg is French seam, second pass
	// 3.svg is French seam, pressed
}
