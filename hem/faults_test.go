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
	"example.com/clothyard/units/noun"
)

func TestFaults(t *testing.T) {
	five := units.RatioOf(5, 64)
	for _, test := range []struct {
		why  string
		s    hem.Spec
		want []string
		errs []error
	}{
		{"nothing", hem.Spec{}, []string{"kind: not given, want one of single, double, narrow, slit, blind, rolled, faced, bias-faced, bound, shirt-tail, circular, turn-up"}, []error{fault.Missing}},
		{"no such kind", hem.Spec{Kind: 77, Depth: l("-1")}, []string{
			"kind kind(77): not known, want one of single, double, narrow, slit, blind, rolled, faced, bias-faced, bound, shirt-tail, circular, turn-up",
			"depth -1 in: wrong sign, want 0 in or more"}, []error{fault.Unknown, fault.Sign}},
		{"no depth", hem.Spec{Kind: hem.Double}, []string{"depth: not given, want more than 0 in, or take"}, []error{fault.Missing}},
		{"no depth of a single hem", hem.Spec{Kind: hem.Single}, []string{"depth: not given, want more than 0 in, or take"}, []error{fault.Missing}},
		{"only the first turn", hem.Spec{Kind: hem.Double, First: l("1/4")}, []string{"depth: not given, want more than 0 in, or take"}, []error{fault.Missing}},
		{"no depth of a slit", hem.Spec{Kind: hem.Slit, Opening: hem.InSeam, Drafted: l("1"), SeamTake: l("1/2")},
			[]string{"depth: not given, want more than 0 in, or take"}, []error{fault.Missing}},
		{"every length below zero", hem.Spec{Kind: hem.Double, Drafted: l("-1"), Cut: l("-2"), First: l("-3"), Depth: l("-4"), Take: l("-5"), Trim: l("-6"), Stitch: l("-7"), Sweep: l("-8")},
			[]string{
				"drafted -1 in: wrong sign, want 0 in or more", "cut -2 in: wrong sign, want 0 in or more",
				"first -3 in: wrong sign, want 0 in or more", "depth -4 in: wrong sign, want 0 in or more",
				"take -5 in: wrong sign, want 0 in or more", "trim -6 in: wrong sign, want 0 in or more",
				"stitch -7 in: wrong sign, want 0 in or more", "sweep -8 in: wrong sign, want 0 in or more",
			}, []error{fault.Sign}},
		{"unused in a single hem", hem.Spec{Kind: hem.Single, First: l("1"), Trim: l("1"), Depth: l("1"), Slit: l("3"), Opening: hem.Faced, SeamTake: l("1")},
			[]string{
				"first 1 in: not used here, want none for single", "trim 1 in: not used here, want none for single",
				"slit 3 in: not used here, want none for single", "opening faced: not used here, want none for single",
				"seamTake 1 in: not used here, want none for single",
			}, []error{fault.Unused}},
		{"unused in a cut slit", hem.Spec{Kind: hem.Slit, Opening: hem.Tucked, Drafted: l("1"), Cut: l("1"), Depth: l("1"), Slope: five, Edges: 2, SeamTake: l("1")},
			[]string{
				"drafted 1 in: not used here, want none for a slit that is tucked", "cut 1 in: not used here, want none for a slit that is tucked",
				"slope 5/64: not used here, want none for a slit that is tucked", "edges 2: not used here, want none for a slit that is tucked",
				"seamTake 1 in: not used here, want none for a slit that is tucked",
			}, []error{fault.Unused}},
		{"slit without an end", hem.Spec{Kind: hem.Slit, Depth: l("1"), Sweep: l("1"), Slit: l("-3")},
			[]string{"slit -3 in: wrong sign, want 0 in or more", "opening: not given, want one of tucked, faced, in-seam"}, []error{fault.Sign, fault.Missing}},
		{"slit without a known end", hem.Spec{Kind: hem.Slit, Depth: l("1"), Opening: 9, SeamTake: l("1")},
			[]string{"opening opening(9): not known, want one of tucked, faced, in-seam", "seamTake 1 in: not used here, want none for slit"}, []error{fault.Unknown}},
		{"opening without its seam", hem.Spec{Kind: hem.Slit, Depth: l("1"), Opening: hem.InSeam},
			[]string{"seamTake: not given, want more than 0 in"}, []error{fault.Missing}},
		{"opening in a seam below zero", hem.Spec{Kind: hem.Slit, Depth: l("1"), Opening: hem.InSeam, SeamTake: l("-1")},
			[]string{"seamTake -1 in: wrong sign, want more than 0 in"}, []error{fault.Sign}},
		{"first turn past the finished edge", hem.Spec{Kind: hem.Double, First: l("1/2"), Depth: l("3/8")},
			[]string{"first 1/2 in: out of range, want at most 3/8 in (depth), or a trim of that"}, []error{fault.Range}},
		{"the same, by what is taken", hem.Spec{Kind: hem.Double, Depth: l("3/8"), Take: l("1")},
			[]string{"take 1 in: out of range, want at most 3/4 in (twice depth)"}, []error{fault.Range}},
		{"no cloth left to turn", hem.Spec{Kind: hem.Double, First: l("1"), Drafted: l("1/2")},
			[]string{"first 1 in: out of range, want less than 1/2 in (cut)"}, []error{fault.Range}},
		{"all the cloth turned in", hem.Spec{Kind: hem.Double, First: l("1/2"), Drafted: l("1/2")},
			[]string{"first 1/2 in: out of range, want less than 1/2 in (cut)"}, []error{fault.Range}},
		{"trimmed, but not enough", hem.Spec{Kind: hem.Narrow, First: l("1/2"), Depth: l("1/8"), Trim: l("1/4")},
			[]string{"trim 1/4 in: out of range, want at most 1/8 in (the lesser of first and depth)"}, []error{fault.Range}},
		{"trimmed to more than there is", hem.Spec{Kind: hem.Double, First: l("1/4"), Depth: l("1"), Trim: l("3/8")},
			[]string{"trim 3/8 in: out of range, want at most 1/4 in (the lesser of first and depth)"}, []error{fault.Range}},
		{"all three, that disagree", hem.Spec{Kind: hem.Narrow, First: l("1/4"), Depth: l("1/2"), Take: l("1")},
			[]string{"take 1 in: disagrees with what else is given, want 3/4 in (first + depth)"}, []error{fault.Conflict}},
		{"single, that disagrees", hem.Spec{Kind: hem.Single, Depth: l("1/2"), Take: l("1")},
			[]string{"take 1 in: disagrees with what else is given, want 1/2 in (depth)"}, []error{fault.Conflict}},
		{"less taken than the first turn", hem.Spec{Kind: hem.Double, First: l("1"), Take: l("1")},
			[]string{"take 1 in: disagrees with what else is given, want more than 1 in (first)"}, []error{fault.Conflict}},
		{"less taken than the depth", hem.Spec{Kind: hem.Double, Depth: l("1"), Take: l("3/4")},
			[]string{"take 3/4 in: disagrees with what else is given, want more than 1 in (depth)"}, []error{fault.Conflict}},
		{"no more taken than the depth", hem.Spec{Kind: hem.Narrow, Depth: l("1"), Take: l("1")},
			[]string{"take 1 in: disagrees with what else is given, want more than 1 in (depth)"}, []error{fault.Conflict}},
		{"stitched past the finished edge", hem.Spec{Kind: hem.Single, Depth: l("1/4"), Stitch: l("1/4")},
			[]string{"stitch 1/4 in: out of range, want less than 1/4 in (depth)"}, []error{fault.Range}},
		{"flare on no edges", hem.Spec{Kind: hem.Single, Depth: l("1"), Slope: five},
			[]string{"edges: not given, want 1 to 1000, since slope is given"}, []error{fault.Missing}},
		{"edges below zero", hem.Spec{Kind: hem.Single, Depth: l("1"), Slope: five, Edges: -2},
			[]string{"edges -2: out of range, want 1 to 1000"}, []error{fault.Range}},
		{"too many edges", hem.Spec{Kind: hem.Single, Depth: l("1"), Sweep: l("3"), Edges: math.MaxInt32},
			[]string{"edges 2147483647: out of range, want 1 to 1000"}, []error{fault.Range}},
		{"too many edges say nothing of the sweep", hem.Spec{Kind: hem.Single, Drafted: l("1"), Depth: l("2"), Sweep: l("3"), Slope: five, Edges: 2000},
			[]string{"edges 2000: out of range, want 1 to 1000"}, []error{fault.Range}},
		{"nor do edges below zero", hem.Spec{Kind: hem.Single, Drafted: l("100"), Depth: l("2"), Sweep: l("3"), Slope: five, Edges: -2},
			[]string{"edges -2: out of range, want 1 to 1000"}, []error{fault.Range}},
		{"nor does a slit without an end", hem.Spec{Kind: hem.Slit, Drafted: l("1/8"), Depth: l("1"), Sweep: l("1")},
			[]string{"opening: not given, want one of tucked, faced, in-seam"}, []error{fault.Missing}},
		{"nor a take below zero", hem.Spec{Kind: hem.Single, Drafted: l("1"), Take: l("-1"), Depth: l("3"), Sweep: l("1"), Slope: five, Edges: 40},
			[]string{"take -1 in: wrong sign, want 0 in or more"}, []error{fault.Sign}},
		{"a hem that narrows all away", hem.Spec{Kind: hem.Single, Drafted: l("1"), Depth: l("3"), Sweep: l("1"), Slope: five, Edges: 40},
			[]string{"sweep 1 in: out of range, want more than 6 1/4 in, which the hem takes from it"}, []error{fault.Range}},
		{"nothing left of the edge", hem.Spec{Kind: hem.Slit, Opening: hem.Faced, First: l("1/4"), Depth: l("1/4"), Sweep: l("1")},
			[]string{"sweep 1 in: out of range, want more than 1 in, which the hem takes from it"}, []error{fault.Range}},
		{"several at once, in the order of the fields", hem.Spec{Kind: hem.Double, First: l("1/2"), Depth: l("1/4"), Take: l("1"), Trim: l("3/4"), Stitch: l("1"), Slope: five, Slit: l("1")},
			[]string{
				"take 1 in: disagrees with what else is given, want 3/4 in (first + depth)",
				"trim 3/4 in: out of range, want at most 1/4 in (the lesser of first and depth)",
				"stitch 1 in: out of range, want less than 1/4 in (depth)",
				"edges: not given, want 1 to 1000, since slope is given",
				"slit 1 in: not used here, want none for double",
			}, []error{fault.Conflict, fault.Range, fault.Missing, fault.Unused}},
	} {
		t.Run(test.why, func(t *testing.T) {
			p, err := test.s.Plan()
			if err == nil {
				t.Fatalf("planned: %+v", p)
			}
			if !reflect.ValueOf(p).IsZero() {
				t.Error("a plan beside the faults")
			}
			if diff := cmp.Diff(test.want, strings.Split(err.Error(), "\n")); diff != "" {
				t.Error(diff)
			}
			for _, want := range test.errs {
				if !errors.Is(err, want) {
					t.Errorf("is not %q", want)
				}
			}
			var fs fault.Faults
			if !errors.As(err, &fs) {
				t.Errorf("%T", err)
			}
		})
	}
}

// TestOneBelowZero: a single length below zero is a single fault, and nothing is
// made of it.
func TestOneBelowZero(t *testing.T) {
	whole := hem.Spec{Kind: hem.Slit, Opening: hem.InSeam, Drafted: l("5/8"), Cut: l("5/8"), First: l("1/4"), Depth: l("1/4"), Take: l("1/2"),
		Trim: l("1/8"), Stitch: l("1/16"), Sweep: l("17"), Slit: l("3"), SeamTake: l("7/16")}
	if _, err := whole.Plan(); err != nil {
		t.Fatal(err)
	}
	v := reflect.ValueOf(whole)
	for i := range v.NumField() {
		name := v.Type().Field(i).Name
		was, ok := v.Field(i).Interface().(units.Length)
		if !ok || was.IsZero() {
			continue
		}
		s := whole
		reflect.ValueOf(&s).Elem().Field(i).Set(reflect.ValueOf(was.Neg()))
		_, err := s.Plan()
		var fs fault.Faults
		if !errors.As(err, &fs) || len(fs) != 1 || fs[0].Path != noun.Key(name) || fs[0].Kind != fault.Sign || fs[0].Got != was.Neg().String() {
			t.Errorf("%s below zero: %v", name, err)
		}
	}
}

// TestNoLimit: what only looks wrong is allowed.
func TestNoLimit(t *testing.T) {
	for why, s := range map[string]hem.Spec{
		"deeper than the allowance":           {Kind: hem.Double, Drafted: l("1/2"), First: l("1/4"), Depth: l("2")},
		"equal turns":                         {Kind: hem.Double, First: l("1/2"), Depth: l("1/2")},
		"straight edges, counted":             {Kind: hem.Single, Depth: l("1"), Edges: 4},
		"narrowing to the hem":                {Kind: hem.Single, Depth: l("1"), Edges: 4, Slope: units.RatioOf(-1, 8)},
		"most edges":                          {Kind: hem.Single, Depth: l("1"), Edges: hem.MaxEdges, Slope: units.RatioOf(1, 8)},
		"cut longer than drafted":             {Kind: hem.Single, Depth: l("1"), Drafted: l("1"), Cut: l("2")},
		"a depth beyond any cloth":            {Kind: hem.Single, Depth: l("1" + strings.Repeat("0", 300))},
		"a deep first turn that is trimmed":   {Kind: hem.Double, First: l("1/2"), Depth: l("1/8"), Trim: l("1/8")},
		"a narrow hem of more than is common": {Kind: hem.Narrow, Take: l("2")},
	} {
		p, err := s.Plan()
		if err != nil {
			t.Errorf("%s: %v", why, err)
			continue
		}
		if err := p.Sheet().Check(); err != nil {
			t.Errorf("%s: %v", why, err)
		}
	}
}
