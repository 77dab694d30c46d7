package safety_test

import (
	"strings"
	"testing"

	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/safety"
	"example.com/clothyard/units/source"
)

func TestHandbook(t *testing.T) {
	nountest.Handbook(t, "testdata/handbook.csv", nil, map[string]nountest.Sum{"law": law})
	nountest.Accounted(t, "testdata", "SL001-SL051 ST001-ST009")
}

// law is a limit of the law.
func law(given map[string]string) (map[string]any, error) {
	for l := range safety.Limits() {
		if l.ID == given["id"] {
			return map[string]any{"length": l.Length, "exempt": l.Exempt, "none": l.None, "from": l.From, "below": l.Below, "newton": l.Newton}, nil
		}
	}
	return nil, nil
}

func TestLimits(t *testing.T) {
	ids := map[string]bool{}
	for l := range safety.Limits() {
		if l.Rule == "" || l.Item == "" || ids[l.ID] {
			t.Errorf("%+v", l)
		}
		if s, _ := source.Lookup(l.Source); s.Rank != source.Law {
			t.Errorf("%s rests on %q", l.ID, s)
		}
		ids[l.ID] = true
	}
	for _, c := range []struct {
		months  int
		with    string
		without string
	}{
		{0, "", "small-parts-age us-neck-cord eu-waist-cord"},
		{1, "small-parts-buttons button-pull eu-neck-cord-young", "us-neck-cord eu-neck-cord"},
		{35, "small-parts-buttons us-neck-cord us-waist-cord", "eu-neck-cord"},
		{36, "us-neck-cord eu-neck-cord-young", "small-parts-buttons button-pull"},
		{84, "eu-neck-cord us-neck-cord", "eu-neck-cord-young"},
		{168, "us-waist-cord", "eu-neck-cord eu-waist-cord us-neck-cord"},
		{400, "", "us-waist-cord eu-waist-cord"},
	} {
		got := map[string]bool{}
		for l := range safety.Limits() {
			if !l.At(c.months) {
				continue
			}
			got[l.ID] = true
		}
		for _, id := range strings.Fields(c.with) {
			if !got[id] || !ids[id] {
				t.Errorf("%d months: no %s", c.months, id)
			}
		}
		for _, id := range strings.Fields(c.without) {
			if got[id] || !ids[id] {
				t.Errorf("%d months: %s", c.months, id)
			}
		}
	}
}

// The rule of the United States is for sizes 2 to 12 at the neck, 2 to 16 below; the
// country of every limit is named.
func TestCountry(t *testing.T) {
	for l := range safety.Limits() {
		if l.Source == "us-drawstring-rule" && (l.From != 24 || l.Neck != (l.Below == 156) || !l.Neck && l.Below != 204) {
			t.Errorf("%+v", l)
		}
		if l.Country() == "" || l.Tail && l.None == !l.Length.IsZero() || l.Below > 0 && l.Below <= l.From {
			t.Errorf("%+v", l)
		}
	}
}
