package nest

import (
	"context"
	"math"
	"slices"

	"example.com/clothyard/yardage/layout/internal/whole"
)

// How far an outline is made plainer for the search: it only ever gets larger,
// and the lay is proven with the outline itself.
const (
	plainFrom  = 16     // an outline of no more corners is left as it is
	plainLoss  = 0.0003 // area that it may gain, in parts of its own
	plainLoss2 = 0.001  // the same for leaving out corners that point inwards
	plainMany  = 32     // an outline of more corners
	manyTimes  = 4      // may gain so many times as much
	levelTimes = 2      // and at each level so many times as much as at the one below
	topLevel   = 7      // the highest level

	mostSavings = 4_000_000 // corners looked at, at most, before an outline is left as plain as it is then
)

// plain is an outline of fewer corners that holds all of pts and reaches no
// farther to any side of the smallest rectangle around it. It is as plain as it
// becomes before ctx is done, and the plainer the higher the level. Corners that point
// inwards are left out, and sides between two that point outwards give way to
// the corner where the sides beside them meet.
func plain(ctx context.Context, pts []vertex, level int) []vertex {
	least := max(plainFrom>>level, 6)
	if len(pts) <= least {
		return pts
	}
	ring := slices.Clone(pts)
	lo, hi := corners(pts)
	whole := toFloat(twiceArea(pts))
	var gained float64
	barred := make([]bool, len(ring)) // what cannot be done at a corner
	for looks := len(ring); len(ring) > least && looks <= mostSavings && ctx.Err() == nil; looks += len(ring) {
		best, cost := -1, math.MaxFloat64
		var corner vertex
		var drop bool
		for i := range ring {
			if barred[i] {
				continue
			}
			c, p, reflex, ok := saving(ring, i, lo, hi)
			if ok && c < cost {
				best, cost, corner, drop = i, c, p, reflex
			}
		}
		limit := plainLoss
		if drop {
			limit = plainLoss2
		}
		if len(ring) > plainMany {
			limit *= manyTimes
		}
		for range level {
			limit *= levelTimes
		}
		if best < 0 || gained+cost > limit*whole {
			break
		}
		n := len(ring)
		next := (best + 1) % n
		good := false
		if drop {
			good = empty(ring, ring[(best+n-1)%n], ring[best], ring[next])
		} else {
			good = empty(ring, ring[best], corner, ring[next])
		}
		if !good {
			barred[best] = true
			continue
		}
		gained += cost
		if drop {
			ring = slices.Delete(ring, best, best+1)
		} else {
			ring[best] = corner
			ring = slices.Delete(ring, next, next+1)
		}
		barred = barred[:len(ring)]
		clear(barred)
	}
	return ring
}

func toFloat(w whole.Wide) float64 { return float64(float64(w.Hi)*(1<<64)) + float64(w.Lo) }

// saving is what can be saved at corner i: leaving it out where it points
// inwards or is in a straight line, or else the side from it to the next; the
// twice area that costs, and the new corner.
func saving(ring []vertex, i int, lo, hi vertex) (cost float64, corner vertex, reflex, ok bool) {
	n := len(ring)
	a, b, c, d := ring[(i+n-1)%n], ring[i], ring[(i+1)%n], ring[(i+2)%n]
	if side(a, b, c) <= 0 {
		return math.Abs(toFloat(twiceArea([]vertex{a, b, c}))), b, true, true
	}
	if side(b, c, d) <= 0 {
		return 0, b, false, false
	}
	// Where the lines a-b and d-c meet beyond b and c.
	e, f := vertex{X: b.X - a.X, Y: b.Y - a.Y}, vertex{X: c.X - d.X, Y: c.Y - d.Y}
	den := toFloat(whole.Times(e.X, f.Y).Sub(whole.Times(e.Y, f.X)))
	if den <= 0 {
		return 0, b, false, false
	}
	k := toFloat(whole.Times(c.X-b.X, f.Y).Sub(whole.Times(c.Y-b.Y, f.X))) / den
	if !(k > 0 && k < 8) {
		return 0, b, false, false
	}
	at := vertex{X: b.X + int64(float64(k*float64(e.X))), Y: b.Y + int64(float64(k*float64(e.Y)))}
	for dx := int64(-1); dx <= 1; dx++ {
		for dy := int64(-1); dy <= 1; dy++ {
			p := vertex{X: at.X + dx, Y: at.Y + dy}
			if p.X < lo.X || p.X > hi.X || p.Y < lo.Y || p.Y > hi.Y || side(a, b, p) > 0 || side(c, d, p) > 0 || side(b, c, p) >= 0 {
				continue
			}
			area := math.Abs(toFloat(twiceArea([]vertex{b, p, c})))
			if !ok || area < cost {
				cost, corner, ok = area, p, true
			}
		}
	}
	return cost, corner, false, ok
}

// empty reports whether no corner of the ring is in the triangle or on its sides,
// but those at its own corners.
func empty(ring []vertex, a, b, c vertex) bool {
	if side(a, b, c) < 0 {
		a, c = c, a
	}
	for _, p := range ring {
		if p != a && p != b && p != c && side(a, b, p) >= 0 && side(b, c, p) >= 0 && side(c, a, p) >= 0 {
			return false
		}
	}
	return true
}
