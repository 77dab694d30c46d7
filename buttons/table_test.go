package buttons_test

import (
	"slices"
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
