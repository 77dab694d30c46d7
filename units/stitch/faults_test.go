package stitch_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/stitch"
)

func in(s string) units.Length { return units.MustParse(s + " in") }

func of(n, d int64) units.Ratio { return units.RatioOf(n, d) }

// paths are the fields of the faults of err, each of which must be complete.
func paths(t *testing.T, err error) []string {
	t.Helper()
	var faults fault.Faults
	if !errors.As(err, &faults) || len(faults) == 0 {
		t.Fatalf("no faults but %v", err)
	}
	var out []string
	for _, f := range faults {
		out = append(out, f.Path)
		if f.Path == "" || f.Limit == "" || f.Kind == "" {
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
		{"nothing given", stitch.Density{}, "StitchLength", fault.Missing},
		{"a row without a count", stitch.Density{Run: in("4")}, "StitchLength", fault.Missing},
		{"a space alone", stitch.Density{Space: in("1/8")}, "StitchLength", fault.Missing},
		{"all below zero", stitch.Density{StitchLength: in("-1"), Space: in("-1"), PerInch: of(-1, 1), Run: in("-1"), Stitches: of(-1, 1)},
			"StitchLength Space PerInch Run Stitches", fault.Sign},
		{"2 mm is not 12 to the inch", stitch.Density{StitchLength: units.Millimetre.Of(2), PerInch: of(12, 1)}, "PerInch", fault.Conflict},
		{"ten stitches of 1/8 in 1 in", stitch.Density{StitchLength: in("1/8"), Run: in("1"), Stitches: of(10, 1)}, "Stitches", fault.Conflict},
		{"ten in 1 in are not 8 to the inch", stitch.Density{PerInch: of(8, 1), Run: in("1"), Stitches: of(10, 1)}, "Stitches", fault.Conflict},
		{"nothing but space", stitch.Density{PerInch: of(8, 1), Space: in("1/8")}, "Space", fault.Conflict},
		{"two at once", stitch.Density{StitchLength: in("1/8"), PerInch: of(7, 1), Run: in("1"), Stitches: of(10, 1)}, "PerInch Stitches", fault.Conflict},
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
		{"nothing given", stitch.Thread{}, "Stitch Seam", fault.Missing},
		{"no such stitch or method", stitch.Thread{Stitch: 99, By: 9, Seam: seam}, "Stitch By", fault.Unknown},
		{"the first that is no type or method", stitch.Thread{Stitch: stitch.Cover607 + 1, By: stitch.BySample + 1, Seam: seam}, "Stitch By", fault.Unknown},
		{"no row for the type", stitch.Thread{Stitch: stitch.Cover607, Seam: seam}, "Ratio", fault.Missing},
		{"less thread than seam", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Ratio: of(1, 2)}, "Ratio", fault.Range},
		{"negative", stitch.Thread{Stitch: stitch.Lock301, Seam: in("-1"), Ratio: of(-5, 2)}, "Seam Ratio", fault.Sign},
		{"no formula for the type", stitch.Thread{Stitch: stitch.Cover602, Seam: seam, PerInch: of(8, 1), Thickness: in("0.01")}, "Stitch", fault.Unknown},
		{"no density", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Thickness: in("0.01")}, "StitchLength", fault.Missing},
		{"no thickness", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, PerInch: of(8, 1)}, "Thickness", fault.Missing},
		{"no width", stitch.Thread{Stitch: stitch.Overedge504, Seam: seam, PerInch: of(8, 1), Thickness: in("0.01")}, "Width", fault.Missing},
		{"a width that is not read", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, PerInch: of(8, 1), Thickness: in("0.01"), Width: in("1/4")}, "Width", fault.Unused},
		{"two densities", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, StitchLength: units.Millimetre.Of(2), PerInch: of(12, 1), Thickness: in("0.01")}, "PerInch", fault.Conflict},
		{"a negative density", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, StitchLength: in("-1"), PerInch: of(-8, 1), Thickness: in("-1")}, "StitchLength PerInch Thickness", fault.Sign},
		{"a ratio beside the geometry", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Ratio: of(5, 2), PerInch: of(8, 1), Thickness: in("0.01")}, "Ratio", fault.Unused},
		{"geometry asked for by ratio", stitch.Thread{Stitch: stitch.Lock301, By: stitch.ByRatio, Seam: seam, StitchLength: in("1/8"), PerInch: of(8, 1), Thickness: in("0.01"), Width: in("1")},
			"StitchLength PerInch Thickness Width", fault.Unused},
		{"a sample asked for by ratio", stitch.Thread{Stitch: stitch.Lock301, By: stitch.ByRatio, Seam: seam, Sample: in("1"), SampleNeedle: in("2"), SampleUnder: in("2")},
			"Sample SampleNeedle SampleUnder", fault.Unused},
		{"half a sample", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Sample: in("1")}, "SampleNeedle SampleUnder", fault.Missing},
		{"the other half", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, SampleUnder: in("1")}, "Sample SampleNeedle", fault.Missing},
		{"less thread than sample", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Sample: in("3"), SampleNeedle: in("2"), SampleUnder: in("2")}, "SampleNeedle", fault.Range},
		{"a bobbin where there is none", stitch.Thread{Stitch: stitch.Chain101, Seam: seam, Sample: in("3"), SampleNeedle: in("9"), SampleUnder: in("2")}, "SampleUnder", fault.Unused},
		{"a share of a sample", stitch.Thread{Stitch: stitch.Chain401, Seam: seam, Sample: in("3"), SampleNeedle: in("9"), SampleUnder: in("2"), NeedleShare: of(1, 2)}, "NeedleShare", fault.Unused},
		{"a share above all", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, NeedleShare: of(3, 2)}, "NeedleShare", fault.Range},
		{"a share below none", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, NeedleShare: of(-1, 2)}, "NeedleShare", fault.Range},
		{"half of one thread", stitch.Thread{Stitch: stitch.Chain101, Seam: seam, NeedleShare: of(1, 2)}, "NeedleShare", fault.Conflict},
		{"waste below none", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Waste: of(-1, 2)}, "Waste", fault.Range},
		{"waste of 15, not 15 percent", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Waste: of(15, 1)}, "Waste", fault.Range},
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
		{"nothing given", stitch.Garment{}, "Seams", fault.Missing},
		{"too many rows", stitch.Garment{Seams: make([]stitch.Run, 1_000_000)}, "Seams", fault.Range},
		{"everything wrong", stitch.Garment{Seams: []stitch.Run{{Name: "a\x00", Count: -1, Thread: stitch.Thread{}}, {Count: math.MaxInt, Thread: good}}, Waste: of(-1, 1), Spool: in("-1")},
			"Seams[0].Name Seams[0].Count Seams[0].Thread.Stitch Seams[0].Thread.Seam Seams[1].Count Waste Spool", fault.Range},
		{"too much waste", stitch.Garment{Seams: []stitch.Run{{Thread: good}}, Waste: of(2, 1)}, "Waste", fault.Range},
		{"spools without end", stitch.Garment{Seams: []stitch.Run{{Thread: good}}, Spool: units.MustParse("1/1000000 in")}, "Spool", fault.Range},
		{"spools beyond numbers", stitch.Garment{Seams: []stitch.Run{{Thread: stitch.Thread{Stitch: stitch.Lock301, Seam: units.MustParse("1" + strings.Repeat("0", 300) + " in")}}}, Spool: in("1")}, "Spool", fault.Range},
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
		{"nothing given", stitch.Setting{}, "Job", fault.Missing},
		{"no such things", stitch.Setting{Job: 99, Cloth: 99, Needle: 99}, "Job Cloth Needle", fault.Unknown},
		{"no such cloth", stitch.Setting{Cloth: 99}, "Cloth", fault.Unknown},
		{"the first that is no cloth", stitch.Setting{Cloth: stitch.Suede + 1}, "Cloth", fault.Unknown},
		{"the first that is no job", stitch.Setting{Job: stitch.Bartack + 1, Cloth: stitch.Denim}, "Job", fault.Unknown},
		{"a needle that no table has", stitch.Setting{Job: stitch.Basting, Needle: 81}, "Needle", fault.Unknown},
		{"a negative needle", stitch.Setting{Cloth: stitch.Denim, Needle: -100}, "Needle", fault.Unknown},
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
