package strip_test

import (
	"encoding"
	"errors"
	"fmt"
	"math"
	"math/big"
	"math/rand/v2"
	"reflect"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/strip"
	"github.com/google/go-cmp/cmp"
)

func TestJoints(t *testing.T) {
	n := 0
	for j := range strip.Joints {
		n++
		text, err := j.MarshalText()
		var back strip.Joint
		if err != nil || back.UnmarshalText(text) != nil || back != j || !j.Valid() || string(text) != j.String() {
			t.Errorf("%v is written %s, %v and read as %v", j, text, err, back)
		}
		// Every joint makes a plan and a sheet.
		s := strip.Binding{Joint: j, Pieces: 3, Each: in("20"), Allowance: in("1/4"), Edge: in("40"), Corners: 2, Mitre: in("1/8"), Over: in("2"), Ends: in("1/2")}
		if j == strip.Crossed {
			s.Width = in("2")
		}
		p, err := s.Plan()
		if err != nil {
			t.Fatal(j, err)
		}
		checkBinding(t, p)
	}
	for range strip.Joints {
		break
	}
	if n != 3 || strip.NoJoint.Valid() || strip.NoJoint.String() != "none" || strip.Joint(9).Valid() || strip.Joint(9).String() != "Joint(9)" {
		t.Error(n, "joints")
	}
	var _ encoding.TextUnmarshaler = new(strip.Joint)
	j := strip.Crossed
	if err := j.UnmarshalText([]byte("butted")); err == nil || j != strip.Crossed {
		t.Error(j, err)
	}
	if err := j.UnmarshalText(nil); err != nil || j != strip.NoJoint {
		t.Error(j, err)
	}
	if text, err := j.MarshalText(); err != nil || len(text) != 0 {
		t.Error(text, err)
	}
	if _, err := strip.Joint(9).MarshalText(); err == nil {
		t.Error("no joint is written")
	}
}

// checkBinding holds a plan to what it promises.
func checkBinding(t *testing.T, p strip.BindingPlan) {
	t.Helper()
	again, err := p.Spec.Plan()
	if err != nil || !reflect.DeepEqual(again, p) {
		t.Fatalf("%+v\nplanned again is %+v, %v", p, again, err)
	}
	sheet := p.Sheet()
	if err := sheet.Check(); err != nil {
		t.Fatal(err)
	}
	if len(sheet.Steps) == 0 || len(sheet.Lines) == 0 || len(sheet.Cautions) == 0 || len(sheet.Sources) == 0 || sheet.Text() == "" {
		t.Fatalf("%+v: an empty sheet", p)
	}
	for _, c := range sheet.Sources {
		if _, ok := source.Lookup(c.ID); !ok && c.Known != source.Practice {
			t.Fatalf("no source %q", c.ID)
		}
	}
	// What a plan holds is settled: it is judged by its middle.
	sign := func(n units.Near) int { return n.Mid().Sign() }
	if sign(p.Sewn) <= 0 || sign(p.Spare) < 0 || sign(p.PerJoin) < 0 {
		t.Fatalf("%+v", p)
	}
	whole := units.Exactly(p.Spec.Each.MulInt(int64(p.Spec.Pieces)))
	if !meet(p.Sewn.Add(p.Lost), whole) {
		t.Fatalf("%v sewn and %v lost are not %v", p.Sewn, p.Lost, whole)
	}
	if p.Joins > 0 {
		last := p.Join(p.Joins)
		if p.Spec.Ring && !meet(p.Sewn, last) || !p.Spec.Ring && sign(p.Sewn.Sub(last)) <= 0 || sign(p.Join(1)) <= 0 {
			t.Fatalf("%+v: the last join at %v of %v", p.Spec, last, p.Sewn)
		}
	}
	if !p.Join(0).IsZero() || !p.Join(-1).IsZero() || !p.Join(p.Joins+1).IsZero() {
		t.Fatal("a join that is none")
	}
}

func TestBinding(t *testing.T) {
	root := func(times, exactly string) units.Near { // exactly + times x root 2
		return units.Diagonal().Of(in(times)).Plus(in(exactly))
	}
	exact := func(s string) units.Near { return units.Exactly(in(s)) }
	for _, c := range []struct {
		why    string
		s      strip.Binding
		pieces int
		each   string
		sewn   units.Near
		wanted string
	}{
		{"straight as in a strip", strip.Binding{Joint: strip.Straight, Pieces: 3, Each: in("12 1/4"), Allowance: in("1/2"), Ends: in("1/2")}, 3, "12 1/4", exact("33 3/4"), "0"},
		{"a ring of it", strip.Binding{Joint: strip.Straight, Pieces: 3, Each: in("12 1/4"), Allowance: in("1/2"), Ring: true}, 3, "12 1/4", exact("33 3/4"), "0"},
		{"slanted: each join takes half the root of 2", strip.Binding{Joint: strip.Slanted, Pieces: 3, Each: in("20"), Allowance: in("1/4")}, 3, "20", root("-1", "60"), "0"},
		{"slanted in a ring", strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("20"), Allowance: in("1/4"), Ring: true}, 2, "20", root("-1", "40"), "0"},
		{"slanted edge to edge", strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("20")}, 2, "20", exact("40"), "0"},
		{"crossed: each join takes the width", strip.Binding{Joint: strip.Crossed, Pieces: 3, Each: in("40"), Width: in("2 1/2"), Allowance: in("1/4")}, 3, "40", exact("115"), "0"},
		{"one piece", strip.Binding{Joint: strip.Slanted, Each: in("40"), Allowance: in("20"), Edge: in("39")}, 1, "40", exact("40"), "39"},
		{"one piece in a ring", strip.Binding{Joint: strip.Slanted, Pieces: 1, Each: in("40"), Allowance: in("1/4"), Edge: in("39"), Ring: true}, 1, "40", root("-1/2", "40"), "39"},
		{"pieces round a stool", strip.Binding{Joint: strip.Slanted, Each: in("30"), Allowance: in("1/4"), Edge: in("60"), Corners: 4, Mitre: in("1/4"), Over: in("2")}, 3, "30", root("-1", "90"), "63"},
		{"one too short for a ring by 3/10", strip.Binding{Joint: strip.Slanted, Each: in("20"), Allowance: in("1/4"), Edge: in("58"), Ring: true}, 4, "20", root("-2", "80"), "58"},
		{"not too short by 1/10 of that", strip.Binding{Joint: strip.Slanted, Each: in("20"), Allowance: in("1/4"), Edge: in("57 7/8"), Ring: true}, 3, "20", root("-3/2", "60"), "57 7/8"},
		{"each from pieces, up to an eighth", strip.Binding{Joint: strip.Slanted, Pieces: 3, Allowance: in("1/4"), Edge: in("60"), Step: in("1/8")}, 3, "20 1/2", root("-1", "61 1/2"), "60"},
		{"each from pieces, exactly", strip.Binding{Joint: strip.Crossed, Pieces: 3, Width: in("2"), Edge: in("60")}, 3, "21 1/3", exact("60"), "60"},
		{"each from pieces, up to an inch", strip.Binding{Joint: strip.Straight, Pieces: 3, Allowance: in("1/4"), Edge: in("60"), Ends: in("1/2"), Step: in("1")}, 3, "21", exact("61"), "60"},
		{"one piece needs no step", strip.Binding{Joint: strip.Slanted, Pieces: 1, Allowance: in("1/4"), Edge: in("60")}, 1, "60", exact("60"), "60"},
		{"all three agree", strip.Binding{Joint: strip.Straight, Pieces: 6, Each: in("40"), Allowance: in("1"), Edge: in("220"), Step: in("1/2")}, 6, "40", exact("230"), "220"},
	} {
		p, err := c.s.Plan()
		if err != nil {
			t.Errorf("%s: %v", c.why, err)
			continue
		}
		checkBinding(t, p)
		if p.Spec.Pieces != c.pieces || p.Spec.Each != in(c.each) || !meet(p.Sewn, c.sewn) || p.Wanted != in(c.wanted) || len(p.Assumed) > 0 {
			t.Errorf("%s: %d of %v make %v where %v is wanted", c.why, p.Spec.Pieces, p.Spec.Each, p.Sewn, p.Wanted)
		}
	}
}

func TestBindingSteps(t *testing.T) {
	for _, c := range []struct {
		s            strip.Binding
		steps, lines int
	}{
		{strip.Binding{Joint: strip.Slanted, Pieces: 1, Each: in("9")}, 1, 1},
		{strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("9"), Allowance: in("1/4")}, 2, 2},
		{strip.Binding{Joint: strip.Straight, Pieces: 3, Each: in("9"), Ends: in("1/4")}, 3, 1},
		{strip.Binding{Joint: strip.Crossed, Pieces: 3, Each: in("9"), Width: in("2"), Edge: in("12")}, 3, 3},
		{strip.Binding{Joint: strip.Crossed, Pieces: 3, Each: in("9"), Width: in("2"), Edge: in("12"), Corners: 3, Ring: true}, 4, 3},
		{strip.Binding{Joint: strip.Slanted, Pieces: 3, Each: in("9"), Allowance: in("1/4"), Ends: in("1/4"), Edge: in("12"), Corners: 3, Mitre: in("1/8"), Over: in("1")}, 5, 4},
	} {
		p, err := c.s.Plan()
		if err != nil {
			t.Fatal(err)
		}
		checkBinding(t, p)
		if sheet := p.Sheet(); len(sheet.Steps) != c.steps || len(sheet.Lines) != c.lines {
			t.Errorf("%+v: %d steps and %d lines, want %d and %d", c.s, len(sheet.Steps), len(sheet.Lines), c.steps, c.lines)
		}
	}
}

// TestBindingProperties lays the pieces out one by one.
func TestBindingProperties(t *testing.T) {
	r := rand.New(rand.NewPCG(12, 26))
	dens := []int64{1, 2, 3, 7, 8, 16, 25, 127}
	length := func(most int64) units.Length {
		return units.Inch.Frac(r.Int64N(most*8)+1, dens[r.IntN(len(dens))])
	}
	planned, sharp := 0, 0
	for range 3000 {
		s := strip.Binding{Joint: strip.Joint(1 + r.IntN(3)), Each: length(60), Allowance: length(1), Ring: r.IntN(2) == 0, Edge: length(900)}
		if s.Joint == strip.Crossed {
			s.Width = length(3)
		}
		if !s.Ring && r.IntN(2) == 0 {
			s.Ends = length(1)
		}
		if r.IntN(2) == 0 {
			s.Corners, s.Mitre, s.Over = 1+r.IntN(9), length(1), length(12)
		}
		p, err := s.Plan()
		if err != nil {
			continue
		}
		planned++
		checkBinding(t, p)
		// Each piece begins where the one before ended, less the join.
		at := units.Exactly(p.Spec.Ends.Neg())
		if s.Ring {
			at = at.Sub(p.PerJoin.DivInt(2))
		}
		for k := 1; k <= p.Joins; k++ {
			at = at.Plus(s.Each).Sub(p.PerJoin.DivInt(2))
			if !meet(at, p.Join(k)) {
				t.Fatalf("%+v: join %d at %v, laid out %v", s, k, p.Join(k), at)
			}
			at = at.Sub(p.PerJoin.DivInt(2))
		}
		if n := p.Spec.Pieces; n > 1 {
			fewer := s
			fewer.Pieces, fewer.Edge, fewer.Corners, fewer.Mitre, fewer.Over = n-1, units.Length{}, 0, units.Length{}, units.Length{}
			if q, err := fewer.Plan(); err == nil {
				if lo, _ := q.Sewn.Bounds(); !lo.Less(p.Wanted) {
					t.Fatalf("%+v: one piece less would do", s)
				}
			}
		}
		back := p.Spec
		back.Each, back.Step = units.Length{}, in("1/16")
		q, err := back.Plan()
		if err != nil {
			continue // so short a piece is all join
		}
		sharp++
		checkBinding(t, q)
		if !q.Spec.Each.IsMultiple(back.Step) || s.Each.Add(back.Step).Less(q.Spec.Each) {
			t.Fatalf("%+v: back to each %v", s, q.Spec.Each)
		}
		shorter := q.Spec
		shorter.Each = shorter.Each.Sub(back.Step)
		if _, err := shorter.Plan(); err == nil {
			t.Fatalf("%+v: one step less would do", q.Spec)
		}
	}
	if planned < 1000 || sharp < 500 {
		t.Errorf("only %d bindings could be planned and %d turned round", planned, sharp)
	}
}

func TestBindingFaults(t *testing.T) {
	huge := units.MustParse("1" + strings.Repeat("0", 300) + " in")
	// A piece that two thousand digits tell from what a join takes, and no fewer.
	ten := new(big.Int).Exp(big.NewInt(10), big.NewInt(2000), nil)
	near := new(big.Int).Sqrt(new(big.Int).Mul(big.NewInt(2), new(big.Int).Mul(ten, ten)))
	undecided := in("2").Scale(units.FromRat(new(big.Rat).SetFrac(near, ten)))
	for _, c := range []struct {
		why  string
		s    strip.Binding
		want string
		err  error
	}{
		{"nothing given", strip.Binding{}, "joint pieces each", fault.Missing},
		{"no such joint", strip.Binding{Joint: 9, Pieces: 1, Each: in("1")}, "joint", fault.Unknown},
		{"an edge alone", strip.Binding{Joint: strip.Straight, Edge: in("9")}, "pieces each", fault.Missing},
		{"pieces alone", strip.Binding{Joint: strip.Straight, Pieces: 2}, "each", fault.Missing},
		{"one piece alone", strip.Binding{Joint: strip.Straight, Each: in("9")}, "pieces", fault.Missing},
		{"everything wrong at once", strip.Binding{Joint: strip.Slanted, Pieces: -1, Each: in("-1"), Width: in("-1"), Allowance: in("-1"), Ends: in("-1"), Ring: true, Edge: in("-1"), Corners: -1, Mitre: in("-1"), Over: in("-1"), Step: in("-1")},
			"pieces each width allowance ends ends edge corners mitre over step", fault.Sign},
		{"a width that nothing reads", strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("9"), Width: in("1")}, "width", fault.Unused},
		{"no width", strip.Binding{Joint: strip.Crossed, Pieces: 2, Each: in("9")}, "width", fault.Missing},
		{"more left than stands out", strip.Binding{Joint: strip.Crossed, Pieces: 2, Each: in("9"), Width: in("1"), Allowance: in("3/4")}, "allowance", fault.Range},
		{"corners of nothing", strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("9"), Corners: 4, Mitre: in("1"), Over: in("1")}, "corners over", fault.Unused},
		{"mitres without corners", strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("9"), Edge: in("3"), Mitre: in("1")}, "mitre", fault.Unused},
		{"too many corners", strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("9"), Edge: in("3"), Corners: math.MaxInt}, "corners", fault.Range},
		{"far too many", strip.Binding{Joint: strip.Slanted, Pieces: math.MaxInt, Each: in("1")}, "pieces", fault.Range},
		{"no mark to go up to", strip.Binding{Joint: strip.Slanted, Pieces: 2, Allowance: in("1"), Edge: in("9")}, "step", fault.Missing},
		{"no such mark", strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("9 1/3"), Allowance: in("1"), Step: in("1/8")}, "step", fault.Conflict},
		{"a join takes the whole piece", strip.Binding{Joint: strip.Slanted, Each: in("1.4"), Allowance: in("1/2"), Edge: in("30")}, "each", fault.Range},
		{"and of pieces given", strip.Binding{Joint: strip.Slanted, Pieces: 3, Each: in("1.4"), Allowance: in("1/2")}, "each", fault.Range},
		{"two crossed joins overlap", strip.Binding{Joint: strip.Crossed, Pieces: 3, Each: in("4"), Width: in("2")}, "each", fault.Range},
		{"a ring of one piece shorter than its join", strip.Binding{Joint: strip.Straight, Pieces: 1, Each: in("1"), Allowance: in("1/2"), Ring: true}, "each", fault.Range},
		{"the ends take all", strip.Binding{Joint: strip.Straight, Pieces: 1, Each: in("1"), Ends: in("1/2")}, "each", fault.Range},
		{"a join in the end", strip.Binding{Joint: strip.Straight, Pieces: 20, Each: in("1.1"), Allowance: in("1/2"), Ends: in("1")}, "ends", fault.Range},
		{"too long for the pieces", strip.Binding{Joint: strip.Slanted, Each: in("1"), Edge: in("10001")}, "edge", fault.Range},
		{"longer than numbers go", strip.Binding{Joint: strip.Slanted, Each: in("1"), Edge: huge}, "edge", fault.Range},
		{"too short", strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("9"), Allowance: in("1/4"), Edge: in("17 1/2")}, "edge", fault.Conflict},
		{"too short by the mitres", strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("9"), Edge: in("17 1/2"), Corners: 2, Mitre: in("1/2")}, "edge", fault.Conflict},
		{"too many digits to tell", strip.Binding{Joint: strip.Slanted, Pieces: 3, Each: undecided, Allowance: in("1")}, "allowance", units.ErrBound},
		{"too many digits to round", strip.Binding{Joint: strip.Slanted, Pieces: 2, Edge: in("1").Sub(undecided.DivInt(2)).Add(in("9")), Allowance: in("1/2"), Step: in("1/2")}, "step", units.ErrBound},
	} {
		p, err := c.s.Plan()
		var faults fault.Faults
		if !errors.As(err, &faults) {
			t.Errorf("%s: no faults but %v", c.why, err)
			continue
		}
		var paths []string
		for _, f := range faults {
			paths = append(paths, f.Path)
			if f.Limit == "" || f.Kind == "" {
				t.Errorf("%s: %q names no limit or no kind", c.why, f)
			}
		}
		if d := cmp.Diff(c.want, strings.Join(paths, " ")); d != "" || !errors.Is(err, c.err) {
			t.Errorf("%s: %v\n%s", c.why, err, d)
		}
		if !reflect.DeepEqual(p, strip.BindingPlan{}) {
			t.Errorf("%s: a plan beside a fault", c.why)
		}
	}
	p, err := strip.Binding{Joint: strip.Slanted, Pieces: strip.MaxPieces, Edge: huge, Step: in("1")}.Plan()
	if err != nil {
		t.Error(err)
	} else if l, ok := p.Sewn.Exact(); !ok || l != huge {
		t.Error(p.Sewn)
	}
}

func FuzzBinding(f *testing.F) {
	f.Add(uint8(2), 3, int64(80), int64(1), int64(1), int64(0), int64(200), 4, int64(1), int64(8), int64(4), false)
	f.Add(uint8(3), 0, int64(160), int64(10), int64(1), int64(0), int64(900), 0, int64(0), int64(0), int64(4), true)
	f.Add(uint8(1), -1, int64(-1), int64(-1), int64(-1), int64(-1), int64(-1), -1, int64(-1), int64(-1), int64(3), true)
	f.Add(uint8(2), 2, int64(0), int64(0), int64(1<<62), int64(7), int64(1<<62), 1, int64(3), int64(1<<61), int64(7), false)
	f.Fuzz(func(t *testing.T, joint uint8, pieces int, each, width, allowance, ends, edge int64, corners int, mitre, over, den int64, ring bool) {
		if den == 0 {
			den = 1
		}
		l := func(n int64) units.Length { return units.Inch.Frac(n, den) }
		s := strip.Binding{Joint: strip.Joint(joint), Pieces: pieces, Each: l(each), Width: l(width), Allowance: l(allowance), Ends: l(ends), Ring: ring,
			Edge: l(edge), Corners: corners, Mitre: l(mitre), Over: l(over), Step: l(1)}
		p, err := s.Plan()
		if err == nil {
			checkBinding(t, p)
			return
		}
		var faults fault.Faults
		if !errors.As(err, &faults) || len(faults) == 0 {
			t.Fatalf("no faults: %v", err)
		}
		for _, f := range faults {
			if f.Path == "" || f.Kind == "" || f.Limit == "" {
				t.Fatalf("a fault without a field: %v", f)
			}
		}
	})
}

// The page's cape is bound with bias strips of 30 in, joined on the slant, all
// round and mitred at its two corners.
func ExampleBinding() {
	p, err := strip.Binding{
		Joint:     strip.Slanted,
		Each:      units.MustParse("30 in"),
		Allowance: units.MustParse("1/4 in"),
		Edge:      units.MustParse("110 in"),
		Corners:   2,
		Over:      units.MustParse("2 in"),
	}.Plan()
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(p.Spec.Pieces, "pieces")
	for _, line := range p.Working() {
		fmt.Println(line.Text())
	}
	// Output:
	// 4 pieces
	// one slanted join: about 11/16 in
	// strip as sewn: about 117 7/8 in = 30 in each x 4 pieces - about 2 1/8 in the joins
	// wanted: 112 in = 110 in edge + 2 in over
	// to spare: about 5 7/8 in = about 117 7/8 in as sewn - 112 in wanted
}

// meet reports whether two enclosures have a length in common, as two of one length
// have.
func meet(a, b units.Near) bool {
	aLow, aHigh := a.Bounds()
	bLow, bHigh := b.Bounds()
	return !aHigh.Less(bLow) && !bHigh.Less(aLow)
}
