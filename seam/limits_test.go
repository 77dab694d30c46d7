package seam_test

import (
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// Each fault says what would have been right.
func TestLimits(t *testing.T) {
	type S = seam.Spec
	for _, c := range []struct {
		spec S
		want string
	}{
		{S{Kind: seam.FlatFelled, First: in(5, 8), Second: in(3, 8), Turned: in(3, 8)}, "turned 3/8 in: disagrees with what else is given, want 1/4 in (first less second)"},
		{S{Kind: seam.FlatFelled, First: in(5, 8), Second: in(5, 8)}, "second 5/8 in: raw edge would show, want less than 5/8 in (first), to leave an edge to turn in"},
		{S{Kind: seam.FlatFelled, Turned: in(3, 8)}, "turned 3/8 in: would not lie flat, want at most 5/16 in (half of first)"},
		{S{Kind: seam.FlatFelled, First: in(5, 8), Second: in(3, 8), Trim: in(3, 8)}, "trim 3/8 in: raw edge would show, want less than 3/8 in (second)"},
		{S{Kind: seam.MockFrench, Trim: in(1, 2), Second: in(3, 16)}, "second 3/16 in: would not lie flat, want at least 1/4 in (half of trim), or trim trimmed to 3/8 in at most"},
		{S{Kind: seam.UntrimmedFell, First: in(1, 4), Turned: in(3, 8)}, "turned 3/8 in: would not lie flat, want at most 1/4 in (first)"},
		{S{Kind: seam.UntrimmedFell, Cut: in(3, 8), CutUnder: in(3, 8), First: in(1, 4)}, "cutUnder 3/8 in: out of range, want at least 1/2 in (what the seam takes)"},
		{S{Kind: seam.Welt, Second: in(5, 8)}, "second 5/8 in: out of range, want less than 5/8 in (first), to catch the wide allowance"},
		{S{Kind: seam.Lapped, Second: in(1, 2), Row: in(1, 2)}, "row 1/2 in: out of range, want less than 1/2 in (second), to catch both allowances"},
		{S{Kind: seam.Lapped, First: in(3, 8), Row: in(1, 2)}, "row 1/2 in: out of range, want less than 3/8 in (first), to catch both allowances"},
		{S{Kind: seam.LappedTurned, Turned: in(1, 2)}, "turned 1/2 in: raw edge would show, want less than 5/12 in (two thirds of first)"},
		{S{Kind: seam.LappedTurned, Second: in(5, 4)}, "second 1 1/4 in: raw edge would show, want more than 5/12 in and less than 1 1/4 in (two thirds of first, and twice first)"},
		{S{Kind: seam.LappedTurned, First: in(5, 8), Second: in(1, 2), Turned: in(1, 4)}, "turned 1/4 in: disagrees with what else is given, want 3/8 in (first less half of second)"},
		{S{Kind: seam.LappedRaw, First: in(5, 8), Second: in(5, 8)}, "second 5/8 in: disagrees with what else is given, want 1 1/4 in (twice first)"},
		{S{Kind: seam.Slot, Second: in(5, 8)}, "second 5/8 in: out of range, want less than 5/8 in (trim), to catch the allowance"},
		{S{Kind: seam.Slot, Strip: in(9, 16)}, "strip 9/16 in: out of range, want at least 5/8 in (to be caught by both rows)"},
		{S{Kind: seam.HongKong, Second: in(5, 8)}, "second 5/8 in: out of range, want less than 5/8 in (what is left of the allowance to bind)"},
		{S{Kind: seam.HongKong, Strip: in(3, 4), Thickness: in(1, 32)}, "strip 3/4 in: raw edge would show, want more than 25/32 in (for its under edge to be caught)"},
		{S{Kind: seam.SelfBound, Turned: in(5, 16)}, "turned 5/16 in: would not lie flat, want less than 5/16 in (half of first)"},
		{S{Kind: seam.SelfBound, Second: in(1, 8)}, "second 1/8 in: would not lie flat, want more than 5/32 in and less than 5/16 in (a quarter and half of first)"},
		{S{Kind: seam.SelfBound, Turned: in(9, 32), Trim: in(1, 8)}, "turned 9/32 in: would not lie flat, want at most 1/4 in (the first fold meets the trimmed edge)"},
		{S{Kind: seam.SelfBound, First: in(5, 8), Turned: in(1, 4), Second: in(1, 4)}, "turned 1/4 in: disagrees with what else is given, want 1/8 in (first less twice second)"},
		{S{Kind: seam.Graded, Trim: in(1, 4), TrimUnder: in(1, 4)}, "trimUnder 1/4 in: out of range, want less than 1/4 in (trim)"},
		{S{Kind: seam.Graded, TrimUnder: in(1, 32)}, "trimUnder 1/32 in: out of range, want at least 1.5 mm (cloth that holds)"},
		{S{Kind: seam.Graded, TrimUnder: in(1, 16), Fraying: true}, "trimUnder 1/16 in: out of range, want at least 3 mm (cloth that frays)"},
		{S{Kind: seam.Graded, Layers: 7}, "layers 7: out of range, want 2 to 6"},
		{S{Kind: seam.French, Layers: 2}, "layers 2: not used here, want none for french"},
		{S{Kind: seam.French, Aside: true}, "aside true: not used here, want false for french"},
		{S{Kind: seam.Welt, Finish: 7}, "finish Finish(7): not known, want one of overcast, zigzagged, pinked"},
	} {
		if _, err := c.spec.Plan(); err == nil || err.Error() != c.want {
			t.Errorf("got  %v\nwant %s", err, c.want)
		}
	}
}

// The least and the most to be left of each ply, for every kind as it is by default.
func TestTrimBounds(t *testing.T) {
	type bounds [4]units.Length // upper least and most, under least and most
	whole := in(5, 8)
	want := map[seam.Kind][2]bounds{ // in cloth that holds, and that frays
		seam.Plain:          {{in(1, 16), whole, in(1, 16), whole}, {in(1, 8), whole, in(1, 8), whole}},
		seam.French:         {{in(1, 16), in(3, 16), in(1, 16), in(3, 16)}, {in(1, 8), in(3, 16), in(1, 8), in(3, 16)}},
		seam.FlatFelled:     {{whole, whole, in(1, 16), in(5, 16)}, {whole, whole, in(1, 8), in(5, 16)}},
		seam.Bound:          {{in(1, 4), whole, in(1, 4), whole}, {in(1, 4), whole, in(1, 4), whole}},
		seam.TurnedStitched: {{in(1, 2), whole, in(1, 2), whole}, {in(1, 2), whole, in(1, 2), whole}},
		seam.MockFrench:     {{whole, whole, whole, whole}, {whole, whole, whole, whole}},
		seam.MockFelled:     {{whole, whole, in(1, 16), in(1, 4)}, {whole, whole, in(1, 8), in(1, 4)}},
		seam.UntrimmedFell:  {{in(1, 4), in(1, 4), in(1, 2), in(1, 2)}, {in(1, 4), in(1, 4), in(1, 2), in(1, 2)}},
		seam.Welt:           {{in(7, 16), whole, in(1, 16), in(5, 16)}, {in(1, 2), whole, in(1, 8), in(5, 16)}},
		seam.Lapped:         {{in(3, 16), whole, in(3, 16), whole}, {in(1, 4), whole, in(1, 4), whole}},
		seam.LappedTurned:   {{in(1, 16), in(7, 16), in(1, 16), in(7, 16)}, {in(1, 8), in(7, 16), in(1, 8), in(7, 16)}},
		seam.LappedRaw:      {{whole, whole, whole, whole}, {whole, whole, whole, whole}},
		seam.Slot:           {{in(5, 16), whole, in(5, 16), whole}, {in(3, 8), whole, in(3, 8), whole}},
		seam.Hairline:       {{in(1, 16), whole, in(1, 16), whole}, {in(1, 8), whole, in(1, 8), whole}},
		seam.HongKong:       {{in(1, 4), whole, in(1, 4), whole}, {in(1, 4), whole, in(1, 4), whole}},
		seam.SelfBound:      {{whole, whole, in(1, 16), in(1, 8)}, {whole, whole, in(1, 8), in(1, 8)}},
		seam.Piped:          {{in(1, 16), whole, in(1, 16), whole}, {in(1, 8), whole, in(1, 8), whole}},
		seam.Graded:         {{in(1, 8), whole, in(1, 16), in(1, 4)}, {in(1, 8), whole, in(1, 8), in(1, 4)}},
	}
	for k := range seam.Kinds {
		for i, frays := range []bool{false, true} {
			p := planned(t, seam.Spec{Kind: k, Fraying: frays})
			got := bounds{p.Upper.TrimMin, p.Upper.TrimMax, p.Under.TrimMin, p.Under.TrimMax}
			if got != want[k][i] {
				t.Errorf("%v, fraying %v: %v, want %v", k, frays, got, want[k][i])
			}
		}
	}
	// Where the usual margin is more than there is, the whole is the least.
	p := planned(t, seam.Spec{Kind: seam.Lapped, First: in(3, 16), Second: in(1, 4), Row: in(5, 32), Fraying: true})
	if got := (bounds{p.Upper.TrimMin, p.Upper.TrimMax, p.Under.TrimMin, p.Under.TrimMax}); got != (bounds{in(3, 16), in(3, 16), in(1, 4), in(1, 4)}) {
		t.Errorf("a narrow lap: %v", got)
	}
	p = planned(t, seam.Spec{Kind: seam.Welt, First: in(5, 16), Second: in(9, 32)})
	if p.Upper.TrimMin != in(5, 16) || p.Under.TrimMax != in(7, 32) {
		t.Errorf("a narrow welt: %v and %v", p.Upper.TrimMin, p.Under.TrimMax)
	}
}

// What a sheet says beyond its figures depends on the kind and the measures.
func TestSheetWords(t *testing.T) {
	for _, c := range []struct {
		why  string
		spec seam.Spec
		has  string
		not  string
	}{
		{"a French swatch", seam.Spec{Kind: seam.French}, "the guide of the second pass", "lap the plies"},
		{"a lapped swatch", seam.Spec{Kind: seam.LappedRaw}, "lap the plies", "the guide of the row"},
		{"a welt swatch", seam.Spec{Kind: seam.Welt}, "the guide of the row", "lap the plies"},
		{"a snip that reaches the row", seam.Spec{Kind: seam.Plain, First: in(1, 4)}, "chalk or thread", "at all times"},
		{"a snip that does not", seam.Spec{Kind: seam.Plain, First: in(5, 16)}, "Stitch the seam", "chalk or thread"},
		{"plies cut unequally", seam.Spec{Kind: seam.Plain, DraftedUnder: in(1, 1), First: in(1, 2)}, "drafted lines lie apart", "lap the plies"},
		{"plies that give up unequal amounts", seam.Spec{Kind: seam.Lapped, DraftedUnder: in(1, 1)}, "turned under", "lie apart"},
		{"a strip past the seam", seam.Spec{Kind: seam.HongKong, Strip: in(3, 2)}, "Trim the under edge", "lap the plies"},
		{"a strip up to the seam", seam.Spec{Kind: seam.HongKong, Strip: in(9, 8)}, "Press the seam again", "Trim the under edge"},
		{"pressed to one side", seam.Spec{Kind: seam.Plain, Aside: true}, "both allowances to one side", "then open"},
		{"pressed open", seam.Spec{Kind: seam.Plain}, "then open", "to one side"},
		{"pinked", seam.Spec{Kind: seam.Plain, Finish: seam.Pinked}, "1/4 in from the raw edge", "Overcast"},
		{"pinked in a narrow allowance", seam.Spec{Kind: seam.Plain, Finish: seam.Pinked, First: in(1, 4)}, "1/8 in from the raw edge", "Zigzag"},
		{"zigzagged", seam.Spec{Kind: seam.Plain, Finish: seam.Zigzagged}, "Zigzag beside", "pink the"},
		{"overcast", seam.Spec{Kind: seam.Plain, Finish: seam.Overcast, Fraying: true}, "Overcast the raw edges", "overcast or bind"},
		{"figures that are printed", seam.Spec{Kind: seam.HongKong}, "figures as here: " + title(t, "couture-edge-page"), "figures as here: " + title(t, "sewing-essentials")},
		{"figures in a printed range", seam.Spec{Kind: seam.Welt}, "figures as here: " + title(t, "complete-guide-to-sewing"), "other figures"},
		{"figures outside it", seam.Spec{Kind: seam.Welt, Second: in(9, 16), Trim: in(1, 4)}, "other figures for this seam", "figures as here"},
		{"half for each pass, by default", seam.Spec{Kind: seam.French, Drafted: in(1, 1)}, "half of the allowance for each pass", "passes as here"},
		{"half for each pass, as given", seam.Spec{Kind: seam.French, First: in(5, 16), Second: in(5, 16)}, "second pass", "half of the allowance"},
		{"unequal passes by default", seam.Spec{Kind: seam.French}, "passes as here", "half of the allowance"},
		{"bound, trimmed", seam.Spec{Kind: seam.Bound, Trim: in(3, 8)}, "Trim both allowances to one edge", "nothing of the allowance"},
		{"bound, whole", seam.Spec{Kind: seam.Bound}, "Wrap the strip", "nothing of the allowance"},
		{"a rule without figures", seam.Spec{Kind: seam.Slot}, "the seam and its rule: common practice", "figures as here"},
	} {
		text := strings.Join(strings.Fields(planned(t, c.spec).Sheet().Text(units.Notation{})), " ")
		if !strings.Contains(text, c.has) || strings.Contains(text, c.not) {
			t.Errorf("%s: want %q and not %q in\n%s", c.why, c.has, c.not, text)
		}
	}
	if got := planned(t, seam.Spec{Kind: seam.UntrimmedFell}).Swatch().Check.Want; got != ticket.Long(in(45, 4)) {
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
