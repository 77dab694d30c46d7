package hem_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

func TestFaultsOfCasings(t *testing.T) {
	for _, test := range []struct {
		why  string
		s    hem.Casing
		want []string
		err  error
	}{
		{"nothing", hem.Casing{}, []string{"kind: not given, want one of elastic, drawstring, rod"}, fault.Missing},
		{"all wrong", hem.Casing{Kind: 9, Drafted: l("-1"), Width: l("-1"), Girth: l("-1"), Ease: l("-1"), Tunnel: l("-1"), Turn: l("-1"), Heading: units.Give(l("-1")), Lower: l("-1"),
			Around: l("-1"), End: l("-1"), Tail: l("-1"), Months: -1},
			[]string{
				"kind kind of casing(9): not known, want one of elastic, drawstring, rod", "drafted -1 in: wrong sign, want 0 in or more", "width -1 in: wrong sign, want 0 in or more",
				"girth -1 in: wrong sign, want 0 in or more", "ease -1 in: wrong sign, want 0 in or more", "tunnel -1 in: wrong sign, want 0 in or more", "turn -1 in: wrong sign, want 0 in or more",
				"heading -1 in: wrong sign, want 0 in or more", "lower -1 in: wrong sign, want 0 in or more", "around -1 in: wrong sign, want 0 in or more", "end -1 in: wrong sign, want 0 in or more",
				"tail -1 in: wrong sign, want 0 in or more", "months -1: out of range, want 0 to 1500",
			}, fault.Unknown},
		{"nothing to hold", hem.Casing{Kind: hem.ElasticCasing}, []string{"width: not given, want more than 0 in"}, fault.Missing},
		{"no room in the tunnel", hem.Casing{Kind: hem.ElasticCasing, Tunnel: l("1/4")}, []string{"tunnel 1/4 in: out of range, want more than 1/4 in (ease)"}, fault.Range},
		{"a tunnel too narrow", hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Tunnel: l("3/4")}, []string{"tunnel 3/4 in: out of range, want at least 1 in (width)"}, fault.Range},
		{"a tunnel that disagrees", hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Ease: l("1/4"), Tunnel: l("2")},
			[]string{"tunnel 2 in: disagrees with what else is given, want 1 1/4 in (width + ease)"}, fault.Conflict},
		{"a tunnel too narrow for the rod", hem.Casing{Kind: hem.RodCasing, Girth: l("3"), Tunnel: l("1")}, []string{"tunnel 1 in: out of range, want at least 1 1/2 in (half of girth)"}, fault.Range},
		{"a rod's tunnel that disagrees", hem.Casing{Kind: hem.RodCasing, Girth: l("3"), Ease: l("1"), Tunnel: l("3")},
			[]string{"tunnel 3 in: disagrees with what else is given, want 2 in (half of girth + ease)"}, fault.Conflict},
		{"a tunnel round less than nothing", hem.Casing{Kind: hem.ElasticCasing, Width: l("-1"), Tunnel: l("2"), Ease: l("1/4")}, []string{"width -1 in: wrong sign, want 0 in or more"}, fault.Sign},
		{"a rod measured twice", hem.Casing{Kind: hem.RodCasing, Girth: l("3"), Width: l("1")}, []string{"width 1 in: not used here, want none for a rod of which girth is given"}, fault.Unused},
		{"what an elastic does not have", hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Girth: l("1"), End: l("1"), Tail: l("1"), Neck: true, Months: 9},
			[]string{
				"girth 1 in: not used here, want none for elastic", "end 1 in: not used here, want none for a casing folded down", "tail 1 in: not used here, want none for elastic",
				"neck true: not used here, want false for elastic", "months 9: not used here, want none for elastic",
			}, fault.Unused},
		{"an opening beside eyelets", hem.Casing{Kind: hem.CordCasing, Width: l("1"), Opening: l("2")}, []string{"opening 2 in: not used here, want none for drawstring"}, fault.Unused},
		{"an opening beside open ends", hem.Casing{Kind: hem.RodCasing, Width: l("1"), Opening: l("2")}, []string{"opening 2 in: not used here, want none for rod"}, fault.Unused},
		{"an opening less than none", hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Opening: l("-2")}, []string{"opening -2 in: wrong sign, want 0 in or more"}, fault.Sign},
		{"a strip with an allowance", hem.Casing{Kind: hem.CordCasing, Applied: true, Width: l("1"), Drafted: l("1"), Months: math.MaxInt32},
			[]string{"drafted 1 in: not used here, want none for an applied casing", "months 2147483647: out of range, want 0 to 1500"}, fault.Range},
		{"a strip without a heading", hem.Casing{Kind: hem.ElasticCasing, Applied: true, Width: l("1"), Heading: units.Give(units.Length{})},
			[]string{"heading 0 in: out of range, want more than 0 in, or the row does not catch the turn"}, fault.Range},
	} {
		refuse(t, test.why, test.s, hem.Casing.Plan, test.want, test.err)
	}
}

// TestCasingRows: a casing has room for its turns, and its rows catch them.
func TestCasingRows(t *testing.T) {
	folded := hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Ease: l("1/4")}
	strip := folded
	strip.Applied = true
	with := func(s hem.Casing, set func(*hem.Casing)) hem.Casing { set(&s); return s }
	for _, c := range []struct {
		why  string
		s    hem.Casing
		want string // none where it is well
	}{
		{"turned to the finished edge", with(folded, func(s *hem.Casing) { s.Turn = l("1 3/8") }), ""},
		{"turned past it", with(folded, func(s *hem.Casing) { s.Turn = l("1 25/64") }),
			"turn 1 25/64 in: out of range, want at most 1 3/8 in (heading + tunnel + lower)"},
		{"a strip turned until its edges meet", with(strip, func(s *hem.Casing) { s.Turn = l("3/4") }), ""},
		{"and past each other", with(strip, func(s *hem.Casing) { s.Turn = l("49/64") }),
			"turn 49/64 in: out of range, want at most 3/4 in (half of heading + tunnel + lower)"},
		{"the lower row within the turn", with(folded, func(s *hem.Casing) { s.Lower = l("15/64") }), ""},
		{"on its raw edge", with(folded, func(s *hem.Casing) { s.Lower = l("1/4") }),
			"lower 1/4 in: out of range, want less than 1/4 in (turn), or the row does not catch the turn"},
		{"a wider turn", with(folded, func(s *hem.Casing) { s.Lower, s.Turn = l("1/4"), l("3/8") }), ""},
		{"any heading that is folded", with(folded, func(s *hem.Casing) { s.Heading = units.Give(l("2")) }), ""},
		{"a strip, both rows within the turns", with(strip, func(s *hem.Casing) { s.Heading, s.Lower = units.Give(l("15/64")), l("15/64") }), ""},
		{"both beyond", with(strip, func(s *hem.Casing) { s.Heading, s.Lower = units.Give(l("1/4")), l("3/8") }),
			"heading 1/4 in: out of range, want less than 1/4 in (turn), or the row does not catch the turn\n" +
				"lower 3/8 in: out of range, want less than 1/4 in (turn), or the row does not catch the turn"},
		{"a turn too deep is no limit", with(folded, func(s *hem.Casing) { s.Turn, s.Lower = l("9"), l("2") }),
			"turn 9 in: out of range, want at most 3 1/4 in (heading + tunnel + lower)"},
	} {
		p, err := c.s.Plan()
		if err == nil {
			_, err = p.Sections(units.Length{})
		}
		got := ""
		if err != nil {
			got = err.Error()
		}
		if d := cmp.Diff(c.want, got); d != "" {
			t.Errorf("%s:\n%s", c.why, d)
		}
	}
	// The turn is a quarter inch by default, or what there is room for.
	for _, c := range []struct {
		s    hem.Casing
		turn string
	}{
		{hem.Casing{Kind: hem.CordCasing, Width: l("1/16"), Ease: l("1/16")}, "1/8"},
		{hem.Casing{Kind: hem.CordCasing, Width: l("1/8"), Ease: l("1/8"), Applied: true}, "1/8"},
		{hem.Casing{Kind: hem.CordCasing, Width: l("1/8"), Ease: l("1/8")}, "1/4"},
		{hem.Casing{Kind: hem.CordCasing, Width: l("1/4"), Ease: l("1/4"), Applied: true}, "1/4"},
	} {
		p, err := c.s.Plan()
		if err != nil || p.Spec.Turn != l(c.turn) || !slices.Contains(p.Assumed, "turn") {
			t.Errorf("%+v: turned %v, %v", c.s, p.Spec.Turn, err)
		}
		if i := slices.IndexFunc(p.Sheet().Sources, func(c source.Cite) bool { return strings.HasPrefix(c.For, "turn of the raw edge") }); i < 0 ||
			(p.Sheet().Sources[i].Known == source.Read) != (c.turn == "1/4") {
			t.Errorf("%+v: %v", c.s, p.Sheet().Sources)
		}
	}
}

// TestCasingRowsInside: a row lies inside the fold that it holds down, where it is
// not given too, and within the turn so that it catches it.
func TestCasingRowsInside(t *testing.T) {
	add := func(name string, s hem.Casing) {
		p, err := s.Plan()
		if err != nil {
			t.Errorf("%s: %v", name, err)
			return
		}
		below := p.Depth.Sub(p.FinishedToLower)
		if below.Sign() <= 0 || !below.Less(p.RawToFold) {
			t.Errorf("%s: the lower row lies %v inside the fold, of a turn of %v", name, below, p.RawToFold)
		}
		if s.Applied && (p.FinishedToUpper.Sign() <= 0 || !p.FinishedToUpper.Less(p.RawToFold)) {
			t.Errorf("%s: the upper row lies %v inside the edge, of a turn of %v", name, p.FinishedToUpper, p.RawToFold)
		}
		ds, err := p.Sections(units.Length{})
		if err != nil {
			t.Errorf("%s: %v", name, err)
			return
		}
		for _, row := range ds[0].Stitches {
			if at := row.From.X; at.Cmp(p.Depth.Neg()) <= 0 || at.Sign() >= 0 {
				t.Errorf("%s: the %s is drawn at %v, of a casing of %v", name, row.Name, at, p.Depth)
			}
		}
	}
	for name, s := range casings() {
		add(name, s)
	}
	for k := range hem.CasingKinds() {
		for _, applied := range []bool{false, true} {
			add(k.String(), hem.Casing{Kind: k, Applied: applied, Width: l("1/2")})
			add(k.String()+", a small turn", hem.Casing{Kind: k, Applied: applied, Width: l("1/2"), Turn: l("1/8")})
			add(k.String()+", tiny", hem.Casing{Kind: k, Applied: applied, Width: l("1/32")})
		}
	}
}

// TestCasingWayIn: a casing that is closed all round has a way in, which is made
// before it is threaded; what is left open for threading is closed last.
func TestCasingWayIn(t *testing.T) {
	find := func(sheet ticket.Sheet, what string) int {
		return slices.IndexFunc(sheet.Steps, func(s ticket.Step) bool { return strings.Contains(s.Do, what) })
	}
	for name, s := range casings() {
		p, err := s.Plan()
		if err != nil {
			t.Fatal(err)
		}
		sheet := p.Sheet()
		lower, thread := find(sheet, "Stitch the lower row"), max(find(sheet, "Thread"), find(sheet, "Put the rod"))
		open, eyelets, shut := find(sheet, "Mark an opening"), find(sheet, "eyelets"), find(sheet, "Close the opening")
		if lower < 0 || thread < lower {
			t.Errorf("%s: %d, %d\n%s", name, lower, thread, sheet.Text())
		}
		switch {
		case s.Kind == hem.RodCasing:
			if open >= 0 || eyelets >= 0 || shut >= 0 || !p.Spec.Opening.IsZero() {
				t.Errorf("%s: a curtain's casing is open at its ends\n%s", name, sheet.Text())
			}
		case s.Kind == hem.CordCasing && !p.Barred:
			if eyelets < 0 || lower < eyelets || open >= 0 || shut >= 0 || !p.Spec.Opening.IsZero() {
				t.Errorf("%s: no eyelets before the casing is closed\n%s", name, sheet.Text())
			}
		default:
			if open < 0 || lower < open || shut != len(sheet.Steps)-1 || shut < thread || eyelets >= 0 || strings.Contains(sheet.Steps[lower].Do, "all round") {
				t.Errorf("%s: no opening that is closed last\n%s", name, sheet.Text())
			}
			if p.Spec.Opening.Less(l("2")) || p.Spec.Opening.Less(s.Width.Add(l("1/2"))) || open >= 0 && sheet.Steps[open].At != ticket.Long(p.Spec.Opening) {
				t.Errorf("%s: opening %v", name, p.Spec.Opening)
			}
		}
	}
	p, err := hem.Casing{Kind: hem.ElasticCasing, Width: l("3")}.Plan()
	if err != nil || p.Spec.Opening != l("3 1/2") || !slices.Contains(p.Assumed, "opening") || !strings.Contains(p.Sheet().Text(), "more than the elastic: common practice") {
		t.Errorf("a wide elastic has an opening of %v, %v", p.Spec.Opening, err)
	}
}

// TestRodGoesThrough: a rod of which nothing but its diameter, the measure round it
// or its tunnel is given goes through its casing.
func TestRodGoesThrough(t *testing.T) {
	for _, given := range []string{"1/16", "1/8", "1/4", "3/8", "1/2", "3/4", "1", "1 3/8", "2", "3", "12", "1000"} {
		for what, s := range map[string]hem.Casing{
			"diameter": {Kind: hem.RodCasing, Width: l(given)},
			"girth":    {Kind: hem.RodCasing, Girth: l(given)},
			"tunnel":   {Kind: hem.RodCasing, Tunnel: l(given)},
		} {
			p, err := s.Plan()
			if err != nil {
				t.Errorf("%s %s: %v", what, given, err)
				continue
			}
			if lo, _ := p.Room.Bounds(); lo.Sign() <= 0 || !slices.Contains(p.Assumed, "ease") {
				t.Errorf("%s %s: tunnel %v, room %v, assumed %v", what, given, p.Spec.Tunnel, p.Room, p.Assumed)
			}
			if text := p.Sheet().Text(); strings.Contains(text, "does not go through") {
				t.Errorf("%s %s:\n%s", what, given, text)
			}
		}
	}
}

// TestRodJustGoesThrough: a tunnel of half the measure round the rod has no room to
// spare, but none is lacking.
func TestRodJustGoesThrough(t *testing.T) {
	for tunnel, want := range map[string]string{
		"2":      "room to spare round the rod, laid flat",
		"2 1/16": "room to spare round the rod, laid flat",
	} {
		p, err := hem.Casing{Kind: hem.RodCasing, Girth: l("4"), Tunnel: l(tunnel)}.Plan()
		if err != nil {
			t.Fatal(err)
		}
		sheet := p.Sheet()
		if !slices.ContainsFunc(sheet.Lines, func(l ticket.Line) bool { return l.Label == want }) {
			t.Errorf("%s in: no %q in\n%v", tunnel, want, sheet.Lines)
		}
		for _, c := range sheet.Cautions {
			if strings.Contains(c.Text, "does not go through") {
				t.Errorf("%s in: %s", tunnel, c.Text)
			}
		}
	}
}

// TestCordRules: a rule on the cords of children's clothes is cited from the month
// that it begins to the last month before it ends, and only for the part of the
// garment that it is about.
func TestCordRules(t *testing.T) {
	const us, eu = "us-drawstring-rule", "eu-cords-standard"
	for _, test := range []struct {
		months int
		neck   bool
		want   []string
		barred bool
		most   string
	}{
		{1, true, []string{eu}, true, "0 in"},
		{23, true, []string{eu}, true, "0 in"},
		{24, true, []string{us, eu}, true, "0 in"},
		{83, true, []string{us, eu}, true, "0 in"},
		{84, true, []string{us, eu}, true, "75 mm"},
		{155, true, []string{us, eu}, true, "75 mm"},
		{156, true, []string{eu}, false, "75 mm"},
		{167, true, []string{eu}, false, "75 mm"},
		{168, true, nil, false, "0 in"},
		{23, false, []string{eu}, false, "140 mm"},
		{24, false, []string{us, eu}, false, "3 in"},
		{167, false, []string{us, eu}, false, "3 in"},
		{168, false, []string{us}, false, "3 in"},
		{203, false, []string{us}, false, "3 in"},
		{204, false, nil, false, "0 in"},
		{0, true, nil, false, "0 in"},
	} {
		p, err := hem.Casing{Kind: hem.CordCasing, Width: l("1/4"), Months: test.months, Neck: test.neck}.Plan()
		if err != nil {
			t.Fatal(err)
		}
		var got []string
		for _, c := range p.Sheet().Sources {
			if c.ID == us || c.ID == eu {
				got = append(got, c.ID)
			}
		}
		if d := cmp.Diff(test.want, got); d != "" || p.Barred != test.barred || p.TailMost != units.MustParse(test.most) {
			t.Errorf("%d months, neck %v: barred %v, at most %v\n%s", test.months, test.neck, p.Barred, p.TailMost, d)
		}
	}
}

// TestCord: which limit holds for which age; the strictest that is known.
func TestCord(t *testing.T) {
	mm := units.Millimetre.Of
	for _, test := range []struct {
		months int
		neck   bool
		most   units.Length
		barred bool
	}{
		{0, true, units.Length{}, false}, {0, false, units.Length{}, false},
		{12, true, units.Length{}, true}, {12, false, mm(140), false},
		{24, false, l("3"), false}, {83, true, units.Length{}, true},
		{84, true, mm(75), true}, // one rule allows 75 mm, the other none
		{155, true, mm(75), true}, {156, true, mm(75), false}, {167, true, mm(75), false}, {168, true, units.Length{}, false},
		{167, false, l("3"), false}, {203, false, l("3"), false}, {204, false, units.Length{}, false},
	} {
		p, err := hem.Casing{Kind: hem.CordCasing, Width: l("1/4"), Months: test.months, Neck: test.neck, Tail: l("4")}.Plan()
		if err != nil || p.TailMost != test.most || p.Barred != test.barred {
			t.Errorf("%d months, neck %t: %v %t %v", test.months, test.neck, p.TailMost, p.Barred, err)
		}
		over := units.Length{}
		if !test.most.IsZero() && test.most.Less(l("4")) {
			over = l("4").Sub(test.most)
		}
		if p.Over != over {
			t.Errorf("%d months, neck %t: %v over, want %v", test.months, test.neck, p.Over, over)
		}
		text := strings.Join(strings.Fields(p.Sheet().Text()), " ")
		if want := "is not allowed: it catches"; strings.Contains(text, want) != test.barred {
			t.Errorf("%d months, neck %t: %s", test.months, test.neck, text)
		}
		// Where a rule forbids the cord the sheet does not tell how to thread one.
		if strings.Contains(text, "Thread the cord") == test.barred {
			t.Errorf("%d months, neck %t: threads it", test.months, test.neck)
		}
	}
}

// TestCasingSolves: any two of what is held, its ease and the tunnel give the third.
func TestCasingSolves(t *testing.T) {
	whole := hem.Casing{Tape: units.InchTape, Kind: hem.ElasticCasing, Width: l("1"), Ease: l("1/8"), Tunnel: l("1 1/8"), Turn: l("1/4"), Lower: l("1/8"), Opening: l("2"), Drafted: l("1 1/2")}
	for _, drop := range []func(*hem.Casing){
		func(*hem.Casing) {}, func(s *hem.Casing) { s.Width = units.Length{} }, func(s *hem.Casing) { s.Ease = units.Length{} }, func(s *hem.Casing) { s.Tunnel = units.Length{} },
	} {
		s := whole
		drop(&s)
		if p, err := s.Plan(); err != nil || p.Spec != whole {
			t.Errorf("%+v: %+v %v", s, p.Spec, err)
		}
	}
	rod := hem.Casing{Tape: units.InchTape, Kind: hem.RodCasing, Girth: l("3"), Ease: l("1/2"), Tunnel: l("1 3/4"), Turn: l("1/4"), Lower: l("1/8"), Drafted: l("2")}
	s := rod
	s.Ease = units.Length{}
	if p, err := s.Plan(); err != nil || p.Spec != rod {
		t.Errorf("%+v %v", p.Spec, err)
	}
	p, err := hem.Casing{Kind: hem.ElasticCasing, Tunnel: l("1")}.Plan()
	if err != nil || p.Spec.Width != l("3/4") || strings.Join(p.Assumed, " ") != "tape drafted ease turn lower opening" {
		t.Errorf("%+v %v", p, err)
	}
}

// TestCasingEdges: a casing for which nothing was drafted has no drift, a rod that
// just goes round is not refused, and the greatest age is an age.
func TestCasingEdges(t *testing.T) {
	p, err := hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Turn: l("1/2"), Heading: units.Give(l("3/8")), Lower: l("1/8")}.Plan()
	if err != nil || !p.Drift.IsZero() || p.Spec.Drafted != l("2 1/4") {
		t.Errorf("%+v %v", p, err)
	}
	p, err = hem.Casing{Kind: hem.RodCasing, Girth: l("3"), Tunnel: l("1 1/2")}.Plan()
	if err != nil || !p.Room.IsZero() || strings.Contains(p.Sheet().Text(), "does not go through") {
		t.Errorf("%+v %v", p, err)
	}
	if _, err = (hem.Casing{Kind: hem.CordCasing, Width: l("1"), Months: hem.MaxMonths}).Plan(); err != nil {
		t.Error(err)
	}
}
