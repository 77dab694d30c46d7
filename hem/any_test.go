package hem_test

import (
	"encoding/json"
	"strings"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/noun/nountest"
)

// Where a hem of any kind may stand there may be none, and nothing panics.
func TestNoHem(t *testing.T) {
	for _, none := range []hem.Any{{}, {Hem: (*hem.Double)(nil)}, {Hem: struct{ hem.Hem }{}}} {
		if _, err := none.Plan(); nountest.Paths(t, err) != "kind" {
			t.Errorf("%+v: %v", none, err)
		}
		if none.Kind() != "" || none.Allowed() != (hem.Allowance{}) || none.With(hem.Allowance{Cut: l("1")}) != none || none.Slit() {
			t.Errorf("%+v is a hem", none)
		}
		if text, err := json.Marshal(none); err != nil || string(text) != "null" {
			t.Errorf("%s, %v", text, err)
		}
	}
	was := of("single; depth=1 in")
	is := was
	if err := json.Unmarshal([]byte("null"), &is); err != nil || is != was {
		t.Errorf("null: %+v, %v", is, err)
	}
	if sh := (hem.Plan{}).Sheet(); sh.Title != "No hem" || len(sh.Steps) > 0 {
		t.Errorf("%+v", sh)
	}
	for text, path := range map[string]string{
		`{"sewn": {"kind": "dubble"}}`: "sewn.kind", `{"sewn": {"first": "1 in"}}`: "sewn.kind", `{"sewn": {"kind": "single", "first": "1 in"}}`: "sewn.first",
		`{"sewn": {"kind": "single", "kind": "double"}}`: "sewn.kind", `{"sewn": {"kind": "bound", "depth": "0 in"}}`: "sewn.depth", `{"sewn": null}`: "sewn",
	} {
		var into struct {
			Sewn hem.Any `json:"sewn,omitzero"`
		}
		if err := noun.Read(strings.NewReader(text), &into); nountest.Paths(t, err) != path {
			t.Errorf("%s: %v", text, err)
		}
	}
}

// The allowance of any hem may be cut to what it takes, and it takes that; but a slit has
// none, and a binding takes nothing.
func TestCut(t *testing.T) {
	for name, h := range every() {
		p := must(t, h)
		a := p.Spec.Allowed()
		a.Cut = p.Taken
		if h.Kind() == "slit" || a.Cut.Sign() <= 0 {
			continue
		}
		if q := must(t, p.Spec.With(a)); q.Taken != p.Taken || !q.Drift.IsZero() {
			t.Errorf("%s: %+v", name, q)
		}
	}
}

func FuzzNouns(f *testing.F) { nountest.Fuzz(f, hem.Nouns()) }
