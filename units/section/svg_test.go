package section_test

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
	"example.com/clothyard/units/ticket"
)

// element is what a picture has of one element.
type element struct {
	name string
	attr map[string]string
	text string
}

// parse reads a picture as XML, which fails where it is not well formed.
func parse(t *testing.T, svg []byte) []element {
	t.Helper()
	var out []element
	var open []int
	for dec := xml.NewDecoder(bytes.NewReader(svg)); ; {
		tok, err := dec.Token()
		if errors.Is(err, io.EOF) {
			return out
		}
		if err != nil {
			t.Fatalf("%v in %s", err, svg)
		}
		switch tok := tok.(type) {
		case xml.StartElement:
			e := element{name: tok.Name.Local, attr: map[string]string{}}
			for _, a := range tok.Attr {
				e.attr[a.Name.Local] = a.Value
			}
			open = append(open, len(out))
			out = append(out, e)
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			if len(open) > 0 {
				out[open[len(open)-1]].text += string(tok)
			}
		}
	}
}

var pair = regexp.MustCompile(`[ML](-?\d+) (-?\d+)`)

// picture asks of a picture what all must have: a role, a title and a description
// that are referred to, ids of its own, black and white only, and all of it within
// the view box.
func picture(t *testing.T, svg []byte) []element {
	t.Helper()
	es := parse(t, svg)
	root := es[0]
	var box [4]int
	for i, s := range strings.Fields(root.attr["viewBox"]) {
		n, err := strconv.Atoi(s)
		if err != nil {
			t.Fatal(err)
		}
		box[i] = n
	}
	if root.name != "svg" || root.attr["role"] != "img" || box[2] <= 0 || box[3] <= 0 ||
		!strings.HasSuffix(root.attr["width"], "mm") || !strings.HasSuffix(root.attr["height"], "mm") {
		t.Fatalf("%+v", root)
	}
	ids := map[string]element{}
	for _, e := range es {
		if id, ok := e.attr["id"]; ok {
			if _, twice := ids[id]; twice || !strings.HasPrefix(id, "section") {
				t.Errorf("id %q", id)
			}
			ids[id] = e
		}
		for _, name := range []string{"fill", "stroke"} {
			v := e.attr[name]
			if ref, ok := strings.CutPrefix(v, "url(#"); ok {
				if p := ids[strings.TrimSuffix(ref, ")")]; p.name != "pattern" {
					t.Errorf("%s refers to nothing", v)
				}
			} else if v != "" && v != "none" && v != "#000" && v != "#fff" {
				t.Errorf("%s is a colour", v)
			}
		}
		for _, m := range pair.FindAllStringSubmatch(e.attr["d"], -1) {
			x, _ := strconv.Atoi(m[1])
			y, _ := strconv.Atoi(m[2])
			if x < 0 || y < 0 || x > box[2] || y > box[3] {
				t.Errorf("%s lies outside %v", m[0], box)
			}
		}
	}
	for i, id := range strings.Fields(root.attr["aria-labelledby"]) {
		if e := ids[id]; e.name != [...]string{"title", "desc"}[i] || e.text == "" {
			t.Errorf("%q is %+v", id, e)
		}
	}
	return es
}

// has reports whether an element of the name has text in it.
func has(es []element, name, text string) bool {
	for _, e := range es {
		if e.name == name && strings.Contains(e.text, text) {
			return true
		}
	}
	return false
}

func TestPictures(t *testing.T) {
	for name, d := range golden() {
		svg, err := d.SVG()
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		es := picture(t, svg)
		for _, p := range d.Plies {
			if !has(es, "text", p.Name) || !has(es, "desc", "Ply "+p.Name) {
				t.Errorf("%s does not tell %s", name, p.Name)
			}
		}
		for _, s := range d.Stitches {
			if !has(es, "text", s.Name) || !has(es, "desc", s.Name+": through "+strings.Join(s.Pierce, ", ")) {
				t.Errorf("%s does not tell %s", name, s.Name)
			}
		}
		for _, m := range d.Dimensions {
			if want := m.Name + " " + m.Amount.Text(); !has(es, "text", want) || !has(es, "desc", want) {
				t.Errorf("%s does not tell %s", name, want)
			}
		}
		if again, err := d.SVG(); err != nil || !bytes.Equal(again, svg) {
			t.Errorf("%s: not the same twice, %v", name, err)
		}
	}
}

// Two notations, and a length that is known within a bound only.
func TestNotations(t *testing.T) {
	d := good()
	about, err := units.ParseNear("6.35 mm +- 0.01 mm")
	if err != nil {
		t.Fatal(err)
	}
	m := &d.Dimensions[1]
	m.Amount, m.From, m.To = ticket.About(about), m.To, m.From
	svg, err := d.SVG(units.Notation{Unit: units.Millimetre, Step: units.Millimetre.Frac(1, 100)}, units.Notation{})
	if err != nil {
		t.Fatal(err)
	}
	if es := picture(t, svg); !has(es, "text", "second pass about 6.35 mm (about 1/4 in)") || !has(es, "text", "trimmed to scant 3.18 mm (3.175 mm, 1/8 in)") {
		t.Error("not in both notations")
	}
}

// The page says how the picture is to scale, and shows what the plies have.
func TestNotes(t *testing.T) {
	for _, test := range []struct {
		why   string
		spoil func(d *section.Drawing)
		want  []string
	}{
		{"life size", func(d *section.Drawing) { d.Scale = units.RatioOf(1, 1) }, []string{"Along the cloth: life size.", "exaggerated 3 times"}},
		{"half size", func(d *section.Drawing) { d.Scale = units.RatioOf(1, 2) }, []string{"Along the cloth: 1/2 of life size."}},
		{"no true thickness", func(d *section.Drawing) { d.True = zero }, []string{"the thickness is exaggerated."}},
		{"the true thickness", func(d *section.Drawing) { d.True = d.Thickness }, []string{"the thickness is not exaggerated."}},
		{"no whole number of times", func(d *section.Drawing) { d.True = in("1/99") }, []string{"exaggerated about 3 1/10 times."}},
		{"a neat edge and no right side", func(d *section.Drawing) {
			for i := range d.Plies {
				d.Plies[i].Finish, d.Plies[i].Face, d.Plies[i].Fill = section.Neat, section.NoFace, section.Blank
			}
		}, []string{"edge finished by itself"}},
		{"rows too near for their numbers", func(d *section.Drawing) {
			d.Scale = units.RatioOf(2, 1)
			for _, x := range []string{"-17/64", "-15/64"} {
				s := d.Stitches[1]
				s.Name = "row at " + x
				s.From.X, s.To.X = in(x), in(x)
				d.Stitches = append(d.Stitches, s)
			}
			d.Stitches = append(d.Stitches[:2], d.Stitches[3])
			d.Stitches[1].From, d.Stitches[1].To = d.Stitches[1].To, d.Stitches[1].From
			d.Stitches[1].Pierce = []string{"under", "upper"}
		}, []string{"second pass", "row at -15/64"}},
	} {
		d := good()
		test.spoil(&d)
		svg, err := d.SVG()
		if err != nil {
			t.Errorf("%s: %v", test.why, err)
			continue
		}
		es := picture(t, svg)
		for _, want := range test.want {
			if !has(es, "text", want) || want[0] == 'A' && !has(es, "desc", want) {
				t.Errorf("%s: %q is not there", test.why, want)
			}
		}
		if test.why == "a neat edge and no right side" && (has(es, "text", "right side") || has(es, "text", "raw edge")) {
			t.Errorf("%s: tells what is not there", test.why)
		}
	}
}

// Very small and very large cloth still makes a page.
func TestScales(t *testing.T) {
	for _, test := range []struct{ factor, want string }{
		{"1/100000", "1000 times life size"}, {"100", "1/16 of life size"}, {"4", "1 1/2 times life size"}, {"6", "life size"}, {"7", "1/2 of life size"},
	} {
		f, err := units.ParseRatio(test.factor)
		if err != nil {
			t.Fatal(err)
		}
		l := func(s string) units.Length { return in(s).Scale(f) }
		svg, err := frenchSecond(l("1/4"), l("1/8"), l("1/32"), l("3/4")).SVG()
		if err != nil {
			t.Fatal(err)
		}
		es := picture(t, svg)
		if !has(es, "text", "Along the cloth: "+test.want+".") {
			t.Errorf("%s: not %s", test.factor, test.want)
		}
	}
}

// What a title or a sentence may hold does not break the picture.
func TestEscapes(t *testing.T) {
	d := good()
	d.Title, d.Desc = `"<&>" é`, "one\ntwo\x01\xff\ufffe & <three>"
	d.Plies[0].Name = `<b>&"`
	d.Stitches[0].Pierce[0], d.Stitches[1].Pierce[0] = d.Plies[0].Name, d.Plies[0].Name
	svg, err := d.SVG()
	if err != nil {
		t.Fatal(err)
	}
	es := picture(t, svg)
	if !has(es, "title", d.Title) || !has(es, "text", d.Plies[0].Name) || !has(es, "desc", "& <three>") {
		t.Error("the words have changed")
	}
}
