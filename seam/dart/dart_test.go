package dart_test

import (
	"errors"
	"math/rand/v2"
	"reflect"
	"testing"

	"example.com/clothyard/seam/dart"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
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

// A leg of half the width leaves no length to the dart, and a trim of all the fold
// nothing to hold it.
func TestDartOfNoLength(t *testing.T) {
	for _, c := range []struct {
		dart dart.Spec
		want string
	}{
		{dart.Spec{Leg: in(1, 1), Width: in(2, 1)}, "leg 1 in: out of range, want more than 1 in (half of width)"},
		{dart.Spec{Leg: in(1, 1), Length: in(1, 2), Width: in(2, 1)}, "leg 1 in: out of range, want more than 1 in (half of width)"},
		{dart.Spec{Length: in(10, 1), Width: in(4, 3), Trim: in(5, 8)}, "trim 5/8 in: out of range, want less than 5/8 in (the fold beyond the stitching, at the seam line)"},
	} {
		if _, err := c.dart.Plan(); err == nil || err.Error() != c.want {
			t.Errorf("%+v:\n%v\nwant\n%s", c.dart, err, c.want)
		}
	}
	if _, err := (dart.Spec{Length: in(10, 1), Width: in(4, 3), Trim: in(9, 16)}).Plan(); err != nil {
		t.Error(err)
	}
}

// All that is irrational of a dart is as finely enclosed as its leg, also the cap of
// a dart that hardly folds, which is many times as long.
func TestFinenessOfDarts(t *testing.T) {
	fine := units.DefaultWithin()
	for _, d := range []dart.Spec{
		{Leg: in(3, 1), Width: in(424, 100), Allowance: in(1, 16)},
		{Leg: in(3, 1), Width: in(42426, 10000), Allowance: in(1, 16)},
		{Leg: in(300, 1), Width: in(1, 1), Slope: units.Slope(units.RatioOf(7, 1)), Allowance: in(1, 16)},
		{Leg: in(3, 1), Width: in(599, 100), Allowance: in(1, 1000)},
	} {
		p, err := d.Plan()
		if err != nil {
			t.Fatal(err)
		}
		for name, n := range map[string]units.Near{
			"centre": p.Centre, "leg": p.Leg, "sewn": p.Sewn, "atSeam": p.AtSeam, "half": p.Half, "cap": p.Cap,
		} {
			if fine.Less(n.Within()) {
				t.Errorf("leg %v, width %v: %s %v is known within %v only", d.Leg, d.Width, name, n, n.Within())
			}
		}
		across, err := p.Across(d.Leg.DivInt(100))
		if err != nil || fine.Less(across.Within()) {
			t.Errorf("leg %v, width %v: across %v, within %v, %v", d.Leg, d.Width, across, across.Within(), err)
		}
	}
}

func TestDartFaults(t *testing.T) {
	type D = dart.Spec
	for _, c := range []struct {
		why   string
		dart  D
		paths string
		err   error
	}{
		{"nothing", D{}, "length width", fault.Missing},
		{"negative", D{Length: in(-1, 1), Leg: in(-1, 1), Width: in(-1, 1), Allowance: in(-1, 1), Stop: in(-1, 1), Trim: in(-1, 1)},
			"length leg width allowance stop trim", fault.Sign},
		{"stop with a leg", D{Leg: in(6, 1), Width: in(1, 1), Stop: in(1, 2)}, "stop", fault.Unused},
		{"leg too short", D{Leg: in(1, 2), Width: in(1, 1)}, "leg", fault.Range},
		{"leg against length", D{Length: in(4, 1), Leg: in(6, 1), Width: in(6, 1)}, "leg", fault.Conflict},
		{"all allowance", D{Length: in(1, 1), Width: in(1, 1), Stop: in(3, 8)}, "length", fault.Range},
		{"all allowance, by the leg", D{Leg: in(5, 8), Width: in(1, 1)}, "leg", fault.Range},
		{"trim wider than the fold", D{Length: in(6, 1), Width: in(1, 1), Trim: in(1, 2)}, "trim", fault.Range},
	} {
		p, err := c.dart.Plan()
		if got := nountest.Paths(t, err); got != c.paths || !errors.Is(err, c.err) {
			t.Errorf("%s: faults of %s, want %s, %v; got\n%v", c.why, got, c.paths, c.err, err)
		}
		if !reflect.DeepEqual(p, dart.Plan{}) {
			t.Errorf("%s: a plan beside the faults", c.why)
		}
	}
}

func TestAcrossOffTheDart(t *testing.T) {
	for _, d := range []dart.Spec{{Length: in(6, 1), Width: in(1, 1)}, {Leg: in(6, 1), Width: in(1, 1)}} {
		p, err := d.Plan()
		if err != nil {
			t.Fatal(err)
		}
		for _, h := range []units.Length{in(-1, 16), in(97, 16)} {
			if n, err := p.Across(h); !errors.Is(err, fault.Range) || !n.IsZero() {
				t.Errorf("%v off the dart: %v, %v", h, n, err)
			}
		}
		if n, err := p.Across(in(3, 1)); err != nil || n.IsZero() {
			t.Errorf("half way: %v, %v", n, err)
		}
	}
	if p, err := (dart.Spec{Leg: in(6, 1), Width: in(1, 1)}).Plan(); err != nil || p.Spec.Allowance != in(5, 8) {
		t.Errorf("solved %+v, %v", p.Spec, err)
	}
}

// What a dart takes from the edge it opens on.
func TestDartOnItsEdge(t *testing.T) {
	p, err := dart.Spec{Length: in(6, 1), Width: in(1, 1)}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	take, ok := p.Take("dart", units.Length{})
	if !ok || take.Plies != 2 || take.Taken != in(43, 96) {
		t.Fatalf("%+v, %v", take, ok)
	}
	waist := edgeOf(t, edge.Spec{Along: in(12, 1), Takes: []edge.Take{take}})
	nountest.ExactTo(t, "with the dart as drafted", waist.Sewn, in(12, 1).Sub(in(43, 48)))
	// Sewn 1/4 in narrower than the pattern's dart, the edge is as much longer.
	take, _ = p.Take("dart", in(43, 48).Add(in(1, 4)))
	nountest.ExactTo(t, "with a narrower one", edgeOf(t, edge.Spec{Along: in(12, 1), Takes: []edge.Take{take}}).Change, in(1, 4))
	leg, err := dart.Spec{Leg: in(29, 4), Width: in(1, 1)}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	double, err := dart.Spec{Kind: dart.Double, Length: in(6, 1), Width: in(1, 1)}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range []dart.Plan{leg, double, {}} {
		if take, ok := p.Take("dart", units.Length{}); ok {
			t.Errorf("%+v", take)
		}
	}
}

// A dart on the edge of folding, of being cut and of being clipped.
func TestDartLimits(t *testing.T) {
	for _, c := range []struct {
		why   string
		dart  dart.Spec
		folds bool
		trim  units.Length
		clip  units.Length
	}{
		{"as wide as twice its length", dart.Spec{Length: in(2, 1), Width: in(4, 1)}, false, units.Length{}, units.Length{}},
		{"a little less", dart.Spec{Length: in(2, 1), Width: in(63, 16)}, true, units.Length{}, units.Length{}},
		{"the edge as steep as the fold", dart.Spec{Length: in(2, 1), Width: in(2, 1), Slope: units.Slope(units.RatioOf(3, 4))}, false, units.Length{}, units.Length{}},
		{"as steep the other way", dart.Spec{Length: in(2, 1), Width: in(2, 1), Slope: units.Slope(units.RatioOf(-3, 4))}, false, units.Length{}, units.Length{}},
		{"a fold of 5/8 in is not cut", dart.Spec{Kind: dart.French, Length: in(10, 1), Width: in(4, 3)}, true, units.Length{}, units.Length{}},
		{"a wider one is", dart.Spec{Kind: dart.French, Length: in(10, 1), Width: in(3, 2)}, true, in(5, 8), units.Length{}},
		{"a half of 1/8 in is not clipped", dart.Spec{Kind: dart.Double, Length: in(4, 1), Width: in(1, 4)}, false, units.Length{}, units.Length{}},
		{"a wider one is", dart.Spec{Kind: dart.Double, Length: in(4, 1), Width: in(1, 2)}, false, units.Length{}, in(1, 8)},
	} {
		p, err := c.dart.Plan()
		if err != nil || p.Folds != c.folds || p.Spec.Trim != c.trim || p.Clip != c.clip || !p.Folds && !p.Cap.IsZero() {
			t.Errorf("%s: %+v, %v", c.why, p, err)
		}
	}
	short, err := dart.Spec{Kind: dart.Double, Length: in(5, 1), Lower: in(1, 2), Width: in(1, 1)}.Plan()
	if err != nil || short.Spec.Overlap != in(1, 2) {
		t.Errorf("the overlap of a short half: %v, %v", short.Spec.Overlap, err)
	}
}

// ofHalf is the angle whose half has the tangent given, below a right angle.
func ofHalf(t units.Ratio) units.Angle {
	return units.Slope(t.Add(t).Quo(units.RatioOf(1, 1).Sub(t.Mul(t))))
}

func exactly(t *testing.T, n units.Near) units.Length {
	t.Helper()
	l, ok := n.Exact()
	if !ok {
		t.Errorf("%v is not exact", n)
	}
	return l
}

// A pivot turns: lengths stay, the two parts of the angle make the whole, and moving the
// whole dart by two moves is moving it by one. Angles whose halves have rational tangents
// keep all exact.
func TestPivotTurns(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 39))
	for range nountest.Rounds(500) {
		v := dart.Pivot{Length: in(32+r.Int64N(100), 16), Width: in(1+r.Int64N(30), 16), To: in(1+r.Int64N(200), 16), X: in(r.Int64N(200)-100, 16), Y: in(r.Int64N(200)-100, 7)}
		whole := v.Width.DivInt(2).Div(v.Length)
		v.Turn = ofHalf(whole.Mul(units.RatioOf(1+r.Int64N(9), 10)))
		p, err := v.Plan()
		if err != nil {
			t.Fatal(err)
		}
		x, y := exactly(t, p.X), exactly(t, p.Y)
		if x.Times(x).Add(y.Times(y)) != v.X.Times(v.X).Add(v.Y.Times(v.Y)) {
			t.Errorf("%+v: the point comes nearer or goes further: %v, %v", v, x, y)
		}
		if both, err := p.LeftTurn.Add(v.Turn); err != nil || both != ofHalf(whole) {
			t.Errorf("%+v: the parts do not make the whole: %v, %v", v, both, err)
		}
		if p.Left.IsZero() {
			continue
		}
		tan, err := p.LeftTurn.TanHalf()
		half, ok := tan.Exact()
		if err != nil || !ok {
			t.Fatalf("%v: %v, %v", p.LeftTurn, tan, err)
		}
		q, err := dart.Pivot{Length: v.Length, Width: v.Length.Scale(half).MulInt(2), To: v.To, X: x, Y: y}.Plan()
		if err != nil {
			t.Fatal(err)
		}
		v.Turn = units.Angle{}
		all, err := v.Plan()
		if err != nil || all.X != q.X || all.Y != q.Y || !all.Left.IsZero() {
			t.Errorf("%+v: in two moves %v, %v; in one %v, %v", v, q.X, q.Y, all.X, all.Y)
		}
	}
}

// A turn in degrees leaves the same as the same turn as a slope, within bounds.
func TestPivotInDegrees(t *testing.T) {
	p, err := dart.Pivot{Length: in(6, 1), Width: in(4, 1), Turn: units.Degrees(units.RatioOf(30, 1)), To: in(6, 1)}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	nountest.NearTo(t, "stays", p.Left, "0.7579 in")  // 4 cos 15 - 12 sin 15
	nountest.NearTo(t, "opens", p.Width, "3.2154 in") // 12 tan 15
	nountest.NearTo(t, "leg", p.Leg, "6.2117 in")     // 6 over cos 15
}

// Of an edge whose slope is in degrees the fold stands out as h x tan (2 x the angle
// between leg and fold + the slope).
func TestCapInDegrees(t *testing.T) {
	p, err := dart.Spec{Length: in(6, 1), Width: in(2, 1), Slope: units.Degrees(units.RatioOf(10, 1))}.Plan()
	if err != nil || !p.Folds {
		t.Fatalf("%+v, %v", p, err)
	}
	nountest.NearTo(t, "cap", p.Cap, "0.5526 in")
	p, err = dart.Spec{Length: in(6, 1), Width: in(2, 1), Slope: units.Degrees(units.RatioOf(80, 1))}.Plan()
	if err != nil || p.Folds || !p.Cap.IsZero() {
		t.Errorf("too steep: %+v, %v", p, err)
	}
}

// The cap of a dart, folded on a drawing of it: the mirror image of the fold's edge
// in the leg lies on the edge of the side it is pressed to.
func TestCapMirrors(t *testing.T) {
	r := rand.New(rand.NewPCG(18, 22))
	capped := 0
	for range 1000 {
		c, w := in(16+r.Int64N(160), 16), in(1+r.Int64N(60), 16)
		d := dart.Spec{Length: c, Width: w, Allowance: in(1, 16), Slope: units.Slope(units.RatioOf(r.Int64N(40)-20, 40))}
		if r.IntN(2) == 0 {
			d.Kind, d.End = dart.OpenEnded, w.Scale(units.RatioOf(1+r.Int64N(10), 10))
		}
		p, err := d.Plan()
		if err != nil {
			t.Fatal(err)
		}
		out, ok := p.Cap.Exact()
		if !ok || !p.Folds {
			if p.Folds || !p.Cap.IsZero() {
				t.Errorf("%+v: cap %v", d, p.Cap)
			}
			continue
		}
		capped++
		// The leg runs from its end (-h, 0) to (-e, -c), y away from the point.
		h, e := w.DivInt(2), d.End.DivInt(2)
		dx, dy := h.Sub(e), c.Neg()
		px, py := h, out // the fold's edge (0, out) from the leg's end
		along := px.Times(dx).Add(py.Times(dy)).Div(dx.Times(dx).Add(dy.Times(dy)))
		mx, my := dx.Scale(along).MulInt(2).Sub(px), dy.Scale(along).MulInt(2).Sub(py)
		tan, _ := d.Slope.Tan()
		if slope, ok := tan.Exact(); !ok || my != mx.Neg().Scale(slope) {
			t.Errorf("%+v: the fold's edge falls on %v, %v from the leg's end", d, mx, my)
		}
	}
	if capped < 500 {
		t.Errorf("only %d caps", capped)
	}
}

func TestAcrossEveryDart(t *testing.T) {
	for _, c := range []struct {
		dart dart.Spec
		h    units.Length
		want units.Length
	}{
		{dart.Spec{Kind: dart.Double, Length: in(4, 1), Lower: in(6, 1), Width: in(1, 1)}, in(2, 1), in(1, 2)},
		{dart.Spec{Kind: dart.Double, Length: in(4, 1), Lower: in(6, 1), Width: in(1, 1)}, in(4, 1), in(1, 1)},
		{dart.Spec{Kind: dart.Double, Length: in(4, 1), Lower: in(6, 1), Width: in(1, 1)}, in(8, 1), in(1, 3)},
		{dart.Spec{Kind: dart.Double, Length: in(4, 1), Lower: in(6, 1), Width: in(1, 1)}, in(10, 1), units.Length{}},
		{dart.Spec{Kind: dart.OpenEnded, Length: in(4, 1), Width: in(1, 1), End: in(1, 2)}, units.Length{}, in(1, 2)},
		{dart.Spec{Kind: dart.OpenEnded, Length: in(4, 1), Width: in(1, 1), End: in(1, 2)}, in(2, 1), in(3, 4)},
	} {
		p, err := c.dart.Plan()
		if err != nil {
			t.Fatal(err)
		}
		n, err := p.Across(c.h)
		if err != nil {
			t.Fatal(err)
		}
		nountest.ExactTo(t, c.dart.Kind.String(), n, c.want)
		if _, err := p.Across(p.Centre.Mid().Add(in(1, 16))); err == nil {
			t.Errorf("%v: off the dart", c.dart.Kind)
		}
	}
	if _, err := (dart.Plan{Spec: dart.Spec{Kind: dart.Double}}).Across(units.Length{}); err == nil {
		t.Error("across no dart")
	}
}

// What stays of a dart is measured between the ends of its legs, which pivoting
// does not shorten.
func TestPivotLeavesBetweenTheLegs(t *testing.T) {
	for _, c := range []struct {
		why  string
		v    dart.Pivot
		want string
	}{
		{"a third of its tangent stays", dart.Pivot{Length: in(3, 1), Width: in(3, 1), Turn: ofHalf(units.RatioOf(1, 4)), To: in(3, 1)}, "1.4552 in"},
		{"a right angle, of which a 3-4-5 turn stays", dart.Pivot{Length: in(5, 1), Width: in(10, 1), Turn: ofHalf(units.RatioOf(3, 4)), ToLeg: in(5, 1)}, "2 in"},
		{"nothing stays", dart.Pivot{Length: in(3, 1), Width: in(3, 1), To: in(3, 1)}, "0 in"},
	} {
		p, err := c.v.Plan()
		if err != nil {
			t.Fatal(err)
		}
		nountest.NearTo(t, c.why, p.Left, c.want)
		if err := p.Sheet().Check(); err != nil {
			t.Errorf("%s: %v", c.why, err)
		}
	}
}

// The whole dart may be given as it is assumed, whatever its terms.
func TestPivotTakesItsDefaultTurn(t *testing.T) {
	v := dart.Pivot{Length: units.Metre.Frac(1000003, 1000033), Width: units.Metre.Frac(1, 9), To: in(3, 1)}
	p, err := v.Plan()
	if err != nil {
		t.Fatal(err)
	}
	again, err := p.Spec.Plan()
	if p.Assumed, again.Assumed = nil, nil; err != nil || !reflect.DeepEqual(again, p) {
		t.Errorf("solved again: %+v, %v", again, err)
	}
}

func TestDartProperties(t *testing.T) {
	r := rand.New(rand.NewPCG(22, 43))
	for range 500 {
		c := units.Inch.Frac(16+r.Int64N(100), 16)
		w := units.Inch.Frac(1+r.Int64N(40), 16)
		p, err := dart.Spec{Length: c, Width: w, Allowance: in(1, 4)}.Plan()
		if err != nil {
			t.Fatal(err)
		}
		edge, err1 := p.Across(c)
		line, err2 := p.Across(c.Sub(in(1, 4)))
		point, err3 := p.Across(units.Length{})
		if err1 != nil || err2 != nil || err3 != nil || edge != units.Exactly(w) || line != p.AtSeam || !point.IsZero() {
			t.Errorf("%v by %v: %v at the edge, %v at the seam line", c, w, edge, line)
		}
		if n, err := p.Half.MulInt(2).Cmp(p.AtSeam); n != 0 || err != nil {
			t.Errorf("%v by %v: the halves are not the whole", c, w)
		}
		if n, err := p.Leg.Cmp(p.Centre); n != 1 || err != nil {
			t.Errorf("%v by %v: leg %v", c, w, p.Leg)
		}
	}
}
