package units_test

import (
	"fmt"

	"example.com/clothyard/units"
)

// tapes are the tapes that hang in the wardrobe.
var tapes = [...]struct {
	owner string
	n     units.Notation
}{
	{"cutter", units.Notation{Glyphs: true}},
	{"buyer", units.Notation{Unit: units.Yard, Compound: true, Step: units.Inch.Frac(1, 8)}},
	{"guest", units.Notation{Unit: units.Centimetre, DecimalComma: true}},
	{"machine", units.Notation{Unit: units.Millimetre, Step: units.Millimetre.Frac(1, 1000)}},
}

// Write one length for several readers. What the text leaves out comes back as the residue.
func Example_write() {
	sash := units.MustParse("2 yd 3 5/8 in")
	for _, t := range tapes {
		text, residue := t.n.Format(sash)
		fmt.Printf("%-8s %-16s residue %v\n", t.owner, text, residue)
	}
	// Output:
	// cutter   75⅝ in           residue 0 in
	// buyer    2 yd 3 5/8 in    residue 0 in
	// guest    192,1 cm         residue -0.125 mm
	// machine  1920.875 mm      residue 0 in
}
