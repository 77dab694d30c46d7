package edge_test

import (
	"math"
	"testing"

	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun/nountest"
)

func TestRefusals(t *testing.T) {
	minus := in(-1, 8)
	for _, c := range []struct {
		why   string
		spec  any
		paths string // none for what is taken
		kind  fault.Kind
	}{
		{"no meeting", edge.Meeting{}, "drafted", fault.Missing},
		{"a meeting below zero, too wide", edge.Meeting{Drafted: minus, Cut: minus, Taken: minus, Front: degrees(-1), Back: degrees(180)}, "drafted cut taken front back", fault.Sign},
		{"angles that cannot be added", edge.Meeting{Drafted: in(5, 8), Front: degrees(70), Back: slope(1, 3)}, "back", units.NoSum},
	} {
		t.Run(c.why, func(t *testing.T) { nountest.Refused(t, edge.Nouns(), c.spec, c.paths, c.kind) })
	}
}

// huge is 10 to the power of 19 n inches.
func huge(n int) units.Length {
	l := units.Inch.Of(1)
	for range n {
		l = l.MulInt(math.MaxInt64)
	}
	return l
}

// Lengths beyond measure are worked out, or refused with a fault.
func TestHuge(t *testing.T) {
	for _, big := range []units.Length{huge(16), huge(400)} {
		for _, spec := range []any{
			edge.Meeting{Drafted: big, Taken: in(1, 3), Front: slope(2, 1), Back: slope(3, 1)},
		} {
			if _, err := nountest.Planned(t, edge.Nouns(), spec); err != nil {
				nountest.Paths(t, err)
			}
		}
	}
}
