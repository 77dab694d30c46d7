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

func checkSheet(t *testing.T, sh ticket.Sheet) {
	t.Helper()
	if err := sh.Check(); err != nil {
		t.Error(err)
	}
	if sh.Title == "" || len(sh.Steps) == 0 || len(sh.Lines) == 0 || len(sh.Cautions) < 2 || len(sh.Sources) == 0 {
		t.Errorf("the sheet says too little: %+v", sh)
	}
	checked := false
	for _, st := range sh.Steps {
		for _, text := range []string{st.Do, st.Press, st.Note, st.Check.What, st.Check.Mend} {
			if strings.ContainsAny(text, "0123456789") {
				t.Errorf("a measure as text: %q", text)
			}
		}
		if st.Do == "" || (!st.At.IsZero() && st.From == "") {
			t.Errorf("step without its verb or its guide: %+v", st)
		}
		if st.Check.What != "" {
			checked = true
			if st.Check.Want.IsZero() || st.Check.Mend == "" {
				t.Errorf("a check that does not help: %+v", st.Check)
			}
		}
	}
	if !checked {
		t.Error("nothing is checked")
	}
	for _, c := range sh.Sources {
		if c.For == "" {
			t.Errorf("a citation for nothing: %+v", c)
		}
		if _, ok := source.Lookup(c.ID); !ok && (c.ID != "" || c.Known != source.Practice) {
			t.Errorf("no such source: %+v", c)
		}
	}
	for line := range strings.SplitSeq(sh.Text(units.Notation{}), "\n") {
		if len(line) > ticket.Columns {
			t.Errorf("a line too long: %q", line)
		}
	}
}

// someSeams are seams that between them reach every step and caution.
func someSeams() []seam.Seam {
	wide := seam.Allowance{Drafted: in(1, 1), DraftedUnder: in(5, 4), Cut: in(7, 8), CutUnder: in(3, 4), Fraying: true}
	all := []seam.Seam{
		seam.Plain{Allowance: seam.Allowance{Fraying: true}, Trim: in(3, 8)}, seam.Plain{Allowance: wide, First: in(7, 16)}, seam.Plain{Aside: true},
		seam.Plain{Allowance: seam.Allowance{Cut: in(1, 2)}}, seam.Plain{Allowance: seam.Allowance{CutUnder: in(1, 2)}, First: in(1, 4)},
		seam.French{Allowance: wide, First: in(3, 16), Second: in(1, 4)}, seam.French{First: in(3, 8), Second: in(3, 8)}, seam.French{Second: in(5, 32)},
		seam.French{First: in(1, 32), Second: in(1, 4)}, seam.French{Allowance: seam.Allowance{Thickness: in(1, 32)}, First: in(3, 16), Second: in(1, 4)},
		seam.FlatFelled{First: in(1, 2), Width: in(3, 8), Trim: in(11, 32)}, seam.FlatFelled{Allowance: wide, First: in(3, 8)}, seam.MockFelled{Allowance: wide, First: in(3, 8)},
		seam.Bound{Trim: in(3, 8), Width: in(3, 8)}, seam.Bound{Allowance: seam.Allowance{Drafted: units.Inch.Of(8)}}, seam.Bound{Allowance: wide, First: in(3, 8)},
		seam.TurnedStitched{Trim: in(5, 16)}, seam.MockFrench{Trim: in(5, 16)}, seam.UntrimmedFell{Allowance: seam.Allowance{Thickness: in(1, 32)}},
		seam.Welt{Allowance: wide, First: in(3, 8)}, seam.Welt{Finish: seam.Pinked}, seam.Slot{Finish: seam.Zigzagged}, seam.Slot{Trim: in(5, 16)},
		seam.Lapped{Row: in(1, 16)}, seam.LappedRaw{Lap: in(5, 8)}, seam.HongKong{Allowance: seam.Allowance{Thickness: in(1, 32)}}, seam.HongKong{Strip: in(3, 2), Trim: in(1, 2)},
		seam.SelfBound{Allowance: wide, First: in(1, 2)}, seam.Piped{Trim: in(5, 16)}, seam.Graded{Layers: seam.MaxLayers},
	}
	for s := range seam.Kinds() {
		all = append(all, s.Seam, s.With(seam.Allowance{Fraying: true}).Seam, s.With(seam.Allowance{Tape: units.MetricTape}).Seam)
	}
	return all
}

func TestSheets(t *testing.T) {
	for _, s := range someSeams() {
		checkSheet(t, planned(t, s).Sheet())
	}
	if sh := (seam.Plan{}).Sheet(); sh.Title != "No seam" || len(sh.Steps) > 0 {
		t.Errorf("the sheet of no seam: %+v", sh)
	}
}

func TestCautions(t *testing.T) {
	const (
		raw     = "The raw edges"
		smaller = "The seam takes more"
		tight   = "Very little cloth"
		near    = "The first row lies"
	)
	for _, c := range []struct {
		why  string
		spec seam.Seam
		want string // cautions after the two that every sheet has
	}{
		{"plain in cloth that holds", seam.Plain{}, ""},
		{"plain in cloth that frays", seam.Plain{Allowance: seam.Allowance{Fraying: true}}, raw},
		{"bound in cloth that frays", seam.Bound{Allowance: seam.Allowance{Fraying: true}}, ""},
		{"pinked in cloth that frays", seam.Plain{Allowance: seam.Allowance{Fraying: true}, Finish: seam.Pinked}, raw},
		{"overcast in cloth that frays", seam.Plain{Allowance: seam.Allowance{Fraying: true}, Finish: seam.Overcast}, ""},
		{"a welt in cloth that frays", seam.Welt{Allowance: seam.Allowance{Fraying: true}}, raw},
		{"a lapped seam in cloth that frays", seam.Lapped{Allowance: seam.Allowance{Fraying: true}}, raw},
		{"a hairline", seam.Hairline{}, "Too little is left"},
		{"an untrimmed fell", seam.UntrimmedFell{}, "The two plies give up"},
		{"an untrimmed fell cut for it", seam.UntrimmedFell{Allowance: seam.Allowance{Drafted: in(1, 4), DraftedUnder: in(1, 2)}}, ""},
		{"raw edges lapped by one allowance", seam.LappedRaw{Lap: in(5, 8)}, "A lap narrower"},
		{"a welt, tight", seam.Welt{Row: in(9, 32), Trim: in(1, 4)}, tight},
		{"smaller than drafted", seam.French{First: in(3, 8), Second: in(3, 8)}, smaller},
		{"French, just clear", seam.French{First: in(3, 8), Second: in(3, 16)}, ""},
		{"French, tight", seam.French{First: in(3, 8), Second: in(1, 4), Trim: in(13, 64)}, tight},
		{"French, near the raw edge", seam.French{Allowance: seam.Allowance{Fraying: true}, First: in(1, 16), Second: in(1, 4)}, near},
		{"fell, tight", seam.FlatFelled{First: in(5, 8), Width: in(3, 8), Trim: in(11, 32)}, tight},
	} {
		cautions := planned(t, c.spec).Sheet().Cautions
		if len(cautions) < 2 || cautions[0] != ticket.CutCare() || cautions[1] != ticket.IronCare() {
			t.Fatalf("%s: %+v", c.why, cautions)
		}
		rest := cautions[2:]
		switch {
		case c.want == "" && len(rest) > 0, c.want != "" && len(rest) != 1:
			t.Errorf("%s: %+v", c.why, rest)
		case c.want != "" && !strings.HasPrefix(rest[0].Text, c.want):
			t.Errorf("%s: %q", c.why, rest[0].Text)
		}
	}
}
