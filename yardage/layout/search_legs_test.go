package layout

import (
	"context"
	"errors"
	"runtime"
	"slices"
	"testing"
	"time"

	"example.com/clothyard/units"
)

// told is what a search in legs tells, and the lay it comes to.
func told(full *table, spend, leg int64, pause time.Duration) (tells [][2]int64, best []seat) {
	full.n.watch = func(end, steps int64) {
		tells = append(tells, [2]int64{end, steps})
		time.Sleep(pause) // the first hunter alone waits
	}
	best, _ = full.hunt(context.Background(), full.n.boxes(), spend, leg, 5)
	return tells, best
}

// However fast each hunter is, they find the same and tell the same, lays that
// only get shorter.
func TestLegs(t *testing.T) {
	whole := Spec{Cloth: Cloth{Wide: units.Inch.Of(6)}, Pieces: []Piece{
		drawn(1, Half, 0, 0, 6, 0, 3, 4, 0, 3), drawn(1, Half, 6, 0, 6, 8, 4, 8, 3, 4), drawn(1, Half, 0, 3, 3, 4, 4, 8, 0, 8),
	}}
	for name, c := range map[string]struct {
		spec       Spec
		spend, leg int64
		bound      bool
	}{
		"on a lattice": {Spec{Cloth: Cloth{Wide: units.Inch.Of(20)}, Pieces: []Piece{drawn(26, Half, 0, 0, 6, 1, 5, 6, 0, 3)}}, 3_000_000, 100_000, false},
		"off one":      {Spec{Cloth: Cloth{Wide: units.Inch.Of(20)}, Pieces: []Piece{{Count: 9, Turn: Half, Outline: []Point{{units.Inch.Of(0), units.Inch.Of(0)}, {units.Inch.Frac(60017, 10000), units.Inch.Of(0)}, {units.Inch.Of(1), units.Inch.Of(3)}}}}}, 2_000_000, 50_000, false},
		"to the bound": {whole, 1 << 40, 20_000, true},
	} {
		full := filled(t, c.spec)
		tells, best := told(full, c.spend, c.leg, 0)
		if len(tells) < 3 && !c.bound || (full.n.end(best) == full.n.bound) != c.bound {
			t.Fatalf("%s: %v, bound %d", name, tells, full.n.bound)
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
	full := filled(t, Spec{Cloth: Cloth{Wide: units.Inch.Of(20)}, Pieces: []Piece{drawn(26, Half, 0, 0, 6, 1, 5, 6, 0, 3)}})
	enough := errors.New("seen enough")
	full.n.watch = func(end, steps int64) { panic(enough) }
	before := runtime.NumGoroutine()
	func() {
		defer func() {
			if got := recover(); got != enough {
				t.Errorf("recovered %v", got)
			}
		}()
		full.hunt(context.Background(), full.n.boxes(), 1<<40, 10_000, 1)
	}()
	for range 1000 {
		if runtime.NumGoroutine() <= before {
			return
		}
		time.Sleep(time.Millisecond)
	}
	t.Errorf("%d goroutines, %d before", runtime.NumGoroutine(), before)
}
