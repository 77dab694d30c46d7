package layout

import (
	"slices"
	"strconv"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/yardage/layout/internal/nest"
	"example.com/clothyard/yardage/layout/internal/whole"
)

// mostTries is how many ways of turning the matched pieces are looked at before
// none is believed to be.
const mostTries = 100_000

// A matcher finds for the pieces with notches the ways they may lie, so that all
// notches of a name can lie on one place of the repeat.
type matcher struct {
	n     *nest.Nest
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
func (s *Spec) match(n *nest.Nest, m mesh, a *fault.Audit) bool {
	numbers := map[string]int{}
	g := matcher{n: n, names: make([][]int, len(n.Kinds)), at: make([][]vertex, len(n.Variants))}
	for k := range n.Kinds {
		one := &n.Kinds[k]
		p := &s.Pieces[one.Piece]
		lo, _ := box(p.corners())
		var raw []vertex
		for _, notch := range p.Notches {
			x, okX := m.whole(notch.At.X.Sub(lo.X))
			y, okY := m.whole(notch.At.Y.Sub(lo.Y))
			if !okX || !okY {
				a.Fault(piecePath(one.Piece)+".notches", notch.At.X.String()+", "+notch.At.Y.String(), "a notch that lies on one grid with the pieces", ErrGrid)
				return false
			}
			raw = append(raw, vertex{X: x, Y: y})
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
		for _, v := range one.Variants {
			way := &n.Variants[v]
			flip := way.Mirror != (way.Fold && way.Quarters == 2)
			for _, q := range raw {
				g.at[v] = append(g.at[v], moved(q, vertex{X: wide, Y: long}, flip, way.Quarters))
			}
		}
	}
	n.Phases = make([][]int64, 1)
	g.known, g.place = make([]bool, len(numbers)), make([]vertex, len(numbers))
	if !s.phases(&g, numbers, m, a) {
		return false
	}
	n.Given = make([]bool, 1)
	done := make([]bool, len(n.Kinds))
	for _, k := range g.inOrder() {
		if done[k] || len(g.names[k]) == 0 {
			continue
		}
		given := g.bound(k)
		list := g.together(k, done)
		if !g.turn(list) {
			a.Fault(piecePath(n.Kinds[k].Piece)+".notches", "", "notches that some turning of the pieces brings to one place of the repeat", fault.Conflict)
			return false
		}
		n.Sets++
		g.settle(list)
		n.Phases, n.Given = append(n.Phases, nil), append(n.Given, given)
		if n.RepeatX > 0 {
			n.Phases[n.Sets] = n.PhasesOf(n.Sets)
		}
		if n.RepeatX > 0 && len(n.Phases[n.Sets]) == 0 {
			a.Fault("cloth.repeatX", s.Cloth.RepeatX.String(), "a repeat on which "+s.Pieces[n.Kinds[k].Piece].Name+" and what is matched to it find places within "+s.Cloth.Usable().String(), fault.Conflict)
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
		g.known[name], g.place[name] = true, vertex{X: x, Y: y}
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
	for k := range g.n.Kinds {
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
func (s *Spec) centre(n *nest.Nest, m mesh, a *fault.Audit) bool {
	for k := range n.Kinds {
		one := &n.Kinds[k]
		p := &s.Pieces[one.Piece]
		if !p.Centred || p.Fold && s.Cloth.Folded {
			continue // on the fold its centre line always is there
		}
		half, okHalf := m.whole(s.Cloth.RepeatX.DivInt(2))
		w, _ := p.extent()
		at, okAt := m.whole(s.Cloth.Axis.Sub(s.Cloth.first()).Sub(w.DivInt(2)))
		if !okHalf || !okAt {
			a.Fault(piecePath(one.Piece)+".centred", "true", "a centre line that lies on one grid with the pieces", ErrGrid)
			return false
		}
		n.Half = half
		for _, v := range one.Variants {
			way := &n.Variants[v]
			way.Centred, way.Centre = true, whole.Modulo(at, half)
			if way.Centre > n.Wide-way.Wide {
				a.Fault(piecePath(one.Piece)+".centred", "true", "a piece that finds the middle of a stripe, or half-way between two, within "+s.Cloth.Usable().String(), fault.Conflict)
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
			p.X = -p.X
		}
		for range quarters & 3 {
			*p = vertex{X: -p.Y, Y: p.X}
		}
	}
	return vertex{X: q.X - min(o.X, size.X), Y: q.Y - min(o.Y, size.Y)}
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
		at := vertex{X: g.at[v][i].X - g.place[name].X, Y: g.at[v][i].Y - g.place[name].Y}
		if !found {
			off, found = at, true
		} else if !even(at.X-off.X, g.n.RepeatX) || !even(at.Y-off.Y, g.n.RepeatY) {
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
	for _, v := range g.n.Kinds[k].Variants {
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
				g.place[name] = vertex{X: g.at[v][i].X - off.X, Y: g.at[v][i].Y - off.Y}
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
		one := &g.n.Kinds[k]
		one.Variants = slices.DeleteFunc(one.Variants, func(v int) bool {
			off, ok := g.offset(k, v)
			g.n.Variants[v].Set, g.n.Variants[v].Off = g.n.Sets, off
			return !ok
		})
	}
}
