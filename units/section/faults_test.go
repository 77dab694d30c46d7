package section_test

import (
	"errors"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/ticket"
)

// good is a drawing that passes, made anew for each case to spoil.
func good() section.Drawing {
	return frenchSecond(in("1/4"), in("1/8"), in("1/32"), in("3/4"))
}

func TestFaults(t *testing.T) {
	huge := units.MustParse("1" + strings.Repeat("0", 300) + " in")
	for _, test := range []struct {
		why   string
		spoil func(d *section.Drawing)
		want  string
		err   error
	}{
		{"nothing given", func(d *section.Drawing) { *d = section.Drawing{} }, "Title Thickness Plies", fault.Missing},
		{"every count and size out of range", func(d *section.Drawing) {
			d.Title, d.Desc = "a\x00", strings.Repeat("x", 2000)
			d.Thickness, d.True, d.Scale = huge, in("-1"), units.RatioOf(1001, 1)
			d.Plies, d.Stitches, d.Dimensions = make([]section.Ply, 1e6), make([]section.Stitch, 1e6), make([]section.Dimension, 1e6)
		}, "Title Desc Thickness True Scale Plies Stitches Dimensions", fault.Range},
		{"negative", func(d *section.Drawing) { d.Thickness, d.Scale = in("-1"), units.RatioOf(-1, 1) }, "Thickness Scale", fault.Sign},
		{"an empty ply, stitch and measure", func(d *section.Drawing) {
			d.Plies = append(d.Plies, section.Ply{})
			d.Stitches = append(d.Stitches, section.Stitch{})
			d.Dimensions = append(d.Dimensions, section.Dimension{})
		}, "Plies[2].Name Plies[2].Fill Plies[2].Path Plies[2].Start Plies[2].Finish Stitches[2].Name Stitches[2].To Stitches[2].Pierce " +
			"Dimensions[2].Name Dimensions[2].Side Dimensions[2].To", fault.Missing},
		{"no such kinds", func(d *section.Drawing) {
			d.Plies[0].Fill, d.Plies[0].Start, d.Plies[0].Finish, d.Plies[0].Face = section.Crossed+1, section.Neat+1, 9, section.Right+1
			d.Dimensions[0].Side = section.Below + 1
		}, "Plies[0].Fill Plies[0].Start Plies[0].Finish Plies[0].Face Dimensions[0].Side", fault.Unknown},
		{"two of one name", func(d *section.Drawing) { d.Plies[1].Name = "upper" }, "Plies[1].Name", fault.Twice},
		{"three of one name", func(d *section.Drawing) {
			d.Plies = append(d.Plies, d.Plies[0], d.Plies[0])
		}, "Plies[2].Name Plies[3].Name", fault.Twice},
		{"a slanted ply", func(d *section.Drawing) { d.Plies[0].Path[1].X = d.Plies[0].Path[1].X.Add(in("1")) }, "Plies[0].Path[2]", section.ErrSquare},
		{"a ply that does not turn", func(d *section.Drawing) {
			d.Plies[0].Path = []section.Point{at(in("0"), in("1")), at(in("1"), in("1")), at(in("2"), in("1"))}
		}, "Plies[0].Path[2]", section.ErrSquare},
		{"a ply that stands still", func(d *section.Drawing) { d.Plies[0].Path = []section.Point{at(zero, zero), at(zero, zero)} }, "Plies[0].Path[1]", section.ErrSquare},
		{"out of reach", func(d *section.Drawing) {
			d.Plies[0].Path[0].X = huge
			d.Stitches[0].From.Y, d.Stitches[0].To.Y = huge, huge.Neg()
			d.Dimensions[0].From.Y, d.Dimensions[0].To.Y = huge, huge
			d.Plies[1].Path[0].X = huge.Neg()
		}, "Plies[0].Path[0] Plies[1].Path[0] Stitches[0].From Stitches[0].To Dimensions[0].From Dimensions[0].To", fault.Range},
		{"a slanted stitch", func(d *section.Drawing) { d.Stitches[0].To.X = zero }, "Stitches[0].To", section.ErrSquare},
		{"a stitch through a thousand plies", func(d *section.Drawing) { d.Stitches[0].Pierce = make([]string, 1000) }, "Stitches[0].Pierce", fault.Range},
		{"a measure of nothing", func(d *section.Drawing) { d.Dimensions[0].Amount = ticket.Amount{} }, "Dimensions[0].Amount", fault.Missing},
		{"a measure that is a number", func(d *section.Drawing) { d.Dimensions[0].Amount = ticket.Of(3) }, "Dimensions[0].Amount", fault.Missing},
		{"a measure that is not so", func(d *section.Drawing) { d.Dimensions[1].Amount = ticket.Long(in("3/8")) }, "Dimensions[1].Amount", fault.Conflict},
		{"a measure that ends on nothing", func(d *section.Drawing) {
			d.Dimensions[1] = dim("second pass", section.Below, in("-7/32"), zero, in("1/32"), zero)
		}, "Dimensions[1].From Dimensions[1].To", section.ErrNoMark},
		{"plies that cross", func(d *section.Drawing) {
			d.Plies = append(d.Plies, section.Ply{Name: "third", Fill: section.Blank, Start: section.RunsOn, Finish: section.RunsOn,
				Path: []section.Point{at(in("-1/2"), in("1")), at(in("-1/2"), in("-1"))}})
		}, "Plies[2].Path[1]", section.ErrCross},
		{"plies that lie in one place", func(d *section.Drawing) {
			for i := range d.Plies[1].Path {
				d.Plies[1].Path[i].Y = d.Plies[1].Path[i].Y.Add(in("1/64"))
			}
			d.Stitches = d.Stitches[:0]
			d.Dimensions = d.Dimensions[:0]
			d.Plies[0].Finish, d.Plies[1].Finish = section.Neat, section.Neat
		}, "Plies[1].Path[1] Plies[1].Path[2] Plies[1].Path[4] Plies[1].Path[5]", section.ErrCross},
		{"a ply folded into itself", func(d *section.Drawing) {
			p := section.From(at(in("-1"), in("2")), in("1/32")).To(zero)
			*d = section.Drawing{Title: "x", Thickness: in("1/16"), Plies: []section.Ply{{Name: "a", Fill: section.Blank, Start: section.RunsOn, Finish: section.Raw,
				Path: p.Fold(1, in("1/2")).Path()}}}
		}, "Plies[0].Path[3]", section.ErrCross},
		{"a stitch that misses", func(d *section.Drawing) { d.Stitches[1].To.Y = in("0") }, "Stitches[1].Pierce", section.ErrPierce},
		{"a stitch in the wrong order", func(d *section.Drawing) { d.Stitches[1].Pierce = []string{"under", "upper"} }, "Stitches[1].Pierce", section.ErrPierce},
		{"a stitch beside the cloth", func(d *section.Drawing) { d.Stitches[1].From.X, d.Stitches[1].To.X = in("2"), in("2") }, "Stitches[1].Pierce Dimensions[1].From", section.ErrPierce},
		{"a stitch within a ply", func(d *section.Drawing) {
			d.Stitches[0].From, d.Stitches[0].To = at(in("-1/2"), in("1/64")), at(in("-3/8"), in("1/64"))
			d.Stitches[0].From.Y, d.Stitches[0].To.Y = in("1/50"), in("1/50")
			d.Dimensions = nil
		}, "Stitches[0]", section.ErrPierce},
		{"a raw edge that reaches the second pass", func(d *section.Drawing) {
			*d = frenchSecond(in("1/4"), in("3/16"), in("1/32"), in("3/4"))
		}, "Stitches[1]", section.ErrPierce},
		{"a raw edge that is caught in it", func(d *section.Drawing) {
			*d = frenchSecond(in("1/4"), in("13/64"), in("1/32"), in("3/4"))
		}, "Stitches[1].Pierce", section.ErrPierce},
		{"a hidden edge said to show", func(d *section.Drawing) { d.Plies[0].Finish = section.Raw }, "Plies[0].Finish", section.ErrEdge},
		{"an edge that shows said to be hidden", func(d *section.Drawing) {
			*d = open(in("5/8"), in("1/32"), in("1"))
			d.Plies[0].Finish = section.Hidden
		}, "Plies[0].Finish", section.ErrEdge},
		{"edges open ahead", func(d *section.Drawing) {
			d.Stitches, d.Dimensions = d.Stitches[:1], d.Dimensions[:1]
			for _, p := range d.Plies {
				p.Path[0].Y, p.Path[1].Y = p.Path[2].Y, p.Path[2].Y
			}
			d.Plies[0].Path = append(d.Plies[0].Path[:1], d.Plies[0].Path[3:]...)
			d.Plies[1].Path = append(d.Plies[1].Path[:1], d.Plies[1].Path[3:]...)
		}, "Plies[0].Finish Plies[1].Finish", section.ErrEdge},
	} {
		d := good()
		test.spoil(&d)
		err := d.Check()
		var faults fault.Faults
		if !errors.As(err, &faults) {
			t.Errorf("%s: no faults but %v", test.why, err)
			continue
		}
		var paths []string
		for _, f := range faults {
			paths = append(paths, f.Path)
			if f.Path == "" || f.Limit == "" || f.Kind == "" {
				t.Errorf("%s: %q names no field, limit or kind", test.why, f)
			}
		}
		if diff := cmp.Diff(strings.Fields(test.want), paths); diff != "" || !errors.Is(err, test.err) {
			t.Errorf("%s: %v\n%s", test.why, err, diff)
		}
		if svg, err := d.SVG(); err == nil || svg != nil {
			t.Errorf("%s: a picture all the same", test.why)
		}
	}
}
