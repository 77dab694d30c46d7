package hem_test

import (
	"strings"
	"testing"
	"unicode"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// every is one spec of each kind and of each way that the sheet can go.
func TestSheet(t *testing.T) {
	kinds := map[string]bool{}
	for _, s := range every() {
		kinds[s.Kind()] = true
	}
	for name, sheet := range sheets(t) {
		if err := sheet.Check(); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if sheet.Title == "" || len(sheet.Lines) < 3 || len(sheet.Steps) < 4 || len(sheet.Cautions) < 2 {
			t.Errorf("%s: %+v", name, sheet)
		}
		checks := 0
		for _, step := range sheet.Steps {
			if step.Do == "" || step.At.IsZero() != (step.From == "") {
				t.Errorf("%s: %+v", name, step)
			}
			if !step.Check.Want.IsZero() {
				checks++
				if step.Check.What == "" || step.Check.Mend == "" {
					t.Errorf("%s: %+v", name, step.Check)
				}
			}
			// Measures are amounts, so prose has no figures.
			for _, text := range []string{step.Do, step.From, step.Press, step.Note, step.Check.What, step.Check.Mend} {
				if strings.ContainsFunc(text, unicode.IsDigit) {
					t.Errorf("%s: a figure in %q", name, text)
				}
			}
		}
		if checks == 0 {
			t.Errorf("%s: nothing to check", name)
		}
		for _, l := range sheet.Lines {
			if len(l.Terms) == 0 {
				if strings.HasPrefix(name, "mitre: ") {
					continue // the root of a sum of roots is stated
				}
				t.Errorf("%s: no working for %s", name, l.Label)
			} else if l.Terms[0].Op != ticket.Plus {
				t.Errorf("%s: %s begins with %s", name, l.Label, l.Terms[0].Op)
			}
		}
		for _, c := range sheet.Sources {
			if _, found := source.Lookup(c.ID); !found && c.Known != source.Practice && c.Known != source.Computed {
				t.Errorf("%s: %+v", name, c)
			}
		}
	}
	for k := range hem.Kinds() {
		if !kinds[k.Kind()] {
			t.Errorf("no sheet of %s", k.Kind())
		}
	}
}

// source is how a source is written on a sheet.
func src(id string) string {
	s, _ := source.Lookup(id)
	return s.Title
}

// TestSheetSays looks for what each sheet must not leave out.
func TestSheetSays(t *testing.T) {
	specs := every()
	for name, wants := range map[string][]string{
		"single":              {"Single hem", "overcast, bind or pink", "blind-stitch", "doubles each"},
		"single, short":       {"shorter than drafted", "garment comes out shorter", "2 x 1 in depth x 5/64 slope", "- 5/64 in drift"},
		"double":              {"Double hem\n", "Assumed: tape, drafted, cut, first, take, stitch", src("cotton-dress-bulletin"), "another pair of turns, towel"},
		"double, equal":       {"equal turns", "15/64 in", "to cut off the allowance drafted: 1/2 in", "shrink it", "5/16 in from the finished edge", "trebles each"},
		"double, long":        {"left on beyond the allowance", "longer than drafted", "garment comes out longer by: 3/4 in"},
		"double, pegged":      {"too short to lie flat", "turned cloth too short by"},
		"double, trimmed":     {"Stitch a row for the first fold", "trim: to 1/4 in", src("baby-hem-article")},
		"double, on the line": {"finished edge on the drafted line"},
		"narrow":              {"another pair of turns, baby hem", "lose its fullness"},
		"narrow, equal":       {"more than is usual", "equal turns, so that", src("garment-hem-course")},
		"slit, tucked":        {"Hem round a cut slit", "tapers to nothing", "RIGHT SIDES TOGETHER", "= 16 3/4 in", "no cloth to turn", "not with snips", "hem to sew: 6 in"},
		"slit, faced":         {"Face the top"},
		"slit, lapping":       {"opening left in a seam", "1/16 in = 7/16 in taken by the seam - 3/8 in", "pass the line of the seam and lap", "18 in = 17 1/2 in"},
		"slit, gaping":        {"gape", "stand back"},
		"slit, meeting":       {"meet on the line"},
	} {
		p, err := specs[name].Plan()
		if err != nil {
			t.Fatal(err)
		}
		text := strings.Join(strings.Fields(p.Sheet().Text(units.Notation{})), " ")
		for _, want := range wants {
			if !strings.Contains(text+"\n", strings.TrimSpace(want)) {
				t.Errorf("%s: does not say %q\n%s", name, want, text)
			}
		}
	}
}

// TestFacedFirst: the facing of a slit is sewn before its sides are turned, the
// tuck after.
func TestFacedFirst(t *testing.T) {
	at := func(name, verb string) int {
		p, err := every()[name].Plan()
		if err != nil {
			t.Fatal(err)
		}
		for i, step := range p.Sheet().Steps {
			if strings.HasPrefix(step.Do, verb) {
				return i
			}
		}
		t.Fatalf("%s: no step %q", name, verb)
		return 0
	}
	if at("slit, faced", "Face") > at("slit, faced", "Turn in") || at("slit, tucked", "Fold") < at("slit, tucked", "Stitch the hem") {
		t.Error("out of order")
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
		"casing: rod, too tight": {"The rod does not go through", "room too little for the rod"},
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
	for want, s := range map[string]string{
		"reaches above the turn-up":                "turn-up; depth=1 in; first=2 in",
		"wider than the facing is deep":            "bias-faced; depth=1/2 in; seam=5/8 in",
		"on the concave ones":                      "bias-faced; depth=1 in; circle=1/4 turn; hollow=1/4 turn",
		"or lay it in small pleats":                "faced; depth=1 in; circle=1/4 turn",
		"seam of a facing on the drafted":          "faced; depth=1 in; drafted=1/4 in",
		"comes out shorter than drafted":           "faced; depth=1 in; drafted=1/4 in; seam=1/2 in",
		"or cut the facing to the shape":           "faced; depth=1 in; hollow=1/4 turn",
		"binding to lose":                          "bound; depth=1 in; slope=slope -1/4; edges=2",
		"flat round the concave curves":            "single; depth=1 in; hollow=1/4 turn",
		"round a circle of the depth and the roll": "faced; depth=1 in; favour=1/16 in; circle=1/4 turn",
	} {
		if text := strings.Join(strings.Fields(planned(t, s).Sheet().Text()), " "); !strings.Contains(strings.ToLower(text), want) {
			t.Errorf("%s: does not say %q", s, want)
		}
	}
}
