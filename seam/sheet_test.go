package seam_test

import (
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// The least and the most to be left of each ply, for every kind as it is by default.
func TestTrimBounds(t *testing.T) {
	type bounds [4]units.Length // upper least and most, under least and most
	whole := in(5, 8)
	want := map[string][2]bounds{ // in cloth that holds, and that frays
		"plain":               {{in(1, 16), whole, in(1, 16), whole}, {in(1, 8), whole, in(1, 8), whole}},
		"french":              {{in(1, 16), in(3, 16), in(1, 16), in(3, 16)}, {in(1, 8), in(3, 16), in(1, 8), in(3, 16)}},
		"flat-felled":         {{whole, whole, in(1, 16), in(5, 16)}, {whole, whole, in(1, 8), in(5, 16)}},
		"bound":               {{in(1, 4), whole, in(1, 4), whole}, {in(1, 4), whole, in(1, 4), whole}},
		"turned-and-stitched": {{in(1, 2), whole, in(1, 2), whole}, {in(1, 2), whole, in(1, 2), whole}},
		"mock-french":         {{whole, whole, whole, whole}, {whole, whole, whole, whole}},
		"mock-felled":         {{whole, whole, in(1, 16), in(1, 4)}, {whole, whole, in(1, 8), in(1, 4)}},
		"untrimmed-fell":      {{in(1, 4), in(1, 4), in(1, 2), in(1, 2)}, {in(1, 4), in(1, 4), in(1, 2), in(1, 2)}},
		"welt":                {{in(7, 16), whole, in(1, 16), in(5, 16)}, {in(1, 2), whole, in(1, 8), in(5, 16)}},
		"lapped":              {{in(3, 16), whole, in(3, 16), whole}, {in(1, 4), whole, in(1, 4), whole}},
		"lapped-turned":       {{in(1, 16), in(7, 16), in(1, 16), in(7, 16)}, {in(1, 8), in(7, 16), in(1, 8), in(7, 16)}},
		"lapped-raw":          {{whole, whole, whole, whole}, {whole, whole, whole, whole}},
		"slot":                {{in(5, 16), whole, in(5, 16), whole}, {in(3, 8), whole, in(3, 8), whole}},
		"hairline":            {{in(1, 16), whole, in(1, 16), whole}, {in(1, 8), whole, in(1, 8), whole}},
		"hong-kong":           {{in(1, 4), whole, in(1, 4), whole}, {in(1, 4), whole, in(1, 4), whole}},
		"self-bound":          {{whole, whole, in(1, 16), in(1, 8)}, {whole, whole, in(1, 8), in(1, 8)}},
		"piped":               {{in(1, 16), whole, in(1, 16), whole}, {in(1, 8), whole, in(1, 8), whole}},
		"graded":              {{in(1, 8), whole, in(1, 16), in(1, 4)}, {in(1, 8), whole, in(1, 8), in(1, 4)}},
	}
	for s := range seam.Kinds() {
		k := s.Kind()
		for i, frays := range []bool{false, true} {
			p := planned(t, s.With(seam.Allowance{Fraying: frays}))
			got := bounds{p.Upper.TrimMin, p.Upper.TrimMax, p.Under.TrimMin, p.Under.TrimMax}
			if got != want[k][i] {
				t.Errorf("%v, fraying %v: %v, want %v", k, frays, got, want[k][i])
			}
		}
	}
	// Where the usual margin is more than there is, the whole is the least.
	p := planned(t, seam.Lapped{Allowance: seam.Allowance{Fraying: true}, Turned: in(3, 16), Lap: in(1, 4), Row: in(5, 32)})
	if got := (bounds{p.Upper.TrimMin, p.Upper.TrimMax, p.Under.TrimMin, p.Under.TrimMax}); got != (bounds{in(3, 16), in(3, 16), in(1, 4), in(1, 4)}) {
		t.Errorf("a narrow lap: %v", got)
	}
	p = planned(t, seam.Welt{First: in(5, 16), Row: in(9, 32)})
	if p.Upper.TrimMin != in(5, 16) || p.Under.TrimMax != in(7, 32) {
		t.Errorf("a narrow welt: %v and %v", p.Upper.TrimMin, p.Under.TrimMax)
	}
}

// What a sheet says beyond its figures depends on the kind and the measures.
func TestSheetWords(t *testing.T) {
	for _, c := range []struct {
		why  string
		spec seam.Seam
		has  string
		not  string
	}{
		{"a French swatch", seam.French{}, "the guide of the second pass", "lap the plies"},
		{"a lapped swatch", seam.LappedRaw{}, "lap the plies", "the guide of the row"},
		{"a welt swatch", seam.Welt{}, "the guide of the row", "lap the plies"},
		{"a snip that reaches the row", seam.Plain{First: in(1, 4)}, "chalk or thread", "at all times"},
		{"a snip that does not", seam.Plain{First: in(5, 16)}, "Stitch the seam", "chalk or thread"},
		{"plies cut unequally", seam.Plain{Allowance: seam.Allowance{DraftedUnder: in(1, 1)}, First: in(1, 2)}, "drafted lines lie apart", "lap the plies"},
		{"plies that give up unequal amounts", seam.Lapped{Allowance: seam.Allowance{DraftedUnder: in(1, 1)}}, "turned under", "lie apart"},
		{"a strip past the seam", seam.HongKong{Strip: in(3, 2)}, "Trim the under edge", "lap the plies"},
		{"a strip up to the seam", seam.HongKong{Strip: in(9, 8)}, "Press the seam again", "Trim the under edge"},
		{"pressed to one side", seam.Plain{Aside: true}, "both allowances to one side", "then open"},
		{"pressed open", seam.Plain{}, "then open", "to one side"},
		{"pinked", seam.Plain{Finish: seam.Pinked}, "1/4 in from the raw edge", "Overcast"},
		{"pinked in a narrow allowance", seam.Plain{Finish: seam.Pinked, First: in(1, 4)}, "1/8 in from the raw edge", "Zigzag"},
		{"zigzagged", seam.Plain{Finish: seam.Zigzagged}, "Zigzag beside", "pink the"},
		{"overcast", seam.Plain{Allowance: seam.Allowance{Fraying: true}, Finish: seam.Overcast}, "Overcast the raw edges", "overcast or bind"},
		{"figures that are printed", seam.HongKong{}, "figures as here: " + title(t, "couture-edge-page"), "figures as here: " + title(t, "sewing-essentials")},
		{"figures in a printed range", seam.Welt{}, "figures as here: " + title(t, "complete-guide-to-sewing"), "other figures"},
		{"figures outside it", seam.Welt{Row: in(9, 16), Trim: in(1, 4)}, "other figures for this seam", "figures as here"},
		{"half for each pass, by default", seam.French{Allowance: seam.Allowance{Drafted: in(1, 1)}}, "half of the allowance for each pass", "passes as here"},
		{"half for each pass, as given", seam.French{First: in(5, 16), Second: in(5, 16)}, "second pass", "half of the allowance"},
		{"unequal passes by default", seam.French{}, "passes as here", "half of the allowance"},
		{"bound, trimmed", seam.Bound{Trim: in(3, 8)}, "Trim both allowances to one edge", "nothing of the allowance"},
		{"bound, whole", seam.Bound{}, "Wrap the strip", "nothing of the allowance"},
		{"a rule without figures", seam.Slot{}, "the seam and its rule: common practice", "figures as here"},
	} {
		text := strings.Join(strings.Fields(planned(t, c.spec).Sheet().Text(units.Notation{})), " ")
		if !strings.Contains(text, c.has) || strings.Contains(text, c.not) {
			t.Errorf("%s: want %q and not %q in\n%s", c.why, c.has, c.not, text)
		}
	}
	if got := planned(t, seam.UntrimmedFell{}).Swatch().Check.Want; got != ticket.Long(in(45, 4)) {
		t.Errorf("the swatch of an untrimmed fell measures %v", got)
	}
}

// title is how a sheet names a source.
func title(t *testing.T, id string) string {
	t.Helper()
	s, ok := source.Lookup(id)
	if !ok {
		t.Fatalf("no source %q", id)
	}
	return s.Title
}
