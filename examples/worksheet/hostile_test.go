package main

import (
	"bytes"
	"errors"
	"regexp"
	"strings"
	"testing"
)

// named is a garment in which every text that is printed begins with X.
const named = `{"title": "X", "scene": "X scene", "cloth": {"name": "X cloth", "width": "45 in", "have": "3 yd", "work": 1},
 "seams": [{"name": "X seam", "times": 2, "where": "X where", "press": "X press", "spec": {"kind": "french", "drafted": "5/8 in", "first": "1/4 in", "second": "1/4 in"}}],
 "edges": [{"name": "X neck", "note": "X note", "net": "16 in", "crossings": [{"seam": "X seam", "times": 2}]}, {"name": "X collar", "net": "16 in"},
  {"name": "X sleeve", "net": "16 in", "slit": "X slit"}],
 "pairs": [{"long": "X neck", "short": "X collar"}],
 "hems": [{"name": "X hem", "where": "X where", "spec": {"kind": "double", "drafted": "1 in", "first": "1/4 in", "depth": "1/2 in"}},
  {"name": "X slit", "where": "X where", "spec": {"kind": "slit", "first": "1/8 in", "depth": "1/8 in", "opening": "tucked"}}],
 "drops": [{"name": "X drop", "drafted": "20 in", "hem": "X hem"}],
 "frills": [{"name": "X frill", "edge": "X collar", "spec": {"strip": {"strip": {"pieces": 3, "each": "12 in", "allowance": "1/2 in"}}, "depth": "1 in", "allowance": "5/8 in", "turn": "1/2 rad"}}],
 "cuffs": [{"name": "X cuff", "edge": "X sleeve", "spec": {"wrist": "7 in", "ease": "1 in", "lap": "1 in", "depth": "2 in", "allowance": "5/8 in", "setting": "flush"}}],
 "rows": [{"name": "X row", "drop": "X drop", "setting": "vertical", "row": {"first": "1 in", "last": "15 in", "count": 4, "from": "X from"}, "lap": "3/4 in"}],
 "tin": {"have": 4, "diameter": "1/2 in", "thickness": "1/8 in"},
 "pieces": [{"name": "X piece", "wide": "10 in", "long": "20 in", "count": 2, "sides": ["X seam", "X seam"], "hem": "X hem"}],
 "lay": [{"piece": "X piece", "copy": 1, "x": "0 in", "y": "0 in"}, {"piece": "X piece", "copy": 2, "x": "12 in", "y": "0 in"}],
 "kit": [{"head": "X head", "text": "X text"}],
 "work": [{"title": "X task", "before": [{"do": "X do", "from": "X from", "at": "1 in", "press": "X press", "note": "X note"}], "seams": ["X seam"], "frill": "X frill", "cuff": "X cuff", "hem": "X hem", "row": "X row",
  "check": [{"edge": "X neck"}, {"drop": "X drop", "mend": "X mend"}, {"what": "X what", "want": "1 in"}]}],
 "care": [{"text": "X care", "refer": "X refer"}]}`

// frame is what begins each line of Markdown: the mark of a heading, a list, a
// table, a quotation or code, or nothing.
func frame(s string) []string {
	var marks []string
	for line := range strings.Lines(s) {
		marks = append(marks, regexp.MustCompile("^(#+ |\\||> ?|~~~|```|=+$|    |( *([-+*]|[0-9]+[.)]) )+| {0,3}$)?").FindString(strings.TrimRight(line, "\n")))
	}
	return marks
}

// No name makes a heading, a list, a quotation or a block of code of what comes
// after it.
func TestNamesInMarkdown(t *testing.T) {
	want := frame(sheetOf(t, named, "-form", "markdown"))
	for _, x := range []string{"~~~", "> ", ">", "- ", "+ ", "1. ", "12) ", "# ", "===", "    ", "***", "* ", "--- "} {
		got := sheetOf(t, strings.ReplaceAll(named, `"X`, `"`+x), "-form", "markdown")
		for i, mark := range frame(got) {
			if i >= len(want) || mark != want[i] {
				t.Errorf("names that begin with %q make %q of line %d: %s", x, mark, i+1, strings.Split(got, "\n")[i])
				break
			}
		}
	}
	s := sheetOf(t, strings.ReplaceAll(named, `"X`, `"~~~ <b> [a](b) &amp; ![`), "-form", "markdown")
	if bad := regexp.MustCompile(`(^|[^\\])[~<\[&]`).FindString(strings.ReplaceAll(s, "&lt;", "")); bad != "" {
		t.Errorf("%q is not escaped", bad)
	}
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, errors.New("no space left") }

// A failed write is a fault with a message, whatever the form.
func TestFailedWrite(t *testing.T) {
	for _, form := range []string{"text", "markdown", "json"} {
		var errs bytes.Buffer
		if code := run([]string{"-form", form, "testdata/good/plain-edge.json"}, nil, broken{}, &errs); code != 1 || !strings.Contains(errs.String(), "worksheet: no space left") {
			t.Errorf("%s: code %d, %q", form, code, errs.String())
		}
	}
}

// A hostile text is refused within bounds, by a bounded number of lines.
func TestHostile(t *testing.T) {
	corner := `{"left":"q","right":"q","above":"q","below":"q"}`
	piece := `{"name":"p","wide":"1 in","long":"1 in","count":1,"outline":[` + strings.Repeat(corner+",", 99) + corner + `]}`
	for what, c := range map[string]struct{ text, want string }{
		"a key given twice":         {`{"title":"a","title":"b"}`, `title "b": given twice`},
		"in other letters":          {`{"Title":"a"}`, `Title "a": not known`},
		"text after the end":        {`{"edges":[]} {}`, "nothing after the end"},
		"null":                      {`null`, "null: cannot be read"},
		"null for a list":           {`{"edges":null}`, "edges null: cannot be read"},
		"a list":                    {`[1]`, "an object"},
		"16 MB of empty pieces":     {`{"pieces":[` + strings.Repeat("{},", 16<<20/3) + `{}]}`, "at most 1048576 bytes"},
		"300,000 empty pieces":      {`{"pieces":[` + strings.Repeat("{},", 300_000) + `{}]}`, "at most 100000 values"},
		"90,000 empty pieces":       {`{"pieces":[` + strings.Repeat("{},", 90_000) + `{}]}`, "pieces 90001: out of range"},
		"100 empty pieces":          {`{"edges":[{"name":"e","net":"1 in"}],"pieces":[` + strings.Repeat("{},", 99) + `{}]}`, "faults more"},
		"40,000 names of no seam":   {`{"edges":[{"name":"e","net":"1 in"}],"pieces":[` + strings.Repeat(piece+",", 99) + piece + `]}`, "faults more"},
		"nested without end":        {strings.Repeat(`{"edges":[`, 50_000), "nesting of at most"},
		"a number without end":      {`{"edges":[{"name":"e","net":` + strings.Repeat("9", 500_000) + `}]}`, "at most 100 bytes"},
		"90,000 keys of no meaning": {`{"x":0` + strings.Repeat(`,"x":0`, 90_000) + `}`, "faults more"},
	} {
		var out, errs bytes.Buffer
		code := run([]string{"-"}, strings.NewReader(c.text), &out, &errs)
		if lines := strings.Count(errs.String(), "\n"); code != 1 || out.Len() > 0 || lines > 101 || errs.Len() > 1<<20 || !strings.Contains(errs.String(), c.want) {
			t.Errorf("%s: code %d, %d lines, %d bytes, no %q in %.300s", what, code, lines, errs.Len(), c.want, errs.String())
		}
	}
}

// A message repeats names of files and flags with nothing but what can be seen.
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
