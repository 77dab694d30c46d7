package main

import (
	"encoding/json"
	"io"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// post asks a server on this machine.
func post(t *testing.T, body string) (code int, answer string) {
	t.Helper()
	server := httptest.NewServer(http.HandlerFunc(row))
	defer server.Close()
	r, err := http.Post(server.URL, "application/json", strings.NewReader(body))
	if err != nil {
		t.Fatal(err)
	}
	defer r.Body.Close()
	text, err := io.ReadAll(r.Body)
	if err != nil {
		t.Fatal(err)
	}
	return r.StatusCode, string(text)
}

func TestRow(t *testing.T) {
	code, answer := post(t, `{"first": "5/8 in", "last": "22 in", "count": 9}`)
	var plan buttons.RowPlan
	if err := json.Unmarshal([]byte(answer), &plan); err != nil || code != http.StatusOK {
		t.Fatalf("%d %s %v", code, answer, err)
	}
	if want := units.Inch.Frac(171, 64); plan.Gap != want {
		t.Errorf("the gap is %v, want %v", plan.Gap, want)
	}
}

func TestRefused(t *testing.T) {
	for body, want := range map[string]fault.Fault{
		`{"First": "5/8 in"}`:                                {Path: "First", Kind: fault.Unknown},
		`{"first": "5/8 in", "last": "1/2 in", "count": 9}`:  {Path: "last", Kind: fault.Range},
		`{"first": "5/8 in", "last": "22 in", "count": 0}`:   {Path: "count", Kind: noun.Zero},
		`{"first": "5/8", "last": "22 in", "count": 9}`:      {Path: "first", Kind: fault.Form},
		`{"first": "5/8 in", "last": "22 in", "count": 9} x`: {Kind: fault.Form},
	} {
		code, answer := post(t, body)
		var got struct{ Faults fault.Faults }
		if err := json.Unmarshal([]byte(answer), &got); err != nil || code != http.StatusUnprocessableEntity || len(got.Faults) == 0 {
			t.Fatalf("%s: %d %s %v", body, code, answer, err)
		}
		if f := got.Faults[0]; f.Path != want.Path || f.Kind != want.Kind {
			t.Errorf("%s: %v", body, f)
		}
	}
}

// What encoding/json lets through, noun.Read refuses: a key in other case or given
// twice, one that is not known, a zero that would be taken for "not given", text
// after the end.
func TestDecodeIsLax(t *testing.T) {
	for _, body := range []string{
		`{"FIRST": "5/8 in"}`,
		`{"first": "5/8 in", "first": "3/4 in"}`,
		`{"frist": "5/8 in"}`,
		`{"first": "0 in"}`,
		`{"first": "5/8 in"} and more`,
		`{"first": null}`,
	} {
		var lax, strict buttons.Row
		if err := json.NewDecoder(strings.NewReader(body)).Decode(&lax); err != nil {
			t.Errorf("json refuses %s: %v", body, err)
		}
		if err := noun.Read(strings.NewReader(body), &strict); err == nil {
			t.Errorf("noun reads %s", body)
		}
	}
}
