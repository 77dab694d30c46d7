package outline_test

import (
	"context"
	"fmt"
	"os"
	"strings"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
	"example.com/clothyard/yardage/layout/outline"
)

// A ruff's tapered band and a gusset, measured with a ruler, are read from a
// table and laid.
func ExampleReader_CSV() {
	pieces, err := outline.Reader{Numbers: units.Parser{Bare: units.Centimetre}}.CSV(strings.NewReader(`piece,x,y
band,0,0
band,44,0
band,42,6
band,2,6
gusset,0,0
gusset,12,0
gusset,0,12
`))
	if err != nil {
		fmt.Println(err)
		return
	}
	for i := range pieces {
		pieces[i].Count = 2
	}
	p, err := layout.Spec{Cloth: layout.Cloth{Wide: units.Centimetre.Of(90)}, Pieces: pieces}.Plan(context.Background())
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(len(p.Placements), "pieces on", units.Notation{Unit: units.Centimetre}.Exact(p.Lay))
	// Output:
	// 4 pieces on 12 cm
}

// The front of a page's doublet is drawn with a curved armhole. Its polygon lies
// no more than a thread outside the curve.
func ExampleReader_SVG() {
	const drawing = `<svg xmlns="http://www.w3.org/2000/svg" width="300mm" height="400mm" viewBox="0 0 300 400">
  <path d="M0 0 H120 C120 60 150 90 200 90 V380 H0 Z"><title>doublet front</title></path>
</svg>`
	pieces, err := outline.Reader{Within: units.Millimetre.Of(1)}.SVG(strings.NewReader(drawing))
	if err != nil {
		fmt.Println(err)
		return
	}
	one := pieces[0]
	fmt.Println(one.Name, "has", len(one.Outline), "corners")
	fmt.Println(units.Notation{Unit: units.Millimetre}.Exact(one.Outline[2].X))
	// Output:
	// doublet front has 18 corners
	// 121.38671875 mm
}

// A gore of a troupe's banner is written for the other wardrobe.
func ExampleTrapezoid_Points() {
	gore, err := outline.Trapezoid{Near: units.Inch.Of(18), Far: units.Inch.Of(6), Long: units.Inch.Of(40)}.Points()
	if err != nil {
		fmt.Println(err)
		return
	}
	if err := outline.WriteCSV(os.Stdout, []layout.Piece{{Name: "gore", Outline: gore}}); err != nil {
		fmt.Println(err)
	}
	// Output:
	// piece,x,y
	// gore,0 in,0 in
	// gore,18 in,0 in
	// gore,12 in,40 in
	// gore,6 in,40 in
}

// A quarter of the highwayman's cape, collar line and hem, and how much more
// cloth its polygon takes than the shape itself.
func ExampleSector_Points() {
	s := outline.Sector{Outer: units.Inch.Of(40), Inner: units.Inch.Of(6), Quarters: 1, Within: units.Inch.Frac(1, 8)}
	cape, err := s.Points()
	if err != nil {
		fmt.Println(err)
		return
	}
	area := layout.Piece{Outline: cape}.Area().In(units.Inch).Rat()
	fmt.Println(len(cape), "corners,", area.FloatString(1), "sq in")
	// Output:
	// 24 corners, 1230.7 sq in
}
