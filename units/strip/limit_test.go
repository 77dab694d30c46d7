package strip_test

import (
	"errors"
	"regexp"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/strip"
)

// TestTwoPieces joins two pieces, each of which loses one allowance: 2 x 24 7/8 in
// less 2 x 14 in is 21 3/4 in. A third piece loses two, which it has not.
func TestTwoPieces(t *testing.T) {
	want := in("21 3/4")
	for _, s := range []strip.Spec{
		{Pieces: 2, Each: in("24 7/8"), Allowance: in("14")},
		{Pieces: 2, Each: in("24 7/8"), Allowance: in("14"), Least: want},
		{Pieces: 2, Allowance: in("14"), Least: want},
		{Each: in("24 7/8"), Allowance: in("14"), Ends: in("1"), Least: in("19 3/4")}, // one would make 22 7/8
		{Each: in("24 7/8"), Allowance: in("12"), Ends: in("1/2"), Least: in("24 3/4")},
	} {
		p, err := s.Plan()
		if err != nil {
			t.Errorf("%+v: %v", s, err)
			continue
		}
		laid := p.Spec.Each.MulInt(int64(p.Spec.Pieces)).Sub(s.Allowance.MulInt(2 * int64(p.Spec.Pieces-1))).Sub(s.Ends.MulInt(2))
		if p.Sewn != laid || p.Spec.Each != in("24 7/8") {
			t.Errorf("%+v: %d pieces of %v make %v, laid out %v", s, p.Spec.Pieces, p.Spec.Each, p.Sewn, laid)
		}
	}
	// Two pieces make 22 in where one makes 21 1/2 in, though a third would be all joins.
	p, err := strip.Spec{Each: in("21 1/2"), Allowance: in("10 1/2"), Least: in("22")}.Plan()
	if err != nil || p.Spec.Pieces != 2 || p.Sewn != in("22") {
		t.Errorf("%d pieces make %v, %v", p.Spec.Pieces, p.Sewn, err)
	}
	b, err := strip.Binding{Joint: strip.Straight, Each: in("21 1/2"), Allowance: in("10 1/2"), Edge: in("22")}.Plan()
	if err != nil || b.Spec.Pieces != 2 || b.Sewn != units.Exactly(in("22")) {
		t.Errorf("%d pieces bind %v, %v", b.Spec.Pieces, b.Sewn, err)
	}
	for _, s := range []strip.Spec{
		{Pieces: 3, Each: in("24 7/8"), Allowance: in("14")},
		{Pieces: 2, Each: in("24 7/8"), Allowance: in("14"), Ring: true},
		{Each: in("24 7/8"), Allowance: in("14"), Least: in("40")},
	} {
		var f fault.Faults
		if _, err := s.Plan(); !errors.As(err, &f) || f[0].Path != "each" || !limit(f[0].Limit, in("28")) {
			t.Errorf("%+v: %v", s, err)
		}
	}
}

var measure = regexp.MustCompile(`-?[0-9][0-9 ./]* (in|mm)`)

// limit reports whether the first length that a limit names is l.
func limit(text string, l units.Length) bool {
	got, err := units.Parse(measure.FindString(text))
	return err == nil && got == l
}

// TestLimitsAreMeant gives each faulty binding what its fault asks for, which is
// then not refused again.
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
		l, err := units.Parse(measure.FindString(f[0].Limit))
		if err != nil {
			t.Errorf("%s: no length in %q", c.why, f[0].Limit)
			continue
		}
		if p, err := c.with(c.s, l).Plan(); err != nil {
			t.Errorf("%s: %v, and then: %v", c.why, f, err)
		} else {
			checkBinding(t, p)
		}
	}
}
