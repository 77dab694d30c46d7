package section_test

import (
	"errors"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
)

// FuzzSpec draws plies from bytes: it never panics, a fault names its field, and
// what passes makes a picture.
func FuzzSpec(f *testing.F) {
	f.Add([]byte("\x10\x01\x02"), "a hem", int64(32))
	f.Add([]byte("\x20\x01\x18\x01\x08\x30\x02\x11"), "two folds", int64(16))
	f.Add([]byte("\xf0\xff\x18\x81\x08"), "", int64(-1))
	f.Fuzz(func(t *testing.T, b []byte, title string, den int64) {
		if den == 0 {
			den = 1
		}
		i := 0
		next := func() int64 {
			if i >= len(b) {
				return 0
			}
			i++
			return int64(int8(b[i-1]))
		}
		thick := units.Inch.Frac(1, den)
		d := section.Drawing{Title: title, Desc: title, Thickness: thick}
		for len(d.Plies) < 3 && i < len(b) {
			pen := section.From(at(units.Inch.Frac(next(), den), units.Inch.Frac(next(), den)), thick)
			for range 1 + next()&3 {
				pen = pen.Along(units.Inch.Frac(next(), den)).Step(int(next()))
			}
			d.Plies = append(d.Plies, section.Ply{
				Name: string(rune('a' + len(d.Plies))), Fill: section.Fill(1 + next()&3), Path: pen.Path(),
				Start: section.End(1 + next()&3), Finish: section.End(1 + next()&3), Face: section.Face(next() & 3),
			})
		}
		if len(d.Plies) > 0 && len(d.Plies[0].Path) > 1 {
			a, z := d.Plies[0].Path[0], d.Plies[0].Path[len(d.Plies[0].Path)-1]
			x := units.Inch.Frac(next(), den)
			if next()&1 == 0 {
				d.Stitches = []section.Stitch{{Name: title, From: at(x, units.Inch.Frac(next(), den)), To: at(x, units.Inch.Frac(next(), den)), Pierce: []string{"a"}}}
			}
			d.Dimensions = []section.Dimension{dim("whole", section.Side(1+next()&1), a.X, a.Y, z.X, z.Y)}
		}
		svg, err := d.SVG()
		if err != nil {
			var faults fault.Faults
			if !errors.As(err, &faults) || len(faults) == 0 || faults[0].Path == "" || svg != nil {
				t.Fatalf("%v", err)
			}
			return
		}
		parse(t, svg)
	})
}
