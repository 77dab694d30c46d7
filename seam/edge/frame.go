package edge

import (
	"example.com/clothyard/seam"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// A frame is seams, edges and pairs with their names looked up and their defaults filled,
// and what they come to.
type frame struct {
	seams  []joint
	edges  []edgeFrame
	pairs  [][2]int // the two edges of each pair
	limits []limit  // and its limits

	measured []lengths // each edge
	judged   []judged  // each pair
}

type limit struct {
	ease    units.Given[units.Ratio]
	gathers units.Ratio
}

// An edgeFrame is an edge and the seams at it.
type edgeFrame struct {
	spec    Spec // without its takes
	refs    []ref
	own     int // the seam along it, -1 for none
	of      int // the edge that it is spread with, -1 for none
	ownSide int
}

// A ref is a seam that crosses an edge with plies of one of its sides.
type ref struct {
	seam, side int
	name       string
	plies      int
	both, ends int // of so many seams the edge has both plies, of so many one
	slant      units.Angle
	cosecant   units.NearRatio
}

// A joint is a seam with what it takes from each kind of ply.
type joint struct {
	name  string
	sides []seam.Side // upper and under of a seam that is planned; of takes, each that differs
	spec  seam.Any    // how it is sewn; none of takes
	plan  *seam.Plan  // nil of takes
}

func sewn(name string, s seam.Any, p seam.Plan) joint {
	return joint{name: name, spec: s, plan: &p, sides: []seam.Side{p.Upper, p.Under}}
}

func sideOf(t Take) seam.Side {
	return seam.Side{Drafted: t.Drafted, Cut: t.Cut, Taken: t.Taken, Drift: t.Drift()}
}

// drifts reports whether a ply keeps or loses anything.
func (j joint) drifts() bool {
	for _, s := range j.sides {
		if !s.Drift.IsZero() {
			return true
		}
	}
	return false
}

// taken is what each ply loses, where all lose alike.
func (j joint) taken() (units.Length, bool) {
	for _, s := range j.sides {
		if s.Taken != j.sides[0].Taken {
			return units.Length{}, false
		}
	}
	return j.sides[0].Taken, true
}

// again is the seam sewn as told.
func (j joint) again(s seam.Any) (joint, bool) {
	p, err := s.Plan()
	return sewn(j.name, s, p), err == nil
}

// cutting is the seam, its plies cut to what it takes.
func (j joint) cutting() (joint, bool) {
	if j.plan != nil {
		return j.again(j.plan.Spec.Cutting(j.plan.Upper.Taken, j.plan.Under.Taken))
	}
	return j.retaken(func(s seam.Side) seam.Side { s.Cut = s.Taken; return s }), true
}

// taking is the seam made to take so much from each ply.
func (j joint) taking(each units.Length) (joint, bool) {
	if j.plan != nil {
		s, ok := j.spec.Taking(each)
		if !ok {
			return j, false
		}
		return j.again(s)
	}
	return j.retaken(func(s seam.Side) seam.Side { s.Taken = each; return s }), each.Sign() > 0
}

func (j joint) retaken(with func(seam.Side) seam.Side) joint {
	sides := make([]seam.Side, len(j.sides))
	for i, s := range j.sides {
		s = with(s)
		s.Drift = s.Cut.Sub(s.Taken)
		sides[i] = s
	}
	j.sides = sides
	return j
}

// measure works out every edge and judges every pair.
func (f *frame) measure(edgeAt, pairAt func(int) string) error {
	var audit fault.Audit
	f.measured = make([]lengths, len(f.edges))
	for i, e := range f.edges {
		s := e.spec
		s.Takes, s.Own = make([]Take, len(e.refs)), Take{}
		cosecants := make([]units.NearRatio, len(e.refs))
		for k, r := range e.refs {
			s.Takes[k], cosecants[k] = takeOf(r.name, f.seams[r.seam].sides[r.side]), r.cosecant
			s.Takes[k].Plies, s.Takes[k].Slant = r.plies, r.slant
		}
		if e.own >= 0 {
			s.Own = takeOf(f.seams[e.own].name, f.seams[e.own].sides[e.ownSide])
		}
		var err error
		f.measured[i], err = s.measure(cosecants)
		audit.Include(edgeAt(i), err)
	}
	if audit.Failed() {
		return audit.Err()
	}
	f.judged = make([]judged, len(f.pairs))
	for i, at := range f.pairs {
		var err error
		if f.judged[i], err = compare(&f.measured[at[0]], &f.measured[at[1]], f.limits[i].ease, f.limits[i].gathers); err != nil {
			audit.Fault(pairAt(i), f.measured[at[0]].spec.Name, "amounts of fewer places", fault.KindOf(err))
		}
	}
	return audit.Err()
}

func takeOf(name string, s seam.Side) Take {
	return Take{Name: name, Drafted: s.Drafted, Cut: s.Cut, Taken: s.Taken}
}

func (f *frame) matches() []Match {
	out := make([]Match, len(f.judged))
	for i, w := range f.judged {
		out[i] = w.match()
	}
	return out
}
