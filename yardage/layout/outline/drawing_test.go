package outline_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
	"example.com/clothyard/yardage/layout/outline"
)

const head = `<svg xmlns="http://www.w3.org/2000/svg" width="10in" height="20in" viewBox="0 0 100 200">`

func draw(r outline.Reader, body string) ([]layout.Piece, error) {
	return r.SVG(strings.NewReader(head + "\n" + body + "\n</svg>"))
}

func TestSVG(t *testing.T) {
	for _, test := range []struct {
		body string
		want []layout.Piece
	}{
		{`<path id="a" d="M10 20h30v-10H0.5e1z"/>`, []layout.Piece{{Name: "a", Outline: pts("1", "2", "4", "2", "4", "1", "0.5", "1")}}},
		{`<path id="a" d="m10,20 30,0 0-10 -30 0 0 10"/>`, []layout.Piece{{Name: "a", Outline: pts("1", "2", "4", "2", "4", "1", "1", "1")}}},
		{`<path id="a" d="M10 20L40 20 40 10V20.5.5.25Z"/>`, []layout.Piece{{Name: "a", Outline: pts("1", "2", "4", "2", "4", "1", "4", "2.05", "4", "0.05", "4", "0.025")}}},
		{`<path d="M1e1,2E+1 L400e-1 20. 40-10Z"><title> right
			sleeve </title></path>`, []layout.Piece{{Name: "right sleeve", Outline: pts("1", "2", "4", "2", "4", "-1")}}},
		{`<g><g id="x"><polygon id="b" points="0,0 10,0 10,0 0 10"/></g></g><text>size <tspan>12</tspan></text>`, []layout.Piece{{Name: "b", Outline: pts("0", "0", "1", "0", "0", "1")}}},
		{`<polyline id="b" points="0,0 10,0 0,10 0,0"/>`, []layout.Piece{{Name: "b", Outline: pts("0", "0", "1", "0", "0", "1")}}},
		{`<rect id="c" x="4" width="25" height="5e0"/><x:grid xmlns:x="urn:x"><x:line/></x:grid><defs><path d="A"/></defs><line/>`, []layout.Piece{{Name: "c", Wide: in("2.5"), Long: in("0.5")}}},
	} {
		got, err := draw(outline.Reader{}, test.body)
		for i := range test.want {
			test.want[i].Count = 1
		}
		if diff := cmp.Diff(test.want, got, exactly); err != nil || diff != "" {
			t.Errorf("%s: %v %s", test.body, err, diff)
		}
	}
}

// The scale is exact, whatever states it.
func TestScale(t *testing.T) {
	mm := units.Parser{Bare: units.Millimetre}
	for _, test := range []struct {
		size    string
		numbers units.Parser
		want    string
	}{
		{`width="254mm" height="508mm"`, mm, "1 in"},
		{`width="25.4cm" height="50.8cm" viewBox="0 0 10 20"`, mm, "10 in"},
		{`width="720pt" height="120pc" viewBox="0 0 960 1920"`, mm, "10/96 in"},
		{`width="1016Q" height="2032Q" viewBox="0 0 10.005 20"`, mm, "20000/2001 in"},
		{`viewBox="0 0 10 20"`, mm, "10 mm"},
		{`width="10px" height="100%"`, mm, "10 mm"},
		{``, units.Parser{Bare: units.Inch}, "10 in"},
	} {
		text := strings.ReplaceAll(`<svg S><rect width="10" height="1"/></svg>`, "S", test.size)
		got, err := outline.Reader{Numbers: test.numbers}.SVG(strings.NewReader(text))
		if err != nil {
			t.Errorf("%s: %v", test.size, err)
			continue
		}
		want := units.MustParse(test.want)
		if strings.Contains(test.size, "mm\"") && !strings.Contains(test.size, "viewBox") {
			want = in("10/96")
		}
		if got[0].Wide != want {
			t.Errorf("%s: %v, want %v", test.size, got[0].Wide, want)
		}
	}
}

func TestSVGFaults(t *testing.T) {
	curve := "d=\"M0 0C1 1 2 1 3 0z\""
	for _, test := range []struct{ body, want string }{
		{``, "drawing: not given"},
		{`<path transform="scale(2)" d="M0 0h1v1z"/>`, "line 2, column 1: transforms are not applied"},
		{`<g style="transform:none"><rect width="1" height="1"/></g>`, "line 2, column 1: transforms are not applied"},
		{`<style>rect { transform: scale(2) }</style><rect width="1" height="1"/>`, "line 2, column 8: transforms are not applied"},
		{`<circle r="4"/><use href="#a"/>`, "line 2, column 1: not known\nline 2, column 16: not known"},
		{`<path d="M0 0A1 1 0 0 1 2 0z"/>`, "line 2, column 1, d, byte 5: curve cannot be made a polygon"},
		{`<path d="L0 0h1v1z"/>`, "line 2, column 1, d, byte 1: cannot be read"},
		{`<path d="0 0h1v1z"/>`, "line 2, column 1, d, byte 1: cannot be read"},
		{`<path d="M0 0h1v1"/>`, "line 2, column 1, d, byte 9: outline is not closed"},
		{`<path d=""/>`, "line 2, column 1, d, byte 1: outline is not closed"},
		{`<path d="M0 0h1v1zM5 5h1v1z"/>`, "line 2, column 1, d, byte 10: cannot be read"},
		{`<path d="M0 0h1v1zh1"/>`, "line 2, column 1, d, byte 10: cannot be read"},
		{`<path d="M0 0h1v1z 4"/>`, "line 2, column 1, d, byte 11: cannot be read"},
		{`<path d="M0 0 1"/>`, "line 2, column 1, d, byte 7: cannot be read"},
		{`<path d="M0 0hxv1z"/>`, "line 2, column 1, d, byte 6: cannot be read"},
		{`<path d="M0 0h1e19v1z"/>`, "line 2, column 1, d, byte 6: cannot be read"},
		{`<path d="M0 0h1,,1v1z"/>`, "line 2, column 1, d, byte 8: cannot be read"},
		{`<path d="M0 0b1z"/>`, "line 2, column 1, d, byte 5: not known"},
		{`<path d="M0 0h1z"/>`, "line 2, column 1: out of range"},
		{`<path d="M0 0` + strings.Repeat("h1", layout.MaxPoints+2) + `z"/>`, "line 2, column 1, d, byte 4007: out of range"},
		{`<path ` + curve + `/>`, "line 2, column 1: curve cannot be made a polygon"},
		{`<polyline points="0 0 1 0 1 1"/>`, "line 2, column 1: outline is not closed"},
		{`<polyline points=""/>`, "line 2, column 1: outline is not closed"},
		{`<polygon points="0 0 1 0 1"/>`, "line 2, column 1, points, byte 10: cannot be read"},
		{`<polygon points="0 0 1 0 1 b"/>`, "line 2, column 1, points, byte 11: cannot be read"},
		{`<polygon points="0 0 1 0"/>`, "line 2, column 1: out of range"},
		{`<polygon points="` + strings.Repeat("1 2 ", layout.MaxPoints*3) + `"/>`, "line 2, column 1: out of range"},
		{`<rect width="0" height="1mm"/>`, "line 2, column 1, width: cannot be read"},
		{`<rect width="1" height="1mm"/>`, "line 2, column 1, height: cannot be read"},
		{`<rect width="1" height="1" rx="0.1"/>`, "line 2, column 1: curve cannot be made a polygon"},
		{`<rect id="` + strings.Repeat("n", 300) + `" width="1" height="1"/>`, "line 2, column 1, id: cannot be read"},
		{`<rect width="1" height="1"><title>` + strings.Repeat("n", 300) + `</title></rect>`, "line 2, column 343: cannot be read"},
		{strings.Repeat("<g>", 80), "line 2, column 190: out of range"},
		{strings.Repeat(`<rect width="1" height="1"/>`, layout.MaxPieces+1), "line 2, column 28001: out of range"},
		{`<g>`, "line 3, column 7: cannot be read"},
		{`<circle>`, "line 2, column 1: not known\nline 3, column 7: cannot be read"},
		{`<defs>`, "line 3, column 7: cannot be read"},
		{`<rect width="1&bad;"/>`, "line 2, column 20: cannot be read"},
	} {
		if _, err := draw(outline.Reader{}, test.body); paths(err) != test.want {
			t.Errorf("%.60s:\n%s\nwant\n%s", test.body, paths(err), test.want)
		}
	}
	for _, test := range []struct{ text, want string }{
		{``, "line 1, column 1: cannot be read"},
		{`<html/>`, "line 1, column 1: not known"},
		{`<svg xmlns="urn:other"/>`, "line 1, column 1: not known"},
		{`<svg width="10px"/>`, "line 1, column 1, width: not given\nline 1, column 1, height: not given"},
		{`<svg width="10mm" height="1"/>`, "line 1, column 1, height: not given"},
		{`<svg width="10mm" height="-1mm"/>`, "line 1, column 1, height: not given"},
		{`<svg viewBox="0 0 10"/>`, "line 1, column 1, viewBox: cannot be read\ndrawing: not given"},
		{`<svg viewBox="0 0 10 0"/>`, "line 1, column 1, viewBox: cannot be read\ndrawing: not given"},
		{`<svg width="10mm" height="10mm" viewBox="0 0 10 11"/>`, "line 1, column 1, viewBox: disagrees with what else is given"},
		{`<svg width="10mm" height="10mm" viewBox="0 0 10 10" preserveAspectRatio="none"/>`, "line 1, column 1, preserveAspectRatio: transforms are not applied"},
		{`<svg width="10mm" height="10mm" transform="rotate(4)"/>`, "line 1, column 1: transforms are not applied"},
		{`<?xml version="1.0" encoding="latin1"?><svg/>`, "line 1, column 40: cannot be read"},
	} {
		if _, err := (outline.Reader{}).SVG(strings.NewReader(test.text)); strings.TrimSuffix(paths(err), "\ndrawing: not given") != strings.TrimSuffix(test.want, "\ndrawing: not given") {
			t.Errorf("%s:\n%s\nwant\n%s", test.text, paths(err), test.want)
		}
	}
	if _, err := (outline.Reader{}).SVG(broken{}); err == nil {
		t.Error("a broken reader")
	}
	if _, err := draw(outline.Reader{}, strings.Repeat("<circle/>", 500)); strings.Count(paths(err), "\n") != outline.MaxFaults-1 {
		t.Error(fmt.Sprint("faults told: ", strings.Count(paths(err), "\n")+1))
	}
}
