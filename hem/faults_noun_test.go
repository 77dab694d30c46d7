package hem_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// refuse checks that a spec is refused with exactly these faults and these kinds of
// fault, and that nothing else is made of it.
func refuse[S, P comparable](t *testing.T, why string, s S, plan func(S) (P, error), solve func(S) (S, error), want []string, errs ...error) {
	t.Helper()
	p, err := plan(s)
	var none P
	if err == nil || p != none {
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
	if back, err2 := solve(s); back != s || err2 == nil {
		t.Errorf("%s: Solve: %v %v", why, back, err2)
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
			[]string{"Back 1/2 in: out of range, want less than 1/2 in (Depth)"}, fault.Range},
		{"blind, stitched past the fold", hem.Spec{Kind: hem.Blind, Depth: l("2"), Back: l("1/4"), Stitch: l("3/8")},
			[]string{"Stitch 3/8 in: out of range, want at most 1/4 in (Back)"}, fault.Range},
		{"blind, takes less than its depth", hem.Spec{Kind: hem.Blind, Depth: l("2"), Take: l("1")},
			[]string{"Take 1 in: disagrees with what else is given, want 2 in (Depth) or more"}, fault.Conflict},
		{"blind, takes more than it can", hem.Spec{Kind: hem.Blind, Depth: l("1"), Take: l("3")},
			[]string{"Take 3 in: out of range, want at most 2 in (twice Depth)"}, fault.Range},
		{"blind, turned under by all it takes", hem.Spec{Kind: hem.Blind, First: l("1"), Take: l("1")},
			[]string{"Take 1 in: disagrees with what else is given, want more than 1 in (First)"}, fault.Conflict},
		{"blind, turned too deep", hem.Spec{Kind: hem.Blind, First: l("1"), Depth: l("1/2")},
			[]string{"First 1 in: out of range, want at most 1/2 in (Depth)"}, fault.Range},
		{"blind, trimmed", hem.Spec{Kind: hem.Blind, Depth: l("1"), Trim: l("1/8")},
			[]string{"Trim 1/8 in: not used here, want none for blind"}, fault.Unused},
		{"blind, of no depth", hem.Spec{Kind: hem.Blind}, []string{"Depth: not given, want more than 0 in, or Take"}, fault.Missing},
		{"what a single hem does not have", hem.Spec{Kind: hem.Single, Depth: l("1"), Back: l("1"), Seam: l("1"), Favour: l("1"), Doubled: true, Spare: l("1"), Radius: l("1")},
			[]string{
				"Back 1 in: not used here, want none for single", "Seam 1 in: not used here, want none for single", "Favour 1 in: not used here, want none for single",
				"Doubled true: not used here, want false for single", "Spare 1 in: not used here, want none for single", "Radius 1 in: not used here, want none for single",
			}, fault.Unused},
		{"a facing of no depth", hem.Spec{Kind: hem.FacedHem, Drafted: l("1")}, []string{"Depth: not given, want more than 0 in"}, fault.Missing},
		{"a facing rolled away", hem.Spec{Kind: hem.BiasFaced, Depth: l("1/2"), Seam: l("1/4"), Favour: l("1/2")},
			[]string{"Favour 1/2 in: out of range, want less than 1/2 in (Depth)"}, fault.Range},
		{"a facing that takes something else", hem.Spec{Kind: hem.FacedHem, Depth: l("2"), Seam: l("1/4"), Favour: l("1/16"), Take: l("1/2")},
			[]string{"Take 1/2 in: disagrees with what else is given, want 5/16 in (Seam + Favour)"}, fault.Conflict},
		{"a facing of no seam", hem.Spec{Kind: hem.FacedHem, Depth: l("2"), Favour: l("1/4"), Take: l("1/4")},
			[]string{"Take 1/4 in: disagrees with what else is given, want more than 1/4 in (Favour)"}, fault.Conflict},
		{"a facing whose turn is too deep", hem.Spec{Kind: hem.FacedHem, Depth: l("1/2"), Seam: l("1/4"), First: l("1"), Trim: l("1/4")},
			[]string{"First 1 in: out of range, want at most 1/2 in (Depth)", "Trim 1/4 in: not used here, want none for faced"}, fault.Range},
		{"a facing stitched past its edge", hem.Spec{Kind: hem.FacedHem, Depth: l("1/2"), Seam: l("1/4"), Stitch: l("1/2")},
			[]string{"Stitch 1/2 in: out of range, want less than 1/2 in (Depth)"}, fault.Range},
		{"a binding of no width", hem.Spec{Kind: hem.Bound}, []string{"Depth: not given, want more than 0 in"}, fault.Missing},
		{"a binding that takes", hem.Spec{Kind: hem.Bound, Depth: l("1/4"), Take: l("1/4"), Stitch: l("1/8")},
			[]string{"Take 1/4 in: not used here, want none for bound", "Stitch 1/8 in: not used here, want none for bound"}, fault.Unused},
		{"a binding sewn past its fold", hem.Spec{Kind: hem.Bound, Depth: l("1/4"), Seam: l("3/8")},
			[]string{"Seam 3/8 in: out of range, want at most 1/4 in (Depth)"}, fault.Range},
		{"a doubled binding with a turn", hem.Spec{Kind: hem.Bound, Depth: l("1/4"), Doubled: true, First: l("1/4"), Favour: l("1/16")},
			[]string{"First 1/4 in: not used here, want none for a doubled binding", "Favour 1/16 in: not used here, want none for a doubled binding"}, fault.Unused},
		{"a binding turned too deep", hem.Spec{Kind: hem.Bound, Depth: l("1/4"), First: l("3/8")},
			[]string{"First 3/8 in: out of range, want at most 1/4 in (Depth)"}, fault.Range},
		{"a binding that leaves no edge", hem.Spec{Kind: hem.Bound, Depth: l("1"), Seam: l("1"), Cut: l("1"), Slope: units.RatioOf(-2, 1), Edges: 4, Sweep: l("3")},
			[]string{"Sweep 3 in: out of range, want more than 8 in, which the hem takes from it"}, fault.Range},
		{"a binding that stands out and narrows all away", hem.Spec{Kind: hem.Bound, Depth: l("1"), Seam: l("1/2"), Slope: units.RatioOf(-2, 1), Edges: 4, Sweep: l("4")},
			[]string{"Sweep 4 in: out of range, want more than 4 in, which the hem takes from it"}, fault.Range},
		{"a sweep round a hem of no depth", hem.Spec{Kind: hem.Bound, Cut: l("1"), Slope: units.RatioOf(-2, 1), Edges: 4, Sweep: l("4")},
			[]string{"Depth: not given, want more than 0 in"}, fault.Missing},
		{"a sweep round a facing of no depth", hem.Spec{Kind: hem.FacedHem, Seam: l("1/2"), Drafted: l("9"), Slope: units.RatioOf(-2, 1), Edges: 4, Sweep: l("4")},
			[]string{"Depth: not given, want more than 0 in"}, fault.Missing},
		{"a hollow that closes", hem.Spec{Kind: hem.ShirtTail, Hollow: units.RatioOf(1, 1), Drafted: l("1"), Sweep: l("3")},
			[]string{"Sweep 3 in: out of range, want more than 79.79645340 mm +- 0.00000002 mm, which the hem takes from it round its curves"}, fault.Range},
		{"a tail without a curve", hem.Spec{Kind: hem.ShirtTail}, []string{"Circle: not given, want more than 0, or Hollow"}, fault.Missing},
		{"curves below zero", hem.Spec{Kind: hem.ShirtTail, Circle: half.Neg(), Hollow: half.Neg()},
			[]string{"Circle -1/2: wrong sign, want 0 or more", "Hollow -1/2: wrong sign, want 0 or more"}, fault.Sign},
		{"too much of a curve", hem.Spec{Kind: hem.Single, Depth: l("1"), Circle: units.RatioOf(1001, 1)},
			[]string{"Circle 1001: out of range, want at most 1000"}, fault.Range},
		{"a circle with side edges", hem.Spec{Kind: hem.Circular, Slope: half, Edges: 2, Sweep: l("9"), Hollow: half},
			[]string{
				"Slope 1/2: not used here, want none for circular", "Edges 2: not used here, want none for circular",
				"Sweep 9 in: not used here, want none for circular", "Hollow 1/2: not used here, want none for circular",
			}, fault.Unused},
		{"a circle smaller than its hem", hem.Spec{Kind: hem.Circular, Depth: l("2"), Drafted: l("3"), Radius: l("3")},
			[]string{"Radius 3 in: out of range, want more than 3 in (Depth less the drift)"}, fault.Range},
		{"a circle whose allowance is below zero", hem.Spec{Kind: hem.Circular, Depth: l("2"), Drafted: l("-1"), Radius: l("1")},
			[]string{"Drafted -1 in: wrong sign, want 0 in or more"}, fault.Sign},
		{"a radius below zero", hem.Spec{Kind: hem.Circular, Radius: l("-3")}, []string{"Radius -3 in: wrong sign, want 0 in or more"}, fault.Sign},
		{"a curved turn-up", hem.Spec{Kind: hem.TurnUp, Depth: l("1"), Circle: half, Hollow: half},
			[]string{"Circle 1/2: not used here, want none for turn-up", "Hollow 1/2: not used here, want none for turn-up"}, fault.Unused},
		{"a turn-up that takes less than its cuff", hem.Spec{Kind: hem.TurnUp, Depth: l("2"), Take: l("4")},
			[]string{"Take 4 in: disagrees with what else is given, want more than 4 in (twice Depth)"}, fault.Conflict},
		{"a turn-up that disagrees", hem.Spec{Kind: hem.TurnUp, Depth: l("2"), First: l("1"), Take: l("4")},
			[]string{"Take 4 in: disagrees with what else is given, want 5 in (First + twice Depth)"}, fault.Conflict},
		{"a turn-up with no cloth left", hem.Spec{Kind: hem.TurnUp, First: l("3"), Drafted: l("2")},
			[]string{"First 3 in: out of range, want less than 2 in (Cut)"}, fault.Range},
		{"a turn-up stitched past its hem", hem.Spec{Kind: hem.TurnUp, Depth: l("2"), First: l("1/2"), Stitch: l("1/2")},
			[]string{"Stitch 1/2 in: out of range, want less than 1/2 in (First)"}, fault.Range},
		{"a turn-up of no depth", hem.Spec{Kind: hem.TurnUp}, []string{"Depth: not given, want more than 0 in, or Take"}, fault.Missing},
	} {
		refuse(t, test.why, test.s, hem.Spec.Plan, hem.Spec.Solve, test.want, test.err)
	}
}

func TestFaultsOfTucks(t *testing.T) {
	for _, test := range []struct {
		why  string
		s    hem.Tucks
		want []string
		err  error
	}{
		{"nothing", hem.Tucks{}, []string{"Kind: not given, want spaced, pin, blind or growth"}, fault.Missing},
		{"all wrong", hem.Tucks{Kind: 9, Depth: l("-1"), Count: -2, Removed: l("-1"), Pitch: l("-1"), Edge: l("-1"), Span: l("-1")},
			[]string{
				"Kind TuckKind(9): not known, want spaced, pin, blind or growth", "Depth -1 in: wrong sign, want 0 in or more", "Count -2: out of range, want 1 to 10000",
				"Removed -1 in: wrong sign, want 0 in or more", "Pitch -1 in: wrong sign, want 0 in or more", "Edge -1 in: wrong sign, want 0 in or more", "Span -1 in: wrong sign, want 0 in or more",
			}, fault.Unknown},
		{"too many", hem.Tucks{Kind: hem.PinTuck, Count: math.MaxInt32}, []string{"Count 2147483647: out of range, want 1 to 10000"}, fault.Range},
		{"no depth and no number", hem.Tucks{Kind: hem.SpacedTuck}, []string{"Depth: not given, want more than 0 in, or Removed and Count"}, fault.Missing},
		{"no number", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1")}, []string{"Count: not given, want 1 to 10000, or Span and Pitch, or Removed"}, fault.Missing},
		{"no whole number of tucks in the span", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/4"), Pitch: l("1"), Edge: l("1"), Span: l("9 1/2")},
			[]string{"Span 9 1/2 in: disagrees with what else is given, want 9 in (8 tucks) or 10 in (9 tucks)"}, fault.Conflict},
		{"less than a gap", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1/4"), Pitch: l("1"), Span: l("1/2")},
			[]string{"Span 1/2 in: disagrees with what else is given, want 1 in (2 tucks)"}, fault.Conflict},
		{"no whole number of tucks removed", hem.Tucks{Kind: hem.GrowthTuck, Depth: l("1/2"), Removed: l("2 1/2")},
			[]string{"Removed 2 1/2 in: disagrees with what else is given, want 2 in (2 tucks) or 3 in (3 tucks)"}, fault.Conflict},
		{"more removed than can be counted", hem.Tucks{Kind: hem.GrowthTuck, Depth: l("1/2"), Removed: l("1" + strings.Repeat("0", 300))},
			[]string{"Removed " + l("1"+strings.Repeat("0", 300)).String() + ": out of range, want for 1 to 10000 tucks"}, fault.Range},
		{"removed, that disagrees", hem.Tucks{Kind: hem.PinTuck, Depth: l("1/8"), Count: 4, Pitch: l("1"), Removed: l("2")},
			[]string{"Removed 2 in: disagrees with what else is given, want 1 in (2 x Depth x Count)"}, fault.Conflict},
		{"a span taken by its edges", hem.Tucks{Kind: hem.PinTuck, Count: 4, Edge: l("2"), Span: l("4")},
			[]string{"Span 4 in: out of range, want more than 4 in (twice Edge)"}, fault.Range},
		{"pin tucks without a pitch", hem.Tucks{Kind: hem.PinTuck, Count: 4}, []string{"Pitch: not given, want more than 0 in, or Span"}, fault.Missing},
		{"a span that disagrees", hem.Tucks{Kind: hem.PinTuck, Count: 4, Pitch: l("1"), Edge: l("1"), Span: l("6")},
			[]string{"Span 6 in: disagrees with what else is given, want 5 in (2 x Edge + (Count - 1) x Pitch)"}, fault.Conflict},
		{"tucks that cover each other", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1"), Count: 3, Pitch: l("1/2")},
			[]string{"Pitch 1/2 in: out of range, want at least 1 in (Depth)"}, fault.Range},
		{"blind tucks that do not meet", hem.Tucks{Kind: hem.BlindTuck, Depth: l("1"), Count: 3, Pitch: l("2")},
			[]string{"Pitch 2 in: disagrees with what else is given, want 1 in (Depth), since the tucks meet"}, fault.Conflict},
		{"one tuck with a pitch", hem.Tucks{Kind: hem.SpacedTuck, Depth: l("1"), Count: 1, Pitch: l("2"), Edge: l("1"), Span: l("1")},
			[]string{"Pitch 2 in: not used here, want none for a single tuck", "Span 1 in: out of range, want at least 2 in (twice Edge)"}, fault.Unused},
	} {
		refuse(t, test.why, test.s, hem.Tucks.Plan, hem.Tucks.Solve, test.want, test.err)
	}
}

func TestFaultsOfCasings(t *testing.T) {
	for _, test := range []struct {
		why  string
		s    hem.Casing
		want []string
		err  error
	}{
		{"nothing", hem.Casing{}, []string{"Kind: not given, want elastic, drawstring or rod"}, fault.Missing},
		{"all wrong", hem.Casing{Kind: 9, Drafted: l("-1"), Width: l("-1"), Girth: l("-1"), Ease: l("-1"), Tunnel: l("-1"), Turn: l("-1"), Heading: l("-1"), Lower: l("-1"),
			Around: l("-1"), End: l("-1"), Tail: l("-1"), Months: -1},
			[]string{
				"Kind CasingKind(9): not known, want elastic, drawstring or rod", "Drafted -1 in: wrong sign, want 0 in or more", "Width -1 in: wrong sign, want 0 in or more",
				"Girth -1 in: wrong sign, want 0 in or more", "Ease -1 in: wrong sign, want 0 in or more", "Tunnel -1 in: wrong sign, want 0 in or more", "Turn -1 in: wrong sign, want 0 in or more",
				"Heading -1 in: wrong sign, want 0 in or more", "Lower -1 in: wrong sign, want 0 in or more", "Around -1 in: wrong sign, want 0 in or more", "End -1 in: wrong sign, want 0 in or more",
				"Tail -1 in: wrong sign, want 0 in or more", "Months -1: out of range, want 0 to 1500",
			}, fault.Unknown},
		{"nothing to hold", hem.Casing{Kind: hem.ElasticCasing}, []string{"Width: not given, want more than 0 in"}, fault.Missing},
		{"no room in the tunnel", hem.Casing{Kind: hem.ElasticCasing, Tunnel: l("1/4")}, []string{"Tunnel 1/4 in: out of range, want more than 1/4 in (Ease)"}, fault.Range},
		{"a tunnel too narrow", hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Tunnel: l("3/4")}, []string{"Tunnel 3/4 in: out of range, want at least 1 in (Width)"}, fault.Range},
		{"a tunnel that disagrees", hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Ease: l("1/4"), Tunnel: l("2")},
			[]string{"Tunnel 2 in: disagrees with what else is given, want 1 1/4 in (Width + Ease)"}, fault.Conflict},
		{"a tunnel too narrow for the rod", hem.Casing{Kind: hem.RodCasing, Girth: l("3"), Tunnel: l("1")}, []string{"Tunnel 1 in: out of range, want at least 1 1/2 in (half of Girth)"}, fault.Range},
		{"a rod's tunnel that disagrees", hem.Casing{Kind: hem.RodCasing, Girth: l("3"), Ease: l("1"), Tunnel: l("3")},
			[]string{"Tunnel 3 in: disagrees with what else is given, want 2 in (half of Girth + Ease)"}, fault.Conflict},
		{"a tunnel round less than nothing", hem.Casing{Kind: hem.ElasticCasing, Width: l("-1"), Tunnel: l("2"), Ease: l("1/4")}, []string{"Width -1 in: wrong sign, want 0 in or more"}, fault.Sign},
		{"a rod measured twice", hem.Casing{Kind: hem.RodCasing, Girth: l("3"), Width: l("1")}, []string{"Width 1 in: not used here, want none for a rod of which Girth is given"}, fault.Unused},
		{"what an elastic does not have", hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Girth: l("1"), End: l("1"), Tail: l("1"), Neck: true, Months: 9},
			[]string{
				"Girth 1 in: not used here, want none for elastic", "End 1 in: not used here, want none for a casing folded down", "Tail 1 in: not used here, want none for elastic",
				"Neck true: not used here, want false for elastic", "Months 9: not used here, want none for elastic",
			}, fault.Unused},
		{"an opening beside eyelets", hem.Casing{Kind: hem.CordCasing, Width: l("1"), Opening: l("2")}, []string{"Opening 2 in: not used here, want none for drawstring"}, fault.Unused},
		{"an opening beside open ends", hem.Casing{Kind: hem.RodCasing, Width: l("1"), Opening: l("2")}, []string{"Opening 2 in: not used here, want none for rod"}, fault.Unused},
		{"an opening less than none", hem.Casing{Kind: hem.ElasticCasing, Width: l("1"), Opening: l("-2")}, []string{"Opening -2 in: wrong sign, want 0 in or more"}, fault.Sign},
		{"a strip with an allowance", hem.Casing{Kind: hem.CordCasing, Applied: true, Width: l("1"), Drafted: l("1"), Months: math.MaxInt32},
			[]string{"Drafted 1 in: not used here, want none for an applied casing", "Months 2147483647: out of range, want 0 to 1500"}, fault.Range},
	} {
		refuse(t, test.why, test.s, hem.Casing.Plan, hem.Casing.Solve, test.want, test.err)
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
		{"nothing", hem.Mitre{}, []string{"A.Depth: not given, want more than 0 in"}, fault.Missing},
		{"below zero", hem.Mitre{A: hem.HemSide{First: l("-1"), Depth: l("-1")}, B: hem.HemSide{First: l("-1")}, Trim: l("-1")},
			[]string{
				"A.First -1 in: wrong sign, want 0 in or more", "A.Depth -1 in: wrong sign, want more than 0 in", "B.First -1 in: wrong sign, want 0 in or more",
				"B.Depth: not given, want more than 0 in", "Trim -1 in: wrong sign, want 0 in or more",
			}, fault.Sign},
		{"too deep", hem.Mitre{A: hem.HemSide{First: units.Metre.Of(11), Depth: units.Metre.Of(12)}, Trim: units.Metre.Of(13)},
			[]string{"A.First 11000 mm: out of range, want at most 10000 mm", "A.Depth 12000 mm: out of range, want at most 10000 mm", "Trim 13000 mm: out of range, want at most 10000 mm"}, fault.Range},
		{"a first turn past the edge", hem.Mitre{A: inch, B: hem.HemSide{First: l("2"), Depth: l("1")}}, []string{"B.First 2 in: out of range, want at most 1 in (B.Depth)"}, fault.Range},
		{"a corner that is none", hem.Mitre{A: inch, Lean: units.RatioOf(-101, 1)}, []string{"Lean -101: out of range, want from -100 to 100"}, fault.Range},
		{"hems too unlike for a blunt corner", hem.Mitre{A: inch, B: hem.HemSide{Depth: l("3")}, Lean: units.RatioOf(-1, 2)},
			[]string{"Lean -1/2: out of range, want a less blunt corner, or depths nearer to each other than 1 in and 3 in"}, fault.Range},
		{"just too unlike", hem.Mitre{A: hem.HemSide{Depth: l("5")}, B: hem.HemSide{Depth: l("3")}, Lean: units.RatioOf(-3, 4)},
			[]string{"Lean -3/4: out of range, want a less blunt corner, or depths nearer to each other than 3 in and 5 in"}, fault.Range},
	} {
		refuse(t, test.why, test.s, hem.Mitre.Plan, hem.Mitre.Solve, test.want, test.err)
	}
	for _, s := range mitres() {
		solved, err := s.Solve()
		if p, err2 := s.Plan(); err != nil || err2 != nil || p.Spec != solved {
			t.Errorf("%+v: %v %v", s, err, err2)
		}
	}
}
