package hem

import (
	"strconv"

	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/source"
)

// MaxLean is the greatest lean of a corner, either way, about half a degree from
// flat.
const MaxLean = 100

// A HemSide is the hem along one side of a mitred corner.
type HemSide struct {
	// First is the first turn, which is pressed before the mitre is sewn. May be omitted
	// where depth is given; the default is 0, a raw edge finished flat.
	First units.Given[units.Length] `json:"first,omitzero"`
	// Depth is the depth of the hem, from the finished edge to the first fold, or to
	// the raw edge where there is no first turn. It is needed.
	Depth units.Length `json:"depth,omitzero"`
}

func (h HemSide) first() units.Length { return h.First.Or(units.Length{}) }

// take is all that the hem takes, first + depth.
func (h HemSide) take() units.Length { return h.first().Add(h.Depth) }

// A Mitre is a corner at which two hems meet in a seam. Lengths are 10 m at most.
//
// The corner is laid with its finished point at the origin and the garment above
// side A, which runs from there along +X; side B runs up from the same point,
// leaning to the right. The allowances lie below A and to the left of B.
type Mitre struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape
	// on whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// A is the hem along side A. It is needed.
	A HemSide `json:"a,omitzero"`
	// B is the hem along side B. May be omitted; the default is that of A.
	B HemSide `json:"b,omitzero"`
	// Lean is how far side B leans over side A from upright, as a slope of so much along
	// for one unit up: positive for a sharp corner, negative for a blunt one, 100 at most
	// either way. May be omitted; the corner is then square.
	Lean units.Angle `json:"lean,omitzero" noun:"zero"`
	// Trim is what is left beyond the mitre seam when the corner is cut off,
	// measured square to the seam. May be omitted; the default is 1/4 in or 6 mm, of
	// [MitreTrims], but at most half of the lesser Depth.
	Trim units.Length `json:"trim,omitzero"`
}

// A Point is a place on the flat cloth, from the finished corner: X along side A,
// plus into the garment, and Y square to side A, plus into the garment.
type Point struct {
	X units.Near `json:"x,omitzero"` // along side A
	Y units.Near `json:"y,omitzero"` // square to side A
}

// A MitrePlan is a mitre worked out. Points on the flat cloth are
// as the cloth lies before the hems are turned up, the first turns pressed.
type MitrePlan struct {
	Spec    Mitre    `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // the fields that rest on a default

	Raw  Point `json:"raw,omitzero"`  // the corner of the raw edges
	Fold Point `json:"fold,omitzero"` // the corner of the first folds, or of the raw edges where there is no first turn
	OnA  Point `json:"onA,omitzero"`  // the mark on the first fold of A, where the mitre seam ends
	OnB  Point `json:"onB,omitzero"`  // the mark on the first fold of B, where the mitre seam ends
	Meet Point `json:"meet,omitzero"` // where both marks come to lie when the hems are turned up

	AlongA units.Near `json:"alongA,omitzero"` // from the corner of the folds along A to its mark; 2 x the depth of B at a square corner
	AlongB units.Near `json:"alongB,omitzero"` // from the corner of the folds along B to its mark; 2 x the depth of A at a square corner
	Seam   units.Near `json:"seam,omitzero"`   // length of the mitre seam, from either mark to the finished corner
	Reach  units.Near `json:"reach,omitzero"`  // from the corner of the raw edges to the finished corner
	// CutA and CutB are from the corner of the folds along A and B to where the
	// corner is cut off, Trim outside the seam. Below zero there is nothing to cut.
	CutA units.Near `json:"cutA,omitzero"`
	CutB units.Near `json:"cutB,omitzero"` // as CutA, along B

	TakenA units.Length `json:"takenA,omitzero"` // what the hem takes along A, First + Depth
	TakenB units.Length `json:"takenB,omitzero"` // what the hem takes along B
	Plies  int          `json:"plies,omitzero"`  // layers of cloth beside the mitre seam: 3 with first turns, else 2; the seam itself has as many again
}

// A MitreTrimRow is a printed allowance outside a mitre seam.
type MitreTrimRow struct {
	Trim   units.Length `json:"trim,omitzero"`   // outside the seam
	Source string       `json:"source,omitzero"` // id of the source, see source.Lookup
	Place  string       `json:"place,omitzero"`  // where in it
	Known  source.Known `json:"known,omitzero"`  // how the figure is known
}

// MitreTrims yields the table of allowances outside a mitre seam. The first row is
// the default, and the last on a metric tape.
func MitreTrims(yield func(MitreTrimRow) bool) {
	for _, t := range mitreTrims {
		if !yield(t) {
			return
		}
	}
}

var (
	mitreMost = units.Metre.Of(10)
	one       = units.RatioOf(1, 1)
	rootTwo   = rootOf(units.RatioOf(2, 1))

	mitreTrims = [...]MitreTrimRow{
		{inches(0, 1, 4), "school-needlework", "to mitre the corners of a hem", source.Read},
		{inches(0, 1, 4), "sewing-lessons-model", "model 7", source.Read},
		{inches(0, 1, 4), "mitred-corner-guide", "", source.Read},
		{inches(0, 3, 8), "pocket-mitre-page", "", source.Read},
		{mm(10), "pocket-mitre-page", "", source.Read},
	}
)

// fill fills the fields that have a default.
func (s Mitre) fill() Mitre {
	s.Tape = noun.Tape(s)
	if s.B == (HemSide{}) && s.A.Depth.Sign() > 0 {
		s.B = s.A
	}
	if s.Trim.IsZero() && s.A.Depth.Sign() > 0 && s.B.Depth.Sign() > 0 {
		s.Trim = onTape(s.Tape, mitreTrims[0], mitreTrims[4]).Trim.Min(s.A.Depth.Min(s.B.Depth).DivInt(2))
	}
	return s
}

// audit records what is wrong with s, in the order of its fields; full is s filled.
func (s Mitre) audit(a *fault.Audit, full Mitre) {
	s.Tape.Check(a, "tape")
	s.A.audit(a, "a.first", "a.depth")
	if s.B != (HemSide{}) {
		s.B.audit(a, "b.first", "b.depth")
	}
	lean, exact := tangent(s.Lean)
	lean = lean.Abs()
	switch {
	case !exact:
		a.Fault("lean", s.Lean.String(), "a slope, as in slope 1/2, or 45 deg", fault.Range)
	case units.RatioOf(MaxLean, 1).Less(lean):
		a.Fault("lean", s.Lean.String(), "from -"+strconv.Itoa(MaxLean)+" to "+strconv.Itoa(MaxLean), fault.Range)
	case s.Lean.Sign() < 0 && !a.Failed():
		// At a blunt corner a mark lies beyond the corner of the folds where the
		// depths differ too much: the lesser must be more than cos x the greater.
		less, more := full.A.Depth.Min(full.B.Depth), full.A.Depth.Max(full.B.Depth)
		if less.Times(less).Scale(one.Add(lean.Mul(lean))).Cmp(more.Times(more).Scale(lean.Mul(lean))) <= 0 {
			a.Fault("lean", s.Lean.String(), "a less blunt corner, or depths nearer to each other than {0} and {1}", fault.Range, less, more)
		}
	}
	switch {
	case mitreMost.Less(s.Trim):
		a.Fault("trim", s.Trim.String(), "at most {0}", fault.Range, mitreMost)
	default:
		a.NotNegative("trim", s.Trim)
	}
}

// audit records what is wrong with one side, under the paths of its fields.
func (h HemSide) audit(a *fault.Audit, first, depth string) {
	switch {
	case mitreMost.Less(h.first()):
		a.Fault(first, h.first().String(), "at most {0}", fault.Range, mitreMost)
	case h.Depth.Sign() > 0 && h.Depth.Less(h.first()):
		a.Fault(first, h.first().String(), "at most {0} ("+depth+")", fault.Range, h.Depth)
	default:
		a.NotNegative(first, h.first())
	}
	if mitreMost.Less(h.Depth) {
		a.Fault(depth, h.Depth.String(), "at most {0}", fault.Range, mitreMost)
	} else {
		a.Need(depth, h.Depth)
	}
}

func (s Mitre) lean() units.Ratio {
	lean, _ := tangent(s.Lean)
	return lean
}

// Plan works out the mitre. The faults are [fault.Faults].
func (s Mitre) Plan() (MitrePlan, error) {
	full := s.fill()
	names := noun.Assumed(s, full)
	var a fault.Audit
	s.audit(&a, full)
	if a.Failed() {
		return MitrePlan{}, a.Err(names...)
	}
	s = full
	c := cornerOf(s.lean())
	p := MitrePlan{Spec: s, Assumed: names, TakenA: s.A.take(), TakenB: s.B.take(), Plies: 2}
	if !s.A.first().IsZero() || !s.B.first().IsZero() {
		p.Plies = 3
	}
	meet := c.inside(s.A.Depth, s.B.Depth)
	fold := meet.neg()
	p.Raw = c.point(c.inside(p.TakenA, p.TakenB).neg())
	p.Fold = c.point(fold)
	p.Meet = c.point(meet)
	p.OnA = c.point(c.overA(meet))
	p.OnB = c.point(c.overB(meet))
	p.AlongA = c.near(meet.x).MulInt(2)
	p.AlongB = c.near(c.inside(s.B.Depth, s.A.Depth).x).MulInt(2)
	p.Seam = c.length(s.A.Depth, s.B.Depth)
	p.Reach = c.length(p.TakenA, p.TakenB)
	p.CutA = short(p.AlongA, p.slant(s.A.Depth))
	p.CutB = short(p.AlongB, p.slant(s.B.Depth))
	for _, n := range [...]*units.Near{&p.AlongA, &p.AlongB, &p.Seam, &p.Reach, &p.CutA, &p.CutB} {
		*n = n.Settled()
	}
	return p, nil
}

// short is n less m; for an exact n it is found without the roots being compared.
func short(n, m units.Near) units.Near {
	if l, exact := n.Exact(); exact {
		return m.Neg().Plus(l)
	}
	return n.Sub(m)
}

// slant is Trim measured along a side whose hem is of the depth.
func (p MitrePlan) slant(depth units.Length) units.Near {
	s := p.Spec
	if s.Lean.IsZero() && s.A.Depth == s.B.Depth {
		return rootTwo.Of(s.Trim)
	}
	return p.Seam.Scale(s.Trim.Div(depth))
}

// Meets folds the corner and compares: it turns the mark on A up over side A and
// the mark on B over side B, exactly, and reports whether they come to lie on the
// same point, whether both seams are of one length, and whether that point is on
// the first fold of both hems. It is so for every mitre planned; a plan changed by
// hand fails.
func (p MitrePlan) Meets() bool {
	s := p.Spec
	c := cornerOf(s.lean())
	meet := c.inside(s.A.Depth, s.B.Depth)
	onA, onB := c.overA(meet), c.overB(meet)
	folded := c.overA(onA) == c.overB(onB) && c.overA(onA) == meet
	level := meet.y == rooted{plain: s.A.Depth} && c.offB(meet) == rooted{root: s.B.Depth}
	return folded && level && p.OnA == c.point(onA) && p.OnB == c.point(onB) && p.Meet == c.point(meet)
}
