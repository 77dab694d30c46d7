package nest

import (
	"context"
	"math"
	"math/rand/v2"
	"sync/atomic"
	"testing"
)

// A first lay for which every pairing is made anew ends when all is spent.
func TestFirstLayBounded(t *testing.T) {
	var coils []Piece
	for _, more := range []int64{0, 3, 5, 7, 9} {
		coils = append(coils, drawn(1, noTurn, coil(60, more)...))
	}
	n := made(t, 3000, 0, 1, coils...)
	dear := &table{n: n}
	most := 0
	for a := range n.Variants {
		for b := range n.Variants {
			most = max(most, len(dear.pair(a, b).sums))
		}
	}
	const spend = 2000
	var last atomic.Int64
	last.Store(math.MaxInt64)
	h := hunter{t: dear, n: n, ctx: context.Background(), dice: rand.New(rand.NewPCG(1, 2)), spend: spend, last: &last}
	h.first()
	// It asks after each place across, for which every piece may be looked at again
	// and again: much less than a lay takes.
	if h.best != nil || h.done < spend || h.done > 20*spend {
		t.Errorf("%d steps of %d, each pairing of %d sums, a lay: %v", h.done, spend, most, h.best != nil)
	}
}

// A look at a place counts as many where very long lists are read for it.
func TestLongLooks(t *testing.T) {
	for _, test := range []struct {
		pts  []int64
		dear bool
	}{{coil(200, 0), true}, {star(12, 900), false}} {
		full := filled(t, made(t, 30_000, 0, 1, drawn(1, noTurn, test.pts...)))
		e := newEaser(full, rand.New(rand.NewPCG(1, 2)), func() bool { return false })
		e.lie[0] = lie{0, 0, 0}
		c := full.at(0, 0)
		before := e.steps
		e.pairCost(0, 0)
		mean := len(c.lists) / (c.side * c.side)
		if took := e.steps - before; (took > 1) != test.dear || took > int64(1+mean) {
			t.Errorf("%d steps, lists of %d", took, mean)
		}
	}
}

// Dividing ends with its context.
func TestDivideLate(t *testing.T) {
	n := made(t, 30_000, 0, 1, drawn(1, byQuarters, star(40, 9000)...))
	ctx, stop := context.WithCancel(context.Background())
	stop()
	if n.divide(ctx, 0) {
		t.Error("divided")
	}
}
