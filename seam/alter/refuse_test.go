package alter_test

import (
	"math"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/alter"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
)

func TestRefusals(t *testing.T) {
	minus := in(-1, 8)
	r := units.RatioOf
	inch := in(1, 1)
	plain := seam.Any{Seam: seam.Plain{}}
	for _, c := range []struct {
		why   string
		spec  any
		paths string // none for what is taken
		kind  fault.Kind
	}{
		{"no ease", alter.Easing{}, "long zones", fault.Missing},
		{"ease below zero", alter.Easing{Long: minus, Zones: []alter.Zone{{Name: "a\n", Length: minus, Share: r(-1, 1)}}, Limit: r(-1, 2)}, "long zones[0].name zones[0].length zones[0].share limit", fault.Sign},
		{"too many zones", alter.Easing{Long: inch, Zones: make([]alter.Zone, 1_000_000)}, "zones", fault.Range},
		{"ease with nowhere to go", alter.Easing{Long: in(2, 1), Zones: []alter.Zone{{Length: inch}}}, "zones", fault.Missing},
		{"less than no ease", alter.Easing{Long: in(1, 2), Zones: []alter.Zone{{Length: inch, Share: r(1, 1)}}}, "long", fault.Range},
		{"nothing let out", alter.Letting{}, "total seams", fault.Missing},
		{"too many seams", alter.Letting{Total: inch, Seams: make([]alter.Let, 1_000_000)}, "seams", fault.Range},
		{"seams that are none", alter.Letting{Total: inch, Seams: []alter.Let{{Name: "a\x00", Times: -1, Least: minus, Each: minus, Then: seam.Any{Seam: seam.Plain{First: minus}}}}},
			"seams[0].name seams[0].spec.kind seams[0].times seams[0].least seams[0].each", fault.Conflict},
		{"more than there is", alter.Letting{Total: inch, Seams: []alter.Let{{Spec: plain}}}, "total", fault.Range},
		{"each more than there is", alter.Letting{Total: inch, Seams: []alter.Let{{Spec: plain, Each: in(1, 2)}}}, "seams[0].each", fault.Range},
		{"each makes another total", alter.Letting{Total: inch, Seams: []alter.Let{{Spec: plain, Each: in(1, 8)}}}, "total", fault.Conflict},
		{"each makes more than the total", alter.Letting{Total: in(1, 8), Seams: []alter.Let{{Spec: plain, Each: in(1, 8)}, {Spec: plain}}}, "total", fault.Conflict},
		{"unequal plies", alter.Letting{Total: in(1, 8), Seams: []alter.Let{{Spec: seam.Any{Seam: seam.Lapped{Allowance: seam.Allowance{Drafted: in(5, 8)}, Turned: in(5, 8), Lap: in(1, 2)}}}}}, "seams[0].spec", fault.Conflict},
		{"a French seam too narrow", alter.Letting{Total: in(1, 4), Seams: []alter.Let{{Spec: seam.Any{Seam: seam.French{First: in(1, 8), Second: in(3, 16)}}, Least: in(1, 16)}}}, "seams[0].then", fault.Conflict},
		{"then French, of no width", alter.Letting{Total: in(5, 4).Sub(in(1, 16)), Seams: []alter.Let{{Spec: plain, Least: in(1, 64), Then: seam.Any{Seam: seam.French{}}}}}, "seams[0].then", fault.Conflict},
		{"nothing lengthened", alter.Lengthening{}, "by height", fault.Missing},
		{"lengthened below zero", alter.Lengthening{By: inch, Height: minus, Run: minus, WithRun: minus}, "height run withRun", fault.Sign},
		{"folded up", alter.Lengthening{By: in(-2, 1), Height: in(2, 1)}, "height", fault.Range},
		{"a partner all across", alter.Lengthening{By: inch, Height: in(3, 1), WithRun: in(3, 1)}, "withRun", fault.Range},
		{"the other edge all across once folded up", alter.Lengthening{By: in(-1, 1), Height: in(4, 1), WithRun: in(3, 1)}, "withRun", fault.Range},
		{"and before", alter.Lengthening{By: in(1, 1), Height: in(3, 1), WithRun: in(3, 1)}, "withRun", fault.Range},
		{"all that each ply has", alter.Letting{Total: in(3, 4), Seams: []alter.Let{{Spec: seam.Any{Seam: seam.Plain{}}, Each: in(3, 8)}}}, "", fault.Range},
		{"as many seams alike as may be", alter.Letting{Total: in(1, 8), Seams: []alter.Let{{Spec: seam.Any{Seam: seam.Plain{}}, Times: alter.MaxAlike}}}, "", fault.Range},
		{"one more", alter.Letting{Total: in(1, 8), Seams: []alter.Let{{Spec: seam.Any{Seam: seam.Plain{}}, Times: alter.MaxAlike + 1}}}, "seams[0].times", fault.Range},
	} {
		t.Run(c.why, func(t *testing.T) { nountest.Refused(t, alter.Nouns(), c.spec, c.paths, c.kind) })
	}
}

// What a fault says would have been right.
func TestLimits(t *testing.T) {
	plain := seam.Any{Seam: seam.Plain{}}
	for _, c := range []struct {
		spec any
		want string
	}{
		{alter.Letting{Total: in(1, 1), Seams: []alter.Let{{Spec: plain, Each: in(1, 8)}}}, "total 1 in: disagrees with what else is given, want 1/4 in (what each gives in all)"},
		{alter.Letting{Total: in(1, 1), Seams: []alter.Let{{Spec: plain}}}, "total 1 in: out of range, want at most 3/4 in (what the allowances can give)"},
		{alter.Lengthening{By: in(-2, 1), Height: in(2, 1)}, "height 2 in: out of range, want more than 2 in (what is folded up)"},
		{alter.Easing{Long: in(1, 1), Zones: []alter.Zone{{Length: in(2, 1)}}}, "long 1 in: out of range, want at least 2 in (all zones): an edge shorter than its partner is a mismatch"},
	} {
		if _, err := nountest.Planned(t, alter.Nouns(), c.spec); err == nil || err.Error() != c.want {
			t.Errorf("%+v:\n%v\nwant\n%s", c.spec, err, c.want)
		}
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

// Lengths beyond measure are worked out, or refused with a fault.
func TestHuge(t *testing.T) {
	for _, big := range []units.Length{huge(16), huge(400)} {
		for _, spec := range []any{
			alter.Easing{Long: big, Zones: []alter.Zone{{Length: in(1, 3), Share: units.RatioOf(1, 7)}}},
			alter.Letting{Total: big, Seams: []alter.Let{{Spec: seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: big}}}}}},
			alter.Lengthening{By: big, Height: in(1, 3), Run: big, WithRun: in(1, 7)},
		} {
			if _, err := nountest.Planned(t, alter.Nouns(), spec); err != nil {
				nountest.Paths(t, err)
			}
		}
	}
}
