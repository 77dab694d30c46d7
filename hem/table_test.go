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
	seen := map[hem.Depth]bool{}
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

// TestTurns: each printed pair of turns is a hem that can be planned, and the
// defaults are rows of the table from the highest rank of source.
func TestTurns(t *testing.T) {
	first := map[hem.Kind]hem.Turn{}
	for turn := range hem.Turns() {
		src, _ := source.Lookup(turn.Source)
		if d, ok := first[turn.Kind]; !ok {
			first[turn.Kind] = turn
		} else if best, _ := source.Lookup(d.Source); turn.Known != source.Practice && src.Rank < best.Rank {
			t.Errorf("%s is of a higher rank than the default", turn.Source)
		}
		s := hem.Spec{Kind: turn.Kind, First: turn.First, Depth: turn.Depth, Trim: turn.Trim}
		if turn.Depth.IsZero() {
			s.Depth = l("1")
		}
		takes := func(first, depth units.Length) units.Length {
			if first.IsZero() {
				first = depth
			}
			if turn.Kind == hem.TurnUp {
				depth = depth.MulInt(2)
			}
			return first.Add(depth)
		}
		if p, err := s.Plan(); err != nil || p.Taken != takes(s.First, s.Depth) {
			t.Errorf("%+v: %v", turn, err)
		}
	}
	p, err := hem.Spec{Kind: hem.Narrow}.Plan()
	if n := first[hem.Narrow]; err != nil || p.Spec.First != n.First || p.Spec.Depth != n.Depth {
		t.Error(p, err)
	}
	p, err = hem.Spec{Kind: hem.Double, Depth: l("3")}.Plan()
	if err != nil || p.Spec.First != first[hem.Double].First {
		t.Error(p, err)
	}
}
