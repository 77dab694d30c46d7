package stitch_test

import (
	"math/rand/v2"
	"reflect"
	"slices"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/stitch"
)

func random(r *rand.Rand) units.Length {
	dens := [...]int64{1, 8, 16, 3, 7, 127, 1009}
	return units.Inch.Frac(1+r.Int64N(400), dens[r.IntN(len(dens))])
}

// Both ways of a density, and what it counts in a row, agree to the last fraction.
func TestDensityBothWays(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 1))
	for range nountest.Rounds(500) {
		d := stitch.Density{StitchLength: random(r), Run: random(r)}
		if r.IntN(2) == 0 {
			d.Space = random(r)
		}
		p, err := d.Plan()
		if err != nil {
			t.Fatal(err)
		}
		s := p.Spec
		if p.Pitch != s.StitchLength.Add(s.Space) || units.Inch.Of(1) != p.Pitch.Scale(s.PerInch) || s.Run != p.Pitch.Scale(s.Stitches) ||
			p.PerCentimetre.Mul(of(127, 50)) != s.PerInch {
			t.Fatalf("%+v", p)
		}
		for _, again := range []stitch.Density{
			s,
			{PerInch: s.PerInch, Space: s.Space, Run: s.Run},
			{PerInch: s.PerInch, Space: s.Space, Stitches: s.Stitches},
			{Run: s.Run, Stitches: s.Stitches, Space: s.Space},
		} {
			if q, err := again.Plan(); err != nil || !reflect.DeepEqual(q, p) {
				t.Fatalf("%+v gives %+v, %v", again, q, err)
			}
		}
	}
}

// The thread of a seam is its parts, and grows with each of them.
func TestThreadAddsUp(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 2))
	for range nountest.Rounds(300) {
		for k := range stitch.Types() {
			s := stitch.Thread{Stitch: k, Seam: random(r), Waste: of(1+r.Int64N(100), 100)}
			formula := slices.Contains([]stitch.Type{stitch.Chain101, stitch.Lock301, stitch.Chain401, stitch.Overedge504}, k)
			switch n := r.IntN(3); {
			case n == 0 && formula:
				s.StitchLength, s.Thickness = random(r), random(r)
				if k == stitch.Overedge504 {
					s.Width = random(r)
				}
			case n == 1:
				s.Sample = random(r)
				s.SampleNeedle = s.Sample.Add(random(r))
				if k != stitch.Chain101 && k != stitch.Blind103 {
					s.SampleUnder = random(r)
				}
			default:
				s.Ratio = of(1+r.Int64N(30), 1)
			}
			plan, err := nountest.Planned(t, stitch.Nouns(), s)
			if err != nil {
				t.Fatal(k, err)
			}
			p := plan.(stitch.ThreadPlan)
			if p.Total != p.Spec.Seam.Scale(p.PerLength) || p.Need != p.Total.Add(p.Total.Scale(s.Waste)) || p.Need.Less(p.Total) {
				t.Fatalf("%+v", p)
			}
			if p.Split && (p.Needle.Add(p.Under) != p.Total || p.NeedleNeed.Add(p.UnderNeed) != p.Need) || !p.Split && !p.Needle.Add(p.UnderNeed).IsZero() {
				t.Fatalf("%+v", p)
			}
			s.Seam = s.Seam.MulInt(2)
			if q, err := s.Plan(); err != nil || q.Need != p.Need.MulInt(2) {
				t.Fatalf("twice the seam takes %v, not twice %v", q.Need, p.Need)
			}
		}
	}
}

// More thickness, and shorter stitches, take more thread by every formula.
func TestGeometryGrows(t *testing.T) {
	for f := range stitch.FormulaRows() {
		s := stitch.Thread{Stitch: f.Type, Seam: in("10"), StitchLength: in("1/10"), Thickness: in("1/50")}
		if f.Wide > 0 {
			s.Width = in("1/5")
		}
		p, err := s.Plan()
		if err != nil {
			t.Fatal(err)
		}
		thick, fine := s, s
		thick.Thickness, fine.StitchLength = in("1/25"), in("1/20")
		for _, more := range []stitch.Thread{thick, fine} {
			if q, err := more.Plan(); err != nil || !p.PerLength.Less(q.PerLength) {
				t.Errorf("%v: %v after %v, %v", f.Type, q.PerLength, p.PerLength, err)
			}
		}
	}
}

// A garment is the sum of its seams, and the spools hold it.
func TestGarmentAddsUp(t *testing.T) {
	g := shirt()
	p, err := g.Plan()
	if err != nil {
		t.Fatal(err)
	}
	var need, total units.Length
	for i, r := range p.Runs {
		n := max(1, g.Seams[i].Count)
		one, err := g.Seams[i].Thread.Plan()
		if err != nil || !reflect.DeepEqual(r.Thread, one) || r.Count != n {
			t.Fatalf("%+v, %v", r, err)
		}
		for range n {
			need, total = need.Add(one.Need), total.Add(one.Total)
		}
	}
	if p.Need != need || p.Total != total || !p.Split || p.NeedleNeed.Add(p.UnderNeed) != need {
		t.Errorf("%v of %v", p.Need, need)
	}
	if held := g.Spool.MulInt(int64(p.Spools)); p.Spare != held.Sub(need) || p.Spare.Sign() < 0 || g.Spool.Cmp(p.Spare) <= 0 {
		t.Errorf("%d spools leave %v", p.Spools, p.Spare)
	}
	g.Waste = of(1, 5)
	g.Seams[0].Thread.Waste = of(1, 10)
	q, err := g.Plan()
	if err != nil || q.Runs[0].Thread.Spec.Waste != of(1, 10) || q.Runs[1].Thread.Spec.Waste != of(1, 5) {
		t.Error("the waste of a seam wins, else that of the garment", err)
	}
	g.Seams[3].Thread.Stitch = stitch.Cover607
	g.Seams[3].Thread.Ratio = of(30, 1)
	g.Seams[2].Name = ""
	g.Spool = units.Length{}
	if q, err = g.Plan(); err != nil || q.Split || !q.NeedleNeed.IsZero() || !q.UnderNeed.IsZero() || q.Spools != 0 {
		t.Errorf("a stitch whose thread is not split: %+v, %v", q, err)
	}
}

// Every job has a row, as its first source prints it, and every cloth with a needle too.
func TestSettings(t *testing.T) {
	for j := range stitch.Jobs() {
		plan, err := nountest.Planned(t, stitch.Nouns(), stitch.Setting{Job: j})
		if err != nil {
			t.Fatal(j, err)
		}
		p := plan.(stitch.SettingPlan)
		for r := range stitch.Densities() {
			if r.Job != j || r.Cloth != 0 {
				continue
			}
			if p.LeastPerInch != r.LeastPerInch || p.MostPerInch != r.MostPerInch || p.ShortPrinted != r.ShortLength || p.LongPrinted != r.LongLength || len(p.Assumed) > 0 {
				t.Errorf("%v: %+v", j, p)
			}
			break
		}
		if p.Short.Scale(p.MostPerInch) != in("1") || p.Long.Scale(p.LeastPerInch) != in("1") || p.Long.Less(p.Short) {
			t.Errorf("%v: %v to %v", j, p.Short, p.Long)
		}
		for c := range stitch.Cloths() {
			plan, err := nountest.Planned(t, stitch.Nouns(), stitch.Setting{Job: j, Cloth: c, Needle: 80})
			if q, ok := plan.(stitch.SettingPlan); err != nil || !ok || q.Shank != units.Millimetre.Frac(80, 100) || q.Size != 12 || len(q.Assumed) > 0 {
				t.Fatalf("%v on %v: %+v, %v", j, c, q, err)
			}
		}
	}
}

// A garment cites the table of each stitch once, and only where it is used; a
// setting tells what a needle's number means only where there is a needle.
func TestCitedOnce(t *testing.T) {
	g := shirt()
	g.Seams = append(g.Seams, stitch.Run{Thread: stitch.Thread{Stitch: stitch.Chain101, Seam: in("9"), Sample: in("1"), SampleNeedle: in("4")}})
	p, err := g.Plan()
	if err != nil {
		t.Fatal(err)
	}
	n := map[string]int{}
	for _, c := range p.Sheet().Sources {
		n[c.For]++
	}
	if n["thread for a length of seam"] != 4 || n["waste"] != 2 { // two rows each for 301 and 304
		t.Error(n)
	}
	for _, test := range []struct {
		spec  stitch.Setting
		lines int
		cites int
	}{
		{stitch.Setting{Job: stitch.Basting}, 4, 5},
		{stitch.Setting{Job: stitch.Basting, Needle: 80}, 5, 6},
		{stitch.Setting{Job: stitch.Placket}, 1, 1},
		{stitch.Setting{Cloth: stitch.Coating}, 3, 3},
		{stitch.Setting{Cloth: stitch.Denim}, 3, 4},
		{stitch.Setting{Job: stitch.Regular, Cloth: stitch.BlouseWeight, Needle: 60}, 3, 4},
	} {
		p, err := test.spec.Plan()
		if sh := p.Sheet(); err != nil || len(sh.Lines) != test.lines || len(sh.Sources) != test.cites {
			t.Errorf("%+v: %d lines and %v, %v", test.spec, len(sh.Lines), sh.Sources, err)
		}
	}
}

func shirt() stitch.Garment {
	return stitch.Garment{
		Seams: []stitch.Run{
			{Name: "side and sleeve seams, two passes", Count: 4, Thread: stitch.Thread{Stitch: stitch.Lock301, Seam: in("44")}},
			{Name: "shoulders, two passes", Count: 2, Thread: stitch.Thread{Stitch: stitch.Lock301, Seam: in("12")}},
			{Name: "armholes", Count: 2, Thread: stitch.Thread{Stitch: stitch.Lock301, Seam: in("19 1/8")}},
			{Name: "armholes, overcast", Count: 2, Thread: stitch.Thread{Stitch: stitch.Zigzag304, Seam: in("19 1/8")}},
			{Name: "hem", Thread: stitch.Thread{Stitch: stitch.Lock301, Seam: in("49 3/4")}},
		},
		Spool: units.Metre.Of(100),
	}
}
