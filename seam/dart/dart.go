package dart

import (
	"example.com/clothyard/seam"
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/ticket"
)

// A Spec is a fold stitched along two straight legs, wide at one place and as a
// rule running out to a point: see [Kind] for the shapes and for what each
// reads. Zero means not given. The length of one that opens on an edge is given
// along the centre line or along a leg; given both ways it must agree.
type Spec struct {
	Kind Kind `json:"kind,omitzero"` // its shape; default single

	// Length is along the centre line from the drawn point to the cut edge,
	// square to it; of one that is double-pointed, from the upper point to the
	// widest place; of one that is open-ended, from where the stitching is let
	// go to the cut edge. Or give Leg.
	Length units.Length `json:"length,omitzero"`
	Leg    units.Length `json:"leg,omitzero"`   // along either leg, from the point to the cut edge, both legs trued to this; or give Length
	Other  units.Length `json:"other,omitzero"` // the other leg as the pattern drew it, where it drew the legs unequal; with Leg only
	Lower  units.Length `json:"lower,omitzero"` // double-pointed: from the widest place to the lower point; default Length
	Width  units.Length `json:"width,omitzero"` // straight across between the legs, at the cut edge, or at the widest place
	End    units.Length `json:"end,omitzero"`   // open-ended: straight across where the stitching is let go; as wide as Width for a tuck

	Allowance units.Length `json:"allowance,omitzero"` // of the seam that crosses the legs, from the cut edge; default 5/8 in, [seam.Standard]
	Stop      units.Length `json:"stop,omitzero"`      // how far short of the drawn point the stitching ends, the legs redrawn to there; not given: at the point; with Length only

	// Trim is what is left beyond the stitching, at the seam line. Not given: the
	// fold is not cut; but a French dart whose fold is wider than 5/8 in there is
	// cut to that, [seam.Standard].
	Trim units.Length `json:"trim,omitzero"`
	// Overlap is how far the two rows of a double-pointed dart run over each
	// other at the widest place, where both begin. Default 1 in.
	Overlap units.Length `json:"overlap,omitzero"`
	// Slope is how far the cut edge, on the side that the dart is pressed to,
	// falls away from the point for each unit out from the dart; less than zero
	// where it comes nearer. Not given: square to the centre line.
	Slope  units.Ratio `json:"slope,omitzero"`
	Across bool        `json:"across,omitzero"` // it lies across the body and is pressed down; else it is upright and pressed to the centre
}

// A Plan is what a dart comes to. Where Length is given all but the legs are
// exact; where only Leg is given they are irrational as a rule. It is comparable.
type Plan struct {
	Spec    Spec     `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // the fields of Spec filled with a default

	Centre units.Near `json:"centre,omitzero"` // the centre line, from where the stitching ends to the cut edge; of one that is double-pointed, from point to point
	Leg    units.Near `json:"leg,omitzero"`    // either leg, between the same; of one that is double-pointed, of its upper half
	Below  units.Near `json:"below,omitzero"`  // double-pointed: either leg of the lower half
	Sewn   units.Near `json:"sewn,omitzero"`   // the centre line, from where the stitching ends to the seam line; of one that is double-pointed, Centre

	// AtSeam is what the dart takes from the seam line that crosses it, both
	// halves together: less than Width, which is measured at the cut edge. Of one
	// that is double-pointed it is what is taken at the widest place.
	AtSeam units.Near `json:"atSeam,omitzero"`
	Half   units.Near `json:"half,omitzero"` // half of AtSeam: each leg from the fold, at the seam line

	// Trued is what must be added to the other leg at the cut edge, so that both
	// are Leg; less than zero is cut off. Zero where Other was not given.
	Trued units.Length `json:"trued,omitzero"`

	// Cap is the shape of the cut edge across the dart, so that it meets the seam
	// once folded and pressed over: how far the fold must stand out beyond a
	// straight line between the ends of the legs, away from the point. Less than
	// zero stands back. The edge runs straight from each leg's end to there.
	Cap units.Near `json:"cap,omitzero"`
	// Folds is false where the dart is too wide for its length, or the edge too
	// steep to either side, for the fold to meet the seam when pressed over: there is
	// no cap then, and the dart is slit and pressed open. It is true where twice the
	// angle between leg and fold, and the edge's own without its sign, are less than
	// a right angle together. Nor has one that is
	// double-pointed a cap.
	Folds bool `json:"folds,omitzero"`

	// Clip is how deep a double-pointed dart is clipped at its widest place, from
	// the fold: to 1/8 in from the stitching. Zero where it is too narrow for it.
	Clip units.Length `json:"clip,omitzero"`
}

// Solve fills in what follows and the defaults. It fails as [Spec.Plan] does, and
// then returns d as it is.
func (d Spec) Solve() (Spec, error) {
	p, err := d.Plan()
	if err != nil {
		return d, err
	}
	return p.Spec, nil
}

// opens reports whether the dart opens on an edge.
func (d Spec) opens() bool { return d.Kind != Double }

// pointed reports whether it runs from an edge to a point.
func (d Spec) pointed() bool { return d.Kind == Single || d.Kind == French }

// audit checks each field by itself.
func (d Spec) audit(a *fault.Audit) {
	if d.Kind != 0 {
		dartNames.Check(a, "kind", d.Kind)
	}
	if a.Failed() {
		return
	}
	only := func(path string, l units.Length, reads bool) {
		if reads {
			a.NotNegative(path, l)
		} else if !l.IsZero() {
			a.Unused(path, l, false, d.Kind)
		}
	}
	switch {
	case d.pointed() && d.Length.IsZero() && d.Leg.IsZero():
		a.Fault("length", "", "more than 0 in, or leg", fault.Missing)
	case d.pointed():
		a.NotNegative("length", d.Length)
	default:
		a.Need("length", d.Length)
	}
	only("leg", d.Leg, d.pointed())
	only("other", d.Other, d.pointed())
	if d.pointed() && d.Leg.IsZero() && d.Other.Sign() > 0 {
		a.Fault("other", d.Other.String(), "none where leg is not given", fault.Unused)
	}
	only("lower", d.Lower, d.Kind == Double)
	a.Need("width", d.Width)
	if d.Kind == OpenEnded {
		if a.Need("end", d.End); d.Width.Sign() > 0 {
			fault.AtMost(a, "end", d.End, d.Width, "width", fault.Range)
		}
	} else {
		only("end", d.End, false)
	}
	only("allowance", d.Allowance, d.opens())
	only("stop", d.Stop, d.pointed())
	if d.pointed() && d.Length.IsZero() && !d.Leg.IsZero() && d.Stop.Sign() > 0 {
		a.Fault("stop", d.Stop.String(), "none where only leg is given", fault.Unused)
	}
	only("trim", d.Trim, d.pointed())
	only("overlap", d.Overlap, d.Kind == Double)
	switch {
	case !d.opens() && !d.Slope.IsZero():
		a.Unused("slope", d.Slope, false, d.Kind)
	case !sew.Slight(d.Slope):
		a.Fault("slope", sew.Short(d.Slope.String()), "a numerator and a denominator of at most "+ticket.Of(edge.MaxTerm).String(), fault.Range)
	}
}

// fill puts in the defaults that need no working.
func (d *Spec) fill(set *sew.Assumptions) {
	if d.Lower.IsZero() && d.Kind == Double {
		d.Lower = d.Length
		set.Add("lower")
	}
	if d.Allowance.IsZero() && d.opens() {
		d.Allowance = seam.Standard()
		set.Add("allowance")
	}
}

// Take is the dart as it crosses the edge it opens on, for the Takes of an
// [edge.Spec]: one seam of two plies, each from the fold to the leg at the seam line.
// Drafted is what the pattern's own dart takes there, both halves; not given, as
// much as this one does. It is false where what the dart takes is irrational, and
// for one that is double-pointed, which takes from no edge.
func (p Plan) Take(name string, drafted units.Length) (edge.Take, bool) {
	half, ok := p.Half.Exact()
	if !ok || !p.Spec.opens() || half.Sign() <= 0 {
		return edge.Take{}, false
	}
	drawn := drafted.DivInt(2)
	if drafted.IsZero() {
		drawn = half
	}
	return edge.Take{Name: name, Drafted: drawn, Cut: drawn, Taken: half, Plies: 2}, true
}
