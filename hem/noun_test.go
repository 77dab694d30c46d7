package hem_test

import (
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// tucks, casings and mitres are one spec of each kind and of each way that the
// sheet can go.
func tucks() map[string]hem.Tucks {
	return map[string]hem.Tucks{
		"spaced":             {Kind: hem.SpacedTuck, Depth: l("1/2"), Count: 3, Pitch: l("1"), Edge: l("1")},
		"spaced, default":    {Kind: hem.SpacedTuck, Depth: l("1/4"), Count: 5},
		"spaced, meeting":    {Kind: hem.SpacedTuck, Depth: l("1/2"), Count: 4, Pitch: l("1/2"), Edge: l("1/2")},
		"spaced, alone":      {Kind: hem.SpacedTuck, Depth: l("1"), Count: 1, Edge: l("1 1/4"), Span: l("9")},
		"pin":                {Kind: hem.PinTuck, Count: 7, Span: l("5"), Edge: l("1")},
		"blind":              {Kind: hem.BlindTuck, Depth: l("1/2"), Count: 6, Edge: l("1/2")},
		"growth":             {Kind: hem.GrowthTuck, Removed: l("1 1/2"), Edge: l("2")},
		"growth, two":        {Kind: hem.GrowthTuck, Depth: l("1/2"), Count: 2, Edge: l("2")},
		"growth, from sizes": {Kind: hem.GrowthTuck, Depth: l("1/2"), Removed: l("3"), Edge: l("2")},
	}
}

func casings() map[string]hem.Casing {
	return map[string]hem.Casing{
		"elastic":              {Kind: hem.ElasticCasing, Width: l("1 1/2"), Ease: l("1/8"), Lower: l("1/8"), Drafted: l("2 1/2")},
		"elastic, default":     {Kind: hem.ElasticCasing, Width: l("3/4")},
		"elastic, headed":      {Kind: hem.ElasticCasing, Width: l("3/4"), Heading: l("1/8"), Drafted: l("1")},
		"elastic, applied":     {Kind: hem.ElasticCasing, Applied: true, Width: l("3/4"), Ease: l("1/2"), Around: l("28")},
		"elastic, applied, no": {Kind: hem.ElasticCasing, Applied: true, Width: l("3/4"), Heading: l("1/16")},
		"cord":                 {Kind: hem.CordCasing, Width: l("3/8"), Around: l("24"), Tail: l("6"), Heading: l("1")},
		"cord, child":          {Kind: hem.CordCasing, Width: l("3/8"), Around: l("24"), Tail: l("6"), Months: 60},
		"cord, within":         {Kind: hem.CordCasing, Width: l("3/8"), Tail: l("2"), Months: 60},
		"cord, neck":           {Kind: hem.CordCasing, Width: l("3/8"), Months: 60, Neck: true},
		"cord, adult":          {Kind: hem.CordCasing, Width: l("3/8"), Months: 400, Neck: true},
		"rod":                  {Kind: hem.RodCasing, Width: l("1"), Ease: l("1"), Turn: l("1/2"), Heading: l("2")},
		"rod, default":         {Kind: hem.RodCasing, Width: l("1")},
		"rod, too tight":       {Kind: hem.RodCasing, Width: l("1"), Ease: l("1/4")},
		"rod, girth":           {Kind: hem.RodCasing, Girth: l("3"), Ease: l("1/2")},
	}
}

func mitres() map[string]hem.Mitre {
	even := hem.HemSide{First: l("1/4"), Depth: l("1")}
	return map[string]hem.Mitre{
		"square":             {A: even},
		"square, unequal":    {A: even, B: hem.HemSide{First: l("1/2"), Depth: l("2")}},
		"sharp":              {A: even, Lean: units.RatioOf(1, 2)},
		"sharp, exact":       {A: even, B: hem.HemSide{Depth: l("2")}, Lean: units.RatioOf(3, 4), Trim: l("3/8")},
		"blunt":              {A: hem.HemSide{Depth: l("1")}, B: hem.HemSide{Depth: l("3/4")}, Lean: units.RatioOf(-1, 3)},
		"blunt, left on":     {A: hem.HemSide{Depth: l("1/4")}, Lean: units.RatioOf(-4, 1), Trim: l("1/2")},
		"square, all across": {A: hem.HemSide{Depth: l("1")}, Trim: l("3")},
	}
}

// sheets are the sheets of all of them, by name.
func sheets(t *testing.T) map[string]ticket.Sheet {
	t.Helper()
	out := map[string]ticket.Sheet{}
	add := func(name string, s ticket.Sheet, err error) {
		if err != nil {
			t.Errorf("%s: %v", name, err)
			return
		}
		out[name] = s
	}
	for name, s := range every() {
		p, err := s.Plan()
		add(name, p.Sheet(), err)
	}
	for name, s := range tucks() {
		p, err := s.Plan()
		add("tucks: "+name, p.Sheet(), err)
	}
	for name, s := range casings() {
		p, err := s.Plan()
		add("casing: "+name, p.Sheet(), err)
	}
	for name, s := range mitres() {
		p, err := s.Plan()
		add("mitre: "+name, p.Sheet(), err)
	}
	return out
}
