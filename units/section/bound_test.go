package section_test

import (
	"strconv"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/ticket"
)

// A drawing at every bound passes, and makes a picture.
func TestBounds(t *testing.T) {
	thick, wide := in("1/16"), in("8")
	d := section.Drawing{Title: "as much as can be", Thickness: thick, Scale: units.RatioOf(section.MaxScale, 1)}
	var names []string
	for i := range section.MaxPlies {
		runs := 1
		if i < 2 {
			runs = section.MaxPoints / 2 // to and fro, so that two plies lie 64 deep
		}
		pen := section.From(at(zero, thick.MulInt(int64(i*section.MaxPoints))), thick).To(wide)
		for range runs - 1 {
			pen = pen.Fold(1, wide)
		}
		name := "ply " + strconv.Itoa(i)
		if i < 2 {
			for range runs {
				names = append(names, name)
			}
		}
		d.Plies = append(d.Plies, section.Ply{Name: name, Fill: section.Blank, Start: section.RunsOn, Finish: section.RunsOn, Path: pen.Path()})
	}
	for i := range section.MaxStitches {
		x := in("1/8").MulInt(int64(i + 1))
		d.Stitches = append(d.Stitches, section.Stitch{Name: "row", From: at(x, thick.Neg()), To: at(x, thick.MulInt(2*section.MaxPoints-1)), Pierce: names})
		d.Dimensions = append(d.Dimensions, section.Dimension{Name: "from the end", From: at(zero, zero), To: at(x, zero), Side: section.Below, Amount: ticket.Long(x)})
	}
	if len(d.Plies[0].Path) != section.MaxPoints || len(names) != section.MaxPierced || len(d.Dimensions) != section.MaxDimensions {
		t.Fatal("not at the bounds")
	}
	svg, err := d.SVG()
	if err != nil {
		t.Fatal(err)
	}
	picture(t, svg)
	// A point may lie as far as the reach, and no farther.
	reach := units.Metre.Of(section.MaxReach)
	for _, test := range []struct {
		x  units.Length
		ok bool
	}{{reach, true}, {reach.Neg(), true}, {reach.Add(in("1/16")), false}, {reach.Add(in("1/16")).Neg(), false}} {
		far := section.Drawing{Title: "far", Thickness: thick, Plies: []section.Ply{{Name: "cloth", Fill: section.Blank, Start: section.RunsOn, Finish: section.RunsOn,
			Path: []section.Point{at(zero, zero), at(test.x, zero)}}}}
		if _, err := far.SVG(); (err == nil) != test.ok {
			t.Errorf("as far as %v: %v", test.x, err)
		}
	}
}
