package garment

import (
	"slices"
	"strconv"
	"strings"

	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// check looks at the names: each that is used stands for something, and each stands once.
func (g Garment) check(a *fault.Audit) {
	if g.Version != Version {
		a.Fault("version", strconv.Itoa(g.Version), strconv.Itoa(Version), fault.Unknown)
	}
	a.Text("title", g.Title)
	a.Text("scene", g.Scene)
	for _, list := range []struct {
		path string
		n    int
	}{{"pieces", len(g.Pieces)}, {"seams", len(g.Seams)}, {"hems", len(g.Hems)}, {"edges", len(g.Edges)}, {"pairs", len(g.Pairs)}, {"parts", len(g.Parts)}, {"order", len(g.Order)}} {
		a.Count(list.path, list.n, 0, MaxList)
	}
	if a.Failed() {
		return
	}
	c := checker{a, g.work(), names(g.Pieces), names(g.Edges)}
	c.named("pieces", c.pieces)
	c.named("edges", c.edges)
	c.named("seams", c.work)
	for _, s := range g.Seams {
		path := fault.Join("seams", s.Name)
		a.Count(path+".times", s.Value.Times, 0, MaxList)
		c.all(path+".joins", s.Value.Joins, c.pieces, "a piece")
		a.Text(path+".press", s.Value.Press)
	}
	for _, h := range g.Hems {
		c.all(fault.Join("hems", h.Name)+".on", h.Value.On, c.pieces, "a piece")
	}
	crossing := slices.Concat(names(g.Seams), names(g.Hems))
	for _, e := range g.Edges {
		path := fault.Join("edges", e.Name)
		a.NotNegative(path+".net", e.Value.Net)
		c.all(path+".on", e.Value.On, c.pieces, "a piece")
		c.all(path+".crossed", names(e.Value.Crossed), crossing, "a seam or a hem")
		if e.Value.Own != "" {
			c.one(path+".own", e.Value.Own, crossing, "a seam or a hem")
		}
	}
	for i, p := range g.Pairs {
		path := "pairs[" + strconv.Itoa(i) + "]"
		c.one(path+".long", p.Long, c.edges, "an edge")
		c.one(path+".short", p.Short, c.edges, "an edge")
	}
	for _, p := range g.Parts {
		if p.Value.On != "" {
			c.one(fault.Join("parts", p.Name)+".on", p.Value.On, slices.Concat(c.pieces, c.edges, c.work), "a piece, an edge or a seam")
		}
	}
	for i, t := range g.Order {
		path := "order[" + strconv.Itoa(i) + "]"
		if t.Do == "" && len(t.Sews) == 0 {
			a.Fault(path+".do", "", "what is done", fault.Missing)
		}
		a.Text(path+".do", t.Do)
		c.all(path+".sews", t.Sews, append([]string{Cut}, c.work...), "a seam, a hem or a part, or "+Cut)
		c.all(path+".check", t.Check, c.edges, "an edge")
	}
	c.all("changes", names(g.Changes), c.work, "a seam, a hem or a part")
	c.all("done", g.Done, append([]string{Cut}, c.work...), Cut+", or a seam, a hem or a part")
	c.all("measured", names(g.Measured), c.edges, "an edge")
	for _, m := range g.Measured {
		a.Need(fault.Join("measured", m.Name), m.Value)
	}
}

// Cut is what [Garment.Done] and [Task.Sews] say of the cloth: that it is cut.
const Cut = "cut"

// A checker looks names up.
type checker struct {
	*fault.Audit
	work, pieces, edges []string
}

// named checks names that stand for themselves.
func (c checker) named(path string, all []string) {
	for i, name := range all {
		at := fault.Join(path, name)
		switch {
		case name == "" || strings.ContainsAny(name, `."[]`):
			c.Fault(path, fault.Quote(name), "a name without dots, quotes and brackets", fault.Form)
		case name == Cut:
			c.Fault(at, "", "another name, since that says that the cloth is cut", fault.Unknown)
		case slices.Contains(all[:i], name):
			c.Fault(at, "", "a name that nothing else has", fault.Twice)
		default:
			c.Text(path, name)
		}
	}
}

func (c checker) all(path string, used, known []string, what string) {
	for _, name := range used {
		c.one(path, name, known, what)
	}
}

func (c checker) one(path, name string, known []string, what string) {
	switch {
	case name == "":
		c.Fault(path, "", "the name of "+what, fault.Missing)
	case !slices.Contains(known, name):
		c.Fault(path, fault.Quote(name), "the name of "+what, fault.Unknown)
	}
}

// find is a value of a map by its name, which the check has found there.
func find[T any](m noun.Map[T], name string) T {
	v, _ := m.Get(name)
	return v
}
