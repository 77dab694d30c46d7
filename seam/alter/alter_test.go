package alter_test

import (
	"math/rand/v2"
	"reflect"
	"testing"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/alter"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
)

func in(num, den int64) units.Length { return units.Inch.Frac(num, den) }

// Of a deeper back half more is eased into each inch of it, in the same measure; of a
// front half that leaves no room between underarm and shoulder nothing follows.
func TestSleeveShares(t *testing.T) {
	one := units.RatioOf(1, 1)
	for _, c := range []struct {
		front, back units.Length
		share       units.Ratio
	}{
		{in(8, 1), in(10, 1), units.RatioOf(14, 11)}, // 7 in against 5 1/2 in
		{in(8, 1), in(8, 1), one},
		{in(10, 1), in(8, 1), one},
		{in(2, 3), in(8, 1), one},
		{in(1, 2), in(8, 1), one},
	} {
		z := alter.SleeveZones(c.front, c.back)
		if z[1].Share != one || z[4].Share != c.share {
			t.Errorf("%v and %v: shares %v and %v, want %v", c.front, c.back, z[1].Share, z[4].Share, c.share)
		}
	}
}

// As many seams as may be are let out together.
func TestMostLettings(t *testing.T) {
	l := alter.Letting{Total: in(1, 8).MulInt(alter.MaxLettings), Seams: make([]alter.Let, alter.MaxLettings)}
	for i := range l.Seams {
		l.Seams[i] = alter.Let{Name: "side", Spec: seam.Any{Seam: seam.Plain{}}}
	}
	p, err := l.Plan()
	if err != nil || len(p.Seams) != alter.MaxLettings || p.Seams[0].Each != in(1, 16) {
		t.Errorf("%d seams: %v", len(p.Seams), err)
	}
	l.Seams = append(l.Seams, l.Seams[0])
	if _, err := l.Plan(); nountest.Paths(t, err) != "seams" {
		t.Errorf("one more: %v", err)
	}
}

// What was trimmed off a made-up seam is gone, also where fraying cloth and a narrow
// second pass leave no choice of the trim; what was never trimmed is there still.
func TestTrimmedAllowanceIsGone(t *testing.T) {
	for _, c := range []struct {
		spec seam.Any
		has  units.Length
	}{
		{seam.Any{Seam: seam.French{Allowance: seam.Allowance{Fraying: true}, First: in(7, 16), Second: in(3, 16), Trim: in(1, 8)}}, in(5, 16)},
		{seam.Any{Seam: seam.MockFrench{Trim: in(1, 2)}}, in(1, 2)},
		{seam.Any{Seam: seam.MockFrench{}}, in(5, 8)},
		{seam.Any{Seam: seam.Plain{}}, in(5, 8)},
	} {
		p, err := alter.Letting{Total: in(1, 8), Seams: []alter.Let{{Name: "side", Spec: c.spec, Sewn: true, Then: seam.Any{Seam: seam.Plain{}}}}}.Plan()
		if err != nil || p.Seams[0].Has != c.has {
			t.Errorf("%+v: has %v, want %v; %v", c.spec, p.Seams[0].Has, c.has, err)
		}
	}
}

// 9: ease goes where it may, and less than none is refused.
func TestEasePlacement(t *testing.T) {
	p, err := alter.Easing{Long: in(19, 1), Zones: alter.SleeveZones(in(73, 8), in(77, 8))}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	if p.Short != in(75, 4) || p.Ease != in(1, 4) || !p.Smooth || !p.Zones[0].Ease.IsZero() || !p.Zones[2].Ease.IsZero() ||
		!p.Zones[3].Ease.IsZero() || !p.Zones[5].Ease.IsZero() || p.Zones[4].Ease.Less(p.Zones[1].Ease) || p.Zones[3].From != in(73, 8) {
		t.Errorf("%+v", p)
	}
	if p.Zones[0].Long != in(73, 32) || p.Spec.Zones[2].Length != in(1, 2) {
		t.Errorf("underarm %v, shoulder %v", p.Zones[0].Long, p.Spec.Zones[2].Length)
	}
	if _, err := (alter.Easing{Long: in(19, 1).Sub(in(3, 8)), Zones: alter.SleeveZones(in(73, 8), in(77, 8))}).Plan(); nountest.Paths(t, err) != "long" {
		t.Errorf("the sleeve 1/8 in too short: %v", err)
	}
	z := alter.SleeveZones(in(10, 1), in(9, 1)) // the back is never given less
	if z[4].Share.Less(z[1].Share) {
		t.Errorf("shares %v and %v", z[1].Share, z[4].Share)
	}
}

// A seam that is left alone takes what is there: both of its plies were trimmed, so
// that it takes less than the seam did from the edge as it was cut.
func TestSeamLeftAlone(t *testing.T) {
	french := seam.Any{Seam: seam.French{Allowance: seam.Allowance{Drafted: in(5, 8)}, First: in(3, 8), Second: in(1, 4), Trim: in(1, 8)}}
	wide := seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: in(2, 1)}}}
	p, err := alter.Letting{Total: in(1, 1), Seams: []alter.Let{
		{Name: "side", Spec: wide}, {Name: "back", Spec: french, Sewn: true, Least: in(3, 8)},
	}}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	o := p.Seams[1]
	if !o.Each.IsZero() || o.Has != in(3, 8) || o.Take != in(3, 8) {
		t.Errorf("it has %v, gives %v and takes %v from each ply", o.Has, o.Each, o.Take)
	}
	if !reflect.DeepEqual(o.After, o.Before) {
		t.Errorf("it is sewn as %+v, and was as %+v", o.After.Spec, o.Before.Spec)
	}
	// The plan of the assembly stays as it was.
	a := edge.Assembly{
		Seams: []edge.Joint{{Name: "side", Spec: wide}, {Name: "back", Spec: french}},
		Edges: []edge.Course{{Name: "waist", Net: in(28, 1), Crossings: []edge.Crossing{{Seam: "back"}}}},
	}
	if a, err = p.Apply(a); err != nil {
		t.Fatal(err)
	}
	q, err := a.Plan()
	if err != nil || q.Edges[0].Change != (units.Near{}) {
		t.Errorf("%v, %v", q.Edges, err)
	}
}

// A seam that has nothing to give stays as it is, or is sewn as it shall be then.
func TestLettingNothingToGive(t *testing.T) {
	narrow := seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: in(1, 4)}}}
	p, err := alter.Letting{Total: in(1, 2), Seams: []alter.Let{
		{Name: "back", Spec: narrow}, {Name: "front", Spec: narrow, Then: seam.Any{Seam: seam.Bound{}}}, {Name: "side", Spec: seam.Any{Seam: seam.Plain{}}},
	}}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	if o := p.Seams[0]; !o.Each.IsZero() || !reflect.DeepEqual(o.After, o.Before) || o.Take != in(1, 4) {
		t.Errorf("%+v", o)
	}
	if o := p.Seams[1]; !o.Each.IsZero() || o.After.Spec.Kind() != "bound" || o.After.Upper.Taken != in(1, 4) {
		t.Errorf("%+v", o)
	}
	if o := p.Seams[2]; o.Each != in(1, 4) {
		t.Errorf("%+v", o)
	}
	if err := p.Sheet().Check(); err != nil {
		t.Error(err)
	}
}

// Whatever a letting gives is the total, no ply gives more than it has, and those
// that could give more give alike.
func TestLettingAddsUp(t *testing.T) {
	r := rand.New(rand.NewPCG(35, 8))
	good := 0
	for range 2000 {
		l := alter.Letting{Total: in(1+r.Int64N(64), 16)}
		for range 1 + r.IntN(4) {
			one := alter.Let{Name: "seam", Times: r.IntN(4), Spec: seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: in(4+r.Int64N(20), 16)}}}, Sewn: r.IntN(2) == 0}
			if one.Sewn && r.IntN(2) == 0 {
				one.Spec = seam.Any{Seam: seam.French{Allowance: seam.Allowance{Drafted: in(10+r.Int64N(8), 16)}}}
				one.Then = seam.Any{Seam: seam.Plain{}}
			}
			l.Seams = append(l.Seams, one)
		}
		p, err := l.Plan()
		if err != nil {
			if got := nountest.Paths(t, err); got != "total" {
				t.Errorf("%+v: %v", l, err)
			}
			continue
		}
		good++
		sum, least := units.Length{}, units.Length{}
		for _, o := range p.Seams {
			sum = sum.Add(o.Total)
			if o.Gives.Less(o.Each) || o.After.Upper.Taken != o.Take && !reflect.DeepEqual(o.After, o.Before) || o.Has != o.Take.Add(o.Each) || o.After.Upper.Drift != o.Before.Upper.Drift.Add(o.Each) || o.After.Under.Drift != o.Before.Under.Drift.Add(o.Each) {
				t.Errorf("%+v: %+v", l, o)
			}
			if o.Each.Less(o.Gives) {
				if !least.IsZero() && o.Each != least {
					t.Errorf("%+v: %v and %v where both could give more", l, least, o.Each)
				}
				least = o.Each
			}
		}
		if sum != l.Total || p.Most.Less(sum) {
			t.Errorf("%+v: gives %v of %v", l, sum, p.Most)
		}
	}
	if good < 500 {
		t.Errorf("only %d good", good)
	}
}

// Letting out changes the edges that the seams cross, and nothing else, by what the
// letting says; the partner tells.
func TestLettingThroughAssembly(t *testing.T) {
	plain := seam.Any{Seam: seam.Plain{Allowance: seam.Allowance{Drafted: in(1, 1)}}}
	a := edge.Assembly{
		Seams: []edge.Joint{{Name: "side", Spec: plain}, {Name: "shoulder", Spec: plain}},
		Edges: []edge.Course{
			{Name: "waist", Net: in(28, 1), Crossings: []edge.Crossing{{Seam: "side", Times: 2}}},
			{Name: "band", Net: in(28, 1)},
			{Name: "neck", Net: in(15, 1), Crossings: []edge.Crossing{{Seam: "shoulder", Times: 2}}},
			{Name: "collar", Net: in(15, 1)},
		},
		Pairs: []edge.Partners{{Long: "waist", Short: "band"}, {Long: "neck", Short: "collar"}},
	}
	l, err := alter.Letting{Total: in(1, 1), Seams: []alter.Let{{Name: "side", Times: 2, Spec: plain}}}.Plan()
	if err != nil {
		t.Fatal(err)
	}
	b, err := l.Apply(a)
	if err != nil {
		t.Fatal(err)
	}
	p, err := b.Plan()
	if err != nil {
		t.Fatal(err)
	}
	for name, want := range map[string]units.Length{"waist": in(1, 1), "band": {}, "neck": {}, "collar": {}} {
		e, _ := p.Edge(name)
		nountest.ExactTo(t, name, e.Change, want)
	}
	if m, _ := p.Pair("waist", "band"); m.Fit != edge.Mismatch {
		t.Errorf("the waist against its band: %v", m.Fit)
	}
	if m, _ := p.Pair("neck", "collar"); m.Fit != edge.Fits {
		t.Errorf("the neck against its collar: %v", m.Fit)
	}
	if a.Seams[0].Spec != plain {
		t.Error("the assembly given was changed")
	}
	// A remedy mends the waist, for every partner.
	if len(p.Remedies) == 0 {
		t.Fatal("no remedies")
	}
	for _, r := range p.Remedies {
		mended, err := r.Apply(b)
		if err != nil {
			t.Fatal(err)
		}
		if q, err := mended.Plan(); err != nil || q.Mismatched() != p.Mismatched()-r.Mends+r.Breaks {
			t.Errorf("%v: %v", r, err)
		}
	}
	l.Spec.Seams[0].Name = "hem"
	if _, err := l.Apply(a); nountest.Paths(t, err) != "seams" {
		t.Errorf("a seam that is not there: %v", err)
	}
}

// Every kind of seam, sewn or not, can be let out or taken in, or says why not.
func TestLettingEveryKind(t *testing.T) {
	outs := 0
	for spec := range seam.Kinds() {
		k, spec := spec.Kind(), spec.With(seam.Allowance{Drafted: in(1, 1), Fraying: true})
		for _, sewn := range []bool{false, true} {
			for _, total := range []units.Length{in(1, 8), in(-1, 8)} {
				p, err := alter.Letting{Total: total, Seams: []alter.Let{{Name: "side", Spec: spec, Sewn: sewn}}}.Plan()
				if err != nil {
					nountest.Paths(t, err)
					continue
				}
				outs++
				o := p.Seams[0]
				if o.Before.Upper.Taken.Less(o.Has) || o.After.Spec.Kind() != k || o.After.Upper.Taken != o.Take || o.After.Upper.Drift != o.Before.Upper.Drift.Add(o.Each) {
					t.Errorf("%v, %v: %+v", k, total, o)
				}
				if err := p.Sheet().Check(); err != nil {
					t.Errorf("%v: %v", k, err)
				}
			}
		}
	}
	if outs < 40 {
		t.Errorf("only %d of all kinds can be altered", outs)
	}
}

// Two lengthened edges are equally long.
func TestLengtheningMatches(t *testing.T) {
	r := rand.New(rand.NewPCG(2, 4))
	for range 300 {
		l := alter.Lengthening{By: in(1+r.Int64N(40), 8), Height: in(40+r.Int64N(100), 8), Run: in(r.Int64N(40), 8), WithRun: in(r.Int64N(40), 8)}
		p, err := l.Plan()
		if err != nil {
			t.Fatal(err)
		}
		// With's height and change come to an edge as long as After.
		tall := p.WithHeight.Add(p.WithBy).Mid()
		if got, err := units.Sqrt(tall.Times(tall).Add(l.WithRun.Times(l.WithRun)), units.Length{}); err != nil || in(1, 1000).Less(got.Sub(p.After).Mid().Abs()) {
			t.Errorf("%+v: %v against %v", l, got, p.After)
		}
	}
}

// The eases of the zones are the whole, and each lies where its share puts it.
func TestEasingAddsUp(t *testing.T) {
	r := rand.New(rand.NewPCG(29, 9))
	for range 300 {
		e := alter.Easing{}
		all := units.Length{}
		for range 1 + r.IntN(6) {
			z := alter.Zone{Length: in(1+r.Int64N(40), 8), Share: units.RatioOf(r.Int64N(3), 1)}
			e.Zones, all = append(e.Zones, z), all.Add(z.Length)
		}
		e.Zones[0].Share = units.RatioOf(1, 3)
		e.Long = all.Add(in(r.Int64N(20), 16))
		p, err := e.Plan()
		if err != nil {
			t.Fatal(err)
		}
		sum, at := units.Length{}, units.Length{}
		for i, o := range p.Zones {
			if o.From != at || o.Fits != !p.Spec.Limit.Less(o.Per) || !o.Fits && p.Smooth || e.Zones[i].Share.IsZero() && !o.Ease.IsZero() {
				t.Errorf("%+v: %+v", e, o)
			}
			sum, at = sum.Add(o.Long), at.Add(e.Zones[i].Length)
		}
		if sum != e.Long || p.Ease != e.Long.Sub(p.Short) {
			t.Errorf("%+v: zones of %v", e, sum)
		}
	}
}
