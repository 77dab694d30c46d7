package seam

import (
	"example.com/clothyard/units"
	"example.com/clothyard/units/ticket"
)

// A Side is one ply of a seam: all from the drafted stitching line or from the
// stitching, as each field says.
type Side struct {
	Drafted units.Length // the allowance drawn, from the drafted stitching line to the raw edge
	Cut     units.Length // the allowance as cut, from the same line
	Taken   units.Length // what the seam takes, from the raw edge as cut to where the finished seam lies

	// Drift is Cut less Taken: how far the seam lies outside the drafted
	// stitching line. Plus makes the piece bigger, minus smaller.
	Drift units.Length

	// TrimMin and TrimMax are the least and the most that should be left of this
	// ply beyond the first row before the next stage. Both are First where this
	// ply must not be trimmed.
	TrimMin, TrimMax units.Length
}

// A Plan is what a seam comes to. It is comparable.
type Plan struct {
	Spec    Spec          // as solved
	Assumed ticket.Fields // the fields of Spec filled with a default

	Upper, Under Side // the two plies

	// Gain is the drift of both plies together: how much longer an edge comes
	// out that this seam crosses square.
	Gain units.Length

	// Finished is how wide the finished seam is: the pressed allowance of a plain
	// seam on one side of it, the French ridge, the fell, the binding.
	Finished units.Length

	// Turned is how much of the upper allowance is turned in under a fell; zero
	// for the other kinds.
	Turned units.Length

	// Plies is how many layers lie one above another at the thickest place of
	// the finished seam as the sheet presses it, the garment included: plain 2
	// (pressed open), French 5 (the ridge pressed over), flat-felled 4 where the
	// trimmed edge and the turned one meet and else 3, bound 7 (pressed over, in
	// a single binding).
	Plies int

	// Raw is true where raw edges stay exposed.
	Raw bool

	// Turn is what the bends at the ridge of a French seam take from each ply
	// beside the passes, t (pi/2 - 1) for cloth t thick; zero if Thickness was
	// not given. It is not part of Taken.
	Turn units.Near

	// StripSingle, StripDouble and StripDoubleWide are how wide to cut the strip
	// of a bound seam of finished width f: single binding 4f, folded double 6f,
	// and folded double by the rule 4f + 1 in, which keeps a fixed amount for the
	// seam and agrees with 6f only where f is 1/2 in. See [Bindings].
	StripSingle, StripDouble, StripDoubleWide units.Length
}

// Plan solves the Spec and works out the seam. The faults are [ticket.Faults];
// see [Spec.Solve].
func (s Spec) Plan() (Plan, error) {
	v := solver{Spec: s}
	if err := v.solve(); err != nil {
		return Plan{}, err
	}
	s = v.Spec
	p := Plan{Spec: s, Assumed: v.assumed.list()}
	p.Upper = side(s.Drafted, s.Cut, s.Take)
	p.Under = side(s.DraftedUnder, s.CutUnder, s.Take)
	p.Gain = p.Upper.Drift.Add(p.Under.Drift)
	switch s.Kind {
	case French:
		p.french()
	case FlatFelled:
		p.felled()
	case Bound:
		p.bound()
	default:
		p.plain()
	}
	return p, nil
}

func side(drafted, cut, taken units.Length) Side {
	return Side{Drafted: drafted, Cut: cut, Taken: taken, Drift: cut.Sub(taken)}
}

// bounds sets what is to be left of a ply, the least first.
func (d *Side) bounds(least, most units.Length) { d.TrimMin, d.TrimMax = least, most.Max(least) }

// least is the narrowest trim of the plan's cloth, or the first pass where that
// is narrower still.
func (p *Plan) least() units.Length {
	return leastTrim(p.Spec.Fraying).Min(p.Spec.Trim).Min(p.Spec.First)
}
