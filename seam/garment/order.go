package garment

import (
	"slices"
	"strings"

	"example.com/clothyard/units/fault"
)

// order is the work in the order given, or in the one that follows. A seam that crosses
// an open edge is sewn before the seam along that edge, which encloses it. Where no
// order is given rings are closed first too; hems come after seams, and what fastens
// comes last.
func (p *Plan) order(a *fault.Audit) {
	must, should := p.before()
	if len(p.Spec.Order) > 0 {
		p.checkOrder(a, must)
		return
	}
	left := p.Spec.work()
	for len(left) > 0 {
		i := ready(left, should)
		if i < 0 {
			i = ready(left, must)
		}
		if i < 0 {
			a.Fault("order", "", "the work in order, since "+strings.Join(left, ", ")+" enclose each other", fault.Missing)
			return
		}
		p.Spec.Order = append(p.Spec.Order, Task{Sews: []string{left[i]}, Check: p.closes(left[i])})
		left = slices.Delete(left, i, i+1)
	}
}

// ready is the first of what is left that nothing else of it comes before.
func ready(left []string, before map[string][]string) int {
	return slices.IndexFunc(left, func(name string) bool {
		return !slices.ContainsFunc(before[name], func(first string) bool { return first != name && slices.Contains(left, first) })
	})
}

// before is what must be sewn before each piece of work, and what is better sewn before
// it.
func (p *Plan) before() (must, should map[string][]string) {
	g := p.Spec
	must, should = map[string][]string{}, map[string][]string{}
	for _, e := range g.Edges {
		own := e.Value.Own
		if own == "" {
			continue
		}
		for _, x := range e.Value.Crossed {
			if x.Value.Plies == 1 || x.Name == own {
				continue
			}
			should[own] = append(should[own], x.Name)
			if !e.Value.Ring && !p.flat(own, x.Name) {
				must[own] = append(must[own], x.Name)
			}
		}
	}
	for _, part := range g.Parts {
		if e, ok := g.Edges.Get(part.Value.On); ok && e.Own != "" {
			must[e.Own] = append(must[e.Own], part.Name)
		}
		if strings.HasPrefix(part.Value.Noun, "buttons.") {
			should[part.Name] = slices.Concat(names(g.Seams), names(g.Hems))
		}
	}
	for _, h := range g.Hems {
		for _, s := range g.Seams {
			if !slices.Contains(should[s.Name], h.Name) {
				should[h.Name] = append(should[h.Name], s.Name)
			}
		}
	}
	for name, first := range must {
		should[name] = append(should[name], first...)
	}
	return must, should
}

// flat reports whether a seam may cross another that is sewn already: every edge along
// that other one is crossed by it.
func (p *Plan) flat(own, crossing string) bool {
	for _, e := range p.Spec.Edges {
		if _, crossed := e.Value.Crossed.Get(crossing); e.Value.Own == own && !crossed {
			return false
		}
	}
	return true
}

// closes is the edges that can be measured once a seam is sewn, as all that crosses them
// is sewn then.
func (p *Plan) closes(name string) (edges []string) {
	sewn := []string{name}
	for _, t := range p.Spec.Order {
		sewn = append(sewn, t.Sews...)
	}
	for _, e := range p.Spec.Edges {
		crossed := names(e.Value.Crossed)
		if slices.Contains(crossed, name) && !slices.ContainsFunc(crossed, func(x string) bool { return !slices.Contains(sewn, x) }) {
			edges = append(edges, e.Name)
		}
	}
	return edges
}

// checkOrder finds what is sewn too early, twice or never.
func (p *Plan) checkOrder(a *fault.Audit, must map[string][]string) {
	step := map[string]int{}
	for i, t := range p.Spec.Order {
		for _, name := range t.Sews {
			if _, twice := step[name]; twice {
				a.Fault(at("order", i)+".sews", fault.Quote(name), "each seam, hem and part once", fault.Twice)
			}
			step[name] = i
		}
	}
	for i, t := range p.Spec.Order {
		for _, name := range t.Sews {
			for _, first := range must[name] {
				if k, ok := step[first]; ok && k > i {
					a.Fault(at("order", i)+".sews", fault.Quote(name), "after "+first+", which it encloses", fault.Conflict)
				}
			}
		}
	}
	for _, name := range p.Spec.work() {
		if _, ok := step[name]; !ok {
			p.Loose = append(p.Loose, name)
		}
	}
}
