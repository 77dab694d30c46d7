package section_test

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/section"
)

// These tests hold the page to measure: numbers are thousandths of a millimetre, and
// the drawings are life size, so a millimetre of cloth is 1000.

func mm(s string) units.Length { return units.MustParse(s + " mm") }

// page is the picture of a drawing, life size.
func page(t *testing.T, d section.Drawing) []element {
	t.Helper()
	d.Scale = units.RatioOf(1, 1)
	svg, err := d.SVG()
	if err != nil {
		t.Fatal(err)
	}
	return picture(t, svg)
}

// number is an attribute that is a whole number.
func number(t *testing.T, e element, name string) int {
	t.Helper()
	n, err := strconv.Atoi(e.attr[name])
	if err != nil {
		t.Fatalf("%s of %+v: %v", name, e, err)
	}
	return n
}

// paths are those with the attribute of the value given, each as its numbers.
func paths(es []element, name, value string) (out [][]int) {
	for _, e := range es {
		if e.name != "path" || e.attr[name] != value {
			continue
		}
		var ns []int
		for _, s := range regexp.MustCompile(`-?\d+`).FindAllString(e.attr["d"], -1) {
			n, _ := strconv.Atoi(s)
			ns = append(ns, n)
		}
		out = append(out, ns)
	}
	return out
}

// words are the texts of a page, each with its place.
func words(t *testing.T, es []element) map[string][2]int {
	t.Helper()
	out := map[string][2]int{}
	for _, e := range es {
		if e.name == "text" {
			out[e.text] = [2]int{number(t, e, "x"), number(t, e, "y")}
		}
	}
	return out
}

// upright is a ply that stands, 6 mm thick and 10 mm high, from low to high.
func upright(start, finish section.End) section.Drawing {
	return section.Drawing{Title: "upright", Thickness: mm("6"), Plies: []section.Ply{strip("cloth", start, finish, at(zero, zero), at(zero, mm("10")))}}
}

// A raw edge is jagged along itself, its teeth pointing away from the cloth, in
// whatever way the cloth lies.
func TestTeeth(t *testing.T) {
	level := section.Drawing{Title: "level", Thickness: mm("6"), Plies: []section.Ply{strip("cloth", section.Raw, section.Raw, at(zero, zero), at(mm("10"), zero))}}
	for _, test := range []struct {
		why  string
		d    section.Drawing
		want []string // both ends, the last of the path first; each tooth from the corner where it begins
	}{
		{"level", level, []string{"1000 1000, 0 2000, 1000 3000, 0 4000, 1000 5000, 0 6000", "-1000 -1000, 0 -2000, -1000 -3000, 0 -4000, -1000 -5000, 0 -6000"}},
		{"upright", upright(section.Raw, section.Raw), []string{"1000 -1000, 2000 0, 3000 -1000, 4000 0, 5000 -1000, 6000 0", "-1000 1000, -2000 0, -3000 1000, -4000 0, -5000 1000, -6000 0"}},
	} {
		var got []string
		for _, p := range paths(page(t, test.d), "fill", "none") {
			if len(p) != 14 { // not an end
				continue
			}
			var teeth []string
			for k := 2; k < len(p); k += 2 {
				teeth = append(teeth, fmt.Sprint(p[k]-p[0], " ", p[k+1]-p[1]))
			}
			got = append(got, strings.Join(teeth, ", "))
		}
		if d := cmp.Diff(test.want, got[:2]); d != "" { // the third is the sign in the legend
			t.Errorf("%s:\n%s", test.why, d)
		}
	}
}

// Where the garment runs on, its faces go on in dashes by 6 mm, away from the cloth.
func TestDashes(t *testing.T) {
	var got [][]int
	for _, p := range paths(page(t, upright(section.RunsOn, section.RunsOn)), "stroke-dasharray", "1400 1000") {
		got = append(got, []int{p[2], p[3], p[4] - p[0], p[5] - p[1], p[6], p[7]})
	}
	if d := cmp.Diff([][]int{{0, -6000, 6000, 0, 0, -6000}, {0, 6000, -6000, 0, 0, 6000}}, got); d != "" {
		t.Error(d)
	}
}

// An edge finished by itself is drawn twice as heavy as the right side of the cloth,
// and so is its sign, which stands beside its words.
func TestNeatEdge(t *testing.T) {
	es := page(t, upright(section.RunsOn, section.Neat))
	heavy := paths(es, "stroke-width", "1800")
	if len(heavy) != 2 {
		t.Fatalf("%d heavy lines: %v", len(heavy), heavy)
	}
	if e := heavy[0]; e[2]-e[0] != 6000 || e[1] != e[3] {
		t.Errorf("the edge is drawn %v", e)
	}
	name := words(t, es)["edge finished by itself"]
	if d := cmp.Diff([]int{name[0] - 3500, name[1] - 3200, 4000}, heavy[1]); d != "" {
		t.Errorf("its sign:\n%s", d)
	}
}

// The numbers of rows that are too near each other to stand side by side stand one
// above the other; rows 6 mm apart stand side by side. None covers another.
func TestRowNumbers(t *testing.T) {
	for _, test := range []struct {
		why   string
		at    []string // places of the rows along the cloth, in mm
		tiers []int    // of each row, from the cloth upwards
	}{
		{"one", []string{"20"}, []int{0}},
		{"just far enough", []string{"20", "26", "32"}, []int{0, 0, 0}},
		{"a little too near", []string{"20", "25.9"}, []int{0, 1}},
		{"three together", []string{"20", "21", "22"}, []int{0, 1, 2}},
		{"from right to left", []string{"22", "21", "20"}, []int{2, 1, 0}},
		{"two and two", []string{"20", "24", "28", "32"}, []int{0, 1, 0, 1}},
		{"a third finds room at the cloth", []string{"20", "25", "26"}, []int{0, 1, 0}},
		{"a fourth finds room in the second tier", []string{"20", "25", "26", "31"}, []int{0, 1, 0, 1}},
	} {
		d := section.Drawing{Title: "rows", Thickness: mm("2"), Plies: []section.Ply{strip("cloth", section.RunsOn, section.RunsOn, at(zero, zero), at(mm("100"), zero))}}
		for _, x := range test.at {
			d.Stitches = append(d.Stitches, section.Stitch{Name: "row", From: at(mm(x), mm("2")), To: at(mm(x), mm("-2")), Pierce: []string{"cloth"}})
		}
		rings := map[string][2]int{} // by their numbers
		es := page(t, d)
		for i, e := range es {
			if e.name != "circle" || e.attr["r"] != "2300" {
				continue
			}
			if n := es[i+1].text; rings[n] == [2]int{} { // the second of a number is of the legend
				rings[n] = [2]int{number(t, e, "cx"), number(t, e, "cy")}
			}
		}
		high := 12_000 + 6_000*(slices.Max(test.tiers)+1) + 3_000 // where the cloth begins
		for i, s := range d.Stitches {
			x, _ := s.From.X.In(units.Millimetre).Mul(units.RatioOf(1000, 1)).Int(units.Up)
			r := rings[strconv.Itoa(i+1)]
			if want := [2]int{15_000 + int(x), high - 5_000 - 6_000*test.tiers[i]}; r != want {
				t.Errorf("%s: number %d at %v, want %v", test.why, i+1, r, want)
			}
			for k := range i {
				if q := rings[strconv.Itoa(k+1)]; r[1] == q[1] && r[0]-q[0] < 4_600 && q[0]-r[0] < 4_600 {
					t.Errorf("%s: %v covers %v", test.why, r, q)
				}
			}
		}
	}
}

// A measure of less than 5.7 mm on the page has its arrows outside, on lines of their
// own; one of 5.7 mm has room for them between.
func TestArrows(t *testing.T) {
	for _, test := range []struct {
		long  string
		lines int // beside that of the measure
		tip   int // which way the first arrow goes from its tip
	}{{"5.7", 0, 1900}, {"5.6", 1, -1900}, {"1", 1, -1900}, {"90", 0, 1900}} {
		d := section.Drawing{Title: "a measure", Thickness: mm("2"), Plies: []section.Ply{strip("cloth", section.Neat, section.Neat, at(zero, zero), at(mm(test.long), zero))}}
		d.Dimensions = []section.Dimension{dim("width", section.Below, zero, zero, mm(test.long), zero)}
		es := page(t, d)
		thin := paths(es, "stroke-width", "150")
		if len(thin) != 1+test.lines {
			t.Errorf("%s mm: lines %v", test.long, thin)
			continue
		}
		m := thin[0] // M x0 y V y M x1 y V y M x0 y H x1
		x0, x1, y := m[0], m[3], m[7]
		if test.lines == 1 {
			if d := cmp.Diff([]int{x0, y, x0 - 3800, x1, y, x1 + 3800}, thin[1]); d != "" {
				t.Errorf("%s mm: the line outside:\n%s", test.long, d)
			}
		}
		var arrows []int
		for _, p := range paths(es, "fill", "") {
			if len(p) == 10 {
				arrows = p
			}
		}
		if d := cmp.Diff([]int{x0, y, test.tip, 600, -1200, x1, y, -test.tip, 600, -1200}, arrows); d != "" {
			t.Errorf("%s mm: the arrows:\n%s", test.long, d)
		}
	}
}

// The words of a measure keep within the page, however near its side they belong.
func TestWordsWithinPage(t *testing.T) {
	d := section.Drawing{Title: "measures", Thickness: mm("2"), Plies: []section.Ply{strip("cloth", section.Neat, section.Neat, at(zero, zero), at(mm("100"), zero))}}
	d.Stitches = []section.Stitch{
		{Name: "left row", From: at(mm("2"), mm("2")), To: at(mm("2"), mm("-2")), Pierce: []string{"cloth"}},
		{Name: "right row", From: at(mm("98"), mm("2")), To: at(mm("98"), mm("-2")), Pierce: []string{"cloth"}},
	}
	d.Dimensions = []section.Dimension{
		dim("from the left selvedge to the row", section.Below, zero, zero, mm("2"), mm("-2")),
		dim("from the right selvedge to the row", section.Below, mm("98"), mm("-2"), mm("100"), zero),
	}
	es := page(t, d)
	var ends [][2]int
	for _, e := range es {
		if e.name == "rect" && e.attr["height"] == "4000" {
			x := number(t, e, "x")
			ends = append(ends, [2]int{x, x + number(t, e, "width")})
		}
	}
	wide := number(t, es[slices.IndexFunc(es, func(e element) bool { return e.name == "rect" && e.attr["x"] == "" && e.attr["fill"] == "#fff" })], "width")
	if len(ends) != 2 || ends[0][0] != 1000 || ends[1][1] != wide-1000 {
		t.Errorf("the words reach %v on a page of %d", ends, wide)
	}
}

// The legend goes on in a row as long as there is room, and begins a new one where
// there is not; its first sign stands in the first row, however long its words.
func TestLegendRows(t *testing.T) {
	for _, test := range []struct {
		why   string
		n     int // letters of each name
		wraps bool
	}{{"just room", 20, false}, {"a letter too many", 21, true}, {"no room for either", 120, true}} {
		one, two := strings.Repeat("a", test.n), strings.Repeat("b", test.n)
		d := section.Drawing{Title: "two plies", Thickness: mm("2"), Plies: []section.Ply{
			strip(one, section.RunsOn, section.RunsOn, at(zero, zero), at(mm("105"), zero)),
			strip(two, section.RunsOn, section.RunsOn, at(zero, mm("2")), at(mm("105"), mm("2"))),
		}}
		at := words(t, page(t, d))
		a, b := at[one], at[two]
		// The cloth is 4 mm thick and ends at 19; the legend stands 8 mm under it.
		if a != [2]int{26_000, 28_200} {
			t.Errorf("%s: the first at %v", test.why, a)
		}
		if want := [2]int{26_000, 35_200}; test.wraps && b != want {
			t.Errorf("%s: the second at %v, want %v", test.why, b, want)
		}
		if want := [2]int{26_000 + 17_000 + 1_950*test.n, 28_200}; !test.wraps && b != want {
			t.Errorf("%s: the second at %v, want %v", test.why, b, want)
		}
	}
}
