package dart

import (
	"example.com/clothyard/seam/internal/sew"
	"example.com/clothyard/units"
	"example.com/clothyard/units/fault"
	"example.com/clothyard/units/noun"
)

// Plan works out the dart. The faults are [fault.Faults]; a square root too
// large to be enclosed is [units.ErrBound].
func (d Spec) Plan() (Plan, error) {
	var a fault.Audit
	given := d
	d.Tape = noun.Tape(d)
	if d.Kind == 0 {
		d.Kind = Single
	}
	if d.audit(&a); a.Failed() {
		return Plan{}, a.Err()
	}
	d.fill()
	p := Plan{Spec: d}
	if p.fits(&a); a.Failed() {
		return Plan{}, a.Err()
	}
	path, value := "length", d.Length
	if d.Length.IsZero() {
		path, value = "leg", d.Leg
	}
	if err := p.measure(); err != nil {
		a.Fault(path, value.String(), "a length whose square root can be enclosed", fault.KindOf(err))
		return Plan{}, a.Err()
	}
	if d.pointed() {
		p.trim(&a)
	}
	if d.opens() {
		p.cap()
	}
	if a.Failed() {
		return Plan{}, a.Err()
	}
	p.Assumed = noun.Assumed(given, p.Spec)
	units.Settle(&p.Centre, &p.Leg, &p.Below, &p.Sewn, &p.AtSeam, &p.Half, &p.Cap)
	return p, nil
}

// fits checks what is given against each other.
func (p *Plan) fits(a *fault.Audit) {
	d := &p.Spec
	switch d.Kind {
	case Double:
		whole := d.Length.Add(d.Lower)
		if d.Overlap.IsZero() {
			d.Overlap = d.Tape.Of(sew.Inch(1, 1), units.Centimetre.Frac(5, 2)).Min(d.Length.Min(d.Lower))
		} else if !d.Overlap.Less(whole) {
			a.Fault("overlap", d.Overlap.String(), "less than "+whole.String()+" (from point to point)", fault.Range)
		}
		return
	case OpenEnded:
		if !d.Allowance.Less(d.Length) {
			a.Fault("length", d.Length.String(), "more than "+d.Allowance.String()+" (allowance)", fault.Range)
		}
		return
	}
	drawn := d.Length.Times(d.Length) // the square of the centre line as drawn
	half := d.Width.DivInt(2)
	longest, path := d.Length, "length"
	if !d.Leg.IsZero() {
		square := d.Leg.Times(d.Leg).Sub(half.Times(half))
		switch {
		case square.Sign() <= 0:
			a.Fault("leg", d.Leg.String(), "more than "+half.String()+" (half of width)", fault.Range)
		case d.Length.IsZero():
			drawn, longest, path = square, d.Leg, "leg"
		case square != drawn:
			a.Fault("leg", d.Leg.String(), "none, or the leg that length "+d.Length.String()+" and width "+d.Width.String()+" make", fault.Conflict)
		}
		if !d.Other.IsZero() {
			p.Trued = d.Leg.Sub(d.Other)
		}
	}
	gone := d.Allowance.Add(d.Stop)
	if !a.Failed() && drawn.Cmp(gone.Times(gone)) <= 0 {
		a.Fault(path, longest.String(), "a centre line of more than "+gone.String()+" (allowance and stop)", fault.Range)
	}
}

// square is the square of the centre line as sewn, to the cut edge.
func (d Spec) square() units.Area {
	if !d.Length.IsZero() {
		c := d.Length.Sub(d.Stop)
		return c.Times(c)
	}
	half := d.Width.DivInt(2)
	return d.Leg.Times(d.Leg).Sub(half.Times(half))
}

// hypotenuse is the longest side of a right-angled triangle.
func hypotenuse(long, side units.Length) (units.Near, error) {
	if side.IsZero() {
		return units.Exactly(long), nil
	}
	return units.Sqrt(long.Times(long).Add(side.Times(side)), units.Length{})
}

// measure fills the plan once the dart is known to be one.
func (p *Plan) measure() (err error) {
	d := p.Spec
	half := d.Width.DivInt(2)
	switch {
	case d.Kind == Double:
		if p.Leg, err = hypotenuse(d.Length, half); err != nil {
			return err
		}
		if p.Below, err = hypotenuse(d.Lower, half); err != nil {
			return err
		}
		p.Centre = units.Exactly(d.Length.Add(d.Lower))
		p.Sewn = p.Centre
		p.AtSeam = units.Exactly(d.Width)
		p.Half = units.Exactly(half)
		if clear := d.clear(); clear.Less(half) {
			p.Clip = half.Sub(clear)
		}
		return nil
	case !d.Length.IsZero():
		p.Centre = units.Exactly(d.Length.Sub(d.Stop))
	default:
		if p.Centre, err = units.Sqrt(d.square(), units.Length{}); err != nil {
			return err
		}
	}
	if !d.Leg.IsZero() && d.Stop.IsZero() {
		p.Leg = units.Exactly(d.Leg)
	} else if p.Leg, err = hypotenuse(d.Length.Sub(d.Stop), half.Sub(d.End.DivInt(2))); err != nil {
		return err
	}
	p.Sewn = p.Centre.Plus(d.Allowance.Neg())
	p.AtSeam = units.Exactly(d.Width).Sub(p.share(d.Allowance))
	p.Half = p.AtSeam.DivInt(2)
	return nil
}

// trim fills the trim of a French dart, and holds any trim inside the fold.
func (p *Plan) trim(a *fault.Audit) {
	d := &p.Spec
	if d.Trim.IsZero() && d.Kind == French {
		if n, err := units.Exactly(sew.Standard(d.Tape)).Cmp(p.Half); err == nil && n < 0 {
			d.Trim = sew.Standard(d.Tape)
		}
		return
	}
	if over, err := units.Exactly(d.Trim).Cmp(p.Half); err != nil || over >= 0 {
		a.Fault("trim", d.Trim.String(), "less than "+p.Half.String()+" (the fold beyond the stitching, at the seam line)", fault.Range)
	}
}

// clear is how far a clip stops short of the stitching.
func (d Spec) clear() units.Length { return d.Tape.Of(sew.Inch(1, 8), units.Millimetre.Of(3)) }

// cap works out the cut edge across the fold. With h half of the width, t the tangent of
// the angle between leg and fold and m the slope of the edge, the fold stands out by h x
// tan (2 x that angle + the edge's), which is h (2 t + m q) / (q - 2 t m) for q = 1 - t x
// t. Where t is irrational the denominator is rid of it first.
func (p *Plan) cap() {
	d := p.Spec
	one, two := units.RatioOf(1, 1), units.RatioOf(2, 1)
	h := d.Width.DivInt(2)
	run := h.Sub(d.End.DivInt(2))
	tt := run.Times(run).Div(d.square()) // t x t
	q := one.Sub(tt)
	slope, _ := d.Slope.Tan() // checked before
	m, exact := slope.Exact()
	if !exact {
		p.capAcross(h, run, q, slope)
		return
	}
	below := q.Mul(q).Sub(two.Mul(two).Mul(m).Mul(m).Mul(tt))
	if q.Sign() <= 0 || below.Sign() <= 0 {
		return
	}
	p.Folds = true
	// h x t x 2 q (1 + m m) + h m (1 + t t)(1 + t t), over below
	slanted := two.Mul(q).Mul(one.Add(m.Mul(m))).Quo(below)
	level := m.Mul(one.Add(tt)).Mul(one.Add(tt)).Quo(below)
	p.Cap = fine(p.Centre.Scale(h.Times(run).Div(d.square()).Mul(slanted)).Plus(h.Scale(level)))
}

// capAcross is cap for an edge whose slope is irrational.
func (p *Plan) capAcross(h, run units.Length, q units.Ratio, m units.NearRatio) {
	t, err := p.Centre.Under(run)
	if err != nil {
		return
	}
	tm := t.Mul(m).Scale(units.RatioOf(2, 1))
	left, err1 := units.ExactlyRatio(q).Sub(tm).Sign()
	right, err2 := units.ExactlyRatio(q).Add(tm).Sign()
	if err1 != nil || err2 != nil || left <= 0 || right <= 0 {
		return
	}
	if out, err := t.Scale(units.RatioOf(2, 1)).Add(m.Scale(q)).Quo(units.ExactlyRatio(q).Sub(tm)); err == nil {
		p.Folds, p.Cap = true, out.Of(h)
	}
}

// share is by how much narrower the dart is at h from the cut edge than at it:
// (Width - End) x h / Centre, with Centre brought out of the denominator.
func (p Plan) share(h units.Length) units.Near {
	narrows := p.Spec.Width.Sub(p.Spec.End)
	if c, ok := p.Centre.Exact(); ok {
		return units.Exactly(narrows.Scale(h.Div(c)))
	}
	return fine(p.Centre.Scale(narrows.Times(h).Div(p.Spec.square())))
}

// fine encloses a multiple of a root as closely as the root itself, or where that
// passes the limit of work as closely as it is known.
func fine(n units.Near) units.Near {
	within := units.DefaultWithin()
	if !within.Less(n.Within()) {
		return n
	}
	if closer, err := n.Refine(within); err == nil {
		return closer
	}
	return n
}

// Across is how wide the dart is at h from where its stitching ends, along the
// centre line: what it takes there, both halves together. Of one that is
// double-pointed h is measured from the upper point. It fails with
// [fault.Range] for an h that lies off the dart.
func (p Plan) Across(h units.Length) (units.Near, error) {
	d := p.Spec
	square := d.square()
	if d.Kind == Double {
		whole := d.Length.Add(d.Lower)
		square = whole.Times(whole)
	}
	if h.Sign() < 0 || square.IsZero() || square.Cmp(h.Times(h)) < 0 {
		return units.Near{}, &fault.Fault{Path: "h", Got: h.String(), Limit: "0 in to " + p.Centre.String() + " (the centre line)", Kind: fault.Range}
	}
	switch {
	case d.Kind == Double && d.Length.Less(h):
		return units.Exactly(d.Width.Scale(d.Length.Add(d.Lower).Sub(h).Div(d.Lower))), nil
	case d.Kind == Double:
		return units.Exactly(d.Width.Scale(h.Div(d.Length))), nil
	case h.IsZero():
		return units.Exactly(d.End), nil
	}
	return p.share(h).Plus(d.End), nil
}
