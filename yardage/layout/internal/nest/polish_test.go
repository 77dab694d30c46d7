package nest

import (
	"math"
	"math/rand/v2"
	"testing"
)

// scattered is an easer with its pieces thrown about, and weights of all sizes.
func scattered(t *testing.T, dice *rand.Rand) *easer {
	t.Helper()
	full := filled(t, made(t, 30, 0, 1,
		drawn(40, byHalf, 0, 0, 6, 0, 6, 3, 3, 2, 0, 7), drawn(20, byQuarters, 0, 0, 4, 1, 5, 4, 1, 3), drawn(10, byQuarters, 0, 0, 2, 0, 2, 9, 0, 9)))
	e := newEaser(full, dice, func() bool { return false })
	e.long = 1.2 * e.wide
	for i := range e.lie {
		ways := e.n.Kinds[e.kind[i]].Variants
		e.lie[i].variant = ways[dice.IntN(len(ways))]
		e.lie[i].x, e.lie[i].y = dice.Float64()*e.wide, dice.Float64()*e.long
		e.clamp(i)
	}
	for i := range e.lie {
		for j := range i {
			e.weigh(i, j, 1+50*dice.Float64())
		}
	}
	e.survey()
	return e
}

// slowly is what item i costs as variant v at a place, by every other item.
func (e *easer) slowly(i, v int, x, y float64) float64 {
	var sum float64
	k := len(e.lie)
	for j := range k {
		if d := e.t.at(e.lie[j].variant, v).depth(x-e.lie[j].x, y-e.lie[j].y); j != i && d > 0 {
			sum += (d + e.jump[e.kind[i]*len(e.n.Kinds)+e.kind[j]]) * e.scaled[i*k+j]
		}
	}
	return sum
}

// The bands leave out no piece that is in the way, wherever pieces have gone, and
// what is given up at a limit costs as much.
func TestBands(t *testing.T) {
	dice := rand.New(rand.NewPCG(73, 74))
	e := scattered(t, dice)
	var f field
	for n := range 4000 {
		i := dice.IntN(len(e.lie))
		ways := e.n.Kinds[e.kind[i]].Variants
		if !e.field(&f, ways[dice.IntN(len(ways))]) {
			t.Fatal("no room")
		}
		x, y := dice.Float64()*f.wide, dice.Float64()*f.long
		switch n % 4 {
		case 0:
			x = []float64{0, f.wide}[dice.IntN(2)]
		case 1:
			y = []float64{0, f.long}[dice.IntN(2)]
		}
		want := e.slowly(i, f.variant, x, y)
		limit := want * 2 * dice.Float64()
		if got := e.at(i, &f, x, y, limit); (got < limit) != (want < limit) && want > 0 || got > want*(1+1e-9) || want < limit && got < want*(1-1e-9) {
			t.Fatalf("item %d at (%v, %v): cost %v, want %v, limit %v", i, x, y, got, want, limit)
		}
		if got := e.at(i, &f, x, y, math.MaxFloat64); math.Abs(got-want) > 1e-9*(1+want) {
			t.Fatalf("item %d at (%v, %v) costs %v, want %v", i, x, y, got, want)
		}
		if n%10 == 0 {
			e.lay(i, f.variant, x, y)
		}
	}
}

// Polishing never makes a place worse nor leaves the cloth, mostly makes it
// better, and says what the place costs.
func TestPolish(t *testing.T) {
	dice := rand.New(rand.NewPCG(75, 76))
	e := scattered(t, dice)
	var f field
	better, free := 0, 0
	const tries = 2000
	for range tries {
		i := dice.IntN(len(e.lie))
		ways := e.n.Kinds[e.kind[i]].Variants
		e.field(&f, ways[dice.IntN(len(ways))])
		b := try{f: &f, x: dice.Float64() * f.wide, y: dice.Float64() * f.long}
		b.cost = e.at(i, &f, b.x, b.y, math.MaxFloat64)
		before := b.cost
		e.polish(i, &b)
		if b.x < 0 || b.x > f.wide || b.y < 0 || b.y > f.long || b.cost > before {
			t.Fatalf("from %v to %v at (%v, %v) on %v by %v", before, b.cost, b.x, b.y, f.wide, f.long)
		}
		if want := e.slowly(i, f.variant, b.x, b.y); math.Abs(b.cost-want) > 1e-9*(1+want) {
			t.Fatalf("costs %v, want %v", b.cost, want)
		}
		if b.cost < before {
			better++
		}
		if before > 0 && b.cost == 0 {
			free++
		}
	}
	if better < tries*9/10 {
		t.Errorf("better %d of %d times", better, tries)
	}
	t.Logf("better %d of %d times, then free of all %d", better, tries, free)
}

// Of a spread, however it begins, no sixteenth of the square is left out for long.
func TestSpread(t *testing.T) {
	dice := rand.New(rand.NewPCG(81, 82))
	e := &easer{dice: dice}
	for range 200 {
		s := e.spread()
		var hit [16]int
		for range 40 {
			x, y := s.two()
			if x < 0 || x >= 1 || y < 0 || y >= 1 {
				t.Fatalf("(%v, %v)", x, y)
			}
			hit[int(4*y)<<2|int(4*x)]++
		}
		for k, n := range hit {
			if n < 1 || n > 5 {
				t.Fatalf("%d of 40 in part %d", n, k)
			}
		}
	}
}
