package edge

import (
	"fmt"
	"slices"
	"strconv"

	"example.com/clothyard/seam"
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
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

// The plies. The zero value is not given.
const (
	NoPly    Ply = iota
	UpperPly     // the ply that Spec.Drafted and Spec.Cut speak of
	UnderPly     // the ply that Spec.DraftedUnder and Spec.CutUnder speak of
)

var plyNames = [...]string{NoPly: "none", UpperPly: "upper", UnderPly: "under"}

// String is the ply's name; none for [NoPly].
func (p Ply) String() string {
	if int(p) < len(plyNames) {
		return plyNames[p]
	}
	return fmt.Sprintf("Ply(%d)", uint8(p))
}

// MarshalText is the ply's name, empty for [NoPly]. A value that is no ply is a
// fault.
func (p Ply) MarshalText() ([]byte, error) { return ticket.NameText(p, plyNames[:], "ply") }

// UnmarshalText takes a ply's name. Empty text is [NoPly].
func (p *Ply) UnmarshalText(text []byte) error {
	return ticket.ReadName(p, text, plyNames[:], "ply")
}

// Plies yields every [Ply], [NoPly] excepted.
func Plies(yield func(Ply) bool) {
	for p := UpperPly; int(p) < len(plyNames); p++ {
		if !yield(p) {
			return
		}
	}
}

// A Joint is a seam of a garment: a name and how it is sewn. A left and a right
// seam sewn alike are one Joint.
type Joint struct {
	Name string   `json:"name,omitzero"` // compulsory, and no other Joint's
	Spec seam.Any `json:"spec,omitzero"` // how it is sewn
}

// A Crossing is a seam that crosses an edge.
type Crossing struct {
	Seam  string      `json:"seam,omitzero"`              // the name of a [Joint]
	Times int         `json:"times,omitzero"`             // how many times it crosses this edge: the neck is crossed by two shoulder seams; default 1
	Plies int         `json:"plies,omitzero"`             // plies of this edge in it each time: a seam between two pieces of the edge 2, an open end 1; default 2
	Ply   Ply         `json:"ply,omitzero"`               // which ply of the seam, where Plies is 1; default upper
	Slant units.Ratio `json:"slant,omitzero" noun:"zero"` // tangent of the angle between edge and seam, as in [Take]; zero is square
}

// A Course is an edge of a garment, as [Spec] is, that names its seams.
type Course struct {
	Name      string       `json:"name,omitzero"`             // compulsory, and no other Course's
	Net       units.Length `json:"net,omitzero"`              // drafted length between the drafted seam lines
	Spread    units.Length `json:"spread,omitzero"`           // how much longer its piece is made than drafted, as in [Spec]
	Crossings []Crossing   `json:"crossings,omitzero"`        // the seams that cross it; a seam may stand more than once
	Own       string       `json:"own,omitzero"`              // the name of the seam along the edge itself; empty where it is sewn as drafted
	OwnPly    Ply          `json:"ownPly,omitzero"`           // which ply of that seam the edge is; default upper
	Turn      units.Ratio  `json:"turn,omitzero" noun:"zero"` // signed turning of the line in radians, as in [Spec]
}

// A Partners is two edges that are sewn together, as in [Pair]. An edge with
// several partners stands in a Pair with each.
type Partners struct {
	Long       string      `json:"long,omitzero"`       // the name of the [Course] that may be the longer
	Short      string      `json:"short,omitzero"`      // the name of the one it goes onto
	MaxEase    units.Ratio `json:"maxEase,omitzero"`    // as in [Pair]
	MaxGathers units.Ratio `json:"maxGathers,omitzero"` // as in [Pair]
}

// An Assembly is the seams and the edges of a garment, by name. It answers what
// a change to one seam does to every edge that it crosses, and to every partner
// of these.
type Assembly struct {
	Seams []Joint    `json:"seams,omitzero"` // at most [MaxSeams]
	Edges []Course   `json:"edges,omitzero"` // 1 to [MaxEdges]
	Pairs []Partners `json:"pairs,omitzero"` // at most [MaxPairs]
}

// An AssemblyPlan is what every seam, edge and pair of a garment comes to, each
// in the order of the [Assembly].
type AssemblyPlan struct {
	Spec    Assembly    `json:"spec,omitzero"`    // a copy, with Times, Plies, Ply and OwnPly filled; the seams' specs stay as given, solved in Seams
	Assumed []string    `json:"assumed,omitzero"` // what a default filled, named once for all edges and pairs; those of a seam are in its own plan
	Seams   []seam.Plan `json:"seams,omitzero"`   // each seam
	Edges   []Plan      `json:"edges,omitzero"`   // each edge
	Pairs   []PairPlan  `json:"pairs,omitzero"`   // each pair
}

// Mismatched is how many pairs do not go together.
func (p AssemblyPlan) Mismatched() int {
	n := 0
	for _, m := range p.Pairs {
		if m.Fit == Mismatch {
			n++
		}
	}
	return n
}

// Spec is the plan of the edge of that name.
func (p AssemblyPlan) Edge(name string) (Plan, bool) {
	for i, c := range p.Spec.Edges {
		if c.Name == name {
			return p.Edges[i], true
		}
	}
	return Plan{}, false
}

// Partners is the plan of the pair of the two edges so named.
func (p AssemblyPlan) Pair(long, short string) (PairPlan, bool) {
	for i, q := range p.Spec.Pairs {
		if q.Long == long && q.Short == short {
			return p.Pairs[i], true
		}
	}
	return PairPlan{}, false
}

// With is a copy of a in which the seam of that name is sewn by the spec given;
// a stays as it was, and the two share nothing. It fails where there is no such
// seam, and where the spec itself has faults.
func (a Assembly) With(name string, s seam.Any) (Assembly, error) {
	i := slices.IndexFunc(a.Seams, func(j Joint) bool { return j.Name == name })
	if i < 0 {
		return Assembly{}, fault.Faults{{Path: "seams", Got: sew.Quote(name), Limit: "the name of a seam", Kind: fault.Unknown}}
	}
	if _, err := s.Plan(); err != nil {
		return Assembly{}, fault.Under("seams["+strconv.Itoa(i)+"].spec", err)
	}
	a = a.clone()
	a.Seams[i].Spec = s
	return a, nil
}

func (a Assembly) clone() Assembly {
	a.Seams, a.Edges, a.Pairs = slices.Clone(a.Seams), slices.Clone(a.Edges), slices.Clone(a.Pairs)
	n := 0
	for _, c := range a.Edges {
		n += len(c.Crossings)
	}
	all := make([]Crossing, 0, n)
	for i, c := range a.Edges {
		all = append(all, c.Crossings...)
		a.Edges[i].Crossings = all[len(all)-len(c.Crossings) : len(all) : len(all)]
	}
	return a
}

// Plan works out every seam, every edge and every pair. The faults are
// [fault.Faults]; those of a part stand under its path, as in
// Edges[2].Crossings[0].Seam.
func (a Assembly) Plan() (AssemblyPlan, error) {
	f, err := a.frame()
	if err != nil {
		return AssemblyPlan{}, err
	}
	edges, pairs, err := f.measure()
	if err != nil {
		return AssemblyPlan{}, err
	}
	return f.report(edges, pairs), nil
}

// assemblyFields is a set of what was assumed of an assembly, in the order of
// its fields.
type assemblyFields uint8

const (
	crossingsTimes assemblyFields = 1 << iota
	crossingsPlies
	crossingsPly
	edgesOwnPly
	pairsMaxEase
)

var assemblyFieldNames = [...]string{"edges.crossings.times", "edges.crossings.plies", "edges.crossings.ply", "edges.ownPly", "pairs.maxEase"}

func (f assemblyFields) list() (fields []string) {
	for bit, name := range assemblyFieldNames {
		if f>>bit&1 != 0 {
			fields = append(fields, name)
		}
	}
	return fields
}
