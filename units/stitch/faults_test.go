package stitch_test

import (
	"errors"
	"math"
	"reflect"
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
		{"nothing given", stitch.Density{}, "stitchLength", fault.Missing},
		{"a row without a count", stitch.Density{Run: in("4")}, "stitchLength", fault.Missing},
		{"a space alone", stitch.Density{Space: in("1/8")}, "stitchLength", fault.Missing},
		{"all below zero", stitch.Density{StitchLength: in("-1"), Space: in("-1"), PerInch: of(-1, 1), Run: in("-1"), Stitches: of(-1, 1)},
			"stitchLength space perInch run stitches", fault.Sign},
		{"2 mm is not 12 to the inch", stitch.Density{StitchLength: units.Millimetre.Of(2), PerInch: of(12, 1)}, "perInch", fault.Conflict},
		{"ten stitches of 1/8 in 1 in", stitch.Density{StitchLength: in("1/8"), Run: in("1"), Stitches: of(10, 1)}, "stitches", fault.Conflict},
		{"ten in 1 in are not 8 to the inch", stitch.Density{PerInch: of(8, 1), Run: in("1"), Stitches: of(10, 1)}, "stitches", fault.Conflict},
		{"nothing but space", stitch.Density{PerInch: of(8, 1), Space: in("1/8")}, "space", fault.Conflict},
		{"two at once", stitch.Density{StitchLength: in("1/8"), PerInch: of(7, 1), Run: in("1"), Stitches: of(10, 1)}, "perInch stitches", fault.Conflict},
	} {
		p, err := test.spec.Plan()
		if d := cmp.Diff(strings.Fields(test.want), paths(t, err)); d != "" || !errors.Is(err, test.err) || !reflect.DeepEqual(p, stitch.DensityPlan{}) {
			t.Errorf("%s: %v\n%s", test.why, err, d)
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
		{"nothing given", stitch.Thread{}, "stitch seam", fault.Missing},
		{"no such stitch or method", stitch.Thread{Stitch: 99, By: 9, Seam: seam}, "stitch by", fault.Unknown},
		{"the first that is no type or method", stitch.Thread{Stitch: stitch.Cover607 + 1, By: stitch.BySample + 1, Seam: seam}, "stitch by", fault.Unknown},
		{"no row for the type", stitch.Thread{Stitch: stitch.Cover607, Seam: seam}, "ratio", fault.Missing},
		{"less thread than seam", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Ratio: of(1, 2)}, "ratio", fault.Range},
		{"negative", stitch.Thread{Stitch: stitch.Lock301, Seam: in("-1"), Ratio: of(-5, 2)}, "seam ratio", fault.Sign},
		{"no formula for the type", stitch.Thread{Stitch: stitch.Cover602, Seam: seam, PerInch: of(8, 1), Thickness: in("0.01")}, "stitch", fault.Unknown},
		{"no density", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Thickness: in("0.01")}, "stitchLength", fault.Missing},
		{"no thickness", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, PerInch: of(8, 1)}, "thickness", fault.Missing},
		{"no width", stitch.Thread{Stitch: stitch.Overedge504, Seam: seam, PerInch: of(8, 1), Thickness: in("0.01")}, "width", fault.Missing},
		{"a width that is not read", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, PerInch: of(8, 1), Thickness: in("0.01"), Width: in("1/4")}, "width", fault.Unused},
		{"two densities", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, StitchLength: units.Millimetre.Of(2), PerInch: of(12, 1), Thickness: in("0.01")}, "perInch", fault.Conflict},
		{"a negative density", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, StitchLength: in("-1"), PerInch: of(-8, 1), Thickness: in("-1")}, "stitchLength perInch thickness", fault.Sign},
		{"a ratio beside the geometry", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Ratio: of(5, 2), PerInch: of(8, 1), Thickness: in("0.01")}, "ratio", fault.Unused},
		{"geometry asked for by ratio", stitch.Thread{Stitch: stitch.Lock301, By: stitch.ByRatio, Seam: seam, StitchLength: in("1/8"), PerInch: of(8, 1), Thickness: in("0.01"), Width: in("1")},
			"stitchLength perInch thickness width", fault.Unused},
		{"a sample asked for by ratio", stitch.Thread{Stitch: stitch.Lock301, By: stitch.ByRatio, Seam: seam, Sample: in("1"), SampleNeedle: in("2"), SampleUnder: in("2")},
			"sample sampleNeedle sampleUnder", fault.Unused},
		{"half a sample", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Sample: in("1")}, "sampleNeedle sampleUnder", fault.Missing},
		{"the other half", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, SampleUnder: in("1")}, "sample sampleNeedle", fault.Missing},
		{"less thread than sample", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Sample: in("3"), SampleNeedle: in("2"), SampleUnder: in("2")}, "sampleNeedle", fault.Range},
		{"a bobbin where there is none", stitch.Thread{Stitch: stitch.Chain101, Seam: seam, Sample: in("3"), SampleNeedle: in("9"), SampleUnder: in("2")}, "sampleUnder", fault.Unused},
		{"a share of a sample", stitch.Thread{Stitch: stitch.Chain401, Seam: seam, Sample: in("3"), SampleNeedle: in("9"), SampleUnder: in("2"), NeedleShare: of(1, 2)}, "needleShare", fault.Unused},
		{"a share above all", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, NeedleShare: of(3, 2)}, "needleShare", fault.Range},
		{"a share below none", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, NeedleShare: of(-1, 2)}, "needleShare", fault.Range},
		{"half of one thread", stitch.Thread{Stitch: stitch.Chain101, Seam: seam, NeedleShare: of(1, 2)}, "needleShare", fault.Conflict},
		{"waste below none", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Waste: of(-1, 2)}, "waste", fault.Range},
		{"waste of 15, not 15 percent", stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Waste: of(15, 1)}, "waste", fault.Range},
	} {
		p, err := test.spec.Plan()
		if d := cmp.Diff(strings.Fields(test.want), paths(t, err)); d != "" || !errors.Is(err, test.err) || !reflect.DeepEqual(p, stitch.ThreadPlan{}) {
			t.Errorf("%s: %v\n%s", test.why, err, d)
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
		{"nothing given", stitch.Garment{}, "seams", fault.Missing},
		{"too many rows", stitch.Garment{Seams: make([]stitch.Run, 1_000_000)}, "seams", fault.Range},
		{"everything wrong", stitch.Garment{Seams: []stitch.Run{{Name: "a\x00", Count: -1, Thread: stitch.Thread{}}, {Count: math.MaxInt, Thread: good}}, Waste: of(-1, 1), Spool: in("-1")},
			"seams[0].name seams[0].count seams[0].thread.stitch seams[0].thread.seam seams[1].count waste spool", fault.Range},
		{"too much waste", stitch.Garment{Seams: []stitch.Run{{Thread: good}}, Waste: of(2, 1)}, "waste", fault.Range},
		{"spools without end", stitch.Garment{Seams: []stitch.Run{{Thread: good}}, Spool: units.MustParse("1/1000000 in")}, "spool", fault.Range},
		{"spools beyond numbers", stitch.Garment{Seams: []stitch.Run{{Thread: stitch.Thread{Stitch: stitch.Lock301, Seam: units.MustParse("1" + strings.Repeat("0", 300) + " in")}}}, Spool: in("1")}, "spool", fault.Range},
	} {
		p, err := test.spec.Plan()
		if d := cmp.Diff(strings.Fields(test.want), paths(t, err)); d != "" || !errors.Is(err, test.err) || p.Runs != nil {
			t.Errorf("%s: %v\n%s", test.why, err, d)
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
		{"nothing given", stitch.Setting{}, "job", fault.Missing},
		{"no such things", stitch.Setting{Job: 99, Cloth: 99, Needle: 99}, "job cloth needle", fault.Unknown},
		{"no such cloth", stitch.Setting{Cloth: 99}, "cloth", fault.Unknown},
		{"the first that is no cloth", stitch.Setting{Cloth: stitch.Suede + 1}, "cloth", fault.Unknown},
		{"the first that is no job", stitch.Setting{Job: stitch.Bartack + 1, Cloth: stitch.Denim}, "job", fault.Unknown},
		{"a needle that no table has", stitch.Setting{Job: stitch.Basting, Needle: 81}, "needle", fault.Unknown},
		{"a negative needle", stitch.Setting{Cloth: stitch.Denim, Needle: -100}, "needle", fault.Unknown},
	} {
		p, err := test.spec.Plan()
		if d := cmp.Diff(strings.Fields(test.want), paths(t, err)); d != "" || !errors.Is(err, test.err) || !reflect.DeepEqual(p, stitch.SettingPlan{}) {
			t.Errorf("%s: %v\n%s", test.why, err, d)
		}
	}
}
