package nest

import (
	"context"
	"errors"
	"runtime"
	"slices"
	"testing"
	"time"
)

// told is what a search in legs tells, and the lay it comes to.
func told(full *table, spend, leg int64, pause time.Duration) (tells [][2]int64, best []Seat) {
	full.n.Watch = func(end, steps int64) {
		tells = append(tells, [2]int64{end, steps})
		time.Sleep(pause) // the first hunter alone waits
	}
	best, _ = full.hunt(context.Background(), full.n.boxes(), spend, leg, 5)
	return tells, best
}

// However fast each hunter is, they find the same and tell the same, lays that
// only get shorter.
func TestLegs(t *testing.T) {
	for name, c := range map[string]struct {
		nest       *Nest
		spend, leg int64
		bound      bool
	}{
		"on a lattice": {made(t, 20, 0, 1, drawn(26, byHalf, 0, 0, 6, 1, 5, 6, 0, 3)), 3_000_000, 100_000, false},
		"off one":      {made(t, 200_000, 0, 1, drawn(9, byHalf, 0, 0, 60_017, 0, 10_000, 30_000)), 2_000_000, 50_000, false},
		"to the bound": {made(t, 6, 0, 1, drawn(1, byHalf, 0, 0, 6, 0, 3, 4, 0, 3), drawn(1, byHalf, 6, 0, 6, 8, 4, 8, 3, 4), drawn(1, byHalf, 0, 3, 3, 4, 4, 8, 0, 8)), 1 << 40, 20_000, true},
	} {
		full := filled(t, c.nest)
		tells, best := told(full, c.spend, c.leg, 0)
		if len(tells) < 3 && !c.bound || (full.n.end(best) == full.n.Bound) != c.bound {
			t.Fatalf("%s: %v, bound %d", name, tells, full.n.Bound)
		}
		for i, now := range tells[1:] {
			if now[0] > tells[i][0] || now[1] < tells[i][1] {
				t.Errorf("%s: %v after %v", name, now, tells[i])
			}
		}
		if last := tells[len(tells)-1]; last[0] < full.n.end(best) || !c.bound && last[1] < c.spend {
			t.Errorf("%s: %v at last, %d long", name, last, full.n.end(best))
		}
		for k := range 4 {
			was := runtime.GOMAXPROCS(1 + k%2)
			again, lay := told(full, c.spend, c.leg, time.Duration(k/2)*time.Millisecond)
			runtime.GOMAXPROCS(was)
			if !slices.Equal(tells, again) || !slices.Equal(best, lay) {
				t.Errorf("%s: %v, %v before", name, again, tells)
			}
		}
	}
}

// Where whoever watches panics, nothing goes on after the call.
func TestLegsPanic(t *testing.T) {
	full := filled(t, made(t, 20, 0, 1, drawn(26, byHalf, 0, 0, 6, 1, 5, 6, 0, 3)))
	enough := errors.New("seen enough")
	full.n.Watch = func(end, steps int64) { panic(enough) }
	before := runtime.NumGoroutine()
	func() {
		defer func() {
			if got := recover(); got != enough {
				t.Errorf("recovered %v", got)
			}
		}()
		full.hunt(context.Background(), full.n.boxes(), 1<<40, 10_000, 1)
	}()
	ended(t, before)
}

// Off the lattice in legs 1, 2, 4, 8 and so on, where lays are eased in every second
// too, and as long as that is ahead by what the lattice tries for.
func TestStrays(t *testing.T) {
	const was = 100
	free := func(slack int64, freely bool, long int64) (legs []int) {
		for leg := 1; leg <= 9; leg++ {
			h := &hunter{n: &Nest{}, freely: freely, long: long, begun: leg}
			h.l = &lattice{h: h, step: 10, slack: slack, aim: aim{less: 10}}
			if h.strays(was) {
				legs = append(legs, leg)
			}
		}
		return legs
	}
	some, half, all := []int{1, 2, 4, 8}, []int{1, 2, 4, 6, 8}, []int{1, 2, 3, 4, 5, 6, 7, 8, 9}
	for _, c := range []struct {
		slack, long int64
		freely      bool
		want        []int
	}{
		{0, was, true, some},
		{0, 91, true, some}, // hardly ahead
		{0, 90, true, all},
		{0, 90, false, some}, // it was on the lattice
		{1, was, true, half},
		{1, 91, true, half},
		{1, 90, true, all},
		{1, 90, false, half},
	} {
		if got := free(c.slack, c.freely, c.long); !slices.Equal(got, c.want) {
			t.Errorf("slack %d, %d long, freely %t: off it in legs %v, want %v", c.slack, c.long, c.freely, got, c.want)
		}
	}
}
