package layout_test

import (
	"context"
	"errors"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout"
)

// multiple reports whether a is a whole number of b.
func multiple(a, b units.Length) bool { return a.Div(b).IsInt() }

// A notch whose place on the repeat is given lies there, and all of its name.
func TestPhases(t *testing.T) {
	notch := func(name, x, y string) layout.Notch {
		return layout.Notch{Name: name, At: layout.Point{X: in(x), Y: in(y)}}
	}
	s := layout.Spec{Work: 1, Cloth: layout.Cloth{Wide: in("45"), Selvedge: in("1/2"), Ends: in("1/4"), RepeatX: in("3"), RepeatY: in("4"),
		Phases: []layout.Phase{{Notch: "hip", X: in("1"), Y: in("1/3")}}},
		Pieces: []layout.Piece{
			// The sleeve hangs on the front's armhole, the front's place is given by its hip.
			{Name: "sleeve", Wide: in("12"), Long: in("15"), Count: 2, Turn: layout.Half, Notches: []layout.Notch{notch("armhole", "2", "13")}},
			{Name: "front", Outline: outline("0,0 9,0 9,15 2,20"), Count: 2, Notches: []layout.Notch{notch("armhole", "8", "14"), notch("hip", "5", "2")}},
			{Name: "facing", Wide: in("3"), Long: in("13"), Count: 2},
		}}
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	for _, at := range p.Placements[2:4] {
		hip := at.Notches(s)[1].At
		if !multiple(hip.X.Sub(in("1")), in("3")) || !multiple(hip.Y.Sub(in("1/3")), in("4")) {
			t.Errorf("hip at %v, %v", hip.X, hip.Y)
		}
	}
	if why := wrong(s, p.Placements); why != "" {
		t.Error(why)
	}
	// All moved alike: they match each other still, but not the place given.
	lay := slices.Clone(p.Placements)
	for i := range lay {
		lay[i].Y = lay[i].Y.Add(in("1/100"))
	}
	if err := layout.Verify(s, lay); !errors.Is(err, layout.ErrMatch) || !strings.Contains(err.Error(), "cloth.phases[0]") {
		t.Error(err)
	}
	free := s
	free.Cloth.Phases = nil
	if err := layout.Verify(free, lay); err != nil {
		t.Error(err)
	}
	if !strings.Contains(p.Sheet().Text(), "place of the repeat") {
		t.Error(p.Sheet().Text())
	}
	// On a cloth with stripes alone no place along is asked for.
	s.Cloth.RepeatY, s.Cloth.Phases[0].Y = units.Length{}, units.Length{}
	if p, err = s.Plan(context.Background()); err != nil || !multiple(p.Placements[2].Notches(s)[1].At.X.Sub(in("1")), in("3")) {
		t.Error(err)
	}
	// Two places that cannot be both.
	s.Cloth.Phases = []layout.Phase{{Notch: "hip"}, {Notch: "armhole", X: in("1")}}
	if _, err := s.Solve(); !errors.Is(err, fault.Conflict) {
		t.Error(err)
	}
	s.Cloth.Phases[1].X = in("0") // 3 in from the hip as drawn
	if _, err := s.Plan(context.Background()); err != nil {
		t.Error(err)
	}
}

// A centred piece has its centre line on the middle of a stripe or half-way
// between two, however wide it is.
func TestCentred(t *testing.T) {
	s := layout.Spec{Work: 1, Cloth: layout.Cloth{Wide: in("45"), Selvedge: in("1/2"), RepeatX: in("2"), Axis: in("3/4")},
		Pieces: []layout.Piece{
			{Name: "collar", Wide: in("7 1/3"), Long: in("4"), Count: 2, Centred: true},
			{Name: "back", Outline: outline("0,0 10,0 8,20 0,18"), Count: 1, Fold: true, Centred: true},
			{Name: "yoke", Outline: outline("0,0 16,0 12,5 4,5"), Count: 1, Turn: layout.Half, Centred: true, Allowance: []units.Length{in("5/8")},
				Notches: []layout.Notch{{Name: "centre", At: layout.Point{X: in("8"), Y: in("0")}}}},
			{Name: "cuff", Wide: in("9"), Long: in("5"), Count: 2},
		}}
	centred := func(p layout.Plan) {
		t.Helper()
		for _, at := range p.Placements {
			wide, _ := at.Size(s)
			on := at.X.Add(wide.DivInt(2))
			if s.Cloth.Folded && s.Pieces[at.Piece].Fold {
				on = at.X
			}
			if s.Pieces[at.Piece].Centred && !multiple(on.Sub(s.Cloth.Axis), in("1")) {
				t.Errorf("%s: centre line at %v", s.Pieces[at.Piece].Name, on)
			}
		}
	}
	p, err := s.Plan(context.Background())
	if err != nil {
		t.Fatal(err)
	}
	centred(p)
	if !strings.Contains(p.Sheet().Text(), "middle of a stripe") || !strings.Contains(p.SVG(), "M191 0V") {
		t.Error("neither said nor drawn")
	}
	lay := slices.Clone(p.Placements)
	lay[0].Y = in("90")
	lay[0].X = lay[0].X.Add(in("1"))
	if err := layout.Verify(s, lay); err != nil {
		t.Error(err)
	}
	lay[0].X = lay[0].X.Add(in("1/1000"))
	if err := layout.Verify(s, lay); !errors.Is(err, layout.ErrCentre) {
		t.Error(err)
	}
	// Folded, the fold is the axis.
	s.Cloth.Folded, s.Cloth.Axis = true, units.Length{}
	if p, err = s.Plan(context.Background()); err != nil {
		t.Fatal(err)
	}
	centred(p)
	// A notch beside the centre line, and both are asked for: it may lie on one of
	// two places of the repeat.
	s.Cloth.Folded = false
	s.Cloth.Phases = []layout.Phase{{Notch: "centre", X: in("1")}}
	if p, err = s.Plan(context.Background()); err != nil {
		t.Fatal(err)
	}
	centred(p)
	if at := p.Placements[3].Notches(s)[0].At.X; !multiple(at.Sub(in("1")), in("2")) {
		t.Errorf("notch at %v", at)
	}
	s.Cloth.Phases[0].X = in("1/2")
	if _, err := s.Solve(); !errors.Is(err, fault.Conflict) {
		t.Error(err)
	}
	// One piece on a wide cloth still finds its stripe, and one as wide as the cloth
	// does not.
	s = layout.Spec{Work: 1, Cloth: layout.Cloth{Wide: in("45"), RepeatX: in("20"), Axis: in("9")}, Pieces: s.Pieces[:1]}
	if p, err = s.Plan(context.Background()); err != nil || p.Placements[0].X.Sub(in("9")).Add(in("3 2/3")).Sign() != 0 {
		t.Errorf("%v %+v", err, p.Placements)
	}
	s.Pieces[0].Wide = in("44")
	if _, err := s.Solve(); list(err) == nil || list(err)[0] != (found{"pieces[0].centred", fault.Conflict}) {
		t.Error(err)
	}
}

// What contradicts itself.
func TestCentredFaults(t *testing.T) {
	plain := layout.Piece{Wide: in("4"), Long: in("4"), Count: 1, Notches: []layout.Notch{{Name: "a"}}}
	with := func(change func(*layout.Piece)) layout.Piece {
		p := plain
		p.Centred = true
		change(&p)
		return p
	}
	far := in("1" + strings.Repeat("0", 300))
	for _, test := range []struct {
		why   string
		cloth layout.Cloth
		piece layout.Piece
		want  []found
	}{
		{"phases of no repeat", layout.Cloth{Phases: []layout.Phase{{Notch: "a"}}}, plain, []found{{"cloth.phases[0].notch", fault.Unused}}},
		{"a phase of no notch", layout.Cloth{RepeatX: in("1"), Phases: []layout.Phase{{Notch: "b"}}}, plain, []found{{"cloth.phases[0].notch", fault.Unknown}}},
		{"no name, twice, and not used", layout.Cloth{RepeatX: in("1"), Phases: []layout.Phase{{}, {Notch: "a", Y: in("1")}, {Notch: "a"}}}, plain,
			[]found{{"cloth.phases[0].notch", fault.Missing}, {"cloth.phases[1].y", fault.Unused}, {"cloth.phases[2].notch", fault.Twice}}},
		{"not across", layout.Cloth{RepeatY: in("1"), Phases: []layout.Phase{{Notch: "a", X: in("1")}}}, plain, []found{{"cloth.phases[0].x", fault.Unused}}},
		{"too many phases", layout.Cloth{RepeatY: in("1"), Phases: make([]layout.Phase, layout.MaxPhases+1)}, plain, []found{{"cloth.phases", fault.Range}}},
		{"a phase beyond any grid", layout.Cloth{RepeatY: in("1"), Phases: []layout.Phase{{Notch: "a", Y: far}}}, plain, []found{{"cloth.phases[0]", layout.ErrGrid}}},
		{"a phase finer than any grid", layout.Cloth{RepeatY: in("1"), Phases: []layout.Phase{{Notch: "a", Y: units.Inch.Frac(1, 1<<61)}}}, plain, []found{{"cloth.phases[0]", layout.ErrGrid}}},
		{"an axis of no stripe", layout.Cloth{Axis: in("1")}, plain, []found{{"cloth.axis", fault.Unused}}},
		{"an axis beside the fold", layout.Cloth{Axis: in("1"), RepeatX: in("2"), Folded: true}, plain, []found{{"cloth.axis", fault.Conflict}}},
		{"an axis below zero", layout.Cloth{Axis: in("-1"), RepeatX: in("2")}, plain, []found{{"cloth.axis", fault.Sign}}},
		{"an axis beyond any grid", layout.Cloth{Axis: far, RepeatX: in("2")}, with(func(p *layout.Piece) { p.Notches = nil }), []found{{"pieces[0].centred", layout.ErrGrid}}},
		{"centred on no stripe", layout.Cloth{}, with(func(*layout.Piece) {}), []found{{"pieces[0].centred", fault.Unused}}},
		{"centred across", layout.Cloth{RepeatX: in("2")}, with(func(p *layout.Piece) { p.Turn = layout.Quarter }), []found{{"pieces[0].centred", fault.Conflict}}},
		{"no centre line", layout.Cloth{RepeatX: in("2")}, with(func(p *layout.Piece) {
			p.Wide, p.Long, p.Outline = units.Length{}, units.Length{}, outline("0,0 4,0 4,4")
		}), []found{{"pieces[0].centred", fault.Conflict}}},
		{"wider on one side", layout.Cloth{RepeatX: in("2")}, with(func(p *layout.Piece) {
			p.Wide, p.Long, p.Outline = units.Length{}, units.Length{}, outline("0,0 4,0 4,4 0,4")
			p.Allowance = []units.Length{{}, in("1"), {}, {}}
		}), nil},
		{"finer than any grid", layout.Cloth{RepeatX: in("2")}, with(func(p *layout.Piece) { p.Wide = units.Inch.Frac(1, 1<<59) }), []found{{"pieces[0].centred", layout.ErrGrid}}},
	} {
		test.cloth.Wide = in("40")
		_, err := (layout.Spec{Cloth: test.cloth, Pieces: []layout.Piece{test.piece}}).Solve()
		if diff := cmp.Diff(test.want, list(err), sameError); diff != "" {
			t.Errorf("%s: %s", test.why, diff)
		}
	}
}

// Stripes of any repeat, pieces of any width: what is found is centred, by the
// lengths themselves, and what matches matches.
func TestCentredAny(t *testing.T) {
	t.Parallel()
	r := rand.New(rand.NewPCG(41, 42))
	good := 0
	for range 30 {
		s := trial(t, r)
		if s.Cloth.RepeatX.IsZero() {
			s.Cloth.RepeatX = in("1/2").MulInt(1 + r.Int64N(6))
		}
		if !s.Cloth.Folded {
			s.Cloth.Axis = in("1/8").MulInt(r.Int64N(20))
		}
		any := false
		for i := range s.Pieces {
			p := &s.Pieces[i]
			if p.Turn <= layout.Half && (len(p.Outline) == 0 || p.Fold) {
				p.Centred, any = true, true
			}
		}
		if slices.ContainsFunc(s.Pieces, func(p layout.Piece) bool { return len(p.Notches) > 0 }) {
			s.Cloth.Phases = []layout.Phase{{Notch: "waist", X: in("1/8").MulInt(r.Int64N(20))}}
			if s.Cloth.RepeatY.Sign() > 0 {
				s.Cloth.Phases[0].Y = in("1/6").MulInt(r.Int64N(20))
			}
			if r.IntN(2) == 0 { // else it mostly is not on a stripe
				s.Cloth.Phases = nil
			}
		}
		p, err := s.Plan(context.Background())
		if err != nil {
			if list(err) == nil {
				t.Fatal(err)
			}
			continue
		}
		if why := wrong(s, p.Placements); why != "" {
			t.Fatalf("%s: %+v\n%+v", why, s, p.Placements)
		}
		for _, at := range p.Placements {
			one := s.Pieces[at.Piece]
			wide, _ := at.Size(s)
			if on := at.X.Add(wide.DivInt(2)).Sub(s.Cloth.Axis); one.Centred && !(one.Fold && s.Cloth.Folded) && !multiple(on, s.Cloth.RepeatX.DivInt(2)) {
				t.Errorf("%+v lies %v off", at, on)
			}
			for _, n := range at.Notches(s) {
				if len(s.Cloth.Phases) > 0 && !multiple(n.At.X.Sub(s.Cloth.Phases[0].X), s.Cloth.RepeatX) {
					t.Errorf("notch of %+v at %v", at, n.At.X)
				}
			}
		}
		if any {
			good++
		}
	}
	if good < 10 {
		t.Errorf("%d lays with a piece centred", good)
	}
}
