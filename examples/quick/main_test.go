package main

import (
	"bufio"
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"strings"
	"testing"
	"testing/iotest"
)

func quick(args []string, in string) (out, errs string, code int) {
	var o, e bytes.Buffer
	code = run(args, strings.NewReader(in), &o, &e)
	return o.String(), e.String(), code
}

// get follows a path such as upper.drift or spec.pieces[0] in a JSON object.
func get(t *testing.T, v any, path string) any {
	t.Helper()
	for _, key := range strings.Split(path, ".") {
		m, ok := v.(map[string]any)
		if !ok {
			t.Fatalf("%s: no object at %s", path, key)
		}
		if v, ok = m[key]; !ok {
			return "" // zero is left out
		}
	}
	return v
}

// One sum of each noun from the command line, checked at a figure that the
// handbook test of its package has too.
func TestOneSum(t *testing.T) {
	for _, c := range []struct{ args, path, want string }{
		{"seam.french drafted=5/8_in first=3/16_in second=1/4_in", "upper.drift", "3/16 in"},
		{"seam.french drafted=5/8_in first=3/16_in second=1/4_in", "gain", "3/8 in"},
		{"seam.french drafted=5/8_in first=3/16_in second=5/16_in", "gain", "1/4 in"},
		{"seam.french drafted=5/8_in first=3/8_in second=3/8_in", "upper.drift", "-1/8 in"},
		{"seam.french drafted=1.5_cm first=9_mm second=6_mm", "gain", ""},
		{"seam.dart length=6_in width=1_in allowance=5/8_in", "atSeam", "43/48 in"},
		{"seam.edge net=16_1/2_in takes=[{\"drafted\":\"5/8_in\",\"taken\":\"7/16_in\",\"plies\":4}]", "sewn", "17 1/4 in"},
		{"seam.pair long.net=19_3/8_in short.net=19_1/2_in", "fit", "mismatch"},
		{"hem.double drafted=1_1/4_in first=3/8_in depth=3/8_in", "drift", "1/2 in"},
		{"gather.strip strip.pieces=3 strip.each=12_1/4_in strip.allowance=1/2_in strip.ends=1/2_in edge=15_3/4_in", "fullness", "2 1/7"},
		{"gather.strip strip.pieces=3 strip.each=12_1/4_in strip.allowance=1/2_in strip.ring=true edge=15_in", "strip.sewn", "33 3/4 in"},
		{"gather.cuff wrist=6_3/4_in ease=1_1/4_in lap=1_in depth=2_1/4_in sleeve=16_3/4_in setting=extended", "onto", "8 in"},
		{"buttons.row first=5/8_in last=22_in count=9", "gap", "2 43/64 in"},
		{"buttons.hole diameter=18_L thickness=3/32_in", "cut", "9/16 in"},
		{"buttons.lap lap=3/4_in hole=9/16_in topstitch=1_1/8_in setting=horizontal", "clash", "1/16 in"},
		{"yardage.purchase need=80_in ends=2_in shrink=5_%", "unshrunk", "86 6/19 in"},
		{"yardage.width asked=2_yd from=60_in to=45_in", "byGrid", "99 in"},
	} {
		args := append([]string{"-json"}, strings.Fields(c.args)...)
		for i := range args {
			args[i] = strings.ReplaceAll(args[i], "_", " ")
		}
		out, errs, code := quick(args, "")
		if code != 0 || errs != "" {
			t.Errorf("%s: code %d, %s", c.args, code, errs)
			continue
		}
		if strings.Count(out, "\n") != 1 {
			t.Errorf("%s: %d lines", c.args, strings.Count(out, "\n"))
		}
		var v any
		if err := json.Unmarshal([]byte(out), &v); err != nil {
			t.Fatal(err)
		}
		if got := get(t, v, c.path); got != c.want {
			t.Errorf("%s: %s is %v, want %s", c.args, c.path, got, c.want)
		}
		if get(t, v, "sum") != strings.Fields(c.args)[0] {
			t.Errorf("%s: the sum is %v", c.args, get(t, v, "sum"))
		}
	}
}

// What a Plan can list stands in its answer: marks, joins, remedies.
func TestLists(t *testing.T) {
	for _, c := range []struct{ args, want string }{
		{"buttons.row first=5/8_in last=22_in count=9", `"places":[{"exact":"5/8 in","mark":"5/8 in"},{`},
		{"gather.ruffle strip.strip.pieces=3 strip.strip.each=12_1/4_in strip.strip.allowance=1/2_in strip.strip.ends=1/2_in strip.edge=15_3/4_in depth=1_1/4_in folded=true", `"joins":[{"full":"11 1/4 in","edge":"5 1/4 in"},{"full":"22 1/2 in","edge":"10 1/2 in"}]`},
		{"buttons.lap lap=3/4_in hole=9/16_in topstitch=1_1/8_in setting=horizontal", `"remedies":[{"tape":"inch","lap":"3/4 in","hole":"9/16 in",`},
	} {
		args := append([]string{"-json"}, strings.Fields(c.args)...)
		for i := range args {
			args[i] = strings.ReplaceAll(args[i], "_", " ")
		}
		out, errs, code := quick(args, "")
		if code != 0 || !strings.Contains(out, c.want) || !json.Valid([]byte(out)) {
			t.Errorf("%s: code %d, no %s in\n%s%s", c.args, code, c.want, out, errs)
		}
	}
	out, _, _ := quick([]string{"-all", "buttons.row", "first=1 in", "last=3 in", "count=3"}, "")
	if !strings.Contains(out, "places[1].exact = 2 in\n") {
		t.Errorf("as text:\n%s", out)
	}
}

// Every sum is in the pipe's test data and is answered there.
func TestPipe(t *testing.T) {
	text, err := os.ReadFile("testdata/sums.jsonl")
	if err != nil {
		t.Fatal(err)
	}
	for _, form := range [][]string{{"-json"}, nil, {"-units", "metric"}, {"-units", "both"}} {
		out, errs, code := quick(form, string(text))
		if code != 0 || errs != "" {
			t.Fatalf("%v: code %d\n%s", form, code, errs)
		}
		for e := range sums.All() {
			if !strings.Contains(out, e.Name()) {
				t.Errorf("%v: %s is not answered", form, e.Name())
			}
		}
	}
	out, _, _ := quick([]string{"-json"}, string(text))
	lines := bufio.NewScanner(strings.NewReader(out))
	n := 0
	for lines.Scan() {
		n++
		var v map[string]any
		if err := json.Unmarshal(lines.Bytes(), &v); err != nil || v["line"] != float64FromInt(n) {
			t.Errorf("line %d: %v %v", n, v["line"], err)
		}
	}
	if want := strings.Count(string(text), "\n"); n != want {
		t.Errorf("%d answers for %d lines", n, want)
	}
}

// float64FromInt is a number as encoding/json gives it.
func float64FromInt(n int) any {
	var v any
	b, _ := json.Marshal(n)
	_ = json.Unmarshal(b, &v)
	return v
}

// Every noun of the library, that is every type with a Plan method, is bound.
func TestEveryNounIsBound(t *testing.T) {
	bound := map[string]bool{}
	for e := range sums.All() {
		bound[reflect.TypeOf(e.New()).Elem().String()] = true
	}
	noun := regexp.MustCompile(`(?m)^func \(\w+ (\w+)\) Plan\((?:ctx context.Context)?\) `)
	found := 0
	for _, lib := range []string{"units", "seam", "hem", "gather", "buttons", "yardage"} {
		err := filepath.WalkDir("../../"+lib, func(path string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
				return err
			}
			text, err := os.ReadFile(path)
			for _, m := range noun.FindAllStringSubmatch(string(text), -1) {
				name := filepath.Base(filepath.Dir(path)) + "." + m[1]
				if name == "garment.Garment" || name == "seam.Any" || name == "hem.Any" {
					continue // it is read over a starter, by worksheet; it is one of the seams or the hems
				}
				if found++; !bound[name] {
					t.Errorf("%s has a Plan and no sum", name)
				}
			}
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	if found != len(bound) {
		t.Errorf("%d nouns, %d sums", found, len(bound))
	}
}

// A bad line is answered by its faults, with its number; the rest go on.
func TestBadLines(t *testing.T) {
	good := `{"sum":"seam.french","first":"3/16 in","second":"1/4 in"}`
	for _, c := range []struct {
		line  string
		wants []string
	}{
		{`{"sum":"seam.french","first":"3/16 in","second":"1/4 in","trim":"1/4 in"}`, []string{`"path":"trim"`, `"got":"1/4 in"`, `"limit":"less than `, `raw edge would show`}},
		{`{"sum":"seam.frensh"}`, []string{`"path":"sum"`, `frensh`}},
		{`{"sum":"seam.plain","finish":"pinkd"}`, []string{`"path":"finish"`, `pinkd`}},
		{`{"sum":"seam.french","Drafted":"1 in"}`, []string{`"path":"Drafted"`, `not known`}},
		{`{"sum":"seam.plain","first":"1 in","first":"2 in"}`, []string{`"path":"first"`, `given twice`}},
		{`{"sum":"seam.plain","trim":"0 in"}`, []string{`"path":"trim"`, `zero means not given`}},
		{`{"sum":"seam.plain","first":"5/8"}`, []string{`"path":"first"`, `a unit`}},
		{`{"sum":"seam.plain","first":null}`, []string{`"path":"first"`, `null`}},
		{`{"sum":"seam.plain","first":["1 in"]}`, []string{`"path":"first"`, `a list`}},
		{`{"sum":"seam.plain","fraying":"yes"}`, []string{`"path":"fraying"`, `true or false`}},
		{`{"sum":"seam.edge","net":"10 in","takes":[{"drafted":"5/8 in"},{"drafted":"5/8 in","taken":"-3/8 in"}]}`, []string{`"path":"takes[1].taken"`, `-3/8 in`}},
		{`{"sum":"buttons.row","first":"1 in","last":"9 in","count":2.5}`, []string{`"path":"count"`, `2.5`}},
		{`{"sum":"buttons.row","first":"1 in","last":"9 in","count":99999999999999999999}`, []string{`"path":"count"`}},
		{`{"sum":"buttons.row","first":"1 in","last":"9 in","count":1000000000}`, []string{`"path":"count"`, `10000`}},
		{`{"sum":"hem.brim"}`, []string{`"path":"sum"`, `hem.brim`}},
		{`{"kind":"french"}`, []string{`"path":"sum"`, `not given`}},
		{`{"sum":"seam.plain"`, []string{`ends too early`}},
		{`[1,2]`, []string{`"path":"sum"`}},
		{`null`, []string{`"path":"sum"`}},
		{`{"sum":"seam.plain"} {}`, []string{`nothing after the end`}},
		{strings.Repeat("[", 100), []string{`nesting`}},
		{`{"sum":"seam.edge","takes":[` + strings.Repeat(`{},`, 60_000) + `{}]}`, []string{`takes`}},
		{`{"sum":"seam.edge","takes":[` + strings.Repeat(`1,`, 200_000) + `1]}`, []string{`at most 100000 values`}},
		{`{"sum":"` + strings.Repeat("a", 2<<20) + `"}`, []string{`a longer line`}},
		{`{"sum":"seam.plain","first":"1` + strings.Repeat("0", 200) + ` in"}`, []string{`"path":"first"`, `at most 100 bytes`}},
		{"\xff\xfe", []string{`"got":"JSON"`}},
	} {
		out, errs, code := quick([]string{"-json"}, good+"\n"+c.line+"\n\n"+good+"\n")
		if code != 1 || errs != "" {
			t.Errorf("%.60s: code %d, %s", c.line, code, errs)
		}
		lines := strings.Split(strings.TrimSpace(out), "\n")
		if len(lines) != 3 {
			t.Errorf("%.60s: %d lines", c.line, len(lines))
			continue
		}
		if strings.Contains(lines[0], "faults") || strings.Contains(lines[2], "faults") {
			t.Errorf("%.60s: a good line is refused", c.line)
		}
		for _, w := range append(c.wants, `"line":2`, `"faults":[`) {
			if !strings.Contains(lines[1], w) {
				t.Errorf("%.60s: no %s in %.300s", c.line, w, lines[1])
			}
		}
		if len(lines[1]) > 40_000 {
			t.Errorf("%.60s: an answer of %d bytes", c.line, len(lines[1]))
		}
		// As text the faults go to standard error, one a line, with the line's number.
		if _, errs, code := quick(nil, c.line+"\n"); code != 1 || !strings.HasPrefix(errs, "line 1: ") {
			t.Errorf("%.60s as text: code %d, %.80s", c.line, code, errs)
		}
	}
}

// All faults at once, in the order of the fields.
func TestAllFaults(t *testing.T) {
	out, errs, code := quick([]string{"seam.french", "drafted=-1 in", "first=-1/4 in", "second=x", "colour=red", "first=1 in"}, "")
	if code != 1 || out != "" {
		t.Errorf("code %d, out %q", code, out)
	}
	for _, w := range []string{"first", "given twice", `second "x"`, `colour "red"`} {
		if !strings.Contains(errs, w) {
			t.Errorf("no %q in\n%s", w, errs)
		}
	}
	_, errs, _ = quick([]string{"seam.french", "drafted=-1 in", "first=-1/4 in"}, "")
	if i, k := strings.Index(errs, "drafted -1 in"), strings.Index(errs, "first -1/4 in"); i < 0 || k < i {
		t.Errorf("the faults are\n%s", errs)
	}
}

func TestUsage(t *testing.T) {
	for _, args := range [][]string{{"seam.brim"}, {"seam.french", "french"}, {"-units", "cubits"}, {"-bare", "ell"}, {"-no"}, {"-fields", "seam.brim"}} {
		if out, errs, code := quick(args, ""); code != 2 || out != "" || errs == "" {
			t.Errorf("%v: code %d, out %q, errors %q", args, code, out, errs)
		}
	}
	if _, errs, code := quick([]string{"-help"}, ""); code != 0 || !strings.Contains(errs, "name=value") {
		t.Errorf("-help: code %d, %s", code, errs)
	}
}

func TestFlags(t *testing.T) {
	out, errs, code := quick([]string{"-all", "-bare", "in", "seam.french", "first=3/16", "second=1/4"}, "")
	if code != 0 || !strings.Contains(out, "gain = 3/8 in") {
		t.Errorf("-bare: code %d, %s%s", code, out, errs)
	}
	out, errs, code = quick([]string{"-all", "-comma", "seam.plain", "drafted=1,5 cm"}, "")
	if code != 0 || !strings.Contains(out, "upper.taken = 15 mm") {
		t.Errorf("-comma: code %d, %s%s", code, out, errs)
	}
	out, _, code = quick([]string{"-sums"}, "")
	for e := range sums.All() {
		if code != 0 || !strings.Contains(out, "\n"+e.Name()+" ") && !strings.HasPrefix(out, e.Name()+" ") {
			t.Errorf("-sums: code %d, no %s in\n%s", code, e.Name(), out)
		}
	}
	out, _, code = quick([]string{"-fields", "gather.ruffle"}, "")
	if code != 0 || !strings.Contains(out, "\n  strip.strip.each: a length") || !strings.Contains(out, "\n  folded: true or false") {
		t.Errorf("-fields: code %d, %s", code, out)
	}
}

// Text for people keeps to 80 columns and shows the figures and the working.
func TestText(t *testing.T) {
	out, _, code := quick([]string{"buttons.row", "first=5/8 in", "last=22 in", "count=9", "from=the finished neck seam"}, "")
	if code != 0 {
		t.Fatal(out)
	}
	for _, w := range []string{"a gap of scant 2 11/16 in (2 43/64 in)", "guide: 11 5/16 in from the finished neck seam", "Sources"} {
		if !strings.Contains(out, w) {
			t.Errorf("no %q in\n%s", w, out)
		}
	}
	for _, line := range strings.Split(out, "\n") {
		if len([]rune(line)) > 80 {
			t.Errorf("%d columns: %s", len([]rune(line)), line)
		}
	}
}

// Input without end in one line takes no more memory than the bound on a line.
func TestReadersThatFail(t *testing.T) {
	var out, errs bytes.Buffer
	if code := run(nil, iotest.ErrReader(errors.New("the pipe broke")), &out, &errs); code != 1 || !strings.Contains(errs.String(), "the pipe broke") {
		t.Errorf("code %d, %s", code, errs.String())
	}
	if out, _, code := quick([]string{"-json"}, ""); code != 0 || out != "" {
		t.Errorf("no lines: code %d, %q", code, out)
	}
	// The last line needs no line end.
	if out, _, code := quick([]string{"-json"}, `{"sum":"buttons.row","first":"1 in","last":"3 in","count":3}`); code != 0 || !strings.Contains(out, `"gap":"1 in"`) {
		t.Errorf("no line end: code %d, %s", code, out)
	}
}

// Each line is answered before the next is read.
func TestAnswersAtOnce(t *testing.T) {
	for mark, form := range map[string][]string{`"line":%d,`: {"-json"}, "line %d: ": nil} {
		var out, errs bytes.Buffer
		asked := 0
		in := readFunc(func(p []byte) (int, error) {
			if asked > 0 && !strings.Contains(out.String()+errs.String(), fmt.Sprintf(mark, asked)) {
				t.Errorf("%v: line %d is not answered before the next is read", form, asked)
			}
			asked++
			switch asked {
			case 1, 3:
				return copy(p, `{"sum":"buttons.row","first":"1 in","last":"3 in","count":3}`+"\n"), nil
			case 2:
				return copy(p, `{"sum":"hem.brim"}`+"\n"), nil
			}
			return 0, io.EOF
		})
		if code := run(form, in, &out, &errs); code != 1 || asked != 4 {
			t.Errorf("%v: code %d after %d reads", form, code, asked)
		}
	}
}

// A write that fails ends the pipe, however many lines there are.
func TestFailedWrite(t *testing.T) {
	for _, line := range []string{`{"sum":"buttons.row","first":"1 in","last":"3 in","count":3}`, `{"sum":"hem.brim"}`} {
		asked := 0
		in := readFunc(func(p []byte) (int, error) {
			if asked++; asked > 100 {
				return 0, io.EOF
			}
			return copy(p, line+"\n"), nil
		})
		var errs bytes.Buffer
		full := writeFunc(func([]byte) (int, error) { return 0, errors.New("the disk is full") })
		if code := run([]string{"-json"}, in, full, &errs); code != 1 || strings.Count(errs.String(), "the disk is full") != 1 {
			t.Errorf("%s: code %d, %s", line, code, errs.String())
		}
		if asked > 1 {
			t.Errorf("%s: %d lines were read", line, asked)
		}
	}
	for _, args := range [][]string{{"-sums"}, {"-fields", "seam.french"}, {"buttons.row", "first=1 in", "last=3 in", "count=3"}} {
		var errs bytes.Buffer
		full := writeFunc(func([]byte) (int, error) { return 0, errors.New("the disk is full") })
		if code := run(args, strings.NewReader(""), full, &errs); code != 1 || strings.Count(errs.String(), "the disk is full") != 1 {
			t.Errorf("%v: code %d, %s", args, code, errs.String())
		}
	}
}

type readFunc func([]byte) (int, error)

func (f readFunc) Read(p []byte) (int, error) { return f(p) }

type writeFunc func([]byte) (int, error)

func (f writeFunc) Write(p []byte) (int, error) { return f(p) }
