package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"flag"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/iotest"

	"example.com/clothyard/seam/edge"
	"example.com/clothyard/seam/garment"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/ticket"
)

var update = flag.Bool("update", false, "write testdata/shirt.txt anew")

// sheetOf is what the program writes, from standard input where a text is given.
func sheetOf(t *testing.T, text string, args ...string) string {
	t.Helper()
	var out, errs bytes.Buffer
	if code := run(args, strings.NewReader(text), &out, &errs); code != 0 || errs.Len() > 0 {
		t.Fatalf("%v: code %d, %s", args, code, errs.String())
	}
	return out.String()
}

// example is what is written of the garment of the example.
var example = sync.OnceValue(func() string {
	var out bytes.Buffer
	run(nil, nil, &out, io.Discard)
	return out.String()
})

// theatre is the garment of the example, with some of its text replaced; laid or not.
func theatre(t *testing.T, laid bool, pairs ...string) garment.Plan {
	t.Helper()
	g, _, err := garment.Read(strings.NewReader(strings.NewReplacer(pairs...).Replace(string(shirt))))
	if err != nil {
		t.Fatal(err)
	}
	if !laid {
		g.Cloths = nil
		g.Parts = slices.DeleteFunc(g.Parts, func(p noun.Item[garment.Part]) bool { return p.Name == "cloth to buy" })
		g.Order[0].Sews = nil
	}
	p, err := g.Plan()
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// TestShirt: the shirt of the village theatre, found by hand. A French seam of 3/16 and
// 1/4 in keeps d = 5/8 - 7/16 of each ply's allowance; the measures are invented.
func TestShirt(t *testing.T) {
	const asSewn = `"remedies": ["cut-drift shoulder"]`
	quarters := []string{`"first": "3/16 in"`, `"first": "1/4 in"`}
	for _, test := range []struct {
		why   string
		pairs []string
		edges map[string]string
	}{
		{"shoulders cut to 7/16", nil, map[string]string{
			"neck": "16 1/2", "facing neck": "16 1/2", "neck, centre to centre": "15", "collar neck edge": "15", "collar outer edge": "15 3/4",
			"armhole":       "19 1/8", // 18 3/4 + 2d
			"sleeve head":   "19 3/8", // 19 + 2d
			"body at bust":  "43 1/4", // 42 1/2 + 4d
			"hem sweep":     "49 3/4", // 49 + 4d
			"sleeve bottom": "17 1/8", // 16 3/4 + 2d
			"cuff top":      "9", "front edge, neck to hem": "26 1/2", "shoulder at the neck to hem": "30",
		}},
		{"as it is sewn", []string{asSewn, `"remedies": []`, `"cut": "3/4 in"`, `"cut": "1 1/4 in"`}, map[string]string{
			"neck": "17 1/4", "facing neck": "16 1/2", "neck, centre to centre": "15 3/4", "collar neck edge": "15",
			"armhole": "19 1/2", "sleeve head": "19 3/8", "body at bust": "43 1/4", "sleeve bottom": "17 1/8",
			"front edge, neck to hem":     "27",       // 26 1/2 + 1 1/4 - 3/4
			"shoulder at the neck to hem": "30 11/16", // 30 + d + 1/2
		}},
		{"quarters, as sewn", append([]string{asSewn, `"remedies": []`}, quarters...), map[string]string{
			"neck": "17", "armhole": "19 1/4", "sleeve head": "19 1/4", "body at bust": "43", "sleeve bottom": "17",
		}},
		{"quarters, shoulders cut", quarters, map[string]string{"neck": "16 1/2", "armhole": "19"}},
	} {
		p := theatre(t, false, test.pairs...)
		for name, want := range test.edges {
			i := slices.IndexFunc(p.Edges, func(e garment.EdgePlan) bool { return e.Name == name })
			if got, ok := p.Edges[i].Sewn.Exact(); !ok || got != units.MustParse(want+" in") {
				t.Errorf("%s: %s is %v, want %s in", test.why, name, p.Edges[i].Sewn, want)
			}
		}
	}
	p := theatre(t, true)
	for _, q := range p.Pairs {
		if want := map[string]edge.Fit{"sleeve head": edge.Eases, "sleeve bottom": edge.Gathers}[q.Long]; want != 0 && q.Fit != want {
			t.Errorf("%s: %v", q.Long, q.Fit)
		}
	}
	text := example()
	for _, want := range []string{
		"fullness of sleeve bottom on cuff top: 1 65/72", // 137/8 / 9
		"end to end = 33 3/4 in",                         // 3 x 12 1/4 - 2 x 1 - 2 x 1/2
		"8 7/16 in from the end, for the first mark",     // 33 3/4 / 4
		"3 15/16 in from its start",                      // 15 3/4 / 4
		"10 1/4 in from one end to the other",            // 9 + 2 x 5/8
		"across the seamed swatch, square to the seam = 11 1/8 in",
		"16 11/16 in from the finished neck seam", // 5/8 + 6 x 171/64, on the mark
		"the hole, cut open = 9/16 in",            // 9/20 + 3/32, on the mark
	} {
		if !strings.Contains(text, want) {
			t.Errorf("the sheet does not say %q", want)
		}
	}
	if lay := p.Lays[0].Lay; !lay.Fits || units.MustParse("76 3/16 in").Less(lay.Used) {
		t.Errorf("a lay of %v, longer than that of rectangles", lay.Used)
	}
	if long := theatre(t, true, `"long": "82 187/200 in"`, `"long": "60 in"`); long.Lays[0].Lay.Fits || !strings.Contains(long.Sheet().Title, "cloth is too short") {
		t.Error("60 in are not too short")
	}
	if err := p.Sheet().Check(); err != nil {
		t.Error(err)
	}
}

// TestGolden: the sheet of the example as a sewer reads it.
func TestGolden(t *testing.T) {
	const name = "testdata/shirt.txt"
	got := example()
	if *update {
		if err := os.WriteFile(name, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(name)
	if err != nil || got != string(want) {
		t.Errorf("the sheet is not that of %s: %v", name, err)
	}
	for line := range strings.Lines(got) {
		if len(line) > ticket.Columns+1 {
			t.Errorf("wider than a printer: %s", line)
		}
	}
	if regexp.MustCompile(`https?:|www\.|\.com`).MatchString(got) {
		t.Error("a web address at the bench")
	}
	if sources := sheetOf(t, "", "-form", "sources"); !strings.Contains(sources, " - trim before the second pass: ") || strings.Contains(sources, "Work\n") {
		t.Error(sources)
	}
}

// TestUnits: a metric garment is written in metric, and any in both.
func TestUnits(t *testing.T) {
	const metric = `{"like": "apron", "tape": "metric"}`
	if got := sheetOf(t, metric, "-"); strings.Contains(got, " in ") && regexp.MustCompile(`[0-9] in\b`).MatchString(got) {
		t.Errorf("inches in\n%s", got)
	}
	got := sheetOf(t, "", "-units", "both")
	if !regexp.MustCompile(`neck, centre to centre = 15 in \(381 mm\)`).MatchString(got) {
		t.Errorf("not both in\n%.2000s", got)
	}
}

func TestUsage(t *testing.T) {
	for _, args := range [][]string{{"-units", "cubits"}, {"-form", "stone"}, {"a", "b"}, {"-nonsense"}} {
		var out, errs bytes.Buffer
		if code := run(args, nil, &out, &errs); code != 2 || out.Len() > 0 || errs.Len() == 0 {
			t.Errorf("%v: code %d, out %q, errors %q", args, code, out.String(), errs.String())
		}
	}
	var out, errs bytes.Buffer
	if code := run([]string{"-help"}, nil, &out, &errs); code != 0 || !strings.Contains(errs.String(), "-units") {
		t.Errorf("-help: code %d, %s", code, errs.String())
	}
	if code := run([]string{"testdata/no-such-file.json"}, nil, &out, &errs); code != 1 || out.Len() > 0 {
		t.Errorf("a missing file: code %d", code)
	}
	if code := run([]string{"-"}, iotest.ErrReader(os.ErrPermission), &out, &errs); code != 1 || out.Len() > 0 {
		t.Errorf("a reader that fails: code %d", code)
	}
}

// TestJSON: the JSON form holds the same figures, lengths in exact text.
func TestJSON(t *testing.T) {
	var p garment.Plan
	if err := json.Unmarshal([]byte(sheetOf(t, "", "-form", "json")), &p); err != nil {
		t.Fatal(err)
	}
	again, err := json.Marshal(p)
	if want, err2 := json.Marshal(theatre(t, true)); err != nil || err2 != nil || !bytes.Equal(again, want) {
		t.Error("the plan is another", err, err2)
	}
}

// TestDrawing: the lay is drawn into a file besides; one that cannot be is a fault.
func TestDrawing(t *testing.T) {
	path := filepath.Join(t.TempDir(), "shirt.svg")
	sheetOf(t, "", "-lay", path)
	svg, err := os.ReadFile(path)
	if err != nil || !bytes.Contains(svg, []byte(">sleeve, copy 2<")) {
		t.Error(err, string(svg))
	}
	for _, test := range [][2]string{{path, `{"like": "blouse"}`}, {t.TempDir(), string(shirt)}} {
		var out, errs bytes.Buffer
		if code := run([]string{"-lay", test[0], "-"}, strings.NewReader(test[1]), &out, &errs); code != 1 || out.Len() > 0 {
			t.Errorf("%.40s: %d %s", test[1], code, out.String())
		}
	}
}

// frame is what begins each line of Markdown: the mark of a heading, a list, a
// table, a quotation or code, or nothing.
func frame(s string) []string {
	var marks []string
	for line := range strings.Lines(s) {
		marks = append(marks, regexp.MustCompile("^(#+ |\\||> ?|~~~|```|=+$|    |( *([-+*]|[0-9]+[.)]) )+| {0,3}$)?").FindString(strings.TrimRight(line, "\n")))
	}
	return marks
}

// named is a garment in which every text that is printed begins with X.
const named = `{"version": 1, "title": "X", "scene": "X scene", "seams": {"X seam": {}}, "edges": {"X neck": {"net": "16 in", "crossed": {"X seam": {"times": 2}}}, "X collar": {"net": "16 in"}},
 "pairs": [{"long": "X neck", "short": "X collar"}], "order": [{"do": "X do", "sews": ["X seam"], "check": ["X neck"]}],
 "changes": {"X seam": {"sewn": {"first": "1/2 in"}}}, "care": [{"text": "X care", "refer": "X refer"}]}`

// TestNamesInMarkdown: no name makes a heading, a list, a quotation or a block of code of
// what comes after it.
func TestNamesInMarkdown(t *testing.T) {
	want := frame(sheetOf(t, named, "-form", "markdown", "-"))
	for _, x := range []string{"~~~", "> ", ">", "- ", "+ ", "1) ", "12) ", "# ", "===", "    ", "***", "* ", "--- "} {
		got := sheetOf(t, strings.ReplaceAll(named, `"X`, `"`+x), "-form", "markdown", "-")
		for i, mark := range frame(got) {
			if i >= len(want) || mark != want[i] {
				t.Errorf("names that begin with %q make %q of line %d: %s", x, mark, i+1, strings.Split(got, "\n")[i])
				break
			}
		}
	}
	s := sheetOf(t, strings.ReplaceAll(named, `"X`, `"~~~ <b> (b) &amp; !`), "-form", "markdown", "-")
	if bad := regexp.MustCompile(`(^|[^\\])[~<\[&]`).FindString(strings.ReplaceAll(s, "&lt;", "")); bad != "" {
		t.Errorf("%q is not escaped", bad)
	}
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, errors.New("no space left") }

// TestFailedWrite: it is a fault with a message, whatever the form.
func TestFailedWrite(t *testing.T) {
	for _, form := range []string{"text", "markdown", "json", "sources"} {
		var errs bytes.Buffer
		if code := run([]string{"-form", form, "-"}, strings.NewReader(named), broken{}, &errs); code != 1 || !strings.Contains(errs.String(), "worksheet: no space left") {
			t.Errorf("%s: code %d, %q", form, code, errs.String())
		}
	}
}

// TestHostile: a hostile text is refused within bounds, by a bounded number of lines.
func TestHostile(t *testing.T) {
	for what, c := range map[string]struct{ text, want string }{
		"nothing":                   {"", "the text ends too early"},
		"a key given twice":         {`{"title":"a","title":"b"}`, `title "b": given twice`},
		"in other letters":          {`{"Title":"a"}`, `Title "a": not known`},
		"text after the end":        {`{"edges":{}} {}`, "nothing after the end"},
		"null":                      {`null`, "null: cannot be read"},
		"a list":                    {`[1]`, "an object"},
		"no unit":                   {`{"like": "blouse", "edges": {"neck": {"net": "16 1/2"}}}`, `edges.neck.net "16 1/2": cannot be read`},
		"a raw edge that shows":     {`{"like": "blouse", "changes": {"side": {"sewn": {"kind": "french", "first": "3/8 in", "second": "1/4 in", "trim": "1/4 in"}}}}`, "raw edge would show"},
		"wider than the cloth":      {`{"version": 1, "cloths": {"outer": {"wide": "10 in"}}, "pieces": {"sash": {"wide": "30 in", "long": "20 in"}}}`, `pieces.sash`},
		"no such cloth":             {`{"like": "apron", "cloths": {"cotton": {"wide": "45 in"}}}`, `cloths "cotton": not known, want one of outer`},
		"16 MB of empty pairs":      {`{"pairs":[` + strings.Repeat("{},", 16<<20/3) + `{}]}`, "at most 1048576 bytes"},
		"300,000 empty pairs":       {`{"pairs":[` + strings.Repeat("{},", 300_000) + `{}]}`, "at most 100000 values"},
		"90,000 empty pairs":        {`{"version":1,"pairs":[` + strings.Repeat("{},", 90_000) + `{}]}`, "pairs 90001: out of range"},
		"nested without end":        {strings.Repeat(`{"pairs":[`, 50_000), "nesting of at most"},
		"a number without end":      {`{"edges":{"e":{"net":` + strings.Repeat("9", 500_000) + `}}}`, "at most 100 bytes"},
		"90,000 keys of no meaning": {`{"x":0` + strings.Repeat(`,"x":0`, 90_000) + `}`, "faults more"},
	} {
		var out, errs bytes.Buffer
		code := run([]string{"-"}, strings.NewReader(c.text), &out, &errs)
		if lines := strings.Count(errs.String(), "\n"); code != 1 || out.Len() > 0 || lines > 101 || errs.Len() > 1<<20 || !strings.Contains(errs.String(), c.want) {
			t.Errorf("%s: code %d, %d lines, %d bytes, no %q in %.300s", what, code, lines, errs.Len(), c.want, errs.String())
		}
	}
}

// TestHostileArguments: a message repeats names of files and flags with nothing but what
// can be seen.
func TestHostileArguments(t *testing.T) {
	for _, bad := range []string{"\x1b[31m", "\u009b31m", "\u202e", "\x7f"} {
		for _, args := range [][]string{{"-" + bad}, {bad}, {"-units", bad}, {"-form", bad}} {
			var out, errs bytes.Buffer
			if code := run(args, strings.NewReader(""), &out, &errs); code == 0 || errs.Len() == 0 || strings.Contains(out.String()+errs.String(), bad) {
				t.Errorf("%q: code %d, %q", args, code, out.String()+errs.String())
			}
		}
	}
}
