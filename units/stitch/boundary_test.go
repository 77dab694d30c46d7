package stitch_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
	"example.com/clothyard/units/stitch"
)

// A wardrobe of as many rows as may be is worked out; one more is refused.
func TestGarmentRows(t *testing.T) {
	hem := stitch.Thread{Stitch: stitch.Lock301, Seam: in("1"), Ratio: of(5, 2), Waste: of(1, 5)}
	g := stitch.Garment{Seams: make([]stitch.Run, stitch.MaxRuns)}
	for i := range g.Seams {
		g.Seams[i] = stitch.Run{Name: "hem", Thread: hem}
	}
	p, err := g.Plan()
	if err != nil || len(p.Runs) != stitch.MaxRuns || p.Total != in("25000") || p.Need != in("30000") {
		t.Errorf("%d rows, %v, %v; %v", len(p.Runs), p.Total, p.Need, err)
	}
	g.Seams = append(g.Seams, g.Seams[0])
	nountest.Refused(t, stitch.Nouns(), g, "seams", fault.Range)
}

// As many spools as are counted, and not an inch of thread beyond them.
func TestGarmentSpools(t *testing.T) {
	g := stitch.Garment{Spool: in("1"), Seams: []stitch.Run{{Thread: stitch.Thread{Stitch: stitch.Lock301, Seam: in("250000"), Ratio: of(2, 1), Waste: of(1, 1)}}}}
	p, err := g.Plan()
	if err != nil || p.Need != in("1000000") || p.Spools != stitch.MaxSpools || !p.Spare.IsZero() {
		t.Errorf("%v, %d spools, %v left; %v", p.Need, p.Spools, p.Spare, err)
	}
	g.Seams[0].Thread.Seam = in("250000 1/16")
	nountest.Refused(t, stitch.Nouns(), g, "spool", fault.Range)
}

// A garment of one seam has a sheet as any other: the row, the sum, the under
// thread, the spools.
func TestGarmentOfOneSeam(t *testing.T) {
	p, err := nountest.Planned(t, stitch.Nouns(), stitch.Garment{Spool: in("1000"), Seams: []stitch.Run{{Name: "centre back",
		Thread: stitch.Thread{Stitch: stitch.Lock301, Seam: in("16"), Ratio: of(5, 2), NeedleShare: of(1, 2), Waste: of(1, 4)}}}})
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, l := range p.Sheet().Lines {
		got = append(got, l.Label+" "+l.Result.String())
	}
	if d := cmp.Diff([]string{"centre back 50 in", "all the thread 50 in", "of which under thread 25 in", "left on the spools 950 in"}, got); d != "" {
		t.Error(d)
	}
}
