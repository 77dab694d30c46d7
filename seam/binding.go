package seam

import (
	"strconv"

	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
	"example.com/clothyard/units/strip"
	"example.com/clothyard/units/ticket"
)

// MaxCorners is the most mitred corners of one [Binding].
const MaxCorners = 1000

// A Binding is a strip for a bound edge or for piping: how wide it is cut, how
// long it must be, and how many strips of the cloth make it. It is the EDGE that
// is bound here, in place of a seam or a facing; a seam whose allowances are bound
// is [Bound].
//
// The width follows from the geometry: a single strip is Seam + 2 x Finished +
// Turn, which is the rule of four times finished where all are alike; a double one
// is twice (2 x Finished + Seam), which is six times finished where Seam is as
// wide, and four times finished and 1 in where it is 1/2 in; piping is the way
// round the cord and twice Seam.
type Binding struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape on
	// whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Kind is which strip it is.
	Kind BindingKind `json:"kind,omitzero"`
	// Finished is the width that shows on each face of the edge.
	Finished units.Length `json:"finished,omitzero"`
	// Cord is the diameter of the cord of piping.
	Cord units.Length `json:"cord,omitzero"`
	// Seam is from the raw edge of the strip, laid to the raw edge of the garment, to the
	// first row. May be omitted; the default is finished, and of piping 5/8 in, or 1.5 cm.
	Seam units.Length `json:"seam,omitzero"`
	// Turn is what is turned in at the free edge of a single strip. May be omitted; the
	// default is seam.
	Turn units.Length `json:"turn,omitzero"`
	// Give is added to the width for what turning takes and for a bias strip narrowing as it
	// is stretched. May be omitted; the default is 1/8 in, or 3 mm, for a strip on the bias,
	// and 0 for a straight one: common practice.
	Give units.Given[units.Length] `json:"give,omitzero"`
	// Bias says that it is cut on the bias, at half a right angle to the grain.
	Bias bool `json:"bias,omitzero"`
	// Allowance is what the pattern drew beyond the line where the finished edge is to lie. A
	// bound edge takes nothing, so all of it is cut off first. May be omitted; the default is
	// 0.
	Allowance units.Length `json:"allowance,omitzero" noun:"zero"`
	// Curve is how far the edge turns, negative where the allowance lies inside the curve, as
	// at a neck; with allowance only. May be omitted; the default is a straight edge.
	Curve units.Angle `json:"curve,omitzero" noun:"zero"`
	// Edge is the length to be bound or piped, on its seam line. May be omitted; the width
	// alone is then worked out.
	Edge units.Length `json:"edge,omitzero"`
	// Ring says that the edge closes, and the strip with it.
	Ring bool `json:"ring,omitzero"`
	// Corners is how many square outward corners the strip is mitred round, at most 1000. May
	// be omitted; the default is 0.
	Corners int `json:"corners,omitzero" noun:"zero"`
	// Ends is what lies beyond the edge at each open end, to be turned in. May be omitted;
	// the default is 0.
	Ends units.Length `json:"ends,omitzero" noun:"zero"`
	// Join is the allowance of the joins of the strip, square to the join. May be omitted;
	// the default is 1/4 in, or 6 mm: common practice.
	Join units.Length `json:"join,omitzero"`
	// Cloth is the usable width of the cloth, across which the strips are cut. May be
	// omitted; the strip is then of one piece.
	Cloth units.Length `json:"cloth,omitzero"`
}

// A BindingPlan is what the strip comes to.
type BindingPlan struct {
	Spec    Binding  `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // the fields of Spec filled with a default

	Width units.Near `json:"width,omitzero"` // to be cut, square to the strip
	Bare  units.Near `json:"bare,omitzero"`  // the same without Give

	// IfLeft is how much longer the finished edge would be if Allowance were left
	// on: Curve x Allowance. A neck left with its allowance is smaller.
	IfLeft units.Near `json:"ifLeft,omitzero"`

	Mitres units.Length `json:"mitres,omitzero"` // what the corners need beyond the length of the seam line: twice Seam each
	Needed units.Length `json:"needed,omitzero"` // the strip between its end seams, or round: Edge and Mitres; zero where Edge is omitted

	Pieces   int        `json:"pieces,omitzero"`   // strips to be cut; zero where Cloth or Edge is omitted
	Joins    int        `json:"joins,omitzero"`    // how often they are joined
	Each     units.Near `json:"each,omitzero"`     // how long one strip is, along it: the width of the cloth, and more on the bias
	JoinLoss units.Near `json:"joinLoss,omitzero"` // what one join takes along the strip: twice Join, and more on the bias, whose ends are slanted
	Sewn     units.Near `json:"sewn,omitzero"`     // the whole strip after its joins and Ends
	Spare    units.Near `json:"spare,omitzero"`    // Sewn less Needed

	// Uses is how much of the length of the cloth the strips take: side by side,
	// and on the bias the triangles at both ends too.
	Uses units.Near `json:"uses,omitzero"`
}

func (b Binding) audit(a *fault.Audit) {
	b.Tape.Check(a, "tape")
	if bindingNames.Check(a, "kind", b.Kind); a.Failed() {
		return
	}
	only := func(path string, l units.Length, reads bool) {
		if reads {
			a.NotNegative(path, l)
		} else if !l.IsZero() {
			a.Unused(path, l, false, b.Kind)
		}
	}
	binds := b.Kind != Piping
	if binds {
		a.Need("finished", b.Finished)
		only("cord", b.Cord, false)
	} else {
		only("finished", b.Finished, false)
		a.Need("cord", b.Cord)
	}
	a.NotNegative("seam", b.Seam)
	only("turn", b.Turn, b.Kind == SingleBinding)
	a.NotNegative("give", b.give())
	only("allowance", b.Allowance, binds)
	switch {
	case !binds && !b.Curve.IsZero():
		a.Unused("curve", b.Curve, false, b.Kind)
	case binds && b.Allowance.IsZero() && !b.Curve.IsZero():
		a.Fault("curve", b.Curve.String(), "none where allowance is not given", fault.Unused)
	}
	a.NotNegative("edge", b.Edge)
	long := !b.Edge.IsZero()
	without := func(path, got string, zero bool) {
		if !long && !zero {
			a.Fault(path, got, "none where edge is not given", fault.Unused)
		}
	}
	without("ring", "true", !b.Ring)
	switch {
	case !long:
		without("corners", strconv.Itoa(b.Corners), b.Corners == 0)
	case !binds && b.Corners != 0:
		a.Fault("corners", strconv.Itoa(b.Corners), "none for piping, which is clipped at corners", fault.Unused)
	default:
		a.Count("corners", b.Corners, 0, MaxCorners)
	}
	length := func(path string, l units.Length) {
		if long {
			a.NotNegative(path, l)
		} else if !l.IsZero() {
			without(path, l.String(), false)
		}
	}
	if length("ends", b.Ends); long && b.Ring && b.Ends.Sign() > 0 {
		a.Fault("ends", b.Ends.String(), "none in a ring, which has no open end", fault.Unused)
	}
	length("join", b.Join)
	length("cloth", b.Cloth)
	if long && b.Join.Sign() > 0 && b.Cloth.IsZero() {
		a.Fault("join", b.Join.String(), "none where cloth is not given", fault.Unused)
	}
}

// Plan works out the strip. The faults are [fault.Faults].
func (b Binding) Plan() (BindingPlan, error) {
	var a fault.Audit
	given := b
	b.Tape = noun.Tape(b)
	if b.audit(&a); a.Failed() {
		return BindingPlan{}, a.Err()
	}
	var p BindingPlan
	if b.Kind == Piping {
		fill(&b.Seam, sew.Standard(b.Tape))
	}
	fill(&b.Seam, b.Finished)
	if b.Kind == SingleBinding {
		fill(&b.Turn, b.Seam)
	}
	if b.Bias && b.Give.IsZero() {
		b.Give = units.Give(b.Tape.Of(inch(1, 8), mm(3)))
	}
	if !b.Cloth.IsZero() {
		fill(&b.Join, b.Tape.Of(inch(1, 4), mm(6)))
	}
	p.Spec, p.Assumed = b, noun.Assumed(given, b)
	flat := b.flat()
	p.Bare = units.Pi().Of(b.Cord).Plus(flat)
	p.Width = p.Bare.Plus(b.give())
	p.IfLeft = b.Curve.InRadians().Of(b.Allowance)
	if b.Edge.IsZero() {
		units.Settle(&p.Width, &p.Bare, &p.IfLeft, &p.Each, &p.JoinLoss, &p.Sewn, &p.Spare, &p.Uses)
		return p, nil
	}
	p.Mitres = b.Seam.MulInt(2 * int64(b.Corners))
	p.Needed = b.Edge.Add(p.Mitres)
	if b.Cloth.IsZero() {
		units.Settle(&p.Width, &p.Bare, &p.IfLeft, &p.Each, &p.JoinLoss, &p.Sewn, &p.Spare, &p.Uses)
		return p, nil
	}
	if p.strips(&a); a.Failed() {
		return BindingPlan{}, a.Err()
	}
	units.Settle(&p.Width, &p.Bare, &p.IfLeft, &p.Each, &p.JoinLoss, &p.Sewn, &p.Spare, &p.Uses)
	return p, nil
}

// give is what is added to the width.
func (b Binding) give() units.Length { return b.Give.Or(units.Length{}) }

// flat is the part of the width that does not go round a cord, without Give.
func (b Binding) flat() units.Length {
	switch b.Kind {
	case SingleBinding:
		return b.Seam.Add(b.Finished.MulInt(2)).Add(b.Turn)
	case DoubleBinding:
		return b.Finished.MulInt(2).Add(b.Seam).MulInt(2)
	}
	return b.Seam.MulInt(2)
}

// strips finds how many strips of the cloth there must be. On the bias a strip,
// and what a slanted join takes of it, are the root of 2 times what they are
// across the cloth, so that the strip is counted across the cloth, exactly, and
// drawn out once.
func (p *BindingPlan) strips(a *fault.Audit) {
	b := p.Spec
	least := p.Needed.Add(b.Ends.MulInt(2))
	root := units.ExactlyRatio(units.RatioOf(1, 1))
	if b.Bias {
		root = units.Diagonal()
		_, high := root.Bounds()
		least = least.Scale(high.Quo(units.RatioOf(2, 1))) // never too few
	}
	st, err := strip.Spec{Each: b.Cloth, Allowance: units.Give(b.Join), Ring: b.Ring, Least: least}.Plan()
	if err != nil {
		a.Fault("cloth", b.Cloth.String(), "a width of which at most "+ticket.Of(strip.MaxPieces).String()+" strips, each longer than its joins take, make the strip", fault.Range)
		return
	}
	p.Pieces, p.Joins = st.Spec.Pieces, st.Joins
	p.Each = root.Of(b.Cloth)
	p.JoinLoss = root.Of(b.Join.MulInt(2))
	p.Sewn = root.Of(st.Sewn).Plus(b.Ends.MulInt(-2))
	p.Spare = p.Sewn.Plus(p.Needed.Neg())
	n := int64(p.Pieces)
	if !b.Bias {
		p.Uses = p.Width.MulInt(n)
		return
	}
	side := units.Pi().Mul(root).Of(b.Cord).Add(root.Of(b.flat().Add(b.give())))
	p.Uses = side.MulInt(n).Plus(b.Cloth)
}
