package hem_test

import (
	"errors"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// TestFaults: what is refused, and with what; all of it at once, in the order of the
// fields.
func TestFaults(t *testing.T) {
	for _, c := range []struct {
		hem  string
		want []string
	}{
		{"double", []string{"depth: not given, want more than 0 in, or take"}},
		{"single", []string{"depth: not given, want more than 0 in, or take"}},
		{"double; first=1/4 in", []string{"depth: not given, want more than 0 in, or take"}},
		{"seam-slit; drafted=1 in; seamTake=1/2 in", []string{"depth: not given, want more than 0 in, or take"}},
		{"double; drafted=-1 in; cut=-2 in; first=-3 in; depth=-4 in; take=-5 in; trim=-6 in; stitch=-7 in; sweep=-8 in", []string{
			"drafted -1 in: wrong sign, want 0 in or more",
			"cut -2 in: wrong sign, want 0 in or more",
			"first -3 in: wrong sign, want 0 in or more",
			"depth -4 in: wrong sign, want 0 in or more",
			"take -5 in: wrong sign, want 0 in or more",
			"trim -6 in: wrong sign, want 0 in or more",
			"stitch -7 in: wrong sign, want 0 in or more",
			"sweep -8 in: wrong sign, want 0 in or more",
		}},
		{"slit; depth=1 in; sweep=1 in; slit=-3 in", []string{"slit -3 in: wrong sign, want 0 in or more"}},
		{"seam-slit; depth=1 in", []string{"seamTake: not given, want more than 0 in"}},
		{"seam-slit; depth=1 in; seamTake=-1 in", []string{"seamTake -1 in: wrong sign, want 0 in or more"}},
		{"double; first=1/2 in; depth=3/8 in", []string{"first 1/2 in: out of range, want at most 3/8 in (depth), or a trim of that"}},
		{"double; depth=3/8 in; take=1 in", []string{"take 1 in: out of range, want at most 3/4 in (twice depth)"}},
		{"double; first=1 in; drafted=1/2 in", []string{"first 1 in: out of range, want less than 1/2 in (cut)"}},
		{"double; first=1/2 in; drafted=1/2 in", []string{"first 1/2 in: out of range, want less than 1/2 in (cut)"}},
		{"narrow; first=1/2 in; depth=1/8 in; trim=1/4 in", []string{"trim 1/4 in: out of range, want at most 1/8 in (the lesser of first and depth)"}},
		{"double; first=1/4 in; depth=1 in; trim=3/8 in", []string{"trim 3/8 in: out of range, want at most 1/4 in (the lesser of first and depth)"}},
		{"narrow; first=1/4 in; depth=1/2 in; take=1 in", []string{"take 1 in: disagrees with what else is given, want 3/4 in (first + depth)"}},
		{"single; depth=1/2 in; take=1 in", []string{"take 1 in: disagrees with what else is given, want 1/2 in (depth)"}},
		{"double; first=1 in; take=1 in", []string{"take 1 in: disagrees with what else is given, want more than 1 in (first)"}},
		{"double; depth=1 in; take=3/4 in", []string{"take 3/4 in: disagrees with what else is given, want more than 1 in (depth)"}},
		{"narrow; depth=1 in; take=1 in", []string{"take 1 in: disagrees with what else is given, want more than 1 in (depth)"}},
		{"single; depth=1/4 in; stitch=1/4 in", []string{"stitch 1/4 in: out of range, want less than 1/4 in (depth)"}},
		{"single; depth=1 in; slope=slope 5/64", []string{"edges: not given, want 1 to 1000, since slope is given"}},
		{"single; drafted=1 in; depth=2 in; sweep=3 in; slope=slope 5/64; edges=2000", []string{"edges 2000: out of range, want 1 to 1000"}},
		{"single; drafted=1 in; take=-1 in; depth=3 in; sweep=1 in; slope=slope 5/64; edges=40", []string{"take -1 in: wrong sign, want 0 in or more"}},
		{"single; drafted=1 in; depth=3 in; sweep=1 in; slope=slope 5/64; edges=40", []string{"sweep 1 in: out of range, want more than 6 1/4 in, which the hem takes from it"}},
		{"slit; first=1/4 in; depth=1/4 in; sweep=1 in; faced=true", []string{"sweep 1 in: out of range, want more than 1 in, which the hem takes from it"}},
		{"blind; depth=1/2 in; back=1/2 in; stitch=1/8 in", []string{"back 1/2 in: out of range, want less than 1/2 in (depth)"}},
		{"blind; depth=2 in; back=1/4 in; stitch=3/8 in", []string{"stitch 3/8 in: out of range, want at most 1/4 in (back)"}},
		{"blind; depth=2 in; take=1 in", []string{"take 1 in: disagrees with what else is given, want 2 in (depth) or more"}},
		{"blind; depth=1 in; take=3 in", []string{"take 3 in: out of range, want at most 2 in (twice depth)"}},
		{"blind; first=1 in; take=1 in", []string{"take 1 in: disagrees with what else is given, want more than 1 in (first)"}},
		{"blind; first=1 in; depth=1/2 in", []string{"first 1 in: out of range, want at most 1/2 in (depth)"}},
		{"blind", []string{"depth: not given, want more than 0 in, or take"}},
		{"faced; drafted=1 in", []string{"depth: not given, want more than 0 in"}},
		{"bias-faced; depth=1/2 in; seam=1/4 in; favour=1/2 in", []string{"favour 1/2 in: out of range, want less than 1/2 in (depth)"}},
		{"faced; depth=2 in; seam=1/4 in; favour=1/16 in; take=1/2 in", []string{"take 1/2 in: disagrees with what else is given, want 5/16 in (seam + favour)"}},
		{"faced; depth=2 in; favour=1/4 in; take=1/4 in", []string{"take 1/4 in: disagrees with what else is given, want more than 1/4 in (favour)"}},
		{"faced; depth=1/2 in; seam=1/4 in; stitch=1/2 in", []string{"stitch 1/2 in: out of range, want less than 1/2 in (depth)"}},
		{"bound", []string{"depth: not given, want more than 0 in"}},
		{"bound; depth=1/4 in; seam=3/8 in", []string{"seam 3/8 in: out of range, want at most 1/4 in (depth)"}},
		{"bound; depth=1/4 in; first=3/8 in", []string{"first 3/8 in: out of range, want at most 1/4 in (depth)"}},
		{"bound; depth=1 in; seam=1 in; cut=1 in; slope=slope -2/1; edges=4; sweep=3 in", []string{"sweep 3 in: out of range, want more than 8 in, which the hem takes from it"}},
		{"bound; depth=1 in; seam=1/2 in; slope=slope -2/1; edges=4; sweep=4 in", []string{"sweep 4 in: out of range, want more than 4 in, which the hem takes from it"}},
		{"bound; cut=1 in; slope=slope -2/1; edges=4; sweep=4 in", []string{"depth: not given, want more than 0 in"}},
		{"faced; seam=1/2 in; drafted=9 in; slope=slope -2/1; edges=4; sweep=4 in", []string{"depth: not given, want more than 0 in"}},
		{"shirt-tail; hollow=1/1 turn; drafted=1 in; sweep=3 in", []string{"sweep 3 in: out of range, want more than 79.79645340 mm +- 0.00000002 mm, which the hem takes from it round its curves"}},
		{"shirt-tail", []string{"circle: not given, want more than 0 deg, or hollow"}},
		{"single; depth=1 in; circle=1001/1 turn", []string{"circle 360360 deg: out of range, want at most 1000 turns"}},
		{"circular; depth=2 in; drafted=3 in; radius=3 in", []string{"radius 3 in: out of range, want more than 3 in (depth less the drift)"}},
		{"circular; depth=2 in; drafted=-1 in; radius=1 in", []string{"drafted -1 in: wrong sign, want 0 in or more"}},
		{"circular; radius=-3 in", []string{"radius -3 in: wrong sign, want 0 in or more"}},
		{"turn-up; depth=2 in; take=4 in", []string{"take 4 in: disagrees with what else is given, want more than 4 in (twice depth)"}},
		{"turn-up; depth=2 in; first=1 in; take=4 in", []string{"take 4 in: disagrees with what else is given, want 5 in (first + twice depth)"}},
		{"turn-up; first=3 in; drafted=2 in", []string{"first 3 in: out of range, want less than 2 in (cut)"}},
		{"turn-up; depth=2 in; first=1/2 in; stitch=1/2 in", []string{"stitch 1/2 in: out of range, want less than 1/2 in (first)"}},
		{"turn-up", []string{"depth: not given, want more than 0 in, or take"}},
		{"double; first=1/2 in; depth=1/4 in; take=1 in; trim=3/4 in; stitch=1 in; slope=slope 5/64", []string{
			"take 1 in: disagrees with what else is given, want 3/4 in (first + depth)",
			"trim 3/4 in: out of range, want at most 1/4 in (the lesser of first and depth)",
			"stitch 1 in: out of range, want less than 1/4 in (depth)",
			"edges: not given, want 1 to 1000, since slope is given",
		}},
		{"single; depth=1 in; slope=slope 5/64; edges=-2", []string{"edges -2: out of range, want 1 to 1000"}},
		{"single; depth=1 in; sweep=3 in; edges=2147483647", []string{"edges 2147483647: out of range, want 1 to 1000"}},
		{"faced; depth=1/2 in; seam=1/4 in; first=1 in", []string{"first 1 in: out of range, want at most 1/2 in (depth)"}},
		{"shirt-tail; circle=-1/2 turn; hollow=-1/2 turn", []string{
			"circle -180 deg: wrong sign, want 0 deg or more",
			"hollow -180 deg: wrong sign, want 0 deg or more",
		}},
		{"single; depth=1 in; slope=30 deg; edges=2", []string{"slope 30 deg: out of range, want a slope, as in slope 1/8, or 45 deg"}},
		{"single; depth=1 in; slope=135 deg; edges=2", []string{"slope 135 deg: out of range, want a slope, as in slope 1/8, or 45 deg"}},
		{"single; depth=1 in; slope=-90 deg; edges=2", []string{"slope -90 deg: out of range, want a slope, as in slope 1/8, or 45 deg"}},
		{"single; depth=1 in; circle=1/2 rad", []string{"circle 1/2 rad: out of range, want a part of a turn, as in 90 deg or 1/4 turn"}},
		{"slit; depth=1 in; drafted=1 in", []string{"drafted \"1 in\": not known, want one of tape, first, depth, take, trim, stitch, faced, slit, sweep"}},
		{"double-bound; depth=1/4 in; first=1/4 in", []string{"first \"1/4 in\": not known, want one of tape, drafted, cut, depth, seam, spare, slope, edges, sweep, circle, hollow"}},
	} {
		h, err := hemOf(c.hem)
		if err == nil {
			_, err = h.Plan()
		}
		var fs fault.Faults
		if !errors.As(err, &fs) {
			t.Errorf("%s: %v", c.hem, err)
			continue
		}
		if diff := cmp.Diff(c.want, strings.Split(err.Error(), "\n")); diff != "" {
			t.Errorf("%s:\n%s", c.hem, diff)
		}
	}
}

// TestNoLimit: what only looks wrong is allowed.
func TestNoLimit(t *testing.T) {
	for why, h := range map[string]hem.Any{
		"deeper than the allowance":           of("double; drafted=1/2 in; first=1/4 in; depth=2 in"),
		"equal turns":                         of("double; first=1/2 in; depth=1/2 in"),
		"straight edges, counted":             of("single; depth=1 in; edges=4"),
		"narrowing to the hem":                of("single; depth=1 in; edges=4; slope=slope -1/8"),
		"most edges":                          of("single; depth=1 in; edges=1000; slope=slope 1/8"),
		"cut longer than drafted":             of("single; depth=1 in; drafted=1 in; cut=2 in"),
		"a depth beyond any cloth":            {Hem: hem.Single{Depth: units.MustParse("1" + strings.Repeat("0", 90) + " in").MulInt(1 << 60)}},
		"a deep first turn that is trimmed":   of("double; first=1/2 in; depth=1/8 in; trim=1/8 in"),
		"a narrow hem of more than is common": of("narrow; take=2 in"),
		"a slope of 45 deg":                   of("single; depth=1 in; edges=2; slope=45 deg"),
	} {
		p, err := h.Plan()
		if err != nil {
			t.Errorf("%s: %v", why, err)
			continue
		}
		if err := p.Sheet().Check(); err != nil {
			t.Errorf("%s: %v", why, err)
		}
	}
}

// blamed are the fields that are at fault.
func blamed(err error) []string {
	var fs fault.Faults
	var paths []string
	if errors.As(err, &fs) {
		for _, f := range fs {
			paths = append(paths, f.Path)
		}
	}
	return paths
}
