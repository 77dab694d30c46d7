package main

import (
	"encoding/json"
	"maps"
	"os"
	"reflect"
	"strings"
	"testing"
)

// The solved Spec of an answer, less what is not given, asks the same sum again and
// has the same answer, in which nothing is assumed.
func TestAnswerAgain(t *testing.T) {
	text, err := os.ReadFile("testdata/sums.jsonl")
	if err != nil {
		t.Fatal(err)
	}
	answer := func(line string) map[string]any {
		t.Helper()
		out, errs, code := quick([]string{"-json"}, line+"\n")
		var v map[string]any
		if err := json.Unmarshal([]byte(out), &v); err != nil || code != 0 {
			t.Fatalf("%s: code %d, %v\n%s%s", line, code, err, out, errs)
		}
		return v
	}
	asked := 0
	for line := range strings.Lines(string(text)) {
		line = strings.TrimSpace(line)
		if !strings.Contains(line, `"sum":"yardage.`) && !strings.Contains(line, `"sum":"buttons.`) {
			continue
		}
		asked++
		want := answer(line)
		spec := maps.Clone(want["spec"].(map[string]any))
		maps.DeleteFunc(spec, func(_ string, v any) bool {
			return v == "" || v == "0" || v == "0 in" || v == 0.0 || v == false
		})
		spec["sum"] = want["sum"]
		again, err := json.Marshal(spec)
		if err != nil {
			t.Fatal(err)
		}
		got := answer(string(again))
		if all, _ := got["assumed"].([]any); len(all) > 0 {
			t.Errorf("%s: assumed %v", again, got["assumed"])
		}
		delete(want, "assumed")
		delete(got, "assumed")
		if !reflect.DeepEqual(got, want) {
			t.Errorf("%s:\n%v\nwant\n%v", again, got, want)
		}
	}
	if asked < 11 {
		t.Errorf("%d sums", asked)
	}
}
