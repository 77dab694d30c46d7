package hem_test

import (
	"errors"
	"math"
	"reflect"
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

func TestFaultsOfKinds(t *testing.T) {
	half := units.RatioOf(1, 2)
	for _, test := range []struct {
		why  string
		s    hem.Spec
		want []string
		err  error
	}{
		{"blind, folded back past the hem", hem.Spec{Kind: hem.Blind, Depth: l("1/2"), Back: l("1/2"), Stitch: l("1/8")},
			[]string{"back 1/2 in: out of range, want less than 1/2 in (depth)"}, fault.Range},
		{"blind, stitched past the fold", hem.Spec{Kind: hem.Blind, Depth: l("2"), Back: l("1/4"), Stitch: l("3/8")},
			[]string{"stitch 3/8 in: out of range, want at most 1/4 in (back)"}, fault.Range},
		{"blind, takes less than its depth", hem.Spec{Kind: hem.Blind, Depth: l("2"), Take: l("1")},
			[]string{"take 1 in: disagrees with what else is given, want 2 in (depth) or more"}, fault.Conflict},
		{"blind, takes more than it can", hem.Spec{Kind: hem.Blind, Depth: l("1"), Take: l("3")},
			[]string{"take 3 in: out of range, want at most 2 in (twice depth)"}, fault.Range},
		{"blind, turned under by all it takes", hem.Spec{Kind: hem.Blind, First: l("1"), Take: l("1")},
			[]string{"take 1 in: disagrees with what else is given, want more than 1 in (first)"}, fault.Conflict},
		{"blind, turned too deep", hem.Spec{Kind: hem.Blind, First: l("1"), Depth: l("1/2")},
			[]string{"first 1 in: out of range, want at most 1/2 in (depth)"}, fault.Range},
		{"blind, trimmed", hem.Spec{Kind: hem.Blind, Depth: l("1"), Trim: l("1/8")},
			[]string{"trim 1/8 in: not used here, want none for blind"}, fault.Unused},
		{"blind, of no depth", hem.Spec{Kind: hem.Blind}, []string{"depth: not given, want more than 0 in, or take"}, fault.Missing},
		{"what a single hem does not have", hem.Spec{Kind: hem.Single, Depth: l("1"), Back: l("1"), Seam: l("1"), Favour: l("1"), Doubled: true, Spare: l("1"), Radius: l("1")},
			[]string{
				"back 1 in: not used here, want none for single", "seam 1 in: not used here, want none for single", "favour 1 in: not used here, want none for single",
				"doubled true: not used here, want false for single", "spare 1 in: not used here, want none for single", "radius 1 in: not used here, want none for single",
			}, fault.Unused},
		{"a facing of no depth", hem.Spec{Kind: hem.FacedHem, Drafted: l("1")}, []string{"depth: not given, want more than 0 in"}, fault.Missing},
		{"a facing rolled away", hem.Spec{Kind: hem.BiasFaced, Depth: l("1/2"), Seam: l("1/4"), Favour: l("1/2")},
			[]string{"favour 1/2 in: out of range, want less than 1/2 in (depth)"}, fault.Range},
		{"a facing that takes something else", hem.Spec{Kind: hem.FacedHem, Depth: l("2"), Seam: l("1/4"), Favour: l("1/16"), Take: l("1/2")},
			[]string{"take 1/2 in: disagrees with what else is given, want 5/16 in (seam + favour)"}, fault.Conflict},
		{"a facing of no seam", hem.Spec{Kind: hem.FacedHem, Depth: l("2"), Favour: l("1/4"), Take: l("1/4")},
			[]string{"take 1/4 in: disagrees with what else is given, want more than 1/4 in (favour)"}, fault.Conflict},
		{"a facing whose turn is too deep", hem.Spec{Kind: hem.FacedHem, Depth: l("1/2"), Seam: l("1/4"), First: l("1"), Trim: l("1/4")},
			[]string{"first 1 in: out of range, want at most 1/2 in (depth)", "trim 1/4 in: not used here, want none for faced"}, fault.Range},
		{"a facing stitched past its edge", hem.Spec{Kind: hem.FacedHem, Depth: l("1/2"), Seam: l("1/4"), Stitch: l("1/2")},
			[]string{"stitch 1/2 in: out of range, want less than 1/2 in (depth)"}, fault.Range},
		{"a binding of no width", hem.Spec{Kind: hem.Bound}, []string{"depth: not given, want more than 0 in"}, fault.Missing},
		{"a binding that takes", hem.Spec{Kind: hem.Bound, Depth: l("1/4"), Take: l("1/4"), Stitch: l("1/8")},
			[]string{"take 1/4 in: not used here, want none for bound", "stitch 1/8 in: not used here, want none for bound"}, fault.Unused},
		{"a binding sewn past its fold", hem.Spec{Kind: hem.Bound, Depth: l("1/4"), Seam: l("3/8")},
			[]string{"seam 3/8 in: out of range, want at most 1/4 in (depth)"}, fault.Range},
		{"a doubled binding with a turn", hem.Spec{Kind: hem.Bound, Depth: l("1/4"), Doubled: true, First: l("1/4"), Favour: l("1/16")},
			[]string{"first 1/4 in: not used here, want none for a doubled binding", "favour 1/16 in: not used here, want none for a doubled binding"}, fault.Unused},
		{"a binding turned too deep", hem.Spec{Kind: hem.Bound, Depth: l("1/4"), First: l("3/8")},
			[]string{"first 3/8 in: out of range, want at most 1/4 in (depth)"}, fault.Range},
		{"a binding that leaves no edge", hem.Spec{Kind: hem.Bound, Depth: l("1"), Seam: l("1"), Cut: l("1"), Slope: units.RatioOf(-2, 1), Edges: 4, Sweep: l("3")},
			[]string{"sweep 3 in: out of range, want more than 8 in, which the hem takes from it"}, fault.Range},
		{"a binding that stands out and narrows all away", hem.Spec{Kind: hem.Bound, Depth: l("1"), Seam: l("1/2"), Slope: units.RatioOf(-2, 1), Edges: 4, Sweep: l("4")},
			[]string{"sweep 4 in: out of range, want more than 4 in, which the hem takes from it"}, fault.Range},
		{"a sweep round a hem of no depth", hem.Spec{Kind: hem.Bound, Cut: l("1"), Slope: units.RatioOf(-2, 1), Edges: 4, Sweep: l("4")},
			[]string{"depth: not given, want more than 0 in"}, fault.Missing},
		{"a sweep round a facing of no depth", hem.Spec{Kind: hem.FacedHem, Seam: l("1/2"), Drafted: l("9"), Slope: units.RatioOf(-2, 1), Edges: 4, Sweep: l("4")},
			[]string{"depth: not given, want more than 0 in"}, fault.Missing},
		{"a hollow that closes", hem.Spec{Kind: hem.ShirtTail, Hollow: units.RatioOf(1, 1), Drafted: l("1"), Sweep: l("3")},
			[]string{"sweep 3 in: out of range, want more than 79.79645340 mm +- 0.00000002 mm, which the hem takes from it round its curves"}, fault.Range},
		{"a tail without a curve", hem.Spec{Kind: hem.ShirtTail}, []string{"circle: not given, want more than 0, or hollow"}, fault.Missing},
		{"curves below zero", hem.Spec{Kind: hem.ShirtTail, Circle: half.Neg(), Hollow: half.Neg()},
			[]string{"circle -1/2: wrong sign, want 0 or more", "hollow -1/2: wrong sign, want 0 or more"}, fault.Sign},
		{"too much of a curve", hem.Spec{Kind: hem.Single, Depth: l("1"), Circle: units.RatioOf(1001, 1)},
			[]string{"circle 1001: out of range, want at most 1000"}, fault.Range},
		{"a circle with side edges", hem.Spec{Kind: hem.Circular, Slope: half, Edges: 2, Sweep: l("9"), Hollow: half},
			[]string{
				"slope 1/2: not used here, want none for circular", "edges 2: not used here, want none for circular",
				"sweep 9 in: not used here, want none for circular", "hollow 1/2: not used here, want none for circular",
			}, fault.Unused},
		{"a circle smaller than its hem", hem.Spec{Kind: hem.Circular, Depth: l("2"), Drafted: l("3"), Radius: l("3")},
			[]string{"radius 3 in: out of range, want more than 3 in (depth less the drift)"}, fault.Range},
		{"a circle whose allowance is below zero", hem.Spec{Kind: hem.Circular, Depth: l("2"), Drafted: l("-1"), Radius: l("1")},
			[]string{"drafted -1 in: wrong sign, want 0 in or more"}, fault.Sign},
		{"a radius below zero", hem.Spec{Kind: hem.Circular, Radius: l("-3")}, []string{"radius -3 in: wrong sign, want 0 in or more"}, fault.Sign},
		{"a curved turn-up", hem.Spec{Kind: hem.TurnUp, Depth: l("1"), Circle: half, Hollow: half},
			[]string{"circle 1/2: not used here, want none for turn-up", "hollow 1/2: not used here, want none for turn-up"}, fault.Unused},
		{"a turn-up that takes less than its cuff", hem.Spec{Kind: hem.TurnUp, Depth: l("2"), Take: l("4")},
			[]string{"take 4 in: disagrees with what else is given, want more than 4 in (twice depth)"}, fault.Conflict},
		{"a turn-up that disagrees", hem.Spec{Kind: hem.TurnUp, Depth: l("2"), First: l("1"), Take: l("4")},
			[]string{"take 4 in: disagrees with what else is given, want 5 in (first + twice depth)"}, fault.Conflict},
		{"a turn-up with no cloth left", hem.Spec{Kind: hem.TurnUp, First: l("3"), Drafted: l("2")},
			[]string{"first 3 in: out of range, want less than 2 in (cut)"}, fault.Range},
		{"a turn-up stitched past its hem", hem.Spec{Kind: hem.TurnUp, Depth: l("2"), First: l("1/2"), Stitch: l("1/2")},
			[]string{"stitch 1/2 in: out of range, want less than 1/2 in (first)"}, fault.Range},
		{"a turn-up of no depth", hem.Spec{Kind: hem.TurnUp}, []string{"depth: not given, want more than 0 in, or take"}, fault.Missing},
	} {
		refuse(t, test.why, test.s, hem.Spec.Plan, test.want, test.err)
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

func TestFaultsOfCasings(t *testing.T) {
	for _, test := range []struct {
		why  string
		s    hem.Casing
		want []string
		err  error
	}{
		{"nothing", hem.Casing{}, []string{"kind: not given, want one of elastic, drawstring, rod"}, fault.Missing},
		{"all wrong", hem.Casing{Kind: 9, Drafted: l("-1"), Width: l("-1"), Girth: l("-1"), Ease: l("-1"), Tunnel: l("-1"), Turn: l("-1"), Heading: l("-1"), Lower: l("-1"),
			Around: l("-1"), End: l("-1"), Tail: l("-1"), Months: -1},
			[]string{
				"kind kind of casing(9): not known, want one of elastic, drawstring, rod", "drafted -1 in: wrong sign, want 0 in or more", "width -1 in: wrong sign, want 0 in or more",
				"girth -1 in: wrong sign, want 0 in or more", "ease -1 in: wrong sign, want 0 in or more", "tunnel -1 in: wrong sign, want 0 in or more", "turn -1 in: wrong sign, want 0 in or more",
				"heading -1 in: wrong sign, want 0 in or more", "lower -1 in: wrong sign, want 0 in or more", "around -1 in: wrong sign, want 0 in or more", "end -1 in: wrong sign, want 0 in or more",
				"tail -1 in: wrong sign, want 0 in or more", "months -1: out of range, want 0 to 1500",
			}, fault.Unknown},
		{"nothing to hold", hem.Casing{Kind: hem.ElasticCasing}, []string{"width: not given, want more than 0 in"}, fault.Missing},
		{"no room in the tunnel", hem.Casing{Kind: hem.ElasticCasing, Tunnel: l("1/4")}, []string{"tunnel 1/4 in: out of range, want more than 1/4 in (ease)"}, fault.Range},
		{"a tunnel too narrow", hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Tunnel: l("3/4")}, []string{"tunnel 3/4 in: out of range, want at least 1 in (width)"}, fault.Range},
		{"a tunnel that disagrees", hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Ease: l("1/4"), Tunnel: l("2")},
			[]string{"tunnel 2 in: disagrees with what else is given, want 1 1/4 in (width + ease)"}, fault.Conflict},
		{"a tunnel too narrow for the rod", hem.Casing{Kind: hem.RodCasing, Girth: l("3"), Tunnel: l("1")}, []string{"tunnel 1 in: out of range, want at least 1 1/2 in (half of girth)"}, fault.Range},
		{"a rod's tunnel that disagrees", hem.Casing{Kind: hem.RodCasing, Girth: l("3"), Ease: l("1"), Tunnel: l("3")},
			[]string{"tunnel 3 in: disagrees with what else is given, want 2 in (half of girth + ease)"}, fault.Conflict},
		{"a tunnel round less than nothing", hem.Casing{Kind: hem.ElasticCasing, Width: l("-1"), Tunnel: l("2"), Ease: l("1/4")}, []string{"width -1 in: wrong sign, want 0 in or more"}, fault.Sign},
		{"a rod measured twice", hem.Casing{Kind: hem.RodCasing, Girth: l("3"), Width: l("1")}, []string{"width 1 in: not used here, want none for a rod of which girth is given"}, fault.Unused},
		{"what an elastic does not have", hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Girth: l("1"), End: l("1"), Tail: l("1"), Neck: true, Months: 9},
			[]string{
				"girth 1 in: not used here, want none for elastic", "end 1 in: not used here, want none for a casing folded down", "tail 1 in: not used here, want none for elastic",
				"neck true: not used here, want false for elastic", "months 9: not used here, want none for elastic",
			}, fault.Unused},
		{"an opening beside eyelets", hem.Casing{Kind: hem.CordCasing, Width: l("1"), Opening: l("2")}, []string{"opening 2 in: not used here, want none for drawstring"}, fault.Unused},
		{"an opening beside open ends", hem.Casing{Kind: hem.RodCasing, Width: l("1"), Opening: l("2")}, []string{"opening 2 in: not used here, want none for rod"}, fault.Unused},
		{"an opening less than none", hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Opening: l("-2")}, []string{"opening -2 in: wrong sign, want 0 in or more"}, fault.Sign},
		{"a strip with an allowance", hem.Casing{Kind: hem.CordCasing, Applied: true, Width: l("1"), Drafted: l("1"), Months: math.MaxInt32},
			[]string{"drafted 1 in: not used here, want none for an applied casing", "months 2147483647: out of range, want 0 to 1500"}, fault.Range},
	} {
		refuse(t, test.why, test.s, hem.Casing.Plan, test.want, test.err)
	}
}

func TestFaultsOfMitres(t *testing.T) {
	inch := hem.HemSide{Depth: l("1")}
	for _, test := range []struct {
		why  string
		s    hem.Mitre
		want []string
		err  error
	}{
		{"nothing", hem.Mitre{}, []string{"a.depth: not given, want more than 0 in"}, fault.Missing},
		{"below zero", hem.Mitre{A: hem.HemSide{First: l("-1"), Depth: l("-1")}, B: hem.HemSide{First: l("-1")}, Trim: l("-1")},
			[]string{
				"a.first -1 in: wrong sign, want 0 in or more", "a.depth -1 in: wrong sign, want more than 0 in", "b.first -1 in: wrong sign, want 0 in or more",
				"b.depth: not given, want more than 0 in", "trim -1 in: wrong sign, want 0 in or more",
			}, fault.Sign},
		{"too deep", hem.Mitre{A: hem.HemSide{First: units.Metre.Of(11), Depth: units.Metre.Of(12)}, Trim: units.Metre.Of(13)},
			[]string{"a.first 11000 mm: out of range, want at most 10000 mm", "a.depth 12000 mm: out of range, want at most 10000 mm", "trim 13000 mm: out of range, want at most 10000 mm"}, fault.Range},
		{"a first turn past the edge", hem.Mitre{A: inch, B: hem.HemSide{First: l("2"), Depth: l("1")}}, []string{"b.first 2 in: out of range, want at most 1 in (b.depth)"}, fault.Range},
		{"a corner that is none", hem.Mitre{A: inch, Lean: units.RatioOf(-101, 1)}, []string{"lean -101: out of range, want from -100 to 100"}, fault.Range},
		{"hems too unlike for a blunt corner", hem.Mitre{A: inch, B: hem.HemSide{Depth: l("3")}, Lean: units.RatioOf(-1, 2)},
			[]string{"lean -1/2: out of range, want a less blunt corner, or depths nearer to each other than 1 in and 3 in"}, fault.Range},
		{"just too unlike", hem.Mitre{A: hem.HemSide{Depth: l("5")}, B: hem.HemSide{Depth: l("3")}, Lean: units.RatioOf(-3, 4)},
			[]string{"lean -3/4: out of range, want a less blunt corner, or depths nearer to each other than 3 in and 5 in"}, fault.Range},
	} {
		refuse(t, test.why, test.s, hem.Mitre.Plan, test.want, test.err)
	}
}
