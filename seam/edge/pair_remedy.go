package edge

import (
	"cmp"
	"iter"
	"slices"

	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// ApplyMatch is a copy of m with the remedy carried out on the takes of the seam
// Seam of the edge Edge. It fails where m has no such takes.
func (r Remedy) ApplyMatch(m Pair) (Pair, error) {
	m.Long.Takes, m.Short.Takes = slices.Clone(m.Long.Takes), slices.Clone(m.Short.Takes)
	switch r.Act {
	case ChangePass, CutDrift, SewPartner:
	default:
		return Pair{}, r.noAct()
	}
	var takes []Take
	switch r.Edge {
	case cmp.Or(m.Long.Name, "long edge"):
		takes = m.Long.Takes
	case cmp.Or(m.Short.Name, "short edge"):
		takes = m.Short.Takes
	default:
		return Pair{}, fault.Faults{{Path: "edge", Got: sew.Quote(r.Edge), Limit: "the name of an edge", Kind: fault.Unknown}}
	}
	found := false
	for i, t := range takes {
		if t.Name != r.Seam {
			continue
		}
		found = true
		t.fill()
		if r.Act == CutDrift {
			t.Cut = t.Taken
		} else {
			t.Taken = r.Take
		}
		takes[i] = t
	}
	if !found {
		return Pair{}, fault.Faults{{Path: "seam", Got: sew.Quote(r.Seam), Limit: "the name of a seam that crosses the edge", Kind: fault.Unknown}}
	}
	return m, nil
}

// Remedies yields what mends the match, in the order of [Assembly.Remedies]:
// each seam that crosses an edge and has drifted cut to its take, or sewn to
// what was cut, and the seams of the edge that moved less sewn so that it moves
// too. An [Assembly] knows what else a change does, and what the kinds of seam
// allow; a Match does not. A fault of m is yielded alone.
func (m Pair) Remedies() iter.Seq2[Remedy, error] {
	return func(yield func(Remedy, error) bool) {
		_, w, err := m.solve()
		if err != nil {
			yield(Remedy{}, err)
			return
		}
		for _, r := range ranked(m.remedies(w)) {
			if !yield(r, nil) {
				return
			}
		}
	}
}

func (m Pair) remedies(w matchWork) (found []Remedy) {
	if w.fit != Mismatch {
		return nil
	}
	try := func(act Act, edge Spec, t Take) {
		r := Remedy{Act: act, Edge: edge.Name, Seam: t.Name, Cut: t.Cut, Take: t.Taken, Mends: 1}
		changed, err := r.ApplyMatch(m)
		if err != nil {
			return
		}
		_, q, err := changed.solve()
		if err != nil || q.fit == Mismatch {
			return
		}
		left, err := q.change().without()
		if err != nil {
			return
		}
		r.Left = left.near().Settled()
		if act == CutDrift {
			for _, o := range edge.Takes {
				if o.Name == t.Name {
					r.Cuts += o.Plies
				}
			}
		}
		if !slices.ContainsFunc(found, func(o Remedy) bool { o.Act = act; return o == r }) {
			found = append(found, r)
		}
	}
	targets, exact := w.targets()
	for side, e := range [...]Spec{w.long.spec, w.short.spec} {
		var names []string
		for _, t := range e.Takes {
			if slices.Contains(names, t.Name) {
				continue
			}
			names = append(names, t.Name)
			g := e.together(t.Name)
			if g.drifts {
				c := t
				c.Cut = c.Taken
				try(CutDrift, e, c)
				c = t
				c.Taken = g.cut
				try(ChangePass, e, c)
			}
			per := g.share
			if side == 1 {
				per = per.Neg()
			}
			if !exact || !g.exact || !w.follows(side) {
				continue
			}
			for _, want := range targets {
				c := t
				if c.Taken = t.Taken.Sub(want.Sub(w.sewn.exact).Unscale(per)); c.Taken.Sign() > 0 {
					try(SewPartner, e, c)
				}
			}
		}
	}
	return found
}

// group is the takes of one name on an edge.
type group struct {
	drifts bool
	cut    units.Length // what each ply must lose for the edge to stay as drafted
	share  units.Ratio  // growth of the edge for each unit of drift per ply
	exact  bool         // whether share is exact, and all takes take alike
}

func (e Spec) together(name string) group {
	g := group{exact: true}
	plies := int64(0)
	var taken units.Length
	for _, t := range e.Takes {
		if t.Name != name {
			continue
		}
		if plies == 0 {
			taken = t.Taken
		}
		s, _ := slopeOf(t.Slant)
		g.exact = g.exact && s.root == 1 && t.Taken == taken
		n := int64(t.Plies)
		g.share = g.share.Add(s.times.Mul(units.RatioOf(n, 1)))
		g.cut = g.cut.Add(t.Cut.MulInt(n))
		g.drifts = g.drifts || !t.Drift().IsZero()
		plies += n
	}
	g.cut = g.cut.DivInt(plies)
	return g
}
