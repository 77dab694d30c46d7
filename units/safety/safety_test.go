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

// TestCautions: what is said goes by the age, defers to the law, and is cited.
func TestCautions(t *testing.T) {
	for _, c := range []struct {
		months int
		words  string // of the cautions, in order
		cites  string
	}{
		{0, "give the wearer's age", ""},
		{35, "knotted shank|no knots or toggles|sleepwear", "us-small-parts-rule eu-infant-button-strength us-drawstring-rule eu-cords-standard us-sleepwear-small-rule us-sleepwear-rule uk-nightwear-regulations"},
		{36, "no knots or toggles|sleepwear", "us-drawstring-rule eu-cords-standard us-sleepwear-small-rule us-sleepwear-rule uk-nightwear-regulations"},
		{168, "no knots or toggles", "us-drawstring-rule eu-cords-standard"},
		{204, "", ""},
	} {
		got := safety.Cautions(nil, c.months)
		words := strings.FieldsFunc(c.words, func(r rune) bool { return r == '|' })
		if len(got) != len(words) {
			t.Fatalf("%d months: %v", c.months, got)
		}
		for i, w := range words {
			if !strings.Contains(got[i].Text, w) || !strings.HasSuffix(got[i].Refer, safety.Decides) {
				t.Errorf("%d months: %q, want %q", c.months, got[i], w)
			}
		}
		var ids []string
		for _, cite := range safety.Cites(nil, c.months) {
			if _, ok := source.Lookup(cite.ID); !ok || cite.Known != source.Read {
				t.Errorf("%d months: %v", c.months, cite)
			}
			ids = append(ids, cite.ID)
		}
		if strings.Join(ids, " ") != c.cites {
			t.Errorf("%d months: cites %v, want %s", c.months, ids, c.cites)
		}
	}
}

// TestTails: the free ends of a cord by the age and the place: none at the neck of a
// small child, 75 mm at the neck and 140 mm below for an older one in Europe, 3 in below
// in the United States.
func TestTails(t *testing.T) {
	for _, c := range []struct {
		months int
		neck   bool
		want   string
	}{
		{60, true, "none none"}, {100, true, "none 75 mm"}, {100, false, "3 in 140 mm"}, {180, false, "3 in"}, {400, false, ""}, {0, true, ""},
	} {
		var got []string
		for l := range safety.Tails(c.months, c.neck) {
			if l.None {
				got = append(got, "none")
			} else {
				got = append(got, l.Length.String())
			}
		}
		if strings.Join(got, " ") != c.want {
			t.Errorf("%d months, neck %t: %q, want %s", c.months, c.neck, got, c.want)
		}
	}
}
