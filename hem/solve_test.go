package hem_test

import (
	"errors"
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/noun/nountest"
)

// TestSolve checks what follows from what is given, what defaults fill, and what is said
// of it.
func TestSolve(t *testing.T) {
	for _, test := range []struct{ why, given, want, assumed string }{
		{"single, turned at the drafted line", "single; drafted=1 in",
			"single; drafted=1 in; cut=1 in; depth=1 in; take=1 in; stitch=1/4 in", "cut depth take stitch"},
		{"single, Depth follows from Take", "single; take=3/8 in; cut=1/2 in",
			"single; drafted=1/2 in; cut=1/2 in; depth=3/8 in; take=3/8 in; stitch=3/16 in", "drafted stitch"},
		{"single, both agree", "single; take=2 in; depth=2 in",
			"single; drafted=2 in; cut=2 in; depth=2 in; take=2 in; stitch=1/4 in", "drafted cut stitch"},
		{"double, Take follows", "double; first=1/4 in; depth=2 in; drafted=2 1/2 in",
			"double; first=1/4 in; depth=2 in; take=2 1/4 in; drafted=2 1/2 in; cut=2 1/2 in; stitch=1/16 in", "cut stitch"},
		{"double, Depth follows", "double; first=1/4 in; take=1 in; stitch=1/8 in",
			"double; first=1/4 in; depth=3/4 in; take=1 in; drafted=1 in; cut=1 in; stitch=1/8 in", "drafted cut"},
		{"double, First follows", "double; depth=3/4 in; take=1 in",
			"double; first=1/4 in; depth=3/4 in; take=1 in; drafted=1 in; cut=1 in; stitch=1/16 in", "drafted cut stitch"},
		{"double, first turn of the table", "double; depth=1 in",
			"double; first=1/4 in; depth=1 in; take=1 1/4 in; drafted=1 1/4 in; cut=1 1/4 in; stitch=1/16 in", "drafted cut first take stitch"},
		{"double, too shallow for it", "double; depth=1/16 in",
			"double; first=1/16 in; depth=1/16 in; take=1/8 in; drafted=1/8 in; cut=1/8 in; stitch=1/32 in", "drafted cut first take stitch"},
		{"double, all of a small take", "double; take=3/8 in",
			"double; first=3/16 in; depth=3/16 in; take=3/8 in; drafted=3/8 in; cut=3/8 in; stitch=1/16 in", "drafted cut first depth stitch"},
		{"double, turned at the drafted line", "double; first=1/4 in; drafted=2 in",
			"double; first=1/4 in; depth=1 3/4 in; take=2 in; drafted=2 in; cut=2 in; stitch=1/16 in", "cut depth take stitch"},
		{"double, Cut wins over Drafted", "double; drafted=2 in; cut=1 in",
			"double; first=1/4 in; depth=3/4 in; take=1 in; drafted=2 in; cut=1 in; stitch=1/16 in", "first depth take stitch"},
		{"narrow, the table", "narrow",
			"narrow; first=1/4 in; depth=1/4 in; take=1/2 in; drafted=1/2 in; cut=1/2 in; stitch=1/16 in", "drafted cut first depth take stitch"},
		{"narrow, equal to First", "narrow; first=1/8 in",
			"narrow; first=1/8 in; depth=1/8 in; take=1/4 in; drafted=1/4 in; cut=1/4 in; stitch=1/16 in", "drafted cut depth take stitch"},
		{"narrow, equal to Depth", "narrow; depth=3/8 in; drafted=1 in",
			"narrow; first=3/8 in; depth=3/8 in; take=3/4 in; drafted=1 in; cut=1 in; stitch=1/16 in", "cut first take stitch"},
		{"narrow, half of Take", "narrow; take=1/3 in",
			"narrow; first=1/6 in; depth=1/6 in; take=1/3 in; drafted=1/3 in; cut=1/3 in; stitch=1/16 in", "drafted cut first depth stitch"},
		{"baby hem, as deep as what is left", "narrow; first=1/2 in; trim=1/8 in",
			"narrow; first=1/2 in; trim=1/8 in; depth=1/8 in; take=5/8 in; drafted=5/8 in; cut=5/8 in; stitch=1/16 in", "drafted cut depth take stitch"},
		{"cut slit, which has no allowance", "slit; depth=3/16 in",
			"slit; first=3/16 in; depth=3/16 in; take=3/8 in; stitch=1/16 in", "first take stitch"},
		{"opening, as wide as the seam", "seam-slit; take=1/4 in; seamTake=7/16 in",
			"seam-slit; first=1/8 in; depth=1/8 in; take=1/4 in; drafted=7/16 in; cut=7/16 in; stitch=1/16 in; seamTake=7/16 in", "drafted cut first depth stitch"},
		{"blind, turned once", "blind; depth=2 in",
			"blind; drafted=2 in; cut=2 in; depth=2 in; take=2 in; stitch=1/8 in; back=1/4 in", "drafted cut back stitch"},
		{"blind, depth and all it takes", "blind; depth=2 in; take=2 1/4 in",
			"blind; drafted=2 1/4 in; cut=2 1/4 in; first=1/4 in; depth=2 in; take=2 1/4 in; stitch=1/8 in; back=1/4 in", "drafted cut back stitch"},
		{"blind, at the drafted line", "blind; drafted=3/8 in",
			"blind; drafted=3/8 in; cut=3/8 in; depth=3/8 in; take=3/8 in; stitch=3/32 in; back=3/16 in", "cut depth take back stitch"},
		{"blind, turned under, at the drafted line", "blind; drafted=2 in; first=1/4 in",
			"blind; drafted=2 in; cut=2 in; first=1/4 in; depth=1 3/4 in; take=2 in; stitch=1/8 in; back=1/4 in", "cut depth take back stitch"},
		{"rolled, the table", "rolled",
			"rolled; drafted=1/4 in; cut=1/4 in; first=1/8 in; depth=1/8 in; take=1/4 in; stitch=1/16 in", "drafted cut first depth take stitch"},
		{"faced, at the drafted line", "faced; drafted=5/8 in; favour=1/16 in; depth=2 in",
			"faced; drafted=5/8 in; cut=5/8 in; first=1/4 in; depth=2 in; take=5/8 in; stitch=1/16 in; seam=9/16 in; favour=1/16 in", "cut first take seam stitch"},
		{"faced, less drafted than is rolled", "faced; drafted=1/16 in; favour=1/16 in; depth=1/8 in",
			"faced; drafted=1/16 in; cut=1/16 in; first=1/16 in; depth=1/8 in; take=5/16 in; stitch=1/32 in; seam=1/4 in; favour=1/16 in", "cut first take seam stitch"},
		{"faced, Seam follows", "bias-faced; take=3/8 in; favour=1/8 in; depth=1 in",
			"bias-faced; drafted=3/8 in; cut=3/8 in; first=1/4 in; depth=1 in; take=3/8 in; stitch=1/16 in; seam=1/4 in; favour=1/8 in", "drafted cut first stitch"},
		{"bound, nothing left on", "bound; depth=1/4 in",
			"bound; depth=1/4 in; first=1/4 in; seam=1/4 in", "seam first"},
		{"bound, left on", "double-bound; depth=1/4 in; cut=1/8 in",
			"double-bound; drafted=1/8 in; cut=1/8 in; depth=1/4 in; seam=1/4 in", "drafted seam"},
		{"circular, the table", "circular",
			"circular; drafted=1/2 in; cut=1/2 in; first=1/4 in; depth=1/4 in; take=1/2 in; stitch=1/16 in; circle=1/1 turn", "drafted cut first depth take stitch circle"},
		{"turn-up, thirds", "turn-up; drafted=4 1/2 in",
			"turn-up; drafted=4 1/2 in; cut=4 1/2 in; first=1 1/2 in; depth=1 1/2 in; take=4 1/2 in; stitch=1/4 in", "cut first depth take stitch"},
		{"turn-up, depth follows", "turn-up; first=1/4 in; take=4 in",
			"turn-up; drafted=4 in; cut=4 in; first=1/4 in; depth=1 7/8 in; take=4 in; stitch=1/8 in", "drafted cut stitch"},
		{"turn-up, as deep inside", "turn-up; depth=2 in; drafted=5 in",
			"turn-up; drafted=5 in; cut=5 in; first=2 in; depth=2 in; take=6 in; stitch=1/4 in", "cut first take stitch"},
	} {
		p := planned(t, test.given+"; tape=inch")
		if want := of(test.want + "; tape=inch"); p.Spec != want {
			t.Errorf("%s: got\n%+v\nwant\n%+v", test.why, p.Spec, want)
		}
		if got := strings.Join(p.Assumed, " "); got != test.assumed {
			t.Errorf("%s: assumed %q, want %q", test.why, got, test.assumed)
		}
		nountest.Solved(t, p)
	}
}

// TestPieces: a piece may have as many hems as are counted, and cross as wide a ridge.
func TestPieces(t *testing.T) {
	p := planned(t, "double; first=1/4 in; depth=3/4 in")
	single := hem.Plan{Plies: 2}
	type row struct{ Finished, CutFor units.Length }
	for hems, want := range map[int]row{
		1: {l("10"), l("12")}, 2: {l("9"), l("13")}, 12: {l("-1"), l("23")},
		0: {}, -1: {}, hem.MaxHems + 1: {}, int(^uint(0) >> 1): {},
	} {
		if got := (row{p.Finished(l("11"), hems), p.CutFor(l("11"), hems)}); got != want {
			t.Errorf("%d hems: %v, want %v", hems, got, want)
		}
	}
	got := []int{p.Crossing(5), single.Crossing(5), p.Crossing(0), p.Crossing(-1), p.Crossing(hem.MaxRidge), p.Crossing(hem.MaxRidge + 1)}
	if diff := cmp.Diff([]int{15, 10, 0, 0, 3 * hem.MaxRidge, 0}, got); diff != "" {
		t.Error(diff)
	}
}

// TestStitchOnTheTurn: by default the row lies within the first turn, half way along
// it where that is nearer than the usual distance; as trimmed, where it is trimmed.
func TestStitchOnTheTurn(t *testing.T) {
	for _, c := range []struct {
		why         string
		hem         string
		stitch, raw string // from the inner fold, and from the raw edge
	}{
		{"a printed narrow hem", "narrow; first=1/16 in; depth=1/8 in", "1/32", "3/32"},
		{"finer still", "narrow; first=1/32 in; depth=1/8 in", "1/64", "3/64"},
		{"just wide enough", "narrow; first=1/8 in; depth=1/4 in", "1/16", "3/16"},
		{"half of the depth, no less", "rolled; first=1/16 in; depth=1/16 in", "1/32", "3/32"},
		{"a turn trimmed", "double; first=1/2 in; trim=3/32 in; depth=1 in", "3/64", "35/64"},
		{"a blind hem turned under by little", "blind; first=1/8 in; depth=2 in", "1/16", "3/16"},
		{"by more than its fold stands out", "blind; first=1/2 in; depth=2 in", "1/8", "5/8"},
		{"a blind hem of one fold", "blind; depth=2 in", "1/8", "1/8"},
		{"a facing turned by little", "faced; first=1/16 in; depth=2 in; seam=1/4 in", "1/32", "1/4"},
		{"a turn-up", "turn-up; first=3/8 in; depth=2 in", "3/16", "3/16"},
	} {
		p := planned(t, c.hem)
		stitch := maps.Collect(noun.Values(p.Spec.Hem))["stitch"]
		if stitch != l(c.stitch) || p.RawToStitch != l(c.raw) || !slices.Contains(p.Assumed, "stitch") {
			t.Errorf("%s: %v from the fold, %v from the raw edge, %q", c.why, stitch, p.RawToStitch, p.Assumed)
			continue
		}
		if _, err := p.Sections(units.Length{}); err != nil {
			t.Errorf("%s: %v", c.why, err)
		}
	}
}

// TestRowOnNothing: a row, or a turn, that the cloth is not there for is refused, and
// one a sixty-fourth within it is not.
func TestRowOnNothing(t *testing.T) {
	const (
		double  = "double; first=1/4 in; depth=1 in; stitch="
		trimmed = "narrow; first=1/2 in; trim=1/8 in; depth=1/4 in; stitch="
		blind   = "blind; first=3/16 in; depth=2 in; stitch="
		faced   = "faced; depth=1 in; seam=1/4 in; favour=1/8 in; first=1/4 in; stitch="
		turned  = "faced; depth=1 in; seam=1/4 in; favour=1/8 in; first="
	)
	for _, c := range []struct{ why, hem, at, want string }{
		{"on the raw edge of the turn", double, "1/4", "stitch 1/4 in: out of range, want less than 1/4 in (first), or the row does not catch the turn"},
		{"beyond it", double, "3/4", "stitch 3/4 in: out of range, want less than 1/4 in (first), or the row does not catch the turn"},
		{"on the raw edge as trimmed", trimmed, "1/8", "stitch 1/8 in: out of range, want less than 1/8 in (trim), or the row does not catch the turn"},
		{"blind, on the raw edge", blind, "3/16", "stitch 3/16 in: out of range, want less than 3/16 in (first), or the row does not catch the turn"},
		{"a facing, beside it", faced, "7/8", "stitch 7/8 in: out of range, want less than 7/8 in (depth less favour)"},
		{"a facing, on the raw edge of its turn", faced, "1/4", "stitch 1/4 in: out of range, want more or less than 1/4 in (first), where the raw edge of the turn lies"},
		{"a facing, its turn into the seam", turned, "57/64", "first 57/64 in: out of range, want at most 7/8 in (depth less favour)"},
	} {
		_, err := of(c.hem + c.at + " in").Plan()
		if !errors.Is(err, fault.Range) || err.Error() != c.want {
			t.Errorf("%s: %v", c.why, err)
			continue
		}
		if c.at == "3/4" {
			continue
		}
		if _, err := of(c.hem + l(c.at).Sub(l("1/64")).String()).Plan(); err != nil {
			t.Errorf("%s, less 1/64 in: %v", c.why, err)
		}
	}
}

// TestNothingElseBlamed: where one field is wrong, those that hang on it are not
// held against what could not be worked out.
func TestNothingElseBlamed(t *testing.T) {
	for hem, want := range map[string]string{
		"narrow; depth=1/4 in; take=1/4 in; trim=1/8 in":                                               "take",
		"double; first=1/4 in; take=1/4 in; trim=1/8 in":                                               "take",
		"circular; cut=1/4 in; first=1 in; take=1 in; radius=1/2 in":                                   "take",
		"double; first=1/4 in; depth=3/4 in; cut=1/2 in; slope=slope 1/8; edges=1000; sweep=62 1/2 in": "sweep",
		"double; first=1 in; depth=1/2 in; stitch=3/8 in":                                              "first",
		"narrow; first=1 in; trim=3/4 in; depth=1/2 in; stitch=3/8 in":                                 "trim",
		"faced; depth=1 in; seam=1/4 in; favour=1 in; first=1/2 in":                                    "favour",
	} {
		if _, err := of(hem).Plan(); strings.Join(blamed(err), " ") != want {
			t.Errorf("%s: %v", hem, err)
		}
	}
}

// TestFacingBeyondItsTurn: the row of a facing may lie beyond the turn of its free
// edge, which it then does not hold, as the sheet says.
func TestFacingBeyondItsTurn(t *testing.T) {
	for at, warned := range map[string]bool{"15/64": false, "17/64": true, "55/64": true} {
		sheet := planned(t, "bias-faced; depth=1 in; seam=1/4 in; favour=1/8 in; first=1/4 in; stitch="+at+" in").Sheet()
		if strings.Contains(strings.Join(strings.Fields(sheet.Text()), " "), "does not hold it") != warned {
			t.Errorf("%s in: warned %v", at, !warned)
		}
	}
	s := planned(t, "faced; depth=3/16 in; seam=1/4 in; favour=1/16 in").Spec.Hem.(hem.Faced)
	if s.First != l("1/8") || s.Stitch != l("1/16") {
		t.Errorf("a narrow facing turns what it has room for: %+v", s)
	}
}
