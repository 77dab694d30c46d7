package buttons_test

import (
	"slices"
	"strings"
	"testing"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// cited reports whether a row names a source that is in the list, or none where
// it claims none.
func cited(src string, k source.Known) bool {
	if k == source.Read || k == source.Memory {
		_, ok := source.Lookup(src)
		return ok
	}
	return src == "" && (k == source.Practice || k == source.Computed)
}

func TestHoleRules(t *testing.T) {
	n := 0
	for r := range buttons.HoleRules {
		n++
		if !cited(r.Source, r.Known) || r.Outline == buttons.NoOutline || r.Name == "" {
			t.Errorf("%+v", r)
		}
		if c, err := r.Length(long("1 in"), long("1/8 in")).Cmp(units.Exactly(long("1 in"))); err != nil || c < 0 {
			t.Errorf("%s: shorter than the button, %v", r.Name, err)
		}
	}
	for range buttons.HoleRules {
		break
	}
}

func TestLapRules(t *testing.T) {
	n := 0
	for r := range buttons.LapRules {
		n++
		if !cited(r.Source, r.Known) || r.Name == "" || r.Lap(long("1 in")).Less(long("1/2 in")) {
			t.Errorf("%+v", r)
		}
		if n == 1 {
			// The first row is the default of a Lap.
			lPlan, err := buttons.Lap{Diameter: long("7/8 in"), Setting: buttons.Vertical}.Plan()
			l := lPlan.Spec
			if err != nil || l.Lap != r.Lap(long("7/8 in")) {
				t.Errorf("default %v, %v", l.Lap, err)
			}
		}
	}
	if n != 6 {
		t.Errorf("%d rows", n)
	}
	for range buttons.LapRules {
		break
	}
}

func TestSpacings(t *testing.T) {
	for s := range buttons.Spacings {
		if !cited(s.Source, s.Known) || s.Item == "" || s.Least.IsZero() && s.Most.IsZero() || !s.Most.IsZero() && s.Most.Less(s.Least) {
			t.Errorf("%+v", s)
		}
	}
	for range buttons.Spacings {
		break
	}
}

func TestUses(t *testing.T) {
	n := 0
	for u := range buttons.Uses {
		n++
		if !cited(u.Source, u.Known) || u.Where == "" || u.Least < 1 || u.Most < u.Least {
			t.Errorf("%+v", u)
		}
	}
	if n != 13 {
		t.Errorf("%d rows", n)
	}
	for range buttons.Uses {
		break
	}
	for range buttons.LigneRows {
		break
	}
	for range buttons.LignesAt(40) {
		break
	}
}

func TestLimits(t *testing.T) {
	ids := map[string]bool{}
	for l := range buttons.Limits {
		if !cited(l.Source, l.Known) || l.Rule == "" || l.Item == "" || ids[l.ID] {
			t.Errorf("%+v", l)
		}
		if s, _ := source.Lookup(l.Source); s.Rank != source.Law {
			t.Errorf("%s rests on %q", l.ID, s)
		}
		ids[l.ID] = true
	}
	for range buttons.Limits {
		break
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
		for l := range buttons.LimitsAt(c.months) {
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
	if len(ids) != 23 {
		t.Errorf("%d rows", len(ids))
	}
	for range buttons.LimitsAt(12) {
		break
	}
}

// A sheet cites the rules for the age of the wearer, up to the month in which they
// end, and none where no age is given.
func TestRulesCitedByAge(t *testing.T) {
	parts := []string{"us-small-parts-rule", "eu-infant-button-strength"}
	cords := []string{"us-drawstring-rule", "eu-cords-standard"}
	sleep := []string{"us-sleepwear-small-rule", "us-sleepwear-rule", "uk-nightwear-regulations"}
	for months, want := range map[int][]string{
		0:   nil,
		1:   slices.Concat(parts, cords, sleep),
		35:  slices.Concat(parts, cords, sleep),
		36:  slices.Concat(cords, sleep),
		167: slices.Concat(cords, sleep),
		168: cords,
		203: cords,
		204: nil,
	} {
		p, err := buttons.Stock{Have: 9, Places: []buttons.Placement{{Name: "front", Count: 5}}, Months: months}.Plan()
		if err != nil {
			t.Fatal(err)
		}
		var got []string
		for _, c := range p.Sheet().Sources {
			if s, _ := source.Lookup(c.ID); s.Rank == source.Law {
				got = append(got, c.ID)
			}
		}
		if !slices.Equal(got, want) {
			t.Errorf("%d months: %q, want %q", months, got, want)
		}
	}
}
