package buttons_test

import (
	"slices"
	"testing"

	"example.com/clothyard/buttons"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

// No rule makes a hole shorter than the button or a lap that does not cover half of it,
// and no range ends before it begins.
func TestRowsMakeSense(t *testing.T) {
	for r := range buttons.HoleRules() {
		if c, err := r.Length(long("1 in"), long("1/8 in")).Cmp(units.Exactly(long("1 in"))); err != nil || c < 0 {
			t.Errorf("%s: shorter than the button, %v", r.Name, err)
		}
	}
	for r := range buttons.LapRules() {
		if r.Lap(long("1 in")).Less(long("1/2 in")) {
			t.Errorf("%+v", r)
		}
	}
	for s := range buttons.Spacings() {
		if s.Least.IsZero() && s.Most.IsZero() || !s.Most.IsZero() && s.Most.Less(s.Least) {
			t.Errorf("%+v", s)
		}
	}
	for u := range buttons.Uses() {
		if u.Least < 1 || u.Most < u.Least {
			t.Errorf("%+v", u)
		}
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
