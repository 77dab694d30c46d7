package hem_test

import (
	"errors"
	"strings"
	"testing"

	"example.com/clothyard/hem"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/source"
)

func TestDepths(t *testing.T) {
	garments := map[string]int{}
	seen := map[hem.DepthRow]bool{}
	for d := range hem.Depths() {
		garments[d.Garment]++
		if seen[d] {
			t.Errorf("twice: %+v", d)
		}
		seen[d] = true
		if d.Garment != strings.ToLower(d.Garment) && !strings.Contains(d.Garment, "A-line") {
			t.Errorf("not lower case: %s", d.Garment)
		}
		if d.Least.Sign() < 0 || d.Least.IsZero() && d.Most.IsZero() || !d.Most.IsZero() && d.Most.Less(d.Least) {
			t.Errorf("%s: %v to %v", d.Garment, d.Least, d.Most)
		}
	}
	for garment, n := range garments {
		got, err := hem.DepthsFor(garment)
		if err != nil || len(got) != n {
			t.Errorf("%s: %d rows, want %d, %v", garment, len(got), n, err)
		}
		for i, d := range got {
			src, _ := source.Lookup(d.Source)
			if i > 0 {
				before, _ := source.Lookup(got[i-1].Source)
				if src.Rank < before.Rank {
					t.Errorf("%s: %s after %s", garment, d.Source, got[i-1].Source)
				}
			}
		}
	}
	// The sources disagree on a flared skirt, and all of them are there.
	if rows, err := hem.DepthsFor("flared skirt"); err != nil || len(rows) != 4 || rows[0].Most != l("3") || rows[2].Most != l("3/8") {
		t.Errorf("%+v %v", rows, err)
	}
	for _, text := range []string{"", "ruff", "Coat", strings.Repeat("x", 1e6)} {
		if rows, err := hem.DepthsFor(text); !errors.Is(err, fault.Unknown) || rows != nil || len(err.Error()) > 300 {
			t.Errorf("%.20q: %v %v", text, rows, err)
		}
	}
}

// TestGarmentNames: a garment that the table of depths does not have is named in the
// fault as it was asked for, if it is no longer than a name may be.
func TestGarmentNames(t *testing.T) {
	long := strings.Repeat("x", fault.MaxName)
	for name, want := range map[string]string{"doublet": `"doublet"`, long: `"` + long + `"`, long + "x": "201 bytes"} {
		_, err := hem.DepthsFor(name)
		var f *fault.Fault
		if !errors.As(err, &f) || f.Got != want || f.Path != "garment" || f.Kind != fault.Unknown {
			t.Errorf("%d bytes: %v", len(name), err)
		}
	}
}

// TestTurns: each printed pair of turns is a hem that can be planned, and the
// defaults are rows of the table from the highest rank of source.
func TestTurns(t *testing.T) {
	first := map[string]hem.TurnRow{}
	for turn := range hem.Turns() {
		src, _ := source.Lookup(turn.Source)
		if d, ok := first[turn.Kind]; !ok {
			first[turn.Kind] = turn
		} else if best, _ := source.Lookup(d.Source); turn.Known != source.Practice && src.Rank < best.Rank {
			t.Errorf("%s is of a higher rank than the default", turn.Source)
		}
		text, sum := turn.Kind, units.Length{}
		for name, l := range map[string]units.Length{"first": turn.First, "depth": turn.Depth, "trim": turn.Trim} {
			if !l.IsZero() {
				text += "; " + name + "=" + l.String()
			}
		}
		if turn.Depth.IsZero() {
			turn.Depth = l("1")
			text += "; depth=1 in"
		}
		if sum = turn.First.Add(turn.Depth); turn.First.IsZero() {
			sum = turn.Depth.MulInt(2)
		}
		if turn.Kind == "turn-up" {
			sum = sum.Add(turn.Depth)
		}
		if p := planned(t, text); p.Taken != sum {
			t.Errorf("%+v: takes %v", turn, p.Taken)
		}
	}
	if n, s := first["narrow"], planned(t, "narrow").Spec.Hem.(hem.Narrow); s.First != n.First || s.Depth != n.Depth {
		t.Errorf("%+v", s)
	}
	if s := planned(t, "double; depth=3 in").Spec.Hem.(hem.Double); s.First != first["double"].First {
		t.Errorf("%+v", s)
	}
}

// TestPrintedComesOut: a strip that is printed in full is of the width printed, and
// what a child's garment is let out by is one growth tuck.
func TestPrintedComesOut(t *testing.T) {
	for r := range hem.Strips() {
		if r.Cut.IsZero() || r.Seam.IsZero() || r.Depth.IsZero() {
			continue
		}
		p := planned(t, r.Kind+"; depth="+r.Depth.String()+"; seam="+r.Seam.String()+"; first="+r.Turn.String())
		if p.Strips[0].Width != r.Cut {
			t.Errorf("%+v: %v", r, p.Strips)
		}
	}
	for r := range hem.Growths() {
		p, err := hem.Tucks{Kind: hem.GrowthTuck, Removed: r.Removed}.Plan()
		if err != nil || p.PerTuck != r.Removed {
			t.Errorf("%+v: %v", r, err)
		}
	}
}
