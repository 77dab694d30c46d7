package main

import (
	"encoding/json"
	"os"
	"strings"
	"testing"
)

// An answer asks its sum again: what quick -json writes, quick -json reads, and it
// answers the same, with nothing assumed.
func TestAnswerAgain(t *testing.T) {
	text, err := os.ReadFile("testdata/sums.jsonl")
	if err != nil {
		t.Fatal(err)
	}
	want, errs, code := quick([]string{"-json"}, string(text))
	if code != 0 || errs != "" {
		t.Fatalf("code %d, %s", code, errs)
	}
	got, errs, code := quick([]string{"-json"}, want)
	if code != 0 || errs != "" {
		t.Fatalf("code %d, %s", code, errs)
	}
	asked, again := strings.Split(want, "\n"), strings.Split(got, "\n")
	if len(asked) != len(again) {
		t.Fatalf("%d answers of %d", len(again), len(asked))
	}
	for i, line := range again {
		if line == "" {
			continue
		}
		var was, is map[string]any
		if err := json.Unmarshal([]byte(asked[i]), &was); err != nil {
			t.Fatal(err)
		}
		if err := json.Unmarshal([]byte(line), &is); err != nil {
			t.Fatal(err)
		}
		for _, name := range list(is["assumed"]) {
			// The limit of ease is what the pattern drew, which no Spec holds.
			if path, _ := name.(string); path != "maxEase" && path != "pairs.maxEase" {
				t.Errorf("%s\nassumes %v", asked[i], name)
			}
		}
		if d := difference("", assumingNothing(was), assumingNothing(is)); d != "" {
			t.Errorf("%s\nis asked again as\n%s\n%s", asked[i], line, d)
		}
	}
}

// list is v where it is a list.
func list(v any) []any {
	all, _ := v.([]any)
	return all
}

// What is no part of an answer is refused beside its spec too.
func TestAnswerWithMore(t *testing.T) {
	for beside, path := range map[string]string{
		`"colour":"red"`: "colour", `"first":"2 in"`: "first", `"Gap":"1 in"`: "Gap", `"sum":"hem.double"`: "sum", `"spec":{}`: "spec",
		`"gap":"1 in"`: "", `"line":7`: "", `"assumed":["step"]`: "",
	} {
		out, errs, code := quick([]string{"-json"}, `{"sum":"buttons.row","spec":{"first":"1 in","last":"3 in","count":3},`+beside+"}\n")
		if refused := strings.Contains(out, `"faults":[{"path":"`+path+`"`); errs != "" || refused != (path != "") || code == 0 == refused {
			t.Errorf("%s: code %d, %s%s", beside, code, out, errs)
		}
	}
}
