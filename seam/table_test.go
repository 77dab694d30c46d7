package seam_test

import (
	"slices"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
)

func TestEnclosed(t *testing.T) {
	rank := map[string]source.Rank{}
	for r := range seam.Enclosed {
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
}

func TestAllowances(t *testing.T) {
	standard := 0
	for r := range seam.Allowances {
		if r.Width == in(5, 8) {
			standard++
		}
	}
	if standard < 3 {
		t.Errorf("%d with the standard allowance", standard)
	}
}

// Each printed strip is what a plan gives by the same rule, but for the rule
// with turns, which no plan uses.
func TestBindings(t *testing.T) {
	for r := range seam.Bindings {
		p := planned(t, seam.Bound{Allowance: seam.Allowance{Tape: units.InchTape, Drafted: units.Inch.Of(1)}, Width: r.Finished})
		if got := map[string]units.Length{
			"single, 4 times finished":                 width(p, 0),
			"folded double, 6 times finished":          width(p, 1),
			"folded double, 4 times finished and 1 in": width(p, 2),
			"single, twice finished and two turns":     r.Finished.MulInt(2).Add(in(1, 4)),
		}[r.Rule]; got != r.Strip {
			t.Errorf("%s of %v: %v, printed %v", r.Rule, r.Finished, got, r.Strip)
		}
	}
}

// What is from memory is never called read, and both sides of a dispute stand.
func TestCodes(t *testing.T) {
	named := map[string]int{}
	for r := range seam.Codes {
		if (r.Source == "seam-drawing-bulletin") != (r.Known == source.Memory) {
			t.Errorf("%+v", r)
		}
		named[r.Kind]++
		if r.Kind == "french" && (r.Known != source.Memory || r.Note == "") {
			t.Errorf("a French seam has a designation that is not hedged: %+v", r)
		}
	}
	if named["flat-felled"] != 3 || named["french"] != 2 || named["mock-felled"] != 1 || named["piped"] != 1 {
		t.Errorf("%v", named)
	}
}

// A sheet cites every designation of its seam that was read, and none that is
// recalled only or names another.
func TestCodesCited(t *testing.T) {
	cited := 0
	for s := range seam.Kinds() {
		k, sh := s.Kind(), planned(t, s).Sheet()
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
		if new(seam.Any).Begin(r.Seam) == nil != others[r.Seam] {
			t.Errorf("%+v", r)
		}
	}
	for s := range seam.Kinds() {
		if k := s.Kind(); !names[k] && k != "plain" && k != "graded" {
			t.Errorf("no row for %v", k)
		}
	}
}
