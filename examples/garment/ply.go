package garment

import (
	"slices"
	"strconv"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// ply is the ply of a seam that a part is. Of a seam that is sewn to itself a
// part is both: the first side is the upper ply and the other the under.
func (w *planner) ply(p edge.AssemblyPlan, name string, upper, under []string, other bool) seam.Side {
	s := p.Seams[w.g.seam(name)]
	if slices.Contains(under, name) && (other || !slices.Contains(upper, name)) {
		return s.Under
	}
	return s.Upper
}

// plies checks that every part says which ply it is of a seam whose plies differ.
func (w *planner) plies() {
	for i, d := range w.g.Drops {
		w.said(at("drops", i, "upper"), d.Seams, d.Upper, d.Under, "keep", func(s seam.Side) units.Length { return s.Drift })
	}
	for i, p := range w.g.Pieces {
		w.said(at("pieces", i, "upper"), p.seams(), p.Upper, p.Under, "are cut at", func(s seam.Side) units.Length { return s.Cut })
	}
}

func (w *planner) said(path string, seams, upper, under []string, how string, of func(seam.Side) units.Length) {
	for i, name := range seams {
		k := w.g.seam(name)
		if k < 0 || slices.Contains(seams[:i], name) || slices.Contains(upper, name) || slices.Contains(under, name) {
			continue
		}
		for _, p := range [...]edge.AssemblyPlan{w.p.AsSewn, w.p.AsChosen} {
			if a, b := of(p.Seams[k].Upper), of(p.Seams[k].Under); a != b {
				w.audit.Fault(path, "", strconv.Quote(name)+" in upper or in under, since its plies "+how+" "+a.String()+" and "+b.String(), fault.Missing)
				break
			}
		}
	}
}

// seams is every seam that a piece names, as often as it does.
func (p Piece) seams() []string {
	names := append(slices.Clone(p.Sides), p.Ends...)
	for _, c := range p.Outline {
		for _, s := range c.sides() {
			if s.name != "" {
				names = append(names, s.name)
			}
		}
	}
	return names
}

// both reports whether a seam lies at two opposite sides of a piece.
func (p Piece) both(name string) bool {
	twice := func(list []string) bool { return len(list) == 2 && list[0] == name && list[1] == name }
	var lies [4]bool
	for _, c := range p.Outline {
		for i, s := range c.sides() {
			lies[i] = lies[i] || s.name == name
		}
	}
	return twice(p.Sides) || twice(p.Ends) || lies[0] && lies[1] || lies[2] && lies[3]
}

// checkPlies checks the names of the plies: each of a seam that the part has, and
// in one list unless the part is sewn to itself there.
func (w *planner) checkPlies(path string, seams, upper, under []string, both func(string) bool) {
	for _, list := range [...]struct {
		field string
		names []string
	}{{"upper", upper}, {"under", under}} {
		w.audit.Count(path+list.field, len(list.names), 0, MaxParts)
		for i, name := range list.names[:min(len(list.names), MaxParts)] {
			path := path + list.field + "[" + strconv.Itoa(i) + "]"
			switch {
			case !slices.Contains(seams, name):
				w.audit.Fault(path, quote(name), "a seam that it has", fault.Unused)
			case slices.Contains(list.names[:i], name):
				w.audit.Fault(path, quote(name), "each seam once", fault.Twice)
			case list.field == "under" && slices.Contains(upper, name) && !both(name):
				w.audit.Fault(path, quote(name), "one of upper and under, unless the seam joins two sides of the same piece", fault.Conflict)
			}
		}
	}
}

// quote keeps what a fault repeats to the length of a name.
func quote(name string) string { return strconv.Quote(name[:min(len(name), fault.MaxName)]) }
