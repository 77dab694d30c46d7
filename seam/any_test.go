package seam_test

import (
	"encoding/json"
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/noun/nountest"
)

// Where a seam of any kind may stand there may be none, and nothing panics.
func TestNoSeam(t *testing.T) {
	for _, none := range []seam.Any{{}, {Seam: (*seam.French)(nil)}, {Seam: struct{ seam.Seam }{}}} {
		if _, err := none.Plan(); nountest.Paths(t, err) != "kind" {
			t.Errorf("%+v: %v", none, err)
		}
		if _, ok := none.Taking(in(1, 2)); ok || none.Kind() != "" || none.Plies() != (seam.Allowance{}) || none.Cutting(in(1, 2), in(1, 2)) != none {
			t.Errorf("%+v is a seam", none)
		}
		if text, err := json.Marshal(none); err != nil || string(text) != "null" {
			t.Errorf("%s, %v", text, err)
		}
	}
	was := seam.Any{Seam: seam.Plain{First: in(1, 2)}}
	is := was
	if err := json.Unmarshal([]byte("null"), &is); err != nil || is != was {
		t.Errorf("null: %+v, %v", is, err)
	}
	for text, path := range map[string]string{
		`{"sewn": {"kind": "frensh"}}`: "sewn.kind", `{"sewn": {"first": "1 in"}}`: "sewn.kind", `{"sewn": {"kind": "plain", "second": "1 in"}}`: "sewn.second",
		`{"sewn": {"kind": "plain", "kind": "french"}}`: "sewn.kind", `{"sewn": {"kind": "bound", "width": "0 in"}}`: "sewn.width", `{"sewn": null}`: "sewn",
	} {
		var into struct {
			Sewn seam.Any `json:"sewn,omitzero"`
		}
		if err := noun.Read(strings.NewReader(text), &into); nountest.Paths(t, err) != path {
			t.Errorf("%s: %v", text, err)
		}
	}
}

// The plies of any seam may be cut otherwise, and it takes what it took.
func TestCutting(t *testing.T) {
	for s := range seam.Kinds() {
		p := planned(t, s)
		q := planned(t, p.Spec.Cutting(p.Upper.Taken, p.Under.Taken))
		if q.Upper.Taken != p.Upper.Taken || q.Under.Taken != p.Under.Taken || !q.Gain.IsZero() {
			t.Errorf("%s: %+v", s.Kind(), q)
		}
	}
}
