package seam_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
)

// What cannot be drawn is named, all of it at once.
func TestSectionsRefuse(t *testing.T) {
	plan := func(s seam.Seam, change func(*seam.Plan)) seam.Plan {
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
		{"no kind", seam.Plan{}, in(-1, 8), "thickness spec.kind"},
		{"a thickness less than none", plan(seam.Plain{}, nil), in(-1, 8), "thickness"},
		{"a thickness of metres", plan(seam.Plain{}, nil), units.MustParse("3 m"), "thickness"},
		{"a ridge with no room", plan(seam.French{}, nil), in(1, 15), "spec.trim"},
		{"all too thick", plan(seam.French{}, nil), in(1, 2), "spec.first spec.trim spec.trim"},
		{"a pass narrower than the fold", plan(seam.Welt{First: in(1, 2), Row: in(3, 8), Trim: in(5, 16)}, nil), in(1, 12), "spec.row"},
		{"layers", plan(seam.Graded{}, func(p *seam.Plan) { p.Spec.Seam = seam.Graded{Layers: math.MaxInt32} }), none, "spec.layers grades"},
		{"no layers", plan(seam.Graded{}, func(p *seam.Plan) { p.Spec.Seam = seam.Graded{} }), none, "spec.layers grades"},
		{"a seam of miles", plan(seam.Plain{Allowance: seam.Allowance{Drafted: units.MustParse("1000000 m")}}, nil), none, "spec.first spec.trim"},
		{"a plan that was changed", plan(seam.French{}, func(p *seam.Plan) { p.Spec.Seam = seam.French{First: in(3, 8), Second: in(1, 4), Trim: in(1, 4)} }), none, "spec.trim"},
		{"and another", plan(seam.Plain{}, func(p *seam.Plan) { p.Spec.Seam = seam.Plain{First: in(-1, 1)} }), none, "spec.first spec.trim"},
		{"a strip of miles", plan(seam.HongKong{Strip: units.MustParse("3 m")}, nil), none, "spec.strip"},
	} {
		ds, err := c.plan.Sections(c.thick)
		if got := nountest.Paths(t, err); got != c.want || len(ds) > 0 {
			t.Errorf("%s: %q, want %q", c.why, got, c.want)
		}
	}
	// A changed plan whose figures contradict each other fails the check of the drawing.
	p := plan(seam.Slot{}, func(p *seam.Plan) { p.Finished = in(1, 1) })
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
	kinds := slices.Collect(seam.Kinds())
	for range max(1_200, nountest.Rounds(6_000)) {
		p, err := someSeam(r).Plan()
		for try := 0; err != nil && try < 20; try++ {
			p, err = someSeam(r).Plan()
		}
		switch {
		case err != nil || r.IntN(10) == 0:
			p = seam.Plan{Spec: kinds[r.IntN(len(kinds))]}
		case r.IntN(2) == 0: // its figures, and those of another seam
			s := someSeam(r)
			for try := 0; s.Kind() != p.Spec.Kind() && try < 40; try++ {
				s = someSeam(r)
			}
			p.Spec = s
		}
		switch r.IntN(4) {
		case 0:
			p.Finished, p.Turned, p.Plies = odd(), odd(), r.IntN(9)-2
		case 1:
			p.Strips, p.Grades = nil, p.Grades[:r.IntN(len(p.Grades)+1)]
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
	if good < 100 || bad < 100 {
		t.Errorf("%d good, %d bad", good, bad)
	}
}

// Each place of a seam that may be too tight, with the thickness that just fits.
func TestSectionsJustFit(t *testing.T) {
	one, half, quarter, eighth := in(1, 1), in(1, 2), in(1, 4), in(1, 8)
	fits := map[string]bool{}
	for _, c := range []struct {
		spec  seam.Seam
		thick units.Length
		path  string
	}{
		{seam.Plain{}, in(5, 16), "spec.first spec.trim"},
		{seam.Plain{First: one, Trim: quarter}, eighth, "spec.trim"},
		{seam.Plain{First: one, Finish: seam.Pinked}, in(1, 6), "spec.trim"},
		{seam.Hairline{First: one, Trim: quarter}, eighth, "spec.trim"},
		{seam.French{First: one, Second: one, Trim: eighth}, in(1, 12), "spec.trim"},
		{seam.French{First: one, Second: quarter, Trim: eighth}, in(1, 16), "spec.trim"},
		{seam.FlatFelled{First: in(2, 1), Width: in(3, 2), Trim: eighth}, in(1, 16), "spec.trim"},
		{seam.FlatFelled{First: in(7, 4), Width: one, Trim: in(7, 8)}, in(1, 16), "spec.trim"},
		{seam.FlatFelled{First: in(9, 8), Width: one, Trim: half}, in(1, 16), "spec.turned"},
		{seam.FlatFelled{First: in(31, 16), Width: one, Trim: half}, in(1, 16), "spec.turned"},
		{seam.FlatFelled{First: in(2, 1), Width: one, Trim: half}, quarter, "spec.trim spec.trim"},
		{seam.MockFelled{First: in(31, 16), Width: one, Trim: half}, quarter, "spec.trim spec.trim"},
		{seam.MockFelled{First: in(9, 8), Width: one, Trim: half}, in(1, 16), "spec.turned"},
		{seam.Bound{First: one, Width: quarter}, in(1, 12), "spec.width"},
		{seam.Bound{First: quarter, Width: quarter}, in(1, 12), "spec.width"},
		{seam.MockFrench{First: half, Turned: quarter}, in(1, 10), "spec.width"},
		{seam.MockFrench{First: one, Turned: eighth}, in(1, 16), "spec.turned"},
		{seam.TurnedStitched{First: one, Turned: eighth}, in(1, 16), "spec.turned"},
		{seam.UntrimmedFell{Width: half, Turned: eighth}, in(1, 16), "spec.turned"},
		{seam.Welt{First: one, Row: half, Trim: eighth}, in(1, 12), "spec.trim"},
		{seam.Welt{First: one, Row: half, Trim: in(7, 16)}, in(1, 16), "spec.row"},
		{seam.Welt{First: one, Row: in(15, 16), Trim: half}, in(1, 16), "spec.row"},
		{seam.Lapped{Turned: one, Lap: one, Row: eighth}, in(1, 12), "spec.row"},
		{seam.Lapped{Turned: in(7, 16), Lap: one, Row: in(3, 8)}, in(1, 16), "spec.row"},
		{seam.Lapped{Turned: one, Lap: in(7, 16), Row: in(3, 8)}, in(1, 16), "spec.row"},
		{seam.LappedTurned{Lap: one, Turned: in(17, 32)}, in(15, 64), "spec.turned"},
		{seam.LappedTurned{Lap: one, Turned: eighth}, in(1, 16), "spec.turned"},
		{seam.LappedTurned{Lap: one, Turned: in(7, 8)}, in(1, 16), "spec.turned"},
		{seam.LappedRaw{Lap: one}, quarter, "spec.lap"},
		{seam.Slot{First: one, Row: eighth}, in(1, 16), "spec.row"},
		{seam.Slot{First: one, Row: in(7, 16), Trim: half}, in(1, 16), "spec.trim"},
		{seam.Slot{First: one, Row: half, Strip: in(5, 4)}, eighth, "spec.strip"},
		{seam.HongKong{First: one, Width: eighth, Strip: one}, in(1, 16), "spec.width"},
		{seam.HongKong{First: one, Width: in(5, 16), Trim: half, Strip: in(2, 1)}, eighth, "spec.width"},
		{seam.HongKong{First: one, Width: quarter, Strip: in(27, 32)}, in(1, 16), "spec.strip"},
		{seam.SelfBound{First: one, Width: in(3, 8), Trim: eighth}, in(1, 16), "spec.trim"},
		{seam.SelfBound{First: in(7, 8), Width: in(3, 8), Trim: quarter}, in(1, 16), "spec.turned"},
		{seam.SelfBound{First: one, Width: in(5, 16), Trim: eighth}, in(1, 32), "spec.turned"},
		{seam.Piped{First: one, Trim: in(3, 8), Cord: one}, eighth, "spec.trim"},
		{seam.Piped{First: one, Cord: eighth}, in(1, 16), "spec.cord"},
		{seam.Graded{First: one, Widest: half, Narrowest: eighth}, in(1, 12), "spec.narrowest"},
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
		if got := nountest.Paths(t, err); got != c.path {
			t.Errorf("%+v: %q, want %q", p.Spec, got, c.path)
		}
		fits[p.Spec.Kind()] = true
	}
	for s := range seam.Kinds() {
		if !fits[s.Kind()] {
			t.Errorf("%v has no place that may be too tight", s.Kind())
		}
	}
}
