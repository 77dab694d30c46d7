package seam_test

import (
	"math"
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
)

func TestRefusals(t *testing.T) {
	for _, c := range []struct {
		why   string
		spec  seam.Seam
		paths string
		kind  fault.Kind
	}{
		{"negative everywhere", seam.French{Allowance: seam.Allowance{Drafted: in(-1, 8), DraftedUnder: in(-1, 8), Cut: in(-1, 8), CutUnder: in(-1, 8), Thickness: in(-1, 8)}, First: in(-1, 8), Second: in(-1, 8), Trim: in(-1, 8)}, "drafted draftedUnder cut cutUnder thickness first second trim", fault.Sign},
		{"unequal plies, plain", seam.Plain{Allowance: seam.Allowance{Drafted: in(1, 1), DraftedUnder: in(5, 8)}}, "first", fault.Missing},
		{"unequal plies, French", seam.French{Allowance: seam.Allowance{Drafted: in(1, 1), DraftedUnder: in(5, 8)}}, "first", fault.Missing},
		{"unequal plies, felled", seam.FlatFelled{Allowance: seam.Allowance{Drafted: in(1, 1), DraftedUnder: in(5, 8)}}, "first", fault.Missing},
		{"unequal plies, bound", seam.Bound{Allowance: seam.Allowance{Drafted: in(1, 1), DraftedUnder: in(5, 8)}}, "first", fault.Missing},
		{"more than was cut", seam.French{Allowance: seam.Allowance{Cut: in(3, 8)}, First: in(3, 16), Second: in(1, 4)}, "cut cutUnder", fault.Range},
		{"more than the under ply has", seam.Plain{Allowance: seam.Allowance{CutUnder: in(3, 8)}, First: in(1, 2)}, "cutUnder", fault.Range},
		{"second pass too narrow", seam.French{First: in(3, 8), Second: in(1, 8), Trim: in(1, 16)}, "second", fault.Range},
		{"not hidden", seam.French{First: in(3, 8), Second: in(1, 4), Trim: in(1, 4)}, "trim", seam.ErrHidden},
		{"trim wider than the first pass", seam.French{First: in(1, 8), Second: in(1, 4), Trim: in(3, 16)}, "trim", fault.Range},
		{"trim too near, fraying", seam.French{Allowance: seam.Allowance{Fraying: true}, Trim: in(1, 16)}, "trim", fault.Range},
		{"trim too near", seam.French{Trim: in(1, 32)}, "trim", fault.Range},
		{"four at once", seam.French{Allowance: seam.Allowance{Drafted: in(5, 8), Cut: in(3, 8)}, First: in(3, 8), Second: in(1, 8), Trim: in(1, 8)}, "cut cutUnder second trim", seam.ErrHidden},
		{"a fell that cannot lie flat", seam.FlatFelled{First: in(5, 8), Width: in(1, 4)}, "width", seam.ErrFlat},
		{"a fell with nothing to turn in", seam.FlatFelled{First: in(5, 8), Width: in(5, 8)}, "width", seam.ErrHidden},
		{"a fell that shows", seam.FlatFelled{First: in(5, 8), Width: in(3, 8), Trim: in(3, 8)}, "trim", seam.ErrHidden},
		{"a binding wider than the allowance", seam.Bound{First: in(3, 8), Width: in(1, 2)}, "width", fault.Range},
		{"a binding wider than what is left", seam.Bound{Trim: in(3, 16)}, "width", fault.Range},
		{"no such finish", seam.Plain{Finish: 9}, "finish", fault.Unknown},
		{"one layer graded", seam.Graded{Layers: 1}, "layers", fault.Range},
		{"too many layers", seam.Graded{Layers: math.MaxInt}, "layers", fault.Range},
		{"layers alike", seam.Graded{Widest: in(1, 4), Narrowest: in(1, 4)}, "narrowest", fault.Range},
		{"a layer that frays away", seam.Graded{Allowance: seam.Allowance{Fraying: true}, Narrowest: in(1, 16)}, "narrowest", fault.Range},
		{"a layer wider than the seam", seam.Graded{Narrowest: in(3, 4)}, "narrowest", fault.Range},
		{"turned past the seam", seam.TurnedStitched{Turned: in(3, 8)}, "turned", seam.ErrFlat},
		{"turned by all there is", seam.MockFrench{Turned: in(5, 8)}, "turned", seam.ErrFlat},
		{"turned and left disagree", seam.TurnedStitched{Trim: in(1, 2), Turned: in(1, 4), Width: in(3, 8)}, "turned", fault.Conflict},
		{"turned and left are more than there is", seam.MockFrench{Turned: in(3, 8), Width: in(3, 8)}, "trim", fault.Range},
		{"unequal plies, turned and stitched", seam.TurnedStitched{Allowance: seam.Allowance{DraftedUnder: in(1, 1)}}, "first", fault.Missing},
		{"a fell turned by more than half", seam.FlatFelled{Turned: in(3, 8)}, "turned", seam.ErrFlat},
		{"a fell and its turned edge disagree", seam.FlatFelled{First: in(5, 8), Width: in(3, 8), Turned: in(3, 8)}, "turned", fault.Conflict},
		{"an untrimmed fell folded by more than it is wide", seam.UntrimmedFell{Width: in(1, 4), Turned: in(3, 8)}, "turned", seam.ErrFlat},
		{"an untrimmed fell that takes more than was cut", seam.UntrimmedFell{Allowance: seam.Allowance{Cut: in(3, 8), CutUnder: in(3, 8)}, Width: in(1, 4)}, "cutUnder", fault.Range},
		{"unequal plies, welt", seam.Welt{Allowance: seam.Allowance{DraftedUnder: in(1, 1)}}, "first", fault.Missing},
		{"a row that misses the wide allowance", seam.Welt{Row: in(5, 8)}, "row", fault.Range},
		{"a row that catches the trimmed edge", seam.Welt{Row: in(1, 4), Trim: in(1, 4)}, "trim", seam.ErrHidden},
		{"nothing for the row to miss", seam.Welt{Trim: in(5, 8)}, "row trim", seam.ErrHidden},
		{"a lapped row beyond the lap", seam.Lapped{Lap: in(1, 2), Row: in(1, 2)}, "row", fault.Range},
		{"lapped further than was cut", seam.Lapped{Allowance: seam.Allowance{CutUnder: in(1, 2)}, Lap: in(5, 8)}, "cutUnder", fault.Range},
		{"unequal plies, both turned", seam.LappedTurned{Allowance: seam.Allowance{DraftedUnder: in(1, 1)}}, "turned", fault.Missing},
		{"a turned edge wider than the lap", seam.LappedTurned{Turned: in(1, 2)}, "turned", seam.ErrHidden},
		{"a lap with nothing to turn", seam.LappedTurned{Lap: in(5, 4)}, "lap", seam.ErrHidden},
		{"a lap too narrow for what is turned", seam.LappedTurned{Lap: in(3, 8)}, "lap", seam.ErrHidden},
		{"unequal plies, raw lap", seam.LappedRaw{Allowance: seam.Allowance{DraftedUnder: in(1, 1)}}, "lap", fault.Missing},
		{"unequal plies, slot", seam.Slot{Allowance: seam.Allowance{DraftedUnder: in(1, 1)}}, "first", fault.Missing},
		{"a slot row beyond the allowance", seam.Slot{Row: in(5, 8)}, "row", fault.Range},
		{"an underlay too narrow", seam.Slot{Strip: in(9, 16)}, "strip", fault.Range},
		{"unequal plies, Hong Kong", seam.HongKong{Allowance: seam.Allowance{DraftedUnder: in(1, 1)}}, "first", fault.Missing},
		{"a Hong Kong strip that is not caught", seam.HongKong{Strip: in(3, 4)}, "strip", seam.ErrHidden},
		{"a binding as wide as the allowance", seam.HongKong{Width: in(5, 8)}, "width", fault.Range},
		{"unequal plies, self-bound", seam.SelfBound{Allowance: seam.Allowance{DraftedUnder: in(1, 1)}}, "first", fault.Missing},
		{"a first fold of half", seam.SelfBound{Turned: in(5, 16)}, "turned", seam.ErrHidden},
		{"a first fold of half, and a trim", seam.SelfBound{Turned: in(5, 16), Trim: in(1, 8)}, "turned", seam.ErrFlat},
		{"a binding of half", seam.SelfBound{Width: in(5, 16)}, "width", seam.ErrFlat},
		{"a binding of less than a quarter", seam.SelfBound{Width: in(1, 8)}, "width", seam.ErrFlat},
		{"a first fold over the trimmed edge", seam.SelfBound{Turned: in(9, 32), Trim: in(1, 8)}, "turned", seam.ErrFlat},
		{"folds that disagree", seam.SelfBound{First: in(5, 8), Turned: in(1, 4), Width: in(1, 4)}, "turned", fault.Conflict},
		{"trimmed too wide to bind", seam.SelfBound{Trim: in(1, 4)}, "trim", seam.ErrHidden},
		{"unequal plies, piped", seam.Piped{Allowance: seam.Allowance{DraftedUnder: in(1, 1)}}, "first", fault.Missing},
		{"unequal plies, graded", seam.Graded{Allowance: seam.Allowance{DraftedUnder: in(1, 1)}}, "first", fault.Missing},
		{"in the order of the fields", seam.FlatFelled{Allowance: seam.Allowance{Cut: in(1, 2)}, First: in(5, 8), Width: in(1, 4), Trim: in(1, 4)}, "cut cutUnder width trim", seam.ErrFlat},
		{"a lap narrower than what is turned", seam.LappedTurned{Lap: in(1, 2), Turned: in(1, 2)}, "turned", seam.ErrHidden},
		{"unequal plies, and a turn", seam.LappedTurned{Allowance: seam.Allowance{DraftedUnder: in(1, 1)}, Turned: in(1, 4)}, "lap", fault.Missing},
		{"no such tape", seam.Plain{Allowance: seam.Allowance{Tape: 9}}, "tape", fault.Unknown},
	} {
		t.Run(c.why, func(t *testing.T) { nountest.Refused(t, seam.Nouns(), c.spec, c.paths, c.kind) })
	}
	if _, err := (seam.Any{}).Plan(); nountest.Paths(t, err) != "kind" {
		t.Error(err)
	}
}

// Each fault says what would have been right.
func TestLimits(t *testing.T) {
	for _, c := range []struct {
		spec seam.Seam
		want string
	}{
		{seam.FlatFelled{First: in(5, 8), Width: in(3, 8), Turned: in(3, 8)}, "turned 3/8 in: disagrees with what else is given, want 1/4 in (first less width)"},
		{seam.FlatFelled{First: in(5, 8), Width: in(5, 8)}, "width 5/8 in: raw edge would show, want less than 5/8 in (first), to leave an edge to turn in"},
		{seam.FlatFelled{Turned: in(3, 8)}, "turned 3/8 in: would not lie flat, want at most 5/16 in (half of first)"},
		{seam.FlatFelled{First: in(5, 8), Width: in(3, 8), Trim: in(3, 8)}, "trim 3/8 in: raw edge would show, want less than 3/8 in (width)"},
		{seam.MockFrench{Trim: in(1, 2), Width: in(3, 16)}, "width 3/16 in: would not lie flat, want at least 1/4 in (half of trim), or trim trimmed to 3/8 in at most"},
		{seam.UntrimmedFell{Width: in(1, 4), Turned: in(3, 8)}, "turned 3/8 in: would not lie flat, want at most 1/4 in (width)"},
		{seam.UntrimmedFell{Allowance: seam.Allowance{Cut: in(3, 8), CutUnder: in(3, 8)}, Width: in(1, 4)}, "cutUnder 3/8 in: out of range, want at least 1/2 in (what the seam takes)"},
		{seam.Welt{Row: in(5, 8)}, "row 5/8 in: out of range, want less than 5/8 in (first), to catch the wide allowance"},
		{seam.Lapped{Lap: in(1, 2), Row: in(1, 2)}, "row 1/2 in: out of range, want less than 1/2 in (lap), to catch both allowances"},
		{seam.Lapped{Turned: in(3, 8), Row: in(1, 2)}, "row 1/2 in: out of range, want less than 3/8 in (turned), to catch both allowances"},
		{seam.LappedTurned{Turned: in(1, 2)}, "turned 1/2 in: raw edge would show, want less than 5/12 in (two thirds of cut)"},
		{seam.LappedTurned{Lap: in(5, 4)}, "lap 1 1/4 in: raw edge would show, want more than 5/12 in and less than 1 1/4 in (two thirds of cut, and twice cut)"},
		{seam.Slot{Row: in(5, 8)}, "row 5/8 in: out of range, want less than 5/8 in (trim), to catch the allowance"},
		{seam.Slot{Strip: in(9, 16)}, "strip 9/16 in: out of range, want at least 5/8 in (to be caught by both rows)"},
		{seam.HongKong{Width: in(5, 8)}, "width 5/8 in: out of range, want less than 5/8 in (what is left of the allowance to bind)"},
		{seam.HongKong{Allowance: seam.Allowance{Thickness: in(1, 32)}, Strip: in(3, 4)}, "strip 3/4 in: raw edge would show, want more than 25/32 in (for its under edge to be caught)"},
		{seam.SelfBound{Turned: in(5, 16)}, "turned 5/16 in: raw edge would show, want at most 9/32 in (half of first less 1/16 in, the least of the under ply)"},
		{seam.SelfBound{Width: in(1, 8)}, "width 1/8 in: would not lie flat, want more than 5/32 in and less than 5/16 in (a quarter and half of first)"},
		{seam.SelfBound{Turned: in(9, 32), Trim: in(1, 8)}, "turned 9/32 in: would not lie flat, want at most 1/4 in (the first fold meets the trimmed edge)"},
		{seam.SelfBound{First: in(5, 8), Turned: in(1, 4), Width: in(1, 4)}, "turned 1/4 in: disagrees with what else is given, want 1/8 in (first less twice width)"},
		{seam.Graded{Widest: in(1, 4), Narrowest: in(1, 4)}, "narrowest 1/4 in: out of range, want less than 1/4 in (widest)"},
		{seam.Graded{Narrowest: in(1, 32)}, "narrowest 1/32 in: out of range, want at least 1.5 mm (cloth that holds)"},
		{seam.Graded{Allowance: seam.Allowance{Fraying: true}, Narrowest: in(1, 16)}, "narrowest 1/16 in: out of range, want at least 3 mm (cloth that frays)"},
		{seam.Graded{Layers: 7}, "layers 7: out of range, want 2 to 6"},
		{seam.Welt{Finish: 7}, "finish finish(7): not known, want one of overcast, zigzagged, pinked"},
		{seam.FlatFelled{First: in(5, 8), Width: in(1, 4)}, "width 1/4 in: would not lie flat, want at least 5/16 in (half of first), or first trimmed to 1/2 in at most"},
	} {
		if _, err := c.spec.Plan(); err == nil || err.Error() != c.want {
			t.Errorf("got  %v\nwant %s", err, c.want)
		}
		if !strings.Contains(c.want, " and less than ") && !strings.Contains(c.want, "one of") {
			nountest.Limits(t, c.spec) // the limit is one value
		}
	}
}

// Lengths beyond measure are worked out.
func TestHugeLengths(t *testing.T) {
	big := huge(16)
	for s := range seam.Kinds() {
		p := planned(t, s.With(seam.Allowance{Drafted: big}))
		if err := p.Sheet().Check(); err != nil {
			t.Errorf("%v: %v", s.Kind(), err)
		}
		if _, offset := s.Seam.(seam.UntrimmedFell); p.Gain.Sign() != 0 && !offset {
			t.Errorf("%v: gain %v", s.Kind(), p.Gain)
		}
	}
	if p := planned(t, seam.French{Allowance: seam.Allowance{Drafted: big, Thickness: big.DivInt(3)}}); p.Turn.IsZero() {
		t.Error("no turn for a thick cloth")
	}
}
