package stitch_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/stitch"
	"example.com/clothyard/units/ticket"
)

func in(s string) units.Length { return units.MustParse(s + " in") }

func of(n, d int64) units.Ratio { return units.RatioOf(n, d) }

// paths are the fields of the faults of err, each of which must be complete.
func paths(t *testing.T, err error) []string {
	t.Helper()
	var faults ticket.Faults
	if !errors.As(err, &faults) || len(faults) == 0 {
		t.Fatalf("no faults but %v", err)
	}
	var out []string
	for _, f := range faults {
		out = append(out, f.Path)
		if f.Path == "" || f.Limit == "" || f.Err == nil {
			t.Errorf("%q names no field, limit or kind", f)
		}
	}
	return out
}

func TestDensityFaults(t *testing.T) {
	for _, test := range []struct {
		why  string
		spec stitch.Density
		want string
		err  error
	}{
		{"nothing given", stitch.Density{}, "StitchLength", ticket.ErrMissing},
		{"a row without a count", stitch.Density{Run: in("4")}, "StitchLength", ticket.ErrMissing},
		{"a space alone", stitch.Density{Space: in("1/8")}, "StitchLength", ticket.ErrMissing},
		{"all below zero", stitch.Density{StitchLength: in("-1"), Space: in("-1"), PerInch: of(-1, 1), Run: in("-1"), Stitches: of(-1, 1)},
			"StitchLength Space PerInch Run Stitches", ticket.ErrSign},
		{"2 mm is not 12 to the inch", stitch.Density{StitchLength: units.Millimetre.Of(2), PerInch: of(12, 1)}, "PerInch", ticket.ErrConflict},
		{"ten stitches of 1/8 in 1 in", stitch.Density{StitchLength: in("1/8"), Run: in("1"), Stitches: of(10, 1)}, "Stitches", ticket.ErrConflict},
		{"ten in 1 in are not 8 to the inch", stitch.Density{PerInch: of(8, 1), Run: in("1"), Stitches: of(10, 1)}, "Stitches", ticket.ErrConflict},
		{"nothing but space", stitch.Density{PerInch: of(8, 1), Space: in("1/8")}, "Space", ticket.ErrConflict},
		{"two at once", stitch.Density{StitchLength: in("1/8"), PerInch: of(7, 1), Run: in("1"), Stitches: of(10, 1)}, "PerInch Stitches", ticket.ErrConflict},
	} {
		p, err := test.spec.Plan()
		if d := cmp.Diff(strings.Fields(test.want), paths(t, err)); d != "" || !errors.Is(err, test.err) || p != (stitch.DensityPlan{}) {
			t.Errorf("%s: %v\n%s", test.why, err, d)
		}
		if s, err := test.spec.Solve(); err == nil || s != test.spec {
			t.Errorf("%s: Solve gave %v, %v", test.why, s, err)
		}
	}
}

func TestThreadFaults(t *testing.T) {
	seam := in("10")
	for _, test := range []struct {
		why  string
		spec stitch.Thread
		want string
		err  error
	}{
		{"nothing given", stitch.Thread{}, "Stitch Seam", ticket.ErrMissing},
		{"no such stitch or method", stitch.Thread{Stitch: 99, By: 9, Seam: seam}, "Stitch By", ticket.ErrUnknown},
		{"the first that is no type or method", stitch.Thread{Stitch: stitch.Cover607 + 1, By: stitch.BySample + 1, Seam: seam}, "Stitch By", ticket.ErrUnknown},
		{"no row for the type", stitch.Thread{Stitch: stitch.Cover607, Seam: seam}, "Ratio", ticket.ErrMissing},
		{"less thread than seam", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Ratio: of(1, 2)}, "Ratio", ticket.ErrRange},
		{"negative", stitch.Thread{Stitch: stitch.Lock301, Seam: in("-1"), Ratio: of(-5, 2)}, "Seam Ratio", ticket.ErrSign},
		{"no formula for the type", stitch.Thread{Stitch: stitch.Cover602, Seam: seam, PerInch: of(8, 1), Thickness: in("0.01")}, "Stitch", ticket.ErrUnknown},
		{"no density", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Thickness: in("0.01")}, "StitchLength", ticket.ErrMissing},
		{"no thickness", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, PerInch: of(8, 1)}, "Thickness", ticket.ErrMissing},
		{"no width", stitch.Thread{Stitch: stitch.Overedge504, Seam: seam, PerInch: of(8, 1), Thickness: in("0.01")}, "Width", ticket.ErrMissing},
		{"a width that is not read", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, PerInch: of(8, 1), Thickness: in("0.01"), Width: in("1/4")}, "Width", ticket.ErrUnused},
		{"two densities", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, StitchLength: units.Millimetre.Of(2), PerInch: of(12, 1), Thickness: in("0.01")}, "PerInch", ticket.ErrConflict},
		{"a negative density", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, StitchLength: in("-1"), PerInch: of(-8, 1), Thickness: in("-1")}, "StitchLength PerInch Thickness", ticket.ErrSign},
		{"a ratio beside the geometry", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Ratio: of(5, 2), PerInch: of(8, 1), Thickness: in("0.01")}, "Ratio", ticket.ErrUnused},
		{"geometry asked for by ratio", stitch.Thread{Stitch: stitch.Lock301, By: stitch.ByRatio, Seam: seam, StitchLength: in("1/8"), PerInch: of(8, 1), Thickness: in("0.01"), Width: in("1")},
			"StitchLength PerInch Thickness Width", ticket.ErrUnused},
		{"a sample asked for by ratio", stitch.Thread{Stitch: stitch.Lock301, By: stitch.ByRatio, Seam: seam, Sample: in("1"), SampleNeedle: in("2"), SampleUnder: in("2")},
			"Sample SampleNeedle SampleUnder", ticket.ErrUnused},
		{"half a sample", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Sample: in("1")}, "SampleNeedle SampleUnder", ticket.ErrMissing},
		{"the other half", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, SampleUnder: in("1")}, "Sample SampleNeedle", ticket.ErrMissing},
		{"less thread than sample", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Sample: in("3"), SampleNeedle: in("2"), SampleUnder: in("2")}, "SampleNeedle", ticket.ErrRange},
		{"a bobbin where there is none", stitch.Thread{Stitch: stitch.Chain101, Seam: seam, Sample: in("3"), SampleNeedle: in("9"), SampleUnder: in("2")}, "SampleUnder", ticket.ErrUnused},
		{"a share of a sample", stitch.Thread{Stitch: stitch.Chain401, Seam: seam, Sample: in("3"), SampleNeedle: in("9"), SampleUnder: in("2"), NeedleShare: of(1, 2)}, "NeedleShare", ticket.ErrUnused},
		{"a share above all", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, NeedleShare: of(3, 2)}, "NeedleShare", ticket.ErrRange},
		{"a share below none", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, NeedleShare: of(-1, 2)}, "NeedleShare", ticket.ErrRange},
		{"half of one thread", stitch.Thread{Stitch: stitch.Chain101, Seam: seam, NeedleShare: of(1, 2)}, "NeedleShare", ticket.ErrConflict},
		{"waste below none", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Waste: of(-1, 2)}, "Waste", ticket.ErrRange},
		{"waste of 15, not 15 percent", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Waste: of(15, 1)}, "Waste", ticket.ErrRange},
	} {
		p, err := test.spec.Plan()
		if d := cmp.Diff(strings.Fields(test.want), paths(t, err)); d != "" || !errors.Is(err, test.err) || p != (stitch.ThreadPlan{}) {
			t.Errorf("%s: %v\n%s", test.why, err, d)
		}
		if s, err := test.spec.Solve(); err == nil || s != test.spec {
			t.Errorf("%s: Solve gave %v, %v", test.why, s, err)
		}
	}
}

func TestGarmentFaults(t *testing.T) {
	good := stitch.Thread{Stitch: stitch.Lock301, Seam: in("18")}
	for _, test := range []struct {
		why  string
		spec stitch.Garment
		want string
		err  error
	}{
		{"nothing given", stitch.Garment{}, "Seams", ticket.ErrMissing},
		{"too many rows", stitch.Garment{Seams: make([]stitch.Run, 1_000_000)}, "Seams", ticket.ErrRange},
		{"everything wrong", stitch.Garment{Seams: []stitch.Run{{Name: "a\x00", Count: -1, Thread: stitch.Thread{}}, {Count: math.MaxInt, Thread: good}}, Waste: of(-1, 1), Spool: in("-1")},
			"Seams[0].Name Seams[0].Count Seams[0].Thread.Stitch Seams[0].Thread.Seam Seams[1].Count Waste Spool", ticket.ErrRange},
		{"too much waste", stitch.Garment{Seams: []stitch.Run{{Thread: good}}, Waste: of(2, 1)}, "Waste", ticket.ErrRange},
		{"spools without end", stitch.Garment{Seams: []stitch.Run{{Thread: good}}, Spool: units.MustParse("1/1000000 in")}, "Spool", ticket.ErrRange},
		{"spools beyond numbers", stitch.Garment{Seams: []stitch.Run{{Thread: stitch.Thread{Stitch: stitch.Lock301, Seam: units.MustParse("1" + strings.Repeat("0", 300) + " in")}}}, Spool: in("1")}, "Spool", ticket.ErrRange},
	} {
		p, err := test.spec.Plan()
		if d := cmp.Diff(strings.Fields(test.want), paths(t, err)); d != "" || !errors.Is(err, test.err) || p.Runs != nil {
			t.Errorf("%s: %v\n%s", test.why, err, d)
		}
		if s, err := test.spec.Solve(); err == nil || len(s.Seams) != len(test.spec.Seams) {
			t.Errorf("%s: Solve gave %v, %v", test.why, s, err)
		}
	}
}

func TestSettingFaults(t *testing.T) {
	for _, test := range []struct {
		why  string
		spec stitch.Setting
		want string
		err  error
	}{
		{"nothing given", stitch.Setting{}, "Job", ticket.ErrMissing},
		{"no such things", stitch.Setting{Job: 99, Cloth: 99, Needle: 99}, "Job Cloth Needle", ticket.ErrUnknown},
		{"no such cloth", stitch.Setting{Cloth: 99}, "Cloth", ticket.ErrUnknown},
		{"the first that is no cloth", stitch.Setting{Cloth: stitch.Suede + 1}, "Cloth", ticket.ErrUnknown},
		{"the first that is no job", stitch.Setting{Job: stitch.Bartack + 1, Cloth: stitch.Denim}, "Job", ticket.ErrUnknown},
		{"a needle that no table has", stitch.Setting{Job: stitch.Basting, Needle: 81}, "Needle", ticket.ErrUnknown},
		{"a negative needle", stitch.Setting{Cloth: stitch.Denim, Needle: -100}, "Needle", ticket.ErrUnknown},
	} {
		p, err := test.spec.Plan()
		if d := cmp.Diff(strings.Fields(test.want), paths(t, err)); d != "" || !errors.Is(err, test.err) || p != (stitch.SettingPlan{}) {
			t.Errorf("%s: %v\n%s", test.why, err, d)
		}
		if s, err := test.spec.Solve(); err == nil || s != test.spec {
			t.Errorf("%s: Solve gave %v, %v", test.why, s, err)
		}
	}
}
