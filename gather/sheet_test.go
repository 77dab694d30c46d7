package gather_test

import (
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
	"example.com/clothyard/units/strip"
	"example.com/clothyard/units/ticket"
)

// TestSheets asks that the sheet of each form names what the form needs.
func TestSheets(t *testing.T) {
	has := func(s ticket.Sheet, want units.Length) bool {
		for _, st := range s.Steps {
			if st.At == ticket.Long(want) {
				return true
			}
		}
		return false
	}
	for _, test := range []struct {
		why    string
		change func(*gather.Ruffle)
		at     string
		steps  int
	}{
		{"folded with ends", func(*gather.Ruffle) {}, "1 7/8", 10},
		{"folded, no ends", func(r *gather.Ruffle) { r.Strip.Strip.Ends = in("0") }, "1 7/8", 9},
		{"folded, in a ring", func(r *gather.Ruffle) { r.Strip.Strip.Ends, r.Strip.Strip.Ring = in("0"), true }, "1 7/8", 9},
		{"hemmed", func(r *gather.Ruffle) { r.Folded, r.Hem = false, in("3/8") }, "3/8", 10},
		{"a selvedge", func(r *gather.Ruffle) { r.Folded = false }, "1/2", 9},
		{"two rows", func(r *gather.Ruffle) { r.Rows = 2 }, "3/4", 11},
		{"three rows", func(r *gather.Ruffle) { r.Rows = 3 }, "1/4", 12},
		{"one part", func(r *gather.Ruffle) { r.Parts = 1 }, "1/2", 8},
		{"nine parts", func(r *gather.Ruffle) { r.Parts = 9 }, "3 3/4", 10},
	} {
		r := frill()
		test.change(&r)
		p, err := r.Plan()
		if err != nil {
			t.Errorf("%s: %v", test.why, err)
			continue
		}
		s := p.Sheet()
		if err := s.Check(); err != nil {
			t.Errorf("%s: %v", test.why, err)
		}
		if len(s.Steps) != test.steps || !has(s, in(test.at)) {
			t.Errorf("%s: %d steps, want %d and one at %s\n%s", test.why, len(s.Steps), test.steps, test.at, s.Text())
		}
		for _, c := range s.Sources {
			if _, ok := ticket.Lookup(c.ID); !ok && c.Known != ticket.Practice && c.Known != ticket.Computed {
				t.Errorf("%s: unknown source %+v", test.why, c)
			}
		}
	}
	for _, setting := range []gather.Setting{gather.Flush, gather.Extended} {
		c := cuff()
		c.Setting = setting
		p, err := c.Plan()
		if err != nil {
			t.Fatal(err)
		}
		s := p.Sheet()
		if !has(s, in("10 1/4")) || !has(s, in("5 3/4")) || !has(s, in("1/16")) {
			t.Errorf("%v:\n%s", setting, s.Text())
		}
		for _, c := range s.Sources {
			if _, ok := ticket.Lookup(c.ID); !ok && c.Known != ticket.Practice {
				t.Errorf("unknown source %+v", c)
			}
		}
	}
	p, err := gather.Strip{Strip: strip.Spec{Each: in("54")}, Edge: in("220"), Fullness: units.RatioOf(3, 1)}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	raw := frill()
	raw.Folded = false
	rp, err := raw.Plan()
	if err != nil || len(rp.Sheet().Cautions) != 3 {
		t.Errorf("a raw free edge wants a caution (%v)", err)
	}
	if s := p.Sheet(); len(s.Lines) != 3 || s.Lines[2].Result != ticket.Long(in("42")) {
		t.Errorf("the surplus is not told:\n%s", s.Text())
	}
}
