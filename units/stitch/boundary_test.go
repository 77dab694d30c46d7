package stitch_test

import (
	"errors"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.com/clothyard/units/fault"
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
	_, err = g.Plan()
	if d := cmp.Diff([]string{"seams"}, paths(t, err)); d != "" || !errors.Is(err, fault.Range) {
		t.Errorf("one row more: %v\n%s", err, d)
	}
}

// As many spools as are counted, and not an inch of thread beyond them.
func TestGarmentSpools(t *testing.T) {
	g := stitch.Garment{Spool: in("1"), Seams: []stitch.Run{{Thread: stitch.Thread{Stitch: stitch.Lock301, Seam: in("250000"), Ratio: of(2, 1), Waste: of(1, 1)}}}}
	p, err := g.Plan()
	if err != nil || p.Need != in("1000000") || p.Spools != stitch.MaxSpools || !p.Spare.IsZero() {
		t.Errorf("%v, %d spools, %v left; %v", p.Need, p.Spools, p.Spare, err)
	}
	g.Seams[0].Thread.Seam = in("250000 1/16")
	_, err = g.Plan()
	if d := cmp.Diff([]string{"spool"}, paths(t, err)); d != "" || !errors.Is(err, fault.Range) {
		t.Errorf("a sixteenth more of seam: %v\n%s", err, d)
	}
}

// A garment of one seam has a sheet as any other: the row, the sum, the under
// thread, the spools.
func TestGarmentOfOneSeam(t *testing.T) {
	g := stitch.Garment{Spool: in("1000"), Seams: []stitch.Run{{Name: "centre back", Thread: stitch.Thread{Stitch: stitch.Lock301, Seam: in("16"), Ratio: of(5, 2), NeedleShare: of(1, 2), Waste: of(1, 4)}}}}
	p, err := g.Plan()
	if err != nil {
		t.Fatal(err)
	}
	sh := p.Sheet()
	if err := sh.Check(); err != nil {
		t.Error(err)
	}
	var got []string
	for _, l := range sh.Lines {
		got = append(got, l.Label+" "+l.Result.String())
	}
	if d := cmp.Diff([]string{"centre back 50 in", "all the thread 50 in", "of which under thread 25 in", "left on the spools 950 in"}, got); d != "" {
		t.Error(d)
	}
}
