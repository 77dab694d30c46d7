package hem_test

import (
	"errors"
	"math"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// refuse checks that a spec is refused with exactly these faults and these kinds of
// fault, and that nothing else is made of it.
func refuse[S, P any](t *testing.T, why string, s S, plan func(S) (P, error), want []string, errs ...error) {
	t.Helper()
	p, err := plan(s)
	if err == nil || !reflect.ValueOf(p).IsZero() {
		t.Errorf("%s: planned: %+v", why, p)
		return
	}
	if diff := cmp.Diff(want, strings.Split(err.Error(), "\n")); diff != "" {
		t.Errorf("%s:\n%s", why, diff)
	}
	for _, e := range errs {
		if !errors.Is(err, e) {
			t.Errorf("%s: is not %q", why, e)
		}
	}
	var fs fault.Faults
	if !errors.As(err, &fs) {
		t.Errorf("%s: %T", why, err)
	}
}

func TestFaultsOfTucks(t *testing.T) {
	for _, test := range []struct {
		why  string
		s    hem.Tucks
		want []string
		err  error
	}{
		{"nothing", hem.Tucks{}, []string{"kind: not given, want one of spaced, pin, blind, growth"}, fault.Missing},
		{"all wrong", hem.Tucks{Kind: 9, Depth: l("-1"), Count: -2, Removed: l("-1"), Pitch: l("-1"), Edge: l("-1"), Span: l("-1")},
			[]string{
				"kind kind of tuck(9): not known, want one of spaced, pin, blind, growth", "depth -1 in: wrong sign, want 0 in or more", "count -2: out of range, want 1 to 10000",
				"removed -1 in: wrong sign, want 0 in or more", "pitch -1 in: wrong sign, want 0 in or more", "edge -1 in: wrong sign, want 0 in or more", "span -1 in: wrong sign, want 0 in or more",
			}, fault.Unknown},
		{"too many", hem.Tucks{Kind: hem.PinTuck, Count: math.MaxInt32}, []string{"count 2147483647: out of range, want 1 to 10000"}, fault.Range},
		{"no depth and no number", hem.Tucks{Kind: hem.SpacedTuck}, []string{"depth: not given, want more than 0 in, or removed and count"}, fault.Missing},
		{"no number", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1")}, []string{"count: not given, want 1 to 10000, or span and pitch, or removed"}, fault.Missing},
		{"no whole number of tucks in the span", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/4"), Pitch: l("1"), Edge: l("1"), Span: l("9 1/2")},
			[]string{"span 9 1/2 in: disagrees with what else is given, want 9 in (8 tucks) or 10 in (9 tucks)"}, fault.Conflict},
		{"less than a gap", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/4"), Pitch: l("1"), Span: l("1/2")},
			[]string{"span 1/2 in: disagrees with what else is given, want 1 in (2 tucks)"}, fault.Conflict},
		{"no whole number of tucks removed", hem.Tucks{Kind: hem.GrowthTuck, Depth: l("1/2"), Removed: l("2 1/2")},
			[]string{"removed 2 1/2 in: disagrees with what else is given, want 2 in (2 tucks) or 3 in (3 tucks)"}, fault.Conflict},
		{"more removed than can be counted", hem.Tucks{Kind: hem.GrowthTuck, Depth: l("1/2"), Removed: l("1" + strings.Repeat("0", 300))},
			[]string{"removed " + "1" + strings.Repeat("0", fault.MaxName-1) + ": out of range, want for 1 to 10000 tucks"}, fault.Range},
		{"removed, that disagrees", hem.Tucks{Kind: hem.PinTuck, Depth: l("1/8"), Count: 4, Pitch: l("1"), Removed: l("2")},
			[]string{"removed 2 in: disagrees with what else is given, want 1 in (2 x depth x count)"}, fault.Conflict},
		{"a span taken by its edges", hem.Tucks{Kind: hem.PinTuck, Count: 4, Edge: l("2"), Span: l("4")},
			[]string{"span 4 in: out of range, want more than 4 in (twice edge)"}, fault.Range},
		{"pin tucks without a pitch", hem.Tucks{Kind: hem.PinTuck, Count: 4}, []string{"pitch: not given, want more than 0 in, or span"}, fault.Missing},
		{"a span that disagrees", hem.Tucks{Kind: hem.PinTuck, Count: 4, Pitch: l("1"), Edge: l("1"), Span: l("6")},
			[]string{"span 6 in: disagrees with what else is given, want 5 in (2 x edge + (count - 1) x pitch)"}, fault.Conflict},
		{"tucks that cover each other", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1"), Count: 3, Pitch: l("1/2")},
			[]string{"pitch 1/2 in: out of range, want at least 1 in (depth)"}, fault.Range},
		{"blind tucks that do not meet", hem.Tucks{Kind: hem.BlindTuck, Depth: l("1"), Count: 3, Pitch: l("2")},
			[]string{"pitch 2 in: disagrees with what else is given, want 1 in (depth), since the tucks meet"}, fault.Conflict},
		{"one tuck with a pitch", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1"), Count: 1, Pitch: l("2"), Edge: l("1"), Span: l("1")},
			[]string{"pitch 2 in: not used here, want none for a single tuck", "span 1 in: out of range, want at least 2 in (twice edge)"}, fault.Unused},
	} {
		refuse(t, test.why, test.s, hem.Tucks.Plan, test.want, test.err)
	}
}

// TestSingleTuck: one tuck alone has no pitch and no space to the next.
func TestSingleTuck(t *testing.T) {
	p, err := hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/2"), Count: 1, Edge: l("3")}.Plan()
	if err != nil || !p.FlatPitch.IsZero() || !p.Space.IsZero() || p.LastFold != p.FirstFold || p.FirstFold != l("3 1/2") || p.Cloth != l("7") {
		t.Errorf("%+v, %v", p, err)
	}
}

// TestTuckCounts: how many tucks are counted at most, in each of the three ways that
// their number comes.
func TestTuckCounts(t *testing.T) {
	most := int64(hem.MaxTucks)
	for _, test := range []struct {
		why  string
		s    hem.Tucks
		want []string // the fields at fault; none where it is well
	}{
		{"given", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/8"), Pitch: l("1/4"), Count: hem.MaxTucks}, nil},
		{"given, one more", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/8"), Pitch: l("1/4"), Count: hem.MaxTucks + 1}, []string{"count"}},
		{"from what they take up", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/8"), Pitch: l("1/4"), Removed: l("1/4").MulInt(most)}, nil},
		{"one more takes up too much", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/8"), Pitch: l("1/4"), Removed: l("1/4").MulInt(most + 1)}, []string{"removed"}},
		{"from the span", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/8"), Pitch: l("1/4"), Span: l("1/4").MulInt(most - 1)}, nil},
		{"one more than the span has", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/8"), Pitch: l("1/4"), Span: l("1/4").MulInt(most)}, []string{"span"}},
		{"two more", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/8"), Pitch: l("1/4"), Span: l("1/4").MulInt(most + 1)}, []string{"span"}},
		{"no room between the edges", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/8"), Pitch: l("1/4"), Edge: l("2"), Span: l("4")}, []string{"count"}},
	} {
		p, err := test.s.Plan()
		if d := cmp.Diff(test.want, blamed(err)); d != "" || err == nil && p.Spec.Count != hem.MaxTucks {
			t.Errorf("%s: %d tucks, %v\n%s", test.why, p.Spec.Count, err, d)
		}
	}
}

// TestPinTuckDepth: a pin tuck is as narrow as can be stitched, unless what all of
// them take up and their number say otherwise.
func TestPinTuckDepth(t *testing.T) {
	given, err := hem.Tucks{Kind: hem.PinTuck, Removed: l("3"), Count: 6, Pitch: l("1")}.Plan()
	if err != nil || given.Spec.Depth != l("1/4") || slices.Contains(given.Assumed, "depth") {
		t.Errorf("six that take up 3 in: %+v, %v", given, err)
	}
	table, err := hem.Tucks{Kind: hem.PinTuck, Count: 6, Pitch: l("1")}.Plan()
	if err != nil || !slices.Contains(table.Assumed, "depth") {
		t.Errorf("six: %+v, %v", table, err)
	}
	counted, err := hem.Tucks{Kind: hem.PinTuck, Removed: table.PerTuck.MulInt(9), Pitch: l("1")}.Plan()
	if err != nil || counted.Spec.Count != 9 || counted.Spec.Depth != table.Spec.Depth || !slices.Contains(counted.Assumed, "depth") {
		t.Errorf("that take up nine: %+v, %v", counted, err)
	}
}

// TestTucksSolve: what follows from what.
func TestTucksSolve(t *testing.T) {
	whole := hem.Tucks{Tape: units.InchTape, Kind: hem.SpacedTuck, Depth: l("1/4"), Count: 9, Removed: l("4 1/2"), Pitch: l("1"), Edge: l("2"), Span: l("12")}
	for i, drop := range []func(*hem.Tucks){
		func(*hem.Tucks) {},
		func(s *hem.Tucks) { s.Depth = units.Length{} },
		func(s *hem.Tucks) { s.Count = 0 },
		func(s *hem.Tucks) { s.Count, s.Removed = 0, units.Length{} },
		func(s *hem.Tucks) { s.Count, s.Pitch = 0, units.Length{} },
		func(s *hem.Tucks) { s.Pitch = units.Length{} },
		func(s *hem.Tucks) { s.Span = units.Length{} },
		func(s *hem.Tucks) { s.Depth, s.Count = units.Length{}, 0 },
	} {
		s := whole
		drop(&s)
		if p, err := s.Plan(); err != nil || p.Spec != whole {
			t.Errorf("%d: %+v %v", i, p.Spec, err)
		}
		if p, err := s.Plan(); err != nil || len(p.Assumed) > 0 {
			t.Errorf("%d: %q %v", i, p.Assumed, err)
		}
	}
}

// TestMarksRound: places are rounded one by one and not step upon step; an early end
// is kept.
func TestMarksRound(t *testing.T) {
	p, err := hem.Tucks{Kind: hem.PinTuck, Count: 8, Span: l("12"), Edge: l("1/2")}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	sixteenth, half := units.Inch.Frac(1, 16), units.Inch.Frac(1, 32)
	n := 0
	for tuck := range p.Marks(sixteenth, units.HalfAway) {
		exact := p.FirstFold.Add(p.FlatPitch.MulInt(int64(n)))
		if tuck.Fold.Add(tuck.Off) != exact || half.Less(tuck.Off.Abs()) {
			t.Errorf("%+v, exactly at %v", tuck, exact)
		}
		if n++; n == 8 {
			break
		}
	}
	for range p.Marks(sixteenth, units.HalfAway) {
		break
	}
	if n != 8 {
		t.Errorf("%d marks", n)
	}
}

// Finer than the marks of the tape two tucks may be read to overlap; where they exactly
// lie they do not.
func TestDenseTucks(t *testing.T) {
	p, err := hem.Tucks{Kind: hem.BlindTuck, Count: 48, Removed: l("9/16"), Edge: units.Inch.Frac(127, 7)}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	before := units.Length{}
	for tuck := range p.Marks(units.Inch.Frac(1, 16), units.HalfAway) {
		if tuck.Near.Add(tuck.Off).Less(before) || tuck.Far.Sub(tuck.Near) != p.PerTuck {
			t.Errorf("%+v", tuck)
		}
		before = tuck.Far.Add(tuck.Off)
	}
}
