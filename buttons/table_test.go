package buttons_test

import (
	"strings"
	"testing"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// cited reports whether a row names a source that is in the list, or none where
// it claims none.
func cited(source string, k ticket.Known) bool {
	if k == ticket.Read || k == ticket.Memory {
		_, ok := ticket.Lookup(source)
		return ok
	}
	return source == "" && (k == ticket.Practice || k == ticket.Computed)
}

func TestHoleRules(t *testing.T) {
	n := 0
	for r := range buttons.HoleRules {
		n++
		if !cited(r.Source, r.Known) || !r.Outline.Valid() || r.Name == "" {
			t.Errorf("%+v", r)
		}
		if c, err := r.Length(long("1 in"), long("1/8 in")).Cmp(units.Exactly(long("1 in"))); err != nil || c < 0 {
			t.Errorf("%s: shorter than the button, %v", r.Name, err)
		}
	}
	if n != 11 {
		t.Errorf("%d rows", n)
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
			l, err := buttons.Lap{Diameter: long("7/8 in"), Setting: buttons.Vertical}.Solve()
			if err != nil || l.Lap != r.Lap(long("7/8 in")) {
				t.Errorf("default %v, %v", l.Lap, err)
			}
		}
	}
	if n != 5 {
		t.Errorf("%d rows", n)
	}
	for range buttons.LapRules {
		break
	}
}

func TestSpacings(t *testing.T) {
	n := 0
	for s := range buttons.Spacings {
		n++
		if !cited(s.Source, s.Known) || s.Item == "" || s.Least.IsZero() && s.Most.IsZero() || !s.Most.IsZero() && s.Most.Less(s.Least) {
			t.Errorf("%+v", s)
		}
	}
	if n != 13 {
		t.Errorf("%d rows", n)
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
		if s, _ := ticket.Lookup(l.Source); s.Rank != ticket.Law {
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
