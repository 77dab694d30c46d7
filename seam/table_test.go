package seam_test

import (
	"slices"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

func checkCite(t *testing.T, c source.Cite) {
	t.Helper()
	_, ok := source.Lookup(c.ID)
	if c.For == "" || (!ok && (c.ID != "" || c.Known != source.Practice)) || (ok && c.Known != source.Read && c.Known != source.Memory) {
		t.Errorf("citation %+v", c)
	}
}

func TestEnclosed(t *testing.T) {
	rank := map[string]source.Rank{}
	n := 0
	for r := range seam.Enclosed {
		n++
		checkCite(t, r.Cite())
		for _, pair := range [][2]units.Length{{r.Total, r.TotalMost}, {r.First, r.FirstMost}, {r.Trim, r.TrimMost}, {r.Turn, r.TurnMost}, {r.Strip, r.StripMost}} {
			if !pair[1].IsZero() && !pair[0].Less(pair[1]) {
				t.Errorf("%+v: a range that is none", r)
			}
		}
		// Where all is printed the figures of a fell agree with each other.
		if r.Seam == "flat-felled" && !r.Turn.IsZero() && !r.Second.IsZero() && r.Second.Add(r.Turn) != r.First {
			t.Errorf("%+v: the fell does not add up", r)
		}
		if r.Seam == "french" && !r.Total.IsZero() && r.First.Add(r.Second) != r.Total {
			t.Errorf("%+v: the passes do not add up", r)
		}
		// Defaults take the first row that fits, so the highest rank stands first.
		if r.Seam == "french" || r.Seam == "flat-felled" {
			s, _ := source.Lookup(r.Source)
			if s.Rank < rank[r.Seam] {
				t.Errorf("%+v stands below a source of lower rank", r)
			}
			rank[r.Seam] = s.Rank
		}
	}
	if n != 82 {
		t.Errorf("%d rows", n)
	}
	for range seam.Enclosed {
		break
	}
}

func TestAllowances(t *testing.T) {
	n, standard := 0, 0
	for r := range seam.Allowances {
		n++
		checkCite(t, r.Cite())
		if r.Trade == "" || r.Width.Sign() <= 0 {
			t.Errorf("%+v", r)
		}
		if r.Width == seam.Standard() {
			standard++
		}
	}
	if n != 44 || standard < 3 {
		t.Errorf("%d rows, %d with the standard allowance", n, standard)
	}
	for range seam.Allowances {
		break
	}
}

func TestTrims(t *testing.T) {
	n := 0
	for r := range seam.Trims {
		n++
		checkCite(t, r.Cite())
		if r.Width.Sign() <= 0 || (!r.Most.IsZero() && !r.Width.Less(r.Most)) {
			t.Errorf("%+v", r)
		}
	}
	if n != 36 {
		t.Errorf("%d rows", n)
	}
	for range seam.Trims {
		break
	}
}

// Each printed strip is what a plan gives by the same rule, but for the rule
// with turns, which no plan uses.
func TestBindings(t *testing.T) {
	n := 0
	for r := range seam.Bindings {
		n++
		checkCite(t, r.Cite())
		p := planned(t, seam.Spec{Kind: seam.Bound, Drafted: units.Inch.Of(1), Second: r.Finished})
		if got := map[string]units.Length{
			"single, 4 times finished":                 p.StripSingle,
			"folded double, 6 times finished":          p.StripDouble,
			"folded double, 4 times finished and 1 in": p.StripDoubleWide,
			"single, twice finished and two turns":     r.Finished.MulInt(2).Add(in(1, 4)),
		}[r.Rule]; got != r.Strip {
			t.Errorf("%s of %v: %v, printed %v", r.Rule, r.Finished, got, r.Strip)
		}
	}
	if n != 11 {
		t.Errorf("%d rows", n)
	}
	for range seam.Bindings {
		break
	}
}

// Every designation says where it comes from; what is from memory is never called
// read, and both sides of a dispute stand.
func TestCodes(t *testing.T) {
	n, named := 0, map[seam.Kind]int{}
	for r := range seam.Codes {
		n++
		checkCite(t, r.Cite())
		if r.Standard == "" || r.Code == "" || r.Meaning == "" || (r.Source == "seam-drawing-bulletin") != (r.Known == source.Memory) {
			t.Errorf("%+v", r)
		}
		named[r.Kind]++
		if r.Kind == seam.French && (r.Known != source.Memory || r.Note == "") {
			t.Errorf("a French seam has a designation that is not hedged: %+v", r)
		}
	}
	if n != 35 || named[seam.FlatFelled] != 3 || named[seam.French] != 2 || named[seam.MockFelled] != 1 || named[seam.Piped] != 1 {
		t.Errorf("%d rows, %v", n, named)
	}
	for range seam.Codes {
		break
	}
}

// A sheet cites every designation of its seam that was read, and none that is
// recalled only or names another.
func TestCodesCited(t *testing.T) {
	cited := 0
	for k := range seam.Kinds {
		sh := planned(t, seam.Spec{Kind: k}).Sheet()
		for r := range seam.Codes {
			want := r.Kind == k && r.Known == source.Read
			if slices.Contains(sh.Sources, r.Cite()) != want {
				t.Errorf("%v: %s %s is cited: %v", k, r.Standard, r.Code, !want)
			}
			if want {
				cited++
			}
		}
	}
	if cited != 5 {
		t.Errorf("%d designations cited", cited)
	}
}

// A kind's defaults and its sheet cite rows of its own name only: every name in
// the table is a kind, or a seam that no kind here sews.
func TestEnclosedNames(t *testing.T) {
	others := map[string]bool{"fell-french": true, "straight-fell": true, "serged-fell": true, "double-cloth": true, "pinked": true,
		"strap": true, "cord": true, "double-stitched-welt": true, "plain-tailored": true}
	names := map[string]bool{}
	for r := range seam.Enclosed {
		names[r.Seam] = true
		var k seam.Kind
		if err := k.UnmarshalText([]byte(r.Seam)); (err != nil) != others[r.Seam] {
			t.Errorf("%+v", r)
		}
	}
	for k := range seam.Kinds {
		if !names[k.String()] && k != seam.Plain && k != seam.Graded {
			t.Errorf("no row for %v", k)
		}
	}
}
