package section_test

import (
	"errors"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
)

// strip is one ply from point to point, both ends as given.
func strip(name string, start, finish section.End, path ...section.Point) section.Ply {
	return section.Ply{Name: name, Fill: section.Blank, Start: start, Finish: finish, Path: path}
}

// A row that comes down the very edge of a ply is refused, whether it names the ply
// or not: a stitch there holds nothing.
func TestRowOnAnEdge(t *testing.T) {
	thick := in("1/16")
	for _, side := range []int64{1, -1} {
		for _, names := range [][]string{{"cloth"}, {"cloth", "short"}} {
			for turn, f := range turns() {
				d := section.Drawing{Title: "an edge", Thickness: thick,
					Plies: []section.Ply{
						strip("cloth", section.RunsOn, section.RunsOn, at(in("-1"), zero), at(in("1"), zero)),
						strip("short", section.RunsOn, section.RunsOn, at(in("1/2").MulInt(-side), thick.Neg()), at(zero, thick.Neg())),
					},
					Stitches: []section.Stitch{{Name: "row", From: at(zero, thick), To: at(zero, thick.MulInt(-2)), Pierce: names}},
				}
				turned(&d, f)
				err := d.Check()
				var faults fault.Faults
				if !errors.As(err, &faults) || len(faults) != 1 || faults[0].Path != "stitches[0]" || faults[0].Limit != "clear of the edge of short" {
					t.Errorf("side %d, %v, turned %s: %v", side, names, turn, err)
				}
			}
		}
	}
}

// The points of the longest path are looked at like those of any other.
func TestLongestPath(t *testing.T) {
	thick := in("1/16")
	pen := section.From(at(zero, zero), thick).To(in("2"))
	for range section.MaxPoints/2 - 1 {
		pen = pen.Fold(1, in("2"))
	}
	d := section.Drawing{Title: "a flounce folded to and fro", Thickness: thick, Plies: []section.Ply{strip("cloth", section.RunsOn, section.RunsOn, pen.Path()...)}}
	if err := d.Check(); err != nil || len(d.Plies[0].Path) != section.MaxPoints {
		t.Fatalf("%d points: %v", len(d.Plies[0].Path), err)
	}
	end := &d.Plies[0].Path[section.MaxPoints-1]
	end.Y = end.Y.Add(thick)
	if err := d.Check(); !errors.Is(err, section.ErrSquare) {
		t.Errorf("slanted at the end: %v", err)
	}
}

// A sentence may have as many bytes as any text of the library.
func TestLongestDesc(t *testing.T) {
	d := good()
	d.Desc = strings.Repeat("x", units.MaxText)
	if err := d.Check(); err != nil {
		t.Error(err)
	}
	d.Desc += "x"
	if err := d.Check(); !errors.Is(err, fault.Range) {
		t.Errorf("a byte more: %v", err)
	}
}

// Ids begin with the letters and figures of the title, a hyphen for all between.
func TestIds(t *testing.T) {
	for title, want := range map[string]string{
		"Size 10: zigzag":     "section-size-10-zigzag",
		"A0/9z:a`z{9":         "section-a0-9z-a-z-9",
		"  90210 -- AzaZ  ":   "section-90210-azaz",
		"[1/8] @ 3.5 (1900Z)": "section-1-8-3-5-1900z",
		"\u00e9t\u00e9":       "section-t",
		"\u2014":              "section",
	} {
		d := good()
		d.Title = title
		svg, err := d.SVG()
		if err != nil {
			t.Fatal(err)
		}
		if got := picture(t, svg)[0].attr["aria-labelledby"]; got != want+"-title "+want+"-desc" {
			t.Errorf("%q: %s", title, got)
		}
	}
}
