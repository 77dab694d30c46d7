package stitch_test

import (
	"math"
	"strings"
	"testing"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/stitch"
)

func TestFaults(t *testing.T) {
	seam, good := in("10"), stitch.Thread{Stitch: stitch.Lock301, Seam: in("18")}
	for _, test := range []struct {
		spec  any
		paths string
		kind  fault.Kind
	}{
		{stitch.Density{}, "stitchLength", fault.Missing},
		{stitch.Density{Run: in("4")}, "stitchLength", fault.Missing},
		{stitch.Density{Space: in("1/8")}, "stitchLength", fault.Missing},
		{stitch.Density{StitchLength: in("-1"), Space: in("-1"), PerInch: of(-1, 1), Run: in("-1"), Stitches: of(-1, 1)},
			"stitchLength space perInch run stitches", fault.Sign},
		{stitch.Density{StitchLength: units.Millimetre.Of(2), PerInch: of(12, 1)}, "perInch", fault.Conflict},
		{stitch.Density{StitchLength: in("1/8"), Run: in("1"), Stitches: of(10, 1)}, "stitches", fault.Conflict},
		{stitch.Density{PerInch: of(8, 1), Run: in("1"), Stitches: of(10, 1)}, "stitches", fault.Conflict},
		{stitch.Density{PerInch: of(8, 1), Space: in("1/8")}, "space", fault.Conflict},
		{stitch.Density{StitchLength: in("1/8"), PerInch: of(7, 1), Run: in("1"), Stitches: of(10, 1)}, "perInch stitches", fault.Conflict},
		{stitch.Thread{}, "stitch seam", fault.Missing},
		{stitch.Thread{Stitch: 99, By: 9, Seam: seam}, "stitch by", fault.Unknown},
		{stitch.Thread{Stitch: stitch.Cover607 + 1, By: stitch.BySample + 1, Seam: seam}, "stitch by", fault.Unknown},
		{stitch.Thread{Stitch: stitch.Cover607, Seam: seam}, "ratio", fault.Missing},
		{stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Ratio: of(1, 2)}, "ratio", fault.Range},
		{stitch.Thread{Stitch: stitch.Lock301, Seam: in("-1"), Ratio: of(-5, 2)}, "seam ratio", fault.Sign},
		{stitch.Thread{Stitch: stitch.Cover602, Seam: seam, PerInch: of(8, 1), Thickness: in("0.01")}, "stitch", fault.Unknown},
		{stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Thickness: in("0.01")}, "stitchLength", fault.Missing},
		{stitch.Thread{Stitch: stitch.Lock301, Seam: seam, PerInch: of(8, 1)}, "thickness", fault.Missing},
		{stitch.Thread{Stitch: stitch.Overedge504, Seam: seam, PerInch: of(8, 1), Thickness: in("0.01")}, "width", fault.Missing},
		{stitch.Thread{Stitch: stitch.Lock301, Seam: seam, PerInch: of(8, 1), Thickness: in("0.01"), Width: in("1/4")}, "width", fault.Unused},
		{stitch.Thread{Stitch: stitch.Lock301, Seam: seam, StitchLength: units.Millimetre.Of(2), PerInch: of(12, 1), Thickness: in("0.01")}, "perInch", fault.Conflict},
		{stitch.Thread{Stitch: stitch.Lock301, Seam: seam, StitchLength: in("-1"), PerInch: of(-8, 1), Thickness: in("-1")}, "stitchLength perInch thickness", fault.Sign},
		{stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Ratio: of(5, 2), PerInch: of(8, 1), Thickness: in("0.01")}, "ratio", fault.Unused},
		{stitch.Thread{Stitch: stitch.Lock301, By: stitch.ByRatio, Seam: seam, StitchLength: in("1/8"), PerInch: of(8, 1), Thickness: in("0.01"), Width: in("1")},
			"stitchLength perInch thickness width", fault.Unused},
		{stitch.Thread{Stitch: stitch.Lock301, By: stitch.ByRatio, Seam: seam, Sample: in("1"), SampleNeedle: in("2"), SampleUnder: in("2")},
			"sample sampleNeedle sampleUnder", fault.Unused},
		{stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Sample: in("1")}, "sampleNeedle sampleUnder", fault.Missing},
		{stitch.Thread{Stitch: stitch.Lock301, Seam: seam, SampleUnder: in("1")}, "sample sampleNeedle", fault.Missing},
		{stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Sample: in("3"), SampleNeedle: in("2"), SampleUnder: in("2")}, "sampleNeedle", fault.Range},
		{stitch.Thread{Stitch: stitch.Chain101, Seam: seam, Sample: in("3"), SampleNeedle: in("9"), SampleUnder: in("2")}, "sampleUnder", fault.Unused},
		{stitch.Thread{Stitch: stitch.Chain401, Seam: seam, Sample: in("3"), SampleNeedle: in("9"), SampleUnder: in("2"), NeedleShare: of(1, 2)}, "needleShare", fault.Unused},
		{stitch.Thread{Stitch: stitch.Lock301, Seam: seam, NeedleShare: of(3, 2)}, "needleShare", fault.Range},
		{stitch.Thread{Stitch: stitch.Lock301, Seam: seam, NeedleShare: of(-1, 2)}, "needleShare", fault.Range},
		{stitch.Thread{Stitch: stitch.Chain101, Seam: seam, NeedleShare: of(1, 2)}, "needleShare", fault.Conflict},
		{stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Waste: of(-1, 2)}, "waste", fault.Range},
		{stitch.Thread{Stitch: stitch.Lock301, Seam: seam, Waste: of(15, 1)}, "waste", fault.Range},
		{stitch.Garment{}, "seams", fault.Missing},
		{stitch.Garment{Seams: make([]stitch.Run, 1_000_000)}, "seams", fault.Range},
		{stitch.Garment{Seams: []stitch.Run{{Name: "a\x00", Count: -1, Thread: stitch.Thread{}}, {Count: math.MaxInt, Thread: good}}, Waste: of(-1, 1), Spool: in("-1")},
			"seams[0].name seams[0].count seams[0].thread.stitch seams[0].thread.seam seams[1].count waste spool", fault.Range},
		{stitch.Garment{Seams: []stitch.Run{{Thread: good}}, Waste: of(2, 1)}, "waste", fault.Range},
		{stitch.Garment{Seams: []stitch.Run{{Thread: good}}, Spool: units.MustParse("1/1000000 in")}, "spool", fault.Range},
		{stitch.Garment{Seams: []stitch.Run{{Thread: stitch.Thread{Stitch: stitch.Lock301, Seam: units.MustParse("1" + strings.Repeat("0", 300) + " in")}}}, Spool: in("1")}, "spool", fault.Range},
		{stitch.Setting{}, "job", fault.Missing},
		{stitch.Setting{Job: 99, Cloth: 99, Needle: 99}, "job cloth needle", fault.Unknown},
		{stitch.Setting{Cloth: 99}, "cloth", fault.Unknown},
		{stitch.Setting{Cloth: stitch.Suede + 1}, "cloth", fault.Unknown},
		{stitch.Setting{Job: stitch.Bartack + 1, Cloth: stitch.Denim}, "job", fault.Unknown},
		{stitch.Setting{Job: stitch.Basting, Needle: 81}, "needle", fault.Unknown},
		{stitch.Setting{Cloth: stitch.Denim, Needle: -100}, "needle", fault.Unknown},
	} {
		nountest.Refused(t, stitch.Nouns(), test.spec, test.paths, test.kind)
	}
}
