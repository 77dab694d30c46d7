package stitch_test

import (
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/stitch"
)

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

func TestAllocs(t *testing.T) {
	d := stitch.Density{PerInch: of(12, 1), Run: in("18")}
	byRatio := stitch.Thread{Stitch: stitch.Lock301, Seam: in("18")}
	byGeometry := stitch.Thread{Stitch: stitch.Overedge504, Seam: in("18"), PerInch: of(10, 1), Thickness: in("1/32"), Width: in("1/8")}
	bySample := stitch.Thread{Stitch: stitch.Chain401, Seam: in("42"), Sample: in("3"), SampleNeedle: in("9"), SampleUnder: in("8")}
	g, s := shirt(), stitch.Setting{Job: stitch.Regular, Cloth: stitch.Sheer}
	dp, err1 := d.Plan()
	tp, err2 := byRatio.Plan()
	gp, err3 := g.Plan()
	sp, err4 := s.Plan()
	if err1 != nil || err2 != nil || err3 != nil || err4 != nil {
		t.Fatal(err1, err2, err3, err4)
	}
	for _, test := range []struct {
		name string
		f    func()
		most int
	}{
		{"Density.Plan", func() { _, _ = d.Plan() }, 0},
		{"Thread.Plan by ratio", func() { _, _ = byRatio.Plan() }, 2},
		{"Thread.Plan by geometry", func() { _, _ = byGeometry.Plan() }, 2},
		{"Thread.Plan by sample", func() { _, _ = bySample.Plan() }, 2},
		{"Garment.Plan", func() { _, _ = g.Plan() }, 2},
		{"Setting.Plan", func() { _, _ = s.Plan() }, 2},
		{"DensityPlan.Sheet", func() { dp.Sheet() }, 40},
		{"ThreadPlan.Sheet", func() { tp.Sheet() }, 40},
		{"GarmentPlan.Sheet", func() { gp.Sheet() }, 40},
		{"SettingPlan.Sheet", func() { sp.Sheet() }, 40},
	} {
		if got := int(testing.AllocsPerRun(100, test.f)); got > test.most {
			t.Errorf("%s: %d allocations, want at most %d", test.name, got, test.most)
		}
	}
}
