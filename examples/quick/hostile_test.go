package main

import (
	"encoding/json"
	"os"
	"slices"
	"strings"
	"testing"

	"example.com/clothyard/units/fault"
)

// Characters that move the cursor, colour the text or turn it round.
var hostile = []string{"\x1b[31m", "\x07", "\x7f", "\u009b31m", "\u202e", "\u2066", "\u200f", "\ufeff", "\u2028", "\uffff", "\U0001fffe"}

// safe fails where a text for a terminal has one of them.
func safe(t *testing.T, what, text string) {
	t.Helper()
	for line := range strings.Lines(text) {
		if line = strings.Trim(line, "\t\n "); fault.Visible(line) != line {
			t.Errorf("%.300q writes %.300q", what, line)
			return
		}
	}
}

// spoil calls visit with copies of a JSON value, one for each text and key in it,
// with that one spoilt.
func spoil(v any, bad string, visit func(any)) {
	switch v := v.(type) {
	case string:
		visit(v + bad)
	case []any:
		for i := range v {
			spoil(v[i], bad, func(x any) {
				c := slices.Clone(v)
				c[i] = x
				visit(c)
			})
		}
	case map[string]any:
		for k := range v {
			with := func(key string, x any) {
				c := map[string]any{}
				for k2, x2 := range v {
					if k2 != k {
						c[k2] = x2
					}
				}
				c[key] = x
				visit(c)
			}
			with(k+bad, v[k])
			spoil(v[k], bad, func(x any) { with(k, x) })
		}
	}
}

// Whatever stands in the texts and keys of an input, nothing but what can be seen
// is written: such texts are refused, and what a fault repeats is escaped.
func TestNothingHostileIsWritten(t *testing.T) {
	text, err := os.ReadFile("testdata/sums.jsonl")
	if err != nil {
		t.Fatal(err)
	}
	var all []string
	for line := range strings.Lines(string(text)) {
		var v any
		if err := json.Unmarshal([]byte(line), &v); err != nil {
			t.Fatal(err)
		}
		for _, bad := range hostile {
			spoil(v, bad, func(x any) {
				b, err := json.Marshal(x)
				if err != nil {
					t.Fatal(err)
				}
				all = append(all, string(b))
			})
		}
	}
	for _, form := range [][]string{{"-json"}, nil} {
		out, errs, code := quick(form, strings.Join(all, "\n"))
		if code != 1 {
			t.Errorf("%v: code %d", form, code)
		}
		safe(t, strings.Join(form, " "), out)
		safe(t, strings.Join(form, " "), errs)
		if form != nil { // each is refused, since each text holds what cannot be seen
			for i, line := range strings.Split(strings.TrimSuffix(out, "\n"), "\n") {
				if !strings.Contains(line, `"faults":[`) || !json.Valid([]byte(line)) {
					t.Errorf("%.300q is answered by %.100s", all[i], line)
				}
			}
		}
	}
	for _, bad := range hostile {
		for _, args := range [][]string{
			{"seam.plain" + bad}, {"seam.plain", "finish" + bad + "=pinked"}, {"seam.plain", "finish=pinked" + bad}, {"seam.plain", "finish" + bad},
			{"seam.plain", "takes=[" + bad}, {"seam.plain", "a." + bad + ".b=[{\"" + bad + "\":1}]"}, {"seam.plain", "finish=pinked", "finish=" + bad},
			{"-units", bad}, {"-bare", bad}, {"-fields", bad}, {"-" + bad}, {"-draw", "/dev/null/" + bad, "seam.plain", "drafted=5/8 in"},
		} {
			for _, form := range [][]string{nil, {"-json"}} {
				out, errs, code := quick(append(form, args...), "")
				if code == 0 {
					t.Errorf("%q is taken", args)
				}
				safe(t, strings.Join(args, " "), out)
				safe(t, strings.Join(args, " "), errs)
			}
		}
		out, errs, _ := quick(nil, bad+"\n{"+bad+"}\n{\"sum\":"+bad+"}\n")
		safe(t, bad, out+errs)
	}
}
