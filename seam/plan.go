package seam

import (
	"example.com/clothyard/units"
)

// A Side is one ply of a seam: all from the drafted stitching line or from the
// stitching, as each field says.
type Side struct {
	Drafted units.Length `json:"drafted,omitzero"` // the allowance drawn, from the drafted stitching line to the raw edge
	Cut     units.Length `json:"cut,omitzero"`     // the allowance as cut, from the same line
	Taken   units.Length `json:"taken,omitzero"`   // what the seam takes, from the raw edge as cut to where the finished seam lies

	// Drift is Cut less Taken: how far the seam lies outside the drafted
	// stitching line. Plus makes the piece bigger, minus smaller.
	Drift units.Length `json:"drift,omitzero"`

	// TrimMin and TrimMax are the least and the most that should be left of this
	// ply beyond the first row before the next stage: the narrowest that holds,
	// the widest that stays hidden or is of use, for a French seam less Thickness.
	// Both are the whole allowance where this ply must not be trimmed.
	TrimMin units.Length `json:"trimMin,omitzero"`
	TrimMax units.Length `json:"trimMax,omitzero"` // the most; see TrimMin
}

// A Plan is what a seam comes to. It is comparable.
type Plan struct {
	Spec    Spec     `json:"spec,omitzero"`    // as solved
	Assumed []string `json:"assumed,omitzero"` // the fields of Spec filled with a default

	Upper Side `json:"upper,omitzero"` // the upper ply
	Under Side `json:"under,omitzero"` // the under ply

	// Gain is the drift of both plies together: how much longer an edge comes
	// out that this seam crosses square.
	Gain units.Length `json:"gain,omitzero"`

	// Finished is how wide the finished seam is: the pressed allowance of a plain,
	// piped or graded seam on one side of it, the ridge, the fell, the binding,
	// the welt, the lap; of a slot seam from row to row.
	Finished units.Length `json:"finished,omitzero"`

	// Turned is how much of an allowance is turned in, as [Spec].Turned; zero for
	// kinds that turn nothing in.
	Turned units.Length `json:"turned,omitzero"`

	// Plies is how many layers lie one above another at the thickest place of
	// the finished seam as the sheet presses it, the garment included. Edges that
	// just meet count as lying over one another; a cord is not counted. Plain 2
	// pressed open, 3 to one side; French 5 (the ridge pressed over); bound 7
	// (pressed over, in a single binding); graded Layers + 2: the allowances, and
	// the upper and the under ply that run on over them. The layers between those
	// are taken to run out at the seam, as a collar does; one that runs on into the
	// garment, as an interfacing may, lies there once more and is not counted.
	Plies int `json:"plies,omitzero"`

	// Rows is how many rows of stitching are seen on the right side.
	Rows int `json:"rows,omitzero"`

	// Raw is true where raw edges stay exposed.
	Raw bool `json:"raw,omitzero"`

	// Turn and TurnUnder are what folds take from the upper and the under ply beside
	// Taken, less than zero where the seam takes so much less; zero if Thickness
	// was not given. A fold goes half round, the middle of the cloth being its
	// length, and a guide from it is laid to its outer face. Those count that lie
	// between the raw edge and the seam and are made before a guide is laid:
	//
	//	french         the fold along the first pass: each ply t (pi/2 - 1), for cloth t thick
	//	untrimmed-fell the fold round the upper raw edge: under ply t (pi - 3/2), upper ply -3/2 t
	//	lapped         the fold of the upper ply: t (pi/2 - 2), less than zero; under ply none
	//	lapped-turned  the fold of each ply: t (pi/2 - 2)
	//	piped          none; round the cord pi t more, which is part of StripCorded, stands here
	//
	// Of the other kinds the row that makes the seam is sewn flat, from the raw
	// edges, before anything is folded, or there is no fold: what bends lies in the
	// allowance, and moves no seam.
	Turn      units.Near `json:"turn,omitzero"`
	TurnUnder units.Near `json:"turnUnder,omitzero"` // the same of the under ply

	// StripSingle, StripDouble and StripDoubleWide are how wide to cut the strip
	// of a bound seam of finished width f: single binding 4f, folded double 6f,
	// and folded double by the rule 4f + 1 in, which keeps a fixed amount for the
	// seam and agrees with 6f only where f is 1/2 in. See [Bindings].
	StripSingle     units.Length `json:"stripSingle,omitzero"`
	StripDouble     units.Length `json:"stripDouble,omitzero"`     // folded double, 6f
	StripDoubleWide units.Length `json:"stripDoubleWide,omitzero"` // folded double, 4f + 1 in

	// StripLeast is the narrowest strip that does: for a Hong Kong finish three
	// times Second and Thickness, at which its under edge would only just reach
	// the stitching; for a slot seam twice Second and a margin beyond each row.
	StripLeast units.Length `json:"stripLeast,omitzero"`
	// Wrapped is what of the strip of a Hong Kong finish lies on the under face of
	// the allowance: Strip less twice Second, less Thickness if that is given.
	Wrapped units.Length `json:"wrapped,omitzero"`
	// StripCorded is how wide to cut the strip of a piped seam: once round the
	// cord and First on each side.
	StripCorded units.Near `json:"stripCorded,omitzero"`

	// Step is how much narrower each layer of a graded seam is than the one
	// outside it.
	Step units.Length `json:"step,omitzero"`
}

// Plan solves the Spec and works out the seam. The faults are [fault.Faults];
// see [Spec.Solve].
func (s Spec) Plan() (Plan, error) {
	v := solver{Spec: s}
	if err := v.solve(); err != nil {
		return Plan{}, err
	}
	s = v.Spec
	p := Plan{Spec: s, Assumed: v.assumed.list(), Turned: s.Turned}
	p.Upper = side(s.Drafted, s.Cut, s.Take)
	p.Under = side(s.DraftedUnder, s.CutUnder, s.takeUnder())
	p.Gain = p.Upper.Drift.Add(p.Under.Drift)
	switch s.Kind {
	case French:
		p.french()
	case FlatFelled, MockFelled:
		p.felled()
	case Bound:
		p.bound()
	case TurnedStitched, MockFrench:
		p.turned()
	case UntrimmedFell:
		p.untrimmed()
	case Welt:
		p.welt()
	case Lapped:
		p.lapped()
	case LappedTurned:
		p.lappedTurned()
	case LappedRaw:
		p.lappedRaw()
	case Slot:
		p.slot()
	case HongKong:
		p.hongKong()
	case SelfBound:
		p.selfBound()
	case Piped:
		p.piped()
	case Graded:
		p.graded()
	default:
		p.plain()
	}
	p.turns()
	units.Settle(&p.Turn, &p.TurnUnder, &p.StripCorded)
	return p, nil
}

func side(drafted, cut, taken units.Length) Side {
	return Side{Drafted: drafted, Cut: cut, Taken: taken, Drift: cut.Sub(taken)}
}

// bounds sets what is to be left of a ply, the least first.
func (d *Side) bounds(least, most units.Length) { d.TrimMin, d.TrimMax = least, most.Max(least) }

// least is the narrowest trim of the plan's cloth, or the first pass or the trim
// given where that is narrower still.
func (p *Plan) least() units.Length {
	low := leastTrim(p.Spec.Fraying).Min(p.Spec.First)
	if !p.Spec.Trim.IsZero() {
		low = low.Min(p.Spec.Trim)
	}
	return low
}
