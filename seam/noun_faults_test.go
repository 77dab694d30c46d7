package seam_test

import (
	"errors"
	"math"
	"reflect"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/alter"
	"example.com/clothyard/seam/dart"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// planNoun plans any of the nouns, and looks that Solve agrees with Plan.
func planNoun(t *testing.T, spec any) (sheeted, error) {
	t.Helper()
	solve := func(solved any, err1, err2 error, want any) {
		if (err1 == nil) != (err2 == nil) || !reflect.DeepEqual(solved, want) {
			t.Errorf("%+v: Solve gives %+v, %v; want %+v, %v", spec, solved, err1, want, err2)
		}
	}
	switch s := spec.(type) {
	case dart.Spec:
		p, err := s.Plan()
		z, err1 := s.Solve()
		if err == nil {
			s = p.Spec
		}
		solve(z, err1, err, s)
		return p, err
	case dart.Pivot:
		p, err := s.Plan()
		z, err1 := s.Solve()
		if err == nil {
			s = p.Spec
		}
		solve(z, err1, err, s)
		return p, err
	case seam.Binding:
		p, err := s.Plan()
		z, err1 := s.Solve()
		if err == nil {
			s = p.Spec
		}
		solve(z, err1, err, s)
		return p, err
	case seam.Row:
		p, err := s.Plan()
		z, err1 := s.Solve()
		if err == nil {
			s = p.Spec
		}
		solve(z, err1, err, s)
		return p, err
	case seam.Roll:
		p, err := s.Plan()
		z, err1 := s.Solve()
		solve(z, err1, err, s)
		return p, err
	case seam.Favour:
		p, err := s.Plan()
		z, err1 := s.Solve()
		if err == nil {
			s = p.Spec
		}
		solve(z, err1, err, s)
		return p, err
	case alter.Easing:
		p, err := s.Plan()
		z, err1 := s.Solve()
		if err == nil {
			s = p.Spec
		}
		solve(z, err1, err, s)
		return p, err
	case edge.Meeting:
		p, err := s.Plan()
		z, err1 := s.Solve()
		if err == nil {
			s = p.Spec
		}
		solve(z, err1, err, s)
		return p, err
	case alter.Letting:
		p, err := s.Plan()
		z, err1 := s.Solve()
		if err == nil {
			s = p.Spec
		}
		solve(z, err1, err, s)
		return p, err
	case alter.Lengthening:
		p, err := s.Plan()
		z, err1 := s.Solve()
		solve(z, err1, err, s)
		return p, err
	}
	t.Fatalf("no noun %T", spec)
	return nil, nil
}

func TestNounFaults(t *testing.T) {
	minus, r := in(-1, 8), units.RatioOf
	type (
		D = dart.Spec
		P = dart.Pivot
		B = seam.Binding
		W = seam.Row
		O = seam.Roll
		F = seam.Favour
		E = alter.Easing
		M = edge.Meeting
		L = alter.Letting
		G = alter.Lengthening
	)
	inch := in(1, 1)
	plain := seam.Spec{Kind: seam.Plain}
	many := r(1, 1_000_001)
	for _, c := range []struct {
		why   string
		spec  any
		paths string
		err   error
	}{
		{"no such dart", D{Kind: 99, Length: minus}, "kind", fault.Unknown},
		{"double-pointed, nothing", D{Kind: dart.Double}, "length width", fault.Missing},
		{"double-pointed, what it does not read", D{Kind: dart.Double, Length: inch, Leg: inch, Other: inch, Width: inch, End: inch, Allowance: inch, Stop: inch, Trim: inch, Slope: r(1, 2)},
			"leg other end allowance stop trim slope", fault.Unused},
		{"double-pointed, below zero", D{Kind: dart.Double, Length: inch, Width: inch, Lower: minus, Overlap: minus}, "lower overlap", fault.Sign},
		{"double-pointed, all overlap", D{Kind: dart.Double, Length: inch, Width: inch, Overlap: in(2, 1)}, "overlap", fault.Range},
		{"single, what it does not read", D{Length: in(6, 1), Width: inch, Lower: inch, End: inch, Overlap: inch}, "lower end overlap", fault.Unused},
		{"the other leg without one", D{Length: in(6, 1), Other: in(6, 1), Width: inch}, "other", fault.Unused},
		{"open-ended, nothing", D{Kind: dart.OpenEnded}, "length width end", fault.Missing},
		{"open-ended, widening", D{Kind: dart.OpenEnded, Length: in(6, 1), Width: inch, End: in(2, 1)}, "end", fault.Range},
		{"open-ended, all allowance", D{Kind: dart.OpenEnded, Length: in(5, 8), Width: inch, End: inch}, "length", fault.Range},
		{"French, trim wider than the fold", D{Kind: dart.French, Length: in(6, 1), Width: inch, Trim: inch}, "trim", fault.Range},
		{"a slope too fine", D{Length: in(6, 1), Width: inch, Slope: many}, "slope", fault.Range},

		{"no move", P{}, "length width to", fault.Missing},
		{"a move below zero", P{Length: minus, Width: minus, Turn: r(-1, 2), To: minus, ToLeg: minus}, "length width turn to toLeg", fault.Sign},
		{"a move too fine, told twice", P{Length: inch, Width: inch, Turn: many, To: inch, ToLeg: inch}, "turn toLeg", fault.Unused},
		{"more than the dart", P{Length: in(6, 1), Width: inch, Turn: r(1, 11), To: inch}, "turn", fault.Range},

		{"no strip", B{}, "kind", fault.Missing},
		{"no such strip", B{Kind: 99}, "kind", fault.Unknown},
		{"single, nothing", B{Kind: seam.SingleBinding}, "finished", fault.Missing},
		{"single, below zero", B{Kind: seam.SingleBinding, Finished: minus, Cord: minus, Seam: minus, Turn: minus, Give: minus, Allowance: minus, Edge: minus, Corners: -1, Ends: minus, Join: minus, Cloth: minus},
			"finished cord seam turn give allowance edge corners ends join cloth", fault.Sign},
		{"single, without an edge", B{Kind: seam.SingleBinding, Finished: inch, Curve: r(1, 2), Ring: true, Corners: 4, Ends: inch, Join: inch, Cloth: inch}, "curve ring corners ends join cloth", fault.Unused},
		{"double, what it does not read", B{Kind: seam.DoubleBinding, Finished: inch, Cord: inch, Turn: inch}, "cord turn", fault.Unused},
		{"piping, what it does not read", B{Kind: seam.Piping, Finished: inch, Cord: inch, Turn: inch, Allowance: inch, Curve: r(1, 2), Edge: inch, Corners: 4}, "finished turn allowance curve corners", fault.Unused},
		{"piping, nothing", B{Kind: seam.Piping}, "cord", fault.Missing},
		{"a ring with ends", B{Kind: seam.DoubleBinding, Finished: inch, Edge: inch, Ring: true, Ends: inch}, "ends", fault.Unused},
		{"a join in no cloth", B{Kind: seam.DoubleBinding, Finished: inch, Edge: inch, Join: inch}, "join", fault.Unused},
		{"too many corners", B{Kind: seam.DoubleBinding, Finished: inch, Edge: inch, Corners: math.MaxInt}, "corners", fault.Range},
		{"cloth all joins", B{Kind: seam.DoubleBinding, Finished: inch, Edge: in(90, 1), Cloth: in(1, 2)}, "cloth", fault.Range},
		{"too many strips", B{Kind: seam.DoubleBinding, Finished: inch, Bias: true, Edge: huge(1), Cloth: in(44, 1)}, "cloth", fault.Range},

		{"no row", W{}, "kind", fault.Missing},
		{"no such row", W{Kind: 99}, "kind", fault.Unknown},
		{"staystitch, below zero", W{Kind: seam.StayStitch, Allowance: minus, Distance: minus, Trim: minus}, "allowance distance trim", fault.Sign},
		{"staystitch, what it does not read", W{Kind: seam.StayStitch, Layer: inch, Margin: inch, Start: inch, End: inch}, "layer margin start end", fault.Unused},
		{"topstitch, what it does not read", W{Kind: seam.TopStitch, Allowance: inch, Trim: inch, Margin: inch}, "allowance trim margin", fault.Unused},
		{"topstitch, below zero", W{Kind: seam.TopStitch, Distance: minus, Layer: minus, Margin: minus, Start: minus, End: minus}, "distance layer margin start end", fault.Sign},
		{"an end before its start", W{Kind: seam.TopStitch, Start: inch, End: inch}, "end", fault.Range},
		{"a row in the raw edge, a trim beyond it", W{Kind: seam.StayStitch, Distance: in(5, 8), Trim: inch}, "distance trim", fault.Range},

		{"no roll", O{}, "apart quarters", fault.Missing},
		{"a roll below zero", O{Apart: minus, Quarters: -1, Angle: r(-1, 2), Length: minus}, "apart quarters angle length", fault.Sign},
		{"a roll told twice", O{Apart: inch, Quarters: 4, Angle: r(1, 2)}, "angle", fault.Unused},
		{"a roll too far", O{Apart: inch, Quarters: math.MaxInt}, "quarters", fault.Range},
		{"a roll of nothing", O{Apart: inch, Quarters: 4, Length: inch}, "length", fault.Range},

		{"a favour below zero", F{By: minus, Edge: minus}, "by edge", fault.Sign},
		{"a favour of nothing", F{By: inch, Edge: inch, Bend: r(1, 1)}, "edge", fault.Range},

		{"no ease", E{}, "long zones", fault.Missing},
		{"ease below zero", E{Long: minus, Zones: []alter.Zone{{Name: "a\n", Length: minus, Share: r(-1, 1)}}, Limit: r(-1, 2)}, "long zones[0].name zones[0].length zones[0].share limit", fault.Sign},
		{"too many zones", E{Long: inch, Zones: make([]alter.Zone, 1_000_000)}, "zones", fault.Range},
		{"ease with nowhere to go", E{Long: in(2, 1), Zones: []alter.Zone{{Length: inch}}}, "zones", fault.Missing},
		{"less than no ease", E{Long: in(1, 2), Zones: []alter.Zone{{Length: inch, Share: r(1, 1)}}}, "long", fault.Range},

		{"no meeting", M{}, "drafted", fault.Missing},
		{"a meeting below zero, too fine", M{Drafted: minus, Cut: minus, Taken: minus, Front: many, Back: many}, "drafted cut taken front back", fault.Sign},

		{"nothing let out", L{}, "total seams", fault.Missing},
		{"too many seams", L{Total: inch, Seams: make([]alter.Let, 1_000_000)}, "seams", fault.Range},
		{"seams that are none", L{Total: inch, Seams: []alter.Let{{Name: "a\x00", Times: -1, Least: minus, Each: minus, Then: 99}}},
			"seams[0].name seams[0].spec.kind seams[0].times seams[0].least seams[0].each seams[0].then", fault.Conflict},
		{"more than there is", L{Total: inch, Seams: []alter.Let{{Spec: plain}}}, "total", fault.Range},
		{"each more than there is", L{Total: inch, Seams: []alter.Let{{Spec: plain, Each: in(1, 2)}}}, "seams[0].each", fault.Range},
		{"each makes another total", L{Total: inch, Seams: []alter.Let{{Spec: plain, Each: in(1, 8)}}}, "total", fault.Conflict},
		{"each makes more than the total", L{Total: in(1, 8), Seams: []alter.Let{{Spec: plain, Each: in(1, 8)}, {Spec: plain}}}, "total", fault.Conflict},
		{"unequal plies", L{Total: in(1, 8), Seams: []alter.Let{{Spec: seam.Spec{Kind: seam.Lapped, Drafted: in(5, 8), First: in(5, 8), Second: in(1, 2)}}}}, "seams[0].spec.take", fault.Conflict},
		{"a French seam too narrow", L{Total: in(1, 4), Seams: []alter.Let{{Spec: seam.Spec{Kind: seam.French, First: in(1, 8), Second: in(3, 16)}, Least: in(1, 16)}}}, "seams[0].then", fault.Conflict},
		{"then French, of no width", L{Total: in(5, 4).Sub(in(1, 16)), Seams: []alter.Let{{Spec: plain, Least: in(1, 64), Then: seam.French}}}, "seams[0].then", fault.Conflict},

		{"nothing lengthened", G{}, "by height", fault.Missing},
		{"lengthened below zero", G{By: inch, Height: minus, Run: minus, WithRun: minus}, "height run withRun", fault.Sign},
		{"folded up", G{By: in(-2, 1), Height: in(2, 1)}, "height", fault.Range},
		{"a partner all across", G{By: inch, Height: in(3, 1), WithRun: in(3, 1)}, "withRun", fault.Range},
	} {
		p, err := planNoun(t, c.spec)
		if err == nil {
			t.Errorf("%s: no fault in %+v", c.why, c.spec)
			continue
		}
		if got := faultPaths(t, err); got != c.paths || !errors.Is(err, c.err) {
			t.Errorf("%s: faults of %s, want %s, %v; got\n%v", c.why, got, c.paths, c.err, err)
		}
		if !reflect.ValueOf(p).IsZero() {
			t.Errorf("%s: a plan beside the faults", c.why)
		}
	}
}

// Lengths beyond measure are worked out, or refused with a fault.
func TestHugeNouns(t *testing.T) {
	for _, big := range []units.Length{huge(16), huge(400)} {
		for _, spec := range []any{
			dart.Spec{Length: big, Width: in(1, 1)}, dart.Spec{Kind: dart.Double, Length: big, Lower: in(1, 3), Width: big},
			dart.Spec{Kind: dart.French, Leg: big, Width: in(1, 3)}, dart.Spec{Kind: dart.OpenEnded, Length: big, Width: big, End: in(1, 7)},
			dart.Pivot{Length: big, Width: in(1, 3), To: big}, dart.Pivot{Length: big, Width: big, ToLeg: big, X: big},
			seam.Binding{Kind: seam.Piping, Cord: big, Edge: big, Cloth: big, Bias: true}, seam.Binding{Kind: seam.DoubleBinding, Finished: big, Edge: big, Corners: 1000},
			seam.Row{Kind: seam.StayStitch, Allowance: big}, seam.Row{Kind: seam.TopStitch, Distance: big, Layer: big, Start: in(1, 1), End: big},
			seam.Roll{Apart: big, Quarters: 4}, seam.Roll{Apart: in(1, 64), Quarters: 1, Length: big},
			seam.Favour{By: big, Bend: units.RatioOf(-1, 3), Edge: big},
			alter.Easing{Long: big, Zones: []alter.Zone{{Length: in(1, 3), Share: units.RatioOf(1, 7)}}},
			edge.Meeting{Drafted: big, Taken: in(1, 3), Front: units.RatioOf(1, 2), Back: units.RatioOf(1, 3)},
			alter.Letting{Total: big, Seams: []alter.Let{{Spec: seam.Spec{Kind: seam.Plain, Drafted: big}}}},
			alter.Lengthening{By: big, Height: in(1, 3), Run: big, WithRun: in(1, 7)},
		} {
			p, err := planNoun(t, spec)
			if err != nil {
				faultPaths(t, err)
			} else if err := p.Sheet().Check(); err != nil {
				t.Errorf("%T: %v", spec, err)
			}
		}
	}
}

// The nouns' kinds by name.
func TestNounKinds(t *testing.T) {
	n := 0
	for k := range dart.Kinds {
		n++
		checkName(t, k, k.String(), func(b []byte) (dart.Kind, error) { var k dart.Kind; err := k.UnmarshalText(b); return k, err })
	}
	for k := range seam.BindingKinds {
		n++
		checkName(t, k, k.String(), func(b []byte) (seam.BindingKind, error) {
			var k seam.BindingKind
			err := k.UnmarshalText(b)
			return k, err
		})
	}
	for k := range seam.RowKinds {
		n++
		checkName(t, k, k.String(), func(b []byte) (seam.RowKind, error) { var k seam.RowKind; err := k.UnmarshalText(b); return k, err })
	}
	if n != 4+3+6 {
		t.Errorf("%d kinds", n)
	}
	for range dart.Kinds {
		break
	}
	for range seam.BindingKinds {
		break
	}
	for range seam.RowKinds {
		break
	}
	if dart.Kind(99).String() != "DartKind(99)" || seam.BindingKind(99).String() != "BindingKind(99)" || seam.RowKind(99).String() != "RowKind(99)" {
		t.Error("the names of no kinds")
	}
	for _, m := range []interface{ MarshalText() ([]byte, error) }{dart.Kind(99), seam.BindingKind(99), seam.RowKind(99)} {
		if _, err := m.MarshalText(); !errors.Is(err, fault.Unknown) {
			t.Errorf("%v: %v", m, err)
		}
	}
}

func checkName[K interface {
	comparable
	MarshalText() ([]byte, error)
}](t *testing.T, k K, name string, read func([]byte) (K, error)) {
	t.Helper()
	b, err := k.MarshalText()
	if err != nil || string(b) != name {
		t.Errorf("%v is written %s, %v", k, b, err)
	}
	if got, err := read(b); err != nil || got != k {
		t.Errorf("%s is read as %v, %v", b, got, err)
	}
	if _, err := read([]byte("no such")); !errors.Is(err, fault.Unknown) {
		t.Errorf("no such kind: %v", err)
	}
	var zero K
	if got, err := read(nil); err != nil || got != zero {
		t.Errorf("empty text is %v, %v", got, err)
	}
}
