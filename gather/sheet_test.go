package gather_test

import (
	"strings"
	"testing"

	"example.com/clothyard/gather"
	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
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
			if _, ok := source.Lookup(c.ID); !ok && c.Known != source.Practice && c.Known != source.Computed {
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
			if _, ok := source.Lookup(c.ID); !ok && c.Known != source.Practice {
				t.Errorf("unknown source %+v", c)
			}
		}
	}
	p, err := gather.Strip{Strip: strip.Spec{Each: in("54"), Allowance: units.Give(in("0"))}, Edge: in("220"), Fullness: units.RatioOf(3, 1)}.Plan()
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

// TestJoinsTold asks that a sheet tells each join that its plan counts: the one
// that closes a ring, of one piece too, and joins that take nothing.
func TestJoinsTold(t *testing.T) {
	for _, test := range []struct {
		why   string
		strip strip.Spec
		do    string // the step, empty where there is no join
		at    string
	}{
		{"one piece", strip.Spec{Pieces: 1, Each: in("41")}, "", ""},
		{"pieces", strip.Spec{Pieces: 3, Each: in("21"), Allowance: units.Give(in("1/2"))}, "Join the pieces end to end", "1/2"},
		{"a ring", strip.Spec{Pieces: 3, Each: in("21"), Allowance: units.Give(in("1/2")), Ring: true}, "Join the pieces end to end into a ring", "1/2"},
		{"a ring of one piece", strip.Spec{Pieces: 1, Each: in("41"), Allowance: units.Give(in("1/2")), Ring: true}, "Join the two ends of the piece into a ring", "1/2"},
		{"pieces whose ends meet", strip.Spec{Pieces: 3, Each: in("21"), Allowance: units.Give(in("0"))}, "Set the pieces edge to edge and join them", ""},
		{"a ring whose ends meet", strip.Spec{Pieces: 3, Each: in("21"), Allowance: units.Give(in("0")), Ring: true}, "Set the pieces edge to edge and join them into a ring", ""},
		{"a ring of one piece whose ends meet", strip.Spec{Pieces: 1, Each: in("41"), Allowance: units.Give(in("0")), Ring: true}, "Set the two ends of the piece edge to edge and join them into a ring", ""},
	} {
		s := gather.Strip{Strip: test.strip, Edge: in("20")}
		p, err := s.Plan()
		if err != nil {
			t.Errorf("%s: %v", test.why, err)
			continue
		}
		r, err := gather.Ruffle{Strip: s, Depth: in("2")}.Plan()
		if err != nil {
			t.Errorf("%s: %v", test.why, err)
			continue
		}
		var at ticket.Amount
		if test.at != "" {
			at = ticket.Long(in(test.at))
		}
		for _, sheet := range []ticket.Sheet{p.Sheet(), r.Sheet()} {
			told := 0
			for _, st := range sheet.Steps {
				if strings.Contains(st.Do, "into a ring") || strings.Contains(st.Do, "oin the") || strings.Contains(st.Do, "join them") {
					told++
					if st.Do != test.do || st.At != at {
						t.Errorf("%s: %q at %v", test.why, st.Do, st.At.Text())
					}
				}
				if test.strip.Ring && strings.Contains(st.Note, "finished ends") {
					t.Errorf("%s: a ring has no finished ends: %q", test.why, st.Note)
				}
			}
			if (told == 1) != (test.do != "") {
				t.Errorf("%s: %d steps join it\n%s", test.why, told, sheet.Text())
			}
			if text := sheet.Text(); strings.Contains(text, "1 pieces") || strings.Contains(text, "0 in from the raw ends") {
				t.Errorf("%s:\n%s", test.why, text)
			}
		}
	}
}
