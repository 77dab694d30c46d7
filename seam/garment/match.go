package garment

import (
	"slices"
	"strings"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// match works out every edge and every pair, applies the remedies chosen and finds
// those that are left.
func (p *Plan) match() error {
	if len(p.Spec.Edges) == 0 && len(p.Spec.Remedies) == 0 {
		return nil // there is nothing to match
	}
	a, unknown := p.assembly()
	plan, err := a.Plan()
	if err != nil {
		return p.renamed(err)
	}
	for i, name := range p.Spec.Remedies {
		left := p.remedies(plan)
		k := slices.IndexFunc(left, func(r Remedy) bool { return r.Name == name })
		if k < 0 {
			return fault.Faults{{Path: at("remedies", i), Got: fault.Quote(name), Kind: fault.Unknown, Limit: oneOf(left)}}
		}
		if plan, err = plan.Mended(left[k].Remedy); err != nil {
			return err
		}
		p.Chosen = append(p.Chosen, left[k])
	}
	for i, s := range p.Seams {
		p.Seams[i].Sewn = plan.Seams[i]
		p.Seams[i].Changed = plan.Seams[i].Spec != s.Drafted.Spec
	}
	for i, e := range plan.Edges {
		out := EdgePlan{Name: e.Spec.Name, Change: e.Change}
		if !unknown[i] {
			out.Drafted, out.Sewn = e.Drafted, e.Sewn
		}
		p.Edges = append(p.Edges, out)
	}
	p.pairs(plan, unknown)
	p.Remedies = p.remedies(plan)
	return nil
}

// renamed is the faults of an assembly with the paths of this garment.
func (p *Plan) renamed(err error) error {
	faults := fault.Under("", err)
	for _, f := range faults {
		for i, e := range p.Spec.Edges {
			if rest, ok := strings.CutPrefix(f.Path, at("edges", i)+"."); ok {
				f.Path = fault.Join("edges", e.Name) + "." + rest
			}
		}
	}
	return faults
}

func oneOf(all []Remedy) string {
	if len(all) == 0 {
		return "none, as nothing is to be mended"
	}
	list := make([]string, len(all))
	for i, r := range all {
		list[i] = r.Name
	}
	return "one of " + strings.Join(list, ", ")
}

// assembly is the seams, the hems and the edges, and which edges have no length. Those
// stand in it with one that their partners have too, so that what the pattern drew
// between them is nothing.
func (p *Plan) assembly() (a edge.Assembly, unknown []bool) {
	g := p.Spec
	a.Tape = g.Tape
	for _, s := range p.Seams {
		a.Seams = append(a.Seams, edge.Joint{Name: s.Name, Spec: s.Sewn.Spec})
	}
	for _, h := range p.Hems {
		s := h.Sewn.Spec.Allowed()
		joint := seam.Plain{Allowance: seam.Allowance{Tape: p.Spec.Tape, Drafted: s.Drafted}}
		if h.Sewn.Taken.Sign() > 0 && !s.Drafted.IsZero() {
			joint.Cut, joint.First = s.Cut, h.Sewn.Taken
		}
		a.Seams = append(a.Seams, edge.Joint{Name: h.Name, Spec: seam.Any{Seam: joint}})
	}
	unknown = make([]bool, len(g.Edges))
	for i, e := range g.Edges {
		c := edge.Course{Name: e.Name, Net: e.Value.Net, Own: e.Value.Own, Turn: e.Value.Turn}
		if m, ok := g.Measured.Get(e.Name); ok {
			c.Net, c.Own = m, ""
		}
		unknown[i] = c.Net.IsZero()
		for _, x := range e.Value.Crossed {
			if _, ok := g.Measured.Get(e.Name); ok && slices.Contains(g.Done, x.Name) {
				continue // it is in what was measured
			}
			c.Crossings = append(c.Crossings, edge.Crossing{Seam: x.Name, Times: x.Value.Times, Plies: x.Value.Plies, Ply: x.Value.Ply, Slant: x.Value.Slant})
		}
		a.Edges = append(a.Edges, c)
	}
	for _, q := range g.Pairs {
		if q.How != Gathered {
			a.Pairs = append(a.Pairs, edge.Partners{Long: q.Long, Short: q.Short, MaxEase: q.MaxEase})
		}
	}
	p.standIn(&a)
	return a, unknown
}

// standIn gives a length to each edge that has none: that of a partner, or any.
func (p *Plan) standIn(a *edge.Assembly) {
	net := func(name string) *units.Length {
		return &a.Edges[slices.IndexFunc(a.Edges, func(c edge.Course) bool { return c.Name == name })].Net
	}
	for {
		for more := true; more; {
			more = false
			for _, q := range a.Pairs {
				long, short := net(q.Long), net(q.Short)
				switch {
				case long.IsZero() && !short.IsZero():
					*long, more = *short, true
				case short.IsZero() && !long.IsZero():
					*short, more = *long, true
				}
			}
		}
		i := slices.IndexFunc(a.Edges, func(c edge.Course) bool { return c.Net.IsZero() })
		if i < 0 {
			return
		}
		a.Edges[i].Net = units.Inch.Of(1000) // longer than any edge, so that no change uses it up
	}
}

// pairs tells how the edges go together.
func (p *Plan) pairs(plan edge.AssemblyPlan, unknown []bool) {
	edges := names(p.Spec.Edges)
	next := 0
	for _, q := range p.Spec.Pairs {
		long, short := slices.Index(edges, q.Long), slices.Index(edges, q.Short)
		known := !unknown[long] && !unknown[short]
		out := PairPlan{Long: q.Long, Short: q.Short, How: q.How}
		if out.How == 0 {
			out.How = Equal
		}
		if q.How != Gathered {
			m := plan.Pairs[next]
			next++
			out.Fit, out.Change = m.Fit, m.Change
			if known {
				out.Excess = m.Sewn
			}
			p.Pairs = append(p.Pairs, out)
			continue
		}
		l, s := plan.Edges[long], plan.Edges[short]
		out.Fit, out.Change = edge.Gathers, l.Change.Sub(s.Change).Settled()
		if known {
			out.Excess = l.Sewn.Sub(s.Sewn).Settled()
			if sign, err := out.Excess.Sign(); err == nil && sign < 0 {
				out.Fit = edge.Mismatch
			}
			if width, ok := s.Sewn.Exact(); ok {
				out.Fullness = l.Sewn.Div(width).Settled()
			}
		}
		p.Pairs = append(p.Pairs, out)
	}
}

// remedies are those of an assembly that nothing forbids: what is meant is not undone,
// and what is done is not done again.
func (p *Plan) remedies(plan edge.AssemblyPlan) []Remedy {
	var out []Remedy
	for _, r := range plan.Remedies {
		r.After = nil // with lengths that stand in for those not known
		one := Remedy{Name: r.Act.String() + " " + r.Seam, Remedy: r}
		switch r.Act {
		case edge.SpreadPartner:
			if slices.Contains(p.Spec.Done, Cut) {
				continue
			}
			one.Name = r.Act.String() + " " + r.Edge
			if e, ok := plan.Edge(r.Edge); ok {
				one.Spread = r.Net.Sub(e.Spec.Net)
			}
		case edge.ChangePass, edge.CutDrift:
			if find(p.Spec.Changes, r.Seam).Meant {
				continue
			}
		}
		if slices.Contains(p.Spec.Done, r.Seam) || slices.ContainsFunc(p.Hems, func(h HemPlan) bool { return h.Name == r.Seam }) || slices.ContainsFunc(out, func(o Remedy) bool { return o.Name == one.Name }) {
			continue
		}
		out = append(out, one)
	}
	return out
}
