package edge

import (
	"cmp"
	"slices"
	"strconv"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// A frame is an assembly with its names looked up and its defaults filled.
type frame struct {
	spec    Assembly
	assumed []string
	seams   []seam.Plan
	edges   []edgeFrame
	pairs   [][2]int // the two edges of each pair
}

type edgeFrame struct {
	own    int     // the seam along it, -1 for none
	seams  []int   // the seam of each crossing
	slopes []slope // and its slope
}

// index finds names: places in the order of the names.
type index struct {
	places []int
	name   func(int) string
}

func newIndex(n int, name func(int) string) index {
	x := index{make([]int, n), name}
	for i := range x.places {
		x.places[i] = i
	}
	slices.SortStableFunc(x.places, func(i, j int) int { return cmp.Compare(name(i), name(j)) })
	return x
}

// find is the first place of a name, -1 for none.
func (x index) find(name string) int {
	i, ok := slices.BinarySearchFunc(x.places, name, func(i int, n string) int { return cmp.Compare(x.name(i), n) })
	if !ok {
		return -1
	}
	return x.places[i]
}

// label checks a name that must be given, and be the first of its kind.
func (x index) label(a *fault.Audit, i int) {
	name := x.name(i)
	switch {
	case name == "":
		a.Fault("name", "", "a name", fault.Missing)
	case x.find(name) != i:
		a.Fault("name", sew.Quote(name), "a name that no other has", fault.Twice)
	default:
		a.Text("name", name)
	}
}

// frame checks everything that does not need the lengths.
func (a Assembly) frame() (*frame, error) {
	var audit fault.Audit
	audit.Count("seams", len(a.Seams), 0, MaxSeams)
	audit.Count("edges", len(a.Edges), 1, MaxEdges)
	for i := 0; i < min(len(a.Edges), MaxEdges); i++ {
		if n := len(a.Edges[i].Crossings); n > MaxCrossings {
			audit.Count("edges["+strconv.Itoa(i)+"].crossings", n, 0, MaxCrossings)
		}
	}
	audit.Count("pairs", len(a.Pairs), 0, MaxPairs)
	if audit.Failed() {
		return nil, audit.Err()
	}
	f := &frame{spec: a.clone()}
	a = f.spec
	seams := newIndex(len(a.Seams), func(i int) string { return a.Seams[i].Name })
	edges := newIndex(len(a.Edges), func(i int) string { return a.Edges[i].Name })
	f.seams = make([]seam.Plan, len(a.Seams))
	for i, j := range a.Seams {
		var one fault.Audit
		seams.label(&one, i)
		p, err := j.Spec.Plan()
		if err != nil {
			one.Include("spec", err)
		}
		f.seams[i] = p
		if one.Failed() {
			audit.Include("seams["+strconv.Itoa(i)+"]", one.Err())
		}
	}
	f.edges = make([]edgeFrame, len(a.Edges))
	n := 0
	for _, c := range a.Edges {
		n += len(c.Crossings)
	}
	places, slopes := make([]int, n), make([]slope, n)
	var set assemblyFields
	for i := range a.Edges {
		var one fault.Audit
		c, e := &a.Edges[i], &f.edges[i]
		n := len(c.Crossings)
		e.seams, places = places[:n:n], places[n:]
		e.slopes, slopes = slopes[:n:n], slopes[n:]
		edges.label(&one, i)
		one.Need("net", c.Net)
		set |= c.frame(&one, e, seams)
		if one.Failed() {
			audit.Include("edges["+strconv.Itoa(i)+"]", one.Err())
		}
	}
	f.pairs = make([][2]int, len(a.Pairs))
	for i, q := range a.Pairs {
		var one fault.Audit
		f.pairs[i] = q.frame(&one, edges)
		if slices.Contains(f.pairs[:i], f.pairs[i]) && !one.Failed() {
			one.Fault("short", sew.Quote(q.Short), "a pair that no other is", fault.Twice)
		}
		limits(&one, q.MaxEase, q.MaxGathers)
		if q.MaxEase.IsZero() {
			set |= pairsMaxEase
		}
		if one.Failed() {
			audit.Include("pairs["+strconv.Itoa(i)+"]", one.Err())
		}
	}
	f.assumed = set.list()
	return f, audit.Err()
}

// frame looks up the seams of c and fills its defaults.
func (c *Course) frame(a *fault.Audit, e *edgeFrame, seams index) (set assemblyFields) {
	for k := range c.Crossings {
		var one fault.Audit
		x := &c.Crossings[k]
		e.seams[k] = lookUp(&one, "seam", x.Seam, "seam", seams)
		one.Count("times", x.Times, 0, MaxTimes)
		one.Count("plies", x.Plies, 0, 2)
		switch {
		case int(x.Ply) >= len(plyNames):
			one.Fault("ply", x.Ply.String(), "upper or under", fault.Unknown)
		case x.Ply != NoPly && x.Plies != 1:
			one.Fault("ply", x.Ply.String(), "none unless plies is 1", fault.Unused)
		case x.Plies == 1 && x.Ply == NoPly:
			x.Ply, set = UpperPly, set|crossingsPly
		}
		e.slopes[k] = slant(&one, x.Slant)
		if x.Times == 0 {
			x.Times, set = 1, set|crossingsTimes
		}
		if x.Plies == 0 {
			x.Plies, set = 2, set|crossingsPlies
		}
		if one.Failed() {
			a.Include("crossings["+strconv.Itoa(k)+"]", one.Err())
		}
	}
	e.own = -1
	if c.Own != "" {
		e.own = lookUp(a, "own", c.Own, "seam", seams)
	}
	switch {
	case int(c.OwnPly) >= len(plyNames):
		a.Fault("ownPly", c.OwnPly.String(), "upper or under", fault.Unknown)
	case c.OwnPly != NoPly && c.Own == "":
		a.Fault("ownPly", c.OwnPly.String(), "none without own", fault.Unused)
	case c.OwnPly == NoPly && c.Own != "":
		c.OwnPly, set = UpperPly, set|edgesOwnPly
	}
	return set
}

// frame looks up the edges of q.
func (q Partners) frame(a *fault.Audit, edges index) [2]int {
	at := [2]int{lookUp(a, "long", q.Long, "edge", edges), lookUp(a, "short", q.Short, "edge", edges)}
	if at[0] >= 0 && at[0] == at[1] {
		a.Fault("short", sew.Quote(q.Short), "an edge other than long", fault.Conflict)
	}
	return at
}

func lookUp(a *fault.Audit, path, name, what string, in index) int {
	if name == "" {
		a.Fault(path, "", "the name of a "+what, fault.Missing)
		return -1
	}
	i := in.find(name)
	if i < 0 {
		a.Fault(path, sew.Quote(name), "the name of a "+what, fault.Unknown)
	}
	return i
}

// measure works out every edge and judges every pair.
func (f *frame) measure() ([]edgeWork, []matchWork, error) {
	var audit fault.Audit
	edges := make([]edgeWork, len(f.edges))
	n := 0
	for _, e := range f.edges {
		n += 2 * len(e.seams)
	}
	takes, slopes := make([]Take, 0, n), make([]slope, 0, n)
	for i, c := range f.spec.Edges {
		e, start := f.edges[i], len(takes)
		for k, x := range c.Crossings {
			s := f.seams[e.seams[k]]
			one := take(s.Upper, x.Seam, x.Times*x.Plies, x.Slant)
			if x.Ply == UnderPly {
				one = take(s.Under, x.Seam, x.Times, x.Slant)
			}
			under := take(s.Under, x.Seam, x.Times, x.Slant)
			if x.Plies == 2 && !under.alike(one) {
				one.Plies = x.Times
				takes, slopes = append(takes, one), append(slopes, e.slopes[k])
				one = under
			}
			takes, slopes = append(takes, one), append(slopes, e.slopes[k])
		}
		edge := Spec{Name: c.Name, Net: c.Net, Spread: c.Spread, Takes: takes[start:len(takes):len(takes)], Turn: c.Turn}
		if e.own >= 0 {
			side := f.seams[e.own].Upper
			if c.OwnPly == UnderPly {
				side = f.seams[e.own].Under
			}
			edge.Own = take(side, c.Own, 0, units.Ratio{})
		}
		var err error
		if edges[i], err = edge.measure(slopes[start:]); err != nil {
			audit.Include("edges["+strconv.Itoa(i)+"]", err)
		}
	}
	if audit.Failed() {
		return nil, nil, audit.Err()
	}
	pairs := make([]matchWork, len(f.pairs))
	for i, at := range f.pairs {
		q := f.spec.Pairs[i]
		var err error
		if pairs[i], err = compare(&edges[at[0]], &edges[at[1]], q.MaxEase, q.MaxGathers); err != nil {
			audit.Fault("pairs["+strconv.Itoa(i)+"].long", sew.Quote(q.Long), "amounts of fewer places", fault.KindOf(err))
		}
	}
	return edges, pairs, audit.Err()
}

// report is the plan of what was measured.
func (f *frame) report(edges []edgeWork, pairs []matchWork) AssemblyPlan {
	p := AssemblyPlan{
		Spec:    f.spec,
		Assumed: f.assumed,
		Seams:   f.seams,
		Edges:   make([]Plan, len(edges)),
		Pairs:   make([]PairPlan, len(pairs)),
	}
	for i, e := range edges {
		p.Edges[i] = e.plan()
	}
	for i, at := range f.pairs {
		q := f.spec.Pairs[i]
		p.Pairs[i] = pairs[i].plan(p.Edges[at[0]], p.Edges[at[1]], q.MaxEase, q.MaxGathers)
		if q.MaxEase.IsZero() {
			p.Pairs[i].Assumed = []string{"maxEase"}
		}
	}
	return p
}

// take is the side of a seam as it crosses an edge.
func take(d seam.Side, name string, plies int, slant units.Ratio) Take {
	return Take{Name: name, Drafted: d.Drafted, Cut: d.Cut, Taken: d.Taken, Plies: plies, Slant: slant}
}

// alike reports whether two takes differ in their plies only.
func (t Take) alike(o Take) bool {
	o.Plies = t.Plies
	return t == o
}
