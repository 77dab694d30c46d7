package stitch_test

import (
	"math/rand/v2"
	"reflect"
	"slices"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/source"
	"example.com/clothyard/units/stitch"
	"example.com/clothyard/units/ticket"
)

func random(r *rand.Rand) units.Length {
	dens := [...]int64{1, 8, 16, 3, 7, 127, 1009}
	return units.Inch.Frac(1+r.Int64N(400), dens[r.IntN(len(dens))])
}

// Both ways of a density, and what it counts in a row, agree to the last fraction.
func TestDensityBothWays(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 1))
	for range 500 {
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
	for range 300 {
		for k := range stitch.Types() {
			s := stitch.Thread{Stitch: k, Seam: random(r), Waste: of(1+r.Int64N(100), 100)}
			_, formula := k.Formula()
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
			p, err := s.Plan()
			if err != nil {
				t.Fatal(k, err)
			}
			if p.Total != p.Spec.Seam.Scale(p.PerLength) || p.Need != p.Total.Add(p.Total.Scale(s.Waste)) || p.Need.Less(p.Total) {
				t.Fatalf("%+v", p)
			}
			if p.Split && (p.Needle.Add(p.Under) != p.Total || p.NeedleNeed.Add(p.UnderNeed) != p.Need) || !p.Split && !p.Needle.Add(p.UnderNeed).IsZero() {
				t.Fatalf("%+v", p)
			}
			if q, err := p.Spec.Plan(); err != nil || q.Need != p.Need || q.Spec != p.Spec || len(q.Assumed) > 0 {
				t.Fatalf("solved twice: %+v, %v", q, err)
			}
			if err := p.Sheet().Check(); err != nil {
				t.Fatal(err)
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
	for f := range stitch.FormulaRows {
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
		if err != nil || !reflect.DeepEqual(r.Thread, one) || r.Count != n || (slices.Equal(r.Assumed, []string{"count"})) != (g.Seams[i].Count == 0) {
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
	againPlan, err := g.Plan()
	again := againPlan.Spec
	if q, err2 := again.Plan(); err != nil || err2 != nil || q.Need != p.Need {
		t.Error(err, err2)
	}
	if err := p.Sheet().Check(); err != nil {
		t.Error(err)
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
	if err := q.Sheet().Check(); err != nil {
		t.Error(err)
	}
}

// Every setting that a table can answer does, with what the table has.
func TestSettings(t *testing.T) {
	for j := range stitch.Jobs() {
		p, err := stitch.Setting{Job: j}.Plan()
		if err != nil || p.Spec.Needle != 0 || !p.Shank.IsZero() || len(p.Assumed) > 0 {
			t.Fatalf("%v: %+v, %v", j, p, err)
		}
		for r := range j.Rows() {
			if p.LeastPerInch != r.LeastPerInch || p.MostPerInch != r.MostPerInch || p.ShortPrinted != r.ShortLength || p.LongPrinted != r.LongLength {
				t.Errorf("%v: %+v", j, p)
			}
			break
		}
		if p.Short.Scale(p.MostPerInch) != in("1") || p.Long.Scale(p.LeastPerInch) != in("1") || p.Long.Less(p.Short) {
			t.Errorf("%v: %v to %v", j, p.Short, p.Long)
		}
		if err := p.Sheet().Check(); err != nil {
			t.Error(err)
		}
		for c := range stitch.Cloths() {
			q, err := stitch.Setting{Job: j, Cloth: c, Needle: 80}.Plan()
			if err != nil || q.Shank != units.Millimetre.Frac(80, 100) || q.Size != 12 || len(q.Assumed) > 0 {
				t.Fatalf("%v on %v: %+v, %v", j, c, q, err)
			}
			own := j == stitch.Regular
			for r := range c.Rows() {
				own = own || r.Job == j
			}
			if !own && q.LeastPerInch != p.LeastPerInch {
				t.Errorf("%v on %v is not as for the job", j, c)
			}
			if err := q.Sheet().Check(); err != nil {
				t.Error(err)
			}
		}
	}
	sPlan, err := stitch.Setting{Cloth: stitch.Coating}.Plan()
	s := sPlan.Spec
	if err != nil || s.Needle != 100 {
		t.Error(s, err)
	}
}

// Every source that a sheet cites is in the list, and what is not cited is
// practice or computed.
func TestCites(t *testing.T) {
	var sheets []ticket.Sheet
	for k := range stitch.Types() {
		if p, err := (stitch.Thread{Stitch: k, Seam: in("9")}).Plan(); err == nil {
			sheets = append(sheets, p.Sheet())
		}
	}
	d, err := stitch.Density{PerInch: of(12, 1)}.Plan()
	g, err2 := shirt().Plan()
	w, err3 := stitch.Setting{Cloth: stitch.Denim}.Plan()
	m, err4 := stitch.Thread{Stitch: stitch.Chain401, Seam: in("42"), Sample: in("3"), SampleNeedle: in("9"), SampleUnder: in("8")}.Plan()
	if err != nil || err2 != nil || err3 != nil || err4 != nil {
		t.Fatal(err, err2, err3, err4)
	}
	for _, sh := range append(sheets, d.Sheet(), g.Sheet(), w.Sheet(), m.Sheet()) {
		if len(sh.Sources) == 0 || len(sh.Lines) == 0 || len(sh.Steps) == 0 || len(sh.Cautions) == 0 {
			t.Errorf("%s says too little", sh.Title)
		}
		for _, c := range sh.Sources {
			_, ok := source.Lookup(c.ID)
			if !ok && c.Known != source.Practice && c.Known != source.Computed {
				t.Errorf("%s: %q is not a source", sh.Title, c.ID)
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

// The plan of nothing has nothing to say, and says it without a panic.
func TestZeroPlans(t *testing.T) {
	for _, sh := range []ticket.Sheet{
		stitch.DensityPlan{}.Sheet(), stitch.ThreadPlan{}.Sheet(), stitch.GarmentPlan{}.Sheet(), stitch.SettingPlan{}.Sheet(),
	} {
		if sh.Title == "" || len(sh.Lines) != 0 || len(sh.Steps) != 0 {
			t.Errorf("%+v", sh)
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
