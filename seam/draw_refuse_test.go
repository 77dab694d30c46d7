package seam_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// What cannot be drawn is named, all of it at once.
func TestSectionsRefuse(t *testing.T) {
	plan := func(s seam.Spec, change func(*seam.Plan)) seam.Plan {
		p := planned(t, s)
		if change != nil {
			change(&p)
		}
		return p
	}
	none := units.Length{}
	for _, c := range []struct {
		why   string
		plan  seam.Plan
		thick units.Length
		want  string
	}{
		{"no seam", seam.Plan{}, none, "spec.kind"},
		{"no kind", seam.Plan{Spec: seam.Spec{Kind: 99}}, in(-1, 8), "thickness spec.kind"},
		{"a thickness less than none", plan(seam.Spec{Kind: seam.Plain}, nil), in(-1, 8), "thickness"},
		{"a thickness of metres", plan(seam.Spec{Kind: seam.Plain}, nil), units.MustParse("3 m"), "thickness"},
		{"a ridge with no room", plan(seam.Spec{Kind: seam.French}, nil), in(1, 15), "spec.trim"},
		{"all too thick", plan(seam.Spec{Kind: seam.French}, nil), in(1, 2), "spec.first spec.trim spec.trim"},
		{"a pass narrower than the fold", plan(seam.Spec{Kind: seam.Welt, First: in(1, 2), Second: in(3, 8), Trim: in(5, 16)}, nil), in(1, 12), "spec.second"},
		{"layers", plan(seam.Spec{Kind: seam.Graded}, func(p *seam.Plan) { p.Spec.Layers = math.MaxInt32 }), none, "spec.layers"},
		{"no layers", plan(seam.Spec{Kind: seam.Graded}, func(p *seam.Plan) { p.Spec.Layers = 0 }), none, "spec.layers"},
		{"a seam of miles", plan(seam.Spec{Kind: seam.Plain, Drafted: units.MustParse("1000000 m")}, nil), none, "spec.first spec.trim"},
		{"a plan that was changed", plan(seam.Spec{Kind: seam.French}, func(p *seam.Plan) { p.Spec.Trim = p.Spec.Second }), none, "spec.trim"},
		{"and another", plan(seam.Spec{Kind: seam.Plain}, func(p *seam.Plan) { p.Spec.First, p.Spec.Trim = in(-1, 1), none }), none, "spec.first spec.trim"},
		{"a strip of miles", plan(seam.Spec{Kind: seam.HongKong, Strip: units.MustParse("3 m")}, nil), none, "spec.strip wrapped"},
	} {
		ds, err := c.plan.Sections(c.thick)
		if got := faultPaths(t, err); got != c.want || len(ds) > 0 {
			t.Errorf("%s: %q, want %q", c.why, got, c.want)
		}
	}
	// A changed plan whose figures contradict each other fails the check of the drawing.
	p := plan(seam.Spec{Kind: seam.Slot}, func(p *seam.Plan) { p.Finished = in(1, 1) })
	if ds, err := p.Sections(none); !errors.Is(err, fault.Conflict) || len(ds) > 0 {
		t.Errorf("a width that is none: %d drawings, %v", len(ds), err)
	}
}

// Nothing panics on a plan of any figures, and no picture comes of a bad one.
func TestSectionsOfAnything(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 1))
	huge := units.MustParse(strings.Repeat("9", 200) + " m")
	odd := func() units.Length {
		switch r.IntN(8) {
		case 0:
			return in(-r.Int64N(30), 16)
		case 1:
			return units.Length{}
		case 2:
			return huge.Scale(units.RatioOf(r.Int64N(3)-1, 7))
		}
		return in(r.Int64N(30), 16)
	}
	good, bad := 0, 0
	for range 6_000 {
		p, err := someSpec(r).Plan()
		for try := 0; err != nil && try < 20; try++ {
			p, err = someSpec(r).Plan()
		}
		if err != nil || r.IntN(10) == 0 {
			p = seam.Plan{Spec: seam.Spec{Kind: seam.Kind(r.IntN(20))}}
		}
		lengths := specLengths(&p.Spec)
		for range r.IntN(3) {
			switch n := r.IntN(len(lengths) + 4); {
			case n < len(lengths):
				*lengths[n].at = odd()
			case n == len(lengths):
				p.Spec.Layers, p.Plies = r.IntN(9)-1, r.IntN(9)-2
			case n == len(lengths)+1:
				p.Spec.Kind, p.Spec.Finish = seam.Kind(r.IntN(20)), seam.Finish(r.IntN(5))
			case n == len(lengths)+2:
				p.Finished, p.StripSingle = odd(), odd()
			default:
				p.Turned, p.Step, p.Wrapped = odd(), odd(), odd()
			}
		}
		var thick units.Length
		switch r.IntN(4) {
		case 0:
			thick = odd()
		case 1:
			thick = in(1, 64)
		}
		ds, err := p.Sections(thick)
		if err != nil {
			bad++
			if ds != nil {
				t.Fatalf("%+v: %v, and %d drawings", p, err, len(ds))
			}
			continue
		}
		good++
		for _, d := range ds {
			if err := d.Check(); err != nil {
				t.Fatalf("%+v: %v", p, err)
			}
		}
	}
	if good < 1_500 || bad < 1_500 {
		t.Errorf("%d good, %d bad", good, bad)
	}
}

// Each place of a seam that may be too tight, with the thickness that just fits.
func TestSectionsJustFit(t *testing.T) {
	one, half, quarter, eighth := in(1, 1), in(1, 2), in(1, 4), in(1, 8)
	fits := map[string]bool{}
	for _, c := range []struct {
		spec  seam.Spec
		thick units.Length
		path  string
	}{
		{seam.Spec{Kind: seam.Plain}, in(5, 16), "spec.first spec.trim"},
		{seam.Spec{Kind: seam.Plain, First: one, Trim: quarter}, eighth, "spec.trim"},
		{seam.Spec{Kind: seam.Plain, First: one, Finish: seam.Pinked}, in(1, 6), "spec.trim"},
		{seam.Spec{Kind: seam.Hairline, First: one, Trim: quarter}, eighth, "spec.trim"},
		{seam.Spec{Kind: seam.French, First: one, Second: one, Trim: eighth}, in(1, 12), "spec.trim"},
		{seam.Spec{Kind: seam.French, First: one, Second: quarter, Trim: eighth}, in(1, 16), "spec.trim"},
		{seam.Spec{Kind: seam.FlatFelled, First: in(2, 1), Second: in(3, 2), Trim: eighth}, in(1, 16), "spec.trim"},
		{seam.Spec{Kind: seam.FlatFelled, First: in(7, 4), Second: one, Trim: in(7, 8)}, in(1, 16), "spec.trim"},
		{seam.Spec{Kind: seam.FlatFelled, First: in(9, 8), Second: one, Trim: half}, in(1, 16), "spec.turned"},
		{seam.Spec{Kind: seam.FlatFelled, First: in(31, 16), Second: one, Trim: half}, in(1, 16), "spec.turned"},
		{seam.Spec{Kind: seam.FlatFelled, First: in(2, 1), Second: one, Trim: half}, quarter, "spec.trim spec.trim"},
		{seam.Spec{Kind: seam.MockFelled, First: in(31, 16), Second: one, Trim: half}, quarter, "spec.trim spec.trim"},
		{seam.Spec{Kind: seam.MockFelled, First: in(9, 8), Second: one, Trim: half}, in(1, 16), "spec.turned"},
		{seam.Spec{Kind: seam.Bound, First: one, Second: quarter}, in(1, 12), "spec.second"},
		{seam.Spec{Kind: seam.Bound, First: quarter, Second: quarter}, in(1, 12), "spec.second"},
		{seam.Spec{Kind: seam.MockFrench, First: half, Turned: quarter}, in(1, 10), "spec.second"},
		{seam.Spec{Kind: seam.MockFrench, First: one, Turned: eighth}, in(1, 16), "spec.turned"},
		{seam.Spec{Kind: seam.TurnedStitched, First: one, Turned: eighth}, in(1, 16), "spec.turned"},
		{seam.Spec{Kind: seam.UntrimmedFell, First: half, Turned: eighth}, in(1, 16), "spec.turned"},
		{seam.Spec{Kind: seam.Welt, First: one, Second: half, Trim: eighth}, in(1, 12), "spec.trim"},
		{seam.Spec{Kind: seam.Welt, First: one, Second: half, Trim: in(7, 16)}, in(1, 16), "spec.second"},
		{seam.Spec{Kind: seam.Welt, First: one, Second: in(15, 16), Trim: half}, in(1, 16), "spec.second"},
		{seam.Spec{Kind: seam.Lapped, First: one, Second: one, Row: eighth}, in(1, 12), "spec.row"},
		{seam.Spec{Kind: seam.Lapped, First: in(7, 16), Second: one, Row: in(3, 8)}, in(1, 16), "spec.row"},
		{seam.Spec{Kind: seam.Lapped, First: one, Second: in(7, 16), Row: in(3, 8)}, in(1, 16), "spec.row"},
		{seam.Spec{Kind: seam.LappedTurned, Second: one, Turned: in(17, 32)}, in(15, 64), "spec.turned"},
		{seam.Spec{Kind: seam.LappedTurned, Second: one, Turned: eighth}, in(1, 16), "spec.turned"},
		{seam.Spec{Kind: seam.LappedTurned, Second: one, Turned: in(7, 8)}, in(1, 16), "spec.turned"},
		{seam.Spec{Kind: seam.LappedRaw, Second: one}, quarter, "spec.first spec.second"},
		{seam.Spec{Kind: seam.Slot, First: one, Second: eighth}, in(1, 16), "spec.second"},
		{seam.Spec{Kind: seam.Slot, First: one, Second: in(7, 16), Trim: half}, in(1, 16), "spec.trim"},
		{seam.Spec{Kind: seam.Slot, First: one, Second: half, Strip: in(5, 4)}, eighth, "spec.strip"},
		{seam.Spec{Kind: seam.HongKong, First: one, Second: eighth, Strip: one}, in(1, 16), "spec.second"},
		{seam.Spec{Kind: seam.HongKong, First: one, Second: in(5, 16), Trim: half, Strip: in(2, 1)}, eighth, "spec.second"},
		{seam.Spec{Kind: seam.HongKong, First: one, Second: quarter, Strip: in(27, 32)}, in(1, 16), "spec.strip"},
		{seam.Spec{Kind: seam.SelfBound, First: one, Second: in(3, 8), Trim: eighth}, in(1, 16), "spec.trim"},
		{seam.Spec{Kind: seam.SelfBound, First: in(7, 8), Second: in(3, 8), Trim: quarter}, in(1, 16), "spec.turned"},
		{seam.Spec{Kind: seam.SelfBound, First: one, Second: in(5, 16), Trim: eighth}, in(1, 32), "spec.turned"},
		{seam.Spec{Kind: seam.Piped, First: one, Trim: in(3, 8), Cord: one}, eighth, "spec.trim"},
		{seam.Spec{Kind: seam.Piped, First: one, Cord: eighth}, in(1, 16), "spec.cord"},
		{seam.Spec{Kind: seam.Graded, First: one, Trim: half, TrimUnder: eighth}, in(1, 12), "spec.trimUnder"},
	} {
		p := planned(t, c.spec)
		ds, err := p.Sections(c.thick)
		if err != nil {
			t.Errorf("%+v: %v", p.Spec, err)
			continue
		}
		disagrees(t, p, ds[len(ds)-1])
		_, err = p.Sections(c.thick.Add(in(1, 100_000)))
		if err == nil {
			t.Errorf("%+v: drawn thicker than fits", p.Spec)
			continue
		}
		lacks(t, err)
		if got := faultPaths(t, err); got != c.path {
			t.Errorf("%+v: %q, want %q", p.Spec, got, c.path)
		}
		fits[c.spec.Kind.String()] = true
	}
	for k := range seam.Kinds {
		if !fits[k.String()] {
			t.Errorf("%v has no place that may be too tight", k)
		}
	}
}
