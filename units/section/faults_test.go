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

// good is a drawing that passes, made for each case to spoil.
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
		{"nothing given", func(d *section.Drawing) { *d = section.Drawing{} }, "title thickness plies", fault.Missing},
		{"every count and size out of range", func(d *section.Drawing) {
			d.Title, d.Desc = "a\x00", strings.Repeat("x", 2000)
			d.Thickness, d.True, d.Scale = huge, in("-1"), units.RatioOf(1001, 1)
			d.Plies, d.Stitches, d.Dimensions = make([]section.Ply, 1e6), make([]section.Stitch, 1e6), make([]section.Dimension, 1e6)
		}, "title desc thickness true scale plies stitches dimensions", fault.Range},
		{"negative", func(d *section.Drawing) { d.Thickness, d.Scale = in("-1"), units.RatioOf(-1, 1) }, "thickness scale", fault.Sign},
		{"an empty ply, stitch and measure", func(d *section.Drawing) {
			d.Plies = append(d.Plies, section.Ply{})
			d.Stitches = append(d.Stitches, section.Stitch{})
			d.Dimensions = append(d.Dimensions, section.Dimension{})
		}, "plies[2].name plies[2].fill plies[2].path plies[2].start plies[2].finish stitches[2].name stitches[2].to stitches[2].pierce " +
			"dimensions[2].name dimensions[2].side dimensions[2].to", fault.Missing},
		{"no such kinds", func(d *section.Drawing) {
			d.Plies[0].Fill, d.Plies[0].Start, d.Plies[0].Finish, d.Plies[0].Face = section.Crossed+1, section.Neat+1, 9, section.Right+1
			d.Dimensions[0].Side = section.Below + 1
		}, "plies[0].fill plies[0].start plies[0].finish plies[0].face dimensions[0].side", fault.Unknown},
		{"two of one name", func(d *section.Drawing) { d.Plies[1].Name = "upper" }, "plies[1].name", fault.Twice},
		{"three of one name", func(d *section.Drawing) {
			d.Plies = append(d.Plies, d.Plies[0], d.Plies[0])
		}, "plies[2].name plies[3].name", fault.Twice},
		{"a slanted ply", func(d *section.Drawing) { d.Plies[0].Path[1].X = d.Plies[0].Path[1].X.Add(in("1")) }, "plies[0].path[2]", section.ErrSquare},
		{"a ply that does not turn", func(d *section.Drawing) {
			d.Plies[0].Path = []section.Point{at(in("0"), in("1")), at(in("1"), in("1")), at(in("2"), in("1"))}
		}, "plies[0].path[2]", section.ErrSquare},
		{"a ply that stands still", func(d *section.Drawing) { d.Plies[0].Path = []section.Point{at(zero, zero), at(zero, zero)} }, "plies[0].path[1]", section.ErrSquare},
		{"out of reach", func(d *section.Drawing) {
			d.Plies[0].Path[0].X = huge
			d.Stitches[0].From.Y, d.Stitches[0].To.Y = huge, huge.Neg()
			d.Dimensions[0].From.Y, d.Dimensions[0].To.Y = huge, huge
			d.Plies[1].Path[0].X = huge.Neg()
		}, "plies[0].path[0] plies[1].path[0] stitches[0].from stitches[0].to dimensions[0].from dimensions[0].to", fault.Range},
		{"a slanted stitch", func(d *section.Drawing) { d.Stitches[0].To.X = zero }, "stitches[0].to", section.ErrSquare},
		{"a stitch through a thousand plies", func(d *section.Drawing) { d.Stitches[0].Pierce = make([]string, 1000) }, "stitches[0].pierce", fault.Range},
		{"a measure of nothing", func(d *section.Drawing) { d.Dimensions[0].Amount = ticket.Amount{} }, "dimensions[0].amount", fault.Missing},
		{"a measure that is a number", func(d *section.Drawing) { d.Dimensions[0].Amount = ticket.Of(3) }, "dimensions[0].amount", fault.Missing},
		{"a measure that is not so", func(d *section.Drawing) { d.Dimensions[1].Amount = ticket.Long(in("3/8")) }, "dimensions[1].amount", fault.Conflict},
		{"a measure that ends on nothing", func(d *section.Drawing) {
			d.Dimensions[1] = dim("second pass", section.Below, in("-7/32"), zero, in("1/32"), zero)
		}, "dimensions[1].from dimensions[1].to", section.ErrNoMark},
		{"plies that cross", func(d *section.Drawing) {
			d.Plies = append(d.Plies, section.Ply{Name: "third", Fill: section.Blank, Start: section.RunsOn, Finish: section.RunsOn,
				Path: []section.Point{at(in("-1/2"), in("1")), at(in("-1/2"), in("-1"))}})
		}, "plies[2].path[1]", section.ErrCross},
		{"plies that lie in one place", func(d *section.Drawing) {
			for i := range d.Plies[1].Path {
				d.Plies[1].Path[i].Y = d.Plies[1].Path[i].Y.Add(in("1/64"))
			}
			d.Stitches = d.Stitches[:0]
			d.Dimensions = d.Dimensions[:0]
			d.Plies[0].Finish, d.Plies[1].Finish = section.Neat, section.Neat
		}, "plies[1].path[1] plies[1].path[2] plies[1].path[4] plies[1].path[5]", section.ErrCross},
		{"a ply folded into itself", func(d *section.Drawing) {
			p := section.From(at(in("-1"), in("2")), in("1/32")).To(zero)
			*d = section.Drawing{Title: "x", Thickness: in("1/16"), Plies: []section.Ply{{Name: "a", Fill: section.Blank, Start: section.RunsOn, Finish: section.Raw,
				Path: p.Fold(1, in("1/2")).Path()}}}
		}, "plies[0].path[3]", section.ErrCross},
		{"a stitch that misses", func(d *section.Drawing) { d.Stitches[1].To.Y = in("0") }, "stitches[1].pierce", section.ErrPierce},
		{"a stitch in the wrong order", func(d *section.Drawing) { d.Stitches[1].Pierce = []string{"under", "upper"} }, "stitches[1].pierce", section.ErrPierce},
		{"a stitch beside the cloth", func(d *section.Drawing) { d.Stitches[1].From.X, d.Stitches[1].To.X = in("2"), in("2") }, "stitches[1].pierce dimensions[1].from", section.ErrPierce},
		{"a stitch within a ply", func(d *section.Drawing) {
			d.Stitches[0].From, d.Stitches[0].To = at(in("-1/2"), in("1/64")), at(in("-3/8"), in("1/64"))
			d.Stitches[0].From.Y, d.Stitches[0].To.Y = in("1/50"), in("1/50")
			d.Dimensions = nil
		}, "stitches[0]", section.ErrPierce},
		{"a raw edge that reaches the second pass", func(d *section.Drawing) {
			*d = frenchSecond(in("1/4"), in("3/16"), in("1/32"), in("3/4"))
		}, "stitches[1]", section.ErrPierce},
		{"a raw edge that is caught in it", func(d *section.Drawing) {
			*d = frenchSecond(in("1/4"), in("13/64"), in("1/32"), in("3/4"))
		}, "stitches[1].pierce", section.ErrPierce},
		{"a hidden edge said to show", func(d *section.Drawing) { d.Plies[0].Finish = section.Raw }, "plies[0].finish", section.ErrEdge},
		{"an edge that shows said to be hidden", func(d *section.Drawing) {
			*d = open(in("5/8"), in("1/32"), in("1"))
			d.Plies[0].Finish = section.Hidden
		}, "plies[0].finish", section.ErrEdge},
		{"edges open ahead", func(d *section.Drawing) {
			d.Stitches, d.Dimensions = d.Stitches[:1], d.Dimensions[:1]
			for _, p := range d.Plies {
				p.Path[0].Y, p.Path[1].Y = p.Path[2].Y, p.Path[2].Y
			}
			d.Plies[0].Path = append(d.Plies[0].Path[:1], d.Plies[0].Path[3:]...)
			d.Plies[1].Path = append(d.Plies[1].Path[:1], d.Plies[1].Path[3:]...)
		}, "plies[0].finish plies[1].finish", section.ErrEdge},
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
