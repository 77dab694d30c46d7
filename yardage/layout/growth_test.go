package layout_test

import (
	"context"
	"fmt"
	"runtime"
	"runtime/debug"
	"testing"
	"time"

	"example.com/clothyard/units"
	"example.com/clothyard/yardage/layout"
)

// mixed is n outlines for one strip: sleeves, facings with a hollow, collars,
// gussets and rectangles of a whole wardrobe, of so many sorts, no two alike.
func mixed(n, sorts int) layout.Spec {
	s := layout.Spec{Cloth: layout.Cloth{Wide: in("60"), Selvedge: in("1/2")}, Work: 1, Seed: 1}
	shapes := [...][][2]int64{
		{{0, 0}, {120, 0}, {150, 90}, {130, 110}, {100, 125}, {75, 130}, {50, 125}, {20, 110}, {0, 90}},
		{{0, 0}, {60, 0}, {60, 20}, {45, 24}, {38, 34}, {36, 50}, {36, 90}, {0, 90}},
		{{0, 10}, {40, 0}, {80, 0}, {120, 10}, {126, 34}, {90, 26}, {60, 24}, {30, 26}, {-6, 34}},
		{{0, 0}, {40, 0}, {20, 40}},
		{{0, 0}, {64, 0}, {64, 40}, {0, 40}},
		{{10, 0}, {50, 0}, {60, 80}, {0, 80}},
	}
	for k := range min(n, sorts) {
		count := n / sorts
		if k < n%sorts {
			count++
		}
		one := layout.Piece{Name: fmt.Sprintf("piece %d", k+1), Count: max(count, 1), Turn: layout.Half}
		for _, q := range shapes[k%len(shapes)] {
			grow := func(v int64) units.Length { return units.Inch.Frac(v*int64(4096+k*1024/sorts), 65_536) }
			one.Outline = append(one.Outline, layout.Point{X: grow(q[0]), Y: grow(q[1])})
		}
		s.Pieces = append(s.Pieces, one)
	}
	return s
}

// often is how many times a test does a thing, or finds one at least; a quarter of
// that, rounded up, where tests are to be short, as where the race detector makes
// each ten times as long.
func often(times int) int {
	if testing.Short() {
		return (times + 3) / 4
	}
	return times
}

// A thousand outlines are laid for the least work, in bounded memory, be they of
// thirty sorts or all different; a tenth of them where tests are to be short.
func TestThousandOutlines(t *testing.T) {
	number := 1000
	if testing.Short() {
		number = 100
	}
	for _, sorts := range []int{30, number} {
		debug.FreeOSMemory()
		s := mixed(number, sorts)
		base, done := heap(), make(chan struct{})
		peak := make(chan uint64)
		go func() {
			most := base
			for {
				select {
				case <-done:
					peak <- max(most, heap())
					return
				case <-time.After(10 * time.Millisecond):
					most = max(most, heap())
				}
			}
		}()
		p, err := s.Plan(context.Background())
		close(done)
		used := <-peak - base
		if err != nil {
			t.Fatal(err)
		}
		// The pairs of a thousand sorts are too many to hold: a first lay is all.
		if len(p.Placements) != number || p.Stopped != (sorts == 1000) {
			t.Errorf("%d placements, stopped %v", len(p.Placements), p.Stopped)
		}
		if err := layout.Verify(s, p.Placements); err != nil {
			t.Error(err)
		}
		if used > 512<<20 {
			t.Errorf("%d sorts: %d MiB of heap, want at most 512", sorts, used>>20)
		}
		t.Logf("%d sorts: %d MiB of heap, density %s %%", sorts, used>>20, p.Density.Mul(units.RatioOf(100, 1)).Rat().FloatString(2))
	}
}

// heap is how many bytes the heap takes now.
func heap() uint64 {
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return m.HeapInuse
}

// BenchmarkFirstLay is how the first lay and its proof grow with the pieces.
func BenchmarkFirstLay(b *testing.B) {
	for _, n := range []int{50, 100, 200, 500, 1000} {
		s := mixed(n, 30)
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			for b.Loop() {
				if _, err := s.Plan(context.Background()); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
