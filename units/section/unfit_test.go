package section_test

import (
	"encoding/xml"
	"errors"
	"io"
	"strings"
	"testing"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/section"
)

// TestUnfit puts characters that are no XML, or that a screen obeys, in every name
// and in the description: the names are refused, the description escaped.
func TestUnfit(t *testing.T) {
	for _, bad := range []string{"\uffff", "\ufffe", "\U0010ffff", "\x1b[2J", "\u009b", "\u202e", "\x00", "\xff", "\u2028"} {
		d := good()
		d.Desc = "of a " + bad + " & <b>\nseam"
		svg, err := d.SVG()
		if err != nil {
			t.Fatal(err)
		}
		if strings.Contains(string(svg), bad) {
			t.Errorf("%q stands in the picture", bad)
		}
		for dec := xml.NewDecoder(strings.NewReader(string(svg))); ; {
			if _, err := dec.Token(); err == io.EOF {
				break
			} else if err != nil {
				t.Errorf("%q makes it no XML: %v", bad, err)
				break
			}
		}
		for path, put := range map[string]func(*section.Drawing){
			"title":         func(d *section.Drawing) { d.Title += bad },
			"plies[0].name": func(d *section.Drawing) { d.Plies = append([]section.Ply{}, d.Plies...); d.Plies[0].Name += bad },
			"stitches[0].name": func(d *section.Drawing) {
				d.Stitches = append([]section.Stitch{}, d.Stitches...)
				d.Stitches[0].Name += bad
			},
			"dimensions[0].name": func(d *section.Drawing) {
				d.Dimensions = append([]section.Dimension{}, d.Dimensions...)
				d.Dimensions[0].Name += bad
			},
		} {
			e := d
			put(&e)
			var f fault.Faults
			if _, err := e.SVG(); !errors.As(err, &f) || f[0].Path != path || !errors.Is(f[0], fault.Form) || strings.Contains(f.Error(), bad) {
				t.Errorf("%q in %s: %v", bad, path, err)
			}
		}
	}
}
