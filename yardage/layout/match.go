package layout

import (
	"slices"
	"strconv"

	"example.com/clothyard/units/fault"
)

// mostTries is how many ways of turning the matched pieces are looked at before
// none is believed to be.
const mostTries = 100_000

// A matcher finds for the pieces with notches the ways they may lie, so that all
// notches of a name can lie on one place of the repeat.
type matcher struct {
	n     *nest
	names [][]int // by kind: the number of each notch's name
	// by name: the kinds that bear it, until they are found
	bearers [][]int
	at      [][]vertex // by variant: where each notch is
	known   []bool     // by name: whether its place is found
	place   []vertex   // by name: its place as seen from that of its set
	tries   int
}

// match finds the sets of notches that hang together, and what each variant's
// place must have added. A set that no turning of its pieces suits is a fault.
func (s *Spec) match(n *nest, m mesh, a *fault.Audit) bool {
	numbers := map[string]int{}
	g := matcher{n: n, names: make([][]int, len(n.kinds)), at: make([][]vertex, len(n.variants))}
	for k := range n.kinds {
		one := &n.kinds[k]
		p := &s.Pieces[one.piece]
		lo, _ := box(p.corners())
		var raw []vertex
		for _, notch := range p.Notches {
			x, okX := m.whole(notch.At.X.Sub(lo.X))
			y, okY := m.whole(notch.At.Y.Sub(lo.Y))
			if !okX || !okY {
				a.Fault(piecePath(one.piece)+".notches", notch.At.X.String()+", "+notch.At.Y.String(), "a notch that lies on one grid with the pieces", ErrGrid)
				return false
			}
			raw = append(raw, vertex{x, y})
			if _, found := numbers[notch.Name]; !found {
				numbers[notch.Name] = len(numbers)
				g.bearers = append(g.bearers, nil)
			}
			name := numbers[notch.Name]
			g.names[k] = append(g.names[k], name)
			g.bearers[name] = append(g.bearers[name], k)
		}
		w, l := p.extent()
		wide, _ := m.whole(w)
		long, _ := m.whole(l)
		for _, v := range one.variants {
			way := &n.variants[v]
			flip := way.mirror != (way.fold && way.quarters == 2)
			for _, q := range raw {
				g.at[v] = append(g.at[v], moved(q, vertex{wide, long}, flip, way.quarters))
			}
		}
	}
	n.phases = make([][]int64, 1)
	g.known, g.place = make([]bool, len(numbers)), make([]vertex, len(numbers))
	if !s.phases(&g, numbers, m, a) {
		return false
	}
	n.given = make([]bool, 1)
	done := make([]bool, len(n.kinds))
	for _, k := range g.inOrder() {
		if done[k] || len(g.names[k]) == 0 {
			continue
		}
		given := g.bound(k)
		list := g.together(k, done)
		if !g.turn(list) {
			a.Fault(piecePath(n.kinds[k].piece)+".notches", "", "notches that some turning of the pieces brings to one place of the repeat", fault.Conflict)
			return false
		}
		n.sets++
		g.settle(list)
		n.phases, n.given = append(n.phases, nil), append(n.given, given)
		if n.repeatX > 0 {
			n.phases[n.sets] = n.phasesOf(n.sets)
		}
		if n.repeatX > 0 && len(n.phases[n.sets]) == 0 {
			a.Fault("cloth.repeatX", s.Cloth.RepeatX.String(), "a repeat on which "+s.Pieces[n.kinds[k].piece].Name+" and what is matched to it find places within "+s.Cloth.Usable().String(), fault.Conflict)
			return false
		}
	}
	return true
}

// phases puts the places of the notches that are given, as seen from the first
// place across and along: then that of their set in the repeat is zero.
func (s *Spec) phases(g *matcher, numbers map[string]int, m mesh, a *fault.Audit) bool {
	for i, ph := range s.Cloth.Phases {
		x, okX := m.whole(ph.X.Sub(s.Cloth.first()))
		y, okY := m.whole(ph.Y.Sub(s.Cloth.Ends))
		if !okX || !okY {
			a.Fault("cloth.phases["+strconv.Itoa(i)+"]", ph.X.String()+", "+ph.Y.String(), "a place that lies on one grid with the pieces", ErrGrid)
			return false
		}
		name := numbers[ph.Notch]
		g.known[name], g.place[name] = true, vertex{x, y}
	}
	return true
}

// bound reports whether a notch of the kind has a place that is given.
func (g *matcher) bound(k int) bool {
	return slices.ContainsFunc(g.names[k], func(name int) bool { return g.known[name] })
}

// inOrder are all kinds, those with places that are given first.
func (g *matcher) inOrder() []int {
	var first, rest []int
	for k := range g.n.kinds {
		if g.bound(k) {
			first = append(first, k)
		} else {
			rest = append(rest, k)
		}
	}
	return append(first, rest...)
}

// centre has the pieces that are centred lie so that their centre line is on the
// middle of a stripe, or half-way between two.
func (s *Spec) centre(n *nest, m mesh, a *fault.Audit) bool {
	for k := range n.kinds {
		one := &n.kinds[k]
		p := &s.Pieces[one.piece]
		if !p.Centred || p.Fold && s.Cloth.Folded {
			continue // on the fold its centre line always is there
		}
		half, okHalf := m.whole(s.Cloth.RepeatX.DivInt(2))
		w, _ := p.extent()
		at, okAt := m.whole(s.Cloth.Axis.Sub(s.Cloth.first()).Sub(w.DivInt(2)))
		if !okHalf || !okAt {
			a.Fault(piecePath(one.piece)+".centred", "true", "a centre line that lies on one grid with the pieces", ErrGrid)
			return false
		}
		n.half = half
		for _, v := range one.variants {
			way := &n.variants[v]
			way.centred, way.centre = true, modulo(at, half)
			if way.centre > n.wide-way.wide {
				a.Fault(piecePath(one.piece)+".centred", "true", "a piece that finds the middle of a stripe, or half-way between two, within "+s.Cloth.Usable().String(), fault.Conflict)
				return false
			}
		}
	}
	return true
}

// moved is where q is after a piece of that size is mirrored and turned, from the
// corner of its rectangle.
func moved(q, size vertex, mirror bool, quarters int) vertex {
	o := vertex{}
	for _, p := range [...]*vertex{&q, &o, &size} {
		if mirror {
			p.x = -p.x
		}
		for range quarters & 3 {
			*p = vertex{-p.y, p.x}
		}
	}
	return vertex{q.x - min(o.x, size.x), q.y - min(o.y, size.y)}
}

// together are the kinds that hang together with k by their notches, each after
// one that it shares a name with.
func (g *matcher) together(k int, done []bool) []int {
	done[k] = true
	list := []int{k}
	for i := 0; i < len(list); i++ {
		for _, name := range g.names[list[i]] {
			for _, other := range g.bearers[name] {
				if !done[other] {
					done[other] = true
					list = append(list, other)
				}
			}
			g.bearers[name] = nil
		}
	}
	return list
}

// offset is what a variant's place must have added for the place of its set, and
// whether its notches agree with the names whose place is found.
func (g *matcher) offset(k, v int) (off vertex, ok bool) {
	found := false
	for i, name := range g.names[k] {
		if !g.known[name] {
			continue
		}
		at := vertex{g.at[v][i].x - g.place[name].x, g.at[v][i].y - g.place[name].y}
		if !found {
			off, found = at, true
		} else if !even(at.x-off.x, g.n.repeatX) || !even(at.y-off.y, g.n.repeatY) {
			return off, false
		}
	}
	return off, true
}

// even reports whether d is a whole number of repeats.
func even(d, repeat int64) bool { return repeat == 0 || d%repeat == 0 }

// turn finds places for the names of all these kinds.
func (g *matcher) turn(list []int) bool {
	if len(list) == 0 {
		return true
	}
	k := list[0]
	for _, v := range g.n.kinds[k].variants {
		if g.tries++; g.tries > mostTries {
			return false
		}
		off, ok := g.offset(k, v)
		if !ok {
			continue
		}
		var fresh []int
		for i, name := range g.names[k] {
			if !g.known[name] {
				g.known[name] = true
				g.place[name] = vertex{g.at[v][i].x - off.x, g.at[v][i].y - off.y}
				fresh = append(fresh, name)
			}
		}
		if g.turn(list[1:]) {
			return true
		}
		if len(fresh) == 0 {
			return false // no other variant leaves it otherwise
		}
		for _, name := range fresh {
			g.known[name] = false
		}
	}
	return false
}

// settle leaves the kinds of a set the variants that agree with it.
func (g *matcher) settle(list []int) {
	for _, k := range list {
		one := &g.n.kinds[k]
		one.variants = slices.DeleteFunc(one.variants, func(v int) bool {
			off, ok := g.offset(k, v)
			g.n.variants[v].set, g.n.variants[v].off = g.n.sets, off
			return !ok
		})
	}
}

// phasesOf are places of a set in the repeat across that all its kinds can be laid
// by within the width. There is one among those looked at, where a piece lies at
// the left, if there is any.
func (n *nest) phasesOf(set int) []int64 {
	var out []int64
	for i := range n.variants {
		v := &n.variants[i]
		if v.set != set {
			continue
		}
		ends := []int64{modulo(v.off.x, n.repeatX)}
		if v.centred {
			at := v.centre + v.off.x
			ends = append(ends, modulo(at, n.repeatX), modulo(at+n.half, n.repeatX))
		}
		if n.given[set] {
			ends = []int64{0}
		}
		if room := n.wide - v.wide; !v.fold && room > 0 && !n.given[set] {
			ends = append(ends, modulo(v.off.x+room, n.repeatX))
		}
		out = append(out, ends...)
	}
	slices.Sort(out)
	out = slices.Compact(out)
	return slices.DeleteFunc(out, func(at int64) bool { return !n.suits(set, at) })
}

// suits reports whether every kind of the set has a place at this phase.
func (n *nest) suits(set int, phase int64) bool {
	for k := range n.kinds {
		list := n.kinds[k].variants
		if n.variants[list[0]].set == set && !slices.ContainsFunc(list, func(v int) bool { return n.seatable(v, phase) }) {
			return false
		}
	}
	return true
}

// seatable reports whether a variant has a place across at this phase of its set.
func (n *nest) seatable(v int, phase int64) bool {
	one := &n.variants[v]
	x := modulo(phase-one.off.x, n.repeatX)
	if one.centred && (x-one.centre)%n.half != 0 {
		return false
	}
	return x == 0 || !one.fold && x <= n.wide-one.wide
}

// modulo is a modulo r, from 0 on.
func modulo(a, r int64) int64 {
	if a %= r; a < 0 {
		a += r
	}
	return a
}
