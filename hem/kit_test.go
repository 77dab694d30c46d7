package hem_test

import (
	"reflect"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

func l(text string) units.Length {
	if text == "" {
		return units.Length{}
	}
	return units.MustParse(text + " in")
}

// of is the hem of a text as [hemOf] reads it, which must be one.
func of(text string) hem.Any {
	h, err := hemOf(text)
	if err != nil {
		panic(err)
	}
	return h
}

// planned is a plan that cannot fail.
func planned(t *testing.T, text string) hem.Plan {
	t.Helper()
	p, err := of(text).Plan()
	if err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return p
}

// every is a hem of each kind and of each way that the sheet can go.
func every() map[string]hem.Any {
	return map[string]hem.Any{
		"single":              of("single; depth=1 in; sweep=40 in"),
		"single, short":       of("single; depth=1 in; drafted=3/4 in; slope=slope 5/64; edges=4; sweep=40 in"),
		"single, shallow":     of("single; depth=1/4 in; slope=slope 5/64; edges=4"),
		"double":              of("double; depth=1 in"),
		"double, equal":       of("double; first=3/8 in; depth=3/8 in; drafted=1 1/4 in; cut=3/4 in; slope=slope 5/64; edges=4; sweep=49 3/4 in"),
		"double, long":        of("double; first=3/8 in; depth=3/8 in; drafted=1 1/4 in; cut=1 1/2 in; slope=slope 5/64; edges=4; sweep=49 3/4 in"),
		"double, pegged":      of("double; first=3/8 in; depth=1 in; drafted=2 in; slope=slope -1/16; edges=2; sweep=30 in"),
		"double, trimmed":     of("double; first=3/8 in; depth=1/4 in; trim=1/4 in"),
		"double, on the line": of("double; drafted=2 in"),
		"narrow":              of("narrow; slope=slope 5/64; edges=2"),
		"narrow, equal":       of("narrow; depth=3/8 in"),
		"narrow, baby":        of("narrow; first=1/2 in; trim=1/8 in"),
		"blind":               of("blind; depth=2 in; slope=slope 5/64; edges=2"),
		"blind, turned under": of("blind; first=3/8 in; depth=5/8 in; drafted=1 in; sweep=60 in"),
		"rolled":              of("rolled; circle=1/4 turn"),
		"rolled, deep":        of("rolled; depth=1/4 in"),
		"faced":               of("faced; depth=2 in; drafted=5/8 in; favour=1/16 in; slope=slope 5/64; edges=4; sweep=40 in"),
		"faced, plain":        of("faced; depth=2 in"),
		"faced, pegged":       of("faced; depth=2 in; seam=1/2 in; first=1/2 in; slope=slope -1/16; edges=4"),
		"bias-faced":          of("bias-faced; depth=1 in; seam=1/4 in; drafted=1 in; spare=1/8 in; circle=1/2 turn; hollow=1/4 turn; sweep=40 in"),
		"bound":               of("bound; depth=1/4 in; drafted=5/8 in; circle=1/4 turn"),
		"bound, left on":      of("bound; depth=1/2 in; seam=1/4 in; first=1/4 in; cut=1/8 in; slope=slope 5/64; edges=2; sweep=40 in; spare=1/8 in"),
		"bound, doubled":      of("double-bound; depth=1/4 in; hollow=1/2 turn; slope=slope -1/16; edges=2"),
		"shirt-tail":          of("shirt-tail; drafted=5/8 in; circle=1/2 turn; hollow=1/3 turn; sweep=49 in"),
		"shirt-tail, hollow":  of("shirt-tail; depth=3/8 in; hollow=1/3 turn"),
		"circular":            of("circular; radius=34 in"),
		"circular, half":      of("circular; depth=1 in; first=1/4 in; drafted=1 in; circle=1/2 turn; radius=34 in"),
		"turn-up":             of("turn-up; depth=1 1/2 in; slope=slope -1/16; edges=2; sweep=18 in"),
		"turn-up, straight":   of("turn-up; depth=1 1/2 in; first=1 in; drafted=4 in"),
		"slit, tucked":        of("slit; depth=3/16 in; slit=3 in; sweep=17 1/2 in"),
		"slit, faced":         of("slit; first=3/16 in; depth=3/16 in; faced=true"),
		"slit, lapping":       of("seam-slit; first=3/16 in; depth=3/16 in; drafted=5/8 in; seamTake=7/16 in; slit=3 in; sweep=17 1/2 in"),
		"slit, gaping":        of("seam-slit; first=1/4 in; depth=1/4 in; drafted=5/8 in; cut=1/2 in; seamTake=7/16 in"),
		"slit, meeting":       of("seam-slit; first=3/16 in; depth=1/4 in; seamTake=7/16 in"),
	}
}

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
		"elastic, headed":      {Kind: hem.ElasticCasing, Width: l("3/4"), Heading: units.Give(l("1/8")), Drafted: l("1")},
		"elastic, applied":     {Kind: hem.ElasticCasing, Applied: true, Width: l("3/4"), Ease: l("1/2"), Around: l("28")},
		"elastic, applied, no": {Kind: hem.ElasticCasing, Applied: true, Width: l("3/4"), Heading: units.Give(l("1/16"))},
		"cord":                 {Kind: hem.CordCasing, Width: l("3/8"), Around: l("24"), Tail: l("6"), Heading: units.Give(l("1"))},
		"cord, child":          {Kind: hem.CordCasing, Width: l("3/8"), Around: l("24"), Tail: l("6"), Months: 60},
		"cord, within":         {Kind: hem.CordCasing, Width: l("3/8"), Tail: l("2"), Months: 60},
		"cord, neck":           {Kind: hem.CordCasing, Width: l("3/8"), Months: 60, Neck: true},
		"cord, adult":          {Kind: hem.CordCasing, Width: l("3/8"), Months: 400, Neck: true},
		"rod":                  {Kind: hem.RodCasing, Width: l("1"), Ease: l("1"), Turn: l("1/2"), Heading: units.Give(l("2"))},
		"rod, default":         {Kind: hem.RodCasing, Width: l("1")},
		"rod, too tight":       {Kind: hem.RodCasing, Width: l("1"), Ease: l("1/4")},
		"rod, girth":           {Kind: hem.RodCasing, Girth: l("3"), Ease: l("1/2")},
	}
}

func mitres() map[string]hem.Mitre {
	even := hem.HemSide{First: units.Give(l("1/4")), Depth: l("1")}
	return map[string]hem.Mitre{
		"square":             {A: even},
		"square, unequal":    {A: even, B: hem.HemSide{First: units.Give(l("1/2")), Depth: l("2")}},
		"sharp":              {A: even, Lean: units.Slope(units.RatioOf(1, 2))},
		"sharp, exact":       {A: even, B: hem.HemSide{Depth: l("2")}, Lean: units.Slope(units.RatioOf(3, 4)), Trim: l("3/8")},
		"blunt":              {A: hem.HemSide{Depth: l("1")}, B: hem.HemSide{Depth: l("3/4")}, Lean: units.Slope(units.RatioOf(-1, 3))},
		"blunt, left on":     {A: hem.HemSide{Depth: l("1/4")}, Lean: units.Slope(units.RatioOf(-4, 1)), Trim: l("1/2")},
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

// A spec has the fields of all kinds, by the names that they have there, so that a test
// can make hems of every kind alike. Slopes are tangents, curves parts of a turn.
type spec struct {
	Kind                                             string
	Drafted, Cut, First, Depth, Take, Trim, Stitch   units.Length
	Back, Seam, Favour, Spare, Sweep, Slit, SeamTake units.Length
	Slope, Circle, Hollow                            units.Ratio
	Edges                                            int
}

// hem is the hem of the spec, in which only fields are given that the kind has.
func (s spec) hem() hem.Any {
	var a hem.Any
	to := reflect.ValueOf(a.Begin(s.Kind))
	from := reflect.ValueOf(s)
	for i := 1; i < from.NumField(); i++ {
		field := to.Elem().FieldByName(from.Type().Field(i).Name)
		if !field.IsValid() {
			continue
		}
		switch x := from.Field(i).Interface().(type) {
		case units.Ratio:
			if from.Type().Field(i).Name == "Slope" && !x.IsZero() {
				field.Set(reflect.ValueOf(units.Slope(x)))
			} else if !x.IsZero() {
				field.Set(reflect.ValueOf(units.Turns(x)))
			}
		default:
			if !from.Field(i).IsZero() {
				field.Set(from.Field(i))
			}
		}
	}
	a.Choose(to.Interface())
	return a
}

func (s spec) plan() (hem.Plan, error) { return s.hem().Plan() }

// specOf is the spec of a hem.
func specOf(a hem.Any) spec {
	s := spec{Kind: a.Kind()}
	from, to := reflect.ValueOf(a.Hem), reflect.ValueOf(&s).Elem()
	for i := 1; i < to.NumField(); i++ {
		field := from.FieldByName(to.Type().Field(i).Name)
		if !field.IsValid() {
			continue
		}
		angle, ok := field.Interface().(units.Angle)
		if !ok {
			to.Field(i).Set(field)
			continue
		}
		part, _ := angle.InTurns().Exact()
		if tan, err := angle.Tan(); to.Type().Field(i).Name == "Slope" && err == nil {
			part, _ = tan.Exact()
		}
		to.Field(i).Set(reflect.ValueOf(part))
	}
	return s
}

// stripOf is the strip of a facing or a binding; an empty one for other kinds.
func stripOf(p hem.Plan) hem.Strip {
	for _, s := range p.Strips {
		return s
	}
	return hem.Strip{}
}
