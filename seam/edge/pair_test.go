package edge

import (
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// crossed is an edge crossed by a seam of which each ply keeps 3/16 in.
func crossed(name, net, seam string, plies int) Spec {
	return Spec{Name: name, Net: in(net), Takes: []Take{{Name: seam, Drafted: in("5/8"), Taken: in("7/16"), Plies: plies}}}
}

func TestMatchFits(t *testing.T) {
	neck := crossed("neck", "16 1/2", "shoulder", 4)
	facing := Spec{Name: "facing", Net: in("16 1/2"), Takes: []Take{{Name: "facing shoulder", Drafted: in("5/8"), Plies: 4}}}
	armhole := Spec{Name: "armhole", Net: in("18 3/4"), Takes: []Take{
		{Name: "shoulder", Drafted: in("5/8"), Taken: in("7/16")}, {Name: "side", Drafted: in("5/8"), Taken: in("7/16")}}}
	sleeve := crossed("sleeve top", "19", "sleeve seam", 2)
	cut := crossed("cut neck", "16 1/2", "shoulder", 4)
	cut.Takes[0].Cut = in("7/16")
	for _, c := range []struct {
		why                          string
		m                            Pair
		drafted, sewn, change, limit string
		fit                          Fit
	}{
		{"a facing short by 3/4", Pair{Long: neck, Short: facing}, "0", "3/4", "3/4", "0", Mismatch},
		{"the same the other way round", Pair{Long: facing, Short: neck}, "0", "-3/4", "-3/4", "0", Mismatch},
		{"a sleeve shorter than its armhole is never negative ease", Pair{Long: sleeve, Short: armhole, MaxEase: units.Give(frac(1, 10))},
			"1/4", "-1/8", "-3/8", "39/20", Mismatch},
		{"the shoulders cut", Pair{Long: cut, Short: facing}, "0", "0", "0", "0", Fits},
		{"drafted ease, kept, is the limit", Pair{Long: Spec{Net: in("19")}, Short: Spec{Net: in("18 3/4")}}, "1/4", "1/4", "0", "1/4", Eases},
		{"a limit given takes it in", Pair{Long: neck, Short: facing, MaxEase: units.Give(frac(1, 22))}, "0", "3/4", "3/4", "3/4", Eases},
		{"a limit just short of it does not", Pair{Long: neck, Short: facing, MaxEase: units.Give(frac(1, 23))}, "0", "3/4", "3/4", "33/46", Mismatch},
		{"gathers", Pair{Long: Spec{Net: in("33 3/4")}, Short: Spec{Net: in("15 3/4")}, MaxEase: units.Give(frac(1, 20)), MaxGathers: frac(8, 7)},
			"18", "18", "0", "63/80", Gathers},
		{"gathers beyond their limit", Pair{Long: Spec{Net: in("33 3/4")}, Short: Spec{Net: in("15")}, MaxEase: units.Give(frac(1, 20)), MaxGathers: frac(8, 7)},
			"18 3/4", "18 3/4", "0", "3/4", Mismatch},
		{"drafted shorter gives no room", Pair{Long: Spec{Net: in("15")}, Short: Spec{Net: in("16")}}, "-1", "-1", "0", "0", Mismatch},
		{"one irrational crossing on both sides cancels", Pair{
			Long:  Spec{Net: in("16"), Takes: []Take{{Drafted: in("5/8"), Taken: in("7/16"), Slant: slope(1, 1)}}},
			Short: Spec{Net: in("15"), Takes: []Take{{Drafted: in("5/8"), Taken: in("7/16"), Slant: slope(1, 1)}}},
		}, "1", "1", "0", "1", Eases},
	} {
		t.Run(c.why, func(t *testing.T) {
			p, err := c.m.Plan()
			if err != nil {
				t.Fatal(err)
			}
			got := [...]units.Near{p.Drafted, p.Sewn, p.Change, p.Limit}
			for i, want := range [...]string{c.drafted, c.sewn, c.change, c.limit} {
				if got[i] != units.Exactly(in(want)) {
					t.Errorf("figure %d of drafted, sewn, change, limit is %v, want %s in", i, got[i], want)
				}
			}
			if p.Fit != c.fit {
				t.Errorf("%v, want %v", p.Fit, c.fit)
			}
			s := p.Sheet()
			if err := s.Check(); err != nil {
				t.Error(err)
			}
			warned := slices.ContainsFunc(s.Cautions, func(c ticket.Caution) bool { return strings.Contains(c.Text, "mismatch") })
			if warned != (p.Fit == Mismatch) || len(s.Cautions) > 1 {
				t.Errorf("cautions %v", s.Cautions)
			}
			if !strings.HasSuffix(s.Title, p.Fit.String()) {
				t.Errorf("the title is %q", s.Title)
			}
			again, err := p.Spec.Plan()
			if err != nil || again.Fit != p.Fit || again.Sewn != p.Sewn {
				t.Errorf("planning the solved match again: %v, %v", again.Fit, err)
			}
		})
	}
}

func TestMatchEaseGone(t *testing.T) {
	p, err := Pair{Long: crossed("sleeve top", "19", "sleeve seam", 2), Short: Spec{Name: "armhole", Net: in("19 3/8")}}.Plan()
	if err != nil || p.Fit != Fits {
		t.Fatal(p.Fit, err)
	}
	if n := len(p.Sheet().Cautions); n != 0 {
		t.Errorf("%d cautions; the pattern drew no ease", n)
	}
	p, err = Pair{Long: Spec{Name: "sleeve top", Net: in("19")}, Short: crossed("armhole", "18 3/4", "side", 2)}.Plan()
	if err != nil || p.Fit != Mismatch {
		t.Fatal(p.Fit, err)
	}
	p, err = Pair{Long: Spec{Name: "sleeve top", Net: in("19 1/8")}, Short: crossed("armhole", "18 3/4", "side", 2)}.Plan()
	if err != nil || p.Fit != Fits || len(p.Sheet().Cautions) != 1 {
		t.Errorf("%v, %v, cautions %v: the ease drawn is gone, which wants one", p.Fit, err, p.Sheet().Cautions)
	}
}

func TestMatchAssumed(t *testing.T) {
	p, err := Pair{
		Long:  Spec{Net: in("9"), Takes: []Take{{Drafted: in("5/8")}}},
		Short: Spec{Net: in("8"), Takes: []Take{{Drafted: in("5/8"), Plies: 1}}, Own: Take{Drafted: in("1/2"), Cut: in("1/2")}},
	}.Plan()
	want := []string{"long.name", "long.takes.cut", "long.takes.taken", "long.takes.plies", "short.name", "short.takes.cut", "short.takes.taken", "short.own.taken"}
	if err != nil || !slices.Equal(p.Assumed, want) {
		t.Errorf("assumed %q, %v, want %q", p.Assumed, err, want)
	}
	p, err = Pair{Long: Spec{Name: "a", Net: in("9")}, Short: Spec{Name: "b", Net: in("9")}, MaxEase: units.Give(frac(1, 9))}.Plan()
	if err != nil || len(p.Assumed) > 0 {
		t.Errorf("assumed %q, %v", p.Assumed, err)
	}
}

func TestMatchFaults(t *testing.T) {
	for _, c := range []struct {
		why  string
		m    Pair
		want string
	}{
		{"nothing", Pair{}, "long.along missing\nshort.along missing"},
		{"in order", Pair{
			Long: Spec{Name: "neck"}, Short: Spec{Name: "neck", Net: in("1"), Takes: []Take{{}}},
			MaxEase: units.Give(frac(-1, 1)), MaxGathers: frac(-1, 1),
		}, "long.along missing\nshort.takes[0].drafted missing\nshort.name conflict\nmaxEase sign\nmaxGathers sign"},
		{"gathers less than ease", Pair{Long: Spec{Net: in("1")}, Short: Spec{Net: in("1")}, MaxEase: units.Give(frac(1, 2)), MaxGathers: frac(1, 3)}, "maxGathers conflict"},
		{"a million takes", Pair{Long: Spec{Net: in("1"), Takes: make([]Take, 1_000_000)}, Short: Spec{Net: in("1")}}, "long.takes range"},
	} {
		_, err := c.m.Plan()
		if diff := cmp.Diff(c.want, faults(err)); diff != "" {
			t.Errorf("%s:\n%s", c.why, diff)
		}
	}
}

// all are the remedies of a match, each carried out and seen to mend it.
func all(t *testing.T, m Pair) (list []Remedy) {
	t.Helper()
	before, err := m.Plan()
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range before.Remedies {
		b, err := r.ApplyPair(before.Spec)
		if err != nil {
			t.Fatal(err)
		}
		after, err := b.Plan()
		if err != nil {
			t.Fatal(err)
		}
		if mended := before.Fit == Mismatch && after.Fit != Mismatch; mended != (r.Mends == 1) || after.Fit == Mismatch {
			t.Errorf("%v %s mends %d, and the fit is %v", r.Act, r.Seam, r.Mends, after.Fit)
		}
		if after.Change != r.Left && after.Change != r.Left.Neg() {
			t.Errorf("%v %s says %v is left; it is %v", r.Act, r.Seam, r.Left, after.Change)
		}
		if len(r.After) != 1 || r.After[0].Fit != after.Fit || r.After[0].Sewn != after.Sewn {
			t.Errorf("%v %s says it comes to %+v; it comes to %v, %v", r.Act, r.Seam, r.After, after.Sewn, after.Fit)
		}
		list = append(list, r)
	}
	return list
}

func TestMatchRemedies(t *testing.T) {
	neck := crossed("neck", "16 1/2", "shoulder", 4)
	facing := Spec{Name: "facing", Net: in("16 1/2"), Takes: []Take{{Name: "facing shoulder", Drafted: in("5/8"), Plies: 4}}}
	armhole := Spec{Name: "armhole", Net: in("18 3/4"), Takes: []Take{
		{Name: "shoulder", Drafted: in("5/8"), Taken: in("7/16")}, {Name: "side", Drafted: in("5/8"), Taken: in("7/16")}}}
	sleeve := crossed("sleeve top", "19", "sleeve seam", 2)
	type row struct {
		act        Act
		edge, seam string
		cut, take  string
		left       string
		cuts       int
	}
	for _, c := range []struct {
		why  string
		m    Pair
		want []row
	}{
		{"neck and facing", Pair{Long: neck, Short: facing}, []row{
			{CutDrift, "neck", "shoulder", "7/16 in", "7/16 in", "0 in", 4},
			{ChangePass, "neck", "shoulder", "5/8 in", "5/8 in", "0 in", 0},
			{SewPartner, "facing", "facing shoulder", "5/8 in", "7/16 in", "0 in", 0},
		}},
		{"neck and a collar that has no seam", Pair{Long: neck, Short: Spec{Name: "collar", Net: in("16 1/2")}}, []row{
			{CutDrift, "neck", "shoulder", "7/16 in", "7/16 in", "0 in", 4},
			{ChangePass, "neck", "shoulder", "5/8 in", "5/8 in", "0 in", 0},
			{SpreadPartner, "collar", "", "0 in", "0 in", "0 in", 0},
		}},
		{"sleeve and armhole", Pair{Long: sleeve, Short: armhole}, []row{
			{CutDrift, "armhole", "shoulder", "7/16 in", "7/16 in", "0 in", 2},
			{CutDrift, "armhole", "side", "7/16 in", "7/16 in", "0 in", 2},
			{ChangePass, "armhole", "shoulder", "5/8 in", "5/8 in", "0 in", 0},
			{ChangePass, "armhole", "side", "5/8 in", "5/8 in", "0 in", 0},
			{SewPartner, "sleeve top", "sleeve seam", "5/8 in", "1/4 in", "0 in", 0},
			{SewPartner, "sleeve top", "sleeve seam", "5/8 in", "3/8 in", "1/4 in", 0},
		}},
		{"nothing has moved", Pair{Long: facing, Short: Spec{Name: "collar", Net: in("16 1/2")}}, nil},
		{"moved, and within the limit", Pair{Long: neck, Short: facing, MaxEase: units.Give(frac(1, 20))}, nil},
		{"moved, and gathered", Pair{Long: neck, Short: facing, MaxGathers: frac(1, 1)}, nil},
		{"eased as drafted", Pair{Long: Spec{Net: in("19")}, Short: Spec{Net: in("18 3/4")}}, nil},
	} {
		var got []row
		for _, r := range all(t, c.m) {
			got = append(got, row{r.Act, r.Edge, r.Seam, r.Cut.String(), r.Take.String(), r.Left.String(), r.Cuts})
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s:\n%+v, want\n%+v", c.why, got, c.want)
		}
	}
}

func TestMatchRemediesOfParts(t *testing.T) {
	// One seam in unequal plies: to take the mean of what was cut mends it.
	m := Pair{
		Long: Spec{Name: "waist", Net: in("30"), Takes: []Take{
			{Name: "side", Drafted: in("1"), Taken: in("7/16"), Plies: 1}, {Name: "side", Drafted: in("5/8"), Taken: in("7/16"), Plies: 1}}},
		Short: Spec{Name: "band", Net: in("30"), Takes: []Take{
			{Name: "join", Drafted: in("5/8"), Slant: slope(1, 1)}, {Name: "end", Drafted: in("1/4"), Taken: in("1/4"), Plies: 1}}},
	}
	got := all(t, m)
	if len(got) != 2 || got[0].Act != CutDrift || got[1].Act != ChangePass || got[1].Take != in("13/16") {
		t.Errorf("%+v: the slanted join is not exact, the end has too little to give", got)
	}
}
