package edge

import (
	"errors"
	"math/rand/v2"
	"reflect"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// provenBy carries a remedy out and counts what it has mended.
func provenBy(t *testing.T, a Assembly, before AssemblyPlan, r Remedy) AssemblyPlan {
	t.Helper()
	b, err := r.Apply(a)
	if err != nil {
		t.Fatalf("%v %s cannot be carried out: %v", r.Act, r.Seam, err)
	}
	after, err := b.Plan()
	if err != nil {
		t.Fatal(err)
	}
	mended, err := before.Mended(r)
	if err != nil || !reflect.DeepEqual(mended.Pairs, after.Pairs) || !reflect.DeepEqual(mended.Edges, after.Edges) || !reflect.DeepEqual(mended.Remedies, after.Remedies) {
		t.Fatalf("%v %s: mended, the plan is another: %v", r.Act, r.Seam, err)
	}
	if !reflect.DeepEqual(r.After, after.Pairs) {
		t.Fatalf("%v %s: it says that it comes to %+v; it comes to %+v", r.Act, r.Seam, r.After, after.Pairs)
	}
	mends, breaks := 0, 0
	for i, m := range after.Pairs {
		was := before.Pairs[i].Fit
		if was == Mismatch && m.Fit != Mismatch {
			mends++
		}
		if was != Mismatch && m.Fit == Mismatch {
			breaks++
		}
	}
	if mends != r.Mends || breaks != r.Breaks {
		t.Fatalf("%v %s says it mends %d and breaks %d; it mends %d and breaks %d", r.Act, r.Seam, r.Mends, r.Breaks, mends, breaks)
	}
	if before.Mismatched()-mends+breaks != after.Mismatched() {
		t.Fatalf("%v %s: the counts do not add up", r.Act, r.Seam)
	}
	if s := r.Step(); s.Do == "" {
		t.Fatalf("%v has no step", r.Act)
	}
	leaves(t, a, before, after, r)
	return after
}

// leaves looks that the greatest difference from what the pattern drew, in the
// pairs that a remedy touches, is what the remedy says it leaves.
func leaves(t *testing.T, a Assembly, before, after AssemblyPlan, r Remedy) {
	t.Helper()
	touched := func(name string) bool {
		if r.Act == SpreadPartner {
			return name == r.Edge
		}
		for _, c := range a.Edges {
			if c.Name != name {
				continue
			}
			for _, x := range c.Crossings {
				if x.Seam == r.Seam {
					return true
				}
			}
			return c.Own == r.Seam && r.Seam != "" && !c.Turn.IsZero()
		}
		return false
	}
	var most units.Near
	for i, m := range after.Pairs {
		left := m.Sewn.Sub(before.Pairs[i].Drafted)
		n, err := left.Sign()
		if err != nil {
			return // the difference of two slants alike: the remedy knows it exactly
		}
		if n < 0 {
			left = left.Neg()
		}
		if touched(a.Pairs[i].Long) || touched(a.Pairs[i].Short) {
			if more, err := left.Cmp(most); err == nil && more > 0 {
				most = left
			}
		}
	}
	if same, err := most.Cmp(r.Left); same != 0 && err == nil {
		t.Fatalf("%v %s says it leaves %v; it leaves %v", r.Act, r.Seam, r.Left, most)
	}
}

// passes are those of the seam as the remedy sews it.
func passes(r Remedy) (first, second units.Length) {
	switch s := r.Spec.Seam.(type) {
	case seam.French:
		return s.First, s.Second
	case seam.Plain:
		return s.First, second
	}
	return
}

func TestRemediesWorked(t *testing.T) {
	a := shirt("3/16", "1/4")
	before := mustPlan(t, a)
	rs, err := remedies(a)
	if err != nil {
		t.Fatal(err)
	}
	type row struct {
		act           Act
		edge, seam    string
		first, second string
		cut           string
		left          string
		mends, cuts   int
	}
	var got []row
	for _, r := range rs {
		provenBy(t, a, before, r)
		if r.Breaks != 0 {
			t.Errorf("%v %s breaks %d", r.Act, r.Seam, r.Breaks)
		}
		first, second := passes(r)
		got = append(got, row{r.Act, r.Edge, r.Seam, first.String(), second.String(), r.Cut.String(), r.Left.String(), r.Mends, r.Cuts})
	}
	want := []row{
		// The four shoulder edges cut at 7/16 mend all three pairs.
		{CutDrift, "neck", "shoulder", "3/16 in", "1/4 in", "7/16 in", "0 in", 3, 4},
		{ChangePass, "neck", "shoulder", "3/8 in", "1/4 in", "5/8 in", "0 in", 3, 0},
		// The side seam alone mends the sleeve, and makes the body as drafted.
		{CutDrift, "armhole", "side", "3/16 in", "1/4 in", "7/16 in", "0 in", 1, 4},
		{ChangePass, "armhole", "side", "3/8 in", "1/4 in", "5/8 in", "0 in", 1, 0},
		{SewPartner, "facing neck", "facing shoulder", "7/16 in", "0 in", "5/8 in", "0 in", 1, 0},
		{SewPartner, "sleeve top", "sleeve seam", "3/16 in", "3/16 in", "5/8 in", "1/4 in", 1, 0},
		// No seam crosses the collar: its pattern is spread to 15 3/4.
		{SpreadPartner, "collar", "", "0 in", "0 in", "0 in", "0 in", 1, 0},
	}
	if len(got) != len(want) {
		t.Errorf("%d remedies, want %d", len(got), len(want))
	}
	for i := range min(len(got), len(want)) {
		if got[i] != want[i] {
			t.Errorf("remedy %d is\n%+v, want\n%+v", i, got[i], want[i])
		}
	}

	// The best: neck and facing, neck and collar, sleeve and armhole.
	after := provenBy(t, a, before, rs[0])
	if after.Mismatched() != 0 {
		t.Errorf("%d pairs stay mismatched", after.Mismatched())
	}
	if m, _ := after.Pair("sleeve top", "armhole"); m.Sewn.String() != "1/4 in" || m.Fit != Eases {
		t.Errorf("the sleeve is longer by %v, %v", m.Sewn, m.Fit)
	}
	if e, _ := after.Edge("body at bust"); e.Sewn.String() != "43 1/4 in" {
		t.Errorf("the body is %v; only the shoulders were cut", e.Sewn)
	}
	// The facing sewn to the same drift leaves the collar short.
	for _, r := range rs {
		if r.Seam != "facing shoulder" {
			continue
		}
		after := provenBy(t, a, before, r)
		if e, _ := after.Edge("facing neck"); e.Sewn.String() != "17 1/4 in" {
			t.Errorf("the facing is %v", e.Sewn)
		}
		if m, _ := after.Pair("neck, centre to centre", "collar"); m.Fit != Mismatch || m.Sewn.String() != "3/4 in" {
			t.Errorf("the collar: longer by %v, %v", m.Sewn, m.Fit)
		}
	}
}

func TestRemediesControl(t *testing.T) {
	a := shirt("1/4", "1/4")
	before := mustPlan(t, a)
	rs, err := remedies(a)
	if err != nil || len(rs) == 0 {
		t.Fatal(rs, err)
	}
	after := provenBy(t, a, before, rs[0])
	if rs[0].Act != CutDrift || rs[0].Seam != "shoulder" || rs[0].Mends != 2 || after.Mismatched() != 0 {
		t.Errorf("the first is %v %s, mends %d", rs[0].Act, rs[0].Seam, rs[0].Mends)
	}
}

func TestRemediesWithinLimits(t *testing.T) {
	a := shirt("3/16", "1/4")
	a.Edges = append(a.Edges,
		Course{Name: "sleeve bottom", Net: in("16 3/4"), Crossings: []Crossing{{Seam: "sleeve seam"}}},
		Course{Name: "cuff", Net: in("9")})
	a.Pairs = []Partners{
		{Long: "neck", Short: "facing neck", MaxEase: units.Give(units.RatioOf(1, 20))},
		{Long: "sleeve bottom", Short: "cuff", MaxGathers: units.RatioOf(1, 1)},
		{Long: "collar", Short: "cuff", MaxGathers: units.RatioOf(2, 1)}, // has not moved
	}
	before := mustPlan(t, a)
	rs, err := remedies(a)
	if err != nil {
		t.Fatal(err)
	}
	if len(rs) != 0 {
		t.Errorf("%+v, and nothing is to be mended", rs)
	}
	if before.Pairs[0].Fit != Eases || before.Pairs[1].Fit != Gathers {
		t.Errorf("%v and %v", before.Pairs[0].Fit, before.Pairs[1].Fit)
	}
}

func TestRemediesOfSlant(t *testing.T) {
	// A slanted crossing: what its partner would have to take is irrational.
	a := shirt("3/16", "1/4")
	a.Edges[1].Crossings[0].Slant = slope(4, 1)
	a.Pairs = a.Pairs[:1]
	rs, err := remedies(a)
	if err != nil || len(rs) == 0 {
		t.Fatal(rs, err)
	}
	for _, r := range rs {
		if r.Seam == "facing shoulder" {
			t.Errorf("offered %v, which is not exact", r.Spec)
		}
	}
	// With a sine that is a fraction it is offered: tan 4/3, sine 4/5.
	a.Edges[1].Crossings[0].Slant = slope(4, 3)
	if rs, err = remedies(a); err != nil {
		t.Fatal(err)
	}
	last := rs[len(rs)-1]
	if last.Act != SewPartner || last.Take != in("19/40") {
		t.Errorf("%v, want 3/20 less than drafted: 3/4 over 4 plies and 5/4", last)
	}
	// A difference that is itself irrational leaves cutting and passes.
	a.Edges[0].Crossings[0].Slant = slope(1, 1)
	if rs, err = remedies(a); err != nil || len(rs) != 2 {
		t.Errorf("%v, %v", rs, err)
	}
}

func TestRemediesOfOwnSeam(t *testing.T) {
	// The armhole's own seam sewn at 3/8 makes a concave edge shorter.
	a := Assembly{
		Seams: []Joint{
			{"armhole seam", seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: in("5/8")}, First: in("3/8")}}},
			{"sleeve seam", seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: in("5/8")}, First: in("5/8")}}},
		},
		Edges: []Course{
			{Name: "armhole", Net: in("18 3/4"), Own: "armhole seam", Turn: radians(-3, 1)},
			{Name: "sleeve top", Net: in("19"), Own: "armhole seam", OwnPly: UnderPly, Turn: radians(7, 5), Crossings: []Crossing{{Seam: "sleeve seam"}}},
		},
		Pairs: []Partners{{Long: "sleeve top", Short: "armhole"}},
	}
	before := mustPlan(t, a)
	if m := before.Pairs[0]; m.Change != units.Exactly(in("1 1/10")) || m.Fit != Mismatch {
		t.Errorf("the ease grows by %v, %v, want 1 1/10", m.Change, m.Fit)
	}
	rs, err := remedies(a)
	if err != nil {
		t.Fatal(err)
	}
	if len(rs) != 5 || rs[0].Act != CutDrift || rs[0].Cuts != 2 || rs[1].Act != ChangePass || rs[2].Seam != "sleeve seam" || rs[2].Take != in("47/40") || rs[4].Net != in("19 17/20") {
		t.Errorf("%+v", rs)
	}
	for _, r := range rs {
		provenBy(t, a, before, r)
	}
}

func TestRemediesOfPartnersOwnSeam(t *testing.T) {
	// The collar has no seam across it, but a curved one along it: to move that
	// line out lengthens the collar.
	a := shirt("3/16", "1/4")
	a.Seams = append(a.Seams, Joint{"neck seam of the collar", seam.Any{Seam: seam.Plain{First: in("5/8")}}})
	a.Edges[3].Own, a.Edges[3].Turn = "neck seam of the collar", radians(3, 2)
	a.Pairs = a.Pairs[1:2]
	before := mustPlan(t, a)
	rs, err := remedies(a)
	if err != nil {
		t.Fatal(err)
	}
	last := rs[len(rs)-2]
	if last.Act != SewPartner || last.Take != in("1/8") {
		t.Errorf("%+v, want 3/4 in over 3/2: the seam sewn at 1/8", last)
	}
	provenBy(t, a, before, last)
}

func TestRemediesThatFail(t *testing.T) {
	// The cuff is only left because one seam keeps what another takes: to cut
	// the first would leave nothing of it, so that is not offered; the band, which
	// has no seam, can be made to follow.
	a := Assembly{
		Seams: []Joint{
			{"keeps", seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: in("1")}, First: in("1/2")}}},
			{"takes", seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: in("5/8")}, First: in("1 3/8")}}},
		},
		Edges: []Course{
			{Name: "cuff", Net: in("1"), Crossings: []Crossing{{Seam: "keeps"}, {Seam: "takes"}}},
			{Name: "band", Net: in("1")},
		},
		Pairs: []Partners{{Long: "cuff", Short: "band"}},
	}
	if p := mustPlan(t, a); p.Mismatched() != 1 {
		t.Fatalf("%v", p.Pairs[0].Fit)
	}
	rs, err := remedies(a)
	if err != nil || len(rs) != 1 || rs[0].Act != SpreadPartner || rs[0].Edge != "band" || rs[0].Net != in("1/2") {
		t.Errorf("%+v, %v", rs, err)
	}
	if _, err := (Remedy{Act: SpreadPartner, Edge: "brim", Net: in("1")}).Apply(a); faults(err) != "edge unknown" {
		t.Errorf("an edge that is not there: %v", err)
	}
	// A band as long as the cuff has lost cannot be folded to nothing.
	a.Edges[0].Net, a.Edges[1].Net = in("9/10"), in("1/2")
	if rs, err = remedies(a); err != nil || len(rs) != 0 {
		t.Errorf("%+v, %v", rs, err)
	}
}

func TestRemediesNone(t *testing.T) {
	a := shirt("3/8", "1/4")
	if rs, err := remedies(a); err != nil || len(rs) != 0 {
		t.Errorf("nothing has moved, and yet %v, %v", rs, err)
	}
	// A pattern that never went together has no drift to mend it.
	a.Edges[3].Net = in("14")
	rs, err := remedies(a)
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range rs {
		if r.Act != SewPartner {
			t.Errorf("%+v", r)
		}
	}
}

func TestRemediesProven(t *testing.T) {
	rnd := rand.New(rand.NewPCG(3, 16))
	met := map[Act]int{}
	for range 300 {
		a := anyAssembly(rnd)
		before := mustPlan(t, a)
		rs, err := remedies(a)
		if err != nil {
			t.Fatal(err)
		}
		for i, r := range rs {
			met[r.Act]++
			provenBy(t, a, before, r)
			if i == 0 {
				continue
			}
			if q := rs[i-1]; q.Mends < r.Mends || q.Mends == r.Mends && q.Breaks > r.Breaks {
				t.Fatalf("%+v stands before %+v", q, r)
			}
		}
	}
	for act := range acts.All() {
		if met[act] == 0 {
			t.Errorf("%v never came up", act)
		}
	}
}

func TestRemediesBounded(t *testing.T) {
	var a Assembly
	for i := range MaxSeams {
		a.Seams = append(a.Seams, Joint{"s" + units.RatioOf(int64(i), 1).String(), seam.Any{Seam: seam.French{First: in("3/16"), Second: in("1/4")}}})
	}
	for i := range MaxEdges {
		c := Course{Name: "e" + units.RatioOf(int64(i), 1).String(), Net: in("100")}
		if i%2 == 0 {
			for k := range 6 {
				c.Crossings = append(c.Crossings, Crossing{Seam: a.Seams[(i+k)%MaxSeams].Name, Slant: slope(int64(i+1), int64(k+1))})
			}
		}
		a.Edges = append(a.Edges, c)
	}
	for i := range MaxPairs - 1 {
		a.Pairs = append(a.Pairs, Partners{Long: a.Edges[i].Name, Short: a.Edges[i+1].Name})
	}
	rs, err := remedies(a)
	if err != nil || len(rs) > maxTries+MaxPairs {
		t.Errorf("%d remedies, %v", len(rs), err)
	}
}

func TestRemedyApplyFaults(t *testing.T) {
	a := shirt("3/16", "1/4")
	if _, err := (Remedy{}).Apply(a); !errors.Is(err, fault.Unknown) {
		t.Errorf("no act: %v", err)
	}
	if _, err := (Remedy{Act: CutDrift, Seam: "hem", Spec: a.Seams[0].Spec}).Apply(a); !errors.Is(err, fault.Unknown) {
		t.Errorf("no such seam: %v", err)
	}
	if s := (Remedy{}).Step(); s != (ticket.Step{}) {
		t.Errorf("no act, and yet a step: %v", s)
	}
	m := Pair{Long: Spec{Name: "neck", Net: in("16"), Takes: []Take{{Name: "shoulder", Drafted: in("5/8")}}}, Short: Spec{Name: "facing", Net: in("16")}}
	for _, c := range []struct {
		r    Remedy
		want string
	}{
		{Remedy{Edge: "neck", Seam: "shoulder"}, "act unknown"},
		{Remedy{Act: CutDrift, Edge: "hem", Seam: "shoulder"}, "edge unknown"},
		{Remedy{Act: CutDrift, Edge: "neck", Seam: "side"}, "seam unknown"},
		{Remedy{Act: CutDrift, Edge: "facing", Seam: "side"}, "seam unknown"},
	} {
		if _, err := c.r.ApplyPair(m); faults(err) != c.want {
			t.Errorf("%+v: %v, want %s", c.r, err, c.want)
		}
	}
}
