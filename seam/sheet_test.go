package seam_test

import (
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/ticket"
)

// sheetSpecs are specs that between them reach every step and caution.
func sheetSpecs() []seam.Spec {
	specs := []seam.Spec{
		{Kind: seam.Plain}, {Kind: seam.Plain, Fraying: true, Trim: in(3, 8)},
		{Kind: seam.Plain, Drafted: in(1, 1), DraftedUnder: in(5, 8), First: in(7, 16)},
		{Kind: seam.Plain, Drafted: in(5, 8), Cut: in(1, 2)},
		{Kind: seam.Plain, Drafted: in(5, 8), DraftedUnder: in(5, 8), Cut: in(1, 2), Take: in(1, 2)},
		{Kind: seam.Plain, CutUnder: in(1, 2), Take: in(1, 4)},
		{Kind: seam.French}, {Kind: seam.French, Drafted: in(5, 8), First: in(3, 16), Second: in(1, 4), Thickness: in(1, 32), Fraying: true},
		{Kind: seam.French, First: in(3, 8), Second: in(3, 8)}, {Kind: seam.French, First: in(1, 16), Second: in(1, 4)},
		{Kind: seam.French, Second: in(5, 32)}, {Kind: seam.French, Drafted: units.Millimetre.Of(15)}, {Kind: seam.French, First: in(1, 32), Second: in(1, 4)},
		{Kind: seam.French, Drafted: in(1, 1)}, {Kind: seam.FlatFelled, Drafted: in(7, 8)}, {Kind: seam.FlatFelled}, {Kind: seam.FlatFelled, First: in(1, 2), Second: in(3, 8), Trim: in(11, 32)},
		{Kind: seam.Bound}, {Kind: seam.Bound, Trim: in(3, 8), Second: in(3, 8)}, {Kind: seam.Bound, Drafted: units.Inch.Of(8)},
	}
	for k := range seam.Kinds {
		first := in(3, 8)
		if k == seam.SelfBound {
			first = in(1, 2)
		}
		specs = append(specs, seam.Spec{Kind: k}, seam.Spec{Kind: k, Fraying: true},
			seam.Spec{Kind: k, Drafted: in(1, 1), DraftedUnder: in(5, 4), Cut: in(7, 8), CutUnder: in(3, 4), First: first, Fraying: true})
		if k.Reads("trim") && k != seam.Welt && k != seam.SelfBound && k != seam.French {
			specs = append(specs, seam.Spec{Kind: k, Drafted: in(1, 1), Trim: in(5, 16)})
		}
		for f := range seam.Finishes {
			if k.Reads("finish") {
				specs = append(specs, seam.Spec{Kind: k, Finish: f, Fraying: true})
			}
		}
	}
	return append(specs, seam.Spec{Kind: seam.Plain, Aside: true}, seam.Spec{Kind: seam.HongKong, Thickness: in(1, 32)}, seam.Spec{Kind: seam.HongKong, Strip: in(3, 2)},
		seam.Spec{Kind: seam.Graded, Layers: seam.MaxLayers}, seam.Spec{Kind: seam.Lapped, Row: in(1, 16)}, seam.Spec{Kind: seam.LappedRaw, Second: in(5, 8)})
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

func TestSheets(t *testing.T) {
	for _, s := range sheetSpecs() {
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
		spec seam.Spec
		want string // cautions after the two that every sheet has
	}{
		{"plain in cloth that holds", seam.Spec{Kind: seam.Plain}, ""},
		{"plain in cloth that frays", seam.Spec{Kind: seam.Plain, Fraying: true}, raw},
		{"bound in cloth that frays", seam.Spec{Kind: seam.Bound, Fraying: true}, ""},
		{"pinked in cloth that frays", seam.Spec{Kind: seam.Plain, Fraying: true, Finish: seam.Pinked}, raw},
		{"overcast in cloth that frays", seam.Spec{Kind: seam.Plain, Fraying: true, Finish: seam.Overcast}, ""},
		{"a welt in cloth that frays", seam.Spec{Kind: seam.Welt, Fraying: true}, raw},
		{"a lapped seam in cloth that frays", seam.Spec{Kind: seam.Lapped, Fraying: true}, raw},
		{"a hairline", seam.Spec{Kind: seam.Hairline}, "Too little is left"},
		{"an untrimmed fell", seam.Spec{Kind: seam.UntrimmedFell}, "The two plies give up"},
		{"an untrimmed fell cut for it", seam.Spec{Kind: seam.UntrimmedFell, Drafted: in(1, 4), DraftedUnder: in(1, 2)}, ""},
		{"raw edges lapped by one allowance", seam.Spec{Kind: seam.LappedRaw, Second: in(5, 8)}, "A lap narrower"},
		{"a welt, tight", seam.Spec{Kind: seam.Welt, Second: in(9, 32), Trim: in(1, 4)}, tight},
		{"smaller than drafted", seam.Spec{Kind: seam.French, First: in(3, 8), Second: in(3, 8)}, smaller},
		{"French, just clear", seam.Spec{Kind: seam.French, First: in(3, 8), Second: in(3, 16)}, ""},
		{"French, tight", seam.Spec{Kind: seam.French, First: in(3, 8), Second: in(1, 4), Trim: in(13, 64)}, tight},
		{"French, near the raw edge", seam.Spec{Kind: seam.French, First: in(1, 16), Second: in(1, 4), Fraying: true}, near},
		{"fell, tight", seam.Spec{Kind: seam.FlatFelled, First: in(5, 8), Second: in(3, 8), Trim: in(11, 32)}, tight},
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
