package main

import (
	"bytes"
	"encoding/csv"
	"io"
	"os/exec"
	"strings"
	"testing"
)

// The answer stands in the first line, in the units asked.
func TestAnswerFirst(t *testing.T) {
	for want, args := range map[string][]string{
		"Cloth to buy: buy 2 1/4 yd (81 in)":          {"yardage.purchase", "need=76 3/16 in", "ends=1 in", "shrink=3 %"},
		"Cloth to buy: buy 2 m (2000 mm)":             {"-units", "metric", "yardage.purchase", "tape=metric", "need=180 cm", "ends=5 cm", "shrink=5 %"},
		"Row of buttons: set 6; no gap above 6 in":    {"buttons.row", "first=1 in", "last=21 in", "pins=[\"7 in\", \"13 in\"]", "count=7", "have=6"},
		"1 5/8 in is 41.275 mm; on a tape full 41 mm": {"convert", "1 5/8 in", "to=mm"},
	} {
		out, errs, code := quick(args, "")
		if first, _, _ := strings.Cut(out, "\n"); first != want || code != 0 {
			t.Errorf("%v: code %d, %q, want %q%s", args, code, first, want, errs)
		}
	}
}

// A length is converted exactly, and read to a mark.
func TestConvert(t *testing.T) {
	for _, test := range []struct {
		args []string
		code int
		want string
	}{
		{[]string{"convert", "5/8 in"}, 0, "5/8 in is 15.875 mm; on a tape 16 mm\n"},
		{[]string{"convert", "15 mm", "to=in"}, 0, "15 mm is 75/127 in; on a tape full 9/16 in\n"},
		{[]string{"convert", "1 yd", "to=in"}, 0, "36 in is 36 in\n"},
		{[]string{"-json", "convert", "1 5/8 in", "to=mm"}, 0, `{"length":"1 5/8 in","exactly":"41.275 mm","mark":"41 mm","residue":"0.275 mm"}` + "\n"},
		{[]string{"convert", "1,5 cm"}, 1, "quick: convert: -comma takes 1,5 for 1.5\n"},
		{[]string{"-comma", "convert", "1,5 cm", "to=mm"}, 0, "15 mm is 15 mm\n"},
		{[]string{"convert", "5/8 in", "to=ells"}, 1, "to \"ells\": cannot be read"},
		{[]string{"convert", "5/8 in", "mm"}, 2, "convert takes a length"},
		{[]string{"convert"}, 2, "convert takes a length"},
	} {
		out, errs, code := quick(test.args, "")
		if code != test.code || !strings.Contains(out+errs, test.want) {
			t.Errorf("%v: code %d, %s%s, want %s", test.args, code, out, errs, test.want)
		}
	}
}

// The last word of a sum is enough where one sum has it, in whatever case.
func TestShortNames(t *testing.T) {
	for name, code := range map[string]int{"row": 2, "Buttons.Row": 0, "BUTTONS.ROW": 0, "purchase": 1, "brim": 2} {
		_, errs, got := quick([]string{name, "first=1 in", "last=3 in", "count=3"}, "")
		if got != code {
			t.Errorf("%s: code %d, %s", name, got, errs)
		}
	}
	if _, errs, _ := quick([]string{"row"}, ""); !strings.Contains(errs, "seam.row or buttons.row") {
		t.Error(errs)
	}
}

// A table is answered row by row: what was given, the answers, and what is wrong.
func TestTable(t *testing.T) {
	in := "need,ends,shrink\n76 3/16 in,1 in,3 %\nx,1 in,3 %\n80 in,,\n\"80 in\n,1 in\n"
	out, errs, code := quick([]string{"-csv", "yardage.purchase"}, in)
	if code != 1 || errs != "" {
		t.Errorf("code %d, %s", code, errs)
	}
	rows, err := csv.NewReader(strings.NewReader(out)).ReadAll()
	if err != nil || len(rows) != 5 {
		t.Fatalf("%v\n%s", err, out)
	}
	column := func(name string) int {
		for i, head := range rows[0] {
			if head == name {
				return i
			}
		}
		t.Fatalf("no column %s in %v", name, rows[0])
		return 0
	}
	buy, faults := column("buy"), column("faults")
	if rows[1][buy] != "81 in" || rows[1][faults] != "" || rows[2][buy] != "" || !strings.Contains(rows[2][faults], `need "x"`) || rows[3][buy] != "81 in" || rows[4][faults] == "" {
		t.Errorf("%v", rows)
	}
	for _, test := range []struct {
		args []string
		in   string
		code int
	}{{[]string{"-csv", "brim"}, "", 2}, {[]string{"-csv", "yardage.purchase"}, "", 1}} {
		if _, errs, code := quick(test.args, test.in); code != test.code || errs == "" {
			t.Errorf("%v: code %d, %s", test.args, code, errs)
		}
	}
}

// A row without end is refused before it fills the memory.
func TestRowWithoutEnd(t *testing.T) {
	read := 0
	in := io.MultiReader(strings.NewReader("need\n\""), readFunc(func(p []byte) (int, error) {
		read += len(p)
		for i := range p {
			p[i] = 'x'
		}
		return len(p), nil
	}))
	var out, errs bytes.Buffer
	if code := run([]string{"-csv", "yardage.purchase"}, in, &out, &errs); code != 1 || read > 4<<20 || !strings.Contains(errs.String(), "a row of more than") {
		t.Errorf("code %d after %d bytes: %s", code, read, errs.String())
	}
}

// Lines that wait together are answered together.
func TestFlushedTogether(t *testing.T) {
	line := `{"sum":"buttons.row","first":"1 in","last":"3 in","count":3}` + "\n"
	writes := 0
	out := writeFunc(func(p []byte) (int, error) { writes++; return len(p), nil })
	if code := run([]string{"-json"}, strings.NewReader(strings.Repeat(line, 10)), out, io.Discard); code != 0 || writes != 1 {
		t.Errorf("code %d, %d writes", code, writes)
	}
}

// The scripts are scripts, and ask for words that there are.
func TestCompletion(t *testing.T) {
	for _, shell := range []string{"bash", "zsh"} {
		script, _, code := quick([]string{"-completion", shell}, "")
		if code != 0 || !strings.Contains(script, "quick -words --") {
			t.Errorf("%s: code %d, %s", shell, code, script)
		}
		if path, err := exec.LookPath(shell); err == nil {
			check := exec.Command(path, "-n")
			check.Stdin = strings.NewReader(script)
			if text, err := check.CombinedOutput(); err != nil {
				t.Errorf("%s: %v %s", shell, err, text)
			}
		}
	}
	if _, _, code := quick([]string{"-completion", "fish"}, ""); code != 2 {
		t.Errorf("code %d", code)
	}
	if out, _, _ := quick([]string{"-words", "--", "yard"}, ""); !strings.Contains(out, "yardage.purchase\n") {
		t.Error(out)
	}
	if out, _, _ := quick([]string{"-words", "--", "yardage.purchase", "ne"}, ""); !strings.Contains(out, "need=\n") || strings.Contains(out, "yardage.") {
		t.Error(out)
	}
}

func BenchmarkLines(b *testing.B) {
	line := `{"sum":"yardage.purchase","need":"76 3/16 in","ends":"1 in","shrink":"3 %"}` + "\n"
	in := strings.Repeat(line, 1000)
	for b.Loop() {
		if code := run([]string{"-json"}, strings.NewReader(in), io.Discard, io.Discard); code != 0 {
			b.Fatal(code)
		}
	}
}
