package seam_test

import (
	"errors"
	"math"
	"reflect"
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// faultPaths are the paths of err, which must be Faults that say something.
func faultPaths(t *testing.T, err error) string {
	t.Helper()
	var fs fault.Faults
	if !errors.As(err, &fs) || len(fs) == 0 {
		t.Fatalf("%v is not Faults", err)
	}
	var paths []string
	for _, f := range fs {
		if f.Path == "" || f.Kind == "" || f.Limit == "" {
			t.Errorf("fault says too little: %+v", *f)
		}
		paths = append(paths, f.Path)
	}
	return strings.Join(paths, " ")
}

func TestFaults(t *testing.T) {
	type S = seam.Spec
	for _, c := range []struct {
		why   string
		spec  S
		paths string
		err   error
	}{
		{"no kind", S{}, "kind", fault.Missing},
		{"no such kind", S{Kind: 200}, "kind", fault.Unknown},
		{"negative everywhere", S{Kind: seam.French, Drafted: in(-1, 8), DraftedUnder: in(-1, 8), Cut: in(-1, 8), CutUnder: in(-1, 8), First: in(-1, 8),
			Second: in(-1, 8), Take: in(-1, 8), Trim: in(-1, 8), Thickness: in(-1, 8)},
			"drafted draftedUnder cut cutUnder first second take trim thickness", fault.Sign},
		{"no kind and a negative field", S{First: in(-1, 8)}, "kind first", fault.Sign},
		{"a field that plain does not read", S{Kind: seam.Plain, Second: in(1, 4), Thickness: in(1, 32)}, "second thickness", fault.Unused},
		{"a field that felled does not read", S{Kind: seam.FlatFelled, Thickness: in(-1, 32)}, "thickness", fault.Unused},
		{"a field that bound does not read", S{Kind: seam.Bound, Thickness: in(1, 32)}, "thickness", fault.Unused},
		{"unequal plies, plain", S{Kind: seam.Plain, Drafted: in(1, 1), DraftedUnder: in(5, 8)}, "first", fault.Missing},
		{"unequal plies, French", S{Kind: seam.French, Drafted: in(1, 1), DraftedUnder: in(5, 8)}, "first", fault.Missing},
		{"unequal plies, felled", S{Kind: seam.FlatFelled, Drafted: in(1, 1), DraftedUnder: in(5, 8)}, "first", fault.Missing},
		{"unequal plies, bound", S{Kind: seam.Bound, Drafted: in(1, 1), DraftedUnder: in(5, 8)}, "first", fault.Missing},
		{"take against first", S{Kind: seam.Plain, First: in(1, 2), Take: in(5, 8)}, "take", fault.Conflict},
		{"take against the passes", S{Kind: seam.French, First: in(3, 16), Second: in(1, 4), Take: in(5, 8)}, "take", fault.Conflict},
		{"first leaves nothing", S{Kind: seam.French, First: in(5, 8), Take: in(5, 8)}, "first", fault.Conflict},
		{"second leaves nothing", S{Kind: seam.French, Second: in(3, 4), Take: in(5, 8)}, "second", fault.Conflict},
		{"more than was cut", S{Kind: seam.French, Cut: in(3, 8), First: in(3, 16), Second: in(1, 4)}, "cut cutUnder", fault.Range},
		{"more than the under ply has", S{Kind: seam.Plain, CutUnder: in(3, 8), First: in(1, 2)}, "cutUnder", fault.Range},
		{"second pass too narrow", S{Kind: seam.French, First: in(3, 8), Second: in(1, 8), Trim: in(1, 16)}, "second", fault.Range},
		{"not hidden", S{Kind: seam.French, First: in(3, 8), Second: in(1, 4), Trim: in(1, 4)}, "trim", seam.ErrHidden},
		{"trim wider than the first pass", S{Kind: seam.French, First: in(1, 8), Second: in(1, 4), Trim: in(3, 16)}, "trim", fault.Range},
		{"trim too near, fraying", S{Kind: seam.French, Trim: in(1, 16), Fraying: true}, "trim", fault.Range},
		{"trim too near", S{Kind: seam.French, Trim: in(1, 32)}, "trim", fault.Range},
		{"four at once", S{Kind: seam.French, Drafted: in(5, 8), Cut: in(3, 8), First: in(3, 8), Second: in(1, 8), Take: in(9, 16), Trim: in(1, 8)},
			"cut cutUnder second take trim", seam.ErrHidden},
		{"a fell that cannot lie flat", S{Kind: seam.FlatFelled, First: in(5, 8), Second: in(1, 4)}, "second", seam.ErrFlat},
		{"a fell with nothing to turn in", S{Kind: seam.FlatFelled, First: in(5, 8), Second: in(5, 8)}, "second", seam.ErrHidden},
		{"a fell that shows", S{Kind: seam.FlatFelled, First: in(5, 8), Second: in(3, 8), Trim: in(3, 8)}, "trim", seam.ErrHidden},
		{"a binding wider than the allowance", S{Kind: seam.Bound, First: in(3, 8), Second: in(1, 2)}, "second", fault.Range},
		{"a binding wider than what is left", S{Kind: seam.Bound, Trim: in(3, 16)}, "second", fault.Range},
		{"no such finish", S{Kind: seam.Plain, Finish: 9}, "finish", fault.Unknown},
		{"no kind, but options", S{Layers: 9, Finish: 9, Aside: true}, "kind layers finish", fault.Unknown},
		{"options that a fell does not read", S{Kind: seam.FlatFelled, Layers: 2, Finish: seam.Pinked, Aside: true}, "layers finish aside", fault.Unused},
		{"one layer graded", S{Kind: seam.Graded, Layers: 1}, "layers", fault.Range},
		{"too many layers", S{Kind: seam.Graded, Layers: math.MaxInt}, "layers", fault.Range},
		{"layers alike", S{Kind: seam.Graded, Trim: in(1, 4), TrimUnder: in(1, 4)}, "trimUnder", fault.Range},
		{"a layer that frays away", S{Kind: seam.Graded, TrimUnder: in(1, 16), Fraying: true}, "trimUnder", fault.Range},
		{"a layer wider than the seam", S{Kind: seam.Graded, TrimUnder: in(3, 4)}, "trimUnder", fault.Range},
		{"turned past the seam", S{Kind: seam.TurnedStitched, Turned: in(3, 8)}, "turned", seam.ErrFlat},
		{"turned by all there is", S{Kind: seam.MockFrench, Turned: in(5, 8)}, "turned", seam.ErrFlat},
		{"turned and left disagree", S{Kind: seam.TurnedStitched, Trim: in(1, 2), Turned: in(1, 4), Second: in(3, 8)}, "turned", fault.Conflict},
		{"turned and left are more than there is", S{Kind: seam.MockFrench, Turned: in(3, 8), Second: in(3, 8)}, "trim", fault.Range},
		{"unequal plies, turned and stitched", S{Kind: seam.TurnedStitched, DraftedUnder: in(1, 1)}, "first", fault.Missing},
		{"a fell turned by more than half", S{Kind: seam.FlatFelled, Turned: in(3, 8)}, "turned", seam.ErrFlat},
		{"a fell and its turned edge disagree", S{Kind: seam.FlatFelled, First: in(5, 8), Second: in(3, 8), Turned: in(3, 8)}, "turned", fault.Conflict},
		{"an untrimmed fell folded by more than it is wide", S{Kind: seam.UntrimmedFell, First: in(1, 4), Turned: in(3, 8)}, "turned", seam.ErrFlat},
		{"an untrimmed fell that takes more than was cut", S{Kind: seam.UntrimmedFell, Cut: in(3, 8), CutUnder: in(3, 8), First: in(1, 4)}, "cutUnder", fault.Range},
		{"unequal plies, welt", S{Kind: seam.Welt, DraftedUnder: in(1, 1)}, "first", fault.Missing},
		{"a row that misses the wide allowance", S{Kind: seam.Welt, Second: in(5, 8)}, "second", fault.Range},
		{"a row that catches the trimmed edge", S{Kind: seam.Welt, Second: in(1, 4), Trim: in(1, 4)}, "trim", seam.ErrHidden},
		{"nothing for the row to miss", S{Kind: seam.Welt, Trim: in(5, 8)}, "second trim", seam.ErrHidden},
		{"a lapped row beyond the lap", S{Kind: seam.Lapped, Second: in(1, 2), Row: in(1, 2)}, "row", fault.Range},
		{"lapped, take against first", S{Kind: seam.Lapped, First: in(1, 2), Take: in(5, 8)}, "take", fault.Conflict},
		{"lapped further than was cut", S{Kind: seam.Lapped, CutUnder: in(1, 2), Second: in(5, 8)}, "cutUnder", fault.Range},
		{"unequal plies, both turned", S{Kind: seam.LappedTurned, DraftedUnder: in(1, 1)}, "first", fault.Missing},
		{"a turned edge wider than the lap", S{Kind: seam.LappedTurned, Turned: in(1, 2)}, "turned", seam.ErrHidden},
		{"a lap with nothing to turn", S{Kind: seam.LappedTurned, Second: in(5, 4)}, "second", seam.ErrHidden},
		{"a lap too narrow for what is turned", S{Kind: seam.LappedTurned, Second: in(3, 8)}, "second", seam.ErrHidden},
		{"lap and turn disagree", S{Kind: seam.LappedTurned, First: in(5, 8), Second: in(1, 2), Turned: in(1, 4)}, "turned", fault.Conflict},
		{"unequal plies, raw lap", S{Kind: seam.LappedRaw, DraftedUnder: in(1, 1)}, "first", fault.Missing},
		{"raw lap and seam disagree", S{Kind: seam.LappedRaw, First: in(5, 8), Second: in(5, 8)}, "second", fault.Conflict},
		{"unequal plies, slot", S{Kind: seam.Slot, DraftedUnder: in(1, 1)}, "first", fault.Missing},
		{"a slot row beyond the allowance", S{Kind: seam.Slot, Second: in(5, 8)}, "second", fault.Range},
		{"an underlay too narrow", S{Kind: seam.Slot, Strip: in(9, 16)}, "strip", fault.Range},
		{"unequal plies, Hong Kong", S{Kind: seam.HongKong, DraftedUnder: in(1, 1)}, "first", fault.Missing},
		{"a Hong Kong strip that is not caught", S{Kind: seam.HongKong, Strip: in(3, 4)}, "strip", seam.ErrHidden},
		{"a binding as wide as the allowance", S{Kind: seam.HongKong, Second: in(5, 8)}, "second", fault.Range},
		{"unequal plies, self-bound", S{Kind: seam.SelfBound, DraftedUnder: in(1, 1)}, "first", fault.Missing},
		{"a first fold of half", S{Kind: seam.SelfBound, Turned: in(5, 16)}, "turned", seam.ErrFlat},
		{"a binding of half", S{Kind: seam.SelfBound, Second: in(5, 16)}, "second", seam.ErrFlat},
		{"a binding of less than a quarter", S{Kind: seam.SelfBound, Second: in(1, 8)}, "second", seam.ErrFlat},
		{"a first fold over the trimmed edge", S{Kind: seam.SelfBound, Turned: in(9, 32), Trim: in(1, 8)}, "turned", seam.ErrFlat},
		{"folds that disagree", S{Kind: seam.SelfBound, First: in(5, 8), Turned: in(1, 4), Second: in(1, 4)}, "turned", fault.Conflict},
		{"trimmed too wide to bind", S{Kind: seam.SelfBound, Trim: in(1, 4)}, "trim", seam.ErrHidden},
		{"unequal plies, piped", S{Kind: seam.Piped, DraftedUnder: in(1, 1)}, "first", fault.Missing},
		{"unequal plies, graded", S{Kind: seam.Graded, DraftedUnder: in(1, 1)}, "first", fault.Missing},
		{"in the order of the fields", S{Kind: seam.FlatFelled, First: in(5, 8), Second: in(1, 4), Take: in(1, 2), Trim: in(1, 4), Cut: in(1, 2)}, "second take trim", fault.Conflict},
	} {
		p, err := c.spec.Plan()
		if got := faultPaths(t, err); got != c.paths || !errors.Is(err, c.err) {
			t.Errorf("%s: faults of %s, want %s, %v; got\n%v", c.why, got, c.paths, c.err, err)
		}
		if !reflect.DeepEqual(p, seam.Plan{}) {
			t.Errorf("%s: a plan beside the faults", c.why)
		}
		if _, err := c.spec.Solve(); err == nil {
			t.Errorf("%s: solved", c.why)
		}
	}
}

// The fault of a fell says what would have been right.
func TestFlatLimit(t *testing.T) {
	_, err := seam.Spec{Kind: seam.FlatFelled, First: in(5, 8), Second: in(1, 4)}.Plan()
	const want = "second 1/4 in: would not lie flat, want at least 5/16 in (half of first), or first trimmed to 1/2 in at most"
	if err == nil || err.Error() != want {
		t.Errorf("got %v\nwant %s", err, want)
	}
}

// huge is 10 to the power of 19 n inches.
func huge(n int) units.Length {
	l := units.Inch.Of(1)
	for range n {
		l = l.MulInt(math.MaxInt64)
	}
	return l
}

func TestHugeLengths(t *testing.T) {
	big := huge(16)
	for k := range seam.Kinds {
		p := planned(t, seam.Spec{Kind: k, Drafted: big})
		if err := p.Sheet().Check(); err != nil {
			t.Errorf("%v: %v", k, err)
		}
		if p.Gain.Sign() != 0 && k != seam.UntrimmedFell {
			t.Errorf("%v: gain %v", k, p.Gain)
		}
	}
	if p := planned(t, seam.Spec{Kind: seam.French, Drafted: big, Thickness: big.DivInt(3)}); p.Turn.IsZero() {
		t.Error("no turn for a thick cloth")
	}
}
