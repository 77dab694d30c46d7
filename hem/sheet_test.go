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
func every() map[string]hem.Spec {
	flare, peg := units.RatioOf(5, 64), units.RatioOf(-1, 16)
	return map[string]hem.Spec{
		"single":              {Kind: hem.Single, Depth: l("1"), Sweep: l("40")},
		"single, short":       {Kind: hem.Single, Depth: l("1"), Drafted: l("3/4"), Slope: flare, Edges: 4, Sweep: l("40")},
		"single, shallow":     {Kind: hem.Single, Depth: l("1/4"), Slope: flare, Edges: 4},
		"double":              {Kind: hem.Double, Depth: l("1")},
		"double, equal":       {Kind: hem.Double, First: l("3/8"), Depth: l("3/8"), Drafted: l("1 1/4"), Cut: l("3/4"), Slope: flare, Edges: 4, Sweep: l("49 3/4")},
		"double, long":        {Kind: hem.Double, First: l("3/8"), Depth: l("3/8"), Drafted: l("1 1/4"), Cut: l("1 1/2"), Slope: flare, Edges: 4, Sweep: l("49 3/4")},
		"double, pegged":      {Kind: hem.Double, First: l("3/8"), Depth: l("1"), Drafted: l("2"), Slope: peg, Edges: 2, Sweep: l("30")},
		"double, trimmed":     {Kind: hem.Double, First: l("3/8"), Depth: l("1/4"), Trim: l("1/4")},
		"double, on the line": {Kind: hem.Double, Drafted: l("2")},
		"narrow":              {Kind: hem.Narrow, Slope: flare, Edges: 2},
		"narrow, equal":       {Kind: hem.Narrow, Depth: l("3/8")},
		"narrow, baby":        {Kind: hem.Narrow, First: l("1/2"), Trim: l("1/8")},
		"blind":               {Kind: hem.Blind, Depth: l("2"), Slope: flare, Edges: 2},
		"blind, turned under": {Kind: hem.Blind, First: l("3/8"), Depth: l("5/8"), Drafted: l("1"), Sweep: l("60")},
		"rolled":              {Kind: hem.Rolled, Circle: units.RatioOf(1, 4)},
		"rolled, deep":        {Kind: hem.Rolled, Depth: l("1/4")},
		"faced":               {Kind: hem.FacedHem, Depth: l("2"), Drafted: l("5/8"), Favour: l("1/16"), Slope: flare, Edges: 4, Sweep: l("40")},
		"faced, plain":        {Kind: hem.FacedHem, Depth: l("2")},
		"faced, pegged":       {Kind: hem.FacedHem, Depth: l("2"), Seam: l("1/2"), First: l("1/2"), Slope: peg, Edges: 4},
		"bias-faced":          {Kind: hem.BiasFaced, Depth: l("1"), Seam: l("1/4"), Drafted: l("1"), Spare: l("1/8"), Circle: units.RatioOf(1, 2), Hollow: units.RatioOf(1, 4), Sweep: l("40")},
		"bound":               {Kind: hem.Bound, Depth: l("1/4"), Drafted: l("5/8"), Circle: units.RatioOf(1, 4)},
		"bound, left on":      {Kind: hem.Bound, Depth: l("1/2"), Seam: l("1/4"), First: l("1/4"), Cut: l("1/8"), Slope: flare, Edges: 2, Sweep: l("40"), Spare: l("1/8")},
		"bound, doubled":      {Kind: hem.Bound, Depth: l("1/4"), Doubled: true, Hollow: units.RatioOf(1, 2), Slope: peg, Edges: 2},
		"shirt-tail":          {Kind: hem.ShirtTail, Drafted: l("5/8"), Circle: units.RatioOf(1, 2), Hollow: units.RatioOf(1, 3), Sweep: l("49")},
		"shirt-tail, hollow":  {Kind: hem.ShirtTail, Depth: l("3/8"), Hollow: units.RatioOf(1, 3)},
		"circular":            {Kind: hem.Circular, Radius: l("34")},
		"circular, half":      {Kind: hem.Circular, Depth: l("1"), First: l("1/4"), Drafted: l("1"), Circle: units.RatioOf(1, 2), Radius: l("34")},
		"turn-up":             {Kind: hem.TurnUp, Depth: l("1 1/2"), Slope: peg, Edges: 2, Sweep: l("18")},
		"turn-up, straight":   {Kind: hem.TurnUp, Depth: l("1 1/2"), First: l("1"), Drafted: l("4")},
		"slit, tucked":        {Kind: hem.Slit, Opening: hem.Tucked, Depth: l("3/16"), Slit: l("3"), Sweep: l("17 1/2")},
		"slit, faced":         {Kind: hem.Slit, Opening: hem.Faced, First: l("3/16"), Depth: l("3/16")},
		"slit, lapping":       {Kind: hem.Slit, Opening: hem.InSeam, First: l("3/16"), Depth: l("3/16"), Drafted: l("5/8"), SeamTake: l("7/16"), Slit: l("3"), Sweep: l("17 1/2")},
		"slit, gaping":        {Kind: hem.Slit, Opening: hem.InSeam, First: l("1/4"), Depth: l("1/4"), Drafted: l("5/8"), Cut: l("1/2"), SeamTake: l("7/16")},
		"slit, meeting":       {Kind: hem.Slit, Opening: hem.InSeam, First: l("3/16"), Depth: l("1/4"), SeamTake: l("7/16")},
	}
}

func TestSheet(t *testing.T) {
	kinds := map[hem.Kind]bool{}
	for _, s := range every() {
		kinds[s.Kind] = true
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
		if !kinds[k] {
			t.Errorf("no sheet of %s", k)
		}
	}
}

// source is how a source is written on a sheet.
func src(id string) string {
	s, _ := source.Lookup(id)
	return s.String()
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
