package layout

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
	p    *pairing
}

// mend stretches a lay in which little overlaps and pushes all pieces apart at
// once, so that whole groups of them move: what stands in the way of a single
// piece often needs no more. False where the lay would come out no shorter than
// limit.
func (h *hunter) mend(limit int64) ([]seat, bool) {
	e := h.e
	goal := e.long
	x, y := slices.Clone(e.x), slices.Clone(e.y)
	for part := tight; part <= loose && goal*(1+part) < float64(limit)*(1-narrowest/2); part *= 2 {
		e.long = goal * (1 + part)
		for i := range e.y {
			half := float64(e.n.variants[e.variant[i]].long) / 2
			e.x[i], e.y[i] = x[i], float64((y[i]+half)*(1+part))-half
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
			d, edge := c.p.deepest(e.x[c.j]-e.x[c.i], e.y[c.j]-e.y[c.i])
			if d <= 0 {
				continue
			}
			sum += d
			d = float64(d*0.55) + 1 // a little more than half each
			e.x[c.i] -= float64(edge.nx * d)
			e.y[c.i] -= float64(edge.ny * d)
			e.x[c.j] += float64(edge.nx * d)
			e.y[c.j] += float64(edge.ny * d)
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
	k := len(e.n.items)
	reach := 0.02 * e.wide
	for j := range k {
		for i := range j {
			p := e.t.at(e.variant[i], e.variant[j])
			x, y := e.x[j]-e.x[i], e.y[j]-e.y[i]
			if x > p.lox-reach && x < p.hix+reach && y > p.loy-reach && y < p.hiy+reach {
				list = append(list, contact{i, j, p})
			}
		}
	}
	e.steps += int64(k) * int64(k) / 4
	return list
}
