// Lay finds a place on the cloth for three rectangles and two outlines, proves it,
// and writes the picture.
//
//	go run ./examples/embed/lay > lay.svg
package main

import (
	"context"
	"io"
	"log"
	"os"
	"time"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
)

func main() {
	if err := lay(os.Stdout); err != nil {
		log.Fatal(err)
	}
}

// pieces are those of a tabard.
func pieces() []layout.Piece {
	in := units.Inch.Of
	at := func(x, y int64) layout.Point { return layout.Point{X: in(x), Y: in(y)} }
	return []layout.Piece{
		{Name: "body", Wide: in(22), Long: in(30), Count: 2},
		{Name: "belt", Wide: in(4), Long: in(36), Count: 1},
		{Name: "pocket", Wide: in(7), Long: in(8), Count: 2, Turn: layout.Half},
		{Name: "yoke", Count: 1, Outline: []layout.Point{at(0, 0), at(20, 0), at(14, 6), at(6, 6)}, Turn: layout.Half},
		{Name: "gusset", Count: 2, Outline: []layout.Point{at(0, 0), at(6, 0), at(0, 9)}, Turn: layout.Half},
	}
}

func lay(w io.Writer) error {
	spec := layout.Spec{Cloth: layout.Cloth{Wide: units.Inch.Of(45)}, Pieces: pieces(), Work: 5}
	ctx, cancel := context.WithTimeout(context.Background(), 10*time.Second)
	defer cancel()
	plan, err := spec.Plan(ctx)
	if err != nil {
		return err
	}
	if err := layout.Verify(plan.Spec, plan.Placements); err != nil {
		return err
	}
	_, err = io.WriteString(w, plan.SVG())
	return err
}
