package noun_test

import (
	"encoding/json"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun"
)

// TestMerge: the examples of RFC 7396, appendix A, from memory; a Patch shows what comes
// of any JSON.
func TestMerge(t *testing.T) {
	for _, test := range []struct{ base, patch, want string }{
		{`{"a":"b"}`, `{"a":"c"}`, `{"a":"c"}`},
		{`{"a":"b"}`, `{"b":"c"}`, `{"a":"b","b":"c"}`},
		{`{"a":"b"}`, `{"a":null}`, `{}`},
		{`{"a":"b","b":"c"}`, `{"a":null}`, `{"b":"c"}`},
		{`{"a":["b"]}`, `{"a":"c"}`, `{"a":"c"}`},
		{`{"a":"c"}`, `{"a":["b"]}`, `{"a":["b"]}`},
		{`{"a":{"b":"c"}}`, `{"a":{"b":"d","c":null}}`, `{"a":{"b":"d"}}`},
		{`{"a":[{"b":"c"}]}`, `{"a":[1]}`, `{"a":[1]}`},
		{`["a","b"]`, `["c","d"]`, `["c","d"]`},
		{`{"a":"b"}`, `["c"]`, `["c"]`},
		{`{"a":"foo"}`, `"bar"`, `"bar"`},
		{`{"e":1}`, `{"a":1}`, `{"e":1,"a":1}`},
		{`[1,2]`, `{"a":"b","c":null}`, `{"a":"b"}`},
		{`{}`, `{"a":{"bb":{"ccc":null}}}`, `{"a":{"bb":{}}}`},
	} {
		var got noun.Patch
		if err := (noun.Reader{}).ReadOver([]byte(test.base), strings.NewReader(test.patch), &got); err != nil || string(got) != test.want {
			t.Errorf("%s over %s: %s, %v, want %s", test.patch, test.base, got, err, test.want)
		}
	}
}

// What is read over a base is as strict as what is read alone.
func TestReadOver(t *testing.T) {
	base := []byte(`{"depth": "1 in", "parts": {"b": {"drafted": "1 in"}, "a": {"drafted": "2 in"}}}`)
	var b bag
	err := noun.Reader{}.ReadOver(base, strings.NewReader(`{"pieces": 3, "parts": {"c": {"fraying": true}, "b": null, "a": {"drafted": "3 in"}}}`), &b)
	if err != nil || b.Depth != units.Inch.Of(1) || b.Pieces != 3 {
		t.Errorf("got %+v, %v", b, err)
	}
	if text, err := json.Marshal(b.Parts); err != nil || string(text) != `{"a":{"drafted":"3 in"},"c":{"fraying":true}}` {
		t.Errorf("got %s, %v", text, err)
	}
	for patch, want := range map[string]string{
		`{"depht": "2 in"}`:                   "depht \"2 in\": not known",
		`{"depth": "2 in", "depth": "3 in"}`:  "depth \"3 in\": given twice, want each key once (line 1, column 33)",
		`{"parts": {"a": {"drafted": "x"}}}`:  `parts.a.drafted "x": cannot be read`,
		`{"depth": "0 in"}`:                   `depth "0 in": zero means not given`,
		`{"parts": {"c": {"drafted": null}}}`: "",
		`{`:                                   "JSON: cannot be read",
	} {
		err := noun.Reader{}.ReadOver(base, strings.NewReader(patch), &b)
		if want == "" && err != nil || want != "" && (err == nil || !strings.HasPrefix(err.Error(), want)) {
			t.Errorf("%s\n got %v\nwant %s", patch, err, want)
		}
	}
	if err := (noun.Reader{}).Over(b, nil, &b); err != nil {
		t.Error(err)
	}
	if err := (noun.Reader{}).Over(b, noun.Patch(`{"pieces": 5}`), &b); err != nil || b.Pieces != 5 || b.Depth != units.Inch.Of(1) {
		t.Errorf("%+v, %v", b, err)
	}
}
