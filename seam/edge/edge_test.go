package edge

import (
	"errors"
	"math"
	"math/big"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

func frac(num, den int64) units.Ratio { return units.RatioOf(num, den) }

func TestEdgeWorked(t *testing.T) {
	shoulder := Take{Name: "shoulder", Drafted: in("5/8"), Taken: in("7/16")}
	for _, c := range []struct {
		why                        string
		e                          Spec
		drafted, sewn, change, cut string
	}{
		{
			"a neck crossed by two shoulders",
			Spec{Net: in("16 1/2"), Takes: []Take{shoulder, shoulder}},
			"16 1/2 in", "17 1/4 in", "3/4 in", "16 1/2 in",
		},
		{
			"the same as four plies, measured raw end to raw end",
			Spec{Along: in("19"), Takes: []Take{{Drafted: in("5/8"), Taken: in("7/16"), Plies: 4}}},
			"16 1/2 in", "17 1/4 in", "3/4 in", "16 1/2 in",
		},
		{
			"the shoulders cut to what they take",
			Spec{Net: in("16 1/2"), Takes: []Take{{Drafted: in("5/8"), Cut: in("7/16"), Taken: in("7/16"), Plies: 4}}},
			"16 1/2 in", "16 1/2 in", "0 in", "16 1/2 in",
		},
		{
			"a half armhole: the underarm end still open is one ply",
			Spec{Along: in("20 5/8"), Takes: []Take{shoulder, {Drafted: in("5/8"), Taken: in("7/16"), Plies: 1}}},
			"18 3/4 in", "19 5/16 in", "9/16 in", "18 3/4 in",
		},
		{
			"more taken than drawn",
			Spec{Net: in("15"), Takes: []Take{{Drafted: in("5/8"), Taken: in("3/4")}}},
			"15 in", "14 3/4 in", "-1/4 in", "15 in",
		},
		{
			"unequal plies, 1 and 5/8, both sewn 7/16",
			Spec{Net: in("30"), Takes: []Take{{Drafted: in("1"), Taken: in("7/16"), Plies: 1}, {Drafted: in("5/8"), Taken: in("7/16"), Plies: 1}}},
			"30 in", "30 3/4 in", "3/4 in", "30 in",
		},
		{
			"two shoulders aslant, tangent 4/3, sine 4/5: 15/64 a ply",
			Spec{Net: in("16 1/2"), Takes: []Take{{Drafted: in("5/8"), Taken: in("7/16"), Plies: 4, Slant: slope(4, 3)}}},
			"16 1/2 in", "17 7/16 in", "15/16 in", "16 1/2 in",
		},
		{
			"the same aslant from raw end to raw end: 25/32 a ply",
			Spec{Along: in("19 5/8"), Takes: []Take{{Drafted: in("5/8"), Taken: in("7/16"), Plies: 4, Slant: slope(4, 3)}}},
			"16 1/2 in", "17 7/16 in", "15/16 in", "16 1/2 in",
		},
		{
			"an armhole sewn at 3/8 where 5/8 was drawn: the curve is concave",
			Spec{Net: in("18 3/4"), Own: Take{Drafted: in("5/8"), Taken: in("3/8")}, Turn: radians(-3, 1)},
			"18 3/4 in", "18 in", "-3/4 in", "16 7/8 in",
		},
		{
			"a low cap, turning 7/5 the other way",
			Spec{Net: in("19"), Own: Take{Drafted: in("5/8"), Taken: in("3/8")}, Turn: radians(7, 5)},
			"19 in", "19 7/20", "7/20", "19 7/8 in",
		},
		{
			"a neck sewn 1/8 shy is tighter, and its cut edge shorter still",
			Spec{Net: in("16 1/2"), Own: Take{Drafted: in("5/8"), Taken: in("1/2")}, Turn: radians(-7, 2)},
			"16 1/2 in", "16 1/16 in", "-7/16 in", "14 5/16 in",
		},
		{
			"a neck bound instead of faced, 5/8 cut off first, stays where it was drawn",
			Spec{Net: in("16 1/2"), Own: Take{Drafted: in("5/8"), Cut: in("1/4"), Taken: in("1/4")}, Turn: radians(-7, 2)},
			"16 1/2 in", "16 1/2 in", "0 in", "15 5/8 in",
		},
		{
			"a straight edge moves with its own seam and stays as long",
			Spec{Net: in("15"), Own: Take{Drafted: in("5/8"), Taken: in("3/8")}},
			"15 in", "15 in", "0 in", "15 in",
		},
		{
			"metric: 1.5 cm is not 5/8 in",
			Spec{Net: units.MustParse("42 cm"), Takes: []Take{{Drafted: units.MustParse("15 mm"), Taken: units.MustParse("11 mm"), Plies: 4}}},
			"420 mm", "436 mm", "16 mm", "420 mm",
		},
	} {
		t.Run(c.why, func(t *testing.T) {
			p, err := c.e.Plan()
			if err != nil {
				t.Fatal(err)
			}
			got := [...]units.Near{p.Drafted, p.Sewn, p.Change, p.CutLength}
			for i, want := range [...]string{c.drafted, c.sewn, c.change, c.cut} {
				if !strings.HasSuffix(want, "in") && !strings.HasSuffix(want, "mm") {
					want += " in"
				}
				if got[i] != units.Exactly(units.MustParse(want)) {
					t.Errorf("figure %d of drafted, sewn, change, cutLength is %v, want %s", i, got[i], want)
				}
			}
			if err := p.Sheet().Check(); err != nil {
				t.Error(err)
			}
			again, err := p.Spec.Plan()
			if err != nil || again.Sewn != p.Sewn || len(again.Assumed) > 0 {
				t.Errorf("planning the solved edge again: %v, assumed %q, %v", again.Sewn, again.Assumed, err)
			}
		})
	}
}

func TestEdgeIrrational(t *testing.T) {
	// 45 degrees: each ply keeps 3/16 in, root 2 of that along the edge.
	take := Take{Name: "shoulder", Drafted: in("5/8"), Taken: in("7/16"), Plies: 1, Slant: slope(1, 1)}
	e := Spec{Name: "neck", Along: in("16"), Takes: []Take{take}}
	p, err := e.Plan()
	if err != nil {
		t.Fatal(err)
	}
	if !p.Spec.Net.IsZero() {
		t.Errorf("Net is solved to %v, which is not exact", p.Spec.Net)
	}
	for _, c := range []struct {
		what string
		got  units.Near
		want string
	}{
		{"drafted", p.Drafted, "15.1161 in"}, // 16 - 0.88388
		{"change", p.Change, ".2652 in"},
		{"sewn", p.Sewn, "15.3813 in"},
	} {
		if _, exact := c.got.Exact(); exact {
			t.Errorf("%s is exact", c.what)
		}
		mark, _, err := c.got.Round(in(".0001"), units.HalfAway)
		if err != nil || mark != units.MustParse(c.want) {
			t.Errorf("%s is %v, %v, want %s", c.what, mark, err, c.want)
		}
	}
	if err := p.Sheet().Check(); err != nil {
		t.Error(err)
	}
	if len(p.Sheet().Cautions) != 1 {
		t.Error("a slanted seam that drifts wants a caution")
	}
	e.Net = in("15")
	if _, err := e.Plan(); faults(err) != "net conflict" {
		t.Errorf("both given aslant: %v", err)
	}
	e.Along = units.Length{}
	if p, err = e.Plan(); err != nil || !p.Spec.Along.IsZero() {
		t.Errorf("Along is solved to %v, %v", p.Spec.Along, err)
	}
	// Roots that are one root come together: tangents 1 and 7 are both root 2.
	e.Takes = []Take{take, {Drafted: in("5/8"), Taken: in("1"), Plies: 1, Slant: slope(7, 1)}}
	e.Takes[1].Taken = in("5/8").Add(in("3/16").Scale(frac(7, 5)))
	if p, err = e.Plan(); err != nil || p.Change != (units.Near{}) {
		t.Errorf("what one keeps the other takes, and yet the edge changes by %v, %v", p.Change, err)
	}
}

func TestEdgeSolved(t *testing.T) {
	p, err := Spec{Along: in("19"), Takes: []Take{{Drafted: in("5/8"), Plies: 4}}, Own: Take{Drafted: in("1/2")}}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	e := p.Spec
	if e.Net != in("16 1/2") || e.Takes[0].Cut != in("5/8") || e.Takes[0].Taken != in("5/8") || e.Own.Taken != in("1/2") || e.Own.Plies != 0 {
		t.Errorf("%+v", e)
	}
	all := Spec{Net: in("9"), Takes: []Take{{Drafted: in("5/8")}}, Own: Take{Drafted: in("5/8")}}
	p, err = all.Plan()
	if want := []string{"takes.cut", "takes.taken", "takes.plies", "own.cut", "own.taken"}; err != nil || !slices.Equal(p.Assumed, want) {
		t.Errorf("assumed %q, %v, want %q", p.Assumed, err, want)
	}
	if all.Takes[0].Plies != 0 {
		t.Error("Plan wrote into the caller's takes")
	}
}

func TestEdgeFaults(t *testing.T) {
	drafted := in("5/8")
	for _, c := range []struct {
		why  string
		e    Spec
		want string
	}{
		{"nothing", Spec{}, "along missing"},
		{"all at once, in order", Spec{
			Name:  strings.Repeat("x", 201),
			Along: in("-1"), Net: in("-1"),
			Takes: []Take{
				{},
				{Name: "\n", Drafted: in("-1"), Cut: in("-1"), Taken: in("-1"), Plies: -1, Slant: slope(-1, 1)},
				{Drafted: drafted, Plies: math.MaxInt, Slant: slope(1, math.MaxInt64)},
				{Drafted: drafted, Cut: in("3/8")},
				{Drafted: drafted, Cut: in("3/8"), Taken: in("1/2")},
			},
			Own: Take{Cut: in("1"), Plies: 2, Slant: slope(1, 1)},
		}, `name range
along sign
net sign
takes[0].drafted missing
takes[1].name form
takes[1].drafted sign
takes[1].cut sign
takes[1].taken sign
takes[1].plies range
takes[1].slant sign
takes[2].plies range
takes[3].taken missing
takes[4].taken range
own.drafted missing
own.plies unused
own.slant unused`},
		{"a million takes", Spec{Net: in("1"), Takes: make([]Take, 1_000_000)}, "takes range"},
		{"two readings that disagree", Spec{Along: in("19"), Net: in("16"), Takes: []Take{{Drafted: drafted, Plies: 4}}}, "net conflict"},
		{"two readings that agree", Spec{Along: in("19"), Net: in("16 1/2"), Takes: []Take{{Drafted: drafted, Plies: 4}}}, ""},
		{"shorter than its allowances", Spec{Along: in("2"), Takes: []Take{{Drafted: drafted, Plies: 4}}}, "along range"},
		{"shorter than what is taken", Spec{Net: in("2"), Takes: []Take{{Drafted: drafted, Taken: in("2")}}}, "net range"},
		{"a curve tighter than the allowance", Spec{Net: in("2"), Own: Take{Drafted: drafted}, Turn: radians(-4, 1)}, "turn range"},
		{"huge", Spec{Net: units.MustParse("1" + strings.Repeat("0", 300) + " in"), Takes: []Take{{Drafted: drafted, Slant: slope(1, 1_000_000)}}}, ""},
		{"a tangent of a thousand places", Spec{Net: in("9"), Takes: []Take{{Drafted: drafted, Slant: units.Slope(power(10, 1000))}}}, ""},
	} {
		_, err := c.e.Plan()
		if diff := cmp.Diff(c.want, faults(err)); diff != "" {
			t.Errorf("%s:\n%s", c.why, diff)
		}
		if err != nil && len(err.Error()) > 10_000 {
			t.Errorf("%s: the fault has %d bytes", c.why, len(err.Error()))
		}
	}
	_, err := Spec{Along: in("19"), Net: in("16"), Takes: []Take{{Drafted: drafted, Plies: 4}}}.Plan()
	for _, side := range []string{"16 in", "16 1/2 in", "19 in", "2 1/2 in"} {
		if !strings.Contains(err.Error(), side) {
			t.Errorf("%q does not state %s", err, side)
		}
	}
}

func power(base, exp int64) units.Ratio {
	return units.FromRat(new(big.Rat).SetInt(new(big.Int).Exp(big.NewInt(base), big.NewInt(exp), nil)))
}

// nearRoot2 is a fraction that no enclosure of root 2 within the limit of work
// tells apart from it.
func nearRoot2() units.Ratio {
	x := big.NewRat(3, 2)
	for range 12 {
		half := new(big.Rat).Quo(big.NewRat(2, 1), x)
		x.Add(x, half).Quo(x, big.NewRat(2, 1))
	}
	return units.FromRat(x)
}

func TestEdgeBound(t *testing.T) {
	inch := in("1")
	wide := inch.Scale(nearRoot2())
	_, err := Spec{Along: wide, Takes: []Take{{Drafted: inch, Plies: 1, Slant: slope(1, 1)}}}.Plan()
	if !errors.Is(err, units.ErrBound) || faults(err) != "along bound" {
		t.Errorf("%.100v", err)
	}
	e := Spec{Net: inch.MulInt(4), Takes: []Take{{Drafted: inch.MulInt(3), Taken: inch.MulInt(2), Plies: 1, Slant: slope(1, 1)}}}
	m := Pair{Long: e, Short: Spec{Net: inch.MulInt(4).Add(wide)}}
	if _, err := m.Plan(); faults(err) != "long bound" {
		t.Errorf("%.100v", err)
	}
	a := Assembly{
		Seams: []Joint{{"s", seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: inch.MulInt(3)}, First: inch.MulInt(2)}}}},
		Edges: []Course{
			{Name: "long", Net: inch.MulInt(4), Crossings: []Crossing{{Seam: "s", Plies: 1, Slant: slope(1, 1)}}},
			{Name: "short", Net: inch.MulInt(4).Add(wide)},
		},
		Pairs: []Partners{{Long: "long", Short: "short"}},
	}
	if _, err := a.Plan(); faults(err) != "pairs[0].long bound" {
		t.Errorf("%.100v", err)
	}
}

// TestEdgeSquare sees that crossings, cut in any order and in parts, give one
// sum: as sewn less as drafted is plies times drift, whatever the other figures.
func TestEdgeSquare(t *testing.T) {
	rnd := rand.New(rand.NewPCG(4, 9))
	for range 500 {
		e := Spec{Net: units.Inch.Frac(rnd.Int64N(400)+800, 16)}
		var want units.Length
		for range rnd.IntN(6) {
			k := Take{Drafted: units.Inch.Frac(rnd.Int64N(20)+1, 16), Taken: units.Inch.Frac(rnd.Int64N(20)+1, 16), Plies: rnd.IntN(5)}
			plies := k.Plies
			if plies == 0 {
				plies = 2
			}
			want = want.Add(k.Drafted.Sub(k.Taken).MulInt(int64(plies)))
			e.Takes = append(e.Takes, k)
		}
		p, err := e.Plan()
		if err != nil {
			t.Fatal(err)
		}
		if p.Change != units.Exactly(want) {
			t.Fatalf("changes by %v, want %v", p.Change, want)
		}
		along := Spec{Along: p.Spec.Along, Takes: e.Takes}
		q, err := along.Plan()
		if err != nil || q.Sewn != p.Sewn || q.Spec.Net != e.Net {
			t.Fatalf("from Along it is %v, from Net %v, %v", q.Sewn, p.Sewn, err)
		}
		rnd.Shuffle(len(e.Takes), func(i, j int) { e.Takes[i], e.Takes[j] = e.Takes[j], e.Takes[i] })
		if q, err = e.Plan(); err != nil || q.Sewn != p.Sewn {
			t.Fatalf("in another order %v, %v", q.Sewn, err)
		}
	}
}

func TestEdgeSheet(t *testing.T) {
	p, err := Spec{
		Along: in("19"),
		Takes: []Take{{Drafted: in("5/8"), Taken: in("7/16"), Plies: 4}},
		Own:   Take{Name: "neck seam", Drafted: in("5/8"), Taken: in("1/2")}, Turn: radians(-7, 2),
	}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	s := p.Sheet()
	if err := s.Check(); err != nil {
		t.Fatal(err)
	}
	text := s.Text()
	for _, want := range []string{"16 13/16 in", "14 5/16 in", "neck seam moves the line out", "Assumed: takes.cut, own.cut"} {
		if !strings.Contains(text, want) {
			t.Errorf("the sheet does not say %q:\n%s", want, text)
		}
	}
	if s.Steps[0].Check.Want != ticket.About(p.Sewn) {
		t.Error("the check does not ask for the length as sewn")
	}
	for _, empty := range []ticket.Sheet{Plan{}.Sheet(), PairPlan{}.Sheet(), AssemblyPlan{}.Sheet()} {
		if err := empty.Check(); err != nil {
			t.Errorf("the sheet of an empty plan: %v", err)
		}
	}
}
