package outline_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
	"example.com/clothyard/yardage/layout/outline"
)

// A style that may move, size, hide or cut off what is drawn is refused, however it
// is written and wherever it stands.
func TestStyleRefused(t *testing.T) {
	const rect = `<rect width="1" height="1"/>`
	for _, body := range []string{
		`<g style="TRANSFORM:scale(2)">` + rect + `</g>`,
		`<g style="trans\66orm:scale(2)">` + rect + `</g>`,
		`<g style="fill:red;/**/transform:scale(2)">` + rect + `</g>`,
		`<g style="fill:red;/* ; */transform:scale(2)">` + rect + `</g>`,
		`<g style="scale:2">` + rect + `</g>`,
		`<g style="rotate:30deg">` + rect + `</g>`,
		`<g style="fill: url(a'); translate : 4px; font-family:b'">` + rect + `</g>`,
		`<g style="-webkit-transform:scale(2)">` + rect + `</g>`,
		`<g style="zoom:2">` + rect + `</g>`,
		`<g style="stroke">` + rect + `</g>`,
		`<g style="--a:b">` + rect + `</g>`,
		`<g style="display:none">` + rect + `</g>`,
		`<g display="none">` + rect + `</g>`,
		`<g visibility="hidden">` + rect + `</g>`,
		`<g clip-path="url(#a)">` + rect + `</g>`,
		`<g mask="url(#a)">` + rect + `</g>`,
		`<g style="filter:url(#shift)">` + rect + `</g>`,
		`<rect width="1" height="1" style="width:4px"/>`,
		`<path d="M0 0h1v1z" style="d:path('M0 0h9v9z')"/>`,
		`<style>RECT { Transform: scale(2) }</style>` + rect,
		`<style>rect { trans\66 orm: scale(2) }</style>` + rect,
		`<style>rect { fill:red; scale: 2 }</style>` + rect,
		`<style>rect{trans<!-- -->form:scale(2)}</style>` + rect,
		`<style>rect{trans<![CDATA[form:scale(2)]]>}</style>` + rect,
		`<style>a{font-family:"}";scale:2} b{fill:red}</style>` + rect,
		`<style>@import "other.css";</style>` + rect,
		`<style>@media screen{rect{scale:2}}</style>` + rect,
		`<style>rect{fill:red</style>` + rect,
		`<style>fill:red</style>` + rect,
		`<style>a{b{scale:2}}</style>` + rect,
		`<defs><style>rect{scale:2}</style></defs>` + rect,
		`<symbol><g><style>rect{scale:2}</style></g></symbol>` + rect,
		`<x:y xmlns:x="urn:x"><x:z><style>rect{scale:2}</style></x:z></x:y>` + rect,
		`<x:y xmlns:x="urn:x"><style xmlns="http://www.w3.org/1999/xhtml">rect{scale:2}</style></x:y>` + rect,
		`<defs><animateTransform href="#a" type="scale" from="1" to="2"/></defs>` + rect,
		`<script>move()</script>` + rect,
		`<defs><script>move()</script></defs>` + rect,
	} {
		_, err := draw(outline.Reader{}, body)
		if fs := paths(err); err == nil || !strings.HasPrefix(fs, "line 2, column ") {
			t.Errorf("%s: %v", body, err)
		}
	}
	for _, text := range []string{
		strings.Replace(head, "<svg", `<svg style="width:400px"`, 1) + rect + `</svg>`,
		`<?xml-stylesheet href="other.css"?>` + head + rect + `</svg>`,
		`<!DOCTYPE svg [<!ATTLIST rect transform CDATA "scale(2)">]>` + head + rect + `</svg>`,
	} {
		if got, err := (outline.Reader{}).SVG(strings.NewReader(text)); err == nil {
			t.Errorf("%s: %v", text, got)
		}
	}
}

// What programs write about colours, lines and letters is no hindrance.
func TestStyleKnown(t *testing.T) {
	for _, body := range []string{
		`<g style="display:inline"><rect width="1" height="1" style="fill:none;stroke:#000000;stroke-width:0.2;stroke-linecap:butt;-inkscape-stroke:none;opacity:1;vector-effect:non-scaling-stroke;"/></g>`,
		`<style type="text/css"><![CDATA[ .st0{fill:none; stroke:#000} .st1, rect > b { font-family:'ArialMT'; font-size:12px } ]]></style><rect class="st0" width="1" height="1"/>`,
		`<defs><style>.a{Fill:none}</style></defs><rect class="a" width="1" height="1"/>`,
		`<rect width="1" height="1" style=" ; " filter="none" fill="none"/>`,
		`<style/><rect width="1" height="1"/>`,
	} {
		if got, err := draw(outline.Reader{}, body); err != nil || len(got) != 1 {
			t.Errorf("%s: %v", body, err)
		}
	}
}

// An attribute that is given twice, anything after the drawing, and what stands in
// a title are refused, not read as one program has it and another has not.
func TestNoDrawing(t *testing.T) {
	const rect = `<rect width="1" height="1"/>`
	for _, test := range []struct{ text, want string }{
		{head + `<rect width="1" width="9" height="1"/></svg>`, "column 90: given twice"},
		{head + `<defs><a id="a" id="b"/></defs>` + rect + `</svg>`, "column 96: given twice"},
		{strings.Replace(head, "width=", `width="5in" width=`, 1) + rect + `</svg>`, "column 1: given twice"},
		{head + rect + `</svg>` + head + rect + `</svg>`, "column 124: cannot be read"},
		{head + rect + `</svg><rect width="9" height="9"/>`, "column 124: cannot be read"},
		{head + rect + `</svg> more`, "column 124: cannot be read"},
		{"more " + head + rect + `</svg>`, "column 1: cannot be read"},
		{head + `<rect width="1" height="1"><title>a<rect width="2" height="2"/></title></rect></svg>`, "column 125: not known"},
	} {
		got, err := (outline.Reader{}).SVG(strings.NewReader(test.text))
		if s := paths(err); err == nil || !strings.Contains(s, "line 1, "+test.want) {
			t.Errorf("%s: %v, %v", test.text, got, err)
		}
	}
	// Blank space and comments after it are none.
	if _, err := (outline.Reader{}).SVG(strings.NewReader(head + rect + "</svg>\n<!-- end -->\n")); err != nil {
		t.Error(err)
	}
}

// Points beyond the most there may be are never lost, though the last that would be
// read repeats the first, or many repeat the one before.
func TestPointsLost(t *testing.T) {
	var table strings.Builder
	table.WriteString("piece,x,y\n")
	for i := range layout.MaxPoints + 500 {
		x := i % layout.MaxPoints
		fmt.Fprintf(&table, "a,%d in,%d in\n", x, x*x)
	}
	if got, err := (outline.Reader{}).CSV(strings.NewReader(table.String())); !errors.Is(err, fault.Range) {
		t.Errorf("%d points, %v", len(got[0].Outline), err)
	}
	var polygon strings.Builder
	for i := range layout.MaxPoints + 500 {
		x := min(i, 40)
		fmt.Fprintf(&polygon, "%d %d ", x, x*x)
	}
	polygon.WriteString("0 900 ")
	got, err := draw(outline.Reader{}, `<polygon points="`+polygon.String()+`"/>`)
	if err != nil || len(got[0].Outline) != 42 {
		t.Errorf("%v, %v", got, err)
	}
}
