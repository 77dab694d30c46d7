package dart

import (
	"example.com/clothyard/seam/edge"
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
)

// A Spec is a fold stitched along two straight legs, wide at one place and as a rule
// running out to a point: see [Kind] for the shapes and for what each reads. The length
// of one that opens on an edge is given along the centre line or along a leg; given both
// ways it must agree.
type Spec struct {
	// Tape is the measure that defaults follow. May be omitted; the default is the tape on
	// whose marks most of the given lengths lie, inches where they are equal.
	Tape units.Tape `json:"tape,omitzero"`
	// Kind is its shape. May be omitted; the default is single.
	Kind Kind `json:"kind,omitzero"`
	// Length is along the centre line from the drawn point to the cut edge, square to it;
	// of one that is double-pointed, from the upper point to the widest place; of one that
	// is open-ended, from where the stitching is let go to the cut edge. May be omitted
	// where leg is given.
	Length units.Length `json:"length,omitzero"`
	// Leg is along either leg, from the point to the cut edge, both legs trued to this. May
	// be omitted where length is given.
	Leg units.Length `json:"leg,omitzero"`
	// Other is the other leg as the pattern drew it, where it drew the legs unequal; with
	// leg only. May be omitted; the legs are then equal.
	Other units.Length `json:"other,omitzero"`
	// Lower is, of one that is double-pointed, from the widest place to the lower point. May
	// be omitted; the default is length.
	Lower units.Length `json:"lower,omitzero"`
	// Width is straight across between the legs, at the cut edge or at the widest place.
	Width units.Length `json:"width,omitzero"`
	// End is, of one that is open-ended, straight across where the stitching is let go: as
	// wide as width for a tuck.
	End units.Length `json:"end,omitzero"`
	// Allowance is that of the seam that crosses the legs, from the cut edge. May be
	// omitted; the default is 5/8 in, or 1.5 cm.
	Allowance units.Length `json:"allowance,omitzero"`
	// Stop is how far short of the drawn point the stitching ends, the legs redrawn to
	// there; with length only. May be omitted; the stitching then ends at the point.
	Stop units.Length `json:"stop,omitzero"`
	// Trim is what is left beyond the stitching, at the seam line. May be omitted; the fold
	// is then not cut, but a French dart whose fold is wider than 5/8 in, or 1.5 cm, there
	// is cut to that.
	Trim units.Length `json:"trim,omitzero"`
	// Overlap is how far the two rows of a double-pointed dart run over each other at the
	// widest place, where both begin. May be omitted; the default is 1 in, or 2.5 cm.
	Overlap units.Length `json:"overlap,omitzero"`
	// Slope is the angle at which the cut edge, on the side that the dart is pressed to,
	// falls away from the point; it is negative where the edge comes nearer. May be omitted;
	// the edge is then square to the centre line.
	Slope units.Angle `json:"slope,omitzero"`
	// Across says that it lies across the body and is pressed down. May be omitted; it is
	// then upright and pressed to the centre.
	Across bool `json:"across,omitzero"`
}

// A Plan is what a dart comes to. Where Length is given all but the legs are
// exact; where only Leg is given they are irrational as a rule.
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
	// are Leg; a negative amount is cut off. Zero where Other is omitted.
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
	// the fold: to 1/8 in, or 3 mm, from the stitching. Zero where it is too narrow for it.
	Clip units.Length `json:"clip,omitzero"`
}

// opens reports whether the dart opens on an edge.
func (d Spec) opens() bool { return d.Kind != Double }

// pointed reports whether it runs from an edge to a point.
func (d Spec) pointed() bool { return d.Kind == Single || d.Kind == French }

// audit checks each field by itself.
func (d Spec) audit(a *fault.Audit) {
	d.Tape.Check(a, "tape")
	kinds.Check(a, "kind", d.Kind)
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
	if !d.opens() && !d.Slope.IsZero() {
		a.Unused("slope", d.Slope, false, d.Kind)
		return
	}
	right := units.Degrees(units.RatioOf(90, 1))
	below, err1 := d.Slope.Cmp(right.Neg())
	above, err2 := d.Slope.Cmp(right)
	if err1 != nil || err2 != nil || below <= 0 || above >= 0 {
		a.Fault("slope", d.Slope.String(), "between -90 deg and 90 deg", fault.Range)
	}
}

// fill puts in the defaults that need no working.
func (d *Spec) fill() {
	if d.Lower.IsZero() && d.Kind == Double {
		d.Lower = d.Length
	}
	if d.Allowance.IsZero() && d.opens() {
		d.Allowance = sew.Standard(d.Tape)
	}
}

// Take is the dart as it crosses the edge it opens on, for the Takes of an
// [edge.Spec]: one seam of two plies, each from the fold to the leg at the seam line.
// Drafted is what the pattern's own dart takes there, both halves; zero stands for
// as much as this one does. It is false where what the dart takes is irrational, and
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
