package stitch_test

import (
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/stitch"
	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

// same plans a solved Spec again: all but what was assumed must be the same.
func same[P any](t *testing.T, p P, plan func() (P, error)) {
	t.Helper()
	q, err := plan()
	if err != nil {
		t.Errorf("%+v\nis refused when planned again: %v", p, err)
		return
	}
	opts := cmp.Options{
		cmpopts.IgnoreFields(stitch.SettingPlan{}, "Assumed"), cmpopts.IgnoreFields(stitch.ThreadPlan{}, "Assumed"), cmpopts.IgnoreFields(stitch.RunPlan{}, "Assumed"),
		cmp.Comparer(func(a, b units.Length) bool { return a == b }), cmp.Comparer(func(a, b units.Ratio) bool { return a == b }),
	}
	if d := cmp.Diff(p, q, opts); d != "" {
		t.Errorf("planned again it differs:\n%s", d)
	}
}

// TestPlannedAgain feeds the solved Spec of every noun back.
func TestPlannedAgain(t *testing.T) {
	for _, d := range []stitch.Density{
		{StitchLength: in("1/8")}, {StitchLength: in("1/8"), Space: in("3/8")}, {PerInch: of(12, 1)}, {PerInch: of(12, 1), Space: in("1/24")}, {PerInch: of(7, 1), Run: in("4")},
		{PerInch: of(7, 1), Stitches: of(40, 3)}, {Run: in("4"), Stitches: of(33, 1)}, {Run: in("4"), Stitches: of(33, 1), Space: in("1/100")},
	} {
		p, err := d.Plan()
		if err != nil {
			t.Fatal(err)
		}
		same(t, p, p.Spec.Plan)
	}
	for k := range stitch.Types {
		for _, th := range []stitch.Thread{
			{Stitch: k, Seam: in("18")}, {Stitch: k, Seam: in("18"), Ratio: of(7, 2)}, {Stitch: k, Seam: in("18"), NeedleShare: of(1, 3), Waste: of(1, 7)},
			{Stitch: k, Seam: in("18"), PerInch: of(11, 1), Thickness: in("1/30")}, {Stitch: k, Seam: in("18"), StitchLength: in("1/9"), Thickness: in("1/30"), Width: in("1/4")},
			{Stitch: k, Seam: in("18"), Sample: in("3"), SampleNeedle: in("9")}, {Stitch: k, Seam: in("18"), Sample: in("3"), SampleNeedle: in("9"), SampleUnder: in("7")},
		} {
			p, err := th.Plan()
			if err != nil {
				continue // that stitch has no such sum
			}
			same(t, p, p.Spec.Plan)
			g, err := stitch.Garment{Seams: []stitch.Run{{Name: "a", Thread: th}, {Count: 3, Thread: th}}, Waste: of(1, 5), Spool: in("100")}.Plan()
			if err != nil {
				t.Fatal(err)
			}
			same(t, g, g.Spec.Plan)
		}
	}
	for j := stitch.NoJob; j <= stitch.Bartack; j++ {
		for c := stitch.NoCloth; c <= stitch.Suede; c++ {
			p, err := stitch.Setting{Job: j, Cloth: c}.Plan()
			if err != nil {
				continue
			}
			same(t, p, p.Spec.Plan)
		}
	}
}
