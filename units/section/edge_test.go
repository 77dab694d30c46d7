package section_test

import (
	"errors"
	"regexp"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
)

// TestHidden puts cloth about a raw edge, which lies at 0 and comes from the left,
// and asks whether it is shut in. Distances are in thicknesses.
func TestHidden(t *testing.T) {
	thick := in("1/16")
	th := func(n int64) units.Length { return thick.MulInt(n).DivInt(2) } // halves
	flat := func(name string, x0, x1, y int64) section.Ply {
		return section.Ply{Name: name, Fill: section.Blank, Start: section.RunsOn, Finish: section.RunsOn, Path: []section.Point{at(th(x0), th(y)), at(th(x1), th(y))}}
	}
	upright := func(y0, y1 int64) section.Ply {
		return section.Ply{Name: "ahead", Fill: section.Blank, Start: section.RunsOn, Finish: section.RunsOn, Path: []section.Point{at(th(9), th(y0)), at(th(9), th(y1))}}
	}
	over, under, ahead := flat("over", -20, 6, 4), flat("under", -20, 6, -4), upright(-8, 8)
	for _, test := range []struct {
		why    string
		cloth  []section.Ply
		hidden bool
	}{
		{"all about it", []section.Ply{over, under, ahead}, true},
		{"nothing", nil, false},
		{"nothing over it", []section.Ply{under, ahead}, false},
		{"nothing under it", []section.Ply{over, ahead}, false},
		{"nothing ahead", []section.Ply{over, under}, false},
		{"cloth that ends just over it", []section.Ply{flat("over", -20, 0, 4), under, ahead}, true},
		{"cloth that begins just over it", []section.Ply{flat("over", 0, 6, 4), under, ahead}, true},
		{"cloth that ends before it", []section.Ply{flat("over", -20, -1, 4), under, ahead}, false},
		{"cloth that begins after it", []section.Ply{flat("over", 1, 6, 4), under, ahead}, false},
		{"cloth that ends just under it", []section.Ply{over, flat("under", -20, 0, -4), ahead}, true},
		{"cloth under it that begins after it", []section.Ply{over, flat("under", 1, 6, -4), ahead}, false},
		{"cloth that lies on it", []section.Ply{flat("over", -20, 6, 2), flat("under", -20, 6, -2), ahead}, true},
		{"cloth ahead that ends above it", []section.Ply{over, under, upright(8, 1)}, false},
		{"cloth ahead that ends under it", []section.Ply{over, under, upright(-8, -1)}, false},
		{"cloth ahead that just covers it", []section.Ply{over, under, upright(8, -1)}, true},
		{"cloth against it", []section.Ply{over, under, flat("ahead", 0, 6, 0)}, true},
		{"cloth behind it only", []section.Ply{over, under, flat("behind", -40, -30, 0)}, false},
		{"cloth against its upper half", []section.Ply{over, under, flat("ahead", 0, 6, 1)}, false},
		{"cloth against its lower half", []section.Ply{over, under, flat("ahead", 0, 6, -1)}, false},
		{"cloth against its upper half, none over it", []section.Ply{flat("against", 0, 6, 1), under, ahead}, false},
		{"cloth against its lower half, none under it", []section.Ply{over, flat("against", 0, 6, -1), ahead}, false},
	} {
		for name, turn := range turns() {
			for _, end := range []section.End{section.Hidden, section.Raw} {
				edge := flat("edge", -20, 0, 0)
				edge.Finish = end
				d := section.Drawing{Title: "an edge", Thickness: thick, Plies: []section.Ply{edge}}
				for _, p := range test.cloth {
					p.Path = append([]section.Point(nil), p.Path...)
					d.Plies = append(d.Plies, p)
				}
				turned(&d, turn)
				if err := d.Check(); (err == nil) != (test.hidden == (end == section.Hidden)) || err != nil && !errors.Is(err, section.ErrEdge) {
					t.Errorf("%s, turned %s, said to be %v: %v", test.why, name, end, err)
				}
			}
		}
	}
}

// TestNeedle puts a needle to one ply, which lies from -20 to 20 halves of a
// thickness; a row must go through it and clear of its edges, or lie outside.
func TestNeedle(t *testing.T) {
	thick := in("1/16")
	th := func(n int64) units.Length { return thick.MulInt(n).DivInt(2) }
	for _, test := range []struct {
		why            string
		x0, y0, x1, y1 int64
		ok             bool
	}{
		{"through it", 5, 4, 5, -4, true},
		{"just to its middle, as a blind stitch", 5, 4, 5, 0, true},
		{"not to its middle", 5, 4, 5, 1, false},
		{"near one end", 19, 4, 19, -4, true},
		{"on one end", 20, 4, 20, -4, false},
		{"on the other end", -20, 4, -20, -4, false},
		{"beyond one end", 21, 4, 21, -4, false},
		{"within it", -5, 0, 5, 0, false},
		{"out of its end", 5, 0, 25, 0, false},
		{"into its end", -25, 0, -5, 0, false},
		{"all along it", -25, 0, 25, 0, false},
		{"along its face", -5, 1, 5, 1, false},
	} {
		for name, turn := range turns() {
			for range 2 {
				d := section.Drawing{Title: "a needle", Thickness: thick,
					Plies: []section.Ply{{Name: "cloth", Fill: section.Blank, Start: section.RunsOn, Finish: section.RunsOn,
						Path: []section.Point{at(th(-20), zero), at(th(20), zero)}}},
					Stitches: []section.Stitch{{Name: "row", From: at(th(test.x0), th(test.y0)), To: at(th(test.x1), th(test.y1)), Pierce: []string{"cloth"}}},
				}
				turned(&d, turn)
				if err := d.Check(); (err == nil) != test.ok || err != nil && !errors.Is(err, section.ErrPierce) {
					t.Errorf("%s, turned %s: %v", test.why, name, err)
				}
				test.x0, test.y0, test.x1, test.y1 = test.x1, test.y1, test.x0, test.y0 // and the other way
			}
		}
	}
}

// The outside of a turn is rounded by the thickness, or by what room there is
// before the turn and after it.
func TestRounding(t *testing.T) {
	mm := func(s string) units.Length { return units.MustParse(s + " mm") }
	for _, test := range []struct{ first, step, last, want string }{
		{"9", "3", "9", "A1000 1000 A1000 1000"},
		{"9", "1", "9", "A1000 1000 A1000 1000"},
		{"1/4", "3", "9", "A750 750 A1000 1000"},
		{"9", "3", "1/4", "A1000 1000 A750 750"},
	} {
		x, y := mm(test.first), mm(test.step)
		d := section.Drawing{Title: "a step", Thickness: mm("1"), Scale: units.RatioOf(1, 1), Plies: []section.Ply{{
			Name: "cloth", Fill: section.Blank, Start: section.RunsOn, Finish: section.RunsOn,
			Path: []section.Point{at(zero, zero), at(x, zero), at(x, y), at(x.Add(mm(test.last)), y)},
		}}}
		svg, err := d.SVG()
		if err != nil {
			t.Fatal(err)
		}
		// The first turn is rounded on the right face, the second on the left; the
		// line of the two faces has the left first.
		var arcs []string
		for _, e := range parse(t, svg) {
			if e.attr["fill"] == "none" && len(arcs) == 0 {
				arcs = regexp.MustCompile(`A\d+ \d+`).FindAllString(e.attr["d"], -1)
			}
		}
		if len(arcs) != 2 || arcs[1]+" "+arcs[0] != test.want {
			t.Errorf("%s, %s, %s: arcs %v, want %s", test.first, test.step, test.last, arcs, test.want)
		}
	}
}
