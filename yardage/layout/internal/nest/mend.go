package nest

import (
	"math"
	"slices"
)

const (
	slight  = 0.05   // least cost of a lay that is not worth mending
	tight   = 0.0005 // by how much a lay is stretched first, in parts of its length
	loose   = 0.01   // and at most
	pushes  = 300    // rounds of pushing
	watched = 25     // rounds after which the overlaps must be less by a tenth
	listed  = 10     // rounds for which the list of neighbours is good
)

// A contact is a pair of pieces that may be in each other's way.
type contact struct {
	i, j int
	v    *view
}

// mend stretches a lay in which little overlaps and pushes all pieces apart at
// once, so that whole groups of them move: what stands in the way of a single
// piece often needs no more. False where the lay would come out no shorter than
// limit.
func (h *hunter) mend(limit int64) ([]Seat, bool) {
	e := h.e
	goal := e.long
	begin := slices.Clone(e.lie)
	for part := tight; part <= loose && goal*(1+part) < float64(limit)*(1-narrowest/2); part *= 2 {
		e.long = goal * (1 + part)
		for i := range e.lie {
			half := float64(e.n.Variants[e.lie[i].variant].Long) / 2
			e.lie[i].x, e.lie[i].y = begin[i].x, float64((begin[i].y+half)*(1+part))-half
			e.clamp(i)
		}
		if !e.push() {
			continue
		}
		if seats, ok := h.settle(); ok && h.n.end(seats) < limit {
			return seats, true
		}
	}
	return nil, false
}

// push pushes all pieces that overlap apart, each pair by as much as it overlaps,
// over and over; false where some still overlap at the end.
func (e *easer) push() bool {
	var near []contact
	past := math.MaxFloat64
	for round := range pushes {
		if round%listed == 0 {
			near = e.contacts(near[:0])
		}
		var sum float64
		e.steps += int64(len(near))
		for _, c := range near {
			e.steps += c.v.extra
			d, nx, ny := c.v.deepest(e.lie[c.j].x-e.lie[c.i].x, e.lie[c.j].y-e.lie[c.i].y)
			if d <= 0 {
				continue
			}
			sum += d
			d = float64(d*0.55) + 1 // a little more than half each
			e.lie[c.i].x -= float64(nx * d)
			e.lie[c.i].y -= float64(ny * d)
			e.lie[c.j].x += float64(nx * d)
			e.lie[c.j].y += float64(ny * d)
			e.clamp(c.i)
			e.clamp(c.j)
		}
		if sum == 0 && e.tally() == 0 {
			return true
		}
		if round%watched == watched-1 {
			if sum > float64(past*0.9) || e.stop() {
				return false
			}
			past = sum
		}
	}
	return false
}

// contacts lists the pairs that are in each other's way or nearly.
func (e *easer) contacts(list []contact) []contact {
	k := len(e.n.Items)
	reach := 0.02 * e.wide
	for j := range k {
		for i := range j {
			v := e.t.at(e.lie[i].variant, e.lie[j].variant)
			if v.about(e.lie[j].x-e.lie[i].x, e.lie[j].y-e.lie[i].y, reach) {
				list = append(list, contact{i, j, v})
			}
		}
	}
	e.steps += int64(k) * int64(k) / 4
	return list
}
