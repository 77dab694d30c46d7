package main

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.com/clothyard/units/fault"
)

const two = `{"name":"two","width":2,"allowed_rotations":[0],"pieces":[{"id":"square","qty":2,"points":[[0,0],[1,0],[1,1],[0,1]]}]}`

const laidTwo = `{"instance":"two","width":2,"length":1,"density":100,"seed":0,"work":0,"placements":[` +
	`{"piece":"square","copy":1,"rotation":0,"flip":false,"x":0,"y":0},{"piece":"square","copy":2,"rotation":0,"flip":false,"x":0,"y":1}]}`

// put writes a file for the program to read.
func put(t *testing.T, name, text string) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), name)
	if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

// A lay that says too little, too much or another thing than its places is
// refused, with the path of what is wrong.
func TestCheckIsStrict(t *testing.T) {
	path := put(t, "two.json", two)
	for _, test := range []struct{ why, old, new, want string }{
		{"as it is", "", "", ""},
		{"over many lines", ",", ",\n", ""},
		{"after another's", `{"instance":"two"`, `{"instance":"three","length":7} {"instance":"two"`, ""},
		{"without what is not read", `"density":100,"seed":0,"work":0,`, "", ""},
		{"a key twice", `"length":1`, `"length":2,"length":1`, "lays[0].length 1: given twice"},
		{"another case", `"length"`, `"Length"`, "lays[0].Length"},
		{"no such key", `"length"`, `"cost":1,"length"`, "lays[0].cost 1: not known"},
		{"text after the end", `"y":1}]}`, `"y":1}]} and so on`, "lays JSON: cannot be read"},
		{"a bracket after the end", `"y":1}]}`, `"y":1}]}]`, "JSON: cannot be read, want nothing after the end"},
		{"null", `{"instance":"two"`, `null {"instance":"two"`, "lays[0] null"},
		{"a list", `{"instance":"two"`, `[1] {"instance":"two"`, "lays[0] a list"},
		{"no length", `"length":1,`, ``, "lays[0].length: not given"},
		{"a length of zero", `"length":1`, `"length":0`, "lays[0].length 0: wrong sign"},
		{"a length below zero", `"length":1`, `"length":-1`, "lays[0].length -1: wrong sign"},
		{"no width", `"width":2,`, ``, "lays[0].width: not given"},
		{"another width", `"width":2`, `"width":3`, "lays[0].width 3: disagrees with what else is given, want 2"},
		{"a place without x", `"x":0,"y":1`, `"y":1`, "lays[0].placements[1].x: not given"},
		{"a place without y", `,"y":1`, ``, "lays[0].placements[1].y: not given"},
		{"a place at null", `"y":1`, `"y":null`, "lays[0].placements[1].y null"},
		{"a place without rotation", `"copy":2,"rotation":0,`, `"copy":2,`, "lays[0].placements[1].rotation: not given"},
		{"a place without piece", `{"piece":"square","copy":2`, `{"copy":2`, "lays[0].placements[1].piece"},
		{"a place without copy", `"copy":2,`, ``, "lays[0].placements[1].copy: not given"},
		{"a copy twice", `"copy":2`, `"copy":1`, "placements[1].copy 1: given twice"},
		{"a copy too many", `"copy":2`, `"copy":3`, "lays[0].placements[1].copy 3: out of range, want 1 to 2"},
		{"turned a little", `"copy":2,"rotation":0`, `"copy":2,"rotation":0.5`, "lays[0].placements[1].rotation 1/2"},
	} {
		lay := put(t, "lay", strings.ReplaceAll(laidTwo, test.old, test.new))
		if test.old == "" {
			lay = put(t, "lay", laidTwo)
		}
		code, out, errs := lays(t, "-check", lay, path)
		if test.want == "" && (code != 0 || !strings.Contains(out, "the lay holds")) {
			t.Errorf("%s: %d %s", test.why, code, errs)
		}
		if test.want != "" && (code != 1 || out != "" || !strings.Contains(errs, test.want)) {
			t.Errorf("%s: %d %s%s, want %s", test.why, code, out, errs, test.want)
		}
	}
}

// However much is wrong, a hundred faults are told of and the rest are counted.
func TestFaultsAreBounded(t *testing.T) {
	pieces := func(n int, one string) string {
		return `{"width":4,"pieces":[` + strings.Repeat(one+",", n-1) + one + `]}`
	}
	for _, test := range []struct{ why, text, want string }{
		{"16 million bytes of pieces", pieces(5_000_000, `{}`), "at most 700000 values"},
		{"pieces that are none", pieces(600_000, `1`), "599900 faults more"},
		{"a thousand empty pieces", pieces(1000, `{}`), "3900 faults more"},
	} {
		code, out, errs := lays(t, put(t, "bad.json", test.text))
		if code != 1 || out != "" || !strings.Contains(errs, test.want) || len(errs) > 20_000 {
			t.Errorf("%s: code %d, %d bytes: %.300s", test.why, code, len(errs), errs)
		}
	}
	places := strings.Repeat(`{"piece":"round","copy":1},`, 999) + `{"piece":"round"}`
	text := `{"instance":"two","width":2,"length":1,"placements":[` + places + `]}`
	code, _, errs := lays(t, "-check", put(t, "lay", text), put(t, "two.json", two))
	if code != 1 || !strings.Contains(errs, "900 faults more") || len(errs) > 20_000 {
		t.Errorf("code %d, %d bytes: %.300s", code, len(errs), errs)
	}
	// Placements without end are refused by their number.
	text = `{"instance":"two","width":2,"length":1,"placements":[` + strings.Repeat(`{},`, 1000) + `{}]}`
	if code, _, errs := lays(t, "-check", put(t, "lay", text), put(t, "two.json", two)); code != 1 || !strings.Contains(errs, "lays[0].placements 1001: out of range") {
		t.Errorf("code %d, %.300s", code, errs)
	}
}

// Of several seeds the best lay is drawn.
func TestDrawsTheBest(t *testing.T) {
	draw := func(args ...string) string {
		path := filepath.Join(t.TempDir(), "lay.svg")
		if code, _, errs := lays(t, append(append([]string{"-work", "1", "-svg", path}, args...), "testdata/blaz1.json")...); code != 0 {
			t.Fatal(errs)
		}
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		return string(data)
	}
	_, out, _ := lays(t, "-work", "1", "-seed", "2", "-seeds", "3", "testdata/blaz1.json")
	best, least, differ := 0, "", false
	for i, line := range strings.Split(strings.TrimSpace(out), "\n") {
		length := strings.Fields(line)[2]
		if differ = differ || least != "" && length != least; least == "" || length < least {
			best, least = 2+i, length
		}
	}
	if best == 2 || !differ {
		t.Fatalf("the first of the seeds is the best of\n%s", out)
	}
	if draw("-seed", "2", "-seeds", "3") != draw("-seed", fmt.Sprint(best)) {
		t.Errorf("what is drawn is not the lay of seed %d, the best of\n%s", best, out)
	}
}

// Nothing but what can be seen is written, whatever stands in names, keys, files
// and flags: such names are refused, and what a fault repeats is escaped.
func TestNothingHostileIsWritten(t *testing.T) {
	for _, bad := range []string{"\x1b[31m", "\x07", "\x7f", "\u009b31m", "\u202e", "\u2066", "\ufeff", "\u2028", "\uffff", "\U0001fffe"} {
		b, err := json.Marshal(bad)
		if err != nil {
			t.Fatal(err)
		}
		escaped := strings.Trim(string(b), `"`)
		instances := []string{escaped, "{" + escaped + ":1}"}
		for _, word := range []string{"name", "two", "id", "square", "width", "points"} {
			instances = append(instances, strings.Replace(two, word, word+escaped, 1))
		}
		for _, text := range instances {
			code, out, errs := lays(t, "-work", "1", put(t, "two.json", text))
			if code != 1 || out != "" {
				t.Errorf("%.200q: code %d, %.200q", text, code, out)
			}
			safe(t, text, errs)
		}
		for _, word := range []string{"instance", "two", "square", "placements", "copy", "100"} {
			text := strings.Replace(laidTwo, word, word+escaped, 1)
			code, out, errs := lays(t, "-check", put(t, "lay", text), put(t, "two.json", two))
			if code != 1 || out != "" {
				t.Errorf("%.200q: code %d, %.200q", text, code, out)
			}
			safe(t, text, errs)
		}
		for _, args := range [][]string{{"-" + bad}, {"-work", bad, "x"}, {bad}, {"-check", bad, put(t, "two.json", two)}, {"-check", put(t, bad, ""), put(t, "two.json", two)}} {
			code, out, errs := lays(t, args...)
			if code == 0 {
				t.Errorf("%q is taken", args)
			}
			safe(t, strings.Join(args, " "), out+errs)
		}
	}
}

// safe fails where a text for a terminal has a character that is not to be seen.
func safe(t *testing.T, what, text string) {
	t.Helper()
	for line := range strings.Lines(text) {
		if line = strings.Trim(line, "\t\n "); fault.Visible(line) != line {
			t.Errorf("%.300q writes %.300q", what, line)
			return
		}
	}
}
