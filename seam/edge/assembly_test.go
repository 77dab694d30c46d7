package edge

import (
	"errors"
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
)

func in(text string) units.Length { return units.MustParse(text + " in") }

// shirt is the highwayman's shirt: French seams on a pattern that drafted 5/8 in,
// the facing still plain, the collar without a seam.
func shirt(first, second string) Assembly {
	french := seam.Any{Seam: seam.French{Allowance: seam.Allowance{Drafted: in("5/8")}, First: in(first), Second: in(second)}}
	return Assembly{
		Seams: []Joint{
			{"shoulder", french},
			{"side", french},
			{"sleeve seam", french},
			{"facing shoulder", seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: in("5/8")}, First: in("5/8")}}},
		},
		Edges: []Course{
			{Name: "neck", Net: in("16 1/2"), Crossings: []Crossing{{Seam: "shoulder", Times: 2}}},
			{Name: "facing neck", Net: in("16 1/2"), Crossings: []Crossing{{Seam: "facing shoulder", Times: 2}}},
			{Name: "neck, centre to centre", Net: in("15"), Crossings: []Crossing{{Seam: "shoulder"}, {Seam: "shoulder"}}},
			{Name: "collar", Net: in("15")},
			{Name: "armhole", Net: in("18 3/4"), Crossings: []Crossing{{Seam: "shoulder"}, {Seam: "side"}}},
			{Name: "sleeve top", Net: in("19"), Crossings: []Crossing{{Seam: "sleeve seam"}}},
			{Name: "body at bust", Net: in("42 1/2"), Crossings: []Crossing{{Seam: "side", Times: 2}}},
		},
		Pairs: []Partners{
			{Long: "neck", Short: "facing neck"},
			{Long: "neck, centre to centre", Short: "collar"},
			{Long: "sleeve top", Short: "armhole"},
		},
	}
}

func mustPlan(t *testing.T, a Assembly) AssemblyPlan {
	t.Helper()
	p, err := a.Plan()
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// asSewn is every edge of a plan as sewn, by name.
func asSewn(t *testing.T, p AssemblyPlan) map[string]string {
	t.Helper()
	m := map[string]string{}
	for i, e := range p.Edges {
		name := p.Spec.Edges[i].Name
		m[name] = e.Sewn.String()
		if found, ok := p.Edge(name); !ok || found.Sewn != e.Sewn {
			t.Errorf("Edge(%q) is not the edge of that name", name)
		}
		if want := e.Drafted.Add(e.Change); want != e.Sewn {
			t.Errorf("%s: Drafted and Change are %v, Sewn is %v", name, want, e.Sewn)
		}
	}
	return m
}

func TestAssemblyWorked(t *testing.T) {
	for _, c := range []struct {
		why           string
		first, second string
		cut           string // shoulders cut at this; empty for as drafted
		edges         map[string]string
		short         []string // how much Long is longer, by pair
		fits          []Fit
	}{
		{
			why: "as sewn, nothing trimmed", first: "3/16", second: "1/4",
			edges: map[string]string{"neck": "17 1/4 in", "facing neck": "16 1/2 in", "neck, centre to centre": "15 3/4 in", "collar": "15 in",
				"armhole": "19 1/2 in", "sleeve top": "19 3/8 in", "body at bust": "43 1/4 in"},
			short: []string{"3/4 in", "3/4 in", "-1/8 in"}, fits: []Fit{Mismatch, Mismatch, Mismatch},
		},
		{
			why: "the shoulders cut to what they take", first: "3/16", second: "1/4", cut: "7/16",
			edges: map[string]string{"neck": "16 1/2 in", "facing neck": "16 1/2 in", "neck, centre to centre": "15 in", "collar": "15 in",
				"armhole": "19 1/8 in", "sleeve top": "19 3/8 in", "body at bust": "43 1/4 in"},
			short: []string{"0 in", "0 in", "1/4 in"}, fits: []Fit{Fits, Fits, Eases},
		},
		{
			why: "the control set", first: "1/4", second: "1/4",
			edges: map[string]string{"neck": "17 in", "facing neck": "16 1/2 in", "neck, centre to centre": "15 1/2 in", "collar": "15 in",
				"armhole": "19 1/4 in", "sleeve top": "19 1/4 in", "body at bust": "43 in"},
			short: []string{"1/2 in", "1/2 in", "0 in"}, fits: []Fit{Mismatch, Mismatch, Fits},
		},
		{
			why: "the control set, shoulders cut", first: "1/4", second: "1/4", cut: "1/2",
			edges: map[string]string{"neck": "16 1/2 in", "facing neck": "16 1/2 in", "neck, centre to centre": "15 in", "collar": "15 in",
				"armhole": "19 in", "sleeve top": "19 1/4 in", "body at bust": "43 in"},
			short: []string{"0 in", "0 in", "1/4 in"}, fits: []Fit{Fits, Fits, Eases},
		},
		{
			why: "passes of which the first is not the drift", first: "3/16", second: "5/16",
			edges: map[string]string{"neck": "17 in", "facing neck": "16 1/2 in", "neck, centre to centre": "15 1/2 in", "collar": "15 in",
				"armhole": "19 1/4 in", "sleeve top": "19 1/4 in", "body at bust": "43 in"},
			short: []string{"1/2 in", "1/2 in", "0 in"}, fits: []Fit{Mismatch, Mismatch, Fits},
		},
		{
			why: "the sign turned round: more is taken than was drawn", first: "3/8", second: "3/8",
			edges: map[string]string{"neck": "16 in", "facing neck": "16 1/2 in", "neck, centre to centre": "14 1/2 in", "collar": "15 in",
				"armhole": "18 1/4 in", "sleeve top": "18 3/4 in", "body at bust": "42 in"},
			short: []string{"-1/2 in", "-1/2 in", "1/2 in"}, fits: []Fit{Mismatch, Mismatch, Mismatch},
		},
	} {
		t.Run(c.why, func(t *testing.T) {
			a := shirt(c.first, c.second)
			if c.cut != "" {
				s := a.Seams[0].Spec.Cutting(in(c.cut), units.Length{})
				var err error
				if a, err = a.With("shoulder", s); err != nil {
					t.Fatal(err)
				}
			}
			p := mustPlan(t, a)
			if diff := cmp.Diff(c.edges, asSewn(t, p)); diff != "" {
				t.Error(diff)
			}
			bad := 0
			for i, m := range p.Pairs {
				if m.Sewn.String() != c.short[i] || m.Fit != c.fits[i] {
					t.Errorf("%s to %s: longer by %v, %v, want %v, %v", a.Pairs[i].Long, a.Pairs[i].Short, m.Sewn, m.Fit, c.short[i], c.fits[i])
				}
				if m.Fit == Mismatch {
					bad++
				}
				if q, ok := p.Pair(a.Pairs[i].Long, a.Pairs[i].Short); !ok || q.Fit != m.Fit {
					t.Errorf("Pair does not find pair %d", i)
				}
			}
			if p.Mismatched() != bad {
				t.Errorf("Mismatched is %d, want %d", p.Mismatched(), bad)
			}
			if err := p.Sheet().Check(); err != nil {
				t.Error(err)
			}
		})
	}
}

func TestAssemblyLookupMisses(t *testing.T) {
	p := mustPlan(t, shirt("3/16", "1/4"))
	if e, ok := p.Edge("hem"); ok || e.Spec.Name != "" {
		t.Error("there is no edge hem")
	}
	if m, ok := p.Pair("armhole", "sleeve top"); ok || m.Fit != 0 {
		t.Error("the pair is the other way round")
	}
}

func TestAssemblyUnequalPlies(t *testing.T) {
	// Drafted 1 in and 5/8 in, both sewn 7/16: 9/16 and 3/16 kept, 3/4 a seam.
	a := Assembly{
		Seams: []Joint{{"side", seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: in("1"), DraftedUnder: in("5/8")}, First: in("7/16")}}}},
		Edges: []Course{
			{Name: "waist", Net: in("30"), Crossings: []Crossing{{Seam: "side"}}},
			{Name: "front only", Net: in("15"), Crossings: []Crossing{{Seam: "side", Plies: 1}}},
			{Name: "back only", Net: in("15"), Crossings: []Crossing{{Seam: "side", Plies: 1, Ply: UnderPly}}},
			{Name: "hem", Net: in("40"), Crossings: []Crossing{{Seam: "side", Times: 2}}},
			{Name: "front edge", Net: in("20"), Own: "side", Turn: radians(2, 1)},
			{Name: "back edge", Net: in("20"), Own: "side", OwnPly: UnderPly, Turn: radians(2, 1)},
		},
	}
	p := mustPlan(t, a)
	want := map[string]string{"waist": "30 3/4 in", "front only": "15 9/16 in", "back only": "15 3/16 in", "hem": "41 1/2 in",
		"front edge": "21 1/8 in", "back edge": "20 3/8 in"}
	if diff := cmp.Diff(want, asSewn(t, p)); diff != "" {
		t.Error(diff)
	}
	if n := len(p.Edges[0].Spec.Takes); n != 2 {
		t.Errorf("%d takes, want one for each ply", n)
	}
	if want := []string{"tape", "edges.crossings.times", "edges.crossings.plies", "edges.crossings.ply", "edges.ownPly"}; !slices.Equal(p.Assumed, want) {
		t.Errorf("assumed %q, want %q", p.Assumed, want)
	}
	if err := p.Sheet().Check(); err != nil {
		t.Error(err)
	}
}

// TestShirtEveryKind sews each seam of the shirt in turn by every kind: each edge
// that the seam crosses moves by what the two plies give, once for every crossing,
// every pair of one such edge and one other by as much, and nothing else moves.
func TestShirtEveryKind(t *testing.T) {
	a := shirt("3/16", "1/4")
	before := mustPlan(t, a)
	changed := 0
	for j, joint := range a.Seams {
		for spec := range seam.Kinds() {
			kind := spec.Kind()
			spec = spec.With(seam.Allowance{Drafted: in("5/8")})
			b, err := a.With(joint.Name, spec)
			if err != nil {
				t.Fatalf("%s %v: %v", joint.Name, kind, err)
			}
			after := mustPlan(t, b)
			grown := after.Seams[j].Gain.Sub(before.Seams[j].Gain)
			moved := map[string]units.Near{}
			for i, c := range a.Edges {
				times := int64(0)
				for _, x := range c.Crossings {
					if x.Seam == joint.Name {
						times += int64(max(x.Times, 1))
					}
				}
				moved[c.Name] = units.Exactly(grown.MulInt(times))
				if got := after.Edges[i].Sewn.Sub(before.Edges[i].Sewn); got != moved[c.Name] {
					t.Errorf("%s %v: %s moves by %v, want %v", joint.Name, kind, c.Name, got, moved[c.Name])
				}
				if times > 0 && !grown.IsZero() {
					changed++
				}
				if after.Edges[i].Drafted != before.Edges[i].Drafted {
					t.Errorf("%s %v: %s was drawn %v", joint.Name, kind, c.Name, after.Edges[i].Drafted)
				}
			}
			for i, pair := range a.Pairs {
				want := moved[pair.Long].Sub(moved[pair.Short])
				if got := after.Pairs[i].Sewn.Sub(before.Pairs[i].Sewn); got != want {
					t.Errorf("%s %v: %s against %s moves by %v, want %v", joint.Name, kind, pair.Long, pair.Short, got, want)
				}
			}
			for i := range a.Seams {
				if i != j && !reflect.DeepEqual(after.Seams[i], before.Seams[i]) {
					t.Errorf("%s %v: the seam %s is another", joint.Name, kind, a.Seams[i].Name)
				}
			}
		}
	}
	if changed < 50 {
		t.Errorf("only %d edges changed", changed)
	}
}

func TestAssemblyWith(t *testing.T) {
	a := shirt("3/16", "1/4")
	before := shirt("3/16", "1/4")
	b, err := a.With("side", seam.Any{Seam: seam.Plain{First: in("5/8")}})
	if err != nil {
		t.Fatal(err)
	}
	b.Seams[0].Name, b.Edges[0].Name, b.Edges[0].Crossings[0].Seam, b.Pairs[0].Long = "x", "x", "x", "x"
	if !reflect.DeepEqual(before, a) {
		t.Errorf("With changed what it was given: %+v", a)
	}
	if _, err := a.With("hem", seam.Any{Seam: seam.Plain{}}); !errors.Is(err, fault.Unknown) {
		t.Errorf("a seam that is not there: %v", err)
	}
	b, _ = a.With("sleeve seam", seam.Any{Seam: seam.French{First: in("-1")}})
	_, err = b.Plan()
	var fs fault.Faults
	if !errors.As(err, &fs) || fs[0].Path != "seams[2].spec.first" {
		t.Errorf("a spec with a fault: %v", err)
	}
}

func TestAssemblyCopies(t *testing.T) {
	a := shirt("3/16", "1/4")
	p := mustPlan(t, a)
	a.Edges[0].Crossings[0].Seam = "side"
	if p.Spec.Edges[0].Crossings[0].Seam != "shoulder" {
		t.Error("the plan shares the caller's crossings")
	}
	if diff := cmp.Diff(asSewn(t, p), asSewn(t, mustPlan(t, p.Spec))); diff != "" {
		t.Errorf("planning the solved assembly again changes it:\n%s", diff)
	}
}

// faults are the paths and the kinds of an error's faults, one a line.
func faults(err error) string {
	var fs fault.Faults
	if !errors.As(err, &fs) {
		return ""
	}
	names := map[error]string{
		fault.Missing: "missing", fault.Unused: "unused", fault.Sign: "sign", fault.Range: "range",
		fault.Conflict: "conflict", fault.Unknown: "unknown", fault.Twice: "twice", fault.Form: "form", units.ErrBound: "bound",
	}
	var lines []string
	for _, f := range fs {
		lines = append(lines, f.Path+" "+names[f.Kind])
	}
	return strings.Join(lines, "\n")
}

func TestAssemblyFaults(t *testing.T) {
	plain := seam.Any{Seam: seam.Plain{}}
	ok := Course{Name: "neck", Net: in("16"), Crossings: []Crossing{{Seam: "a"}}}
	for _, c := range []struct {
		why  string
		a    Assembly
		want string
	}{
		{"nothing", Assembly{}, "edges missing"},
		{"all at once, in order", Assembly{
			Seams: []Joint{{"a", plain}, {"", plain}, {"a", seam.Any{}}, {strings.Repeat("x", 300), plain}, {"tab\t", plain}},
			Edges: []Course{
				{Name: "", Net: in("-1"), Own: "z", OwnPly: 9},
				{Name: "e", Crossings: []Crossing{{}, {Seam: "z", Times: -1, Plies: 3, Ply: 7, Slant: slope(-1, 2)}, {Seam: "a", Ply: UpperPly}}, OwnPly: UpperPly},
				ok,
				{Name: "e", Net: in("1"), Crossings: []Crossing{{Seam: "a", Times: MaxTimes + 1, Slant: units.Degrees(units.RatioOf(180, 1))}}},
			},
			Pairs: []Partners{{}, {Long: "e", Short: "e"}, {Long: "neck", Short: "e", MaxEase: units.Give(units.RatioOf(-1, 1)), MaxGathers: units.RatioOf(-1, 1)},
				{Long: "neck", Short: "e", MaxEase: units.Give(units.RatioOf(2, 1)), MaxGathers: units.RatioOf(1, 1)}},
		}, `seams[1].name missing
seams[2].name twice
seams[2].spec.kind missing
seams[3].name range
seams[4].name form
edges[0].name missing
edges[0].net sign
edges[0].own unknown
edges[0].ownPly unknown
edges[1].net missing
edges[1].crossings[0].seam missing
edges[1].crossings[1].seam unknown
edges[1].crossings[1].times range
edges[1].crossings[1].plies range
edges[1].crossings[1].ply unknown
edges[1].crossings[1].slant sign
edges[1].crossings[2].ply unused
edges[1].ownPly unused
edges[3].name twice
edges[3].crossings[0].times range
edges[3].crossings[0].slant range
pairs[0].long missing
pairs[0].short missing
pairs[1].short conflict
pairs[2].maxEase sign
pairs[2].maxGathers sign
pairs[3].short twice
pairs[3].maxGathers conflict`},
		{"counts before anything else", Assembly{
			Seams: make([]Joint, 1_000_000), Edges: []Course{{Crossings: make([]Crossing, 1_000_000)}}, Pairs: make([]Partners, 1_000_000),
		}, "seams range\nedges[0].crossings range\npairs range"},
		{"too many edges", Assembly{Edges: make([]Course, 1_000_000)}, "edges range"},
		{"an edge that the seams eat up", Assembly{
			Seams: []Joint{{"a", seam.Any{Seam: seam.Plain{First: in("3")}}}},
			Edges: []Course{{Name: "cuff", Net: in("4"), Crossings: []Crossing{{Seam: "a"}}}},
		}, "edges[0].net range"},
	} {
		_, err := c.a.Plan()
		if diff := cmp.Diff(c.want, faults(err)); diff != "" {
			t.Errorf("%s:\n%s", c.why, diff)
		}
	}
}

func TestAssemblySheet(t *testing.T) {
	p := mustPlan(t, shirt("3/16", "1/4"))
	s := p.Sheet()
	if err := s.Check(); err != nil {
		t.Fatal(err)
	}
	if want := len(p.Edges) + 2*len(p.Pairs); len(s.Lines) != want {
		t.Errorf("%d lines, want %d", len(s.Lines), want)
	}
	if len(s.Steps) != 5 || len(s.Cautions) != 3 {
		t.Errorf("%d steps and %d cautions, want a check for each of 5 edges that changed, and 3 mismatches", len(s.Steps), len(s.Cautions))
	}
	if got := s.Lines[0].Text(); !strings.Contains(got, "17 1/4 in") || !strings.Contains(got, "16 1/2 in") {
		t.Errorf("the neck reads %q", got)
	}
	for _, c := range s.Sources {
		if c.ID == "" && c.Known != source.Practice {
			t.Errorf("%q has no source and is not called practice", c.For)
		}
	}
}

// TestAssemblyLocal changes one seam at a time and sees that no edge moves that
// the seam does not cross.
func TestAssemblyLocal(t *testing.T) {
	rnd := rand.New(rand.NewPCG(5, 8))
	for range 300 {
		a := anyAssembly(rnd)
		p, err := a.Plan()
		if err != nil {
			t.Fatal(err)
		}
		j := rnd.IntN(len(a.Seams))
		name := a.Seams[j].Name
		b, err := a.With(name, anySeam(rnd))
		if err != nil {
			t.Fatal(err)
		}
		q, err := b.Plan()
		if err != nil {
			t.Fatal(err)
		}
		grown := q.Seams[j].Gain.Sub(p.Seams[j].Gain)
		for i, c := range a.Edges {
			times, slanted := 0, false
			for _, x := range c.Crossings {
				if x.Seam == name {
					times += max(x.Times, 1)
					slanted = slanted || !x.Slant.IsZero()
				}
			}
			moved := q.Edges[i].Sewn.Sub(p.Edges[i].Sewn)
			switch {
			case times == 0 && q.Edges[i].Sewn != p.Edges[i].Sewn:
				t.Fatalf("%s moved by %v, and %s does not cross it", c.Name, moved, name)
			case times > 0 && !slanted && moved.Mid() != grown.MulInt(int64(times)):
				t.Fatalf("%s moved by %v, want %d x %v", c.Name, moved, times, grown)
			}
			if q.Edges[i].Drafted != p.Edges[i].Drafted {
				t.Fatalf("what the pattern drew of %s has changed", c.Name)
			}
		}
	}
}

// anySeam is a seam of any kind that can be sewn.
func anySeam(rnd *rand.Rand) seam.Any {
	kinds := slices.Collect(seam.Kinds())
	for range 50 {
		s := kinds[rnd.IntN(len(kinds))].With(seam.Allowance{Drafted: units.Inch.Frac(rnd.Int64N(20)+8, 16)})
		if taking, ok := s.Taking(units.Inch.Frac(rnd.Int64N(16)+2, 16)); ok {
			s = taking
		}
		if rnd.IntN(3) == 0 {
			s = seam.Any{Seam: seam.French{Allowance: seam.Allowance{Drafted: in("5/8")}, First: units.Inch.Frac(rnd.Int64N(6)+2, 16), Second: units.Inch.Frac(rnd.Int64N(6)+3, 16)}}
		}
		if _, err := s.Plan(); err == nil {
			return s
		}
	}
	return seam.Any{Seam: seam.Plain{}}
}

func anyAssembly(rnd *rand.Rand) Assembly {
	var a Assembly
	for i := range 1 + rnd.IntN(4) {
		a.Seams = append(a.Seams, Joint{string(rune('a' + i)), anySeam(rnd)})
	}
	for i := range 2 + rnd.IntN(5) {
		c := Course{Name: string(rune('A' + i)), Net: units.Inch.Frac(rnd.Int64N(320)+320, 16)}
		for range rnd.IntN(4) {
			x := Crossing{Seam: a.Seams[rnd.IntN(len(a.Seams))].Name, Times: rnd.IntN(3)}
			if rnd.IntN(4) == 0 {
				x.Slant = slope(rnd.Int64N(5)+1, rnd.Int64N(5)+1)
			}
			c.Crossings = append(c.Crossings, x)
		}
		a.Edges = append(a.Edges, c)
	}
	for i := 1; i < len(a.Edges); i++ {
		q := Partners{Long: a.Edges[i-1].Name, Short: a.Edges[i].Name}
		if rnd.IntN(2) == 0 {
			q.MaxEase = units.Give(units.RatioOf(rnd.Int64N(4)+1, 50))
		}
		if rnd.IntN(3) == 0 {
			q.MaxGathers = units.RatioOf(rnd.Int64N(4)+1, 2)
		}
		a.Pairs = append(a.Pairs, q)
	}
	return a
}

func slope(num, den int64) units.Angle   { return units.Slope(units.RatioOf(num, den)) }
func radians(num, den int64) units.Angle { return units.Radians(units.RatioOf(num, den)) }

func remedies(a Assembly) ([]Remedy, error) {
	p, err := a.Plan()
	return p.Remedies, err
}
