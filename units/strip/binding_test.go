package strip_test

import (
	"errors"
	"fmt"
	"math"
	"math/big"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/strip"
)

// bound is the plan of a binding, held to what it promises.
func bound(t *testing.T, s strip.Binding) (strip.BindingPlan, error) {
	t.Helper()
	planned, err := nountest.Planned(t, strip.Nouns(), s)
	if err != nil {
		return strip.BindingPlan{}, err
	}
	p := planned.(strip.BindingPlan)
	nountest.Solved(t, p)
	// What a plan holds is settled: it is judged by its middle.
	sign := func(n units.Near) int { return n.Mid().Sign() }
	whole := units.Exactly(p.Spec.Each.MulInt(int64(p.Spec.Pieces)))
	if sign(p.Sewn) <= 0 || sign(p.Spare) < 0 || sign(p.PerJoin) < 0 || !meet(p.Sewn.Add(p.Lost), whole) {
		t.Fatalf("%v sewn and %v lost are not %v", p.Sewn, p.Lost, whole)
	}
	if p.Joins > 0 {
		first, last := p.Places[0], p.Places[p.Joins-1]
		if p.Spec.Ring && !meet(p.Sewn, last) || !p.Spec.Ring && sign(p.Sewn.Sub(last)) <= 0 || sign(first) <= 0 {
			t.Fatalf("%+v: the last join at %v of %v", p.Spec, last, p.Sewn)
		}
	}
	return p, nil
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
		p, err := bound(t, c.s)
		if err != nil {
			t.Errorf("%s: %v", c.why, err)
			continue
		}
		if p.Spec.Pieces != c.pieces || p.Spec.Each != in(c.each) || !meet(p.Sewn, c.sewn) || p.Wanted != in(c.wanted) {
			t.Errorf("%s: %d of %v make %v where %v is wanted", c.why, p.Spec.Pieces, p.Spec.Each, p.Sewn, p.Wanted)
		}
	}
}

// Bindings of random amounts are the same as those laid out piece by piece.
func TestBindingLaidOut(t *testing.T) {
	r := rand.New(rand.NewPCG(12, 26))
	planned, sharp := 0, 0
	for range nountest.Rounds(3000) {
		s := strip.Binding{Joint: strip.Joint(1 + r.IntN(3)), Each: length(r, 60), Allowance: length(r, 1), Ring: r.IntN(2) == 0, Edge: length(r, 900)}
		if s.Joint == strip.Crossed {
			s.Width = length(r, 3)
		}
		if !s.Ring && r.IntN(2) == 0 {
			s.Ends = length(r, 1)
		}
		if r.IntN(2) == 0 {
			s.Corners, s.Mitre, s.Over = 1+r.IntN(9), length(r, 1), length(r, 12)
		}
		p, err := bound(t, s)
		if err != nil {
			continue
		}
		planned++
		// Each piece begins where the one before ended, less the join.
		at := units.Exactly(p.Spec.Ends.Neg())
		if s.Ring {
			at = at.Sub(p.PerJoin.DivInt(2))
		}
		for k := 1; k <= p.Joins; k++ {
			at = at.Plus(s.Each).Sub(p.PerJoin.DivInt(2))
			if !meet(at, p.Places[k-1]) {
				t.Fatalf("%+v: join %d at %v, laid out %v", s, k, p.Places[k-1], at)
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
		q, err := bound(t, back)
		if err != nil {
			continue // so short a piece is all join
		}
		sharp++
		if !q.Spec.Each.IsMultiple(back.Step) || s.Each.Add(back.Step).Less(q.Spec.Each) {
			t.Fatalf("%+v: back to each %v", s, q.Spec.Each)
		}
		shorter := q.Spec
		shorter.Each = shorter.Each.Sub(back.Step)
		if _, err := shorter.Plan(); err == nil {
			t.Fatalf("%+v: one step less would do", q.Spec)
		}
	}
	if planned < 100 || sharp < 50 {
		t.Errorf("only %d bindings could be planned and %d turned round", planned, sharp)
	}
}

func TestBindingFaults(t *testing.T) {
	huge := in("1" + strings.Repeat("0", 300))
	// A piece that two thousand digits tell from what a join takes, and no fewer.
	ten := new(big.Int).Exp(big.NewInt(10), big.NewInt(2000), nil)
	near := new(big.Int).Sqrt(new(big.Int).Mul(big.NewInt(2), new(big.Int).Mul(ten, ten)))
	undecided := in("2").Scale(units.FromRat(new(big.Rat).SetFrac(near, ten)))
	for _, c := range []struct {
		s     strip.Binding
		paths string
		kind  fault.Kind
	}{
		{strip.Binding{}, "joint pieces each", fault.Missing},
		{strip.Binding{Joint: 9, Pieces: 1, Each: in("1")}, "joint", fault.Unknown},
		{strip.Binding{Joint: strip.Straight, Edge: in("9")}, "pieces each", fault.Missing},
		{strip.Binding{Joint: strip.Straight, Pieces: 2}, "each", fault.Missing},
		{strip.Binding{Joint: strip.Straight, Each: in("9")}, "pieces", fault.Missing},
		{strip.Binding{Joint: strip.Slanted, Pieces: -1, Each: in("-1"), Width: in("-1"), Allowance: in("-1"), Ends: in("-1"), Ring: true, Edge: in("-1"), Corners: -1, Mitre: in("-1"), Over: in("-1"), Step: in("-1")},
			"pieces each width allowance ends ends edge corners mitre over step", fault.Sign},
		{strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("9"), Width: in("1")}, "width", fault.Unused},
		{strip.Binding{Joint: strip.Crossed, Pieces: 2, Each: in("9")}, "width", fault.Missing},
		{strip.Binding{Joint: strip.Crossed, Pieces: 2, Each: in("9"), Width: in("1"), Allowance: in("3/4")}, "allowance", fault.Range},
		{strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("9"), Corners: 4, Mitre: in("1"), Over: in("1")}, "corners over", fault.Unused},
		{strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("9"), Edge: in("3"), Mitre: in("1")}, "mitre", fault.Unused},
		{strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("9"), Edge: in("3"), Corners: math.MaxInt}, "corners", fault.Range},
		{strip.Binding{Joint: strip.Slanted, Pieces: math.MaxInt, Each: in("1")}, "pieces", fault.Range},
		{strip.Binding{Joint: strip.Slanted, Pieces: 2, Allowance: in("1"), Edge: in("9")}, "step", fault.Missing},
		{strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("9 1/3"), Allowance: in("1"), Step: in("1/8")}, "step", fault.Conflict},
		{strip.Binding{Joint: strip.Slanted, Each: in("1.4"), Allowance: in("1/2"), Edge: in("30")}, "each", fault.Range},
		{strip.Binding{Joint: strip.Slanted, Pieces: 3, Each: in("1.4"), Allowance: in("1/2")}, "each", fault.Range},
		{strip.Binding{Joint: strip.Crossed, Pieces: 3, Each: in("4"), Width: in("2")}, "each", fault.Range},
		{strip.Binding{Joint: strip.Straight, Pieces: 1, Each: in("1"), Allowance: in("1/2"), Ring: true}, "each", fault.Range},
		{strip.Binding{Joint: strip.Straight, Pieces: 1, Each: in("1"), Ends: in("1/2")}, "each", fault.Range},
		{strip.Binding{Joint: strip.Straight, Pieces: 20, Each: in("1.1"), Allowance: in("1/2"), Ends: in("1")}, "ends", fault.Range},
		{strip.Binding{Joint: strip.Slanted, Each: in("1"), Edge: in("10001")}, "edge", fault.Range},
		{strip.Binding{Joint: strip.Slanted, Each: in("1"), Edge: huge}, "edge", fault.Range},
		{strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("9"), Allowance: in("1/4"), Edge: in("17 1/2")}, "edge", fault.Conflict},
		{strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("9"), Edge: in("17 1/2"), Corners: 2, Mitre: in("1/2")}, "edge", fault.Conflict},
		{strip.Binding{Joint: strip.Slanted, Pieces: 3, Each: undecided, Allowance: in("1")}, "allowance", units.ErrBound},
		{strip.Binding{Joint: strip.Slanted, Pieces: 2, Edge: in("1").Sub(undecided.DivInt(2)).Add(in("9")), Allowance: in("1/2"), Step: in("1/2")}, "step", units.ErrBound},
	} {
		nountest.Refused(t, strip.Nouns(), c.s, c.paths, c.kind)
	}
	p, err := strip.Binding{Joint: strip.Slanted, Pieces: strip.MaxPieces, Edge: huge, Step: in("1")}.Plan()
	if err != nil {
		t.Error(err)
	} else if l, ok := p.Sewn.Exact(); !ok || l != huge {
		t.Error(p.Sewn)
	}
}

// A faulty binding is given what its fault asks for, and is not refused again.
func TestLimitsAreMeant(t *testing.T) {
	mite := in("1/64")
	each := func(s strip.Binding, l units.Length) strip.Binding { s.Each = l.Add(mite); return s }
	edge := func(s strip.Binding, l units.Length) strip.Binding { s.Edge = l; return s }
	ends := func(s strip.Binding, l units.Length) strip.Binding { s.Ends = l.Sub(mite); return s }
	allowance := func(s strip.Binding, l units.Length) strip.Binding { s.Allowance = l; return s }
	for _, c := range []struct {
		why  string
		s    strip.Binding
		path string
		with func(strip.Binding, units.Length) strip.Binding
	}{
		{"crossed, pieces from each", strip.Binding{Joint: strip.Crossed, Each: in("1 1/2"), Width: in("2"), Edge: in("50")}, "each", each},
		{"crossed, above one join and below two", strip.Binding{Joint: strip.Crossed, Each: in("3"), Width: in("2"), Edge: in("50")}, "each", each},
		{"crossed, pieces given", strip.Binding{Joint: strip.Crossed, Pieces: 3, Each: in("3"), Width: in("2")}, "each", each},
		{"crossed, a ring", strip.Binding{Joint: strip.Crossed, Each: in("2"), Width: in("2"), Edge: in("50"), Ring: true}, "each", each},
		{"crossed, left too wide", strip.Binding{Joint: strip.Crossed, Pieces: 3, Each: in("40"), Width: in("2 1/2"), Allowance: in("2")}, "allowance", allowance},
		{"slanted, pieces from each", strip.Binding{Joint: strip.Slanted, Each: in("1"), Allowance: in("1/2"), Edge: in("5")}, "each", each},
		{"slanted, pieces given", strip.Binding{Joint: strip.Slanted, Pieces: 3, Each: in("1"), Allowance: in("1/2")}, "each", each},
		{"straight, the ends take all", strip.Binding{Joint: strip.Straight, Pieces: 1, Each: in("1"), Ends: in("1/2")}, "each", each},
		{"straight, two pieces", strip.Binding{Joint: strip.Straight, Pieces: 2, Each: in("1"), Allowance: in("1")}, "each", each},
		{"slanted, a join in the end", strip.Binding{Joint: strip.Slanted, Pieces: 20, Each: in("1 1/2"), Allowance: in("1/2"), Ends: in("1")}, "ends", ends},
		{"slanted, too short", strip.Binding{Joint: strip.Slanted, Pieces: 2, Each: in("9"), Allowance: in("1/4"), Edge: in("17 1/2")}, "edge", edge},
		{"crossed, too short for mitres and over", strip.Binding{Joint: strip.Crossed, Pieces: 3, Each: in("20"), Width: in("2"), Edge: in("55"), Corners: 4, Mitre: in("1/4"), Over: in("2")}, "edge", edge},
	} {
		_, err := c.s.Plan()
		var f fault.Faults
		if !errors.As(err, &f) || len(f) != 1 || f[0].Path != c.path {
			t.Errorf("%s: %v", c.why, err)
			continue
		}
		if _, err := bound(t, c.with(c.s, units.MustParse(f[0].Amounts[0]))); err != nil {
			t.Errorf("%s: %v, and then: %v", c.why, f, err)
		}
	}
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
	for _, line := range p.Sheet().Lines {
		fmt.Println(line.Text())
	}
	// Output:
	// 4 pieces
	// one slanted join: about 11/16 in
	// strip as sewn: about 117 7/8 in = 30 in each x 4 pieces - about 2 1/8 in the joins
	// wanted: 112 in = 110 in edge + 2 in over
	// to spare: about 5 7/8 in = about 117 7/8 in as sewn - 112 in wanted
}

// What a metric binding lacks is told in marks of a metric tape.
func TestMetricLimit(t *testing.T) {
	cm := func(s string) units.Length { return units.MustParse(s + " cm") }
	_, err := strip.Binding{Joint: strip.Slanted, Pieces: 3, Each: cm("2"), Allowance: cm("1")}.Plan()
	var f fault.Faults
	if !errors.As(err, &f) || f[0].Amounts[0] != "28.5 mm" {
		t.Error(err)
	}
}

// meet reports whether two enclosures have a length in common, as two of one length
// have.
func meet(a, b units.Near) bool {
	aLow, aHigh := a.Bounds()
	bLow, bHigh := b.Bounds()
	return !aHigh.Less(bLow) && !bHigh.Less(aLow)
}
