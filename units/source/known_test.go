package source_test

import (
	"strings"
	"testing"

	"example.com/clothyard/units/source"
)

func TestCite(t *testing.T) {
	for _, c := range []struct {
		cite  source.Cite
		parts []string
	}{
		{source.Practise("pressing"), []string{"pressing: common practice"}},
		{source.Cite{For: "cords", ID: "us-drawstring-rule", Place: "section 3", Known: source.Read}, []string{"cords: 16 CFR part 1120", "2011", ", section 3 (read)"}},
		{source.Cite{For: "cords", ID: "us-drawstring-rule", Known: source.Memory}, []string{"(memory)"}},
		{source.Cite{For: "cords", ID: "no-such", Known: source.Computed}, []string{"cords: computed"}},
		{source.Cite{For: "cords"}, []string{"cords: unknown"}},
	} {
		for _, part := range c.parts {
			if got := c.cite.Text(); !strings.Contains(got, part) {
				t.Errorf("%q lacks %q", got, part)
			}
		}
	}
	if _, ok := source.Lookup("no-such"); ok {
		t.Error("a source is found that is not there")
	}
}

func TestKnown(t *testing.T) {
	for k, want := range []string{"unknown", "read", "memory", "common practice", "computed", "known(5)"} {
		if got := source.Known(k).String(); got != want {
			t.Errorf("Known %d is %s", k, got)
		}
	}
	for _, k := range []source.Known{source.Unknown, source.Read, source.Memory, source.Practice, source.Computed} {
		text, err := k.MarshalText()
		if err != nil {
			t.Fatal(err)
		}
		back := source.Known(9)
		if err := back.UnmarshalText(text); err != nil || back != k {
			t.Errorf("%s reads back as %v, %v", text, back, err)
		}
	}
}
