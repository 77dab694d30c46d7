package nest

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"
)

// A swap moves no pieces but two of different kinds, only where all cost less then,
// and the costs that are kept are what the pieces cost as they lie.
func TestSwap(t *testing.T) {
	dice := rand.New(rand.NewPCG(77, 78))
	e := scattered(t, dice)
	e.tally()
	k := len(e.lie)
	all := func() (sum float64) {
		for i := range k {
			sum += e.slowly(i, e.lie[i].variant, e.lie[i].x, e.lie[i].y)
		}
		return sum / 2
	}
	const tries = 1500
	done := 0
	for range tries {
		i := dice.IntN(k)
		lay, before := slices.Clone(e.lie), all()
		ok := e.swap(i)
		var moved []int
		for j := range k {
			if e.lie[j] != lay[j] {
				moved = append(moved, j)
			}
		}
		after := all()
		if !ok {
			if len(moved) > 0 || e.gone != -1 {
				t.Fatalf("no swap of %d, but %v moved, %d is gone", i, moved, e.gone)
			}
		} else {
			done++
			if moved = slices.DeleteFunc(moved, func(j int) bool { return j == i }); len(moved) > 1 || len(moved) == 1 && e.kind[moved[0]] == e.kind[i] {
				t.Fatalf("%v moved for %d", moved, i)
			}
			if after >= before {
				t.Fatalf("all cost %v after %v", after, before)
			}
		}
		for j := range k {
			c := 0.0
			if j != i {
				c = e.pairCost(min(i, j), max(i, j))
			}
			if math.Abs(e.cost[i*k+j]-c) > 1e-9*(1+c) || e.cost[i*k+j] != e.cost[j*k+i] {
				t.Fatalf("items %d and %d cost %v, want %v", i, j, e.cost[i*k+j], c)
			}
		}
		var f field
		if !e.field(&f, e.lie[i].variant) {
			t.Fatal("no room")
		}
		want := e.slowly(i, f.variant, e.lie[i].x, e.lie[i].y)
		if got := e.at(i, &f, e.lie[i].x, e.lie[i].y, math.MaxFloat64); math.Abs(got-want) > 1e-9*(1+want) {
			t.Fatalf("item %d costs %v where it lies, want %v", i, got, want)
		}
	}
	if done < tries/50 || done == tries {
		t.Errorf("%d of %d swapped", done, tries)
	}
	t.Logf("%d of %d swapped", done, tries)
}
