package hem_test

import (
	"strings"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
)

// TestPrintedComesOut: a strip that is printed in full is of the width printed, and
// what a child's garment is let out by is one growth tuck.
func TestPrintedComesOut(t *testing.T) {
	for r := range hem.Strips() {
		if r.Cut.IsZero() || r.Seam.IsZero() || r.Depth.IsZero() {
			continue
		}
		p, err := hem.Spec{Kind: r.Kind, Depth: r.Depth, Seam: r.Seam, First: r.Turn}.Plan()
		if err != nil || p.StripWidth != r.Cut {
			t.Errorf("%+v: %v %v", r, p.StripWidth, err)
		}
	}
	for r := range hem.Growths() {
		p, err := hem.Tucks{Kind: hem.GrowthTuck, Removed: r.Removed}.Plan()
		if err != nil || p.PerTuck != r.Removed {
			t.Errorf("%+v: %v", r, err)
		}
	}
	for r := range hem.CordLimits() {
		if r.None != r.Most.IsZero() || r.Below <= r.From {
			t.Error(r)
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
	p, err := hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Turn: l("1/2"), Heading: l("3/8"), Lower: l("1/8")}.Plan()
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

// TestTucksSolve: what follows from what.
func TestTucksSolve(t *testing.T) {
	whole := hem.Tucks{Tape: units.InchTape, Kind: hem.SpacedTuck, Depth: l("1/4"), Count: 9, Removed: l("4 1/2"), Pitch: l("1"), Edge: l("2"), Span: l("12")}
	for i, drop := range []func(*hem.Tucks){
		func(*hem.Tucks) {},
		func(s *hem.Tucks) { s.Depth = units.Length{} },
		func(s *hem.Tucks) { s.Count = 0 },
		func(s *hem.Tucks) { s.Count, s.Removed = 0, units.Length{} },
		func(s *hem.Tucks) { s.Count, s.Pitch = 0, units.Length{} },
		func(s *hem.Tucks) { s.Pitch = units.Length{} },
		func(s *hem.Tucks) { s.Span = units.Length{} },
		func(s *hem.Tucks) { s.Depth, s.Count = units.Length{}, 0 },
	} {
		s := whole
		drop(&s)
		if p, err := s.Plan(); err != nil || p.Spec != whole {
			t.Errorf("%d: %+v %v", i, p.Spec, err)
		}
		if p, err := s.Plan(); err != nil || len(p.Assumed) > 0 {
			t.Errorf("%d: %q %v", i, p.Assumed, err)
		}
	}
}

// TestMarksRound: places are rounded one by one and not step upon step; an early end
// is kept.
func TestMarksRound(t *testing.T) {
	p, err := hem.Tucks{Kind: hem.PinTuck, Count: 8, Span: l("12"), Edge: l("1/2")}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	sixteenth, half := units.Inch.Frac(1, 16), units.Inch.Frac(1, 32)
	n := 0
	for tuck := range p.Marks(sixteenth, units.HalfAway) {
		exact := p.FirstFold.Add(p.FlatPitch.MulInt(int64(n)))
		if tuck.Fold.Add(tuck.Off) != exact || half.Less(tuck.Off.Abs()) {
			t.Errorf("%+v, exactly at %v", tuck, exact)
		}
		if n++; n == 8 {
			break
		}
	}
	for range p.Marks(sixteenth, units.HalfAway) {
		break
	}
	if n != 8 {
		t.Errorf("%d marks", n)
	}
}

// TestNounsSay looks for what a sheet must not leave out.
func TestNounsSay(t *testing.T) {
	all := sheets(t)
	for name, wants := range map[string][]string{
		"blind":                  {"stands out beyond the fold", "1 3/4 in from the finished edge", "doubles each"},
		"blind, turned under":    {"trebles each"},
		"rolled, deep":           {"deeper than is usual", "most that a rolled hem is deep"},
		"faced":                  {"rolled inside", "1/16 in from the finished edge, inwards", "9/16 in seam + 1/16 in rolled"},
		"faced, plain":           {"with the grain", src("school-needlework")},
		"faced, pegged":          {"Stretch the free edge"},
		"bound":                  {"cut the whole allowance away", "to cut off the allowance drafted: 5/8 in", src("bias-binding-guideline")},
		"bound, left on":         {"stands out beyond the raw edge", "a neck or an armhole tighter"},
		"bound, doubled":         {"Fold the strip in half", "x 2 layers"},
		"shirt-tail":             {"convex curves only", "snip it to the first fold"},
		"circular":               {"hang it for a day", "a whole circle", "round the finished edge"},
		"turn-up":                {"Trouser turn-up", "too tight for the leg", "catch the turn-up", "1 1/2 in depth x 2 layers"},
		"tucks: spaced, meeting": {"The tucks meet"},
		"tucks: growth":          {"unpick one tuck for each size"},
		"tucks: pin":             {src("adding-tucks-page")},
		"tucks: blind":           {"over the stitching of the one before", src("sewing-lessons-model")},
		"casing: rod, too tight": {"The rod does not go through", "where there is too little"},
		"casing: cord, child":    {"longer than a rule allows", "at the limit or less = 3 in", src("us-drawstring-rule")},
		"casing: cord":           {"give the wearer's age", "length of the cord: 36 in"},
		"casing: cord, within":   {"keep the free ends within the limit"},
		"casing: elastic":        {"comes out longer"},
		"mitre: square":          {"2 x 1 in depth of the other hem", src("school-needlework")},
		"mitre: square, unequal": {"different depths"},
		"mitre: blunt, left on":  {"Leave the corner on"},
		"mitre: sharp":           {"long tongue"},
	} {
		sheet, ok := all[name]
		text := strings.ToLower(strings.Join(strings.Fields(sheet.Text(units.Notation{})), " "))
		for _, want := range wants {
			if !ok || !strings.Contains(text, strings.ToLower(want)) {
				t.Errorf("%s: does not say %q\n%s", name, want, text)
			}
		}
	}
	// A turn-up whose hem reaches above it, and a facing narrower than its seam.
	for want, s := range map[string]hem.Spec{
		"reaches above the turn-up":                {Kind: hem.TurnUp, Depth: l("1"), First: l("2")},
		"wider than the facing is deep":            {Kind: hem.BiasFaced, Depth: l("1/2"), Seam: l("5/8")},
		"on the concave ones":                      {Kind: hem.BiasFaced, Depth: l("1"), Circle: units.RatioOf(1, 4), Hollow: units.RatioOf(1, 4)},
		"or lay it in small pleats":                {Kind: hem.FacedHem, Depth: l("1"), Circle: units.RatioOf(1, 4)},
		"seam of a facing on the drafted":          {Kind: hem.FacedHem, Depth: l("1"), Drafted: l("1/4")},
		"comes out shorter than drafted":           {Kind: hem.FacedHem, Depth: l("1"), Drafted: l("1/4"), Seam: l("1/2")},
		"or cut the facing to the shape":           {Kind: hem.FacedHem, Depth: l("1"), Hollow: units.RatioOf(1, 4)},
		"binding to lose":                          {Kind: hem.Bound, Depth: l("1"), Slope: units.RatioOf(-1, 4), Edges: 2},
		"flat round the concave curves":            {Kind: hem.Single, Depth: l("1"), Hollow: units.RatioOf(1, 4)},
		"round a circle of the depth and the roll": {Kind: hem.FacedHem, Depth: l("1"), Favour: l("1/16"), Circle: units.RatioOf(1, 4)},
	} {
		if text := strings.Join(strings.Fields(plan(t, s).Sheet().Text()), " "); !strings.Contains(strings.ToLower(text), want) {
			t.Errorf("%s: does not say %q", s.Kind, want)
		}
	}
}
