package edge

import (
	"slices"
	"strconv"

	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/name"
	"example.com/clothyard/units/noun"
)

// Bounds of an [Assembly].
const (
	MaxSeams     = 200 // most seams
	MaxEdges     = 200 // most edges
	MaxPairs     = 200 // most pairs
	MaxCrossings = 25  // most seams that cross one edge, each any number of times
	MaxTimes     = 500 // most times that one seam crosses one edge
)

// A Ply says which of a seam's two plies a piece is.
type Ply uint8

// The plies.
const (
	UpperPly Ply = iota + 1 // the ply of which a seam's drafted and cut speak
	UnderPly                // the ply of which draftedUnder and cutUnder speak
)

var plyNames = name.Of[Ply]("ply", "none", "upper", "under")

// String is the ply's name.
func (p Ply) String() string { return plyNames.String(p) }

// MarshalText is the ply's name.
func (p Ply) MarshalText() ([]byte, error) { return plyNames.Marshal(p) }

// UnmarshalText takes a ply's name.
func (p *Ply) UnmarshalText(text []byte) error { return plyNames.Unmarshal(p, text) }

// A Joint is a seam of a garment: a name and how it is sewn. A left and a right seam
// sewn alike are one Joint.
type Joint struct {
	// Name is the seam's name, which no other has.
	Name string `json:"name,omitzero"`
	// Spec is how it is sewn.
	Spec seam.Any `json:"spec,omitzero"`
}

// A Crossing is a seam that crosses an edge.
type Crossing struct {
	// Seam is the name of the seam.
	Seam string `json:"seam,omitzero"`
	// Times is how many times it crosses this edge: the neck is crossed by two shoulder
	// seams. May be omitted; the default is 1.
	Times int `json:"times,omitzero"`
	// Plies is how many plies of this edge are in it each time: a seam between two pieces
	// of the edge has 2, an open end 1. May be omitted; the default is 2.
	Plies int `json:"plies,omitzero"`
	// Ply is which ply of the seam the edge is, where plies is 1. May be omitted; the
	// default is the upper one.
	Ply Ply `json:"ply,omitzero"`
	// Slant is the angle between the edge and the seam. May be omitted; the seam is then
	// square to the edge.
	Slant units.Angle `json:"slant,omitzero"`
}

// A Course is an edge of a garment, as [Spec] is, that names its seams.
type Course struct {
	// Name is the edge's name, which no other has.
	Name string `json:"name,omitzero"`
	// Net is the drafted length between the drafted seam lines.
	Net units.Length `json:"net,omitzero"`
	// Spread is how much longer its piece is made than drafted; it is negative where the
	// piece is folded. May be omitted; the default is 0.
	Spread units.Length `json:"spread,omitzero" noun:"zero"`
	// Crossings are the seams that cross it. A seam may stand more than once. May be
	// omitted; none crosses it then.
	Crossings []Crossing `json:"crossings,omitzero"`
	// Own is the name of the seam along the edge itself. May be omitted; the edge is then
	// sewn as drafted.
	Own string `json:"own,omitzero"`
	// OwnPly is which ply of that seam the edge is. May be omitted; the default is the
	// upper one.
	OwnPly Ply `json:"ownPly,omitzero"`
	// Of is the name of the edge along which this one lies, on the same piece, as the outer
	// edge of a collar: where that one is spread, so is this. May be omitted; the edge then
	// follows none.
	Of string `json:"of,omitzero"`
	// Turn is how far the line turns in all: positive where the allowance lies outside the
	// curve, negative where inside. May be omitted; the default is a straight line.
	Turn units.Angle `json:"turn,omitzero" noun:"zero"`
}

// Partners are two edges that are sewn together, as in [Pair]. An edge with several
// partners stands in Partners with each.
type Partners struct {
	// Long is the name of the edge that may be the longer.
	Long string `json:"long,omitzero"`
	// Short is the name of the edge that it goes onto.
	Short string `json:"short,omitzero"`
	// MaxEase is the most that long may be longer and be eased in, as a share of short as
	// sewn. May be omitted; the difference that the pattern drew is then the limit.
	MaxEase units.Given[units.Ratio] `json:"maxEase,omitzero"`
	// MaxGathers is the most that long may be longer and be gathered, as a share of short
	// as sewn. May be omitted; it is then not gathered.
	MaxGathers units.Ratio `json:"maxGathers,omitzero" noun:"zero"`
}

// An Assembly is the seams and the edges of a garment, by name. It answers what a change
// to one seam does to every edge that it crosses, and to every partner of these.
type Assembly struct {
	// Tape is the measure that the defaults of the seams follow. May be omitted; the default
	// is the tape on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Seams are the seams, at most 200.
	Seams []Joint `json:"seams,omitzero"`
	// Edges are the edges, 1 to 200.
	Edges []Course `json:"edges,omitzero"`
	// Pairs are the edges that are sewn together, at most 200. May be omitted; no edge has
	// a partner then.
	Pairs []Partners `json:"pairs,omitzero"`
}

// An AssemblyPlan is what every seam, edge and pair of a garment comes to, each in the
// order of the [Assembly].
type AssemblyPlan struct {
	Spec    Assembly    `json:"spec,omitzero"`    // a copy, with Times, Plies, Ply and OwnPly filled; the seams' specs stay as given, solved in Seams
	Assumed []string    `json:"assumed,omitzero"` // what a default filled, named once for all edges; those of a seam are in its own plan
	Seams   []seam.Plan `json:"seams,omitzero"`   // each seam
	Edges   []Plan      `json:"edges,omitzero"`   // each edge
	Pairs   []Match     `json:"pairs,omitzero"`   // each pair

	// Remedies are the single changes that mend at least one mismatched pair, the best
	// first: the most pairs mended by the one change, then the fewest left mismatched,
	// then cutting before changing a pass, then the fewest cuts. There are none where
	// nothing is mismatched, and none that the kind of seam does not allow. What the
	// pattern drew stays the limit of ease where a piece is spread. At most 600 matches
	// stand in all of them together: of a garment of many pairs the best are told, at
	// least one.
	Remedies []Remedy `json:"remedies,omitzero"`
}

// Mismatched is how many pairs do not go together.
func (p AssemblyPlan) Mismatched() int { return mismatched(p.Pairs) }

func mismatched(pairs []Match) (n int) {
	for _, m := range pairs {
		if m.Fit == Mismatch {
			n++
		}
	}
	return n
}

// Edge is the plan of the edge of that name.
func (p AssemblyPlan) Edge(name string) (Plan, bool) {
	for i, c := range p.Spec.Edges {
		if c.Name == name {
			return p.Edges[i], true
		}
	}
	return Plan{}, false
}

// Pair is how the two edges so named go together.
func (p AssemblyPlan) Pair(long, short string) (Match, bool) {
	for _, m := range p.Pairs {
		if m.LongName == long && m.ShortName == short {
			return m, true
		}
	}
	return Match{}, false
}

// With is a copy of a in which the seam of that name is sewn by the spec given; a stays
// as it was, and the two share nothing. It fails where there is no such seam.
func (a Assembly) With(name string, s seam.Any) (Assembly, error) {
	i := slices.IndexFunc(a.Seams, func(j Joint) bool { return j.Name == name })
	if i < 0 {
		return Assembly{}, fault.Faults{{Path: "seams", Got: fault.Quote(name), Limit: "the name of a seam", Kind: fault.Unknown}}
	}
	a = a.clone()
	a.Seams[i].Spec = s
	return a, nil
}

func (a Assembly) clone() Assembly {
	a.Seams, a.Edges, a.Pairs = slices.Clone(a.Seams), slices.Clone(a.Edges), slices.Clone(a.Pairs)
	for i, c := range a.Edges {
		a.Edges[i].Crossings = slices.Clone(c.Crossings)
	}
	return a
}

// Plan works out every seam, every edge and every pair. The faults are [fault.Faults];
// those of a part stand under its path, as in edges[2].crossings[0].seam.
func (a Assembly) Plan() (AssemblyPlan, error) { return a.plan(AssemblyPlan{}) }

// Mended is the plan once a remedy is carried out. Only the seam that the remedy changes
// is planned again.
func (p AssemblyPlan) Mended(r Remedy) (AssemblyPlan, error) {
	a, err := r.Apply(p.Spec)
	if err != nil {
		return AssemblyPlan{}, err
	}
	return a.plan(p)
}

// plan plans a. Seams that stand in what was planned before are taken from there.
func (a Assembly) plan(before AssemblyPlan) (AssemblyPlan, error) {
	p := AssemblyPlan{}
	f, err := a.frame(&p, before)
	if err != nil {
		return AssemblyPlan{}, err
	}
	at := func(list string) func(int) string {
		return func(i int) string { return list + "[" + strconv.Itoa(i) + "]" }
	}
	pair := func(i int) string { return at("pairs")(i) + ".long" }
	if err := f.measure(at("edges"), pair); err != nil {
		return AssemblyPlan{}, err
	}
	p.Edges = make([]Plan, len(f.measured))
	for i, w := range f.measured {
		p.Edges[i] = w.plan()
	}
	p.Pairs = f.matches()
	p.Remedies = f.remedies()
	return p, nil
}

// frame checks everything that does not need the lengths, and fills the defaults into
// the plan's spec.
func (a Assembly) frame(p *AssemblyPlan, before AssemblyPlan) (*frame, error) {
	var audit fault.Audit
	a.Tape.Check(&audit, "tape")
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
	if a.Tape == 0 {
		a.Tape, p.Assumed = noun.Tape(a), []string{"tape"}
	}
	a = a.clone()
	f := &frame{}
	seams, edges := names{}, names{}
	p.Seams = make([]seam.Plan, len(a.Seams))
	for i, j := range a.Seams {
		var one fault.Audit
		seams.label(&one, i, j.Name)
		s := j.Spec.On(a.Tape)
		if i < len(before.Seams) && before.Spec.Seams[i].Spec.On(a.Tape) == s {
			p.Seams[i] = before.Seams[i]
		} else {
			var err error
			p.Seams[i], err = s.Plan()
			one.Include("spec", err)
		}
		f.seams = append(f.seams, sewn(j.Name, s, p.Seams[i]))
		audit.Include("seams["+strconv.Itoa(i)+"]", one.Err())
	}
	var set filledAt
	for i := range a.Edges {
		var one fault.Audit
		c := &a.Edges[i]
		edges.label(&one, i, c.Name)
		one.Need("net", c.Net)
		e := edgeFrame{own: -1, of: -1}
		set.of(c.cross(&one, &e, f.seams, seams))
		e.spec = Spec{Name: c.Name, Net: c.Net, Spread: c.Spread, Turn: c.Turn}
		f.edges = append(f.edges, e)
		audit.Include("edges["+strconv.Itoa(i)+"]", one.Err())
	}
	for i, c := range a.Edges {
		if c.Of == "" {
			continue
		}
		var one fault.Audit
		if f.edges[i].of = edges.find(&one, "of", c.Of, "edge"); f.edges[i].of == i {
			one.Fault("of", fault.Quote(c.Of), "another edge", fault.Conflict)
		}
		audit.Include("edges["+strconv.Itoa(i)+"]", one.Err())
	}
	for i, q := range a.Pairs {
		var one fault.Audit
		at := [2]int{edges.find(&one, "long", q.Long, "edge"), edges.find(&one, "short", q.Short, "edge")}
		if at[0] >= 0 && at[0] == at[1] {
			one.Fault("short", fault.Quote(q.Short), "an edge other than long", fault.Conflict)
		}
		if slices.Contains(f.pairs, at) && !one.Failed() {
			one.Fault("short", fault.Quote(q.Short), "a pair that no other is", fault.Twice)
		}
		limits(&one, q.MaxEase, q.MaxGathers)
		f.pairs, f.limits = append(f.pairs, at), append(f.limits, limit{q.MaxEase, q.MaxGathers})
		audit.Include("pairs["+strconv.Itoa(i)+"]", one.Err())
	}
	p.Spec, p.Assumed = a, append(p.Assumed, set.keys()...)
	return f, audit.Err()
}

// filledAt says which fields of edges a default filled.
type filledAt struct{ times, plies, ply, own bool }

func (s *filledAt) of(t filledAt) {
	*s = filledAt{s.times || t.times, s.plies || t.plies, s.ply || t.ply, s.own || t.own}
}

func (s filledAt) keys() []string {
	return chosen("edges.", []string{"crossings.times", "crossings.plies", "crossings.ply", "ownPly"}, s.times, s.plies, s.ply, s.own)
}

// cross looks up the seams of c, fills its defaults, and adds what crosses it to e.
func (c *Course) cross(a *fault.Audit, e *edgeFrame, seams []joint, places names) (set filledAt) {
	for k := range c.Crossings {
		var one fault.Audit
		x := &c.Crossings[k]
		at := places.find(&one, "seam", x.Seam, "seam")
		one.Count("times", x.Times, 0, MaxTimes)
		one.Count("plies", x.Plies, 0, 2)
		switch {
		case x.Ply != 0 && !plyNames.Valid(x.Ply):
			plyNames.Check(&one, "ply", x.Ply)
		case x.Ply != 0 && x.Plies != 1:
			one.Fault("ply", x.Ply.String(), "none unless plies is 1", fault.Unused)
		case x.Plies == 1 && x.Ply == 0:
			x.Ply, set.ply = UpperPly, true
		}
		r := ref{seam: at, name: x.Seam, slant: x.Slant, cosecant: slanted(&one, "slant", x.Slant)}
		if x.Times == 0 {
			x.Times, set.times = 1, true
		}
		if x.Plies == 0 {
			x.Plies, set.plies = 2, true
		}
		if one.Failed() {
			a.Include("crossings["+strconv.Itoa(k)+"]", one.Err())
			continue
		}
		switch s := seams[at].sides; {
		case x.Plies == 1:
			r.side, r.plies, r.ends = int(x.Ply-UpperPly), x.Times, x.Times
		case s[0] == s[1]:
			r.plies, r.both = 2*x.Times, x.Times
		default: // each ply by itself
			r.plies, r.both = x.Times, x.Times
			e.refs = append(e.refs, r)
			r.side, r.both = 1, 0
		}
		e.refs = append(e.refs, r)
	}
	if c.Own != "" {
		e.own = places.find(a, "own", c.Own, "seam")
	}
	switch {
	case c.OwnPly != 0 && !plyNames.Valid(c.OwnPly):
		plyNames.Check(a, "ownPly", c.OwnPly)
	case c.OwnPly != 0 && c.Own == "":
		a.Fault("ownPly", c.OwnPly.String(), "none without own", fault.Unused)
	case c.OwnPly == 0 && c.Own != "":
		c.OwnPly, set.own = UpperPly, true
	}
	e.ownSide = max(0, int(c.OwnPly)-int(UpperPly))
	return set
}

// names are names and where each stands first.
type names map[string]int

// label checks a name that must be given, and be the first of its kind.
func (n names) label(a *fault.Audit, i int, name string) {
	_, twice := n[name]
	switch {
	case name == "":
		a.Fault("name", "", "a name", fault.Missing)
	case twice:
		a.Fault("name", fault.Quote(name), "a name that no other has", fault.Twice)
	default:
		n[name] = i
		a.Text("name", name)
	}
}

// find is where a name stands, -1 where it does not.
func (n names) find(a *fault.Audit, path, name, what string) int {
	i, ok := n[name]
	switch {
	case ok:
		return i
	case name == "":
		a.Fault(path, "", "the name of a "+what, fault.Missing)
	default:
		a.Fault(path, fault.Quote(name), "the name of a "+what, fault.Unknown)
	}
	return -1
}
