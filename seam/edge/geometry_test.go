package edge_test

import (
	"errors"
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/alter"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/ticket"
)

func in(num, den int64) units.Length { return units.Inch.Frac(num, den) }

func edgeOf(t *testing.T, e edge.Spec) edge.Plan {
	t.Helper()
	p, err := e.Plan()
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// A ply, an act or a fit one past the last is refused by its number, wherever it
// stands.
func TestOnePastTheLast(t *testing.T) {
	none := edge.UnderPly + 1
	if none.String() != "ply(3)" || edge.UnderPly.String() != "under" {
		t.Errorf("%v and %v", none, edge.UnderPly)
	}
	plain := seam.Any{Seam: seam.Plain{}}
	_, err := edge.Assembly{
		Seams: []edge.Joint{{Name: "shoulder", Spec: plain}},
		Edges: []edge.Course{{Name: "neck", Net: in(15, 1), Own: "shoulder", OwnPly: none, Crossings: []edge.Crossing{{Seam: "shoulder", Plies: 1, Ply: none}}}},
	}.Plan()
	if nountest.Paths(t, err) != "edges[0].crossings[0].ply edges[0].ownPly" || !errors.Is(err, fault.Unknown) {
		t.Error(err)
	}
}

// The first edge of an assembly cannot be its own partner any more than another.
func TestFirstEdgeAgainstItself(t *testing.T) {
	for _, name := range []string{"neck", "collar"} {
		_, err := edge.Assembly{
			Edges: []edge.Course{{Name: "neck", Net: in(15, 1)}, {Name: "collar", Net: in(15, 1)}},
			Pairs: []edge.Partners{{Long: name, Short: name}},
		}.Plan()
		if nountest.Paths(t, err) != "pairs[0].short" || !errors.Is(err, fault.Conflict) {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// As many zones, takes and crossings as may be are worked out, and each is looked at.
func TestAsManyAsMayBe(t *testing.T) {
	zones := make([]alter.Zone, alter.MaxZones)
	for i := range zones {
		zones[i] = alter.Zone{Length: in(1, 8), Share: units.RatioOf(1, 1)}
	}
	p, err := alter.Easing{Long: in(25, 2).Add(in(1, 4)), Zones: zones}.Plan()
	if err != nil || p.Ease != in(1, 4) || len(p.Zones) != alter.MaxZones {
		t.Errorf("%d zones: %v, %v", len(p.Zones), p.Ease, err)
	}
	takes := make([]edge.Take, edge.MaxTakes)
	for i := range takes {
		takes[i].Drafted = in(5, 8)
	}
	e := edge.Spec{Net: in(40, 1), Takes: takes}
	if q := edgeOf(t, e); q.Spec.Along != in(40, 1).Add(in(5, 4).MulInt(edge.MaxTakes)) {
		t.Errorf("%d takes: %v", len(takes), q.Spec.Along)
	}
	takes[edge.MaxTakes-1] = edge.Take{Drafted: in(-5, 8)}
	if _, err := e.Plan(); nountest.Paths(t, err) != "takes[49].drafted" {
		t.Error(err)
	}
}

// An edge of which nothing is left is refused with the measure that was given.
func TestNothingLeftOfEdge(t *testing.T) {
	take := edge.Take{Drafted: in(5, 8)}
	deep := edge.Take{Drafted: in(5, 8), Taken: in(9, 8)} // a seam taken deeper by 1/2 in
	for _, c := range []struct {
		edge edge.Spec
		want string
	}{
		{edge.Spec{Along: in(5, 4), Takes: []edge.Take{take}}, "along 1 1/4 in: out of range, want more than the drafted allowances take"},
		{edge.Spec{Net: in(1, 1), Takes: []edge.Take{deep}}, "net 1 in: out of range, want more than the seams take away from it"},
		{edge.Spec{Along: in(9, 4), Takes: []edge.Take{deep}}, "along 2 1/4 in: out of range, want more than the seams take away from it"},
		{edge.Spec{Net: in(1, 1), Turn: radians(-8, 5), Own: take}, "turn -1 3/5 rad: out of range, want a curve less tight than the allowance is wide"},
	} {
		if _, err := c.edge.Plan(); err == nil || err.Error() != c.want {
			t.Errorf("%+v:\n%v\nwant\n%s", c.edge, err, c.want)
		}
	}
	least := in(5, 4).Add(in(1, 64))
	if _, err := (edge.Spec{Along: least, Takes: []edge.Take{take}}).Plan(); err != nil {
		t.Errorf("%v: %v", least, err)
	}
}

// The sheet of an edge that no seam crosses has no line for what seams take of it.
func TestEdgeWithoutCrossings(t *testing.T) {
	for _, c := range []struct {
		edge edge.Spec
		want bool
	}{
		{edge.Spec{Along: in(15, 1)}, false},
		{edge.Spec{Along: in(15, 1), Takes: []edge.Take{{Drafted: in(5, 8)}}}, true},
		{edge.Spec{Net: in(15, 1)}, false},
	} {
		got := false
		for _, l := range edgeOf(t, c.edge).Sheet().Lines {
			got = got || l.Label == "drafted, between the seam lines"
		}
		if got != c.want {
			t.Errorf("%+v: %v", c.edge, got)
		}
	}
}

// The neck has two partners, facing and collar: more pairs than half of the edges.
func TestNeckOfTwoPartners(t *testing.T) {
	a := edge.Assembly{
		Edges: []edge.Course{{Name: "neck", Net: in(15, 1)}, {Name: "facing", Net: in(15, 1)}, {Name: "collar", Net: in(15, 1)}},
		Pairs: []edge.Partners{{Long: "neck", Short: "facing"}, {Long: "neck", Short: "collar"}},
	}
	p, err := a.Plan()
	if err != nil || p.Pairs[0].Fit != edge.Fits || p.Pairs[1].Fit != edge.Fits {
		t.Fatalf("%+v, %v", p, err)
	}
	if err := p.Sheet().Check(); err != nil {
		t.Error(err)
	}
}

// What a default filled in either edge of a match is named by itself.
func TestMatchAssumedByItself(t *testing.T) {
	whole := edge.Take{Name: "shoulder", Drafted: in(5, 8), Cut: in(5, 8), Taken: in(5, 8), Plies: 2}
	full := func() edge.Pair {
		line := func(name string) edge.Spec {
			return edge.Spec{Name: name, Along: in(15, 1), Takes: []edge.Take{whole}, Own: edge.Take{Name: "neck", Drafted: in(5, 8), Cut: in(5, 8), Taken: in(5, 8)}}
		}
		return edge.Pair{Long: line("neck"), Short: line("facing"), MaxEase: units.Give(units.RatioOf(1, 20)), MaxGathers: units.RatioOf(1, 10)}
	}
	for _, c := range []struct {
		want string
		drop func(m *edge.Pair)
	}{
		{"", func(*edge.Pair) {}},
		{"", func(m *edge.Pair) { m.MaxEase = units.Given[units.Ratio]{} }},
		{"long.name", func(m *edge.Pair) { m.Long.Name = "" }},
		{"long.takes.cut", func(m *edge.Pair) { m.Long.Takes[0].Cut = units.Length{} }},
		{"long.takes.taken", func(m *edge.Pair) { m.Long.Takes[0].Taken = units.Length{} }},
		{"long.takes.plies", func(m *edge.Pair) { m.Long.Takes[0].Plies = 0 }},
		{"long.own.cut", func(m *edge.Pair) { m.Long.Own.Cut = units.Length{} }},
		{"long.own.taken", func(m *edge.Pair) { m.Long.Own.Taken = units.Length{} }},
		{"short.name", func(m *edge.Pair) { m.Short.Name = "" }},
		{"short.takes.cut", func(m *edge.Pair) { m.Short.Takes[0].Cut = units.Length{} }},
		{"short.takes.taken", func(m *edge.Pair) { m.Short.Takes[0].Taken = units.Length{} }},
		{"short.takes.plies", func(m *edge.Pair) { m.Short.Takes[0].Plies = 0 }},
		{"short.own.cut", func(m *edge.Pair) { m.Short.Own.Cut = units.Length{} }},
		{"short.own.taken", func(m *edge.Pair) { m.Short.Own.Taken = units.Length{} }},
	} {
		m := full()
		c.drop(&m)
		if p, err := m.Plan(); err != nil || strings.Join(p.Assumed, " ") != c.want {
			t.Errorf("assumed %q, want %q; %v", p.Assumed, c.want, err)
		}
	}
}

// A seam that would have to take nothing is no remedy: taking nothing is not a seam.
// The side seam would have to grow the armhole by all that it takes.
func TestRemedyTakesSomething(t *testing.T) {
	m := edge.Pair{
		Long:    edge.Spec{Name: "sleeve top", Net: in(37, 4), Takes: []edge.Take{{Name: "sleeve seam", Drafted: in(5, 8), Taken: in(1, 4)}}},
		Short:   edge.Spec{Name: "armhole", Net: in(39, 4), Takes: []edge.Take{{Name: "side", Drafted: in(1, 8), Taken: in(1, 2)}}},
		MaxEase: units.Give(units.RatioOf(1, 20)),
	}
	if p, err := m.Plan(); err != nil || p.Fit != edge.Mismatch {
		t.Fatalf("%v, %v", p.Fit, err)
	}
	found := 0
	p, err := m.Plan()
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range p.Remedies {
		found++
		if r.Take.Sign() <= 0 {
			t.Errorf("%+v", r)
		}
	}
	if found == 0 {
		t.Error("no remedy at all")
	}
}

// 1: the cut edge of the neck is 2 3/16 in shorter than its seam line, that of the
// straight collar is not.
func TestSeamLineNotCutEdge(t *testing.T) {
	neck := edgeOf(t, edge.Spec{Net: in(33, 2), Own: edge.Take{Drafted: in(5, 8)}, Turn: radians(-7, 2)})
	nountest.ExactTo(t, "neck", neck.CutLength, in(229, 16))
	nountest.ExactTo(t, "less", neck.Drafted.Sub(neck.CutLength), in(35, 16))
	collar := edgeOf(t, edge.Spec{Net: in(33, 2), Own: edge.Take{Drafted: in(5, 8)}})
	nountest.ExactTo(t, "collar", collar.CutLength, in(33, 2))
}

// 2: changing the own allowance of the armhole and of the sleeve makes the ease
// grow by 1 1/10 in.
func TestOwnAllowance(t *testing.T) {
	own := edge.Take{Drafted: in(5, 8), Taken: in(3, 8)}
	armhole := edgeOf(t, edge.Spec{Net: in(75, 4), Own: own, Turn: radians(-3, 1)})
	nountest.ExactTo(t, "armhole", armhole.Change, in(-3, 4))
	sleeve := edgeOf(t, edge.Spec{Net: in(19, 1), Own: own, Turn: radians(7, 5)})
	nountest.ExactTo(t, "sleeve", sleeve.Change, in(7, 20))
	nountest.ExactTo(t, "ease", sleeve.Change.Sub(armhole.Change), in(11, 10))
	shy := edgeOf(t, edge.Spec{Net: in(33, 2), Own: edge.Take{Drafted: in(5, 8), Taken: in(1, 2)}, Turn: radians(-7, 2)})
	nountest.ExactTo(t, "neck sewn shy", shy.Change, in(-7, 16))
}

func slope(num, den int64) units.Angle   { return units.Slope(units.RatioOf(num, den)) }
func radians(num, den int64) units.Angle { return units.Radians(units.RatioOf(num, den)) }
func degrees(n int64) units.Angle        { return units.Degrees(units.RatioOf(n, 1)) }

// 3: the gain is d over the sine, and the two angles must add up.
func TestCrossingAtAnAngle(t *testing.T) {
	drift := edge.Take{Drafted: in(5, 8), Taken: in(7, 16), Plies: 1}
	square := edgeOf(t, edge.Spec{Net: in(33, 2), Takes: []edge.Take{drift}})
	nountest.ExactTo(t, "90 degrees", square.Change, in(3, 16))
	drift.Slant = degrees(75)
	nountest.NearTo(t, "75 degrees", edgeOf(t, edge.Spec{Net: in(33, 2), Takes: []edge.Take{drift}}).Change, "0.1941 in")
	drift.Slant = slope(4, 3)
	nountest.ExactTo(t, "tangent 4/3", edgeOf(t, edge.Spec{Net: in(33, 2), Takes: []edge.Take{drift}}).Change, in(15, 64))
	drift.Plies = 2
	nountest.ExactTo(t, "two shoulders", edgeOf(t, edge.Spec{Net: in(33, 2), Takes: []edge.Take{drift, drift}}).Change, in(15, 16))

	for _, c := range []struct {
		why         string
		front, back units.Angle
		kink        units.Angle
	}{
		{"square", units.Angle{}, units.Angle{}, units.Angle{}},
		{"make two right angles", slope(4, 3), quarter(slope(3, 4)), units.Angle{}},
		{"a peak", slope(4, 3), units.Angle{}, slope(3, 4)},
		{"a dip", quarter(slope(3, 4)), slope(4, 1), slope(-8, 19)},
		{"a spike", slope(1, 3), slope(1, 2), degrees(135)},
		{"a right angle", slope(1, 2), slope(2, 1), degrees(90)},
		{"degrees", degrees(70), degrees(100), degrees(10)},
	} {
		p, err := edge.Meeting{Drafted: in(5, 8), Taken: in(7, 16), Front: c.front, Back: c.back}.Plan()
		if err != nil || p.Kink != c.kink {
			t.Errorf("%s: kink %v, want %v; %v", c.why, p.Kink, c.kink, err)
		}
		if err := p.Sheet().Check(); err != nil {
			t.Error(err)
		}
	}
}

// quarter is an angle beyond a right one.
func quarter(a units.Angle) units.Angle {
	b, err := degrees(90).Add(a)
	if err != nil {
		panic(err)
	}
	return b
}

// 4: at 75 degrees a mirrored and a straight allowance part by 0.10 in.
func TestMirroredAllowance(t *testing.T) {
	p, err := edge.Meeting{Drafted: in(5, 8), Taken: in(7, 16), Front: degrees(75)}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	nountest.NearTo(t, "the parting", p.FrontPart, "0.1005 in")
	if !p.BackPart.IsZero() {
		t.Errorf("a square piece parts by %v", p.BackPart)
	}
}

// 11: 1/16 in a row is 1/4 in round the body.
func TestErrorBudget(t *testing.T) {
	take := edge.Take{Drafted: in(5, 8)}
	p := edgeOf(t, edge.Spec{Net: in(85, 2), Takes: []edge.Take{take, take}})
	if p.Budget() != in(1, 4) {
		t.Errorf("%v", p.Budget())
	}
}

// The limit of ease is said to be what the pattern drew where it is that, and beside
// it stands what lies smooth; more than that is warned of.
func TestEaseDrawnAndSmooth(t *testing.T) {
	for _, c := range []struct {
		long   units.Length
		ease   units.Given[units.Ratio]
		label  string
		limit  units.Length
		warned bool
	}{
		{in(17, 1), units.Given[units.Ratio]{}, "ease that the pattern drew, which is the limit here", in(1, 1), false},
		{in(18, 1), units.Given[units.Ratio]{}, "ease that the pattern drew, which is the limit here", in(2, 1), true},
		{in(18, 1), units.Give(units.RatioOf(1, 4)), "most that may be eased in, by the limit given", in(4, 1), true},
		{in(16, 1), units.Give(units.RatioOf(1, 4)), "most that may be eased in, by the limit given", in(4, 1), false},
	} {
		p, err := edge.Pair{Long: edge.Spec{Name: "sleeve", Net: c.long}, Short: edge.Spec{Name: "armhole", Net: in(16, 1)}, MaxEase: c.ease}.Plan()
		if err != nil {
			t.Fatal(err)
		}
		sh := p.Sheet()
		if got := lineOf(t, sh, c.label).Result; got != ticket.Long(c.limit) {
			t.Errorf("%v: %v, want %v", c.long, got, c.limit)
		}
		if got := lineOf(t, sh, "most that lies smooth, in cloth like lawn").Result; got != ticket.Long(in(1, 1)) {
			t.Errorf("%v lies smooth", got)
		}
		warned := false
		for _, one := range sh.Cautions {
			warned = warned || strings.Contains(one.Text, "lies smooth")
		}
		if warned != c.warned {
			t.Errorf("%v on 16 in: warned %v", c.long, warned)
		}
	}
}

// lineOf is the line of a sheet so labelled.
func lineOf(t *testing.T, sh ticket.Sheet, label string) ticket.Line {
	t.Helper()
	if err := sh.Check(); err != nil {
		t.Error(err)
	}
	for _, l := range sh.Lines {
		if l.Label == label {
			return l
		}
	}
	t.Errorf("no line %q in %+v", label, sh.Lines)
	return ticket.Line{}
}

// What is less than nothing longer is shorter.
func TestShorterIsSaid(t *testing.T) {
	line := func(name string, net units.Length) edge.Spec { return edge.Spec{Name: name, Net: net} }
	p, err := edge.Pair{Long: line("sleeve", in(18, 1)), Short: line("armhole", in(147, 8))}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	for _, label := range []string{"shorter as drafted", "shorter as sewn"} {
		if got := lineOf(t, p.Sheet(), label).Result; got != ticket.Long(in(3, 8)) {
			t.Errorf("%s: %v", label, got)
		}
	}
}
